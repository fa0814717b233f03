#include "widgets/rooms/account_tables.h"

#include "widgets/rooms/account_words.h"
#include "widgets/rooms/plain_table.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/text_sized.h"

#include <QHeaderView>

#include <algorithm>
#include <cmath>
#include <functional>

namespace blinkwright::widgets {

namespace {

constexpr double far = 2; ///< standard deviations: k = 2

QString inSigmas(double sigmas) {
    return signedText(sigmas, [](double value) { return plainNumber(value, 'f', 1); });
}

void start(QTableWidget& table, const QString& name, const QStringList& head, const QStringList& meanings,
           int texts = 1) {
    table.setAccessibleName(name);
    prepareTable(table);
    table.setHorizontalHeaderLabels(head);
    for (int column = 0; column < head.size(); ++column)
        table.horizontalHeaderItem(column)->setTextAlignment(
            Qt::AlignVCenter | (column < texts ? Qt::AlignLeft : Qt::AlignRight));
    for (int column = 0; column < meanings.size(); ++column)
        table.horizontalHeaderItem(column)->setToolTip(meanings[column]);
    rowsByText(table);
    table.horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table.horizontalHeader()->setSectionResizeMode(0, QHeaderView::Stretch);
    table.horizontalHeader()->setMinimumSectionSize(70);
}

void addRow(QTableWidget& table, const QStringList& cells, const QString& meaning = {}, int texts = 1) {
    const int row = table.rowCount();
    table.insertRow(row);
    for (int column = 0; column < cells.size(); ++column) {
        auto* item = tableCell(cells[column], column >= texts);
        item->setToolTip(meaning);
        table.setItem(row, column, item);
    }
}

void mark(QTableWidgetItem& item, const QColor& colour) {
    QFont strong = item.font();
    strong.setBold(true);
    item.setFont(strong);
    item.setForeground(colour);
}

} // namespace

ValuesTable::ValuesTable(QWidget* parent) : WholeTable(6, parent) {
    setObjectName(QStringLiteral("values"));
    setWhatsThis(tr("The values that the timing hangs on, as stated, as known beforehand, and as they "
                    "explain the measurements "
                    "best."));
    start(*this, tr("Fitted values"),
          {tr("Value"), tr("Stated"), tr("Known beforehand"), tr("Fitted"), tr("Moved by"), tr("In σ")},
          {tr("Each value that the timing hangs on"), tr("What the circuit states"),
           tr("By tolerance, by a reading of the part itself, or by what is usual; with its standard "
              "uncertainty"),
           tr("What explains the measurements best, with its standard uncertainty"),
           tr("Fitted against stated"),
           tr("Fitted against what was known beforehand, in standard deviations of that")});
}

void ValuesTable::setFit(const study::FitOutcome& fit, const Theme& theme) {
    setRowCount(0);
    for (const study::FittedValue& v : fit.values) {
        addRow(*this, {valueName(v), statedText(v), beforehandText(v),
                       measuredText({v.value, v.uncertainty}, formOf(v.unit)),
                       v.nominal > 0 ? offText(v.value, v.nominal) : noValue, inSigmas(v.movedSigmas())});
        if (std::abs(v.movedSigmas()) > far) mark(*item(rowCount() - 1, 5), theme.doubt);
    }
    fitToRows();
}

AccountTable::AccountTable(QWidget* parent) : WholeTable(5, parent) {
    setObjectName(QStringLiteral("figures"));
    setWhatsThis(
        tr("What the settled board does with the values as stated and with the fitted ones, beside what was "
           "measured."));
    start(*this, tr("Figures before and after"),
          {tr("Figure"), tr("As stated"), tr("With fitted values"), tr("Measured"), tr("Off, in u")},
          {tr("Settled"), tr("Simulated with the values that the circuit states"),
           tr("Simulated with the fitted values; the uncertainty is what these leave"),
           tr("All measurements of it together, with standard uncertainty"),
           tr("Measured against fitted, in standard uncertainties of the measurement")});
}

void AccountTable::setFit(const study::FitOutcome& fit, const Theme& theme) {
    setRowCount(0);
    for (const study::FittedFigure& f : fit.figures) {
        const auto off = f.offSigmas();
        const auto add = [&](const QString& name, double factor, FigureText form) {
            const auto text = [&](const circuit::Measured& m) {
                return measuredText({factor * m.value, factor * m.uncertainty}, form);
            };
            addRow(*this, {name, form(factor * f.before), text(f.after),
                           f.measured ? text(*f.measured) : noValue, off ? inSigmas(*off) : noValue});
            if (f.used && off && std::abs(*off) > far) mark(*item(rowCount() - 1, 4), theme.doubt);
        };
        add(figureName(f), 1, formOf(f.unit));
        if (f.figure == study::FitFigure::rate) add(tr("Flashes a minute"), 60, numberText);
    }
    fitToRows();
}

BudgetTable::BudgetTable(const QString& accessibleName, QWidget* parent) : WholeTable(8, parent) {
    start(*this, accessibleName,
          {tr("Input"), tr("Known by"), tr("Value"), tr("Uncertainty"), tr("Evaluation"), tr("Sensitivity"),
           tr("Contribution"), tr("Share")},
          {{},
           {},
           tr("Best estimate"),
           tr("One standard deviation (JCGM 100:2008, 2.3.1)"),
           tr("Type A: by statistics of readings. Type B: by what is known otherwise; rectangular: u is "
              "half the width over the square root of 3"),
           tr("How far the figure moves with the input (5.1.3)"),
           tr("Sensitivity times standard uncertainty"),
           tr("Of the variance")},
          2);
}

void BudgetTable::setBudget(const study::Budget& budget) {
    setRowCount(0);
    const FigureText form = formOf(unitOf(budget.figure));
    std::vector<std::size_t> order;
    for (std::size_t k = 0; k < budget.rows.size(); ++k) order.push_back(k);
    std::ranges::stable_sort(order, std::greater(),
                             [&](std::size_t k) { return budget.rows[k].contribution(); });
    for (const std::size_t k : order) {
        const study::BudgetRow& row = budget.rows[k];
        const FigureText rowForm = formOf(row);
        const QString kind = row.evaluation == study::Evaluation::typeA ? tr("A") : tr("B");
        const QString shape =
            row.distribution == study::Distribution::normal ? tr("normal") : tr("rectangular");
        addRow(*this,
               {budgetRowName(row), budgetRowSource(row), rowForm(row.value),
                uncertaintyText(row.uncertainty, rowForm), QStringLiteral("%1, %2").arg(kind, shape),
                sensitivityText(row, budget.figure), uncertaintyText(row.contribution(), form),
                shareText(budget.share(k))},
               row.reel ? tr("On one reel with another part: both move together") : QString(), 2);
    }
    const auto sum = [&](const QString& name, const QString& what, double u, double share) {
        addRow(*this,
               {name, what, measuredText({budget.value, u}, form), QString(), QString(), QString(),
                uncertaintyText(u, form), share > 0 ? shareText(share) : QString()},
               {}, 2);
        for (int column = 0; column < columnCount(); ++column) {
            QFont strong = item(rowCount() - 1, column)->font();
            strong.setBold(true);
            item(rowCount() - 1, column)->setFont(strong);
        }
    };
    sum(budgetFigureName(budget.figure), tr("combined"), budget.combined, 1);
    sum(budgetFigureName(budget.figure), tr("expanded, k = 2"), budget.expanded(), 0);
    fitToRows();
}

} // namespace blinkwright::widgets
