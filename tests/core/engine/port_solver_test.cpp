// The port equations of random circuits, from any capacitor voltages and any first guess.
#include "core/engine/network.h"
#include "core/engine/port_solver.h"
#include "tests/core/engine/random_wiring.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace blinkwright::engine {
namespace {

/// How far u is from a + A y - Z i(u) in the worst port, over what an error of a millionth in each port
/// voltage and of rounding come to.
double worstResidual(const Reduced& r, const std::vector<double>& y, const std::vector<double>& u) {
    const auto m = static_cast<std::size_t>(r.m), n = static_cast<std::size_t>(r.n);
    std::vector<double> i(m), slope(m), guess(m, 0.0);
    r.currents(u.data(), i.data(), slope.data(), guess.data());
    double worst = 0;
    for (std::size_t k = 0; k < m; ++k) {
        double sum = r.a[k] - u[k], allowed = 1e-6 * (1 + std::abs(u[k]));
        for (std::size_t j = 0; j < n; ++j) sum += r.A[k * n + j] * y[j];
        for (std::size_t j = 0; j < m; ++j) {
            const double Z = r.Z[k * m + j];
            sum -= Z * i[j];
            allowed +=
                std::abs(Z) * (1e-6 * std::abs(slope[j]) * (1 + std::abs(u[j])) + 1e-12 * std::abs(i[j]));
        }
        worst = std::max(worst, std::abs(sum) / allowed);
    }
    return worst;
}

TEST(PortSolver, SolvesOrdinaryCircuitsFromAnyCapacitorVoltagesAndAnyFirstGuess) {
    std::mt19937 random(1); // the same on every machine
    const auto volts = [&random](double most) {
        return most * (2.0 * static_cast<double>(random()) / 4294967295.0 - 1.0);
    };
    PortSolver solver;
    int solved = 0;
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        if (tests::isExtreme(seed)) continue;
        auto board = devices::makeBoard(tests::randomCircuit(seed), circuit::PartSet::A);
        ASSERT_TRUE(board) << board.fault().message();
        Network network(board.value());
        for (const bool high : {false, true}) {
            const Reduced& r = network.reduced(std::vector<bool>(board.value().switches.size(), true),
                                               std::vector<bool>(board.value().timers.size(), high));
            const auto m = static_cast<std::size_t>(r.m);
            std::vector<double> y(static_cast<std::size_t>(r.n)), u(m), i(m), slope(m), guess(m, 0.0);
            for (const double most_V : {1.0, 20.0, 200.0}) {
                for (double& v : y) v = volts(std::min(most_V, 20.0));
                for (double& v : u) v = volts(most_V);
                ASSERT_TRUE(solver.solve(r, y.data(), u.data(), i.data(), slope.data(), guess.data()))
                    << "seed " << seed << ", outputs " << (high ? "high" : "low");
                EXPECT_LT(worstResidual(r, y, u), 1) << "seed " << seed;
                ++solved;
            }
        }
    }
    EXPECT_EQ(solved, 400 * 2 * 3);
}

} // namespace
} // namespace blinkwright::engine
