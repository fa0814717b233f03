#include "widgets/hookup/labels.h"

#include "widgets/hookup/tile_index.h"

#include <QFontMetricsF>
#include <QGuiApplication>
#include <QHash>

#include <array>
#include <cmath>

namespace blinkwright::widgets::hookup {

using circuit::PartKind;
using Side = Label::Side;

namespace {

constexpr int sizeStep = 2; ///< by which texts are made smaller where there is no room [units]
constexpr double gap = 5;   ///< between a body and its label [units]
constexpr double lyingHeight =
    14; ///< labels over lying parts stand on one line, however tall the symbols are

double widthOf(const QString& text, bool strong) {
    // Measured large: metrics are rounded to the pixels of the font's own size.
    static const QFontMetricsF plainMetrics(labelFont(labelSize * 8, false)),
        strongMetrics(labelFont(labelSize * 8, true));
    // Kept, since shaping a text costs more than all else about its label.
    static std::array<QHash<QString, double>, 2> known;
    QHash<QString, double>& widths = known[strong ? 1 : 0];
    if (const auto it = widths.constFind(text); it != widths.constEnd()) return *it;
    if (widths.size() > 20000) widths.clear();
    return *widths.insert(text, (strong ? strongMetrics : plainMetrics).horizontalAdvance(text) / 8);
}

QSizeF sizeOf(const QString& ref, const QString& value, Side side, double size) {
    const double larger = size / labelSize, line = labelLine(size);
    const double first = larger * widthOf(ref, true),
                 second = value.isEmpty() ? 0 : larger * widthOf(value, false);
    if (side == Side::above || side == Side::below)
        return {first + (value.isEmpty() ? 0 : larger * gap + second), line};
    return {std::max(first, second), value.isEmpty() ? line : 2 * line};
}

QRectF area(const Box& box) {
    return {QPointF(box.left, box.top), QPointF(box.right, box.bottom)};
}

/// Where a label may stand: its side, and how far along it.
struct Spot {
    Side side;
    double shift;
};

QRectF rectAt(const Box& body, int axisY, const QSizeF& size, Spot spot) {
    const double midX = (body.left + body.right) / 2.0, midY = (body.top + body.bottom) / 2.0;
    QPointF corner;
    switch (spot.side) {
    case Side::right:
        corner = {body.right + gap, midY - size.height() / 2 + spot.shift};
        break;
    case Side::left:
        corner = {body.left - gap - size.width(), midY - size.height() / 2 + spot.shift};
        break;
    case Side::above:
        corner = {midX - size.width() / 2 + spot.shift,
                  std::min<double>(body.top, axisY - lyingHeight) - gap / 2 - size.height()};
        break;
    case Side::below:
        corner = {midX - size.width() / 2 + spot.shift,
                  std::max<double>(body.bottom, axisY + lyingHeight) + gap / 2};
        break;
    }
    return {corner, size};
}

std::vector<Spot> spotsFor(const PartView& part) {
    std::vector<Spot> spots;
    const bool up = part.pose.upright();
    const std::array<Side, 2> first =
        up ? std::array{Side::right, Side::left} : std::array{Side::above, Side::below};
    const std::array<Side, 2> second =
        up ? std::array{Side::above, Side::below} : std::array{Side::right, Side::left};
    for (const double shift : {0.0, -12.0, 12.0, -24.0, 24.0})
        for (const Side side : first) spots.push_back({side, shift});
    for (const double shift : {0.0, 30.0, -30.0})
        for (const Side side : second) spots.push_back({side, shift});
    return spots;
}

QRectF extentOf(const Segment& s) {
    return {QPointF(s.a.x, s.a.y), QPointF(s.b.x, s.b.y)};
}

QRectF areaOf(const std::vector<PartView>& parts, const Routes& routes) {
    QRectF all;
    for (const PartView& part : parts) all |= area(placed(extentOf(part), part.pose));
    for (const Segment& s : routes.segments) all |= extentOf(s).adjusted(-1, -1, 1, 1);
    return all;
}

class Placer {
  public:
    Placer(const std::vector<PartView>& parts, const Routes& routes, int size)
        : m_size(size), m_parts(parts), m_routes(routes), m_area(areaOf(parts, routes)), m_bodyIndex(m_area),
          m_pinIndex(m_area), m_wireIndex(m_area), m_labelIndex(m_area) {
        for (const PartView& part : parts) {
            m_bodies.push_back(area(placed(bodyOf(part), part.pose)));
            m_bodyIndex.add(m_bodies.back(), static_cast<int>(m_bodies.size()) - 1);
            for (const Point pin : pinsOf(part)) {
                const Point at = placed(pin, part.pose);
                m_pinIndex.add(QRectF(at.x, at.y, 0, 0), static_cast<int>(m_pins.size()));
                m_pins.emplace_back(at.x, at.y);
            }
        }
        for (std::size_t i = 0; i < routes.segments.size(); ++i)
            m_wireIndex.add(extentOf(routes.segments[i]), static_cast<int>(i));
    }

    /// Whether a label stands on anything, after run().
    bool crowded() const { return m_crowded; }

    std::vector<Label> run() {
        for (std::size_t i = 0; i < m_parts.size(); ++i) {
            m_labels.push_back(m_parts[i].kind == PartKind::timer ? Label{} : best(i));
            if (!m_labels[i].rect.isEmpty()) m_labelIndex.add(m_labels[i].rect, static_cast<int>(i));
        }
        return m_labels;
    }

  private:
    /// As large as it can be and stand free.
    Label best(std::size_t i) {
        for (int size = m_size; size > labelSize; size -= sizeStep)
            if (const auto [label, cost] = best(i, size); cost < standsOn) return label;
        const auto [label, cost] = best(i, labelSize);
        m_crowded = m_crowded || cost >= standsOn;
        return label;
    }
    std::pair<Label, double> best(std::size_t i, double size) const {
        const PartView& part = m_parts[i];
        const Box body = placed(bodyOf(part), part.pose);
        Label chosen;
        double least = 1e300;
        int rank = 0;
        for (const Spot spot : spotsFor(part)) {
            const double custom = 3 * rank++;
            if (custom >= least) break; // not even a free spot could be better
            const QRectF rect =
                rectAt(body, part.pose.at.y, sizeOf(part.ref, part.value, spot.side, size), spot);
            const double cost = costOf(rect) + custom;
            if (cost >= least) continue;
            least = cost;
            chosen = {part.ref, part.value, rect, spot.side, size};
        }
        return {chosen, least};
    }

    double costOf(const QRectF& rect) const {
        double cost = 0;
        const QRectF near = rect.adjusted(-3, -2, 3, 2);
        m_bodyIndex.visit(near, [&](int i) {
            if (m_bodies[at(i)].adjusted(-2, -2, 2, 2).intersects(rect)) cost += 1000;
        });
        m_labelIndex.visit(near, [&](int i) {
            if (m_labels[at(i)].rect.adjusted(-3, -1, 3, 1).intersects(rect)) cost += 1000;
        });
        m_pinIndex.visit(near, [&](int i) {
            if (rect.adjusted(-2, -2, 2, 2).contains(m_pins[at(i)])) cost += standsOn;
        });
        const QRectF wide = rect.adjusted(-2, -1, 2, 1);
        m_wireIndex.visit(near, [&](int i) {
            const Segment& s = m_routes.segments[at(i)];
            if (s.a.x <= wide.right() && s.b.x >= wide.left() && s.a.y <= wide.bottom() &&
                s.b.y >= wide.top())
                cost += standsOn;
        });
        return cost;
    }
    static std::size_t at(int i) { return static_cast<std::size_t>(i); }

    static constexpr double standsOn = 400; ///< a wire or a pin: the least that a collision costs

    int m_size;
    bool m_crowded = false;
    const std::vector<PartView>& m_parts;
    const Routes& m_routes;
    QRectF m_area;
    TileIndex m_bodyIndex, m_pinIndex, m_wireIndex, m_labelIndex;
    std::vector<QRectF> m_bodies;
    std::vector<QPointF> m_pins;
    std::vector<Label> m_labels;
};

} // namespace

QFont labelFont(double size, bool strong) {
    QFont font = QGuiApplication::font();
    font.setPixelSize(static_cast<int>(std::lround(size)));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setWeight(strong ? QFont::DemiBold : QFont::Normal);
    return font;
}

std::vector<Label> placeLabels(const std::vector<PartView>& parts, const Routes& routes, double size) {
    // Large ones must not leave a later one without a place: then all are made a little smaller.
    for (int tried = static_cast<int>(std::lround(size)); tried > labelSize; tried -= sizeStep) {
        Placer placer(parts, routes, tried);
        std::vector<Label> labels = placer.run();
        if (!placer.crowded()) return labels;
    }
    return Placer(parts, routes, labelSize).run();
}

Label withTexts(const Label& label, const PartView& part) {
    Label changed = label;
    changed.ref = part.ref;
    changed.value = part.value;
    const QSizeF size = sizeOf(part.ref, part.value, label.side, label.size);
    switch (label.side) {
    case Side::right:
        changed.rect.setSize(size);
        break;
    case Side::left:
        changed.rect = {QPointF(label.rect.right() - size.width(), label.rect.top()), size};
        break;
    case Side::above:
    case Side::below:
        changed.rect = {QPointF(label.rect.center().x() - size.width() / 2, label.rect.top()), size};
        break;
    }
    return changed;
}

} // namespace blinkwright::widgets::hookup
