// What a trend's curve is between its points, its gaps, and the ranges it starts with.
#include "widgets/rooms/trend_plot.h"
#include "widgets/rooms/trend_words.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace blinkwright;
using namespace blinkwright::widgets;

TrendValue resistance() {
    TrendValue value;
    value.ref = "R1";
    value.which.key = "resistance";
    value.unit = units::Unit::ohm;
    value.range = {0, 1e30, true};
    value.name = "R1 resistance";
    return value;
}

/// A rate of 1000 / value, in points a factor of 10 apart, without those named.
TrendLine hyperbola(const std::vector<int>& silent) {
    auto trend = std::make_shared<study::Trend>();
    for (int k = 0; k < 5; ++k) {
        study::TrendPoint point;
        point.value = std::pow(10.0, k);
        point.textbook = study::Phase{point.value / 2000, point.value / 2000};
        if (std::ranges::find(silent, k) == silent.end()) point.settled = point.textbook;
        trend->points.push_back(point);
    }
    TrendLine line;
    line.name = "Set A";
    line.trend = trend;
    line.present = 100;
    return line;
}

const TrendRange whole{1, 1e4, false};
const TrendFigure rate = trendFigures({}).front();

TEST(TrendCurve, IsExactForPowersBetweenPointsOfEqualRatios) {
    const TrendLine line = hyperbola({});
    for (const double value : {1.0, 3.0, 55.0, 1e4})
        EXPECT_NEAR(*figureAt(line, rate, whole, value) / (1000 / value), 1, 1e-12);
    EXPECT_FALSE(figureAt(line, rate, whole, 2e4));
    EXPECT_FALSE(figureAt(line, rate, whole, 0.5));
}

TEST(TrendCurve, TakesWhatWasSettledAtAValueItself) {
    TrendLine line = hyperbola({});
    study::TrendPoint own;
    own.value = 50;
    own.settled = study::Phase{0.04, 0.06};
    line.exact = {own};
    EXPECT_NEAR(*figureAt(line, rate, whole, 50), 10, 1e-12);
    line.exact[0].settled.reset();
    EXPECT_FALSE(figureAt(line, rate, whole, 50));
}

TEST(TrendCurve, HasGapsHalfWayToTheNeighboursAndToTheEnds) {
    const auto gaps = gapsOf(hyperbola({0, 2, 3}), whole);
    ASSERT_EQ(gaps.size(), 2u);
    EXPECT_EQ(gaps[0].from, 1);
    EXPECT_NEAR(gaps[0].to, std::sqrt(10.0), 1e-9);
    EXPECT_NEAR(gaps[1].from, std::sqrt(1000.0), 1e-9);
    EXPECT_NEAR(gaps[1].to, std::sqrt(1e7), 1e-9);
    EXPECT_FALSE(figureAt(hyperbola({2}), rate, whole, 50));
    EXPECT_TRUE(gapsOf(hyperbola({}), whole).empty());
}

TEST(TrendCurve, IsSaidInWordsWithItsGapsAndTheTextbook) {
    TrendPicture picture{resistance(), whole, rate, {hyperbola({4})}};
    const QString words = trendWords(picture);
    EXPECT_TRUE(words.startsWith("R1 resistance 100\u00A0Ω: 10.00\u00A0Hz")) << words.toStdString();
    EXPECT_TRUE(words.contains("Does not blink above about 3.16\u00A0kΩ.")) << words.toStdString();
    picture.lines[0].present = 1e6;
    EXPECT_TRUE(trendWords(picture).contains("outside this range"));
    picture.lines[0].present = 9e3;
    EXPECT_TRUE(trendWords(picture).contains("9\u00A0kΩ: does not blink"));
}

TEST(TrendRange, IsTwoDecadesAroundAResistanceAndTheFallOfABattery) {
    EXPECT_EQ(usualRange(resistance(), 68e3, 4.5), (TrendRange{6.8e3, 68e4, false}));
    TrendValue supply = resistance();
    supply.kind = circuit::PartKind::supply;
    supply.which.key = "voltage";
    EXPECT_EQ(usualRange(supply, 9, 4.5), (TrendRange{2.25, 9, true}));
    EXPECT_EQ(usualRange(supply, 3, 2), (TrendRange{1, 3, true}));
    TrendValue setting = resistance();
    setting.which.key = "setting";
    EXPECT_EQ(usualRange(setting, 0.5, 4.5), (TrendRange{0, 1, true}));
    EXPECT_EQ(usualRange(resistance(), 0, 4.5), (TrendRange{0, 1, true}));
}

TEST(TrendRange, EndsAreReadInEngineeringTextAndSettingsInPerCent) {
    EXPECT_NEAR(resistance().read("4k7").value(), 4700, 1e-9);
    EXPECT_FALSE(resistance().read("0"));
    TrendValue setting = resistance();
    setting.which.key = "setting";
    setting.unit = units::Unit::none;
    setting.range = {0, 1};
    EXPECT_NEAR(setting.read("25 %").value(), 0.25, 1e-12);
    EXPECT_FALSE(setting.read("120"));
}

TEST(TrendTable, HasALineForEachPointAndEmptyCellsInGaps) {
    const QString table = trendTable({resistance(), whole, rate, {hyperbola({4})}});
    const QStringList rows = table.split('\n');
    EXPECT_EQ(rows[0], "R1 resistance [Ω]\tFlash rate [Hz] Set A\tTextbook Set A");
    EXPECT_EQ(rows[1], "1\t1000\t1000");
    EXPECT_EQ(rows[5], "10000\t\t0.1");
}

} // namespace
