// What the room Trend asks, and the work of the answer; values only, so that a worker can do it.
//
//   const TrendAnswer answer = answerTrend(question, {}, cancel);
#pragma once

#include "widgets/rooms/trend_plot.h"

#include <atomic>

namespace blinkwright::app {

struct TrendQuestion {
    circuit::Circuit circuit;
    widgets::TrendValue value;
    widgets::TrendRange range;
    std::vector<circuit::PartSet> sets;
    std::vector<double> marks; ///< values that are to be settled exactly besides

    /// Whether the curves are the same: all but the present value is.
    bool hasCurvesOf(const TrendQuestion& other) const;
};

struct TrendAnswer {
    std::vector<widgets::TrendLine> lines;
    std::optional<Fault> fault = {};
};

/// @param curves of an earlier answer with the same curves, which are then not computed anew; else empty
TrendAnswer answerTrend(const TrendQuestion& question, const std::vector<widgets::TrendLine>& curves,
                        const std::atomic<bool>& cancel);

/// The number that a value is in a set, defaults counted in.
double presentOf(const circuit::Circuit& circuit, circuit::PartSet set, const circuit::ValueRef& which);

} // namespace blinkwright::app
