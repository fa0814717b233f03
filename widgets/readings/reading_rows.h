// The rows of the readings table as texts, worked out from a run's figures; free of widgets.
//
//   ReadingTable t = readingTable(readings);
//   t.verdict           // "Blinks: 67.6 flashes a minute"
//   t.rows[1].setA      // "1.126 Hz"
//   compareTables(t, readingTable(readingsOfB), "Set B");
//   t.rows[1].second    // "1.250 Hz"
//   t.rows[1].against   // "+0.124 Hz (+11.0 %)"
//   addMeasured(t, measuredAgainst(circuit, PartSet::A, measuredReadings(circuit), &study));
//   t.rows[1].measured  // "1.138 ± 0.014 Hz"
#pragma once

#include "core/study/measured_against.h"

#include <QString>
#include <optional>
#include <vector>

namespace blinkwright::widgets {

/// A text, and why there is none where it is an en dash.
struct ReadingCell {
    QString text;
    QString why;
    bool operator==(const ReadingCell&) const = default;
};

struct ReadingRow {
    bool heading = false; ///< a section's name, the cells are empty
    QString figure;
    QString meaning; ///< what the figure is, for a tooltip
    ReadingCell textbook, setA, difference;
    ReadingCell second, against;       ///< of the set that A is compared with, and that minus A
    ReadingCell measured, off;         ///< on the real board, and that minus A
    std::optional<double> value;       ///< of Set A [SI]
    QString (*form)(double) = nullptr; ///< writes such a value; null for a heading
    bool isShare = false;              ///< differences of shares are in percentage points
    std::optional<study::MeasuredFigure> figureOf = {}; ///< where it can be measured
    circuit::PartId part = {};                          ///< of a lamp's rows
    bool operator==(const ReadingRow&) const = default;
};

struct ReadingTable {
    QString verdict; ///< one line or, with reasons, several
    QString rate;    ///< `67.6` flashes a minute, where the verdict says no more than that; else empty
    std::vector<ReadingRow> rows;
};

ReadingTable readingTable(const study::Readings& readings);

/// Puts another table's figures beside those of Set A: rows are matched by section and figure, what only the
/// other has comes last, and what only Set A has is a dash there.
/// @param name what the other is called: `Set B`, or a file's name
void compareTables(ReadingTable& table, const ReadingTable& other, const QString& name);
/// The same while the other has no readings.
void compareWithNothing(ReadingTable& table, const QString& name);

/// Puts what was measured beside the figures. What has no row yet (the output's levels, a lamp's current
/// while lit, the supply's voltage) gets one; all else has a dash. To be called before compareTables().
void addMeasured(ReadingTable& table, const std::vector<study::MeasuredAgainst>& measured);

/// A stretch of time for people: `45.2 s`, `12.5 min`, `9.25 h`, `33.8 d` to three digits.
QString durationText(double time_s);

} // namespace blinkwright::widgets
