#include "core/study/ground_reach.h"

#include <algorithm>

namespace blinkwright::study {

using devices::Node;

std::vector<bool> reachedFromGround(const devices::Board& board) {
    std::vector<bool> reached(static_cast<std::size_t>(board.nodes()), false);
    if (board.supplies.empty() || board.supplies.front().minus == devices::open) return reached;
    reached[0] = true;
    const auto isReached = [&](Node node) {
        return node != devices::open && reached[static_cast<std::size_t>(node)];
    };
    for (bool changed = true; changed;) {
        changed = false;
        everyPart(board, [&](const devices::Named&, const std::vector<Node>& nodes) {
            if (std::none_of(nodes.begin(), nodes.end(), isReached)) return;
            for (const Node node : nodes) {
                if (node == devices::open || isReached(node)) continue;
                reached[static_cast<std::size_t>(node)] = true;
                changed = true;
            }
        });
    }
    return reached;
}

} // namespace blinkwright::study
