#include "widgets/measure/measured_table.h"

#include "widgets/measure/measurement_words.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/text_sized.h"

#include <QHeaderView>

#include <cmath>

namespace blinkwright::widgets {

namespace {

enum Column { figure, measured, simulated, difference, percent, multiples, columns };
constexpr int farRole = Qt::UserRole;

QString pointsText(double share) {
    return plainNumber(std::abs(share * 100), 'f', 2);
}

} // namespace

MeasuredTable::MeasuredTable(QWidget* parent) : QTableWidget(0, columns, parent) {
    setObjectName(QStringLiteral("measured"));
    setAccessibleName(tr("What the measurements say, beside the simulation"));
    setWhatsThis(
        tr("Each figure from all measurements of it together, with its standard uncertainty, beside what the "
           "simulation gives and the difference."));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    verticalHeader()->hide();
    rowsByText(*this);
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    horizontalHeader()->setSectionResizeMode(figure, QHeaderView::Stretch);
    horizontalHeader()->setMinimumSectionSize(80);
    setTheme(Theme::of(Theme::Mode::light));
}

void MeasuredTable::setFigures(const std::vector<study::MeasuredAgainst>& figures,
                               const circuit::Circuit& circuit, const QString& set) {
    const QStringList heads{tr("Figure"),     tr("Measured"),    set,
                            tr("Difference"), tr("In per cent"), tr("In u")};
    setHorizontalHeaderLabels(heads);
    for (int column = 0; column < columns; ++column)
        horizontalHeaderItem(column)->setTextAlignment((column == figure ? Qt::AlignLeft : Qt::AlignRight) |
                                                       Qt::AlignVCenter);
    horizontalHeaderItem(multiples)->setToolTip(
        tr("How many standard uncertainties u of the measurement the difference is"));
    setRowCount(0);
    for (const study::MeasuredAgainst& one : figures) {
        if (one.figure == study::MeasuredFigure::rate) continue; // flashes a minute say it
        const FigureText form = figureForm(one, circuit);
        QStringList cells{
            figureName(one, circuit), measuredText(one.measured, form), noValue, noValue, noValue, noValue};
        if (one.predicted) {
            cells[simulated] = form(*one.predicted);
            const double off = *one.difference();
            cells[difference] =
                isShare(one) ? tr("%1 points").arg(signedText(off, pointsText)) : signedText(off, form);
            if (!isShare(one) && *one.predicted != 0)
                cells[percent] = offText(one.measured.value, *one.predicted);
        }
        const auto times = one.multiples();
        if (times) cells[multiples] = signedText(*times, multiplesText);
        const int row = rowCount();
        insertRow(row);
        for (int column = 0; column < columns; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            if (column > figure) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            const QString why = one.predicted ? tr("No uncertainty is stated.")
                                              : tr("The simulation has no figure for this.");
            if (cells[column] == noValue) item->setToolTip(why);
            item->setData(Qt::AccessibleTextRole,
                          tr("%1: %2").arg(heads[column], cells[column] == noValue ? why : cells[column]));
            item->setData(farRole, times && std::abs(*times) > study::coverage);
            setItem(row, column, item);
        }
    }
    colour();
}

void MeasuredTable::setTheme(const Theme& theme) {
    m_doubt = theme.doubt;
    m_ink = theme.ink;
    colour();
}

// The number says it already; the colour only helps to find it.
void MeasuredTable::colour() {
    for (int row = 0; row < rowCount(); ++row)
        item(row, multiples)->setForeground(item(row, multiples)->data(farRole).toBool() ? m_doubt : m_ink);
}

QString MeasuredTable::asText() const {
    QString text;
    for (int column = 0; column < columns; ++column)
        text += horizontalHeaderItem(column)->text() + (column + 1 < columns ? u'\t' : u'\n');
    for (int row = 0; row < rowCount(); ++row)
        for (int column = 0; column < columns; ++column)
            text += item(row, column)->text() + (column + 1 < columns ? u'\t' : u'\n');
    return text;
}

} // namespace blinkwright::widgets
