// The circuit of a proposal: a plain astable with its lamps, as a circuit that can be opened and drawn.
//
//   circuit::Circuit c = proposedCircuit(wish, choice);
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/wish.h"

namespace blinkwright::study {

/// Parts BT1, U1, R1, R2, C1, C2 at pin 5, C3 across the supply, R3 and D1; with them, as the scheme says, D3
/// across R2, a second lamp D2 with R4, or the pair D1 and D2 behind C4 with R4 from the output to ground.
circuit::Circuit proposedCircuit(const Wish& wish, const Choice& choice);

/// Resistance from the output to ground that lets a coupled pair start evenly [ohm].
inline constexpr double pairBleeder_ohm = 10e3;

} // namespace blinkwright::study
