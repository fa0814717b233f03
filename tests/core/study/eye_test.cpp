#include "core/study/eye.h"
#include "core/study/flash_light.h"
#include "tests/core/study/findings_support.h"

#include "core/study/study.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::study {
namespace {

// Blondel and Rey: Ie / I0 = t / (t + a) of a square flash; with a = 0.2 s the figures of the law, as given
// in IES LS-1, definition 11.1.10.1.
TEST(FlashLight, OfASquareFlashFollowsBlondelAndRey) {
    const double lengths_s[] = {0.010, 0.050, 0.100, 0.250, 0.300, 0.500, 1.000};
    const double expected[] = {0.0476, 0.200, 0.333, 0.556, 0.600, 0.714, 0.833};
    for (std::size_t k = 0; k < std::size(lengths_s); ++k) {
        FlashLight light;
        light.add(lengths_s[k], 0.012);
        light.add(2, 0);
        EXPECT_NEAR(light.effective_A(0.2) / 0.012, expected[k], 0.0005) << lengths_s[k];
    }
}

/// The five Lobatto nodes of a step [begin, begin + length] of a curve.
template <class Curve>
std::array<double, 5> nodesOf(Curve curve, double begin_s, double length_s) {
    constexpr std::array<double, 5> at = {0, 0.17267316464601143, 0.5, 0.82732683535398857, 1};
    std::array<double, 5> values{};
    for (std::size_t k = 0; k < 5; ++k) values[k] = curve(begin_s + at[k] * length_s);
    return values;
}

// An exponential flash I0 exp(-t / tau): with x = I / I0 the condition reads 1 - x + x ln x = (a / tau) x.
TEST(FlashLight, OfADecayingFlashMeetsTheConditionOfTheGeneralLaw) {
    const double tau_s = 0.33, a_s = 0.2;
    FlashLight light;
    const auto curve = [&](double t) { return 0.014 * std::exp(-t / tau_s); };
    for (int k = 0; k < 10; ++k) light.addStep(0.2, nodesOf(curve, 0.2 * k, 0.2));
    const double x = light.effective_A(a_s) / 0.014;
    EXPECT_NEAR((1 - x + x * std::log(x)) / (a_s / tau_s * x), 1, 2e-4);
}

TEST(FlashLight, AFlashAcrossTheEndsOfThePeriodIsOne) {
    FlashLight whole, cut;
    whole.add(0.3, 0.01);
    whole.add(0.7, 0);
    cut.add(0.1, 0.01);
    cut.add(0.7, 0);
    cut.add(0.2, 0.01);
    EXPECT_NEAR(cut.effective_A(0.2), whole.effective_A(0.2), 2e-8);
}

TEST(FlashLight, OfTwoFlashesTheStrongerCountsAlone) {
    FlashLight one, both;
    one.add(0.3, 0.01);
    one.add(1, 0);
    both.add(0.3, 0.01);
    both.add(0.5, 0);
    both.add(0.1, 0.01);
    both.add(0.4, 0);
    EXPECT_NEAR(both.effective_A(0.2), one.effective_A(0.2), 2e-8);
}

// IHO Chart No. 1, section P, and IALA R0110: quick 50 to 79 a minute, very quick 80 to 159, ultra quick from
// 160; below that flashing, long-flashing from 2 s, isophase, occulting.
TEST(Eye, NamesTheRhythmAsChartsDo) {
    EXPECT_EQ(rhythmOf(1, 0), Rhythm::fixed);
    EXPECT_EQ(rhythmOf(0.5, 4.5), Rhythm::flashing);
    EXPECT_EQ(rhythmOf(2, 8), Rhythm::longFlashing);
    EXPECT_EQ(rhythmOf(2, 2), Rhythm::isophase);
    EXPECT_EQ(rhythmOf(3, 1), Rhythm::occulting);
    EXPECT_EQ(rhythmOf(0.6, 0.6), Rhythm::quick); // 50 a minute
    EXPECT_EQ(rhythmOf(0.5, 60.0 / 79 - 0.5), Rhythm::quick);
    EXPECT_EQ(rhythmOf(0.3, 0.45), Rhythm::veryQuick);   // 80
    EXPECT_EQ(rhythmOf(0.2, 0.175), Rhythm::ultraQuick); // 160
    EXPECT_EQ(rhythmOf(0.05, 0.1), Rhythm::none);        // 400
    for (int k = 0; k <= static_cast<int>(Rhythm::none); ++k) EXPECT_FALSE(name(Rhythm(k)).empty());
}

const LightUse& use(std::string_view named) {
    for (const LightUse& use : lightUses())
        if (use.name == named) return use;
    throw std::out_of_range(std::string(named));
}

// FMVSS 108 with SAE J945: 60 to 120 a minute. MUTCD 4L.01: 50 to 60, lit 1/2 to 2/3. SI 2005/2559: 60 to
// 240.
TEST(Eye, HoldsUsesAgainstTheirStatedRanges) {
    EXPECT_EQ(fitOf(use("vehicle hazard lamps and direction indicators"), 59 / 60.0, 0.5, false),
              Fit::tooSlow);
    EXPECT_EQ(fitOf(use("vehicle hazard lamps and direction indicators"), 2, 0.5, false), Fit::within);
    EXPECT_EQ(fitOf(use("vehicle hazard lamps and direction indicators"), 121 / 60.0, 0.5, false),
              Fit::tooFast);
    EXPECT_EQ(fitOf(use("cycle lamp"), 4, 0.1, false), Fit::within);
    EXPECT_EQ(fitOf(use("traffic beacon"), 55 / 60.0, 0.45, false), Fit::litTooShort);
    EXPECT_EQ(fitOf(use("traffic beacon"), 55 / 60.0, 2.0 / 3, false), Fit::within);
    EXPECT_EQ(fitOf(use("traffic beacon"), 55 / 60.0, 0.7, false), Fit::litTooLong);
    EXPECT_EQ(fitOf(use("rail crossing"), 50 / 60.0, 0.5, false), Fit::oneLampOnly);
    EXPECT_EQ(fitOf(use("rail crossing"), 50 / 60.0, 0.5, true), Fit::within);
    for (const LightUse& one : lightUses()) EXPECT_FALSE(one.source.empty());
}

std::vector<EyeReading> eyeOf(Workbench& bench) {
    const auto studied = study(bench.circuit, circuit::PartSet::A, {});
    return eyeOf(bench.circuit, circuit::PartSet::A, studied.value().board, studied.value().readings);
}

TEST(Eye, OfASquareLampReadsWhatItsFiguresSay) {
    Workbench bench = sound();
    const auto studied = study(bench.circuit, circuit::PartSet::A, {});
    const Readings& readings = studied.value().readings;
    const auto eyes = eyeOf(bench);
    ASSERT_EQ(eyes.size(), 1u);
    const double lit_s = readings.lamps[0].litTime_s.value();
    EXPECT_EQ(eyes[0].look, Look::separate);
    EXPECT_FALSE(eyes[0].flickers);
    EXPECT_FALSE(eyes[0].turns);
    EXPECT_DOUBLE_EQ(eyes[0].flash_s, lit_s);
    // The lamp to ground carries an even current while it is lit.
    EXPECT_NEAR(eyes[0].effectiveOfPeak.value(), lit_s / (lit_s + blondelRey_s), 2e-3);
    EXPECT_EQ(eyes[0].uses.size(), lightUses().size());
}

TEST(Eye, CandelasNeedTheLampsOwn) {
    Workbench bench = sound();
    EXPECT_FALSE(eyeOf(bench)[0].effective_cd.has_value());
    bench.set("D1.luminous_intensity=0.1").set("D1.test_current=0.01");
    const auto studied = study(bench.circuit, circuit::PartSet::A, {});
    const double effective_A = studied.value().readings.lamps[0].effective_A.value();
    EXPECT_NEAR(eyeOf(bench)[0].effective_cd.value(), 0.1 * effective_A / 0.01, 1e-12);
}

TEST(Eye, FasterAndFasterFlashesFlickerAndThenRunTogether) {
    Workbench bench = sound(); // about one flash a second with 10 µF
    bench.set("C1.capacitance=2e-6");
    EXPECT_EQ(eyeOf(bench)[0].look, Look::separate);
    EXPECT_TRUE(eyeOf(bench)[0].flickers);
    bench.set("C1.capacitance=5e-7");
    EXPECT_EQ(eyeOf(bench)[0].look, Look::flickering);
    EXPECT_TRUE(eyeOf(bench)[0].flickers);
    bench.set("C1.capacitance=1e-7");
    EXPECT_EQ(eyeOf(bench)[0].look, Look::steady);
    EXPECT_FALSE(eyeOf(bench)[0].flickers);
}

TEST(Eye, TwoLampsTakeTurnsOnlyInOppositePhases) {
    Workbench bench = sound();
    bench.part(circuit::PartKind::resistor, "R9", {{"resistance", 680.0}})
        .part(circuit::PartKind::lamp, "D9");
    bench.net("supply", {"D9:anode"}).net("low side", {"D9:cathode", "R9:1"}).net("output", {"R9:2"});
    for (const EyeReading& eye : eyeOf(bench)) EXPECT_TRUE(eye.turns) << eye.ref;
    Workbench alike = sound();
    alike.part(circuit::PartKind::resistor, "R9", {{"resistance", 680.0}})
        .part(circuit::PartKind::lamp, "D9");
    alike.net("output", {"R9:1"}).net("second", {"R9:2", "D9:anode"}).net("ground", {"D9:cathode"});
    for (const EyeReading& eye : eyeOf(alike)) EXPECT_FALSE(eye.turns) << eye.ref;
}

} // namespace
} // namespace blinkwright::study
