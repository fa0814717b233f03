// The parts that a candidate needs besides its timing: from E24 and E6, or from the drawer.
#pragma once

#include "core/study/lamp_drive.h"
#include "core/study/screening.h"

namespace blinkwright::study {

/// All parts of a candidate; nothing where the drawer lacks one.
std::optional<Choice> partsOf(const Wish& wish, const LampDrive& drive, const Candidate& from);

/// What the drawer has not that the lamps need, whatever the timing: `The drawer has no resistor near 560 ohm
/// for the lamp.`
/// Empty where it has all of it for one way of wiring them.
std::string missingForLamps(const Wish& wish);

} // namespace blinkwright::study
