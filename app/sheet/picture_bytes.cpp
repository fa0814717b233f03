#include "app/sheet/picture_bytes.h"

#include "app/sheet/page_layout.h"
#include "app/sheet/page_pieces.h"
#include "widgets/text/formula_layout.h"

#include <QBuffer>
#include <QRegularExpression>
#include <QSvgGenerator>
#include <cmath>
#include <qcustomplot.h>

namespace blinkwright::app::sheet {

QByteArray svgOf(const Picture& picture, const QString& tag) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(static_cast<int>(PageLayout::dpi));
    generator.setSize(picture.size);
    generator.setViewBox(QRect(QPoint(0, 0), picture.size));
    QCPPainter painter;
    painter.begin(&generator);
    picture.paint(painter);
    painter.end();
    QString svg = QString::fromUtf8(bytes);
    svg.remove(0, std::max<qsizetype>(0, svg.indexOf(QStringLiteral("<svg"))));
    // The size is the page's to say; without a title and a description, which stand beside the picture.
    static const QRegularExpression title(QStringLiteral("<(title|desc)>[^<]*</\\1>\\s*"));
    static const QRegularExpression size(QStringLiteral("<svg width=\"[^\"]*\" height=\"[^\"]*\"\\s*"));
    svg.remove(title);
    svg.replace(size,
                QStringLiteral("<svg role=\"img\" aria-label=\"%1\" style=\"width:%2px;max-width:100%\" ")
                    .arg(picture.words.toHtmlEscaped())
                    .arg(picture.size.width()));
    static const QRegularExpression name(QStringLiteral("gradient(\\d+)"));
    svg.replace(name, tag + QStringLiteral("\\1"));
    static const QRegularExpression font(QStringLiteral("font-family=\"([^\"]*)\""));
    svg.replace(font, QStringLiteral("font-family=\"\\1, Verdana, sans-serif\""));
    return svg.toUtf8();
}

QByteArray pngOf(const Picture& picture, int dpi) {
    const double scale = dpi / PageLayout::dpi;
    QImage image((QSizeF(picture.size) * scale).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    const int perMetre = static_cast<int>(std::lround(dpi / 0.0254));
    image.setDotsPerMeterX(perMetre);
    image.setDotsPerMeterY(perMetre);
    QCPPainter painter;
    painter.begin(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(scale, scale);
    picture.paint(painter);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "png");
    return bytes;
}

Picture pictureOf(const Formula& formula) {
    const QFont font = sheetFont(bodySize + 1);
    const FormulaBox box = measured(formula, font);
    return {QStringLiteral("formula"),
            {},
            plainText(formula),
            QSize(static_cast<int>(std::ceil(box.width)) + 2,
                  static_cast<int>(std::ceil(box.ascent + box.descent)) + 2),
            [formula, font, ascent = box.ascent](QCPPainter& painter) {
                painter.setPen(Qt::black);
                paintFormula(painter, formula, font, {1, ascent + 1});
            }};
}

} // namespace blinkwright::app::sheet
