#include "widgets/hookup/add_parts.h"

#include <cmath>

namespace blinkwright::widgets::hookup {

using circuit::PartKind;

namespace {

constexpr int farthest = 400; ///< rings of the grid that are tried

Box boxOf(PartKind kind, const circuit::Placement& place) {
    return placed(extentOf(kind), poseOf(place));
}

bool isFree(const std::vector<PartView>& parts, const Box& box) {
    return std::none_of(parts.begin(), parts.end(), [&](const PartView& part) {
        return placed(extentOf(part.kind), part.pose).meets(box);
    });
}

int onGrid(int v) {
    return pitch * static_cast<int>(std::lround(static_cast<double>(v) / pitch));
}

} // namespace

circuit::Placement usualPose(PartKind kind) {
    circuit::Placement pose;
    if (kind != PartKind::timer) pose.turn = 90;
    return pose;
}

circuit::Placement freePlace(const std::vector<PartView>& parts, PartKind kind, Point near) {
    // Room for two wires and a label: parts side by side are what a circuit is built of.
    constexpr int room = 2 * pitch;
    circuit::Placement place = usualPose(kind);
    for (int ring = 0; ring < farthest; ++ring) {
        double least = -1;
        circuit::Placement best;
        for (int i = -ring; i <= ring; ++i)
            for (const Point step : {Point{i, -ring}, Point{i, ring}, Point{-ring, i}, Point{ring, i}}) {
                place.x = onGrid(near.x) + pitch * step.x;
                place.y = onGrid(near.y) + pitch * step.y;
                if (!isFree(parts, boxOf(kind, place).grown(room))) continue;
                const double far = std::hypot(step.x, step.y);
                if (least >= 0 && far >= least) continue;
                least = far;
                best = place;
            }
        if (least >= 0) return best;
    }
    return place;
}

Point freeShift(const std::vector<PartView>& parts, const circuit::Circuit& copies) {
    constexpr int step = 2 * pitch;
    for (int k = 0; k < farthest; ++k) {
        const Point shift{k * step, k * step};
        const bool fits = std::ranges::all_of(copies.parts(), [&](const circuit::Part& part) {
            circuit::Placement place;
            if (const circuit::Placement* stated = copies.placement(part.id)) place = *stated;
            place.x += shift.x;
            place.y += shift.y;
            return isFree(parts, boxOf(part.kind, place));
        });
        if (fits) return shift;
    }
    return {step, step};
}

} // namespace blinkwright::widgets::hookup
