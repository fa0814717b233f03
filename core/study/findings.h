// Findings: plain sentences about a circuit, with severity, place, numbers and what to do.
//
//   for (const Finding& f : findingsOf(board, &readings)) show(f.text, f.remedy);
#pragma once

#include "core/devices/board.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::study {

struct Readings;

enum class Severity { fault, overstress, doubt, caution, note };
std::string_view name(Severity severity);

struct Finding {
    std::string kind; ///< e.g. `reset-open`
    Severity severity = Severity::note;
    std::vector<std::string> places; ///< designators or terminals: `U1:4`
    std::string text;
    std::string remedy;
    std::optional<double> number = std::nullopt; ///< the value found, SI
    std::optional<double> limit = std::nullopt;  ///< what it is held against, SI
    std::string source = {};                     ///< where the limit comes from
};

/// All findings on a board, worst first. @param readings of a run of the same board, or null where there is
/// none (then only what the wiring alone tells).
std::vector<Finding> findingsOf(const devices::Board& board, const Readings* readings);

} // namespace blinkwright::study
