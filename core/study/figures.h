// Figures over a span of waveform: means, effective values, peaks, lit times. Integrals by the five-point
// Lobatto rule on every step's dense output, so that the instants just after and just before each switching
// are among the points.
//
//   Figures f = figuresOf(board, settled.wave);
//   f.junctions[0].mean_A; f.supplies[0].peak_A;
#pragma once

#include "core/engine/waveform.h"

#include <vector>

namespace blinkwright::study {

/// All over one span. Powers are what the part turns into heat (a lamp: heat and light).
struct JunctionFigures {
    double peak_A = 0, mean_A = 0, rms_A = 0, charge_C = 0;
    double highCharge_C = 0; ///< of charge_C what passes in the high phase
    double lit_s = 0;        ///< time above `litShare` of the rated current; lamps only
    double overRated_s = 0; ///< longest time in one piece above `ratings` times the rated current; lamps only
    double reversePeak_V = 0; ///< cathode above anode, 0 if never
};
struct PartFigures {
    double meanPower_W = 0, peakCurrent_A = 0, peakVoltage_V = 0;
    double highEnergy_J = 0; ///< of the heat what comes in the high phase
};
/// Highest currents of a timer's pins, each 0 if it never flows that way.
struct TimerPeaks {
    double sourced_A = 0, sunk_A = 0, discharge_A = 0;
};
struct SupplyFigures {
    double mean_A = 0, peak_A = 0, energy_J = 0;
};

struct Figures {
    double span_s = 0;
    // Each in the order of the board's list.
    std::vector<JunctionFigures> junctions;
    std::vector<SupplyFigures> supplyCurrents;
    std::vector<TimerPeaks> timerPeaks;
    std::vector<double> capacitorLowest_V; ///< lowest voltage of plus against minus
    std::vector<PartFigures> supplies, timers, resistors, variables, capacitors, junctionParts, switches;
};

inline constexpr double litShare = 0.05; ///< of rated current: from here a lamp counts as lit

/// @param high_s of a settled period: how long the first timer's output is high from its begin on; 0 where
/// there is no such period.
/// @param ratings how many times its rated current a lamp may carry before overRated_s counts.
Figures figuresOf(const devices::Board& board, const engine::Waveform& wave, double high_s = 0,
                  double ratings = 1);

} // namespace blinkwright::study
