// The tool bar's icons, drawn in the theme's ink so that they suit light and dark at any scaling.
//
//   action->setIcon(icon(Icon::open, theme));
#pragma once

#include "widgets/theme/theme.h"

#include <QIcon>

namespace blinkwright::app {

enum class Icon { open, save, undo, redo, fit, exportCurves, play, pause, stepBack, stepOn, loop };

QIcon icon(Icon which, const widgets::Theme& theme);
/// The program's own, which is also installed: resources/icons/blinkwright.svg.
QIcon programIcon();

} // namespace blinkwright::app
