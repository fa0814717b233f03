#include "core/study/why.h"

#include "core/engine/transient.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::study {
namespace {

using circuit::PartKind;
using std::log;

Workbench steered() {
    Workbench b = tests::astableWithLamp({}, 470);
    b.part(PartKind::diode, "D9").net("discharge", {"D9:anode"}).net("timing", {"D9:cathode"});
    return b;
}

Workbench driven() {
    Workbench b = tests::astable({}, false);
    b.part(PartKind::supply, "BT2", {{"voltage", 4.0}, {"resistance", 10.0}});
    b.net("control", {"U1:5", "BT2:plus"}).net("ground", {"BT2:minus"});
    return b;
}

Workbench single() {
    Workbench b = bareTimer(9);
    b.part(PartKind::resistor, "R1", {{"resistance", 68e3}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-5}})
        .part(PartKind::resistor, "R3", {{"resistance", 470.0}})
        .part(PartKind::lamp, "D1");
    b.net("output", {"U1:3", "R1:1", "R3:1"}).net("timing", {"R1:2", "C1:plus"});
    return b.net("lamp", {"R3:2", "D1:anode"}).net("ground", {"C1:minus", "D1:cathode"});
}

Phase settledPhase(const devices::Board& board) {
    const engine::Settled settled = engine::settle(board, {.accuracy = 1e-9});
    EXPECT_TRUE(settled.found) << settled.why;
    return {settled.high_s, settled.period_s - settled.high_s};
}

WhyChange stepOf(const Why& why, Imperfection which) {
    for (const WhyStep& step : why.steps)
        if (step.imperfection == which && step.change) return *step.change;
    ADD_FAILURE() << "no step " << name(which);
    return {};
}

std::vector<std::string> causesOf(const Why& why) {
    std::vector<std::string> list;
    for (const WhyStep& step : why.steps) list.emplace_back(name(step.imperfection));
    return list;
}

TEST(Why, TheIdealCircuitOfEveryFormIsTheTextbookFormula) {
    const devices::Board boards[] = {tests::lampPair({.leakage_ohm = 1e6}, 220, 1e-3).board(),
                                     steered().board(), driven().board(), single().board()};
    for (const devices::Board& board : boards) {
        const Textbook book = *textbookOf(board, 0);
        const Phase phase = settledPhase(Idealiser(board, book).with({}));
        EXPECT_NEAR(phase.high_s / book.phase.high_s, 1, 2e-9) << book.formula;
        EXPECT_NEAR(phase.low_s / book.phase.low_s, 1, 2e-9) << book.formula;
    }
}

TEST(Why, AllImperfectionsTogetherAreTheBoardItself) {
    for (const devices::Board& board : {steered().board(), driven().board(), single().board()}) {
        const Textbook book = *textbookOf(board, 0);
        const Idealiser idealiser(board, book);
        const auto present = idealiser.present();
        const Phase real = settledPhase(idealiser.with({present.begin(), present.end()}));
        EXPECT_NEAR(real.period_s() / settledPhase(board).period_s(), 1, 1e-9);
    }
}

TEST(Why, TextbookAndStepsAndInteractionAreTheSimulation) {
    for (const devices::Board& board :
         {tests::astableWithLamp({}, 470).board(), steered().board(), driven().board(), single().board()}) {
        const Why w = why(board, {});
        ASSERT_TRUE(w.interaction);
        double period = w.textbook->period_s() + w.interaction->period_s;
        double duty = w.textbook->duty() + w.interaction->duty;
        for (const WhyStep& step : w.steps) {
            period += step.change->period_s;
            duty += step.change->duty;
        }
        EXPECT_NEAR(period, w.simulated->period_s(), 1e-12);
        EXPECT_NEAR(duty, w.simulated->duty(), 1e-12);
        const Phase simulated = settledPhase(board);
        EXPECT_NEAR(w.simulated->period_s() / simulated.period_s(), 1, 1e-8);
        // The causes explain most of it: what they leave is a small part of what they move.
        EXPECT_LT(std::abs(w.interaction->period_s), 0.1 * std::abs(period - w.textbook->period_s()));
    }
}

TEST(Why, LeakageAloneIsTheRcLawWithALoad) {
    // A load R_L across C: the capacitor heads for V R_L/(R + R_L) with the time constant C (R || R_L), and
    // from pin 7 at 0 V for 0 V with C (R2 || R_L). By the RC law.
    const double r1 = 10e3, r2 = 68e3, c = 10e-6, load = 1e6;
    const Why w = why(tests::astable({.leakage_ohm = load}, false).board(), {});
    const double r = r1 + r2, goal = load / (r + load);
    const double high = c * r * goal * log((goal - 1.0 / 3) / (goal - 2.0 / 3));
    const double low = c * r2 * load / (r2 + load) * log(2);
    const WhyChange step = stepOf(w, Imperfection::capacitorLeakage);
    EXPECT_NEAR(step.period_s, high + low - log(2) * (r1 + 2 * r2) * c, 1e-8);
    EXPECT_NEAR(step.duty, high / (high + low) - r / (r + r2), 1e-8);
}

TEST(Why, DelayAloneLetsTheCapacitorRunPastEachLevel) {
    // By the RC law: from V/3 e^(-d/t2) up to 2/3 V and on for d, then from there down to V/3 and on for d.
    const double r1 = 1e3, r2 = 2e3, c = 10e-9, d = 0.5e-6;
    Workbench bench = tests::astable({.r1_ohm = r1, .r2_ohm = r2, .c_farad = c}, false);
    bench.set("U1.device.delay=0.5u");
    const double up = (r1 + r2) * c, down = r2 * c;
    const double bottom = std::exp(-d / down) / 3, top = 1 - std::exp(-d / up) / 3;
    const double high = up * log((1 - bottom) * 3) + d, low = down * log(top * 3) + d;
    const WhyChange step = stepOf(why(bench.board(), {}), Imperfection::delay);
    EXPECT_NEAR(step.period_s, high + low - log(2) * (up + down), 1e-8 * (up + down));
}

TEST(Why, ADiodeAcrossR2StretchesTheHighPhaseAsItsDropSays) {
    // tH = R1 C ln((2/3 V - Vd)/(1/3 V - Vd)) with Vd constant, from the RC law; the drop of a real diode
    // moves by some hundredths of a volt over the phase.
    const Why w = why(steered().board(), {});
    const double high = log(2) * 10e3 * 10e-6, drop = 0.55, v = 9;
    const double stretched = 10e3 * 10e-6 * log((2 * v / 3 - drop) / (v / 3 - drop));
    EXPECT_NEAR(stepOf(w, Imperfection::diodeDrop).period_s / (stretched - high), 1, 0.2);
}

TEST(Why, CausesThatCannotActAreLeftOut) {
    using List = std::vector<std::string>;
    const Why plain = why(tests::astableWithLamp({}, 470).board(), {});
    EXPECT_EQ(causesOf(plain), (List{"discharge pin", "input currents", "supply sag", "delay"}));
    const Why leaky = why(tests::astable({.leakage_ohm = 1e7}, false).set("U1.device.delay=0").board(), {});
    EXPECT_EQ(causesOf(leaky), (List{"discharge pin", "input currents", "capacitor leakage", "supply sag"}));
    EXPECT_EQ(causesOf(why(single().board(), {})),
              (List{"input currents", "output levels", "supply sag", "delay"}));
    EXPECT_EQ(causesOf(why(driven().board(), {})),
              (List{"discharge pin", "input currents", "supply sag", "control pin", "delay"}));
    Workbench resistive = tests::astable({}, false);
    resistive.set("C1.esr=500");
    EXPECT_EQ(causesOf(why(resistive.board(), {}))[2], "capacitor series resistance");
}

TEST(Why, ACircuitWithoutAnEndSaysWhich) {
    // 1 uA and more through 10 Mohm: the bipolar threshold current keeps the capacitor from its level.
    const Why stalled = why(tests::astable({.r1_ohm = 100e6}, false).board(), {});
    EXPECT_TRUE(stalled.textbook);
    EXPECT_FALSE(stalled.simulated);
    EXPECT_FALSE(stalled.interaction);
    EXPECT_FALSE(stalled.reason.empty());
    Workbench odd = tests::astable({}, false);
    odd.part(PartKind::resistor, "R7", {{"resistance", 1e6}}).net("timing", {"R7:1"}).net("ground", {"R7:2"});
    const Why bare = why(odd.board(), {});
    EXPECT_FALSE(bare.textbook);
    EXPECT_TRUE(bare.simulated);
    EXPECT_FALSE(bare.reason.empty());
}

} // namespace
} // namespace blinkwright::study
