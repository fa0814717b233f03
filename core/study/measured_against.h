// What was measured beside what the simulation says: figure by figure, and how far apart.
//
//   for (const MeasuredAgainst& m : measuredAgainst(circuit, PartSet::A, measuredReadings(circuit), &study))
//       m.difference();  m.multiples();      // in units, and in standard uncertainties
#pragma once

#include "core/study/measured_readings.h"
#include "core/study/study.h"

namespace blinkwright::study {

enum class MeasuredFigure {
    rate,      ///< [Hz]
    perMinute, ///< the same, flashes a minute
    period,    ///< [s], as are high, low, firstHigh
    high,
    low,
    duty, ///< share of 1
    firstHigh,
    outputHigh, ///< [V] mean of the output while high; as are outputLow, supplyVoltage
    outputLow,
    supplyVoltage, ///< mean at the terminals
    lampCurrent,   ///< [A] mean while the lamp is lit
    partValue,     ///< of a part by one of its keys, [SI]
};

struct MeasuredAgainst {
    MeasuredFigure figure{};
    circuit::PartId part = {}; ///< of lampCurrent and partValue
    std::string key = {};      ///< of partValue
    circuit::Measured measured;
    std::optional<double> predicted = {}; ///< nothing where the simulation has no such figure

    std::optional<double> difference() const; ///< measured minus predicted
    /// The difference in standard uncertainties of the measurement; nothing for one without uncertainty. The
    /// prediction counts as exact: its own uncertainty is that of the parts, which this does not know.
    std::optional<double> multiples() const;
};

// What the simulation says of figures that a meter shows; nothing where it has no such figure.

/// Mean of the first timer's output [V] while it is high, or low.
std::optional<double> outputLevel(const Study& study, bool high);
/// Mean voltage at the first supply's terminals [V].
std::optional<double> terminalVoltage(const Study& study);
/// Mean current while the lamp is lit [A].
std::optional<double> litCurrent(const LampReading& lamp);

/// In the order of MeasuredFigure, lamps and parts in file order; only what was measured.
/// @param study of that set; null while there is none: nothing but part values is predicted then.
std::vector<MeasuredAgainst> measuredAgainst(const circuit::Circuit& circuit, circuit::PartSet set,
                                             const MeasuredReadings& measured, const Study* study);

} // namespace blinkwright::study
