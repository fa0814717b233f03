// Colours for curves: a lamp's own colour, made legible on the paper, and apart from that of its twin.
//
//   std::vector<QColor> c = lampCurveColours(theme, {"red", "green", "red"});
//   contrast(c[0], theme.paper) >= 4.5
#pragma once

#include "widgets/theme/theme.h"

#include <string>
#include <vector>

namespace blinkwright::widgets {

/// Contrast ratio of two opaque colours, 1 to 21 (WCAG 2.1, definition of contrast ratio).
double contrast(const QColor& a, const QColor& b);

/// The colour with its hue, darkened or lightened until its contrast to `paper` is `ratio` as nearly as can
/// be.
QColor withContrast(const QColor& colour, const QColor& paper, double ratio);

/// One colour a lamp, in their order. Each has a contrast of 4.5 or more to the paper (WCAG 2.1, 1.4.3, since
/// the lamp's name is written in it); lamps of one colour differ in lightness, and from the fourth on in hue
/// too.
std::vector<QColor> lampCurveColours(const Theme& theme, const std::vector<std::string>& colours);
/// The same for so many lamps that are all drawn in one colour, that of their set.
std::vector<QColor> lampCurveColours(const Theme& theme, const QColor& own, std::size_t count);

} // namespace blinkwright::widgets
