// Where the time of a study goes, for developers: each stage on each sample.
//
//   build/benchmarks/bin/engine_benchmarks --benchmark_filter=buoy
#include "core/engine/curves.h"
#include "core/engine/transient.h"
#include "core/io/circuit_file.h"
#include "core/io/reports.h"
#include "core/study/study.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

namespace {

using namespace blinkwright;

/// One sample, read once and shared by its benchmarks.
struct Sample {
    std::string name;
    std::string text;
    circuit::Circuit circuit;
    devices::Board board;
};

std::vector<Sample> samples() {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(BLINKWRIGHT_SAMPLES)) {
        if (entry.path().extension() == ".blinkwright") {
            paths.push_back(entry.path());
        }
    }
    std::sort(paths.begin(), paths.end());
    std::vector<Sample> found;
    for (const auto& path : paths) {
        auto text = io::readBytes(path.string(), io::maxCircuitBytes);
        if (!text) {
            std::fprintf(stderr, "%s\n", text.fault().message().c_str());
            std::exit(1);
        }
        auto circuit = io::readCircuit(text.value());
        if (!circuit) {
            std::fprintf(stderr, "%s: %s\n", path.c_str(), circuit.fault().message().c_str());
            std::exit(1);
        }
        auto board = devices::makeBoard(circuit.value(), circuit::PartSet::A);
        if (!board) {
            std::fprintf(stderr, "%s: %s\n", path.c_str(), board.fault().message().c_str());
            std::exit(1);
        }
        found.push_back({path.stem().string(), text.value(), circuit.value(), board.value()});
    }
    return found;
}

void readsTheFile(benchmark::State& state, const Sample& sample) {
    for (auto _ : state) {
        benchmark::DoNotOptimize(io::readCircuit(sample.text));
    }
}

void simulates(benchmark::State& state, const Sample& sample, double accuracy) {
    engine::RunRequest request;
    request.flashes = sample.circuit.run.flashes;
    request.accuracy = accuracy;
    long steps = 0;
    for (auto _ : state) {
        const engine::Run run = engine::simulate(sample.board, request);
        benchmark::DoNotOptimize(run.switchings.data());
        steps += run.report.steps;
    }
    state.counters["steps"] =
        benchmark::Counter(static_cast<double>(steps), benchmark::Counter::kAvgIterations);
    state.counters["step"] = benchmark::Counter(static_cast<double>(steps),
                                                benchmark::Counter::kIsRate | benchmark::Counter::kInvert);
}

void settles(benchmark::State& state, const Sample& sample) {
    for (auto _ : state) {
        const engine::Settled settled = engine::settle(sample.board, engine::RunRequest{});
        benchmark::DoNotOptimize(settled.period_s);
    }
}

void samplesCurves(benchmark::State& state, const Sample& sample) {
    engine::RunRequest request;
    request.flashes = sample.circuit.run.flashes;
    const engine::Run run = engine::simulate(sample.board, request);
    for (auto _ : state) {
        const engine::Curves curves = engine::curvesOf(sample.board, run.wave);
        benchmark::DoNotOptimize(curves.time_s.data());
    }
}

void studies(benchmark::State& state, const Sample& sample, circuit::Begin begin) {
    study::StudyRequest request;
    request.flashes = sample.circuit.run.flashes;
    request.begin = begin;
    for (auto _ : state) {
        const auto study = study::study(sample.circuit, circuit::PartSet::A, request);
        benchmark::DoNotOptimize(study.ok());
    }
}

} // namespace

int main(int count, char** arguments) {
    benchmark::Initialize(&count, arguments);
    if (benchmark::ReportUnrecognizedArguments(count, arguments)) {
        return 2;
    }
    const std::vector<Sample> all = samples();
    for (const Sample& sample : all) {
        const auto add = [&sample](const std::string& what, auto function) {
            benchmark::RegisterBenchmark((sample.name + "/" + what).c_str(), function)
                ->Unit(benchmark::kMicrosecond);
        };
        add("read_file", [&sample](benchmark::State& state) { readsTheFile(state, sample); });
        add("simulate_1e-6", [&sample](benchmark::State& state) { simulates(state, sample, 1e-6); });
        add("simulate_1e-9", [&sample](benchmark::State& state) { simulates(state, sample, 1e-9); });
        add("settle", [&sample](benchmark::State& state) { settles(state, sample); });
        add("curves", [&sample](benchmark::State& state) { samplesCurves(state, sample); });
        add("study_power_on",
            [&sample](benchmark::State& state) { studies(state, sample, circuit::Begin::powerOn); });
        add("study_settled",
            [&sample](benchmark::State& state) { studies(state, sample, circuit::Begin::settled); });
    }
    benchmark::RunSpecifiedBenchmarks();
    benchmark::Shutdown();
    return 0;
}
