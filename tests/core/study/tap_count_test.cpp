// A count by tapping: the line through the taps, and whether its uncertainty is what happens.
#include "core/study/tap_count.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

namespace blinkwright::study {
namespace {

std::vector<double> taps(int count, double period_s, double scatter_s, std::mt19937& random) {
    std::normal_distribution<double> noise(0, scatter_s > 0 ? scatter_s : 1);
    std::vector<double> times;
    for (int k = 0; k < count; ++k) times.push_back(3.7 + k * period_s + (scatter_s > 0 ? noise(random) : 0));
    return times;
}

TEST(TapCount, EvenTapsGiveTheirBeatAndOneCycleLessThanTaps) {
    std::mt19937 random(1);
    const auto c = tapCount(taps(21, 0.98, 0, random));
    ASSERT_TRUE(c);
    EXPECT_EQ(c->count.flashes, 20);
    EXPECT_NEAR(c->count.time_s.value, 20 * 0.98, 1e-9);
    EXPECT_NEAR(c->count.time_s.uncertainty, 0, 1e-9);
    EXPECT_NEAR(c->rate_Hz, 1 / 0.98, 1e-9);
    EXPECT_FALSE(c->gapAfter);
}

// By hand: through (0, 0), (1, 1.1), (2, 1.9), (3, 3.1), (4, 3.9) the slope is sum((k-2) t)/10 = 0.98, the
// mean of the times is 2, the distances are -0.04, 0.08, -0.1, 0.12, -0.06, their squares sum to 0.036; so
// s = sqrt(0.036/3) and u of the slope s/sqrt(10) (JCGM 100:2008, H.3.2).
TEST(TapCount, FiveUnevenTapsByHand) {
    const auto c = tapCount({0, 1.1, 1.9, 3.1, 3.9});
    ASSERT_TRUE(c);
    EXPECT_NEAR(c->count.time_s.value, 4 * 0.98, 1e-12);
    ASSERT_TRUE(c->scatter_s);
    EXPECT_NEAR(*c->scatter_s, std::sqrt(0.036 / 3), 1e-12);
    EXPECT_NEAR(c->count.time_s.uncertainty, 4 * std::sqrt(0.036 / 3 / 10), 1e-12);
}

// What is claimed must be what happens: over 2000 counts of 20 taps, the mean squared error of the period in
// units of the stated uncertainty is that of Student's t with 18 degrees of freedom, 18/16 (its variance).
// Three standard deviations of that mean are some 0.12.
TEST(TapCount, TheStatedUncertaintyIsWhatHappens) {
    std::mt19937 random(7);
    double squares = 0;
    constexpr int counts = 2000;
    for (int n = 0; n < counts; ++n) {
        const auto c = tapCount(taps(20, 0.8, 0.04, random));
        const double off = (c->count.time_s.value - 19 * 0.8) / c->count.time_s.uncertainty;
        squares += off * off;
    }
    EXPECT_NEAR(squares / counts, 18.0 / 16, 0.12);
}

TEST(TapCount, WithFewTapsThePressItselfCounts) {
    EXPECT_FALSE(tapCount({}));
    EXPECT_FALSE(tapCount({1.0}));
    const auto two = tapCount({1.0, 2.0});
    ASSERT_TRUE(two);
    EXPECT_EQ(two->count.flashes, 1);
    EXPECT_FALSE(two->scatter_s);
    // Start and stop, each known to pressUncertainty_s.
    EXPECT_NEAR(two->count.time_s.uncertainty, startAndStop(pressUncertainty_s), 1e-12);
    // Four taps that happen to be even do not make the hand exact.
    const auto four = tapCount({0, 1, 2, 3});
    EXPECT_NEAR(four->count.time_s.uncertainty, 3 * pressUncertainty_s / std::sqrt(5.0), 1e-12);
}

TEST(TapCount, AFlashThatWentByIsTold) {
    const auto c = tapCount({0, 1, 2, 3, 5, 6, 7});
    ASSERT_TRUE(c && c->gapAfter);
    EXPECT_EQ(*c->gapAfter, 3);
    EXPECT_FALSE(tapCount({0, 1, 1.9, 3.1, 4, 5})->gapAfter);
}

TEST(TapCount, TimesThatDoNotAscendAreNoCount) {
    EXPECT_FALSE(tapCount({0, 1, 1}));
    EXPECT_FALSE(tapCount({0, 2, 1}));
}

} // namespace
} // namespace blinkwright::study
