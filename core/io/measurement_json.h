// Measurements between JSON and memory: one object of the list `measurements` of a circuit file.
//
//   Result<Measurement> m = readMeasurement(circuit, node, "measurements[0]");
//   std::string text = measurementJson(circuit, m.value());
#pragma once

#include "core/circuit/circuit.h"
#include "core/io/json_reading.h"

namespace blinkwright::io {

/// An object of a kind that this version does not know is kept as it is. Faults name the place.
Result<circuit::Measurement> readMeasurement(const circuit::Circuit& circuit, const JsonNode& node,
                                             const std::string& place);

/// One line.
std::string measurementJson(const circuit::Circuit& circuit, const circuit::Measurement& measurement);

} // namespace blinkwright::io
