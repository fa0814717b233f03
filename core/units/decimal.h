// Numbers as people write them: a few decimal figures and a power of ten, and back without a rounding error
// of our own.
//
//   decimalValue(47, 2)                // 4700, the same double as the text "4700" gives
//   figuresOf(0.22e-6, 3)              // {220, -9}: 220 x 10^-9
#pragma once

#include <optional>
#include <string>

namespace blinkwright::units {

/// `digits` x 10^`exponent`.
struct Figures {
    int digits = 0;
    int exponent = 0;
    bool operator==(const Figures&) const = default;
};

/// The share by which two numbers may differ that somebody wrote as one: what arithmetic may have added.
inline constexpr double sameNumber = 1e-9;

/// The double nearest to digits x 10^exponent. @param exponent -22 to 22: such powers of ten are exact, so
/// that one multiplication or division rounds once.
double decimalValue(int digits, int exponent);

/// A value in exactly `count` figures, the first of them not 0; nothing where it has more figures than that,
/// counted to nine digits. @param value > 0, finite. @param count 1 to 8.
std::optional<Figures> figuresOf(double value, int count);

/// A number's text with the decimal sign of the window's language in the place of its point.
std::string withDecimalSign(std::string number);
/// The shortest text that reads back to the same double, for sentences: `0.5`, or `0,5` where a comma is
/// used.
std::string spoken(double value);

} // namespace blinkwright::units
