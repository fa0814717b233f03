#include "widgets/bench/check_card_page.h"

#include "core/study/wiring_list.h"
#include "widgets/bench/printed_page.h"
#include "widgets/text/words.h"

namespace blinkwright::widgets {

namespace {

// Shares of the width of the page.
constexpr double placeEnd = 0.4, step = 0.14, gap = 0.02;

QString qs(const std::string& text) {
    return QString::fromStdString(text);
}

PrintedRow tableRow(const QString& place, const std::array<QString, 3>& figures, const QString& read,
                    bool ruled) {
    PrintedRow row{{{place, 0, placeEnd}}};
    double from = placeEnd;
    for (const QString& figure : figures) {
        row.cells.push_back({figure, from, from + step - gap, Qt::AlignRight});
        from += step;
    }
    row.cells.push_back({read, from + gap, 1, Qt::AlignLeft, ruled});
    return row;
}

} // namespace

void printCheckCard(QPrinter& printer, const circuit::Circuit& circuit, circuit::PartSet set,
                    const study::ExpectedReadings& expected) {
    std::vector<PrintedRow> rows{{{{qs(circuit.title)}}, PrintedRow::title_pt, true}};
    if (const std::string heading = study::setHeading(circuit, set); !heading.empty())
        rows.push_back({{{qs(heading)}}});
    rows.push_back({{{Words::tr("Check card: expected readings")}}, PrintedRow::heading_pt, true});
    rows.push_back({{{qs(study::checkCardHeading(expected))}}, PrintedRow::text_pt, true});
    rows.push_back(tableRow(Words::tr("Place"), {Words::tr("Least"), Words::tr("Mean"), Words::tr("Most")},
                            Words::tr("Measured"), false));
    rows.back().heads = true;
    for (const study::ExpectedReading& row : expected.rows) {
        const auto text = [&](study::Quantity quantity) {
            return qs(study::readingText(row.place, row.meter.of(quantity)));
        };
        rows.push_back(
            tableRow(qs(row.place.words),
                     {text(study::Quantity::least), text(study::Quantity::mean), text(study::Quantity::most)},
                     {}, true));
    }
    rows.push_back({{{Words::tr("How to measure, and cautions")}}, PrintedRow::heading_pt, true});
    for (const std::string& note : study::checkCardNotes()) rows.push_back({{{qs(note)}}});
    for (const std::string& caution : study::buildCautions(circuit, set)) rows.push_back({{{qs(caution)}}});
    printRows(printer, qs(circuit.title), rows);
}

} // namespace blinkwright::widgets
