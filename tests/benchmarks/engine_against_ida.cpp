// How many times faster the engine is than SUNDIALS IDA on the full equations of the same board, at equal
// measured error. Prints figure lines on standard output; what was chosen and measured goes to standard
// error.
//
//   build/benchmarks/bin/engine_against_ida
//
// The work: 20 cycles from power-on, switching times and the charge of each lamp in each phase. The error:
// the worst relative error of any of them against a very tight solution by IDA. Both get the settings at
// which they are fastest with an error of at most 1e-5, searched for on a fine grid; IDA's memory is set up
// outside of its time.
#include "core/engine/transient.h"
#include "tests/benchmarks/lamp_boards.h"
#include "tests/benchmarks/medians.h"
#include "tests/reference/ida_board.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <iostream>
#include <map>
#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using namespace blinkwright;
using reference::IdaBoard;
using reference::Settings;
using reference::Trace;

constexpr int cycles = 20;
constexpr double allowedError = 1e-5;
constexpr double noticeable = 0.01; // share of a lamp's largest charge a phase from which a flash counts

/// Switching times and lamp charges of a run, in one form for both engines.
struct Outcome {
    std::vector<double> times_s;
    std::vector<std::vector<double>> charges_C; // by phase, by junction
};

Outcome outcomeOf(const Trace& trace) {
    Outcome out;
    for (const auto& s : trace.switchings) {
        out.times_s.push_back(s.time_s);
        out.charges_C.push_back(s.charge_C);
    }
    return out;
}

engine::RunRequest requestFor(double accuracy) {
    return {.flashes = cycles, .accuracy = accuracy, .keepWaveform = false};
}

Outcome oursAt(const devices::Board& board, double accuracy) {
    const engine::Run run = engine::simulate(board, requestFor(accuracy));
    Outcome out;
    for (const auto& s : run.switchings) out.times_s.push_back(s.time_s);
    const std::size_t lamps = board.junctions.size(); // all are lamps here
    for (std::size_t k = 0; k < out.times_s.size(); ++k) {
        const auto begin = run.phaseCharges_C.begin() + static_cast<std::ptrdiff_t>(k * lamps);
        out.charges_C.emplace_back(begin, begin + static_cast<std::ptrdiff_t>(lamps));
    }
    return out;
}

/// The worst relative error of a switching time or of a flash's charge.
double errorOf(const Outcome& measured, const Outcome& exact) {
    if (measured.times_s.size() != exact.times_s.size()) return INFINITY;
    double worst = 0;
    std::vector<double> largest(exact.charges_C.front().size(), 0);
    for (const auto& phase : exact.charges_C)
        for (std::size_t j = 0; j < phase.size(); ++j) largest[j] = std::max(largest[j], std::abs(phase[j]));
    for (std::size_t k = 0; k < exact.times_s.size(); ++k) {
        worst = std::max(worst, std::abs(measured.times_s[k] / exact.times_s[k] - 1));
        for (std::size_t j = 0; j < largest.size(); ++j) {
            const double charge = exact.charges_C[k][j];
            if (std::abs(charge) < noticeable * largest[j]) continue;
            worst = std::max(worst, std::abs(measured.charges_C[k][j] / charge - 1));
        }
    }
    return worst;
}

template <class Work>
double shortest_s(int times, const Work& work) {
    double best = INFINITY;
    for (int k = 0; k < times; ++k) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        best =
            std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    }
    return best;
}

// --- IDA's best settings

struct IdaChoice {
    Settings settings;
    double error = INFINITY;
    double time_s = INFINITY;
    Trace trace;
};

/// What is searched: everything is scaled by one tolerance.
struct IdaKnobs {
    double tolerance = 1e-6;
    bool testAlgebraic = false, quadratures = false;
    double voltage = 1, charge = 1e-5; // absolute tolerances: times the tolerance [V, C]
    double firstStep = 1, newton = 0.33, jacobianRatio = 0.25;

    Settings settings() const {
        return {.relative = tolerance,
                .voltage = tolerance * voltage,
                .current = tolerance * voltage * 1e-3, // a volt across a kilohm
                .charge = tolerance * charge,
                .testAlgebraic = testAlgebraic,
                .quadratures = quadratures,
                .firstStep = firstStep,
                .newton = newton,
                .jacobianRatio = jacobianRatio};
    }
};

class IdaSearch {
  public:
    IdaSearch(const devices::Board& board, const Outcome& exact) : m_board(board), m_exact(exact) {}

    /// First over what is in the error test and how, then over the finer knobs around the fastest of those.
    IdaChoice best() {
        std::vector<Tried> first;
        for (bool algebraic : {false, true})
            for (bool quadratures : {false, true})
                for (double voltage : {1.0, 0.1})
                    for (double charge : {1e-4, 1e-5, 1e-6})
                        downward(1e-3, {0, algebraic, quadratures, voltage, charge}, first);
        keepFastest(first);
        std::vector<Tried> second;
        for (const Tried& tried : first)
            for (double step : {1.0, 10.0, 100.0, 1000.0})
                for (double newton : {0.1, 0.33, 1.0})
                    for (double ratio : {0.25, 0.4}) {
                        IdaKnobs knobs = tried.knobs;
                        knobs.firstStep = step;
                        knobs.newton = newton;
                        knobs.jacobianRatio = ratio;
                        downward(4 * knobs.tolerance, knobs, second);
                    }
        keepFastest(second);
        first.insert(first.end(), second.begin(), second.end());
        if (first.empty()) throw std::runtime_error("IDA reaches the error at no setting");
        IdaChoice choice;
        for (const Tried& tried : first) {
            IdaBoard ida(m_board, tried.knobs.settings());
            Trace trace;
            const double time = shortest_s(9, [&] { trace = ida.run({.switchings = 2 * cycles}); });
            if (time < choice.time_s) choice = {tried.knobs.settings(), tried.error, time, trace};
        }
        return choice;
    }

  private:
    struct Tried {
        IdaKnobs knobs;
        double error, time_s;
    };

    /// Adds the settings with the error allowed on the way down from a tolerance, until several in a row have
    /// it: finer ones only take longer.
    void downward(double from, IdaKnobs knobs, std::vector<Tried>& good) const {
        int inARow = 0;
        for (double t = from; t > 1e-9 && inARow < 4; t /= 1.3) {
            knobs.tolerance = t;
            try {
                IdaBoard ida(m_board, knobs.settings());
                const double error = errorOf(outcomeOf(ida.run({.switchings = 2 * cycles})), m_exact);
                inARow = error <= allowedError ? inARow + 1 : 0;
                if (inARow == 0) continue;
                good.push_back({knobs, error, shortest_s(2, [&] { ida.run({.switchings = 2 * cycles}); })});
            } catch (const std::runtime_error&) { // too coarse a setting for IDA itself
                inARow = 0;
            }
        }
    }
    static void keepFastest(std::vector<Tried>& list) {
        std::sort(list.begin(), list.end(),
                  [](const Tried& a, const Tried& b) { return a.time_s < b.time_s; });
        list.resize(std::min<std::size_t>(4, list.size()));
    }

    const devices::Board& m_board;
    const Outcome& m_exact;
};

// --- ours

struct OurChoice {
    double accuracy = 0, error = INFINITY, time_s = INFINITY;
    long steps = 0;
};

OurChoice ourBest(const devices::Board& board, const Outcome& exact) {
    OurChoice choice;
    for (double accuracy = 1e-2; accuracy > 1e-8; accuracy /= 1.3) {
        const double error = errorOf(oursAt(board, accuracy), exact);
        if (!(error <= allowedError)) continue;
        engine::Run run;
        const double time = shortest_s(15, [&] { run = engine::simulate(board, requestFor(accuracy)); });
        if (time < choice.time_s) choice = {accuracy, error, time, run.report.steps};
    }
    if (choice.accuracy == 0) throw std::runtime_error("the engine reaches the error at no setting");
    return choice;
}

// --- the measurement

void say(const LampBoard& figure, const IdaChoice& ida, const OurChoice& ours) {
    const Settings& s = ida.settings;
    std::fprintf(
        stderr,
        "%s: IDA at relative %.2g, absolute %.2g V %.2g C, algebraic unknowns %s, charges as %s, first step "
        "x %g, newton %g, jacobian ratio %g: error %.2g, %ld steps, %ld residuals, %ld Jacobians, %ld "
        "restarts, %.3f ms\n",
        figure.name.c_str(), s.relative, s.voltage, s.charge, s.testAlgebraic ? "tested" : "not tested",
        s.quadratures ? "quadratures" : "unknowns", s.firstStep, s.newton, s.jacobianRatio, ida.error,
        ida.trace.steps, ida.trace.residuals, ida.trace.jacobians, ida.trace.restarts, 1e3 * ida.time_s);
    std::fprintf(stderr, "%s: ours at accuracy %.2g: error %.2g, %ld steps, %.4f ms\n", figure.name.c_str(),
                 ours.accuracy, ours.error, ours.steps, 1e3 * ours.time_s);
}

void registerBoth(const LampBoard& figure, const IdaChoice& ida, const OurChoice& ours) {
    const auto plain = [](benchmark::internal::Benchmark* b) {
        b->Unit(benchmark::kMicrosecond)
            ->Repetitions(15)
            ->ReportAggregatesOnly(true)
            ->UseRealTime()
            ->MinTime(0.2);
    };
    plain(benchmark::RegisterBenchmark(
        ("ida_" + figure.name).c_str(), [&figure, settings = ida.settings](benchmark::State& state) {
            IdaBoard board(figure.board, settings);
            for (auto _ : state) benchmark::DoNotOptimize(board.run({.switchings = 2 * cycles}).reached_s);
        }));
    plain(benchmark::RegisterBenchmark(("ours_" + figure.name).c_str(), [&figure, accuracy = ours.accuracy](
                                                                            benchmark::State& state) {
        for (auto _ : state)
            benchmark::DoNotOptimize(engine::simulate(figure.board, requestFor(accuracy)).report.reached_s);
    }));
}

int measure() {
    const std::vector<LampBoard> all = lampBoards();
    for (const LampBoard& figure : all) {
        IdaBoard tight(figure.board,
                       IdaKnobs{.tolerance = 1e-11, .testAlgebraic = true, .charge = 1e-6}.settings());
        const Outcome exact = outcomeOf(tight.run({.switchings = 2 * cycles}));
        const IdaChoice ida = IdaSearch(figure.board, exact).best();
        const OurChoice ours = ourBest(figure.board, exact);
        say(figure, ida, ours);
        registerBoth(figure, ida, ours);
    }
    Medians medians;
    medians.SetOutputStream(&std::cerr);
    medians.SetErrorStream(&std::cerr);
    benchmark::RunSpecifiedBenchmarks(&medians);
    for (const LampBoard& figure : all)
        std::printf("ida_over_ours_%s %.1f x\n", figure.name.c_str(),
                    medians.of("ida_" + figure.name) / medians.of("ours_" + figure.name));
    return 0;
}

} // namespace

int main(int count, char** arguments) {
    // Repetitions of both engines in turn, so that a slow spell of the machine meets both.
    std::vector<char*> options(arguments, arguments + count);
    std::string inTurn = "--benchmark_enable_random_interleaving=true";
    options.push_back(inTurn.data());
    count = static_cast<int>(options.size());
    options.push_back(nullptr);
    benchmark::Initialize(&count, options.data());
    if (benchmark::ReportUnrecognizedArguments(count, options.data())) return 2;
    try {
        return measure();
    } catch (const std::exception& fault) {
        std::fprintf(stderr, "%s\n", fault.what());
        return 1;
    }
}
