// Pictures of a lab sheet: the drawing of the circuit, the traces with a record laid over, squares to sketch
// on.
#include "app/measured_panels.h"
#include "app/sheet/sheet_sections.h"
#include "widgets/curves/curves_export.h"
#include "widgets/curves/page_sheet.h"
#include "widgets/hookup/drawing.h"

#include <algorithm>
#include <memory>
#include <qcustomplot.h>

namespace blinkwright::app::sheet {

namespace {

using widgets::PageSheet;

constexpr int pageWidth = 640;                        ///< of a picture as wide as the text [px]
constexpr int tracesHeight = 430, sketchHeight = 340; ///< [px]
constexpr int drawingMargin = 8;
constexpr double mostEnlarged = 1.0; ///< of the drawing: as on the screen at full size
constexpr double sketchSquare = 20;

using Drawn = std::shared_ptr<const widgets::hookup::Drawing>;

void paintDrawing(QCPPainter& painter, const Drawn& drawing, double scale) {
    const widgets::Theme theme = PageSheet::theme();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(drawingMargin, drawingMargin);
    painter.scale(scale, scale);
    painter.translate(-drawing->bounds().topLeft());
    drawing->paint(painter, theme);
    for (const widgets::hookup::PartView& part : drawing->parts())
        widgets::hookup::paintLens(painter, part, theme, 0);
    painter.restore();
}

/// Squares to sketch a trace on, with both axes named.
void paintSquares(QCPPainter& painter, const QString& up) {
    constexpr int across = 30, down = 15;
    constexpr double left = 30, right = left + across * sketchSquare, bottom = sketchHeight - 26,
                     top = bottom - down * sketchSquare;
    painter.save();
    painter.setPen(QPen(QColor(0xcc, 0xcc, 0xcc), 0.6));
    for (int k = 0; k <= across; ++k) {
        const double x = left + k * sketchSquare;
        painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    }
    for (int k = 0; k <= down; ++k) {
        const double y = bottom - k * sketchSquare;
        painter.drawLine(QPointF(left, y), QPointF(right, y));
    }
    painter.setPen(QPen(Qt::black, 1.2));
    painter.drawLine(QPointF(left, bottom), QPointF(right, bottom));
    painter.drawLine(QPointF(left, bottom), QPointF(left, top));
    painter.setFont(PageSheet::font());
    painter.drawText(QRectF(left, bottom + 4, right - left, 20), Qt::AlignRight, Words::tr("Time (s)"));
    painter.translate(left - 22, bottom);
    painter.rotate(-90);
    painter.drawText(QRectF(0, 0, bottom - top, 20), Qt::AlignRight, up);
    painter.restore();
}

std::vector<Block> squaresBlocks() {
    Picture squares{
        QStringLiteral("squares"),
        Words::tr(
            "Sketch the output (pin 3) and the voltage of the timing capacitor (pin 6) over two cycles."),
        Words::tr("Squares to sketch the traces on"),
        {pageWidth, sketchHeight},
        [](QCPPainter& painter) { paintSquares(painter, Words::tr("Voltage (V)")); }};
    return {std::move(squares)};
}

QString tracesCaption(const Making& making, const widgets::RecordCurves& records) {
    QString text =
        making.facts.circuit.run.begin == circuit::Begin::settled
            ? Words::tr(
                  "Settled: output (pin 3), timing capacitor with its two switching levels, lamp currents.")
            : Words::tr("From power-on: output (pin 3), timing capacitor with its two switching levels, lamp "
                        "currents.");
    if (making.facts.b) text += u' ' + Words::tr("Set A indigo, Set B ochre.");
    QStringList sources;
    for (const widgets::RecordCurve& record : records) sources << qs(record.record().source);
    if (!sources.empty())
        text += u' ' + Words::tr("Black, laid over: measured, %1.").arg(sources.join(QStringLiteral(", ")));
    return text;
}

} // namespace

std::vector<Block> drawingBlocks(const Making& making) {
    if (making.facts.circuit.parts().empty()) return {};
    auto drawing = std::make_shared<widgets::hookup::Drawing>();
    drawing->setStyle(making.choice.symbols);
    drawing->show(making.facts.circuit);
    const QSizeF wanted = drawing->bounds().size();
    const double scale = std::min(mostEnlarged, (pageWidth - 2 * drawingMargin) / wanted.width());
    const QSize size = (wanted * scale).toSize() + QSize(2 * drawingMargin, 2 * drawingMargin);
    Picture picture{
        QStringLiteral("circuit"),
        making.facts.b
            ? Words::tr("The circuit with the values of Set A; the small numbers are the timer's pins.")
            : Words::tr("The circuit; the small numbers are the timer's pins."),
        Words::tr("The drawing of the circuit; its parts and joints are told in words under Wiring."), size,
        [drawing = Drawn(drawing), scale](QCPPainter& painter) { paintDrawing(painter, drawing, scale); }};
    return {std::move(picture)};
}

std::vector<Block> tracesBlocks(const Making& making) {
    if (making.student()) return squaresBlocks();
    const auto a = std::make_shared<engine::Curves>(making.facts.a.curves);
    if (a->time_s.size() < 2) return {paragraph(Words::tr("There are no traces: the circuit does not run."))};
    std::shared_ptr<const engine::Curves> b;
    if (making.facts.b && making.facts.b->curves.time_s.size() > 1)
        b = std::make_shared<engine::Curves>(making.facts.b->curves);
    const widgets::RecordCurves records = recordsOver(making.facts.circuit, making.facts.a);
    const QSize size(pageWidth, tracesHeight);
    Picture picture{QStringLiteral("traces"), tracesCaption(making, records),
                    Words::tr("Three strips on one time axis: output, timing capacitor, lamp currents."),
                    size, [a, b, records, size](QCPPainter& painter) {
                        widgets::PageCurves curves =
                            b ? widgets::PageCurves(a.get(), b.get(), Words::tr("Set B"), QStringLiteral("B"))
                              : widgets::PageCurves(*a);
                        curves.records = records;
                        widgets::paintCurves(painter, curves, size);
                    }};
    return {std::move(picture)};
}

} // namespace blinkwright::app::sheet
