#include "core/study/stall.h"

#include "core/study/currents.h"
#include "core/study/dc_path.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace pins = circuit::timerPin;
using devices::Node;
using units::Unit;

namespace {

/// What is under a nanovolt is rounding.
double rounded(double value) {
    return std::abs(value) < 1e-9 ? 0 : value;
}
std::string volts(double value) {
    return units::formatQuantity(rounded(value), Unit::volt);
}

/// Two voltages with as many digits as it takes to tell them apart.
std::pair<std::string, std::string> apart(double a, double b) {
    for (int digits = 3; digits < 10; ++digits) {
        auto texts = std::pair{units::formatQuantity(rounded(a), Unit::volt, digits),
                               units::formatQuantity(rounded(b), Unit::volt, digits)};
        if (texts.first != texts.second) return texts;
    }
    return {volts(a), volts(b)};
}

/// The first timer at rest.
class Rest {
  public:
    Rest(const devices::Board& board, const engine::Run& run)
        : m_board(board), m_timer(board.timers.front()), m_high(run.outputs.front()) {
        run.wave.instant(run.wave.end_s(), engine::Side::before, m_at);
        m_level = inner().control_V - inner().ground_V;
    }

    std::vector<Cause> causes() const {
        if (m_timer.connected(pins::reset) && at(pins::reset) < m_timer.sheet.reset_level) return {byReset()};
        return {m_high ? stuckHigh() : stuckLow()};
    }

  private:
    const engine::TimerInstant& inner() const { return m_at.timers.front(); }
    Node node(int pin) const { return m_timer.pins[static_cast<std::size_t>(pin)]; }
    /// Voltage of a pin against pin 1.
    double at(int pin) const {
        return node(pin) == devices::open
                   ? 0
                   : m_at.node_V[static_cast<std::size_t>(node(pin))] - inner().ground_V;
    }
    std::string place(int pin) const { return m_timer.ref + ":" + std::to_string(pin + 1); }
    std::string net(int pin) const {
        return "net '" + m_board.nodeNames[static_cast<std::size_t>(node(pin))] + "'";
    }
    /// Where the switching levels are not where the divider alone puts them, whose doing that is.
    std::string levelNote() const {
        const double supply = inner().supply_V - inner().ground_V;
        if (std::abs(m_level / supply - 2.0 / 3) < 0.05) return "";
        return " (pin 5 holds it there)";
    }

    Cause byReset() const {
        return {"Reset (pin 4) of " + m_timer.ref + ", in " + net(pins::reset) + ", stays at " +
                    volts(at(pins::reset)) + ", under its level of " + volts(m_timer.sheet.reset_level) +
                    ", which holds the output low: join it to the supply.",
                {place(pins::reset)}};
    }

    /// Who feeds and who drains a pin's net.
    struct Balance {
        std::string text; ///< `it gets 40 uA through R2, and leakage of C1 takes 40 uA`; may be empty
        std::vector<std::string> fed;     ///< by what
        std::vector<std::string> drained; ///< by parts; what leaks and the inputs of timers are not counted
    };
    Balance balance(int pin, std::vector<std::string>& places) const {
        std::vector<std::string> in, out;
        Balance b;
        for (const Flow& flow : flowsInto(m_board, m_at, node(pin))) {
            const std::string amount = units::formatQuantity(std::abs(flow.current_A), Unit::ampere);
            if (flow.current_A > 0) {
                in.push_back(amount + " through " + flow.name);
                b.fed.push_back(flow.name);
            } else {
                out.push_back(flow.name + " takes " + amount);
                if (flow.name == flow.place) b.drained.push_back(flow.name);
            }
            if (std::find(places.begin(), places.end(), flow.place) == places.end())
                places.push_back(flow.place);
        }
        if (!in.empty() && !out.empty()) b.text = "it gets " + listed(in) + ", and " + listed(out);
        return b;
    }

    /// A way for current from the supply or a high output to a pin's net, one that conducts before one that
    /// does not.
    std::optional<DcPath> charging(int pin) const {
        std::set<Node> low{node(pins::ground)};
        for (const auto& supply : m_board.supplies) low.insert(supply.minus);
        std::optional<DcPath> best;
        const auto consider = [&](Node from) {
            if (low.contains(from)) return;
            const auto path = dcPath(m_board, from, node(pin), low);
            if (path && (!best || (path->conducts() && !best->conducts()))) best = path;
        };
        consider(node(pins::supply));
        for (const auto& supply : m_board.supplies) consider(supply.plus);
        for (const auto& timer : m_board.timers) consider(timer.pins[pins::output]);
        return best;
    }

    Cause stuckHigh() const {
        const bool joined = node(pins::trigger) == node(pins::threshold);
        if (m_timer.connected(pins::trigger) && at(pins::trigger) < 0.5 * m_level && !joined) {
            const auto [found, level] = apart(at(pins::trigger), 0.5 * m_level);
            return {"Trigger (pin 2) of " + m_timer.ref + ", in " + net(pins::trigger) + ", stays at " +
                        found + ", under its level of " + level + levelNote() +
                        ", which keeps the output high: join pins 2 and 6 to the timing capacitor.",
                    {place(pins::trigger)}};
        }
        if (!m_timer.connected(pins::threshold))
            return {"Threshold (pin 6) of " + m_timer.ref +
                        " is joined to nothing, so nothing ends the high phase: join it to pin 2.",
                    {place(pins::threshold)}};
        const auto [found, level] = apart(at(pins::threshold), m_level);
        Cause cause{"Threshold (pin 6) of " + m_timer.ref + " comes to rest at " + found +
                        ", under its level of " + level + levelNote() + ": ",
                    {place(pins::threshold)}};
        const auto path = charging(pins::threshold);
        if (!path) {
            cause.sentence += net(pins::threshold) +
                              " is on no charging path. Join R1 from the supply to pin 7 "
                              "and R2 from pin 7 to pins 2 and 6.";
        } else if (!path->conducts()) {
            const bool isOpen = !path->openSwitches.empty();
            const auto& blocking = isOpen ? path->openSwitches : path->backward;
            cause.places.insert(cause.places.end(), blocking.begin(), blocking.end());
            cause.sentence += listed(blocking) + (isOpen ? " is open" : " lies the wrong way round") +
                              " in its only charging path.";
        } else {
            const Balance flows = balance(pins::threshold, cause.places);
            for (const std::string& part : path->parts)
                if (std::find(cause.places.begin(), cause.places.end(), part) == cause.places.end())
                    cause.places.push_back(part);
            cause.sentence += flows.text.empty() ? "nothing charges it further" : flows.text;
            cause.sentence +=
                flows.drained.empty()
                    ? ". Take smaller timing resistors or a capacitor that leaks less."
                    : ". Take " + flows.drained.front() + " off that net, or smaller timing resistors.";
        }
        return cause;
    }

    Cause stuckLow() const {
        if (!m_timer.connected(pins::trigger))
            return {"Trigger (pin 2) of " + m_timer.ref +
                        " is joined to nothing, so nothing starts the next flash: join it to pin 6.",
                    {place(pins::trigger)}};
        const auto [found, level] = apart(at(pins::trigger), 0.5 * m_level);
        Cause cause{"Trigger (pin 2) of " + m_timer.ref + " comes to rest at " + found +
                        ", above its level of " + level + levelNote() + ": ",
                    {place(pins::trigger)}};
        // A discharge pin that cannot pull its own net down is to blame before anything behind it.
        if (m_timer.connected(pins::discharge) && at(pins::discharge) > 0.5 * m_level &&
            node(pins::discharge) != node(pins::trigger)) {
            const Balance flows = balance(pins::discharge, cause.places);
            if (!flows.text.empty()) {
                cause.sentence += "discharge (pin 7) does not pull its net under " +
                                  volts(at(pins::discharge)) + ", since " + flows.text +
                                  ". Take larger resistors there.";
                return cause;
            }
        }
        std::set<Node> high{node(pins::supply)};
        for (const auto& supply : m_board.supplies) high.insert(supply.plus);
        std::optional<DcPath> path;
        for (const int pin : {pins::discharge, pins::output})
            if (const auto way = dcPath(m_board, node(pins::trigger), node(pin), high);
                way && (!path || !path->conducts()))
                path = way;
        const Balance flows = path && path->conducts() ? balance(pins::trigger, cause.places) : Balance{};
        if (flows.text.empty())
            cause.sentence += "the timing capacitor does not discharge. Join pin 7 to it through R2.";
        else
            cause.sentence += flows.text + ". Lead " + flows.fed.front() +
                              " to pin 7 instead of the timing capacitor, or take it out.";
        return cause;
    }

    const devices::Board& m_board;
    const devices::Timer& m_timer;
    bool m_high;
    engine::Instant m_at;
    double m_level = 0; ///< threshold level against pin 1
};

} // namespace

std::vector<Cause> stallCauses(const devices::Board& board, const engine::Run& run) {
    if (run.wave.empty() || board.timers.empty()) return {};
    return Rest(board, run).causes();
}

double restReached_s(const devices::Board& board, const engine::Waveform& wave) {
    if (wave.empty()) return 0;
    double scale = 1e-3;
    for (const auto& supply : board.supplies) scale = std::max(scale, std::abs(supply.voltage));
    const auto knots = wave.knots(1);
    engine::Instant last, at;
    wave.instant(knots.back(), last);
    for (std::size_t k = knots.size(); k-- > 0;) {
        wave.instant(knots[k], at);
        for (std::size_t node = 0; node < at.node_V.size(); ++node)
            if (std::abs(at.node_V[node] - last.node_V[node]) > 0.01 * scale) return wave.time(knots[k]);
    }
    return wave.time(knots.front());
}

} // namespace blinkwright::study
