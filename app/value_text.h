// Values of a part as a person types them, in both directions.
//
//   valueText(key, Interval{-0.2, 0.8});            // "-0.2 to 0.8"
//   valueFromText(key, "-20 % to 80 %");            // Interval{-0.2, 0.8}
//   valueFromText(key, "none");                     // Null, where a value may be none
// They are written in the words and with the decimal sign of the window, and read in these and in English.
#pragma once

#include "core/circuit/circuit.h"

#include <string>

namespace blinkwright::app {

std::string valueText(const circuit::KeyInfo& key, const circuit::Value& value);
/// @return a value of the key's shape, not yet checked against its range; or what is wrong with the text.
Result<circuit::Value> valueFromText(const circuit::KeyInfo& key, const std::string& text);

} // namespace blinkwright::app
