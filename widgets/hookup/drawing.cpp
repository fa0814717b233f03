#include "widgets/hookup/drawing.h"

#include "widgets/hookup/layout.h"
#include "widgets/hookup/wiring.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets::hookup {

using circuit::Circuit;
using circuit::NetId;
using circuit::Part;
using circuit::PartId;
using circuit::PartKind;

namespace {

constexpr double railTextGap = 8; ///< from the end of a rail to its sign

QRectF area(const Box& box) {
    return {QPointF(box.left, box.top), QPointF(box.right, box.bottom)};
}

/// All that a part's symbol and its lens may cover.
QRectF partArea(const PartView& part) {
    const QRectF body = area(placed(extentOf(part.kind), part.pose)).adjusted(-6, -6, 6, 6);
    return part.kind == PartKind::lamp ? body | lensArea(part) : body;
}

/// Glyphs may reach a little beyond the room that they were measured to take.
QRectF labelArea(const Label& label) {
    return label.rect.adjusted(-4, -3, 4, 3);
}

} // namespace

Drawing::Change Drawing::show(const Circuit& circuit) {
    std::vector<Shape> shapes;
    shapes.reserve(circuit.parts().size());
    for (const Part& part : circuit.parts()) {
        const circuit::Placement* p = circuit.placement(part.id);
        shapes.push_back({part.id, part.kind, part.ref, p ? std::optional(*p) : std::nullopt});
    }
    if (shapes != m_shapes || circuit.nets() != m_nets) {
        m_shapes = std::move(shapes);
        m_nets = circuit.nets();
        rebuild(circuit);
        return Change::layout;
    }
    m_changed.clear();
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        PartView now = viewOf(circuit, circuit.parts()[i], m_parts[i].pose);
        if (now == m_parts[i]) continue;
        const bool sameSymbol = now.colour == m_parts[i].colour && now.polarised == m_parts[i].polarised &&
                                now.closed == m_parts[i].closed && now.pose == m_parts[i].pose &&
                                now.kind != PartKind::timer;
        m_parts[i] = std::move(now);
        if (!sameSymbol) m_changed.push_back(partArea(m_parts[i]));
        if (m_parts[i].kind == PartKind::timer) continue;
        const Label fresh = withTexts(m_labels[i], m_parts[i]);
        m_changed.push_back(labelArea(m_labels[i]) | labelArea(fresh));
        m_labels[i] = fresh;
    }
    return m_changed.empty() ? Change::nothing : Change::texts;
}

void Drawing::rebuild(const Circuit& circuit) {
    const std::map<PartId, Pose> poses = layOut(circuit);
    m_parts.clear();
    for (const Part& part : circuit.parts()) m_parts.push_back(viewOf(circuit, part, poses.at(part.id)));
    m_routes = route(routerInput(m_parts, circuit));
    m_labels = placeLabels(m_parts, m_routes);
    placeRailTexts(circuit);
    measure();
}

void Drawing::placeRailTexts(const Circuit& circuit) {
    m_railEnds.clear();
    const RailNets rails = railNets(circuit);
    for (std::size_t n = 0; n < circuit.nets().size(); ++n) {
        const NetId id = circuit.nets()[n].id;
        if (circuit.nets()[n].pins.size() < leastRailPins || (id != rails.plus && id != rails.zero)) continue;
        const bool top = id == rails.plus;
        const Segment* rail = nullptr;
        for (const Segment& s : m_routes.segments)
            if (s.net == static_cast<int>(n) && s.a.y == s.b.y &&
                (!rail || (top ? s.a.y < rail->a.y : s.a.y > rail->a.y) ||
                 (s.a.y == rail->a.y && s.b.x > rail->b.x)))
                rail = &s;
        if (rail)
            m_railEnds.push_back({QPointF(rail->b.x + railTextGap, rail->b.y),
                                  top ? QStringLiteral("+") : QStringLiteral("0 V")});
    }
}

void Drawing::measure() {
    QRectF all;
    for (const PartView& part : m_parts) all |= area(placed(extentOf(part.kind), part.pose));
    for (const Label& label : m_labels) all |= label.rect;
    for (const Segment& s : m_routes.segments)
        all |= QRectF(QPointF(s.a.x, s.a.y), QPointF(s.b.x, s.b.y)).adjusted(-1, -1, 1, 1);
    for (const RailEnd& end : m_railEnds)
        all |= QRectF(end.at.x(), end.at.y() - labelLine / 2, 24, labelLine);
    m_bounds = all.isEmpty() ? QRectF(-50, -50, 100, 100) : all;
}

const PartView* Drawing::find(PartId id) const {
    for (const PartView& part : m_parts)
        if (part.id == id) return &part;
    return nullptr;
}

void Drawing::paint(QPainter& painter, const Theme& theme, const std::vector<QRectF>& areas) const {
    const auto wanted = [&areas](const QRectF& part) {
        return areas.empty() || std::any_of(areas.begin(), areas.end(),
                                            [&part](const QRectF& a) { return a.intersects(part); });
    };
    paintWires(painter, m_routes, theme);
    for (const PartView& part : m_parts)
        if (wanted(partArea(part))) paintPart(painter, part, theme);
    for (const Label& label : m_labels)
        if (!label.rect.isEmpty() && wanted(labelArea(label))) paintLabel(painter, label, theme);
    painter.setPen(theme.ink);
    painter.setFont(labelFont(labelSize, true));
    for (const RailEnd& end : m_railEnds)
        painter.drawText(QRectF(end.at.x(), end.at.y() - 10, 60, 20), Qt::AlignLeft | Qt::AlignVCenter,
                         end.text);
}

std::optional<PartId> Drawing::partAt(QPointF at) const {
    for (const PartView& part : m_parts)
        if (area(placed(extentOf(part.kind), part.pose)).adjusted(-4, -4, 4, 4).contains(at)) return part.id;
    for (std::size_t i = 0; i < m_labels.size(); ++i)
        if (m_labels[i].rect.contains(at)) return m_parts[i].id;
    return std::nullopt;
}

std::optional<Drawing::Pin> Drawing::pinAt(QPointF at, double reach) const {
    std::optional<Pin> found;
    double least = reach;
    for (const PartView& part : m_parts)
        for (int pin = 0; pin < static_cast<int>(pinsOf(part.kind).size()); ++pin) {
            const Point end = placed(pinsOf(part.kind)[static_cast<std::size_t>(pin)], part.pose);
            const double far = std::hypot(at.x() - end.x, at.y() - end.y);
            if (far > least) continue;
            least = far;
            found = Pin{part.id, pin};
        }
    return found;
}

std::optional<QString> Drawing::wireAt(QPointF at, double reach) const {
    for (const Segment& s : m_routes.segments)
        if (QRectF(QPointF(s.a.x, s.a.y), QPointF(s.b.x, s.b.y))
                .adjusted(-reach, -reach, reach, reach)
                .contains(at))
            return QString::fromStdString(m_nets[static_cast<std::size_t>(s.net)].name);
    return std::nullopt;
}

QString Drawing::netName(PartId part, int pin) const {
    for (const circuit::Net& net : m_nets)
        for (const circuit::PinRef ref : net.pins)
            if (ref == circuit::PinRef{part, pin}) return QString::fromStdString(net.name);
    return {};
}

} // namespace blinkwright::widgets::hookup
