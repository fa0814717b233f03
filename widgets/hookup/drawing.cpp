#include "widgets/hookup/drawing.h"

#include "widgets/hookup/layout.h"
#include "widgets/hookup/wiring.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

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
    const QRectF body = area(placed(extentOf(part), part.pose)).adjusted(-6, -6, 6, 6);
    return part.kind == PartKind::lamp ? body | lensArea(part) : body;
}

/// Glyphs may reach a little beyond the room that they were measured to take.
QRectF labelArea(const Label& label) {
    return label.rect.adjusted(-4, -3, 4, 3);
}

QRectF railTextArea(QPointF at, double size) {
    const double line = labelLine(size);
    return {at.x() - 2, at.y() - line / 2 - 2, 3 * line, line + 4};
}
QRectF segmentArea(const Segment& s) {
    return area({s.a.x, s.a.y, s.b.x, s.b.y}).adjusted(-2, -2, 2, 2);
}
QRectF dotArea(const Dot& dot) {
    return QRectF(dot.at.x, dot.at.y, 0, 0).adjusted(-5, -5, 5, 5);
}
QRectF missingArea(const Missing& m) {
    return QRectF(QPointF(m.a.x, m.a.y), QPointF(m.b.x, m.b.y)).normalized().adjusted(-2, -2, 2, 2);
}

/// More pieces than these are better drawn as a whole.
constexpr std::size_t mostAreas = 150;

/// Areas of what stands in one of two sorted lists alone.
template <class T, class Area>
void noteDifference(const std::vector<T>& before, const std::vector<T>& now, Area areaOf,
                    std::vector<QRectF>& areas) {
    std::vector<T> differ;
    std::set_symmetric_difference(before.begin(), before.end(), now.begin(), now.end(),
                                  std::back_inserter(differ));
    for (const T& item : differ) areas.push_back(areaOf(item));
}

} // namespace

Drawing::Change Drawing::show(const Circuit& circuit) {
    m_changed.clear();
    if (takeShapes(circuit)) {
        rebuild(circuit);
        return Change::layout;
    }
    std::vector<Pose> poses;
    for (const PartView& part : m_parts) poses.push_back(part.pose);
    const std::vector<PartView> before = m_parts;
    takeViews(circuit, poses);
    noteTexts(before);
    return m_changed.empty() ? Change::nothing : Change::texts;
}

void Drawing::setTextSize(double size) {
    if (std::exchange(m_textSize, size) == size) return;
    m_changed.clear();
    m_labels = placeLabels(m_parts, m_routes, size);
    measure();
}

/// @return whether anything is new that layout and routing depend on.
bool Drawing::takeShapes(const Circuit& circuit) {
    std::vector<Shape> shapes;
    shapes.reserve(circuit.parts().size());
    for (const Part& part : circuit.parts()) {
        const circuit::Placement* p = circuit.placement(part.id);
        shapes.push_back({part.id, part.kind, part.ref, p ? std::optional(poseOf(*p)) : std::nullopt});
    }
    if (shapes == m_shapes && circuit.nets() == m_nets && m_style == m_wantedStyle) return false;
    m_shapes = std::move(shapes);
    if (circuit.nets() != m_nets) m_nets = circuit.nets();
    m_style = m_wantedStyle;
    return true;
}

/// Views are made anew only of parts that state something else than before.
void Drawing::takeViews(const Circuit& circuit, const std::vector<Pose>& poses) {
    std::vector<PartView> before = std::move(m_parts);
    std::vector<Stated> stated = std::move(m_stated);
    m_parts.clear();
    m_stated.clear();
    for (std::size_t i = 0; i < circuit.parts().size(); ++i) {
        const Part& part = circuit.parts()[i];
        const circuit::Values& overrides = circuit.overrides(circuit::PartSet::A, part.id);
        const bool same = i < before.size() && before[i].id == part.id && before[i].kind == part.kind &&
                          before[i].ref == QString::fromStdString(part.ref) && before[i].style == m_style &&
                          stated[i].own == part.values && stated[i].overrides == overrides;
        if (same) {
            m_stated.push_back(std::move(stated[i]));
            m_parts.push_back(std::move(before[i]));
            m_parts.back().pose = poses[i];
        } else {
            m_stated.push_back({part.values, overrides});
            m_parts.push_back(viewOf(circuit, part, poses[i], m_style));
        }
    }
}

void Drawing::noteTexts(const std::vector<PartView>& before) {
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        const PartView &was = before[i], &now = m_parts[i];
        if (now == was) continue;
        const bool sameSymbol = now.colour == was.colour && now.polarised == was.polarised &&
                                now.closed == was.closed && now.kind != PartKind::timer;
        if (!sameSymbol) m_changed.push_back(partArea(now));
        if (now.kind == PartKind::timer) continue;
        const Label fresh = withTexts(m_labels[i], now);
        m_changed.push_back(labelArea(m_labels[i]) | labelArea(fresh));
        m_labels[i] = fresh;
    }
}

void Drawing::rebuild(const Circuit& circuit) {
    const Drawn before{m_parts, std::move(m_routes), std::move(m_labels), std::move(m_railEnds)};
    const std::map<PartId, Pose> places = layOut(circuit, m_style.timer);
    std::vector<Pose> poses;
    for (const Part& part : circuit.parts()) poses.push_back(places.at(part.id));
    takeViews(circuit, poses);
    m_routes = m_router.route(routerInput(m_parts, circuit));
    m_labels = placeLabels(m_parts, m_routes, m_textSize);
    placeRailTexts(circuit);
    measure();
    noteChanges(before);
}

void Drawing::noteChanges(const Drawn& before) {
    const bool sameParts =
        std::equal(m_parts.begin(), m_parts.end(), before.parts.begin(), before.parts.end(),
                   [](const PartView& a, const PartView& b) { return a.id == b.id; });
    if (!sameParts || before.labels.size() != m_labels.size()) return; // everywhere
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        if (m_parts[i] != before.parts[i])
            for (const PartView* part : {&std::as_const(m_parts)[i], &before.parts[i]})
                m_changed.push_back(partArea(*part));
        if (m_labels[i] != before.labels[i])
            for (const Label* label : {&before.labels[i], &std::as_const(m_labels)[i]})
                if (!label->rect.isEmpty()) m_changed.push_back(labelArea(*label));
    }
    noteDifference(before.routes.segments, m_routes.segments, segmentArea, m_changed);
    noteDifference(before.routes.dots, m_routes.dots, dotArea, m_changed);
    noteDifference(before.routes.missing, m_routes.missing, missingArea, m_changed);
    if (m_railEnds != before.railEnds)
        for (const auto* ends : {&before.railEnds, &std::as_const(m_railEnds)})
            for (const RailEnd& end : *ends) m_changed.push_back(railTextArea(end.at, m_textSize));
    if (m_changed.size() > mostAreas) m_changed.clear();
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
    for (const PartView& part : m_parts) all |= area(placed(extentOf(part), part.pose));
    for (const Label& label : m_labels) all |= label.rect;
    for (const Segment& s : m_routes.segments)
        all |= QRectF(QPointF(s.a.x, s.a.y), QPointF(s.b.x, s.b.y)).adjusted(-1, -1, 1, 1);
    for (const RailEnd& end : m_railEnds)
        all |=
            QRectF(end.at.x(), end.at.y() - labelLine(m_textSize) / 2, 2 * m_textSize, labelLine(m_textSize));
    m_bounds = all.isEmpty() ? QRectF(-50, -50, 100, 100) : all;
}

const PartView* Drawing::find(PartId id) const {
    for (const PartView& part : m_parts)
        if (part.id == id) return &part;
    return nullptr;
}

void Drawing::paint(QPainter& painter, const Theme& theme, const std::vector<QRectF>& areas) const {
    QRectF all;
    for (const QRectF& a : areas) all |= a;
    const auto wanted = [&](const QRectF& part) {
        return areas.empty() ||
               (all.intersects(part) && std::any_of(areas.begin(), areas.end(),
                                                    [&part](const QRectF& a) { return a.intersects(part); }));
    };
    const auto keep = [&](const auto& items, auto areaOf, auto& kept) {
        std::copy_if(items.begin(), items.end(), std::back_inserter(kept),
                     [&](const auto& item) { return wanted(areaOf(item)); });
    };
    if (areas.empty()) {
        paintWires(painter, m_routes, theme);
    } else {
        Routes near;
        keep(m_routes.segments, segmentArea, near.segments);
        keep(m_routes.dots, dotArea, near.dots);
        keep(m_routes.missing, missingArea, near.missing);
        paintWires(painter, near, theme);
    }
    for (const PartView& part : m_parts)
        if (wanted(partArea(part))) paintPart(painter, part, theme, m_textSize);
    for (const Label& label : m_labels)
        if (!label.rect.isEmpty() && wanted(labelArea(label))) paintLabel(painter, label, theme);
    painter.setPen(theme.ink);
    painter.setFont(labelFont(m_textSize, true));
    for (const RailEnd& end : m_railEnds)
        if (const QRectF room = railTextArea(end.at, m_textSize); wanted(room))
            painter.drawText(room.adjusted(2, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, end.text);
}

std::optional<PartId> Drawing::partAt(QPointF at) const {
    for (const PartView& part : m_parts)
        if (area(placed(extentOf(part), part.pose)).adjusted(-4, -4, 4, 4).contains(at)) return part.id;
    for (std::size_t i = 0; i < m_labels.size(); ++i)
        if (m_labels[i].rect.contains(at)) return m_parts[i].id;
    return std::nullopt;
}

std::optional<Drawing::Pin> Drawing::pinAt(QPointF at, double reach) const {
    std::optional<Pin> found;
    double least = reach;
    for (const PartView& part : m_parts)
        for (int pin = 0; pin < static_cast<int>(pinsOf(part).size()); ++pin) {
            const Point end = placed(pinsOf(part)[static_cast<std::size_t>(pin)], part.pose);
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
