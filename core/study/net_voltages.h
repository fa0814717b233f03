// The voltage of every net at one moment of a run: what the Pins view shows under the moment line.
//
//   std::map<NetId, double> now = netVoltages(study, 0.25);
//   now.at(timing)                 // volt against 0 V, the first supply's minus
// Nothing is kept for it while a run is computed: the waveform's dense output is asked for the one instant.
#pragma once

#include "core/study/study.h"

#include <map>

namespace blinkwright::study {

/// @param time_s within the span shown, else taken as its nearer end; at a switching, the voltages just
/// after it.
/// @return volt by net. Nets without a voltage are left out: of a study without a run, and nets that no part
/// joins with 0 V.
std::map<circuit::NetId, double> netVoltages(const Study& study, double time_s);

} // namespace blinkwright::study
