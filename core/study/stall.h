// Why a timer that came to rest does not blink, in sentences that say what to mend.
#pragma once

#include "core/engine/transient.h"

#include <string>
#include <vector>

namespace blinkwright::study {

/// @param run a run from power-on that ended with nothing moving.
std::vector<std::string> stallReasons(const devices::Board& board, const engine::Run& run);

/// The time after which nothing visible happens any more: all nodes stay within a hundredth of the supply of
/// where they end; for drawing. [s]
double restReached_s(const devices::Board& board, const engine::Waveform& wave);

} // namespace blinkwright::study
