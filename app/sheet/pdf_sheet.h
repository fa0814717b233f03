// A lab sheet as PDF, on a printer, and as pictures of its pages.
//
//   Result<QByteArray> bytes = pdfOf(sheet, QPageSize::A4);
//   printSheet(printer, sheet);
//   QImage page = pageImage(PageLayout(sheet, QPageSize::A4), 0, 1.5);
#pragma once

#include "app/sheet/page_layout.h"
#include "core/base/result.h"

#include <QByteArray>
#include <QImage>

class QPrinter;

namespace blinkwright::app::sheet {

/// Drawings, traces and formulas are lines and text with their fonts in the file, never pictures of dots.
Result<QByteArray> pdfOf(const LabSheet& sheet, QPageSize::PageSizeId size);
/// On the printer's paper, where its range of pages and its number of copies are kept to.
void printSheet(QPrinter& printer, const LabSheet& sheet);
/// @param scale dots to a layout pixel
QImage pageImage(const PageLayout& pages, int page, double scale);

} // namespace blinkwright::app::sheet
