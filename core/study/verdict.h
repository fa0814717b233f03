// The verdict on a circuit: what its first timer does, why, and which parts and pins are concerned.
//
//   Judgement j = judge(board, run, &settled);
//   j.kind                        // Verdict::settlesHigh
//   j.causes[0].sentence          // "Threshold (pin 6) of U1 comes to rest at 4.9 V, under its level of 6 V:
//   ..." j.causes[0].places            // {"U1:6", "C1", "R1", "R2"}
#pragma once

#include "core/engine/transient.h"
#include "core/study/cause.h"
#include "core/study/readings.h"

namespace blinkwright::study {

struct Judgement {
    Verdict kind = Verdict::cannotRun;
    std::vector<Cause>
        causes; ///< of any other verdict than `blinks`; of `blinks`, why there is no single period
};

/// @param run from power-on, with its waveform.
/// @param settled of the same board, or null where it is not known yet: it adds why there is no single
/// period.
Judgement judge(const devices::Board& board, const engine::Run& run, const engine::Settled* settled);

} // namespace blinkwright::study
