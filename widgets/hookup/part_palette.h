// A strip with one button for each kind of part, each with its symbol.
//
//   PartPalette palette;
//   connect(&palette, &PartPalette::chosen, &view, &HookupView::placePart);
// It takes no keyboard focus: the same choices are in the window's menu.
#pragma once

#include "core/circuit/kinds.h"
#include "widgets/theme/theme.h"

#include <QIcon>
#include <QWidget>
#include <map>

class QLabel;
class QToolButton;

namespace blinkwright::widgets {

/// The symbol of a kind, for buttons and menus.
QIcon partIcon(circuit::PartKind kind, const Theme& theme, QSize size);

class PartPalette : public QWidget {
    Q_OBJECT
  public:
    explicit PartPalette(QWidget* parent = nullptr);

    void setTheme(const Theme& theme);
    QToolButton* button(circuit::PartKind kind) const { return m_buttons.at(kind); }

  signals:
    void chosen(blinkwright::circuit::PartKind kind);

  private:
    void drawIcons(); ///< as large as the text asks

    QLabel* m_title;
    Theme m_theme;
    std::map<circuit::PartKind, QToolButton*> m_buttons;
};

} // namespace blinkwright::widgets
