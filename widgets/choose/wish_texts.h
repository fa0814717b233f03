// The answers of the sentence that says a wish, as they stand in its fields, and the wish that they come to.
//
//   WishTexts texts;  texts.rate = "72";
//   WishRead read = readWish(texts);
//   if (read.faults.empty()) study::choose(read.wish, {});
#pragma once

#include "core/study/wish.h"

#include <QString>
#include <QVariantMap>
#include <map>

namespace blinkwright::widgets {

enum class RateUnit { perMinute, hertz, seconds };
enum class LitUnit { share, seconds };

struct WishTexts {
    QString rate = QStringLiteral("60"), rateTo; ///< an empty second rate is none
    RateUnit rateUnit = RateUnit::perMinute;
    QString lit = QStringLiteral("50");
    LitUnit litUnit = LitUnit::share;
    bool range = false;
    int lamps = 1;
    study::LampTo lampTo = study::LampTo::either;
    QString colour = QStringLiteral("red"), second = QStringLiteral("green");
    QString current = QStringLiteral("10 mA");
    QString supply = QStringLiteral("9 V");
    bool cmos = false;
    QString stayLit; ///< empty: not asked
    bool equalBrightness = false;
    QString intensity, secondIntensity; ///< empty: not known
    units::Series r1 = units::Series::E24, r2 = units::Series::E24, c1 = units::Series::E6;
    bool fromDrawer = false;

    bool operator==(const WishTexts&) const = default;
};

/// Which text a fault is about.
enum class WishField { rate, rateTo, lit, current, supply, stayLit, intensity, secondIntensity };

struct WishRead {
    study::Wish wish;                    ///< of no use while there are faults; without its drawer
    std::map<WishField, QString> faults; ///< a sentence each
};
WishRead readWish(const WishTexts& texts);

/// The texts with rate, share, supply and turn of the nearest wish, in the units that are chosen.
WishTexts withNearest(WishTexts texts, const study::Unmet& unmet);

/// For the settings; what is missing or unknown there stays as it is at first.
QVariantMap kept(const WishTexts& texts);
WishTexts restored(const QVariantMap& map);

} // namespace blinkwright::widgets
