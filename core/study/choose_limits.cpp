#include "core/study/choose_limits.h"

#include "core/base/wording.h"
#include "core/devices/laws.h"
#include "core/study/choose_rank.h"
#include "core/study/range_screening.h"
#include "core/study/supply_range.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

using units::Unit;

// Of R1 + R2: TI SLFS022I gives 3.4 Mohm at 5 V and 10 Mohm at 15 V; for CMOS common practice, no source.
constexpr double mostOhmsAVolt = 0.67e6, mostOhmsCmos = 20e6;
constexpr double mostCoupling_F = 4700e-6;
/// Brightness that differs by less than this is matched well enough by equal charges: E24 is no finer.
constexpr double sameIntensity = 1.1;

std::string text(double value, Unit unit) {
    return units::formatQuantity(value, unit);
}

/// Both of the units in which people wish for slow rates: `1.2 Hz (72 a minute)`.
std::string rateText(double rate_Hz) {
    constexpr double perMinuteUpTo_Hz = 20;
    const std::string hertz = text(rate_Hz, Unit::hertz);
    return rate_Hz > perMinuteUpTo_Hz
               ? hertz
               : wording::inWords("%1 (%2 a minute)", hertz, units::formatQuantity(60 * rate_Hz, Unit::none));
}

std::string percentText(double share) {
    return units::formatQuantity(100 * share, Unit::none) + " %";
}

Unmet nearWish(const Wish& wish, std::string reason) {
    return {std::move(reason), wish.rate_Hz,   wish.lit,      wish.supply_V,
            std::nullopt,      wish.rateTo_Hz, wish.stayLit_s};
}

std::optional<Unmet> supplyOutOfRange(const Wish& wish) {
    const double least = supplyRange(wish.cmos).least_V, most = supplyRange(wish.cmos).most_V;
    if (wish.supply_V >= least && wish.supply_V <= most) return std::nullopt;
    const std::string low = text(least, Unit::volt), high = text(most, Unit::volt),
                      wanted = text(wish.supply_V, Unit::volt);
    Unmet unmet = nearWish(
        wish, wish.cmos
                  ? wording::inWords("A CMOS timer works from %1 to %2, not from %3.", low, high, wanted)
                  : wording::inWords("A bipolar timer works from %1 to %2, not from %3.", low, high, wanted));
    unmet.supply_V = std::clamp(wish.supply_V, least, most);
    return unmet;
}

std::optional<Unmet> stayTooLong(const Wish& wish) {
    const double turn = shortestTurn_s(wish);
    if (wish.lamps != 2 || wish.stayLit_s.value_or(0) <= turn) return std::nullopt;
    Unmet unmet =
        nearWish(wish, wording::inWords("The shorter turn of the two lamps lasts %1; a lamp cannot stay lit "
                                        "for %2 of it.",
                                        text(turn, Unit::second), text(*wish.stayLit_s, Unit::second)));
    unmet.stayLit_s = turn;
    return unmet;
}

/// No lamp can be driven: the nearest supply that can.
std::optional<Unmet> supplyTooLow(const Wish& wish) {
    if (!schemesOf(wish, LampDrive(wish)).empty()) return std::nullopt;
    Unmet unmet = nearWish(
        wish, wording::inWords("A supply of %1 is too low: the timer's output and the lamps leave "
                               "nothing of it at %2.",
                               text(wish.supply_V, Unit::volt), text(wish.lampCurrent_A, Unit::ampere)));
    Wish other = wish;
    const double most_V = supplyRange(wish.cmos).most_V;
    for (int tenths = 0; wish.supply_V + 0.1 * tenths <= most_V; ++tenths) {
        const double volts = wish.supply_V + 0.1 * tenths;
        other.supply_V = volts;
        if (schemesOf(other, LampDrive(other)).empty()) continue;
        unmet.supply_V = std::ceil(10 * volts - 1e-6) / 10;
        return unmet;
    }
    unmet.reason = wording::inWords("No supply of this timer drives such lamps at %1.",
                                    text(wish.lampCurrent_A, Unit::ampere));
    return unmet;
}

/// What the timing parts may be, as texts.
struct PartsAllowed {
    std::string leastR, mostR, leastC, mostC;
    explicit PartsAllowed(const Wish& wish)
        : leastR(text(leastResistor_ohm, Unit::ohm)), mostR(text(lawsOf(wish).mostResistance_ohm, Unit::ohm)),
          leastC(text(wish.cmos ? leastCapacitorCmos_F : leastCapacitor_F, Unit::farad)),
          mostC(text(mostCapacitor_F, Unit::farad)) {}
};

std::string limitText(const Wish& wish, const Choice& nearest) {
    if (wish.drawer) return wording::inWords("The parts in the drawer come no nearer to this wish.");
    const PartsAllowed parts(wish);
    if (std::abs(nearest.rate_Hz / wish.rate_Hz - 1) > rateMissAllowed)
        return nearest.rate_Hz < wish.rate_Hz
                   ? wording::inWords(
                         "A rate of %1 is too fast for the timer with R1 and R2 of at least %2 each "
                         "and at most %3 together, and C1 from %4 to %5.",
                         rateText(wish.rate_Hz), parts.leastR, parts.mostR, parts.leastC, parts.mostC)
                   : wording::inWords(
                         "A rate of %1 is too slow for R1 and R2 of at least %2 each and at most %3 "
                         "together, and C1 from %4 to %5, since leakage would keep larger ones "
                         "from their level.",
                         rateText(wish.rate_Hz), parts.leastR, parts.mostR, parts.leastC, parts.mostC);
    if (wish.stayLit_s && shortestStay_s(nearest) < stayShareAllowed * *wish.stayLit_s)
        return wording::inWords("Lamps of %1 fade before they were lit for %2.",
                                text(wish.lampCurrent_A, Unit::ampere), text(*wish.stayLit_s, Unit::second));
    return wording::inWords(
        "A lit share of %1 at this rate is out of reach of R1 and R2 of at least %2 each and "
        "at most %3 together, and C1 from %4 to %5.",
        percentText(wish.lit), parts.leastR, parts.mostR, parts.leastC, parts.mostC);
}

std::string rangeLimitText(const Wish& wish, const Choice& nearest) {
    if (wish.drawer) return wording::inWords("The parts in the drawer come no nearer to this range.");
    const std::string slowest = rateText(wish.slowest_Hz()), fastest = rateText(wish.fastest_Hz());
    if (reaches(wish, nearest))
        return wording::inWords(
            "One variable resistor cannot hold a lit share of %1 from %2 to %3: it moves one "
            "phase more than the other.",
            percentText(wish.lit), slowest, fastest);
    const PartsAllowed parts(wish);
    return wording::inWords(
        "The range from %1 to %2 is out of reach of one variable resistor of at most %3, "
        "with R1 and R2 of at least %4 each and at most %5 together, and C1 from %6 to %7.",
        slowest, fastest, text(preferredVariables().back(), Unit::ohm), parts.leastR, parts.mostR,
        parts.leastC, parts.mostC);
}

/// The nearest range is one that its own parts can keep: their lit shares stay together.
Unmet rangeOutOfReach(const Wish& wish, const std::vector<Choice>& simulated) {
    Wish own = wish;
    const auto worth = [&](const Choice& c) {
        own.lit = 0.5 * (c.lit + c.fast->lit);
        return std::pair(litMissOf(own, c.lit) > litMissOverRange, missOf(wish, c));
    };
    const Choice& nearest = *std::ranges::min_element(simulated, {}, worth);
    Unmet unmet = without(wish, rangeLimitText(wish, nearest));
    unmet.rate_Hz = nearest.rate_Hz;
    unmet.rateTo_Hz = nearest.fast->rate_Hz;
    unmet.lit = 0.5 * (nearest.lit + nearest.fast->lit);
    unmet.choice = nearest;
    return unmet;
}

} // namespace

bool pairMayBeCoupled(const Wish& wish) {
    if (!wish.equalBrightness || wish.intensity_cd.size() != 2) return true;
    const auto [low, high] = std::minmax(wish.intensity_cd[0], wish.intensity_cd[1]);
    return high <= sameIntensity * low;
}

std::vector<Scheme> schemesOf(const Wish& wish, const LampDrive& drive) {
    std::vector<Scheme> schemes;
    const auto add = [&](Scheme scheme) {
        for (const bool diode : {false, true}) {
            scheme.diode = diode;
            schemes.push_back(scheme);
        }
    };
    const bool ground = drive.resistorToGround(0) >= leastLampResistor_ohm;
    const bool rail = drive.resistorToRail(0) >= leastLampResistor_ohm;
    if (wish.lamps == 2) {
        const double pair = drive.resistorOfPair();
        if (pairMayBeCoupled(wish) && pair >= leastLampResistor_ohm &&
            drive.pairTime_s() / pair <= mostCoupling_F)
            add({.coupledPair = true});
        else if (ground && drive.resistorToRail(1) >= leastLampResistor_ohm)
            add({});
        return schemes;
    }
    if (ground && wish.lampTo != LampTo::rail) add({});
    if (rail && wish.lampTo != LampTo::ground) add({.lampToRail = true});
    return schemes;
}

ScreenLaws lawsOf(const Wish& wish) {
    const auto family = wish.cmos ? devices::TimerFamily::cmos : devices::TimerFamily::bipolar;
    const devices::LampSheet diode = devices::diodeSheet();
    const auto law = devices::JunctionLaw::through(diode.forward_voltage, diode.test_current, diode.ideality,
                                                   diode.series_resistance);
    return {devices::timerSheet(family, wish.supply_V, {}), law ? law.value() : devices::JunctionLaw{},
            wish.supply_V, wish.cmos ? mostOhmsCmos : mostOhmsAVolt * wish.supply_V};
}

std::optional<Unmet> forbidden(const Wish& wish) {
    if (auto unmet = supplyOutOfRange(wish)) return unmet;
    if (auto unmet = stayTooLong(wish)) return unmet;
    return supplyTooLow(wish);
}

Unmet without(const Wish& wish, std::string reason) {
    Unmet unmet = nearWish(wish, std::move(reason));
    unmet.rate_Hz = unmet.lit = 0;
    unmet.rateTo_Hz.reset();
    return unmet;
}

Unmet outOfReach(const Wish& wish, const std::vector<Choice>& simulated) {
    if (wish.rateTo_Hz) return rangeOutOfReach(wish, simulated);
    const Choice& nearest =
        *std::ranges::min_element(simulated, {}, [&](const Choice& c) { return missOf(wish, c); });
    Unmet unmet = nearWish(wish, limitText(wish, nearest));
    unmet.rate_Hz = nearest.rate_Hz;
    unmet.lit = litOf(wish, nearest);
    if (wish.stayLit_s)
        unmet.stayLit_s = std::min(
            {*wish.stayLit_s, shortestStay_s(nearest), std::min(unmet.lit, 1 - unmet.lit) / unmet.rate_Hz});
    unmet.choice = nearest;
    return unmet;
}

} // namespace blinkwright::study
