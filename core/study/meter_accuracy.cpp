#include "core/study/meter_accuracy.h"

#include <cmath>
#include <string>

namespace blinkwright::study {

using units::Unit;

MeterAccuracy usualAccuracy(Unit unit) {
    switch (unit) {
    case Unit::volt:
        return {0.005, 2};
    case Unit::ohm:
        return {0.008, 2};
    case Unit::ampere:
        return {0.01, 3};
    case Unit::farad:
        return {0.03, 5};
    default:
        return {0.01, 2};
    }
}

double standardUncertainty(const MeterAccuracy& accuracy, double value, double digit) {
    return (accuracy.ofReading * std::abs(value) + accuracy.digits * digit) / std::sqrt(3.0);
}

std::optional<double> lastDigit(std::string_view text, Unit unit) {
    const Result<double> whole = units::parseQuantity(text, unit);
    if (!whole) return {};
    const auto isDigit = [](char c) { return c >= '0' && c <= '9'; };
    // The last digit of the number itself: what follows an exponent's mark is none of it.
    std::size_t last = std::string_view::npos;
    for (std::size_t k = 0; k < text.size(); ++k) {
        if (isDigit(text[k])) {
            last = k;
        } else if ((text[k] == 'e' || text[k] == 'E') && last != std::string_view::npos) {
            const std::size_t next =
                k + 1 + (k + 1 < text.size() && (text[k + 1] == '-' || text[k + 1] == '+'));
            if (next < text.size() && isDigit(text[next])) break;
        }
    }
    if (last == std::string_view::npos) return {};
    // The same text with that digit one step further: the reader knows prefixes and decimal marks.
    std::string next(text);
    next[last] = next[last] == '9' ? '8' : static_cast<char>(next[last] + 1);
    const Result<double> moved = units::parseQuantity(next, unit);
    if (!moved) return {};
    // A difference of two numbers has their rounding errors in it; a step is a power of ten.
    return std::pow(10.0, std::round(std::log10(std::abs(moved.value() - whole.value()))));
}

} // namespace blinkwright::study
