// Findings that need more than the settled period's means: the swing that a coupled pair needs, the hotter of
// two long phases, and the first flash after power-on. All by construction of such a circuit.
#include "core/study/output_levels.h"
#include "core/study/study.h"
#include "tests/core/reference_circuits.h"
#include "tests/core/study/findings_support.h"

#include <gmock/gmock.h>

namespace blinkwright::study {
namespace {

using circuit::PartKind;
using circuit::PartSet;
using testing::HasSubstr;

Study studyOf(const Workbench& bench) {
    return study(bench.circuit, PartSet::A, {}).value();
}

Workbench pairAt(double volts, const char* family, double ohm = 220, const char* colour = "red") {
    Workbench bench = tests::lampPair({.supply_V = volts, .family = family}, ohm, 1e-3);
    bench.set(std::string("D1.colour=") + colour).set(std::string("D2.colour=") + colour);
    return bench;
}

// 5 V less some 1.3 V of a bipolar output is under two red lamps of 1.9 V; 9 V less that is not.
TEST(PairSwing, IsTooSmallForTwoRedLampsBehindACapacitorAtFiveVolts) {
    const Study dark = studyOf(pairAt(5, "bipolar"));
    const Finding* found = find(dark.findings, "pair-swing-too-small");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->severity, Severity::fault);
    EXPECT_THAT(found->places, testing::ElementsAre("D1", "D2", "U1:3"));
    EXPECT_NEAR(found->number.value(), 5 - 1.28, 0.05);
    EXPECT_NEAR(found->limit.value(), 2 * 1.92, 0.01);
    EXPECT_FALSE(found->remedy.empty());
    EXPECT_EQ(find(dark.findings, "lamp-dark"), nullptr); // told once
    EXPECT_EQ(find(studyOf(pairAt(9, "bipolar")).findings, "pair-swing-too-small"), nullptr);
    EXPECT_EQ(find(studyOf(pairAt(5, "cmos")).findings, "pair-swing-too-small"), nullptr);
}

TEST(PairSwing, IsToldFromTheWiringAlone) {
    EXPECT_NE(find(of(pairAt(5, "bipolar")), "pair-swing-too-small"), nullptr);
    EXPECT_EQ(find(of(pairAt(9, "bipolar")), "pair-swing-too-small"), nullptr);
    EXPECT_NE(find(of(pairAt(6, "cmos", 220, "blue")), "pair-swing-too-small"), nullptr); // 6.1 V together
}

TEST(PairSwing, DoesNotMatterWithoutTheCapacitor) {
    Workbench bench = pairAt(5, "bipolar");
    bench.part(PartKind::resistor, "R9", {{"resistance", 1.0}}); // past the capacitor
    bench.net("coupling", {"R9:1"}).net("lamps", {"R9:2"});
    EXPECT_EQ(find(of(bench), "pair-swing-too-small"), nullptr);
}

/// 12 V, 270 ohm and a red lamp to ground: some 31 mA, 0.26 W while lit. @param c sets the pace.
Workbench hotWhileLit(double c) {
    Workbench bench = tests::astableWithLamp({.supply_V = 12, .c_farad = c}, 270);
    bench.set("R3.rated_power=0.25");
    return bench;
}

TEST(HotterPhase, CountsWhereItLastsOverASecond) {
    const Study slow = studyOf(hotWhileLit(1e-4)); // 5 s and 4.7 s
    const Finding* found = find(slow.findings, "resistor-overpowered");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->severity, Severity::overstress);
    // Nothing flows in the other phase, so the mean over the lit one is the whole mean over its share.
    const auto& settled = *slow.readings.timers[0].settled;
    EXPECT_NEAR(found->number.value(), *slow.readings.parts.at(6).meanPower_W / settled.duty(), 1e-4);
    EXPECT_LT(*slow.readings.parts.at(6).meanPower_W, 0.25);
    EXPECT_EQ(slow.readings.parts.at(6).ref, "R3");
    EXPECT_THAT(found->text, HasSubstr("at a time"));

    EXPECT_EQ(find(studyOf(hotWhileLit(1e-6)).findings, "resistor-overpowered"), nullptr);
}

/// Two white lamps behind a capacitor at 8 V: the settled swing leaves them some 1 V, the first flash 3.7 V.
Workbench whitePair(double ohm) {
    return pairAt(8, "bipolar", ohm, "white");
}

TEST(FirstFlash, OverdrivesALampThatTheSettledStateSpares) {
    const Study s = studyOf(whitePair(56));
    const Finding* found = find(s.findings, "lamp-overdriven");
    ASSERT_NE(found, nullptr);
    EXPECT_THAT(found->places, testing::ElementsAre("D1"));
    EXPECT_THAT(found->text, HasSubstr("In the first flash after power-on D1 carries"));
    // What the supply, the output, the lamp and the resistor leave of each other: 8 V = 0.5 ohm I + output's
    // drop
    // + lamp + 56 ohm I.
    const double i = found->number.value();
    const auto sheet = devices::timerSheet(devices::TimerFamily::bipolar, 8, {});
    const double lamp = 2.97 - 8 * 0.01 + 8 * i + 3 * devices::thermalVoltage * std::log(i / 0.01);
    EXPECT_NEAR(outputHigh(sheet, false, 8, i) - lamp, 56 * i + 0.5 * i, 0.1);
    EXPECT_DOUBLE_EQ(found->limit.value(), 2 * 0.02);
    EXPECT_LT(*s.readings.lamps[0].peak_A, i / 2); // settled

    EXPECT_EQ(find(studyOf(whitePair(150)).findings, "lamp-overdriven"), nullptr);
}

TEST(FirstFlash, OverpowersAResistorOnlyAboveTwiceItsRating) {
    Workbench bench = whitePair(56);
    const Study s = studyOf(bench);
    const auto power = [](const std::vector<PartReading>& rows) {
        for (const PartReading& row : rows)
            if (row.ref == "R3") return *row.meanPower_W;
        return 0.0;
    };
    const double settled = power(s.readings.parts), first = power(s.readings.firstFlash.parts);
    ASSERT_GT(first, 2.2 * settled);
    bench.set("R3.rated_power=" + units::shortest(0.49 * first));
    const Study hot = studyOf(bench);
    ASSERT_NE(find(hot.findings, "resistor-overpowered"), nullptr);
    EXPECT_THAT(find(hot.findings, "resistor-overpowered")->text, HasSubstr("In the first flash"));
    bench.set("R3.rated_power=" + units::shortest(0.51 * first));
    EXPECT_EQ(find(studyOf(bench).findings, "resistor-overpowered"), nullptr);
    bench.set("R3.rated_power=" + units::shortest(0.9 * settled));
    EXPECT_THAT(find(studyOf(bench).findings, "resistor-overpowered")->text, testing::StartsWith("R3 turns"));
}

TEST(FirstFlash, HoldsTheTimersPinsAgainstTwiceTheirLimits) {
    const Workbench bench = sound();
    Readings readings = blinking(bench);
    readings.firstFlash.parts = readings.parts;
    for (PartReading& row : readings.firstFlash.parts)
        if (row.ref == "U1") row.sourced_A = 0.39; // 200 mA, twice
    EXPECT_EQ(find(findingsOf(bench.board(), &readings), "timer-output-overloaded"), nullptr);
    for (PartReading& row : readings.firstFlash.parts)
        if (row.ref == "U1") row.sourced_A = 0.41;
    const auto all = findingsOf(bench.board(), &readings);
    ASSERT_NE(find(all, "timer-output-overloaded"), nullptr);
    EXPECT_THAT(find(all, "timer-output-overloaded")->text,
                HasSubstr("first flash after power-on pin 3 of U1"));
}

TEST(FirstFlash, HoldsAPolarisedCapacitorAgainstOneVoltAtAnyTime) {
    // Common practice: about 1 V the wrong way round, for however short a time.
    Workbench bench = sound();
    bench.set("C1.polarised=true");
    Readings readings = blinking(bench);
    readings.firstFlash.parts = readings.parts;
    const auto lowest = [&](double volts) -> Readings& {
        for (PartReading& row : readings.firstFlash.parts)
            if (row.ref == "C1") row.lowestVoltage_V = volts;
        return readings;
    };
    EXPECT_EQ(find(findingsOf(bench.board(), &lowest(-0.99)), "capacitor-reversed"), nullptr);
    const auto all = findingsOf(bench.board(), &lowest(-1.01));
    ASSERT_NE(find(all, "capacitor-reversed"), nullptr);
    EXPECT_THAT(find(all, "capacitor-reversed")->text,
                HasSubstr("In the first flash after power-on C1 sees"));
}

TEST(PolarisedCapacitor, IsSeenBackwardsFromTheWiringAlone) {
    Workbench bench = sound();
    bench.set("C3.polarised=true").set("C1.polarised=true");
    EXPECT_EQ(find(of(bench), "capacitor-reversed"), nullptr);
    bench.open("C3:plus").open("C3:minus").net("supply", {"C3:minus"}).net("ground", {"C3:plus"});
    const auto all = of(bench);
    const Finding* found = find(all, "capacitor-reversed");
    ASSERT_NE(found, nullptr);
    EXPECT_THAT(found->places, testing::ElementsAre("C3"));
    EXPECT_EQ(found->number, -9.0);
}

} // namespace
} // namespace blinkwright::study
