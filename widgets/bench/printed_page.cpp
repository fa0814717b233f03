#include "widgets/bench/printed_page.h"

#include "widgets/text/words.h"

#include <QFontMetricsF>
#include <QPageRanges>
#include <QPainter>
#include <QPrinter>
#include <algorithm>

namespace blinkwright::widgets {

namespace {

constexpr double footSize_pt = 8;
constexpr double border_mm = 18; ///< from the edge of the paper: room to file the page
constexpr double gap_mm = 4, footLine_mm = 5, rowGap_mm = 1;
constexpr double writing_mm = 3; ///< more room above a line to write on

QFont fontOf(double size_pt) {
    QFont font(QStringLiteral("sans-serif"));
    font.setPointSizeF(size_pt);
    font.setBold(size_pt > PrintedRow::text_pt);
    return font;
}

/// Where the rows go, and the line below them, in dots from the upper left of what can be printed.
struct Places {
    QRectF text, foot;
    double rowGap = 0;
};
Places placesOn(const QPrinter& printer) {
    const double dots = printer.resolution() / 25.4;
    const QRectF printable = printer.pageRect(QPrinter::DevicePixel);
    const double border = border_mm * dots;
    QRectF text = printer.paperRect(QPrinter::DevicePixel)
                      .adjusted(border, border, -border, -border)
                      .intersected(printable)
                      .translated(-printable.topLeft());
    // A printer that cannot reach into the border has the line within what it reaches.
    const double bottom = std::min(text.bottom() + (gap_mm + footLine_mm) * dots, printable.height());
    const QRectF foot(text.left(), bottom - footLine_mm * dots, text.width(), footLine_mm * dots);
    text.setBottom(std::min(text.bottom(), foot.top() - gap_mm * dots));
    return {text, foot, rowGap_mm * dots};
}

/// Texts of a row to write in stand on its line.
bool isRuled(const PrintedRow& row) {
    return std::ranges::any_of(row.cells, [](const PrintedCell& cell) { return cell.ruled; });
}

int flagsOf(Qt::Alignment side, bool ruled = false) {
    return static_cast<int>(side | (ruled ? Qt::AlignBottom : Qt::AlignTop)) | Qt::TextWordWrap;
}

QRectF roomOf(const PrintedCell& cell, const Places& places, double top, double height) {
    const double width = places.text.width();
    return {places.text.left() + cell.from * width, top, (cell.to - cell.from) * width, height};
}

double heightOf(const PrintedRow& row, const Places& places, QPaintDevice* on) {
    const QFontMetricsF metrics(fontOf(row.size_pt), on);
    double height = 0;
    for (const PrintedCell& cell : row.cells)
        height = std::max(
            height,
            metrics.boundingRect(roomOf(cell, places, 0, places.text.height()), flagsOf(cell.side), cell.text)
                .height());
    if (isRuled(row)) height += writing_mm / rowGap_mm * places.rowGap;
    return height + places.rowGap * (row.size_pt > PrintedRow::text_pt ? 3 : 1);
}

/// The first row of each page, and after the last of them the number of rows.
std::vector<std::size_t> pagesOf(const std::vector<double>& heights, const std::vector<PrintedRow>& rows,
                                 double room) {
    std::vector<std::size_t> first{0};
    double used = 0;
    for (std::size_t k = 0; k < rows.size(); ++k) {
        double wanted = 0; // a heading with what it heads
        for (std::size_t n = k; n < rows.size(); ++n) {
            wanted += heights[n];
            if (!rows[n].heads) break;
        }
        if (used > 0 && used + wanted > room && (k == 0 || !rows[k - 1].heads)) {
            first.push_back(k);
            used = 0;
        }
        used += heights[k];
    }
    first.push_back(rows.size());
    return first;
}

void paintFoot(QPainter& painter, const QRectF& place, const QString& title, int page, int pages) {
    painter.setFont(fontOf(footSize_pt));
    const QString number = Words::tr("Page %1 of %2").arg(page).arg(pages);
    const QFontMetricsF metrics(painter.font(), painter.device());
    const double room = place.width() - metrics.horizontalAdvance(number) - 2 * metrics.averageCharWidth();
    painter.drawText(place, Qt::AlignRight | Qt::AlignVCenter, number);
    painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter,
                     metrics.elidedText(title, Qt::ElideRight, room));
}

} // namespace

void printRows(QPrinter& printer, const QString& title, const std::vector<PrintedRow>& rows) {
    printer.setDocName(title);
    QPainter painter;
    if (!painter.begin(&printer)) return; // the printer has said why
    painter.setPen(Qt::black);
    const Places places = placesOn(printer);
    std::vector<double> heights;
    heights.reserve(rows.size());
    for (const PrintedRow& row : rows) heights.push_back(heightOf(row, places, &printer));
    const std::vector<std::size_t> firsts = pagesOf(heights, rows, places.text.height());
    const int pages = static_cast<int>(firsts.size()) - 1;

    const QPageRanges wanted = printer.pageRanges();
    const int copies = printer.supportsMultipleCopies() ? 1 : printer.copyCount();
    bool begun = false;
    for (int copy = 0; copy < copies; ++copy)
        for (int page = 1; page <= pages; ++page) {
            if (!wanted.isEmpty() && !wanted.contains(page)) continue;
            if (begun) printer.newPage();
            begun = true;
            double top = places.text.top();
            for (auto k = firsts[static_cast<std::size_t>(page) - 1];
                 k < firsts[static_cast<std::size_t>(page)]; ++k) {
                painter.setFont(fontOf(rows[k].size_pt));
                const bool ruled = isRuled(rows[k]);
                for (const PrintedCell& cell : rows[k].cells) {
                    const QRectF room =
                        roomOf(cell, places, top, heights[k]).adjusted(0, 0, 0, -places.rowGap);
                    painter.drawText(room, flagsOf(cell.side, ruled) | Qt::TextDontClip, cell.text);
                    if (cell.ruled) painter.drawLine(room.bottomLeft(), room.bottomRight());
                }
                top += heights[k];
            }
            paintFoot(painter, places.foot, title, page, pages);
        }
}

} // namespace blinkwright::widgets
