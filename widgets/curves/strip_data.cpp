#include "widgets/curves/strip_data.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

/// So many jumps within one pixel column are drawn as jumps; with more the column is a solid bar anyway.
constexpr int jumpsAColumn = 3;

/// Takes points one by one and passes on those that a straight line between kept ones would miss by more than
/// the tolerance (the cone of slopes that still hit every point since the last kept one).
class LineSaver {
  public:
    LineSaver(StripPoints& out, double tolerance) : m_out(out), m_tolerance(tolerance) {}

    void add(double t, double v) {
        if (!m_any) {
            keep(t, v);
            m_any = true;
            return;
        }
        if (m_pending && !continues(t, v)) {
            keep(m_t, m_v);
        }
        const double dt = t - m_out.last().key;
        if (dt <= 0) { // a jump: both of its ends are needed
            keep(t, v);
            return;
        }
        const double dv = v - m_out.last().value;
        m_low = std::max(m_low, (dv - m_tolerance) / dt);
        m_high = std::min(m_high, (dv + m_tolerance) / dt);
        m_t = t;
        m_v = v;
        m_pending = true;
    }
    void finish() {
        if (m_pending) keep(m_t, m_v);
    }

  private:
    bool continues(double t, double v) const {
        const double dt = t - m_out.last().key;
        if (t <= m_t || dt <= 0) return false;
        const double slope = (v - m_out.last().value) / dt;
        return slope >= m_low && slope <= m_high;
    }
    void keep(double t, double v) {
        m_out.append(QCPGraphData(t, v));
        m_low = -HUGE_VAL;
        m_high = HUGE_VAL;
        m_pending = false;
    }

    StripPoints& m_out;
    double m_tolerance;
    bool m_any = false;
    bool m_pending = false;
    double m_t = 0, m_v = 0;
    double m_low = -HUGE_VAL, m_high = HUGE_VAL;
};

struct Extremes {
    double low = 0;
    double high = 0;
    void take(const std::vector<double>& values) {
        if (values.empty()) return;
        const auto [least, most] = std::minmax_element(values.begin(), values.end());
        low = std::min(low, *least);
        high = std::max(high, *most);
    }
};

Span rounded(Extremes e) {
    // A leakage of nanoamperes below zero is no reason to open a negative half.
    const bool negative = e.low < -0.005 * e.high;
    return {negative ? -roundedTop(-e.low) : 0.0, e.high > 0 ? roundedTop(e.high) : 0.0};
}

void takeExtremes(const engine::Curves& c, std::array<Extremes, stripCount>& e) {
    e[0].take(c.output_V);
    e[1].take(c.capacitor_V);
    e[1].take(c.upperLevel_V);
    e[1].take(c.lowerLevel_V);
    for (const engine::LampTrace& lamp : c.lamps) e[2].take(lamp.current_A);
}

void takeExtremes(const RecordCurve& r, std::array<Extremes, stripCount>& e) {
    if (const auto* output = r.values(circuit::TraceOf::output)) e[0].take(*output);
    if (const auto* capacitor = r.values(circuit::TraceOf::capacitor)) e[1].take(*capacitor);
}

/// Whether two boards switch at levels that a strip shows apart; either may lie anywhere along its run.
bool levelsDiffer(const engine::Curves& a, const engine::Curves& b, double range) {
    constexpr double visible = 0.01; // of the strip: some two pixels
    const auto apart = [&](const std::vector<double>& x, const std::vector<double>& y) {
        if (x.empty() || y.empty()) return x.empty() != y.empty();
        const auto [lowX, highX] = std::minmax_element(x.begin(), x.end());
        const auto [lowY, highY] = std::minmax_element(y.begin(), y.end());
        return std::max(std::abs(*lowX - *lowY), std::abs(*highX - *highY)) > visible * range;
    };
    return apart(a.upperLevel_V, b.upperLevel_V) || apart(a.lowerLevel_V, b.lowerLevel_V);
}

/// Noise is drawn less finely than a curve: what lies within half a pixel of a line is on it.
constexpr double noisePart = 3;

RecordPoints recordPoints(const RecordCurve& r, Span visible, int columns, std::array<double, 2> tolerance) {
    const Span own{visible.begin - r.shift_s, visible.end - r.shift_s}; // in the record's own time
    const auto one = [&](circuit::TraceOf of, double within) {
        const std::vector<double>* values = r.values(of);
        if (!values) return StripPoints();
        StripPoints points = thinned(r.record().time_s, *values, own, columns, noisePart * within);
        for (QCPGraphData& point : points) point.key += r.shift_s;
        return points;
    };
    return {one(circuit::TraceOf::output, tolerance[0]), one(circuit::TraceOf::capacitor, tolerance[1])};
}

} // namespace

StripPoints thinned(const std::vector<double>& time_s, const std::vector<double>& value, Span visible,
                    int columns, double tolerance) {
    StripPoints out;
    const std::size_t n = std::min(time_s.size(), value.size());
    if (n == 0 || !(visible.length() > 0)) return out;
    const auto all = time_s.begin() + static_cast<std::ptrdiff_t>(n);
    // One point more at either side, so that the line reaches the edges of the strip.
    auto first =
        static_cast<std::size_t>(std::lower_bound(time_s.begin(), all, visible.begin) - time_s.begin());
    auto last = static_cast<std::size_t>(std::upper_bound(time_s.begin(), all, visible.end) - time_s.begin());
    first = first > 0 ? first - 1 : 0;
    last = std::min(last + 1, n);

    columns = std::max(columns, 1);
    const double column_s = visible.length() / columns;
    LineSaver saver(out, tolerance);
    double columnBefore = -HUGE_VAL;
    int jumps = 0; // that the column has been cut at
    for (std::size_t k = first; k < last;) {
        const double column = std::floor((time_s[k] - visible.begin) / column_s);
        if (column != columnBefore) jumps = 0;
        columnBefore = column;
        const double end_s = visible.begin + (column + 1) * column_s;
        std::size_t least = k, most = k, tail = k;
        std::size_t next = k + 1;
        for (; next < last && time_s[next] < end_s; ++next) {
            if (time_s[next] == time_s[tail] && jumps < jumpsAColumn) {
                ++jumps;
                break;
            }
            if (value[next] < value[least]) least = next;
            if (value[next] > value[most]) most = next;
            tail = next;
        }
        const auto [inner, outer] = std::minmax(least, most);
        saver.add(time_s[k], value[k]);
        if (inner > k) saver.add(time_s[inner], value[inner]);
        if (outer > inner) saver.add(time_s[outer], value[outer]);
        if (tail > outer) saver.add(time_s[tail], value[tail]);
        k = next;
    }
    saver.finish();
    return out;
}

double roundedTop(double high) {
    if (!(high > 0) || !std::isfinite(high)) return 0;
    const double decade = std::pow(10.0, std::floor(std::log10(high)));
    for (double step : {1.0, 1.2, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0})
        if (high <= step * decade * (1 + 1e-9)) return step * decade;
    return 10 * decade;
}

StripPicture stripPicture(const engine::Curves* curves, const engine::Curves* echo, Span visible, int columns,
                          std::array<int, stripCount> heights_px, const StripPicture* before) {
    return stripPicture({curves, echo, nullptr, false, nullptr}, visible, columns, heights_px, before);
}

StripPicture stripPicture(const StripSources& sources, Span visible, int columns,
                          std::array<int, stripCount> heights_px, const StripPicture* before) {
    const auto [curves, echo, second, echoOfSecond, records] = sources;
    StripPicture picture;
    picture.echoOfSecond = echoOfSecond;
    std::array<Extremes, stripCount> extremes;
    if (curves) takeExtremes(*curves, extremes);
    if (echo) takeExtremes(*echo, extremes);
    if (second) takeExtremes(*second, extremes);
    if (records)
        for (const RecordCurve& record : *records) takeExtremes(record, extremes);
    std::array<double, stripCount> tolerance{};
    for (std::size_t s = 0; s < stripCount; ++s) {
        picture.ranges[s] = rounded(extremes[s]);
        tolerance[s] = 0.15 * picture.ranges[s].length() / std::max(heights_px[s], 1);
    }
    const auto cut = [&](const engine::Curves& c, CurvePoints& out, bool levels) {
        const auto one = [&](const std::vector<double>& value, std::size_t strip) {
            return thinned(c.time_s, value, visible, columns, tolerance[strip]);
        };
        out.output = one(c.output_V, 0);
        out.capacitor = one(c.capacitor_V, 1);
        if (levels) {
            out.upperLevel = one(c.upperLevel_V, 1);
            out.lowerLevel = one(c.lowerLevel_V, 1);
        }
        out.lamps.reserve(c.lamps.size());
        for (const engine::LampTrace& lamp : c.lamps)
            out.lamps.push_back({lamp.ref, lamp.colour, -1, one(lamp.current_A, 2)});
    };
    if (records && before && before->ranges == picture.ranges)
        picture.records = before->records;
    else if (records)
        for (const RecordCurve& record : *records)
            picture.records.push_back(recordPoints(record, visible, columns, {tolerance[0], tolerance[1]}));
    if (curves) cut(*curves, picture.curves, true);
    if (second)
        cut(*second, picture.second, !curves || levelsDiffer(*curves, *second, picture.ranges[1].length()));
    if (echo) {
        const engine::Curves* owner = echoOfSecond ? second : curves;
        if (before && before->ranges == picture.ranges)
            picture.echo = before->echo;
        else
            cut(*echo, picture.echo, false);
        for (LampPoints& lamp : picture.echo.lamps) lamp.twin = -1;
        for (std::size_t k = 0; owner && k < echo->lamps.size(); ++k)
            for (std::size_t j = 0; j < owner->lamps.size(); ++j)
                if (owner->lamps[j].id == echo->lamps[k].id) picture.echo.lamps[k].twin = static_cast<int>(j);
    }
    return picture;
}

} // namespace blinkwright::widgets
