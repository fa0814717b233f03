#include "tests/reference/ida_board.h"

#include "tests/reference/consistent.h"
#include "tests/reference/ida_session.h"

#include <map>
#include <stdexcept>

namespace blinkwright::reference {

namespace pin = circuit::timerPin;

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
constexpr double wakeAfter_s = 20e-6, wakeLatest_s = 50e-3; // nothing is read before; everything after
constexpr double poweredShare = 0.8;                        // of the nominal supply
constexpr double shortestHold_s = 1e-7;

/// How far one timer's comparators are tripped; above 0: tripped [V].
struct Distances {
    double trigger, threshold, reset, powered;
};
/// Roots a timer: one of its latch, one of its supply.
constexpr std::size_t rootsEach = 2;

struct TimerMemory {
    bool latch = true, output = true, awake = false, sawSupply = false;
    double outputDue_s = never, holdUntil_s = 0;
};

} // namespace

class IdaBoard::Work final : public IdaProblem {
  public:
    Work(const devices::Board& board, const Settings& settings)
        : m_board(board), m_settings(settings), m_layout(m_board, !settings.quadratures), m_values(m_layout),
          m_session(*this, settings) {
        for (const auto& part : m_board.switches)
            for (const auto& press : part.presses) m_edges.insert(m_edges.end(), press.begin(), press.end());
        m_crossed.resize(m_board.timers.size() * rootsEach);
        m_lampCharges.resize(m_layout.lamps.size());
    }

    // What IDA asks for.
    const Layout& layout() const override { return m_layout; }
    const Equations& equations() const override { return *m_now->equations; }
    int roots() const override { return static_cast<int>(m_board.timers.size() * rootsEach); }
    void roots(const double* y, double* out) const override {
        for (std::size_t t = 0; t < m_board.timers.size(); ++t) {
            const Distances d = distances(t, y);
            *out++ = offZero(toFlip(m_timers[t].latch, d));
            *out++ = offZero(d.powered);
        }
    }

    Trace run(const Limits& limits) {
        m_trace = {};
        m_time = 0;
        m_timers.assign(m_board.timers.size(), {});
        m_outputs.assign(m_timers.size(), true);
        m_now = nullptr;
        double* y = m_session.y();
        std::fill(y, y + m_layout.size, 0.0);
        for (std::size_t k = 0; k < m_board.capacitors.size(); ++k)
            y[m_layout.algebraic + static_cast<int>(k)] = m_board.capacitors[k].initialVoltage;
        m_charge.assign(m_board.junctions.size(), 0);
        m_counted = 0;
        clearCrossed();
        enter();
        for (settle(); m_counted < limits.switchings && m_time < limits.until_s; settle()) {
            const double next = std::min(nextTimed(), limits.until_s);
            clearCrossed();
            if (m_session.advance(next, m_time, m_found)) markCrossed();
        }
        m_session.count(m_trace);
        m_trace.reached_s = m_time;
        return std::move(m_trace);
    }

  private:
    struct State {
        std::unique_ptr<Equations> equations;
        std::vector<double> algebraic; ///< where the last solution after entering was: the next first guess
    };

    static double at(const double* y, int unknown) { return unknown >= 0 ? y[unknown] : 0; }

    Distances distances(std::size_t t, const double* y) const {
        const auto& timer = m_board.timers[t];
        const auto& p = m_layout.pins[t];
        const double ground = at(y, p[pin::ground]), control = at(y, p[pin::control]) - ground;
        const auto volts = [&](int k) { return at(y, p[static_cast<std::size_t>(k)]) - ground; };
        return {.trigger = timer.connected(pin::trigger) ? 0.5 * control - volts(pin::trigger) : -1,
                .threshold = timer.connected(pin::threshold) ? volts(pin::threshold) - control : -1,
                .reset = timer.connected(pin::reset) ? timer.sheet.reset_level - volts(pin::reset) : -1,
                .powered = volts(pin::supply) - poweredShare * timer.nominalSupply};
    }
    /// The law of the latch as one number that rises through 0 where the latch flips. High it falls to an
    /// active reset, or to the threshold while the trigger is not tripped; low it rises to the trigger while
    /// reset is not active.
    static double toFlip(bool high, const Distances& d) {
        if (high) return std::max(d.reset, d.trigger > 0 ? -d.trigger : d.threshold);
        return d.reset > 0 ? -d.reset : d.trigger;
    }
    /// Pins in one net keep a distance of exactly 0, which IDA takes for roots without end; 0 is not tripped.
    static double offZero(double distance) {
        return distance == 0 ? -std::numeric_limits<double>::min() : distance;
    }
    void clearCrossed() { std::fill(m_crossed.begin(), m_crossed.end(), false); }
    /// What IDA found to cross has crossed, also where rounding leaves it a hair short.
    void markCrossed() {
        for (std::size_t k = 0; k < m_crossed.size(); ++k) m_crossed[k] = m_found[k] > 0;
    }

    bool pressed(const devices::Switch& part) const {
        for (const auto& press : part.presses)
            if (press[0] <= m_time && m_time < press[1]) return true;
        return false;
    }
    std::vector<bool> switchesNow() const {
        std::vector<bool> closed;
        for (const auto& part : m_board.switches) closed.push_back(part.closed != pressed(part));
        return closed;
    }

    double nextTimed() const {
        double next = never;
        const auto offer = [&](double time) {
            if (time > m_time) next = std::min(next, time);
        };
        for (const auto& timer : m_timers) {
            offer(timer.outputDue_s);
            offer(timer.holdUntil_s);
            if (timer.awake) continue;
            offer(wakeAfter_s);
            offer(wakeLatest_s);
        }
        for (double edge : m_edges) offer(edge);
        return next;
    }

    /// New equations from here on: keeps the capacitor voltages, solves for all else, restarts IDA.
    void enter() {
        if (m_now) {
            m_session.takeCharges(m_lampCharges.data());
            for (std::size_t k = 0; k < m_layout.lamps.size(); ++k)
                m_charge[m_layout.lamps[k].junction] += m_lampCharges[k];
        }
        m_closed = switchesNow();
        std::vector<bool> key = m_closed;
        key.insert(key.end(), m_outputs.begin(), m_outputs.end());
        State& state = m_states[key];
        if (!state.equations) state.equations = std::make_unique<Equations>(m_layout, m_closed, m_outputs);
        m_now = &state;
        double* y = m_session.y();
        std::copy(state.algebraic.begin(), state.algebraic.end(), y);
        std::fill(y + m_layout.algebraic + m_board.capacitors.size(), y + m_layout.size, 0.0); // charges
        if (!m_values.solve(*state.equations, y, m_session.yp()))
            throw std::runtime_error("no consistent values at " + std::to_string(m_time) + " s");
        state.algebraic.assign(y, y + m_layout.algebraic);
        m_session.restart(m_time);
        ++m_trace.restarts;
    }

    /// Does all that is due at the present instant, until nothing is.
    void settle() {
        for (bool again = true; again;) {
            again = false;
            bool changed = switchesNow() != m_closed;
            std::vector<std::size_t> switched;
            for (std::size_t t = 0; t < m_timers.size(); ++t) {
                TimerMemory& timer = m_timers[t];
                if (timer.outputDue_s > m_time) continue;
                timer.outputDue_s = never;
                if (timer.output == timer.latch) continue;
                m_outputs[t] = timer.output = timer.latch;
                switched.push_back(t);
            }
            if (changed || !switched.empty()) {
                enter();
                clearCrossed(); // the new levels count, not what crossed the old ones
            }
            for (std::size_t t : switched) {
                m_trace.switchings.push_back({m_time, static_cast<int>(t), m_timers[t].output, m_charge});
                std::fill(m_charge.begin(), m_charge.end(), 0.0);
                if (t == 0) ++m_counted;
            }
            for (std::size_t t = 0; t < m_timers.size(); ++t) again = read(t) || again;
        }
    }

    /// Reads one timer's levels and sets its latch. @return whether its output is due at once.
    bool read(std::size_t t) {
        TimerMemory& timer = m_timers[t];
        const Distances d = distances(t, m_session.y());
        timer.sawSupply = timer.sawSupply || d.powered >= 0 || m_crossed[t * rootsEach + 1];
        if (!timer.awake) timer.awake = (m_time >= wakeAfter_s && timer.sawSupply) || m_time >= wakeLatest_s;
        if (!timer.awake || m_time < timer.holdUntil_s) return false;
        bool latch = timer.latch;
        if (m_crossed[t * rootsEach])
            latch = !latch;
        else if (d.reset > 0)
            latch = false;
        else if (d.trigger > 0)
            latch = true;
        else if (d.threshold > 0)
            latch = false;
        if (latch == timer.latch) return false;
        const double delay = m_board.timers[t].sheet.delay;
        timer.latch = latch;
        timer.holdUntil_s = m_time + std::max(delay, shortestHold_s);
        timer.outputDue_s = m_time + delay;
        return delay <= 0;
    }

    const devices::Board m_board;
    const Settings m_settings;
    const Layout m_layout;
    ConsistentValues m_values;
    IdaSession m_session;
    std::vector<double> m_edges;
    std::vector<TimerMemory> m_timers;
    std::vector<bool> m_outputs, m_closed, m_crossed;
    std::vector<int> m_found;
    std::map<std::vector<bool>, State> m_states;
    State* m_now = nullptr;
    std::vector<double> m_charge, m_lampCharges;
    double m_time = 0;
    int m_counted = 0;
    Trace m_trace;
};

IdaBoard::IdaBoard(const devices::Board& board, const Settings& settings)
    : m_work(std::make_unique<Work>(board, settings)) {
}
IdaBoard::~IdaBoard() = default;

Trace IdaBoard::run(const Limits& limits) {
    return m_work->run(limits);
}

} // namespace blinkwright::reference
