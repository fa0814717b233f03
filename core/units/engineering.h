// Engineering text: what people write for a value, to SI numbers and back.
//
//   auto r = units::parseQuantity("4k7", Unit::ohm);      // 4700
//   auto c = units::parseQuantity("0,22 µF", Unit::farad); // 2.2e-7
//   auto bad = units::parseQuantity("4q7", Unit::ohm);     // fault: "'q' is no SI prefix ..."
//   std::string text = units::formatQuantity(4700, Unit::ohm); // "4.7 kΩ"
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>

namespace blinkwright::units {

enum class Unit {
    none,
    volt,
    ampere,
    ohm,
    farad,
    second,
    hertz,
    watt,
    joule,
    coulomb,
    candela,
    siemens,
    kelvin
};

/// Symbol of the unit as SI writes it: `Ω`, `F`, `V`; empty for Unit::none.
std::string_view symbol(Unit unit);

/// Reads one quantity, e.g. `4k7`, `4.7k`, `4,7 kΩ`, `0.22u`, `220n`, `1M`, `2M2`, `1e-6`, `47 ohm`, `10µ`.
/// Prefixes have their SI meaning (m milli, M mega; K is taken as kilo); the letter R stands for the decimal
/// point of ohms (`4R7`); white space around the parts is ignored; the unit may be left out, another unit is
/// refused. Charges also take `Ah` and `mAh`, plain numbers `%`. A text with two decimal marks is refused,
/// never guessed at.
/// @return the value in SI units, always finite; else a fault whose text says what is wrong in plain words.
Result<double> parseQuantity(std::string_view text, Unit unit);

/// Writes a value with the SI prefix that puts one to three digits before the point: `4.7 kΩ`, `220 nF`, `0
/// V`. The space before the unit is a no-break space (U+00A0). Trailing zeros are dropped unless keepZeros is
/// set. A value without a unit gets no prefix (`0.05`, `4700`); one that is not finite reads `not a number`
/// or `infinite`.
/// @param significant digits kept, 1 to 15.
std::string formatQuantity(double value, Unit unit, int significant = 3, bool keepZeros = false);

/// The SI prefix text (`k`, `µ`, `` ...) and factor that formatQuantity would choose; one prefix for a whole
/// axis.
struct Prefix {
    std::string_view text;
    double factor;
};
Prefix prefixFor(double magnitude);

/// Shortest text that reads back to the same double, with a decimal point: `33000`, `1e-05`, `-0.0`.
std::string shortest(double value);

} // namespace blinkwright::units
