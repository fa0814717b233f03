// What a fit and a budget of uncertainty are written as.
//
//   std::string json = fitJson(fit);
//   std::string csv = budgetCsv(budget);
#pragma once

#include "core/study/fit.h"
#include "core/study/uncertainty_budget.h"

#include <string>

namespace blinkwright::io {

/// Format "blinkwright-fit", version 1. All uncertainties are standard uncertainties; what was not measured
/// is null.
std::string fitJson(const study::FitOutcome& fit);
/// RFC 4180, CRLF: one line a fitted value, then one a figure, SI units.
std::string fitCsv(const study::FitOutcome& fit);
/// RFC 4180, CRLF: one line an input, then the figure with combined and expanded uncertainty, SI units.
/// @param name of what is budgeted, in the first column of the last lines: `rate predicted`
std::string budgetCsv(const study::Budget& budget, const std::string& name);

/// As in JSON: `first_high`.
std::string_view name(study::FitFigure figure);
/// `Type A`, `rectangular`.
std::string_view name(study::Evaluation evaluation);
std::string_view name(study::Distribution distribution);

} // namespace blinkwright::io
