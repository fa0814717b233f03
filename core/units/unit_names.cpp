#include "core/units/unit_names.h"

#include "core/base/wording.h"

#include <algorithm>

namespace blinkwright::units {

namespace {

// In the order of Unit.
constexpr UnitNames unitNames[] = {
    {Unit::none, "", ""},
    {Unit::volt, "V", wording::marked("volt")},
    {Unit::ampere, "A", wording::marked("ampere")},
    {Unit::ohm, "Ω", wording::marked("ohm")},
    {Unit::farad, "F", wording::marked("farad")},
    {Unit::second, "s", wording::marked("second")},
    {Unit::hertz, "Hz", wording::marked("hertz")},
    {Unit::watt, "W", wording::marked("watt")},
    {Unit::joule, "J", wording::marked("joule")},
    {Unit::coulomb, "C", wording::marked("coulomb")},
    {Unit::candela, "cd", wording::marked("candela")},
    {Unit::siemens, "S", wording::marked("siemens")},
    {Unit::kelvin, "K", wording::marked("kelvin")},
};

constexpr PrefixInfo prefixTable[] = {
    {"f", -15, 1e-15}, {"p", -12, 1e-12}, {"n", -9, 1e-9}, {"µ", -6, 1e-6}, {"m", -3, 1e-3},
    {"", 0, 1},        {"k", 3, 1e3},     {"M", 6, 1e6},   {"G", 9, 1e9},   {"T", 12, 1e12},
};

} // namespace

const UnitNames& namesOf(Unit unit) {
    return unitNames[static_cast<std::size_t>(unit)];
}

std::span<const UnitNames> allUnits() {
    return unitNames;
}

std::span<const PrefixInfo> prefixes() {
    return prefixTable;
}

const PrefixInfo* prefixWith(int exponent) {
    const auto* found = std::ranges::find(prefixTable, exponent, &PrefixInfo::exponent);
    return found == std::end(prefixTable) ? nullptr : found;
}

} // namespace blinkwright::units
