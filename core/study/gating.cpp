#include "core/study/gating.h"

#include "core/base/wording.h"

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
    static constexpr std::array<std::string_view, 8> names = {
        wording::marked("ground"),    wording::marked("trigger"), wording::marked("output"),
        wording::marked("reset"),     wording::marked("control"), wording::marked("threshold"),
        wording::marked("discharge"), wording::marked("supply")};
    return wording::inWords("%1 (pin %2)", wording::inWords(names[static_cast<std::size_t>(pin)]), pin + 1);
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

std::string leadsTo(const std::string& what, const Way& way) {
    if (way.parts.empty()) return wording::inWords("%1, which leads to %2", what, pinName(way.pin));
    return wording::inWords("%1, which leads to %2 through %3", what, pinName(way.pin), listed(way.parts));
}

Cause byTimers(const devices::Board& board, const engine::Settled& settled) {
    const std::string& ref = board.timers.front().ref;
    const Signals signals(board);
    Cause cause{{}, {ref}};
    std::vector<std::string> ways, refs;
    for (const int other : settled.others) {
        const auto& timer = board.timers[static_cast<std::size_t>(other)];
        refs.push_back(timer.ref);
        cause.places.push_back(timer.ref);
        for (const int pin : {pins::output, pins::discharge, pins::threshold, pins::trigger, pins::control}) {
            const auto way = signals.toFirstTimer(timer.pins[static_cast<std::size_t>(pin)]);
            if (!way) continue;
            const std::string from = pinName(pin), to = pinName(way->pin);
            ways.push_back(
                way->parts.empty()
                    ? wording::inWords("the %1 of %2 is joined to %3 of %4", from, timer.ref, to, ref)
                    : wording::inWords("the %1 of %2 reaches %3 of %4 through %5", from, timer.ref, to, ref,
                                       listed(way->parts)));
            cause.places.push_back(ref + ":" + std::to_string(way->pin + 1));
            cause.places.insert(cause.places.end(), way->parts.begin(), way->parts.end());
            break;
        }
    }
    if (!ways.empty())
        cause.sentence = wording::inWords("%1 has no single period of its own: %2.", ref, listed(ways));
    else if (refs.size() > 1)
        cause.sentence = wording::inWords(
            "%1 has no single period of its own: %2 switch beside it in other cycles, and the timers shift "
            "each other a little through the supply that they share.",
            ref, listed(refs));
    else
        cause.sentence = wording::inWords(
            "%1 has no single period of its own: %2 switches beside it in other cycles, and the timers shift "
            "each other a little through the supply that they share.",
            ref, listed(refs));
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
                name = leadsTo(name, *way);
                cause.places.push_back(ref + ":" + std::to_string(way->pin + 1));
                break;
            }
        names.push_back(name);
    }
    if (names.empty())
        cause.sentence =
            wording::inWords("%1 has no period: its output stops switching after the first flashes.", ref);
    else
        cause.sentence = wording::inWords(
            "%1 has no single period of its own: with the switches as drawn its output stops "
            "switching, so its flashes are commanded by %2.",
            ref, listed(names));
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
