#include "widgets/values/value_scale.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

std::optional<ScaleKind> scaleKind(circuit::PartKind kind, std::string_view key) {
    using circuit::PartKind;
    // Ends: common practice, no source. Fine steps move the third digit, coarse ones are ten to the decade.
    constexpr double tenth = 1.2589254117941673; // 10^(1/10)
    if ((kind == PartKind::resistor || kind == PartKind::variable) && key == "resistance")
        return ScaleKind{true, 10, 10e6, 1.01, tenth};
    if (kind == PartKind::variable && key == "setting") return ScaleKind{false, 0, 1, 0.01, 0.1};
    if (kind == PartKind::capacitor && key == "capacitance")
        return ScaleKind{true, 10e-12, 10e-3, 1.01, tenth};
    if (kind == PartKind::supply && key == "voltage") return ScaleKind{false, 1.5, 18, 0.05, 0.5};
    return std::nullopt;
}

ValueScale ValueScale::around(const ScaleKind& kind, double value) {
    ValueScale scale{kind, kind.least, kind.most};
    if (!kind.ratios) {
        scale.low = std::min(scale.low, value);
        scale.high = std::max(scale.high, value);
        return scale;
    }
    if (!(value > 0)) return scale;
    const double decade = std::round(std::log10(value));
    scale.low = std::pow(10.0, decade - 1);
    scale.high = std::pow(10.0, decade + 1);
    if (value >= kind.least && value <= kind.most) {
        scale.low = std::max(scale.low, kind.least);
        scale.high = std::min(scale.high, kind.most);
    }
    return scale;
}

double ValueScale::at(double place) const {
    place = std::clamp(place, 0.0, 1.0);
    return kind.ratios ? low * std::pow(high / low, place) : low + (high - low) * place;
}

double ValueScale::place(double value) const {
    if (kind.ratios && !(value > 0)) return 0;
    const double p =
        kind.ratios ? std::log(value / low) / std::log(high / low) : (value - low) / (high - low);
    return std::clamp(p, 0.0, 1.0);
}

bool ValueScale::contains(double value) const {
    const double slack = 1e-9 * std::abs(high);
    return value >= low - slack && value <= high + slack;
}

double ValueScale::stepped(double value, int steps, bool coarse) const {
    const double step = coarse ? kind.coarse : kind.fine;
    double moved = 0;
    if (kind.ratios) {
        moved = roundedTo3(value * std::pow(step, steps));
        // A third digit at least: 100 to 101 is 1 %, but 1 % of 101 rounds back to it on the way down.
        const double digit = std::pow(10.0, std::floor(std::log10(std::abs(value))) - 2);
        if (steps > 0 && moved <= value) moved = roundedTo3(value + digit);
        if (steps < 0 && moved >= value) moved = roundedTo3(value - digit);
    } else {
        // To whole steps, so that 5.03 V goes on to 5.05 V.
        const double count = value / step;
        const double whole = steps > 0 ? std::floor(count + 1e-6) : std::ceil(count - 1e-6);
        moved = roundedTo3((whole + steps) * step);
    }
    return std::clamp(moved, std::min(kind.least, low), std::max(kind.most, high));
}

double roundedTo3(double value) {
    if (value == 0 || !std::isfinite(value)) return value;
    const int digits = 2 - static_cast<int>(std::floor(std::log10(std::abs(value))));
    // Through division, since powers of ten below one are not exact: 4.7 and not 4.700000000000001.
    if (digits >= 0) {
        const double factor = std::pow(10.0, digits);
        return std::round(value * factor) / factor;
    }
    const double factor = std::pow(10.0, -digits);
    return std::round(value / factor) * factor;
}

} // namespace blinkwright::widgets
