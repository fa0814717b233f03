// Answers the next message box while the code under test waits for it.
//
//   Answering cancel(QMessageBox::Cancel);
//   EXPECT_FALSE(window.close());
//   EXPECT_FALSE(cancel.said.isEmpty());
//   Answering over("Overwrite");            // a button that begins so
#pragma once

#include <QAbstractButton>
#include <QApplication>
#include <QMessageBox>
#include <QTimer>

#include <functional>

namespace blinkwright::test {

/// Presses a button of the next message box, and says what it said.
class Answering : public QObject {
  public:
    /// @param about waits for the box whose text holds this
    explicit Answering(QMessageBox::StandardButton button, const char* about = "")
        : Answering([button, about = QString::fromUtf8(about)](const QMessageBox& box) {
              return box.text().contains(about) ? box.button(button) : nullptr;
          }) {}
    explicit Answering(const char* button)
        : Answering([words = QString::fromUtf8(button)](const QMessageBox& box) -> QAbstractButton* {
              for (QAbstractButton* found : box.buttons())
                  if (found->text().remove(u'&').startsWith(words)) return found;
              return nullptr;
          }) {}
    QString said;

  private:
    explicit Answering(std::function<QAbstractButton*(const QMessageBox&)> find) {
        m_timer.setInterval(5);
        connect(&m_timer, &QTimer::timeout, this, [this, find = std::move(find)] {
            auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            QAbstractButton* button = box ? find(*box) : nullptr;
            if (!button) return;
            said = box->text();
            m_timer.stop();
            button->click();
        });
        m_timer.start();
    }
    QTimer m_timer;
};

} // namespace blinkwright::test
