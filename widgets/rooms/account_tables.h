// The tables of "Account for it": fitted values, figures before and after, and a budget of uncertainty.
//
//   ValuesTable values;    values.setFit(*fit);
//   AccountTable figures;  figures.setFit(*fit);
//   BudgetTable budget;    budget.setBudget(budget);
#pragma once

#include "core/study/fit.h"
#include "core/study/uncertainty_budget.h"
#include "widgets/rooms/plain_table.h"
#include "widgets/theme/theme.h"

namespace blinkwright::widgets {

class ValuesTable : public WholeTable {
    Q_OBJECT
  public:
    explicit ValuesTable(QWidget* parent = nullptr);
    void setFit(const study::FitOutcome& fit, const Theme& theme);
};

class AccountTable : public WholeTable {
    Q_OBJECT
  public:
    explicit AccountTable(QWidget* parent = nullptr);
    void setFit(const study::FitOutcome& fit, const Theme& theme);
};

class BudgetTable : public WholeTable {
    Q_OBJECT
  public:
    explicit BudgetTable(const QString& accessibleName, QWidget* parent = nullptr);
    /// Inputs, the largest contribution first, then combined and expanded uncertainty.
    void setBudget(const study::Budget& budget);
};

} // namespace blinkwright::widgets
