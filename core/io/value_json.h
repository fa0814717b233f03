// Values of parts between JSON and memory.
//
//   Result<Value> v = readValue(*findKey(kind, "tolerance"), node);   // fault's place: "tolerance[1]"
//   std::string text = valueJson(v.value());                          // "[-0.2,0.8]"
#pragma once

#include "core/circuit/circuit.h"
#include "core/io/json_reading.h"

namespace blinkwright::io {

/// Reads one value by the shape of its key. Only the form is judged here; ranges are Circuit::canSet's.
Result<circuit::Value> readValue(const circuit::KeyInfo& key, const JsonNode& node);

std::string valueJson(const circuit::Value& value);

} // namespace blinkwright::io
