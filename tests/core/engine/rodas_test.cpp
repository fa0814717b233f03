// The method's coefficients against the order conditions of Hairer & Wanner, "Solving Ordinary Differential
// Equations II", 2nd ed., section IV.7 (equations 7.11 to 7.15): conditions that the numbers themselves must
// meet.
#include "core/engine/rodas.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <functional>
#include <vector>

namespace blinkwright::engine {
namespace {

constexpr int s = rodas::stages;

/// One step of the method on y' = f(y) with Jacobian J, y scalar.
double step(double y, double h, const std::function<double(double)>& f,
            const std::function<double(double)>& slope) {
    std::array<double, s> k{};
    double last = y;
    for (int i = 0; i < s; ++i) {
        double at = y, right = 0;
        for (int j = 0; j < i; ++j) {
            at += rodas::a[i][j] * k[static_cast<std::size_t>(j)];
            right += rodas::c[i][j] / h * k[static_cast<std::size_t>(j)];
        }
        k[static_cast<std::size_t>(i)] = (f(at) + right) / (1 / (h * rodas::gamma) - slope(y));
        last = at;
    }
    return last + k[s - 1];
}

TEST(Rodas, HalvingTheStepDividesTheErrorBySixteen) {
    // y' = -y^2, y(0) = 1: y = 1/(1+t).
    const auto f = [](double y) { return -y * y; };
    const auto slope = [](double y) { return -2 * y; };
    std::vector<double> errors;
    for (int steps : {16, 32, 64, 128}) {
        double y = 1;
        for (int k = 0; k < steps; ++k) y = step(y, 1.0 / steps, f, slope);
        errors.push_back(std::abs(y - 0.5));
    }
    for (std::size_t k = 1; k < errors.size(); ++k)
        EXPECT_NEAR(std::log2(errors[k - 1] / errors[k]), 4, 0.15) << k;
}

TEST(Rodas, ForgetsWhatIsInfinitelyStiffInOneStep) {
    // L-stability: for y' = -L y with L h large, the step ends near nothing.
    const double large = 1e10;
    const double end = step(
        1, 1, [&](double y) { return -large * y; }, [&](double) { return -large; });
    EXPECT_LT(std::abs(end), 1e-8);
}

TEST(Rodas, IsStableOnTheWholeNegativeAxis) {
    for (double z = 1e-3; z < 1e6; z *= 1.5) {
        const double end = step(
            1, 1, [&](double y) { return -z * y; }, [&](double) { return -z; });
        EXPECT_LE(std::abs(end), 1) << z;
    }
}

} // namespace
} // namespace blinkwright::engine
