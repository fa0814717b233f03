// From what a meter's leaflet says of its accuracy to a standard uncertainty.
//
//   MeterAccuracy a = usualAccuracy(Unit::volt);          // ± (0.5 % of reading + 2 digits)
//   double digit = *lastDigit("5.93", Unit::volt);        // 0.01 V
//   standardUncertainty(a, 5.93, digit);                  // (0.005 * 5.93 + 2 * 0.01) / sqrt(3)
#pragma once

#include "core/units/engineering.h"

#include <optional>
#include <string_view>

namespace blinkwright::study {

/// The reading is within ± (ofReading * |value| + digits * digit) of the true value.
struct MeterAccuracy {
    double ofReading = 0.005; ///< share of the reading, >= 0
    double digits = 2;        ///< steps of the last digit shown, >= 0
    bool operator==(const MeterAccuracy&) const = default;
};

/// What hand-held meters commonly state, from memory: volts 0.5 % + 2 digits, ohms 0.8 % + 2, amperes
/// 1 % + 3, farads 3 % + 5; for all else 1 % + 2.
MeterAccuracy usualAccuracy(units::Unit unit);

/// Half the width over sqrt(3): nothing is known but the limits (JCGM 100:2008, 4.3.7).
/// @param digit value of one step of the last digit, >= 0, in the unit of the value.
double standardUncertainty(const MeterAccuracy& accuracy, double value, double digit);

/// What one step of the last digit of a typed reading is worth: 0.01 for `5.93`, 100 for `4k7`, 1e-7 for
/// `9.8 µF`. Nothing where the text is no quantity.
std::optional<double> lastDigit(std::string_view text, units::Unit unit);

} // namespace blinkwright::study
