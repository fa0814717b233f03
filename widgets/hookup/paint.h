// Painting of the Hook-up: functions of plain values and a theme, in drawing units. One ink, no filled
// symbols; lenses alone change with current and are painted apart, over the rest.
//
//   painter.scale(zoom, zoom);
//   paintWires(painter, routes, theme);
//   paintPart(painter, view, theme);
//   paintLens(painter, view, theme, 0.8);
#pragma once

#include "widgets/hookup/labels.h"
#include "widgets/hookup/part_view.h"
#include "widgets/hookup/router.h"
#include "widgets/theme/theme.h"

#include <QPainter>
#include <QRectF>

namespace blinkwright::widgets::hookup {

/// @param textSize of the labels around it [units], which the names of pins follow as far as they have room.
void paintPart(QPainter& painter, const PartView& part, const Theme& theme, double textSize = labelSize);
void paintWires(QPainter& painter, const Routes& routes, const Theme& theme);
void paintLabel(QPainter& painter, const Label& label, const Theme& theme);
/// @param glow 0 (dark) to 1 (rated current and more).
void paintLens(QPainter& painter, const PartView& part, const Theme& theme, double glow);
/// What paintLens may touch, halo included.
QRectF lensArea(const PartView& part);

/// How a part is marked: chosen, or under the pointer.
enum class Mark { selected, hovered };
void paintMark(QPainter& painter, const PartView& part, const Theme& theme, Mark mark);

} // namespace blinkwright::widgets::hookup
