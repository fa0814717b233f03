#include "core/study/study.h"

#include "tests/core/reference_circuits.h"

#include <gmock/gmock.h>

#include <atomic>
#include <cmath>
#include <numeric>

namespace blinkwright::study {
namespace {

using circuit::Begin;
using circuit::PartKind;
using circuit::PartSet;
using testing::HasSubstr;
using tests::astable;

Study studyOf(const Workbench& bench, const StudyRequest& request = {}) {
    auto result = study(bench.circuit, PartSet::A, request);
    if (!result) throw std::logic_error(result.fault().message());
    return std::move(result).value();
}
std::string allReasons(const Readings& readings) {
    return std::accumulate(readings.reasons.begin(), readings.reasons.end(), std::string());
}
const PartReading& row(const Study& s, std::string_view ref) {
    for (const auto& part : s.readings.parts)
        if (part.ref == ref) return part;
    throw std::logic_error("no such part");
}
void expectNear(std::optional<double> value, double wanted, double relative) {
    ASSERT_TRUE(value);
    EXPECT_NEAR(*value, wanted, relative * std::abs(wanted));
}

/// An ideal CMOS timer whose output is 8 ohm to either rail, however much it carries.
Workbench eightOhmOutput(double r1 = 10e3, double r2 = 68e3) {
    Workbench b = astable({.r1_ohm = r1, .r2_ohm = r2, .family = "cmos"}, true);
    for (const char* text : {"U1.device.high_resistance=8", "U1.device.low_resistance=8",
                             "U1.device.high_limit=1M", "U1.device.low_limit=1M"})
        b.set(text);
    return b;
}
/// A lamp that carries 10 mA at 9 V: 1.92 V at 10 mA, 8 ohm of output, 700 ohm for the rest.
Workbench withLamp(bool toRail) {
    Workbench b = eightOhmOutput();
    b.part(PartKind::resistor, "R3", {{"resistance", 700.0}})
        .part(PartKind::lamp, "D1", {{"forward_voltage", 1.92}, {"test_current", 0.01}});
    b.net("output", {toRail ? "D1:cathode" : "R3:1"}).net("lamp", {"R3:2", "D1:anode"});
    if (toRail)
        b.net("supply", {"R3:1"});
    else
        b.net("ground", {"D1:cathode"});
    return b;
}
/// A second timer, an astable of its own values, on the same supply; its reset is left to the caller.
void addTimer(Workbench& b, double r1, double r2, double c) {
    b.part(PartKind::timer, "U2")
        .part(PartKind::resistor, "R11", {{"resistance", r1}})
        .part(PartKind::resistor, "R12", {{"resistance", r2}})
        .part(PartKind::capacitor, "C11", {{"capacitance", c}});
    b.net("supply", {"U2:8", "R11:1"}).net("ground", {"U2:1", "C11:minus"});
    b.net("discharge2", {"U2:7", "R11:2", "R12:1"}).net("timing2", {"U2:2", "U2:6", "R12:2", "C11:plus"});
    b.net("output2", {"U2:3"});
}

// --- verdicts

TEST(Study, SettlesHighWhereALeakKeepsTheThresholdOutOfReach) {
    const Study s = studyOf(astable({.leakage_ohm = 100e3}, false));
    EXPECT_EQ(s.readings.verdict, Verdict::settlesHigh);
    EXPECT_THAT(allReasons(s.readings), HasSubstr("Threshold (pin 6) of U1"));
    ASSERT_EQ(s.readings.timers.size(), 1u);
    EXPECT_FALSE(s.readings.timers[0].settled);
    EXPECT_FALSE(s.readings.timers[0].firstHigh_s);
    ASSERT_TRUE(s.readings.supply);
    EXPECT_FALSE(s.readings.supply->mean_A) << "a value that does not exist is missing";
    EXPECT_FALSE(s.curves.time_s.empty()) << "what happens till then can be seen";
}

TEST(Study, SettlesHighWhereTheThresholdIsOpen) {
    Workbench b = bareTimer();
    b.open("U1:6");
    b.part(PartKind::resistor, "R1", {{"resistance", 1e4}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    b.net("supply", {"R1:1"}).net("timing", {"R1:2", "C1:plus"}).net("ground", {"C1:minus"});
    const Study s = studyOf(b);
    EXPECT_EQ(s.readings.verdict, Verdict::settlesHigh);
    EXPECT_THAT(allReasons(s.readings), HasSubstr("Threshold (pin 6) of U1 is joined to nothing"));
}

TEST(Study, SettlesLowUnderResetAndNamesThePin) {
    Workbench b = bareTimer();
    b.open("U1:4");
    b.net("ground", {"U1:4"});
    b.part(PartKind::resistor, "R1", {{"resistance", 1e4}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    b.net("supply", {"R1:1"}).net("timing", {"R1:2", "C1:plus"}).net("ground", {"C1:minus"});
    const Study s = studyOf(b);
    EXPECT_EQ(s.readings.verdict, Verdict::settlesLow);
    EXPECT_THAT(allReasons(s.readings), HasSubstr("Reset (pin 4) of U1"));
}

TEST(Study, SettlesLowWhereTheTriggerIsOpen) {
    Workbench b = astable({}, false);
    b.open("U1:2");
    const Study s = studyOf(b);
    EXPECT_EQ(s.readings.verdict, Verdict::settlesLow);
    EXPECT_THAT(allReasons(s.readings), HasSubstr("Trigger (pin 2) of U1 is joined to nothing"));
}

TEST(Study, CannotRunWithoutASupplyAtTheTimer) {
    Workbench b = astable({}, false);
    b.open("U1:8");
    const Study s = studyOf(b);
    EXPECT_EQ(s.readings.verdict, Verdict::cannotRun);
    EXPECT_THAT(allReasons(s.readings), HasSubstr("8"));
    EXPECT_TRUE(s.curves.time_s.empty());
}

TEST(Study, DoesNotSettleBesideATimerThatFightsItself) {
    // U2's output straight at its own pins 2 and 6: it switches a million times within one flash of U1.
    Workbench b = astable({}, false);
    b.part(PartKind::timer, "U2").net("supply", {"U2:8", "U2:4"}).net("ground", {"U2:1"});
    b.net("loop", {"U2:2", "U2:3", "U2:6"});
    const Study s = studyOf(b, {.flashes = 1});
    EXPECT_EQ(s.readings.verdict, Verdict::doesNotSettle);
    EXPECT_THAT(allReasons(s.readings), HasSubstr("U2 switches without end"));
}

// --- what is shown

TEST(Study, ListsTwoSwitchingsAFlash) {
    const Study s = studyOf(astable({}, false), {.flashes = 3});
    EXPECT_EQ(s.readings.verdict, Verdict::blinks);
    const auto& timer = s.readings.timers.at(0);
    ASSERT_EQ(timer.switchings_s.size(), 6u);
    EXPECT_TRUE(std::is_sorted(timer.switchings_s.begin(), timer.switchings_s.end()));
    EXPECT_EQ(timer.firstHigh_s, timer.switchings_s[0]);
    EXPECT_EQ(s.curves.switchings_s, timer.switchings_s);
}

TEST(Study, BeginsSettledAtARiseAndHasNoFirstHigh) {
    const Study s = studyOf(astable({}, false), {.flashes = 3, .begin = Begin::settled});
    const auto& timer = s.readings.timers.at(0);
    EXPECT_FALSE(timer.firstHigh_s);
    ASSERT_TRUE(timer.settled);
    ASSERT_EQ(timer.switchings_s.size(), 6u);
    for (std::size_t k = 0; k < 6; ++k) {
        const double periods = static_cast<double>(k / 2) + (k % 2 == 1 ? 1.0 : 0.0);
        const double wanted =
            periods * timer.settled->period_s() + (k % 2 == 0 ? timer.settled->high_s : 0.0);
        EXPECT_NEAR(timer.switchings_s[k], wanted, 1e-12) << k;
    }
    EXPECT_EQ(s.curves.time_s.front(), 0);
    EXPECT_NEAR(s.curves.time_s.back(), 3 * timer.settled->period_s(), 1e-12);
}

TEST(Study, FindsTheSameSettledStateWhereverItBegins) {
    const Workbench b = tests::lampPair({}, 220, 1e-3);
    const Study on = studyOf(b), settled = studyOf(b, {.begin = Begin::settled});
    EXPECT_EQ(on.readings.timers[0].settled->period_s(), settled.readings.timers[0].settled->period_s());
    EXPECT_EQ(*on.readings.lamps[0].charge_C, *settled.readings.lamps[0].charge_C);
}

TEST(Study, IsCancelledByItsFlag) {
    const std::atomic<bool> cancel = true;
    const Study s = studyOf(astable({}, false), {.cancel = &cancel});
    EXPECT_TRUE(s.cancelled);
    EXPECT_TRUE(s.curves.time_s.empty());
}

TEST(Study, RefusesOnlyWhatNoBoardCanBeMadeOf) {
    Workbench b = withLamp(false);
    b.set("D1.series_resistance=300"); // alone drops 3 V at the test current of 10 mA
    const auto result = study(b.circuit, PartSet::A, {});
    ASSERT_FALSE(result);
    EXPECT_THAT(result.fault().message(), HasSubstr("D1"));
}

// --- facts of the trade: common practice, no source

TEST(Study, BlinksAsTheTradeExpects) {
    const auto settled = [](double r1, double r2, double c) {
        return *studyOf(astable({.r1_ohm = r1, .r2_ohm = r2, .c_farad = c, .family = "cmos"}, false))
                    .readings.timers[0]
                    .settled;
    };
    const Phase slow = settled(1e6, 2e6, 1e-6);
    EXPECT_NEAR(slow.rate_Hz(), 0.288, 0.001);
    EXPECT_NEAR(slow.period_s(), 3.47, 0.01);
    EXPECT_NEAR(slow.duty(), 0.60, 0.001);
    EXPECT_NEAR(settled(1e6, 1e4, 1e-6).duty(), 0.99, 0.001);
    EXPECT_NEAR(settled(1e4, 1e6, 1e-6).duty(), 0.50, 0.003);
    EXPECT_LT(settled(2e4, 1e4, 1e-6).rate_Hz(), settled(1e4, 1e4, 1e-6).rate_Hz());
    EXPECT_LT(settled(1e4, 1e4, 2e-6).rate_Hz(), settled(1e4, 1e4, 1e-6).rate_Hz());
}

TEST(Study, BlinksEvenlyOrFourToOneWithADiodeAcrossR2) {
    // 10 ms and 10 ms are 50 %, 20 ms and 5 ms are 80 %: a diode across R2 makes the halves independent. An
    // almost ideal one: 5 mV at 10 mA.
    const auto settled = [](double r1, double r2) {
        Workbench b = astable({.supply_V = 15, .r1_ohm = r1, .r2_ohm = r2, .c_farad = 1e-6}, true);
        b.part(PartKind::diode, "D9",
               {{"forward_voltage", 5e-3},
                {"test_current", 0.01},
                {"ideality", 5e-3},
                {"series_resistance", 0.0}});
        b.net("discharge", {"D9:anode"}).net("timing", {"D9:cathode"});
        return *studyOf(b).readings.timers[0].settled;
    };
    const double ohmsPerMs = 1e-3 / (std::log(2.0) * 1e-6);
    const Phase even = settled(10 * ohmsPerMs, 10 * ohmsPerMs);
    EXPECT_NEAR(even.high_s, 10e-3, 20e-6);
    EXPECT_NEAR(even.low_s, 10e-3, 20e-6);
    EXPECT_NEAR(even.duty(), 0.5, 1e-3);
    const Phase uneven = settled(20 * ohmsPerMs, 5 * ohmsPerMs);
    EXPECT_NEAR(uneven.high_s, 20e-3, 40e-6);
    EXPECT_NEAR(uneven.low_s, 5e-3, 10e-6);
    EXPECT_NEAR(uneven.duty(), 0.8, 1e-3);
}

// --- several timers

TEST(Study, TakesFiguresOverWholeCyclesOfTheRunWhereThereIsNoSettledPeriod) {
    // U1 is held in reset by U2 for a while in each of U2's periods: no single period of its own.
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 47e3, .c_farad = 1e-6}, false);
    b.open("U1:4");
    addTimer(b, 100e3, 470e3, 1e-6);
    b.net("supply", {"U2:4"}).net("output2", {"U1:4"});
    const Study s = studyOf(b, {.flashes = 20});
    EXPECT_EQ(s.readings.verdict, Verdict::blinks);
    EXPECT_FALSE(s.readings.timers[0].settled);
    EXPECT_TRUE(s.readings.overRun);
    EXPECT_THAT(allReasons(s.readings), HasSubstr("no single period of its own"));
    ASSERT_TRUE(s.readings.supply && s.readings.supply->mean_A);
    EXPECT_GT(*s.readings.supply->mean_A, 4e-3); // two bipolar timers
    // U2 minds nobody: its own formula holds but for the discharge pin and delays.
    ASSERT_TRUE(s.readings.timers[1].settled);
    expectNear(s.readings.timers[1].settled->period_s(), std::log(2.0) * (100e3 + 2 * 470e3) * 1e-6, 0.02);
}

TEST(Study, GivesNoPeriodToATimerThatBlinksInBurstsAndOneToATimerThatFollows) {
    Workbench b = astable({.r1_ohm = 100e3, .r2_ohm = 470e3, .c_farad = 1e-6}, false);
    addTimer(b, 10e3, 47e3, 1e-6);
    b.net("output", {"U2:4"});
    b.part(PartKind::timer, "U3").net("supply", {"U3:8", "U3:4"}).net("ground", {"U3:1"});
    b.net("output", {"U3:2", "U3:6"}).net("output3", {"U3:3"});
    const Study s = studyOf(b);
    const auto& timers = s.readings.timers;
    ASSERT_EQ(timers.size(), 3u);
    ASSERT_TRUE(timers[0].settled);
    EXPECT_FALSE(s.readings.overRun);
    EXPECT_FALSE(timers[1].settled);
    EXPECT_GT(timers[1].switchings_s.size(), timers[0].switchings_s.size());
    ASSERT_TRUE(timers[2].settled) << "it is the first timer upside down";
    EXPECT_NEAR(timers[2].settled->high_s, timers[0].settled->low_s, 1e-5);
    EXPECT_NEAR(timers[2].settled->low_s, timers[0].settled->high_s, 1e-5);
}

// --- figures

TEST(Study, LampToGroundIsLitInTheHighPhaseByOhmsLaw) {
    const Study s = studyOf(withLamp(false));
    const Phase phase = *s.readings.timers[0].settled;
    const LampReading& lamp = s.readings.lamps.at(0);
    expectNear(lamp.peak_A, 0.01, 1e-6);
    expectNear(lamp.litTime_s, phase.high_s, 1e-6);
    expectNear(lamp.charge_C, 0.01 * phase.high_s, 1e-6);
    expectNear(lamp.mean_A, *lamp.charge_C / phase.period_s(), 1e-12);
    expectNear(lamp.rms_A, 0.01 * std::sqrt(phase.duty()), 1e-6);
    EXPECT_EQ(lamp.reversePeak_V, 0.0);
    EXPECT_EQ(lamp.overRated_s, 0.0);
    expectNear(row(s, "R3").meanPower_W, 700 * 1e-4 * phase.duty(), 1e-6);
    expectNear(row(s, "R3").peakVoltage_V, 7, 1e-6);
    expectNear(row(s, "U1").sourced_A, 0.01, 1e-6);
}

TEST(Study, LampToTheRailIsLitInTheLowPhase) {
    const Study s = studyOf(withLamp(true));
    const Phase phase = *s.readings.timers[0].settled;
    const LampReading& lamp = s.readings.lamps.at(0);
    expectNear(lamp.peak_A, 0.01, 1e-6);
    expectNear(lamp.litTime_s, phase.low_s, 1e-6);
    expectNear(lamp.rms_A, 0.01 * std::sqrt(phase.low_s / phase.period_s()), 1e-6);
    expectNear(row(s, "U1").sunk_A, 0.01, 1e-6);
}

TEST(Study, SupplyCurrentIsTheSumOfItsBranches) {
    // Per period: what charges C1 from a third to two thirds of 9 V, what R1 sends through pin 7 while the
    // output is low, the lamp, and the divider of three times 100 kohm.
    const Study s = studyOf(withLamp(false));
    const Phase phase = *s.readings.timers[0].settled;
    const double charge =
        10e-6 * 3 + 9 / 10e3 * phase.low_s + 0.01 * phase.high_s + 9 / 300e3 * phase.period_s();
    ASSERT_TRUE(s.readings.supply);
    expectNear(s.readings.supply->mean_A, charge / phase.period_s(), 1e-6);
    expectNear(s.readings.supply->energy_J, 9 * charge, 1e-6);
    // Highest just after a rise: 10 mA of lamp, 6 V over 78 kohm, the divider.
    expectNear(s.readings.supply->peak_A, 0.01 + 6 / 78e3 + 9 / 300e3, 1e-6);
    expectNear(row(s, "U1").dischargePeak_A, 9 / 10e3 + 6 / 68e3, 1e-6);
}

TEST(Study, BatteryLastsItsCapacityOverTheMeanCurrent) {
    Workbench b = withLamp(false);
    EXPECT_FALSE(studyOf(b).readings.supply->batteryLife_s);
    b.set("BT1.capacity=550mAh");
    const Study s = studyOf(b);
    expectNear(s.readings.supply->batteryLife_s, 0.55 * 3600 / *s.readings.supply->mean_A, 1e-12);
}

TEST(Study, CoupledPairPassesEqualChargeAndStartsAsTheHandFormulaSays) {
    // AC-coupled pair, worked out by hand: D = swing less both forward voltages, a = t1/(R C), b = t2/(R C);
    // start of lamp 1 D/R (1 - e^-b)/(1 - e^-(a+b)). Lamps of almost constant 2 V, ideal output of 8 ohm, R =
    // 220 ohm in all.
    Workbench b = eightOhmOutput(10e3, 330e3);
    const circuit::Values steep{
        {"forward_voltage", 2.0}, {"test_current", 0.01}, {"ideality", 0.12}, {"series_resistance", 0.0}};
    b.part(PartKind::resistor, "R3", {{"resistance", 211.9}})
        .part(PartKind::capacitor, "C3", {{"capacitance", 1e-3}, {"esr", 0.1}})
        .part(PartKind::lamp, "D1", steep)
        .part(PartKind::lamp, "D2", steep);
    b.net("output", {"R3:1"}).net("swing", {"R3:2", "C3:plus"});
    b.net("pair", {"C3:minus", "D1:anode", "D2:cathode"}).net("ground", {"D1:cathode", "D2:anode"});
    b.set("C1.capacitance=2.2u");
    const Study s = studyOf(b);
    const Phase phase = *s.readings.timers[0].settled;
    const double rc = 220 * 1e-3, a = phase.high_s / rc, c = phase.low_s / rc, most = (9.0 - 4) / 220;
    const double start1 = most * (1 - std::exp(-c)) / (1 - std::exp(-(a + c)));
    const double start2 = most * (1 - std::exp(-a)) / (1 - std::exp(-(a + c)));
    expectNear(s.readings.lamps[0].peak_A, start1, 3e-3);
    expectNear(s.readings.lamps[1].peak_A, start2, 3e-3);
    // A lamp's charge counts what flows back through its junction shunt, 1 nS at 2 V: nothing to see here.
    expectNear(s.readings.lamps[0].charge_C, *s.readings.lamps[1].charge_C, 1e-5);
    expectNear(s.readings.lamps[0].charge_C, start1 * rc * (1 - std::exp(-a)), 3e-3);
    expectNear(s.readings.lamps[0].reversePeak_V, 2.0, 0.02); // the other's forward voltage
}

TEST(Study, RunsAPairAtEverySupplyVoltage) {
    // At 5 V the swing is less than both forward voltages together: the pair hangs between on and off while
    // the bypass capacitor charges, which is hard on the equations.
    for (const double volts : {3.0, 4.5, 5.0, 6.0, 9.0, 12.0, 15.0}) {
        Workbench b = tests::lampPair({.supply_V = volts, .r2_ohm = 150e3, .c_farad = 4.7e-6}, 220, 1e-3);
        b.part(PartKind::capacitor, "C9", {{"capacitance", 1e-7}});
        b.net("supply", {"C9:plus"}).net("ground", {"C9:minus"});
        const Study s = studyOf(b);
        EXPECT_EQ(s.readings.verdict, Verdict::blinks) << volts << allReasons(s.readings);
        EXPECT_FALSE(s.readings.overRun) << volts;
        EXPECT_GT(*s.readings.lamps.at(0).peak_A, 0) << volts;
    }
}

TEST(Study, KnowsHowLongALampIsOverItsRating) {
    Workbench b = withLamp(false);
    b.set("D1.rated_current=9m");
    const Study s = studyOf(b);
    expectNear(s.readings.lamps.at(0).overRated_s, s.readings.timers[0].settled->high_s, 1e-6);
}

TEST(Study, TellsTheCurrentOfALampInItsDarkerPhase) {
    EXPECT_NEAR(*studyOf(withLamp(false)).readings.lamps.at(0).darkerMean_A, 0, 1e-9);
    EXPECT_NEAR(*studyOf(withLamp(true)).readings.lamps.at(0).darkerMean_A, 0, 1e-8);
    // Fed by 100 kohm from the supply too, behind a diode from the output: the low phase has (9 - about 1.5)
    // V over 100 kohm left.
    Workbench glow = withLamp(false);
    glow.part(PartKind::resistor, "R4", {{"resistance", 1e5}}).net("supply", {"R4:1"}).net("lamp", {"R4:2"});
    glow.part(PartKind::diode, "D9")
        .open("R3:2")
        .net("fed", {"R3:2", "D9:anode"})
        .net("lamp", {"D9:cathode"});
    EXPECT_NEAR(*studyOf(glow).readings.lamps.at(0).darkerMean_A, 75e-6, 3e-6);
}

TEST(Study, KnowsACapacitorsLowestVoltage) {
    Workbench b = astable({}, true);
    const Study forward = studyOf(b);
    expectNear(row(forward, "C1").lowestVoltage_V, 3, 1e-6);
    // The same capacitor the wrong way round swings between -3 and -6 V.
    b.open("C1:plus");
    b.open("C1:minus");
    b.net("timing", {"C1:minus"}).net("ground", {"C1:plus"});
    expectNear(row(studyOf(b), "C1").lowestVoltage_V, -6, 1e-6);
}

} // namespace
} // namespace blinkwright::study
