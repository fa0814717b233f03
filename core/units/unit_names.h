// The names that units and prefixes go by, for the reader and the writer of engineering text.
//
//   namesOf(Unit::ohm).symbol      // "Ω"
//   prefixWith(-6)->text           // "µ"
#pragma once

#include "core/units/engineering.h"

#include <span>

namespace blinkwright::units {

struct UnitNames {
    Unit unit;
    std::string_view symbol; ///< as SI writes it
    std::string_view word;   ///< English, small letters, singular; marked for translation
};
const UnitNames& namesOf(Unit unit);
std::span<const UnitNames> allUnits();

struct PrefixInfo {
    std::string_view text; ///< as SI writes it
    int exponent;          ///< power of ten
    double factor;
};
/// The prefixes in use here, ascending, with the empty one among them (BIPM, SI Brochure, 9th edition, table
/// 7).
std::span<const PrefixInfo> prefixes();
/// The prefix of a power of ten, or nullptr.
const PrefixInfo* prefixWith(int exponent);

} // namespace blinkwright::units
