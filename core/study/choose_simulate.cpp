// The parts that a candidate needs besides its timing, and the simulation of its board.
#include "core/base/together.h"
#include "core/devices/board.h"
#include "core/engine/transient.h"
#include "core/study/choose.h"
#include "core/study/choose_limits.h"
#include "core/study/choose_rank.h"
#include "core/study/figures.h"
#include "core/study/proposal.h"
#include "core/study/stock_left.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

constexpr double accuracy = 1e-5;
// What will do in the place of the usual part, where values come from a drawer: common practice, no source.
constexpr double leastControl_F = 1e-9, mostControl_F = 1e-6;
constexpr double leastBuffer_F = 10e-6, mostBuffer_F = 4700e-6;
constexpr double leastBleeder_ohm = 3.3e3, mostBleeder_ohm = 33e3;
/// Of a lamp's resistor against the one worked out: beyond, the lamp would be dim or overdriven.
constexpr double mostOffLamp = 2;
/// Of a coupling capacitor over the least that does: beyond, the pair needs many cycles to settle.
constexpr double mostOverCoupling = 10;

using Kind = Stock::Kind;

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

/// All parts of a candidate; nothing where the drawer lacks one.
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

struct Ran {
    double rate_Hz = 0, duty = 0, supplyMean_A = 0;
    std::vector<ChosenLamp> lamps;
    double lit() const { return lamps.empty() ? 0 : lamps.front().lit_s * rate_Hz; }
};

std::optional<Ran> ran(const Wish& wish, const Choice& choice, const ChooseRequest& request) {
    const auto board = devices::makeBoard(proposedCircuit(wish, choice), circuit::PartSet::A);
    if (!board) return std::nullopt;
    const engine::Settled settled =
        engine::settle(board.value(), {.accuracy = accuracy, .cancel = request.cancel});
    if (!settled.found) return std::nullopt;
    const Figures figures = figuresOf(board.value(), settled.wave, settled.high_s);
    Ran result{
        1 / settled.period_s, settled.high_s / settled.period_s, figures.supplyCurrents.front().mean_A, {}};
    for (const char* ref : {"D1", "D2"})
        for (std::size_t j = 0; j < board.value().junctions.size(); ++j)
            if (board.value().junctions[j].ref == ref)
                result.lamps.push_back(
                    {figures.junctions[j].peak_A, figures.junctions[j].mean_A, figures.junctions[j].lit_s});
    return result;
}

void count(const ChooseRequest& request) {
    if (request.done) request.done->fetch_add(1, std::memory_order_relaxed);
}

} // namespace

std::vector<Choice> simulateCandidates(const Wish& wish, const std::vector<Candidate>& candidates,
                                       const ChooseRequest& request) {
    const LampDrive drive(wish);
    const ScreenLaws laws = lawsOf(wish);
    std::vector<std::optional<Choice>> simulated(candidates.size());
    together(candidates.size(), request.threads, [&](std::size_t k) {
        count(request);
        std::optional<Choice> c = partsOf(wish, drive, candidates[k]);
        if (!c) return;
        if (c->variable_ohm) c->setting = 1;
        const std::optional<Ran> slow = ran(wish, *c, request);
        if (!slow) return;
        c->rate_Hz = slow->rate_Hz;
        c->duty = slow->duty;
        c->lit = slow->lit();
        c->lamps = slow->lamps;
        c->lampPeak_A = slow->lamps.front().peak_A;
        c->supplyMean_A = slow->supplyMean_A;
        c->stallMargin = stallMargin(laws, c->r1_ohm, c->r2_ohm + c->variable_ohm.value_or(0), c->c1_farad);
        if (c->variable_ohm) {
            c->setting = 0;
            const std::optional<Ran> fast = ran(wish, *c, request);
            if (!fast) return;
            c->fast = FastEnd{fast->rate_Hz, fast->duty, fast->lit(), fast->supplyMean_A};
            c->setting = Choice{}.setting;
        }
        simulated[k] = std::move(c);
    });
    std::vector<Choice> choices;
    for (auto& one : simulated)
        if (one) choices.push_back(std::move(*one));
    return choices;
}

void addBands(const Wish& wish, std::vector<Choice>& choices, const ChooseRequest& request) {
    together(choices.size(), request.threads, [&](std::size_t k) {
        count(request);
        const Tolerances t = tolerancesOf(wish, choices[k]);
        const auto rateAt = [&](int side) {
            Choice at = choices[k];
            at.r1_ohm *= 1 + side * t.r1;
            at.r2_ohm *= 1 + side * t.r2;
            at.c1_farad *= 1 + side * t.c1;
            if (at.variable_ohm) {
                *at.variable_ohm *= 1 + side * t.variable;
                at.setting = side > 0 ? 1 : 0;
            }
            const auto figures = ran(wish, at, request);
            return figures ? figures->rate_Hz : 0.0;
        };
        choices[k].rateLow_Hz = rateAt(+1);
        choices[k].rateHigh_Hz = rateAt(-1);
    });
}

} // namespace blinkwright::study
