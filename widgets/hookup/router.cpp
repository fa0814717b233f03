#include "widgets/hookup/router.h"

#include "widgets/hookup/router_grid.h"

#include <limits>
#include <numeric>

namespace blinkwright::widgets::hookup {

namespace {

struct Edge {
    int vertex, heading;
};

/// The wires of one net as they stand in the grid.
struct NetWires {
    std::vector<Edge> edges;
    std::vector<Missing> missing;
};

class Router {
  public:
    explicit Router(const RouterInput& in) : m_in(in), m_grid(in), m_nets(static_cast<std::size_t>(in.nets)) {
        m_pins.resize(m_nets.size());
        for (const RouterPin& pin : in.pins)
            if (pin.net >= 0) m_pins[static_cast<std::size_t>(pin.net)].push_back(&pin);
        const auto states = static_cast<std::size_t>(m_grid.size()) * 4;
        m_cost.resize(states);
        m_seen.assign(states, 0);
        m_from.resize(states);
        m_at.resize(static_cast<std::size_t>(m_grid.size()));
        for (int v = 0; v < m_grid.size(); ++v) m_at[static_cast<std::size_t>(v)] = m_grid.point(v);
        m_inTree.assign(m_at.size(), 0);
        m_lead.assign(m_at.size(), -1);
        m_railOf.assign(m_at.size(), RouterGrid::noNet);
        m_hasRail.assign(m_nets.size(), false);
        if (m_grid.tooLarge()) return;
        for (const RouterPin& pin : in.pins)
            m_lead[static_cast<std::size_t>(m_grid.vertex(pin.at))] =
                static_cast<std::int8_t>(headingOf(pin.lead));
    }

    Routes run() {
        if (m_grid.tooLarge()) return nothingButMissing();
        layRails();
        const std::vector<int> order = netOrder();
        for (const int net : order) m_nets[static_cast<std::size_t>(net)] = connect(net);
        // The first nets were laid without knowing of the later ones: take each up again and lay it anew, and
        // keep the best of what comes out.
        const int passes = m_in.pins.size() <= 60 ? 4 : 1;
        long long best = score();
        RouterGrid bestGrid = m_grid;
        std::vector<NetWires> bestNets = m_nets;
        for (int pass = 0; pass < passes; ++pass) {
            for (const int net : order) layAnew(net);
            const long long now = score();
            if (now >= best) break;
            best = now;
            bestGrid = m_grid;
            bestNets = m_nets;
        }
        m_grid = std::move(bestGrid);
        m_nets = std::move(bestNets);
        return result();
    }

  private:
    static constexpr long long missingCost = 1000000;

    static int headingOf(Point lead) {
        if (lead.x != 0) return lead.x > 0 ? RouterGrid::east : RouterGrid::west;
        return lead.y > 0 ? RouterGrid::south : RouterGrid::north;
    }

    Routes nothingButMissing() const {
        Routes routes;
        for (std::size_t net = 0; net < m_pins.size(); ++net)
            for (std::size_t i = 1; i < m_pins[net].size(); ++i)
                routes.missing.push_back({static_cast<int>(net), m_pins[net][i - 1]->at, m_pins[net][i]->at});
        return routes;
    }

    void layRails() {
        for (const Rail& rail : m_in.rails) {
            const auto& pins = m_pins[static_cast<std::size_t>(rail.net)];
            if (pins.empty()) continue;
            const auto byX = [](const RouterPin* a, const RouterPin* b) { return a->at.x < b->at.x; };
            const auto [first, last] = std::minmax_element(pins.begin(), pins.end(), byX);
            const int end = m_grid.vertex({(*last)->at.x, rail.y});
            for (int v = m_grid.vertex({(*first)->at.x, rail.y}); v < end; ++v)
                if (!m_grid.blocked(v) && !m_grid.blocked(v + 1)) {
                    m_grid.setEdge(v, RouterGrid::east, rail.net);
                    m_trunks.push_back({v, RouterGrid::east});
                    m_railOf[static_cast<std::size_t>(v)] = m_railOf[static_cast<std::size_t>(v + 1)] =
                        rail.net;
                    m_hasRail[static_cast<std::size_t>(rail.net)] = true;
                }
        }
    }

    bool isRail(int net) const {
        return std::any_of(m_in.rails.begin(), m_in.rails.end(),
                           [net](const Rail& r) { return r.net == net; });
    }

    std::vector<int> netOrder() const {
        std::vector<std::pair<long long, int>> keyed;
        for (int net = 0; net < m_in.nets; ++net) {
            const auto& pins = m_pins[static_cast<std::size_t>(net)];
            if (pins.size() < 2) continue;
            Box box{pins[0]->at.x, pins[0]->at.y, pins[0]->at.x, pins[0]->at.y};
            for (const RouterPin* pin : pins) box = box.with({pin->at.x, pin->at.y, pin->at.x, pin->at.y});
            const long long span = box.right - box.left + box.bottom - box.top;
            keyed.emplace_back(isRail(net) ? (1LL << 40) + span : span, net);
        }
        std::sort(keyed.begin(), keyed.end());
        std::vector<int> order;
        for (const auto& [key, net] : keyed) order.push_back(net);
        return order;
    }

    void layAnew(int net) {
        NetWires& wires = m_nets[static_cast<std::size_t>(net)];
        for (const Edge& e : wires.edges) m_grid.setEdge(e.vertex, e.heading, RouterGrid::noNet);
        wires = connect(net);
    }

    /// What the whole drawing costs; less is tidier.
    long long score() const {
        long long sum = 0;
        for (const NetWires& wires : m_nets)
            sum += missingCost * static_cast<long long>(wires.missing.size());
        for (int v = m_grid.width(); v < m_grid.size() - m_grid.width(); ++v) {
            const int e = m_grid.edge(v, RouterGrid::east), s = m_grid.edge(v, RouterGrid::south);
            const int w = m_grid.edge(v, RouterGrid::west), n = m_grid.edge(v, RouterGrid::north);
            const bool across = e != RouterGrid::noNet && e == w, along = s != RouterGrid::noNet && s == n;
            if (e != RouterGrid::noNet) sum += RouterGrid::stepCost;
            if (s != RouterGrid::noNet) sum += RouterGrid::stepCost;
            if (across && along && e != s) sum += RouterGrid::crossingCost;
            if (!across && !along && (e != RouterGrid::noNet || w != RouterGrid::noNet) &&
                (s != RouterGrid::noNet || n != RouterGrid::noNet))
                sum += RouterGrid::bendCost;
        }
        return sum;
    }

    void addToTree(int v, std::vector<int>& tree) {
        if (m_inTree[static_cast<std::size_t>(v)] == m_treeStamp) return;
        m_inTree[static_cast<std::size_t>(v)] = m_treeStamp;
        tree.push_back(v);
    }
    bool inTree(int v) const { return m_inTree[static_cast<std::size_t>(v)] == m_treeStamp; }

    NetWires connect(int net) {
        NetWires wires;
        ++m_treeStamp;
        std::vector<int> tree;
        std::vector<const RouterPin*> waiting = m_pins[static_cast<std::size_t>(net)];
        for (const Edge& e : m_trunks)
            if (m_grid.edge(e.vertex, e.heading) == net) {
                addToTree(e.vertex, tree);
                addToTree(e.vertex + 1, tree);
            }
        if (tree.empty()) {
            addToTree(m_grid.vertex(waiting.front()->at), tree);
            waiting.erase(waiting.begin());
        }
        while (!waiting.empty()) {
            m_goal = goalOf(net, tree);
            const auto nearest = std::min_element(waiting.begin(), waiting.end(), [&](auto* a, auto* b) {
                return toTree(net, *a, tree) < toTree(net, *b, tree);
            });
            const RouterPin* pin = *nearest;
            waiting.erase(nearest);
            const int start = m_grid.vertex(pin->at);
            if (inTree(start)) continue;
            const int end = m_grid.pinNet(start) == net ? search(net, start) : -1;
            if (end < 0) {
                wires.missing.push_back({net, pin->at, closest(tree, pin->at)});
                continue;
            }
            layPath(net, start, end, tree, wires);
        }
        return wires;
    }

    Point closest(const std::vector<int>& tree, Point to) const {
        Point best = m_grid.point(tree.front());
        const auto far = [&](Point p) { return std::abs(p.x - to.x) + std::abs(p.y - to.y); };
        for (const int v : tree)
            if (m_grid.pinCount(v) > 0 && far(m_grid.point(v)) < far(best)) best = m_grid.point(v);
        return best;
    }

    void layPath(int net, int start, int state, std::vector<int>& tree, NetWires& wires) {
        for (;;) {
            const int v = state / 4, heading = state % 4;
            addToTree(v, tree);
            const int before = v - m_grid.step(heading);
            m_grid.setEdge(before, heading, net);
            wires.edges.push_back({before, heading});
            if (before == start) break;
            state = before * 4 + m_from[static_cast<std::size_t>(state)];
        }
        addToTree(start, tree);
    }

    /// Where a search has to arrive, as a rectangle: the rail, or all that is joined so far.
    Box goalOf(int net, const std::vector<int>& tree) const {
        const Point first = m_grid.point(tree.front());
        Box box{first.x, first.y, first.x, first.y};
        for (const int v : tree)
            if (!m_hasRail[static_cast<std::size_t>(net)] || m_railOf[static_cast<std::size_t>(v)] == net) {
                const Point p = m_grid.point(v);
                box = box.with({p.x, p.y, p.x, p.y});
            }
        return box;
    }

    int toTree(int net, const RouterPin& pin, const std::vector<int>& tree) const {
        if (m_hasRail[static_cast<std::size_t>(net)]) return distance(m_grid.vertex(pin.at));
        int least = std::numeric_limits<int>::max();
        for (const int v : tree) {
            const Point p = m_grid.point(v);
            least = std::min(least, std::abs(p.x - pin.at.x) + std::abs(p.y - pin.at.y));
        }
        return least;
    }

    /// Steps from a vertex to the goal if nothing stood in the way: the search's bound.
    int distance(int v) const {
        const Point p = m_at[static_cast<std::size_t>(v)];
        return (std::max({m_goal.left - p.x, 0, p.x - m_goal.right}) +
                std::max({m_goal.top - p.y, 0, p.y - m_goal.bottom})) /
               pitch;
    }

    void push(int state, int cost, int from) {
        const auto s = static_cast<std::size_t>(state);
        if (m_seen[s] == m_searchStamp && m_cost[s] <= cost) return;
        m_seen[s] = m_searchStamp;
        m_cost[s] = cost;
        m_from[s] = static_cast<std::int8_t>(from);
        const auto f = static_cast<std::size_t>(cost + RouterGrid::stepCost * distance(state / 4));
        if (f >= m_buckets.size()) m_buckets.resize(f + 64);
        m_buckets[f].push_back(state);
        m_top = std::max(m_top, f);
    }

    void relax(int net, int v, int heading, int costSoFar, int from) {
        if (m_grid.edge(v, heading) != RouterGrid::noNet) return;
        const int next = v + m_grid.step(heading);
        const int extra = m_grid.extraCost(net, next, heading);
        if (extra == RouterGrid::never) return;
        int cost = costSoFar + RouterGrid::stepCost + extra;
        if (inTree(next)) {
            if (m_grid.crossed(net, next)) return;
            const int pins = m_grid.pinCount(next);
            if (m_grid.degree(net, next) + pins >= 3) cost += RouterGrid::fourWayCost;
            // What belongs to a rail hangs on the rail, not on a neighbour's lead.
            if (m_hasRail[static_cast<std::size_t>(net)] && m_railOf[static_cast<std::size_t>(next)] != net)
                cost += RouterGrid::offRailCost;
            if (pins > 0 && m_lead[static_cast<std::size_t>(next)] != (heading + 2) % 4)
                cost += RouterGrid::bendCost;
        }
        push(next * 4 + heading, cost, from);
    }

    /// A* from a pin to the nearest spot of the tree. @return the state it arrived in, or -1.
    int search(int net, int start) {
        for (std::size_t f = 0; f <= m_top && f < m_buckets.size(); ++f) m_buckets[f].clear();
        m_top = 0;
        ++m_searchStamp;
        const int lead = m_lead[static_cast<std::size_t>(start)];
        for (int heading = 0; heading < 4; ++heading)
            relax(net, start, heading, heading == lead ? 0 : RouterGrid::bendCost, heading);
        for (std::size_t f = 0; f <= m_top; ++f)
            for (std::size_t i = 0; i < m_buckets[f].size(); ++i) {
                const int state = m_buckets[f][i], v = state / 4, heading = state % 4;
                const int cost = m_cost[static_cast<std::size_t>(state)];
                if (static_cast<std::size_t>(cost + RouterGrid::stepCost * distance(v)) != f)
                    continue; // outdated
                if (inTree(v)) return state;
                const bool straightOnly = m_grid.crossed(net, v);
                for (int turn = 0; turn < 4; ++turn) {
                    if (turn == (heading + 2) % 4 || (straightOnly && turn != heading)) continue;
                    relax(net, v, turn, cost + (turn == heading ? 0 : RouterGrid::bendCost), heading);
                }
            }
        return -1;
    }

    /// Takes off the ends of rails that nothing hangs on.
    void trimTrunks() {
        bool changed = true;
        while (changed) {
            changed = false;
            for (const Edge& e : m_trunks) {
                const int net = m_grid.edge(e.vertex, e.heading);
                if (net == RouterGrid::noNet) continue;
                for (const int end : {e.vertex, e.vertex + 1})
                    if (m_grid.degree(net, end) == 1 && m_grid.pinNet(end) != net) {
                        m_grid.setEdge(e.vertex, e.heading, RouterGrid::noNet);
                        changed = true;
                        break;
                    }
            }
        }
    }

    Routes result() {
        trimTrunks();
        Routes routes;
        for (const NetWires& wires : m_nets)
            routes.missing.insert(routes.missing.end(), wires.missing.begin(), wires.missing.end());
        for (int v = m_grid.width(); v < m_grid.size() - m_grid.width(); ++v) {
            for (const int heading : {RouterGrid::east, RouterGrid::south}) {
                const int net = m_grid.edge(v, heading);
                if (net == RouterGrid::noNet || m_grid.edge(v, (heading + 2) % 4) == net) continue;
                int end = v;
                while (m_grid.edge(end, heading) == net) end += m_grid.step(heading);
                routes.segments.push_back({net, m_grid.point(v), m_grid.point(end)});
            }
            noteMeeting(v, routes);
        }
        std::sort(routes.segments.begin(), routes.segments.end());
        std::sort(routes.dots.begin(), routes.dots.end());
        return routes;
    }

    void noteMeeting(int v, Routes& routes) const {
        const int across = m_grid.edge(v, RouterGrid::east), along = m_grid.edge(v, RouterGrid::south);
        if (across != RouterGrid::noNet && along != RouterGrid::noNet && across != along &&
            m_grid.edge(v, RouterGrid::west) == across)
            ++routes.crossings;
        for (int heading = 0; heading < 4; ++heading) {
            const int net = m_grid.edge(v, heading);
            if (net == RouterGrid::noNet) continue;
            const int pins = m_grid.pinNet(v) == net ? m_grid.pinCount(v) : 0;
            if (m_grid.degree(net, v) + pins >= 3) routes.dots.push_back({net, m_grid.point(v)});
            return; // where two nets cross, neither branches
        }
    }

    const RouterInput& m_in;
    RouterGrid m_grid;
    std::vector<NetWires> m_nets;
    std::vector<std::vector<const RouterPin*>> m_pins;
    std::vector<Edge> m_trunks;
    std::vector<int> m_cost, m_railOf;
    std::vector<Point> m_at;
    Box m_goal;
    std::vector<bool> m_hasRail;
    std::vector<std::uint32_t> m_seen, m_inTree;
    std::vector<std::int8_t> m_from, m_lead;
    std::vector<std::vector<int>> m_buckets;
    std::size_t m_top = 0;
    std::uint32_t m_searchStamp = 0, m_treeStamp = 0;
};

} // namespace

Routes route(const RouterInput& in) {
    return Router(in).run();
}

} // namespace blinkwright::widgets::hookup
