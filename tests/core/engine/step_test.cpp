#include "core/engine/phi.h"
#include "core/engine/stepper.h"
#include "core/engine/transient.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::engine {
namespace {

using circuit::PartKind;

TEST(Phi, MeetsItsOwnSeriesInLongDouble) {
    for (double z = -60; z <= 8; z += 0.137) {
        const auto phi = phiFunctions(z);
        for (int k = 0; k < 6; ++k) {
            // phi_k(z) = sum over j of z^j/(j+k)!; where that cancels badly, by the recursion in long double.
            long double exact = 0;
            if (z > -8) {
                long double term = 1;
                for (int j = 2; j <= k; ++j) term /= j;
                for (int j = 0; j < 120; ++j) {
                    exact += term;
                    term *= static_cast<long double>(z) / (j + 1 + k);
                }
            } else {
                exact = std::exp(static_cast<long double>(z));
                long double inverse = 1;
                for (int j = 0; j < k; ++j) {
                    exact = (exact - inverse) / static_cast<long double>(z);
                    inverse /= j + 1;
                }
            }
            EXPECT_NEAR(phi[static_cast<std::size_t>(k)] / static_cast<double>(exact), 1, 1e-12)
                << z << " " << k;
        }
    }
}

/// A capacitor charged through a resistor against a lamp across it: one state, strongly nonlinear at the end.
Workbench clamped() {
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", 5.0}, {"resistance", 0.5}})
        .part(PartKind::resistor, "R1", {{"resistance", 1e3}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}})
        .part(PartKind::lamp, "D1");
    bench.net("supply", {"BT1:plus", "R1:1"}).net("ground", {"BT1:minus", "C1:minus", "D1:cathode"});
    bench.net("clamp", {"R1:2", "C1:plus", "D1:anode"});
    return bench;
}

/// C1's voltage after `span` in equal steps, by one kind of march. The lamp is about to take over.
double marched(const Reduced& reduced, double span, int steps, bool exponential) {
    const double start = 1.5, h = span / steps;
    if (exponential) {
        ExponentialMarch march(1e-12, 1, true);
        EXPECT_TRUE(march.enter(reduced, &start));
        for (int k = 0; k < steps; ++k) {
            EXPECT_TRUE(std::isfinite(march.attempt(h)));
            EXPECT_TRUE(march.accept());
        }
        return march.baseY()[0];
    }
    RosenbrockMarch march;
    EXPECT_TRUE(march.enter(reduced, &start));
    for (int k = 0; k < steps; ++k) {
        EXPECT_TRUE(std::isfinite(march.attempt(h, 1, 1)));
        EXPECT_TRUE(march.accept());
    }
    return march.base().y()[0];
}

class StepOrder : public testing::TestWithParam<bool> {};

TEST_P(StepOrder, HalvingTheStepDividesTheErrorBySixteen) {
    Network network(clamped().board());
    const Reduced& reduced = network.reduced({}, {});
    const double span = 0.4e-3;
    const double exact = marched(reduced, span, 4096, GetParam());
    double last = 0;
    const int fewest = GetParam() ? 16 : 32; // the exponential step comes to rounding errors sooner
    for (int steps = fewest; steps <= 4 * fewest; steps *= 2) {
        const double error = std::abs(marched(reduced, span, steps, GetParam()) - exact);
        if (last > 0) {
            EXPECT_NEAR(std::log2(last / error), 4, 0.4) << steps;
        }
        last = error;
    }
}

TEST_P(StepOrder, BothKindsOfStepComeToTheSame) {
    Network network(clamped().board());
    const Reduced& reduced = network.reduced({}, {});
    EXPECT_NEAR(marched(reduced, 0.4e-3, 4096, GetParam()), marched(reduced, 0.4e-3, 4096, !GetParam()),
                1e-11);
}

INSTANTIATE_TEST_SUITE_P(Kinds, StepOrder, testing::Bool(), [](const testing::TestParamInfo<bool>& kind) {
    return kind.param ? "Exponential" : "Rosenbrock";
});

TEST(Transient, BoardOfManyCapacitorsSwitchesAsItsSumDoes) {
    // Thirteen bypass capacitors side by side are one of their sum; they are too many for the exponential
    // step.
    Workbench one = tests::astableWithLamp({}, 470), many = one;
    one.part(PartKind::capacitor, "C99", {{"capacitance", 13e-7}, {"esr", 0.2 / 13}});
    one.net("supply", {"C99:plus"}).net("ground", {"C99:minus"});
    for (int k = 0; k < 13; ++k) {
        const std::string ref = "C" + std::to_string(50 + k);
        many.part(PartKind::capacitor, ref, {{"capacitance", 1e-7}, {"esr", 0.2}});
        many.net("supply", {(ref + ":plus").c_str()}).net("ground", {(ref + ":minus").c_str()});
    }
    const auto a = simulate(one.board(), {.flashes = 3, .accuracy = 1e-7}).switchings;
    const auto b = simulate(many.board(), {.flashes = 3, .accuracy = 1e-7}).switchings;
    ASSERT_EQ(a.size(), b.size());
    ASSERT_EQ(a.size(), 6u);
    for (std::size_t k = 0; k < a.size(); ++k) EXPECT_NEAR(a[k].time_s / b[k].time_s, 1, 2e-7) << k;
}

} // namespace
} // namespace blinkwright::engine
