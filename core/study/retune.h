// Retuning: the value to put in place of one part, so that a board whose values are known from measurements
// keeps the rate that is wanted.
//
//   Retuning r = retune(fit, {.rate_Hz = 1, .ref = "R2", .series = units::Series::E24});
//   r.proposals[0].value;  r.proposals[0].rate_Hz.value;  r.proposals[0].rate_Hz.uncertainty
#pragma once

#include "core/study/fit.h"
#include "core/study/wish.h"

namespace blinkwright::study {

struct RetuneRequest {
    double rate_Hz = 1; ///< > 0
    std::string ref;    ///< a resistor, variable resistor or capacitor among the fitted values
    units::Series series = units::Series::E24;
    std::optional<std::vector<Stock>> drawer = {}; ///< values come from here instead
    std::optional<double> tolerance = {};          ///< of the new part, relative; nothing: the part's own
    std::size_t keep = 3;                          ///< how many values are answered
    const std::atomic<bool>* cancel = nullptr;
};

struct RetuneProposal {
    double value = 0;          ///< [ohm] or [F]
    double tolerance = 0;      ///< relative, of the new part
    circuit::Measured rate_Hz; ///< to be expected: the new part within its tolerance, the rest as fitted
    double duty = 0;
};

struct Retuning {
    std::string ref, key;
    units::Unit unit{};
    double present = 0;                    ///< the fitted value
    double exact = 0;                      ///< the value that would do it exactly; 0 where none does
    std::vector<RetuneProposal> proposals; ///< the nearest rate first
    std::string reason;                    ///< why there are none, a sentence
    bool cancelled = false;
};

Retuning retune(const FitOutcome& fit, const RetuneRequest& request);

/// The designators of the fitted parts that can be changed.
std::vector<std::string> retunable(const FitOutcome& fit);

} // namespace blinkwright::study
