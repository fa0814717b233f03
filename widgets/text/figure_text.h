// Figures as people read them, to four significant digits, with true minus signs and no-break spaces.
//
//   secondsText(0.8881)          // "888.1 ms"
//   rateText(0.9881)             // "0.9881 Hz"
//   shareText(0.625)             // "62.50 %"
//   signedText(-0.0031, text)    // "−3.100 ms", "+..." above 0, "0" without a sign
#pragma once

#include "core/units/engineering.h"

#include <QString>

namespace blinkwright::widgets {

using FigureText = QString (*)(double);

QString quantityText(double value, units::Unit unit);
/// `quantityText` in one unit, for tables of figures.
template <units::Unit unit>
QString textIn(double value) {
    return quantityText(value, unit);
}

/// A pure number, four significant digits, trailing zeros kept, without exponent for what is ordinary here.
QString numberText(double value);
/// A share of 1 in per cent.
QString shareText(double value);
/// Times in seconds without a prefix above: 2969 s and not 2.969 ks, as on the axis of the curves.
QString secondsText(double value_s);
/// Rates of a blinker in hertz without a prefix below: 0.9881 Hz and not 988.1 mHz.
QString rateText(double value_Hz);

/// How figures of a unit are written: times and rates as above, the others by `quantityText`, pure numbers
/// plain.
FigureText figureTextOf(units::Unit unit);

/// `text` of the value with its sign, `+` too, for a difference; none where it reads as 0.
QString signedText(double value, FigureText text);
/// How far `found` is off `expected`, in per cent with its sign: `+1.25 %`. `expected` is not 0.
QString offText(double found, double expected);

} // namespace blinkwright::widgets
