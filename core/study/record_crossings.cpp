#include "core/study/record_switchings.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace blinkwright::study {

namespace {

/// Half of the hysteresis band over the swing: at least, and at most with much noise.
constexpr double narrowest = 0.1, widest = 0.25;
/// ... and in standard deviations of the noise.
constexpr double bandOverNoise = 4;
constexpr std::size_t samplesForLine = 5;
constexpr std::size_t longOverGlitch = 10;

struct Crossing {
    std::size_t before = 0, after = 0; ///< samples on either side of the band
};

double between(double t0, double v0, double t1, double v1, double level) {
    if (v1 == v0) return (t0 + t1) / 2;
    return t0 + (t1 - t0) * std::clamp((level - v0) / (v1 - v0), 0.0, 1.0);
}

/// Where the signal has the level, from the last sample on one side of the band to the first on the other.
double timeOf(std::span<const double> time, std::span<const double> values, const Crossing& at,
              double level) {
    const std::size_t count = at.after - at.before + 1;
    const double t0 = time[at.before], t1 = time[at.after];
    if (count >= samplesForLine) {
        double meanT = 0, meanV = 0;
        for (std::size_t k = at.before; k <= at.after; ++k) {
            meanT += time[k] - t0;
            meanV += values[k];
        }
        meanT /= static_cast<double>(count);
        meanV /= static_cast<double>(count);
        double squares = 0, along = 0;
        for (std::size_t k = at.before; k <= at.after; ++k) {
            const double t = time[k] - t0 - meanT;
            squares += t * t;
            along += t * (values[k] - meanV);
        }
        if (along != 0 && squares > 0)
            return std::clamp(t0 + meanT + (level - meanV) * squares / along, t0, t1);
    }
    // Of several crossings in the band, the mean.
    double sum = 0;
    int crossings = 0;
    for (std::size_t k = at.before; k < at.after; ++k)
        if ((values[k] < level) != (values[k + 1] < level)) {
            sum += between(time[k], values[k], time[k + 1], values[k + 1], level);
            ++crossings;
        }
    return crossings > 0 ? sum / crossings : (t0 + t1) / 2;
}

/// Takes out pairs of crossings around states that are too short to be more than a glitch.
std::size_t dropGlitches(std::vector<Crossing>& crossings, int glitchSamples) {
    std::array<std::size_t, 2> longest{}; // of states after even and after odd crossings
    for (std::size_t k = 0; k + 1 < crossings.size(); ++k)
        longest[k % 2] = std::max(longest[k % 2], crossings[k + 1].after - crossings[k].after);
    std::vector<std::pair<Crossing, std::size_t>> kept; // with the kind of the state that follows
    std::size_t dropped = 0;
    for (std::size_t k = 0; k < crossings.size(); ++k) {
        if (!kept.empty()) {
            const std::size_t length = crossings[k].after - kept.back().first.after;
            if (length < static_cast<std::size_t>(std::max(glitchSamples, 0)) &&
                longOverGlitch * length <= longest[kept.back().second]) {
                kept.pop_back();
                ++dropped;
                continue;
            }
        }
        kept.push_back({crossings[k], k % 2});
    }
    crossings.clear();
    for (const auto& [crossing, kind] : kept) crossings.push_back(crossing);
    return dropped;
}

} // namespace

Switchings crossingsOf(std::span<const double> time, std::span<const double> values, const SignalShape& shape,
                       int glitchSamples) {
    Switchings found;
    found.levels = shape.levels;
    const double swing = shape.swing_V(), middle = (shape.levels.high_V + shape.levels.low_V) / 2;
    const double half = std::clamp(bandOverNoise * shape.noise_V, narrowest * swing, widest * swing);
    std::vector<Crossing> crossings;
    bool firstRises = true;
    int state = 0; // not known before the signal has left the band once
    std::size_t last = 0;
    for (std::size_t k = 0; k < values.size(); ++k) {
        const int side = values[k] >= middle + half ? 1 : values[k] <= middle - half ? -1 : 0;
        if (side == 0) continue;
        if (state != 0 && side != state) {
            if (crossings.empty()) firstRises = side > 0;
            crossings.push_back({last, k});
        }
        state = side;
        last = k;
    }
    found.glitches = dropGlitches(crossings, glitchSamples);
    // A glitch takes two crossings along, so that rises and falls still take turns.
    found.firstRises = firstRises;
    double squares = 0;
    for (const Crossing& crossing : crossings) {
        found.times_s.push_back(timeOf(time, values, crossing, middle));
        const double bracket = time[crossing.after] - time[crossing.before];
        squares += bracket * bracket;
    }
    if (!crossings.empty()) found.bracket_s = std::sqrt(squares / static_cast<double>(crossings.size()));
    return found;
}

} // namespace blinkwright::study
