// A room's plot on a page: always on white, with title, part values and axis units, whatever the theme.
//
//   const Result<QByteArray> bytes = plotPage(*view.plot().forPage(), page, PageFormat::svg);
#pragma once

#include "widgets/curves/curves_export.h"
#include "widgets/rooms/room_plot.h"

namespace blinkwright::widgets {

/// @param plot a copy for pages: it gets the page's looks and size.
Result<QByteArray> plotPage(RoomPlot& plot, const CurvesPage& page, PageFormat format);
/// The same as a picture, for the clipboard.
QImage plotPicture(RoomPlot& plot, const CurvesPage& page);

} // namespace blinkwright::widgets
