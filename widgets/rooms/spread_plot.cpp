#include "widgets/rooms/spread_plot.h"

#include "widgets/curves/axis_scale.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr std::size_t leastBars = 10, mostBars = 60;
constexpr qsizetype mostSteps = 600; ///< of the cumulative curve
constexpr double sideRoom = 0.04;

} // namespace

SpreadPlot::SpreadPlot(Use use, QWidget* parent)
    : RoomPlot(use, parent), m_values(QSharedPointer<ScaleTicker>::create()) {
    setObjectName(QStringLiteral("spread plot"));
    setAccessibleName(tr("Spread"));
    setWhatsThis(tr("How many boards have which figure, as bars; the line says how many per cent lie up to "
                    "there. Marks show "
                    "the nominal board and the worst case."));
    xAxis->setTicker(m_values);
    m_values->setTickCount(6);
    yAxis->setLabel(tr("Boards"));
    yAxis2->setVisible(true);
    yAxis2->setLabel(tr("Boards up to here (%)"));
    yAxis2->setRange(0, 100 * 1.12);
    yAxis2->grid()->setVisible(false);
    restyle();
}

void SpreadPlot::setFigure(SpreadFigureView figure, circuit::PartSet set) {
    m_figure = std::move(figure);
    m_set = set;
    setMessage({});
    draw();
    replot(rpQueuedReplot);
}

void SpreadPlot::clear() {
    m_figure.reset();
    draw();
    replot(rpQueuedReplot);
}

std::unique_ptr<RoomPlot> SpreadPlot::forPage() const {
    auto page = std::make_unique<SpreadPlot>(Use::page);
    if (m_figure) page->setFigure(*m_figure, m_set);
    return page;
}

void SpreadPlot::restyle() {
    RoomPlot::restyle();
    // Numbers of the right axis stand outside; the common right margin is for plots without one.
    axisRect()->setMinimumMargins(QMargins(0, 2 * lineHeight() + 2, 4, 0));
    draw();
}

void SpreadPlot::draw() {
    clearPlottables();
    m_bars.clear();
    xAxis->setVisible(m_figure.has_value());
    yAxis->setVisible(m_figure.has_value());
    yAxis2->setVisible(m_figure.has_value());
    if (!m_figure || m_figure->values.empty()) return;
    std::vector<double> sorted = m_figure->values;
    std::sort(sorted.begin(), sorted.end());
    const auto& statistics = m_figure->statistics;
    const double low = std::min(statistics.worstLow, sorted.front());
    const double high = std::max(statistics.worstHigh, sorted.back());
    const double span = high > low ? high - low : std::max(std::abs(high) * 0.02, 1e-12);

    const auto wanted = static_cast<std::size_t>(std::sqrt(static_cast<double>(sorted.size())));
    const std::size_t count = std::clamp(wanted, leastBars, mostBars);
    const bool alike = !(sorted.back() > sorted.front());
    m_barFrom = alike ? sorted.front() - span / 2 : sorted.front();
    m_barWidth = (alike ? span : sorted.back() - sorted.front()) / static_cast<double>(count);
    m_bars.assign(count, 0);
    for (const double value : sorted)
        ++m_bars[std::min(count - 1, static_cast<std::size_t>((value - m_barFrom) / m_barWidth))];

    auto* bars = new QCPBars(xAxis, yAxis); // the plot's
    bars->setWidthType(QCPBars::wtPlotCoords);
    bars->setWidth(m_barWidth);
    bars->setPen(QPen(theme().paper, 1));
    bars->setBrush(theme().echo(colour()));
    QVector<double> at, heights;
    for (std::size_t k = 0; k < count; ++k) {
        at << m_barFrom + (static_cast<double>(k) + 0.5) * m_barWidth;
        heights << static_cast<double>(m_bars[k]);
    }
    bars->setData(at, heights, true);

    QVector<double> x, share;
    const auto boards = static_cast<qsizetype>(sorted.size());
    const qsizetype steps = std::min(boards, mostSteps);
    for (qsizetype k = 0; k < steps; ++k) {
        const qsizetype board = steps > 1 ? k * (boards - 1) / (steps - 1) : 0;
        x << sorted[static_cast<std::size_t>(board)];
        share << 100.0 * static_cast<double>(board + 1) / static_cast<double>(boards);
    }
    QCPGraph* curve = addGraph(xAxis, yAxis2);
    curve->setPen(QPen(colour(), 2 * theme().stroke));
    curve->setData(x, share, true);

    xAxis->setRange(low - sideRoom * span, high + sideRoom * span);
    const long most = *std::ranges::max_element(m_bars);
    yAxis->setRange(0,
                    1.12 * static_cast<double>(most)); // like the other axis: heads stand below the captions
    m_values->scale = m_figure->isShare() ? AxisScale{QStringLiteral("%"), QString(), 0.01}
                      : m_figure->kind == SpreadFigureView::Kind::period ? AxisScale::ofTime(high)
                      : m_figure->kind == SpreadFigureView::Kind::rate && high < 1
                          ? AxisScale::of(1, m_figure->unit)
                          : AxisScale::of(high, m_figure->unit);
    xAxis->setLabel(QStringLiteral("%1 (%2)").arg(m_figure->name, m_values->scale.unitText()));
}

void SpreadPlot::paintOver(QCPPainter& painter) {
    if (!m_figure) return;
    const QRectF room = axisRect()->rect();
    // Keys stand in the upper of two rows, the marks' words in the lower.
    painter.save();
    painter.translate(0, -lineHeight());
    paintKeys(
        painter, axisRect(),
        {{tr("Boards"), theme().echo(colour()), Qt::SolidLine, true}, {tr("Boards up to here"), colour()}});
    painter.restore();
    struct Line {
        double value;
        QString words;
        QColor colour;
        Qt::PenStyle style;
    };
    const auto& s = m_figure->statistics;
    // The first ones find room first.
    const std::vector<Line> lines{{s.nominal, tr("nominal"), theme().ink, Qt::SolidLine},
                                  {s.worstLow, tr("worst"), theme().fault, Qt::SolidLine},
                                  {s.worstHigh, tr("worst"), theme().fault, Qt::SolidLine},
                                  {s.p5, tr("5 %"), theme().quietInk, Qt::DashLine},
                                  {s.p95, tr("95 %"), theme().quietInk, Qt::DashLine}};
    std::vector<QRectF> taken;
    for (const Line& line : lines) {
        const double x = xAxis->coordToPixel(line.value);
        painter.setPen(QPen(line.colour, 1.2 * theme().stroke, line.style));
        painter.drawLine(QPointF(x, room.top()), QPointF(x, room.bottom()));
        QRectF box = wordsRect(line.words);
        box.moveCenter({x, room.top() - lineHeight() / 2.0 - 1});
        box.moveLeft(std::clamp(box.left(), room.left(), room.right() - box.width()));
        for (const QRectF& other : taken) // beside the one that has the room, if that is still near
            if (other.intersects(box))
                box.moveLeft(x < other.center().x() ? other.left() - box.width() : other.right());
        const auto meets = [&](const QRectF& other) { return other.adjusted(1, 0, -1, 0).intersects(box); };
        if (std::ranges::any_of(taken, meets) || std::abs(box.center().x() - x) > 40) continue;
        taken.push_back(box);
        painter.setPen(line.colour);
        painter.drawText(box, Qt::AlignCenter, line.words);
    }
}

} // namespace blinkwright::widgets
