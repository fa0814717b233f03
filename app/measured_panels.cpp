#include "app/measured_panels.h"

#include "core/study/measured_against.h"
#include "core/study/record_overlay.h"
#include "widgets/curves/curves_view.h"
#include "widgets/readings/readings_view.h"

#include <QAction>
#include <QMenu>

#include <algorithm>

namespace blinkwright::app {

namespace {

bool isRecordInUse(const std::shared_ptr<const circuit::Measurement>& measurement) {
    return measurement->used && std::holds_alternative<circuit::Record>(measurement->what);
}

/// Settled curves begin with a rise; all others at power-on.
bool isFromPowerOn(const study::Readings& readings) {
    if (readings.verdict != study::Verdict::blinks || readings.timers.empty()) return true;
    return readings.timers.front().firstHigh_s.has_value();
}

} // namespace

widgets::RecordCurves recordsOver(const circuit::Circuit& circuit, const study::Study& study) {
    widgets::RecordCurves records;
    for (const auto& measurement : circuit.measurements) {
        if (!isRecordInUse(measurement)) continue;
        const auto& record = std::get<circuit::Record>(measurement->what);
        if (const auto shift = study::recordShift(record, study.curves, isFromPowerOn(study.readings)))
            records.push_back({measurement, *shift});
    }
    return records;
}

MeasuredPanels::MeasuredPanels(Document& document, LivePanels& live, widgets::CurvesView& curves,
                               widgets::ReadingsView& readings, Settings& settings, QObject* parent)
    : QObject(parent), m_document(document), m_live(live), m_curves(curves), m_readings(readings),
      m_settings(settings) {
    connect(&m_document, &Document::changed, this, &MeasuredPanels::follow);
    connect(&m_live, &LivePanels::studyShown, this, &MeasuredPanels::show);
}

void MeasuredPanels::addToViewMenu(QMenu* menu) {
    m_action = menu->addAction(tr("Measured &records"));
    m_action->setShortcut(QKeySequence(tr("Ctrl+Shift+R")));
    m_action->setWhatsThis(
        tr("Lays what an instrument recorded on the real board over the curves, for those records "
           "that are in use in Measurements."));
    m_action->setCheckable(true);
    m_action->setChecked(m_settings.measuredRecordsShown());
    m_action->setEnabled(hasRecords());
    connect(m_action, &QAction::triggered, this, [this](bool on) {
        m_settings.setMeasuredRecordsShown(on);
        show();
    });
}

bool MeasuredPanels::hasRecords() const {
    return std::ranges::any_of(m_document.circuit().measurements, isRecordInUse);
}

void MeasuredPanels::follow() {
    const circuit::Measurements& now = m_document.circuit().measurements;
    if (now == m_of) return; // the same measurements, not only equal ones
    m_of = now;
    m_figures = study::measuredReadings(m_document.circuit());
    if (m_action) m_action->setEnabled(hasRecords());
    show();
}

void MeasuredPanels::show() {
    const auto study = m_live.shown();
    m_records.clear();
    if (study && m_settings.measuredRecordsShown()) m_records = recordsOver(m_document.circuit(), *study);
    m_curves.setRecords(m_records);
    m_readings.setMeasured(
        study && !m_figures.empty()
            ? study::measuredAgainst(m_document.circuit(), circuit::PartSet::A, m_figures, study.get())
            : std::vector<study::MeasuredAgainst>());
}

} // namespace blinkwright::app
