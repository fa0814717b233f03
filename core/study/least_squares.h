// Least squares with prior knowledge: unknowns that are known beforehand, each to one standard deviation, and
// data that say more. Gauss-Newton, damped where a full step does not lower the sum (K. Levenberg, Quarterly
// of Applied Mathematics 2 (1944) 164; D. Marquardt, SIAM Journal 11 (1963) 431).
//
//   LeastSquares problem{.residuals = r, .slopes = j, .lowest = low};
//   Estimate e = solve(problem, Eigen::VectorXd::Zero(n));
//   e.at;  e.covariance;  e.sum
// Unknowns and residuals are pure numbers: unknowns in standard deviations of their prior about its mean,
// residuals in standard uncertainties of the data.
#pragma once

#include <Eigen/Core>

#include <functional>
#include <optional>

namespace blinkwright::study {

struct LeastSquares {
    using Vector = Eigen::VectorXd;
    /// Model less measurement, over the measurement's uncertainty; nothing where the model has no answer.
    std::function<std::optional<Vector>(const Vector& at)> residuals;
    /// Derivatives of the residuals, one column an unknown; nothing where the model has no answer.
    std::function<std::optional<Eigen::MatrixXd>(const Vector& at)> slopes;
    Vector lowest; ///< no unknown goes below
};

struct Estimate {
    bool found = false;
    Eigen::VectorXd at;
    /// Of the unknowns, linearised at the end, bounds not counted: what is held by a bound is as uncertain as
    /// it would be without.
    Eigen::MatrixXd covariance;
    Eigen::MatrixXd slopes; ///< at the end
    double sum = 0;         ///< of squared residuals and squared moves from the prior
    int steps = 0;          ///< taken
};

/// @param start within the bounds. @return not found where the model fails, or within `most` steps the sum
/// does not come to rest.
Estimate solve(const LeastSquares& problem, const Eigen::VectorXd& start, int most = 20);

} // namespace blinkwright::study
