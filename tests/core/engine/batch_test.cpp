#include "core/base/random.h"
#include "core/engine/batch.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright {
namespace {

using engine::BatchOutcome;
using engine::BatchRequest;
using engine::StopReason;
using engine::VariedKind;

/// Every resistor 5 %, every capacitor 20 %, the supply 10 %, the levels 2 %, the lamps' voltages 5 %.
BatchRequest spreadOf(const devices::Board& board, long boards) {
    BatchRequest request;
    request.boards = boards;
    request.threads = 1;
    std::vector<double> tolerances;
    const auto vary = [&](VariedKind kind, std::size_t count, double tolerance) {
        for (std::size_t k = 0; k < count; ++k) {
            request.varied.push_back({kind, static_cast<int>(k)});
            tolerances.push_back(tolerance);
        }
    };
    vary(VariedKind::resistor, board.resistors.size(), 0.05);
    vary(VariedKind::capacitor, board.capacitors.size(), 0.2);
    vary(VariedKind::supply, board.supplies.size(), 0.1);
    vary(VariedKind::levels, board.timers.size(), 0.02);
    vary(VariedKind::forwardVoltage, board.junctions.size(), 0.05);
    request.factors = [tolerances](long k, std::span<double> factors) {
        const RandomDraws draws(7, static_cast<std::uint64_t>(k));
        for (std::size_t v = 0; v < factors.size(); ++v)
            factors[v] = draws.factor(Spread::uniform, tolerances[v], v);
    };
    return request;
}

void expectNear(const BatchOutcome& a, const BatchOutcome& b, double share) {
    ASSERT_EQ(a.boards.size(), b.boards.size());
    for (std::size_t k = 0; k < a.boards.size(); ++k) {
        const auto &x = a.boards[k], &y = b.boards[k];
        EXPECT_EQ(x.reason, y.reason);
        EXPECT_NEAR(x.firstFlash_s, y.firstFlash_s, share * y.firstFlash_s);
        EXPECT_NEAR(x.period_s, y.period_s, share * y.period_s);
        EXPECT_NEAR(x.high_s, y.high_s, share * y.period_s);
        for (std::size_t l = 0; l < y.lamps.size(); ++l) {
            const double charge = std::abs(y.lamps[l].highCharge_C) + std::abs(y.lamps[l].lowCharge_C);
            EXPECT_NEAR(x.lamps[l].highCharge_C, y.lamps[l].highCharge_C, share * charge);
            EXPECT_NEAR(x.lamps[l].lowCharge_C, y.lamps[l].lowCharge_C, share * charge);
        }
    }
}

/// Every width against the scalar engine, run board by board at a hundredth of the accuracy.
void expectLikeTheScalarEngine(const devices::Board& board) {
    BatchRequest request = spreadOf(board, 19);
    request.lanes = 1;
    request.accuracy = 1e-6;
    const BatchOutcome exact = engine::runBatch(board, request);
    request.accuracy = 1e-4;
    for (const int lanes : {2, 4, 8}) {
        request.lanes = lanes;
        const BatchOutcome measured = engine::runBatch(board, request);
        expectNear(measured, exact, 1e-4);
        for (const auto& one : measured.boards) EXPECT_TRUE(one.inLanes);
    }
}

TEST(Batch, GivesWhatTheScalarEngineGivesForOneLamp) {
    expectLikeTheScalarEngine(tests::astableWithLamp({}, 470).board());
}

TEST(Batch, GivesWhatTheScalarEngineGivesForTwoCoupledLamps) {
    expectLikeTheScalarEngine(tests::lampPair({}, 220, 1e-3).board());
}

TEST(Batch, GivesWhatTheScalarEngineGivesForACmosTimer) {
    expectLikeTheScalarEngine(tests::astableWithLamp({.family = "cmos"}, 1000).board());
}

TEST(Batch, GivesWhatTheScalarEngineGivesWithASteeringDiode) {
    Workbench bench = tests::astableWithLamp({}, 470);
    bench.part(circuit::PartKind::diode, "D9");
    bench.net("discharge", {"D9:anode"}).net("timing", {"D9:cathode"});
    expectLikeTheScalarEngine(bench.board());
}

TEST(Batch, DoesNotDependOnTheNumberOfThreads) {
    const devices::Board board = tests::astableWithLamp({}, 470).board();
    BatchRequest request = spreadOf(board, 50);
    const BatchOutcome one = engine::runBatch(board, request);
    for (const int threads : {2, 3}) {
        request.threads = threads;
        expectNear(engine::runBatch(board, request), one, 0);
    }
}

TEST(Batch, SaysWhyABoardStalls) {
    // 78 kohm of charging resistance over a leak of 100 kohm: the capacitor ends under the threshold.
    const devices::Board board = tests::astable({.leakage_ohm = 100e3}, false).board();
    BatchRequest request = spreadOf(board, 5);
    for (const auto& one : engine::runBatch(board, request).boards) EXPECT_EQ(one.reason, StopReason::quiet);
}

TEST(Batch, LeavesBoardsAloneOnceItIsCancelled) {
    const devices::Board board = tests::astable({}, false).board();
    BatchRequest request = spreadOf(board, 100);
    const std::atomic<bool> cancel{true};
    request.cancel = &cancel;
    for (const auto& one : engine::runBatch(board, request).boards)
        EXPECT_EQ(one.reason, StopReason::cancelled);
}

TEST(Batch, CountsTheBoardsDone) {
    const devices::Board board = tests::astable({}, false).board();
    BatchRequest request = spreadOf(board, 33);
    std::atomic<long> done{0};
    request.done = &done;
    engine::runBatch(board, request);
    EXPECT_EQ(done, 33);
}

TEST(VariedBoard, PutsPinFiveAtTheFactorTimesTwoThirds) {
    for (const double factor : {0.9, 1.0, 1.1}) {
        const devices::Board nominal = tests::astable({}, true).board();
        const devices::Board board =
            engine::variedBoard(nominal, {{VariedKind::levels, 0}}, std::array{factor});
        // From power-on the capacitor rises from 0 to V5 = factor x 2/3 of the supply through R1 + R2.
        const double wanted = -std::log(1 - factor * 2 / 3) * 78e3 * 10e-6;
        const auto run = engine::simulate(board, {.flashes = 1, .accuracy = 1e-7});
        EXPECT_NEAR(run.switchings.at(0).time_s, wanted, 1e-4 * wanted);
    }
}

TEST(RandomDraws, AreThoseOfThePublishedGenerator) {
    // First outputs of splitmix64 from state 1234567, as listed with Rosetta Code's task "Pseudo-random
    // numbers/Splitmix64" (from memory).
    const std::uint64_t wanted[] = {6457827717110365317ULL, 3203168211198807973ULL, 9817491932198370423ULL};
    for (std::uint64_t k = 0; k < 3; ++k) EXPECT_EQ(splitmix(1234567 + (k + 1) * splitmixStep), wanted[k]);
}

TEST(RandomDraws, HaveTheMomentsOfTheirSpread) {
    constexpr int count = 200000;
    // Variances of -1..1: uniform 1/3; triangular 1/6; normal of a third, cut at three of it:
    // (1 - 2 * 3 phi(3) / (2 Phi(3) - 1)) / 9.
    const double phi3 = std::exp(-4.5) / std::sqrt(2 * std::acos(-1.0)),
                 inside = std::erf(3 / std::sqrt(2.0));
    const std::pair<Spread, double> wanted[] = {{Spread::uniform, 1.0 / 3},
                                                {Spread::triangular, 1.0 / 6},
                                                {Spread::normal, (1 - 6 * phi3 / inside) / 9}};
    for (const auto& [kind, variance] : wanted) {
        double sum = 0, squares = 0;
        for (std::uint64_t board = 0; board < count; ++board) {
            const double x = RandomDraws(3, board).spread(kind, 1);
            EXPECT_LE(std::abs(x), 1);
            sum += x;
            squares += x * x;
        }
        EXPECT_NEAR(sum / count, 0, 5 * std::sqrt(variance / count)); // five standard errors
        EXPECT_NEAR(squares / count, variance, 0.01 * variance);
    }
}

} // namespace
} // namespace blinkwright
