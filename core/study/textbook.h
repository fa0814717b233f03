// The textbook column: recognises an astable by what its parts join, and applies the exact ln 2 formulas.
//
//   std::optional<Textbook> t = textbookOf(board, 0);   // first timer
//   t->phase.period_s;  t->r1_ohm;  t->formula;
#pragma once

#include "core/devices/board.h"
#include "core/study/phase.h"

#include <optional>
#include <string>

namespace blinkwright::study {

enum class AstableForm {
    plain,          ///< R1 supply to pin 7, R2 pin 7 to pins 2 and 6, C to ground
    steeringDiode,  ///< the same with a diode across R2, taken as ideal
    singleResistor, ///< one resistor from the output to pins 2 and 6
    drivenControl,  ///< plain, with pin 5 held by an ideal source
};

struct Textbook {
    AstableForm form = AstableForm::plain;
    double r1_ohm = 0; ///< 0 for the single-resistor form
    double r2_ohm = 0;
    double c_farad = 0;
    double control_ratio = 2.0 / 3.0; ///< threshold level over supply
    Phase phase;
    double firstHigh_s = 0;                            ///< from an empty capacitor
    std::string formula;                               ///< e.g. `T = ln 2 (R1 + 2 R2) C`
    std::string rounded;                               ///< what the rounded 1.44 would give, in words
    std::vector<std::string> r1Parts, r2Parts, cParts; ///< designators that make up each
    std::vector<std::size_t> diodes;                   ///< across R2, by index into Board::junctions
};

/// @return nothing where the wiring has no textbook formula.
std::optional<Textbook> textbookOf(const devices::Board& board, std::size_t timer);

} // namespace blinkwright::study
