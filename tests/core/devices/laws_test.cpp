#include "core/devices/laws.h"

#include <gtest/gtest.h>

#include <functional>
#include <limits>
#include <vector>

namespace blinkwright::devices {
namespace {

const TimerSheet bipolar = timerSheet(TimerFamily::bipolar, 9, {});
const TimerSheet cmos = timerSheet(TimerFamily::cmos, 9, {});
constexpr double infinity = std::numeric_limits<double>::infinity();

JunctionLaw red() {
    const auto sheet = lampSheet("red").value();
    return JunctionLaw::through(sheet.forward_voltage, sheet.test_current, sheet.ideality,
                                sheet.series_resistance)
        .value();
}

/// Every law with a voltage, as one function of it.
struct Case {
    const char* name;
    std::function<Law(double)> law;
};
std::vector<Case> allLaws() {
    return {
        {"junction", [](double v) { return junction(red(), v); }},
        {"output high, bipolar",
         [](double v) {
             double u = 0;
             return outputHighBipolar(outputHighCurve(bipolar), v, u);
         }},
        {"output low, bipolar", [](double v) { return outputLowBipolar(bipolar, v); }},
        {"output low, CMOS", [](double v) { return outputCmos(cmos.low_resistance, cmos.low_limit, v); }},
        {"discharge on, bipolar", [](double v) { return discharge(bipolar, true, v); }},
        {"discharge on, CMOS", [](double v) { return discharge(cmos, true, v); }},
        {"discharge off", [](double v) { return discharge(bipolar, false, v); }},
        {"own current, output high", [](double v) { return idle(bipolar, false, v); }},
        {"own current, output low", [](double v) { return idle(bipolar, true, v); }},
        {"input pair", [](double v) { return conductingSide(bipolar.trigger_current, v); }},
    };
}

TEST(Laws, SlopeIsTheDerivativeOfTheCurrent) {
    for (const auto& [name, law] : allLaws()) {
        for (const double v : {-1.3, -0.02, 0.013, 0.05, 0.7, 1.31, 1.9, 2.01, 2.4, 4.9}) {
            const double h = 1e-5;
            const double difference = (law(v + h).current - law(v - h).current) / (2 * h);
            const double slope = law(v).slope;
            EXPECT_NEAR(slope, difference, 1e-5 * std::abs(difference) + 1e-11)
                << name << " at " << v << " V";
        }
    }
}

TEST(Laws, AreFiniteAndNeverFallWithVoltage) {
    for (const auto& [name, law] : allLaws()) {
        double before = -infinity;
        for (const double v : {-1e150, -1e5, -20.0, -1.0, 0.0, 1.0, 20.0, 1e5, 1e150}) {
            const Law at = law(v);
            EXPECT_TRUE(std::isfinite(at.current) && std::isfinite(at.slope)) << name << " at " << v;
            EXPECT_GE(at.slope, 0) << name << " at " << v;
            EXPECT_GE(at.current, before) << name << " at " << v;
            before = at.current;
        }
    }
}

TEST(Laws, CarryNothingAtNoVoltage) {
    double u = 0;
    EXPECT_EQ(junction(red(), 0).current, 0);
    EXPECT_EQ(outputHighBipolar(outputHighCurve(bipolar), 0, u).current, 0);
    EXPECT_EQ(outputCmos(80.0, 0.09, 0.0).current, 0);
    EXPECT_EQ(discharge(bipolar, true, 0).current, 0);
    EXPECT_EQ(discharge(cmos, true, 0).current, 0);
    EXPECT_EQ(discharge(bipolar, false, 0).current, 0);
    // The knee's foot is e^-100 of its width: nothing beside any current.
    EXPECT_LT(outputLowBipolar(bipolar, 0).current, 1e-40);
}

TEST(Laws, SmoothStepsKeepTheirLimitsForHugeArguments) {
    EXPECT_EQ(logistic(1e300), 1);
    EXPECT_EQ(logistic(-1e300), 0);
    EXPECT_DOUBLE_EQ(logistic(0.7) + logistic(-0.7), 1);
    EXPECT_EQ(softPlus(1e300).value, 1e300);
    EXPECT_EQ(softPlus(-1e300).value, 0);
    EXPECT_DOUBLE_EQ(softPlus(0.0).value, std::log(2.0));
    EXPECT_DOUBLE_EQ(softPlus(-40.0).value, std::exp(-40.0));
    EXPECT_EQ(softLimit(1e300, 0.2).value, 0.2);
    EXPECT_EQ(softLimit(-1e300, 0.2).value, -0.2);
    EXPECT_EQ(softLimit(3.0, infinity).value, 3);
    EXPECT_EQ(softLimit(3.0, infinity).slope, 1);
    EXPECT_EQ(softLimit(3.0, 0.0).value, 0);
    EXPECT_DOUBLE_EQ(softLimit(1.0, 1.0).value, std::sqrt(0.5));
}

TEST(Laws, JunctionGoesOnAsItsTangentPastTenAmperes) {
    const JunctionLaw law = red();
    const double knee = law.nVt * std::log(10 / law.saturation);
    const Law below = junction(law, knee - 1e-7);
    const Law above = junction(law, knee + 1e-7);
    EXPECT_NEAR(below.current, 10, 1e-4);
    EXPECT_NEAR(above.slope, below.slope, 1e-4 * below.slope);
    EXPECT_DOUBLE_EQ(junction(law, knee + 1).slope, junction(law, knee + 2).slope);
    EXPECT_NEAR(junction(law, knee + 1).current, 10 + 10 / law.nVt, 1e-6);
}

TEST(Laws, JunctionVoltageUndoesTheJunction) {
    for (const double current : {-1e-9, 0.0, 1e-12, 1e-6, 0.01, 3.0, 25.0})
        EXPECT_NEAR(junction(red(), junctionVoltage(red(), current)).current, current,
                    1e-12 * std::abs(current) + 1e-24);
}

TEST(Laws, LampCarriesItsTestCurrentAtItsForwardVoltage) {
    for (const auto colour : lampColours()) {
        const auto sheet = lampSheet(colour).value();
        const auto law = JunctionLaw::through(sheet.forward_voltage, sheet.test_current, sheet.ideality,
                                              sheet.series_resistance)
                             .value();
        const double u = sheet.forward_voltage - sheet.series_resistance * sheet.test_current;
        EXPECT_NEAR(junction(law, u).current, sheet.test_current, 1e-15) << colour;
    }
}

TEST(Laws, RefuseALampWhoseSeriesResistanceAloneDropsMore) {
    const auto law = JunctionLaw::through(2.0, 0.02, 2.0, 150);
    ASSERT_FALSE(law);
    EXPECT_EQ(law.fault().place, "series_resistance");
    EXPECT_NE(law.fault().text.find("3 V"), std::string::npos) << law.fault().text;
}

TEST(Laws, RefuseAJunctionTooSteepForNumbers) {
    const auto law = JunctionLaw::through(60, 0.01, 1.0, 1);
    ASSERT_FALSE(law);
    EXPECT_EQ(law.fault().place, "forward_voltage");
}

TEST(Laws, OutputHighSolvesItsEquationFromAnyWarmStart) {
    const OutputHighCurve curve = outputHighCurve(bipolar);
    const JunctionLaw inner{.saturation = curve.saturation, .nVt = OutputHighCurve::nVt};
    for (const double current : {1e-9, 1e-6, 1e-3, 0.02, 0.1, 0.2, 0.5, 3.0}) {
        const double v = junctionVoltage(inner, current) + curve.resistance * current +
                         curve.cubic * current * current * current;
        for (double u : {0.0, -3.0, 1.28, 5.0, 1e9}) {
            EXPECT_NEAR(outputHighBipolar(curve, v, u).current, current, 2e-13 * current) << "from " << u;
            EXPECT_NEAR(u, junctionVoltage(inner, current), 1e-13);
        }
    }
}

TEST(Laws, OutputHighDoesNotSinkAboveTheSupply) {
    const OutputHighCurve curve = outputHighCurve(bipolar);
    double u = 1.3;
    EXPECT_NEAR(outputHighBipolar(curve, -5, u).current, -5 * junctionShunt, 1e-13);
}

TEST(Laws, OutputHighMayBeIdeal) {
    TimerSheet ideal = bipolar;
    ideal.high_drop_1mA = ideal.high_resistance = ideal.high_cubic = 0;
    double u = 0;
    EXPECT_NEAR(outputHighBipolar(outputHighCurve(ideal), 1e-6, u).current, 1e-3, 1e-9);
}

} // namespace
} // namespace blinkwright::devices
