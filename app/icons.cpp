#include "app/icons.h"

#include <QPainter>
#include <QPainterPath>
#include <QSvgRenderer>
#include <initializer_list>
#include <utility>

namespace blinkwright::app {

namespace {

/// Icons are drawn on a grid of this many units.
constexpr qreal grid = 20;

/// A line through points.
QPainterPath through(std::initializer_list<QPointF> points) {
    QPainterPath path;
    path.addPolygon(QPolygonF(points));
    return path;
}

QPainterPath openPath() {
    QPainterPath path;
    path.addPath(through({{2.5, 16.5}, {2.5, 4.5}, {7.5, 4.5}, {9.5, 6.5}, {15.5, 6.5}, {15.5, 9}}));
    path.addPath(through({{2.5, 16.5}, {5.5, 9.5}, {18, 9.5}, {15.5, 16.5}, {2.5, 16.5}}));
    return path;
}

QPainterPath savePath() {
    QPainterPath path;
    path.addPath(through({{3, 12.5}, {3, 16.5}, {17, 16.5}, {17, 12.5}}));
    path.addPath(through({{10, 2.5}, {10, 12}}));
    path.addPath(through({{6, 8.5}, {10, 12.5}, {14, 8.5}}));
    return path;
}

QPainterPath undoPath() {
    QPainterPath path;
    path.moveTo(3.5, 8);
    path.lineTo(12, 8);
    path.arcTo(QRectF(8, 8, 8, 8), 90, -180);
    path.lineTo(8, 16);
    path.addPath(through({{7.5, 4}, {3.5, 8}, {7.5, 12}}));
    return path;
}

QPainterPath fitPath() {
    QPainterPath path;
    path.addPath(through({{3, 3.5}, {3, 16.5}}));
    path.addPath(through({{17, 3.5}, {17, 16.5}}));
    path.addPath(through({{5.5, 10}, {14.5, 10}}));
    path.addPath(through({{8, 7.5}, {5.5, 10}, {8, 12.5}}));
    path.addPath(through({{12, 7.5}, {14.5, 10}, {12, 12.5}}));
    return path;
}

QPainterPath exportPath() {
    QPainterPath path;
    path.addPath(
        through({{2.5, 13.5}, {2.5, 7.5}, {5.5, 7.5}, {5.5, 13.5}, {8.5, 13.5}, {8.5, 7.5}, {10.5, 7.5}}));
    path.addPath(through({{10.5, 13.5}, {17.5, 13.5}}));
    path.addPath(through({{14.5, 10.5}, {17.5, 13.5}, {14.5, 16.5}}));
    return path;
}

QPainterPath playPath() {
    QPainterPath path;
    path.addPath(through({{6, 4}, {16, 10}, {6, 16}, {6, 4}}));
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
    path.addPath(through({{12, 16}, {15, 16}, {15, 4}, {18, 4}}));
    path.addPath(through({{2.5, 10}, {11.5, 10}}));
    path.addPath(through({{8.5, 7}, {11.5, 10}, {8.5, 13}}));
    return path;
}

QPainterPath loopPath() {
    QPainterPath path;
    path.moveTo(16.5, 10);
    path.arcTo(QRectF(3.5, 3.5, 13, 13), 0, -290);
    path.addPath(through({{9.2, 3.0}, {12.6, 4.2}, {11.0, 7.8}}));
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

/// An outline on the grid, in so many pixels.
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
    for (const int side : sides)
        for (const auto& [mode, ink] :
             {std::pair(QIcon::Normal, theme.ink), std::pair(QIcon::Disabled, disabled)})
            made.addPixmap(drawn(path, ink, side), mode);
    return made;
}

QIcon programIcon() {
    QSvgRenderer drawing(QStringLiteral(":/icons/blinkwright.svg"));
    QIcon made;
    for (const int side : {16, 24, 32, 48, 64, 128, 256}) {
        QPixmap pixmap(side, side);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        drawing.render(&painter);
        painter.end();
        made.addPixmap(pixmap);
    }
    return made;
}

} // namespace blinkwright::app
