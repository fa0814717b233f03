#include "core/study/study.h"

#include "core/study/figures.h"
#include "core/study/flash_light.h"
#include "core/study/readings_builder.h"
#include "core/study/stall.h"
#include "core/study/verdict.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <future>
#include <limits>

namespace blinkwright::study {

namespace {

using engine::Run;
using engine::Settled;
using engine::StopReason;

std::vector<double> switchingTimes(const std::vector<engine::Switching>& all, int timer) {
    std::vector<double> times;
    for (const auto& s : all)
        if (s.timer == timer) times.push_back(s.time_s);
    return times;
}

/// The run between the first timer's first and last rise: whole cycles. Empty if there are not two rises.
engine::Waveform wholeCycles(const Run& run) {
    double first = std::numeric_limits<double>::infinity(), last = 0;
    for (const auto& s : run.switchings)
        if (s.timer == 0 && s.high) {
            first = std::min(first, s.time_s);
            last = s.time_s;
        }
    return first < last ? run.wave.part(first, last, 0) : engine::Waveform();
}

/// A timer's phases in the settled period; nothing unless its output rises and falls once in it.
std::optional<Phase> settledPhase(const Settled& settled, int timer) {
    if (!settled.found) return std::nullopt;
    if (timer == 0) return Phase{settled.high_s, settled.period_s - settled.high_s};
    std::vector<engine::Switching> own;
    std::copy_if(settled.switchings.begin(), settled.switchings.end(), std::back_inserter(own),
                 [&](const engine::Switching& s) { return s.timer == timer; });
    if (own.size() != 2 || own[0].high == own[1].high) return std::nullopt;
    const double between = own[1].time_s - own[0].time_s;
    const double high = own[0].high ? between : settled.period_s - between;
    return Phase{high, settled.period_s - high};
}

/// Adds what each lamp does in the two phases of a settled period.
void addLampPhases(std::vector<LampReading>& lamps, const devices::Board& board, const Figures& figures,
                   const engine::Waveform& period, const Phase& phase) {
    const std::vector<double> effective_A = effectiveCurrents(board, period, blondelRey_s);
    std::size_t lamp = 0;
    for (std::size_t k = 0; k < board.junctions.size(); ++k) {
        if (!board.junctions[k].lamp) continue;
        const auto& f = figures.junctions[k];
        const double high_A = f.highCharge_C / phase.high_s,
                     low_A = (f.charge_C - f.highCharge_C) / phase.low_s;
        lamps[lamp].darkerMean_A = std::min(high_A, low_A);
        lamps[lamp].brighterHigh = high_A > low_A;
        lamps[lamp++].effective_A = effective_A[k];
    }
}

/// The run's first high phase and the low one after it.
std::optional<Phase> firstPhase(const Run& run) {
    const auto times = switchingTimes(run.switchings, 0);
    if (times.size() < 2 || !(times[0] > 0) || !(times[1] > times[0])) return std::nullopt;
    return Phase{times[0], times[1] - times[0]};
}

FirstFlash firstFlashOf(const circuit::Circuit& circuit, const devices::Board& board, const Run& run) {
    const auto phase = firstPhase(run);
    if (!phase) return {};
    const auto wave = run.wave.part(0, phase->period_s(), 0);
    if (wave.empty()) return {};
    const Figures figures = figuresOf(board, wave, phase->high_s, firstFlashRatings);
    Readings first;
    addFigures(first, circuit, board, &figures, phase);
    return {std::move(first.lamps), std::move(first.parts)};
}

/// The phases of a timer other than the first, where the first has no period of its own: found as if this
/// timer were the first. A timer that gates the first has one.
std::optional<Phase> phaseByItself(const devices::Board& board, std::size_t timer,
                                   const engine::RunRequest& request) {
    devices::Board turned = board;
    std::swap(turned.timers[0], turned.timers[timer]);
    return settledPhase(engine::settle(turned, request), 0);
}

/// `count` settled periods' switchings in a row.
std::vector<engine::Switching> repeatedSwitchings(const Settled& settled, int count) {
    std::vector<engine::Switching> all;
    for (int k = 0; k < count; ++k)
        for (engine::Switching s : settled.switchings) {
            s.time_s += k * settled.period_s;
            all.push_back(s);
        }
    return all;
}

/// What the curves and the switchings show.
struct Shown {
    engine::Waveform wave = {};
    std::vector<engine::Switching> switchings = {};
    double until_s = std::numeric_limits<double>::infinity();
    bool fromPowerOn = true;
};

Shown shownFromPowerOn(const devices::Board& board, const Run& run) {
    Shown shown{.wave = run.wave, .switchings = run.switchings};
    if (run.report.reason == StopReason::quiet)
        shown.until_s = std::max(1.5 * restReached_s(board, run.wave), 1e-3);
    return shown;
}

Shown shownSettled(const Settled& settled, int flashes) {
    return {.wave = settled.wave.repeated(flashes),
            .switchings = repeatedSwitchings(settled, flashes),
            .fromPowerOn = false};
}

/// Where there is no settled state to show: the run from its first rise on.
Shown shownFromFirstRise(const devices::Board& board, engine::RunRequest request) {
    ++request.flashes;
    const Run run = engine::simulate(board, request);
    Shown shown{.fromPowerOn = false};
    const auto rise = std::find_if(run.switchings.begin(), run.switchings.end(),
                                   [](const engine::Switching& s) { return s.timer == 0 && s.high; });
    if (rise == run.switchings.end()) return shown;
    shown.wave = run.wave.part(rise->time_s, run.wave.end_s(), 0);
    for (auto s = rise + 1; s != run.switchings.end(); ++s)
        shown.switchings.push_back({s->time_s - rise->time_s, s->timer, s->high});
    return shown;
}

void addCurves(Study& s, const Shown& shown) {
    s.wave = shown.wave;
    s.curves = engine::curvesOf(s.board, s.wave, 3, shown.until_s);
    s.curves.switchings_s = switchingTimes(shown.switchings, 0);
}

void addTimers(Readings& readings, const devices::Board& board, const Shown& shown, const Settled& settled) {
    for (std::size_t k = 0; k < board.timers.size(); ++k) {
        TimerReading timer{.ref = board.timers[k].ref};
        timer.switchings_s = switchingTimes(shown.switchings, static_cast<int>(k));
        if (shown.fromPowerOn && !timer.switchings_s.empty()) timer.firstHigh_s = timer.switchings_s.front();
        timer.settled = settledPhase(settled, static_cast<int>(k));
        timer.textbook = textbookOf(board, k);
        readings.timers.push_back(std::move(timer));
    }
}

} // namespace

Result<Study> study(const circuit::Circuit& circuit, circuit::PartSet set, const StudyRequest& request) {
    auto board = devices::makeBoard(circuit, set);
    if (!board) return board.fault();
    Study s;
    s.board = std::move(board).value();
    const engine::RunRequest runRequest{
        .flashes = request.flashes, .accuracy = request.accuracy, .cancel = request.cancel};
    const auto cancelled = [&] { return request.cancel && request.cancel->load(std::memory_order_relaxed); };

    // The settled state is sought beside the run from power-on: two cores, half the wait. Where the run shows
    // that there is none, the search is called off.
    std::atomic<bool> callOff = false;
    Run run;
    struct Aside {
        Settled settled;
        FirstFlash firstFlash;
    };
    // In this order: the promise goes first, whatever happens, so that nobody waits for it in vain.
    std::future<bool> runIs;
    std::future<Aside> aside;
    std::promise<bool> isRun; // whether there is a first flash to look at
    runIs = isRun.get_future();
    aside = std::async(std::launch::async, [&, settleRequest = runRequest]() mutable {
        settleRequest.cancel = &callOff;
        Aside found{engine::settle(s.board, settleRequest), {}};
        // Beside the curves: both only read the run.
        if (runIs.get()) found.firstFlash = firstFlashOf(circuit, s.board, run);
        return found;
    });
    run = engine::simulate(s.board, runRequest);
    Readings& readings = s.readings;
    readings.run = run.report;
    Judgement judgement = judge(s.board, run, nullptr);
    readings.verdict = judgement.kind;
    const bool blinks = readings.verdict == Verdict::blinks;
    callOff = !blinks;
    isRun.set_value(blinks && !cancelled());
    Shown shown = shownFromPowerOn(s.board, run);
    const bool wantsSettled = blinks && request.begin == circuit::Begin::settled;
    if (!wantsSettled && !cancelled()) addCurves(s, shown);
    while (aside.wait_for(std::chrono::milliseconds(1)) != std::future_status::ready)
        if (cancelled()) callOff = true;
    Aside found = aside.get();
    const Settled& settled = found.settled;
    if (cancelled()) {
        s.cancelled = true;
        return s;
    }
    if (wantsSettled) {
        shown =
            settled.found ? shownSettled(settled, request.flashes) : shownFromFirstRise(s.board, runRequest);
        addCurves(s, shown);
    }

    engine::Waveform figureSpan;
    if (settled.found) {
        figureSpan = settled.wave;
    } else if (blinks) {
        readings.overRun = true;
        figureSpan = wholeCycles(run);
        judgement = judge(s.board, run, &settled);
    }
    for (const Cause& cause : judgement.causes) {
        readings.reasons.push_back(cause.sentence);
        readings.places.insert(readings.places.end(), cause.places.begin(), cause.places.end());
    }
    addTimers(readings, s.board, shown, settled);
    for (std::size_t k = 1; k < s.board.timers.size() && readings.overRun; ++k)
        readings.timers[k].settled = phaseByItself(s.board, k, runRequest);
    if (figureSpan.empty()) {
        addFigures(readings, circuit, s.board, nullptr);
    } else {
        const Figures figures = figuresOf(s.board, figureSpan, settled.found ? settled.high_s : 0);
        const auto phase = settledPhase(settled, 0);
        addFigures(readings, circuit, s.board, &figures, phase);
        if (phase) addLampPhases(readings.lamps, s.board, figures, settled.wave, *phase);
    }
    readings.firstFlash = std::move(found.firstFlash);
    s.eye = eyeOf(circuit, set, s.board, readings);
    s.findings = findingsOf(s.board, &readings);
    return s;
}

} // namespace blinkwright::study
