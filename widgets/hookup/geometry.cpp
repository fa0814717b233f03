#include "widgets/hookup/geometry.h"

#include <array>
#include <cmath>

namespace blinkwright::widgets::hookup {

using circuit::PartKind;

namespace {

constexpr std::array<Point, 2> shortLeads{{{-20, 0}, {20, 0}}};
constexpr std::array<Point, 2> longLeads{{{-30, 0}, {30, 0}}};
constexpr std::array<Point, 3> withWiper{{{-30, 0}, {30, 0}, {0, -30}}};
// The package from above: 1 to 4 down the left side, 5 to 8 up the right side.
constexpr std::array<Point, 8> package{
    {{-80, -60}, {-80, -20}, {-80, 20}, {-80, 60}, {80, 60}, {80, 20}, {80, -20}, {80, -60}}};
// The block: supply on top, ground below, and each of the others on the side that it has on the package,
// output and control in the very places. So one arrangement of the parts serves both looks; mirrored, the
// block has its inputs on the left.
constexpr std::array<Point, 8> block{
    {{0, 100}, {80, 20}, {-80, 20}, {-80, -60}, {80, 60}, {80, -20}, {80, -60}, {0, -100}}};

int snapped(double v) {
    const double limit = 1e6;
    return pitch * static_cast<int>(std::lround(std::clamp(v, -limit, limit) / pitch));
}

} // namespace

Pose poseOf(const circuit::Placement& placement) {
    const int quarters = static_cast<int>(std::lround(placement.turn / 90.0));
    return {{snapped(placement.x), snapped(placement.y)}, ((quarters % 4 + 4) % 4) * 90, placement.mirror};
}

Point placed(Point local, const Pose& pose) {
    if (pose.mirror) local.x = -local.x;
    for (int t = 0; t < pose.turn; t += 90) local = {-local.y, local.x}; // clockwise, since y grows downwards
    return {pose.at.x + local.x, pose.at.y + local.y};
}

Box placed(const Box& local, const Pose& pose) {
    const Point a = placed(Point{local.left, local.top}, pose);
    const Point b = placed(Point{local.right, local.bottom}, pose);
    return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

std::span<const Point> pinsOf(PartKind kind, TimerLook look) {
    switch (kind) {
    case PartKind::timer:
        return look == TimerLook::package ? std::span<const Point>(package) : block;
    case PartKind::variable:
        return withWiper;
    case PartKind::capacitor:
        return shortLeads;
    case PartKind::supply:
    case PartKind::resistor:
    case PartKind::lamp:
    case PartKind::diode:
    case PartKind::toggle:
        break;
    }
    return longLeads;
}

Box bodyOf(PartKind kind, TimerLook look) {
    switch (kind) {
    case PartKind::timer:
        // The pins' numbers stand beside the outline, on the leads.
        return look == TimerLook::package ? Box{-70, -80, 70, 80} : Box{-70, -90, 70, 90};
    case PartKind::supply:
        return {-20, -15, 20, 15};
    case PartKind::resistor:
        return {-20, -8, 20, 8};
    case PartKind::variable:
        return {-20, -20, 20, 8};
    case PartKind::capacitor:
        return {-10, -14, 10, 14};
    case PartKind::lamp:
        return {-20, lensCentre.y - lensRadius - 3, 20, 11};
    case PartKind::diode:
        return {-20, -11, 20, 11};
    case PartKind::toggle:
        return {-20, -16, 20, 6};
    }
    return {};
}

Box extentOf(PartKind kind, TimerLook look) {
    Box box = bodyOf(kind, look);
    for (const Point p : pinsOf(kind, look)) box = box.with({p.x, p.y, p.x, p.y});
    return box;
}

Point leadOf(PartKind kind, TimerLook look, int pin) {
    const Point p = pinsOf(kind, look)[static_cast<std::size_t>(pin)];
    const Box body = bodyOf(kind, look);
    if (p.x < body.left) return {-pitch, 0};
    if (p.x > body.right) return {pitch, 0};
    return {0, p.y < body.top ? -pitch : pitch};
}

} // namespace blinkwright::widgets::hookup
