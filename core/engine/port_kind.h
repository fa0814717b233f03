// What kinds of ports there are, and what counts as a straight piece of their laws: plain data, free of
// the laws themselves.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace blinkwright::engine {

enum class PortKind : std::uint8_t {
    junction,
    idle,       ///< timer's own current
    threshold,  ///< threshold input
    trigger,    ///< trigger input
    resetInput, ///< CMOS reset input
    discharge,
    outputHighBipolar,
    outputLowBipolar,
    outputCmos,
};

/// What counts as straight, for a given accuracy.
struct StraightBand {
    double widths = 16;     ///< this many times its width from its knee a law is on its straight piece
    double current = 1e-13; ///< a junction that carries less counts as dark [A]
    double shift = 1e-7;    ///< a correction of a crossing by less than this share of the step is the last
    /// A share of `accuracy` / 100 of what a law switches is neglected at most.
    static StraightBand of(double accuracy) {
        return {.widths = std::clamp(-std::log(0.01 * accuracy), 8.0, 37.0),
                .current = 1e-8 * accuracy,
                .shift = 0.1 * accuracy};
    }
};

} // namespace blinkwright::engine
