#include "core/study/expected_readings.h"

#include "tests/core/reference_circuits.h"
#include "tests/core/study/planted.h"

#include <gmock/gmock.h>

#include <cmath>

namespace blinkwright::study {
namespace {

using circuit::PartKind;
using circuit::PartSet;

ExpectedReadings expectedOf(const circuit::Circuit& circuit) {
    return expectedReadings(circuit, PartSet::A, {}).value();
}
const ExpectedReading& at(const ExpectedReadings& expected, std::string_view place) {
    for (const ExpectedReading& row : expected.rows)
        if (row.place.name == place) return row;
    throw std::logic_error("there is no such place");
}

TEST(ExpectedReadings, OfAnIdealAstableAreTheLevelsAndTheMeanOfTwoExponentials) {
    // 9 V, R1 10 kohm, R2 68 kohm: the capacitor runs between 3 V and 6 V. Mean of V + (V0 - V) e^(-t/tau)
    // over a phase of ln 2 tau is V + (V0 - V) / (2 ln 2), by the law of the RC circuit. The meter's 10 Mohm
    // stand in the circuit: charging towards 9 V x 10M / (10M + R), with R parallel to it.
    const ExpectedReadings expected = expectedOf(tests::astable({}, true).circuit);
    ASSERT_EQ(expected.state, BoardState::blinks);
    const double meter = 10e6, ra = 78e3 * meter / (78e3 + meter), rb = 68e3 * meter / (68e3 + meter);
    const double supply = 9 * meter / (meter + 78e3), c = 10e-6;
    const double up = ra * c * std::log((supply - 3) / (supply - 6)), down = rb * c * std::log(2);
    const auto area = [](double from, double to, double towards, double tau, double time) {
        return towards * time + (from - to) * tau; // since the exponential part falls by from - to
    };
    const double mean = (area(3, 6, supply, ra * c, up) + area(6, 3, 0, rb * c, down)) / (up + down);
    const ExpectedReading& timing = at(expected, "U1:6");
    EXPECT_NEAR(timing.meter.least, 3, 1e-5);
    EXPECT_NEAR(timing.meter.most, 6, 1e-5);
    EXPECT_NEAR(timing.meter.mean, mean, 1e-5);
    EXPECT_EQ(timing.meter, at(expected, "U1:2").meter);
}

TEST(ExpectedReadings, TheMeterPullsDownAPinOfHighResistance) {
    // The CMOS divider of 100 kohm above and 200 kohm below pin 5 is a source of 2/3 V8 behind 66.7 kohm.
    const ExpectedReadings expected = expectedOf(sampleCircuit("winch-warning"));
    const double supply = at(expected, "U1:8").meter.mean;
    const double behind = 1e5 * 2e5 / 3e5;
    EXPECT_NEAR(at(expected, "U1:5").meter.mean, supply * 2 / 3 * 10e6 / (10e6 + behind), 1e-3);
    EXPECT_GT(supply * 2 / 3 - at(expected, "U1:5").meter.mean, 0.02); // that is more than a meter's error
}

TEST(ExpectedReadings, TheSupplyIsReadWithoutASimulationSinceTheBoundIsBelowAMicrovolt) {
    const BenchBoard bench = benchBoard(devices::makeBoard(sampleCircuit("mole-light"), PartSet::A).value());
    const auto boundAt = [&](std::size_t pin) {
        return loadingBound_V(bench.board, bench.places[pin - 1].node, dcMeter);
    };
    EXPECT_EQ(boundAt(1), 0.0);
    EXPECT_NEAR(boundAt(8).value(), 6 * 0.6 / 10e6, 1e-12); // Ohm's law
    EXPECT_FALSE(boundAt(7));
    // And what is bounded is true of a simulation with the meter.
    const auto rail = bench.places[7].node;
    BenchBoard loaded = bench;
    loaded.board = withInstrument(bench.board, rail, dcMeter);
    const Behaviour with = behaviourOf(loaded, {.accuracy = 1e-7}),
                    without = behaviourOf(bench, {.accuracy = 1e-7});
    EXPECT_NEAR(with.readings[7].mean, without.readings[7].mean, 1e-6);
    EXPECT_NE(with.readings[7].mean, without.readings[7].mean);
}

TEST(ExpectedReadings, TheCapacitanceOfAProbeSlowsAFastTimingPin) {
    // 12 pF beside 100 pF: the same levels, and a cycle that is 12 % longer while the probe is on pin 6. What
    // is read at pin 3 with the probe there is not changed by it.
    const Workbench bench = tests::astable({.c_farad = 100e-12}, true);
    const BenchBoard board = benchBoard(bench.board());
    BenchBoard probed = board;
    probed.board = withInstrument(board.board, board.places[5].node, tenToOneProbe);
    const Behaviour with = behaviourOf(probed, {.accuracy = 1e-6}),
                    without = behaviourOf(board, {.accuracy = 1e-6});
    // The 10 Mohm of it take a little too: its own share is known from the meter alone.
    probed.board = withInstrument(board.board, board.places[5].node, dcMeter);
    const Behaviour metered = behaviourOf(probed, {.accuracy = 1e-6});
    EXPECT_NEAR(with.period_s / metered.period_s, 1.12, 1e-3);
    EXPECT_GT(metered.period_s, without.period_s);
}

TEST(ExpectedReadings, TheProbeChangesNothingWhereResistancesAreLow) {
    // 12 pF behind 270 ohm are over in nanoseconds: the mean over half a second must not notice.
    const ExpectedReadings expected = expectedOf(sampleCircuit("winch-warning"));
    for (const char* place : {"U1:3", "D1:anode", "D1:cathode"}) {
        EXPECT_NEAR(at(expected, place).probe.mean, at(expected, place).meter.mean, 1e-4) << place;
        EXPECT_NEAR(at(expected, place).probe.most, at(expected, place).meter.most, 1e-4) << place;
    }
}

TEST(ExpectedReadings, AgreeWithSamplesTakenEvenlyInTime) {
    for (const char* name : {"mole-light", "winch-warning"}) {
        const circuit::Circuit circuit = sampleCircuit(name);
        const ExpectedReadings expected = expectedOf(circuit);
        const Planted sound = Planted::asDrawn(circuit);
        for (const ExpectedReading& row : expected.rows) {
            if (!row.place.isVoltage()) continue;
            for (const Quantity quantity : allQuantities)
                EXPECT_NEAR(row.meter.of(quantity), sound.read(row.place.name, quantity),
                            2e-3 + 0.006 * std::abs(row.meter.of(quantity))) // three digits
                    << name << ' ' << row.place.name;
        }
    }
}

TEST(ExpectedReadings, OfABoardAtRestAreAllAlike) {
    circuit::Circuit circuit = sampleCircuit("mole-light");
    ASSERT_TRUE(circuit::apply(circuit, {circuit::edits::JoinPin{circuit.pinNamed("U1:6").value(), {}}}));
    const ExpectedReadings expected = expectedOf(circuit);
    EXPECT_EQ(expected.state, BoardState::rest);
    for (const ExpectedReading& row : expected.rows) {
        EXPECT_EQ(row.meter.least, row.meter.most) << row.place.name;
        EXPECT_EQ(row.meter.mean, row.meter.most) << row.place.name;
    }
}

TEST(ExpectedReadings, TheCardHasALineAPlaceAndTheCautions) {
    const circuit::Circuit circuit = sampleCircuit("buoy-pair");
    const ExpectedReadings expected = expectedOf(circuit);
    const std::string text = checkCardText(circuit, PartSet::A, expected);
    for (const ExpectedReading& row : expected.rows) EXPECT_THAT(text, testing::HasSubstr(row.place.words));
    EXPECT_THAT(text, testing::HasSubstr("wrong way round they can fail"));
    EXPECT_THAT(text, testing::HasSubstr("take it off before the wiring"));
    EXPECT_THAT(text, testing::HasSubstr("10 MΩ"));
    EXPECT_THAT(text, testing::HasSubstr("Values of Set A"));
}

TEST(ExpectedReadings, CancelledGivesNoFigures) {
    const std::atomic<bool> cancel = true;
    const auto expected =
        expectedReadings(sampleCircuit("mole-light"), PartSet::A, {.cancel = &cancel}).value();
    EXPECT_TRUE(expected.cancelled);
    EXPECT_TRUE(expected.rows.empty());
}

} // namespace
} // namespace blinkwright::study
