// A board's two-terminal parts as a graph: closed switches are wires, open ones are absent, a variable
// resistor is its two sections. What the textbook column and the findings look at.
//
//   Wiring wiring(board);
//   Node pin7 = wiring.at(timer.pins[circuit::timerPin::discharge]);
//   auto local = reduced(wiring.around({pin7}, {rail, ground}), {pin7, rail, ground});
#pragma once

#include "core/devices/board.h"

#include <set>
#include <string>
#include <vector>

namespace blinkwright::study {

using devices::Node;

enum class ElementKind { resistance, capacitance, junction, supply };

struct Element {
    ElementKind kind = ElementKind::resistance;
    Node a = devices::open; ///< first pin, plus, anode
    Node b = devices::open;
    double value = 0; ///< [ohm] or [F]; of a junction its series resistance, of a supply its resistance
    std::vector<circuit::PartId> ids; ///< the parts that make it up
    std::vector<std::string> refs;    ///< their designators
    std::size_t index = 0;            ///< of a junction or supply: its place in the board's list

    bool touches(Node node) const { return a == node || b == node; }
    bool joins(Node x, Node y) const { return (a == x && b == y) || (a == y && b == x); }
    Node other(Node node) const { return a == node ? b : a; }
};

class Wiring {
  public:
    /// @param pressed take every switch that has presses as pressed: the other way round than drawn.
    explicit Wiring(const devices::Board& board, bool pressed = false);

    /// The one node that stands for all nodes that closed switches join to this one; `open` stays open.
    Node at(Node node) const;
    const std::vector<Element>& elements() const { return m_elements; }
    /// Places in elements() of what touches a node from at().
    const std::vector<std::size_t>& elementsAt(Node node) const {
        return m_atNode[static_cast<std::size_t>(node)];
    }
    /// Nodes, virtual ones of open wipers included.
    int nodes() const { return static_cast<int>(m_joined.size()); }

    /// Elements within reach of some nodes without passing through any of the stops. Both are nodes from
    /// at().
    std::vector<Element> around(const std::set<Node>& starts, const std::set<Node>& stops) const;

  private:
    void add(ElementKind kind, Node a, Node b, double value, const devices::Named& part,
             std::size_t index = 0);

    std::vector<Node> m_joined;
    std::vector<Element> m_elements;
    std::vector<std::vector<std::size_t>> m_atNode;
};

/// Combines resistances and capacitances in series and in parallel and drops what carries no current (both
/// ends on one node, or an end that nothing else joins), until nothing is left to combine.
/// @param kept nodes that are never reduced away.
std::vector<Element> reduced(std::vector<Element> elements, const std::set<Node>& kept);

} // namespace blinkwright::study
