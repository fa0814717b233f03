// The least squares by themselves, against forms of the answer that are worked out another way.
#include "core/study/least_squares.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>
#include <random>

namespace blinkwright::study {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

LeastSquares linear(const MatrixXd& a, const VectorXd& b, double lowest = -1e9) {
    return {[=](const VectorXd& x) { return std::optional<VectorXd>(a * x - b); },
            [=](const VectorXd&) { return std::optional<MatrixXd>(a); },
            VectorXd::Constant(a.cols(), lowest)};
}

// The conditional distribution of normal variables (any text on multivariate statistics; JCGM 102:2011 has
// the propagation): with prior covariance I and data b = A x + noise of covariance I, the mean is
// A' (A A' + I)^-1 b and the covariance I - A' (A A' + I)^-1 A. It inverts a matrix of the data's size, where
// the solver's normal equations are of the unknowns' size.
TEST(LeastSquares, ALinearProblemHasTheClosedFormOfConditionalNormalVariables) {
    std::mt19937 random(3);
    std::normal_distribution<double> noise(0, 1);
    for (const auto& [data, unknowns] : {std::pair{2, 5}, {5, 2}, {1, 4}, {3, 3}}) {
        const MatrixXd a = MatrixXd::NullaryExpr(data, unknowns, [&] { return 10 * noise(random); });
        const VectorXd b = VectorXd::NullaryExpr(data, [&] { return 10 * noise(random); });
        const MatrixXd gain = a.transpose() * (a * a.transpose() + MatrixXd::Identity(data, data)).inverse();
        const Estimate e = solve(linear(a, b), VectorXd::Zero(unknowns));
        ASSERT_TRUE(e.found);
        EXPECT_LT((e.at - gain * b).norm(), 1e-9 * (1 + b.norm()));
        const MatrixXd covariance = MatrixXd::Identity(unknowns, unknowns) - gain * a;
        EXPECT_LT((e.covariance - covariance).norm(), 1e-9);
        // What is left is the distance of the data from what the prior alone predicts.
        const double sum = b.dot((a * a.transpose() + MatrixXd::Identity(data, data)).inverse() * b);
        EXPECT_NEAR(e.sum, sum, 1e-9 * (1 + sum));
    }
}

// Two unknowns, one datum x + y = -4 with uncertainty 1, x not below 0: x stays there, and y alone has
// (y + 4)^2 + y^2 least at -2.
TEST(LeastSquares, AnUnknownAtItsBoundLeavesTheRestToTheOthers) {
    LeastSquares problem = linear(MatrixXd{{1, 1}}, VectorXd{{-4}});
    problem.lowest = VectorXd{{0, -1e9}};
    const Estimate e = solve(problem, VectorXd::Zero(2));
    ASSERT_TRUE(e.found);
    EXPECT_DOUBLE_EQ(e.at[0], 0);
    EXPECT_NEAR(e.at[1], -2, 1e-12);
}

// Curved: one datum exp(x) = 20 known to 0.1. The sum's derivative is 0 at the answer.
TEST(LeastSquares, ACurvedProblemEndsWhereTheSumHasNoSlope) {
    const LeastSquares problem{
        [](const VectorXd& x) { return std::optional<VectorXd>(VectorXd{{(std::exp(x[0]) - 20) / 0.1}}); },
        [](const VectorXd& x) { return std::optional<MatrixXd>(MatrixXd{{std::exp(x[0]) / 0.1}}); },
        VectorXd::Constant(1, -1e9)};
    const Estimate e = solve(problem, VectorXd::Zero(1), 40);
    ASSERT_TRUE(e.found);
    const double x = e.at[0], slope = (std::exp(x) - 20) / 0.1 * std::exp(x) / 0.1 + x;
    EXPECT_NEAR(slope / (std::exp(x) / 0.1), 0, 1e-2); // in standard deviations of the answer
    EXPECT_NEAR(x, std::log(20.0), 1e-3);
}

TEST(LeastSquares, AModelWithoutAnAnswerIsNoEstimate) {
    LeastSquares problem = linear(MatrixXd{{1, 1}}, VectorXd{{1}});
    problem.residuals = [](const VectorXd&) { return std::optional<VectorXd>(); };
    EXPECT_FALSE(solve(problem, VectorXd::Zero(2)).found);
}

} // namespace
} // namespace blinkwright::study
