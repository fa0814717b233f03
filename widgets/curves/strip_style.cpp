// How the curves and axes of a StripPlot look: colours, pens, fonts, and the style of a page.
#include "widgets/curves/axis_style.h"
#include "widgets/curves/curve_colours.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/curves/strip_trace.h"

#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr double curveWidth = 1.5;
constexpr double secondWidth = 2.5; // told apart by more than its colour; a dashed one takes too long to draw
constexpr double levelWidth = 1.1;  // on a page; at 1 the plot takes a hairline, which is lost in print
constexpr int fontPixels = 12;      // text in pixels, so that a page at any resolution is laid out alike
constexpr int rightMargin = 16;

} // namespace

QPen StripPlot::line(const QColor& colour, double width) const {
    return QPen(colour, width * m_theme.stroke);
}

QFont StripPlot::smallFont() const {
    QFont f = font();
    // On the screen no smaller than the rest of the window; a page's font is its own measure.
    if (m_use == Use::screen) f.setPixelSize(std::max(fontPixels, QFontInfo(f).pixelSize()));
    return f;
}

void StripPlot::styleAxes() {
    setBackground(QBrush(m_theme.paper));
    for (std::size_t s = 0; s < stripCount; ++s) {
        QCPAxisRect* rect = m_panels[s].rect;
        for (QCPAxis* axis : rect->axes()) styleAxis(*axis, m_theme, smallFont());
    }
    styleMargins();
    labelAxes();
    m_groundStale = true;
}

void StripPlot::styleMargins() {
    for (std::size_t s = 0; s < stripCount; ++s)
        m_panels[s].rect->setMargins(
            QMargins(0, captionHeight() * (s == firstStrip() ? headRows() : 1), rightMargin, 0));
}

void StripPlot::setPageStyle(const PageStyle& style) {
    m_style = style;
    if (std::ranges::find(m_style.strips, true) == m_style.strips.end()) m_style.strips.fill(true);
    for (Panel& panel : m_panels) plotLayout()->take(panel.rect);
    plotLayout()->simplify();
    int row = 0;
    for (std::size_t s = 0; s < stripCount; ++s) {
        const bool on = m_style.strips[s];
        QCPAxisRect* rect = m_panels[s].rect;
        rect->setVisible(on);
        for (const auto side : {QCPAxis::atLeft, QCPAxis::atBottom}) rect->axis(side)->setVisible(on);
        if (on) plotLayout()->addElement(row++, 0, rect);
        rect->axis(QCPAxis::atBottom)->setTickLabels(s == lastStrip());
    }
    if (m_style.greys) {
        m_theme.setA = Qt::black;
        m_theme.setB = m_theme.measured = QColor(0x60, 0x60, 0x60);
        m_theme.level = QColor(0x8a, 0x8a, 0x8a);
        m_theme.moment = m_theme.quietInk = QColor(0x50, 0x50, 0x50);
        m_theme.grid = QColor(0xe0, 0xe0, 0xe0);
        m_theme.frame = QColor(0xb0, 0xb0, 0xb0);
    }
    styleAxes();
    paintGraphs();
}

QVector<qreal> StripPlot::dashesOf(int curve, bool second) const {
    if (!m_style.greys) return {};
    // In units of the pen's width. Set B is dashed; further lamps are told apart by the shape of their
    // dashes.
    static const QVector<qreal> first[] = {{}, {1.5, 2}, {6, 2, 1.5, 2}, {3, 2}};
    static const QVector<qreal> other[] = {{5, 3}, {1, 3}, {8, 3, 1, 3}, {2, 4}};
    return (second ? other : first)[curve % 4];
}

void StripPlot::labelAxes() {
    for (std::size_t s = 0; s < stripCount; ++s) {
        QCPAxis* value = m_panels[s].rect->axis(QCPAxis::atLeft);
        value->setTickLabels(m_hasCurves);
        value->setTicks(m_hasCurves);
        m_panels[s].rect->axis(QCPAxis::atBottom)->setTicks(m_hasCurves);
    }
    QCPAxis* time = m_panels[lastStrip()].rect->axis(QCPAxis::atBottom);
    time->setTickLabels(m_hasCurves);
    time->setLabel(tr("Time (%1)").arg(m_timeTicker->scale.unitText()));
}

void StripPlot::paintGraphs() {
    std::vector<std::string> names;
    for (const LampPoints& lamp : m_lamps) names.push_back(lamp.colour);
    m_lampColours = lampCurveColours(m_theme, names);
    m_secondColours = lampCurveColours(m_theme, m_theme.setB, m_secondLamps.size());
    if (m_style.greys) {
        std::ranges::fill(m_lampColours, m_theme.setA);
        std::ranges::fill(m_secondColours, m_theme.setB);
    }
    m_groundStale = true;
    const auto colour = [this](QCPGraph* graph, const QColor& c, double width = curveWidth,
                               const QVector<qreal>& dashes = {}) {
        QPen pen = line(c, m_dense ? 1.0 : width);
        if (!dashes.isEmpty()) pen.setDashPattern(dashes);
        graph->setPen(pen);
        graph->setAntialiased(!m_dense);
    };
    colour(m_output, m_theme.setA);
    colour(m_capacitor, m_theme.setA);
    for (QCPGraph* graph : {m_secondOutput, m_secondCapacitor})
        colour(graph, m_theme.setB, m_style.greys ? curveWidth : secondWidth, dashesOf(0, true));
    for (const auto& graphs : {m_recordOutputs, m_recordCapacitors})
        for (QCPGraph* graph : graphs)
            graph->setPen(line(m_theme.measured, graph->antialiased() ? recordWidth : 1.0));
    const QColor echoColour = m_theme.echo(m_echoOfSecond ? m_theme.setB : m_theme.setA);
    colour(m_echoOutput, echoColour);
    colour(m_echoCapacitor, echoColour);
    for (QCPGraph* level : {m_upper, m_lower, m_secondUpper, m_secondLower}) {
        const bool second = level == m_secondUpper || level == m_secondLower;
        level->setPen(line(second ? m_theme.setB : m_theme.level, m_use == Use::page ? levelWidth : 1.0));
        level->setAntialiased(false); // level as they are, they would blur over two rows of pixels
    }
    for (std::size_t k = 0; k < m_lampGraphs.size(); ++k)
        colour(m_lampGraphs[k], m_lampColours[k], curveWidth, dashesOf(static_cast<int>(k), false));
    for (std::size_t k = 0; k < m_secondLampGraphs.size(); ++k)
        colour(m_secondLampGraphs[k], m_secondColours[k], m_style.greys ? curveWidth : secondWidth,
               dashesOf(static_cast<int>(k), true));
    const std::vector<QColor>& twins = m_echoOfSecond ? m_secondColours : m_lampColours;
    for (std::size_t k = 0; k < m_echoLampGraphs.size(); ++k) {
        const int twin = m_echo.lamps[k].twin;
        const QColor own = twin >= 0        ? twins[static_cast<std::size_t>(twin)]
                           : m_echoOfSecond ? m_theme.setB
                                            : lampCurveColours(m_theme, {m_echo.lamps[k].colour}).front();
        colour(m_echoLampGraphs[k], m_theme.echo(own));
    }
}

} // namespace blinkwright::widgets
