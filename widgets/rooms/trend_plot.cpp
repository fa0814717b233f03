#include "widgets/rooms/trend_plot.h"

#include "widgets/curves/axis_scale.h"
#include "widgets/rooms/ratio_ticker.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::widgets {

using circuit::PartSet;

namespace {

constexpr double curveWidth = 2, underneath = 5; ///< the wider one of two curves that are the same
constexpr double ratiosFrom = 12; ///< largest figure over smallest, from where equal ratios show more
constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

/// The sets are told apart by more than their colours.
Qt::PenStyle styleOf(PartSet set) {
    return set == PartSet::B ? Qt::DashLine : Qt::SolidLine;
}

QSharedPointer<QCPAxisTicker> tickerOf(const QSharedPointer<RatioTicker>& ratios,
                                       const QSharedPointer<ScaleTicker>& steps, bool even) {
    if (even) return steps;
    return ratios;
}

} // namespace

TrendPlot::TrendPlot(Use use, QWidget* parent)
    : RoomPlot(use, parent), m_valueRatios(QSharedPointer<RatioTicker>::create()),
      m_figureRatios(QSharedPointer<RatioTicker>::create()),
      m_valueSteps(QSharedPointer<ScaleTicker>::create()),
      m_figureSteps(QSharedPointer<ScaleTicker>::create()) {
    setObjectName(QStringLiteral("trend plot"));
    setAccessibleName(tr("Trend"));
    setWhatsThis(tr("The figure over the value. The upright line stands at the present value: drag it, or "
                    "move it by the arrow "
                    "keys, Page Up and Page Down, Home and End; the circuit follows."));
    setMouseTracking(true);
    m_quiet.setSingleShot(true);
    constexpr int quiet_ms = 600; // as in the rows of Values
    m_quiet.setInterval(quiet_ms);
    connect(&m_quiet, &QTimer::timeout, this, &TrendPlot::endGesture);
    restyle();
}

void TrendPlot::setPicture(TrendPicture picture) {
    const PartSet held = m_picture.held;
    m_picture = std::move(picture);
    if (inGesture()) m_picture.held = held;
    setMessage({});
    layOutAxes();
    drawCurves();
    replot(rpQueuedReplot);
}

void TrendPlot::clear() {
    endGesture();
    m_picture = {};
    drawCurves();
    replot(rpQueuedReplot);
}

void TrendPlot::setPresent(PartSet set, double value) {
    TrendLine* line = lineOf(set);
    if (!line || line->present == value) return;
    line->present = value;
    replot(rpQueuedReplot);
}

void TrendPlot::setHeld(PartSet set) {
    if (std::exchange(m_picture.held, set) != set) replot(rpQueuedReplot);
}

std::unique_ptr<RoomPlot> TrendPlot::forPage() const {
    auto page = std::make_unique<TrendPlot>(Use::page);
    page->setPicture(m_picture);
    return page;
}

TrendLine* TrendPlot::lineOf(PartSet set) {
    const auto found = std::ranges::find(m_picture.lines, set, &TrendLine::set);
    return found == m_picture.lines.end() ? nullptr : &*found;
}

QColor TrendPlot::colourOf(PartSet set) const {
    return set == PartSet::A ? theme().setA : theme().setB;
}

double TrendPlot::xOf(double value) const {
    return xAxis->coordToPixel(value);
}

QPointF TrendPlot::handleAt(PartSet set) const {
    for (const TrendLine& line : m_picture.lines) {
        if (line.set != set) continue;
        const auto figure = figureAt(line, m_picture.figure, m_picture.range, line.present);
        const double y = figure ? yAxis->coordToPixel(*figure) : axisRect()->bottom() - 8;
        return {xOf(line.present), y};
    }
    return {};
}

void TrendPlot::restyle() {
    RoomPlot::restyle();
    drawCurves();
}

void TrendPlot::layOutAxes() {
    const auto& [value, range, figure, lines, held, marks] = m_picture;
    double low = std::numeric_limits<double>::infinity(), high = -low;
    const auto take = [&](const std::optional<double>& y) {
        if (!y || !std::isfinite(*y)) return;
        low = std::min(low, *y);
        high = std::max(high, *y);
    };
    for (const TrendLine& line : lines)
        for (const study::TrendPoint& point : line.trend->points) {
            take(figureOf(figure, point));
            take(textbookOf(figure, point));
        }
    if (!(low <= high)) low = 0, high = 1;
    const bool even = figure.isShare() || !(low > 0) || high < ratiosFrom * low;

    xAxis->setScaleType(range.even ? QCPAxis::stLinear : QCPAxis::stLogarithmic);
    yAxis->setScaleType(even ? QCPAxis::stLinear : QCPAxis::stLogarithmic);
    xAxis->setTicker(tickerOf(m_valueRatios, m_valueSteps, range.even));
    yAxis->setTicker(tickerOf(m_figureRatios, m_figureSteps, even));
    xAxis->setRange(range.from, range.to);
    if (even) {
        const double room = high > low ? 0.06 * (high - low) : 0.1 * std::max(std::abs(high), 1e-12);
        // Figures that come near to nothing are shown down to nothing, so that heights compare.
        low = low >= 0 && low < 0.4 * high ? 0 : low - room;
        yAxis->setRange(low, high + room);
    } else {
        const double room = std::pow(high / low, 0.06);
        yAxis->setRange(low / room, high * room);
    }
    const auto percent = AxisScale{QStringLiteral("%"), QString(), 0.01};
    m_valueRatios->unit = value.unit;
    m_figureRatios->unit = figure.unit;
    m_valueSteps->scale = value.isSetting()
                              ? percent
                              : AxisScale::of(std::max(std::abs(range.from), std::abs(range.to)), value.unit);
    const bool plain = figure.kind == TrendFigure::Kind::rate;
    m_figureSteps->scale = figure.isShare()                           ? percent
                           : figure.kind == TrendFigure::Kind::period ? AxisScale::ofTime(high)
                           : plain && high < 1                        ? AxisScale::of(1, figure.unit)
                                                                      : AxisScale::of(high, figure.unit);
    m_valueSteps->setTickCount(6);
    m_figureSteps->setTickCount(6);
    const auto labelled = [](const QString& name, const QString& unit) {
        return unit.isEmpty() ? name : QStringLiteral("%1 (%2)").arg(name, unit);
    };
    xAxis->setLabel(range.even ? labelled(value.name, m_valueSteps->scale.unitText()) : value.name);
    yAxis->setLabel(even ? labelled(figure.name, m_figureSteps->scale.unitText()) : figure.name);
}

void TrendPlot::drawCurves() {
    clearGraphs();
    const bool coincide = setsCoincide();
    for (auto at = m_picture.lines.rbegin(); at != m_picture.lines.rend(); ++at) {
        const TrendLine& line = *at;
        QVector<double> x, simulated, book;
        for (const study::TrendPoint& point : line.trend->points) {
            x << point.value;
            simulated << figureOf(m_picture.figure, point).value_or(nothing);
            book << textbookOf(m_picture.figure, point).value_or(nothing);
        }
        QCPGraph* formula = addGraph();
        formula->setPen(QPen(colourOf(line.set), 1.5 * theme().stroke, Qt::DotLine));
        formula->setData(x, book, true);
        QCPGraph* curve = addGraph();
        const bool below = coincide && at == m_picture.lines.rbegin();
        curve->setPen(QPen(colourOf(line.set), (below ? underneath : curveWidth) * theme().stroke,
                           below ? Qt::SolidLine : styleOf(line.set)));
        curve->setData(x, simulated, true);
    }
}

bool TrendPlot::setsCoincide() const {
    if (m_picture.lines.size() < 2) return false;
    const auto& a = m_picture.lines[0].trend->points;
    const auto& b = m_picture.lines[1].trend->points;
    return std::ranges::equal(a, b, [&](const auto& p, const auto& q) {
        const auto x = figureOf(m_picture.figure, p), y = figureOf(m_picture.figure, q);
        return x.has_value() == y.has_value() && (!x || std::abs(*x - *y) <= 1e-3 * std::abs(*x));
    });
}

bool TrendPlot::isClear(const QRectF& box, const std::vector<QRectF>& taken) const {
    constexpr int looks = 9;
    if (std::ranges::any_of(taken, [&](const QRectF& other) { return other.intersects(box); })) return false;
    for (const TrendLine& line : m_picture.lines) {
        const double x = xOf(line.present);
        if (x > box.left() - 2 && x < box.right() + 2) return false;
        for (int k = 0; k < looks; ++k) {
            const double value = xAxis->pixelToCoord(box.left() + box.width() * k / (looks - 1));
            const auto y = figureAt(line, m_picture.figure, m_picture.range, value);
            if (!y) continue;
            const double at = yAxis->coordToPixel(*y);
            if (at > box.top() - 3 && at < box.bottom() + 3) return false;
        }
    }
    return true;
}

QRectF TrendPlot::placeBeside(const QPointF& at, const QRectF& size, std::vector<QRectF>& taken) const {
    constexpr double gap = 11, step = 9;
    const QRectF room = QRectF(axisRect()->rect()).adjusted(1, 1, -1, -1);
    QRectF first;
    const int places = static_cast<int>(std::ceil((room.height() - gap) / step));
    for (int k = 0; k < places; ++k) {
        const double off = gap + k * step;
        for (const double side : {1.0, -1.0})
            for (const double up : {-1.0, 1.0}) {
                QRectF box = size;
                box.moveLeft(side > 0 ? at.x() + gap : at.x() - gap - box.width());
                box.moveTop(up < 0 ? at.y() - off - box.height() : at.y() + off);
                if (!room.contains(box)) continue;
                if (first.isNull()) first = box;
                if (!isClear(box, taken)) continue;
                taken.push_back(box);
                return box;
            }
    }
    taken.push_back(first);
    return first; // crowded: on its ground of paper it can be read all the same
}

void TrendPlot::paintOver(QCPPainter& painter) {
    if (m_picture.lines.empty()) return;
    std::vector<Key> keys;
    const bool coincide = setsCoincide();
    bool book = false;
    for (const TrendLine& line : m_picture.lines) {
        keys.push_back({line.name, colourOf(line.set), coincide ? Qt::SolidLine : styleOf(line.set)});
        for (const auto& point : line.trend->points) book = book || textbookOf(m_picture.figure, point);
    }
    if (book) keys.push_back({tr("Textbook"), theme().ink, Qt::DotLine});
    paintKeys(painter, axisRect(), keys);
    paintGaps(painter);
    std::vector<QRectF> taken;
    paintPresent(painter, taken);
    paintMarks(painter, taken);
}

void TrendPlot::paintGaps(QCPPainter& painter) const {
    const QRectF room = axisRect()->rect();
    const auto count = static_cast<double>(m_picture.lines.size());
    double row = 0;
    for (const TrendLine& line : m_picture.lines) {
        // Each set has its own share of the height, so that both can be told.
        const QRectF share(room.left(), room.top() + room.height() * row / count, room.width(),
                           room.height() / count);
        row += 1;
        for (const TrendGap& gap : gapsOf(line, m_picture.range)) {
            QRectF at = share;
            at.setLeft(xOf(gap.from));
            at.setRight(xOf(gap.to));
            painter.fillRect(at, QBrush(theme().frame, Qt::BDiagPattern));
            const QString words = count > 1 ? tr("%1 does not blink").arg(line.name) : tr("does not blink");
            QRectF box = wordsRect(words);
            const QColor colour = count > 1 ? colourOf(line.set) : theme().ink;
            if (box.width() <= at.width()) {
                box.moveCenter(at.center());
                paintWords(painter, box, words, colour);
            } else if (box.width() <= at.height()) {
                painter.save();
                // Upright beside the edge of a narrow gap, and never out of the axes.
                painter.translate(std::clamp(at.center().x(), room.left() + box.height() / 2,
                                             room.right() - box.height() / 2),
                                  at.center().y());
                painter.rotate(-90);
                box.moveCenter({0, 0});
                paintWords(painter, box, words, colour);
                painter.restore();
            }
        }
    }
}

void TrendPlot::paintMarks(QCPPainter& painter, std::vector<QRectF>& taken) const {
    const QRectF room = axisRect()->rect();
    for (const TrendMark& mark : m_picture.marks) {
        if (!m_picture.range.holds(mark.value)) continue;
        const double x = xOf(mark.value);
        painter.setPen(QPen(theme().level, 1));
        painter.drawLine(QPointF(x, room.top()), QPointF(x, room.bottom()));
        QString words = mark.words;
        for (const TrendLine& line : m_picture.lines) {
            const auto y = figureAt(line, m_picture.figure, m_picture.range, mark.value);
            if (!mark.withFigure) continue;
            const QString what = y ? m_picture.figure.text(*y) : tr("does not blink");
            words +=
                m_picture.lines.size() > 1 ? QStringLiteral("\n%1: %2").arg(line.name, what) : u'\n' + what;
            if (!y) continue;
            painter.setPen(QPen(theme().paper, 1));
            painter.setBrush(colourOf(line.set));
            painter.drawEllipse(QPointF(x, yAxis->coordToPixel(*y)), 4, 4);
        }
        paintWords(painter, placeBeside({x, room.top()}, wordsRect(words), taken), words, theme().quietInk);
    }
}

void TrendPlot::paintPresent(QCPPainter& painter, std::vector<QRectF>& taken) const {
    const QRectF room = axisRect()->rect();
    for (const TrendLine& line : m_picture.lines) {
        if (!m_picture.range.holds(line.present)) continue;
        const bool held = line.set == m_picture.held && use() == Use::screen;
        const QColor colour = colourOf(line.set);
        const QPointF at = handleAt(line.set);
        const auto figure = figureAt(line, m_picture.figure, m_picture.range, line.present);
        painter.setPen(QPen(colour, held ? 1.5 : 1));
        painter.drawLine(QPointF(at.x(), room.top()), QPointF(at.x(), room.bottom()));
        painter.setPen(QPen(theme().paper, 1.5));
        painter.setBrush(colour);
        painter.drawEllipse(at, held ? 7 : 4.5, held ? 7 : 4.5);
        const QString words = m_picture.value.text(line.present) + u'\n' +
                              (figure ? m_picture.figure.text(*figure) : tr("does not blink"));
        paintWords(painter, placeBeside(at, wordsRect(words), taken), words, colour);
    }
}

} // namespace blinkwright::widgets
