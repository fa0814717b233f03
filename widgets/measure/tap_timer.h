// A big button to press, or the space bar, at each flash: counts the taps, shows the running rate and how
// even they are.
//
//   TapTimer timer;
//   connect(&timer, &TapTimer::tapped, ...);      // timer.count() from the second tap on
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/tap_count.h"

#include <QWidget>
#include <functional>

class QLabel;
class QPushButton;

namespace blinkwright::widgets {

class TapTimer : public QWidget {
    Q_OBJECT
  public:
    explicit TapTimer(QWidget* parent = nullptr);

    /// Seconds since whenever, never going back; for tests. The system's own by default.
    void setClock(std::function<double()> clock) { m_clock = std::move(clock); }
    std::optional<study::TapCount> count() const { return study::tapCount(m_taps_s); }
    QPushButton& button() { return *m_button; }
    QString message() const;

  public slots:
    void tap();
    void startAgain();

  signals:
    void tapped(); ///< or begun anew

  private:
    void show();

    std::function<double()> m_clock;
    std::vector<double> m_taps_s;
    QPushButton *m_button, *m_again;
    QLabel* m_said;
};

} // namespace blinkwright::widgets
