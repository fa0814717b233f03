// What the words around the numbers of a record say: headers of columns, and a time step stated above them.
//
//   HeaderWords w = headerWords("Output [mV]");   // w.of = output, w.volt = 1e-3
//   stepStatedIn("Sampling interval: 0,5 ms", true)  // 5e-4
#pragma once

#include "core/circuit/measurement.h"

#include <optional>
#include <string>
#include <string_view>

namespace blinkwright::io {

struct HeaderWords {
    bool isTime = false;          ///< by a word or by its unit
    bool isIndex = false;         ///< counts samples
    bool isOther = false;         ///< of a unit that is neither a time nor a voltage
    bool isUnitAlone = false;     ///< nothing but the unit
    std::optional<double> second; ///< one of the column in seconds
    std::optional<double> volt;   ///< one of the column in volts
    std::optional<circuit::TraceOf> of;
};
HeaderWords headerWords(std::string_view header);

/// A constant time step [s] that a line states: as an interval, a step, an increment, or as a rate.
/// @param commas whether a number may have a decimal comma
std::optional<double> stepStatedIn(std::string_view line, bool commas);

} // namespace blinkwright::io
