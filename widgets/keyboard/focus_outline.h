// The outline around what has the focus, the same for every control of every window: two pixels in the accent
// of the theme, and one of the window's ground between it and the control, so that it is seen on any colour.
//
//   new FocusOutline(mainWindow);     // follows the focus while it lives
// What is clicked needs no outline to be found: buttons, boxes and tabs that the pointer gave the focus to
// have none before the next key. So no widget draws a mark of its own for the focus.
#pragma once

#include <QObject>
#include <QPointer>
#include <QWidget>

namespace blinkwright::widgets {

class FocusOutline : public QObject {
    Q_OBJECT
  public:
    static constexpr int line = 2, gap = 1; ///< [pixels]

    explicit FocusOutline(QObject* parent);
    ~FocusOutline() override;

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    class Ring;
    void follow(QWidget& widget, Qt::FocusReason reason);
    void leave();
    void place();

    QPointer<QWidget> m_about, m_clicked;
    QPointer<Ring> m_ring;
};

} // namespace blinkwright::widgets
