#include "core/study/gating.h"

#include <algorithm>
#include <array>
#include <deque>
#include <map>
#include <set>

namespace blinkwright::study {

using devices::Node;
namespace pins = circuit::timerPin;

namespace {

std::string pinName(int pin) {
    static constexpr std::array<const char*, 8> names = {"ground",  "trigger",   "output",    "reset",
                                                         "control", "threshold", "discharge", "supply"};
    return std::string(names[static_cast<std::size_t>(pin)]) + " (pin " + std::to_string(pin + 1) + ")";
}

/// A way for a signal: from a node to a pin of the first timer, through parts of any kind but not through
/// supply nets, which everything shares.
struct Way {
    int pin = 0;
    std::vector<std::string> parts;
};

class Signals {
  public:
    explicit Signals(const devices::Board& board) : m_board(board) {
        for (const auto& p : board.supplies) m_poles.insert({p.plus, p.minus});
        m_rails = m_poles;
        for (const auto& t : board.timers) m_rails.insert({t.pins[pins::ground], t.pins[pins::supply]});
        for (const auto& p : board.resistors) edge(p, p.a, p.b);
        for (const auto& p : board.variables) {
            edge(p, p.a, p.wiper);
            edge(p, p.wiper, p.b);
            if (p.wiper == devices::open) edge(p, p.a, p.b);
        }
        for (const auto& p : board.capacitors) edge(p, p.plus, p.minus);
        for (const auto& p : board.junctions) edge(p, p.anode, p.cathode);
        for (const auto& p : board.switches)
            if (p.closed || !p.presses.empty()) edge(p, p.a, p.b);
    }

    std::optional<Way> toFirstTimer(Node start) const {
        if (start == devices::open || m_poles.contains(start)) return std::nullopt;
        std::map<Node, std::pair<Node, std::string>> from{{start, {devices::open, {}}}};
        std::deque<Node> ahead{start};
        while (!ahead.empty()) {
            const Node node = ahead.front();
            ahead.pop_front();
            if (const auto pin = pinAt(node)) {
                Way way{*pin, {}};
                for (Node n = node; n != start; n = from.at(n).first)
                    if (std::find(way.parts.begin(), way.parts.end(), from.at(n).second) == way.parts.end())
                        way.parts.push_back(from.at(n).second);
                std::reverse(way.parts.begin(), way.parts.end());
                return way;
            }
            if (node != start && m_rails.contains(node)) continue;
            const auto [begin, end] = m_edges.equal_range(node);
            for (auto e = begin; e != end; ++e)
                if (from.try_emplace(e->second.first, node, e->second.second).second)
                    ahead.push_back(e->second.first);
        }
        return std::nullopt;
    }

  private:
    void edge(const devices::Named& part, Node a, Node b) {
        if (a == devices::open || b == devices::open || a == b) return;
        m_edges.emplace(a, std::pair{b, part.ref});
        m_edges.emplace(b, std::pair{a, part.ref});
    }
    /// The pin of the first timer that a net commands most directly, or nothing.
    std::optional<int> pinAt(Node node) const {
        if (m_poles.contains(node)) return std::nullopt;
        const auto& first = m_board.timers.front().pins;
        for (const int pin : {pins::reset, pins::trigger, pins::threshold, pins::control, pins::discharge,
                              pins::output, pins::supply, pins::ground})
            if (first[static_cast<std::size_t>(pin)] == node) return pin;
        return std::nullopt;
    }

    const devices::Board& m_board;
    std::set<Node> m_poles, m_rails;
    std::multimap<Node, std::pair<Node, std::string>> m_edges;
};

std::string through(const Way& way) {
    return way.parts.empty() ? "" : " through " + listed(way.parts);
}

Cause byTimers(const devices::Board& board, const engine::Settled& settled) {
    const std::string& ref = board.timers.front().ref;
    const Signals signals(board);
    Cause cause{ref + " has no single period of its own: ", {ref}};
    std::vector<std::string> ways, refs;
    for (const int other : settled.others) {
        const auto& timer = board.timers[static_cast<std::size_t>(other)];
        refs.push_back(timer.ref);
        cause.places.push_back(timer.ref);
        for (const int pin : {pins::output, pins::discharge, pins::threshold, pins::trigger, pins::control}) {
            const auto way = signals.toFirstTimer(timer.pins[static_cast<std::size_t>(pin)]);
            if (!way) continue;
            ways.push_back("the " + pinName(pin) + " of " + timer.ref +
                           (way->parts.empty() ? " is joined to " : " reaches ") + pinName(way->pin) +
                           " of " + ref + through(*way));
            cause.places.push_back(ref + ":" + std::to_string(way->pin + 1));
            cause.places.insert(cause.places.end(), way->parts.begin(), way->parts.end());
            break;
        }
    }
    if (ways.empty())
        cause.sentence += listed(refs) + (refs.size() > 1 ? " switch" : " switches") +
                          " beside it in other cycles, and the timers shift each other a little through the "
                          "supply that they share.";
    else
        cause.sentence += listed(ways) + ".";
    return cause;
}

Cause bySwitches(const devices::Board& board) {
    const std::string& ref = board.timers.front().ref;
    const Signals signals(board);
    Cause cause{"", {ref}};
    std::vector<std::string> names;
    for (const auto& part : board.switches) {
        if (part.presses.empty()) continue;
        std::string name = part.ref;
        cause.places.push_back(part.ref);
        for (const Node node : {part.a, part.b})
            if (const auto way = signals.toFirstTimer(node)) {
                name += ", which leads to " + pinName(way->pin) + through(*way);
                cause.places.push_back(ref + ":" + std::to_string(way->pin + 1));
                break;
            }
        names.push_back(name);
    }
    if (names.empty())
        cause.sentence = ref + " has no period: its output stops switching after the first flashes.";
    else
        cause.sentence = ref +
                         " has no single period of its own: with the switches as drawn its output stops "
                         "switching, so its flashes are commanded by " +
                         listed(names) + ".";
    return cause;
}

} // namespace

std::vector<Cause> commandedBy(const devices::Board& board, const engine::Settled& settled) {
    switch (settled.reason) {
    case engine::NoPeriod::none:
        return {};
    case engine::NoPeriod::otherTimers:
        return {byTimers(board, settled)};
    case engine::NoPeriod::stopsSwitching:
        return {bySwitches(board)};
    case engine::NoPeriod::keepsChanging:
    case engine::NoPeriod::endedEarly:
    case engine::NoPeriod::cannotStart:
        break;
    }
    return {{settled.why, {board.timers.front().ref}}};
}

} // namespace blinkwright::study
