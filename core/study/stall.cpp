#include "core/study/stall.h"

#include "core/base/wording.h"
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
    const std::string& net(int pin) const { return m_board.nodeNames[static_cast<std::size_t>(node(pin))]; }
    /// A switching level; where it is not where the divider alone puts it, with whose doing that is.
    std::string levelText(const std::string& level) const {
        const double supply = inner().supply_V - inner().ground_V;
        if (std::abs(m_level / supply - 2.0 / 3) < 0.05) return level;
        return wording::inWords("%1 (pin 5 holds it there)", level);
    }

    Cause byReset() const {
        return {wording::inWords(
                    "Reset (pin 4) of %1, in net '%2', stays at %3, under its level of %4, which "
                    "holds the output low: join it to the supply.",
                    m_timer.ref, net(pins::reset), volts(at(pins::reset)), volts(m_timer.sheet.reset_level)),
                {place(pins::reset)}};
    }

    /// Who feeds and who drains a pin's net.
    struct Balance {
        std::string gets;                 ///< `40 uA through R2`; may be empty
        std::string gives;                ///< `leakage of C1 takes 40 uA`; may be empty
        std::vector<std::string> fed;     ///< by what
        std::vector<std::string> drained; ///< by parts; what leaks and the inputs of timers are not counted

        bool known() const { return !gets.empty() && !gives.empty(); }
    };
    Balance balance(int pin, std::vector<std::string>& places) const {
        std::vector<std::string> in, out;
        Balance b;
        for (const Flow& flow : flowsInto(m_board, m_at, node(pin))) {
            const std::string amount = units::formatQuantity(std::abs(flow.current_A), Unit::ampere);
            if (flow.current_A > 0) {
                in.push_back(wording::inWords("%1 through %2", amount, flow.name));
                b.fed.push_back(flow.name);
            } else {
                out.push_back(wording::inWords("%1 takes %2", flow.name, amount));
                if (flow.name == flow.place) b.drained.push_back(flow.name);
            }
            if (std::find(places.begin(), places.end(), flow.place) == places.end())
                places.push_back(flow.place);
        }
        b.gets = listed(in);
        b.gives = listed(out);
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
            return {
                wording::inWords("Trigger (pin 2) of %1, in net '%2', stays at %3, under its level of %4, "
                                 "which keeps the output high: join pins 2 and 6 to the timing capacitor.",
                                 m_timer.ref, net(pins::trigger), found, levelText(level)),
                {place(pins::trigger)}};
        }
        if (!m_timer.connected(pins::threshold))
            return {wording::inWords("Threshold (pin 6) of %1 is joined to nothing, so nothing ends the high "
                                     "phase: join it to pin 2.",
                                     m_timer.ref),
                    {place(pins::threshold)}};
        const auto [found, level] = apart(at(pins::threshold), m_level);
        std::vector<std::string> places{place(pins::threshold)};
        const std::string why = whyNotCharged(places);
        return {wording::inWords("Threshold (pin 6) of %1 comes to rest at %2, under its level of %3: %4",
                                 m_timer.ref, found, levelText(level), why),
                places};
    }

    /// Why the threshold does not reach its level, and what to do.
    std::string whyNotCharged(std::vector<std::string>& places) const {
        const auto path = charging(pins::threshold);
        if (!path)
            return wording::inWords(
                "net '%1' is on no charging path. Join R1 from the supply to pin 7 and R2 "
                "from pin 7 to pins 2 and 6.",
                net(pins::threshold));
        if (!path->conducts()) {
            const bool isOpen = !path->openSwitches.empty();
            const auto& blocking = isOpen ? path->openSwitches : path->backward;
            places.insert(places.end(), blocking.begin(), blocking.end());
            return isOpen ? wording::inWords("%1 is open in its only charging path.", listed(blocking))
                          : wording::inWords("%1 lies the wrong way round in its only charging path.",
                                             listed(blocking));
        }
        const Balance flows = balance(pins::threshold, places);
        for (const std::string& part : path->parts)
            if (std::find(places.begin(), places.end(), part) == places.end()) places.push_back(part);
        const std::string why = flows.known()
                                    ? wording::inWords("it gets %1, and %2.", flows.gets, flows.gives)
                                    : wording::inWords("nothing charges it further.");
        return why + " " +
               (flows.drained.empty()
                    ? wording::inWords("Take smaller timing resistors or a capacitor that leaks less.")
                    : wording::inWords("Take %1 off that net, or smaller timing resistors.",
                                       flows.drained.front()));
    }

    Cause stuckLow() const {
        if (!m_timer.connected(pins::trigger))
            return {wording::inWords("Trigger (pin 2) of %1 is joined to nothing, so nothing starts the next "
                                     "flash: join it to pin 6.",
                                     m_timer.ref),
                    {place(pins::trigger)}};
        const auto [found, level] = apart(at(pins::trigger), 0.5 * m_level);
        std::vector<std::string> places{place(pins::trigger)};
        const std::string why = whyNotDischarged(places);
        return {wording::inWords("Trigger (pin 2) of %1 comes to rest at %2, above its level of %3: %4",
                                 m_timer.ref, found, levelText(level), why),
                places};
    }

    /// Why the trigger does not fall to its level, and what to do.
    std::string whyNotDischarged(std::vector<std::string>& places) const {
        // A discharge pin that cannot pull its own net down is to blame before anything behind it.
        if (m_timer.connected(pins::discharge) && at(pins::discharge) > 0.5 * m_level &&
            node(pins::discharge) != node(pins::trigger)) {
            const Balance flows = balance(pins::discharge, places);
            if (flows.known())
                return wording::inWords("discharge (pin 7) does not pull its net under %1, since it gets %2, "
                                        "and %3. Take larger resistors there.",
                                        volts(at(pins::discharge)), flows.gets, flows.gives);
        }
        std::set<Node> high{node(pins::supply)};
        for (const auto& supply : m_board.supplies) high.insert(supply.plus);
        std::optional<DcPath> path;
        for (const int pin : {pins::discharge, pins::output})
            if (const auto way = dcPath(m_board, node(pins::trigger), node(pin), high);
                way && (!path || !path->conducts()))
                path = way;
        const Balance flows = path && path->conducts() ? balance(pins::trigger, places) : Balance{};
        if (!flows.known())
            return wording::inWords("the timing capacitor does not discharge. Join pin 7 to it through R2.");
        return wording::inWords(
            "it gets %1, and %2. Lead %3 to pin 7 instead of the timing capacitor, or take "
            "it out.",
            flows.gets, flows.gives, flows.fed.front());
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
