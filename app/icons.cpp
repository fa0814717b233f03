#include "app/icons.h"

#include <QPainter>
#include <QPainterPath>

namespace blinkwright::app {

namespace {

/// Icons are drawn on a grid of this many units.
constexpr qreal grid = 20;

QPainterPath arrowHead(QPointF tip, QPointF left, QPointF right) {
    QPainterPath path(left);
    path.lineTo(tip);
    path.lineTo(right);
    return path;
}

QPainterPath openPath() {
    QPainterPath path;
    path.moveTo(2.5, 16.5);
    path.lineTo(2.5, 4.5);
    path.lineTo(7.5, 4.5);
    path.lineTo(9.5, 6.5);
    path.lineTo(15.5, 6.5);
    path.lineTo(15.5, 9);
    path.moveTo(2.5, 16.5);
    path.lineTo(5.5, 9.5);
    path.lineTo(18, 9.5);
    path.lineTo(15.5, 16.5);
    path.closeSubpath();
    return path;
}

QPainterPath savePath() {
    QPainterPath path;
    path.moveTo(3, 12.5);
    path.lineTo(3, 16.5);
    path.lineTo(17, 16.5);
    path.lineTo(17, 12.5);
    path.moveTo(10, 2.5);
    path.lineTo(10, 12);
    path.addPath(arrowHead({10, 12.5}, {6, 8.5}, {14, 8.5}));
    return path;
}

QPainterPath undoPath() {
    QPainterPath path;
    path.moveTo(3.5, 8);
    path.lineTo(12, 8);
    path.arcTo(QRectF(8, 8, 8, 8), 90, -180);
    path.lineTo(8, 16);
    path.addPath(arrowHead({3.5, 8}, {7.5, 4}, {7.5, 12}));
    return path;
}

QPainterPath fitPath() {
    QPainterPath path;
    path.moveTo(3, 3.5);
    path.lineTo(3, 16.5);
    path.moveTo(17, 3.5);
    path.lineTo(17, 16.5);
    path.moveTo(5.5, 10);
    path.lineTo(14.5, 10);
    path.addPath(arrowHead({5.5, 10}, {8, 7.5}, {8, 12.5}));
    path.addPath(arrowHead({14.5, 10}, {12, 7.5}, {12, 12.5}));
    return path;
}

QPainterPath exportPath() {
    QPainterPath path;
    path.moveTo(2.5, 13.5);
    path.lineTo(2.5, 7.5);
    path.lineTo(5.5, 7.5);
    path.lineTo(5.5, 13.5);
    path.lineTo(8.5, 13.5);
    path.lineTo(8.5, 7.5);
    path.lineTo(10.5, 7.5);
    path.moveTo(10.5, 13.5);
    path.lineTo(17.5, 13.5);
    path.addPath(arrowHead({17.5, 13.5}, {14.5, 10.5}, {14.5, 16.5}));
    return path;
}

QPainterPath playPath() {
    QPainterPath path;
    path.moveTo(6, 4);
    path.lineTo(16, 10);
    path.lineTo(6, 16);
    path.closeSubpath();
    return path;
}

QPainterPath pausePath() {
    QPainterPath path;
    for (const qreal x : {7.0, 13.0}) {
        path.moveTo(x, 4.5);
        path.lineTo(x, 15.5);
    }
    return path;
}

/// An edge of a square wave, and an arrow to it.
QPainterPath stepPath() {
    QPainterPath path;
    path.moveTo(12, 16);
    path.lineTo(15, 16);
    path.lineTo(15, 4);
    path.lineTo(18, 4);
    path.moveTo(2.5, 10);
    path.lineTo(11.5, 10);
    path.addPath(arrowHead({11.5, 10}, {8.5, 7}, {8.5, 13}));
    return path;
}

QPainterPath loopPath() {
    QPainterPath path;
    path.moveTo(16.5, 10);
    path.arcTo(QRectF(3.5, 3.5, 13, 13), 0, -290);
    path.addPath(arrowHead({12.6, 4.2}, {9.2, 3.0}, {11.0, 7.8}));
    return path;
}

QPainterPath mirrored(const QPainterPath& path) {
    return QTransform(-1, 0, 0, 1, grid, 0).map(path);
}

QPainterPath pathOf(Icon which) {
    switch (which) {
    case Icon::open:
        return openPath();
    case Icon::save:
        return savePath();
    case Icon::undo:
        return undoPath();
    case Icon::redo:
        return mirrored(undoPath());
    case Icon::fit:
        return fitPath();
    case Icon::exportCurves:
        return exportPath();
    case Icon::play:
        return playPath();
    case Icon::pause:
        return pausePath();
    case Icon::stepBack:
        return mirrored(stepPath());
    case Icon::stepOn:
        return stepPath();
    case Icon::loop:
        return loopPath();
    }
    return {};
}

QPixmap drawn(const QPainterPath& path, const QColor& ink, int side) {
    QPixmap pixmap(side, side);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(side / grid, side / grid);
    painter.setPen(QPen(ink, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(path);
    return pixmap;
}

constexpr int sides[] = {20, 30, 40, 60};

} // namespace

QIcon icon(Icon which, const widgets::Theme& theme) {
    const QPainterPath path = pathOf(which);
    const QColor disabled = theme.palette().color(QPalette::Disabled, QPalette::ButtonText);
    QIcon made;
    for (const int side : sides) {
        made.addPixmap(drawn(path, theme.ink, side), QIcon::Normal);
        made.addPixmap(drawn(path, disabled, side), QIcon::Disabled);
    }
    return made;
}

QIcon programIcon() {
    QIcon made;
    for (const int side : {16, 32, 48, 64, 128}) {
        QPixmap pixmap(side, side);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(side / grid, side / grid);
        const widgets::Theme& theme = widgets::Theme::of(widgets::Theme::Mode::light);
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme.setA);
        painter.drawRoundedRect(QRectF(1, 1, 18, 18), 4, 4);
        painter.setBrush(QColor(0xFF, 0xC8, 0x4A));
        painter.drawEllipse(QPointF(10, 7), 3.2, 3.2);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(Qt::white, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(QPolygonF({{4, 16}, {7, 16}, {7, 12.5}, {13, 12.5}, {13, 16}, {16, 16}}));
        made.addPixmap(pixmap);
    }
    return made;
}

} // namespace blinkwright::app
