#include "core/study/choose.h"

#include "core/base/together.h"
#include "core/devices/board.h"
#include "core/engine/transient.h"
#include "core/study/figures.h"
#include "core/study/lamp_drive.h"
#include "core/study/proposal.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <set>
#include <tuple>

namespace blinkwright::study {

namespace {

using units::Unit;

// Common practice, no source: a smaller R1 wastes current into pin 7; smaller capacitors are no larger than
// the wiring's; larger ones leak.
constexpr double leastResistor_ohm = 1e3;
constexpr double leastCapacitor_F = 1e-9, leastCapacitorCmos_F = 100e-12, mostCapacitor_F = 2200e-6;
constexpr double mostCoupling_F = 4700e-6;
// Of R1 + R2: TI SLFS022I gives 3.4 Mohm at 5 V and 10 Mohm at 15 V; for CMOS common practice, no source.
constexpr double mostOhmsAVolt = 0.67e6, mostOhmsCmos = 20e6;
// TI SLFS022I and SLFS043: recommended supply.
constexpr double leastSupply_V = 4.5, mostSupply_V = 16, leastSupplyCmos_V = 2, mostSupplyCmos_V = 15;
constexpr double leastLampResistor_ohm = 10;
/// A wish counts as met up to these misses.
constexpr double rateMissAllowed = 0.1, litMissAllowed = 0.1; // the latter as of litMissOf()
constexpr double accuracy = 1e-5;

std::string text(double value, Unit unit) {
    return units::formatQuantity(value, unit);
}

std::pair<double, double> supplyRange(bool cmos) {
    return cmos ? std::pair(leastSupplyCmos_V, mostSupplyCmos_V) : std::pair(leastSupply_V, mostSupply_V);
}

std::vector<double> owned(const std::vector<Stock>& drawer, Stock::Kind kind, double low, double high,
                          double least_V) {
    std::set<double> values;
    for (const Stock& stock : drawer)
        if (stock.kind == kind && stock.quantity > 0 && stock.value >= low && stock.value <= high &&
            (kind == Stock::Kind::resistor || stock.rating.value_or(least_V) >= least_V))
            values.insert(stock.value);
    return {values.begin(), values.end()};
}

PartValues partValues(const Wish& wish, double mostResistance) {
    const double leastC = wish.cmos ? leastCapacitorCmos_F : leastCapacitor_F;
    if (wish.drawer) {
        const auto resistors =
            owned(*wish.drawer, Stock::Kind::resistor, leastResistor_ohm, mostResistance, wish.supply_V);
        return {resistors, resistors,
                owned(*wish.drawer, Stock::Kind::capacitor, leastC, mostCapacitor_F, wish.supply_V)};
    }
    return {units::valuesBetween(wish.r1, leastResistor_ohm, mostResistance),
            units::valuesBetween(wish.r2, leastResistor_ohm, mostResistance),
            units::valuesBetween(wish.c1, leastC, mostCapacitor_F)};
}

/// How many of each owned value are left; unlimited without a drawer.
class Remaining {
  public:
    explicit Remaining(const Wish& wish) : m_limited(wish.drawer.has_value()) {
        if (!m_limited) return;
        for (const Stock& stock : *wish.drawer) m_left[{stock.kind, stock.value}] += stock.quantity;
    }
    bool take(Stock::Kind kind, double value) { return !m_limited || m_left[{kind, value}]-- > 0; }
    /// Takes the resistor that is nearest by ratio; 0 where there is none.
    double takeResistor(double wanted) {
        if (!m_limited) return units::nearest(units::Series::E24, wanted);
        double best = 0;
        for (const auto& [key, left] : m_left) {
            if (key.first != Stock::Kind::resistor || left <= 0) continue;
            if (best == 0 || std::abs(std::log(key.second / wanted)) < std::abs(std::log(best / wanted)))
                best = key.second;
        }
        if (best > 0) --m_left[{Stock::Kind::resistor, best}];
        return best;
    }

  private:
    bool m_limited;
    std::map<std::pair<Stock::Kind, double>, long> m_left;
};

double toleranceOf(const Wish& wish, Stock::Kind kind, double value, units::Series series) {
    if (wish.drawer)
        for (const Stock& stock : *wish.drawer)
            if (stock.kind == kind && stock.value == value && stock.tolerance) return *stock.tolerance;
    return units::nominalTolerance(
        wish.drawer ? (kind == Stock::Kind::resistor ? units::Series::E24 : units::Series::E6) : series);
}

struct Tolerances {
    double r1, r2, c1;
};

Tolerances tolerancesOf(const Wish& wish, const Choice& choice) {
    return {toleranceOf(wish, Stock::Kind::resistor, choice.r1_ohm, wish.r1),
            toleranceOf(wish, Stock::Kind::resistor, choice.r2_ohm, wish.r2),
            toleranceOf(wish, Stock::Kind::capacitor, choice.c1_farad, wish.c1)};
}

double couplingWanted(const Wish& wish, double resistance) {
    const double turn_s = std::max(wish.lit, 1 - wish.lit) / wish.rate_Hz;
    return units::atLeast(units::Series::E6, turn_s / (pairFall * resistance));
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
        if (pair >= leastLampResistor_ohm && couplingWanted(wish, pair) <= mostCoupling_F)
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

Unmet nearWish(const Wish& wish, std::string reason) {
    return {std::move(reason), wish.rate_Hz, wish.lit, wish.supply_V, std::nullopt};
}

Unmet supplyOutOfRange(const Wish& wish) {
    const auto [least, most] = supplyRange(wish.cmos);
    Unmet unmet = nearWish(wish, "A " + std::string(wish.cmos ? "CMOS" : "bipolar") + " timer works from " +
                                     text(least, Unit::volt) + " to " + text(most, Unit::volt) +
                                     ", not from " + text(wish.supply_V, Unit::volt) + ".");
    unmet.supply_V = std::clamp(wish.supply_V, least, most);
    return unmet;
}

/// No lamp can be driven: the nearest supply that can.
Unmet supplyTooLow(const Wish& wish) {
    Unmet unmet = nearWish(wish, "A supply of " + text(wish.supply_V, Unit::volt) +
                                     " is too low: the timer's output and the lamps leave nothing of it at " +
                                     text(wish.lampCurrent_A, Unit::ampere) + ".");
    Wish other = wish;
    for (double volts = wish.supply_V; volts <= supplyRange(wish.cmos).second; volts += 0.1) {
        other.supply_V = volts;
        if (schemesOf(other, LampDrive(other)).empty()) continue;
        unmet.supply_V = std::ceil(10 * volts - 1e-6) / 10;
        return unmet;
    }
    unmet.reason =
        "No supply of this timer drives such lamps at " + text(wish.lampCurrent_A, Unit::ampere) + ".";
    return unmet;
}

bool met(const Wish& wish, const Choice& choice) {
    return std::abs(choice.rate_Hz / wish.rate_Hz - 1) <= rateMissAllowed &&
           litMissOf(wish, choice.lit) <= litMissAllowed;
}

std::string limitText(const Wish& wish, const Choice& nearest, double mostResistance) {
    if (wish.drawer) return "The parts in the drawer come no nearer to this wish.";
    const std::string resistors = "R1 and R2 of at least " + text(leastResistor_ohm, Unit::ohm) +
                                  " each and at most " + text(mostResistance, Unit::ohm) + " together";
    const std::string capacitors = "C1 from " +
                                   text(wish.cmos ? leastCapacitorCmos_F : leastCapacitor_F, Unit::farad) +
                                   " to " + text(mostCapacitor_F, Unit::farad);
    if (std::abs(nearest.rate_Hz / wish.rate_Hz - 1) > rateMissAllowed)
        return "A rate of " + text(wish.rate_Hz, Unit::hertz) +
               (nearest.rate_Hz < wish.rate_Hz
                    ? " is too fast for the timer with " + resistors + ", and " + capacitors + "."
                    : " is too slow for " + resistors + ", and " + capacitors +
                          ", since leakage would keep larger ones from their level.");
    return "A lit share of " + units::formatQuantity(wish.lit, Unit::none) +
           " at this rate is out of reach of " + resistors + ", with " + capacitors + ".";
}

/// What ranks before what; less is better. The simulated board first, in classes, so that parts which come as
/// near as tolerances can tell are ranked by what else matters.
auto rankOf(const Wish& wish, const Choice& c) {
    const double off = std::max(std::abs(c.rate_Hz / wish.rate_Hz - 1), litMissOf(wish, c.lit));
    constexpr double classes[] = {0.005, 0.01, 0.02, 0.05, 0.1};
    const auto nearness = std::ranges::lower_bound(classes, off) - std::begin(classes);
    const Tolerances t = tolerancesOf(wish, c);
    const double share = c.r1_ohm / (c.r1_ohm + 2 * c.r2_ohm);
    const long band = std::lround(100 * (t.c1 + share * t.r1 + (1 - share) * t.r2));
    const int stall = c.stallMargin >= 10 ? 0 : c.stallMargin >= 3 ? 1 : 2;
    const long current = std::lround(std::log(c.supplyMean_A) / std::log(1.05)); // told apart by 5 %
    return std::tuple(nearness, band, stall, c.scheme.diode, current, c.c1_farad, off);
}

} // namespace

Screening screenWish(const Wish& wish, std::size_t most) {
    Screening result;
    const auto [least, top] = supplyRange(wish.cmos);
    if (wish.supply_V < least || wish.supply_V > top) {
        result.unmet = supplyOutOfRange(wish);
        return result;
    }
    const LampDrive drive(wish);
    const std::vector<Scheme> schemes = schemesOf(wish, drive);
    if (schemes.empty()) {
        result.unmet = supplyTooLow(wish);
        return result;
    }
    const ScreenLaws laws = lawsOf(wish);
    const PartValues values = partValues(wish, laws.mostResistance_ohm);
    if (values.r1.empty() || values.c1.empty()) {
        result.unmet =
            nearWish(wish, std::string("The drawer has no ") +
                               (values.r1.empty() ? "resistor" : "capacitor") + " fit for the timing.");
        result.unmet->rate_Hz = result.unmet->lit = 0;
        return result;
    }
    for (const Scheme& scheme : schemes)
        result.judged += screen(wish, values, scheme, laws, most, result.best);
    return result;
}

std::vector<Choice> simulateCandidates(const Wish& wish, const std::vector<Candidate>& candidates,
                                       const ChooseRequest& request) {
    const LampDrive drive(wish);
    const ScreenLaws laws = lawsOf(wish);
    std::vector<std::optional<Choice>> simulated(candidates.size());
    together(candidates.size(), request.threads, [&](std::size_t k) {
        const Candidate& from = candidates[k];
        Choice c;
        c.scheme = from.scheme;
        c.r1_ohm = from.r1_ohm;
        c.r2_ohm = from.r2_ohm;
        c.c1_farad = from.c1_farad;
        Remaining left(wish);
        if (!left.take(Stock::Kind::resistor, c.r1_ohm) || !left.take(Stock::Kind::resistor, c.r2_ohm) ||
            !left.take(Stock::Kind::capacitor, c.c1_farad))
            return;
        c.r3_ohm = left.takeResistor(c.scheme.coupledPair  ? drive.resistorOfPair()
                                     : c.scheme.lampToRail ? drive.resistorToRail(0)
                                                           : drive.resistorToGround(0));
        if (wish.lamps == 2 && !c.scheme.coupledPair)
            c.r4_ohm =
                left.takeResistor(c.scheme.lampToRail ? drive.resistorToGround(1) : drive.resistorToRail(1));
        if (c.r3_ohm <= 0 || c.r4_ohm.value_or(1) <= 0) return;
        if (c.scheme.coupledPair) c.coupling_farad = couplingWanted(wish, c.r3_ohm);
        const auto board = devices::makeBoard(proposedCircuit(wish, c), circuit::PartSet::A);
        if (!board) return;
        const engine::Settled settled =
            engine::settle(board.value(), {.accuracy = accuracy, .cancel = request.cancel});
        if (!settled.found) return;
        const Figures figures = figuresOf(board.value(), settled.wave, settled.high_s);
        c.rate_Hz = 1 / settled.period_s;
        c.duty = settled.high_s / settled.period_s;
        for (std::size_t j = 0; j < board.value().junctions.size(); ++j) {
            if (board.value().junctions[j].ref != "D1") continue;
            c.lit = figures.junctions[j].lit_s / settled.period_s;
            c.lampPeak_A = figures.junctions[j].peak_A;
        }
        c.supplyMean_A = figures.supplyCurrents.front().mean_A;
        c.stallMargin = stallMargin(laws, c.r1_ohm, c.r2_ohm, c.c1_farad);
        simulated[k] = std::move(c);
    });
    std::vector<Choice> choices;
    for (auto& one : simulated)
        if (one) choices.push_back(std::move(*one));
    return choices;
}

namespace {

/// The rates with R1, R2 and C1 at the ends of their tolerances, simulated.
void addBand(const Wish& wish, Choice& choice, const ChooseRequest& request) {
    const Tolerances t = tolerancesOf(wish, choice);
    const auto rateAt = [&](int side) {
        Choice at = choice;
        at.r1_ohm *= 1 + side * t.r1;
        at.r2_ohm *= 1 + side * t.r2;
        at.c1_farad *= 1 + side * t.c1;
        const auto board = devices::makeBoard(proposedCircuit(wish, at), circuit::PartSet::A);
        if (!board) return 0.0;
        const engine::Settled settled =
            engine::settle(board.value(), {.accuracy = accuracy, .cancel = request.cancel});
        return settled.found ? 1 / settled.period_s : 0.0;
    };
    choice.rateLow_Hz = rateAt(+1);
    choice.rateHigh_Hz = rateAt(-1);
}

} // namespace

Choices choose(const Wish& wish, const ChooseRequest& request) {
    const auto cancelled = [&] { return request.cancel && request.cancel->load(std::memory_order_relaxed); };
    Choices result;
    const Screening screening = screenWish(wish, request.simulate);
    result.screened = screening.judged;
    if (screening.unmet) {
        result.unmet = screening.unmet;
        return result;
    }
    std::vector<Choice> choices = simulateCandidates(wish, screening.best, request);
    result.simulated = screening.best.size();
    if (cancelled()) {
        result.cancelled = true;
        return result;
    }
    if (choices.empty()) {
        result.unmet = nearWish(wish, wish.drawer ? "No blinker can be made of the parts in the drawer."
                                                  : "No board with such values blinks.");
        result.unmet->rate_Hz = result.unmet->lit = 0;
        return result;
    }
    std::ranges::stable_sort(choices, {}, [&](const Choice& c) { return rankOf(wish, c); });
    if (!met(wish, choices.front())) {
        const Choice& nearest = *std::ranges::min_element(
            choices, {}, [&](const Choice& c) { return missOf(wish, c.rate_Hz, c.lit); });
        result.unmet = Unmet{limitText(wish, nearest, lawsOf(wish).mostResistance_ohm), nearest.rate_Hz,
                             nearest.lit, wish.supply_V, nearest};
        return result;
    }
    std::erase_if(choices, [&](const Choice& c) { return !met(wish, c); });
    if (choices.size() > request.keep) choices.resize(request.keep);
    together(choices.size(), request.threads, [&](std::size_t k) { addBand(wish, choices[k], request); });
    result.best = std::move(choices);
    result.cancelled = cancelled();
    return result;
}

} // namespace blinkwright::study
