// The grid that the router works on: which net runs along each step, where bodies and pins are.
//
//   RouterGrid grid;
//   grid.take(input);
//   int v = grid.vertex({40, 20});
//   grid.extraCost(net, v, RouterGrid::east)   // what a wire of this net pays to arrive at v heading east,
//   or `never`
#pragma once

#include "widgets/hookup/router.h"
#include "widgets/hookup/touched.h"

#include <array>
#include <bit>
#include <cstdint>

namespace blinkwright::widgets::hookup {

class RouterGrid {
  public:
    enum Heading : int { east, south, west, north };
    static constexpr int never = -1;
    static constexpr int noNet = -1;
    static constexpr int openPin = -2; ///< stands in pinNet for a pin in no net

    // What makes one wire better than another. A bend is worth five steps of detour, a crossing nearly eight.
    static constexpr int stepCost = 4, bendCost = 20, crossingCost = 30, quietCost = 14, fourWayCost = 12;
    static constexpr int nearBodyCost = 1, hugCost = 3, offRailCost = 90;

    /// Takes up bodies, quiet room and pins, and forgets all wires.
    void take(const RouterInput& in);
    /// Whether the two have the same bodies, pins and nets, wherever they are now, and a grid holds either.
    bool canChange(const RouterInput& from, const RouterInput& to) const;
    /// Whether an input is taken up by a grid of this size.
    bool fits(const RouterInput& in) const;
    /// Takes up another input that fits, wires stay.
    void change(const RouterInput& from, const RouterInput& to);
    /// @param touched gets all places where the two inputs differ, wires aside.
    static void mark(const RouterInput& from, const RouterInput& to, Touched& touched);

    bool tooLarge() const { return m_tooLarge; }
    int size() const { return m_width * m_height; }
    int width() const { return m_width; }
    Box area() const;                          ///< all points of the grid
    static Box areaFor(const RouterInput& in); ///< the same of the grid that an input asks for
    int vertex(Point p) const;
    Point point(int v) const;
    int step(int heading) const { return m_steps[static_cast<std::size_t>(heading)]; }

    int pinNet(int v) const { return m_pinNet[at(v)]; }
    int pinCount(int v) const { return m_pinCount[at(v)]; }
    int pinLead(int v) const { return m_pinLead[at(v)]; } ///< heading of the lead of a pin at v
    bool blocked(int v) const { return m_blocked[at(v)] != 0; }

    /// The net on the step that leaves v in this heading.
    int edge(int v, int heading) const { return m_edges[at(v)][static_cast<std::size_t>(heading)]; }
    bool wired(int v) const { return std::bit_cast<std::uint64_t>(m_edges[at(v)]) != unwired; }
    void setEdge(int v, int heading, int net);
    /// Number of steps of this net that meet at v.
    int degree(int net, int v) const;

    /// Cost over the bare step of arriving at v, bends not counted; `never` where it is not allowed.
    int extraCost(int net, int v, int heading) const {
        const int pin = m_pinNet[at(v)];
        // A pin's spot is open to its own net even where another part's clearance covers it.
        if (pin == noNet ? m_blocked[at(v)] != 0 : pin != net) return never;
        return costAmongOthers(net, v, heading);
    }
    /// Whether another net passes through v, so that a wire arriving there must go straight on.
    bool crossed(int net, int v) const;

  private:
    /// All four headings at once: the answer is read off by looking at every point of the grid.
    static constexpr auto unwired =
        std::bit_cast<std::uint64_t>(std::array<std::int16_t, 4>{noNet, noNet, noNet, noNet});
    using Counts = std::vector<std::uint16_t>; ///< of the boxes that cover each point
    struct Size {
        Point origin;
        int width = 0, height = 0;
        bool operator==(const Size&) const = default;
    };
    static Size sizeFor(const RouterInput& in);
    static bool isTooLarge(const Size& size);
    void cover(Counts& counts, const Box& box, int by);
    void coverBody(const Box& body, int by);
    void setPins(const std::vector<RouterPin>& pins);
    int costAmongOthers(int net, int v, int heading) const;
    static std::size_t at(int v) { return static_cast<std::size_t>(v); }

    Size m_wanted; ///< by the input, too large or not
    Point m_origin;
    int m_width = 0, m_height = 0;
    bool m_tooLarge = false;
    std::array<int, 4> m_steps{};
    Counts m_blocked, m_near, m_quiet;
    std::vector<std::uint8_t> m_pinCount;
    std::vector<std::int8_t> m_pinLead;
    std::vector<std::int16_t> m_pinNet;
    std::vector<std::array<std::int16_t, 4>> m_edges; ///< by heading; every step is held at both of its ends
};

} // namespace blinkwright::widgets::hookup
