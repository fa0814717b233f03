// Circuits made up from a seed: any parts with any values on any nets. By a generator of our own, so that
// they are the same on every machine.
//
//   circuit::Circuit c = randomCircuit(4711);
#pragma once

#include "core/circuit/circuit.h"

#include <cstdint>

namespace blinkwright::tests {

/// Every third seed, from 2, takes values from as far as files may have them; the others keep to what a
/// bench has.
inline bool isExtreme(std::uint64_t seed) {
    return seed % 3 == 2;
}

/// One to four timers of both families, one to three supplies, and up to fourteen parts of every kind, wired
/// so that often enough the timers are powered and often enough nothing is right: open pins, shorts, groups
/// that float.
circuit::Circuit randomCircuit(std::uint64_t seed);

} // namespace blinkwright::tests
