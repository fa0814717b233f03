// What the moment line means for the lamps, and where it stands when a file has just been opened.
//
//   hookup.setGlow(glowAt(study, curves.moment_s()));
#pragma once

#include "core/study/study.h"

#include <map>

namespace blinkwright::app {

/// Each lamp's current over its rated current at a moment, within 0 to 1.
std::map<circuit::PartId, double> glowAt(const study::Study& study, double time_s);

/// The middle of the first phase after the first switching in which a lamp is lit; a moment that shows
/// something.
double tellingMoment(const study::Study& study);

} // namespace blinkwright::app
