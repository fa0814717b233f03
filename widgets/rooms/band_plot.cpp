#include "widgets/rooms/band_plot.h"

#include "widgets/curves/axis_scale.h"
#include "widgets/curves/curve_colours.h"

#include <algorithm>

namespace blinkwright::widgets {

BandPlot::BandPlot(Use use, QWidget* parent)
    : RoomPlot(use, parent), m_upper(axisRect()), m_lower(new QCPAxisRect(this)),
      m_time(QSharedPointer<ScaleTicker>::create()), m_volts(QSharedPointer<ScaleTicker>::create()),
      m_amperes(QSharedPointer<ScaleTicker>::create()) {
    setObjectName(QStringLiteral("band plot"));
    setAccessibleName(tr("Band of curves"));
    setWhatsThis(tr("Between which voltages the curves of most boards run at each time, around those of the "
                    "nominal board."));
    plotLayout()->addElement(1, 0, m_lower);
    auto* margins = new QCPMarginGroup(this);
    for (QCPAxisRect* rect : {m_upper, m_lower}) {
        rect->setMarginGroup(QCP::msLeft, margins);
        rect->axis(QCPAxis::atBottom)->setTicker(m_time);
        rect->axis(QCPAxis::atLeft)->grid()->setLayer(QStringLiteral("grid"));
        rect->axis(QCPAxis::atBottom)->grid()->setLayer(QStringLiteral("grid"));
    }
    m_upper->axis(QCPAxis::atBottom)->setTickLabels(false);
    m_upper->axis(QCPAxis::atLeft)->setTicker(m_volts);
    m_lower->axis(QCPAxis::atLeft)->setTicker(m_amperes);
    m_time->setTickCount(7);
    m_volts->setTickCount(4);
    m_amperes->setTickCount(4);
    restyle();
}

void BandPlot::setBand(std::shared_ptr<const study::Band> band, circuit::PartSet set) {
    m_band = std::move(band);
    m_set = set;
    if (m_band) setMessage({});
    draw();
    replot(rpQueuedReplot);
}

std::unique_ptr<RoomPlot> BandPlot::forPage() const {
    auto page = std::make_unique<BandPlot>(Use::page);
    page->setBand(m_band, m_set);
    return page;
}

void BandPlot::restyle() {
    RoomPlot::restyle();
    draw();
}

std::vector<QColor> BandPlot::lampColours() const {
    std::vector<std::string> names;
    for (const study::BandCurve& lamp : m_band->lamps) names.push_back(lamp.colour);
    return lampCurveColours(theme(), names);
}

void BandPlot::drawBand(QCPAxisRect* rect, const study::BandCurve& curve, const QColor& colour) {
    QCPAxis *time = rect->axis(QCPAxis::atBottom), *value = rect->axis(QCPAxis::atLeft);
    const QVector<double> t(m_band->time_s.begin(), m_band->time_s.end());
    const auto add = [&](const std::vector<double>& list, const QPen& pen) {
        QCPGraph* graph = addGraph(time, value);
        graph->setPen(pen);
        graph->setData(t, QVector<double>(list.begin(), list.end()), true);
        return graph;
    };
    QCPGraph* low = add(curve.p5, Qt::NoPen);
    QCPGraph* high = add(curve.p95, Qt::NoPen);
    QColor see(colour);
    see.setAlphaF(0.32F); // bands of two lamps lie over each other
    high->setBrush(see);
    high->setChannelFillGraph(low);
}

void BandPlot::drawNominal(QCPAxisRect* rect, const study::BandCurve& curve, const QColor& colour) {
    QCPGraph* graph = addGraph(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
    graph->setPen(QPen(colour, 1.6 * theme().stroke));
    graph->setData(QVector<double>(m_band->time_s.begin(), m_band->time_s.end()),
                   QVector<double>(curve.nominal.begin(), curve.nominal.end()), true);
}

void BandPlot::draw() {
    clearGraphs();
    const bool any = m_band && !m_band->time_s.empty();
    for (QCPAxisRect* rect : {m_upper, m_lower})
        for (const auto side : {QCPAxis::atLeft, QCPAxis::atBottom}) rect->axis(side)->setVisible(any);
    if (!any) return;
    const auto rangeOf = [](QCPAxisRect* rect, double low, double high) {
        const double room = 0.06 * std::max(high - low, 1e-9);
        rect->axis(QCPAxis::atLeft)->setRange(low - room, high + room);
    };
    const study::BandCurve& volts = m_band->capacitor_V;
    const QColor own = m_set == circuit::PartSet::A ? theme().setA : theme().setB;
    drawBand(m_upper, volts, own);
    drawNominal(m_upper, volts, own);
    double high = *std::ranges::max_element(volts.p95);
    rangeOf(m_upper, 0, high);
    m_volts->scale = AxisScale::of(high, units::Unit::volt);
    m_upper->axis(QCPAxis::atLeft)
        ->setLabel(QStringLiteral("%1 (%2)").arg(tr("Capacitor"), m_volts->scale.unitText()));
    const std::vector<QColor> colours = lampColours();
    double low = 0;
    high = 0;
    for (std::size_t l = 0; l < m_band->lamps.size(); ++l) {
        drawBand(m_lower, m_band->lamps[l], colours[l]);
        low = std::min(low, *std::ranges::min_element(m_band->lamps[l].p5));
        high = std::max(high, *std::ranges::max_element(m_band->lamps[l].p95));
    }
    for (std::size_t l = 0; l < m_band->lamps.size(); ++l) drawNominal(m_lower, m_band->lamps[l], colours[l]);
    rangeOf(m_lower, low, high > 0 ? high : 1e-3);
    m_amperes->scale = AxisScale::of(high > 0 ? high : 1e-3, units::Unit::ampere);
    m_lower->axis(QCPAxis::atLeft)
        ->setLabel(QStringLiteral("%1 (%2)").arg(tr("Lamps"), m_amperes->scale.unitText()));
    m_time->scale = AxisScale::ofTime(m_band->time_s.back());
    for (QCPAxisRect* rect : {m_upper, m_lower})
        rect->axis(QCPAxis::atBottom)->setRange(0, m_band->time_s.back());
    m_lower->axis(QCPAxis::atBottom)
        ->setLabel(tr("Time from the rise of the output (%1)").arg(m_time->scale.unitText()));
}

void BandPlot::paintOver(QCPPainter& painter) {
    if (!m_band || m_band->time_s.empty()) return;
    const QColor own = m_set == circuit::PartSet::A ? theme().setA : theme().setB;
    paintKeys(painter, m_upper,
              {{tr("nominal board"), own},
               {tr("9 of 10 boards, moment by moment"), theme().echo(own), Qt::SolidLine, true}});
    std::vector<Key> lamps;
    const std::vector<QColor> colours = lampColours();
    for (std::size_t l = 0; l < m_band->lamps.size(); ++l)
        lamps.push_back({QString::fromStdString(m_band->lamps[l].ref), colours[l]});
    paintKeys(painter, m_lower, lamps);
}

} // namespace blinkwright::widgets
