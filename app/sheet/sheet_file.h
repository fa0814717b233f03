// Lab sheets to files, by the ending of the name: .pdf, .html or .odt.
//
//   if (sheetKind(path)) Result<void> done = writeSheet(sheet, QPageSize::A4, path);
#pragma once

#include "app/sheet/lab_sheet.h"
#include "core/base/result.h"

#include <QPageSize>

namespace blinkwright::app::sheet {

enum class SheetKind { pdf, html, odt };
std::optional<SheetKind> sheetKind(const QString& path);

/// @return a fault that names the file; what stood in its place before is then left alone.
Result<void> writeSheet(const LabSheet& sheet, QPageSize::PageSizeId size, const QString& path);

} // namespace blinkwright::app::sheet
