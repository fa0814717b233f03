#include "core/engine/transient.h"

#include "tests/case_names.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::engine {
namespace {

using tests::astable;
using tests::AstableValues;
using tests::astableWithLamp;
using tests::lampPair;

std::vector<double> phases(const Run& run) {
    std::vector<double> lengths;
    double last = 0;
    for (const auto& s : run.switchings)
        if (s.timer == 0) {
            lengths.push_back(s.time_s - last);
            last = s.time_s;
        }
    return lengths;
}

std::string about(const AstableValues& v) {
    const auto whole = [](double value) { return std::to_string(std::lround(value)); };
    return v.family + " " + whole(v.supply_V) + " V " + whole(v.r1_ohm) + " ohm " + whole(v.r2_ohm) +
           " ohm " + whole(v.c_farad * 1e9) + " nF";
}

// The RC law between thresholds of a third and two thirds of the supply: tH = ln 2 (R1+R2) C, tL = ln 2 R2 C,
// first high ln 3 (R1+R2) C (TI NE555 data sheet SLFS022, section 8.3.2, with ln 2 for its rounded 0.693).
class IdealAstable : public testing::TestWithParam<AstableValues> {};

TEST_P(IdealAstable, SwitchesWhenTheClosedFormsSay) {
    const auto& v = GetParam();
    const auto board = astable(v, true).board();
    const engine::Run run = simulate(board, {.flashes = 4});
    ASSERT_EQ(run.report.reason, StopReason::flashesReached);
    const auto t = phases(run);
    ASSERT_EQ(t.size(), 8u);
    const double high = std::log(2.0) * (v.r1_ohm + v.r2_ohm) * v.c_farad;
    const double low = std::log(2.0) * v.r2_ohm * v.c_farad;
    EXPECT_NEAR(t[0] / (high * std::log(3.0) / std::log(2.0)), 1, 1e-6);
    for (std::size_t k = 1; k < t.size(); k += 2) EXPECT_NEAR(t[k] / low, 1, 1e-6) << k;
    for (std::size_t k = 2; k < t.size(); k += 2) EXPECT_NEAR(t[k] / high, 1, 1e-6) << k;
    EXPECT_NEAR(t[0] / t[2], 1.585,
                5e-4); // common practice, no source: the first flash is 1.585 times as long

    const Settled settled = settle(board, {});
    ASSERT_TRUE(settled.found) << settled.why;
    EXPECT_NEAR(settled.period_s / (high + low), 1, 1e-6);
    EXPECT_NEAR(settled.high_s / high, 1, 1e-6);
}

INSTANTIATE_TEST_SUITE_P(
    Values, IdealAstable,
    testing::Values(AstableValues{9, 10e3, 68e3, 10e-6}, AstableValues{5, 10e3, 150e3, 4.7e-6},
                    AstableValues{15, 33e3, 10e3, 1e-6}, AstableValues{6, 1e6, 2e6, 1e-6},
                    AstableValues{12, 10e3, 10e3, 100e-9},
                    AstableValues{
                        .supply_V = 5, .r1_ohm = 47e3, .r2_ohm = 47e3, .c_farad = 2.2e-6, .family = "cmos"}),
    [](const auto& row) { return tests::caseName(about(row.param)); });

TEST(IdealAstable, LeakMakesTheHighPhaseLongerByTheThevenLaw) {
    // A leak R_L across C: the charge aims at V R_L/(R1+R2+R_L) through (R1+R2) || R_L.
    const AstableValues v{
        .supply_V = 9, .r1_ohm = 10e3, .r2_ohm = 100e3, .c_farad = 1e-6, .leakage_ohm = 1e6};
    const engine::Run run = simulate(astable(v, true).board(), {.flashes = 2});
    const double r = v.r1_ohm + v.r2_ohm, share = v.leakage_ohm / (r + v.leakage_ohm);
    const double tau = r * share * v.c_farad;
    const double high = tau * std::log((share - 1.0 / 3) / (share - 2.0 / 3));
    EXPECT_NEAR(phases(run).at(2) / high, 1, 1e-6);
}

TEST(Transient, StallsHighWhereTheLeakIsUnderTwiceTheTimingResistance) {
    // Stalls if R_L < 2 (R1 + R2): the divider of R1 + R2 and R_L stays under two thirds.
    AstableValues v{
        .supply_V = 9, .r1_ohm = 10e3, .r2_ohm = 100e3, .c_farad = 1e-6, .leakage_ohm = 1.98 * 110e3};
    engine::Run run = simulate(astable(v, true).board(), {});
    EXPECT_EQ(run.report.reason, StopReason::quiet);
    EXPECT_TRUE(run.outputs.at(0));
    EXPECT_TRUE(run.switchings.empty());
    v.leakage_ohm = 2.02 * 110e3;
    run = simulate(astable(v, true).board(), {});
    EXPECT_EQ(run.report.reason, StopReason::flashesReached);
}

TEST(Transient, TighterAccuracyComesNearerToTheFinestRun) {
    for (const auto& bench : {astableWithLamp({}, 470), lampPair({}, 220, 1e-3)}) {
        const auto board = bench.board();
        const auto finest = simulate(board, {.flashes = 4, .accuracy = 1e-10}).switchings;
        for (double accuracy : {1e-4, 1e-6, 1e-8}) {
            const auto run = simulate(board, {.flashes = 4, .accuracy = accuracy}).switchings;
            ASSERT_EQ(run.size(), finest.size());
            for (std::size_t k = 0; k < run.size(); ++k)
                EXPECT_NEAR(run[k].time_s / finest[k].time_s, 1, accuracy) << accuracy << " " << k;
        }
    }
}

TEST(Transient, SettledStateIsWhatWaitingComesTo) {
    const auto board = lampPair({.r2_ohm = 33e3}, 220, 2200e-6).board();
    const Settled solved = settle(board, {});
    ASSERT_TRUE(solved.found) << solved.why;
    const engine::Run waited = simulate(board, {.flashes = 300, .accuracy = 1e-7, .keepWaveform = false});
    const auto t = phases(waited);
    EXPECT_NEAR(solved.period_s / (t[t.size() - 1] + t[t.size() - 2]), 1, 1e-6);
}

TEST(Transient, SettlesWhereTheControlPinRisesOverManyCycles) {
    // 10 nF on the control pin of a CMOS timer fill through 67 kohm: slower than the blinking, and at first
    // the cycles grow, so that the map draws away before it draws near.
    const auto board =
        tests::astableWithLamp(
            {.supply_V = 12, .r1_ohm = 1e3, .r2_ohm = 1e3, .c_farad = 100e-9, .family = "cmos"}, 47)
            .board();
    const Settled solved = settle(board, {});
    ASSERT_TRUE(solved.found) << solved.why;
    const auto t = phases(simulate(board, {.flashes = 400, .accuracy = 1e-7, .keepWaveform = false}));
    EXPECT_NEAR(solved.period_s / (t[t.size() - 1] + t[t.size() - 2]), 1, 1e-6);
}

TEST(Transient, ReportsWhyItStopped) {
    const auto board = astableWithLamp({}, 470).board();
    EXPECT_EQ(simulate(board, {.flashes = 1}).report.reason, StopReason::flashesReached);
    const engine::Run timed = simulate(board, {.flashes = 1000, .longest_s = 0.25});
    EXPECT_EQ(timed.report.reason, StopReason::timeReached);
    EXPECT_DOUBLE_EQ(timed.report.reached_s, 0.25);
    EXPECT_DOUBLE_EQ(timed.wave.end_s(), 0.25);
    const engine::Run cut = simulate(board, {.flashes = 1000, .stepBudget = 100});
    EXPECT_EQ(cut.report.reason, StopReason::stepBudget);
    EXPECT_LE(cut.report.steps, 100);
    const engine::Run few = simulate(board, {.flashes = 1000, .eventBudget = 5});
    EXPECT_EQ(few.report.reason, StopReason::eventBudget);
    const std::atomic<bool> cancel = true;
    EXPECT_EQ(simulate(board, {.cancel = &cancel}).report.reason, StopReason::cancelled);
    EXPECT_EQ(simulate(devices::Board{}, {}).report.reason, StopReason::cannotStart);
}

TEST(Transient, ResetHeldLowKeepsTheOutputLow) {
    Workbench held;
    held.part(circuit::PartKind::supply, "BT1", {{"voltage", 9.0}})
        .part(circuit::PartKind::timer, "U1")
        .part(circuit::PartKind::resistor, "R1", {{"resistance", 10e3}})
        .part(circuit::PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    held.net("supply", {"BT1:plus", "U1:8", "R1:1"})
        .net("ground", {"BT1:minus", "U1:1", "C1:minus", "U1:4"})
        .net("timing", {"U1:6", "U1:2", "R1:2", "C1:plus"});
    const engine::Run run = simulate(held.board(), {});
    EXPECT_EQ(run.report.reason, StopReason::quiet);
    ASSERT_EQ(run.outputs.size(), 1u);
    EXPECT_FALSE(run.outputs[0]);
}

TEST(Transient, PressOfASwitchActsWhenItSays) {
    // A switch across C1 holds the capacitor empty while pressed, so the first high phase begins anew after
    // it.
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-6}, true);
    const double without = phases(simulate(b.board(), {.flashes = 1})).at(0);
    b.part(circuit::PartKind::toggle, "S1", {{"presses", circuit::Intervals{{5e-3, 9e-3}}}});
    b.net("timing", {"S1:1"}).net("ground", {"S1:2"});
    const engine::Run run = simulate(b.board(), {.flashes = 1});
    // Open, the switch is 1e9 ohm: some 1e-5 of the charge.
    EXPECT_NEAR(phases(run).at(0), 9e-3 + without, 1e-4 * without);
    EXPECT_NEAR(phases(simulate(b.board(), {.flashes = 1, .ignorePresses = true})).at(0), without,
                1e-4 * without);
}

TEST(Transient, CapacitorVoltagesAreContinuousAcrossSwitchings) {
    const auto board = lampPair({}, 220, 1e-3).board();
    const engine::Run run = simulate(board, {.flashes = 3});
    Instant before, after;
    for (const auto& s : run.switchings) {
        if (s.time_s >= run.wave.end_s()) continue;
        run.wave.instant(s.time_s, Side::before, before);
        run.wave.instant(s.time_s, Side::after, after);
        for (std::size_t k = 0; k < board.capacitors.size(); ++k)
            EXPECT_NEAR(before.capacitor_V[k], after.capacitor_V[k], 1e-9);
        const double jump = after.timers[0].output_V - before.timers[0].output_V;
        EXPECT_GT(s.high ? jump : -jump, 3.0);
    }
}

TEST(Transient, LoopThatFightsItselfEndsInABudgetAndNeverHangs) {
    // Output straight to pins 2 and 6: it switches as fast as delay and dwell allow, for ever.
    Workbench b;
    b.part(circuit::PartKind::supply, "BT1", {{"voltage", 9.0}}).part(circuit::PartKind::timer, "U1");
    b.net("supply", {"BT1:plus", "U1:8", "U1:4"}).net("ground", {"BT1:minus", "U1:1"});
    b.net("loop", {"U1:2", "U1:3", "U1:6"});
    const engine::Run run = simulate(b.board(), {.flashes = 1000000, .eventBudget = 2000});
    EXPECT_EQ(run.report.reason, StopReason::eventBudget);
    for (const auto& s : run.switchings) EXPECT_TRUE(std::isfinite(s.time_s));
}

} // namespace
} // namespace blinkwright::engine
