#include "core/study/trend.h"

#include "core/io/study_reports.h"
#include "core/study/study.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::study {
namespace {

using circuit::PartSet;

const Workbench& pair() {
    static const Workbench bench = tests::lampPair({}, 220, 1e-3);
    return bench;
}

Trend trendOf(const Workbench& bench, const TrendRequest& request) {
    auto result = trend(bench.circuit, PartSet::A, request);
    if (!result) throw std::logic_error(result.fault().message());
    return std::move(result).value();
}

TEST(Trend, OfAnIdealAstableIsTheLnTwoLaw) {
    const Trend t = trendOf(tests::astable({}, true),
                            {.ref = "R2", .key = "resistance", .from = 1e3, .to = 1e6, .points = 7});
    for (const TrendPoint& p : t.points) {
        ASSERT_TRUE(p.settled);
        EXPECT_NEAR(p.settled->high_s, std::log(2) * (10e3 + p.value) * 1e-5, 1e-5 * p.settled->high_s);
        EXPECT_NEAR(p.settled->low_s, std::log(2) * p.value * 1e-5, 1e-5 * p.settled->low_s);
        EXPECT_NEAR(p.textbook->rate_Hz(), 1 / (std::log(2) * (10e3 + 2 * p.value) * 1e-5), 1e-9);
    }
}

TEST(Trend, StepsAreLogarithmicUnlessEven) {
    TrendRequest request{.ref = "C1", .key = "capacitance", .from = 1e-6, .to = 1e-4, .points = 5};
    const Trend log = trendOf(pair(), request);
    for (std::size_t k = 0; k < 5; ++k)
        EXPECT_NEAR(log.points[k].value, std::pow(10, -6 + 0.5 * static_cast<double>(k)), 1e-12);
    request.even = true;
    const Trend even = trendOf(pair(), request);
    EXPECT_EQ(even.points.back().value, 1e-4);
    EXPECT_NEAR(even.points[1].value, 1e-6 + 99e-6 / 4, 1e-18);
}

TEST(Trend, EachPointIsTheStudyOfThatBoard) {
    // A point starts from its neighbour; the study settles from power-on. Both are good to 1e-6.
    const Trend t =
        trendOf(pair(), {.ref = "C3", .key = "capacitance", .from = 1e-5, .to = 1e-2, .points = 6});
    for (const TrendPoint& p : t.points) {
        Workbench bench = pair();
        bench.set("C3.capacitance=" + units::shortest(p.value));
        const Readings r = study(bench.circuit, PartSet::A, {}).value().readings;
        EXPECT_NEAR(p.settled->period_s() / r.timers[0].settled->period_s(), 1, 1e-5);
        ASSERT_EQ(p.lamps.size(), 2u);
        for (std::size_t l = 0; l < 2; ++l) {
            EXPECT_NEAR(p.lamps[l].mean_A / *r.lamps[l].mean_A, 1, 1e-4) << p.value;
            EXPECT_NEAR(p.lamps[l].peak_A / *r.lamps[l].peak_A, 1, 1e-4) << p.value;
        }
        EXPECT_NEAR(*p.supplyMean_A / *r.supply->mean_A, 1, 1e-4);
    }
}

TEST(Trend, IsTheSameForAnyNumberOfThreads) {
    TrendRequest request{
        .ref = "R2", .key = "resistance", .from = 1e4, .to = 1e5, .points = 12, .threads = 1};
    const Trend one = trendOf(pair(), request);
    request.threads = 3;
    const Trend three = trendOf(pair(), request);
    for (std::size_t k = 0; k < 12; ++k)
        EXPECT_EQ(one.points[k].settled->period_s(), three.points[k].settled->period_s());
}

TEST(Trend, CellsAreEmptyWhereItDoesNotBlink) {
    // 300 nA of threshold current through 100 Mohm: more than the third of the supply that is left (Ohm's
    // law).
    Workbench bench = tests::astableWithLamp({}, 470);
    bench.set("U1.device.threshold_current=300n");
    const Trend t = trendOf(bench, {.ref = "R1", .key = "resistance", .from = 1e4, .to = 1e8, .points = 2});
    EXPECT_TRUE(t.points[0].settled);
    EXPECT_FALSE(t.points[1].settled);
    const std::string csv = io::trendCsv(t);
    EXPECT_TRUE(
        csv.starts_with("R1.resistance,period [s],rate [Hz],high [s],low [s],duty,D1 peak [A],D1 mean "
                        "[A],supply mean [A],textbook rate [Hz]\r\n10000,"))
        << csv;
    // The textbook's 1/(ln 2 (R1 + 2 R2) C) is there all the same.
    EXPECT_NE(csv.find("\r\n1e+08,,,,,,,,,0.00144"), std::string::npos) << csv;
}

TEST(Trend, OfTwoSetsStandsSideBySideInATable) {
    const TrendRequest request{.ref = "R2", .key = "resistance", .from = 1e4, .to = 1e5, .points = 2};
    Workbench other = pair();
    other.set("R1.resistance=20k");
    const Trend one = trendOf(pair(), request), two = trendOf(other, request);
    const std::string csv = io::trendCsv(one, two, "Set B");
    EXPECT_TRUE(csv.starts_with("R2.resistance,period [s],rate [Hz],")) << csv;
    EXPECT_NE(csv.find(",textbook rate [Hz],Set B period [s],Set B rate [Hz],"), std::string::npos) << csv;
    const std::string row = csv.substr(csv.find("\r\n") + 2);
    EXPECT_TRUE(row.starts_with("10000," + units::shortest(one.points[0].settled->period_s()) + ","));
    EXPECT_NE(row.find("," + units::shortest(two.points[0].settled->period_s()) + ","), std::string::npos);
}

TEST(Trend, SinglePointsAreThoseOfTheRange) {
    TrendRequest request{.ref = "R2", .key = "resistance", .from = 1e4, .to = 1e5, .points = 3};
    const Trend t = trendOf(pair(), request);
    const std::vector<double> values{1e5, 1e4};
    const auto single = trendAt(pair().circuit, PartSet::A, request, values).value();
    ASSERT_EQ(single.size(), 2u);
    EXPECT_NEAR(single[0].settled->period_s() / t.points[2].settled->period_s(), 1, 1e-5);
    EXPECT_NEAR(single[1].settled->period_s() / t.points[0].settled->period_s(), 1, 1e-5);
    EXPECT_EQ(single[1].value, 1e4);
    const std::vector<double> bad{-1};
    EXPECT_FALSE(trendAt(pair().circuit, PartSet::A, request, bad));
}

TEST(Trend, TiedValuesMoveTogether) {
    // With R1 = R2 = R: T = ln 2 x 3 R C.
    Workbench bench = tests::astable({}, true);
    bench.circuit.ties = {{{bench.id("R1"), "resistance"}, {bench.id("R2"), "resistance"}}};
    const Trend t = trendOf(bench, {.ref = "R2", .key = "resistance", .from = 1e4, .to = 1e5, .points = 2});
    for (const TrendPoint& p : t.points)
        EXPECT_NEAR(p.settled->period_s() / (std::log(2) * 3 * p.value * 1e-5), 1, 1e-5);
}

TEST(Trend, LitSharesAreThoseOfTheStudy) {
    const Trend t =
        trendOf(pair(), {.ref = "R2", .key = "resistance", .from = 68e3, .to = 70e3, .points = 2});
    Workbench bench = pair();
    bench.set("R2.resistance=68k");
    const Readings r = study(bench.circuit, PartSet::A, {}).value().readings;
    for (std::size_t l = 0; l < 2; ++l)
        EXPECT_NEAR(t.points[0].lamps[l].litShare, *r.lamps[l].litTime_s / r.timers[0].settled->period_s(),
                    1e-4);
}

TEST(Trend, RefusesWhatCannotMove) {
    const auto refused = [](const TrendRequest& request) {
        const auto result = trend(pair().circuit, PartSet::A, request);
        return result ? std::string() : result.fault().message();
    };
    EXPECT_EQ(refused({.ref = "R99", .key = "resistance", .from = 1, .to = 2}),
              "R99.resistance: there is no part R99");
    EXPECT_NE(refused({.ref = "R1", .key = "resistance", .from = -1, .to = 2, .even = true}), "");
    EXPECT_NE(refused({.ref = "R1", .key = "resistance", .from = 0, .to = 2}), "");
    EXPECT_NE(refused({.ref = "R1", .key = "resistance", .from = 1, .to = 2, .points = 1}), "");
    EXPECT_NE(refused({.ref = "D1", .key = "colour", .from = 1, .to = 2}), "");
}

} // namespace
} // namespace blinkwright::study
