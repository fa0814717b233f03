// The state levels of a recorded signal, and the noise on them.
//
//   SignalShape shape = shapeOf(values_V);
//   if (shape.isTwoLevel) shape.levels.high_V
// By the histogram-mode method of IEEE Std 181 (from memory): one histogram over all values; the fullest bin
// of its lower half is the low state, that of its upper half the high one. Each level is then the mean of the
// values about its mode, so that it is not rounded to a bin.
#pragma once

#include "core/circuit/measurement.h"

#include <span>

namespace blinkwright::study {

struct SignalShape {
    double lowest_V = 0, highest_V = 0; ///< spikes left out
    double noise_V = 0;                 ///< standard deviation of one sample, by neighbouring samples
    circuit::Levels levels = {};        ///< of the two states; only where isTwoLevel
    bool isTwoLevel = false;
    bool isRestless = false; ///< has two levels, but goes from one to the other with most samples

    double swing_V() const { return levels.high_V - levels.low_V; }
};

/// @param values_V finite.
SignalShape shapeOf(std::span<const double> values_V);

} // namespace blinkwright::study
