// Numbers rounded by their uncertainty, and others written in step with them.
//
//   Rounding r = roundingOf(1.08213, 0.0043, Unit::second);   // tenths of a millisecond, in seconds
//   r.text(1.08213)            // "1.0821 s"
//   r.text(0.0043)             // "0.0043 s"
//   r.text(-0.0131, true)      // "−0.0131 s"
// The uncertainty keeps two significant digits and the value ends at the same place (JCGM 100:2008, 7.2.6).
#pragma once

#include "core/units/engineering.h"

#include <string>

namespace blinkwright::units {

/// One unit with its prefix, and the place that numbers end at.
struct Rounding {
    double factor = 1;   ///< one of the written unit in SI units: 0.001 for ms
    std::string unit;    ///< as written behind the number: `ms`, `%`; may be empty
    int decimals = 0;    ///< behind the point, 0 to 15
    double coarsest = 1; ///< numbers are whole multiples of this where it is above 1 (written unit)

    /// @param value SI. @param sign writes `+` too, and none where the text reads as 0.
    std::string text(double value, bool sign = false) const;
};

/// The prefix is that of the value; seconds get none above, hertz none below (as on the axes).
/// @param value SI. @param uncertainty SI, >= 0; with 0 the value keeps four significant digits.
Rounding roundingOf(double value, double uncertainty, Unit unit);
/// The same for a share of 1, written in per cent.
Rounding percentRounding(double share, double uncertainty);

} // namespace blinkwright::units
