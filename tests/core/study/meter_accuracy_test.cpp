// From a meter's stated accuracy to a standard uncertainty.
#include "core/study/meter_accuracy.h"

#include <cmath>
#include <gtest/gtest.h>

namespace blinkwright::study {
namespace {

using units::Unit;

TEST(MeterAccuracy, LimitsAreSpreadEvenly) {
    // ± (0.5 % of 5.93 V + 2 x 0.01 V) = ± 0.04965 V; over sqrt(3) (JCGM 100:2008, 4.3.7)
    EXPECT_NEAR(standardUncertainty({0.005, 2}, 5.93, 0.01), 0.04965 / std::sqrt(3.0), 1e-12);
    EXPECT_NEAR(standardUncertainty({0.005, 2}, -5.93, 0.01), 0.04965 / std::sqrt(3.0), 1e-12);
    EXPECT_EQ(standardUncertainty({0, 0}, 5, 1), 0);
}

TEST(MeterAccuracy, TheLastDigitIsThatOfTheTextAsTyped) {
    EXPECT_DOUBLE_EQ(lastDigit("5.93", Unit::volt).value(), 0.01);
    EXPECT_DOUBLE_EQ(lastDigit("5,930 V", Unit::volt).value(), 0.001);
    EXPECT_DOUBLE_EQ(lastDigit("4k7", Unit::ohm).value(), 100);
    EXPECT_DOUBLE_EQ(lastDigit("9.93 kΩ", Unit::ohm).value(), 10);
    EXPECT_DOUBLE_EQ(lastDigit("9.8µ", Unit::farad).value(), 1e-7);
    EXPECT_DOUBLE_EQ(lastDigit("12.5 mA", Unit::ampere).value(), 1e-4);
    EXPECT_DOUBLE_EQ(lastDigit("1.25e-3", Unit::ampere).value(), 1e-5);
    EXPECT_DOUBLE_EQ(lastDigit("6", Unit::volt).value(), 1);
    EXPECT_DOUBLE_EQ(lastDigit("99", Unit::ohm).value(), 1);
    EXPECT_FALSE(lastDigit("five", Unit::volt));
    EXPECT_FALSE(lastDigit("", Unit::volt));
}

} // namespace
} // namespace blinkwright::study
