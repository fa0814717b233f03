// Why a timer has no supply voltage to work with: a short, a gap, a group of parts that floats.
//
//   for (const Cause& c : unpoweredCauses(board, &at)) say(c.sentence);
#pragma once

#include "core/engine/waveform.h"
#include "core/study/cause.h"

namespace blinkwright::study {

/// Nothing in the timer works under about a volt: see the law of its own current.
inline constexpr double leastSupply_V = 1;

/// Whether current can get to pin 8 of the first timer and back from its pin 1: from a supply by a path that
/// conducts at times, or from another timer's output. The law of a bipolar timer's reset input has a source
/// of its own, which would make a timer run that nothing feeds.
bool isFed(const devices::Board& board);

/// About the first timer of a board that has one.
/// @param at the circuit at rest, or null where there was no run at all.
std::vector<Cause> unpoweredCauses(const devices::Board& board, const engine::Instant* at);

} // namespace blinkwright::study
