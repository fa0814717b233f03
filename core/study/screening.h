// Screening: every combination of R1, R2 and C1 judged by formula, so that only the best are simulated.
//
//   Screened s = screen(wish, partValues, scheme, laws, 200);
//
// The formula is the textbook's with first-order corrections: the discharge pin's resistance and offset, the
// input and leakage currents, the drop of a diode across R2, and the delay. High and low phase are
// proportional to C1, but for the delay; so each pair of resistors is worked out once.
#pragma once

#include "core/devices/sheets.h"
#include "core/study/phase.h"
#include "core/study/wish.h"

#include <span>
#include <vector>

namespace blinkwright::study {

/// What R1, R2 and C1 may be, ascending.
struct PartValues {
    std::vector<double> r1, r2, c1;
};

/// What the formula takes from the devices.
struct ScreenLaws {
    devices::TimerSheet timer;
    devices::JunctionLaw diode;
    double supply_V = 0;
    double mostResistance_ohm = 0; ///< R1 + R2 at most
};

/// A capacitor's leakage to be expected, by its size: 0.01 C V for an electrolytic (1 uF and more), as
/// makers' sheets state it; common practice, no source. [A]
double expectedLeakage(double farad, double volts);
/// Charging current at the upper level over what is taken from it there.
double stallMargin(const ScreenLaws& laws, double r1_ohm, double r2_ohm, double c_farad);

struct Candidate {
    Scheme scheme;
    double r1_ohm = 0, r2_ohm = 0, c1_farad = 0;
    double rate_Hz = 0, lit = 0; ///< by the formula
    double miss = 0;             ///< how far from the wish: 0 is on it
    double variable_ohm = 0;     ///< of a range (range_screening.h)
};
/// How far a lit share is from the wish, relative to the share that is lit or dark, whichever is smaller.
double litMissOf(const Wish& wish, double lit);
/// How far both are: the logarithm of the rates' ratio, and litMissOf().
double missOf(const Wish& wish, double rate_Hz, double lit);

/// Drops all but the `most` entries of least miss.
void keepBest(std::vector<Candidate>& best, std::size_t most);

/// The least stall margin that a proposal may have: under it the leakage to be expected keeps the capacitor
/// from its level. Margins up to ten are told apart in the ranking.
inline constexpr double leastStallMargin = 1;

/// Phases by the formula; high or low is 0 where the circuit would not blink.
Phase formulaPhase(const ScreenLaws& laws, const Scheme& scheme, double r1_ohm, double r2_ohm,
                   double c_farad);

/// Adds the best combinations of a scheme to `best`, which is kept to `most` entries, least miss first.
/// @return how many combinations were judged.
std::size_t screen(const Wish& wish, const PartValues& values, const Scheme& scheme, const ScreenLaws& laws,
                   std::size_t most, std::vector<Candidate>& best);

} // namespace blinkwright::study
