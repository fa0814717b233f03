#include "core/units/rounding.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace blinkwright::units {

namespace {

constexpr int digitsWithout = 4, digitsOfUncertainty = 2, mostDecimals = 15;
constexpr std::string_view noBreak = "\u00A0", minus = "\u2212";

/// The place of the last of so many significant digits, as a power of ten.
int lastPlace(double value, int digits) {
    const double size = std::abs(value);
    if (!(size > 0) || !std::isfinite(size)) return 0;
    const int place = static_cast<int>(std::floor(std::log10(size))) - digits + 1;
    // 0.0996 to two digits is 0.10: one place less, so that two digits stay.
    return std::round(size / std::pow(10, place)) >= std::pow(10, digits) ? place + 1 : place;
}

Rounding rounding(double value, double uncertainty, double factor, std::string unit) {
    Rounding r;
    r.factor = factor;
    r.unit = std::move(unit);
    const int place = uncertainty > 0 ? lastPlace(uncertainty / factor, digitsOfUncertainty)
                                      : lastPlace(value / factor, digitsWithout);
    r.decimals = std::clamp(-place, 0, mostDecimals);
    r.coarsest = place > 0 && uncertainty > 0 ? std::pow(10, place) : 1;
    return r;
}

} // namespace

std::string Rounding::text(double value, bool sign) const {
    double shown = value / factor;
    if (coarsest > 1) shown = std::round(shown / coarsest) * coarsest;
    std::array<char, 400> room{};
    const auto end = std::to_chars(room.data(), room.data() + room.size(), std::abs(shown),
                                   std::chars_format::fixed, decimals);
    std::string text(room.data(), end.ptr);
    const bool zero = text.find_first_of("123456789") == text.npos;
    if (!zero && shown < 0) text.insert(0, minus);
    if (!zero && shown > 0 && sign) text.insert(0, "+");
    return unit.empty() ? text : text.append(noBreak).append(unit);
}

Rounding roundingOf(double value, double uncertainty, Unit unit) {
    const double size = std::abs(value);
    Prefix prefix = unit == Unit::none ? Prefix{"", 1} : prefixFor(size);
    if (unit == Unit::second && size >= 1) prefix = {"", 1};
    if (unit == Unit::hertz && size >= 1e-3 && size < 1) prefix = {"", 1};
    return rounding(value, uncertainty, prefix.factor, std::string(prefix.text).append(symbol(unit)));
}

Rounding percentRounding(double share, double uncertainty) {
    return rounding(share, uncertainty, 0.01, "%");
}

} // namespace blinkwright::units
