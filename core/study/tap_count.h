// A count of flashes by tapping along with them: each tap is a time with some scatter, the straight line
// through them gives the cycle time, and the distances from the line say how well it is known.
//
//   std::optional<TapCount> c = tapCount({0.00, 0.97, 2.02, 2.99, 4.01});
//   c->count.flashes;             // 4: from the first tap to the last
//   c->count.time_s.value;        // four cycles by the line, not the last tap less the first
//   c->rate_Hz;
#pragma once

#include "core/circuit/measurement.h"

#include <optional>
#include <vector>

namespace blinkwright::study {

/// What a hand on a button is known to: standard uncertainty of one press. Reaction times differ by 0.1 to
/// 0.2 s from press to press (from memory, no source).
inline constexpr double pressUncertainty_s = 0.15;
/// With fewer taps the scatter itself is hardly known (3 degrees of freedom at this number), and the press
/// counts with pressUncertainty_s at least.
inline constexpr int fewestTaps = 5;

struct TapCount {
    circuit::Count count;            ///< cycles from the first tap to the last, their time by the line
    double rate_Hz = 0;              ///< of the line
    std::optional<double> scatter_s; ///< standard deviation of a tap about the line; from three taps on
    /// The tap before the longest interval, counted from 0, where that is more than 1.5 times the middle one:
    /// a flash may have gone by without a tap.
    std::optional<int> gapAfter;
};

/// Type A evaluation by least squares (JCGM 100:2008, 4.2 and H.3): u(T) = cycles * s / sqrt(sum (k -
/// mean)²).
/// @param taps_s ascending.
/// @return nothing for fewer than two taps, or where they do not ascend.
std::optional<TapCount> tapCount(const std::vector<double>& taps_s);

/// Start and stop by hand: both are off by as much, each by itself (JCGM 100:2008, 5.1.2).
/// @param press_s standard uncertainty of one press, >= 0.
double startAndStop(double press_s);

} // namespace blinkwright::study
