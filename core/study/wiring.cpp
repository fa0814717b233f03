#include "core/study/wiring.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace blinkwright::study {

Wiring::Wiring(const devices::Board& board, bool pressed) {
    m_joined.resize(static_cast<std::size_t>(board.nodes()));
    std::iota(m_joined.begin(), m_joined.end(), 0);
    for (const auto& part : board.switches) {
        const bool closed = part.closed != (pressed && !part.presses.empty());
        if (!closed || part.a == devices::open || part.b == devices::open) continue;
        const Node a = at(part.a), b = at(part.b);
        m_joined[static_cast<std::size_t>(std::max(a, b))] =
            std::min(a, b); // the lower number stands: 0 V stays node 0
    }
    for (const auto& part : board.resistors)
        add(ElementKind::resistance, part.a, part.b, part.resistance, part);
    for (const auto& part : board.variables) {
        Node wiper = part.wiper;
        if (wiper == devices::open) { // the two sections are in series all the same
            wiper = nodes();
            m_joined.push_back(wiper);
        }
        add(ElementKind::resistance, part.a, wiper, part.upper, part);
        add(ElementKind::resistance, wiper, part.b, part.lower, part);
    }
    for (const auto& part : board.capacitors)
        add(ElementKind::capacitance, part.plus, part.minus, part.capacitance, part);
    for (std::size_t k = 0; k < board.junctions.size(); ++k) {
        const auto& part = board.junctions[k];
        add(ElementKind::junction, part.anode, part.cathode, part.law.seriesResistance, part, k);
    }
    for (std::size_t k = 0; k < board.supplies.size(); ++k) {
        const auto& part = board.supplies[k];
        add(ElementKind::supply, part.plus, part.minus, part.resistance, part, k);
    }
    m_atNode.resize(m_joined.size());
    for (std::size_t k = 0; k < m_elements.size(); ++k) {
        m_atNode[static_cast<std::size_t>(m_elements[k].a)].push_back(k);
        if (m_elements[k].b != m_elements[k].a)
            m_atNode[static_cast<std::size_t>(m_elements[k].b)].push_back(k);
    }
}

void Wiring::add(ElementKind kind, Node a, Node b, double value, const devices::Named& part,
                 std::size_t index) {
    if (a == devices::open || b == devices::open) return; // carries nothing
    m_elements.push_back({kind, at(a), at(b), value, {part.id}, {part.ref}, index});
}

Node Wiring::at(Node node) const {
    if (node == devices::open) return node;
    while (m_joined[static_cast<std::size_t>(node)] != node) node = m_joined[static_cast<std::size_t>(node)];
    return node;
}

std::vector<Element> Wiring::around(const std::set<Node>& starts, const std::set<Node>& stops) const {
    std::set<Node> seen = starts;
    std::vector<Node> ahead(starts.begin(), starts.end());
    std::set<std::size_t> found; // in the order of the board, whatever the way there
    while (!ahead.empty()) {
        const Node node = ahead.back();
        ahead.pop_back();
        if (node == devices::open) continue;
        for (const std::size_t k : m_atNode[static_cast<std::size_t>(node)]) {
            found.insert(k);
            const Node next = m_elements[k].other(node);
            if (!stops.contains(next) && seen.insert(next).second) ahead.push_back(next);
        }
    }
    std::vector<Element> elements;
    elements.reserve(found.size());
    for (const std::size_t k : found) elements.push_back(m_elements[k]);
    return elements;
}

namespace {

bool combines(const Element& element) {
    return element.kind == ElementKind::resistance || element.kind == ElementKind::capacitance;
}

/// Takes `more` into `into`, in series or in parallel.
void take(Element& into, const Element& more, bool series) {
    const bool adds = series == (into.kind == ElementKind::resistance);
    into.value = adds ? into.value + more.value : 1 / (1 / into.value + 1 / more.value);
    for (std::size_t k = 0; k < more.ids.size(); ++k) {
        const auto place = std::lower_bound(into.ids.begin(), into.ids.end(), more.ids[k]);
        if (place != into.ids.end() && *place == more.ids[k]) continue; // two sections of one part
        into.refs.insert(into.refs.begin() + (place - into.ids.begin()), more.refs[k]);
        into.ids.insert(place, more.ids[k]);
    }
}

bool combineParallel(std::vector<Element>& elements) {
    std::map<std::tuple<ElementKind, Node, Node>, std::size_t> first;
    for (std::size_t k = 0; k < elements.size(); ++k) {
        if (!combines(elements[k])) continue;
        const auto [low, high] = std::minmax(elements[k].a, elements[k].b);
        const auto [at, fresh] = first.try_emplace({elements[k].kind, low, high}, k);
        if (fresh) continue;
        take(elements[at->second], elements[k], false);
        elements.erase(elements.begin() + static_cast<std::ptrdiff_t>(k));
        return true;
    }
    return false;
}

bool combineSeries(std::vector<Element>& elements, const std::set<Node>& kept) {
    std::map<Node, std::vector<std::size_t>> ends;
    for (std::size_t k = 0; k < elements.size(); ++k) {
        ends[elements[k].a].push_back(k);
        ends[elements[k].b].push_back(k);
    }
    for (const auto& [node, at] : ends) {
        if (kept.contains(node) || at.size() > 2) continue;
        if (at.size() == 1) { // a dead end, whatever it is
            elements.erase(elements.begin() + static_cast<std::ptrdiff_t>(at[0]));
            return true;
        }
        Element& first = elements[at[0]];
        const Element& second = elements[at[1]];
        if (at[0] == at[1] || !combines(first) || first.kind != second.kind) continue;
        const Node from = first.other(node);
        const Node to = second.other(node);
        take(first, second, true);
        first.a = from;
        first.b = to;
        elements.erase(elements.begin() + static_cast<std::ptrdiff_t>(at[1]));
        return true;
    }
    return false;
}

} // namespace

std::vector<Element> reduced(std::vector<Element> elements, const std::set<Node>& kept) {
    do {
        std::erase_if(elements, [](const Element& e) { return e.a == e.b; });
    } while (combineParallel(elements) || combineSeries(elements, kept));
    return elements;
}

} // namespace blinkwright::study
