#include "app/second_set.h"

#include "app/circuit_loading.h"
#include "core/circuit/set_edits.h"
#include "widgets/curves/curves_view.h"
#include "widgets/findings/findings_view.h"
#include "widgets/readings/readings_view.h"
#include "widgets/values/value_panel.h"

#include <QFile>
#include <QFileInfo>

namespace blinkwright::app {

using circuit::PartSet;

SecondSet::SecondSet(Document& document, LivePanels& live, const LivePanels::Panels& panels, QObject* parent)
    : QObject(parent), m_document(document), m_live(live), m_panels(panels) {
    // All of these come after the panels of Set A have heard of them.
    connect(&m_document, &Document::opened, this, &SecondSet::open);
    connect(&m_document, &Document::changed, this, [this] {
        showValues();
        follow(false);
    });
    connect(&m_live, &LivePanels::studyShown, this, [this] { follow(true); });
    connect(&m_live, &LivePanels::gestureOver, this, [this] { follow(false); });
    connect(&m_panels.values, &widgets::ValuePanel::gestureBegan, this,
            [this](int, PartSet set) { beginGesture(set); });
}

QString SecondSet::name() const {
    return m_other ? m_otherFile : tr("Set B");
}

QString SecondSet::brief() const {
    return m_other ? QFileInfo(m_otherFile).completeBaseName() : tr("B");
}

void SecondSet::open() {
    m_wantsB = m_usual || !circuit::setsAgree(m_document.circuit());
    showMode();
}

void SecondSet::showSetB(bool on) {
    if (on == m_wantsB) return;
    m_wantsB = on;
    if (!m_other) showMode();
}

Result<void> SecondSet::compareWith(const QString& path) {
    const QFileInfo file(path);
    Result<circuit::Circuit> read = loadCircuit(QFile::encodeName(file.absoluteFilePath()).toStdString());
    if (!read) return read.fault();
    m_other = std::move(read).value();
    m_otherFile = file.fileName();
    showMode();
    return {};
}

void SecondSet::stopComparing() {
    if (!m_other) return;
    m_other.reset();
    showMode();
}

/// Something else is to be shown from here on, or nothing.
void SecondSet::showMode() {
    m_oldest = ++m_ticket;
    m_asked.reset();
    m_panels.values.hideSecond();
    put(nullptr, false);
    showValues();
    follow(false);
}

void SecondSet::showValues() {
    if (isShown()) m_panels.values.showSecond(circuit(), set(), name(), comparesFile());
}

/// @param pictureCame Set A's is on the screen; until then the second set waits, so that it slows no picture.
void SecondSet::follow(bool pictureCame) {
    if (!isShown()) return;
    if (!pictureCame && m_live.isBusy()) return;
    if (circuit().parts().empty()) return put(nullptr, false);
    if (!m_other && circuit::setsAgree(m_document.circuit())) {
        m_oldest = ++m_ticket;
        m_asked.reset();
        return put(m_live.shown(), false);
    }
    circuit::Circuit wanted = circuit();
    wanted.run = m_document.circuit().run;
    const bool fineEnough = !m_askedRoughly || m_live.inGesture();
    if (m_asked && fineEnough && circuit::sameBoard(*m_asked, wanted, set())) return;
    ask(wanted);
}

void SecondSet::ask(const circuit::Circuit& wanted) {
    if (!m_run) {
        m_run = std::make_unique<LiveRun>(&study::study);
        connect(m_run.get(), &LiveRun::finished, this, &SecondSet::take);
    }
    m_asked = wanted;
    m_askedRoughly = m_live.inGesture();
    study::StudyRequest request;
    request.flashes = wanted.run.flashes;
    request.begin = wanted.run.begin;
    request.accuracy = m_askedRoughly ? LivePanels::dragAccuracy : LivePanels::fullAccuracy;
    m_run->request({wanted, set(), request, ++m_ticket});
}

void SecondSet::take(const LiveRun::Outcome& outcome) {
    // While a drag goes on, the picture of a moment ago is what makes it smooth.
    const bool stale = outcome.revision < m_oldest || (outcome.revision != m_ticket && !m_live.inGesture());
    if (stale || !isShown()) return;
    put(outcome.study, true);
    if (!outcome.study)
        emit said(tr("No run of %1: %2").arg(name(), QString::fromStdString(outcome.fault.message())));
}

void SecondSet::put(std::shared_ptr<const study::Study> study, bool apart) {
    m_shown = std::move(study);
    m_apart = apart && m_shown;
    const QString shownName = isShown() ? name() : QString();
    if (m_apart)
        m_panels.curves.setSecond({m_shown, &m_shown->curves}, shownName, brief());
    else
        m_panels.curves.setSecond(nullptr);
    if (m_shown) {
        m_panels.readings.setSecond({m_shown, &m_shown->readings}, shownName);
        m_panels.findings.setSecond(m_shown->findings, shownName);
    } else {
        m_panels.readings.setSecond(nullptr, shownName);
        m_panels.findings.setSecond({}, {});
    }
    emit changed();
}

void SecondSet::beginGesture(PartSet set) {
    if (set == PartSet::B && m_shown) m_live.showEcho({m_shown, &m_shown->curves}, true);
}

} // namespace blinkwright::app
