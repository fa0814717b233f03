// How many boards a second a tolerance spread runs, on one thread. Prints figure lines on standard output for
// the widest lanes of the processor; the others' and the measured errors go to standard error.
//
//   build/benchmarks/bin/boards
//
// The work: 5 cycles from power-on of every board, resistors spread by 5 %, capacitors by 20 %. The setting
// is the coarsest at which first flash, period, high time and each lamp's charge a cycle are within 1e-4 of
// runs by the scalar engine at 1e-8, over a sample of boards.
#include "core/base/random.h"
#include "core/engine/batch.h"
#include "tests/benchmarks/lamp_boards.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

using namespace blinkwright;
using engine::BatchOutcome;
using engine::BatchRequest;

constexpr double allowedError = 1e-4;

BatchRequest spreadOf(const devices::Board& board, long boards) {
    BatchRequest request;
    request.boards = boards;
    request.threads = 1;
    for (std::size_t k = 0; k < board.resistors.size(); ++k)
        request.varied.push_back({engine::VariedKind::resistor, static_cast<int>(k)});
    for (std::size_t k = 0; k < board.capacitors.size(); ++k)
        request.varied.push_back({engine::VariedKind::capacitor, static_cast<int>(k)});
    const std::size_t resistors = board.resistors.size();
    request.factors = [resistors](long k, std::span<double> factors) {
        const RandomDraws draws(1, static_cast<std::uint64_t>(k));
        for (std::size_t v = 0; v < factors.size(); ++v)
            factors[v] = draws.factor(Spread::uniform, v < resistors ? 0.05 : 0.2, v);
    };
    return request;
}

double errorOf(const BatchOutcome& measured, const BatchOutcome& exact) {
    double worst = 0;
    const auto compare = [&](double x, double y) { worst = std::max(worst, std::abs(x / y - 1)); };
    for (std::size_t k = 0; k < exact.boards.size(); ++k) {
        const auto &a = measured.boards[k], &b = exact.boards[k];
        if (a.reason != b.reason) return INFINITY;
        compare(a.firstFlash_s, b.firstFlash_s);
        compare(a.period_s, b.period_s);
        compare(a.high_s, b.high_s);
        for (std::size_t l = 0; l < a.lamps.size(); ++l)
            compare(a.lamps[l].highCharge_C + a.lamps[l].lowCharge_C,
                    b.lamps[l].highCharge_C + b.lamps[l].lowCharge_C);
    }
    return worst;
}

/// Boards a second, the best of some runs.
double rateOf(const BatchRequest& request, const devices::Board& board, int times) {
    double best = INFINITY;
    for (int k = 0; k < times; ++k) {
        const auto begin = std::chrono::steady_clock::now();
        engine::runBatch(board, request);
        best =
            std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    }
    return static_cast<double>(request.boards) / best;
}

} // namespace

int main(int count, char** arguments) {
    const double fixed = count > 1 ? std::atof(arguments[1]) : 0; // an accuracy instead of the search's
    const int lanes = count > 2 ? std::atoi(arguments[2]) : 0;
    for (const LampBoard& figure : lampBoards()) {
        constexpr long sample = 200;
        BatchRequest tight = spreadOf(figure.board, sample);
        tight.accuracy = 1e-8;
        tight.lanes = 1;
        const BatchOutcome exact = engine::runBatch(figure.board, tight);
        const auto errorAt = [&](double accuracy, int width) {
            BatchRequest request = spreadOf(figure.board, sample);
            request.accuracy = accuracy;
            request.lanes = width;
            return errorOf(engine::runBatch(figure.board, request), exact);
        };
        const auto measure = [&](int width, long boards) {
            double accuracy = 1e-2;
            if (fixed > 0) accuracy = fixed;
            while (fixed <= 0 && accuracy > 1e-7 && errorAt(accuracy, width) > allowedError) accuracy /= 1.3;
            BatchRequest request = spreadOf(figure.board, boards);
            request.accuracy = accuracy;
            request.lanes = width;
            const double rate = rateOf(request, figure.board, 5);
            const BatchOutcome once = engine::runBatch(figure.board, request);
            const auto in = std::count_if(once.boards.begin(), once.boards.end(),
                                          [](const auto& b) { return b.inLanes; });
            std::fprintf(
                stderr,
                "%s: %d lanes at accuracy %.2g: worst error %.2g, %ld of %ld in lanes, %.0f boards/s\n",
                figure.name.c_str(), once.lanes, accuracy, errorAt(accuracy, width), in, boards, rate);
            return rate;
        };
        const double widest = measure(lanes, 20000);
        if (lanes == 0)
            for (const int width : {4, 2, 1}) measure(width, width > 1 ? 10000 : 2000);
        std::printf("boards_%s %.0f boards/s\n", figure.name.c_str(), widest);
    }
    return 0;
}
