// What the engine's proofs share: phases of a run, ideal drops and sources, and integrals over a waveform.
//
//   auto t = phasesOf(simulate(board, {.flashes = 2}));      // t[0] first high, t[1] low, t[2] high, ...
//   double joules = integral(settled.wave, [](const Instant& at) { return at.supply_A[0] * 9; });
#pragma once

#include "core/engine/transient.h"
#include "tests/core/reference_circuits.h"

#include <array>
#include <cmath>
#include <vector>

namespace blinkwright::engine::proofs {

/// Lengths of the phases of the first timer's output, from power-on [s].
inline std::vector<double> phasesOf(const Run& run) {
    std::vector<double> lengths;
    double last = 0;
    for (const auto& s : run.switchings)
        if (s.timer == 0) {
            lengths.push_back(s.time_s - last);
            last = s.time_s;
        }
    return lengths;
}

/// The second high and low phase of a run [s]: the first ones may still know of power-on.
struct HighLow {
    double high_s = 0, low_s = 0;
    double period_s() const { return high_s + low_s; }
    double duty() const { return high_s / period_s(); }
};
inline HighLow laterPhases(const Workbench& bench, double accuracy = 1e-8) {
    const auto t = phasesOf(simulate(bench.board(), {.flashes = 2, .accuracy = accuracy}));
    if (t.size() < 4) return {};
    return {t[2], t[3]};
}

/// A timer without imperfections whose output reaches both rails through a micro-ohm.
inline Workbench idealOutput(Workbench bench) {
    for (const char* text : {"U1.device.high_resistance=1u", "U1.device.low_resistance=1u",
                             "U1.device.high_limit=1M", "U1.device.low_limit=1M"})
        bench.set(text);
    return bench;
}

/// Values of a diode or lamp with the same voltage at any current: 0.13 mV a factor of e in current.
/// @param volts its voltage at 1 mA [V], at most 0.08.
inline circuit::Values almostIdealDiode(double volts = 4e-3) {
    return {
        {"forward_voltage", volts}, {"test_current", 1e-3}, {"ideality", 5e-3}, {"series_resistance", 0.0}};
}

/// Integral of a quantity over a waveform, by the five-point Gauss rule on quarters of every step
/// (Abramowitz & Stegun, table 25.4).
template <class Quantity>
double integral(const Waveform& wave, const Quantity& quantity) {
    constexpr std::array<double, 5> x = {0.04691007703066802, 0.23076534494715845, 0.5, 0.76923465505284155,
                                         0.95308992296933198};
    constexpr std::array<double, 5> w = {0.11846344252809454, 0.23931433524968324, 64.0 / 225,
                                         0.23931433524968324, 0.11846344252809454};
    constexpr int pieces = 4;
    double sum = 0;
    Instant at;
    for (std::size_t k = 0; k < wave.steps(); ++k) {
        const auto span = wave.step(k);
        for (int piece = 0; piece < pieces; ++piece)
            for (std::size_t j = 0; j < x.size(); ++j) {
                wave.instant({k, (piece + x[j]) / pieces}, at);
                sum += w[j] / pieces * (span.end_s - span.begin_s) * quantity(at);
            }
    }
    return sum;
}

} // namespace blinkwright::engine::proofs
