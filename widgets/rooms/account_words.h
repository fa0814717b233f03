// Names and texts of a fit and of its budget, as people read them.
//
//   valueName(fit.values[1])          // "C1, leakage"
//   beforehandText(fit.values[0])     // "10.0 ± 1.2 µF, by tolerance"
#pragma once

#include "core/study/fit.h"
#include "core/study/uncertainty_budget.h"
#include "widgets/text/figure_text.h"

#include <QString>

namespace blinkwright::widgets {

QString valueName(const study::Unknown& value);
/// What the circuit states; a dash where it states nothing.
QString statedText(const study::FittedValue& value);
QString beforehandText(const study::FittedValue& value);
QString figureName(const study::FittedFigure& figure);
/// How numbers of a unit are written: rates and times as in the readings, shares in per cent.
FigureText formOf(units::Unit unit);
/// Of the input of a budget.
FigureText formOf(const study::BudgetRow& row);

QString budgetFigureName(study::BudgetFigure figure);
/// `C1, by its tolerance`; `Count “First try”`.
QString budgetRowName(const study::BudgetRow& row);
QString budgetRowSource(const study::BudgetRow& row);
/// The sensitivity with its unit: `−0.0988 Hz/µF`.
QString sensitivityText(const study::BudgetRow& row, study::BudgetFigure figure);
/// Whether prediction and measurement agree, by how much they differ and how much they may.
QString agreementWords(const study::Budget& predicted, const study::Budget& measured);

} // namespace blinkwright::widgets
