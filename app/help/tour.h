// A tour of the window in a few steps: a card beside what it speaks of, and an outline round that. Nothing is
// blocked meanwhile; Esc leaves at any moment.
//
//   Tour tour(window, tourSteps(window));
//   tour.begin();
#pragma once

#include "widgets/theme/theme.h"

#include <QMainWindow>
#include <QPointer>
#include <functional>
#include <vector>

namespace blinkwright::app::help {

class TourCard;
class TourOutline;

struct TourStep {
    QString title, text;
    std::function<QRect()> place; ///< of what is spoken of, in the window's coordinates
};

/// Ready blinker, value, curves, Set B, export.
std::vector<TourStep> tourSteps(QMainWindow& window);

class Tour : public QObject {
    Q_OBJECT
  public:
    Tour(QMainWindow& window, std::vector<TourStep> steps);
    ~Tour() override;

    void begin();
    void leave();
    bool isRunning() const { return m_step >= 0; }
    int count() const { return static_cast<int>(m_steps.size()); }
    int step() const { return m_step; } ///< from 0; below 0 while it does not run
    /// Past the last step the tour is over; before the first there is none.
    void goTo(int step);
    TourCard& card() { return *m_card; }
    QRect outlined() const; ///< null while it does not run
    void setTheme(const widgets::Theme& theme);

  private:
    void put(); ///< card and outline where they belong now
    bool eventFilter(QObject* watched, QEvent* event) override;

    QMainWindow& m_window;
    const std::vector<TourStep> m_steps;
    TourOutline* m_outline;
    TourCard* m_card;
    QPointer<QWidget> m_focus; ///< what had it before the tour
    int m_step = -1;
};

/// Where a card of a size has room beside a place: beside it, else below or above, else over a corner of it.
QRect besidePlace(const QRect& place, QSize card, const QRect& room);

} // namespace blinkwright::app::help
