#include "core/study/verdict.h"

#include "core/base/wording.h"
#include "core/study/gating.h"
#include "core/study/stall.h"
#include "core/study/unpowered.h"
#include "core/units/engineering.h"

#include <algorithm>

namespace blinkwright::study {

using engine::Run;
using engine::StopReason;
using units::Unit;

std::string listed(const std::vector<std::string>& items) {
    if (items.empty()) return {};
    if (items.size() == 1) return items.front();
    std::string first = items.front();
    for (std::size_t k = 1; k + 1 < items.size(); ++k) first += ", " + items[k];
    return wording::inWords("%1 and %2", first, items.back());
}

namespace {

/// Whether the first timer has a supply voltage to work with at the end of the run or about its last
/// switchings: comparators of the model work at any voltage, those of a timer do not.
bool powered(const devices::Board& board, const Run& run) {
    if (!isFed(board)) return false;
    if (run.wave.empty()) return true; // nothing says otherwise
    engine::Instant at;
    const auto enough = [&](double time_s, engine::Side side) {
        run.wave.instant(time_s, side, at);
        return at.timers.front().supply_V - at.timers.front().ground_V >= leastSupply_V;
    };
    if (enough(run.wave.end_s(), engine::Side::before)) return true;
    const std::size_t count = run.switchings.size(), looked = std::min<std::size_t>(4, count);
    return std::any_of(run.switchings.end() - static_cast<std::ptrdiff_t>(looked), run.switchings.end(),
                       [&](const engine::Switching& s) {
                           return enough(s.time_s, engine::Side::before) ||
                                  enough(s.time_s, engine::Side::after);
                       });
}

/// The timer that switched most.
const std::string& busiest(const devices::Board& board, const Run& run) {
    std::vector<std::size_t> count(board.timers.size(), 0);
    for (const auto& s : run.switchings) ++count[static_cast<std::size_t>(s.timer)];
    return board
        .timers[static_cast<std::size_t>(std::max_element(count.begin(), count.end()) - count.begin())]
        .ref;
}

Cause budgetCause(const devices::Board& board, const Run& run) {
    const auto& report = run.report;
    const std::string within = units::formatQuantity(report.reached_s, Unit::second);
    // A phase takes some steps to some hundreds of them: a run of so few switchings was not kept busy by
    // them.
    const bool idle = static_cast<double>(report.events) < 1e-3 * static_cast<double>(report.steps);
    if (report.reason == StopReason::stepBudget && idle)
        return {wording::inWords("The run was ended after %1 steps within %2: something in the circuit moves "
                                 "far faster than the timer. Look for a value that is far too small or too "
                                 "large.",
                                 report.steps + report.rejected, within),
                {board.timers.front().ref}};
    const std::string& ref = busiest(board, run);
    return {wording::inWords("The run was ended after %1 switchings within %2: %3 switches without end. Look "
                             "for feedback from its output to its pins 2, 4, 5 or 6.",
                             report.events, within, ref),
            {ref}};
}

/// Of a run that was ended by its time limit or by its caller.
Judgement judgeUnfinished(const devices::Board& board, const Run& run) {
    const auto own = std::count_if(run.switchings.begin(), run.switchings.end(),
                                   [](const engine::Switching& s) { return s.timer == 0; });
    if (own >= 2) return {Verdict::blinks, {}};
    const std::string& ref = board.timers.front().ref;
    const std::string until = units::formatQuantity(run.report.reached_s, Unit::second);
    const std::string why = wording::inWords(describe(run.report.reason));
    return {
        Verdict::doesNotSettle,
        {{own == 0 ? wording::inWords("The run ended at %1 (%2), and %3 had not switched till then.", until,
                                      why, ref)
                   : wording::inWords("The run ended at %1 (%2), and %3 had switched only once till then.",
                                      until, why, ref),
          {ref}}}};
}

Judgement judgeRun(const devices::Board& board, const Run& run) {
    if (board.timers.empty())
        return {Verdict::cannotRun, {{wording::inWords("The circuit has no timer: add one."), {}}}};
    if (run.report.reason == StopReason::cannotStart)
        return {Verdict::cannotRun, unpoweredCauses(board, nullptr)};
    if (run.report.reason == StopReason::noSolution)
        return {Verdict::cannotRun,
                {{wording::inWords("The circuit equations have no solution at %1: look for a short, or for a "
                                   "source across another.",
                                   units::formatQuantity(run.report.reached_s, Unit::second)),
                  {}}}};
    if (!powered(board, run)) {
        engine::Instant at;
        if (!run.wave.empty()) run.wave.instant(run.wave.end_s(), engine::Side::before, at);
        return {Verdict::cannotRun, unpoweredCauses(board, run.wave.empty() ? nullptr : &at)};
    }
    switch (run.report.reason) {
    case StopReason::flashesReached:
        return {Verdict::blinks, {}};
    case StopReason::quiet:
        return {run.outputs.front() ? Verdict::settlesHigh : Verdict::settlesLow, stallCauses(board, run)};
    case StopReason::stepBudget:
    case StopReason::eventBudget:
        return {Verdict::doesNotSettle, {budgetCause(board, run)}};
    default:
        return judgeUnfinished(board, run);
    }
}

} // namespace

Judgement judge(const devices::Board& board, const Run& run, const engine::Settled* settled) {
    Judgement judgement = judgeRun(board, run);
    if (judgement.kind == Verdict::blinks && settled && !settled->found)
        judgement.causes = commandedBy(board, *settled);
    return judgement;
}

} // namespace blinkwright::study
