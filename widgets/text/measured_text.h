// A measured number as people write it: rounded by its uncertainty, which keeps two figures (JCGM 100:2008,
// 7.2.6), in the prefix that the number itself would have.
//
//   measuredText({0.98714, 0.0213}, secondsText)      // "987 ± 21 ms"
//   measuredText({0.6251, 0.0043}, shareText)         // "62.51 ± 0.43 %"
//   measuredText({5.93, 0}, textIn<Unit::volt>)       // "5.930 V"
#pragma once

#include "core/circuit/measurement.h"
#include "widgets/text/figure_text.h"

namespace blinkwright::widgets {

/// @param form writes the number by itself, and so gives the prefix and the unit.
QString measuredText(const circuit::Measured& measured, FigureText form);
/// The uncertainty alone, in two figures: `21 ms`; "none stated" for 0.
QString uncertaintyText(double uncertainty, FigureText form);
/// How many standard uncertainties a difference is: `2.4 u`.
QString multiplesText(double multiples);

} // namespace blinkwright::widgets
