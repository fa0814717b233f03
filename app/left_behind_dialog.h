// Offers what earlier programs left unsaved when they ended without closing.
//
//   LeftBehindDialog dialog(window, recovery.leftBehind());
//   if (dialog.exec() == QDialog::Accepted) recovery.takeUp(*dialog.chosen());
#pragma once

#include "app/recovery.h"

#include <QDialog>
#include <optional>

class QListWidget;

namespace blinkwright::app {

class LeftBehindDialog : public QDialog {
    Q_OBJECT
  public:
    LeftBehindDialog(QWidget* parent, std::vector<Recovery::Left> list);

    std::optional<Recovery::Left> chosen() const;

  signals:
    /// The user has confirmed it.
    void discardWished(const blinkwright::app::Recovery::Left& left);

  private:
    void discard();

    std::vector<Recovery::Left> m_list;
    QListWidget* m_names;
};

} // namespace blinkwright::app
