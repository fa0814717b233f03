#include "widgets/bench/build_page.h"

#include "core/study/wiring_list.h"
#include "widgets/bench/printed_page.h"
#include "widgets/text/words.h"

#include <QStringList>

namespace blinkwright::widgets {

namespace {

constexpr int refsARow = 60; ///< of parts that are alike: more begin another row, so that each fits a page

QString qs(const std::string& text) {
    return QString::fromStdString(text);
}

void addParts(std::vector<PrintedRow>& rows, const circuit::Circuit& circuit, circuit::PartSet set) {
    rows.push_back({{{Words::tr("Parts")}}, PrintedRow::heading_pt, true});
    for (const study::PartsRow& part : study::partsList(circuit, set)) {
        QStringList refs;
        for (const std::string& ref : part.refs) refs << qs(ref);
        for (qsizetype k = 0; k < refs.size(); k += refsARow) {
            PrintedRow row;
            if (k == 0)
                row.cells = {{QStringLiteral("%1 \u00D7").arg(refs.size()), 0, 0.07, Qt::AlignRight},
                             {qs(part.description), 0.09, 0.44},
                             {qs(part.marking), 0.45, 0.76}};
            row.cells.push_back(
                {refs.mid(k, refsARow).join(QStringLiteral(", ")) + (k + refsARow < refs.size() ? "," : ""),
                 0.77, 1});
            rows.push_back(std::move(row));
        }
    }
}

void addSteps(std::vector<PrintedRow>& rows, const circuit::Circuit& circuit, circuit::PartSet set) {
    rows.push_back({{{Words::tr("Wiring")}}, PrintedRow::heading_pt, true});
    int number = 0;
    for (const study::BuildStep& step : study::wiringList(circuit, set))
        rows.push_back({{{QStringLiteral("\u2610"), 0, 0.03},
                         {Words::tr("%1.").arg(++number), 0.03, 0.09, Qt::AlignRight},
                         {qs(step.text), 0.10, 1}}});
}

void addCautions(std::vector<PrintedRow>& rows, const circuit::Circuit& circuit, circuit::PartSet set) {
    const std::vector<std::string> cautions = study::buildCautions(circuit, set);
    if (!cautions.empty()) rows.push_back({{{Words::tr("Cautions")}}, PrintedRow::heading_pt, true});
    for (const std::string& caution : cautions) rows.push_back({{{qs(caution)}}});
}

std::vector<PrintedRow> rowsOf(const circuit::Circuit& circuit, circuit::PartSet set) {
    std::vector<PrintedRow> rows{{{{qs(circuit.title)}}, PrintedRow::title_pt, true}};
    if (const std::string heading = study::setHeading(circuit, set); !heading.empty())
        rows.push_back({{{qs(heading)}}});
    addParts(rows, circuit, set);
    addSteps(rows, circuit, set);
    addCautions(rows, circuit, set);
    return rows;
}

} // namespace

void printBuildPage(QPrinter& printer, const circuit::Circuit& circuit, circuit::PartSet set) {
    printRows(printer, qs(circuit.title), rowsOf(circuit, set));
}

} // namespace blinkwright::widgets
