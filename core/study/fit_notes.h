// What is to be said about a fit, in sentences.
#pragma once

#include "core/study/fit.h"

namespace blinkwright::study {

/// Parts whose doings the data cannot tell apart, names by name: groups of two or more.
std::vector<std::vector<std::size_t>> inseparable(const FitOutcome& fit);

void addNotes(FitOutcome& fit, const MeasuredReadings& measured);

} // namespace blinkwright::study
