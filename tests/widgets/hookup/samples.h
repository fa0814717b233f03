// Circuits that the tests of the Hook-up draw.
//
//   circuit::Circuit c = test::sample("mole-light");
//   circuit::Circuit big = test::manyParts(60);
#pragma once

#include "core/circuit/circuit.h"

#include <string>

namespace blinkwright::widgets::test {

/// A circuit out of samples/; fails the test at once where it cannot be read.
circuit::Circuit sample(const std::string& name);
/// The same without its places.
circuit::Circuit withoutDrawing(const circuit::Circuit& circuit);
/// The values that a part of a kind cannot do without.
circuit::Values leastValues(circuit::PartKind kind);
/// Blinkers side by side on one supply until there are about this many parts.
circuit::Circuit manyParts(int parts);

} // namespace blinkwright::widgets::test
