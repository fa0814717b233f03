#include "core/engine/large/partition.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace blinkwright::engine::large {

using devices::Board;
using devices::Node;
using devices::open;

namespace {

constexpr int mostBorders = 8;
constexpr int mostStates = 12; // of a piece: its matrices are dense
constexpr int mostTimers = 6;
constexpr std::size_t denseTimers = 4, denseCapacitors = 12; // up to these a board is quick as a whole

enum class Kind { supply, timer, resistor, variable, capacitor, junction, toggle };

struct Part {
    Kind kind;
    std::size_t index; ///< into the board's list of its kind
    std::vector<Node> nodes;
};

std::vector<Part> partsOf(const Board& board) {
    std::vector<Part> parts;
    const auto add = [&](Kind kind, std::size_t index, std::vector<Node> nodes) {
        nodes.erase(std::remove(nodes.begin(), nodes.end(), open), nodes.end());
        parts.push_back({kind, index, std::move(nodes)});
    };
    for (std::size_t k = 0; k < board.supplies.size(); ++k)
        add(Kind::supply, k, {board.supplies[k].plus, board.supplies[k].minus});
    for (std::size_t k = 0; k < board.timers.size(); ++k) {
        const auto& pins = board.timers[k].pins;
        add(Kind::timer, k, {pins.begin(), pins.end()});
    }
    for (std::size_t k = 0; k < board.resistors.size(); ++k)
        add(Kind::resistor, k, {board.resistors[k].a, board.resistors[k].b});
    for (std::size_t k = 0; k < board.variables.size(); ++k)
        add(Kind::variable, k, {board.variables[k].a, board.variables[k].b, board.variables[k].wiper});
    for (std::size_t k = 0; k < board.capacitors.size(); ++k)
        add(Kind::capacitor, k, {board.capacitors[k].plus, board.capacitors[k].minus});
    for (std::size_t k = 0; k < board.junctions.size(); ++k)
        add(Kind::junction, k, {board.junctions[k].anode, board.junctions[k].cathode});
    for (std::size_t k = 0; k < board.switches.size(); ++k)
        add(Kind::toggle, k, {board.switches[k].a, board.switches[k].b});
    return parts;
}

/// Which component each part is in once the borders are taken out.
struct Components {
    int count = 0;
    std::vector<int> ofPart;
    std::vector<int> timers, capacitors; ///< by component

    int withTimers() const {
        return static_cast<int>(std::count_if(timers.begin(), timers.end(), [](int n) { return n > 0; }));
    }
    bool fits(int k) const {
        const auto at = static_cast<std::size_t>(k);
        return timers[at] <= mostTimers && capacitors[at] <= mostStates;
    }
    bool allFit() const {
        for (int k = 0; k < count; ++k)
            if (!fits(k)) return false;
        return true;
    }
    int heaviest() const {
        int best = 0;
        for (int k = 1; k < count; ++k)
            if (weight(k) > weight(best)) best = k;
        return best;
    }
    int weight(int k) const {
        return 3 * timers[static_cast<std::size_t>(k)] + capacitors[static_cast<std::size_t>(k)];
    }
};

Components componentsOf(const std::vector<Part>& parts, int nodes, const std::vector<bool>& border) {
    std::vector<int> parent(static_cast<std::size_t>(nodes));
    std::iota(parent.begin(), parent.end(), 0);
    const auto find = [&](int k) {
        while (parent[static_cast<std::size_t>(k)] != k) {
            auto& p = parent[static_cast<std::size_t>(k)];
            p = parent[static_cast<std::size_t>(p)];
            k = p;
        }
        return k;
    };
    const auto inner = [&](const Part& part) {
        Node first = open;
        for (Node node : part.nodes) {
            if (border[static_cast<std::size_t>(node)]) continue;
            if (first == open)
                first = node;
            else
                parent[static_cast<std::size_t>(find(node))] = find(first);
        }
        return first;
    };
    std::vector<Node> firsts;
    firsts.reserve(parts.size());
    for (const Part& part : parts) firsts.push_back(inner(part));
    Components c;
    std::map<int, int> numbers; // by root; of parts between borders only, all linear ones share one
    constexpr int shared = -1;
    const auto fresh = [&] {
        c.timers.push_back(0);
        c.capacitors.push_back(0);
        return c.count++;
    };
    for (std::size_t k = 0; k < parts.size(); ++k) {
        const Part& part = parts[k];
        int number = 0;
        const bool alone = part.kind == Kind::timer || part.kind == Kind::capacitor ||
                           part.kind == Kind::junction || part.kind == Kind::toggle;
        if (firsts[k] == open && alone) {
            number = fresh();
        } else {
            const int root = firsts[k] == open ? shared : find(firsts[k]);
            const auto known = numbers.find(root);
            number = known != numbers.end() ? known->second : numbers[root] = fresh();
        }
        c.ofPart.push_back(number);
        c.timers[static_cast<std::size_t>(number)] += part.kind == Kind::timer;
        c.capacitors[static_cast<std::size_t>(number)] += part.kind == Kind::capacitor;
    }
    return c;
}

/// Chooses the borders one by one: the net that leaves most pieces with timers, as long as it leaves enough
/// more of them, and does not swing by itself if that can be had; in a piece that is still too large, failing
/// that, the net on which most parts hang.
std::vector<Node> chooseBorders(const Board& board, const std::vector<Part>& parts, int leastGain) {
    const int nodes = board.nodes();
    std::vector<bool> border(static_cast<std::size_t>(nodes), false);
    border[0] = true;
    std::vector<Node> chosen;
    // A net that swings with every switching of a timer makes a bad border, for it takes all blocks along.
    namespace pins = circuit::timerPin;
    std::vector<bool> swings(static_cast<std::size_t>(nodes), false);
    for (const auto& timer : board.timers)
        for (const int pin : {pins::trigger, pins::output, pins::control, pins::threshold, pins::discharge})
            if (const Node node = timer.pins[static_cast<std::size_t>(pin)]; node != open)
                swings[static_cast<std::size_t>(node)] = true;
    for (;;) {
        const Components now = componentsOf(parts, nodes, border);
        const int heaviest = now.heaviest();
        const bool tooLarge = !now.fits(heaviest);
        if (now.timers[static_cast<std::size_t>(heaviest)] <= leastGain && !tooLarge) break;
        std::vector<int> degree(static_cast<std::size_t>(nodes), 0);
        for (std::size_t k = 0; k < parts.size(); ++k)
            if (now.ofPart[k] == heaviest)
                for (Node node : parts[k].nodes) ++degree[static_cast<std::size_t>(node)];
        Node best = open, busiest = open, bestQuiet = open;
        int bestCount = now.withTimers() + leastGain - 1;
        int bestQuietCount = bestCount;
        for (Node node = 1; node < nodes; ++node) {
            const int hangs = degree[static_cast<std::size_t>(node)];
            if (border[static_cast<std::size_t>(node)] || hangs < 3) continue;
            if (busiest == open || hangs > degree[static_cast<std::size_t>(busiest)]) busiest = node;
            border[static_cast<std::size_t>(node)] = true;
            const int count = componentsOf(parts, nodes, border).withTimers();
            border[static_cast<std::size_t>(node)] = false;
            if (count > bestCount) {
                bestCount = count;
                best = node;
            }
            if (!swings[static_cast<std::size_t>(node)] && count > bestQuietCount) {
                bestQuietCount = count;
                bestQuiet = node;
            }
        }
        if (bestQuiet != open || !tooLarge) best = bestQuiet;
        if (best == open && tooLarge) best = busiest;
        if (best == open || chosen.size() == mostBorders) break;
        border[static_cast<std::size_t>(best)] = true;
        chosen.push_back(best);
    }
    // A net that was taken in the hope of more and turned out to divide nothing goes back into its piece.
    for (std::size_t k = chosen.size(); k-- > 0;) {
        const Components with = componentsOf(parts, nodes, border);
        border[static_cast<std::size_t>(chosen[k])] = false;
        const Components without = componentsOf(parts, nodes, border);
        if (without.withTimers() == with.withTimers() && without.allFit() == with.allFit())
            chosen.erase(chosen.begin() + static_cast<std::ptrdiff_t>(k));
        else
            border[static_cast<std::size_t>(chosen[k])] = true;
    }
    return chosen;
}

/// Builds one piece's board from its parts.
class PieceBuilder {
  public:
    PieceBuilder(const Board& whole, const std::vector<Node>& borders) : m_whole(whole), m_borders(borders) {
        node(0);
    }

    void add(const Part& part) {
        const std::size_t k = part.index;
        const int global = static_cast<int>(k);
        Board& b = m_piece.board;
        switch (part.kind) {
        case Kind::supply: {
            auto copy = m_whole.supplies[k];
            copy.plus = node(copy.plus);
            copy.minus = node(copy.minus);
            b.supplies.push_back(std::move(copy));
            m_piece.supplies.push_back(global);
            break;
        }
        case Kind::timer: {
            auto copy = m_whole.timers[k];
            for (Node& pin : copy.pins) pin = node(pin);
            b.timers.push_back(std::move(copy));
            m_piece.timers.push_back(global);
            break;
        }
        case Kind::resistor: {
            auto copy = m_whole.resistors[k];
            copy.a = node(copy.a);
            copy.b = node(copy.b);
            b.resistors.push_back(std::move(copy));
            break;
        }
        case Kind::variable: {
            auto copy = m_whole.variables[k];
            copy.a = node(copy.a);
            copy.b = node(copy.b);
            copy.wiper = node(copy.wiper);
            b.variables.push_back(std::move(copy));
            break;
        }
        case Kind::capacitor: {
            auto copy = m_whole.capacitors[k];
            copy.plus = node(copy.plus);
            copy.minus = node(copy.minus);
            b.capacitors.push_back(std::move(copy));
            m_piece.capacitors.push_back(global);
            break;
        }
        case Kind::junction: {
            auto copy = m_whole.junctions[k];
            copy.anode = node(copy.anode);
            copy.cathode = node(copy.cathode);
            b.junctions.push_back(std::move(copy));
            m_piece.junctions.push_back(global);
            break;
        }
        case Kind::toggle: {
            auto copy = m_whole.switches[k];
            copy.a = node(copy.a);
            copy.b = node(copy.b);
            b.switches.push_back(std::move(copy));
            m_piece.switches.push_back(global);
            break;
        }
        }
    }

    Piece finish() {
        for (std::size_t k = 0; k < m_borders.size(); ++k) {
            const auto known = m_local.find(m_borders[k]);
            if (known == m_local.end()) continue;
            devices::Capacitor source;
            source.plus = known->second;
            source.minus = 0;
            source.capacitance = 1;
            m_piece.board.capacitors.push_back(std::move(source));
            m_piece.borders.push_back(static_cast<int>(k));
        }
        return std::move(m_piece);
    }

  private:
    Node node(Node global) {
        if (global == open) return open;
        const auto [entry, isNew] = m_local.try_emplace(global, static_cast<int>(m_piece.nodes.size()));
        if (isNew) {
            m_piece.nodes.push_back(global);
            m_piece.board.nodeNames.push_back(m_whole.nodeNames[static_cast<std::size_t>(global)]);
            m_piece.board.nodeNets.push_back(m_whole.nodeNets[static_cast<std::size_t>(global)]);
        }
        return entry->second;
    }

    const Board& m_whole;
    const std::vector<Node>& m_borders;
    Piece m_piece;
    std::map<Node, int> m_local;
};

} // namespace

std::optional<Partition> partition(const Board& board, int leastGain) {
    if (board.nodes() == 0) return std::nullopt;
    const auto parts = partsOf(board);
    Partition result;
    result.borders = chooseBorders(board, parts, leastGain);
    std::vector<bool> border(static_cast<std::size_t>(board.nodes()), false);
    border[0] = true;
    for (Node node : result.borders) border[static_cast<std::size_t>(node)] = true;
    const Components components = componentsOf(parts, board.nodes(), border);
    result.withTimers = components.withTimers();
    if (!components.allFit() || result.withTimers < 2) return std::nullopt;

    std::vector<PieceBuilder> builders(static_cast<std::size_t>(components.count),
                                       PieceBuilder(board, result.borders));
    for (std::size_t k = 0; k < parts.size(); ++k)
        builders[static_cast<std::size_t>(components.ofPart[k])].add(parts[k]);
    for (auto& builder : builders) result.pieces.push_back(builder.finish());
    return result;
}

bool hasManyTimers(const Board& board) {
    return board.timers.size() > denseTimers;
}

bool isLarge(const Board& board) {
    return hasManyTimers(board) || board.capacitors.size() > denseCapacitors;
}

} // namespace blinkwright::engine::large
