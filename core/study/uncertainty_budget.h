// Uncertainty budgets after JCGM 100:2008 (the "GUM"): what is known of each input, how far the figure moves
// with it, and what that adds up to; for the figure that is predicted, for the one that was measured, and
// whether the two agree.
//
//   Budget b = predictedBudget(circuit, PartSet::A, BudgetFigure::rate, BudgetModel::simulated, {}).value();
//   b.rows[0].sensitivity;  b.combined;  b.expanded();        // k = 2
//   Budget m = *measuredBudget(circuit, BudgetFigure::rate);
//   compare(b, m).agree
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/measured_readings.h"
#include "core/units/engineering.h"

#include <atomic>
#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

enum class BudgetFigure { rate, period, duty };
units::Unit unitOf(BudgetFigure figure);

enum class Evaluation {
    typeA, ///< by statistics of repeated readings (4.2)
    typeB, ///< by what is known otherwise (4.3)
};
enum class Distribution { rectangular, normal };

/// A standard uncertainty is sqrt of the half-width's square over 3 for a rectangle (4.3.7).
struct BudgetRow {
    std::string ref, key;   ///< `C1`, `capacitance`; of a measurement `count` or `record` and its title
    std::string what;       ///< where the number comes from, in words
    units::Unit unit{};     ///< of value and uncertainty
    double value = 0;       ///< estimate
    double uncertainty = 0; ///< standard
    Evaluation evaluation = Evaluation::typeB;
    Distribution distribution = Distribution::rectangular;
    double sensitivity = 0; ///< d figure / d input (5.1.3), in the unit of the figure over `unit`
    std::optional<std::size_t> reel = {}; ///< rows of one reel are wholly correlated (5.2.2)
    double contribution() const {
        return sensitivity < 0 ? -sensitivity * uncertainty : sensitivity * uncertainty;
    }
};

struct Budget {
    BudgetFigure figure = BudgetFigure::rate;
    double value = 0; ///< of the figure
    std::vector<BudgetRow> rows;
    double combined = 0; ///< standard uncertainty of the figure (5.1.2 and 5.2.2)
    std::string reason;  ///< why there is no figure, a sentence; else empty
    double expanded() const { return coverage * combined; }
    /// A row's share of the variance, its covariances with the others of its reel included.
    double share(std::size_t row) const;
};

/// Adds up the rows. @return combined standard uncertainty
double combinedOf(const std::vector<BudgetRow>& rows);

/// Where value and sensitivities come from.
enum class BudgetModel {
    textbook,  ///< the formula with ln 2; the timer's tolerance counts for the time itself
    simulated, ///< the settled board; the timer's tolerance counts for its levels
};

struct BudgetRequest {
    const std::atomic<bool>* cancel = nullptr;
};
/// Each part of the timing within its tolerance, or as its own reading says; the timer within its
/// `timing_tolerance`; a supply that was measured within the uncertainty of that.
/// @return a fault only where no board can be made. Where nothing blinks, or the wiring has no formula,
/// `reason` says so.
Result<Budget> predictedBudget(const circuit::Circuit& circuit, circuit::PartSet set, BudgetFigure figure,
                               BudgetModel model, const BudgetRequest& request);

/// Of the counts and records that are used; nothing where none of them has this figure. The value is that of
/// measuredReadings().
std::optional<Budget> measuredBudget(const circuit::Circuit& circuit, BudgetFigure figure);

struct Agreement {
    double difference = 0; ///< measured less predicted
    double limit = 0;      ///< 2 sqrt(u^2 + u^2)
    bool agree = false;
};
Agreement compare(const Budget& predicted, const Budget& measured);

} // namespace blinkwright::study
