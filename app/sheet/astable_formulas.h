// The textbook's formulas of an astable, with signs or with numbers put in: the lab sheet and the help show
// the same ones.
//
//   Formula f = phaseFormula("H", form, AstableTerms::symbols());      // ln 2 (R1 + R2) C
#pragma once

#include "core/study/textbook.h"
#include "widgets/text/formula.h"

namespace blinkwright::app::sheet {

using namespace widgets::formula; // formulas are blocks like the others

/// What stands for the resistances, the capacitor and the share of pin 5, and what between factors.
struct AstableTerms {
    Formula r1, r2, c, k;
    Formula times;
    static AstableTerms symbols();
};

/// `t` with the sign of a phase below it.
Formula phaseTime(const QString& phase);
/// How long a phase lasts, from the textbook (see study::AstableForm).
/// @param phase `H` high, `L` low, or `1` the first high one, from an empty capacitor
Formula phaseFormula(const QString& phase, study::AstableForm form, const AstableTerms& terms);

Formula periodFormula(); ///< from both phases
Formula rateFormula();   ///< from T
Formula dutyFormula();   ///< from tH and T
/// The time that a capacitor takes from U₀ to U₁ on its way to U∞ through a resistance.
Formula chargeFormula();

} // namespace blinkwright::app::sheet
