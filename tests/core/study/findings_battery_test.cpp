#include "tests/core/study/findings_support.h"

namespace blinkwright::study {
namespace {

/// A battery of 6 V at the start and 3.2 V at its end, 2 A h, whose circuit takes 10 mA.
Readings takingTenMilliamperes(Workbench& bench) {
    bench.set("BT1.voltage=6").set("BT1.end_voltage=3.2").set("BT1.capacity=7200");
    Readings readings = blinking(bench);
    readings.supply = SupplyReading{.ref = "BT1", .mean_A = 10e-3};
    return readings;
}

// From 6 V evenly to 3.2 V: 4.5 V is reached after 1.5 / 2.8 of the capacity, 2 A h / 10 mA being 200 h.
TEST(BatteryFindings, SayWhenTheBipolarTimerLeavesItsRange) {
    Workbench bench = sound();
    const Readings readings = takingTenMilliamperes(bench);
    const auto all = findingsOf(bench.board(), &readings);
    const Finding* found = find(all, "battery-outlasts-timer");
    ASSERT_NE(found, nullptr);
    EXPECT_NEAR(found->number.value(), 1.5 / 2.8 * 200 * 3600, 1e-6 * 200 * 3600);
    EXPECT_DOUBLE_EQ(found->limit.value(), 200 * 3600);
    EXPECT_NE(found->text.find("110\u00A0h"), std::string::npos) << found->text; // 107 h to two digits
}

TEST(BatteryFindings, SayNothingWhereTheTimerOutlastsTheBattery) {
    Workbench bench = sound();
    Readings readings = takingTenMilliamperes(bench);
    bench.set("BT1.end_voltage=4.5");
    EXPECT_EQ(find(findingsOf(bench.board(), &readings), "battery-outlasts-timer"), nullptr);
    bench.set("BT1.end_voltage=3.2").set("U1.family=cmos"); // works from 2 V
    EXPECT_EQ(find(findingsOf(bench.board(), &readings), "battery-outlasts-timer"), nullptr);
}

} // namespace
} // namespace blinkwright::study
