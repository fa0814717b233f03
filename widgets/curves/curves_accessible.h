// What a screen reader finds where the curves are: a chart, whose value is the summary that its description
// holds.
//
//   makeChartsAccessible();   // once, or again
#pragma once

namespace blinkwright::widgets {

void makeChartsAccessible();

} // namespace blinkwright::widgets
