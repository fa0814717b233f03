#include "core/study/band.h"

#include "core/study/spread.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace blinkwright::study {
namespace {

using circuit::PartSet;

Band bandOf(const Workbench& bench, const BandRequest& request = {}) {
    auto result = band(bench.circuit, PartSet::A, request);
    if (!result) throw std::logic_error(result.fault().message());
    return std::move(result).value();
}

/// An ideal astable of which the capacitor alone varies.
Workbench onlyTheCapacitorVaries() {
    Workbench bench = tests::astable({}, true);
    bench.set("R1.tolerance=0").set("R2.tolerance=0").set("C1.tolerance=0.2");
    return bench;
}

TEST(Band, OfACapacitorThatVariesIsTheChargingLawAtItsPercentiles) {
    // From a rise the capacitor charges from a third of the supply: v = V (1 - 2/3 e^(-t / ((R1 + R2) C))).
    // It falls with C. C is uniform from 0.8 to 1.2 of its value: percentiles 5 and 95 are 0.82 and 1.18.
    const Workbench bench = onlyTheCapacitorVaries();
    const double supply_V = bench.board().supplies.front().voltage, rc = 78e3 * 1e-5;
    const Band b = bandOf(bench, {.boards = 2000});
    ASSERT_EQ(b.blinking, 2000);
    int compared = 0;
    for (std::size_t k = 0; k < b.time_s.size(); ++k) {
        const double t = b.time_s[k];
        if (t > 0.8 * std::log(2) * rc) break; // the fastest board turns here
        const auto law = [&](double factor) {
            return supply_V * (1 - 2.0 / 3 * std::exp(-t / (rc * factor)));
        };
        EXPECT_NEAR(b.capacitor_V.nominal[k], law(1), 1e-3 * supply_V);
        // Percentiles of 2,000 boards scatter by half of a percentile: 0.002 of C, below 0.1 % of the supply.
        EXPECT_NEAR(b.capacitor_V.p5[k], law(1.18), 3e-3 * supply_V);
        EXPECT_NEAR(b.capacitor_V.p95[k], law(0.82), 3e-3 * supply_V);
        ++compared;
    }
    EXPECT_GT(compared, 30);
}

TEST(Band, HoldsTwoCyclesOfTheNominalBoard) {
    const Band b = bandOf(tests::astable({}, true), {.boards = 20, .points = 101});
    ASSERT_EQ(b.time_s.size(), 101u);
    EXPECT_NEAR(b.time_s.back(), 2 * std::log(2) * 146e3 * 1e-5, 1e-4);
    EXPECT_NEAR(b.capacitor_V.nominal[0], b.capacitor_V.nominal[50], 1e-3);
}

TEST(Band, HasTheCurrentOfEachLamp) {
    const Band b = bandOf(tests::lampPair({}, 220, 1e-3), {.boards = 40});
    ASSERT_EQ(b.lamps.size(), 2u);
    for (const BandCurve& lamp : b.lamps) {
        EXPECT_GT(*std::ranges::max_element(lamp.nominal), 1e-3);
        for (std::size_t k = 0; k < lamp.p5.size(); ++k) EXPECT_LE(lamp.p5[k], lamp.p95[k]);
    }
}

TEST(Band, FromPowerOnTheFirstChargeIsTheChargingLawAtItsPercentiles) {
    // From rest the capacitor charges from 0 V: v = V (1 - e^(-t / ((R1 + R2) C))), up to two thirds of V.
    const Workbench bench = onlyTheCapacitorVaries();
    const double supply_V = bench.board().supplies.front().voltage, rc = 78e3 * 1e-5;
    const double span_s = 3 * rc;
    const Band b = bandOf(bench, {.boards = 2000, .begin = circuit::Begin::powerOn, .span_s = span_s});
    ASSERT_EQ(b.blinking, 2000);
    EXPECT_DOUBLE_EQ(b.time_s.back(), span_s);
    int compared = 0;
    for (std::size_t k = 0; k < b.time_s.size(); ++k) {
        const double t = b.time_s[k];
        if (t > 0.8 * std::log(3) * rc) break; // the fastest board turns here
        const auto law = [&](double factor) { return supply_V * (1 - std::exp(-t / (rc * factor))); };
        EXPECT_NEAR(b.capacitor_V.nominal[k], law(1), 1e-3 * supply_V);
        EXPECT_NEAR(b.capacitor_V.p5[k], law(1.18), 3e-3 * supply_V);
        EXPECT_NEAR(b.capacitor_V.p95[k], law(0.82), 3e-3 * supply_V);
        ++compared;
    }
    EXPECT_GT(compared, 30);
    // The output falls at ln 3 x RC: at ln 3 x 1.18 RC, all but 5 % of the boards have it low.
    const auto at = [&](double t) {
        return static_cast<std::size_t>(std::lround(t / span_s * static_cast<double>(b.time_s.size() - 1)));
    };
    EXPECT_GT(b.output_V.p95[at(std::log(3) * rc * 1.16)], supply_V / 2);
    EXPECT_LT(b.output_V.p95[at(std::log(3) * rc * 1.22)], supply_V / 2);
}

TEST(Band, IsALineWhereNothingVaries) {
    Workbench bench = onlyTheCapacitorVaries();
    bench.set("C1.tolerance=0");
    const Band b = bandOf(bench, {.boards = 5});
    for (std::size_t k = 0; k < b.time_s.size(); ++k)
        EXPECT_NEAR(b.capacitor_V.p95[k], b.capacitor_V.p5[k], 1e-3);
}

TEST(Band, IsTheSameForAnyNumberOfThreadsAndForTheSameSeed) {
    const Workbench bench = tests::astableWithLamp({}, 470);
    const Band one = bandOf(bench, {.boards = 30, .seed = 3, .threads = 1});
    EXPECT_EQ(one.capacitor_V.p5, bandOf(bench, {.boards = 30, .seed = 3, .threads = 3}).capacitor_V.p5);
    EXPECT_NE(one.capacitor_V.p5, bandOf(bench, {.boards = 30, .seed = 4}).capacitor_V.p5);
}

TEST(Band, SaysWhyThereIsNone) {
    Workbench bench = tests::astable({}, true);
    bench.open("U1:2").open("U1:6");
    EXPECT_FALSE(bandOf(bench).reason.empty());
    const std::atomic<bool> cancel = true;
    EXPECT_TRUE(bandOf(tests::astable({}, true), {.cancel = &cancel}).cancelled);
    EXPECT_FALSE(band(bench.circuit, PartSet::A, {.boards = 1}));
    EXPECT_FALSE(band(bench.circuit, PartSet::A, {.points = 1}));
}

} // namespace
} // namespace blinkwright::study
