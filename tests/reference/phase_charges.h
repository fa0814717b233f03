// What a run of the engine passed through each junction between its switchings, integrated from its dense
// output: the counterpart of OutputChange::charge_C.
//
//   auto charges = phaseCharges(board, run);   // charges[k][j]: junction j, up to switching k
#pragma once

#include "core/engine/transient.h"

#include <vector>

namespace blinkwright::reference {

/// @param run must have kept its waveform. Integrals by a Lobatto rule on each step, halved until both halves
/// together agree with the whole to 1e-10 of the largest step.
std::vector<std::vector<double>> phaseCharges(const devices::Board& board, const engine::Run& run);

} // namespace blinkwright::reference
