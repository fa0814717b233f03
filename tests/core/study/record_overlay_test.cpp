// Where a record lies on the axis of simulated curves.
#include "core/study/record_overlay.h"

#include <gtest/gtest.h>

namespace blinkwright::study {
namespace {

/// High from 0 to 0.7, low to 1.2, high to 1.7, low to 2.2: from power-on.
engine::Curves curves() {
    engine::Curves c;
    const double at[] = {0, 0.7, 0.7, 1.2, 1.2, 1.7, 1.7, 2.2};
    const double output[] = {4, 4, 0, 0, 4, 4, 0, 0};
    c.time_s.assign(std::begin(at), std::end(at));
    c.output_V.assign(std::begin(output), std::end(output));
    return c;
}
circuit::Record record(bool fromPowerOn, bool firstRises, std::vector<double> switchings) {
    circuit::Record r;
    r.fromPowerOn = fromPowerOn;
    r.firstRises = firstRises;
    r.switchings_s = std::move(switchings);
    return r;
}

TEST(RecordShift, FromPowerOnToPowerOnNothingMoves) {
    EXPECT_EQ(recordShift(record(true, false, {0.72, 1.23}), curves(), true).value(), 0);
}

TEST(RecordShift, TheFirstRiseFallsOnTheFirstRiseOfTheCurves) {
    EXPECT_NEAR(recordShift(record(false, true, {0.3, 0.8}), curves(), true).value(), 1.2 - 0.3, 1e-12);
    EXPECT_NEAR(recordShift(record(false, false, {0.3, 0.8}), curves(), true).value(), 1.2 - 0.8, 1e-12);
}

TEST(RecordShift, TheOutputComingUpWithTheSupplyIsNoFlash) {
    engine::Curves c = curves();
    c.output_V[0] = 0;
    c.switchings_s = {0.7, 1.2, 1.7};
    EXPECT_NEAR(recordShift(record(false, true, {0.3, 0.8}), c, true).value(), 1.2 - 0.3, 1e-12);
}

TEST(RecordShift, SettledCurvesBeginWithARise) {
    EXPECT_NEAR(recordShift(record(false, true, {0.3, 0.8}), curves(), false).value(), -0.3, 1e-12);
    // The first high phase of a record from power-on is longer than the others: the rise after it counts.
    EXPECT_NEAR(recordShift(record(true, false, {0.72, 1.23}), curves(), false).value(), -1.23, 1e-12);
}

TEST(RecordShift, ASingleFallLiesOnAFall) {
    EXPECT_NEAR(recordShift(record(false, false, {0.3}), curves(), true).value(), 0.4, 1e-12);
}

TEST(RecordShift, WithoutASwitchingThereIsNoPlace) {
    EXPECT_FALSE(recordShift(record(false, true, {}), curves(), true));
    EXPECT_FALSE(recordShift(record(false, true, {0.3}), {}, true));
    engine::Curves flat;
    flat.time_s = {0, 1};
    flat.output_V = {0, 0};
    EXPECT_FALSE(recordShift(record(false, true, {0.3}), flat, true));
}

} // namespace
} // namespace blinkwright::study
