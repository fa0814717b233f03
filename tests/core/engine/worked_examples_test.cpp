// Published worked examples of the plain astable, run with an ideal timer: TI NE555 (SLFS022I,
// section 8.3.2), tH = ln 2 (R1+R2) C, tL = ln 2 R2 C. Results to the figures printed here are by the exact
// ln 2, not by the rounded 1.44, unless it is said otherwise.
#include "tests/case_names.h"
#include "tests/core/engine/proof_support.h"

#include <gtest/gtest.h>

#include <numbers>

namespace blinkwright::engine {
namespace {

using namespace proofs;

struct Example {
    const char* source;
    double r1_ohm, r2_ohm, c_farad;
    double high_s, low_s, rate_Hz, percent;
};

class WorkedExample : public testing::TestWithParam<Example> {};

TEST_P(WorkedExample, ComesOutAsPrinted) {
    const auto& row = GetParam();
    const HighLow phases = laterPhases(
        tests::astable({.r1_ohm = row.r1_ohm, .r2_ohm = row.r2_ohm, .c_farad = row.c_farad}, true), 1e-7);
    using std::numbers::ln2;
    EXPECT_NEAR(phases.high_s / (ln2 * (row.r1_ohm + row.r2_ohm) * row.c_farad), 1, 1e-6);
    EXPECT_NEAR(phases.low_s / (ln2 * row.r2_ohm * row.c_farad), 1,
                1.5e-6); // 1 milliohm of ESR beside 1 kohm
    // Half a unit of the last figure printed, four of them.
    EXPECT_NEAR(phases.high_s / row.high_s, 1, 5e-4);
    EXPECT_NEAR(phases.low_s / row.low_s, 1, 5e-4);
    EXPECT_NEAR(1 / phases.period_s() / row.rate_Hz, 1, 2e-4);
    EXPECT_NEAR(100 * phases.duty(), row.percent, 0.006);
    // The printed constant 1.44 is 1/ln 2 = 1.442695 cut to three figures: 0.19 % low.
    EXPECT_NEAR(1.44 / ((row.r1_ohm + 2 * row.r2_ohm) * row.c_farad) * phases.period_s(), 0.9981, 1e-4);
}

INSTANTIATE_TEST_SUITE_P(
    Printed, WorkedExample,
    testing::Values(
        Example{"TI SLFS022I Fig 13", 5e3, 3e3, 0.15e-6, 831.8e-6, 311.9e-6, 874.4, 72.73},
        // Printed by 1.44: 5.64 kHz and 59.5 %.
        Example{"Floyd Digital Fundamentals Example 7 14", 2.2e3, 4.7e3, 0.022e-6, 105.2e-6, 71.67e-6, 5653,
                59.48},
        // The sheet has the figure of 4.8 kHz at 12 V; the values are inferred from it.
        Example{"LMC555 SNAS558J test circuit", 1e3, 1e3, 0.1e-6, 138.6e-6, 69.31e-6, 4809, 66.67},
        Example{"memory about 1 Hz at 50 percent", 10e3, 150e3, 4.7e-6, 521.3e-3, 488.7e-3, 0.9902, 51.61},
        Example{"memory common textbook case", 1e3, 2e3, 10e-6, 20.79e-3, 13.86e-3, 28.85, 60.0},
        Example{"memory textbook style", 6.8e3, 3.3e3, 0.1e-6, 700.1e-6, 228.7e-6, 1076.6, 75.37},
        Example{"worked out by hand", 10e3, 68e3, 10e-6, 540.7e-3, 471.3e-3, 0.98815, 53.42},
        Example{"memory turn signal rate", 1e3, 47e3, 10e-6, 332.7e-3, 325.8e-3, 1.5186, 50.53}),
    [](const auto& row) { return tests::caseName(row.param.source); });

TEST(WorkedExample, OfTheHighestRateIsFarFromItsFormula) {
    // TI TLC555, SLFS043C: 470 ohm, 200 ohm and 200 pF make 2.1 MHz typical, where the formula says 8.3 MHz.
    // With the CMOS sheet's delay of 0.1 us (its typical pulse) the engine must be under half of the formula
    // too.
    const auto bench = tests::astable(
        {.supply_V = 5, .r1_ohm = 470, .r2_ohm = 200, .c_farad = 200e-12, .family = "cmos"}, false);
    const double formula = 1 / (std::log(2.0) * 870 * 200e-12);
    EXPECT_NEAR(formula, 8.3e6, 0.05e6);
    const double rate = 1 / laterPhases(bench).period_s();
    EXPECT_LT(rate, 0.5 * formula);
    EXPECT_GT(rate, 1e6);
}

} // namespace
} // namespace blinkwright::engine
