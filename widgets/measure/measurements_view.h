// The room's picture: the list of measurements, worked by mouse and keys, above what they say together. Where
// nothing has been measured it says in plain words what can be.
//
//   MeasurementsView view;
//   view.setCircuit(circuit);                       // the list
//   view.table().setFigures(...);                   // what it says
//   connect(&view, &MeasurementsView::changeWished, ...);   // of a row, in a form of its own
#pragma once

#include "widgets/measure/measured_table.h"
#include "widgets/measure/measurement_model.h"

#include <QWidget>

class QLabel;
class QStackedWidget;
class QTableView;

namespace blinkwright::widgets {

class MeasurementsView : public QWidget {
    Q_OBJECT
  public:
    explicit MeasurementsView(QWidget* parent = nullptr);
    ~MeasurementsView() override;

    MeasurementModel& model() { return m_model; }
    MeasuredTable& table() { return *m_table; }
    QTableView& list() { return *m_list; }
    void setCircuit(const circuit::Circuit& circuit);
    void setTheme(const Theme& theme);
    bool isEmpty() const { return m_model.rowCount() == 0; }
    int chosen() const; ///< the row that the keys are on; -1 for none
    void choose(int row);
    QString asText() const;

  public slots:
    void removeChosen();
    void duplicateChosen();
    void changeChosen();

  signals:
    void changeWished(int row);
    void chosenChanged();

  private:
    bool eventFilter(QObject* watched, QEvent* event) override;

    MeasurementModel m_model;
    QTableView* m_list;
    MeasuredTable* m_table;
    QWidget* m_ground; ///< under what an empty view says
    QLabel *m_empty, *m_heading;
    QStackedWidget* m_pages;
};

} // namespace blinkwright::widgets
