// A proposal's values for a circuit that is open: its resistors and capacitors into one of the sets.
//
//   Result<circuit::Edit> take = takeValues(open, proposedCircuit(wish, choice), PartSet::B);
#pragma once

#include "core/circuit/edit.h"

namespace blinkwright::study {

/// Values of resistors, variable resistors and capacitors, by designator, as one edit. C2 and C3, which no
/// wish asks about, are passed over where the open circuit has none.
/// @return a fault that names the parts which the open circuit has not, or has and the proposal does not.
Result<circuit::Edit> takeValues(const circuit::Circuit& open, const circuit::Circuit& proposal,
                                 circuit::PartSet set);

/// Whether the pins of the parts that both have are joined with each other alike: only then the open circuit
/// blinks as the proposal does.
bool wiredAlike(const circuit::Circuit& open, const circuit::Circuit& proposal);

} // namespace blinkwright::study
