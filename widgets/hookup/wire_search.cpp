#include "widgets/hookup/wire_search.h"

namespace blinkwright::widgets::hookup {

void WireSearch::resize() {
    const auto n = static_cast<std::size_t>(m_grid.size());
    m_cost.resize(4 * n);
    m_from.resize(4 * n);
    m_seen.assign(4 * n, 0);
    m_inTree.assign(n, 0);
    m_railOf.assign(n, RouterGrid::noNet);
    m_searchStamp = m_treeStamp = 0;
    m_at.resize(n);
    for (int v = 0; v < m_grid.size(); ++v) m_at[index(v)] = m_grid.point(v);
}

void WireSearch::begin(int net, bool railed) {
    ++m_treeStamp;
    m_tree.clear();
    m_net = net;
    m_railed = railed;
}

void WireSearch::addToTree(int v) {
    if (inTree(v)) return;
    m_inTree[index(v)] = m_treeStamp;
    m_tree.push_back(v);
}

int WireSearch::bound(Point p, int heading) const {
    // How far the goal is to the east (to the west below 0), and to the south.
    const int east = p.x < m_goal.left ? m_goal.left - p.x : std::min(m_goal.right - p.x, 0);
    const int south = p.y < m_goal.top ? m_goal.top - p.y : std::min(m_goal.bottom - p.y, 0);
    const bool alongX = heading % 2 == 0, forwards = heading < 2;
    const int ahead = (alongX ? east : south) * (forwards ? 1 : -1), aside = alongX ? south : east;
    const int bends = ahead < 0 ? 2 : aside != 0 ? 1 : 0;
    return distance(p) * RouterGrid::stepCost + bends * RouterGrid::bendCost;
}

void WireSearch::push(int state, int cost, int from) {
    const std::size_t s = index(state);
    if (m_seen[s] == m_searchStamp && m_cost[s] <= cost) return;
    m_seen[s] = m_searchStamp;
    m_cost[s] = cost;
    m_from[s] = static_cast<std::int8_t>(from);
    const auto f = static_cast<std::size_t>(cost + bound(m_at[index(state / 4)], state % 4));
    if (f >= m_buckets.size()) m_buckets.resize(f + 64);
    m_buckets[f].push_back({state, cost});
    m_top = std::max(m_top, f);
}

void WireSearch::relax(int v, int heading, int costSoFar, int from) {
    if (m_grid.edge(v, heading) != RouterGrid::noNet) return;
    const int next = v + m_grid.step(heading);
    const Point p = m_at[index(next)];
    m_seenArea = m_seenArea.with({p.x, p.y, p.x, p.y});
    // What was reached as cheaply as a bare step is not worth a look around.
    if (const std::size_t s = index(next * 4 + heading);
        m_seen[s] == m_searchStamp && m_cost[s] <= costSoFar + RouterGrid::stepCost)
        return;
    const int extra = m_grid.extraCost(m_net, next, heading);
    if (extra == RouterGrid::never) return;
    int cost = costSoFar + RouterGrid::stepCost + extra;
    if (inTree(next)) {
        if (m_grid.crossed(m_net, next)) return;
        const int pins = m_grid.pinCount(next);
        if (m_grid.degree(m_net, next) + pins >= 3) cost += RouterGrid::fourWayCost;
        // What belongs to a rail hangs on the rail, not on a neighbour's lead.
        if (m_railed && railOf(next) != m_net) cost += RouterGrid::offRailCost;
        if (pins > 0 && m_grid.pinLead(next) != (heading + 2) % 4) cost += RouterGrid::bendCost;
    }
    push(next * 4 + heading, cost, from);
}

std::vector<WireStep> WireSearch::find(int start) {
    const Point from = m_at[index(start)];
    m_seenArea = {from.x, from.y, from.x, from.y};
    ++m_searches;
    std::vector<WireStep> steps;
    int state = m_grid.pinNet(start) == m_net ? arrive(start) : -1;
    if (state < 0) return steps;
    for (;;) {
        const int heading = state % 4, before = state / 4 - m_grid.step(heading);
        steps.push_back({before, heading});
        if (before == start) return steps;
        state = before * 4 + m_from[index(state)];
    }
}

/// @return the state that the search arrived in, or -1.
int WireSearch::arrive(int start) {
    for (std::size_t f = 0; f <= m_top && f < m_buckets.size(); ++f) m_buckets[f].clear();
    m_top = 0;
    ++m_searchStamp;
    const int lead = m_grid.pinLead(start);
    for (int heading = 0; heading < 4; ++heading)
        relax(start, heading, heading == lead ? 0 : RouterGrid::bendCost, heading);
    for (std::size_t f = 0; f <= m_top && f < m_buckets.size(); ++f)
        for (std::size_t i = 0; i < m_buckets[f].size(); ++i) {
            const auto [state, cost] = m_buckets[f][i];
            if (m_cost[index(state)] != cost) continue; // a cheaper way was found since
            const int v = state / 4, heading = state % 4;
            if (inTree(v)) return state;
            const bool straightOnly = m_grid.crossed(m_net, v);
            for (int turn = 0; turn < 4; ++turn) {
                if (turn == (heading + 2) % 4 || (straightOnly && turn != heading)) continue;
                relax(v, turn, cost + (turn == heading ? 0 : RouterGrid::bendCost), heading);
            }
        }
    return -1;
}

} // namespace blinkwright::widgets::hookup
