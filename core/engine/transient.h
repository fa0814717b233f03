// The transient engine: steps the charges of any wiring of the known parts through time, finds every
// switching to rounding error, and says why it stopped.
//
//   Board board = devices::makeBoard(circuit, PartSet::A).value();
//   Run run = simulate(board, RunRequest{.flashes = 6});
//   run.switchings[0].time_s                  // end of the first high phase
//   run.report.reason                         // StopReason::flashesReached
//   Curves c = curvesOf(board, run.wave);     // curves.h
#pragma once

#include "core/devices/board.h"
#include "core/engine/waveform.h"

#include <atomic>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::engine {

enum class StopReason {
    flashesReached, ///< as many switchings as asked for
    timeReached,    ///< the time limit of the request
    quiet,          ///< nothing moves any more: no switching will ever come
    cancelled,      ///< the caller said stop; what was computed till then is valid
    stepBudget,     ///< more steps than allowed
    eventBudget,    ///< more switchings than allowed
    noSolution,     ///< the equations at one instant could not be solved
    cannotStart,    ///< no powered timer, or no supply
};
/// Plain words for a reason, marked for translation, e.g. `flashes reached`.
std::string_view describe(StopReason reason);

/// One change of one timer's output.
struct Switching {
    double time_s = 0;
    int timer = 0; ///< index into Board::timers
    bool high = false;
};

struct RunReport {
    StopReason reason = StopReason::cannotStart;
    double reached_s = 0; ///< simulated time that is covered
    double accuracy = 0;  ///< as asked for
    long steps = 0;       ///< accepted
    long rejected = 0;    ///< steps taken again
    long events = 0;      ///< latch flips and switch presses
    std::string detail;   ///< a sentence where the reason alone says too little
};

struct RunRequest {
    int flashes = 6;        ///< stops after 2 x flashes switchings of the first timer
    double accuracy = 1e-6; ///< worst relative error of switching times and lamp charges, 1e-10 to 1e-2
    double longest_s = std::numeric_limits<double>::infinity(); ///< simulated time limit
    long stepBudget = 2'000'000;
    long eventBudget = 200'000;
    bool keepWaveform = true;
    bool ignorePresses = false;                ///< switches stay as drawn
    const std::atomic<bool>* cancel = nullptr; ///< polled every few steps
};

struct Run {
    Waveform wave;
    std::vector<Switching> switchings; ///< of all timers, ascending
    std::vector<bool> outputs;         ///< each timer's output at the end
    /// For each switching of the first timer, the charge of each lamp that has current to carry since the one
    /// before [C]; lamps in file order.
    std::vector<double> phaseCharges_C;
    RunReport report;
};

/// Runs from power-on.
Run simulate(const devices::Board& board, const RunRequest& request);

/// What a run of the first timer's output and lamps comes to, where no waveform is wanted.
struct LampRun {
    std::vector<double> times_s;   ///< of the first timer's switchings
    std::vector<double> charges_C; ///< for each of them, of each lamp since the one before
    RunReport report;
};
LampRun simulateLamps(const devices::Board& board, const RunRequest& request);

/// Why the first timer has no single settled period.
enum class NoPeriod {
    none,           ///< it has one
    cannotStart,    ///< no supply or no timer
    stopsSwitching, ///< with the switches as drawn its output stops switching
    otherTimers,    ///< other timers switch within its cycles, and no two cycles are alike
    keepsChanging,  ///< it switches alone, and its cycles go on changing
    endedEarly,     ///< cancelled, or a budget was used up
};
/// Plain words for a reason, marked for translation, e.g. `other timers switch within its cycles`.
std::string_view describe(NoPeriod reason);

/// The periodic steady state of the first timer's output.
struct Settled {
    bool found = false;
    double period_s = 0;
    double high_s = 0;
    Waveform wave;                     ///< one period; t = 0 is the rise of the first timer
    std::vector<Switching> switchings; ///< of all timers within it
    RunReport report;                  ///< steps of the whole search
    NoPeriod reason = NoPeriod::cannotStart;
    std::string why;         ///< why there is none, a sentence
    std::vector<int> others; ///< other timers that switched within the cycles looked at, ascending
};

/// Solves the one-period map for its fixed point; switch presses are ignored. Waiting would take hundreds of
/// cycles where a coupling capacitor remembers most of its charge from one cycle to the next.
Settled settle(const devices::Board& board, const RunRequest& request);

} // namespace blinkwright::engine
