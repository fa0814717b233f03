// The switchings of a recorded signal: where a two-level one crosses the middle of its levels, where a
// capacitor's turns.
//
//   Switchings s = crossingsOf(time_s, values_V, shape, 3);
//   s.times_s, s.firstRises
#pragma once

#include "core/study/record_levels.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace blinkwright::study {

struct Switchings {
    std::vector<double> times_s; ///< ascending
    bool firstRises = true;      ///< of the output: a capacitor's highest point is a fall
    circuit::Levels levels = {}; ///< between which the signal goes
    std::size_t glitches = 0;    ///< states too short to count
    double bracket_s = 0; ///< root mean square of the times between the samples that a switching lies between
    std::optional<double> start_s = {}; ///< when a capacitor began to charge from below its levels
};

/// Of a two-level signal. A hysteresis band about the middle, wider with more noise, tells states from noise;
/// a switching on few samples is interpolated, one on many is where a straight line through them has the
/// middle.
/// @param glitchSamples a state of fewer samples does not count, where others of its kind are ten times as
/// long
Switchings crossingsOf(std::span<const double> time_s, std::span<const double> values_V,
                       const SignalShape& shape, int glitchSamples);

/// Of a capacitor between the timer's two levels: where parabolas through either side of a turn meet. Empty
/// where the turns are not all at the same two levels.
Switchings turningsOf(std::span<const double> time_s, std::span<const double> values_V,
                      const SignalShape& shape);

} // namespace blinkwright::study
