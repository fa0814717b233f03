// Writes a room's plot to a file, by its ending: .png, .svg or .pdf; always on white.
//
//   Result<void> done = writePlot(view.plot(), curvesPage(circuit, set), "trend.pdf");
#pragma once

#include "widgets/curves/curves_export.h"

namespace blinkwright::widgets {
class RoomPlot;
}

namespace blinkwright::app {

Result<void> writePlot(const widgets::RoomPlot& plot, const widgets::CurvesPage& page, const QString& path);

} // namespace blinkwright::app
