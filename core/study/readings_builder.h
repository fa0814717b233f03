// How figures become the lamp, supply and part rows of the readings.
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/figures.h"
#include "core/study/readings.h"

namespace blinkwright::study {

/// Adds a row a lamp, the first supply, and a row a part in file order; with no figures, every value is
/// missing.
/// @param phase of the first timer in the span of the figures, where it has one.
void addFigures(Readings& readings, const circuit::Circuit& circuit, const devices::Board& board,
                const Figures* figures, const std::optional<Phase>& phase = {});

} // namespace blinkwright::study
