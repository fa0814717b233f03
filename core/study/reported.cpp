#include "core/study/uncertainty_budget.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace blinkwright::study {

namespace {

std::string fixed(double value, int decimals) {
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", std::max(decimals, 0), value);
    return text;
}

} // namespace

Reported reported(double value, double uncertainty, double scale, int figures) {
    Reported r{value / scale, uncertainty / scale, 3};
    if (!(r.uncertainty > 0)) {
        if (r.value != 0) r.decimals = 3 - static_cast<int>(std::floor(std::log10(std::abs(r.value))));
        return r;
    }
    for (int k = 0; k < 2; ++k) { // once more where rounding takes it to the next power of ten: 0.0996
        r.decimals = figures - 1 - static_cast<int>(std::floor(std::log10(r.uncertainty) + 1e-12));
        const double place = std::pow(10.0, r.decimals);
        r.uncertainty = std::round(uncertainty / scale * place) / place;
        r.value = std::round(value / scale * place) / place;
    }
    return r;
}

std::string reportedText(double value, double uncertainty, units::Unit unit, int figures) {
    using units::Unit;
    units::Prefix prefix{"", 1};
    const double size = std::max(std::abs(value), uncertainty);
    // Rates of a blinker have no prefix below 1 Hz, times none above 1 s.
    const bool plain =
        unit == Unit::none || (unit == Unit::hertz && size < 1) || (unit == Unit::second && size >= 1);
    if (!plain && size > 0) prefix = units::prefixFor(size);
    const Reported r = reported(value, uncertainty, prefix.factor, figures);
    std::string text = fixed(r.value, r.decimals);
    if (uncertainty > 0) text += "\u00A0\u00B1\u00A0" + fixed(r.uncertainty, r.decimals);
    const std::string symbol = std::string(prefix.text) + std::string(units::symbol(unit));
    if (!symbol.empty()) text += "\u00A0" + symbol;
    if (text.front() == '-') text.replace(0, 1, "\u2212");
    return text;
}

} // namespace blinkwright::study
