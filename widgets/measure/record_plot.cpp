#include "widgets/measure/record_plot.h"

#include "core/circuit/measurement.h"
#include "widgets/curves/axis_scale.h"
#include "widgets/measure/record_preview.h"

#include <algorithm>

namespace blinkwright::widgets {

using circuit::TraceOf;

namespace {

constexpr double edgeRoom = 0.08;
constexpr qreal markSize = 4.5;
constexpr std::size_t marksAtFirst = 40;
constexpr double zoomStep = 1.5;
constexpr double wholeAsDrawn = 0.999;
constexpr double pixelsAMark = 9; ///< closer than this, marks would run into one another

} // namespace

RecordPlot::RecordPlot(Use use, QWidget* parent)
    : RoomPlot(use, parent), m_time(QSharedPointer<ScaleTicker>::create()),
      m_volts(QSharedPointer<ScaleTicker>::create()) {
    setObjectName(QStringLiteral("record plot"));
    setAccessibleName(tr("The record"));
    setWhatsThis(tr("The voltages as they were read, with the levels and switchings that were found in them. "
                    "The wheel or + "
                    "and - zoom, the arrows pan, Home shows all."));
    xAxis->setTicker(m_time);
    yAxis->setTicker(m_volts);
    m_time->setTickCount(6);
    m_volts->setTickCount(4);
    if (use == Use::screen) {
        setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
        axisRect()->setRangeDrag(Qt::Horizontal);
        axisRect()->setRangeZoom(Qt::Horizontal);
    }
    connect(xAxis, qOverload<const QCPRange&>(&QCPAxis::rangeChanged), this, &RecordPlot::keepWithin);
    restyle();
}

void RecordPlot::setRecord(std::shared_ptr<const circuit::Record> record) {
    m_record = std::move(record);
    if (m_record) setMessage({});
    draw();
    if (m_record && m_record->time_s.size() > 1) showFirst();
    replot(rpQueuedReplot);
}

void RecordPlot::showFirst() {
    const auto& times = m_record->switchings_s;
    const double begin = m_record->time_s.front();
    const bool long_ = use() == Use::screen && times.size() > marksAtFirst;
    xAxis->setRange(begin, long_ ? times[marksAtFirst] : m_record->time_s.back());
}

void RecordPlot::keepWithin(const QCPRange& range) {
    if (!m_record || m_record->time_s.size() < 2) return;
    const double first = m_record->time_s.front(), last = m_record->time_s.back();
    const double span = std::clamp(range.size(), std::min(2 * m_record->step_s, last - first), last - first);
    const double low = std::clamp(range.lower, first, last - span);
    if (low != range.lower || low + span != range.upper) {
        const QSignalBlocker quiet(xAxis);
        xAxis->setRange(low, low + span);
    }
    m_time->scale = AxisScale::ofTime(std::max(std::abs(low), std::abs(low + span)));
    QString label = (m_record->fromPowerOn ? tr("Time from power-on (%1)") : tr("Time (%1)"))
                        .arg(m_time->scale.unitText());
    if (span < (last - first) * wholeAsDrawn) label += tr("; Home shows all of it");
    xAxis->setLabel(label);
}

void RecordPlot::keyPressEvent(QKeyEvent* event) {
    if (!m_record || m_record->time_s.size() < 2) return RoomPlot::keyPressEvent(event);
    const QCPRange range = xAxis->range();
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right:
        xAxis->setRange(range + (event->key() == Qt::Key_Left ? -1 : 1) * range.size() / 4);
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        xAxis->scaleRange(1 / zoomStep);
        break;
    case Qt::Key_Minus:
        xAxis->scaleRange(zoomStep);
        break;
    case Qt::Key_Home:
        xAxis->setRange(m_record->time_s.front(), m_record->time_s.back());
        break;
    default:
        return RoomPlot::keyPressEvent(event);
    }
    replot(rpQueuedReplot);
}

std::size_t RecordPlot::marksWithin(const QCPRange& range) const {
    const auto& times = m_record->switchings_s;
    return static_cast<std::size_t>(std::ranges::upper_bound(times, range.upper) -
                                    std::ranges::lower_bound(times, range.lower));
}

std::unique_ptr<RoomPlot> RecordPlot::forPage() const {
    auto page = std::make_unique<RecordPlot>(Use::page);
    page->setRecord(m_record);
    return page;
}

void RecordPlot::restyle() {
    RoomPlot::restyle();
    draw();
}

QColor RecordPlot::colourOf(TraceOf of) const {
    return of == TraceOf::output      ? theme().measured
           : of == TraceOf::capacitor ? theme().level
                                      : theme().quietInk;
}

void RecordPlot::draw() {
    clearGraphs();
    const bool any = m_record && m_record->time_s.size() > 1;
    for (QCPAxis* axis : {xAxis, yAxis}) axis->setVisible(any);
    if (!any) return;
    const QVector<double> time(m_record->time_s.begin(), m_record->time_s.end());
    double low = 0, high = 0;
    for (const circuit::Trace& trace : m_record->traces) {
        QCPGraph* graph = addGraph();
        graph->setPen(QPen(colourOf(trace.of), 1));
        graph->setData(time, QVector<double>(trace.values_V.begin(), trace.values_V.end()), true);
        const auto [least, most] = std::ranges::minmax(trace.values_V);
        low = std::min(low, least);
        high = std::max(high, most);
    }
    const double room = edgeRoom * std::max(high - low, 1e-9);
    yAxis->setRange(low - room, high + room);
    m_volts->scale = AxisScale::of(std::max(high, -low), units::Unit::volt);
    yAxis->setLabel(QStringLiteral("%1 (%2)").arg(tr("Voltage"), m_volts->scale.unitText()));
}

void RecordPlot::paintOver(QCPPainter& painter) {
    if (!m_record || m_record->time_s.size() < 2) return;
    std::vector<Key> keys;
    for (const circuit::Trace& trace : m_record->traces)
        keys.push_back({traceText(trace.of), colourOf(trace.of)});
    const auto count = static_cast<double>(marksWithin(xAxis->range()));
    if (count > 0 && axisRect()->width() >= pixelsAMark * count) {
        paintMarks(painter);
        keys.push_back({tr("switching"), theme().accent, Qt::SolidLine, true});
    }
    paintKeys(painter, axisRect(), keys);
}

/// Discs where the trace crosses the middle of its levels; of a capacitor alone, on the level where it turns.
void RecordPlot::paintMarks(QCPPainter& painter) const {
    if (!m_record->levels) return;
    const bool output =
        std::ranges::find(m_record->traces, TraceOf::output, &circuit::Trace::of) != m_record->traces.end();
    painter.save();
    painter.setClipRect(axisRect()->rect().adjusted(-5, -5, 5, 5));
    painter.setPen(QPen(theme().paper, 1));
    painter.setBrush(theme().accent);
    bool rise = m_record->firstRises;
    for (const double time : m_record->switchings_s) {
        const circuit::Levels& levels = *m_record->levels;
        const double volts = output ? (levels.high_V + levels.low_V) / 2
                             : rise ? levels.low_V
                                    : levels.high_V;
        painter.drawEllipse(QPointF(xAxis->coordToPixel(time), yAxis->coordToPixel(volts)), markSize,
                            markSize);
        rise = !rise;
    }
    painter.restore();
}

} // namespace blinkwright::widgets
