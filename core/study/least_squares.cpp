#include "core/study/least_squares.h"

#include <Eigen/Dense>

#include <vector>

namespace blinkwright::study {

namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

// At rest: neither a move of a few thousandths of a standard deviation nor a noticeable gain is left.
constexpr double restMove = 3e-3, restGain = 1e-5;
constexpr double firstDamping = 1e-3, mostDamping = 1e8;
constexpr int mostFull = 8; ///< full steps that may be tried

/// The step that minimises the linearised sum, with unknowns held at their bounds where it would pass them.
VectorXd stepOf(const MatrixXd& information, const VectorXd& gradient, const VectorXd& at,
                const VectorXd& lowest) {
    const Eigen::Index n = at.size();
    VectorXd step = VectorXd::Zero(n);
    std::vector<Eigen::Index> free;
    for (Eigen::Index k = 0; k < n; ++k) free.push_back(k);
    while (!free.empty()) {
        const VectorXd pull = -(gradient + information * step)(free);
        // `step` of the free ones is 0 here: what the held ones move is in the pull.
        const VectorXd part = information(free, free).ldlt().solve(pull);
        std::vector<Eigen::Index> still;
        for (std::size_t k = 0; k < free.size(); ++k)
            if (at[free[k]] + part[static_cast<Eigen::Index>(k)] >= lowest[free[k]])
                still.push_back(free[k]);
            else
                step[free[k]] = lowest[free[k]] - at[free[k]];
        if (still.size() == free.size()) {
            step(free) = part;
            break;
        }
        free = std::move(still);
    }
    return step;
}

double sumOf(const VectorXd& residuals, const VectorXd& at) {
    return residuals.squaredNorm() + at.squaredNorm();
}

/// One linearisation of the problem.
struct Slopes {
    MatrixXd information;
    VectorXd gradient;
};
std::optional<Slopes> slopesAt(const LeastSquares& problem, const VectorXd& at, const VectorXd& residuals) {
    const auto slopes = problem.slopes(at);
    if (!slopes) return std::nullopt;
    const MatrixXd prior = MatrixXd::Identity(at.size(), at.size());
    return Slopes{slopes->transpose() * *slopes + prior, slopes->transpose() * residuals + at};
}

struct Place {
    VectorXd at, residuals;
    double sum() const { return sumOf(residuals, at); }
};

/// Full steps, even uphill: where the data know a product of unknowns much better than each of them, the way
/// down leads along a narrow bent valley, and full steps cross its bends. @return whether they came to rest.
bool stepFully(const LeastSquares& problem, Place& place, int& steps) {
    Place now = place;
    for (int k = 0; k < mostFull; ++k, ++steps) {
        const auto slopes = slopesAt(problem, now.at, now.residuals);
        if (!slopes) return false;
        const VectorXd step = stepOf(slopes->information, slopes->gradient, now.at, problem.lowest);
        const auto there = problem.residuals(now.at + step);
        if (!there) return false;
        now = {now.at + step, *there};
        if (step.norm() >= restMove) continue;
        if (now.sum() > place.sum()) return false; // a summit, or another valley
        place = now;
        return true;
    }
    return false;
}

/// Steps that never go uphill, shorter where they must.
bool stepDamped(const LeastSquares& problem, Place& place, int most, int& steps) {
    double damping = firstDamping;
    for (; steps < most; ++steps) {
        const auto slopes = slopesAt(problem, place.at, place.residuals);
        if (!slopes) return false;
        for (;;) {
            const MatrixXd damped =
                slopes->information + MatrixXd(damping * slopes->information.diagonal().asDiagonal());
            const VectorXd step = stepOf(damped, slopes->gradient, place.at, problem.lowest);
            const auto there = problem.residuals(place.at + step);
            const Place next{place.at + step, there.value_or(place.residuals)};
            const bool lower = there && next.sum() <= place.sum();
            const bool rest =
                step.norm() < restMove || (lower && place.sum() - next.sum() < restGain * (1 + next.sum()));
            if (lower) {
                place = next;
                damping *= 0.1;
            } else {
                damping *= 10;
            }
            if (rest) return true; // what is left is rounding
            if (damping > mostDamping) return false;
            if (lower) break;
        }
    }
    return false;
}

} // namespace

Estimate solve(const LeastSquares& problem, const VectorXd& start, int most) {
    Estimate e;
    e.at = start;
    const auto residuals = problem.residuals(start);
    if (!residuals) return e;
    Place place{start, *residuals};
    e.found = stepFully(problem, place, e.steps) || stepDamped(problem, place, e.steps + most, e.steps);
    e.at = place.at;
    e.sum = place.sum();
    if (!e.found) return e;
    const auto slopes = problem.slopes(e.at);
    e.found = slopes.has_value();
    if (!e.found) return e;
    e.slopes = *slopes;
    const MatrixXd prior = MatrixXd::Identity(start.size(), start.size());
    e.covariance = (e.slopes.transpose() * e.slopes + prior).ldlt().solve(prior);
    return e;
}

} // namespace blinkwright::study
