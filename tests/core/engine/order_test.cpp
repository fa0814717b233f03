// The error of a whole run falls as the method's order says: order 4 with an error estimate of order 3, so
// that an asked accuracy ten times finer takes 10^(1/4) times the steps and leaves about a tenth of the
// error. Stated for the order, not for the constants of one implementation.
#include "tests/core/engine/proof_support.h"

#include <gtest/gtest.h>

namespace blinkwright::engine {
namespace {

using circuit::PartKind;
using namespace proofs;

struct Sample {
    double accuracy = 0, steps = 0, error = 0;
};

/// Slope of the line through (log x, log y), by least squares.
template <class X, class Y>
double slope(const std::vector<Sample>& samples, const X& x, const Y& y) {
    double n = 0, sx = 0, sy = 0, sxx = 0, sxy = 0;
    for (const Sample& s : samples) {
        const double u = std::log(x(s)), v = std::log(y(s));
        n += 1;
        sx += u;
        sy += v;
        sxx += u * u;
        sxy += u * v;
    }
    return (n * sxy - sx * sy) / (n * sxx - sx * sx);
}
double stepsOverAccuracy(const std::vector<Sample>& s) {
    return slope(
        s, [](const Sample& a) { return a.accuracy; }, [](const Sample& a) { return a.steps; });
}
double errorOverAccuracy(const std::vector<Sample>& s) {
    return slope(
        s, [](const Sample& a) { return a.accuracy; }, [](const Sample& a) { return a.error; });
}
double errorOverSteps(const std::vector<Sample>& s) {
    return slope(
        s, [](const Sample& a) { return a.steps; }, [](const Sample& a) { return a.error; });
}

/// Two lamps take over one after the other while two capacitors charge; the timer does not switch at all.
devices::Board smooth() {
    Workbench b = tests::astable({.r1_ohm = 1e6, .r2_ohm = 1e6, .c_farad = 1}, true);
    b.part(PartKind::resistor, "R10", {{"resistance", 1e3}})
        .part(PartKind::resistor, "R11", {{"resistance", 2.2e3}})
        .part(PartKind::capacitor, "C10", {{"capacitance", 1e-6}})
        .part(PartKind::capacitor, "C11", {{"capacitance", 4.7e-6}})
        .part(PartKind::lamp, "D1")
        .part(PartKind::lamp, "D2");
    b.net("supply", {"R10:1"}).net("a", {"R10:2", "C10:plus", "D1:anode"});
    b.net("b", {"D1:cathode", "C11:plus", "R11:1"}).net("c", {"R11:2", "D2:anode"});
    b.net("ground", {"C10:minus", "C11:minus", "D2:cathode"});
    return b.board();
}

TEST(Order, IsFourWhereNothingSwitches) {
    const auto board = smooth();
    for (const double span : {3e-3, 20e-3}) {
        const auto endOf = [&](double accuracy, Sample& sample) {
            const engine::Run run = simulate(board, {.accuracy = accuracy, .longest_s = span});
            EXPECT_TRUE(run.switchings.empty());
            sample.accuracy = accuracy;
            sample.steps = static_cast<double>(run.report.steps);
            Instant at;
            run.wave.instant(span, Side::before, at);
            return std::pair{at.capacitor_V[1], at.capacitor_V[2]};
        };
        Sample finest;
        const auto exact = endOf(1e-10, finest);
        std::vector<Sample> samples;
        for (double accuracy = 1e-6; accuracy > 2e-9; accuracy /= std::sqrt(10.0)) {
            Sample s;
            const auto end = endOf(accuracy, s);
            s.error = std::max(std::abs(end.first - exact.first), std::abs(end.second - exact.second));
            EXPECT_LT(s.error, 9 * accuracy);
            samples.push_back(s);
        }
        // A method of order 3 has 1/3 and 3 here, one of order 5 has 1/5 and 5.
        EXPECT_NEAR(stepsOverAccuracy(samples), -0.25, 0.025) << span;
        EXPECT_GT(errorOverSteps(samples), -5) << span;
        EXPECT_LT(errorOverSteps(samples), -3.3) << span;
        EXPECT_NEAR(errorOverAccuracy(samples), 1, 0.25) << span;
    }
}

TEST(Order, ShowsInSwitchingTimesAndLampCharges) {
    const auto board = tests::lampPair({}, 220, 1e-3).board();
    const auto runOf = [&](double accuracy) { return simulate(board, {.flashes = 6, .accuracy = accuracy}); };
    const auto chargeOf = [](const engine::Run& run) {
        return integral(run.wave, [](const Instant& at) { return at.junction_A[0]; });
    };
    const engine::Run finest = runOf(1e-10);
    const double charge = chargeOf(finest);
    std::vector<Sample> samples;
    for (double accuracy = 1e-4; accuracy > 5e-10; accuracy /= std::sqrt(10.0)) {
        const engine::Run run = runOf(accuracy);
        ASSERT_EQ(run.switchings.size(), finest.switchings.size());
        Sample s{accuracy, static_cast<double>(run.report.steps)};
        for (std::size_t k = 0; k < run.switchings.size(); ++k)
            s.error = std::max(s.error, std::abs(run.switchings[k].time_s / finest.switchings[k].time_s - 1));
        EXPECT_LE(s.error, accuracy);
        EXPECT_LE(std::abs(chargeOf(run) / charge - 1), accuracy);
        samples.push_back(s);
    }
    // In proportion; each phase's first and last step make the fall a little steeper.
    const double fall = errorOverAccuracy(samples);
    EXPECT_GT(fall, 0.8);
    EXPECT_LT(fall, 1.5);
    // Where the steps between switchings are many, their number grows as the order says.
    EXPECT_NEAR(stepsOverAccuracy({samples.end() - 5, samples.end()}), -0.25, 0.04);
}

} // namespace
} // namespace blinkwright::engine
