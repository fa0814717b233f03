// What parts a proposal may have, and what is said where a limit forbids a wish.
#pragma once

#include "core/study/lamp_drive.h"
#include "core/study/screening.h"

namespace blinkwright::study {

// Common practice, no source: a smaller R1 wastes current into pin 7; smaller capacitors are no larger than
// the wiring's; larger ones leak.
inline constexpr double leastResistor_ohm = 1e3;
inline constexpr double leastCapacitor_F = 1e-9, leastCapacitorCmos_F = 100e-12, mostCapacitor_F = 2200e-6;
inline constexpr double leastLampResistor_ohm = 10;

ScreenLaws lawsOf(const Wish& wish);
/// The ways in which lamps and timing can be wired for the wish; none where the supply drives no lamp.
std::vector<Scheme> schemesOf(const Wish& wish, const LampDrive& drive);
/// Whether both lamps may share one capacitor: it gives them equal charges a flash, whatever their resistors.
bool pairMayBeCoupled(const Wish& wish);

/// What no value of a part can mend, with the nearest wish.
std::optional<Unmet> forbidden(const Wish& wish);
/// The parts come no nearer than this. @param simulated not empty.
Unmet outOfReach(const Wish& wish, const std::vector<Choice>& simulated);
/// A reason without a nearest rate.
Unmet without(const Wish& wish, std::string reason);

} // namespace blinkwright::study
