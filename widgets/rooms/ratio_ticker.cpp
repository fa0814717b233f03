#include "widgets/rooms/ratio_ticker.h"

#include "widgets/text/plain_number.h"

#include <cmath>

namespace blinkwright::widgets {

QVector<double> RatioTicker::createTickVector(double, const QCPRange& range) {
    QVector<double> ticks;
    if (!(range.lower > 0) || !(range.upper > range.lower)) return ticks;
    const double decades = std::log10(range.upper / range.lower);
    const int each = std::max(1, static_cast<int>(std::ceil(decades / 8)));
    const int first = static_cast<int>(std::floor(std::log10(range.lower))) - 1;
    const int last = static_cast<int>(std::ceil(std::log10(range.upper)));
    // So many to the decade that there are some five to ten.
    const std::vector<double> digits = decades > 3     ? std::vector<double>{1}
                                       : decades > 1   ? std::vector<double>{1, 2, 5}
                                       : decades > 0.4 ? std::vector<double>{1, 1.5, 2, 3, 4, 5, 6, 7, 8, 9}
                                                       : std::vector<double>{};
    if (digits.empty()) { // less than a factor of three: even steps read better
        const double rough = range.size() / 5, power = std::pow(10.0, std::floor(std::log10(rough)));
        const double step = power * (rough / power < 2 ? 1 : rough / power < 5 ? 2 : 5);
        // Of a very narrow range more steps lie below it than an int can count.
        for (auto k = static_cast<qint64>(std::ceil(range.lower / step)); double(k) * step <= range.upper;
             ++k)
            ticks << double(k) * step;
        return ticks;
    }
    for (int decade = first; decade <= last; ++decade) {
        if (digits.size() == 1 && decade % each != 0) continue;
        for (const double digit : digits) ticks << digit * std::pow(10.0, decade);
    }
    return ticks;
}

QString RatioTicker::getTickLabel(double tick, const QLocale&, QChar, int) {
    if (unit == units::Unit::hertz && tick >= 1e-3 &&
        tick < 1) // as rateText: nobody counts flashes in millihertz
        return plainNumber(tick, 'g', 3) + QStringLiteral("\u00A0Hz");
    return QString::fromStdString(units::formatQuantity(tick, unit, 3));
}

} // namespace blinkwright::widgets
