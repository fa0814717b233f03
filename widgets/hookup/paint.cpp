#include "widgets/hookup/paint.h"

#include "widgets/hookup/symbols.h"

#include <QPainterPath>
#include <QRadialGradient>

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets::hookup {

using circuit::PartKind;

namespace {

constexpr double dotRadius = 3.2;
constexpr double haloRadius = lensRadius + 9;
constexpr double pinTextSize = 10, mostPinText = 12; ///< larger names would run into what is in the middle

QColor mix(const QColor& a, const QColor& b, double share) {
    const auto part = [share](float x, float y) { return x + (y - x) * static_cast<float>(share); };
    return QColor::fromRgbF(part(a.redF(), b.redF()), part(a.greenF(), b.greenF()),
                            part(a.blueF(), b.blueF()));
}

/// Width of wires and symbols, rounded to whole pixels of a screen so that what lies on the grid is sharp.
double inkWidthFor(const QPainter& painter, const Theme& theme) {
    const QTransform& t = painter.transform();
    const double pixels = std::hypot(t.m11(), t.m12()) * painter.device()->devicePixelRatioF();
    return std::max(1.0, std::round(inkWidthOf(theme) * pixels)) / pixels;
}

QPen inkPen(const QPainter& painter, const Theme& theme) {
    return QPen(theme.ink, inkWidthFor(painter, theme), Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin);
}

/// Text at a point of the drawing, always upright.
void textAt(QPainter& painter, QPointF at, Qt::Alignment side, const QString& text, const QFont& font) {
    QRectF box(at.x() - 100, at.y() - 10, 200, 20);
    if (side & Qt::AlignLeft) box.moveLeft(at.x());
    if (side & Qt::AlignRight) box.moveRight(at.x());
    painter.setFont(font);
    painter.drawText(box, Qt::AlignVCenter | (side & Qt::AlignHorizontal_Mask) | Qt::TextDontClip, text);
}

void toPose(QPainter& painter, const Pose& pose) {
    painter.translate(pose.at.x, pose.at.y);
    painter.rotate(pose.turn);
    if (pose.mirror) painter.scale(-1, 1);
}

void timerOutline(QPainter& painter, const PartView& part) {
    const bool package = part.style.timer == TimerLook::package;
    const double w = timerHalfWidth, h = timerHalfHeight, notch = 8;
    QPainterPath outline;
    outline.moveTo(-notch, -h);
    if (package) outline.arcTo(QRectF(-notch, -h - notch, 2 * notch, 2 * notch), 180, 180);
    outline.lineTo(w, -h);
    outline.lineTo(w, h);
    outline.lineTo(-w, h);
    outline.lineTo(-w, -h);
    outline.closeSubpath();
    painter.drawPath(outline);
    for (const Point pin : pinsOf(part))
        painter.drawLine(QPointF(std::clamp<double>(pin.x, -w, w), std::clamp<double>(pin.y, -h, h)),
                         QPointF(pin.x, pin.y));
}

/// Names inside the outline, numbers outside on the leads.
void timerTexts(QPainter& painter, const PartView& part, const Theme& theme, double textSize) {
    const QFont small = labelFont(pinTextSize, false);
    const QFont pins =
        labelFont(std::clamp(pinTextSize * textSize / labelSize, pinTextSize, mostPinText), false);
    painter.setPen(theme.ink);
    for (int pin = 0; pin < 8; ++pin) {
        const Point end = placed(pinsOf(part)[static_cast<std::size_t>(pin)], part.pose);
        const Point lead = leadOf(part, pin);
        const QPointF out = QPointF(lead.x, lead.y) / pitch;
        const QPointF edge = QPointF(end.x, end.y) - timerLead * out;
        const QPointF number = edge + 9 * out;
        if (lead.x == 0) {
            // Side by side: a larger name would run into the next.
            textAt(painter, edge - 10 * out, Qt::AlignHCenter, timerPinName(pin), small);
            textAt(painter, number + QPointF(4, 0), Qt::AlignLeft, QString::number(pin + 1), pins);
        } else {
            textAt(painter, edge - 5 * out, lead.x > 0 ? Qt::AlignRight : Qt::AlignLeft, timerPinName(pin),
                   pins);
            textAt(painter, number - QPointF(0, 7.5), Qt::AlignHCenter, QString::number(pin + 1), pins);
        }
    }
    const QPointF middle(part.pose.at.x, part.pose.at.y); // clear of the pins' names, whichever way it lies
    const bool betweenRows = part.style.timer == TimerLook::package && !part.pose.upright();
    textAt(painter, middle - QPointF(0, betweenRows ? 40 : 20), Qt::AlignHCenter, part.ref,
           labelFont(labelSize, true));
    textAt(painter, middle - QPointF(0, 6.5), Qt::AlignHCenter, kindText(part.kind), small);
    textAt(painter, middle + QPointF(0, 6.5), Qt::AlignHCenter, part.value, small);
}

QPointF lensAt(const PartView& part) {
    const Point at = placed(lensCentre, part.pose);
    return {static_cast<double>(at.x), static_cast<double>(at.y)};
}

} // namespace

void paintPart(QPainter& painter, const PartView& part, const Theme& theme, double textSize) {
    painter.save();
    toPose(painter, part.pose);
    QPen pen = inkPen(painter, theme);
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    if (part.kind == PartKind::timer)
        timerOutline(painter, part);
    else
        drawSymbol(painter, part);
    painter.restore();
    if (part.kind == PartKind::timer) timerTexts(painter, part, theme, textSize);
}

void paintWires(QPainter& painter, const Routes& routes, const Theme& theme) {
    const auto at = [](Point p) { return QPointF(p.x, p.y); };
    painter.setPen(inkPen(painter, theme));
    for (const Segment& s : routes.segments) painter.drawLine(at(s.a), at(s.b));
    if (!routes.missing.empty()) {
        QPen pen = inkPen(painter, theme);
        pen.setDashPattern({4, 4});
        painter.setPen(pen);
        for (const Missing& m : routes.missing) painter.drawLine(at(m.a), at(m.b));
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(theme.ink);
    for (const Dot& dot : routes.dots) painter.drawEllipse(at(dot.at), dotRadius, dotRadius);
    painter.setBrush(Qt::NoBrush);
}

void paintLabel(QPainter& painter, const Label& label, const Theme& theme) {
    painter.setPen(theme.ink);
    const bool twoLines = label.side == Label::Side::left || label.side == Label::Side::right;
    const bool toRight = label.side == Label::Side::left;
    const double line = labelLine(label.size), middle = label.rect.top() + line / 2;
    const QFont strong = labelFont(label.size, true), plain = labelFont(label.size, false);
    if (twoLines) {
        const double x = toRight ? label.rect.right() : label.rect.left();
        const Qt::Alignment side = toRight ? Qt::AlignRight : Qt::AlignLeft;
        textAt(painter, {x, middle}, side, label.ref, strong);
        if (!label.value.isEmpty()) textAt(painter, {x, middle + line}, side, label.value, plain);
    } else {
        textAt(painter, {label.rect.left(), middle}, Qt::AlignLeft, label.ref, strong);
        if (!label.value.isEmpty())
            textAt(painter, {label.rect.right(), middle}, Qt::AlignRight, label.value, plain);
    }
}

void paintLens(QPainter& painter, const PartView& part, const Theme& theme, double glow) {
    if (part.kind != PartKind::lamp) return;
    const QColor colour = theme.lamp(part.colour);
    const QPointF at = lensAt(part);
    // The eye takes half the current for much more than half the light: a power law near 0.45 (common
    // practice, the inverse of the display's own 2.2).
    const double light = std::pow(std::clamp(glow, 0.0, 1.0), 0.45);
    painter.setPen(Qt::NoPen);
    if (light > 0.02) {
        QRadialGradient halo(at, haloRadius);
        QColor inner = colour, outer = colour;
        inner.setAlphaF(static_cast<float>(0.55 * light));
        outer.setAlphaF(0);
        halo.setColorAt(static_cast<double>(lensRadius) / haloRadius, inner);
        halo.setColorAt(1, outer);
        painter.setBrush(halo);
        painter.drawEllipse(at, haloRadius, haloRadius);
    }
    const QColor dark = mix(theme.paper, colour, 0.10);
    const QColor edge = mix(dark, colour, light);
    const QColor core = mix(edge, QColor(Qt::white), 0.65 * light);
    QRadialGradient glass(at, lensRadius);
    glass.setColorAt(0, core);
    glass.setColorAt(0.35, mix(core, edge, 0.3));
    glass.setColorAt(1, edge);
    painter.setBrush(glass);
    painter.setPen(QPen(theme.ink, inkWidthFor(painter, theme) * 0.8));
    painter.drawEllipse(at, lensRadius, lensRadius);
    painter.setBrush(Qt::NoBrush);
}

QRectF lensArea(const PartView& part) {
    const double r = haloRadius + 1;
    return part.kind == PartKind::lamp ? QRectF(lensAt(part) - QPointF(r, r), QSizeF(2 * r, 2 * r))
                                       : QRectF();
}

void paintMark(QPainter& painter, const PartView& part, const Theme& theme, Mark mark) {
    const Box box = placed(extentOf(part), part.pose).grown(3);
    const QRectF area(QPointF(box.left, box.top), QPointF(box.right, box.bottom));
    QColor wash = theme.accent;
    wash.setAlphaF(mark == Mark::selected ? 0.12F : 0.0F);
    painter.setBrush(wash);
    painter.setPen(QPen(theme.accent, mark == Mark::selected ? 2.0 : 1.2));
    painter.drawRoundedRect(area, 5, 5);
    painter.setBrush(Qt::NoBrush);
}

} // namespace blinkwright::widgets::hookup
