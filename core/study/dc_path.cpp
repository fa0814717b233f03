#include "core/study/dc_path.h"

#include <algorithm>
#include <map>
#include <queue>

namespace blinkwright::study {

using devices::Node;

namespace {

enum class Obstacle { none, openSwitch, backward };

struct Edge {
    Node from, to;
    double ohms;
    const std::string* ref;
    Obstacle obstacle;
};

/// What an obstacle weighs against resistance: any way without one is shorter.
constexpr double obstacleWeight = 1e18;

std::vector<Edge> edgesOf(const devices::Board& board, const devices::Supply* without) {
    std::vector<Edge> edges;
    const auto both = [&](const devices::Named& part, Node a, Node b, double ohms,
                          Obstacle obstacle = Obstacle::none) {
        if (a == devices::open || b == devices::open || a == b) return;
        edges.push_back({a, b, ohms, &part.ref, obstacle});
        edges.push_back({b, a, ohms, &part.ref, obstacle});
    };
    for (const auto& part : board.resistors) both(part, part.a, part.b, part.resistance);
    for (const auto& part : board.variables) {
        if (part.wiper == devices::open) {
            both(part, part.a, part.b, part.upper + part.lower);
            continue;
        }
        both(part, part.a, part.wiper, part.upper);
        both(part, part.wiper, part.b, part.lower);
    }
    for (const auto& part : board.switches)
        both(part, part.a, part.b, devices::switchClosedResistance,
             part.closed ? Obstacle::none : Obstacle::openSwitch);
    const auto oneWay = [&](const devices::Named& part, Node a, Node b, double ohms) {
        both(part, a, b, ohms);
        if (!edges.empty() && edges.back().ref == &part.ref) edges.back().obstacle = Obstacle::backward;
    };
    for (const auto& part : board.junctions)
        oneWay(part, part.anode, part.cathode, part.law.seriesResistance);
    for (const auto& part : board.supplies)
        if (&part != without) oneWay(part, part.minus, part.plus, part.resistance);
    return edges;
}

void addOnce(std::vector<std::string>& list, const std::string& ref) {
    if (std::find(list.begin(), list.end(), ref) == list.end()) list.push_back(ref);
}

} // namespace

std::optional<DcPath> dcPath(const devices::Board& board, Node from, Node to, const std::set<Node>& barred,
                             const devices::Supply* without) {
    if (from == devices::open || to == devices::open) return std::nullopt;
    const auto edges = edgesOf(board, without);
    std::multimap<Node, const Edge*> leaving;
    for (const Edge& e : edges) leaving.emplace(e.from, &e);
    struct Ahead {
        double weight;
        Node node;
        const Edge* by;
        bool operator>(const Ahead& other) const { return weight > other.weight; }
    };
    std::priority_queue<Ahead, std::vector<Ahead>, std::greater<>> ahead;
    std::map<Node, const Edge*> reached;
    ahead.push({0, from, nullptr});
    while (!ahead.empty()) {
        const Ahead now = ahead.top();
        ahead.pop();
        if (!reached.emplace(now.node, now.by).second) continue;
        if (now.node == to) break;
        if (now.node != from && barred.contains(now.node)) continue;
        const auto [begin, end] = leaving.equal_range(now.node);
        for (auto e = begin; e != end; ++e) {
            const double obstacle = e->second->obstacle == Obstacle::none ? 0 : obstacleWeight;
            ahead.push({now.weight + e->second->ohms + obstacle, e->second->to, e->second});
        }
    }
    if (!reached.contains(to)) return std::nullopt;
    DcPath path;
    for (const Edge* e = reached.at(to); e != nullptr; e = reached.at(e->from)) {
        addOnce(path.parts, *e->ref);
        if (e->obstacle == Obstacle::openSwitch) addOnce(path.openSwitches, *e->ref);
        if (e->obstacle == Obstacle::backward) addOnce(path.backward, *e->ref);
        path.resistance_ohm += e->ohms;
    }
    for (auto* list : {&path.parts, &path.openSwitches, &path.backward})
        std::reverse(list->begin(), list->end());
    return path;
}

} // namespace blinkwright::study
