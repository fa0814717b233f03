#include "widgets/curves/strip_band.h"

#include "widgets/curves/curve_colours.h"

#include <algorithm>

namespace blinkwright::widgets {

QColor StripBand::shade(QColor curve) {
    curve.setAlphaF(0.26F);
    return curve;
}

void StripBand::widen(std::array<Span, stripCount>& ranges) const {
    if (!isThere()) return;
    const auto take = [&](Strip strip, const study::BandCurve& curve) {
        Span& range = ranges[static_cast<std::size_t>(strip)];
        if (const double top = *std::ranges::max_element(curve.p95); top > range.end)
            range.end = roundedTop(top);
        if (const double low = *std::ranges::min_element(curve.p5); low < range.begin)
            range.begin = -roundedTop(-low);
    };
    take(Strip::output, m_band->output_V);
    take(Strip::capacitor, m_band->capacitor_V);
    for (const study::BandCurve& lamp : m_band->lamps) take(Strip::lamps, lamp);
}

void StripBand::draw(QCPPainter* painter) {
    if (!isThere() || !m_plot->hasFirst()) return;
    const Theme& theme = m_plot->theme();
    drawCurve(painter, Strip::output, m_band->output_V, theme.setA);
    drawCurve(painter, Strip::capacitor, m_band->capacitor_V, theme.setA);
    std::vector<std::string> names;
    for (const study::BandCurve& lamp : m_band->lamps) names.push_back(lamp.colour);
    std::vector<QColor> colours = lampCurveColours(theme, names);
    if (m_plot->pageStyle().greys) std::ranges::fill(colours, theme.setA);
    for (std::size_t k = 0; k < colours.size(); ++k)
        drawCurve(painter, Strip::lamps, m_band->lamps[k], colours[k]);
}

void StripBand::drawCurve(QCPPainter* painter, Strip strip, const study::BandCurve& curve,
                          const QColor& colour) {
    if (!m_plot->isStripShown(strip)) return;
    const Span visible = m_plot->visibleSpan();
    const auto first = std::ranges::lower_bound(m_band->time_s, visible.begin);
    const auto last = std::ranges::upper_bound(m_band->time_s, visible.end);
    // One moment more on either side, so that the band goes up to the edges of the strip.
    const auto from =
        static_cast<std::size_t>(std::max<std::ptrdiff_t>(first - m_band->time_s.begin() - 1, 0));
    const auto to =
        std::min(static_cast<std::size_t>(last - m_band->time_s.begin()) + 1, m_band->time_s.size());
    if (from + 1 >= to) return;
    QPolygonF outline;
    const auto add = [&](std::size_t k, const std::vector<double>& values) {
        outline << QPointF(m_plot->pixelAt(m_band->time_s[k]), m_plot->valuePixel(strip, values[k]));
    };
    for (std::size_t k = from; k < to; ++k) add(k, curve.p95);
    for (std::size_t k = to; k-- > from;) add(k, curve.p5);
    painter->save();
    painter->setClipRect(m_plot->stripRect(strip));
    painter->setPen(Qt::NoPen);
    painter->setBrush(shade(colour));
    painter->drawPolygon(outline);
    painter->restore();
}

} // namespace blinkwright::widgets
