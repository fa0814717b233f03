// About the program: its version, its licence, and those of everything that it is built with.
#pragma once

#include <QDialog>

namespace blinkwright::app::help {

class AboutDialog : public QDialog {
    Q_OBJECT
  public:
    explicit AboutDialog(QWidget* parent = nullptr);
    QString text() const; ///< as HTML

  private:
    QString m_text;
};

} // namespace blinkwright::app::help
