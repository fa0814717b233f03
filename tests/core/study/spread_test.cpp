#include "core/study/spread.h"

#include "core/devices/board.h"
#include "core/engine/transient.h"
#include "core/io/study_reports.h"
#include "core/study/corner_search.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>

namespace blinkwright::study {
namespace {

using circuit::PartKind;
using circuit::PartSet;

SpreadOutcome spreadOf(const Workbench& bench, const SpreadRequest& request = {}) {
    auto result = spread(bench.circuit, PartSet::A, request);
    if (!result) throw std::logic_error(result.fault().message());
    return std::move(result).value();
}

/// 10 k 5 %, 68 k 5 %, 10 uF 20 %: the defaults.
const Workbench& worked() {
    static const Workbench bench = tests::astable({}, true);
    return bench;
}

double shareOf(const SpreadOutcome& outcome, const std::string& ref) {
    for (const SpreadShare& share : outcome.shares)
        if (share.ref == ref) return share.share;
    return 0;
}

TEST(Draws, HaveTheDistributionsTheyAreNamedAfter) {
    // The largest distance between the drawn and the true distribution is below 1.63/sqrt(n) in 99 of 100
    // draws (Kolmogorov); the numbers are fixed, so that the test is no matter of luck.
    const auto normal = [](double x) {
        const auto phi = [](double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); };
        return (phi(3 * x) - phi(-3.0)) / (phi(3.0) - phi(-3.0));
    };
    const auto triangular = [](double x) {
        return x < 0 ? 0.5 * (1 + x) * (1 + x) : 1 - 0.5 * (1 - x) * (1 - x);
    };
    const auto uniform = [](double x) { return 0.5 * (1 + x); };
    const std::pair<Spread, std::function<double(double)>> kinds[] = {
        {Spread::uniform, uniform}, {Spread::normal, normal}, {Spread::triangular, triangular}};
    for (const auto& [kind, distribution] : kinds) {
        constexpr std::size_t n = 20000;
        std::vector<double> drawn;
        for (std::size_t k = 0; k < n; ++k) drawn.push_back(RandomDraws(11, k).spread(kind, 3));
        std::sort(drawn.begin(), drawn.end());
        double distance = 0;
        for (std::size_t k = 0; k < n; ++k) {
            const double p = distribution(drawn[k]), at = static_cast<double>(k) / n;
            distance = std::max({distance, p - at, at + 1.0 / n - p});
        }
        EXPECT_LT(distance, 1.63 / std::sqrt(static_cast<double>(n))) << static_cast<int>(kind);
        double squares = 0;
        for (const double x : drawn) squares += x * x;
        EXPECT_NEAR(std::sqrt(squares / n), deviationOf(kind), 0.02 * deviationOf(kind));
        EXPECT_LT(std::max(-drawn.front(), drawn.back()), 1);
    }
}

TEST(Spread, OfTheWorkedExampleHasItsDeviationAndItsLimits) {
    // JCGM 100:2008, 5.1.2 with rectangular limits a/sqrt 3 (4.3.7): u(T)/T = 11.86 % for 10 kohm 5 %, 68
    // kohm 5 %, 10 uF 20 %. The limits of the rate are those of 1/((R1 + 2 R2) C) at the ends: -20.6 % and
    // +31.6 %.
    const SpreadOutcome s = spreadOf(worked(), {.boards = 10000});
    const double rate = 1 / (std::log(2) * 146e3 * 1e-5);
    EXPECT_NEAR(s.rate_Hz->nominal / rate, 1, 1e-5);
    // The deviation of a sample of n scatters by 1/sqrt(2 n) and less: three times 0.7 %.
    EXPECT_NEAR(s.period_s->sd / s.period_s->nominal, 0.1186, 0.02 * 0.1186);
    EXPECT_NEAR(s.period_s->mean / s.period_s->nominal, 1, 3 * 0.1186 / std::sqrt(10000.0));
    EXPECT_NEAR(s.rate_Hz->worstLow / rate, 1 / (1.05 * 1.2), 1e-3);
    EXPECT_NEAR(s.rate_Hz->worstHigh / rate, 1 / (0.95 * 0.8), 1e-3);
    EXPECT_EQ(s.blinkingShare, 1);
    EXPECT_TRUE(s.cornersBlink);
    EXPECT_LT(s.rate_Hz->p1, s.rate_Hz->p5);
    EXPECT_LT(s.rate_Hz->p50, s.rate_Hz->p95);
    EXPECT_LT(s.rate_Hz->p95, s.rate_Hz->p99);
}

TEST(Spread, SharesAreTheSquaresOfTheRelativeParts) {
    // f = 1/(ln 2 (R1 + 2 R2) C): relative parts of the variance (R1/S 5 %)^2, (2 R2/S 5 %)^2, (20 %)^2.
    const SpreadOutcome s = spreadOf(worked(), {.boards = 100});
    const double r1 = std::pow(10.0 / 146 * 0.05, 2), r2 = std::pow(136.0 / 146 * 0.05, 2), c = 0.04;
    EXPECT_NEAR(shareOf(s, "R1"), r1 / (r1 + r2 + c), 1e-4);
    EXPECT_NEAR(shareOf(s, "R2"), r2 / (r1 + r2 + c), 1e-4);
    EXPECT_NEAR(shareOf(s, "C1"), c / (r1 + r2 + c), 1e-4);
    EXPECT_NEAR(shareOf(s, "R1") + shareOf(s, "R2") + shareOf(s, "C1"), 1, 1e-12);
}

TEST(Spread, SensitivitiesAreTheDerivativesOfTheLaw) {
    // T = ln 2 (R1 + 2 R2) C and D = (R1 + R2) / (R1 + 2 R2), S = R1 + 2 R2 = 146 kohm. Relative derivatives
    // of T: R1/S, 2 R2/S, 1. Of D: dD/dR1 = R2/S^2 and dD/dR2 = -R1/S^2, times R/D.
    const SpreadOutcome s = spreadOf(worked(), {.boards = 100});
    ASSERT_EQ(s.sensitivities.size(), 3u);
    const double duty = 78.0 / 146, off = 10.0 * 68 / (146.0 * 146) / duty;
    const auto is = [&](const char* ref, double period, double ofDuty, double tolerance) {
        for (const SpreadSensitivity& part : s.sensitivities) {
            if (part.ref != ref) continue;
            EXPECT_NEAR(part.period, period, 1e-4) << ref;
            EXPECT_NEAR(part.duty, ofDuty, 1e-4) << ref;
            EXPECT_NEAR(part.tolerance[0], -tolerance, 1e-12);
            EXPECT_NEAR(part.tolerance[1], tolerance, 1e-12);
            return;
        }
        ADD_FAILURE() << ref;
    };
    // Variance of the duty cycle: R1 and R2 half each, C none.
    const auto shares = varianceShares(s.sensitivities, [](const SpreadSensitivity& p) { return p.duty; });
    EXPECT_NEAR(shares[0] + shares[1], 1, 1e-6);
    EXPECT_NEAR(shares[0], 0.5, 1e-3);
    is("R1", 10.0 / 146, off, 0.05);
    is("R2", 136.0 / 146, -off, 0.05);
    is("C1", 1, 0, 0.2);
}

TEST(Spread, ALampsMeanCurrentFollowsItsResistor) {
    // I = (V - Vf) / R through an ideal output: 1 % more resistance is nearly 1 % less current; the lamp's
    // own resistance and its falling forward voltage take some of it.
    const SpreadOutcome s = spreadOf(tests::astableWithLamp({}, 470), {.boards = 100});
    const std::string lamp = s.lamps.at(0).ref;
    double most = 0;
    for (const SpreadSensitivity& part : s.sensitivities) {
        ASSERT_EQ(part.lamps.size(), 1u);
        if (part.ref == "R3") most = part.lamps[0];
    }
    EXPECT_LT(most, -0.85);
    EXPECT_GT(most, -1);
}

TEST(Spread, PartsOfOneReelVaryAlike) {
    // Fully correlated, the resistors' part of the deviation is 5 %/sqrt 3 = 2.887 %; independent, 2.696 %.
    Workbench bench = worked();
    bench.set("C1.tolerance=0");
    const double apart = spreadOf(bench, {.boards = 20000}).period_s->sd;
    bench.circuit.reels = {{bench.id("R1"), bench.id("R2")}};
    const SpreadOutcome s = spreadOf(bench, {.boards = 20000});
    EXPECT_NEAR(apart / s.period_s->nominal, 0.02696, 0.015 * 0.02696);
    EXPECT_NEAR(s.period_s->sd / s.period_s->nominal, 0.02887, 0.015 * 0.02887);
    EXPECT_LT(s.duty->sd, 1e-6); // the ratio of the resistors stays
    // Covariances with the whole: R1/S and 2 R2/S.
    EXPECT_NEAR(shareOf(s, "R1"), 10.0 / 146, 1e-4);
    EXPECT_NEAR(shareOf(s, "R2"), 136.0 / 146, 1e-4);
}

TEST(Spread, TheWorstCaseContainsEveryBoardAndEveryCorner) {
    Workbench bench = tests::lampPair({}, 220, 1e-3);
    const SpreadOutcome s = spreadOf(bench, {.boards = 4000, .seed = 5});
    const auto contains = [](const SpreadFigure& f, const std::vector<double>& values, double slack) {
        for (const double v : values) {
            EXPECT_GE(v, f.worstLow * (1 - slack));
            EXPECT_LE(v, f.worstHigh * (1 + slack));
        }
    };
    contains(*s.period_s, s.periods_s, 0);
    contains(*s.duty, s.duties, 0);
    ASSERT_EQ(s.lamps.size(), 2u);
    for (const SpreadLamp& lamp : s.lamps) contains(lamp.mean_A, lamp.values_A, 0);

    // All corners, one after the other: brute force. The search finds the outermost.
    const devices::Board board = bench.board();
    const ToleranceBox box(bench.circuit, PartSet::A, board);
    const engine::Settled settled = engine::settle(board, {});
    BoxBoards boards(board, box, settled, 0, nullptr);
    std::vector<Dials> corners;
    for (unsigned bits = 0; bits < (1U << box.dials()); ++bits) {
        Dials dials;
        for (std::size_t d = 0; d < box.dials(); ++d) dials.push_back((bits >> d & 1) != 0 ? 1 : -1);
        corners.push_back(std::move(dials));
    }
    boards.chooseCycles({corners.front(), corners.back()});
    std::vector<double> periods, duties, lamp;
    for (const BoardFigures& f : boards.at(corners, 1e-5)) {
        ASSERT_TRUE(f.blinks);
        periods.push_back(f.period_s);
        duties.push_back(f.duty);
        lamp.push_back(f.lampMean_A[0]);
    }
    contains(*s.period_s, periods, 1e-4);
    contains(*s.duty, duties, 1e-4);
    contains(s.lamps[0].mean_A, lamp, 5e-4);
    const auto [low, high] = std::minmax_element(periods.begin(), periods.end());
    EXPECT_NEAR(s.period_s->worstLow / *low, 1, 1e-4);
    EXPECT_NEAR(s.period_s->worstHigh / *high, 1, 1e-4);
}

TEST(Spread, AFigureThatIsHighestBetweenTheEndsIsFoundThere) {
    // A figure made to be 1 where the period is 1.07 of the nominal one, and less either way.
    const devices::Board board = worked().board();
    const ToleranceBox box(worked().circuit, PartSet::A, board);
    const engine::Settled settled = engine::settle(board, {});
    const BoxBoards boards(board, box, settled, 0, nullptr);
    const double wanted = 1.07 * settled.period_s;
    CornerSearch search(boards, box.dials());
    const auto best = search.from(Dials(box.dials(), 1.0), +1, [&](const BoardFigures& f) {
        return 1 - std::abs(f.period_s / wanted - 1);
    });
    ASSERT_TRUE(best);
    EXPECT_NEAR(best->value, 1, 1e-3);
    EXPECT_TRUE(search.allBlinked());
}

TEST(Spread, IsTheSameForAnyNumberOfThreadsAndForTheSameSeed) {
    const Workbench bench = tests::astableWithLamp({}, 470);
    const SpreadOutcome one = spreadOf(bench, {.boards = 500, .seed = 3, .threads = 1});
    const SpreadOutcome three = spreadOf(bench, {.boards = 500, .seed = 3, .threads = 3});
    EXPECT_EQ(one.periods_s, three.periods_s);
    EXPECT_EQ(one.rate_Hz->worstHigh, three.rate_Hz->worstHigh);
    EXPECT_NE(one.periods_s, spreadOf(bench, {.boards = 500, .seed = 4}).periods_s);
}

TEST(Spread, TolerancesOfTwoUnlikeLimitsAreTakenWhole) {
    Workbench bench = worked();
    bench.set("R1.tolerance=0").set("R2.tolerance=0").set("C1.tolerance=[-0.2, 0.8]");
    const SpreadOutcome s = spreadOf(bench, {.boards = 5000});
    EXPECT_NEAR(s.period_s->worstLow / s.period_s->nominal, 0.8, 1e-4);
    EXPECT_NEAR(s.period_s->worstHigh / s.period_s->nominal, 1.8, 1e-4);
    EXPECT_NEAR(s.period_s->mean / s.period_s->nominal, 1.3, 0.02);
}

TEST(Spread, CountsTheBoardsThatDoNotBlink) {
    // At its level the threshold input draws half of its current (the law of a differential pair): 0.5 uA,
    // which 6 Mohm at a third of 9 V just carry. R1 spreads across that.
    Workbench bench = tests::astable({}, true);
    bench.set("U1.device.threshold_current=1u").set("R1.resistance=5.9M").set("R1.tolerance=0.2");
    bench.set("C1.capacitance=10n");
    const SpreadOutcome s = spreadOf(bench, {.boards = 400});
    EXPECT_NEAR(s.blinkingShare, ((6 - 0.068) / 5.9 - 0.8) / 0.4, 0.08);
    EXPECT_FALSE(s.cornersBlink);
}

TEST(Spread, OfACircuitThatDoesNotBlinkSaysWhy) {
    Workbench bench = worked();
    bench.open("U1:2").open("U1:6");
    const SpreadOutcome s = spreadOf(bench, {.boards = 20});
    EXPECT_FALSE(s.rate_Hz);
    EXPECT_EQ(s.blinkingShare, 0);
    EXPECT_FALSE(s.reason.empty());
}

TEST(Spread, ReportsHoldBoardsFiguresAndSensitivities) {
    const SpreadOutcome s = spreadOf(tests::astableWithLamp({}, 470), {.boards = 50});
    const std::string boards = io::spreadBoardsCsv(s), figures = io::spreadFiguresCsv(s);
    EXPECT_TRUE(boards.starts_with("period [s],rate [Hz],duty,D1 mean [A],D1 lit share\r\n" +
                                   units::shortest(s.periods_s[0]) + "," +
                                   units::shortest(1 / s.periods_s[0]) + ","))
        << boards.substr(0, 80);
    EXPECT_EQ(std::ranges::count(boards, '\n'), 51);
    EXPECT_EQ(std::ranges::count(figures, '\n'), 6); // header, period, rate, duty, two of one lamp
    EXPECT_NE(figures.find("\r\nrate [Hz]," + units::shortest(s.rate_Hz->nominal) + ","), std::string::npos);
    const std::string json = io::spreadJson(s);
    EXPECT_NE(json.find("\"sensitivities\""), std::string::npos);
    for (const SpreadSensitivity& part : s.sensitivities)
        EXPECT_NE(json.find("\"" + part.ref + "\""), std::string::npos) << part.ref;
}

TEST(Spread, CountsItsBoardsAndCanBeCancelled) {
    const Workbench bench = tests::astableWithLamp({}, 470);
    std::atomic<long> done = 0;
    spreadOf(bench, {.boards = 300, .done = &done});
    EXPECT_EQ(done, 300);
    const std::atomic<bool> cancel = true;
    const SpreadOutcome s = spreadOf(bench, {.boards = 300, .cancel = &cancel});
    EXPECT_TRUE(s.cancelled);
    EXPECT_FALSE(spread(bench.circuit, PartSet::A, {.boards = 1}));
}

} // namespace
} // namespace blinkwright::study
