// The one place that knows what holds for a value that a circuit does not state.
//
//   std::optional<Value> v = defaultValue(circuit, PartSet::A, *part, "pulse_current"); // 3 x its rated
//   current
#pragma once

#include "core/circuit/circuit.h"

namespace blinkwright::devices {

/// @param key as in files; of a timer also `device.NAME`, at the nominal supply of the wiring.
/// @return nothing where the default is "none" (leakage, rated voltage, capacity, intensity), or the key is
/// unknown.
std::optional<circuit::Value> defaultValue(const circuit::Circuit& circuit, circuit::PartSet set,
                                           const circuit::Part& part, std::string_view key);

/// Number, word and flag of effectiveValue(), for keys that always have one of that kind.
double effectiveNumber(const circuit::Circuit& circuit, circuit::PartSet set, circuit::PartId part,
                       std::string_view key);
std::optional<double> effectiveNumberIfAny(const circuit::Circuit& circuit, circuit::PartSet set,
                                           circuit::PartId part, std::string_view key);
std::string effectiveWord(const circuit::Circuit& circuit, circuit::PartSet set, circuit::PartId part,
                          std::string_view key);
bool effectiveFlag(const circuit::Circuit& circuit, circuit::PartSet set, circuit::PartId part,
                   std::string_view key);

/// A variable resistor's sections [ohm]: pin 1 to wiper, wiper to pin 2, each at least leastVariableSection.
struct Sections {
    double upper;
    double lower;
};
Sections sectionsOf(double resistance, double setting);

} // namespace blinkwright::devices
