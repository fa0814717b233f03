// Reads a circuit file for the window and for the headless verbs: both say the same sentence about a bad one.
//
//   Result<Circuit> c = loadCircuit("mole.blinkwright");
//   c.fault().message()    // "mole.blinkwright: parts[3].resistance: must be greater than 0, got -5"
#pragma once

#include "core/circuit/circuit.h"

#include <string>

namespace blinkwright::app {

/// @param path in the encoding of the file system.
Result<circuit::Circuit> loadCircuit(const std::string& path);

} // namespace blinkwright::app
