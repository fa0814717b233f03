// Whole blinkers against what handbooks and makers say of them.
#include "core/study/study.h"
#include "tests/core/study/findings_support.h"

#include <cmath>
#include <numbers>

namespace blinkwright::study {
namespace {

Study studied(const Workbench& bench) {
    return study(bench.circuit, circuit::PartSet::A, {}).value();
}

/// About one flash a second, lit for half of it, on a 9 V block of 550 mA h.
Workbench onABlock(const char* family, const char* lampResistance) {
    Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
    bench.part(circuit::PartKind::resistor, "R3", {{"resistance", 560.0}})
        .part(circuit::PartKind::lamp, "D1");
    bench.net("output", {"U1:3", "R3:1"}).net("lamp", {"R3:2", "D1:anode"}).net("ground", {"D1:cathode"});
    bench.set(std::string("U1.family=") + family).set(std::string("R3.resistance=") + lampResistance);
    return bench.set("BT1.capacity=550mAh");
}

// A block of 6LR61 gives 500 to 580 mA h at low drain (from memory). A bipolar timer takes some 5.5 mA by
// itself at 9 V (TI NE555, SLFS022: 3 mA at 5 V, 10 mA at 15 V, output low; 2 and 9 mA, output high), a CMOS
// one some 0.25 mA (TI TLC555, SLFS043C: 0.17 mA at 5 V, 0.36 mA at 15 V). With 10 mA for half of the time a
// block lasts some 52 h, and some 105 h; R1 at pin 7 takes 0.9 mA more while the output is low.
TEST(PublishedPoints, ABlockLastsTwoDaysWithABipolarTimerAndTwiceThatWithACmosOne) {
    const Study bipolar = studied(onABlock("bipolar", "560"));
    EXPECT_NEAR(*bipolar.readings.lamps[0].peak_A, 10e-3, 0.7e-3);
    EXPECT_NEAR(*bipolar.readings.supply->batteryLife_s / 3600, 52, 0.1 * 52);
    const Study cmos = studied(onABlock("cmos", "680"));
    const double lamp_mA = 1e3 * *cmos.readings.lamps[0].mean_A;
    EXPECT_NEAR(*cmos.readings.supply->batteryLife_s / 3600, 550 / (lamp_mA + 0.25 + 0.9 * 0.47),
                0.03 * 550 / lamp_mA);
}

// Heat of the chip: supply voltage times its own current, and what the output drops times what it carries.
// With 9 V, 5.5 mA and 20 mA sourced half of the time at a drop of 1.5 V: 50 mW + 15 mW. In a DIP-8 of 85 K/W
// (TI P package; ST) that is 5.5 K above the room: one lamp never cooks a timer.
TEST(PublishedPoints, OneLampOfTwentyMilliamperesWarmsTheTimerBySixKelvin) {
    const Study s = studied(onABlock("bipolar", "270"));
    EXPECT_NEAR(*s.readings.lamps[0].peak_A, 20e-3, 1.5e-3);
    const auto timer = std::find_if(s.readings.parts.begin(), s.readings.parts.end(),
                                    [](const PartReading& part) { return part.ref == "U1"; });
    EXPECT_NEAR(*timer->meanPower_W, 65e-3, 8e-3);
    EXPECT_NEAR(85 * *timer->meanPower_W, 5.5, 0.7);
    EXPECT_EQ(find(s.findings, "timer-hot"), nullptr);
}

// The charging current at the threshold level is Vcc / (3 (R1 + R2)). At 9 V and 471 kohm that is 6.4 uA: an
// electrolytic whose leakage there is 3 uA (Vishay 038 RSU, Doc 28309: 0.01 CV or 3 uA, whichever is greater)
// makes the high phase 1.53 times as long; one of 16 uA never gets there. By the RC law with a load RL: the
// capacitor aims at Vcc RL / (R1 + R2 + RL) through both in parallel.
TEST(PublishedPoints, AnElectrolyticsLeakageStretchesAndThenStallsAMegohmBlinker) {
    Workbench bench = plainAstable(1e3, 470e3, 1e-5);
    bench.set("U1.device.threshold_current=0").set("U1.device.trigger_current=0");
    bench.set("U1.device.discharge_leakage=0").set("C1.leakage_resistance=1e15");
    const double tight_s = studied(bench).readings.timers[0].settled->high_s;
    bench.set("C1.leakage_resistance=2M"); // 3 uA at 6 V
    const Study leaky = studied(bench);
    const double r = 471e3, load = 2e6, aim = 9 * load / (r + load), tau = r * load / (r + load) * 1e-5;
    EXPECT_NEAR(leaky.readings.timers[0].settled->high_s, tau * std::log((aim - 3) / (aim - 6)),
                2e-3 * tight_s);
    EXPECT_NEAR(tight_s, r * 1e-5 * std::numbers::ln2, 2e-3 * tight_s);
    EXPECT_NE(find(leaky.findings, "leakage-too-large"), nullptr);
    bench.set("C1.leakage_resistance=375k"); // 16 uA at 6 V
    const Study stalled = studied(bench);
    EXPECT_EQ(stalled.readings.verdict, Verdict::settlesHigh);
    ASSERT_NE(find(stalled.findings, "leakage-too-large"), nullptr);
    EXPECT_EQ(find(stalled.findings, "leakage-too-large")->severity, Severity::fault);
}

// For two lamps behind a capacitor the swing of the output must be more than both forward voltages together.
// A bipolar timer at 5 V swings some 3.5 V: two reds of 2.0 V stay dark; blue and white want more than 6.4 V.
TEST(PublishedPoints, APairStaysDarkWhereTheSwingIsLessThanBothForwardVoltages) {
    Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
    bench.part(circuit::PartKind::resistor, "R3", {{"resistance", 220.0}})
        .part(circuit::PartKind::capacitor, "C9", {{"capacitance", 1e-3}})
        .part(circuit::PartKind::lamp, "D1")
        .part(circuit::PartKind::lamp, "D2");
    bench.net("output", {"U1:3", "R3:1"}).net("coupling", {"R3:2", "C9:plus"});
    bench.net("lamps", {"C9:minus", "D1:anode", "D2:cathode"}).net("ground", {"D1:cathode", "D2:anode"});
    bench.set("D1.colour=blue").set("D2.colour=white").set("BT1.voltage=6");
    EXPECT_NE(find(studied(bench).findings, "pair-swing-too-small"), nullptr);
    bench.set("D1.colour=red").set("D2.colour=red").set("BT1.voltage=9");
    EXPECT_EQ(find(studied(bench).findings, "pair-swing-too-small"), nullptr);
}

} // namespace
} // namespace blinkwright::study
