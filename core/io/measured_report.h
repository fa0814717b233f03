// Measurements as reports print them, beside what they are held against.
//
//   json["measured"] = measuredJson(measuredReadings(circuit));
#pragma once

#include "core/io/report_text.h"
#include "core/study/measured_readings.h"

namespace blinkwright::io {

/// `{"value": 0.987, "uncertainty": 0.002}`, standard uncertainty; null where there is none.
Json measuredJson(const std::optional<circuit::Measured>& value);
/// Every figure that was measured, all measurements of it together.
/// @param refs names the parts of `lamps` and `parts`
Json measuredJson(const study::MeasuredReadings& measured, const circuit::Circuit& refs);

} // namespace blinkwright::io
