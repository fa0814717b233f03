// The one function that makes a lab sheet of what was computed, what was typed, and what was chosen.
//
//   LabSheet sheet = makeLabSheet(facts, {.author = "…"}, {.copy = Copy::student});
#pragma once

#include "app/sheet/lab_sheet.h"
#include "core/study/lab_facts.h"
#include "widgets/hookup/geometry.h"

#include <set>

namespace blinkwright::app::sheet {

/// What people type. An empty text has the sheet's own in its place, or room to write.
struct SheetWords {
    QString title = {}, author = {}, partner = {}, group = {}, date = {}, aim = {}, method = {},
            conclusions = {};
};

enum class Copy {
    full,    ///< everything that is known
    student, ///< for a class: blanks for predictions and readings, no result given
    answers, ///< the same pages with the blanks filled in
};

struct SheetChoice {
    std::set<Topic> topics{std::begin(allTopics), std::end(allTopics)};
    Copy copy = Copy::full;
    widgets::hookup::SymbolStyle symbols = {};
};

LabSheet makeLabSheet(const study::LabFacts& facts, const SheetWords& words, const SheetChoice& choice);

/// Whether the facts that such a sheet tells hold the causes, and the spread.
bool tellsWhy(const SheetChoice& choice);
bool tellsSpread(const SheetChoice& choice);

} // namespace blinkwright::app::sheet
