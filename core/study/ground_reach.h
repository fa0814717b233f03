// Which nodes of a board hang together with 0 V through parts of any kind. The others have no voltage that
// anybody could measure.
//
//   const std::vector<bool> grounded = reachedFromGround(board);
//   everyPart(board, [](const devices::Named& part, const std::vector<devices::Node>& pins) { ... });
#pragma once

#include "core/devices/board.h"

#include <vector>

namespace blinkwright::study {

/// Calls `seen(part, pins)` for every part, with the nodes of its pins.
template <class Seen>
void everyPart(const devices::Board& board, const Seen& seen) {
    using Nodes = std::vector<devices::Node>;
    for (const auto& p : board.supplies) seen(p, Nodes{p.plus, p.minus});
    for (const auto& p : board.timers) seen(p, Nodes(p.pins.begin(), p.pins.end()));
    for (const auto& p : board.resistors) seen(p, Nodes{p.a, p.b});
    for (const auto& p : board.variables) seen(p, Nodes{p.a, p.b, p.wiper});
    for (const auto& p : board.capacitors) seen(p, Nodes{p.plus, p.minus});
    for (const auto& p : board.junctions) seen(p, Nodes{p.anode, p.cathode});
    for (const auto& p : board.switches) seen(p, Nodes{p.a, p.b});
}

/// By node; open switches and capacitors join, too. All false where the first supply's minus is open or
/// there is no supply: then nothing says what 0 V is.
std::vector<bool> reachedFromGround(const devices::Board& board);

} // namespace blinkwright::study
