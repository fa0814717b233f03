// The rows of the readings table as texts, worked out from a run's figures; free of widgets.
//
//   ReadingTable t = readingTable(readings);
//   t.verdict           // "Blinks: 67.6 flashes a minute"
//   t.rows[1].setA      // "1.126 Hz"
#pragma once

#include "core/study/readings.h"

#include <QString>
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
    bool operator==(const ReadingRow&) const = default;
};

struct ReadingTable {
    QString verdict; ///< one line or, with reasons, several
    std::vector<ReadingRow> rows;
};

ReadingTable readingTable(const study::Readings& readings);

/// A stretch of time for people: `45.2 s`, `12.5 min`, `9.25 h`, `33.8 d` to three digits.
QString durationText(double time_s);

} // namespace blinkwright::widgets
