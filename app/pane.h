// One titled area of the window: a quiet heading over a panel, on the panel's own ground.
#pragma once

#include <QFrame>

class QHBoxLayout;
class QLabel;

namespace blinkwright::widgets {
struct Theme;
}

namespace blinkwright::app {

class Pane : public QFrame {
    Q_OBJECT
  public:
    /// Takes the panel over; the title is also its accessible name.
    Pane(const QString& title, QWidget* panel, QWidget* parent = nullptr);

    /// Puts a control to the right of the title.
    void setCorner(QWidget* corner);
    void setTheme(const widgets::Theme& theme);
    /// Gives the keyboard focus to the panel, or to the first of its controls that takes it.
    bool takeFocus(); ///< false where there is nothing that could have it
    bool hasFocusWithin() const;

  private:
    QHBoxLayout* m_head;
    QLabel* m_title;
    QWidget* m_panel;
};

} // namespace blinkwright::app
