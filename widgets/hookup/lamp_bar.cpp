#include "widgets/hookup/lamp_bar.h"

namespace blinkwright::widgets::hookup {

namespace {
constexpr double halfWidth = 4, halfHeight = 14;
}

void paintLampBar(QPainter& painter, const PartView& part, const Theme& theme, double share) {
    if (part.kind != circuit::PartKind::lamp) return;
    const QPointF middle = lensArea(part).center();
    const QRectF frame(middle - QPointF(halfWidth, halfHeight), QSizeF(2 * halfWidth, 2 * halfHeight));
    QRectF bar = frame;
    bar.setTop(frame.bottom() - frame.height() * std::clamp(share, 0.0, 1.0));
    painter.fillRect(frame, theme.paper);
    painter.fillRect(bar, theme.lamp(part.colour));
    painter.setPen(QPen(theme.ink, 1));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
}

} // namespace blinkwright::widgets::hookup
