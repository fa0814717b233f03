#include "core/engine/transient.h"

#include "core/base/wording.h"
#include "core/engine/large/large_simulation.h"
#include "core/engine/simulation.h"

namespace blinkwright::engine {

std::string_view describe(StopReason reason) {
    switch (reason) {
    case StopReason::flashesReached:
        return wording::marked("flashes reached");
    case StopReason::timeReached:
        return wording::marked("time limit reached");
    case StopReason::quiet:
        return wording::marked("nothing moves any more");
    case StopReason::cancelled:
        return wording::marked("cancelled");
    case StopReason::stepBudget:
        return wording::marked("step budget used up");
    case StopReason::eventBudget:
        return wording::marked("switching budget used up");
    case StopReason::noSolution:
        return wording::marked("no solution of the circuit equations");
    case StopReason::cannotStart:
        return wording::marked("no powered timer");
    }
    return "";
}

std::string_view describe(NoPeriod reason) {
    switch (reason) {
    case NoPeriod::none:
        return wording::marked("it has a period");
    case NoPeriod::cannotStart:
        return wording::marked("no powered timer");
    case NoPeriod::stopsSwitching:
        return wording::marked("its output stops switching");
    case NoPeriod::otherTimers:
        return wording::marked("other timers switch within its cycles");
    case NoPeriod::keepsChanging:
        return wording::marked("its cycles go on changing");
    case NoPeriod::endedEarly:
        return wording::marked("the search ended early");
    }
    return "";
}

namespace {

/// Why a board cannot even start, or nothing.
std::string startFault(const devices::Board& board) {
    if (board.supplies.empty()) return wording::inWords("There is no supply.");
    if (board.timers.empty()) return wording::inWords("There is no timer.");
    const auto& timer = board.timers.front();
    namespace pins = circuit::timerPin;
    if (timer.pins[pins::supply] == devices::open || timer.pins[pins::ground] == devices::open)
        return wording::inWords("%1 has no supply: join pins 8 and 1.", timer.ref);
    return {};
}

} // namespace

Run simulate(const devices::Board& board, const RunRequest& request) {
    Run run;
    run.report.accuracy = request.accuracy;
    if (run.report.detail = startFault(board); !run.report.detail.empty()) return run;
    if (large::isLarge(board))
        if (auto parts = large::partition(board)) {
            Run inBlocks = large::simulate(board, *std::move(parts), request);
            // Blocks give up earlier than the whole does.
            if (inBlocks.report.reason != StopReason::noSolution) return inBlocks;
        }
    Simulation sim(std::make_shared<Network>(board), {.accuracy = request.accuracy,
                                                      .keepWaveform = request.keepWaveform,
                                                      .ignorePresses = request.ignorePresses,
                                                      .cancel = request.cancel});
    sim.powerOn();
    run.report = sim.run({.switchings = 2L * request.flashes,
                          .until_s = request.longest_s,
                          .steps = request.stepBudget,
                          .events = request.eventBudget});
    run.switchings = sim.switchings();
    run.phaseCharges_C = sim.phaseCharges();
    for (const auto& timer : sim.state().timers) run.outputs.push_back(timer.output);
    run.wave = sim.takeWave();
    return run;
}

LampRun simulateLamps(const devices::Board& board, const RunRequest& request) {
    LampRun run;
    run.report.accuracy = request.accuracy;
    if (run.report.detail = startFault(board); !run.report.detail.empty()) return run;
    Simulation sim(std::make_shared<Network>(board), {.accuracy = request.accuracy,
                                                      .keepWaveform = false,
                                                      .ignorePresses = request.ignorePresses,
                                                      .cancel = request.cancel});
    sim.powerOn();
    run.report = sim.run({.switchings = 2L * request.flashes,
                          .until_s = request.longest_s,
                          .steps = request.stepBudget,
                          .events = request.eventBudget});
    for (const Switching& s : sim.switchings())
        if (s.timer == 0) run.times_s.push_back(s.time_s);
    run.charges_C = sim.phaseCharges();
    return run;
}

} // namespace blinkwright::engine
