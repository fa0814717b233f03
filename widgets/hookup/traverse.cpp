#include "widgets/hookup/traverse.h"

#include <cstdlib>
#include <limits>

namespace blinkwright::widgets::hookup {

namespace {
/// How far a part lies ahead, with what lies off to the side counted three times; negative if it is not
/// ahead.
long long farAhead(Point from, Point to, Way way) {
    const long long dx = to.x - from.x, dy = to.y - from.y;
    const long long ahead = way == Way::left ? -dx : way == Way::right ? dx : way == Way::up ? -dy : dy;
    const long long aside = std::llabs(way == Way::left || way == Way::right ? dy : dx);
    return ahead <= 0 || aside > 2 * ahead ? -1 : ahead + 3 * aside;
}
} // namespace

std::optional<circuit::PartId> neighbour(const std::vector<PartView>& parts,
                                         std::optional<circuit::PartId> from, Way way) {
    if (parts.empty()) return std::nullopt;
    const auto at = std::find_if(parts.begin(), parts.end(), [&](const PartView& p) { return p.id == from; });
    if (at == parts.end()) return way == Way::previous ? parts.back().id : parts.front().id;
    if (way == Way::next) return at + 1 == parts.end() ? std::nullopt : std::optional((at + 1)->id);
    if (way == Way::previous) return at == parts.begin() ? std::nullopt : std::optional((at - 1)->id);

    std::optional<circuit::PartId> best;
    long long least = std::numeric_limits<long long>::max();
    for (const PartView& part : parts) {
        const long long far = farAhead(at->pose.at, part.pose.at, way);
        if (far < 0 || far >= least) continue;
        least = far;
        best = part.id;
    }
    return best;
}

} // namespace blinkwright::widgets::hookup
