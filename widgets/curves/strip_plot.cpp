#include "widgets/curves/strip_plot.h"

#include "widgets/curves/strip_band.h"
#include "widgets/curves/strip_overlays.h"
#include "widgets/curves/strip_trace.h"

#include <algorithm>

namespace blinkwright::widgets {

namespace {
constexpr double headroom = 0.05;       // of a strip's range, so that a curve at its end is not cut in half
constexpr qsizetype densePoints = 2500; // about 3 ms of wide antialiased lines at 1200 by 800
constexpr qsizetype denseRecord =
    1200; // noise has a point for each column and more: hairlines, drawn in time

} // namespace

StripPlot::StripPlot(QWidget* parent, Use use)
    : QCustomPlot(parent), m_use(use), m_theme(Theme::of(Theme::Mode::light)) {
    setPlottingHints(QCP::phFastPolylines | QCP::phCacheLabels);
    // All painting is done in paintEvent; the plot's own replot() would fill buffers that nobody sees.
    if (use == Use::screen) mReplotting = true;
    setAutoAddPlottableToLegend(false);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    addLayer("band", layer("main"), limBelow);
    addLayer("echo", layer("main"), limBelow);
    addLayer("levels", layer("main"), limBelow);
    addLayer("second", layer("main"), limBelow);
    addLayer("records", layer("levels"), limBelow);
    addLayer("captions", layer("axes"), limAbove);
    addLayer("moment", layer("captions"), limAbove);

    plotLayout()->clear();
    plotLayout()->setRowSpacing(0);
    plotLayout()->setLayer("background"); // to hide a layer hides all that hangs on its elements, wherever
    auto* margins = new QCPMarginGroup(this);
    m_timeTicker = QSharedPointer<ScaleTicker>::create();
    for (std::size_t s = 0; s < stripCount; ++s) {
        auto* rect = new QCPAxisRect(this);
        rect->setLayer("background");
        // Below all curves, and the grid below the axes; as they come, both would lie over levels and echo.
        for (QCPAxis* axis : rect->axes()) axis->grid()->setLayer("grid");
        for (QCPAxis* axis : rect->axes()) axis->setLayer("grid");
        plotLayout()->addElement(static_cast<int>(s), 0, rect);
        rect->setMarginGroup(QCP::msLeft, margins);
        rect->setAutoMargins(QCP::msLeft | QCP::msBottom);
        auto ticker = QSharedPointer<ScaleTicker>::create();
        ticker->setTickCount(4);
        rect->axis(QCPAxis::atLeft)->setTicker(ticker);
        rect->axis(QCPAxis::atBottom)->setTicker(m_timeTicker);
        rect->axis(QCPAxis::atBottom)->setTickLabels(s + 1 == stripCount);
        m_panels[s] = {rect, ticker, {}};
    }
    m_timeTicker->setTickCount(8);
    m_timeTicker->scale = AxisScale::ofTime(1);
    m_panels[2].ticker->scale = AxisScale::of(0.01, units::Unit::ampere);
    for (std::size_t s : {0u, 1u}) m_panels[s].ticker->scale = AxisScale::of(1, units::Unit::volt);

    m_echoOutput = addTrace(Strip::output, "echo");
    m_echoCapacitor = addTrace(Strip::capacitor, "echo");
    m_upper = addTrace(Strip::capacitor, "levels");
    m_lower = addTrace(Strip::capacitor, "levels");
    m_secondUpper = addTrace(Strip::capacitor, "second");
    m_secondLower = addTrace(Strip::capacitor, "second");
    m_secondOutput = addTrace(Strip::output, "second");
    m_secondCapacitor = addTrace(Strip::capacitor, "second");
    m_output = addTrace(Strip::output, "main");
    m_capacitor = addTrace(Strip::capacitor, "main");
    m_band = new StripBand(this);
    m_captions = new StripCaptions(this);
    m_overlay = new MomentOverlay(this);
    styleAxes();
}

StripTrace* StripPlot::addTrace(Strip strip, const char* layerName) {
    QCPAxisRect* rect = m_panels[static_cast<std::size_t>(strip)].rect;
    auto* trace = new StripTrace(rect->axis(QCPAxis::atBottom), rect->axis(QCPAxis::atLeft)); // the plot's
    trace->setLayer(layerName);
    return trace;
}

void StripPlot::matchGraphs(std::vector<StripTrace*>& graphs, std::size_t count, const char* layerName) {
    while (graphs.size() < count) graphs.push_back(addTrace(Strip::lamps, layerName));
    while (graphs.size() > count) {
        removeGraph(graphs.back());
        graphs.pop_back();
    }
}

void StripPlot::setRecords(const std::vector<RecordPoints>& records) {
    const auto match = [&](std::vector<StripTrace*>& graphs, Strip strip, StripPoints RecordPoints::*points) {
        while (graphs.size() < records.size()) graphs.push_back(addTrace(strip, "records"));
        while (graphs.size() > records.size()) {
            removeGraph(graphs.back());
            graphs.pop_back();
        }
        bool any = false;
        for (std::size_t k = 0; k < graphs.size(); ++k) {
            const StripPoints& own = records[k].*points;
            const bool dense = m_use == Use::screen && own.size() > denseRecord;
            graphs[k]->data()->set(own, true);
            graphs[k]->setPen(line(m_theme.measured, dense ? 1.0 : recordWidth));
            graphs[k]->setAntialiased(!dense);
            any = any || !own.isEmpty();
        }
        bool& has = m_hasRecord[static_cast<std::size_t>(strip)];
        if (std::exchange(has, any) != any) m_groundStale = true; // the caption's keys
    };
    match(m_recordOutputs, Strip::output, &RecordPoints::output);
    match(m_recordCapacitors, Strip::capacitor, &RecordPoints::capacitor);
}

int StripPlot::captionHeight() const {
    return QFontMetrics(smallFont()).height() + 4;
}

// The moment's time stands above the first caption.
int StripPlot::headRows() const {
    return m_use == Use::screen || m_moment ? 2 : 1;
}

std::size_t StripPlot::firstStrip() const {
    return static_cast<std::size_t>(std::ranges::find(m_style.strips, true) - m_style.strips.begin()) %
           stripCount;
}

std::size_t StripPlot::lastStrip() const {
    std::size_t last = stripCount - 1;
    while (last > 0 && !m_style.strips[last]) --last;
    return last;
}

void StripPlot::setTheme(const Theme& theme) {
    m_theme = theme;
    styleAxes();
    paintGraphs();
    updateLayout(); // new margins move the strips, whose heights the next picture is cut for
}

void StripPlot::setPicture(const StripPicture& picture, bool hasCurves) {
    const auto give = [](QCPGraph* graph, const StripPoints& points) { graph->data()->set(points, true); };
    const auto pointsOf = [](const CurvePoints& c) {
        qsizetype sum = c.output.size() + c.capacitor.size() + c.upperLevel.size() + c.lowerLevel.size();
        for (const LampPoints& lamp : c.lamps) sum += lamp.points.size();
        return sum;
    };
    const auto samePoints = [](const LampPoints& x, const LampPoints& y) {
        return x.points.isSharedWith(y.points);
    };
    const auto& echo = picture.echo;
    const bool newEcho = !echo.output.isSharedWith(m_echo.output) ||
                         !echo.capacitor.isSharedWith(m_echo.capacitor) ||
                         !std::equal(echo.lamps.begin(), echo.lamps.end(), m_echo.lamps.begin(),
                                     m_echo.lamps.end(), samePoints);
    const auto sameLamps = [](const std::vector<LampPoints>& a, const std::vector<LampPoints>& b) {
        return std::equal(a.begin(), a.end(), b.begin(), b.end(),
                          [](const LampPoints& x, const LampPoints& y) {
                              return x.ref == y.ref && x.colour == y.colour && x.twin == y.twin;
                          });
    };
    const auto& second = picture.second;
    const bool newLamps = !sameLamps(m_lamps, picture.curves.lamps) || !sameLamps(m_echo.lamps, echo.lamps) ||
                          !sameLamps(m_secondLamps, second.lamps) || picture.echoOfSecond != m_echoOfSecond;
    const bool hasFirst = !picture.curves.output.isEmpty(), hasSecond = !second.output.isEmpty();
    if (hasFirst != m_hasFirst || hasSecond != m_hasSecond) m_groundStale = true; // the captions' keys
    m_hasFirst = hasFirst;
    m_hasSecond = hasSecond;
    setRecords(picture.records);
    give(m_secondOutput, second.output);
    give(m_secondCapacitor, second.capacitor);
    give(m_secondUpper, second.upperLevel);
    give(m_secondLower, second.lowerLevel);
    matchGraphs(m_secondLampGraphs, second.lamps.size(), "second");
    for (std::size_t k = 0; k < m_secondLampGraphs.size(); ++k)
        give(m_secondLampGraphs[k], second.lamps[k].points);
    give(m_output, picture.curves.output);
    give(m_capacitor, picture.curves.capacitor);
    give(m_upper, picture.curves.upperLevel);
    give(m_lower, picture.curves.lowerLevel);
    matchGraphs(m_lampGraphs, picture.curves.lamps.size(), "main");
    matchGraphs(m_echoLampGraphs, echo.lamps.size(), "echo");
    for (std::size_t k = 0; k < m_lampGraphs.size(); ++k)
        give(m_lampGraphs[k], picture.curves.lamps[k].points);
    if (newEcho) {
        m_groundStale = true;
        give(m_echoOutput, echo.output);
        give(m_echoCapacitor, echo.capacitor);
        for (std::size_t k = 0; k < m_echoLampGraphs.size(); ++k)
            give(m_echoLampGraphs[k], echo.lamps[k].points);
    }
    const bool dense =
        m_use == Use::screen && pointsOf(picture.curves) + pointsOf(second) + pointsOf(echo) > densePoints;
    if (newLamps || dense != m_dense || m_output->pen().color() != m_theme.setA) {
        m_dense = dense;
        m_lamps = picture.curves.lamps;
        m_secondLamps = second.lamps;
        m_echo = echo;
        m_echoOfSecond = picture.echoOfSecond;
        for (LampPoints& lamp : m_lamps) lamp.points.clear();
        for (LampPoints& lamp : m_secondLamps) lamp.points.clear();
        paintGraphs();
    }
    m_echo = echo;
    if (m_use == Use::page)
        for (int k = 0; k < graphCount(); ++k)
            graph(k)->setVisible(graph(k)->keyAxis()->axisRect()->visible());
    bool newAxes = hasCurves != m_hasCurves;
    m_hasCurves = hasCurves;
    std::array<Span, stripCount> ranges = picture.ranges;
    m_band->widen(ranges);
    for (std::size_t s = 0; s < stripCount; ++s) {
        Span range = ranges[s];
        // A strip with nothing but zero in it still needs an axis: that of a lamp or a supply.
        if (range.length() <= 0) range.end = s == 2 ? 0.01 : 1.0;
        if (range == m_panels[s].range) continue;
        newAxes = true;
        m_panels[s].range = range;
        const double room = headroom * range.length();
        m_panels[s].rect->axis(QCPAxis::atLeft)->setRange(range.begin - room, range.end + room);
        m_panels[s].ticker->scale = AxisScale::of(std::max(range.end, -range.begin),
                                                  s == 2 ? units::Unit::ampere : units::Unit::volt);
    }
    if (!newAxes) return;
    m_groundStale = true;
    labelAxes();
}

void StripPlot::setBand(std::shared_ptr<const study::Band> band) {
    m_band->setBand(std::move(band));
    m_groundStale = true;
}

bool StripPlot::hasBand() const {
    return m_band->isThere();
}

void StripPlot::setSecondName(const QString& name, const QString& brief) {
    if (name == m_secondName && brief == m_secondBrief) return;
    m_secondName = name;
    m_secondBrief = brief;
    m_groundStale = true;
}

void StripPlot::setVisibleSpan(Span span) {
    if (span == visibleSpan()) return;
    m_groundStale = true;
    for (Panel& panel : m_panels) panel.rect->axis(QCPAxis::atBottom)->setRange(span.begin, span.end);
    m_timeTicker->scale = AxisScale::ofTime(std::max(std::abs(span.begin), std::abs(span.end)));
    m_panels[lastStrip()]
        .rect->axis(QCPAxis::atBottom)
        ->setLabel(tr("Time (%1)").arg(m_timeTicker->scale.unitText()));
}

void StripPlot::setMessage(const QString& text) {
    m_message = text;
    m_groundStale = true;
}

void StripPlot::setMoment(const std::optional<engine::Moment>& moment, bool paint) {
    m_moment = moment;
    if (paint) update();
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
    return m_panels[firstStrip()].rect->axis(QCPAxis::atBottom)->pixelToCoord(x_px);
}
double StripPlot::pixelAt(double time_s) const {
    return m_panels[firstStrip()].rect->axis(QCPAxis::atBottom)->coordToPixel(time_s);
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

void StripPlot::redraw(bool atOnce) {
    m_curvesFresh = true;
    updateLayout();
    emit redrawn();
    if (atOnce)
        repaint();
    else
        update();
}

// The plot lays out before each of its drawings; that is only needed when axes have changed.
void StripPlot::updateLayout() {
    if (m_use == Use::page || m_groundStale) QCustomPlot::updateLayout();
}

void StripPlot::fitPicture(QPixmap& picture) const {
    const double ratio = devicePixelRatioF();
    const QSize pixels = (QSizeF(size()) * ratio).toSize().expandedTo({1, 1});
    if (picture.size() != pixels) picture = QPixmap(pixels);
    picture.setDevicePixelRatio(ratio);
}

void StripPlot::paintGround() {
    fitPicture(m_ground);
    m_ground.fill(m_theme.paper);
    QCPPainter painter(&m_ground);
    constexpr const char* inFront[] = {"records", "levels", "second", "main", "moment"};
    for (const char* name : inFront) layer(name)->setVisible(false);
    draw(&painter);
    for (const char* name : inFront) layer(name)->setVisible(true);
    m_groundStale = false;
    m_pictureStale = true;
}

void StripPlot::paintCurves(QCPPainter& painter) {
    painter.drawPixmap(0, 0, m_ground);
    for (const auto* graphs : {&m_recordOutputs, &m_recordCapacitors})
        for (StripTrace* trace : *graphs) trace->paintOn(&painter);
    for (StripTrace* trace : {m_upper, m_lower}) trace->paintOn(&painter);
    if (m_hasSecond) {
        for (StripTrace* trace : {m_secondUpper, m_secondLower, m_secondOutput, m_secondCapacitor})
            trace->paintOn(&painter);
        for (StripTrace* lamp : m_secondLampGraphs) lamp->paintOn(&painter);
    }
    for (StripTrace* trace : {m_output, m_capacitor}) trace->paintOn(&painter);
    for (StripTrace* lamp : m_lampGraphs) lamp->paintOn(&painter);
}

void StripPlot::paintEvent(QPaintEvent* event) {
    emit aboutToPaint();
    const double ratio = devicePixelRatioF();
    if (bufferDevicePixelRatio() != ratio) { // moved to a screen of another ratio
        setBufferDevicePixelRatio(ratio);
        m_groundStale = true;
    }
    if (m_groundStale) paintGround();
    QCPPainter painter(this);
    if (m_curvesFresh) { // the next ones come soon, so no picture of these is kept
        paintCurves(painter);
        m_curvesFresh = false;
        m_pictureStale = true;
        if (!event->rect().contains(rect())) update();
    } else {
        if (m_pictureStale) {
            fitPicture(m_picture);
            QCPPainter keeper(&m_picture);
            paintCurves(keeper);
            m_pictureStale = false;
        }
        const QRectF part = event->rect();
        painter.drawPixmap(part, m_picture, QRectF(part.topLeft() * ratio, part.size() * ratio));
    }
    m_overlay->paintOn(&painter);
    if (m_hasCurves) emit painted();
}

void StripPlot::resizeEvent(QResizeEvent*) {
    layOut(height());
    setViewport(rect());
    m_groundStale = true;
    m_curvesFresh = true;
    updateLayout();
}

void StripPlot::changeEvent(QEvent* event) {
    QCustomPlot::changeEvent(event);
    if (event->type() == QEvent::FontChange && m_use == Use::screen) {
        styleAxes();
        layOut(height());
        updateGeometry();
        updateLayout();
    }
    if (event->type() == QEvent::FontChange || event->type() == QEvent::LanguageChange) {
        m_groundStale = true;
        update();
    }
}

QSize StripPlot::minimumSizeHint() const {
    constexpr int leastWidth = 260, leastStrip = 36;
    constexpr int strips = static_cast<int>(stripCount);
    return {leastWidth, (headRows() + strips + 1) * captionHeight() + strips * leastStrip};
}

void StripPlot::layOut(int height_px) {
    // Rows as high as their captions and labels ask besides an equal share for each strip itself.
    const int caption = captionHeight();
    const int timeAxis = 2 * caption - 8; // more than the ticks below the other strips
    const auto count = static_cast<int>(std::ranges::count(m_style.strips, true));
    const double rest = std::max(20 * count, height_px - (headRows() + count - 1) * caption - timeAxis) /
                        static_cast<double>(count);
    // In a low strip fewer labels, so that they do not run into each other.
    const double label = 1.5 * QFontMetrics(smallFont()).height();
    styleMargins();
    QList<double> rows;
    for (std::size_t s = 0; s < stripCount; ++s) {
        if (!m_style.strips[s]) continue;
        m_panels[s].ticker->setTickCount(std::clamp(static_cast<int>(rest / label), 1, 4));
        rows << rest + caption * (s == firstStrip() ? headRows() : 1) + (s == lastStrip() ? timeAxis : 0);
    }
    plotLayout()->setRowStretchFactors(rows);
}

} // namespace blinkwright::widgets
