// Which part values explain the measurements.
//
//   Fit f = fit(circuit, PartSet::A, {}).value();
//   f.values[0].name();  f.values[0].value;  f.values[0].uncertainty;    // C1.capacitance, 1.13e-05, 3.1e-07
//   f.figures[0].measured;  f.figures[0].before;  f.figures[0].after;
//   f.agrees;  f.notes;
//   circuit::apply(circuit, fittedEdit(circuit, f).value());             // the fitted board as Set B
//
// Weighted least squares with the tolerances as prior knowledge (JCGM 100:2008 for what the uncertainties
// mean; the estimate is the usual one for a linear model with normal priors). Derivatives are those of the
// settled board. All uncertainties are standard uncertainties.
#pragma once

#include "core/circuit/edit.h"
#include "core/study/fit_model.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <memory>

namespace blinkwright::study {

struct FittedValue : Unknown {
    double value = 0;       ///< fitted
    double uncertainty = 0; ///< of the fitted value
    /// By how many of their standard uncertainties the data move with one standard deviation of the prior:
    /// what is far below 1 cannot be seen in them.
    double seen = 0;
    /// By how many standard deviations of what was known before the value has moved.
    double movedSigmas() const { return (value - prior.value) / prior.uncertainty; }
};

/// No datum counts as better than this, relative: no board holds still to that, and the differences that make
/// the derivatives are exact enough for it.
inline constexpr double finestDatum = 1e-5;

/// One figure: measured, as the circuit stands, and with the fitted values.
struct FittedFigure : FigureOf {
    std::string ref; ///< of the lamp, supply or timer; empty for times
    units::Unit unit{};
    bool used = false; ///< as data; else it follows from those that are, or stands beside them
    std::optional<circuit::Measured> measured;
    double before = 0;
    circuit::Measured after; ///< its uncertainty is that which the fitted values leave
    /// Measured less after, over the uncertainty of the measurement, finestDatum at least.
    std::optional<double> offSigmas() const {
        if (!measured || measured->value == 0) return std::nullopt;
        const double u = std::max(measured->uncertainty, finestDatum * std::abs(measured->value));
        return (measured->value - after.value) / u;
    }
};

struct FitNote {
    bool warning = false;
    std::string text; ///< a sentence or two
};

struct FitOutcome {
    circuit::PartSet set = circuit::PartSet::A;
    bool found = false;
    bool nothingMeasured = false; ///< no figure that a fit could start from
    bool cancelled = false;       ///< what is here then is not to be used
    std::string reason;           ///< why nothing was found, a sentence; else empty
    std::vector<FittedValue> values;
    std::vector<FittedFigure> figures; ///< rate, period, high, low, duty; then others that were measured
    int data = 0;                      ///< figures that were used
    double chiSquare = 0;      ///< squared distances of data and of prior knowledge from the fitted board
    double chiSquareLimit = 0; ///< 95 % of true boards stay under it
    /// The fitted board explains the measurements within k = 2, by values that the parts may have.
    bool agrees = false;
    std::vector<FitNote> notes;
    int settles = 0; ///< settled states searched for

    double covariance(std::size_t a, std::size_t b) const { return m_covariance[a * values.size() + b]; }
    double correlation(std::size_t a, std::size_t b) const;
    const FittedFigure* figure(FitFigure which) const;

    /// To go on from: the priors and the board, and where the fitted board settled.
    std::shared_ptr<const Unknowns> unknowns;
    devices::Board board;             ///< the fitted one
    std::vector<double> m_covariance; ///< row by row
};

struct FitRequest {
    const std::atomic<bool>* cancel = nullptr;
};

/// @return a fault only where no board can be made of the circuit.
Result<FitOutcome> fit(const circuit::Circuit& circuit, circuit::PartSet set, const FitRequest& request);

/// The largest sum of so many squared standard normal deviates that 95 of 100 stay under. @param n 1 or more
double chiSquare95(int n);

/// Makes Set B the fitted board: all of the set that was fitted, with the fitted values on top. One undo
/// step. @return a fault where nothing was found.
Result<circuit::Edit> fittedEdit(const circuit::Circuit& circuit, const FitOutcome& fit);

} // namespace blinkwright::study
