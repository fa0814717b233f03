#include "core/study/fit_model.h"

#include "core/study/figures.h"
#include "core/study/settled_start.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

/// Differences of a hundredth of a value are to be exact to a thousandth.
constexpr double fitAccuracy = 1e-7;
constexpr int inside = 3; ///< points within a step, for means

/// Pin 3 against pin 1, mean over [from, to) of a settled period.
double meanOutput(const engine::Waveform& wave, double from_s, double to_s) {
    double area = 0, before_s = from_s, before_V = 0;
    bool first = true;
    engine::Instant at;
    const engine::Waveform part = wave.part(from_s, to_s, from_s);
    for (const auto& knot : part.knots(inside)) {
        part.instant(knot, at);
        const double t = part.time(knot), v = at.timers.front().output_V - at.timers.front().ground_V;
        if (!first) area += 0.5 * (v + before_V) * (t - before_s);
        before_s = t;
        before_V = v;
        first = false;
    }
    return area / (to_s - from_s);
}

} // namespace

double supplyMean_A(const devices::Board& board, const engine::Settled& settled) {
    const Figures figures = figuresOf(board, settled.wave, settled.high_s);
    return figures.supplyCurrents.empty() ? 0 : figures.supplyCurrents.front().mean_A;
}

std::optional<double> figureOf(const FigureOf& wanted, const devices::Board& board,
                               const engine::Settled& settled, const engine::RunRequest& request) {
    switch (wanted.figure) {
    case FitFigure::rate:
        return 1 / settled.period_s;
    case FitFigure::period:
        return settled.period_s;
    case FitFigure::high:
        return settled.high_s;
    case FitFigure::low:
        return settled.period_s - settled.high_s;
    case FitFigure::duty:
        return settled.high_s / settled.period_s;
    case FitFigure::firstHigh: {
        engine::RunRequest once = request;
        once.flashes = 1;
        once.keepWaveform = false;
        const engine::LampRun run = engine::simulateLamps(board, once);
        if (run.times_s.empty()) return std::nullopt;
        return run.times_s.front();
    }
    case FitFigure::supplyVoltage: {
        if (board.supplies.empty()) return std::nullopt;
        const devices::Supply& supply = board.supplies.front();
        return supply.voltage - supply.resistance * supplyMean_A(board, settled);
    }
    case FitFigure::outputHigh:
        return meanOutput(settled.wave, settled.wave.begin_s(), settled.wave.begin_s() + settled.high_s);
    case FitFigure::outputLow:
        return meanOutput(settled.wave, settled.wave.begin_s() + settled.high_s, settled.wave.end_s());
    case FitFigure::lampCurrent: {
        const auto lamp = std::ranges::find(board.junctions, wanted.lamp, &devices::Junction::id);
        if (lamp == board.junctions.end()) return std::nullopt;
        const Figures figures = figuresOf(board, settled.wave, settled.high_s);
        const JunctionFigures& f =
            figures.junctions[static_cast<std::size_t>(lamp - board.junctions.begin())];
        if (!(f.lit_s > 0)) return std::nullopt;
        return f.charge_C / f.lit_s;
    }
    }
    return std::nullopt;
}

FitModel::FitModel(const Unknowns& unknowns, std::vector<FigureOf> wanted, const engine::Settled& settled,
                   const std::atomic<bool>* cancel)
    : m_unknowns(unknowns), m_wanted(std::move(wanted)), m_request{.accuracy = fitAccuracy, .cancel = cancel},
      m_start(settled.found ? capacitorsAtRise(settled) : std::vector<double>()) {
}

std::optional<Eigen::VectorXd> FitModel::figures(const Eigen::VectorXd& dials) {
    const devices::Board board = m_unknowns.board({dials.begin(), dials.end()});
    devices::Board started = board;
    startFrom(started, m_start);
    ++m_settles;
    const engine::Settled settled = engine::settle(started, m_request);
    if (!settled.found) return std::nullopt;
    m_start = capacitorsAtRise(settled);
    Eigen::VectorXd all(static_cast<Eigen::Index>(m_wanted.size()));
    for (std::size_t k = 0; k < m_wanted.size(); ++k) {
        const auto figure = figureOf(m_wanted[k], board, settled, m_request);
        if (!figure || !std::isfinite(*figure)) return std::nullopt;
        all[static_cast<Eigen::Index>(k)] = *figure;
    }
    return all;
}

std::optional<Eigen::MatrixXd> FitModel::slopes(const Eigen::VectorXd& dials) {
    Eigen::MatrixXd all(static_cast<Eigen::Index>(m_wanted.size()), dials.size());
    for (Eigen::Index d = 0; d < dials.size(); ++d) {
        const double move = m_unknowns.smallMove(static_cast<std::size_t>(d));
        const double lowest = m_unknowns.lowestDial(static_cast<std::size_t>(d));
        Eigen::VectorXd up = dials, down = dials;
        up[d] += move;
        down[d] = std::max(dials[d] - move, lowest);
        const auto high = figures(up), low = figures(down);
        if (!high || !low) return std::nullopt;
        all.col(d) = (*high - *low) / (up[d] - down[d]);
    }
    return all;
}

} // namespace blinkwright::study
