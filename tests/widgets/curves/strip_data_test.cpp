#include "widgets/curves/strip_data.h"

#include "tests/widgets/formula_curves.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <random>

using namespace blinkwright;
using namespace blinkwright::widgets;

namespace {

struct Trace {
    std::vector<double> time_s, value;
};

Trace noise(int points) {
    std::mt19937 random(7);
    std::normal_distribution<double> step;
    Trace t;
    double v = 0;
    for (int k = 0; k < points; ++k) {
        t.time_s.push_back(k * 1e-3);
        t.value.push_back(v += step(random));
    }
    return t;
}

/// Straight line through the points, as the plot draws them.
double drawnAt(const StripPoints& points, double time_s) {
    const auto after = std::lower_bound(points.begin(), points.end(), time_s,
                                        [](const QCPGraphData& p, double t) { return p.key < t; });
    if (after == points.begin()) return after->value;
    const auto before = std::prev(after);
    if (after == points.end()) return before->value;
    if (after->key == before->key) return after->value;
    return before->value +
           (after->value - before->value) * (time_s - before->key) / (after->key - before->key);
}

TEST(Thinning, KeepsTheSmallestAndTheLargestOfEveryPixelColumn) {
    const Trace t = noise(200'000);
    const Span visible{20, 150};
    const int columns = 500;
    const StripPoints out = thinned(t.time_s, t.value, visible, columns, 0);
    EXPECT_LE(out.size(), 4 * columns + 2);

    std::map<int, std::pair<double, double>> all, kept;
    const auto note = [&](auto& extremes, double time, double value) {
        if (time < visible.begin || time >= visible.end) return;
        const int column =
            static_cast<int>(std::floor((time - visible.begin) / (visible.length() / columns)));
        const auto [at, fresh] = extremes.try_emplace(column, value, value);
        if (!fresh) at->second = {std::min(at->second.first, value), std::max(at->second.second, value)};
    };
    for (std::size_t k = 0; k < t.time_s.size(); ++k) note(all, t.time_s[k], t.value[k]);
    for (const QCPGraphData& p : out) note(kept, p.key, p.value);
    EXPECT_EQ(all, kept);
}

TEST(Thinning, SendsASquareWaveAsItsEdgesOnly) {
    const auto curves = test::formulaCurves({.cycles = 6, .pointsAPhase = 500});
    const StripPoints out =
        thinned(curves->time_s, curves->output_V, {0, curves->time_s.back()}, 1200, 0.001);
    EXPECT_EQ(out.size(), 24); // twelve level stretches, two ends each
    for (int k = 1; k + 1 < out.size(); k += 2) {
        EXPECT_EQ(out[k].key, out[k + 1].key) << k;
        EXPECT_NE(out[k].value, out[k + 1].value) << k;
    }
}

TEST(Thinning, StaysWithinItsToleranceOnExponentials) {
    const auto curves = test::formulaCurves({.cycles = 2, .pointsAPhase = 150});
    const double tolerance = 0.004;
    // More columns than points: all that is left out is left out by the tolerance.
    const StripPoints out =
        thinned(curves->time_s, curves->capacitor_V, {0, curves->time_s.back()}, 100'000, tolerance);
    EXPECT_LT(out.size(), static_cast<qsizetype>(curves->time_s.size()) / 3);
    for (std::size_t k = 0; k < curves->time_s.size(); ++k)
        EXPECT_NEAR(drawnAt(out, curves->time_s[k]), curves->capacitor_V[k], tolerance * 1.001)
            << curves->time_s[k];
}

TEST(Thinning, ReachesBeyondBothEdgesOfTheVisibleSpan) {
    const Trace t = noise(1000);
    const StripPoints out = thinned(t.time_s, t.value, {0.1005, 0.2005}, 4000, 0);
    EXPECT_DOUBLE_EQ(out.first().key, 0.1);
    EXPECT_DOUBLE_EQ(out.last().key, 0.201);
}

TEST(Thinning, DrawsNothingOfNothing) {
    EXPECT_TRUE(thinned({}, {}, {0, 1}, 100, 0).isEmpty());
    EXPECT_TRUE(thinned({0, 1}, {0, 1}, {1, 1}, 100, 0).isEmpty());
}

TEST(StripRange, RoundsItsTopUpToAFewSteps) {
    EXPECT_DOUBLE_EQ(roundedTop(4.6), 5);
    EXPECT_DOUBLE_EQ(roundedTop(5.0), 5);
    EXPECT_DOUBLE_EQ(roundedTop(5.01), 6);
    EXPECT_DOUBLE_EQ(roundedTop(0.0105), 0.012);
    EXPECT_DOUBLE_EQ(roundedTop(9.1e-6), 1e-5);
    EXPECT_EQ(roundedTop(0), 0);
}

TEST(StripRange, CoversCurvesAndEchoTogether) {
    const auto now = test::formulaCurves({.supply_V = 5});
    const auto before = test::formulaCurves({.supply_V = 9});
    const StripPicture p = stripPicture(now.get(), before.get(), {0, 5}, 800, {200, 200, 200});
    EXPECT_DOUBLE_EQ(p.ranges[0].end, 8); // 9 V - 1.4 V, of the echo
    EXPECT_DOUBLE_EQ(stripPicture(now.get(), nullptr, {0, 5}, 800, {200, 200, 200}).ranges[0].end, 4);
}

TEST(StripRange, OpensANegativeHalfForACurrentButNotForLeakage) {
    auto curves = test::formulaCurves({});
    EXPECT_EQ(stripPicture(curves.get(), nullptr, {0, 5}, 800, {200, 200, 200}).ranges[2].begin, 0);
    curves->lamps[0].current_A[3] = -0.002;
    EXPECT_DOUBLE_EQ(stripPicture(curves.get(), nullptr, {0, 5}, 800, {200, 200, 200}).ranges[2].begin,
                     -0.002);
}

TEST(StripEcho, FindsItsTwinByPartAndNotByOrder) {
    const auto now = test::formulaCurves({.pair = true});
    auto before = test::formulaCurves({.pair = true});
    std::swap(before->lamps[0], before->lamps[1]);
    before->lamps.push_back({{9}, "D9", "blue", std::vector<double>(before->time_s.size(), 0.0)});
    const StripPicture p = stripPicture(now.get(), before.get(), {0, 5}, 800, {200, 200, 200});
    EXPECT_EQ(p.echo.lamps[0].twin, 1);
    EXPECT_EQ(p.echo.lamps[1].twin, 0);
    EXPECT_EQ(p.echo.lamps[2].twin, -1);
}

TEST(StripEcho, IsTakenOverFromThePictureBeforeWhileTheRangesStay) {
    const auto echo = test::formulaCurves({.supply_V = 6});
    const auto cut = [&](double supply_V, const StripPicture* before) {
        const auto now = test::formulaCurves({.supply_V = supply_V, .high_s = 0.6});
        return stripPicture(now.get(), echo.get(), {0, 5}, 800, {200, 200, 200}, before);
    };
    const StripPicture first = cut(5.9, nullptr);
    const StripPicture second = cut(5.8, &first);
    EXPECT_TRUE(second.echo.output.isSharedWith(first.echo.output));
    EXPECT_TRUE(second.echo.lamps[0].points.isSharedWith(first.echo.lamps[0].points));
    EXPECT_FALSE(second.curves.output.isSharedWith(first.curves.output));
    EXPECT_FALSE(cut(60, &first).echo.output.isSharedWith(first.echo.output)) << "coarser in a longer range";
}

TEST(StripPicture, HoldsTheSecondSetsLevelsOnlyWhereTheyDiffer) {
    const auto a = test::formulaCurves({}), same = test::formulaCurves({.high_s = 0.2}),
               other = test::formulaCurves({.supply_V = 9});
    const auto picture = [&](const engine::Curves& second) {
        return stripPicture({a.get(), nullptr, &second, false}, {0, 6}, 800, {200, 200, 200});
    };
    EXPECT_FALSE(picture(*same).second.output.isEmpty());
    EXPECT_TRUE(picture(*same).second.upperLevel.isEmpty());
    EXPECT_FALSE(picture(*other).second.upperLevel.isEmpty());
    EXPECT_GE(picture(*other).ranges[0].end, 9 - 1.4) << "the strip has room for both";
}

TEST(StripPicture, FindsTheTwinsOfAnEchoAmongTheCurvesThatItIsOf) {
    const auto a = test::formulaCurves({}), b = test::formulaCurves({.pair = true});
    const auto twin = [&](bool ofSecond) {
        return stripPicture({a.get(), b.get(), b.get(), ofSecond}, {0, 6}, 800, {200, 200, 200})
            .echo.lamps.at(1)
            .twin;
    };
    EXPECT_EQ(twin(true), 1);
    EXPECT_EQ(twin(false), -1);
}

} // namespace
