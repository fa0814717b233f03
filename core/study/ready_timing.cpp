#include "core/study/ready_timing.h"

#include "core/units/series.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::study {

namespace {

using units::Series;

// Common practice, no source: R1 of a kilohm and more, so that pin 7 has little to sink; no more in all than
// what leaves the leakage of a common electrolytic far behind.
constexpr double leastResistance = 1e3, leastSum = 6e4, mostSum = 4e5, likedSum = 1.5e5;
constexpr double leastC = 1e-9, mostC = 1e-4;
constexpr double shareWeight = 1;    ///< of the share of the cycle against the relative rate
constexpr double sizeWeight = 0.005; ///< between values that serve alike, the liked size
constexpr double rareWeight = 0.01;  ///< E3 capacitors are in every drawer

double highResistance(TimingForm form, const Timing& t) {
    return form == TimingForm::plain     ? t.r1_ohm + t.r2_ohm
           : form == TimingForm::steered ? t.r1_ohm
                                         : t.r2_ohm;
}

Phase phaseOf(const TimingWish& wish, const Timing& t) {
    return {wish.factors.high * highResistance(wish.form, t) * t.c_farad,
            wish.factors.low * t.r2_ohm * t.c_farad};
}

double sum(TimingForm form, const Timing& t) {
    return form == TimingForm::plain ? t.r1_ohm + 2 * t.r2_ohm
                                     : t.r1_ohm + t.r2_ohm * (form == TimingForm::single ? 2 : 1);
}

double miss(const TimingWish& wish, const Timing& t) {
    const double size = std::fabs(std::log(sum(wish.form, t) / likedSum));
    const double rare = units::inSeries(Series::E3, t.c_farad) ? 0 : rareWeight;
    return missOf(wish, phaseOf(wish, t)) + sizeWeight * size + rare;
}

} // namespace

double missOf(const TimingWish& wish, const Phase& phase) {
    const double rate = std::fabs(std::log(phase.period_s() / wish.phase.period_s()));
    const double share = wish.form == TimingForm::single ? 0 : std::fabs(phase.duty() - wish.phase.duty());
    return rate + shareWeight * share;
}

PhaseFactors factorsOf(TimingForm form, const Timing& timing, const Phase& measured) {
    return {measured.high_s / (highResistance(form, timing) * timing.c_farad),
            measured.low_s / (timing.r2_ohm * timing.c_farad)};
}

Timing chooseTiming(const TimingWish& wish) {
    Timing best;
    double least = std::numeric_limits<double>::infinity();
    const auto consider = [&](const Timing& t) {
        if (t.r2_ohm < leastResistance || (wish.form != TimingForm::single && t.r1_ohm < leastResistance))
            return;
        const double here = miss(wish, t);
        if (here >= least) return;
        least = here;
        best = t;
    };
    const auto around = [](double value) {
        return std::pair{units::atMost(Series::E24, value), units::nextAbove(Series::E24, value)};
    };
    for (const double c : units::valuesBetween(Series::E6, leastC, mostC)) {
        double r2 = wish.phase.low_s / (wish.factors.low * c);
        if (wish.form == TimingForm::single)
            r2 = wish.phase.period_s() / ((wish.factors.high + wish.factors.low) * c);
        const auto [lower, upper] = around(r2);
        for (const double chosen : {lower, upper}) {
            Timing t{0, chosen, c};
            if (wish.form != TimingForm::single) {
                // R1 makes up in the whole period for what R2 could not meet.
                const double rest =
                    (wish.phase.period_s() - wish.factors.low * chosen * c) / (wish.factors.high * c);
                const double r1 = wish.form == TimingForm::plain ? rest - chosen : rest;
                const auto [less, more] = around(std::max(r1, leastResistance));
                for (const double first : {less, more}) {
                    t.r1_ohm = first;
                    if (sum(wish.form, t) >= leastSum && sum(wish.form, t) <= mostSum) consider(t);
                }
            } else if (sum(wish.form, t) >= leastSum && sum(wish.form, t) <= mostSum) {
                consider(t);
            }
        }
    }
    return best;
}

} // namespace blinkwright::study
