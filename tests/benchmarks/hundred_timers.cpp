// What a timer-cycle costs on a board of a hundred timers, over what it costs on a board of one: copies of an
// astable with one lamp, their values scattered, on one supply with resistance. Runs from power-on, about
// twenty cycles of each timer. Prints `cost_100_timers VALUE x`.
//
//   build/benchmarks/bin/hundred_timers                         the figure
//   build/benchmarks/bin/hundred_timers --benchmark_filter=.    the figure and all that it is made of
#include "core/engine/transient.h"
#include "tests/core/many_timers.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cstdio>
#include <iostream>
#include <map>
#include <string>

namespace {

using namespace blinkwright;

constexpr double accuracy = 1e-5;
constexpr int flashes = 20;

void simulates(benchmark::State& state, const tests::ManyTimers& values) {
    const devices::Board board = tests::manyTimers(values).board();
    const engine::RunRequest request{.flashes = flashes, .accuracy = accuracy, .keepWaveform = false};
    std::size_t switchings = 0;
    for (auto _ : state) {
        const engine::Run run = engine::simulate(board, request);
        if (run.report.reason != engine::StopReason::flashesReached) state.SkipWithError("ended early");
        switchings = run.switchings.size();
        benchmark::DoNotOptimize(run.switchings.data());
    }
    // A cycle of a timer is two switchings.
    state.counters["timer_cycle"] =
        benchmark::Counter(0.5 * static_cast<double>(switchings),
                           benchmark::Counter::kIsIterationInvariantRate | benchmark::Counter::kInvert);
}

/// Remembers the median of each benchmark's time for a timer-cycle; shows the rest on standard error if asked
/// to.
class Medians : public benchmark::ConsoleReporter {
  public:
    Medians() : ConsoleReporter(OO_Tabular) {
        SetOutputStream(&std::cerr);
        SetErrorStream(&std::cerr);
    }
    void ReportRuns(const std::vector<Run>& runs) override {
        ConsoleReporter::ReportRuns(runs);
        for (const Run& run : runs)
            if (run.aggregate_name == "median" && !run.error_occurred)
                m_seconds[run.run_name.function_name] = run.counters.at("timer_cycle").value;
    }
    double seconds(const std::string& name) const {
        const auto known = m_seconds.find(name);
        return known == m_seconds.end() ? 0 : known->second;
    }

  private:
    std::map<std::string, double> m_seconds;
};

} // namespace

int main(int count, char** arguments) {
    benchmark::Initialize(&count, arguments);
    if (benchmark::ReportUnrecognizedArguments(count, arguments)) return 2;
    const auto add = [](const char* name, const tests::ManyTimers& values) {
        benchmark::RegisterBenchmark(name, simulates, values)
            ->Unit(benchmark::kMillisecond)
            ->Repetitions(9)
            ->MinTime(0.05)
            ->ReportAggregatesOnly();
    };
    add("one", {.timers = 1});
    add("hundred", {.timers = 100});
    add("one_bypassed", {.timers = 1, .bypass_farad = 100e-6});
    add("hundred_bypassed", {.timers = 100, .bypass_farad = 100e-6});
    Medians medians;
    benchmark::RunSpecifiedBenchmarks(&medians);
    benchmark::Shutdown();
    const double one = medians.seconds("one"), hundred = medians.seconds("hundred");
    if (!(one > 0 && hundred > 0)) return 1;
    std::printf("cost_100_timers %.1f x\n", hundred / one);
    const double oneBypassed = medians.seconds("one_bypassed");
    if (oneBypassed > 0)
        std::fprintf(stderr, "with 100 uF across the supply: %.1f x\n",
                     medians.seconds("hundred_bypassed") / oneBypassed);
}
