#include "core/study/tap_count.h"

#include "core/study/beat.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

constexpr double muchLonger = 1.5;

std::optional<int> gapIn(const std::vector<double>& taps) {
    if (taps.size() < 4) return {};
    std::vector<double> between;
    for (std::size_t k = 1; k < taps.size(); ++k) between.push_back(taps[k] - taps[k - 1]);
    const auto longest = std::ranges::max_element(between);
    const int at = static_cast<int>(longest - between.begin());
    const double most = *longest;
    const auto middle = between.begin() + static_cast<std::ptrdiff_t>(between.size() / 2);
    std::nth_element(between.begin(), middle, between.end());
    return most > muchLonger * *middle ? std::optional(at) : std::nullopt;
}

} // namespace

double startAndStop(double press_s) {
    return std::sqrt(2.0) * press_s;
}

std::optional<TapCount> tapCount(const std::vector<double>& taps) {
    if (taps.size() < 2) return {};
    for (std::size_t k = 1; k < taps.size(); ++k)
        if (!(taps[k] > taps[k - 1])) return {};
    const Beat beat = beatOf(taps);
    TapCount tapped;
    tapped.rate_Hz = 1 / beat.period_s;
    if (beat.times > 2) tapped.scatter_s = std::sqrt(beat.squares_s2 / (beat.times - 2));
    const double press = beat.times < fewestTaps ? std::max(pressUncertainty_s, tapped.scatter_s.value_or(0))
                                                 : *tapped.scatter_s;
    const int cycles = beat.times - 1;
    tapped.count = {cycles, {cycles * beat.period_s, cycles * press / std::sqrt(beat.stretch)}};
    tapped.gapAfter = gapIn(taps);
    return tapped;
}

} // namespace blinkwright::study
