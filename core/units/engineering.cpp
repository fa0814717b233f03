#include "core/units/engineering.h"

#include "core/base/wording.h"
#include "core/units/unit_names.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace blinkwright::units {

namespace {

constexpr std::string_view noBreakSpace = "\u00A0";
constexpr int mostDigits = 15;

/// A value rounded to some significant digits: 0.digits times ten to the (exponent + 1).
struct Rounded {
    std::string digits;
    int exponent = 0; ///< of the first digit
};

Rounded roundTo(double magnitude, int significant) {
    char text[64];
    const char* end =
        std::to_chars(text, text + sizeof text, magnitude, std::chars_format::scientific, significant - 1)
            .ptr;
    Rounded rounded;
    const char* e = std::find(static_cast<const char*>(text), end, 'e');
    std::copy_if(static_cast<const char*>(text), e, std::back_inserter(rounded.digits),
                 [](char c) { return c != '.'; });
    const char* sign = e + 1;
    std::from_chars(*sign == '+' ? sign + 1 : sign, end, rounded.exponent);
    return rounded;
}

/// Puts the decimal sign before digit number `point`; zeros are filled in on either side.
std::string placePoint(std::string digits, int point, bool keepZeros) {
    if (point <= 0) {
        digits.insert(0, static_cast<std::size_t>(1 - point), '0');
        point = 1;
    }
    const auto whole = static_cast<std::size_t>(point);
    if (digits.size() < whole) digits.append(whole - digits.size(), '0');
    const char sign = wording::decimalSign();
    if (digits.size() > whole) digits.insert(whole, 1, sign);
    if (!keepZeros && digits.find(sign) != std::string::npos) {
        digits.erase(digits.find_last_not_of('0') + 1);
        if (digits.back() == sign) digits.pop_back();
    }
    return digits;
}

int prefixExponent(int exponent) {
    return static_cast<int>(std::floor(exponent / 3.0)) * 3;
}

/// Prefix exponent for a value of a unit. Capacitances up to a tenth of a farad stay in microfarad, as
/// capacitors are marked: 2200 µF, not 2.2 mF (common practice, no source).
int prefixExponentOf(Unit unit, int exponent) {
    if (unit == Unit::none) return 0;
    if (unit == Unit::farad && exponent >= -3 && exponent < -1) return -6;
    return prefixExponent(exponent);
}

std::string withUnit(std::string number, std::string_view prefix, Unit unit) {
    if (unit == Unit::none && prefix.empty()) return number;
    return number.append(noBreakSpace).append(prefix).append(symbol(unit));
}

} // namespace

std::string_view symbol(Unit unit) {
    return namesOf(unit).symbol;
}

Prefix prefixFor(double magnitude) {
    magnitude = std::fabs(magnitude);
    if (magnitude == 0 || !std::isfinite(magnitude)) return {"", 1};
    const int wanted = std::clamp(prefixExponent(roundTo(magnitude, mostDigits).exponent),
                                  prefixes().front().exponent, prefixes().back().exponent);
    const PrefixInfo* found = prefixWith(wanted);
    return {found->text, found->factor};
}

std::string formatQuantity(double value, Unit unit, int significant, bool keepZeros) {
    if (std::isnan(value)) return wording::inWords("not a number");
    if (std::isinf(value)) return value > 0 ? wording::inWords("infinite") : wording::inWords("-infinite");
    significant = std::clamp(significant, 1, mostDigits);
    const std::string sign = value < 0 ? "-" : "";
    if (value == 0)
        return withUnit(placePoint(std::string(static_cast<std::size_t>(significant), '0'), 1, keepZeros), "",
                        unit);

    const Rounded rounded = roundTo(std::fabs(value), significant);
    const int exponent = prefixExponentOf(unit, rounded.exponent);
    const PrefixInfo* prefix = prefixWith(exponent);
    // Plain numbers keep a readable span of zeros; beyond it, and beyond the prefixes, a power of ten says it
    // better.
    const bool readable =
        unit == Unit::none ? rounded.exponent >= -5 && rounded.exponent < 9 : prefix != nullptr;
    if (!readable) {
        const std::string mantissa = placePoint(rounded.digits, 1, keepZeros);
        return withUnit(sign + mantissa + "e" + std::to_string(rounded.exponent), "", unit);
    }
    return withUnit(sign + placePoint(rounded.digits, rounded.exponent - exponent + 1, keepZeros),
                    prefix->text, unit);
}

std::string shortest(double value) {
    // "-0" would be read back as the whole number 0.
    if (value == 0 && std::signbit(value)) return "-0.0";
    char text[64];
    return std::string(text, std::to_chars(text, text + sizeof text, value).ptr);
}

} // namespace blinkwright::units
