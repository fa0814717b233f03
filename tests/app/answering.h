// Answers the next message box while the code under test waits for it.
//
//   Answering cancel(QMessageBox::Cancel);
//   EXPECT_FALSE(window.close());
//   EXPECT_FALSE(cancel.said.isEmpty());
#pragma once

#include <QApplication>
#include <QMessageBox>
#include <QTimer>

namespace blinkwright::test {

/// Presses a button of the next message box, and says what it said.
class Answering : public QObject {
  public:
    explicit Answering(QMessageBox::StandardButton button) : m_button(button) {
        m_timer.setInterval(5);
        connect(&m_timer, &QTimer::timeout, this, [this] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            if (!box) return;
            said = box->text();
            m_timer.stop();
            box->button(m_button)->click();
        });
        m_timer.start();
    }
    QString said;

  private:
    QMessageBox::StandardButton m_button;
    QTimer m_timer;
};

} // namespace blinkwright::test
