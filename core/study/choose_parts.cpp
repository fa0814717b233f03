#include "core/study/choose_parts.h"

#include "core/base/wording.h"
#include "core/study/choose_limits.h"
#include "core/study/proposal.h"
#include "core/study/stock_left.h"
#include "core/units/engineering.h"

#include <algorithm>

namespace blinkwright::study {

namespace {

using Kind = Stock::Kind;

// What will do in the place of the usual part, where values come from a drawer: common practice, no source.
constexpr double leastControl_F = 1e-9, mostControl_F = 1e-6;
constexpr double leastBuffer_F = 10e-6, mostBuffer_F = 4700e-6;
constexpr double leastBleeder_ohm = 3.3e3, mostBleeder_ohm = 33e3;
/// Of a lamp's resistor against the one worked out: beyond, the lamp would be dim or overdriven.
constexpr double mostOffLamp = 2;
/// Of a coupling capacitor over the least that does: beyond, the pair needs many cycles to settle.
constexpr double mostOverCoupling = 10;

double takeLampResistor(StockLeft& left, double wanted) {
    if (wanted < leastLampResistor_ohm) return 0;
    if (!left.limited()) return units::nearest(units::Series::E24, wanted);
    return left.takeNearest(Kind::resistor, wanted, wanted / mostOffLamp, wanted * mostOffLamp);
}

double takeCoupling(StockLeft& left, double least) {
    if (!left.limited()) return units::atLeast(units::Series::E6, least);
    return left.takeNearest(Kind::capacitor, least, least, least * mostOverCoupling);
}

/// What hangs on the output. @return false where the drawer lacks a part that it takes.
bool takeLampParts(const Wish& wish, const LampDrive& drive, StockLeft& left, Choice& c) {
    if (c.scheme.coupledPair) {
        c.r3_ohm = takeLampResistor(left, drive.resistorOfPair());
        if (c.r3_ohm <= 0) return false;
        c.coupling_farad = takeCoupling(left, drive.pairTime_s() / c.r3_ohm);
        if (left.limited())
            c.bleeder_ohm =
                left.takeNearest(Kind::resistor, pairBleeder_ohm, leastBleeder_ohm, mostBleeder_ohm);
        return *c.coupling_farad > 0;
    }
    c.r3_ohm =
        takeLampResistor(left, c.scheme.lampToRail ? drive.resistorToRail(0) : drive.resistorToGround(0));
    if (wish.lamps == 2)
        c.r4_ohm =
            takeLampResistor(left, c.scheme.lampToRail ? drive.resistorToGround(1) : drive.resistorToRail(1));
    return c.r3_ohm > 0 && c.r4_ohm.value_or(1) > 0;
}

} // namespace

std::optional<Choice> partsOf(const Wish& wish, const LampDrive& drive, const Candidate& from) {
    Choice c;
    c.scheme = from.scheme;
    c.r1_ohm = from.r1_ohm;
    c.r2_ohm = from.r2_ohm;
    c.c1_farad = from.c1_farad;
    if (from.variable_ohm > 0) c.variable_ohm = from.variable_ohm;
    StockLeft left(wish);
    if (!left.take(Kind::resistor, c.r1_ohm) || !left.take(Kind::resistor, c.r2_ohm) ||
        !left.take(Kind::capacitor, c.c1_farad) ||
        (c.variable_ohm && !left.take(Kind::variable, *c.variable_ohm)) ||
        !takeLampParts(wish, drive, left, c))
        return std::nullopt;
    if (left.limited()) {
        c.control_farad = left.takeNearest(Kind::capacitor, c.control_farad, leastControl_F, mostControl_F);
        c.buffer_farad = left.takeNearest(Kind::capacitor, c.buffer_farad, leastBuffer_F, mostBuffer_F);
    }
    c.left = left.fewest();
    return c;
}

std::string missingForLamps(const Wish& wish) {
    const LampDrive drive(wish);
    std::string missing;
    for (const Scheme& scheme : schemesOf(wish, drive)) {
        Choice c;
        c.scheme = scheme;
        StockLeft left(wish);
        if (takeLampParts(wish, drive, left, c)) return {};
        const auto text = [](double value, units::Unit unit) {
            return units::formatQuantity(value, unit, 2);
        };
        const double wanted = scheme.coupledPair  ? drive.resistorOfPair()
                              : scheme.lampToRail ? drive.resistorToRail(0)
                                                  : drive.resistorToGround(0);
        if (c.r3_ohm <= 0)
            missing = wording::inWords("The drawer has no resistor near %1 for the lamp.",
                                       text(wanted, units::Unit::ohm));
        else if (scheme.coupledPair)
            missing = wording::inWords("The drawer has no capacitor of %1 or more for the pair.",
                                       text(drive.pairTime_s() / c.r3_ohm, units::Unit::farad));
        else
            missing = wording::inWords("The drawer has no resistor for the second lamp.");
    }
    return missing;
}

} // namespace blinkwright::study
