// What the sections of a lab sheet are made of; make_sheet.cpp puts them together.
#pragma once

#include "app/sheet/make_sheet.h"
#include "widgets/text/words.h"

namespace blinkwright::app::sheet {

using widgets::Words;

/// What a sheet is made from, handed to every section.
struct Making {
    const study::LabFacts& facts;
    const SheetWords& words;
    const SheetChoice& choice;

    bool student() const { return choice.copy == Copy::student; }
    const study::Readings& readings() const { return facts.a.readings; }
    /// The first timer, or null.
    const study::TimerReading* timer() const;
    /// `Set A` where there are two sets, else `Simulated`.
    QString firstName() const;
    bool blinks() const { return readings().verdict == study::Verdict::blinks; }
};

std::vector<Block> theoryBlocks(const Making& making);
std::vector<Block> readingsBlocks(const Making& making);
std::vector<Block> measurementsBlocks(const Making& making); ///< what was measured, a line each
std::vector<Block> tracesBlocks(const Making& making);
std::vector<Block> drawingBlocks(const Making& making);
std::vector<Block> spreadBlocks(const Making& making);
std::vector<Block> findingsBlocks(const Making& making);
std::vector<Block> whyBlocks(const Making& making);
std::vector<Block> referencesBlocks(const Making& making);

inline QString qs(const std::string& text) {
    return QString::fromStdString(text);
}
inline Paragraph paragraph(const QString& text) {
    return {text, Paragraph::Style::body, 0};
}
inline Paragraph bullet(const QString& text) {
    return {text, Paragraph::Style::bullet, 0};
}
inline Paragraph note(const QString& text) {
    return {text, Paragraph::Style::note, 0};
}

} // namespace blinkwright::app::sheet
