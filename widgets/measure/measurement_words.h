// Measurements and what they say, in words for tables, undo and sentences.
//
//   whatText(measurement, circuit);      // "20 flashes", "Supply voltage of BT1", "Resistance of R1"
//   nameOf(measurement, circuit);        // its title, or what it is
#pragma once

#include "core/study/measured_against.h"
#include "widgets/text/figure_text.h"

namespace blinkwright::widgets {

QString kindText(const circuit::Measurement& measurement);
QString whatText(const circuit::Measurement& measurement, const circuit::Circuit& circuit);
QString nameOf(const circuit::Measurement& measurement, const circuit::Circuit& circuit);
QString quantityName(circuit::MeterQuantity quantity);
/// `resistance`, as people call a key of a part.
QString keyName(const circuit::Part& part, const std::string& key);

/// The number that stands in the table, and its unit: the time of a count, a meter's value, the cycle time
/// that a record shows. Nothing where there is none.
struct StatedNumber {
    circuit::Measured value;
    units::Unit unit = units::Unit::none;
    bool isEditable = false;
};
std::optional<StatedNumber> statedNumber(const circuit::Measurement& measurement,
                                         const circuit::Circuit& circuit);
units::Unit unitOf(const circuit::MeterReading& reading, const circuit::Circuit& circuit);

QString figureName(const study::MeasuredAgainst& figure, const circuit::Circuit& circuit);
FigureText figureForm(const study::MeasuredAgainst& figure, const circuit::Circuit& circuit);
bool isShare(const study::MeasuredAgainst& figure);

/// A sentence for each figure that two measurements give differently; empty while they agree.
QString clashText(const study::MeasuredReadings& readings, const circuit::Circuit& circuit);
/// Whether the board does what the simulation says, in a sentence; empty without anything to compare.
QString agreementText(const std::vector<study::MeasuredAgainst>& figures, const circuit::Circuit& circuit);

} // namespace blinkwright::widgets
