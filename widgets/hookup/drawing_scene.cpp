#include "widgets/hookup/drawing_scene.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets::hookup {

using circuit::NetId;
using circuit::PartId;
using circuit::PinRef;

namespace {

QPointF pointOf(Point p) {
    return {static_cast<double>(p.x), static_cast<double>(p.y)};
}

circuit::Placement placementOf(const Pose& pose) {
    return {static_cast<double>(pose.at.x), static_cast<double>(pose.at.y), pose.turn, pose.mirror, {}};
}

QRectF boxOf(const PartView& part) {
    const Box box = hookup::placed(extentOf(part.kind), part.pose);
    return {pointOf({box.left, box.top}), pointOf({box.right, box.bottom})};
}

} // namespace

int DrawingScene::index(NetId net) const {
    const auto found = std::ranges::find(m_nets, net, &circuit::Net::id);
    return found == m_nets.end() ? -1 : static_cast<int>(found - m_nets.begin());
}

std::optional<PinRef> DrawingScene::pinAt(QPointF at) const {
    const auto pin = m_drawing.pinAt(at, m_pinReach);
    return pin ? std::optional(PinRef{pin->part, pin->pin}) : std::nullopt;
}

const Segment* DrawingScene::segmentAt(QPointF at) const {
    const Segment* found = nullptr;
    double least = m_wireReach;
    for (const Segment& s : m_drawing.routes().segments) {
        const double dx = std::max({s.a.x - at.x(), at.x() - s.b.x, 0.0});
        const double dy = std::max({s.a.y - at.y(), at.y() - s.b.y, 0.0});
        const double far = std::hypot(dx, dy);
        if (far > least) continue;
        least = far;
        found = &s;
    }
    return found;
}

std::optional<NetId> DrawingScene::netAt(QPointF at) const {
    const Segment* segment = segmentAt(at);
    if (!segment || static_cast<std::size_t>(segment->net) >= m_nets.size()) return std::nullopt;
    return m_nets[static_cast<std::size_t>(segment->net)].id;
}

std::optional<PinRef> DrawingScene::wireEndAt(QPointF at) const {
    const Segment* segment = segmentAt(at);
    if (!segment || static_cast<std::size_t>(segment->net) >= m_nets.size()) return std::nullopt;
    std::optional<PinRef> found;
    double least = 0;
    for (const PinRef pin : m_nets[static_cast<std::size_t>(segment->net)].pins) {
        const QPointF end = pinPoint(pin);
        if (end != pointOf(segment->a) && end != pointOf(segment->b)) continue;
        const double far = std::hypot(end.x() - at.x(), end.y() - at.y());
        if (found && far >= least) continue;
        least = far;
        found = pin;
    }
    return found;
}

std::vector<PartId> DrawingScene::partsIn(const QRectF& area) const {
    std::vector<PartId> found;
    for (const PartView& part : m_drawing.parts())
        if (area.contains(boxOf(part))) found.push_back(part.id);
    return found;
}

circuit::Places DrawingScene::places(const std::vector<PartId>& parts) const {
    circuit::Places all;
    for (const PartId id : parts)
        if (const PartView* part = m_drawing.find(id)) all[id] = placementOf(part->pose);
    return all;
}

circuit::Places DrawingScene::places() const {
    circuit::Places all;
    for (const PartView& part : m_drawing.parts()) all[part.id] = placementOf(part.pose);
    return all;
}

std::optional<NetId> DrawingScene::netOf(PinRef pin) const {
    for (const circuit::Net& net : m_nets)
        if (std::ranges::find(net.pins, pin) != net.pins.end()) return net.id;
    return std::nullopt;
}

QPointF DrawingScene::pinPoint(PinRef pin) const {
    const PartView* part = m_drawing.find(pin.part);
    if (!part) return {};
    const auto pins = pinsOf(part->kind);
    if (pin.pin < 0 || static_cast<std::size_t>(pin.pin) >= pins.size()) return {};
    return pointOf(hookup::placed(pins[static_cast<std::size_t>(pin.pin)], part->pose));
}

QString DrawingScene::pinText(PinRef pin) const {
    const PartView* part = m_drawing.find(pin.part);
    if (!part) return {};
    const auto pins = circuit::info(part->kind).pins;
    const std::string_view name = pins[static_cast<std::size_t>(pin.pin)].name;
    return part->ref + QLatin1Char(':') + QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

QString DrawingScene::netText(NetId net) const {
    const int at = index(net);
    return at < 0 ? QString() : QString::fromStdString(m_nets[static_cast<std::size_t>(at)].name);
}

std::vector<Segment> DrawingScene::segmentsOf(NetId net) const {
    std::vector<Segment> found;
    const int at = index(net);
    for (const Segment& s : m_drawing.routes().segments)
        if (s.net == at) found.push_back(s);
    return found;
}

} // namespace blinkwright::widgets::hookup
