#include "widgets/hookup/symbols.h"

#include <QPolygonF>

#include <array>

namespace blinkwright::widgets::hookup {

using circuit::PartKind;

namespace {

void line(QPainter& p, double x1, double y1, double x2, double y2) {
    p.drawLine(QPointF(x1, y1), QPointF(x2, y2));
}

/// A line with an open arrow head at its end.
void arrow(QPainter& p, QPointF from, QPointF to, double head) {
    const QPointF way = (to - from) / std::hypot(to.x() - from.x(), to.y() - from.y());
    const QPointF across(-way.y(), way.x());
    p.drawLine(from, to);
    p.drawPolyline(
        std::array{to - head * way + 0.55 * head * across, to, to - head * way - 0.55 * head * across}.data(),
        3);
}

void plusMark(QPainter& p, double x, double y) {
    line(p, x - 3, y, x + 3, y);
    line(p, x, y - 3, x, y + 3);
}

void drawResistor(QPainter& p, Shapes shapes) {
    if (shapes == Shapes::ieee315) { // three full waves between straight ends
        QPolygonF zigzag{QPointF(-30, 0), QPointF(-18, 0)};
        for (int peak = 0; peak < 6; ++peak) zigzag << QPointF(-15 + 6 * peak, peak % 2 == 0 ? -7 : 7);
        zigzag << QPointF(18, 0) << QPointF(30, 0);
        p.drawPolyline(zigzag);
        return;
    }
    line(p, -30, 0, -18, 0);
    line(p, 18, 0, 30, 0);
    p.drawRect(QRectF(-18, -7, 36, 14));
}

void drawVariable(QPainter& p, Shapes shapes) {
    drawResistor(p, shapes);
    // The contact touches the box, or the middle of the zig-zag's slope.
    arrow(p, {0, -30}, {0, shapes == Shapes::ieee315 ? -2.5 : -7.8}, 6);
}

void drawCapacitor(QPainter& p, bool polarised) {
    line(p, -20, 0, -3.5, 0);
    line(p, 3.5, 0, 20, 0);
    QPen plates = p.pen();
    plates.setWidthF(plates.widthF() * 1.5);
    p.save();
    p.setPen(plates);
    line(p, -3.5, -13, -3.5, 13);
    line(p, 3.5, -13, 3.5, 13);
    p.restore();
    if (polarised) plusMark(p, -10.5, -9);
}

void drawDiode(QPainter& p) {
    line(p, -30, 0, 30, 0);
    p.drawPolygon(std::array{QPointF(-9, -10), QPointF(9, 0), QPointF(-9, 10)}.data(), 3);
    line(p, 9, -10, 9, 10);
}

void drawLamp(QPainter& p) {
    drawDiode(p);
    // Towards the lens, at a right angle to the line between the two.
    arrow(p, {-6, -11}, {-1, -18.5}, 4.5);
    arrow(p, {2.5, -11}, {7.5, -18.5}, 4.5);
}

/// Multicell battery of IEEE 315: long and short lines of one width, the long one being the plus pole.
void drawMulticell(QPainter& p) {
    constexpr double gap = 4.4, first = -2.5 * gap; // three cells
    line(p, -30, 0, first, 0);
    line(p, -first, 0, 30, 0);
    for (int i = 0; i < 6; ++i) {
        const double half = i % 2 == 0 ? 14 : 7;
        line(p, first + gap * i, -half, first + gap * i, half);
    }
    plusMark(p, -18, -9);
}

void drawSupply(QPainter& p, Shapes shapes) {
    if (shapes == Shapes::ieee315) return drawMulticell(p);
    line(p, -30, 0, -9, 0);
    line(p, 9, 0, 30, 0);
    for (const double x : {-9.0, 3.0}) line(p, x, -14, x, 14);
    QPen thick = p.pen();
    thick.setWidthF(thick.widthF() * 2);
    p.save();
    p.setPen(thick);
    for (const double x : {-3.0, 9.0}) line(p, x, -6.5, x, 6.5);
    p.restore();
    plusMark(p, -17, -9);
}

void drawToggle(QPainter& p, bool closed) {
    line(p, -30, 0, -14, 0);
    line(p, 14, 0, 30, 0);
    if (closed) {
        line(p, -14, 0, 15, -2.5);
        line(p, 14, -4, 14, 0);
    } else {
        line(p, -14, 0, 13, -13);
    }
}

} // namespace

void drawSymbol(QPainter& painter, const PartView& part) {
    switch (part.kind) {
    case PartKind::supply:
        drawSupply(painter, part.style.shapes);
        break;
    case PartKind::resistor:
        drawResistor(painter, part.style.shapes);
        break;
    case PartKind::variable:
        drawVariable(painter, part.style.shapes);
        break;
    case PartKind::capacitor:
        drawCapacitor(painter, part.polarised);
        break;
    case PartKind::lamp:
        drawLamp(painter);
        break;
    case PartKind::diode:
        drawDiode(painter);
        break;
    case PartKind::toggle:
        drawToggle(painter, part.closed);
        break;
    case PartKind::timer:
        break;
    }
}

} // namespace blinkwright::widgets::hookup
