#include "core/study/timing_parts.h"

#include "core/engine/transient.h"
#include "core/engine/varied.h"
#include "core/study/screening.h"
#include "core/study/settled_start.h"
#include "core/study/textbook.h"

#include <array>
#include <cmath>

namespace blinkwright::study {

namespace {

using engine::VariedKind;

constexpr double nudge = 0.01;
constexpr double noticeable = 0.02; ///< relative change of a figure over that of the part
constexpr std::size_t mostParts = 60;

bool moves(const devices::Board& board, const engine::Settled& settled,
           const std::vector<engine::Varied>& varied) {
    const std::vector<double> factors(varied.size(), 1 + nudge);
    devices::Board other = engine::variedBoard(board, varied, factors);
    startFrom(other, capacitorsAtRise(settled));
    const engine::Settled there = engine::settle(other, {});
    if (!there.found) return true; // it matters whether it blinks at all
    const double period = there.period_s / settled.period_s - 1;
    const double duty = there.high_s / there.period_s - settled.high_s / settled.period_s;
    return std::max(std::abs(period), std::abs(duty)) > noticeable * nudge;
}

TimingParts bySimulation(const devices::Board& board) {
    TimingParts parts;
    parts.output = true;
    if (board.resistors.size() + board.variables.size() + board.capacitors.size() > mostParts) return parts;
    const engine::Settled settled = engine::settle(board, {});
    if (!settled.found) return parts;
    const auto add = [&](const auto& list, std::vector<std::string>& refs,
                         const std::vector<VariedKind>& kinds) {
        for (std::size_t k = 0; k < list.size(); ++k) {
            std::vector<engine::Varied> varied;
            varied.reserve(kinds.size());
            for (const VariedKind kind : kinds) varied.push_back({kind, static_cast<int>(k)});
            if (moves(board, settled, varied)) refs.push_back(list[k].ref);
        }
    };
    add(board.capacitors, parts.capacitors, {VariedKind::capacitor});
    add(board.resistors, parts.resistors, {VariedKind::resistor});
    add(board.variables, parts.resistors, {VariedKind::variableUpper, VariedKind::variableLower});
    return parts;
}

} // namespace

TimingParts timingParts(const devices::Board& board) {
    const auto book = textbookOf(board, 0);
    if (!book) return bySimulation(board);
    TimingParts parts;
    parts.capacitors = book->cParts;
    parts.resistors = book->r1Parts;
    parts.resistors.insert(parts.resistors.end(), book->r2Parts.begin(), book->r2Parts.end());
    parts.diodes = book->diodes;
    parts.output = book->form == AstableForm::singleResistor;
    parts.discharge = !parts.output;
    return parts;
}

double usualLeakage_S(double farad) {
    return expectedLeakage(farad, 1);
}

} // namespace blinkwright::study
