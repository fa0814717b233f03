#include "widgets/curves/page_sheet.h"

#include "core/units/lengths.h"
#include "widgets/text/words.h"

#include <QApplication>
#include <QBuffer>
#include <QFontDatabase>
#include <QImageWriter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>
#include <qcustomplot.h>

namespace blinkwright::widgets {

namespace {

constexpr int pdfDpi = 1200, leastDpi = 24, leastPixels = 160;
constexpr int edge = 12;
constexpr double titleOver = 1.4; ///< the title over other text

/// A family that is there by name, since an SVG does not carry its font along.
QFont pageFont(int size_px, bool bold = false) {
    const QString wanted = QStringLiteral("DejaVu Sans");
    const bool there = QFontDatabase::families().contains(wanted);
    QFont font(there ? wanted : QFontInfo(QApplication::font()).family());
    font.setPixelSize(size_px);
    font.setBold(bold);
    return font;
}

int textPixels(double points) {
    return std::max(1, static_cast<int>(std::lround(points / 72 * PageSheet::layoutDpi)));
}
QFont titleFont(const CurvesPage& page) {
    return pageFont(textPixels(titleOver * page.fontPoints), true);
}

int pixels(double mm) {
    return std::max(leastPixels, static_cast<int>(std::lround(mm / units::mmPerInch * PageSheet::layoutDpi)));
}

} // namespace

Theme PageSheet::theme() {
    Theme theme = Theme::of(Theme::Mode::light);
    theme.paper = theme.window = Qt::white;
    theme.ink = Qt::black;
    return theme;
}

QFont PageSheet::font(double points) {
    return pageFont(textPixels(points));
}

PageSheet::PageSheet(const CurvesPage& page)
    : m_page(page), m_size(pixels(page.width_mm), pixels(page.height_mm)) {
    const auto place = [&](const QString& text, const QFont& font, int top) {
        const QRect room(edge, top, m_size.width() - 2 * edge, m_size.height());
        if (text.isEmpty()) return QRect(room.topLeft(), QSize(room.width(), 0));
        return QFontMetrics(font).boundingRect(room, Qt::TextWordWrap, text);
    };
    m_title = place(page.title, titleFont(page), edge);
    m_values = place(page.values, font(page.fontPoints), m_title.bottom() + 4);
    const int top = std::min(m_values.bottom() + 10, m_size.height() / 2);
    m_room = QRect(edge / 2, top, m_size.width() - edge, m_size.height() - top - edge / 2);
}

double PageSheet::scale() const {
    return std::max(m_page.dpi, leastDpi) / layoutDpi;
}

void PageSheet::drawTexts(QPainter& painter) const {
    painter.setPen(Qt::black);
    painter.setFont(titleFont(m_page));
    painter.drawText(m_title, Qt::TextWordWrap, m_page.title);
    painter.setFont(font(m_page.fontPoints));
    painter.drawText(m_values, Qt::TextWordWrap, m_page.values);
}

/// @param painter its unit is a layout pixel
void PageSheet::drawVector(QCPPainter& painter, QCustomPlot& plot) const {
    painter.fillRect(QRect(QPoint(0, 0), m_size), Qt::white);
    drawTexts(painter);
    painter.translate(m_room.topLeft());
    painter.setMode(QCPPainter::pmVectorized);
    painter.setMode(QCPPainter::pmNonCosmetic);
    plot.toPainter(&painter, m_room.width(), m_room.height());
}

QImage PageSheet::image(QCustomPlot& plot) const {
    QImage image((QSizeF(m_size) * scale()).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(scale(), scale());
    drawTexts(painter);
    painter.resetTransform();
    painter.drawPixmap(QPointF(m_room.topLeft()) * scale(),
                       plot.toPixmap(m_room.width(), m_room.height(), scale()));
    painter.end();
    const int perMetre = static_cast<int>(std::lround(layoutDpi * scale() / units::mmPerInch * 1000));
    image.setDotsPerMeterX(perMetre);
    image.setDotsPerMeterY(perMetre);
    return image;
}

Result<QByteArray> PageSheet::written(QCustomPlot& plot, PageFormat format) const {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (format == PageFormat::png) {
        QImageWriter writer(&buffer, "png");
        writer.setText(QStringLiteral("Title"), m_page.title);
        if (!writer.write(image(plot)))
            return Fault{
                {}, Words::tr("the picture could not be made: %1").arg(writer.errorString()).toStdString()};
        return bytes;
    }
    QCPPainter painter;
    if (format == PageFormat::svg) {
        QSvgGenerator generator;
        generator.setOutputDevice(&buffer);
        generator.setResolution(static_cast<int>(layoutDpi));
        generator.setSize(m_size);
        generator.setViewBox(QRect(QPoint(0, 0), m_size));
        generator.setTitle(m_page.title);
        generator.setDescription(m_page.values);
        if (!painter.begin(&generator))
            return Fault{{}, Words::tr("the drawing could not be made").toStdString()};
        drawVector(painter, plot);
        painter.end();
        return bytes;
    }
    QPdfWriter writer(&buffer);
    writer.setTitle(m_page.title);
    writer.setResolution(pdfDpi);
    writer.setPageSize(QPageSize(QSizeF(m_size) / layoutDpi * 72, QPageSize::Point));
    writer.setPageMargins({});
    if (!painter.begin(&writer)) return Fault{{}, Words::tr("the page could not be made").toStdString()};
    painter.scale(pdfDpi / layoutDpi, pdfDpi / layoutDpi);
    drawVector(painter, plot);
    painter.end();
    return bytes;
}

} // namespace blinkwright::widgets
