// The rules of the latch: delay, least dwell, levels read after each switching, precedence; and what may
// command a timer besides its capacitor: another timer, a switch, a variable resistor.
#include "tests/core/engine/proof_support.h"

#include <gtest/gtest.h>

namespace blinkwright::engine {
namespace {

using circuit::PartKind;
using namespace proofs;
using tests::astable;

const double ln2 = std::log(2.0), ln3 = std::log(3.0);

// --- delay and dwell

/// The output straight at pins 2 and 6: each state trips the comparator that ends it.
Workbench selfDriven(double delay_s) {
    Workbench b;
    auto device = tests::idealTimer();
    device["delay"] = delay_s;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}, {"resistance", 1e-6}})
        .part(PartKind::timer, "U1", {{"family", std::string("cmos")}, {"device", device}});
    b.net("supply", {"BT1:plus", "U1:8", "U1:4"}).net("ground", {"BT1:minus", "U1:1"});
    b.net("loop", {"U1:2", "U1:3", "U1:6"});
    return b;
}

TEST(Latch, HoldsEachStateForTheLargerOfItsDelayAndATenthOfAMicrosecond) {
    for (const double delay : {0.0, 0.04e-6, 0.1e-6, 0.5e-6, 3e-6}) {
        const auto t = phasesOf(simulate(selfDriven(delay).board(), {.flashes = 5}));
        ASSERT_EQ(t.size(), 10u);
        // Nothing is read before 20 us; the output follows its latch by the delay.
        EXPECT_NEAR(t[0], 20e-6 + delay, 1e-12) << delay;
        for (std::size_t k = 1; k < t.size(); ++k) EXPECT_NEAR(t[k], std::max(delay, 0.1e-6), 1e-12) << delay;
    }
}

TEST(Latch, ActsOnALevelThatIsTrippedAlreadyWhenTheDwellEnds) {
    // Through 1 ohm the capacitor is empty long before the least dwell of 0.1 us is over: the low phase is
    // the dwell, and the next high phase begins at nothing and takes ln 3.
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 1, .c_farad = 10e-9}, true);
    const auto t = phasesOf(simulate(b.board(), {.flashes = 3, .accuracy = 1e-8}));
    ASSERT_EQ(t.size(), 6u);
    // 1 ohm and 1 milliohm of ESR: e^-10 of 6 V are left.
    const double left = 2.0 / 3 * std::exp(-0.1e-6 / (1.001 * 10e-9));
    for (std::size_t k = 1; k < t.size(); k += 2) EXPECT_NEAR(t[k], 0.1e-6, 1e-12);
    for (std::size_t k = 2; k < t.size(); k += 2)
        EXPECT_NEAR(t[k] / (10.001e3 * 10e-9 * std::log(3 * (1 - left))), 1, 1e-6);
}

TEST(Latch, ReadsLevelsWhenItWakesNotOnlyCrossings) {
    // A capacitor that starts over the threshold trips it without ever crossing: low at 20 us and the delay.
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-6}, true);
    b.set("C1.initial_voltage=8");
    const double begin = 8 + 1 * (1 - std::exp(-20e-6 / 20e-3)); // charged on till then
    const auto t = phasesOf(simulate(b.board(), {.flashes = 1, .accuracy = 1e-8}));
    EXPECT_NEAR(t.at(0), 20e-6, 1e-12);
    EXPECT_NEAR(t.at(1) / (10e3 * 1e-6 * std::log(begin / 3)), 1, 1e-6);
}

TEST(Latch, WaitsForItsSupplyToRiseAtMostFiftyMilliseconds) {
    // 1 ohm and 1 mF: pin 8 is at 0.8 of the supply after 1 ms ln 5, less what the timer takes; a supply that
    // never gets there is waited for 50 ms.
    Workbench slow = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-9}, true);
    slow.set("BT1.resistance=1");
    slow.part(PartKind::capacitor, "C9", {{"capacitance", 1e-3}, {"esr", 1e-3}});
    slow.net("supply", {"C9:plus"}).net("ground", {"C9:minus"});
    EXPECT_NEAR(phasesOf(simulate(slow.board(), {.flashes = 1})).at(0) / (1e-3 * std::log(5.0)), 1, 5e-3);

    Workbench weak = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-9}, true);
    weak.part(PartKind::resistor, "R8", {{"resistance", 1e3}})
        .part(PartKind::resistor, "R9", {{"resistance", 1e3}});
    weak.open("BT1:plus")
        .net("raw", {"BT1:plus", "R8:1"})
        .net("supply", {"R8:2", "R9:1"})
        .net("ground", {"R9:2"});
    EXPECT_NEAR(phasesOf(simulate(weak.board(), {.flashes = 1})).at(0), 50e-3, 1e-9);
}

TEST(Latch, CountsASupplyThatHasBeenThereOnceEvenWhereItFallsBack) {
    // S1 takes the battery off at 10 us, when pin 8 has been at its full voltage; R9 pulls it down. The
    // levels are read at 20 us all the same: the capacitor, which starts over the threshold, trips it then.
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-6}, true);
    b.set("C1.initial_voltage=8");
    b.part(PartKind::resistor, "R9", {{"resistance", 1e3}})
        .part(PartKind::toggle, "S1", {{"closed", true}, {"presses", circuit::Intervals{{10e-6, 30e-3}}}});
    b.open("BT1:plus").net("battery", {"BT1:plus", "S1:1"});
    b.net("supply", {"S1:2", "R9:1"}).net("ground", {"R9:2"});
    EXPECT_NEAR(phasesOf(simulate(b.board(), {.flashes = 1})).at(0), 20e-6, 1e-12);
}

TEST(Latch, TakesItsLevelsFromItsOwnGround) {
    // The same astable on a second supply, whose minus and with it pin 1 lies 3 V above that of the first.
    Workbench b = astable({.supply_V = 3, .r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-6}, true);
    b.part(PartKind::supply, "BT2", {{"voltage", 9.0}, {"resistance", 1e-6}});
    b.open("BT1:plus").open("BT1:minus").net("zero", {"BT1:minus"});
    b.net("ground", {"BT1:plus", "BT2:minus"}).net("supply", {"BT2:plus"});
    EXPECT_NEAR(laterPhases(b).high_s / (20e3 * 1e-6 * ln2), 1, 1e-7);
    EXPECT_NEAR(laterPhases(b).low_s / (10e3 * 1e-6 * ln2), 1, 1e-7);
}

// --- precedence

/// A timer whose trigger, threshold and reset are set by hand.
bool outputWith(bool triggerLow, bool thresholdHigh, bool resetLow) {
    Workbench b;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    b.net("supply", {"BT1:plus", "U1:8"}).net("ground", {"BT1:minus", "U1:1"});
    b.net(triggerLow ? "ground" : "supply", {"U1:2"});
    b.net(thresholdHigh ? "supply" : "ground", {"U1:6"});
    b.net(resetLow ? "ground" : "supply", {"U1:4"});
    const engine::Run run = simulate(b.board(), {});
    EXPECT_EQ(run.report.reason, StopReason::quiet);
    EXPECT_LE(run.switchings.size(), 1u);
    return run.outputs.at(0);
}

TEST(Latch, ObeysResetThenTriggerThenThresholdThenItsMemory) {
    EXPECT_FALSE(outputWith(true, true, true)) << "reset goes first";
    EXPECT_FALSE(outputWith(true, false, true));
    EXPECT_FALSE(outputWith(false, false, true));
    EXPECT_TRUE(outputWith(true, true, false)) << "trigger before threshold";
    EXPECT_TRUE(outputWith(true, false, false));
    EXPECT_FALSE(outputWith(false, true, false)) << "threshold alone";
    EXPECT_TRUE(outputWith(false, false, false)) << "the latch starts high and holds";
}

TEST(Latch, IsResetWhereAResistorFromPinFourPullsItBelowItsLevel) {
    // The bipolar input is 10 kohm to 0.8 of the supply: 7.2 V R/(R + 10 kohm) against 0.7 V, R = 1077 ohm.
    for (const auto& [ohm, blinks] : {std::pair{1060.0, false}, {1095.0, true}}) {
        Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-6}, true);
        b.open("U1:4").part(PartKind::resistor, "R9", {{"resistance", ohm}});
        b.net("reset", {"U1:4", "R9:1"}).net("ground", {"R9:2"});
        const engine::Run run = simulate(b.board(), {.flashes = 2});
        EXPECT_EQ(run.report.reason, blinks ? StopReason::flashesReached : StopReason::quiet) << ohm;
        if (!blinks) {
            EXPECT_FALSE(run.outputs.at(0));
        }
    }
}

TEST(Latch, IsSetByALowTriggerAsSoonAsResetLetsGo) {
    // S1 holds pin 4 at ground while pressed; pin 2 is low all the time.
    Workbench b;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}})
        .part(PartKind::timer, "U1")
        .part(PartKind::resistor, "R9", {{"resistance", 1e3}})
        .part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{0.01, 0.03}}}});
    b.net("supply", {"BT1:plus", "U1:8", "R9:1"}).net("ground", {"BT1:minus", "U1:1", "S1:2", "U1:2"});
    b.net("reset", {"U1:4", "R9:2", "S1:1"}).net("threshold", {"U1:6"});
    const engine::Run run = simulate(b.board(), {});
    ASSERT_EQ(run.switchings.size(), 2u);
    EXPECT_NEAR(run.switchings[0].time_s, 0.01 + 0.5e-6, 1e-12); // and the delay of the sheet
    EXPECT_NEAR(run.switchings[1].time_s, 0.03 + 0.5e-6, 1e-12);
    EXPECT_TRUE(run.outputs.at(0));
}

// --- one timer gates another

TEST(Gate, HoldsASecondTimerLowAndLetsItBeginAfresh) {
    // U1's output is at U2's reset. While it is low, pin 7 of U2 empties its capacitor; each burst of U2
    // begins with U1's rise and with a high phase of ln 3. All ideal.
    Workbench b =
        idealOutput(astable({.r1_ohm = 100e3, .r2_ohm = 100e3, .c_farad = 1e-6, .family = "cmos"}, true));
    b.part(PartKind::timer, "U2", {{"family", std::string("cmos")}, {"device", tests::idealTimer()}})
        .part(PartKind::resistor, "R11", {{"resistance", 10e3}})
        .part(PartKind::resistor, "R12", {{"resistance", 5e3}})
        .part(PartKind::capacitor, "C11", {{"capacitance", 1e-6}, {"esr", 1e-3}});
    b.net("supply", {"U2:8", "R11:1"}).net("ground", {"U2:1", "C11:minus"}).net("output", {"U2:4"});
    b.net("discharge2", {"U2:7", "R11:2", "R12:1"}).net("timing2", {"U2:2", "U2:6", "R12:2", "C11:plus"});
    const engine::Run run = simulate(b.board(), {.flashes = 3, .accuracy = 1e-8});
    int bursts = 0;
    for (std::size_t k = 0; k + 1 < run.switchings.size(); ++k) {
        const auto& s = run.switchings[k];
        if (s.timer == 0 && !s.high) {
            // Low with the first, and low all the while.
            for (std::size_t j = k + 1; j < run.switchings.size() && run.switchings[j].timer != 0; ++j)
                EXPECT_NEAR(run.switchings[j].time_s, s.time_s, 2e-7) << "only what the dwell puts off";
        }
        if (s.timer == 0 && s.high) {
            const auto &rise = run.switchings[k + 1], &fall = run.switchings[k + 2];
            EXPECT_EQ(rise.timer, 1);
            EXPECT_TRUE(rise.high);
            EXPECT_NEAR(rise.time_s, s.time_s, 1e-12);
            EXPECT_NEAR((fall.time_s - rise.time_s) / (15e3 * 1e-6 * ln3), 1, 1e-6);
            EXPECT_NEAR((run.switchings[k + 3].time_s - fall.time_s) / (5e3 * 1e-6 * ln2), 1, 1e-6);
            ++bursts;
        }
        if (bursts == 2) break;
    }
    EXPECT_EQ(bursts, 2);
}

// --- switches

TEST(Switch, PausesTheChargeForAsLongAsItIsPressed) {
    // S1 in series with R1, closed as drawn: two presses within the first high phase make it longer by what
    // they last.
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-6}, true);
    b.open("R1:1").part(PartKind::toggle, "S1",
                        {{"closed", true}, {"presses", circuit::Intervals{{3e-3, 5e-3}, {8e-3, 9.5e-3}}}});
    b.net("supply", {"S1:1"}).net("above", {"S1:2", "R1:1"});
    const engine::Run run = simulate(b.board(), {.flashes = 2, .accuracy = 1e-8});
    const auto t = phasesOf(run);
    // Open, the switch is 1e9 ohm: a charge of 1e-5 in 3.5 ms.
    EXPECT_NEAR(t.at(0), 20e3 * 1e-6 * ln3 + 3.5e-3, 1e-6);
    EXPECT_NEAR(t.at(2) / (20e3 * 1e-6 * ln2), 1, 2e-6); // 10 milliohm of contact
    EXPECT_GE(run.report.events, 4 + 3) << "presses count as events";
    // As settled, it stays as drawn.
    EXPECT_NEAR(settle(b.board(), {.accuracy = 1e-8}).period_s / (30e3 * 1e-6 * ln2), 1, 2e-6);
}

TEST(Switch, ActsAtTheVeryInstantsOfItsPresses) {
    // A lamp straight across the supply through S1: dark, lit, dark.
    Workbench b = astable({}, true);
    b.part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{0.1, 0.25}}}})
        .part(PartKind::resistor, "R9", {{"resistance", 1e3}});
    b.net("supply", {"S1:1"}).net("pressed", {"S1:2", "R9:1"}).net("ground", {"R9:2"});
    const engine::Run run = simulate(b.board(), {.longest_s = 0.5});
    Instant at;
    const auto amps = [&](double time_s, Side side) {
        run.wave.instant(time_s, side, at);
        return at.switch_A[0];
    };
    EXPECT_NEAR(amps(0.1, Side::before), 9e-9, 1e-10); // 1e9 ohm
    EXPECT_NEAR(amps(0.1, Side::after), 9e-3, 1e-7);
    EXPECT_NEAR(amps(0.25, Side::before), 9e-3, 1e-7);
    EXPECT_NEAR(amps(0.25, Side::after), 9e-9, 1e-10);
}

// --- variable resistors

TEST(Variable, ReachesFromTenMilliohmToAllOfItsResistance) {
    for (const double setting : {0.0, 1.0}) {
        // As R1: pin 1 at the supply, wiper at pin 7.
        Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 10e3, .c_farad = 1e-6}, true);
        b.open("R1:2").part(PartKind::variable, "RV1", {{"resistance", 100e3}, {"setting", setting}});
        b.net("series", {"R1:2", "RV1:1"}).net("discharge", {"RV1:wiper"});
        const double section = setting == 0 ? 0.010 : 100e3;
        EXPECT_NEAR(laterPhases(b).high_s / (ln2 * (20e3 + section) * 1e-6), 1, 2e-7) << setting;
        EXPECT_NEAR(laterPhases(b).low_s / (ln2 * 10e3 * 1e-6), 1, 2e-7) << setting;
    }
}

TEST(Variable, SharesItsResistanceBetweenBothPhasesByItsSetting) {
    // Wiper at pin 7: R1 and R2 are the two sections of one part.
    for (const double setting : {0.02, 0.5, 0.98}) {
        Workbench b = astable({.r1_ohm = 1e3, .r2_ohm = 1e3, .c_farad = 1e-6}, true);
        b.open("R1:2").open("R2:1").part(PartKind::variable, "RV1",
                                         {{"resistance", 50e3}, {"setting", setting}});
        b.net("a", {"R1:2", "RV1:1"}).net("discharge", {"RV1:wiper"}).net("b", {"R2:1", "RV1:2"});
        const double r2 = 1e3 + (1 - setting) * 50e3;
        EXPECT_NEAR(laterPhases(b).high_s / (ln2 * 52e3 * 1e-6), 1, 1e-6) << setting;
        EXPECT_NEAR(laterPhases(b).low_s / (ln2 * r2 * 1e-6), 1, 1e-6) << setting;
    }
}

} // namespace
} // namespace blinkwright::engine
