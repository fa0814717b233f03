#include "widgets/values/value_scale.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;
using circuit::PartKind;

namespace {

const ScaleKind ohms = *scaleKind(PartKind::resistor, "resistance");
const ScaleKind volts = *scaleKind(PartKind::supply, "voltage");
const ScaleKind share = *scaleKind(PartKind::variable, "setting");

TEST(ValueScale, SpansADecadeToEitherSideOfAResistance) {
    const ValueScale s = ValueScale::around(ohms, 68e3);
    EXPECT_DOUBLE_EQ(s.low, 10e3);
    EXPECT_DOUBLE_EQ(s.high, 1e6);
    EXPECT_DOUBLE_EQ(s.at(0.5), 100e3);
    EXPECT_NEAR(s.place(68e3), std::log10(6.8) / 2, 1e-12);
}

TEST(ValueScale, LeavesAtLeastAQuarterOfTheSliderOnEitherSide) {
    for (double v = 100; v < 1e6; v *= 1.07) {
        const double place = ValueScale::around(ohms, v).place(v);
        EXPECT_GE(place, 0.249) << v;
        EXPECT_LE(place, 0.751) << v;
    }
}

TEST(ValueScale, HoldsAValueOutsideOfTheOrdinaryEnds) {
    for (double v : {0.47, 2.2e7, 10.0, 10e6})
        EXPECT_TRUE(ValueScale::around(ohms, v).contains(v)) << v;
    EXPECT_TRUE(ValueScale::around(volts, 24).contains(24));
}

TEST(ValueScale, TakesVoltagesInEqualSteps) {
    const ValueScale s = ValueScale::around(volts, 6);
    EXPECT_DOUBLE_EQ(s.low, 1.5);
    EXPECT_DOUBLE_EQ(s.high, 18);
    EXPECT_DOUBLE_EQ(s.at(0.5), 9.75);
}

TEST(ValueScale, AKeyAlwaysMovesTheValue) {
    for (double v = 11; v < 9e6; v *= 1.013) {
        const ValueScale s = ValueScale::around(ohms, v);
        EXPECT_GT(s.stepped(roundedTo3(v), 1, false), roundedTo3(v));
        EXPECT_LT(s.stepped(roundedTo3(v), -1, false), roundedTo3(v));
    }
    const ValueScale s = ValueScale::around(volts, 6);
    EXPECT_DOUBLE_EQ(s.stepped(5.03, 1, false), 5.05);
    EXPECT_DOUBLE_EQ(s.stepped(5.03, -1, false), 5.0);
    EXPECT_DOUBLE_EQ(s.stepped(6, 1, true), 6.5);
    EXPECT_DOUBLE_EQ(s.stepped(18, 1, true), 18);
    EXPECT_DOUBLE_EQ(ValueScale::around(share, 0.5).stepped(0.5, 1, false), 0.51);
    EXPECT_DOUBLE_EQ(ValueScale::around(share, 0.995).stepped(0.995, 1, false), 1);
}

TEST(ValueScale, RoundsToThreeDigitsWithoutRest) {
    EXPECT_EQ(roundedTo3(68123), 68100);
    EXPECT_EQ(roundedTo3(4.6999), 4.7);
    EXPECT_EQ(roundedTo3(4.7012e-8), 4.7e-8);
    EXPECT_EQ(roundedTo3(0.9996), 1.0);
    EXPECT_EQ(roundedTo3(0), 0);
}

TEST(ValueScale, KnowsNoSliderForATolerance) {
    EXPECT_FALSE(scaleKind(PartKind::resistor, "tolerance"));
    EXPECT_FALSE(scaleKind(PartKind::timer, "family"));
}

} // namespace
