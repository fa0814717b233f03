// A lamp's current as a bar in place of the glowing lens: for people whom flicker bothers.
//
//   paintLampBar(painter, view, theme, 0.8);   // within lensArea(view)
#pragma once

#include "widgets/hookup/paint.h"

namespace blinkwright::widgets::hookup {

/// @param share 0 (dark) to 1 (rated current and more). The bar's full height is the rated current.
void paintLampBar(QPainter& painter, const PartView& part, const Theme& theme, double share);

} // namespace blinkwright::widgets::hookup
