#include "app/rooms/plot_file.h"

#include "app/exporter.h"
#include "app/whole_file.h"
#include "widgets/curves/page_sheet.h"
#include "widgets/rooms/room_plot.h"
#include "widgets/text/words.h"

namespace blinkwright::app {

using widgets::Words;

Result<void> writePlot(const widgets::RoomPlot& plot, const widgets::CurvesPage& page, const QString& path) {
    const auto kind = exportKind(path);
    if (!kind || *kind == ExportKind::csv)
        return notWritten(path, Words::tr("the name must end in .png, .svg or .pdf"));
    const auto format = *kind == ExportKind::png   ? widgets::PageFormat::png
                        : *kind == ExportKind::svg ? widgets::PageFormat::svg
                                                   : widgets::PageFormat::pdf;
    const std::unique_ptr<widgets::RoomPlot> copy = plot.forPage();
    const widgets::PageSheet sheet(page);
    copy->setFont(widgets::PageSheet::font());
    copy->setTheme(widgets::PageSheet::theme());
    copy->resize(sheet.room().size());
    const Result<QByteArray> bytes = sheet.written(*copy, format);
    if (!bytes) return notWritten(path, QString::fromStdString(bytes.fault().text));
    return writeWhole(path, bytes.value());
}

} // namespace blinkwright::app
