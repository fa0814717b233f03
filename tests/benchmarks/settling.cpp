// What the settled state costs: waiting for it over solving for it. Prints `wait_over_solve VALUE x`; what
// was chosen goes to standard error.
//
//   build/benchmarks/bin/settling
//
// The board: two lamps behind a coupling capacitor that keeps some 98 % of what it is off its settled voltage
// from one cycle to the next. Waiting runs from power-on until each lamp's charge a flash is within 1e-5 of
// the settled one and stays so; solving finds the settled state, its waveform included, with charges and
// period within 1e-5. Both run at the coarsest accuracy at which that is measured, against a run at 1e-8.
#include "core/engine/transient.h"
#include "tests/benchmarks/medians.h"
#include "tests/core/reference_circuits.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <iostream>
#include <map>
#include <string>
#include <vector>

namespace {

using namespace blinkwright;

constexpr double allowed = 1e-5;
constexpr std::size_t lamps = 2;

engine::RunRequest waiting(int flashes, double accuracy) {
    return {.flashes = flashes, .accuracy = accuracy, .keepWaveform = false};
}

/// Charge in a phase of the lamp that is lit in it [C].
double charge(const engine::Run& run, std::size_t phase) {
    double largest = 0;
    for (std::size_t k = 0; k < lamps; ++k)
        largest = std::max(largest, std::abs(run.phaseCharges_C[phase * lamps + k]));
    return largest;
}

/// The settled state as a run far out has it: charge of the high and of the low phase [C], period [s].
struct Exact {
    double charges[2], period;
};

/// How many cycles from power-on it takes until the charges stay within what is allowed; 0 where they do not.
int cyclesToWait(const engine::Run& run, const Exact& exact) {
    const int cycles = static_cast<int>(run.phaseCharges_C.size() / lamps / 2);
    for (int k = cycles - 1; k >= 0; --k)
        for (std::size_t half : {0u, 1u})
            if (std::abs(charge(run, 2 * static_cast<std::size_t>(k) + half) / exact.charges[half] - 1) >
                allowed)
                return k + 1 < cycles ? k + 1 : 0;
    return cycles;
}

/// The worst relative error of a settled state's period and charges.
double errorOf(const engine::Settled& settled, const Exact& exact) {
    constexpr double places[] = {0.1834346424956498, 0.5255324099163290, 0.7966664774136267,
                                 0.9602898564975363};
    constexpr double weights[] = {0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                  0.1012285362903763};
    double charges[2][lamps] = {};
    engine::Instant at;
    for (std::size_t step = 0; step < settled.wave.steps(); ++step) {
        const auto span = settled.wave.step(step);
        const double length = span.end_s - span.begin_s;
        const int half = span.begin_s + 0.5 * length < settled.high_s ? 0 : 1;
        for (int k = 0; k < 4; ++k)
            for (const double side : {-1.0, 1.0}) {
                settled.wave.instant({step, 0.5 + 0.5 * side * places[k]}, at);
                for (std::size_t lamp = 0; lamp < lamps; ++lamp)
                    charges[half][lamp] += 0.5 * length * weights[k] * at.junction_A[lamp];
            }
    }
    double worst = std::abs(settled.period_s / exact.period - 1);
    for (int half = 0; half < 2; ++half) {
        const double lit = std::max(std::abs(charges[half][0]), std::abs(charges[half][1]));
        worst = std::max(worst, std::abs(lit / exact.charges[half] - 1));
    }
    return worst;
}

} // namespace

int main(int count, char** arguments) {
    benchmark::Initialize(&count, arguments);
    const auto board =
        tests::lampPair({.r1_ohm = 1e3, .r2_ohm = 6.8e3, .c_farad = 1e-6}, 220, 2.2e-3).board();
    constexpr int farOut = 2500;
    const engine::Run run = engine::simulate(board, waiting(farOut, 1e-8));
    const std::size_t last = run.switchings.size() - 1;
    if (run.switchings.size() < 2 * farOut) {
        std::fprintf(stderr, "The board does not run: %s\n", run.report.detail.c_str());
        return 1;
    }
    const Exact exact{{charge(run, last - 1), charge(run, last)},
                      run.switchings[last].time_s - run.switchings[last - 2].time_s};
    const auto off = [&](std::size_t k) { return std::abs(charge(run, 2 * k) / exact.charges[0] - 1); };
    double waitAt = 1e-2, solveAt = 1e-2;
    int needed = 0;
    while (waitAt > 1e-7 &&
           (needed = cyclesToWait(engine::simulate(board, waiting(farOut, waitAt)), exact)) == 0)
        waitAt /= 1.3;
    const auto solved = [&] {
        const engine::Settled settled = engine::settle(board, {.accuracy = solveAt});
        return settled.found && errorOf(settled, exact) <= allowed;
    };
    while (solveAt > 1e-7 && !solved()) solveAt /= 1.3;
    std::fprintf(stderr, "multiplier %.3f; waiting %d cycles at accuracy %.1e; solving at accuracy %.1e\n",
                 std::pow(off(200) / off(100), 0.01), needed, waitAt, solveAt);
    if (needed == 0 || solveAt <= 1e-7) return 1;

    const auto plain = [](benchmark::internal::Benchmark* b) {
        b->Unit(benchmark::kMicrosecond)->Repetitions(11)->ReportAggregatesOnly(true)->UseRealTime();
    };
    plain(benchmark::RegisterBenchmark("wait", [&](benchmark::State& state) {
        for (auto _ : state)
            benchmark::DoNotOptimize(engine::simulate(board, waiting(needed, waitAt)).report.reached_s);
    }));
    plain(benchmark::RegisterBenchmark("solve", [&](benchmark::State& state) {
        for (auto _ : state) benchmark::DoNotOptimize(engine::settle(board, {.accuracy = solveAt}).period_s);
    }));
    Medians medians;
    medians.SetOutputStream(&std::cerr);
    medians.SetErrorStream(&std::cerr);
    benchmark::RunSpecifiedBenchmarks(&medians);
    std::printf("wait_over_solve %.1f x\n", medians.of("wait") / medians.of("solve"));
    return 0;
}
