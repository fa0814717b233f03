#include "widgets/rooms/plot_page.h"

#include <QApplication>
#include <QBuffer>
#include <QFontDatabase>
#include <QImageWriter>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr double layoutDpi = 96; // the page is laid out in these pixels, whatever it is drawn on
constexpr double mmPerInch = 25.4;
constexpr int pdfDpi = 1200;
constexpr int edge = 12;
constexpr int titlePixels = 17, valuesPixels = 12;

QString tr(const char* text) {
    return QCoreApplication::translate("PlotPage", text);
}

QFont pageFont(int size_px, bool bold = false) {
    // By name, since an SVG does not carry its font along.
    const QString wanted = QStringLiteral("DejaVu Sans");
    const bool there = QFontDatabase::families().contains(wanted);
    QFont font(there ? wanted : QFontInfo(QApplication::font()).family());
    font.setPixelSize(size_px);
    font.setBold(bold);
    return font;
}

class Sheet {
  public:
    Sheet(RoomPlot& plot, const CurvesPage& page) : m_plot(plot), m_page(page) {
        const auto pixels = [](double mm) {
            return std::max(200, static_cast<int>(std::lround(mm / mmPerInch * layoutDpi)));
        };
        m_size = {pixels(page.width_mm), pixels(page.height_mm)};
        m_title = place(page.title, pageFont(titlePixels, true), edge);
        m_values = place(page.values, pageFont(valuesPixels), m_title.bottom() + 4);
        const int top = std::min(m_values.bottom() + 10, m_size.height() / 2);
        m_room = QRect(edge / 2, top, m_size.width() - edge, m_size.height() - top - edge / 2);
        Theme white = Theme::of(Theme::Mode::light);
        white.paper = white.window = Qt::white;
        white.ink = Qt::black;
        plot.setFont(pageFont(valuesPixels));
        plot.setTheme(white);
        plot.resize(m_room.size());
    }
    QSize size() const { return m_size; }

    /// @param painter its unit is a layout pixel
    void drawVector(QCPPainter& painter) {
        painter.fillRect(QRect({0, 0}, m_size), Qt::white);
        drawTexts(painter);
        painter.translate(m_room.topLeft());
        painter.setMode(QCPPainter::pmVectorized);
        painter.setMode(QCPPainter::pmNonCosmetic);
        m_plot.toPainter(&painter, m_room.width(), m_room.height());
    }
    QImage image(double scale) {
        QImage image((QSizeF(m_size) * scale).toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(scale, scale);
        drawTexts(painter);
        painter.resetTransform();
        painter.drawPixmap(QPointF(m_room.topLeft()) * scale,
                           m_plot.toPixmap(m_room.width(), m_room.height(), scale));
        painter.end();
        const int perMetre = static_cast<int>(std::lround(layoutDpi * scale / mmPerInch * 1000));
        image.setDotsPerMeterX(perMetre);
        image.setDotsPerMeterY(perMetre);
        return image;
    }

  private:
    QRect place(const QString& text, const QFont& font, int top) const {
        const QRect room(edge, top, m_size.width() - 2 * edge, m_size.height());
        if (text.isEmpty()) return QRect(room.topLeft(), QSize(room.width(), 0));
        return QFontMetrics(font).boundingRect(room, Qt::TextWordWrap, text);
    }
    void drawTexts(QPainter& painter) const {
        painter.setPen(Qt::black);
        painter.setFont(pageFont(titlePixels, true));
        painter.drawText(m_title, Qt::TextWordWrap, m_page.title);
        painter.setFont(pageFont(valuesPixels));
        painter.drawText(m_values, Qt::TextWordWrap, m_page.values);
    }

    RoomPlot& m_plot;
    const CurvesPage& m_page;
    QSize m_size;
    QRect m_title, m_values, m_room;
};

Fault notMade(const QString& why = {}) {
    const QString text = tr("the picture could not be made");
    return Fault{{}, (why.isEmpty() ? text : text + QStringLiteral(": ") + why).toStdString()};
}

} // namespace

QImage plotPicture(RoomPlot& plot, const CurvesPage& page) {
    return Sheet(plot, page).image(std::max(page.dpi, 24) / layoutDpi);
}

Result<QByteArray> plotPage(RoomPlot& plot, const CurvesPage& page, PageFormat format) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (format == PageFormat::png) {
        QImageWriter writer(&buffer, "png");
        writer.setText(QStringLiteral("Title"), page.title);
        if (!writer.write(plotPicture(plot, page))) return notMade(writer.errorString());
        return bytes;
    }
    Sheet sheet(plot, page);
    QCPPainter painter;
    if (format == PageFormat::svg) {
        QSvgGenerator generator;
        generator.setOutputDevice(&buffer);
        generator.setResolution(static_cast<int>(layoutDpi));
        generator.setSize(sheet.size());
        generator.setViewBox(QRect({0, 0}, sheet.size()));
        generator.setTitle(page.title);
        generator.setDescription(page.values);
        if (!painter.begin(&generator)) return notMade();
        sheet.drawVector(painter);
        painter.end();
        return bytes;
    }
    QPdfWriter writer(&buffer);
    writer.setTitle(page.title);
    writer.setResolution(pdfDpi);
    writer.setPageSize(QPageSize(QSizeF(sheet.size()) / layoutDpi * 72, QPageSize::Point));
    writer.setPageMargins({});
    if (!painter.begin(&writer)) return notMade();
    painter.scale(pdfDpi / layoutDpi, pdfDpi / layoutDpi);
    sheet.drawVector(painter);
    painter.end();
    return bytes;
}

} // namespace blinkwright::widgets
