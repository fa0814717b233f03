// How near a simulated board comes to the wish, and which of two boards is better.
#pragma once

#include "core/study/wish.h"

namespace blinkwright::study {

/// A wish counts as met up to these misses; the latter as of litMissOf().
inline constexpr double rateMissAllowed = 0.1, litMissAllowed = 0.1;
/// A lamp of a pair stays lit as wished from this share of the time on.
inline constexpr double stayShareAllowed = 0.9;

struct Tolerances {
    double r1 = 0, r2 = 0, c1 = 0, variable = 0; ///< relative
};
Tolerances tolerancesOf(const Wish& wish, const Choice& choice);

/// What stands against the wished lit share: of a pair whose lamps may go out before their turn ends, the
/// share of the first lamp's turn.
double litOf(const Wish& wish, const Choice& choice);
/// How far rates and lit shares are from the wish together, as of missOf() of a candidate.
double missOf(const Wish& wish, const Choice& choice);
/// The time that both lamps of a pair stay lit a cycle [s].
double shortestStay_s(const Choice& choice);
/// Whether the variable resistor reaches both ends of the range.
bool reaches(const Wish& wish, const Choice& choice);
bool met(const Wish& wish, const Choice& choice);
/// Best first.
void rank(const Wish& wish, std::vector<Choice>& choices);

} // namespace blinkwright::study
