#include "core/study/band.h"

#include "core/base/together.h"
#include "core/base/wording.h"
#include "core/engine/curves.h"
#include "core/study/percentile.h"
#include "core/study/settled_start.h"
#include "core/study/tolerance_box.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

constexpr double bandAccuracy = 1e-5;
constexpr double cyclesShown = 2;
constexpr int inside = 24; ///< points within a step, between which a curve is taken as straight

/// One board's curves at the moments of the band.
struct Sampled {
    std::vector<double> output_V, capacitor_V;
    std::vector<std::vector<double>> lamps_A;
    bool blinks() const { return !capacitor_V.empty(); }
};

/// @param period_s the wave repeats after it; 0: it does not
Sampled sampled(const devices::Board& board, const engine::Waveform& wave, double period_s,
                const std::vector<double>& time_s) {
    const engine::Curves curves = engine::curvesOf(board, wave, inside);
    Sampled out;
    out.lamps_A.resize(curves.lamps.size());
    for (const double t : time_s) {
        const double within = period_s > 0 ? std::fmod(t, period_s) : t;
        const engine::Moment at = engine::momentOf(curves, curves.time_s.front() + within);
        out.output_V.push_back(at.output_V);
        out.capacitor_V.push_back(at.capacitor_V);
        for (std::size_t l = 0; l < at.lamps_A.size(); ++l) out.lamps_A[l].push_back(at.lamps_A[l]);
    }
    return out;
}

/// Nothing where the board does not blink as asked.
Sampled settledSample(const devices::Board& board, const engine::RunRequest& run,
                      const std::vector<double>& time_s) {
    const engine::Settled settled = engine::settle(board, run);
    return settled.found ? sampled(board, settled.wave, settled.period_s, time_s) : Sampled();
}
Sampled sampleFromPowerOn(const devices::Board& board, engine::RunRequest run,
                          const std::vector<double>& time_s) {
    run.flashes = circuit::flashesRange.high;
    run.longest_s = time_s.back();
    const engine::Run done = engine::simulate(board, run);
    const bool blinks = done.report.reason == engine::StopReason::timeReached && done.switchings.size() > 1;
    return blinks ? sampled(board, done.wave, 0, time_s) : Sampled();
}

/// @param curve which of a board's curves
template <class Curve>
void fill(BandCurve& band, const std::vector<Sampled>& boards, const Sampled& nominal, const Curve& curve) {
    band.nominal = curve(nominal);
    std::vector<double> values;
    for (std::size_t k = 0; k < band.nominal.size(); ++k) {
        values.clear();
        for (const Sampled& board : boards)
            if (board.blinks()) values.push_back(curve(board)[k]);
        if (values.empty()) values.push_back(band.nominal[k]);
        std::sort(values.begin(), values.end());
        band.p5.push_back(percentile(values, 0.05));
        band.p95.push_back(percentile(values, 0.95));
    }
}

} // namespace

Result<Band> band(const circuit::Circuit& circuit, circuit::PartSet set, const BandRequest& request) {
    if (request.boards < 2)
        return Fault{"boards", wording::inWords("must be at least %1, got %2", 2, request.boards)};
    if (request.points < 2)
        return Fault{"points", wording::inWords("must be at least %1, got %2", 2, request.points)};
    const auto made = devices::makeBoard(circuit, set);
    if (!made) return made.fault();
    devices::Board board = made.value();
    const engine::RunRequest run{.accuracy = bandAccuracy, .cancel = request.cancel};
    const auto cancelled = [&] { return request.cancel && request.cancel->load(std::memory_order_relaxed); };

    Band out;
    const engine::Settled settled = engine::settle(board, run);
    out.cancelled = cancelled();
    if (!settled.found) out.reason = settled.why;
    if (!settled.found || out.cancelled) return out;
    const double span_s = request.span_s > 0 ? request.span_s : cyclesShown * settled.period_s;
    for (int k = 0; k < request.points; ++k) out.time_s.push_back(span_s * k / (request.points - 1));
    const bool fromPowerOn = request.begin == circuit::Begin::powerOn;
    const Sampled nominal = fromPowerOn ? sampleFromPowerOn(board, run, out.time_s)
                                        : sampled(board, settled.wave, settled.period_s, out.time_s);
    if (!nominal.blinks()) {
        out.reason = wording::inWords("it does not blink within this time");
        return out;
    }
    if (!fromPowerOn) startFrom(board, capacitorsAtRise(settled));

    const ToleranceBox box(circuit, set, board);
    std::vector<Sampled> boards(static_cast<std::size_t>(request.boards));
    together(boards.size(), request.threads, [&](std::size_t k) {
        if (cancelled()) return;
        std::vector<double> dials(box.dials()), factors(box.varied().size());
        box.draw(RandomDraws(request.seed, k), request.draw, dials);
        box.factors(dials, factors);
        const devices::Board varied = engine::variedBoard(board, box.varied(), factors);
        boards[k] =
            fromPowerOn ? sampleFromPowerOn(varied, run, out.time_s) : settledSample(varied, run, out.time_s);
    });
    out.cancelled = cancelled();
    if (out.cancelled) return out;

    out.blinking = static_cast<int>(std::ranges::count_if(boards, &Sampled::blinks));
    fill(
        out.output_V, boards, nominal, [](const Sampled& s) -> const auto& { return s.output_V; });
    fill(
        out.capacitor_V, boards, nominal, [](const Sampled& s) -> const auto& { return s.capacitor_V; });
    for (const devices::Junction& junction : board.junctions) {
        if (!junction.lamp) continue;
        const std::size_t l = out.lamps.size();
        out.lamps.push_back({.ref = junction.ref, .colour = junction.colour});
        fill(
            out.lamps.back(), boards, nominal, [l](const Sampled& s) -> const auto& { return s.lamps_A[l]; });
    }
    return out;
}

} // namespace blinkwright::study
