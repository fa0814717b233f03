// A trend in words: what holds at the present values, and where it does not blink.
//
//   trendWords(picture);   // "R2 68 kΩ: 0.9881 Hz, textbook 0.9881 Hz (−0.25 %). Does not blink above 4.2
//   MΩ."
#pragma once

#include "widgets/rooms/trend_plot.h"

namespace blinkwright::widgets {

QString trendWords(const TrendPicture& picture);
/// All points as a table with tabs, for a spreadsheet: the figure shown, a column a set.
QString trendTable(const TrendPicture& picture);

} // namespace blinkwright::widgets
