// How reports are written, whatever they are about: JSON with every number the shortest text that reads back
// to the same double.
//
//   Json json = reportHead("blinkwright-why"); json["reason"] = text; return written(json);
#pragma once

#include "core/study/phase.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace blinkwright::io {

using Json = nlohmann::ordered_json;

/// `format` and `version` 1.
Json reportHead(const char* format);
/// A value that does not exist, or is no number, is null.
Json number(std::optional<double> value);
/// Period, rate, high, low and duty, or null.
Json phaseJson(const std::optional<study::Phase>& phase);
/// Two-space indent, as people read it; lists of plain values on one line; a line end at the end.
std::string written(const Json& json);

} // namespace blinkwright::io
