#include "widgets/curves/curves_export.h"

#include "widgets/curves/strip_plot.h"

#include <QBuffer>
#include <QFontDatabase>
#include <QImageWriter>
#include <QPdfWriter>
#include <QSaveFile>
#include <QSvgGenerator>
#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

constexpr double layoutDpi = 96; // the page is laid out in these pixels, whatever it is drawn on
constexpr double mmPerInch = 25.4;
constexpr int pageMargin = 12;
constexpr int titlePixels = 17;
constexpr int valuesPixels = 12;

QString tr(const char* text) {
    return QCoreApplication::translate("CurvesExport", text);
}

int pixels(double mm) {
    return static_cast<int>(std::lround(mm / mmPerInch * layoutDpi));
}

/// A family that is there by name, since an SVG does not carry its font along.
QString family() {
    const QString wanted = QStringLiteral("DejaVu Sans");
    return QFontDatabase::families().contains(wanted) ? wanted : QFontInfo(QApplication::font()).family();
}

Theme paperTheme() {
    Theme theme = Theme::of(Theme::Mode::light);
    theme.paper = theme.window = Qt::white;
    theme.ink = Qt::black;
    return theme;
}

QFont pageFont(int size_px, bool bold = false) {
    QFont font(family());
    font.setPixelSize(size_px);
    font.setBold(bold);
    return font;
}

/// The page: where title, values and strips stand, in layout pixels, and the strips themselves.
class Page {
  public:
    Page(const PageCurves& curves, const CurvesPage& page, double scale)
        : m_page(page), m_size(std::max(160, pixels(page.width_mm)), std::max(160, pixels(page.height_mm))) {
        const int width = m_size.width() - 2 * pageMargin;
        const auto place = [&](const QString& text, const QFont& font, int top) {
            return text.isEmpty()
                       ? QRect(pageMargin, top, width, 0)
                       : QFontMetrics(font).boundingRect(QRect(pageMargin, top, width, m_size.height()),
                                                         Qt::TextWordWrap, text);
        };
        m_title = place(page.title, pageFont(titlePixels, true), pageMargin);
        m_values = place(page.values, pageFont(valuesPixels), m_title.bottom() + 4);
        const int top = std::min(m_values.bottom() + 10, m_size.height() / 2);
        m_strips =
            QRect(pageMargin / 2, top, m_size.width() - pageMargin, m_size.height() - top - pageMargin / 2);

        m_plot.setFont(pageFont(valuesPixels));
        m_plot.setTheme(paperTheme());
        m_plot.resize(m_strips.size());
        m_plot.layOut(m_strips.height());
        const auto drawn = [](const engine::Curves* c) {
            return c && c->time_s.size() > 1 && c->time_s.back() > c->time_s.front() ? c : nullptr;
        };
        StripSources sources;
        sources.curves = drawn(curves.first);
        sources.second = drawn(curves.second);
        std::optional<Span> all;
        for (const engine::Curves* c : {sources.curves, sources.second})
            if (c)
                all =
                    all ? Span{std::min(all->begin, c->time_s.front()), std::max(all->end, c->time_s.back())}
                        : Span{c->time_s.front(), c->time_s.back()};
        const Span span = all.value_or(Span{0, 1});
        m_plot.setSecondName(curves.secondName, curves.secondBrief);
        const int columns = static_cast<int>(m_strips.width() * scale);
        const int height = static_cast<int>(m_strips.height() / 3 * scale);
        m_plot.setVisibleSpan(span);
        m_plot.setPicture(stripPicture(sources, span, columns, {height, height, height}), all.has_value());
    }
    QSize size() const { return m_size; }

    void drawTexts(QPainter& painter) const {
        painter.setPen(Qt::black);
        painter.setFont(pageFont(titlePixels, true));
        painter.drawText(m_title, Qt::TextWordWrap, m_page.title);
        painter.setFont(pageFont(valuesPixels));
        painter.drawText(m_values, Qt::TextWordWrap, m_page.values);
    }
    /// For a vector painter whose unit is a layout pixel.
    void drawVector(QCPPainter& painter) {
        painter.fillRect(QRect(QPoint(0, 0), m_size), Qt::white);
        drawTexts(painter);
        painter.translate(m_strips.topLeft());
        painter.setMode(QCPPainter::pmVectorized);
        painter.setMode(QCPPainter::pmNonCosmetic);
        m_plot.toPainter(&painter, m_strips.width(), m_strips.height());
    }
    QImage image(double scale) {
        QImage image((QSizeF(m_size) * scale).toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(scale, scale);
        drawTexts(painter);
        painter.resetTransform();
        painter.drawPixmap(QPointF(m_strips.topLeft()) * scale,
                           m_plot.toPixmap(m_strips.width(), m_strips.height(), scale));
        painter.end();
        const int perMetre = static_cast<int>(std::lround(layoutDpi * scale / mmPerInch * 1000));
        image.setDotsPerMeterX(perMetre);
        image.setDotsPerMeterY(perMetre);
        return image;
    }

  private:
    CurvesPage m_page;
    QSize m_size;
    QRect m_title, m_values, m_strips;
    StripPlot m_plot{nullptr, StripPlot::Use::page};
};

/// What is to be written; the file itself comes last, so that nothing half done ever stands in it.
Result<QByteArray> rendered(const PageCurves& curves, const CurvesPage& page, PageFormat format) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (format == PageFormat::png) {
        QImageWriter writer(&buffer, "png");
        writer.setText(QStringLiteral("Title"), page.title);
        if (!writer.write(curvesPicture(curves, page)))
            return Fault{{}, tr("the picture could not be made: %1").arg(writer.errorString()).toStdString()};
        return bytes;
    }
    // Vector formats are thinned as for a fine print: 300 dots to the inch.
    Page sheet(curves, page, 300 / layoutDpi);
    QCPPainter painter;
    if (format == PageFormat::svg) {
        QSvgGenerator generator;
        generator.setOutputDevice(&buffer);
        generator.setResolution(static_cast<int>(layoutDpi));
        generator.setSize(sheet.size());
        generator.setViewBox(QRect(QPoint(0, 0), sheet.size()));
        generator.setTitle(page.title);
        generator.setDescription(page.values);
        if (!painter.begin(&generator)) return Fault{{}, tr("the drawing could not be made").toStdString()};
        sheet.drawVector(painter);
        painter.end();
    } else {
        QPdfWriter writer(&buffer);
        writer.setTitle(page.title);
        writer.setResolution(1200);
        writer.setPageSize(QPageSize(QSizeF(sheet.size()) / layoutDpi * 72, QPageSize::Point));
        writer.setPageMargins({});
        if (!painter.begin(&writer)) return Fault{{}, tr("the page could not be made").toStdString()};
        painter.scale(1200 / layoutDpi, 1200 / layoutDpi);
        sheet.drawVector(painter);
        painter.end();
    }
    return bytes;
}

} // namespace

QImage curvesPicture(const PageCurves& curves, const CurvesPage& page) {
    const double scale = std::max(page.dpi, 24) / layoutDpi;
    return Page(curves, page, scale).image(scale);
}

Result<void> exportCurves(const PageCurves& curves, const CurvesPage& page, PageFormat format,
                          const QString& path) {
    const Result<QByteArray> bytes = rendered(curves, page, format);
    if (!bytes) return Fault{path.toStdString(), bytes.fault().text};
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes.value()) != bytes.value().size() ||
        !file.commit())
        return Fault{path.toStdString(), tr("cannot be written: %1").arg(file.errorString()).toStdString()};
    return {};
}

} // namespace blinkwright::widgets
