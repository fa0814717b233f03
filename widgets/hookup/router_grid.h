// The grid that the router works on: which net runs along each step, where bodies and pins are.
//
//   RouterGrid grid(input);
//   int v = grid.vertex({40, 20});
//   grid.extraCost(net, v, RouterGrid::east)   // what a wire of this net pays to arrive at v heading east,
//   or `never`
#pragma once

#include "widgets/hookup/router.h"

#include <array>
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

    explicit RouterGrid(const RouterInput& in);

    bool tooLarge() const { return m_tooLarge; }
    int size() const { return m_width * m_height; }
    int width() const { return m_width; }
    int vertex(Point p) const;
    Point point(int v) const;
    int step(int heading) const { return m_steps[static_cast<std::size_t>(heading)]; }

    int pinNet(int v) const { return m_pinNet[at(v)]; }
    int pinCount(int v) const { return m_pinCount[at(v)]; }
    bool blocked(int v) const { return m_blocked[at(v)] != 0; }

    /// The net on the step that leaves v in this heading.
    int edge(int v, int heading) const { return m_edges[at(v)][static_cast<std::size_t>(heading)]; }
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
    int costAmongOthers(int net, int v, int heading) const;
    static std::size_t at(int v) { return static_cast<std::size_t>(v); }

    Point m_origin;
    int m_width = 0, m_height = 0;
    bool m_tooLarge = false;
    std::array<int, 4> m_steps{};
    std::vector<std::uint8_t> m_blocked, m_near, m_quiet, m_pinCount;
    std::vector<std::int32_t> m_pinNet;
    std::vector<std::array<std::int16_t, 4>> m_edges; ///< by heading; every step is held at both of its ends
};

} // namespace blinkwright::widgets::hookup
