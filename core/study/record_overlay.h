// Where a record of the real board lies on the time axis of simulated curves.
//
//   std::optional<double> shift = recordShift(record, curves, true);
//   // the record's time t is drawn at t + shift
#pragma once

#include "core/circuit/measurement.h"
#include "core/engine/curves.h"

#include <optional>

namespace blinkwright::study {

/// A record from power-on lies at the time of its own on curves from power-on. Any other is moved so that its
/// first rise falls on a rise of the curves: the first after power-on, or the one that settled curves begin
/// with. A record without a rise lies with its first switching on one of the same direction.
/// @param curvesFromPowerOn else they begin with a rise.
/// @return nothing where the curves or the record have no switching to go by.
std::optional<double> recordShift(const circuit::Record& record, const engine::Curves& curves,
                                  bool curvesFromPowerOn);

} // namespace blinkwright::study
