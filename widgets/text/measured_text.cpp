#include "widgets/text/measured_text.h"

#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/words.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr int uncertaintyFigures = 2;
const QChar nbsp(QChar::Nbsp);

QString fixed(double value, int decimals) {
    const QString text = plainNumber(std::abs(value), 'f', std::max(decimals, 0));
    const bool zero =
        std::none_of(text.begin(), text.end(), [](QChar c) { return c.isDigit() && c != u'0'; });
    return value < 0 && !zero ? minusSign + text : text;
}

/// What follows the number in a text: ` ms`, and the number itself.
struct Split {
    double number = 0;
    QString unit;
};
Split split(const QString& text) {
    qsizetype end = 0;
    const QLatin1Char sign(wording::decimalSign());
    while (end < text.size() && (text[end].isDigit() || text[end] == sign || text[end] == minusSign)) ++end;
    return {QString(text.left(end)).replace(minusSign, u'-').replace(sign, u'.').toDouble(), text.mid(end)};
}

/// Decimals that leave `uncertainty` two figures; it may round up into one more.
int decimalsFor(double uncertainty) {
    int decimals = uncertaintyFigures - 1 - static_cast<int>(std::floor(std::log10(uncertainty)));
    const double rounded = std::round(uncertainty * std::pow(10.0, decimals));
    if (rounded >= std::pow(10.0, uncertaintyFigures)) --decimals;
    return std::min(decimals, 12);
}

} // namespace

QString measuredText(const circuit::Measured& measured, FigureText form) {
    QString plain = form(measured.value);
    if (!(measured.uncertainty > 0)) return plain;
    // A 0 has no prefix of its own: that of its uncertainty.
    const bool isZero = split(plain).number == 0;
    const double scale = isZero ? measured.uncertainty : measured.value;
    const Split shown = split(isZero ? form(scale) : plain);
    // The text has the number in its prefix, rounded: their ratio is the prefix to four figures, and a prefix
    // is a power of ten.
    const double factor = std::pow(10.0, std::round(std::log10(std::abs(scale / shown.number))));
    const double value = measured.value / factor, uncertainty = measured.uncertainty / factor;
    const int decimals = decimalsFor(uncertainty);
    // An uncertainty of hundreds is rounded before the point, too.
    const double step = std::pow(10.0, -decimals);
    const auto rounded = [&](double x) { return decimals < 0 ? std::round(x / step) * step : x; };
    return fixed(rounded(value), decimals) + nbsp + u'±' + nbsp + fixed(rounded(uncertainty), decimals) +
           shown.unit;
}

QString uncertaintyText(double uncertainty, FigureText form) {
    if (!(uncertainty > 0)) return Words::tr("none stated");
    const Split shown = split(form(uncertainty));
    const int decimals = decimalsFor(shown.number);
    const double step = std::pow(10.0, -decimals);
    return fixed(decimals < 0 ? std::round(shown.number / step) * step : shown.number, decimals) + shown.unit;
}

QString multiplesText(double multiples) {
    const double size = std::abs(multiples);
    const QString text = size < 100 ? plainNumber(size, 'f', 1) : plainNumber(size, 'f', 0);
    return text + nbsp + u'u';
}

} // namespace blinkwright::widgets
