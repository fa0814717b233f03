// Light, dark, or as the desktop has it: one Fusion palette for the controls, one Theme for all that we
// paint.
//
//   Appearance appearance;              // before anything sets a palette
//   appearance.choose(Looks::dark);     // the application is dark now
//   view->setTheme(appearance.theme());
#pragma once

#include "app/settings.h"
#include "widgets/theme/theme.h"

#include <QObject>

namespace blinkwright::app {

class Appearance : public QObject {
    Q_OBJECT
  public:
    /// Judges the desktop by the palette that the application has now.
    explicit Appearance(QObject* parent = nullptr);

    void choose(Looks looks);
    Looks looks() const { return m_looks; }
    const widgets::Theme& theme() const;

  signals:
    void themeChanged(const blinkwright::widgets::Theme& theme);

  private:
    bool m_systemIsDark;
    Looks m_looks = Looks::system;
};

} // namespace blinkwright::app
