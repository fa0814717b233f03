// What was measured, beside the readings.
#include "widgets/readings/reading_rows.h"
#include "widgets/text/measured_text.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/signs.h"
#include "widgets/text/words.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::widgets {

namespace {

using study::MeasuredAgainst;
using Figure = study::MeasuredFigure;

/// `+1.25 % (0.6 u)`; of shares in percentage points.
QString offTextOf(const MeasuredAgainst& one, bool isShare) {
    const double off = *one.difference();
    QString text;
    if (isShare)
        text = Words::tr("%1 points").arg(signedText(off, [](double share) {
            return plainNumber(std::abs(share) * 100, 'f', 2);
        }));
    else if (*one.predicted != 0)
        text = offText(one.measured.value, *one.predicted);
    if (const auto multiples = one.multiples())
        text += QStringLiteral(" (%1)").arg(multiplesText(*multiples));
    return text;
}

/// The rows that readings do not have by themselves.
ReadingRow rowFor(const MeasuredAgainst& one) {
    ReadingRow row;
    row.figureOf = one.figure;
    row.part = one.part;
    row.form = textIn<units::Unit::volt>;
    switch (one.figure) {
    case Figure::outputHigh:
        row.figure = Words::tr("Output while high");
        row.meaning = Words::tr("Mean voltage of pin 3 against 0 V while it is high");
        break;
    case Figure::outputLow:
        row.figure = Words::tr("Output while low");
        row.meaning = Words::tr("Mean voltage of pin 3 against 0 V while it is low");
        break;
    case Figure::supplyVoltage:
        row.figure = Words::tr("Voltage under load");
        row.meaning = Words::tr("Mean voltage at the terminals while the blinker runs");
        break;
    default:
        row.figure = Words::tr("Current while lit");
        row.meaning = Words::tr("Mean current in the time that the lamp is lit");
        row.form = textIn<units::Unit::ampere>;
    }
    row.value = one.predicted;
    row.textbook = row.difference = {noValue, Words::tr("The textbook formulas speak of times only.")};
    row.setA = one.predicted ? ReadingCell{row.form(*one.predicted), {}}
                             : ReadingCell{noValue, Words::tr("The run gave no figure for this.")};
    return row;
}

/// Behind which row a new one of this figure belongs.
std::size_t placeFor(const ReadingTable& table, const MeasuredAgainst& one) {
    const auto isBefore = [&](const ReadingRow& row) {
        if (row.heading) return false;
        if (one.figure == Figure::lampCurrent) return row.part == one.part;
        if (one.figure == Figure::supplyVoltage) return true;
        return row.figureOf && *row.figureOf >= Figure::rate && *row.figureOf <= Figure::outputHigh;
    };
    const auto last = std::find_if(table.rows.rbegin(), table.rows.rend(), isBefore);
    return static_cast<std::size_t>(table.rows.rend() - last);
}

} // namespace

void addMeasured(ReadingTable& table, const std::vector<MeasuredAgainst>& measured) {
    for (ReadingRow& row : table.rows)
        if (!row.heading) row.measured = row.off = {noValue, Words::tr("Not measured.")};
    for (const MeasuredAgainst& one : measured) {
        if (one.figure == Figure::partValue) continue; // of a part by itself: no figure of the run
        auto row = std::find_if(table.rows.begin(), table.rows.end(), [&](const ReadingRow& r) {
            return r.figureOf == one.figure && (one.figure != Figure::lampCurrent || r.part == one.part);
        });
        if (row == table.rows.end()) {
            const bool hasPlace = one.figure == Figure::lampCurrent || one.figure >= Figure::outputHigh;
            if (!hasPlace) continue;
            row = table.rows.insert(table.rows.begin() + static_cast<std::ptrdiff_t>(placeFor(table, one)),
                                    rowFor(one));
        }
        row->measured = {measuredText(one.measured, row->form), {}};
        row->off = one.predicted ? ReadingCell{offTextOf(one, row->isShare), {}}
                                 : ReadingCell{noValue, row->setA.why};
    }
}

} // namespace blinkwright::widgets
