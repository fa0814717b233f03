// Made-up records of a blinker whose switchings are known: an ideal square wave or an ideal capacitor,
// sampled, with noise, and rounded to the steps of a converter.
//
//   MadeSignal signal{.high_s = 0.5, .low_s = 0.3};
//   study::RawRecord raw = rawRecord({.signal = signal, .step_s = 1e-3, .noise_V = 0.05}, seed);
#pragma once

#include "core/base/random.h"
#include "core/study/raw_record.h"

#include <cmath>
#include <numbers>

namespace blinkwright::test {

/// High for high_s, then low for low_s, and so on; a rise at begin_s. From power-on nothing comes before that
/// rise, and the first high phase is longer by first.
struct MadeSignal {
    double high_s = 0.5, low_s = 0.3, begin_s = 0, supply_V = 9;
    double first = 1; ///< first high phase over the others, from power-on
    bool fromPowerOn = false;

    /// Time since the last rise, and whether the output is high.
    std::pair<double, bool> phaseAt(double t) const {
        double since = t - begin_s;
        if (fromPowerOn && since < high_s * first) return {since, since >= 0};
        if (fromPowerOn) since -= high_s * first - high_s;
        const double period = high_s + low_s;
        since -= std::floor(since / period) * period;
        return {since, since < high_s};
    }
    double output(double t) const { return phaseAt(t).second ? supply_V - 1.5 : 0.1; }
    /// Between a third and two thirds of the supply: 2/3 - 1/3 half-lives up, 1/3 half-lives down. From
    /// power-on it starts empty.
    double capacitor(double t) const {
        const auto [since, high] = phaseAt(t);
        const double half = std::numbers::ln2;
        if (fromPowerOn && t < begin_s) return 0;
        if (fromPowerOn && t < begin_s + high_s * first)
            return supply_V * (1 - std::exp(-since * std::log(3.0) / (high_s * first)));
        if (high) return supply_V * (1 - 2.0 / 3 * std::exp(-since * half / high_s));
        return supply_V * 2.0 / 3 * std::exp(-(since - high_s) * half / low_s);
    }
};

/// Normal, mean 0, standard deviation 1 (G. Box, M. Muller, Ann. Math. Statist. 29 (1958) 610-611).
inline double normal(const RandomDraws& draws, std::uint64_t draw) {
    return std::sqrt(-2 * std::log(draws.uniform(2 * draw))) *
           std::cos(2 * std::numbers::pi * draws.uniform(2 * draw + 1));
}

struct MadeRecord {
    MadeSignal signal = {};
    double from_s = 0, until_s = 10, step_s = 1e-3;
    double noise_V = 0;   ///< standard deviation of a sample
    double quantum_V = 0; ///< step of the converter
    double edge_s = 0;    ///< length of the output's edges, each centred on its switching
    bool output = true, capacitor = false, named = false;
};

inline study::RawRecord rawRecord(const MadeRecord& made, std::uint64_t seed = 1) {
    const RandomDraws draws(seed, 0);
    std::uint64_t draw = 0;
    const auto seen = [&](double volts) {
        volts += made.noise_V * normal(draws, draw++);
        return made.quantum_V > 0 ? std::round(volts / made.quantum_V) * made.quantum_V : volts;
    };
    study::RawRecord raw;
    if (made.output) raw.traces.push_back({circuit::TraceOf::output, made.named, {}});
    if (made.capacitor) raw.traces.push_back({circuit::TraceOf::capacitor, made.named, {}});
    const auto count = static_cast<std::size_t>((made.until_s - made.from_s) / made.step_s);
    for (std::size_t k = 0; k < count; ++k) {
        const double t = made.from_s + made.step_s * static_cast<double>(k);
        raw.time_s.push_back(t);
        if (made.output) {
            double volts = made.signal.output(t);
            if (made.edge_s > 0) { // mean over the edge's length: straight edges
                constexpr int parts = 16;
                volts = 0;
                for (int p = 0; p < parts; ++p)
                    volts += made.signal.output(t + made.edge_s * ((p + 0.5) / parts - 0.5)) / parts;
            }
            raw.traces.front().values_V.push_back(seen(volts));
        }
        if (made.capacitor) raw.traces.back().values_V.push_back(seen(made.signal.capacitor(t)));
    }
    return raw;
}

} // namespace blinkwright::test
