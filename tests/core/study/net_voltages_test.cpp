#include "core/study/net_voltages.h"

#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::study {
namespace {

using circuit::NetId;
using circuit::PartKind;
using tests::astable;

Study studyOf(const Workbench& bench) {
    return study(bench.circuit, circuit::PartSet::A, {}).value();
}
NetId net(const Workbench& bench, const char* name) {
    return bench.circuit.findNet(name)->id;
}

TEST(NetVoltages, DividesASupplyByItsResistors) {
    // A divider of 20 k over 10 k behind 0.5 ohm. Nothing else is on it: Ohm's law gives each net.
    Workbench bench = astable({}, true);
    bench.part(PartKind::resistor, "R8", {{"resistance", 20e3}})
        .part(PartKind::resistor, "R9", {{"resistance", 10e3}});
    bench.net("supply", {"R8:1"}).net("middle", {"R8:2", "R9:1"}).net("ground", {"R9:2"});
    const Study s = studyOf(bench);
    for (const double time_s : {0.0, 0.1, 1.234}) {
        const auto now = netVoltages(s, time_s);
        EXPECT_EQ(now.at(net(bench, "ground")), 0);
        const double rail = now.at(net(bench, "supply"));
        EXPECT_NEAR(rail, 9, 0.01);
        EXPECT_NEAR(now.at(net(bench, "middle")), rail / 3, 1e-9);
    }
}

TEST(NetVoltages, FollowsTheChargingCurveOfTheTimingCapacitor) {
    // From power-on the capacitor charges through R1 + R2: v = rail (1 - exp(-t / ((R1 + R2) C))).
    const Workbench bench = astable({.r1_ohm = 10e3, .r2_ohm = 68e3, .c_farad = 10e-6}, true);
    const Study s = studyOf(bench);
    const double tau_s = 78e3 * 10e-6;
    for (const double time_s : {0.01, 0.2, 0.5}) {
        const auto now = netVoltages(s, time_s);
        const double wanted = now.at(net(bench, "supply")) * (1 - std::exp(-time_s / tau_s));
        EXPECT_NEAR(now.at(net(bench, "timing")), wanted, 1e-4 * wanted) << time_s;
    }
}

TEST(NetVoltages, IsTheSameOnPinSixAsInTheCurves) {
    const Workbench bench = astable({}, false);
    const Study s = studyOf(bench);
    for (std::size_t k = 1; k + 1 < s.curves.time_s.size(); k += 7) {
        const double time_s = s.curves.time_s[k];
        if (s.curves.time_s[k + 1] == time_s) continue; // just before a switching
        EXPECT_NEAR(netVoltages(s, time_s).at(net(bench, "timing")), s.curves.capacitor_V[k], 1e-9);
        EXPECT_NEAR(netVoltages(s, time_s).at(net(bench, "output")), s.curves.output_V[k], 1e-6);
    }
}

TEST(NetVoltages, SaysNothingOfANetThatNoPartJoinsWithZeroVolt) {
    Workbench bench = astable({}, true);
    bench.part(PartKind::resistor, "R8", {{"resistance", 20e3}});
    bench.net("left", {"R8:1"}).net("right", {"R8:2"});
    const auto now = netVoltages(studyOf(bench), 0.1);
    EXPECT_FALSE(now.contains(net(bench, "left")));
    EXPECT_FALSE(now.contains(net(bench, "right")));
    EXPECT_TRUE(now.contains(net(bench, "timing")));
}

TEST(NetVoltages, SaysNothingWithoutARun) {
    EXPECT_TRUE(netVoltages(Study{}, 0.1).empty());
}

TEST(NetVoltages, TakesATimeBeyondTheRunAsItsEnd) {
    const Workbench bench = astable({}, true);
    const Study s = studyOf(bench);
    EXPECT_EQ(netVoltages(s, 1e9), netVoltages(s, s.wave.end_s()));
    EXPECT_EQ(netVoltages(s, -1), netVoltages(s, 0));
}

} // namespace
} // namespace blinkwright::study
