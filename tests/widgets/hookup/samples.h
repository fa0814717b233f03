// Circuits that the tests of the Hook-up draw.
//
//   circuit::Circuit c = test::sample("mole-light");
#pragma once

#include "tests/widgets/hookup/many_parts.h"

#include <string>

namespace blinkwright::widgets::test {

/// A circuit out of samples/; fails the test at once where it cannot be read.
circuit::Circuit sample(const std::string& name);
/// The same without its places.
circuit::Circuit withoutDrawing(const circuit::Circuit& circuit);
/// The values that a part of a kind cannot do without.
circuit::Values leastValues(circuit::PartKind kind);

} // namespace blinkwright::widgets::test
