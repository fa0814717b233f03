// Timing parts for wished phases, out of the preferred series.
//
//   TimingWish wish{TimingForm::plain, {0.55, 0.45}, {ln2, ln2}};
//   Timing t = chooseTiming(wish);      // R1, R2 of E24, C of E6
#pragma once

#include "core/study/phase.h"

namespace blinkwright::study {

enum class TimingForm {
    plain,   ///< charged through R1 + R2, discharged through R2
    steered, ///< charged through R1 alone, discharged through R2
    single   ///< one resistor, R2, both ways
};

struct Timing {
    double r1_ohm = 0; ///< 0 for TimingForm::single
    double r2_ohm = 0;
    double c_farad = 0;
};

/// A phase lasts its factor x resistance x C; ideally both factors are ln 2.
struct PhaseFactors {
    double high = 0.6931471805599453, low = 0.6931471805599453;
};

struct TimingWish {
    TimingForm form = TimingForm::plain;
    Phase phase;
    PhaseFactors factors = {};
};

/// What a measured phase says of the factors.
PhaseFactors factorsOf(TimingForm form, const Timing& timing, const Phase& measured);

/// How far phases are from the wished ones: the rate's logarithm and the share of the cycle.
double missOf(const TimingWish& wish, const Phase& phase);

/// The values whose phases come nearest to the wish; resistances stay where input currents and leakage do
/// not matter. @param wish periods of 20 ms to 20 s.
Timing chooseTiming(const TimingWish& wish);

} // namespace blinkwright::study
