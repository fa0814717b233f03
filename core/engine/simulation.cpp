#include "core/engine/simulation.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::engine {

namespace {

enum { trigger, threshold, reset }; // rows of Watched

double fourthRoot(double x) {
    return std::sqrt(std::sqrt(x));
}

constexpr double never = std::numeric_limits<double>::infinity();
constexpr double leastDwell_s = 1e-7;  // device law: a latch holds each state at least this long
constexpr double wakeAfter_s = 20e-6;  // device law: nothing is read before
constexpr double wakeLatest_s = 50e-3; // device law: everything is read after
constexpr double quietAfter_s = 1e6;   // eleven days without a switching count as none ever

Tolerances tolerancesFor(double accuracy, bool insideMatters, const devices::Board& board) {
    double volts = 1;
    for (const auto& supply : board.supplies) volts = std::max(volts, std::abs(supply.voltage));
    // Errors of some tens of steps a phase add up, and a phase's end moves by the voltage's error over its
    // slope.
    return {.accuracy = accuracy,
            .voltage_V = 2 * accuracy * volts,
            .charge = 2 * accuracy,
            .port_V = 0.05,
            .darkShare = 1e-3,
            .insideMatters = insideMatters};
}

/// The root of a function between a point where it is not above 0 and one where it is: regula falsi with the
/// Illinois step.
template <class Function>
double firstRoot(const Function& function, double low, double atLow, double high, double atHigh,
                 double tolerance) {
    double last = high;
    int side = 0;
    for (int iteration = 0; iteration < 60; ++iteration) {
        double guess = low + (high - low) * (-atLow) / (atHigh - atLow);
        if (!(guess > low && guess < high)) guess = 0.5 * (low + high);
        const double value = function(guess);
        if (value == 0 || std::abs(guess - last) <= tolerance || high - low <= tolerance) return guess;
        last = guess;
        // An end that stays twice running counts half: the other then closes in on the root as fast.
        if (value > 0) {
            if (side > 0) atLow *= 0.5;
            high = guess;
            atHigh = value;
            side = 1;
        } else {
            if (side < 0) atHigh *= 0.5;
            low = guess;
            atLow = value;
            side = -1;
        }
    }
    return last;
}

} // namespace

Simulation::Simulation(std::shared_ptr<Network> network, const Options& options)
    : m_network(std::move(network)), m_options(options),
      m_stepper(tolerancesFor(options.accuracy, options.keepWaveform, m_network->board())) {
    for (const auto& part : m_network->board().switches)
        if (!options.ignorePresses)
            for (const auto& press : part.presses) {
                m_edges.push_back(press[0]);
                m_edges.push_back(press[1]);
            }
    std::sort(m_edges.begin(), m_edges.end());
    m_edges.erase(std::unique(m_edges.begin(), m_edges.end()), m_edges.end());
}

void Simulation::powerOn() {
    State rest;
    for (const auto& c : m_network->board().capacitors) rest.y.push_back(c.initialVoltage);
    rest.timers.resize(m_network->board().timers.size());
    resume(rest);
}

void Simulation::resume(const State& state) {
    m_time = state.time_s;
    m_timers = state.timers;
    m_switchings.clear();
    m_charges.clear();
    m_wave = std::make_shared<detail::WaveData>();
    m_wave->network = m_network;
    m_h = 0;
    m_stepper.setStart(state.y);
}

Simulation::State Simulation::state() const {
    return {m_time, m_stepper.capacitorVoltages(), m_timers};
}

Waveform Simulation::takeWave() {
    return Waveform(std::exchange(m_wave, std::make_shared<detail::WaveData>()));
}

void Simulation::keepWaveform() {
    m_options.keepWaveform = true;
    m_stepper.lookInside();
}

bool Simulation::pressed(std::size_t index) const {
    if (m_options.ignorePresses) return false;
    for (const auto& press : m_network->board().switches[index].presses)
        if (press[0] <= m_time && m_time < press[1]) return true;
    return false;
}

Simulation::Configuration& Simulation::configurationOf() {
    for (Configuration& known : m_configurations)
        if (known.outputs == m_outputs && known.switches == m_switches) return known;
    // Many timers have many states: those of long ago are forgotten.
    if (m_configurations.size() > 256) m_configurations.pop_front();
    return m_configurations.emplace_back(
        Configuration{m_switches, m_outputs, &m_network->reduced(m_switches, m_outputs), 0, 0, false, -1});
}

bool Simulation::enterConfiguration() {
    m_outputs.resize(m_timers.size());
    for (std::size_t t = 0; t < m_timers.size(); ++t) m_outputs[t] = m_timers[t].output;
    m_switches.resize(m_network->board().switches.size());
    for (std::size_t k = 0; k < m_switches.size(); ++k)
        m_switches[k] = m_network->board().switches[k].closed != pressed(k);
    m_configuration = &configurationOf();
    if (!m_stepper.enter(*m_configuration->reduced)) return false;
    chooseFirstStep();
    m_phaseBegin_s = m_time;
    // A little past where the last such phase ended: the crossing then lies just before the step's end.
    m_expectedTimer = m_configuration->endedBy;
    m_expectedEnd_s = m_configuration->steady ? m_time + 1.0005 * m_configuration->phaseLength_s : never;
    return true;
}

void Simulation::chooseFirstStep() {
    m_firstStep = true;
    m_h = m_configuration->firstStep_s;
    if (m_h > 0) return;
    const double speed = m_stepper.speed();
    // The exponential march bears a long first step, and tells where it was too long.
    const double reach_V = m_stepper.denseIsExact() ? 0.5 : 0.01;
    m_h = speed > 0 ? std::clamp(reach_V / speed, 1e-9, 1.0) : 1e-3;
}

double Simulation::nextTimed() const {
    double next = never;
    for (const auto& timer : m_timers) {
        next = std::min(next, timer.outputDue_s);
        if (!timer.awake) {
            if (m_time < wakeAfter_s)
                next = std::min(next, wakeAfter_s);
            else if (m_time < wakeLatest_s)
                next = std::min(next, wakeLatest_s);
        }
    }
    const auto edge = std::upper_bound(m_edges.begin(), m_edges.end(), m_time);
    if (edge != m_edges.end()) next = std::min(next, *edge);
    return next;
}

double Simulation::wish(std::size_t timer, const Watched& w, double time_s) const {
    const TimerState& t = m_timers[timer];
    if (!t.awake)
        return t.powered ? -1.0 : w.supply; // once seen, the supply counts, also where it falls back
    if (time_s < t.dwellUntil_s) return -1.0;
    // Reset first, then trigger, then threshold: the latch's order of precedence.
    if (t.latch) return std::max(w.reset, std::min(w.threshold, -w.trigger));
    return std::min(-w.reset, w.trigger);
}

void Simulation::flip(std::size_t timer, double time_s) {
    TimerState& t = m_timers[timer];
    const double delay = m_network->board().timers[timer].sheet.delay;
    ++m_events;
    t.latch = !t.latch;
    t.dwellUntil_s = time_s + std::max(delay, leastDwell_s);
    t.outputDue_s = time_s + delay;
}

bool Simulation::settleInstant(int crossed) {
    // The timer whose crossing was landed on acts by that, not by a level that rounding may leave just short.
    if (crossed >= 0) {
        TimerState& t = m_timers[static_cast<std::size_t>(crossed)];
        if (!t.awake)
            t.powered = true;
        else if (t.outputDue_s > m_time) // else the output follows first, and the levels after it count
            flip(static_cast<std::size_t>(crossed), m_time);
    }
    bool changed = false;
    for (std::size_t k = 0; k < m_switches.size(); ++k)
        if (m_switches[k] != (m_network->board().switches[k].closed != pressed(k))) {
            changed = true;
            ++m_events;
        }
    m_rose = false;
    for (;;) {
        for (std::size_t k = 0; k < m_timers.size(); ++k) {
            TimerState& t = m_timers[k];
            if (t.outputDue_s > m_time) continue;
            t.outputDue_s = never;
            if (t.output == t.latch) continue;
            t.output = t.latch;
            changed = true;
            m_switchings.push_back({m_time, static_cast<int>(k), t.output});
            if (k == 0) {
                ++m_counted;
                m_rose = t.output;
                m_stepper.newPhase();
                for (std::size_t lamp = 0; lamp < m_stepper.lamps(); ++lamp)
                    m_charges.push_back(m_stepper.phaseCharge(lamp));
            }
        }
        if (changed && !enterConfiguration()) return false;
        changed = false;
        bool flipped = false;
        for (std::size_t k = 0; k < m_timers.size(); ++k) {
            TimerState& t = m_timers[k];
            const Watched w = m_stepper.watchedAtBase(static_cast<int>(k));
            t.powered = t.powered || w.supply >= 0;
            if (!t.awake && m_time >= wakeAfter_s && (t.powered || m_time >= wakeLatest_s)) t.awake = true;
            if (t.awake && m_time >= t.dwellUntil_s && wish(k, w, m_time) > 0) {
                flip(k, m_time);
                flipped = true;
            }
        }
        if (!flipped) return true;
    }
}

double Simulation::wishWithin(std::size_t timer, double t, double time_s) {
    m_stepper.endAt(t);
    return wish(timer, m_stepper.watchedAtEnd(static_cast<int>(timer)), time_s);
}

/// When within the attempted step of length h a timer's wish turns positive, or nothing. May move the end.
std::optional<double> Simulation::crossing(std::size_t timer, double h) {
    const TimerState& state = m_timers[timer];
    if (!plain(timer) || !onlyOne(timer)) return crossingBySearch(timer, h);
    return m_stepper.riseWithin(static_cast<int>(timer), state.latch ? threshold : trigger);
}

/// The usual course: in the last attempt one comparator alone can flip the latch, threshold from high,
/// trigger from low.
bool Simulation::onlyOne(std::size_t timer) const {
    const int k = static_cast<int>(timer);
    return m_stepper.rowAtBase(k, reset) < 0 && m_stepper.rowAtEnd(k, reset) < 0 &&
           (!m_timers[timer].latch ||
            (m_stepper.rowAtBase(k, trigger) <= 1e-9 && m_stepper.rowAtEnd(k, trigger) < 0));
}

std::optional<double> Simulation::crossingBySearch(std::size_t timer, double h) {
    const double pause = m_timers[timer].awake ? m_timers[timer].dwellUntil_s : 0;
    const auto wishAt = [&](double t) { return wishWithin(timer, t, std::max(m_time + t, pause)); };
    if (m_time + h < pause) return std::nullopt;
    double low = std::max(pause - m_time, 0.0), high = h;
    double atLow =
        low > 0 ? wishAt(low) : wish(timer, m_stepper.watchedAtBase(static_cast<int>(timer)), m_time);
    double atHigh = wishAt(h);
    if (atLow > 0)
        return low > 0 ? std::optional(low) : std::nullopt; // tripped while it was not read: acts when it is
    // A step that moves far may pass the level and come back: look within it.
    const bool far = std::abs(atHigh - atLow) > 0.05 && (atHigh > 0 ? atHigh > -0.3 * atLow : atHigh > -0.05);
    if (far)
        for (int k = 1; k < 4; ++k) {
            const double t = low + 0.25 * k * (h - low);
            const double value = wishAt(t);
            if (value > 0) {
                high = t;
                atHigh = value;
                break;
            }
        }
    if (!(atHigh > 0)) {
        m_stepper.endAt(h);
        return std::nullopt;
    }
    return firstRoot(wishAt, low, atLow, high, atHigh, 1e-12 * (m_time + h));
}

/// Whether a timer's levels are read all along the next step, which runs by the exponential march.
bool Simulation::plain(std::size_t timer) const {
    return m_stepper.denseIsExact() && m_timers[timer].awake && m_timers[timer].dwellUntil_s <= m_time;
}

int Simulation::foresee(double& h) {
    if (m_time + h > m_expectedEnd_s && m_time < m_expectedEnd_s) {
        h = m_expectedEnd_s - m_time;
        return m_expectedTimer;
    }
    if (!m_stepper.denseIsExact()) return -1;
    int first = -1;
    for (std::size_t k = 0; k < m_timers.size(); ++k) {
        if (!m_timers[k].awake) continue;
        const auto t = m_stepper.foreseenRise(static_cast<int>(k), m_timers[k].latch ? 1 : 0, h);
        if (!t) continue;
        const double delay = m_network->board().timers[k].sheet.delay;
        h = std::min(h, 1.006 * *t + delay);
        first = static_cast<int>(k);
    }
    return first;
}

/// The latch flips at `rise` within the step, which ends where the output follows.
Simulation::Landing Simulation::follow(std::size_t timer, double rise, double& h) {
    const double delay = m_network->board().timers[timer].sheet.delay;
    flip(timer, m_time + rise);
    h = rise + delay;
    m_timers[timer].outputDue_s = m_time + h;
    if (delay >= leastDwell_s) m_timers[timer].dwellUntil_s = m_time + h;
    return {static_cast<int>(timer), true};
}

/// Shortens the step so that it ends where the first timer to flip crosses its level, to rounding error, or
/// where its output follows, if nothing else happens before.
Simulation::Landing Simulation::land(double& h, double& error) {
    Landing landing;
    double first = h, second = h;
    bool moved = false;
    for (std::size_t k = 0; k < m_timers.size(); ++k)
        if (const auto t = crossing(k, h)) {
            moved = true;
            if (*t <= first) {
                second = first;
                first = *t;
                landing.timer = static_cast<int>(k);
            } else {
                second = std::min(second, *t);
            }
            if (m_timers.size() > 1) m_stepper.endAt(h); // the next timer is looked at from the whole step
        }
    if (landing.timer < 0) {
        if (moved) m_stepper.endAt(h);
        return landing;
    }
    const auto k = static_cast<std::size_t>(landing.timer);
    if (!m_stepper.denseIsExact()) {
        // The dense output only guesses: the step is taken again, to land on the crossing.
        for (int retake = 0; retake < 3 && first > 0; ++retake) {
            error = m_stepper.attempt(first);
            if (!std::isfinite(error)) return landing;
            const double here = wish(k, m_stepper.watchedAtEnd(landing.timer), never);
            constexpr double inward = 1.0 / 64;
            const double slope = (here - wishWithin(k, (1 - inward) * first, never)) / (inward * first);
            if (!(slope > 0)) break;
            const double shift = std::clamp(-here / slope, -0.5 * first, 0.5 * first);
            first += shift;
            if (std::abs(shift) <= 1e-12 * (m_time + first)) break;
        }
        error = m_stepper.attempt(first);
        h = first;
        return landing;
    }
    const double delay = m_network->board().timers[k].sheet.delay;
    if (m_stepper.endError(first) >
        0.1) { // its inside is less exact than its end: taken again, a little shorter
        const double shorter = std::min(h, (first + delay) * (1 + 1e-4));
        if (shorter < 0.999 * h) {
            error = m_stepper.attempt(shorter);
            if (!std::isfinite(error)) return landing;
            h = shorter;
            return land(h, error);
        }
    }
    const bool follows = m_timers[k].awake && first + delay < second && first + delay <= h &&
                         m_time + first + delay < nextTimed();
    h = follows ? first + delay : first;
    if (!m_stepper.endAt(h))
        error = never; // nothing has happened yet: the step can be taken again
    else if (follows)
        landing = follow(k, first, h);
    return landing;
}

void Simulation::record(double begin_s, double h) {
    if (!m_options.keepWaveform) return;
    m_wave->steps.push_back({begin_s, h, &m_stepper.reduced(), m_stepper.kind(), m_wave->numbers.size()});
    m_stepper.keep(m_wave->numbers);
}

RunReport Simulation::run(const Limits& limits) {
    RunReport report;
    report.accuracy = m_options.accuracy;
    m_events = 0;
    m_counted = 0;
    const auto stop = [&](StopReason reason) {
        report.reason = reason;
        report.reached_s = m_time;
        report.events = m_events;
        return report;
    };
    if (!enterConfiguration() || !settleInstant(-1)) return stop(StopReason::noSolution);
    m_counted = 0;

    constexpr int patience = 5, mostFailures = 60;
    int failures = 0; // running
    while (true) {
        if (m_counted >= limits.switchings) return stop(StopReason::flashesReached);
        if (m_events > limits.events) return stop(StopReason::eventBudget);
        if (report.steps + report.rejected >= limits.steps) return stop(StopReason::stepBudget);
        if ((report.steps & 15) == 0 && m_options.cancel && m_options.cancel->load(std::memory_order_relaxed))
            return stop(StopReason::cancelled);

        const double timed = std::min(nextTimed(), limits.until_s);
        if (timed <= m_time && limits.until_s <= m_time) return stop(StopReason::timeReached);
        const double wanted = m_h;
        bool byTime = false;
        double h = m_h;
        const int foreseen = foresee(h);
        if (m_time + 1.01 * h >= timed) { // no sliver of a step is left over
            h = timed - m_time;
            byTime = true;
        }
        const double leastStep = 1e-18 + 1e-15 * m_time;
        double error = 0, rise = -1;
        if (foreseen == 0 && !byTime && m_timers.size() == 1 && plain(0))
            error = m_stepper.attemptToRise(h, 0, m_timers[0].latch ? 1 : 0,
                                            m_network->board().timers[0].sheet.delay, rise);
        else
            error = m_stepper.attempt(h);
        if (!(error <= 1)) {
            ++report.rejected;
            // An error that hardly falls with the step belongs to something much faster than the step.
            const bool stubborn = failures >= patience || !std::isfinite(error);
            m_h = h * (stubborn ? 0.1 : std::clamp(0.9 / fourthRoot(error), 0.1, 0.8));
            if (m_h < leastStep || ++failures > mostFailures) return stop(StopReason::noSolution);
            continue;
        }
        const double full = h, fullError = error;
        const Landing landing = rise >= 0 && onlyOne(0) ? follow(0, rise, h) : land(h, error);
        if (!std::isfinite(error)) { // there is no end where the level is crossed
            ++report.rejected;
            m_h = 0.1 * std::min(h, full);
            if (m_h < leastStep || ++failures > mostFailures) return stop(StopReason::noSolution);
            continue;
        }
        failures = 0;
        const bool crossed = landing.timer >= 0;
        if (crossed) {
            const double length = m_time + h - m_phaseBegin_s;
            m_configuration->steady = std::abs(length - m_configuration->phaseLength_s) < 1e-2 * length;
            m_configuration->phaseLength_s = length;
            m_configuration->endedBy = landing.timer;
            byTime = false;
        }
        const double begin = m_time;
        m_time = byTime ? timed : m_time + h;
        record(begin, m_time - begin);

        // Where the next state begins at the end, it prepares its own steps.
        const bool switches = landing.flipped;
        if (switches)
            m_stepper.finish();
        else if (!m_stepper.accept())
            return stop(StopReason::noSolution);
        ++report.steps;
        const double ideal = 0.9 / fourthRoot(std::max(fullError, 1e-16));
        const double grow = std::clamp(ideal, 0.3, 100.0);
        if (m_firstStep && !crossed && !byTime) {
            m_configuration->firstStep_s = std::min(full * ideal, quietAfter_s);
            m_firstStep = false;
        }
        m_h = std::min(byTime ? std::max(wanted, full * grow) : full * grow, quietAfter_s);

        if (crossed || byTime) {
            const bool sameInstant = settleInstant(landing.flipped ? -1 : landing.timer);
            if (!sameInstant) return stop(StopReason::noSolution);
            if (m_events > limits.events) return stop(StopReason::eventBudget);
            if (limits.stopAtRise && m_rose) return stop(StopReason::flashesReached);
        } else if (m_time - m_phaseBegin_s > quietAfter_s && timed == never) {
            return stop(StopReason::quiet);
        }
    }
}

} // namespace blinkwright::engine
