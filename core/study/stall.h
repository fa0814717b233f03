// Why a timer that has its supply comes to rest instead of blinking, in sentences that say what to mend.
#pragma once

#include "core/engine/transient.h"
#include "core/study/cause.h"

#include <vector>

namespace blinkwright::study {

/// @param run a run from power-on that ended with nothing moving, its waveform kept.
std::vector<Cause> stallCauses(const devices::Board& board, const engine::Run& run);

/// The time after which nothing visible happens any more: all nodes stay within a hundredth of the supply of
/// where they end; for drawing. [s]
double restReached_s(const devices::Board& board, const engine::Waveform& wave);

} // namespace blinkwright::study
