// Rows of text as pages to print: black on white, each page with its number and the title below. The
// printer's paper, range of pages and number of copies are kept to.
//
//   std::vector<PrintedRow> rows{{{{tr("Parts")}}, PrintedRow::heading_pt, true}};
//   rows.push_back({{{tr("R1"), 0, 0.2}, {tr("33 kΩ"), 0.2, 1}}});
//   printRows(printer, title, rows);
#pragma once

#include <QString>
#include <vector>

class QPrinter;

namespace blinkwright::widgets {

/// A text in a column, from a share of the width of the page to another.
struct PrintedCell {
    QString text;
    double from = 0, to = 1;
    Qt::Alignment side = Qt::AlignLeft;
    bool ruled = false; ///< a line below it, to write on
};

/// What stays together on a page.
struct PrintedRow {
    static constexpr double text_pt = 10, heading_pt = 12, title_pt = 15;
    std::vector<PrintedCell> cells;
    double size_pt = text_pt;
    bool heads = false; ///< not the last row of a page
};

void printRows(QPrinter& printer, const QString& title, const std::vector<PrintedRow>& rows);

} // namespace blinkwright::widgets
