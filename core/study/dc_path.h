// The way that direct current takes from one node to another, and what stands in it.
//
//   auto path = dcPath(board, supply.plus, timer.pins[timerPin::supply], {ground});
//   path->parts            // {"S1", "R9"}
//   path->openSwitches     // {"S1"}: nothing flows as drawn
#pragma once

#include "core/devices/board.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace blinkwright::study {

struct DcPath {
    std::vector<std::string> parts;        ///< in the order that the current meets them
    double resistance_ohm = 0;             ///< a junction counts as its series resistance
    std::vector<std::string> openSwitches; ///< among the parts
    std::vector<std::string> backward;     ///< lamps, diodes and supplies among them that point the other way
    bool conducts() const { return openSwitches.empty() && backward.empty(); }
};

/// The path of least resistance; one that conducts goes before one that does not. Capacitors and timers are
/// no way; a supply is one from its minus to its plus.
/// @param barred nodes that the path may not pass through.
/// @param without a supply that is left out, or null.
/// @return nothing where there is none; a path without parts where both are one node.
std::optional<DcPath> dcPath(const devices::Board& board, devices::Node from, devices::Node to,
                             const std::set<devices::Node>& barred = {},
                             const devices::Supply* without = nullptr);

} // namespace blinkwright::study
