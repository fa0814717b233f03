// The symbols, drawn lying about their own middle with the painter's pen and no brush. Shapes after IEC 60617
// (resistor 04-01-01, capacitor 04-02-01 and polarised 04-02-05, diode 05-03-01, light-emitting diode
// 05-03-02, primary cell 06-15-01, make contact 07-02-01, resistor with a moving contact 04-01-07; numbers
// from memory), or where they differ after IEEE 315: the zig-zag resistor and the multicell battery (from
// memory).
//
//   painter.setTransform(...);            // to the part's pose
//   drawSymbol(painter, part);
#pragma once

#include "widgets/hookup/part_view.h"
#include "widgets/theme/theme.h"

#include <QPainter>

namespace blinkwright::widgets::hookup {

inline constexpr double inkWidth = 1.6; ///< of symbols and wires [units]
/// The same in a theme. Symbols have lines close beside each other, which must not run together: they take
/// half of what curves get.
inline double inkWidthOf(const Theme& theme) {
    return inkWidth * (1 + (theme.stroke - 1) / 2);
}

/// Everything but the timer, which is drawn with its texts by paintPart.
void drawSymbol(QPainter& painter, const PartView& part);

} // namespace blinkwright::widgets::hookup
