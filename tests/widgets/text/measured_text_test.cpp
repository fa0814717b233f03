// Measured numbers as texts.
#include "widgets/text/measured_text.h"

#include <gtest/gtest.h>

namespace blinkwright::widgets {
namespace {

using units::Unit;

QString plain(QString text) {
    return text.replace(QChar(QChar::Nbsp), u' ');
}
QString seconds(double value, double u) {
    return plain(measuredText({value, u}, secondsText));
}

// Two figures of the uncertainty, the value to the same place: JCGM 100:2008, 7.2.6.
TEST(MeasuredText, IsRoundedByItsUncertainty) {
    EXPECT_EQ(seconds(0.98714, 0.0213), "987 ± 21 ms");
    EXPECT_EQ(seconds(0.98714, 0.000213), "987.14 ± 0.21 ms");
    EXPECT_EQ(seconds(17.8, 0.2121), "17.80 ± 0.21 s");
    EXPECT_EQ(seconds(17.8, 0.0996), "17.80 ± 0.10 s");
    EXPECT_EQ(seconds(0.98714, 0.15), "990 ± 150 ms");
    EXPECT_EQ(plain(measuredText({0.62512, 0.0043}, shareText)), "62.51 ± 0.43 %");
    EXPECT_EQ(plain(measuredText({0.9881, 0.0106}, rateText)), "0.988 ± 0.011 Hz");
    EXPECT_EQ(plain(measuredText({60.814, 1.31}, numberText)), "60.8 ± 1.3");
    EXPECT_EQ(plain(measuredText({9.87e3, 46}, textIn<Unit::ohm>)), "9.870 ± 0.046 kΩ");
    EXPECT_EQ(plain(measuredText({-0.012, 0.001}, textIn<Unit::volt>)), "−12.0 ± 1.0 mV");
}

TEST(MeasuredText, WithoutUncertaintyItIsTheFigureAlone) {
    EXPECT_EQ(plain(measuredText({5.93, 0}, textIn<Unit::volt>)), "5.930 V");
    EXPECT_EQ(uncertaintyText(0, secondsText), "none stated");
    EXPECT_EQ(plain(uncertaintyText(0.0213, secondsText)), "21 ms");
    EXPECT_EQ(plain(uncertaintyText(0.212, secondsText)), "210 ms");
    EXPECT_EQ(plain(multiplesText(-2.44)), "2.4 u");
}

TEST(MeasuredText, ZeroTakesThePrefixOfItsUncertainty) {
    EXPECT_EQ(plain(measuredText({0, 0.01}, textIn<Unit::volt>)), "0 ± 10 mV");
}

} // namespace
} // namespace blinkwright::widgets
