// A board that starts where another one like it has settled: its capacitors begin with the voltages that they
// have at a rise of the output there, so that its own settled state is a few cycles away.
//
//   if (settled.found) startFrom(board, capacitorsAtRise(settled));
#pragma once

#include "core/engine/transient.h"

#include <vector>

namespace blinkwright::study {

/// By capacitor, at the rise of the first timer's output with which the settled period begins [V].
inline std::vector<double> capacitorsAtRise(const engine::Settled& settled) {
    engine::Instant at;
    settled.wave.instant(settled.wave.begin_s(), engine::Side::after, at);
    return at.capacitor_V;
}

inline void startFrom(devices::Board& board, const std::vector<double>& capacitor_V) {
    for (std::size_t k = 0; k < board.capacitors.size() && k < capacitor_V.size(); ++k)
        board.capacitors[k].initialVoltage = capacitor_V[k];
}

/// A board that starts where another has settled.
inline devices::Board startedLike(devices::Board board, const engine::Settled& settled) {
    startFrom(board, capacitorsAtRise(settled));
    return board;
}

} // namespace blinkwright::study
