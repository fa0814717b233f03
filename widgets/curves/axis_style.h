// How every axis of every plot looks: hairlines, small quiet figures, a faint grid.
//
//   for (QCPAxis* axis : rect->axes()) styleAxis(*axis, theme, smallFont());
#pragma once

#include "widgets/theme/theme.h"

#include <qcustomplot.h>

namespace blinkwright::widgets {

/// @param font of the figures and of the axis' name
void styleAxis(QCPAxis& axis, const Theme& theme, const QFont& font);

} // namespace blinkwright::widgets
