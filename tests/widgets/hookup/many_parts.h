// Large circuits of blinkers side by side, for tests and benchmarks of the Hook-up.
//
//   circuit::Circuit big = test::manyParts(60);
//   circuit::Circuit drawn = test::placed(big, 8);   // every part has a place, eight blinkers in a row
#pragma once

#include "core/circuit/circuit.h"

namespace blinkwright::widgets::test {

/// Blinkers on one supply until there are about this many parts.
circuit::Circuit manyParts(int parts);
/// With a place for every part. @param blocksInARow 0: where the layout puts them, all in one row.
circuit::Circuit placed(const circuit::Circuit& circuit, int blocksInARow);

} // namespace blinkwright::widgets::test
