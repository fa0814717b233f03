// How long the studies take that run many boards: the median of some runs, wall time, threads as the program
// uses them. Prints figure lines on standard output.
//
//   build/benchmarks/bin/studies [NAME]
#include "core/study/choose.h"
#include "core/study/spread.h"
#include "core/study/symptoms.h"
#include "core/study/trend.h"
#include "tests/core/reference_circuits.h"

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

namespace {

using namespace blinkwright;
using circuit::PartSet;

template <class Work>
void measure(const char* name, int times, const Work& work) {
    std::vector<double> ms;
    for (int k = 0; k < times; ++k) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        ms.push_back(
            std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count());
    }
    std::sort(ms.begin(), ms.end());
    std::printf("%s %.1f ms\n", name, ms[ms.size() / 2]);
    std::fprintf(stderr, "%s: %.1f to %.1f ms\n", name, ms.front(), ms.back());
}

} // namespace

int main(int count, char** arguments) {
    const std::string only = count > 1 ? arguments[1] : "";
    const auto wanted = [&](const char* name) { return only.empty() || only == name; };
    const Workbench one = tests::astableWithLamp({}, 470), two = tests::lampPair({}, 220, 1e-3);
    const auto spread = [](const Workbench& bench) {
        return [&] { static_cast<void>(study::spread(bench.circuit, PartSet::A, {.boards = 10000})); };
    };
    if (wanted("spread_one_lamp")) measure("spread_one_lamp", 7, spread(one));
    if (wanted("spread_two_lamps")) measure("spread_two_lamps", 7, spread(two));
    if (wanted("trend_40"))
        measure("trend_40", 15, [&] {
            static_cast<void>(study::trend(
                two.circuit, PartSet::A,
                {.ref = "R2", .key = "resistance", .from = 1e4, .to = 1e6, .points = 40, .threads = 2}));
        });
    // E24 x E24 x E6, from 1 kohm and 1 nF on, lamp to either rail, with and without a diode.
    const study::Wish wish{.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9};
    if (wanted("choose_screen")) measure("choose_screen", 15, [&] { study::screenWish(wish, 200); });
    if (wanted("choose_simulate")) {
        const study::Screening screening = study::screenWish(wish, 200);
        measure("choose_simulate", 15, [&] { study::simulateCandidates(wish, screening.best, {}); });
    }
    // Every single fault of the pair, then the first ones of the single lamp, each with a meter on every pin.
    if (wanted("symptoms_200")) {
        struct Bench {
            study::BenchBoard board;
            std::vector<study::BoardFault> faults;
        };
        std::vector<Bench> benches;
        std::size_t left = 200;
        for (const Workbench* of : {&two, &two, &one, &one}) {
            Bench bench{study::benchBoard(of->board()), {}};
            bench.faults = study::boardFaults(of->circuit, PartSet::A, bench.board);
            bench.faults.resize(std::min(left, bench.faults.size()));
            left -= bench.faults.size();
            benches.push_back(std::move(bench));
        }
        if (left > 0) return 1; // it would not be what its name says
        measure("symptoms_200", 7, [&] {
            for (const Bench& bench : benches)
                static_cast<void>(study::simulateFaults(bench.board, bench.faults, {.threads = 2}));
        });
    }
    return 0;
}
