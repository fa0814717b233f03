#include "widgets/hookup/preview.h"

#include "widgets/hookup/paint.h"
#include "widgets/text/words.h"

#include <QFontMetricsF>

namespace blinkwright::widgets::hookup {

namespace {

constexpr double ring = 5, strongRing = 7.5; ///< radii about pins [units]

QColor thin(QColor colour, float alpha) {
    colour.setAlphaF(alpha);
    return colour;
}

/// How many bodies a straight run passes through.
int bodiesOn(QPointF a, QPointF b, const Drawing& drawing) {
    const QRectF run = QRectF(a, b).normalized().adjusted(-1, -1, 1, 1);
    int count = 0;
    for (const PartView& part : drawing.parts()) {
        const Box box = placed(bodyOf(part), part.pose);
        if (run.intersects(QRectF(QPointF(box.left, box.top), QPointF(box.right, box.bottom)))) ++count;
    }
    return count;
}

/// Of the two right-angled ways the one through fewer parts: the router will go round them all.
QPointF cornerBetween(QPointF begin, QPointF end, const Drawing& drawing) {
    const QPointF first(end.x(), begin.y()), second(begin.x(), end.y());
    const auto crossed = [&](QPointF corner) {
        return bodiesOn(begin, corner, drawing) + bodiesOn(corner, end, drawing);
    };
    return crossed(second) < crossed(first) ? second : first;
}

void paintWireInHand(QPainter& painter, const Gestures& hand, const Drawing& drawing,
                     const DrawingScene& scene, const Theme& theme) {
    const circuit::PinRef from = *hand.fixedPin();
    const bool pulling = hand.doing() == Gestures::Doing::pulling;
    // Where the wire may end.
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(thin(theme.accent, 0.65F), 1.4));
    for (const PartView& part : drawing.parts())
        for (int pin = 0; pin < static_cast<int>(pinsOf(part).size()); ++pin)
            if (const circuit::PinRef to{part.id, pin}; to != from && hand.refusal(to).isEmpty())
                painter.drawEllipse(scene.pinPoint(to), ring, ring);

    const Gestures::Target& target = hand.target();
    const bool refused = !target.refusal.isEmpty();
    const QColor colour = refused ? theme.fault : theme.accent;
    if (target.net && !refused) paintChosenNet(painter, *target.net, scene, theme);
    QPointF end = hand.at();
    if (target.pin) {
        end = scene.pinPoint(*target.pin);
        painter.setPen(QPen(colour, 2.4));
        painter.setBrush(thin(colour, 0.25F));
        painter.drawEllipse(end, strongRing, strongRing);
    }
    // Pulled off, the wire hangs on the rest of its net: on the pin that is nearest to the hand.
    QPointF begin = scene.pinPoint(from);
    if (pulling) {
        painter.setPen(QPen(theme.fault, 2.0));
        const QPointF d(ring, ring), e(ring, -ring);
        painter.drawLine(begin - d, begin + d);
        painter.drawLine(begin - e, begin + e);
        double least = -1;
        for (const circuit::Net& net : scene.nets())
            if (net.id == scene.netOf(from))
                for (const circuit::PinRef pin : net.pins) {
                    const QPointF at = scene.pinPoint(pin);
                    const double far = QLineF(at, end).length();
                    if (pin == from || (least >= 0 && far >= least)) continue;
                    least = far;
                    begin = at;
                }
    }
    painter.setPen(QPen(colour, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(QPolygonF({begin, cornerBetween(begin, end, drawing), end}));
}

} // namespace

void paintChosenNet(QPainter& painter, circuit::NetId net, const DrawingScene& scene, const Theme& theme) {
    painter.setPen(QPen(thin(theme.accent, 0.55F), 5, Qt::SolidLine, Qt::RoundCap));
    for (const Segment& s : scene.segmentsOf(net))
        painter.drawLine(QPointF(s.a.x, s.a.y), QPointF(s.b.x, s.b.y));
}

void paintPreview(QPainter& painter, const Gestures& hand, const Drawing& drawing, const DrawingScene& scene,
                  const Theme& theme) {
    switch (hand.doing()) {
    case Gestures::Doing::nothing:
    case Gestures::Doing::pressing:
    case Gestures::Doing::moving:
        return;
    case Gestures::Doing::banding:
        painter.setPen(QPen(theme.accent, 1, Qt::SolidLine));
        painter.setBrush(thin(theme.accent, 0.10F));
        painter.drawRect(hand.band());
        return;
    case Gestures::Doing::wiring:
    case Gestures::Doing::pulling:
        return paintWireInHand(painter, hand, drawing, scene, theme);
    case Gestures::Doing::placing: {
        PartView ghost;
        ghost.kind = hand.placedKind();
        ghost.style = drawing.style();
        ghost.pose = poseOf(hand.placed());
        Theme pale = theme;
        pale.ink = theme.accent;
        paintPart(painter, ghost, pale);
        return;
    }
    }
}

void paintInvitation(QPainter& painter, const QRectF& view, const Theme& theme) {
    const QString title = Words::tr("An empty Hook-up");
    const QString text = Words::tr("Add a part: choose one from the strip above, or press A.\n"
                                   "Then draw wires from pin to pin.");
    QFont strong = painter.font();
    strong.setBold(true);
    strong.setPointSizeF(strong.pointSizeF() * 1.25);
    const QFont plain = painter.font();
    const QRectF room = view.adjusted(24, 24, -24, -24);
    const auto flags = Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap;
    const QRectF titleBox = QFontMetricsF(strong).boundingRect(room, flags, title);
    const QRectF textBox = QFontMetricsF(plain).boundingRect(room, flags, text);
    const double gap = 10;
    const double top = view.center().y() - (titleBox.height() + gap + textBox.height()) / 2;
    painter.setPen(theme.quietInk);
    painter.setFont(strong);
    painter.drawText(QRectF(room.left(), top, room.width(), titleBox.height() + 2), flags, title);
    painter.setFont(plain);
    painter.drawText(QRectF(room.left(), top + titleBox.height() + gap, room.width(), textBox.height() + 2),
                     flags, text);
}

} // namespace blinkwright::widgets::hookup
