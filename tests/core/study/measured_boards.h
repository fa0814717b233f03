// Measurements of boards that are simulated: what an instrument and a meter would have told of them.
//
//   const Unknowns unknowns = unknownsOf(bench);
//   const devices::Board truth = unknowns.boardAt(drawn(unknowns, seed));
//   measure(bench.circuit, recordOf(truth, {.cycles = 12, .jitter_s = 1e-4, .step_s = 1e-4}, seed));
#pragma once

#include "core/base/random.h"
#include "core/engine/transient.h"
#include "core/study/fit.h"
#include "tests/core/reference_circuits.h"

#include <cmath>
#include <random>

namespace blinkwright::tests {

struct Instrument {
    int cycles = 12;
    double jitter_s = 0; ///< of each switching
    double step_s = 1e-4;
    double timeBase = 0; ///< relative standard deviation of its time base
    bool fromPowerOn = false;
};

/// Switchings of the first timer, each off by noise, then rounded to the instrument's step.
inline circuit::Record recordOf(const devices::Board& board, const Instrument& with, unsigned seed) {
    std::mt19937 random(seed);
    std::normal_distribution<double> noise(0, 1);
    circuit::Record record;
    record.source = "made up";
    record.step_s = with.step_s;
    record.timeUncertainty = with.timeBase;
    record.fromPowerOn = with.fromPowerOn;
    record.firstRises = !with.fromPowerOn;
    std::vector<double> times;
    if (with.fromPowerOn) {
        const engine::Run run =
            engine::simulate(board, {.flashes = with.cycles + 2, .accuracy = 1e-8, .keepWaveform = false});
        for (const engine::Switching& s : run.switchings)
            if (s.timer == 0) times.push_back(s.time_s);
    } else {
        const engine::Settled settled = engine::settle(board, {.accuracy = 1e-8});
        if (!settled.found) throw std::logic_error(settled.why);
        const double begin = 0.3 * settled.period_s;
        for (int k = 0; k <= with.cycles; ++k)
            for (const double at : {0.0, settled.high_s}) times.push_back(begin + k * settled.period_s + at);
    }
    record.time_s = {0, times.back()}; // what is shown of a trace says nothing here
    record.traces = {{circuit::TraceOf::output, {0, 0}}};
    const double base = 1 + with.timeBase * noise(random);
    for (const double t : times)
        record.switchings_s.push_back(std::round((t * base + with.jitter_s * noise(random)) / with.step_s) *
                                      with.step_s);
    return record;
}

template <class What>
void measure(circuit::Circuit& circuit, What what) {
    circuit.measurements.push_back(
        std::make_shared<const circuit::Measurement>(circuit::Measurement{"", true, std::move(what), {}}));
}

inline circuit::MeterReading partReading(const Workbench& bench, const char* ref, const char* key,
                                         double value, double uncertainty) {
    return {circuit::MeterQuantity::partValue, bench.id(ref), key, {value, uncertainty}};
}

inline study::Unknowns unknownsOf(const Workbench& bench) {
    return study::Unknowns(bench.circuit, circuit::PartSet::A, bench.board(),
                           study::measuredReadings(bench.circuit));
}

/// Values that a random board may have: all of a tolerance alike likely; a leakage up to its limit.
inline std::vector<double> drawn(const study::Unknowns& unknowns, unsigned seed) {
    std::mt19937 random(1000 + seed);
    std::uniform_real_distribution<double> even(-1, 1);
    std::normal_distribution<double> noise(0, 1);
    std::vector<double> dials;
    for (std::size_t d = 0; d < unknowns.dials(); ++d) dials.push_back(std::sqrt(3.0) * even(random));
    std::vector<double> values;
    for (const study::Unknown& u : unknowns.all()) {
        double dial = dials[u.dial];
        if (u.from == study::PriorFrom::reading) dial = noise(random);
        if (u.kind == study::UnknownKind::leakage && u.from != study::PriorFrom::reading)
            dial = std::abs(dial);
        values.push_back(unknowns.value(u, dial));
    }
    return values;
}

inline std::size_t placeOf(const std::vector<study::Unknown>& all, const std::string& name) {
    for (std::size_t k = 0; k < all.size(); ++k)
        if (all[k].name() == name) return k;
    throw std::logic_error("no unknown " + name);
}

inline const study::FittedValue& fitted(const study::FitOutcome& fit, const std::string& name) {
    for (const study::FittedValue& value : fit.values)
        if (value.name() == name) return value;
    throw std::logic_error("nothing fitted for " + name);
}

} // namespace blinkwright::tests
