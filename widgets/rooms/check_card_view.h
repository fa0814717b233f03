// The check card on the screen: what a meter or a probe reads at every place of a board that works as drawn.
//
//   CheckCardView view;
//   view.setCard(expected);
#pragma once

#include "core/study/expected_readings.h"
#include "widgets/theme/theme.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QTableWidget;

namespace blinkwright::widgets {

class CheckCardView : public QWidget {
    Q_OBJECT
  public:
    explicit CheckCardView(QWidget* parent = nullptr);

    void setCard(study::ExpectedReadings expected);
    void clear();
    const study::ExpectedReadings& expected() const { return m_expected; }
    void setTheme(const Theme& theme);

  private:
    void fill();

    study::ExpectedReadings m_expected;
    QLabel *m_heading, *m_notes;
    QComboBox* m_instrument;
    QTableWidget* m_table;
};

} // namespace blinkwright::widgets
