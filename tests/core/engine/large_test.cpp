// Boards of many timers go block by block; small ones as a whole. Both must come to the same.
#include "core/engine/large/large_simulation.h"
#include "core/engine/simulation.h"
#include "tests/case_names.h"
#include "tests/core/many_timers.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::engine {
namespace {

using circuit::PartKind;
using tests::ManyTimers;
using tests::manyTimers;

Run whole(const devices::Board& board, const RunRequest& request) {
    Simulation sim(std::make_shared<Network>(board),
                   {.accuracy = request.accuracy, .ignorePresses = request.ignorePresses});
    sim.powerOn();
    Run run;
    run.report = sim.run({.switchings = 2L * request.flashes, .until_s = request.longest_s});
    run.switchings = sim.switchings();
    run.wave = sim.takeWave();
    return run;
}

Run blockwise(const devices::Board& board, const RunRequest& request) {
    auto parts = large::partition(board, 1);
    EXPECT_TRUE(parts.has_value());
    return large::simulate(board, *std::move(parts), request);
}

std::vector<double> timesOf(const Run& run, int timer) {
    std::vector<double> times;
    for (const auto& s : run.switchings)
        if (s.timer == timer) times.push_back(s.time_s);
    return times;
}

/// The largest relative difference of two runs' switchings, timer by timer; NaN where their numbers differ by
/// more than the one that an end may cut off.
double difference(const devices::Board& board, const Run& a, const Run& b) {
    double worst = 0;
    for (std::size_t k = 0; k < board.timers.size(); ++k) {
        const auto one = timesOf(a, static_cast<int>(k)), other = timesOf(b, static_cast<int>(k));
        const std::size_t count = std::min(one.size(), other.size());
        if (std::max(one.size(), other.size()) > count + 1) return std::nan("");
        for (std::size_t j = 0; j < count; ++j) worst = std::max(worst, std::abs(one[j] / other[j] - 1));
    }
    return worst;
}

struct Case {
    std::string name;
    ManyTimers values;
};

class Blockwise : public testing::TestWithParam<Case> {};

TEST_P(Blockwise, SwitchesAsTheWholeBoardDoes) {
    const auto board = manyTimers(GetParam().values).board();
    const engine::Run exact = whole(board, {.flashes = 4, .accuracy = 1e-9, .keepWaveform = false});
    for (const double accuracy : {1e-4, 1e-5, 1e-6, 1e-7}) {
        const engine::Run run = blockwise(board, {.flashes = 4, .accuracy = accuracy, .keepWaveform = false});
        EXPECT_EQ(run.report.reason, StopReason::flashesReached);
        EXPECT_LE(difference(board, run, exact), accuracy) << accuracy;
    }
}

INSTANTIATE_TEST_SUITE_P(
    Boards, Blockwise,
    testing::Values(Case{"two", {.timers = 2}}, Case{"five", {.timers = 5}}, Case{"eight", {.timers = 8}},
                    Case{"weak supply", {.timers = 4, .supply_ohm = 20}},
                    Case{"bypass 100 uF", {.timers = 4, .bypass_farad = 100e-6}},
                    Case{"bypass 100 nF", {.timers = 4, .bypass_farad = 100e-9}},
                    Case{"bypass 2200 uF, lamp pairs",
                         {.timers = 3, .bypass_farad = 2200e-6, .control_farad = 10e-9, .pairs = true}},
                    Case{"control pins", {.timers = 4, .control_farad = 10e-9}},
                    Case{"lamp pairs", {.timers = 3, .control_farad = 10e-9, .pairs = true}},
                    Case{"bipolar and CMOS", {.timers = 4, .cmosToo = true}}),
    [](const auto& row) { return tests::caseName(row.param.name); });

TEST(Blockwise, TimerOnAnIdealSupplyKeepsThePeriodThatItHasAlone) {
    const auto alone = manyTimers({.timers = 1, .supply_ohm = 1e-6}).board();
    const auto among = manyTimers({.timers = 40, .supply_ohm = 1e-6}).board();
    const auto one = timesOf(whole(alone, {.flashes = 4, .accuracy = 1e-9}), 0);
    const auto many = timesOf(blockwise(among, {.flashes = 4, .accuracy = 1e-8}), 0);
    ASSERT_EQ(one.size(), 8u);
    ASSERT_EQ(many.size(), 8u);
    EXPECT_NEAR((many[7] - many[5]) / (one[7] - one[5]), 1, 1e-7);
}

TEST(Blockwise, TimersOnSuppliesOfTheirOwnDoNotFeelEachOther) {
    // Two boards in one circuit, joined at 0 V only: no border at all.
    Workbench bench = manyTimers({.timers = 1});
    bench.part(PartKind::supply, "BT2", {{"voltage", 6.0}})
        .part(PartKind::timer, "U9")
        .part(PartKind::resistor, "R91", {{"resistance", 22e3}})
        .part(PartKind::resistor, "R92", {{"resistance", 33e3}})
        .part(PartKind::capacitor, "C91", {{"capacitance", 4.7e-6}});
    bench.net("other", {"BT2:plus", "U9:8", "U9:4", "R91:1"})
        .net("ground", {"BT2:minus", "U9:1", "C91:minus"});
    bench.net("discharge9", {"U9:7", "R91:2", "R92:1"}).net("timing9", {"U9:6", "U9:2", "R92:2", "C91:plus"});
    const auto board = bench.board();
    const auto parts = large::partition(board, 1);
    ASSERT_TRUE(parts.has_value());
    EXPECT_TRUE(parts->borders.empty());
    const engine::Run exact = whole(board, {.flashes = 3, .accuracy = 1e-9});
    EXPECT_LE(difference(board, blockwise(board, {.flashes = 3, .accuracy = 1e-6}), exact), 1e-6);
}

/// Four astables, of which the first resets the second, the third holds the fourth's control pin through a
/// resistor, and a lamp lies between the outputs of the second and third: all one piece but for the supply.
Workbench gated(int more) {
    Workbench bench = manyTimers({.timers = 4 + more, .control_farad = 10e-9});
    bench.open("U2:4").net("output1", {"U2:4"});
    bench.part(PartKind::resistor, "R9000", {{"resistance", 10e3}});
    bench.net("output3", {"R9000:1"}).net("control4", {"R9000:2"});
    bench.part(PartKind::resistor, "R9001", {{"resistance", 1e3}}).part(PartKind::lamp, "D9001");
    bench.net("output2", {"R9001:1"})
        .net("between", {"R9001:2", "D9001:anode"})
        .net("output3", {"D9001:cathode"});
    return bench;
}

TEST(Blockwise, TimersThatDriveEachOtherShareABlock) {
    const auto board = gated(3).board();
    const auto parts = large::partition(board);
    ASSERT_TRUE(parts.has_value());
    ASSERT_EQ(parts->borders.size(), 1u);
    EXPECT_EQ(board.nodeNames[static_cast<std::size_t>(parts->borders[0])], "supply");
    std::vector<std::size_t> timers;
    for (const auto& piece : parts->pieces)
        if (!piece.timers.empty()) timers.push_back(piece.timers.size());
    std::sort(timers.begin(), timers.end());
    // One resets the second; the second, third and fourth hang together: four in one piece, three by
    // themselves.
    EXPECT_EQ(timers, (std::vector<std::size_t>{1, 1, 1, 4}));
    const engine::Run exact = whole(board, {.flashes = 4, .accuracy = 1e-8});
    for (const double accuracy : {1e-4, 1e-6}) {
        const engine::Run run = large::simulate(board, *parts, {.flashes = 4, .accuracy = accuracy});
        EXPECT_LE(difference(board, run, exact), accuracy) << accuracy;
    }
}

TEST(Blockwise, SwitchesArePressedAndReleasedOnTime) {
    // One switch holds a timing capacitor empty, one cuts the battery off for a while.
    Workbench bench = manyTimers({.timers = 3, .bypass_farad = 10e-6});
    bench.part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{0.3, 0.5}, {1.9, 2.0}}}});
    bench.net("timing2", {"S1:1"}).net("ground", {"S1:2"});
    bench.part(PartKind::toggle, "S2", {{"closed", true}, {"presses", circuit::Intervals{{2.5, 2.6}}}});
    bench.open("BT1:plus").net("battery", {"BT1:plus", "S2:1"}).net("supply", {"S2:2"});
    const auto board = bench.board();
    const engine::Run exact = whole(board, {.flashes = 4, .accuracy = 1e-9});
    const engine::Run run = blockwise(board, {.flashes = 4, .accuracy = 1e-6});
    ASSERT_EQ(run.report.reason, StopReason::flashesReached);
    EXPECT_LE(difference(board, run, exact), 1e-6);
    EXPECT_EQ(run.report.events, exact.report.events);
}

TEST(Blockwise, ASupplyThatNeverRisesIsWaitedForFiftyMilliseconds) {
    // Halved by R8 and R9, pin 8 stays far under 0.8 of the battery. The capacitors start over the threshold,
    // so that each timer acts as soon as it reads its levels, and its output follows by its delay.
    Workbench bench = manyTimers({.timers = 3});
    for (const char* start : {"C11.initial_voltage=8", "C21.initial_voltage=8", "C31.initial_voltage=8"})
        bench.set(start);
    bench.part(PartKind::resistor, "R8", {{"resistance", 220.0}})
        .part(PartKind::resistor, "R9", {{"resistance", 220.0}});
    bench.open("BT1:plus").net("battery", {"BT1:plus", "R8:1"});
    bench.net("supply", {"R8:2", "R9:1"}).net("ground", {"R9:2"});
    const auto board = bench.board();
    for (const engine::Run& run : {blockwise(board, {.flashes = 1}), whole(board, {.flashes = 1})})
        for (int timer = 0; timer < 3; ++timer)
            EXPECT_NEAR(timesOf(run, timer).at(0), 50e-3 + board.timers[0].sheet.delay, 1e-9) << timer;
}

TEST(Blockwise, WaveformIsTheOneOfTheWholeBoard) {
    for (const auto& bench : {gated(3), manyTimers({.timers = 3, .bypass_farad = 100e-6, .pairs = true})}) {
        const auto board = bench.board();
        const RunRequest request{.flashes = 2, .accuracy = 1e-7};
        const engine::Run a = blockwise(board, request), b = whole(board, request);
        ASSERT_FALSE(a.wave.empty());
        EXPECT_EQ(a.wave.begin_s(), 0);
        EXPECT_NEAR(a.wave.end_s(), b.wave.end_s(), 1e-6);
        std::vector<double> edges{0};
        for (const auto& s : b.switchings) edges.push_back(s.time_s);
        Instant one, other;
        for (std::size_t k = 0; k + 1 < edges.size(); ++k)
            for (const double share : {0.05, 0.5, 0.95}) {
                const double t = edges[k] + share * (edges[k + 1] - edges[k]);
                if (edges[k + 1] - edges[k] < 1e-4) continue;
                a.wave.instant(t, Side::after, one);
                b.wave.instant(t, Side::after, other);
                for (std::size_t n = 0; n < one.node_V.size(); ++n)
                    EXPECT_NEAR(one.node_V[n], other.node_V[n], 2e-5) << board.nodeNames[n] << " at " << t;
                for (std::size_t n = 0; n < one.junction_A.size(); ++n)
                    EXPECT_NEAR(one.junction_A[n], other.junction_A[n], 1e-7);
                for (std::size_t n = 0; n < one.capacitor_V.size(); ++n) {
                    EXPECT_NEAR(one.capacitor_V[n], other.capacitor_V[n], 2e-5);
                    EXPECT_NEAR(one.capacitor_A[n], other.capacitor_A[n], 2e-6);
                }
                EXPECT_NEAR(one.supply_A[0], other.supply_A[0], 1e-5);
                for (std::size_t n = 0; n < one.timers.size(); ++n) {
                    EXPECT_NEAR(one.timers[n].output_V, other.timers[n].output_V, 2e-5);
                    EXPECT_NEAR(one.timers[n].control_V, other.timers[n].control_V, 2e-5);
                    EXPECT_NEAR(one.timers[n].output_A, other.timers[n].output_A, 1e-6);
                    EXPECT_NEAR(one.timers[n].idle_A, other.timers[n].idle_A, 1e-6);
                    EXPECT_NEAR(one.timers[n].discharge_A, other.timers[n].discharge_A, 1e-6);
                }
            }
    }
}

TEST(Blockwise, CapacitorVoltagesAreContinuousAcrossSwitchings) {
    const auto board =
        manyTimers({.timers = 6, .bypass_farad = 1e-6, .control_farad = 1e-8, .pairs = true}).board();
    const engine::Run run = simulate(board, {.flashes = 2, .accuracy = 1e-6});
    Instant before, after;
    for (const auto& s : run.switchings) {
        if (s.time_s >= run.wave.end_s()) continue;
        run.wave.instant(s.time_s, Side::before, before);
        run.wave.instant(s.time_s, Side::after, after);
        for (std::size_t k = 0; k < board.capacitors.size(); ++k)
            EXPECT_NEAR(before.capacitor_V[k], after.capacitor_V[k], 1e-9);
        const auto timer = static_cast<std::size_t>(s.timer);
        const double jump = after.timers[timer].output_V - before.timers[timer].output_V;
        EXPECT_GT(s.high ? jump : -jump, 3.0);
    }
}

TEST(Blockwise, PartsOfAWaveformKeepTheirCurves) {
    const auto board = manyTimers({.timers = 5}).board();
    const engine::Run run = simulate(board, {.flashes = 3, .accuracy = 1e-5});
    const auto times = timesOf(run, 0);
    const Waveform cycle = run.wave.part(times[1], times[3], 0).repeated(2);
    EXPECT_NEAR(cycle.end_s(), 2 * (times[3] - times[1]), 1e-12);
    Instant one, other;
    const double within = 0.3 * (times[3] - times[1]);
    run.wave.instant(times[1] + within, Side::after, one);
    cycle.instant(within + times[3] - times[1], Side::after, other);
    for (std::size_t n = 0; n < one.node_V.size(); ++n) EXPECT_NEAR(one.node_V[n], other.node_V[n], 1e-9);
}

TEST(Large, HundredTimersRunToTheirEnd) {
    const auto board = manyTimers({.timers = 100}).board();
    const engine::Run run = simulate(board, {.flashes = 3, .accuracy = 1e-5, .keepWaveform = false});
    EXPECT_EQ(run.report.reason, StopReason::flashesReached);
    // One event must not make the others start their steps afresh: far fewer steps than timers times events.
    EXPECT_LT(run.report.steps, 20 * static_cast<long>(run.switchings.size()));
    double last = 0;
    for (const auto& s : run.switchings) {
        EXPECT_GE(s.time_s, last);
        last = s.time_s;
    }
    const Settled settled = settle(board, {.accuracy = 1e-5});
    EXPECT_FALSE(settled.found);
    EXPECT_FALSE(settled.why.empty());
}

TEST(Large, ReportsWhyItStopped) {
    const auto board = manyTimers({.timers = 6}).board();
    ASSERT_TRUE(large::isLarge(board));
    EXPECT_EQ(simulate(board, {.flashes = 1}).report.reason, StopReason::flashesReached);
    const engine::Run timed = simulate(board, {.flashes = 1000, .longest_s = 0.25});
    EXPECT_EQ(timed.report.reason, StopReason::timeReached);
    EXPECT_DOUBLE_EQ(timed.report.reached_s, 0.25);
    EXPECT_DOUBLE_EQ(timed.wave.end_s(), 0.25);
    const engine::Run cut = simulate(board, {.flashes = 1000, .stepBudget = 100});
    EXPECT_EQ(cut.report.reason, StopReason::stepBudget);
    EXPECT_LE(cut.report.steps + cut.report.rejected, 110);
    EXPECT_EQ(simulate(board, {.flashes = 1000, .eventBudget = 5}).report.reason, StopReason::eventBudget);
    const std::atomic<bool> cancel = true;
    EXPECT_EQ(simulate(board, {.cancel = &cancel}).report.reason, StopReason::cancelled);
}

TEST(Large, BoardWhoseTimersAllStopIsQuiet) {
    Workbench bench = manyTimers({.timers = 5, .bypass_farad = 1e-6});
    for (int k = 1; k <= 5; ++k) {
        const std::string pin = "U" + std::to_string(k) + ":4";
        bench.open(pin).net("ground", {pin.c_str()});
    }
    const engine::Run run = simulate(bench.board(), {});
    EXPECT_EQ(run.report.reason, StopReason::quiet);
    EXPECT_EQ(run.outputs, std::vector<bool>(5, false));
}

TEST(Large, LoopThatFightsItselfEndsInABudgetAndNeverHangs) {
    Workbench bench = manyTimers({.timers = 5});
    bench.part(PartKind::timer, "U9");
    bench.net("supply", {"U9:8", "U9:4"}).net("ground", {"U9:1"}).net("loop", {"U9:2", "U9:3", "U9:6"});
    const engine::Run run = simulate(bench.board(), {.flashes = 1000000, .eventBudget = 2000});
    EXPECT_EQ(run.report.reason, StopReason::eventBudget);
    for (const auto& s : run.switchings) EXPECT_TRUE(std::isfinite(s.time_s));
}

TEST(Partition, BoardThatHangsTogetherStaysWhole) {
    // One timer and many capacitors; and four timers in a ring, each resetting the next.
    Workbench one = tests::astableWithLamp({}, 470);
    for (int k = 0; k < 14; ++k) {
        const std::string ref = "C" + std::to_string(50 + k);
        one.part(PartKind::capacitor, ref, {{"capacitance", 1e-7}});
        one.net("supply", {(ref + ":plus").c_str()}).net("ground", {(ref + ":minus").c_str()});
    }
    EXPECT_FALSE(large::partition(one.board()).has_value());
    Workbench ring = manyTimers({.timers = 4});
    for (int k = 1; k <= 4; ++k) {
        const std::string pin = "U" + std::to_string(k) + ":4";
        ring.open(pin).net("output" + std::to_string(k % 4 + 1), {pin.c_str()});
    }
    EXPECT_FALSE(large::partition(ring.board()).has_value());
}

TEST(Partition, EveryPartIsInExactlyOnePiece) {
    const auto board = gated(5).board();
    const auto parts = large::partition(board);
    ASSERT_TRUE(parts.has_value());
    std::size_t resistors = 0, capacitors = 0, borders = 0, timers = 0, lamps = 0;
    for (const auto& piece : parts->pieces) {
        resistors += piece.board.resistors.size();
        capacitors += piece.board.capacitors.size();
        borders += piece.borders.size();
        timers += piece.board.timers.size();
        lamps += piece.board.junctions.size();
    }
    EXPECT_EQ(resistors, board.resistors.size());
    EXPECT_EQ(capacitors, board.capacitors.size() + borders);
    EXPECT_EQ(timers, board.timers.size());
    EXPECT_EQ(lamps, board.junctions.size());
}

} // namespace
} // namespace blinkwright::engine
