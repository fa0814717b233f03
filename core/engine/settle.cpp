#include "core/base/wording.h"
#include "core/engine/large/partition.h"
#include "core/engine/simulation.h"
#include "core/engine/transient.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <deque>
#include <set>

namespace blinkwright::engine {

namespace {

using Vector = Eigen::VectorXd;

/// The one-period map of the first timer: the state at one rise of its output to the state at the next.
class PeriodMap {
  public:
    PeriodMap(const devices::Board& board, const RunRequest& request)
        : m_sim(std::make_shared<Network>(board), {.accuracy = 0.1 * request.accuracy,
                                                   .keepWaveform = false,
                                                   .ignorePresses = true,
                                                   .cancel = request.cancel}),
          m_left(request.stepBudget), m_events(request.eventBudget) {}

    /// From power-on to the first rise of the first timer's output.
    bool start(Simulation::State& state) {
        m_sim.powerOn();
        return toRise(state);
    }
    /// One period on. Times in `state` are counted from the rise.
    bool next(Simulation::State& state) {
        m_sim.resume(state);
        return toRise(state);
    }
    /// The simulation itself, to run a period with its waveform.
    Simulation& keepWaveform() {
        m_sim.keepWaveform();
        return m_sim;
    }
    const std::vector<Switching>& switchings() const { return m_sim.switchings(); }
    const RunReport& report() const { return m_report; }
    long steps() const { return m_steps; }

  private:
    bool toRise(Simulation::State& state) {
        m_report = m_sim.run({.stopAtRise = true, .steps = m_left, .events = m_events});
        m_steps += m_report.steps;
        m_left -= m_report.steps + m_report.rejected;
        if (m_report.reason != StopReason::flashesReached) return false;
        state = m_sim.state();
        for (auto& timer : state.timers) {
            timer.outputDue_s -= state.time_s;
            timer.dwellUntil_s -= state.time_s;
        }
        state.time_s = 0;
        return true;
    }

    Simulation m_sim;
    RunReport m_report;
    long m_steps = 0;
    long m_left, m_events;
};

Vector vectorOf(const std::vector<double>& v) {
    return Eigen::Map<const Vector>(v.data(), static_cast<Eigen::Index>(v.size()));
}

bool sameLatches(const Simulation::State& a, const Simulation::State& b) {
    for (std::size_t k = 0; k < a.timers.size(); ++k)
        if (a.timers[k].latch != b.timers[k].latch || a.timers[k].output != b.timers[k].output) return false;
    return true;
}

/// Anderson's acceleration of x -> P(x): the next guess is the point whose residual, by what the last moves
/// have shown, is smallest. (D. G. Anderson, J. ACM 12 (1965) 547-560.)
class Accelerator {
  public:
    explicit Accelerator(std::size_t memory) : m_memory(memory) {}

    Vector next(const Vector& x, const Vector& image) {
        const Vector residual = image - x;
        if (m_image.size() > 0) {
            m_images.push_back(image - m_image);
            m_residuals.push_back(residual - m_residual);
            if (m_images.size() > m_memory) {
                m_images.pop_front();
                m_residuals.pop_front();
            }
        }
        m_image = image;
        m_residual = residual;
        if (m_images.empty()) return image;
        const auto columns = static_cast<Eigen::Index>(m_images.size());
        Eigen::MatrixXd moves(x.size(), columns);
        for (Eigen::Index k = 0; k < columns; ++k) moves.col(k) = m_residuals[static_cast<std::size_t>(k)];
        const Vector weights = moves.completeOrthogonalDecomposition().solve(residual);
        Vector guess = image;
        for (Eigen::Index k = 0; k < columns; ++k)
            guess -= weights(k) * m_images[static_cast<std::size_t>(k)];
        return guess;
    }
    void forget() {
        m_image.resize(0);
        m_images.clear();
        m_residuals.clear();
    }

  private:
    std::size_t m_memory;
    Vector m_image, m_residual;
    std::deque<Vector> m_images, m_residuals;
};

} // namespace

Settled settle(const devices::Board& board, const RunRequest& request) {
    Settled result;
    result.report.accuracy = request.accuracy;
    if (board.supplies.empty() || board.timers.empty()) {
        result.why = board.timers.empty() ? wording::inWords("There is no timer.")
                                          : wording::inWords("There is no supply.");
        return result;
    }
    const std::string& ref = board.timers.front().ref;
    if (large::hasManyTimers(board) && large::partition(board)) {
        result.why = wording::inWords(
            "%1 has no single period of its own: other timers switch beside it on the same supply.", ref);
        return result;
    }
    PeriodMap map(board, request);
    std::set<int> others;
    const auto failed = [&](NoPeriod reason, std::string why) {
        result.report = map.report();
        result.report.steps = map.steps();
        result.report.accuracy = request.accuracy;
        result.reason = reason;
        result.why = std::move(why);
        result.others.assign(others.begin(), others.end());
        return result;
    };
    const auto stopped = [&] {
        if (map.report().reason == StopReason::quiet)
            return failed(NoPeriod::stopsSwitching,
                          wording::inWords("The output of %1 stops switching.", ref));
        return failed(NoPeriod::endedEarly,
                      wording::inWords("The search for the settled state of %1 ended early: %2.", ref,
                                       wording::inWords(describe(map.report().reason))));
    };

    Simulation::State state;
    if (!map.start(state) || !map.next(state)) return stopped();

    double volts = 1;
    for (const auto& supply : board.supplies) volts = std::max(volts, std::abs(supply.voltage));
    const double allowed = 0.3 * request.accuracy * volts;
    constexpr int most = 400;        // periods
    constexpr int mostTogether = 60; // of them with other timers' switchings
    Accelerator accelerator(std::min<std::size_t>(5, std::max<std::size_t>(1, state.y.size())));
    Simulation::State resting = state; // where the last period that made sense ended: to fall back to
    Vector lastX, lastImage;
    double lastResidual = 0;
    bool found = false, guessed = false;
    int together = 0;
    for (int k = 0; k < most; ++k) {
        const Simulation::State before = state;
        const Vector x = vectorOf(before.y);
        const bool flashed = map.next(state);
        if (!flashed && (!guessed || map.report().reason != StopReason::quiet)) return stopped();
        bool alone = true;
        for (const Switching& s : map.switchings())
            if (s.timer != 0) {
                alone = false;
                others.insert(s.timer);
            }
        const bool same = sameLatches(before, state);
        const Vector image = vectorOf(state.y);
        const double residual = (image - x).lpNorm<Eigen::Infinity>();
        if (guessed && (!flashed || !same || residual > 2 * lastResidual)) {
            // The guess lies where the map is another: go on from before it, and learn anew.
            state = resting;
            accelerator.forget();
            lastX.resize(0);
            guessed = false;
            continue;
        }
        // How much of a deviation is left after a period, as far as the last move shows.
        double multiplier = 0;
        if (lastX.size() > 0) {
            const double moved = (x - lastX).lpNorm<Eigen::Infinity>();
            if (moved > 0.01 * allowed) multiplier = (image - lastImage).lpNorm<Eigen::Infinity>() / moved;
        }
        const double error = multiplier < 1 ? residual / (1 - multiplier) : residual * 1e3;
        found = same && (lastX.size() > 0 || residual < 0.01 * allowed) && error <= allowed;
        if (found) {
            state = before;
            break;
        }
        lastX = x;
        lastImage = image;
        lastResidual = residual;
        resting = state;
        guessed = false;
        if (!alone && ++together > mostTogether) break;
        if (!alone || !same) continue; // such a map jumps: it is only followed
        const Vector guess = accelerator.next(x, image);
        const bool sensible = guess.allFinite() && guess.lpNorm<Eigen::Infinity>() < 10 * volts &&
                              (guess - x).dot(image - x) > 0; // on the way that the circuit itself goes
        if (!sensible) continue;
        Eigen::Map<Vector>(state.y.data(), x.size()) = guess;
        guessed = true;
    }
    if (!found && !others.empty())
        return failed(NoPeriod::otherTimers,
                      wording::inWords("%1 has no single period of its own: other timers switch it or switch "
                                       "beside it.",
                                       ref));
    if (!found)
        return failed(
            NoPeriod::keepsChanging,
            wording::inWords("The cycles of %1 go on changing: no two of %2 are alike.", ref, most));

    // Once more from there with its waveform, by what the map has learnt of the states.
    Simulation& last = map.keepWaveform();
    last.resume(state);
    result.report =
        last.run({.stopAtRise = true, .steps = request.stepBudget, .events = request.eventBudget});
    if (result.report.reason != StopReason::flashesReached)
        return failed(NoPeriod::endedEarly,
                      wording::inWords("The settled period of %1 was not finished: %2.", ref,
                                       wording::inWords(describe(result.report.reason))));
    result.found = true;
    result.reason = NoPeriod::none;
    result.period_s = last.state().time_s;
    result.switchings = last.switchings();
    for (const Switching& s : result.switchings)
        if (s.timer == 0 && !s.high) {
            result.high_s = s.time_s;
            break;
        }
    result.wave = last.takeWave();
    result.report.steps += map.steps();
    result.report.accuracy = request.accuracy;
    return result;
}

} // namespace blinkwright::engine
