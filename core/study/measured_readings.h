// What the measurements of a circuit say of the figures that the readings have.
//
//   MeasuredReadings m = measuredReadings(circuit);
//   m.period_s->value;  m.period_s->uncertainty;      // of all counts and records together
// Values of one figure are combined by their weighted mean, weights 1/u^2; one without uncertainty counts as
// exact, and stands alone.
#pragma once

#include "core/circuit/circuit.h"

#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

/// Expanded uncertainties are this many standard ones, and what is further off is taken as not by chance: a
/// level of confidence of about 95 % (JCGM 100:2008, 6.3.3).
inline constexpr double coverage = 2;

/// What the switchings of one record say. The first cycle from power-on is left out of all but firstHigh_s.
struct RecordFigures {
    int cycles = 0; ///< whole ones, rise to rise
    std::optional<circuit::Measured> period_s, high_s, low_s, duty;
    std::optional<circuit::Measured> firstHigh_s; ///< of a record from power-on
    std::optional<double>
        scatter_s; ///< standard deviation of a switching about the even beat; from 3 cycles on
};
RecordFigures figuresOf(const circuit::Record& record);

struct MeasuredLamp {
    circuit::PartId part;
    circuit::Measured current_A; ///< while lit
};

struct MeasuredPart {
    circuit::PartId part;
    std::string key;
    circuit::Measured value;
};

/// Two measurements that give one figure differently: further apart than twice their common uncertainty.
struct Clash {
    std::string figure;                ///< `cycle time`
    std::size_t first = 0, second = 0; ///< places in the circuit's list
};

struct MeasuredReadings {
    std::optional<circuit::Measured> period_s, rate_Hz, high_s, low_s, duty, firstHigh_s;
    std::optional<circuit::Measured> supply_V, outputHigh_V, outputLow_V;
    std::vector<MeasuredLamp> lamps; ///< those that were measured, in file order
    std::vector<MeasuredPart> parts; ///< values of parts by themselves, in file order
    std::vector<Clash> clashes;      ///< the worst pair of each figure that has one
    bool contradicting = false;      ///< there are such
    bool empty() const; ///< nothing measured of the running circuit; parts by themselves do not count
};
/// Of the measurements that are marked as used. Supply and timer are the first ones.
MeasuredReadings measuredReadings(const circuit::Circuit& circuit);

} // namespace blinkwright::study
