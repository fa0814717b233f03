#include "core/units/rounding.h"

#include <gtest/gtest.h>

namespace blinkwright::units {
namespace {

// The mass standard of JCGM 100:2008, 7.2.2: m = 100.021 47 g with a standard uncertainty of 0.35 mg; here as
// a number without a unit.
TEST(Rounding, ValueAndUncertaintyEndAtTheSamePlaceAsInTheGuide) {
    const Rounding r = roundingOf(100.0214736, 0.000351, Unit::none);
    EXPECT_EQ(r.text(100.0214736), "100.02147");
    EXPECT_EQ(r.text(0.000351), "0.00035");
}

TEST(Rounding, TheUnitIsThatOfTheValueForBoth) {
    const Rounding r = roundingOf(0.5407, 0.0021, Unit::second);
    EXPECT_EQ(r.text(0.5407), "540.7\u00A0ms");
    EXPECT_EQ(r.text(0.0021), "2.1\u00A0ms");
    EXPECT_EQ(r.text(-0.0131, true), "\u221213.1\u00A0ms");
    EXPECT_EQ(r.text(0.0131, true), "+13.1\u00A0ms");
}

TEST(Rounding, AnUncertaintyThatRoundsUpToOneMoreDigitKeepsTwo) {
    const Rounding r = roundingOf(1.0, 0.0996, Unit::volt);
    EXPECT_EQ(r.text(0.0996), "0.10\u00A0V");
    EXPECT_EQ(r.text(1.0), "1.00\u00A0V");
}

TEST(Rounding, AnUncertaintyOfMoreThanAHundredUnitsRoundsBeforeThePoint) {
    const Rounding r = roundingOf(12345, 678, Unit::none);
    EXPECT_EQ(r.text(12345), "12350");
    EXPECT_EQ(r.text(678), "680");
}

TEST(Rounding, WithoutAnUncertaintyFourDigitsStay) {
    EXPECT_EQ(roundingOf(1.01199, 0, Unit::second).text(1.01199), "1.012\u00A0s");
    EXPECT_EQ(roundingOf(0.98816, 0, Unit::hertz).text(0.98816), "0.9882\u00A0Hz");
    EXPECT_EQ(roundingOf(2969.3, 0, Unit::second).text(2969.3), "2969\u00A0s");
    EXPECT_EQ(percentRounding(0.534247, 0).text(0.534247), "53.42\u00A0%");
}

TEST(Rounding, WhatReadsAsZeroHasNoSign) {
    const Rounding r = roundingOf(1.0, 0.01, Unit::second);
    EXPECT_EQ(r.text(-0.0004, true), "0.000\u00A0s");
    EXPECT_EQ(r.text(0.0004, true), "0.000\u00A0s");
}

} // namespace
} // namespace blinkwright::units
