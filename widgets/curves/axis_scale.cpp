#include "widgets/curves/axis_scale.h"

#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

AxisScale AxisScale::of(double magnitude, units::Unit unit) {
    const units::Prefix prefix = magnitude > 0 ? units::prefixFor(magnitude) : units::Prefix{"", 1.0};
    const std::string_view symbol = units::symbol(unit);
    return {QString::fromUtf8(symbol.data(), static_cast<qsizetype>(symbol.size())),
            QString::fromUtf8(prefix.text.data(), static_cast<qsizetype>(prefix.text.size())), prefix.factor};
}

AxisScale AxisScale::ofTime(double magnitude_s) {
    return of(std::min(magnitude_s, 1.0), units::Unit::second); // nobody reads kiloseconds
}

QString plainNumber(double value, int decimals) {
    QString text = plainNumber(std::abs(value), 'f', decimals);
    const bool zero = text.toDouble() == 0;
    return value < 0 && !zero ? minusSign + text : text;
}

QString AxisScale::text(double value, int decimals) const {
    return plainNumber(value / factor, decimals) + QChar(0x00A0) + unitText();
}

int AxisScale::decimalsFor(double span) const {
    if (!(span > 0)) return 0;
    return std::clamp(2 - static_cast<int>(std::floor(std::log10(span / factor / 2))), 0, 9);
}

double ScaleTicker::getTickStep(const QCPRange& range) {
    m_step = QCPAxisTicker::getTickStep(range);
    // One label alone, the zero, would give no scale.
    if (range.upper > 0 && m_step > range.upper) m_step /= 2;
    return m_step;
}

QString ScaleTicker::getTickLabel(double tick, const QLocale&, QChar, int) {
    const double step = m_step / scale.factor;
    // A step of 0.25 wants two decimals where one of 0.2 wants one.
    int decimals = std::max(0, static_cast<int>(std::ceil(-std::log10(step) - 1e-9)));
    const double scaledStep = step * std::pow(10.0, decimals);
    if (std::abs(scaledStep - std::round(scaledStep)) > 1e-6) ++decimals;
    return plainNumber(tick / scale.factor, std::min(decimals, 12));
}

} // namespace blinkwright::widgets
