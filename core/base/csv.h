// One field of a CSV line by RFC 4180.
//
//   csvField("a, b")    // "a, b" in quotes
#pragma once

#include <string>

namespace blinkwright {

/// Quoted where it holds a comma, a quote or a line end.
inline std::string csvField(const std::string& text) {
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + '"';
}

} // namespace blinkwright
