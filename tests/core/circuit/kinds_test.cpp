#include "core/circuit/circuit.h"

#include "tests/case_names.h"

#include <gtest/gtest.h>
#include <set>

namespace blinkwright::circuit {
namespace {

TEST(Kinds, StandAtTheirOwnPlaceInTheTable) {
    std::set<std::string_view> names;
    for (PartKind kind : allKinds) {
        EXPECT_EQ(info(kind).kind, kind);
        EXPECT_EQ(kindNamed(info(kind).name), kind);
        names.insert(info(kind).name);
    }
    const std::set<std::string_view> expected{"supply",    "timer", "resistor", "variable",
                                              "capacitor", "lamp",  "diode",    "switch"};
    EXPECT_EQ(names, expected);
    EXPECT_EQ(kindNamed("toggle"), std::nullopt);
}

TEST(Kinds, TheTimersPinsAreNumberedAsOnThePackage) {
    const KindInfo& timer = info(PartKind::timer);
    ASSERT_EQ(timer.pins.size(), 8u);
    EXPECT_EQ(timer.pins[timerPin::output].name, "3");
    EXPECT_EQ(timer.pins[timerPin::output].role, "output");
    EXPECT_EQ(timer.pins[timerPin::discharge].name, "7");
    EXPECT_EQ(timer.pins[timerPin::supply].role, "supply");
    EXPECT_EQ(pinNamed(timer, "8"), timerPin::supply);
    EXPECT_EQ(pinNamed(timer, "9"), std::nullopt);
    EXPECT_EQ(pinNamed(info(PartKind::variable), "wiper"), 2);
}

TEST(Kinds, OnlyTheMainValuesAreRequired) {
    std::set<std::string> required;
    for (PartKind kind : allKinds)
        for (const KeyInfo& key : info(kind).keys)
            if (key.required) required.insert(std::string(info(kind).name) + "." + std::string(key.key));
    const std::set<std::string> expected{"supply.voltage", "resistor.resistance", "variable.resistance",
                                         "capacitor.capacitance"};
    EXPECT_EQ(required, expected);
}

struct Judgement {
    PartKind kind;
    std::string_view key;
    Value value;
    std::string_view fault; ///< place and text; empty where the value is fine
};
std::string about(const Judgement& p) {
    const std::string value = std::string(info(p.kind).name) + "." + std::string(p.key);
    return value + (p.fault.empty() ? " is fine" : " is refused");
}
void PrintTo(const Judgement& p, std::ostream* out) {
    *out << about(p);
}

class ChecksValue : public testing::TestWithParam<Judgement> {};

TEST_P(ChecksValue, AgainstShapeAndRange) {
    const auto& [kind, key, value, fault] = GetParam();
    const auto ok = Circuit::canSet(kind, key, value);
    EXPECT_EQ(ok ? "" : ok.fault().message(), fault) << info(kind).name << "." << key;
}

const double nothing = std::numeric_limits<double>::quiet_NaN();
const double beyond = std::numeric_limits<double>::infinity();

const Judgement judgements[] = {
    {PartKind::resistor, "resistance", 1e-6, ""},
    {PartKind::resistor, "resistance", 0.0, "resistance: must be greater than 0, got 0"},
    {PartKind::resistor, "resistance", -5.0, "resistance: must be greater than 0, got -5"},
    {PartKind::resistor, "resistance", 1e-40, "resistance: must be at least 1e-30, got 1e-40"},
    {PartKind::resistor, "resistance", 1e31, "resistance: must be at most 1e+30, got 1e+31"},
    {PartKind::resistor, "resistance", beyond, "resistance: must be a finite number, got inf"},
    {PartKind::resistor, "resistance", nothing, "resistance: must be a finite number, got nan"},
    {PartKind::resistor, "resistance", Null{}, "resistance: must be a number"},
    {PartKind::resistor, "resistance", true, "resistance: must be a number"},
    {PartKind::resistor, "capacitance", 1.0, "capacitance: a resistor has no such value"},
    {PartKind::resistor, "tolerance", 0.0, ""},
    {PartKind::resistor, "tolerance", 1.0, "tolerance: must be at least 0 and less than 1, got 1"},
    {PartKind::resistor, "tolerance", nothing, "tolerance: must be at least 0 and less than 1, got nan"},
    {PartKind::capacitor, "tolerance", Interval{-0.2, 0.8}, ""},
    {PartKind::capacitor, "tolerance", Interval{-1, 0.8},
     "tolerance[0]: must be greater than -1 and at most 0, got -1"},
    {PartKind::capacitor, "tolerance", Interval{0.1, 0.8},
     "tolerance[0]: must be greater than -1 and at most 0, got 0.1"},
    {PartKind::capacitor, "tolerance", Interval{-0.1, -0.05},
     "tolerance[1]: must be between 0 and 1000, got -0.05"},
    {PartKind::capacitor, "capacitance", 0.0, "capacitance: must be greater than 0, got 0"},
    {PartKind::capacitor, "esr", 1e-3, ""},
    {PartKind::capacitor, "esr", 0.0, "esr: must be at least 0.001, got 0"},
    {PartKind::capacitor, "leakage_resistance", Null{}, ""},
    {PartKind::capacitor, "leakage_resistance", 0.0, "leakage_resistance: must be greater than 0, got 0"},
    {PartKind::capacitor, "leakage_resistance", std::string("none"),
     "leakage_resistance: must be a number or null"},
    {PartKind::capacitor, "polarised", true, ""},
    {PartKind::capacitor, "polarised", 1.0, "polarised: must be true or false"},
    {PartKind::capacitor, "initial_voltage", -3.0, ""},
    {PartKind::variable, "setting", 0.0, ""},
    {PartKind::variable, "setting", 1.0, ""},
    {PartKind::variable, "setting", 1.5, "setting: must be between 0 and 1, got 1.5"},
    {PartKind::supply, "voltage", 0.0, ""},
    {PartKind::supply, "voltage", -9.0, "voltage: must be at least 0, got -9"},
    {PartKind::supply, "resistance", 0.0, "resistance: must be greater than 0, got 0"},
    {PartKind::lamp, "colour", std::string("pure-green"), ""},
    {PartKind::lamp, "colour", std::string("pink"),
     "colour: must be one of red, amber, yellow, green, pure-green, blue, white, infrared, got \"pink\""},
    {PartKind::lamp, "ideality", 0.0, "ideality: must be greater than 0, got 0"},
    {PartKind::lamp, "series_resistance", 0.0, ""},
    {PartKind::diode, "forward_voltage", -0.7, "forward_voltage: must be greater than 0, got -0.7"},
    {PartKind::timer, "family", std::string("cmos"), ""},
    {PartKind::timer, "family", std::string("CMOS"), "family: must be one of bipolar, cmos, got \"CMOS\""},
    {PartKind::timer, "device", Overrides{{"delay", 0.0}, {"idle_offset", -4.0}}, ""},
    {PartKind::timer, "device", Overrides{{"delay", -1.0}}, "device.delay: must be at least 0, got -1"},
    {PartKind::timer, "device", Overrides{{"dely", 1.0}}, "device.dely: the timer has no such parameter"},
    {PartKind::timer, "device.delay", 1e-6, ""},
    {PartKind::timer, "device.low_resistance", 0.0, "device.low_resistance: must be greater than 0, got 0"},
    {PartKind::timer, "device.delay", std::string("x"), "device.delay: must be a number"},
    {PartKind::toggle, "presses", Intervals{{0, 1}, {1, 2}}, ""},
    {PartKind::toggle, "presses", Intervals{}, ""},
    {PartKind::toggle, "presses", Intervals{{1, 1}}, "presses[0]: must end after it begins, got 1 to 1"},
    {PartKind::toggle, "presses", Intervals{{-1, 1}}, "presses[0][0]: must be at least 0, got -1"},
    {PartKind::toggle, "presses", Intervals{{0, 2}, {1, 3}},
     "presses[1]: must not begin before the press ahead of it ends at 2, got 1"},
    {PartKind::toggle, "presses", Intervals{{0, nothing}}, "presses[0][1]: must be a finite number, got nan"},
};

INSTANTIATE_TEST_SUITE_P(Kinds, ChecksValue, testing::ValuesIn(judgements),
                         [](const auto& row) { return tests::caseName(row.index, about(row.param)); });

TEST(Kinds, EveryTimerParameterIsKnownByItsName) {
    EXPECT_EQ(timerParameters().size(), 23u);
    for (const ParameterInfo& parameter : timerParameters())
        EXPECT_EQ(findTimerParameter(parameter.name), &parameter);
    EXPECT_EQ(findTimerParameter("dealy"), nullptr);
    // A delay, a current or an offset may be idealised away; what the laws divide by may not.
    EXPECT_EQ(rangeFault(findTimerParameter("threshold_current")->range, 0), std::nullopt);
    EXPECT_EQ(rangeFault(findTimerParameter("discharge_resistance")->range, 1e-6), std::nullopt);
    EXPECT_NE(rangeFault(findTimerParameter("discharge_resistance")->range, 0), std::nullopt);
    EXPECT_NE(rangeFault(findTimerParameter("high_limit")->range, 0), std::nullopt);
}

} // namespace
} // namespace blinkwright::circuit
