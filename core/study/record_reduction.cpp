#include "core/study/record_reduction.h"

#include "core/base/wording.h"
#include "core/study/record_switchings.h"
#include "core/study/record_thinning.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using circuit::TraceOf;

namespace {

constexpr std::size_t fewestSamples = 3;
/// The first high phase after power-on is ln 3 / ln 2 = 1.585 times as long as the others where the textbook
/// holds. Halfway there it is clearly longer.
constexpr double clearlyLonger = 1.25;
/// Fewer samples to a state than this in the mean, and switchings are not told from noise.
constexpr double fewestSamplesAState = 3;
/// A record is evenly spaced if no step is longer than this over the mean one.
constexpr double evenStep = 1.5;

/// Spaces times evenly that were written with too few digits. True where it did.
bool evenOut(std::vector<double>& time) {
    const double mean = (time.back() - time.front()) / static_cast<double>(time.size() - 1);
    double longest = 0, off = 0;
    bool equal = false;
    for (std::size_t k = 1; k < time.size(); ++k) {
        longest = std::max(longest, time[k] - time[k - 1]);
        equal |= time[k] == time[k - 1];
        off = std::max(off, std::abs(time[k] - time.front() - mean * static_cast<double>(k)));
    }
    if (!equal || off > longest) return false;
    const double first = time.front();
    for (std::size_t k = 1; k < time.size(); ++k) time[k] = first + mean * static_cast<double>(k);
    return true;
}

double longestStep(const std::vector<double>& time) {
    double longest = 0;
    for (std::size_t k = 1; k < time.size(); ++k) longest = std::max(longest, time[k] - time[k - 1]);
    return longest;
}

struct Trace {
    const RawTrace* raw = nullptr;
    TraceOf of{};
    SignalShape shape;
    Switchings turns; ///< of one that has no two levels
};

/// The values at even distances of time, where those of a record are not: a simulated trace has most of its
/// points at its edges, but the levels of a signal are where it is for most of the time.
std::vector<double> evenly(const std::vector<double>& time, const std::vector<double>& values) {
    constexpr double unevenFrom = 2; // longest step over the mean one
    constexpr std::size_t fewest = 4096, most = 100'000;
    if (time.size() < 3 || !(time.back() > time.front())) return values;
    const double span = time.back() - time.front();
    double longest = 0;
    for (std::size_t k = 1; k < time.size(); ++k) longest = std::max(longest, time[k] - time[k - 1]);
    if (longest * static_cast<double>(time.size() - 1) < unevenFrom * span) return values;
    const std::size_t count = std::clamp(2 * time.size(), fewest, most);
    std::vector<double> even;
    even.reserve(count);
    std::size_t after = 1;
    for (std::size_t k = 0; k < count; ++k) {
        const double t = time.front() + span * static_cast<double>(k) / static_cast<double>(count - 1);
        while (after + 1 < time.size() && time[after] < t) ++after;
        const double step = time[after] - time[after - 1];
        const double share = step > 0 ? std::clamp((t - time[after - 1]) / step, 0.0, 1.0) : 1.0;
        even.push_back(values[after - 1] + share * (values[after] - values[after - 1]));
    }
    return even;
}

/// What each trace is: by its name, else by its shape.
std::vector<Trace> judged(const RawRecord& raw, const std::vector<double>& time) {
    std::vector<Trace> traces;
    for (const RawTrace& each : raw.traces) {
        Trace trace{&each, each.of, shapeOf(evenly(time, each.values_V)), {}};
        const bool mayTurn = each.named ? each.of == TraceOf::capacitor : !trace.shape.isTwoLevel;
        if (mayTurn) trace.turns = turningsOf(time, each.values_V, trace.shape);
        if (!each.named)
            trace.of = trace.shape.isTwoLevel         ? TraceOf::output
                       : !trace.turns.times_s.empty() ? TraceOf::capacitor
                                                      : TraceOf::other;
        traces.push_back(std::move(trace));
    }
    // One timer has one output and one timing capacitor: of two traces that look the same, the named one,
    // else the first.
    if (traces.size() == 2 && traces[0].of == traces[1].of) {
        const bool firstYields = !traces[0].raw->named && traces[1].raw->named;
        Trace& yields = traces[firstYields ? 0 : 1];
        if (!yields.raw->named) yields.of = TraceOf::other;
    }
    return traces;
}

std::string voltsText(double volts) {
    return units::formatQuantity(volts, units::Unit::volt);
}

Fault tooFast() {
    return {"", wording::inWords(
                    "the output changes with nearly every sample: record it with a shorter time step")};
}

Fault unreadable(const std::vector<Trace>& traces) {
    for (const Trace& trace : traces)
        if (trace.shape.isRestless && (trace.of == TraceOf::output || !trace.raw->named)) return tooFast();
    const auto output = std::ranges::find(traces, TraceOf::output, &Trace::of);
    if (output != traces.end()) {
        const SignalShape& shape = output->shape;
        return {"",
                wording::inWords("the output goes from %1 to %2 and does not stay at two levels that stand "
                                 "out: its switchings cannot be told",
                                 voltsText(shape.lowest_V), voltsText(shape.highest_V))};
    }
    if (std::ranges::find(traces, TraceOf::capacitor, &Trace::of) != traces.end())
        return {"", wording::inWords(
                        "the capacitor does not turn at two steady levels: no switchings can be told")};
    return {"",
            wording::inWords("no column has two levels that it goes between, and none turns at two steady "
                             "levels as a timing capacitor does: no switchings can be told")};
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::ranges::nth_element(values, middle);
    return *middle;
}

/// Low at first, or nothing before it, and then a first high phase that is clearly longer than the others.
bool looksFromPowerOn(const Switchings& s, double begin_s) {
    if (s.start_s) return true;
    const auto& times = s.times_s;
    std::vector<double> highs;
    if (!s.firstRises && !times.empty()) highs.push_back(times.front() - begin_s);
    for (std::size_t k = s.firstRises ? 0 : 1; k + 1 < times.size(); k += 2)
        highs.push_back(times[k + 1] - times[k]);
    if (highs.size() < 2) return false;
    const double first = highs.front();
    highs.erase(highs.begin());
    return first > clearlyLonger * median(highs);
}

/// Lets time 0 be the moment of power-on.
void beginAtPowerOn(Switchings& s, std::vector<double>& time) {
    double on = s.start_s.value_or(time.front());
    if (!s.start_s && s.firstRises && !s.times_s.empty()) {
        on = s.times_s.front();
        s.times_s.erase(s.times_s.begin());
        s.firstRises = false;
    }
    for (double& t : s.times_s) t -= on;
    for (double& t : time) t -= on;
}

} // namespace

Result<Reduction> reduceRecord(const RawRecord& raw, const ReductionOptions& options) {
    const auto stopped = [&] { return options.cancel && *options.cancel; };
    const Fault cancelled{"", wording::inWords("cancelled")};
    if (raw.time_s.size() < fewestSamples)
        return Fault{"", wording::inWords("there are only %1 rows of numbers: at least %2 are needed",
                                          raw.time_s.size(), fewestSamples)};
    if (!(raw.time_s.back() > raw.time_s.front()))
        return Fault{"", wording::inWords("the time does not advance from row to row")};

    Reduction reduction;
    reduction.samples = raw.time_s.size();
    reduction.skipped = raw.skipped;
    reduction.firstSkipped = raw.firstSkipped;
    std::vector<double> time = raw.time_s;
    reduction.evened = evenOut(time);
    if (stopped()) return cancelled;

    const std::vector<Trace> traces = judged(raw, time);
    if (stopped()) return cancelled;
    Switchings switchings;
    const Trace* read = nullptr;
    for (const Trace& trace : traces)
        if (!read && trace.of == TraceOf::output && trace.shape.isTwoLevel) read = &trace;
    if (read) {
        switchings = crossingsOf(time, read->raw->values_V, read->shape, options.glitchSamples);
        const auto states = static_cast<double>(switchings.times_s.size() + 2 * switchings.glitches + 1);
        if (static_cast<double>(time.size()) < fewestSamplesAState * states) return tooFast();
    } else {
        const bool output = std::ranges::find(traces, TraceOf::output, &Trace::of) != traces.end();
        for (const Trace& trace : traces)
            if (!output && trace.of == TraceOf::capacitor && !trace.turns.times_s.empty()) read = &trace;
        if (!read) return unreadable(traces);
        switchings = read->turns;
        reduction.from = SwitchingsFrom::turningPoints;
    }
    if (switchings.times_s.size() > circuit::maxRecordSwitchings)
        return Fault{
            "", wording::inWords("more than %1 switchings are not supported", circuit::maxRecordSwitchings)};
    if (stopped()) return cancelled;
    reduction.noise_V = read->shape.noise_V;
    reduction.glitches = switchings.glitches;
    reduction.looksFromPowerOn = looksFromPowerOn(switchings, time.front());

    circuit::Record& record = reduction.record;
    const double mean = (time.back() - time.front()) / static_cast<double>(time.size() - 1);
    // Where steps differ, those count that the switchings lie in.
    record.step_s =
        longestStep(time) > evenStep * mean && switchings.bracket_s > 0 ? switchings.bracket_s : mean;
    record.fromPowerOn = options.fromPowerOn.value_or(reduction.looksFromPowerOn);
    if (record.fromPowerOn) beginAtPowerOn(switchings, time);

    std::vector<std::span<const double>> values;
    for (const RawTrace& trace : raw.traces) values.push_back(trace.values_V);
    const std::vector<std::size_t> kept = keptSamples(values, circuit::maxRecordSamples);
    const auto picked = [&](std::span<const double> all) {
        std::vector<double> few;
        few.reserve(kept.size());
        for (const std::size_t k : kept) few.push_back(all[k]);
        return few;
    };
    record.source = raw.source;
    record.timeUncertainty = options.timeUncertainty;
    record.time_s = picked(time);
    for (const Trace& trace : traces) record.traces.push_back({trace.of, picked(trace.raw->values_V)});
    record.switchings_s = std::move(switchings.times_s);
    record.firstRises = switchings.firstRises;
    record.levels = switchings.levels;
    return reduction;
}

} // namespace blinkwright::study
