// Measured beside predicted, and what of it remains unexplained. The study is made by hand, so that every
// figure is known.
#include "core/study/measured_against.h"
#include "core/study/unexplained.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace blinkwright::study {
namespace {

using circuit::Measured;
using circuit::PartSet;
using Figure = MeasuredFigure;

circuit::Circuit board() {
    circuit::Circuit c;
    (void)c.addPart(circuit::PartKind::supply, "BT1", {{"voltage", 6.0}});
    (void)c.addPart(circuit::PartKind::timer, "U1", {{"family", std::string("bipolar")}});
    (void)c.addPart(circuit::PartKind::lamp, "D1", {{"colour", std::string("red")}});
    (void)c.addPart(circuit::PartKind::resistor, "R1", {{"resistance", 10e3}});
    return c;
}

Study study(const circuit::Circuit& c) {
    Study s;
    s.board.supplies.emplace_back();
    s.board.supplies[0].voltage = 6;
    s.board.supplies[0].resistance = 2;
    s.readings.verdict = Verdict::blinks;
    s.readings.timers.push_back({.ref = "U1", .firstHigh_s = 0.9, .settled = Phase{0.6, 0.4}});
    LampReading lamp{.id = c.findRef("D1")->id, .ref = "D1"};
    lamp.charge_C = 6e-3;
    lamp.litTime_s = 0.5;
    s.readings.lamps.push_back(lamp);
    s.readings.supply = SupplyReading{.ref = "BT1", .mean_A = 0.05};
    // While high the output falls from 4.4 to 4.2 V: 4.3 V in the mean.
    s.curves.time_s = {0, 0.6, 0.6, 1};
    s.curves.output_V = {4.4, 4.2, 0.1, 0.1};
    return s;
}

const MeasuredAgainst& of(const std::vector<MeasuredAgainst>& all, Figure figure) {
    return *std::ranges::find(all, figure, &MeasuredAgainst::figure);
}

TEST(MeasuredAgainst, EachFigureFindsItsPrediction) {
    const circuit::Circuit c = board();
    MeasuredReadings m;
    m.period_s = Measured{1.02, 0.01};
    m.rate_Hz = Measured{1 / 1.02, 0.01};
    m.high_s = Measured{0.61, 0.01};
    m.low_s = Measured{0.41, 0.01};
    m.duty = Measured{0.59, 0.01};
    m.firstHigh_s = Measured{0.95, 0.01};
    m.supply_V = Measured{5.8, 0.05};
    m.outputHigh_V = Measured{4.25, 0.05};
    m.outputLow_V = Measured{0.12, 0.01};
    m.lamps = {{c.findRef("D1")->id, {13e-3, 1e-4}}};
    m.parts = {{c.findRef("R1")->id, "resistance", {9.93e3, 50}}};
    const Study s = study(c);
    const auto all = measuredAgainst(c, PartSet::A, m, &s);
    ASSERT_EQ(all.size(), 12u);
    EXPECT_NEAR(*of(all, Figure::period).predicted, 1, 1e-12);
    EXPECT_NEAR(*of(all, Figure::rate).predicted, 1, 1e-12);
    EXPECT_NEAR(*of(all, Figure::perMinute).predicted, 60, 1e-12);
    EXPECT_NEAR(of(all, Figure::perMinute).measured.value, 60 / 1.02, 1e-12);
    EXPECT_NEAR(*of(all, Figure::high).predicted, 0.6, 1e-12);
    EXPECT_NEAR(*of(all, Figure::low).predicted, 0.4, 1e-12);
    EXPECT_NEAR(*of(all, Figure::duty).predicted, 0.6, 1e-12);
    EXPECT_NEAR(*of(all, Figure::firstHigh).predicted, 0.9, 1e-12);
    EXPECT_NEAR(*of(all, Figure::supplyVoltage).predicted, 6 - 2 * 0.05, 1e-12);
    EXPECT_NEAR(*of(all, Figure::outputHigh).predicted, 4.3, 1e-12);
    EXPECT_NEAR(*of(all, Figure::outputLow).predicted, 0.1, 1e-12);
    EXPECT_NEAR(*of(all, Figure::lampCurrent).predicted, 12e-3, 1e-12);
    EXPECT_NEAR(*of(all, Figure::partValue).predicted, 10e3, 1e-9);
    EXPECT_NEAR(*of(all, Figure::period).difference(), 0.02, 1e-12);
    EXPECT_NEAR(*of(all, Figure::period).multiples(), 2, 1e-9);
}

TEST(MeasuredAgainst, WithoutARunOnlyPartsArePredicted) {
    const circuit::Circuit c = board();
    MeasuredReadings m;
    m.period_s = Measured{1.02, 0};
    m.parts = {{c.findRef("R1")->id, "resistance", {9.93e3, 50}}};
    const auto all = measuredAgainst(c, PartSet::A, m, nullptr);
    ASSERT_EQ(all.size(), 2u);
    EXPECT_FALSE(all[0].predicted || all[0].difference() || all[0].multiples());
    EXPECT_TRUE(all[1].predicted);
    Study stopped = study(c);
    stopped.readings.verdict = Verdict::settlesHigh;
    EXPECT_FALSE(measuredAgainst(c, PartSet::A, m, &stopped)[0].predicted);
    const Study s = study(c);
    EXPECT_FALSE(measuredAgainst(c, PartSet::A, m, &s)[0].multiples()); // no uncertainty to count in
}

TEST(Unexplained, IsMeasuredMinusSimulated) {
    Why why;
    why.simulated = Phase{0.6, 0.4};
    MeasuredReadings m;
    m.period_s = Measured{1.02, 0.01};
    WhyMeasured w = whyMeasured(why, m);
    ASSERT_TRUE(w.unexplainedPeriod_s);
    EXPECT_NEAR(w.unexplainedPeriod_s->value, 0.02, 1e-12);
    EXPECT_EQ(w.unexplainedPeriod_s->uncertainty, 0.01);
    EXPECT_FALSE(w.duty || w.unexplainedDuty);
    EXPECT_FALSE(w.empty());
    why.simulated.reset();
    w = whyMeasured(why, m);
    EXPECT_TRUE(w.period_s);
    EXPECT_FALSE(w.unexplainedPeriod_s);
    EXPECT_TRUE(whyMeasured(why, {}).empty());
}

TEST(MeasuredReadings, AClashNamesItsFigureAndBothMeasurements) {
    circuit::Circuit c = board();
    const auto add = [&](auto what) {
        c.measurements.push_back(std::make_shared<const circuit::Measurement>(
            circuit::Measurement{"", true, std::move(what), {}}));
    };
    const circuit::PartId r1 = c.findRef("R1")->id;
    add(circuit::MeterReading{circuit::MeterQuantity::partValue, r1, "resistance", {9.93e3, 50}});
    add(circuit::Count{20, {20.0, 0.2}});
    add(circuit::Count{20, {20.4, 0.2}}); // 1.4 common uncertainties apart
    MeasuredReadings m = measuredReadings(c);
    EXPECT_TRUE(m.clashes.empty());
    ASSERT_EQ(m.parts.size(), 1u);
    EXPECT_EQ(m.parts[0].value.value, 9.93e3);
    add(circuit::Count{20, {21, 0.2}}); // 3.5 from the first, 2.1 from the second
    m = measuredReadings(c);
    ASSERT_EQ(m.clashes.size(), 1u);
    EXPECT_EQ(m.clashes[0].figure, "cycle time");
    EXPECT_EQ(m.clashes[0].first, 1u);
    EXPECT_EQ(m.clashes[0].second, 3u);
    add(circuit::MeterReading{circuit::MeterQuantity::partValue, r1, "resistance", {10.4e3, 50}});
    m = measuredReadings(c);
    ASSERT_EQ(m.clashes.size(), 2u);
    EXPECT_EQ(m.clashes[1].figure, "resistance of R1");
    EXPECT_TRUE(m.contradicting);
}

} // namespace
} // namespace blinkwright::study
