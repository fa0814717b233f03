// Number variants of a circuit for a class: the timing parts changed to other preferred values, so that
// neighbours have different numbers to work out and the key still knows them.
//
//   Result<Variant> v = variantOf(circuit, PartSet::A, {.seed = 7});
//   v.value().circuit;    // R1 22 kΩ, R2 47 kΩ ...; of one set, without measurements
// The same circuit and seed give the same values on every machine.
#pragma once

#include "core/circuit/circuit.h"

#include <atomic>
#include <cstdint>

namespace blinkwright::study {

struct VariantRequest {
    std::uint64_t seed = 1;
    const std::atomic<bool>* cancel = nullptr;
};

struct Variant {
    circuit::Circuit circuit;         ///< Set A has the new values, and Set B the same
    std::vector<std::string> changed; ///< designators
};

/// How far a variant's cycle time may be from the circuit's, either way, as a factor: still a light that can
/// be counted by eye and stopwatch.
inline constexpr double variantReach = 4;

/// Resistors become other values of E12 and capacitors of E6 within their decade, at least one of them
/// another one. A variant blinks, flashes at most three times a second where the circuit does, and has no
/// fault or overstress that the circuit has not.
/// @param set whose values are changed. @return a fault where the wiring has no textbook formula, the circuit
/// does not blink, or no other values do.
Result<Variant> variantOf(const circuit::Circuit& circuit, circuit::PartSet set,
                          const VariantRequest& request);

} // namespace blinkwright::study
