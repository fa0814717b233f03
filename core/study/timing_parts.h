// The parts that make the timing of the first timer.
//
//   timingParts(board).capacitors[0]        // "C1"
#pragma once

#include "core/devices/board.h"

#include <string>
#include <vector>

namespace blinkwright::study {

struct TimingParts {
    std::vector<std::string> resistors, capacitors; ///< designators; variable resistors among the resistors
    std::vector<std::size_t> diodes;                ///< by index into Board::junctions
    bool discharge = true;                          ///< pin 7 takes part
    bool output = false;                            ///< pin 3 does
};
/// Resistors, capacitors and diodes of the textbook's formula. Where there is no formula, all resistors and
/// capacitors that move the settled period or duty cycle noticeably; none on a board of very many.
TimingParts timingParts(const devices::Board& board);

/// The conductance that stands for the leakage which makers allow an electrolytic, 0.01 C V; common practice,
/// no source. 0 for a capacitor so small that it will be none. [S]
double usualLeakage_S(double farad);

} // namespace blinkwright::study
