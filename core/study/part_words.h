// A part in words for people at the bench: what it is, its value, and what is printed on it.
//
//   stepWords(circuit, PartSet::A, r1)     // "33 kΩ (orange orange orange gold)"
//   rowWords(circuit, PartSet::A, r1).description   // "resistor 33 kΩ, 5 %, 250 mW"
#pragma once

#include "core/study/wiring_list.h"

namespace blinkwright::study {

/// Value and marking, as a step of the wiring list tells them.
std::string stepWords(const circuit::Circuit& circuit, circuit::PartSet set, const circuit::Part& part);
/// A row of the parts list without its designators.
PartsRow rowWords(const circuit::Circuit& circuit, circuit::PartSet set, const circuit::Part& part);
/// A lamp's colour, as files have it, in words.
std::string colourWords(const std::string& colour);
bool isPolarised(const circuit::Circuit& circuit, circuit::PartSet set, const circuit::Part& part);

} // namespace blinkwright::study
