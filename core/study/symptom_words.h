// What a search for faults found, in sentences.
//
//   nextWords(library, diagnosis)
//   // "Measure pin 7 of U1 (discharge), mean: 1.91 V would mean R1 without contact; 5.99 V R2 without
//   contact."
#pragma once

#include "core/study/symptoms.h"

#include <string>

namespace blinkwright::study {

/// What to measure next and what the reading would say.
std::string nextWords(const FaultLibrary& library, const Diagnosis& diagnosis);
/// How one suspect is told from the others at the top: `pin 7 of U1 (discharge), mean, reads 1.91 V with it`.
/// Empty where nothing tells it.
std::string tellWords(const FaultLibrary& library, const Suspect& suspect);
/// `R1 bridged, or pins 7 and 8 of U1 joined`; more than three are counted.
std::string labelOf(const FaultLibrary& library, const Suspect& suspect);
/// How far the model goes, for small print.
std::string searchLimits();
/// The likeliest suspects with share, sentence and remedy, and what to measure next, as plain text.
std::string symptomsText(const FaultLibrary& library, const Diagnosis& diagnosis);

} // namespace blinkwright::study
