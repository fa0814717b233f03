// Screening of a range of rates: R1, the end stop R2, a variable resistor in series with it and C1, judged by
// formula at both ends of the variable resistor.
//
//   screenRange(wish, values, scheme, laws, 200, best);
//   best[0].variable_ohm                        // rate_Hz and lit: of the slow end
#pragma once

#include "core/study/screening.h"

namespace blinkwright::study {

/// What variable resistors are made in, per decade: 1, 2.2, 4.7 by some makers, 1, 2, 5 by others; from 1
/// kohm to 2.2 Mohm. Common practice, no source.
std::vector<double> preferredVariables();

/// How far a lit share may be off at either end of a range, as of litMissOf(): one variable resistor cannot
/// hold it.
inline constexpr double litMissOverRange = 0.25;

/// Adds the best to `best`, which is kept to `most` entries, least miss first. Combinations that reach both
/// ends come first; others stay where there are none, so that the nearest can be told.
/// @param variables ascending [ohm].
/// @return how many combinations of R1, variable resistor and C1 were judged; each with the one end stop that
/// just reaches the fast end.
std::size_t screenRange(const Wish& wish, const PartValues& values, const std::vector<double>& variables,
                        const Scheme& scheme, const ScreenLaws& laws, std::size_t most,
                        std::vector<Candidate>& best);

} // namespace blinkwright::study
