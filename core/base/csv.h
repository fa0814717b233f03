// One field of a CSV line by RFC 4180.
//
//   csvField("a, b")    // "a, b" in quotes
#pragma once

#include <string>
#include <string_view>

namespace blinkwright {

/// Quoted where it holds the separator, a quote or a line end.
inline std::string csvField(std::string_view text, char separator = ',') {
    const char marked[] = {separator, '"', '\r', '\n'};
    if (text.find_first_of(std::string_view(marked, sizeof marked)) == text.npos) return std::string(text);
    std::string quoted = "\"";
    for (const char c : text) quoted += c == '"' ? std::string("\"\"") : std::string(1, c);
    return quoted + '"';
}

} // namespace blinkwright
