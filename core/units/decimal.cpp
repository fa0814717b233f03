#include "core/units/decimal.h"

#include "core/base/wording.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace blinkwright::units {

namespace {

constexpr double powers[] = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                             1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

} // namespace

double decimalValue(int digits, int exponent) {
    assert(exponent >= -22 && exponent <= 22);
    return exponent >= 0 ? digits * powers[exponent] : digits / powers[-exponent];
}

std::optional<Figures> figuresOf(double value, int count) {
    assert(value > 0 && std::isfinite(value) && count >= 1 && count <= 8);
    Figures figures;
    figures.exponent = static_cast<int>(std::floor(std::log10(value))) - count + 1;
    double scaled = value * std::pow(10.0, -figures.exponent);
    const double most = powers[count];
    if (scaled >= most * (1 - sameNumber)) { // 9.9999999999 is 10
        scaled /= 10;
        ++figures.exponent;
    }
    const double whole = std::round(scaled);
    if (std::fabs(scaled - whole) > sameNumber * whole) return std::nullopt;
    figures.digits = static_cast<int>(whole);
    return figures;
}

std::string withDecimalSign(std::string number) {
    std::ranges::replace(number, '.', wording::decimalSign());
    return number;
}

std::string spoken(double value) {
    return withDecimalSign(shortest(value));
}

} // namespace blinkwright::units
