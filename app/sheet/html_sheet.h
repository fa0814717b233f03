// A lab sheet as one HTML file: drawings as SVG within it, formulas as MathML, nothing fetched from anywhere.
//
//   QByteArray html = htmlOf(sheet);
#pragma once

#include "app/sheet/lab_sheet.h"

#include <QByteArray>

namespace blinkwright::app::sheet {

QByteArray htmlOf(const LabSheet& sheet);

} // namespace blinkwright::app::sheet
