#include "app/live_panels.h"

#include "app/moment.h"
#include "app/run_report.h"
#include "core/circuit/set_edits.h"
#include "core/devices/board.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/readings/readings_view.h"
#include "widgets/values/value_panel.h"

namespace blinkwright::app {

namespace {

using circuit::PartSet;

/// After this long without a result the status bar says that one is on its way.
constexpr int slow_ms = 250;

} // namespace

LivePanels::LivePanels(Document& document, const Panels& panels, QObject* parent)
    : QObject(parent), m_document(document), m_panels(panels), m_run(&study::study) {
    m_slow.setSingleShot(true);
    m_slow.setInterval(slow_ms);
    connect(&m_slow, &QTimer::timeout, this, [this] { emit reported(tr("Computing …")); });
    connect(&m_run, &LiveRun::finished, this, &LivePanels::show);
    connect(&m_document, &Document::opened, this, &LivePanels::showNothing);
    connect(&m_document, &Document::changed, this, &LivePanels::showCircuit);
    connectPanels();
}

void LivePanels::connectPanels() {
    auto& [hookup, values, curves, readings, findings] = m_panels;
    connect(&values, &widgets::ValuePanel::gestureBegan, this,
            [this](int, PartSet set) { beginGesture(set); });
    connect(&values, &widgets::ValuePanel::gestureEnded, this, &LivePanels::endGesture);
    connect(&values, &widgets::ValuePanel::valueWished, this,
            [this](const circuit::ValueRef& which, double value, int) { wish(PartSet::A, which, value); });
    connect(&values, &widgets::ValuePanel::secondWished, this,
            [this](const circuit::ValueRef& which, double value, int) { wish(PartSet::B, which, value); });
    connect(&values, &widgets::ValuePanel::partActivated, &hookup,
            [&view = hookup](circuit::PartId part) { view.select(part); });
    connect(&hookup, &widgets::HookupView::partActivated, &values, &widgets::ValuePanel::showPart);
    connect(&findings, &widgets::FindingsView::placeActivated, this, &LivePanels::activate);
    connect(&curves, &widgets::CurvesView::momentMoved, this, &LivePanels::showGlow);
}

void LivePanels::setTheme(const widgets::Theme& theme) {
    m_panels.hookup.setTheme(theme);
    m_panels.values.setTheme(theme);
    m_panels.curves.setTheme(theme);
    m_panels.readings.setTheme(theme);
    m_panels.findings.setTheme(theme);
}

void LivePanels::beginGesture(PartSet set) {
    m_gesture = m_document.newGesture();
    m_gestureRevision = m_document.revision();
    if (m_shown && set == PartSet::A) showEcho({m_shown, &m_shown->curves}, false);
}

void LivePanels::endGesture() {
    m_gesture = 0;
    if (m_askedRoughly) ask();
    emit gestureOver();
}

void LivePanels::wish(PartSet set, const circuit::ValueRef& which, double value) {
    const circuit::Circuit& circuit = m_document.circuit();
    if (!circuit.find(which.part)) return;
    // Wishing for what is there already is no step to undo.
    const auto now = devices::effectiveValue(circuit, set, which.part, which.key);
    if (now && *now == circuit::Value(value)) return;
    const circuit::Edit edit = circuit::setValue(circuit, set, which.part, which.key, value);
    if (Result<void> done = m_document.apply(edit, m_gesture); !done) {
        m_panels.values.setCircuit(circuit, PartSet::A);
        emit refused(QString::fromStdString(done.fault().message()));
    }
}

/// Whether what is shown still holds: a part that is moved, or a value of Set B, asks for no run.
bool LivePanels::isShownAlready() const {
    if (!m_shown || m_run.isBusy() || m_askedRoughly) return false;
    return circuit::sameBoard(m_document.circuit(), m_asked, PartSet::A);
}

void LivePanels::ask() {
    if (isShownAlready()) return;
    m_asked = m_document.circuit();
    study::StudyRequest request;
    request.flashes = m_document.circuit().run.flashes;
    request.begin = m_document.circuit().run.begin;
    m_askedRoughly = m_gesture != 0;
    request.accuracy = m_askedRoughly ? dragAccuracy : fullAccuracy;
    m_run.request({m_document.circuit(), PartSet::A, request, m_document.revision()});
    if (!m_slow.isActive()) m_slow.start();
}

void LivePanels::showCircuit() {
    m_panels.hookup.setCircuit(m_document.circuit());
    m_panels.values.setCircuit(m_document.circuit(), PartSet::A);
    if (std::exchange(m_freshDrawing, false)) m_panels.hookup.startAfresh();
    if (m_document.circuit().parts().empty()) return showEmpty();
    ask();
}

void LivePanels::showNothing() {
    m_gesture = 0;
    m_freshFile = true;
    m_freshDrawing = true;
    m_shown.reset();
    clearEcho();
    // Nothing of the last file may stay: a part that was chosen, a text that was refused.
    m_panels.hookup.select({});
    m_panels.values.setCircuit({}, PartSet::A);
    m_panels.curves.setCurves(nullptr);
    m_panels.curves.setMessage({});
    m_panels.readings.setReadings(nullptr);
    m_panels.findings.setFindings({});
    m_panels.hookup.setGlow({});
}

/// Nothing is there to run: no faults are found in what has not been begun.
void LivePanels::showEmpty() {
    m_freshFile = true; // the first curves of what will be built are shown as those of a file
    m_shown.reset();
    clearEcho();
    m_slow.stop();
    m_panels.curves.setCurves(nullptr);
    m_panels.curves.setMessage(tr("Curves come with the first circuit: add parts, or open a file."));
    m_panels.readings.setReadings(nullptr);
    m_panels.findings.setFindings({});
    m_panels.hookup.setGlow({});
    emit reported({});
    emit studyShown();
}

bool LivePanels::isStale(const LiveRun::Outcome& outcome) const {
    if (outcome.revision == m_document.revision()) return false;
    // While a drag goes on, the picture of a moment ago is what makes it smooth; the last one follows at
    // once.
    return m_gesture == 0 || outcome.revision < m_gestureRevision;
}

void LivePanels::show(const LiveRun::Outcome& outcome) {
    if (!m_run.isBusy()) m_slow.stop();
    if (isStale(outcome)) return;
    if (outcome.study) {
        showStudy(outcome.study);
        emit reported(runReport(*outcome.study, outcome.took_ms));
    } else {
        const QString why = QString::fromStdString(outcome.fault.message());
        m_shown.reset();
        m_panels.curves.setCurves(nullptr);
        m_panels.curves.setMessage(why);
        m_panels.readings.setReadings(nullptr);
        m_panels.findings.setFindings({});
        emit reported(tr("No run: %1").arg(why));
    }
    showGlow();
    emit studyShown();
}

void LivePanels::showStudy(std::shared_ptr<const study::Study> study) {
    m_shown = std::move(study);
    m_panels.curves.setMessage(whyNoCurves(*m_shown));
    m_panels.curves.setCurves({m_shown, &m_shown->curves});
    m_panels.readings.setReadings({m_shown, &m_shown->readings});
    m_panels.findings.setFindings(m_shown->findings);
    if (!m_freshFile || m_shown->curves.time_s.empty()) return;
    m_freshFile = false;
    m_panels.curves.fit();
    m_panels.curves.setMoment(tellingMoment(*m_shown));
}

void LivePanels::showGlow() {
    m_panels.hookup.setGlow(m_shown ? glowAt(*m_shown, m_panels.curves.moment_s())
                                    : std::map<circuit::PartId, double>{});
}

void LivePanels::activate(const QString& place) {
    const std::string ref = place.section(u':', 0, 0).toStdString();
    const circuit::Part* part = m_document.circuit().findRef(ref);
    if (!part) return;
    m_panels.hookup.select(part->id);
    m_panels.values.showPart(part->id);
}

void LivePanels::clearEcho() {
    showEcho(nullptr, false);
}

void LivePanels::showEcho(std::shared_ptr<const engine::Curves> echo, bool ofSecond) {
    m_echo = std::move(echo);
    m_panels.curves.setEcho(m_echo, ofSecond);
    emit echoChanged(hasEcho());
}

} // namespace blinkwright::app
