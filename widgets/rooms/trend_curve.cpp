// What a trend's curve is at any value, and where it has gaps.
#include "widgets/rooms/trend_plot.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

double between(double a, double b, double share, bool even) {
    return even ? a + (b - a) * share : a * std::pow(b / a, share);
}

} // namespace

std::vector<TrendGap> gapsOf(const TrendLine& line, const TrendRange& range) {
    std::vector<TrendGap> gaps;
    if (!line.trend) return gaps;
    const auto& points = line.trend->points;
    const auto middle = [&](std::size_t k) {
        return between(points[k].value, points[k + 1].value, 0.5, range.even);
    };
    for (std::size_t k = 0; k < points.size(); ++k) {
        if (points[k].settled) continue;
        const std::size_t first = k;
        while (k + 1 < points.size() && !points[k + 1].settled) ++k;
        gaps.push_back({first == 0 ? points.front().value : middle(first - 1),
                        k + 1 == points.size() ? points.back().value : middle(k)});
    }
    return gaps;
}

std::optional<double> figureAt(const TrendLine& line, const TrendFigure& figure, const TrendRange& range,
                               double value) {
    for (const study::TrendPoint& point : line.exact)
        if (point.value == value) return figureOf(figure, point);
    if (!line.trend) return {};
    const auto& points = line.trend->points;
    const auto after = std::ranges::find_if(points, [&](const auto& p) { return p.value >= value; });
    if (after == points.end()) return {};
    const auto high = figureOf(figure, *after);
    if (after == points.begin() || after->value == value) return after->value == value ? high : std::nullopt;
    const auto before = after - 1;
    const auto low = figureOf(figure, *before);
    if (!low || !high) return {};
    const double share = range.even
                             ? (value - before->value) / (after->value - before->value)
                             : std::log(value / before->value) / std::log(after->value / before->value);
    return between(*low, *high, share, range.even || *low <= 0 || *high <= 0);
}

} // namespace blinkwright::widgets
