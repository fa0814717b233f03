// The two sets of values of a circuit, beside each other.
#pragma once

#include "core/circuit/circuit.h"

namespace blinkwright::circuit {

/// Whether any value is another one in Set B than in Set A.
bool setsDiffer(const Circuit& circuit);

} // namespace blinkwright::circuit
