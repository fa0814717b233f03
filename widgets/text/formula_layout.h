// Formulas drawn: fractions with a bar on the axis of the signs, what is below right smaller and lower.
//
//   FormulaBox box = measured(formula, font);
//   paintFormula(painter, formula, font, {x, baseline});
#pragma once

#include "widgets/text/formula.h"

#include <QFont>
#include <QPainter>

namespace blinkwright::widgets::formula {

/// Room of a formula about its baseline, in the unit of the font's pixels.
struct FormulaBox {
    double width = 0, ascent = 0, descent = 0;
};

FormulaBox measured(const Formula& formula, const QFont& font);
/// In the painter's pen. @param at the left end of the baseline.
void paintFormula(QPainter& painter, const Formula& formula, const QFont& font, QPointF at);

} // namespace blinkwright::widgets::formula
