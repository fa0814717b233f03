// What the headless verbs print: readings and findings as JSON, curves as CSV.
#pragma once

#include "core/engine/curves.h"
#include "core/study/eye.h"
#include "core/study/findings.h"
#include "core/study/readings.h"

#include <string>

namespace blinkwright::io {

/// Format "blinkwright-readings", version 1; values that do not exist are null, never 0.
/// @param eye what the eye makes of the lamps, by study::eyeOf()
/// @param measuredOn the circuit, for the key `measured`, which is there where measurements in use say
/// something
std::string readingsJson(const study::Readings& readings, const std::vector<study::EyeReading>& eye = {},
                         const circuit::Circuit* measuredOn = nullptr);
/// Format "blinkwright-findings", version 1.
std::string findingsJson(const std::vector<study::Finding>& findings);
/// RFC 4180, decimal point: `time [s],output [V],capacitor [V],D1 current [A]`; CRLF line ends.
std::string curvesCsv(const engine::Curves& curves);
/// Two runs side by side, each with its own times, since those are where each one's solver needed them:
/// `time [s],...,Set B time [s],Set B output [V],...`. The shorter one's fields are empty at the end.
std::string curvesCsv(const engine::Curves& curves, const engine::Curves& second,
                      const std::string& secondName);

} // namespace blinkwright::io
