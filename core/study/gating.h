// What commands the cycle of the first timer where it has no single period: other timers or a switch, and
// what joins them to it.
//
//   commandedBy(board, run, settled)[0].sentence
//   // "U1 has no single period of its own: the output (pin 3) of U2 is joined to reset (pin 4) of U1."
#pragma once

#include "core/engine/transient.h"
#include "core/study/cause.h"

namespace blinkwright::study {

/// @param settled of a first timer that blinks but has no settled period.
std::vector<Cause> commandedBy(const devices::Board& board, const engine::Settled& settled);

} // namespace blinkwright::study
