// One search of the router: from a pin to the nearest spot of what is joined of its net already.
//
//   WireSearch search(grid);
//   search.begin(net, goal, railed);
//   search.addToTree(v);                       // ... all that is joined
//   std::vector<WireStep> steps = search.find(start);   // empty: there is no way
//   search.seen()                              // all places that the answer depends on
#pragma once

#include "widgets/hookup/router_grid.h"

namespace blinkwright::widgets::hookup {

/// One step of a wire: from a vertex in a heading.
struct WireStep {
    int vertex, heading;
    bool operator==(const WireStep&) const = default;
};

class WireSearch {
  public:
    explicit WireSearch(const RouterGrid& grid) : m_grid(grid) {}

    /// The grid has another size.
    void resize();
    /// A net's tree is grown from nothing. @param railed its pins hang on a rail.
    void begin(int net, bool railed);
    bool inTree(int v) const { return m_inTree[index(v)] == m_treeStamp; }
    void addToTree(int v);
    const std::vector<int>& tree() const { return m_tree; }

    void setRail(int v, int net) { m_railOf[index(v)] = static_cast<std::int16_t>(net); }
    int railOf(int v) const { return m_railOf[index(v)]; }

    /// Where a search has to arrive, as a rectangle.
    void setGoal(const Box& goal) { m_goal = goal; }
    const Box& goal() const { return m_goal; }
    /// Steps from a point to the goal if nothing stood in the way.
    int distance(Point p) const {
        return (std::max({m_goal.left - p.x, 0, p.x - m_goal.right}) +
                std::max({m_goal.top - p.y, 0, p.y - m_goal.bottom})) /
               pitch;
    }
    /// What the way from a point to the goal costs at least, had it nothing in its way: steps, and the bends
    /// that it cannot do without. Each is no more than what a step takes off it, as A* wants.
    int bound(Point p, int heading) const;

    /// A* from a pin to the nearest spot of the tree. @return the steps from the tree back to the pin.
    std::vector<WireStep> find(int start);
    /// All that the last answer depends on: what lies outside may be anything [units].
    Box seen() const { return m_seenArea.grown(pitch); }
    int searches() const { return m_searches; }
    void countAnew() { m_searches = 0; }

  private:
    static std::size_t index(int v) { return static_cast<std::size_t>(v); }
    void push(int state, int cost, int from);
    void relax(int v, int heading, int costSoFar, int from);
    int arrive(int start);

    const RouterGrid& m_grid;
    int m_net = 0;
    bool m_railed = false;
    Box m_goal, m_seenArea;
    std::vector<int> m_tree;
    std::vector<int> m_cost;
    std::vector<Point> m_at;
    std::vector<std::uint32_t> m_seen, m_inTree;
    std::vector<std::int8_t> m_from;
    std::vector<std::int16_t> m_railOf;
    struct Open {
        int state, cost;
    };
    std::vector<std::vector<Open>> m_buckets; ///< states by cost and bound together
    std::size_t m_top = 0;
    std::uint32_t m_searchStamp = 0, m_treeStamp = 0;
    int m_searches = 0;
};

} // namespace blinkwright::widgets::hookup
