// The reduced equations of one state as the fold wants them.
//
//   const FoldSource<double> source = foldSource(reduced, StraightBand::of(accuracy));
#pragma once

#include "core/engine/folded.h"
#include "core/engine/network.h"

namespace blinkwright::engine {

/// Rows: four a timer in the order of Watched, then the true current of each lamp that has a port.
FoldSource<double> foldSource(const Reduced& reduced, const StraightBand& band);
/// The law of a port.
PortLaw<double> portLaw(const Reduced& reduced, int port, const StraightBand& band);
/// Lamps that have a port, by junction index, in the order of their rows.
std::vector<int> lampsOf(const Reduced& reduced);

} // namespace blinkwright::engine
