// The wiring list: what to put where on the bench, step by step, and the parts to fetch for it.
//
//   for (const BuildStep& step : wiringList(circuit, PartSet::A)) step.text;
//   // "R1, 33 kΩ (orange orange orange gold): from pin 7 to + rail"
//   buildText(circuit, PartSet::A)       // numbered, with title and parts list, to print or copy
//   partsCsv(partsList(circuit, PartSet::A))
#pragma once

#include "core/circuit/circuit.h"

#include <string>
#include <vector>

namespace blinkwright::study {

struct BuildStep {
    circuit::PartId part;
    std::string ref;
    std::string text; ///< without a number
};

/// A step a part: timers first, then what hangs on their pins, the supply last, so that nothing is live while
/// it is wired. Rails, pins and other parts are named in words.
std::vector<BuildStep> wiringList(const circuit::Circuit& circuit, circuit::PartSet set);

/// Parts that are alike, as one row.
struct PartsRow {
    std::vector<std::string> refs;
    std::string kind;        ///< as in files: `resistor`
    std::string description; ///< `resistor 33 kΩ, 5 %, 250 mW`
    std::string marking;     ///< colour bands or code; empty where the value is printed in full
    std::string value;       ///< plain SI number, or a word (colour, family); empty where there is none
    std::string tolerance;   ///< relative, plain number, or `low to high`; empty where there is none
    std::string rating;      ///< W of resistors, V of capacitors, A of lamps; empty where there is none
};
std::vector<PartsRow> partsList(const circuit::Circuit& circuit, circuit::PartSet set);

/// Columns quantity, references, kind, value, tolerance, rating, description, marking; RFC 4180, UTF-8.
std::string partsCsv(const std::vector<PartsRow>& rows);
/// `2 x resistor 33 kΩ, 5 %, 250 mW (orange orange orange gold): R1, R2`, a line a row.
std::string partsText(const std::vector<PartsRow>& rows);

/// `Values of Set B`; empty where both sets hold the same and so need no telling apart.
std::string setHeading(const circuit::Circuit& circuit, circuit::PartSet set);

/// What to beware of while this circuit is built and run, sentences: battery, polarised capacitors, lamps,
/// flicker, mains. Only what its parts call for; usual cautions, common practice, and WCAG 2.2, success
/// criterion 2.3.1, on flashes.
std::vector<std::string> buildCautions(const circuit::Circuit& circuit, circuit::PartSet set);

/// Title, parts list, numbered steps and cautions as plain text.
std::string buildText(const circuit::Circuit& circuit, circuit::PartSet set);

} // namespace blinkwright::study
