#include "core/engine/large/large_simulation.h"
#include "core/engine/large/rows.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

namespace {

constexpr double leastDwell_s = 1e-7;  // device law: a latch holds each state at least this long
constexpr double wakeAfter_s = 20e-6;  // device law: nothing is read before
constexpr double wakeLatest_s = 50e-3; // device law: everything is read after
constexpr double quietAfter_s = 1e6;   // eleven days without a switching count as none ever

BlockTolerances tolerancesFor(double accuracy, const devices::Board& board) {
    double volts = 1;
    for (const auto& supply : board.supplies) volts = std::max(volts, std::abs(supply.voltage));
    return {.voltage_V = accuracy * volts, .charge = 2 * accuracy, .darkShare = 1e-3};
}

} // namespace

LargeSimulation::LargeSimulation(const devices::Board& board, Partition partition, const RunRequest& request)
    : m_board(board), m_request(request),
      m_all(std::move(partition), tolerancesFor(request.accuracy, board)) {
    m_timers.resize(board.timers.size());
    m_toggles.resize(board.switches.size());
    m_safeUntil_s.assign(board.timers.size(), -1);
    m_safeVariation_V.assign(board.timers.size(), -1);
    m_predicted_s.assign(board.timers.size(), never);
    m_timersOf.resize(at(m_all.blocks()));
    m_togglesOf.resize(at(m_all.blocks()));
    m_changed.assign(at(m_all.blocks()), 0);
    for (int b = 0; b < m_all.blocks(); ++b) {
        const Piece& piece = m_all.block(b).piece();
        for (std::size_t k = 0; k < piece.timers.size(); ++k) {
            Timer& timer = m_timers[at(piece.timers[k])];
            timer.block = b;
            timer.local = static_cast<int>(k);
            timer.delay_s = piece.board.timers[k].sheet.delay;
            m_timersOf[at(b)].push_back(piece.timers[k]);
        }
        for (std::size_t k = 0; k < piece.switches.size(); ++k) {
            Toggle& toggle = m_toggles[at(piece.switches[k])];
            toggle.block = b;
            toggle.local = static_cast<int>(k);
            m_togglesOf[at(b)].push_back(piece.switches[k]);
        }
    }
    if (!request.ignorePresses)
        for (const auto& part : board.switches)
            for (const auto& press : part.presses) {
                m_edges.push_back(press[0]);
                m_edges.push_back(press[1]);
            }
    std::sort(m_edges.begin(), m_edges.end());
    m_edges.erase(std::unique(m_edges.begin(), m_edges.end()), m_edges.end());
    m_sleeping = static_cast<int>(m_timers.size());
    if (request.keepWaveform) m_wave = std::make_shared<BlockWave>(m_board, m_all);
    m_all.onBase = [this](int block) {
        ++m_bases;
        if (m_wave) m_wave->keepBase(m_all, block);
    };
}

bool LargeSimulation::isClosed(int toggle, double time_s) const {
    const auto& part = m_board.switches[at(toggle)];
    bool pressed = false;
    if (!m_request.ignorePresses)
        for (const auto& press : part.presses) pressed = pressed || (press[0] <= time_s && time_s < press[1]);
    return part.closed != pressed;
}

void LargeSimulation::configure(int block) {
    m_closed.clear();
    m_high.clear();
    for (const int k : m_togglesOf[at(block)]) m_closed.push_back(m_toggles[at(k)].closed);
    for (const int k : m_timersOf[at(block)]) m_high.push_back(m_timers[at(k)].output);
    m_all.configure(block, m_closed, m_high);
}

double LargeSimulation::wishOf(const Timer& t, const Watched& w, double time_s) const {
    if (!t.awake) return time_s < wakeAfter_s ? -1.0 : w.supply;
    if (time_s < t.dwellUntil_s) return -1.0;
    // Reset first, then trigger, then threshold: the latch's order of precedence.
    if (t.latch) return std::max(w.reset, std::min(w.threshold, -w.trigger));
    return std::min(-w.reset, w.trigger);
}

void LargeSimulation::flip(int timer, double time_s) {
    Timer& t = m_timers[at(timer)];
    ++m_events;
    t.latch = !t.latch;
    t.dwellUntil_s = time_s + std::max(t.delay_s, leastDwell_s);
    t.outputDue_s = time_s + t.delay_s;
    m_safeUntil_s[at(timer)] = -1;
    m_predicted_s[at(timer)] = never;
    m_pending.push_back(timer);
}

void LargeSimulation::look(std::size_t timer) {
    Timer& t = m_timers[timer];
    const Look look = m_all.look(t.block, t.local);
    const Watched& w = look.now;
    if (!t.awake) {
        t.powered = t.powered || w.supply >= 0;
        if (m_time >= wakeAfter_s && (t.powered || m_time >= wakeLatest_s)) {
            t.awake = true;
            --m_sleeping;
        }
    }
    t.wish = wishOf(t, w, m_time);
    t.looked_s = m_time;
    m_predicted_s[timer] = never;
    m_safeUntil_s[timer] = m_safeVariation_V[timer] = -1;
    if (!t.awake) return;
    const double now = wishOf(t, w, never);
    const double ahead = m_meanInterval_s > 0 ? m_meanInterval_s : 1e-6;
    const Watched& rate = look.rate;
    const double then = wishOf(t,
                               {w.trigger + ahead * rate.trigger, w.threshold + ahead * rate.threshold,
                                w.reset + ahead * rate.reset, w.supply},
                               never);
    if (then > now) m_predicted_s[timer] = m_time - now * ahead / (then - now) + t.delay_s;
    if (m_time < t.dwellUntil_s || !(now < 0)) return;
    // Half of what is missing may come from its own motion, which only slows down, half from the borders.
    m_safeUntil_s[timer] = m_time - 0.5 * now / look.fastest;
    m_safeVariation_V[timer] = m_all.variation() - 0.5 * now / look.gain;
}

bool LargeSimulation::readLevels() {
    bool dueNow = false;
    for (std::size_t k = 0; k < m_timers.size(); ++k) {
        if (isSafe(k, m_time, m_all.variation())) continue;
        look(k);
        Timer& t = m_timers[k];
        if (!t.awake || !(t.wish > 0)) continue;
        // By the laws it may not be so yet.
        if (Watched exact; m_all.watchedNowExactly(t.block, t.local, exact)) {
            t.wish = wishOf(t, exact, m_time);
            if (!(t.wish > 0)) {
                m_all.renew(t.block);
                m_safeUntil_s[k] = t.looked_s = -1;
                continue;
            }
        }
        flip(static_cast<int>(k), m_time);
        t.wish = -1;
        dueNow = dueNow || t.outputDue_s <= m_time;
    }
    return dueNow;
}

bool LargeSimulation::settleInstant() {
    for (;;) {
        bool changed = false;
        for (std::size_t k = 0; k < m_toggles.size(); ++k) {
            Toggle& toggle = m_toggles[k];
            const bool closed = isClosed(static_cast<int>(k), m_time);
            if (closed == toggle.closed) continue;
            toggle.closed = closed;
            m_changed[at(toggle.block)] = 1;
            ++m_events;
            changed = true;
        }
        std::sort(m_pending.begin(), m_pending.end());
        std::erase_if(m_pending, [&](int k) {
            Timer& t = m_timers[at(k)];
            if (t.outputDue_s > m_time) return false;
            t.outputDue_s = never;
            m_safeUntil_s[at(k)] = -1;
            if (t.output == t.latch) return true;
            t.output = t.latch;
            m_changed[at(t.block)] = 1;
            changed = true;
            m_switchings.push_back({m_time, k, t.output});
            if (k == 0) ++m_counted;
            return true;
        });
        if (changed) {
            for (int b = 0; b < m_all.blocks(); ++b)
                if (std::exchange(m_changed[at(b)], 0)) {
                    configure(b);
                    for (const int k : m_timersOf[at(b)]) m_safeUntil_s[at(k)] = -1;
                }
            m_jumped = true;
            if (!m_all.settle()) return false;
            m_lastEvent_s = m_time;
        }
        if (!readLevels()) return true;
        if (m_events >= m_request.eventBudget) return true;
    }
}

double LargeSimulation::nextTimed() const {
    double next = never;
    for (const int k : m_pending) next = std::min(next, m_timers[at(k)].outputDue_s);
    if (m_sleeping > 0) {
        if (m_time < wakeAfter_s)
            next = std::min(next, wakeAfter_s);
        else if (m_time < wakeLatest_s)
            next = std::min(next, wakeLatest_s);
    }
    const auto edge = std::upper_bound(m_edges.begin(), m_edges.end(), m_time);
    if (edge != m_edges.end()) next = std::min(next, *edge);
    return next;
}

/// How long until the next output will switch, as the wishes moved when they were looked at last.
double LargeSimulation::predicted() {
    double soonest = never;
    for (const double time : m_predicted_s) soonest = std::min(soonest, time);
    return std::max(soonest - m_time, 0.0);
}

/// When within the attempted step a timer's wish turns positive, or nothing.
std::optional<double> LargeSimulation::crossing(int timer, double h) {
    Timer& t = m_timers[at(timer)];
    if (t.looked_s != m_time) look(at(timer));
    const double pause = t.awake ? t.dwellUntil_s : wakeAfter_s;
    if (m_time + h < pause) return std::nullopt;
    double bias = 0; // of the wish as it is linearised
    const auto wishAt = [&](double s) {
        return wishOf(t, m_all.watchedAt(t.block, t.local, s), std::max(m_time + s, pause)) - bias;
    };
    double low = std::max(pause - m_time, 0.0), high = h;
    double atLow = low > 0 ? wishAt(low) : t.wish;
    double atHigh = wishOf(t, m_all.watchedAtEnd(t.block, t.local), std::max(m_time + h, pause));
    if (atLow > 0) {
        // Tripped while it was not read: acts when it is.
        Watched exact;
        if (low > 0 || !m_all.watchedNowExactly(t.block, t.local, exact)) return low;
        bias = atLow - wishOf(t, exact, m_time);
        if (!(bias >= atLow)) return low;
        atLow -= bias;
        atHigh -= bias;
        m_all.renew(t.block);
        m_safeUntil_s[at(timer)] = -1;
    }
    // A step that moves far may pass the level and come back: look within it.
    if (std::abs(atHigh - atLow) > 0.05 && (atHigh > 0 ? atHigh > -0.3 * atLow : atHigh > -0.05))
        for (int k = 1; k < 4; ++k) {
            const double s = low + 0.25 * k * (h - low);
            const double value = wishAt(s);
            if (value > 0) {
                high = s;
                atHigh = value;
                break;
            }
        }
    if (!(atHigh > 0)) return std::nullopt;
    // The root of the wish as it is linearised: regula falsi with the Illinois step.
    const double from = low, until = high, tolerance = 1e-13 * (m_time + h);
    double root = high, last = low;
    int side = 0;
    for (int iteration = 0; iteration < 60; ++iteration) {
        root = low + (high - low) * (-atLow) / (atHigh - atLow);
        if (!(root > low && root < high)) root = 0.5 * (low + high);
        const double value = wishAt(root);
        if (value == 0 || std::abs(root - last) <= tolerance || high - low <= tolerance) break;
        last = root;
        if (value > 0) {
            if (side > 0) atLow *= 0.5;
            high = root;
            atHigh = value;
            side = 1;
        } else {
            if (side < 0) atHigh *= 0.5;
            low = root;
            atLow = value;
            side = -1;
        }
    }
    // By the laws, the crossing is a little off: moved by what is missing over the slope.
    for (int turn = 0; turn < 2; ++turn) {
        Watched w;
        if (!m_all.watchedExactly(t.block, t.local, root, w)) return root;
        const double missing = -wishOf(t, w, std::max(m_time + root, pause));
        const double probe = std::max(1e-3 * (until - from), 1e-12);
        const double slope = (wishAt(root) - wishAt(root - probe)) / probe;
        if (!(slope > 0)) break;
        const double moved = root + missing / slope;
        if (moved > h) { // not within this step after all
            m_all.renew(t.block);
            m_safeUntil_s[at(timer)] = -1;
            return std::nullopt;
        }
        const double shift = std::max(moved, from) - root;
        root += shift;
        // What is left of a shift is a small share of it: the slope is that of the linearised wish.
        if (std::abs(shift) <= std::max(1e-11, 0.1 * m_request.accuracy) * (m_time + root)) break;
    }
    return root;
}

/// The flips within the step that the first due output ends, into m_crossings.
bool LargeSimulation::findCrossings(double h) {
    m_crossings.clear();
    const double variation = m_all.variation() + m_all.attemptVariation();
    for (std::size_t k = 0; k < m_timers.size(); ++k)
        if (isSafe(k, m_time + h, variation))
            continue;
        else if (const auto s = crossing(static_cast<int>(k), h))
            m_crossings.push_back({static_cast<int>(k), *s});
    return !m_crossings.empty();
}

bool LargeSimulation::configureAll() {
    for (std::size_t k = 0; k < m_toggles.size(); ++k)
        m_toggles[k].closed = isClosed(static_cast<int>(k), m_time);
    for (int b = 0; b < m_all.blocks(); ++b) configure(b);
    return m_all.settle();
}

bool LargeSimulation::start() {
    m_all.powerOn();
    return configureAll() && settleInstant();
}

RunReport LargeSimulation::loop() {
    RunReport report;
    report.accuracy = m_request.accuracy;
    const auto stop = [&](StopReason reason) {
        report.reason = reason;
        report.reached_s = m_time;
        report.steps = m_steps + m_bases;
        report.rejected = m_rejected + m_all.rejected();
        report.events = m_events;
        return report;
    };
    if (!start()) return stop(StopReason::noSolution);
    m_counted = 0;
    const long wanted = 2L * m_request.flashes;
    m_h = 1e-6;
    while (true) {
        if (m_counted >= wanted) return stop(StopReason::flashesReached);
        if (m_time >= m_request.longest_s) return stop(StopReason::timeReached);
        if (m_request.cancel && m_request.cancel->load(std::memory_order_relaxed))
            return stop(StopReason::cancelled);
        if (m_events >= m_request.eventBudget) return stop(StopReason::eventBudget);
        if (m_steps + m_bases + m_rejected + m_all.rejected() >= m_request.stepBudget)
            return stop(StopReason::stepBudget);

        // --- how far
        const double timed = nextTimed();
        const double limit = std::min(timed, m_request.longest_s);
        double most = never;
        const double next = predicted();
        double wish = std::min(m_h, std::max(1.15 * next, 1e-9));
        wish = std::min(wish, limit - m_time);
        if (!m_all.reach(wish, most)) return stop(StopReason::noSolution);
        double h = std::min(wish, most);
        bool whole = h < m_h;
        double error = 0, off = 0;
        for (int turn = 0;; ++turn) {
            if (m_time + 1.001 * h >= limit || m_time + h == m_time) { // no sliver of a step is left over
                h = std::min(limit - m_time, h * 1.001);
            }
            error = m_all.attempt(h);
            if (error <= 1) {
                off = m_all.excursion();
                if (off <= 1) break;
                if (!m_all.isSettled()) { // once for each block at this instant
                    if (!m_all.reach(h, most)) return stop(StopReason::noSolution);
                    h = std::min(h, most);
                    continue;
                }
                error = off * off * off;
            }
            ++m_rejected;
            whole = false;
            h *= std::isfinite(error) ? std::clamp(0.9 * std::cbrt(1 / error), 0.1, 0.8) : 0.1;
            if (h < 1e-18 + 1e-15 * m_time || turn > 60) return stop(StopReason::noSolution);
        }
        double end_s = m_time + h;
        if (end_s >= limit || limit - end_s < 1e-15 * limit) end_s = limit;

        // --- what switches meanwhile
        double s = h;
        if (findCrossings(h)) {
            std::sort(m_crossings.begin(), m_crossings.end(),
                      [](const Crossing& a, const Crossing& b) { return a.s < b.s; });
            for (const Crossing& c : m_crossings) {
                if (m_time + c.s > end_s) break;
                Timer& t = m_timers[at(c.timer)];
                if (!t.awake) {
                    end_s = std::min(end_s, m_time + c.s);
                    t.awake = true;
                    --m_sleeping;
                    continue;
                }
                flip(c.timer, m_time + c.s);
                end_s = std::min(end_s, t.outputDue_s);
            }
            if (end_s < m_time + h) s = end_s - m_time;
        }
        if (m_wave && s > 0) m_wave->keepStep(m_all, s, m_jumped);
        m_jumped = false;
        m_all.advance(s, end_s);
        m_time = end_s;
        ++m_steps;
        error = std::max(error, off * off * off);
        const double grow = error > 1e-9 ? std::clamp(0.9 * std::cbrt(1 / error), 0.5, 8.0) : 8.0;
        m_h = whole ? std::max(m_h, h * grow) : h * grow;
        m_h = std::min(m_h, quietAfter_s);
        const double before = m_lastEvent_s;
        if (!settleInstant()) return stop(StopReason::noSolution);
        if (m_lastEvent_s > before) m_meanInterval_s = m_lastEvent_s - before;
        if (m_time - m_lastEvent_s > quietAfter_s && nextTimed() == never) return stop(StopReason::quiet);
    }
}

Run LargeSimulation::run() {
    Run run;
    run.report = loop();
    run.switchings = std::move(m_switchings);
    for (const Timer& t : m_timers) run.outputs.push_back(t.output);
    if (m_wave) run.wave = BlockWave::waveform(std::move(m_wave));
    return run;
}

Run simulate(const devices::Board& board, Partition partition, const RunRequest& request) {
    return LargeSimulation(board, std::move(partition), request).run();
}

} // namespace blinkwright::engine::large
