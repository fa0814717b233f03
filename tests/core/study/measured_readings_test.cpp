// What measurements say: the beat of a record, and several measurements of one figure together.
#include "core/study/measured_readings.h"

#include "core/base/random.h"
#include "core/io/circuit_file.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace blinkwright::study {
namespace {

using circuit::Measured;
using circuit::Measurement;

/// A beat with noise on each switching; from power-on: high for longer at first.
circuit::Record beat(int cycles, double period_s, double high_s, double noise_s, unsigned seed,
                     double step_s) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0, 1);
    circuit::Record r;
    r.step_s = step_s;
    r.timeUncertainty = 0;
    r.fromPowerOn = true;
    r.firstRises = false;
    r.switchings_s.push_back(1.3 * high_s);
    for (int k = 0; k <= cycles; ++k) {
        const double rise = 1.3 * high_s + (period_s - high_s) + k * period_s;
        r.switchings_s.push_back(rise + noise_s * noise(random));
        r.switchings_s.push_back(rise + high_s + noise_s * noise(random));
    }
    return r;
}

circuit::Circuit mole() {
    circuit::Circuit c;
    (void)c.addPart(circuit::PartKind::supply, "BT1", {{"voltage", 6.0}});
    (void)c.addPart(circuit::PartKind::timer, "U1", {{"family", std::string("bipolar")}});
    (void)c.addPart(circuit::PartKind::lamp, "D1", {{"colour", std::string("red")}});
    return c;
}

template <class What>
void note(circuit::Circuit& c, What what, bool used = true) {
    c.measurements.push_back(std::make_shared<const Measurement>(Measurement{"", used, std::move(what), {}}));
}

TEST(RecordFigures, AnEvenBeatIsFoundAsItIsAndTheFirstFlashApart) {
    const RecordFigures f = figuresOf(beat(5, 0.8, 0.5, 0, 1, 1e-6));
    EXPECT_EQ(f.cycles, 5);
    EXPECT_NEAR(f.period_s->value, 0.8, 1e-12);
    EXPECT_NEAR(f.high_s->value, 0.5, 1e-12);
    EXPECT_NEAR(f.low_s->value, 0.3, 1e-12);
    EXPECT_NEAR(f.duty->value, 0.625, 1e-12);
    EXPECT_NEAR(f.firstHigh_s->value, 0.65, 1e-12);
}

// JCGM 100:2008, 4.2 and 4.3.7: what is claimed must be what happens. Over many records with known truth, the
// mean squared error in units of the stated uncertainty is 1, here within three of its own standard
// deviations.
TEST(RecordFigures, TheStatedUncertaintyIsThatOfTheErrors) {
    constexpr int records = 400;
    double period = 0, high = 0, duty = 0, scatter = 0;
    for (unsigned seed = 1; seed <= records; ++seed) {
        const RecordFigures f = figuresOf(beat(12, 0.8, 0.5, 1e-3, seed, 1e-6));
        period += std::pow((f.period_s->value - 0.8) / f.period_s->uncertainty, 2);
        high += std::pow((f.high_s->value - 0.5) / f.high_s->uncertainty, 2);
        duty += std::pow((f.duty->value - 0.625) / f.duty->uncertainty, 2);
        scatter += *f.scatter_s * *f.scatter_s;
    }
    const double slack = 3 * std::sqrt(2.0 / records) * 1.2; // 1.2: the uncertainty is itself estimated
    EXPECT_NEAR(period / records, 1, slack + 0.1); // Student's t with 23 degrees of freedom: 23 / 21
    EXPECT_NEAR(high / records, 1, slack + 0.1);
    EXPECT_NEAR(duty / records, 1, slack + 0.1);
    EXPECT_NEAR(scatter / records, 1e-6, 5e-8);
}

TEST(RecordFigures, TheRiseOfTheSupplyIsNoFlashLikeTheOthers) {
    circuit::Record r = beat(5, 0.8, 0.5, 0, 1, 1e-6);
    for (double& t : r.switchings_s) t += 0.1; // the supply comes 0.1 s after the record begins
    r.switchings_s.insert(r.switchings_s.begin(), 0.1);
    r.firstRises = true;
    const RecordFigures f = figuresOf(r);
    EXPECT_EQ(f.cycles, 5);
    EXPECT_NEAR(f.high_s->value, 0.5, 1e-12);
    EXPECT_NEAR(f.duty->value, 0.625, 1e-12);
    EXPECT_NEAR(f.firstHigh_s->value, 0.65, 1e-12);
}

TEST(RecordFigures, TooFewSwitchingsSayNothing) {
    circuit::Record r;
    r.step_s = 1e-3;
    r.switchings_s = {0.2, 0.5};
    EXPECT_FALSE(figuresOf(r).period_s);
    EXPECT_FALSE(figuresOf(r).firstHigh_s);
    r.switchings_s = {0.2, 0.5, 1.0};
    EXPECT_NEAR(figuresOf(r).period_s->value, 0.8, 1e-12);
    // Two times, each known to a step: u = step * sqrt(2 / 12).
    r.timeUncertainty = 0;
    EXPECT_NEAR(figuresOf(r).period_s->uncertainty, 1e-3 / std::sqrt(6.0), 1e-12);
}

TEST(MeasuredReadings, ACountGivesTheRateWithItsUncertainty) {
    circuit::Circuit c = mole();
    note(c, circuit::Count{20, {16, 0.2}});
    const MeasuredReadings m = measuredReadings(c);
    EXPECT_NEAR(m.period_s->value, 0.8, 1e-12);
    EXPECT_NEAR(m.period_s->uncertainty, 0.01, 1e-12);
    EXPECT_NEAR(m.rate_Hz->value, 1.25, 1e-12);
    EXPECT_NEAR(m.rate_Hz->uncertainty, 1.25 * 0.0125, 1e-12);
}

TEST(MeasuredReadings, SeveralOfOneFigureAreWeighedByTheirUncertainty) {
    circuit::Circuit c = mole();
    note(c, circuit::MeterReading{circuit::MeterQuantity::outputHigh, c.findRef("U1")->id, "", {4.5, 0.1}});
    note(c, circuit::MeterReading{circuit::MeterQuantity::outputHigh, c.findRef("U1")->id, "", {4.4, 0.05}});
    MeasuredReadings m = measuredReadings(c);
    EXPECT_NEAR(m.outputHigh_V->value, (4.5 * 1 + 4.4 * 4) / 5, 1e-12);
    EXPECT_NEAR(m.outputHigh_V->uncertainty, 0.1 / std::sqrt(5.0), 1e-12);
    EXPECT_FALSE(m.contradicting);
    note(c, circuit::MeterReading{circuit::MeterQuantity::outputHigh, c.findRef("U1")->id, "", {6, 0.05}});
    EXPECT_TRUE(measuredReadings(c).contradicting);
}

TEST(MeasuredReadings, WhatIsLeftOutIsNotCounted) {
    circuit::Circuit c = mole();
    note(c, circuit::Count{20, {16, 0.2}}, false);
    note(c,
         circuit::MeterReading{circuit::MeterQuantity::lampCurrent, c.findRef("D1")->id, "", {9e-3, 1e-4}});
    const MeasuredReadings m = measuredReadings(c);
    EXPECT_FALSE(m.period_s);
    ASSERT_EQ(m.lamps.size(), 1u);
    EXPECT_EQ(m.lamps[0].current_A, (Measured{9e-3, 1e-4}));
    EXPECT_FALSE(m.empty());
    EXPECT_TRUE(measuredReadings(mole()).empty());
}

} // namespace
} // namespace blinkwright::study
