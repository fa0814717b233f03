// The styles of a lab sheet as an OpenDocument text: page, foot, headings, tables, lists.
#pragma once

#include "app/sheet/lab_sheet.h"

#include <QByteArray>
#include <QPageSize>

class QXmlStreamWriter;

namespace blinkwright::app::sheet {

struct OdtPage {
    double width_cm = 21, height_cm = 29.7;
    static constexpr double side_cm = 2.0, top_cm = 1.8, bottom_cm = 1.6;
    double textWidth_cm() const { return width_cm - 2 * side_cm; }
};
OdtPage odtPage(QPageSize::PageSizeId size);

/// A length as OpenDocument writes it: `2.000cm`.
QString cm(double value);
/// Opens `office:document-…` with all the names that a part of the document may use.
void beginOdt(QXmlStreamWriter& xml, const QString& part);
/// Styles that belong to the content: tables, columns, frames.
void writeContentStyles(QXmlStreamWriter& xml);
/// The name of the style of a column of a width; widths are told apart by millimetres.
QString columnStyle(double width_cm);
QByteArray odtStyles(const LabSheet& sheet, const OdtPage& page);
QByteArray odtMeta(const LabSheet& sheet);

} // namespace blinkwright::app::sheet
