// A lab sheet as an OpenDocument text (OASIS OpenDocument 1.2), to be worked on in a word processor: real
// headings, lists and tables, formulas that can be edited, pictures at 300 dots to the inch.
//
//   QByteArray odt = odtOf(sheet, QPageSize::A4);
#pragma once

#include "app/sheet/lab_sheet.h"

#include <QByteArray>
#include <QPageSize>

namespace blinkwright::app::sheet {

QByteArray odtOf(const LabSheet& sheet, QPageSize::PageSizeId size);

} // namespace blinkwright::app::sheet
