// What flows into a node of a board at rest, part by part: who feeds a net and who drains it. At rest a
// capacitor passes its leakage and nothing else.
//
//   for (const Flow& f : flowsInto(board, at, node)) f.name, f.current_A;
#pragma once

#include "core/engine/waveform.h"

#include <string>
#include <vector>

namespace blinkwright::study {

struct Flow {
    std::string name;     ///< `R1`, `leakage of C1`, `the threshold input of U1`
    std::string place;    ///< `R1`, `C1`, `U1:6`
    double current_A = 0; ///< into the node: above 0 feeds it
};

/// The largest first, by magnitude; what carries less than a thousandth of the largest is left out.
std::vector<Flow> flowsInto(const devices::Board& board, const engine::Instant& at, devices::Node node);

} // namespace blinkwright::study
