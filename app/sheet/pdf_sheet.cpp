#include "app/sheet/pdf_sheet.h"

#include "app/sheet/sheet_sections.h"
#include "core/units/lengths.h"

#include <QBuffer>
#include <QPageRanges>
#include <QPdfWriter>
#include <QPrinter>
#include <cmath>
#include <qcustomplot.h>

namespace blinkwright::app::sheet {

namespace {

constexpr int pdfDpi = 1200;
constexpr double mmPerMetre = 1000;

} // namespace

Result<QByteArray> pdfOf(const LabSheet& sheet, QPageSize::PageSizeId size) {
    const PageLayout pages(sheet, size);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(sheet.foot());
    writer.setCreator(QStringLiteral("Blinkwright"));
    writer.setResolution(pdfDpi);
    writer.setPageSize(QPageSize(size));
    writer.setPageMargins({});
    QCPPainter painter;
    if (!painter.begin(&writer)) return Fault{{}, Words::tr("the pages could not be made").toStdString()};
    painter.scale(pdfDpi / PageLayout::dpi, pdfDpi / PageLayout::dpi);
    for (int page = 0; page < pages.count(); ++page) {
        if (page > 0) writer.newPage();
        pages.paint(painter, page);
    }
    painter.end();
    return bytes;
}

void printSheet(QPrinter& printer, const LabSheet& sheet) {
    const PageLayout pages(
        sheet, printer.pageLayout().pageSize().id() == QPageSize::Letter ? QPageSize::Letter : QPageSize::A4);
    printer.setDocName(sheet.foot());
    printer.setFullPage(true);
    QCPPainter painter;
    if (!painter.begin(&printer)) return; // the printer has said why
    const QRectF paper = printer.paperRect(QPrinter::DevicePixel);
    // Other paper than the two has the page in its own size.
    const double scale =
        std::min(paper.width() / pages.size().width(), paper.height() / pages.size().height());
    const QPageRanges wanted = printer.pageRanges();
    const int copies = printer.supportsMultipleCopies() ? 1 : printer.copyCount();
    bool begun = false;
    for (int copy = 0; copy < copies; ++copy)
        for (int page = 0; page < pages.count(); ++page) {
            if (!wanted.isEmpty() && !wanted.contains(page + 1)) continue;
            if (begun) printer.newPage();
            begun = true;
            painter.resetTransform();
            painter.scale(scale, scale);
            pages.paint(painter, page);
        }
}

QImage pageImage(const PageLayout& pages, int page, double scale) {
    QImage image((pages.size() * scale).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    const int perMetre =
        static_cast<int>(std::lround(PageLayout::dpi * scale / units::mmPerInch * mmPerMetre));
    image.setDotsPerMeterX(perMetre);
    image.setDotsPerMeterY(perMetre);
    QCPPainter painter;
    painter.begin(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    painter.scale(scale, scale);
    pages.paint(painter, page);
    painter.end();
    return image;
}

} // namespace blinkwright::app::sheet
