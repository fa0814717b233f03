// The card of a tour, and the outline round what it speaks of.
#pragma once

#include "widgets/theme/theme.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace blinkwright::app::help {

class TourCard : public QWidget {
    Q_OBJECT
  public:
    explicit TourCard(QWidget* parent);

    /// @param step from 0
    void showStep(const QString& title, const QString& text, int step, int count);
    void setTheme(const widgets::Theme& theme);
    QPushButton& next() { return *m_next; }
    QPushButton& back() { return *m_back; }
    QPushButton& leave() { return *m_leave; }

  private:
    void paintEvent(QPaintEvent* event) override;

    QLabel *m_title, *m_text, *m_number;
    QPushButton *m_leave, *m_back, *m_next;
    QColor m_frame, m_ground;
};

/// Lets the mouse through, and covers no more than its line.
class TourOutline : public QWidget {
    Q_OBJECT
  public:
    explicit TourOutline(QWidget* parent);
    void setAround(const QRect& place);
    QRect around() const { return m_around; }
    void setTheme(const widgets::Theme& theme);

  private:
    void paintEvent(QPaintEvent* event) override;

    QRect m_around;
    QColor m_colour;
};

} // namespace blinkwright::app::help
