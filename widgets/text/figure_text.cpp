#include "widgets/text/figure_text.h"

#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr int digits = 4;

/// Whether a text of a magnitude has any digit but 0.
bool readsAsZero(const QString& text) {
    return std::none_of(text.begin(), text.end(), [](QChar c) { return c.isDigit() && c != u'0'; });
}

QString withSign(double value, const QString& magnitude) {
    if (readsAsZero(magnitude)) return magnitude;
    return (value < 0 ? minusSign : QChar(u'+')) + magnitude;
}

} // namespace

QString quantityText(double value, units::Unit unit) {
    QString text = QString::fromStdString(units::formatQuantity(value, unit, digits, true));
    if (text.startsWith(u'-')) text[0] = minusSign;
    return text;
}

QString numberText(double value) {
    if (value == 0) return QStringLiteral("0");
    const int decimals = digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(value))));
    return plainNumber(value, 'f', std::clamp(decimals, 0, 12));
}

QString shareText(double value) {
    return numberText(value * 100) + QStringLiteral("\u00A0%");
}

QString secondsText(double value_s) {
    if (value_s >= 999.95 && value_s < 1e6) return plainNumber(value_s, 'f', 0) + QStringLiteral("\u00A0s");
    return quantityText(value_s, units::Unit::second);
}

QString rateText(double value_Hz) {
    if (value_Hz >= 1e-3 && value_Hz < 1) return numberText(value_Hz) + QStringLiteral("\u00A0Hz");
    return quantityText(value_Hz, units::Unit::hertz);
}

FigureText figureTextOf(units::Unit unit) {
    using units::Unit;
    switch (unit) {
    case Unit::none:
        return numberText;
    case Unit::second:
        return secondsText;
    case Unit::hertz:
        return rateText;
    case Unit::volt:
        return textIn<Unit::volt>;
    case Unit::ampere:
        return textIn<Unit::ampere>;
    case Unit::ohm:
        return textIn<Unit::ohm>;
    case Unit::farad:
        return textIn<Unit::farad>;
    case Unit::watt:
        return textIn<Unit::watt>;
    case Unit::joule:
        return textIn<Unit::joule>;
    case Unit::coulomb:
        return textIn<Unit::coulomb>;
    case Unit::candela:
        return textIn<Unit::candela>;
    case Unit::siemens:
        return textIn<Unit::siemens>;
    case Unit::kelvin:
        return textIn<Unit::kelvin>;
    }
    return numberText;
}

QString signedText(double value, FigureText text) {
    return withSign(value, text(std::abs(value)));
}

QString offText(double found, double expected) {
    const double percent = (found / expected - 1) * 100;
    const QString text = plainNumber(std::abs(percent), 'f', std::abs(percent) < 100 ? 2 : 0);
    return withSign(percent, text + QStringLiteral("\u00A0%"));
}

} // namespace blinkwright::widgets
