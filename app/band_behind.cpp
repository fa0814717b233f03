#include "app/band_behind.h"

#include "core/circuit/set_edits.h"
#include "widgets/curves/curves_view.h"

#include <QAction>
#include <QMenu>
#include <algorithm>

namespace blinkwright::app {

namespace {

constexpr int boards = 200;
constexpr int pointsACycle = 200, fewestPoints = 480, mostPoints = 6000;

int pointsFor(int flashes) {
    return std::clamp(flashes * pointsACycle, fewestPoints, mostPoints);
}

} // namespace

BandBehind::BandBehind(Document& document, LivePanels& live, widgets::CurvesView& curves, Settings& settings,
                       QObject* parent)
    : QObject(parent), m_document(document), m_live(live), m_curves(curves), m_settings(settings),
      m_wanted(settings.bandShown()) {
    connect(&m_document, &Document::changed, this, &BandBehind::follow);
    connect(&m_live, &LivePanels::studyShown, this, &BandBehind::ask);
    connect(&m_live, &LivePanels::gestureOver, this, &BandBehind::ask);
}

void BandBehind::addToViewMenu(QMenu* menu) {
    QAction* show = menu->addAction(tr("Band o&f boards behind the curves"));
    show->setObjectName(QStringLiteral("band"));
    show->setToolTip(tr("Where 9 of 10 boards lie whose parts are anywhere within their tolerances"));
    show->setWhatsThis(
        tr("Shades where 9 of 10 boards lie whose parts are anywhere within their tolerances. Boards are "
           "simulated for it after each change."));
    show->setShortcut(QKeySequence(tr("Ctrl+Shift+H")));
    show->setCheckable(true);
    show->setChecked(m_wanted);
    connect(show, &QAction::triggered, this, &BandBehind::want);
}

void BandBehind::want(bool on) {
    m_wanted = on;
    m_settings.setBandShown(on);
    m_task.cancel();
    put(nullptr);
    if (on) ask();
}

/// A band of another board must not stand behind these curves.
void BandBehind::follow() {
    if (!m_shown && !m_task.isBusy()) return;
    const bool same = circuit::sameBoard(m_asked, m_document.circuit(), circuit::PartSet::A) &&
                      m_asked.run == m_document.circuit().run && m_asked.reels == m_document.circuit().reels;
    if (same) return;
    m_task.cancel();
    put(nullptr);
}

void BandBehind::ask() {
    const auto study = m_live.shown();
    if (!m_wanted || m_shown || m_task.isBusy() || m_live.inGesture() || !study) return;
    if (study->curves.time_s.empty()) return;
    m_asked = m_document.circuit();
    study::BandRequest request{.boards = boards, .points = pointsFor(m_asked.run.flashes)};
    request.begin = m_asked.run.begin;
    request.span_s = study->curves.time_s.back();
    m_task.start([this, circuit = m_asked, request](const std::atomic<bool>& cancel) -> NewestTask::Answer {
        study::BandRequest own = request;
        own.cancel = &cancel;
        Result<study::Band> band = study::band(circuit, circuit::PartSet::A, own);
        if (band && band.value().cancelled) return [] {};
        return [this, band = std::move(band)] {
            if (!band) return emit said(QString::fromStdString(band.fault().message()));
            if (band.value().time_s.empty() || !band.value().reason.empty())
                return emit said(tr("No band: %1").arg(QString::fromStdString(band.value().reason)));
            put(std::make_shared<const study::Band>(band.value()));
        };
    });
}

void BandBehind::put(std::shared_ptr<const study::Band> band) {
    if (!band && !m_shown) return;
    m_shown = std::move(band);
    m_curves.setBand(m_shown);
    emit changed();
}

} // namespace blinkwright::app
