// Pictures of a lab sheet: the drawing of the circuit, the traces with a record laid over, squares to sketch
// on.
#include "app/sheet/sheet_sections.h"
#include "widgets/curves/curves_export.h"
#include "widgets/curves/page_sheet.h"
#include "widgets/curves/strip_plot.h"
#include "widgets/hookup/drawing.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace blinkwright::app::sheet {

namespace {

using widgets::PageSheet;
using widgets::Strip;
using widgets::StripPlot;

constexpr int pageWidth = 640;                        ///< of a picture as wide as the text [px]
constexpr int tracesHeight = 430, sketchHeight = 340; ///< [px]
constexpr int drawingMargin = 8;
constexpr double mostEnlarged = 1.0; ///< of the drawing: as on the screen at full size
constexpr double recordWidth = 1.1, sketchSquare = 20;

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

/// How much later the record's instants are in the simulation: power-on to power-on, else the first rise to
/// the simulation's first.
double delayOf(const circuit::Record& record, const study::Study& study, circuit::Begin begin) {
    if (record.fromPowerOn && begin == circuit::Begin::powerOn) return 0;
    const std::size_t rise = record.firstRises ? 0 : 1;
    if (record.switchings_s.size() <= rise) return 0;
    for (const double at : study.curves.switchings_s)
        if (engine::momentOf(study.curves, at).output_V > engine::momentOf(study.curves, at - 1e-9).output_V)
            return at - record.switchings_s[rise];
    return study.curves.time_s.empty() ? 0 : study.curves.time_s.front() - record.switchings_s[rise];
}

/// A trace of a record as lines within the strip, thinned to what the page can show.
void paintTrace(QCPPainter& painter, const StripPlot& plot, const circuit::Record& record,
                const circuit::Trace& trace, Strip strip, double delay) {
    const QRectF room = plot.stripRect(strip);
    const widgets::Span span = plot.visibleSpan();
    std::vector<double> at(record.time_s);
    for (double& t : at) t += delay;
    const widgets::StripPoints points =
        widgets::thinned(at, trace.values_V, span, static_cast<int>(3 * room.width()), 0);
    QPolygonF line;
    for (const QCPGraphData& point : points) {
        if (point.key < span.begin || point.key > span.end) continue;
        line << QPointF(plot.pixelAt(point.key),
                        std::clamp(plot.valuePixel(strip, point.value), room.top(), room.bottom()));
    }
    painter.drawPolyline(line);
}

void paintRecord(QCPPainter& painter, const StripPlot& plot, const circuit::Record& record, double delay) {
    QPen pen(PageSheet::theme().measured, recordWidth);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const circuit::Trace& trace : record.traces) {
        if (trace.of == circuit::TraceOf::output)
            paintTrace(painter, plot, record, trace, Strip::output, delay);
        else if (trace.of == circuit::TraceOf::capacitor)
            paintTrace(painter, plot, record, trace, Strip::capacitor, delay);
    }
}

/// Squares to sketch a trace on, with both axes named.
void paintSquares(QCPPainter& painter, const QString& up) {
    constexpr double left = 30, right = left + 30 * sketchSquare, bottom = sketchHeight - 26,
                     top = bottom - 15 * sketchSquare;
    painter.save();
    painter.setPen(QPen(QColor(0xcc, 0xcc, 0xcc), 0.6));
    for (double x = left; x <= right; x += sketchSquare)
        painter.drawLine(QPointF(x, top), QPointF(x, bottom));
    for (double y = bottom; y >= top; y -= sketchSquare)
        painter.drawLine(QPointF(left, y), QPointF(right, y));
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

QString tracesCaption(const Making& making, bool record) {
    QString text =
        making.facts.circuit.run.begin == circuit::Begin::settled
            ? Words::tr(
                  "Settled: output (pin 3), timing capacitor with its two switching levels, lamp currents.")
            : Words::tr("From power-on: output (pin 3), timing capacitor with its two switching levels, lamp "
                        "currents.");
    if (making.facts.b) text += u' ' + Words::tr("Set A indigo, Set B ochre.");
    if (record)
        text += u' ' + Words::tr("Black, laid over: measured, %1.").arg(qs(making.facts.record()->source));
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
    std::function<void(QCPPainter&, const StripPlot&)> over;
    if (const circuit::Record* record = making.facts.record()) {
        const double delay = delayOf(*record, making.facts.a, making.facts.circuit.run.begin);
        over = [kept = making.facts.recorded, record, delay](QCPPainter& painter, const StripPlot& plot) {
            paintRecord(painter, plot, *record, delay);
        };
    }
    const QSize size(pageWidth, tracesHeight);
    Picture picture{QStringLiteral("traces"), tracesCaption(making, over != nullptr),
                    Words::tr("Three strips on one time axis: output, timing capacitor, lamp currents."),
                    size, [a, b, over, size](QCPPainter& painter) {
                        const widgets::PageCurves curves =
                            b ? widgets::PageCurves(a.get(), b.get(), Words::tr("Set B"), QStringLiteral("B"))
                              : widgets::PageCurves(*a);
                        widgets::paintCurves(painter, curves, size, over);
                    }};
    return {std::move(picture)};
}

} // namespace blinkwright::app::sheet
