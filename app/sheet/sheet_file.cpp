#include "app/sheet/sheet_file.h"

#include "app/sheet/html_sheet.h"
#include "app/sheet/odt_sheet.h"
#include "app/sheet/pdf_sheet.h"
#include "app/sheet/sheet_sections.h"
#include "app/whole_file.h"

#include <QDir>
#include <QFileInfo>

namespace blinkwright::app::sheet {

std::optional<SheetKind> sheetKind(const QString& path) {
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending == QLatin1String("pdf")) return SheetKind::pdf;
    if (ending == QLatin1String("html") || ending == QLatin1String("htm")) return SheetKind::html;
    if (ending == QLatin1String("odt")) return SheetKind::odt;
    return {};
}

Result<void> writeSheet(const LabSheet& sheet, QPageSize::PageSizeId size, const QString& path) {
    const std::optional<SheetKind> kind = sheetKind(path);
    if (!kind)
        return Fault{QDir::toNativeSeparators(path).toStdString(),
                     Words::tr("the name must end in .pdf, .html or .odt").toStdString()};
    if (*kind == SheetKind::html) return writeWhole(path, htmlOf(sheet));
    if (*kind == SheetKind::odt) return writeWhole(path, odtOf(sheet, size));
    const Result<QByteArray> bytes = pdfOf(sheet, size);
    if (!bytes) return Fault{QDir::toNativeSeparators(path).toStdString(), bytes.fault().text};
    return writeWhole(path, bytes.value());
}

} // namespace blinkwright::app::sheet
