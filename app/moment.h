// What the moment line means for the lamps, and where it stands when a file has just been opened.
//
//   hookup.setGlow(glowAt(study, curves.moment_s()));
#pragma once

#include "core/study/study.h"

#include <map>

namespace blinkwright::app {

/// Each lamp's current over its rated current at a moment, within 0 to 1.
std::map<circuit::PartId, double> glowAt(const study::Study& study, double time_s);

/// Each lamp's mean current over its rated current within a stretch of time, within 0 to 1: what an eye or a
/// shutter sees that takes the stretch as one. A stretch without length is a moment.
std::map<circuit::PartId, double> meanGlow(const study::Study& study, double from_s, double to_s);

/// The middle of the first phase after the first switching in which a lamp is lit; a moment that shows
/// something.
double tellingMoment(const study::Study& study);

} // namespace blinkwright::app
