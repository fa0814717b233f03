#include "core/study/choose_rank.h"

#include "core/study/range_screening.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <tuple>

namespace blinkwright::study {

namespace {

/// A mark on a knob cannot be set finer: common practice, no source.
constexpr double reachSlack = 0.005;
/// A variable resistor that goes further than this beyond an end sets the rate too coarsely.
const double mostBeyond = std::log(2.0);
/// Of variable resistors: common practice, no source.
constexpr double variableTolerance = 0.2;

double toleranceOf(const Wish& wish, Stock::Kind kind, double value, double otherwise) {
    if (wish.drawer)
        for (const Stock& stock : *wish.drawer)
            if (stock.kind == kind && stock.value == value && stock.tolerance) return *stock.tolerance;
    return otherwise;
}

/// How far the rates are off: relative, or of a range the logarithm at the worse end.
double rateOff(const Wish& wish, const Choice& c) {
    if (!wish.rateTo_Hz) return std::abs(c.rate_Hz / wish.rate_Hz - 1);
    return std::max(std::abs(std::log(c.rate_Hz / wish.slowest_Hz())),
                    std::abs(std::log(c.fast->rate_Hz / wish.fastest_Hz())));
}

double litOff(const Wish& wish, const Choice& c) {
    const double slow = litMissOf(wish, litOf(wish, c));
    if (!c.fast) return slow;
    return std::max(slow,
                    litMissOf(wish, wish.stayLit_s && c.scheme.coupledPair ? c.fast->duty : c.fast->lit));
}

/// What ranks before what; less is better. The simulated board first, in classes, so that parts which come as
/// near as tolerances can tell are ranked by what else matters. Of boards that are alike in all that, the one
/// that leaves more in the drawer comes first.
auto rankOf(const Wish& wish, const Choice& c) {
    const double off = std::max(rateOff(wish, c), litOff(wish, c));
    constexpr double classes[] = {0.005, 0.01, 0.02, 0.05, 0.1};
    const auto nearness = std::ranges::lower_bound(classes, off) - std::begin(classes);
    const Tolerances t = tolerancesOf(wish, c);
    const double variable = c.variable_ohm.value_or(0);
    const double r2 = c.r2_ohm + variable;
    const double share = c.r1_ohm / (c.r1_ohm + 2 * r2);
    const double of2 = (c.r2_ohm * t.r2 + variable * t.variable) / r2;
    const long band = std::lround(100 * (t.c1 + share * t.r1 + (1 - share) * of2));
    const int stall = c.stallMargin >= 10 ? 0 : c.stallMargin >= 3 ? 1 : 2;
    const long current = std::lround(std::log(c.supplyMean_A) / std::log(1.05)); // told apart by 5 %
    const long gone = -c.left.value_or(0);
    return std::tuple(nearness, band, stall, c.scheme.diode, current, c.c1_farad, gone, off);
}

} // namespace

Tolerances tolerancesOf(const Wish& wish, const Choice& choice) {
    const auto otherwise = [&](units::Series series, units::Series owned) {
        return units::nominalTolerance(wish.drawer ? owned : series);
    };
    using enum units::Series;
    using enum Stock::Kind;
    return {toleranceOf(wish, resistor, choice.r1_ohm, otherwise(wish.r1, E24)),
            toleranceOf(wish, resistor, choice.r2_ohm, otherwise(wish.r2, E24)),
            toleranceOf(wish, capacitor, choice.c1_farad, otherwise(wish.c1, E6)),
            toleranceOf(wish, Stock::Kind::variable, choice.variable_ohm.value_or(0), variableTolerance)};
}

double litOf(const Wish& wish, const Choice& choice) {
    return wish.stayLit_s && choice.scheme.coupledPair ? choice.duty : choice.lit;
}

double missOf(const Wish& wish, const Choice& c) {
    if (!c.fast) return missOf(wish, c.rate_Hz, litOf(wish, c));
    return std::abs(std::log(c.rate_Hz / wish.slowest_Hz())) +
           std::abs(std::log(c.fast->rate_Hz / wish.fastest_Hz())) + litOff(wish, c);
}

double shortestStay_s(const Choice& choice) {
    double least = std::numeric_limits<double>::infinity();
    for (const ChosenLamp& lamp : choice.lamps) least = std::min(least, lamp.lit_s);
    return least;
}

bool reaches(const Wish& wish, const Choice& choice) {
    return choice.fast && choice.rate_Hz <= wish.slowest_Hz() * (1 + reachSlack) &&
           choice.fast->rate_Hz >= wish.fastest_Hz() * (1 - reachSlack);
}

bool met(const Wish& wish, const Choice& choice) {
    if (wish.stayLit_s && choice.scheme.coupledPair &&
        shortestStay_s(choice) < stayShareAllowed * *wish.stayLit_s)
        return false;
    if (wish.rateTo_Hz)
        return reaches(wish, choice) && rateOff(wish, choice) <= mostBeyond &&
               litOff(wish, choice) <= litMissOverRange;
    return rateOff(wish, choice) <= rateMissAllowed && litOff(wish, choice) <= litMissAllowed;
}

void rank(const Wish& wish, std::vector<Choice>& choices) {
    std::ranges::stable_sort(choices, {}, [&](const Choice& c) { return rankOf(wish, c); });
}

} // namespace blinkwright::study
