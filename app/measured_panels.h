// What was measured on the real board, brought to the panels: the column of the Readings, and the records
// over the Curves.
//
//   MeasuredPanels measured(document, live, curves, readings, settings);
//   measured.addToViewMenu(view);
//   exported.records = measured.records();
#pragma once

#include "app/document.h"
#include "app/live_panels.h"
#include "app/settings.h"
#include "core/study/measured_readings.h"
#include "widgets/curves/record_curve.h"

class QAction;
class QMenu;

namespace blinkwright::app {

/// The records in use of a circuit, each where it lies on the curves of a study.
widgets::RecordCurves recordsOver(const circuit::Circuit& circuit, const study::Study& study);

class MeasuredPanels : public QObject {
    Q_OBJECT
  public:
    MeasuredPanels(Document& document, LivePanels& live, widgets::CurvesView& curves,
                   widgets::ReadingsView& readings, Settings& settings, QObject* parent = nullptr);

    void addToViewMenu(QMenu* menu);
    /// Those that are shown.
    const widgets::RecordCurves& records() const { return m_records; }

  private:
    void follow();
    void show();
    bool hasRecords() const;

    Document& m_document;
    LivePanels& m_live;
    widgets::CurvesView& m_curves;
    widgets::ReadingsView& m_readings;
    Settings& m_settings;
    QAction* m_action = nullptr;
    circuit::Measurements m_of; ///< what m_figures are of
    study::MeasuredReadings m_figures;
    widgets::RecordCurves m_records;
};

} // namespace blinkwright::app
