// Curves for drawing and for CSV: the traces of the three strips on one time axis.
//
//   Curves c = curvesOf(board, run.wave);
//   c.lamps[0].current_A[k]      // at c.time_s[k]
#pragma once

#include "core/engine/waveform.h"

#include <limits>
#include <string>
#include <vector>

namespace blinkwright::engine {

struct LampTrace {
    circuit::PartId id;
    std::string ref;
    std::string colour;
    std::vector<double> current_A; ///< anode to cathode
};

/// All vectors have the length of time_s. Times ascend; a switching stands twice, just before and just after.
struct Curves {
    std::vector<double> time_s;
    std::vector<double> output_V; ///< first timer's pin 3 against 0 V
    std::vector<double>
        capacitor_V; ///< timing capacitor: the first timer's pin 6 (pin 2 if 6 is open) against 0 V
    std::vector<double> upperLevel_V; ///< threshold level (pin 5)
    std::vector<double> lowerLevel_V; ///< trigger level
    std::vector<LampTrace> lamps;     ///< in file order
    std::vector<double> switchings_s; ///< of the first timer within the span
};

/// @param inside points within each step, besides its ends; 3 draws smoothly.
/// @param until_s the curves end here, within a step if need be.
Curves curvesOf(const devices::Board& board, const Waveform& wave, int inside = 3,
                double until_s = std::numeric_limits<double>::infinity());

/// The values under the moment line.
struct Moment {
    double time_s = 0;
    double output_V = 0, capacitor_V = 0, upperLevel_V = 0, lowerLevel_V = 0;
    std::vector<double> lamps_A;
};
/// Linear between neighbouring points; at a switching the value just after it.
Moment momentOf(const Curves& curves, double time_s);

/// The curves between two times: their points there, and the ends between points as momentOf() has them.
Curves within(const Curves& curves, double begin_s, double end_s);

} // namespace blinkwright::engine
