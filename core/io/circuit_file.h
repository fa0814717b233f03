// Circuit files, *.blinkwright: UTF-8 JSON, format "blinkwright-circuit", version 1.
//
//   Result<Circuit> c = readCircuit(text);   // fault: "parts[3].resistance: must be greater than 0, got -5"
//   std::string text = writeCircuit(*c);     // deterministic; unknown keys come back as they were
#pragma once

#include "core/circuit/circuit.h"

#include <string>
#include <string_view>

namespace blinkwright::io {

inline constexpr std::size_t maxCircuitBytes = 8u << 20;

/// Reads and checks a whole file. Refuses: text that is no JSON (line and column named), another format or
/// version, a key given twice, a missing or out-of-range value, an unknown kind or pin, a pin in two nets, a
/// reference used twice, numbers that are not finite, more than the limits of circuit.h. Unknown keys are
/// kept. A circuit that lacks a supply or a timer is read: what it lacks is for the findings to say.
Result<circuit::Circuit> readCircuit(std::string_view text);

/// Writes a circuit: keys in a fixed order, one part and one net a line, numbers as the shortest text that
/// reads back to the same double, a line end at the end.
std::string writeCircuit(const circuit::Circuit& circuit);

/// Reads the bytes of a file, at most `limit`. Faults: not there, not readable, too large.
Result<std::string> readBytes(const std::string& path, std::size_t limit);

} // namespace blinkwright::io
