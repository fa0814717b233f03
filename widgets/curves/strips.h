// The three strips of the curves, and a span along one of their axes. Free of the plot library, which takes
// seconds to read.
#pragma once

#include <cstddef>

namespace blinkwright::widgets {

/// A span of time [s], or of values in a strip's unit.
struct Span {
    double begin = 0;
    double end = 0;
    double length() const { return end - begin; }
    bool operator==(const Span&) const = default;
};

enum class Strip { output, capacitor, lamps };
inline constexpr std::size_t stripCount = 3;

} // namespace blinkwright::widgets
