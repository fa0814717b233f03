#include "core/study/record_switchings.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace blinkwright::study {

namespace {

// Bounds without a source are from trials with made-up records.
/// A turn counts when the signal has come back by this share of its range, and by so many standard
/// deviations.
constexpr double comeBack = 0.2, comeBackOverNoise = 8;
/// Turns are the timer's if each lies within this share of the swing of the others of its kind.
constexpr double steady = 0.15;
/// Samples for the parabolas: from some noise off the turn to this share of the swing.
constexpr double reach = 0.3, guardOverNoise = 4;
constexpr std::size_t samplesForParabola = 6, samplesForRise = 3;
/// The first charge begins where the signal has risen by this share of the swing.
constexpr double riseOfStart = 0.03;

struct Turn {
    std::size_t at = 0;
    bool high = false;
};

/// c0 + c1 x + c2 x^2
using Parabola = std::array<double, 3>;

/// By least squares through points; a straight line of few of them. Nothing for fewer than three.
std::optional<Parabola> fitted(const std::vector<std::pair<double, double>>& points) {
    const std::size_t terms = points.size() >= samplesForParabola ? 3 : 2;
    if (points.size() < samplesForRise) return {};
    std::array<std::array<double, 4>, 3> a{};
    for (const auto& [x, y] : points) {
        const std::array<double, 3> powers{1, x, x * x};
        for (std::size_t r = 0; r < terms; ++r) {
            for (std::size_t c = 0; c < terms; ++c) a[r][c] += powers[r] * powers[c];
            a[r][3] += powers[r] * y;
        }
    }
    for (std::size_t p = 0; p < terms; ++p) {
        std::size_t pivot = p;
        for (std::size_t r = p + 1; r < terms; ++r)
            if (std::abs(a[r][p]) > std::abs(a[pivot][p])) pivot = r;
        if (!(std::abs(a[pivot][p]) > 1e-12)) return {};
        std::swap(a[p], a[pivot]);
        for (std::size_t r = 0; r < terms; ++r) {
            if (r == p) continue;
            const double factor = a[r][p] / a[p][p];
            for (std::size_t c = p; c < 4; ++c) a[r][c] -= factor * a[p][c];
        }
    }
    Parabola fit{};
    for (std::size_t p = 0; p < terms; ++p) fit[p] = a[p][3] / a[p][p];
    return fit;
}

class TurnTimes {
  public:
    TurnTimes(std::span<const double> time, std::span<const double> values, double swing, double noise)
        : m_time(time), m_values(values), m_guard(guardOverNoise * noise), m_reach(reach * swing + m_guard) {}

    /// @param from, to the turns before and after, or the ends of the record
    double of(const Turn& turn, std::size_t from, std::size_t to) const {
        std::size_t left = turn.at, right = turn.at; // where the noise is left behind
        const auto before = side(turn, from, -1, left), after = side(turn, to, 1, right);
        const double here = m_time[turn.at];
        const double earliest = m_time[left], latest = m_time[right];
        const double unit = std::max({here - m_time[from], m_time[to] - here, 1e-300});
        const auto a = fitted(scaled(before, here, unit)), b = fitted(scaled(after, here, unit));
        if (!a && !b) return here;
        // One side too quick to be seen: the turn lies between its last sample and the next on that side.
        if (!b) return (here + m_time[std::min(turn.at + 1, to)]) / 2;
        if (!a) return (here + m_time[std::max(turn.at, from + 1) - 1]) / 2;
        const double x = meeting(*a, *b);
        const double t = here + x * unit;
        return t >= earliest && t <= latest ? t : here;
    }

  private:
    using Points = std::vector<std::pair<double, double>>;
    /// Samples of one side of a turn, from where the noise is left behind on.
    Points side(const Turn& turn, std::size_t end, int step, std::size_t& edge) const {
        Points points;
        bool clear = false;
        for (std::size_t k = turn.at; k != end;) {
            k += static_cast<std::size_t>(step);
            const double off = std::abs(m_values[k] - m_values[turn.at]);
            if (off > m_reach) {
                if (!clear) edge = k;
                break;
            }
            if (!clear && off > m_guard) {
                clear = true;
                edge = k;
            }
            if (clear) points.push_back({m_time[k], m_values[k]});
        }
        return points;
    }
    static Points scaled(Points points, double origin, double unit) {
        for (auto& [x, y] : points) x = (x - origin) / unit;
        return points;
    }
    /// Where two parabolas meet next to x = 0.
    static double meeting(const Parabola& a, const Parabola& b) {
        const double c = a[0] - b[0], s = a[1] - b[1], q = a[2] - b[2];
        if (s == 0) return 0;
        double x = -c / s;
        for (int round = 0; round < 4; ++round) {
            const double slope = s + 2 * q * x;
            if (slope == 0) break;
            x -= (c + s * x + q * x * x) / slope;
        }
        return std::isfinite(x) ? x : 0;
    }

    std::span<const double> m_time, m_values;
    double m_guard, m_reach;
};

/// The turns that the signal has come back from far enough. What it begins with is none.
std::vector<Turn> turnsOf(std::span<const double> values, double back) {
    std::vector<Turn> turns;
    std::size_t lowest = 0, highest = 0;
    int direction = 0; // of the signal: +1 up
    for (std::size_t k = 1; k < values.size(); ++k) {
        if (values[k] > values[highest]) highest = k;
        if (values[k] < values[lowest]) lowest = k;
        if (direction >= 0 && values[highest] - values[k] > back) {
            if (direction > 0) turns.push_back({highest, true});
            direction = -1;
            lowest = k;
        } else if (direction <= 0 && values[k] - values[lowest] > back) {
            if (direction < 0) turns.push_back({lowest, false});
            direction = 1;
            highest = k;
        }
        if (direction > 0) lowest = k;
        if (direction < 0) highest = k;
    }
    return turns;
}

/// When a signal that begins flat begins to rise: where a line through the beginning of its rise has the flat
/// level; the first sample where it rises from there on.
double startOf(std::span<const double> time, std::span<const double> values, std::size_t until, double swing,
               double noise) {
    const double threshold = std::max(riseOfStart * swing, 4 * noise);
    const double begin = values.front();
    std::size_t flat = until;
    while (flat > 0 && values[flat] - begin > threshold) --flat;
    if (flat < samplesForParabola) return time.front();
    double level = 0;
    for (std::size_t k = 0; k <= flat; ++k) level += values[k];
    level /= static_cast<double>(flat + 1);
    std::vector<std::pair<double, double>> rise;
    const double origin = time[flat], unit = std::max(time[until] - origin, 1e-300);
    for (std::size_t k = flat + 1; k <= until && values[k] - begin < threshold + reach * swing; ++k)
        rise.push_back({(time[k] - origin) / unit, values[k]});
    const auto fit = fitted(rise);
    if (!fit || (*fit)[1] <= 0) return origin;
    double x = (level - (*fit)[0]) / (*fit)[1];
    for (int round = 0; round < 4; ++round)
        if (const double slope = (*fit)[1] + 2 * (*fit)[2] * x; slope > 0)
            x -= ((*fit)[0] - level + (*fit)[1] * x + (*fit)[2] * x * x) / slope;
    return std::isfinite(x) && std::abs(x) < 1 ? std::max(time.front(), origin + x * unit) : origin;
}

} // namespace

Switchings turningsOf(std::span<const double> time, std::span<const double> values,
                      const SignalShape& shape) {
    Switchings found;
    if (values.size() < 3) return found;
    const double range = shape.highest_V - shape.lowest_V;
    const double back = std::max(comeBack * range, comeBackOverNoise * shape.noise_V);
    if (!(back > 0)) return found;
    const std::vector<Turn> turns = turnsOf(values, back);
    if (turns.size() < 2) return found;

    const auto mean = [&](bool high) {
        double sum = 0;
        int count = 0;
        for (const Turn& turn : turns)
            if (turn.high == high) {
                sum += values[turn.at];
                ++count;
            }
        return sum / count;
    };
    const circuit::Levels levels{mean(true), mean(false)};
    const double swing = levels.high_V - levels.low_V;
    for (const Turn& turn : turns)
        if (std::abs(values[turn.at] - (turn.high ? levels.high_V : levels.low_V)) > steady * swing)
            return found;

    const TurnTimes times(time, values, swing, shape.noise_V);
    double squares = 0;
    for (std::size_t k = 0; k < turns.size(); ++k) {
        const std::size_t from = k > 0 ? turns[k - 1].at : 0;
        const std::size_t to = k + 1 < turns.size() ? turns[k + 1].at : values.size() - 1;
        double t = times.of(turns[k], from, to);
        if (!found.times_s.empty()) t = std::max(t, found.times_s.back());
        found.times_s.push_back(t);
        const double bracket =
            (time[std::min(turns[k].at + 1, to)] - time[std::max(turns[k].at, from + 1) - 1]) / 2;
        squares += bracket * bracket;
    }
    found.levels = levels;
    found.firstRises = !turns.front().high;
    found.bracket_s = std::sqrt(squares / static_cast<double>(turns.size()));
    if (turns.front().high && values.front() < levels.low_V - steady * swing)
        found.start_s = startOf(time, values, turns.front().at, swing, shape.noise_V);
    return found;
}

} // namespace blinkwright::study
