// Places for the parts that a file gives none, free of Qt: each timer in the middle of its block, its timing
// parts on its right, what hangs on its output on its left, the supply and what lies across it on the far
// left. The timer as a block has its inputs on the left, so there the two sides change places. Nothing
// overlaps.
//
//   std::map<PartId, Pose> poses = layOut(circuit);   // stated places as they are, the rest chosen
#pragma once

#include "widgets/hookup/geometry.h"

#include <map>

namespace blinkwright::widgets::hookup {

std::map<circuit::PartId, Pose> layOut(const circuit::Circuit& circuit, TimerLook look = TimerLook::package);

/// The net of the first supply's plus and minus: drawn as rails where three or more pins share it.
struct RailNets {
    std::optional<circuit::NetId> plus, zero;
};
RailNets railNets(const circuit::Circuit& circuit);

} // namespace blinkwright::widgets::hookup
