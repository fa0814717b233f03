// Putting parts on a reel together, so that their tolerances are one draw, and taking them off again.
//
//   apply(c, onReelWith(c, r2, r1));   // R2 comes onto R1's reel, or both onto a new one
//   apply(c, offReel(c, r2));          // a reel that is left with one part is none
#pragma once

#include "core/circuit/edit.h"

namespace blinkwright::circuit {

/// The reel that a part is on, by its place in Circuit::reels.
std::optional<std::size_t> reelOf(const Circuit& circuit, PartId part);
Edit onReelWith(const Circuit& circuit, PartId part, PartId other);
Edit offReel(const Circuit& circuit, PartId part);

} // namespace blinkwright::circuit
