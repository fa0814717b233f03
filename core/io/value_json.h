// Values of parts between JSON and memory.
//
//   Value v;
//   Result<void> ok = readValue(*findKey(kind, "tolerance"), node, v); // fault's place: "tolerance[1]"
//   std::string text = valueJson(v);                                   // "[-0.2, 0.8]"
#pragma once

#include "core/circuit/circuit.h"
#include "core/io/json_reading.h"

namespace blinkwright::io {

/// Reads one value by the shape of its key. Only the form is judged here; ranges are Circuit::canSet's.
Result<void> readValue(const circuit::KeyInfo& key, const JsonNode& node, circuit::Value& value);

std::string valueJson(const circuit::Value& value);

} // namespace blinkwright::io
