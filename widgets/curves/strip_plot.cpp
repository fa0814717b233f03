#include "widgets/curves/strip_plot.h"

#include "widgets/curves/curve_colours.h"
#include "widgets/curves/strip_overlays.h"

#include <algorithm>

namespace blinkwright::widgets {

namespace {
constexpr double curveWidth = 1.5;
constexpr double levelWidth = 1.1;      // at 1 the plot takes a hairline, which is lost in print
constexpr double headroom = 0.05;       // of a strip's range, so that a curve at its end is not cut in half
constexpr qsizetype densePoints = 2500; // about 3 ms of wide antialiased lines at 1200 by 800
constexpr int fontPixels = 12;          // text in pixels, so that a page at any resolution is laid out alike
constexpr int rightMargin = 16;

QPen line(const QColor& colour, double width) {
    return QPen(colour, width);
}
} // namespace

StripPlot::StripPlot(QWidget* parent, Use use)
    : QCustomPlot(parent), m_use(use), m_theme(Theme::of(Theme::Mode::light)) {
    setPlottingHints(QCP::phFastPolylines | QCP::phCacheLabels);
    setAutoAddPlottableToLegend(false);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    addLayer("echo", layer("main"), limBelow);
    addLayer("levels", layer("main"), limBelow);
    addLayer("captions", layer("axes"), limAbove);
    addLayer("moment", layer("captions"), limAbove);
    layer("moment")->setMode(QCPLayer::lmBuffered);

    plotLayout()->clear();
    plotLayout()->setRowSpacing(0);
    auto* margins = new QCPMarginGroup(this);
    m_timeTicker = QSharedPointer<ScaleTicker>::create();
    for (std::size_t s = 0; s < stripCount; ++s) {
        auto* rect = new QCPAxisRect(this);
        plotLayout()->addElement(static_cast<int>(s), 0, rect);
        rect->setMarginGroup(QCP::msLeft, margins);
        rect->setAutoMargins(QCP::msLeft | QCP::msBottom);
        auto ticker = QSharedPointer<ScaleTicker>::create();
        ticker->setTickCount(4);
        rect->axis(QCPAxis::atLeft)->setTicker(ticker);
        rect->axis(QCPAxis::atBottom)->setTicker(m_timeTicker);
        rect->axis(QCPAxis::atBottom)->setTickLabels(s + 1 == stripCount);
        m_panels[s] = {rect, ticker, {0, 1}};
    }
    m_timeTicker->setTickCount(8);
    m_timeTicker->scale = AxisScale::ofTime(1);
    m_panels[2].ticker->scale = AxisScale::of(0.01, units::Unit::ampere);
    for (std::size_t s : {0u, 1u})
        m_panels[s].ticker->scale = AxisScale::of(1, units::Unit::volt);

    m_echoOutput = addTrace(Strip::output, "echo");
    m_echoCapacitor = addTrace(Strip::capacitor, "echo");
    m_upper = addTrace(Strip::capacitor, "levels");
    m_lower = addTrace(Strip::capacitor, "levels");
    m_output = addTrace(Strip::output, "main");
    m_capacitor = addTrace(Strip::capacitor, "main");
    m_captions = new StripCaptions(this);
    m_overlay = new MomentOverlay(this);
    styleAxes();
}

QCPGraph* StripPlot::addTrace(Strip strip, const char* layerName) {
    QCPAxisRect* rect = m_panels[static_cast<std::size_t>(strip)].rect;
    QCPGraph* graph = addGraph(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft));
    graph->setLayer(layerName);
    graph->setAdaptiveSampling(false); // the points come thinned
    graph->setSelectable(QCP::stNone);
    return graph;
}

void StripPlot::matchGraphs(std::vector<QCPGraph*>& graphs, std::size_t count, const char* layerName) {
    while (graphs.size() < count)
        graphs.push_back(addTrace(Strip::lamps, layerName));
    while (graphs.size() > count) {
        removeGraph(graphs.back());
        graphs.pop_back();
    }
}

QFont StripPlot::smallFont() const {
    QFont f = font();
    // On the screen no smaller than the rest of the window; a page keeps its own measure.
    f.setPixelSize(m_use == Use::screen ? std::max(fontPixels, QFontInfo(f).pixelSize()) : fontPixels);
    return f;
}

int StripPlot::captionHeight() const {
    return QFontMetrics(smallFont()).height() + 4;
}

// The moment's time stands above the first caption.
int StripPlot::headRows() const {
    return m_use == Use::screen ? 2 : 1;
}

void StripPlot::styleAxes() {
    setBackground(QBrush(m_theme.paper));
    const QPen hairline = line(m_theme.frame, 1);
    for (std::size_t s = 0; s < stripCount; ++s) {
        QCPAxisRect* rect = m_panels[s].rect;
        rect->setMargins(QMargins(0, captionHeight() * (s == 0 ? headRows() : 1), rightMargin, 0));
        for (QCPAxis* axis : rect->axes()) {
            axis->setBasePen(hairline);
            axis->setTickPen(hairline);
            axis->setSubTicks(false);
            axis->setTickLength(0, 4);
            axis->setTickLabelColor(m_theme.quietInk);
            axis->setLabelColor(m_theme.quietInk);
            axis->setTickLabelFont(smallFont());
            axis->setLabelFont(smallFont());
            axis->setTickLabelPadding(3);
            axis->setLabelPadding(3);
            axis->grid()->setPen(line(m_theme.grid, 1));
            axis->grid()->setZeroLinePen(line(m_theme.grid, 1));
            axis->grid()->setSubGridVisible(false);
        }
    }
    labelAxes();
}

void StripPlot::labelAxes() {
    for (std::size_t s = 0; s < stripCount; ++s) {
        QCPAxis* value = m_panels[s].rect->axis(QCPAxis::atLeft);
        value->setTickLabels(m_hasCurves);
        value->setTicks(m_hasCurves);
        m_panels[s].rect->axis(QCPAxis::atBottom)->setTicks(m_hasCurves);
    }
    QCPAxis* time = m_panels[2].rect->axis(QCPAxis::atBottom);
    time->setTickLabels(m_hasCurves);
    time->setLabel(tr("Time (%1)").arg(m_timeTicker->scale.unitText()));
}

void StripPlot::paintGraphs() {
    std::vector<std::string> names;
    for (const LampPoints& lamp : m_lamps)
        names.push_back(lamp.colour);
    m_lampColours = lampCurveColours(m_theme, names);
    const auto colour = [this](QCPGraph* graph, const QColor& c) {
        graph->setPen(line(c, m_dense ? 1.0 : curveWidth));
        graph->setAntialiased(!m_dense);
    };
    colour(m_output, m_theme.setA);
    colour(m_capacitor, m_theme.setA);
    colour(m_echoOutput, m_theme.echo(m_theme.setA));
    colour(m_echoCapacitor, m_theme.echo(m_theme.setA));
    for (QCPGraph* level : {m_upper, m_lower}) {
        level->setPen(line(m_theme.level, levelWidth));
        level->setAntialiased(false); // level as they are, they would blur over two rows of pixels
    }
    for (std::size_t k = 0; k < m_lampGraphs.size(); ++k)
        colour(m_lampGraphs[k], m_lampColours[k]);
    for (std::size_t k = 0; k < m_echoLampGraphs.size(); ++k) {
        const int twin = m_echoLamps[k].twin;
        const QColor own = twin >= 0 ? m_lampColours[static_cast<std::size_t>(twin)]
                                     : lampCurveColours(m_theme, {m_echoLamps[k].colour}).front();
        colour(m_echoLampGraphs[k], m_theme.echo(own));
    }
}

void StripPlot::setTheme(const Theme& theme) {
    m_theme = theme;
    styleAxes();
    paintGraphs();
}

void StripPlot::setPicture(const StripPicture& picture, bool hasCurves) {
    qsizetype drawn = 0;
    const auto give = [&drawn](QCPGraph* graph, const StripPoints& points) {
        graph->data()->set(points, true);
        drawn += points.size();
    };
    const auto sameLamps = [](const std::vector<LampPoints>& a, const std::vector<LampPoints>& b) {
        return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                          [](const LampPoints& x, const LampPoints& y) {
                              return x.ref == y.ref && x.colour == y.colour && x.twin == y.twin;
                          });
    };
    const bool newLamps =
        !sameLamps(m_lamps, picture.curves.lamps) || !sameLamps(m_echoLamps, picture.echo.lamps);
    give(m_output, picture.curves.output);
    give(m_capacitor, picture.curves.capacitor);
    give(m_upper, picture.curves.upperLevel);
    give(m_lower, picture.curves.lowerLevel);
    give(m_echoOutput, picture.echo.output);
    give(m_echoCapacitor, picture.echo.capacitor);
    matchGraphs(m_lampGraphs, picture.curves.lamps.size(), "main");
    matchGraphs(m_echoLampGraphs, picture.echo.lamps.size(), "echo");
    for (std::size_t k = 0; k < m_lampGraphs.size(); ++k)
        give(m_lampGraphs[k], picture.curves.lamps[k].points);
    for (std::size_t k = 0; k < m_echoLampGraphs.size(); ++k)
        give(m_echoLampGraphs[k], picture.echo.lamps[k].points);
    const bool dense = m_use == Use::screen && drawn > densePoints;
    if (newLamps || dense != m_dense || m_output->pen().color() != m_theme.setA) {
        m_dense = dense;
        m_lamps = picture.curves.lamps;
        m_echoLamps = picture.echo.lamps;
        for (std::vector<LampPoints>* lamps : {&m_lamps, &m_echoLamps})
            for (LampPoints& lamp : *lamps)
                lamp.points.clear();
        paintGraphs();
    }
    m_hasCurves = hasCurves;
    for (std::size_t s = 0; s < stripCount; ++s) {
        Span range = picture.ranges[s];
        // A strip with nothing but zero in it still needs an axis: that of a lamp or a supply.
        if (range.length() <= 0) range.end = s == 2 ? 0.01 : 1.0;
        m_panels[s].range = range;
        const double room = headroom * range.length();
        m_panels[s].rect->axis(QCPAxis::atLeft)->setRange(range.begin - room, range.end + room);
        m_panels[s].ticker->scale = AxisScale::of(std::max(range.end, -range.begin),
                                                  s == 2 ? units::Unit::ampere : units::Unit::volt);
    }
    labelAxes();
}

void StripPlot::setVisibleSpan(Span span) {
    for (Panel& panel : m_panels)
        panel.rect->axis(QCPAxis::atBottom)->setRange(span.begin, span.end);
    m_timeTicker->scale = AxisScale::ofTime(std::max(std::abs(span.begin), std::abs(span.end)));
    m_panels[2].rect->axis(QCPAxis::atBottom)->setLabel(tr("Time (%1)").arg(m_timeTicker->scale.unitText()));
}

void StripPlot::setMessage(const QString& text) {
    m_message = text;
}

void StripPlot::setMoment(const std::optional<engine::Moment>& moment, bool paint) {
    m_moment = moment;
    if (paint) layer("moment")->replot();
}

void StripPlot::setFocusShown(bool on) {
    m_focusShown = on;
    layer("moment")->replot();
}

Span StripPlot::visibleSpan() const {
    const QCPRange r = m_panels[0].rect->axis(QCPAxis::atBottom)->range();
    return {r.lower, r.upper};
}

QRect StripPlot::stripRect(Strip strip) const {
    return m_panels[static_cast<std::size_t>(strip)].rect->rect();
}

std::array<int, stripCount> StripPlot::stripHeights() const {
    return {stripRect(Strip::output).height(), stripRect(Strip::capacitor).height(),
            stripRect(Strip::lamps).height()};
}

double StripPlot::timeAt(double x_px) const {
    return m_panels[0].rect->axis(QCPAxis::atBottom)->pixelToCoord(x_px);
}
double StripPlot::pixelAt(double time_s) const {
    return m_panels[0].rect->axis(QCPAxis::atBottom)->coordToPixel(time_s);
}
double StripPlot::valuePixel(Strip strip, double value) const {
    return m_panels[static_cast<std::size_t>(strip)].rect->axis(QCPAxis::atLeft)->coordToPixel(value);
}

const AxisScale& StripPlot::scale(Strip strip) const {
    return m_panels[static_cast<std::size_t>(strip)].ticker->scale;
}
const AxisScale& StripPlot::timeScale() const {
    return m_timeTicker->scale;
}

QString StripPlot::valueText(Strip strip, double value) const {
    const Panel& panel = m_panels[static_cast<std::size_t>(strip)];
    const AxisScale& s = panel.ticker->scale;
    return s.text(value, s.decimalsFor(std::max(panel.range.end, -panel.range.begin)));
}

QString StripPlot::timeText(double time_s) const {
    // As fine as two pixels of the axis, or what a fit to the strip would show.
    return timeScale().text(time_s, timeScale().decimalsFor(visibleSpan().length()) + 1);
}

void StripPlot::paintEvent(QPaintEvent* event) {
    emit aboutToPaint();
    QCustomPlot::paintEvent(event);
    if (m_hasCurves) emit painted();
}

void StripPlot::resizeEvent(QResizeEvent* event) {
    layOut(height());
    QCustomPlot::resizeEvent(event);
}

void StripPlot::layOut(int height_px) {
    // Rows as high as their captions and labels ask besides an equal share for each strip itself.
    const int caption = captionHeight();
    const int timeAxis = 2 * caption - 8; // more than the ticks below the other strips
    const double rest = std::max(60, height_px - (headRows() + 2) * caption - timeAxis) / 3.0;
    // In a low strip fewer labels, so that they do not run into each other.
    const double label = 1.5 * QFontMetrics(smallFont()).height();
    for (const Panel& panel : m_panels)
        panel.ticker->setTickCount(std::clamp(static_cast<int>(rest / label), 1, 4));
    plotLayout()->setRowStretchFactors(
        {rest + headRows() * caption, rest + caption, rest + caption + timeAxis});
}

} // namespace blinkwright::widgets
