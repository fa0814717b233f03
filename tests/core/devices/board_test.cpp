#include "core/devices/board.h"

#include "tests/core/workbench.h"

#include <gtest/gtest.h>

namespace blinkwright::devices {
namespace {

using circuit::PartKind;
using circuit::PartSet;
namespace timerPin = circuit::timerPin;

TEST(Board, PutsTheFirstSupplysMinusAtNodeZero) {
    const Board board = plainAstable(1e4, 1e4, 1e-6).board(); // the supply's net comes first in the list
    EXPECT_EQ(board.nodeNames.front(), "ground");
    EXPECT_EQ(board.supplies[0].minus, 0);
    EXPECT_EQ(board.nodes(), 5);
    EXPECT_EQ(board.nodeNames[static_cast<std::size_t>(board.timers[0].pins[timerPin::discharge])],
              "discharge");
}

TEST(Board, LeavesAPinWithoutANetOpenAndKnowsOneThatIsAlone) {
    Workbench bench = plainAstable(1e4, 1e4, 1e-6);
    Board board = bench.board();
    EXPECT_EQ(board.timers[0].pins[timerPin::output], open);
    EXPECT_FALSE(board.timers[0].connected(timerPin::output));
    bench.net("alone", {"U1:3"});
    board = bench.board();
    EXPECT_NE(board.timers[0].pins[timerPin::output], open);
    EXPECT_FALSE(board.timers[0].connected(timerPin::output));
    EXPECT_TRUE(board.timers[0].connected(timerPin::discharge));
}

TEST(Board, FillsInEveryDefault) {
    Workbench bench = plainAstable(1e4, 1e4, 1e-6);
    bench.part(PartKind::lamp, "D1")
        .part(PartKind::diode, "D2")
        .part(PartKind::variable, "RV1", {{"resistance", 1e5}});
    bench.part(PartKind::toggle, "S1");
    const Board board = bench.board();
    EXPECT_EQ(board.supplies[0].resistance, 0.5);
    EXPECT_FALSE(board.supplies[0].capacity);
    EXPECT_FALSE(board.timers[0].cmos);
    EXPECT_EQ(board.timers[0].sheet.delay, 5e-7);
    EXPECT_EQ(board.resistors[0].ratedPower, 0.25);
    EXPECT_EQ(board.capacitors[0].esr, 0.1);
    EXPECT_EQ(board.capacitors[0].leakageConductance, 0);
    EXPECT_FALSE(board.capacitors[0].ratedVoltage);
    EXPECT_EQ(board.variables[0].upper, 5e4);
    EXPECT_EQ(board.variables[0].lower, 5e4);
    EXPECT_FALSE(board.switches[0].closed);
    ASSERT_EQ(board.junctions.size(), 2u);
    const Junction& lamp = board.junctions[0];
    EXPECT_TRUE(lamp.lamp);
    EXPECT_EQ(lamp.colour, "red");
    EXPECT_EQ(lamp.ratedCurrent, 0.02);
    EXPECT_DOUBLE_EQ(lamp.pulseCurrent, 0.06);
    EXPECT_EQ(lamp.reverseLimit, 5);
    EXPECT_FALSE(board.junctions[1].lamp);
    EXPECT_EQ(board.junctions[1].law.seriesResistance, 1.0);
}

TEST(Board, KeepsTenMilliohmsInEachSectionOfAVariable) {
    Workbench bench;
    bench.part(PartKind::variable, "RV1", {{"resistance", 1e5}, {"setting", 0.0}});
    EXPECT_EQ(bench.board().variables[0].upper, 0.010);
    EXPECT_EQ(bench.board().variables[0].lower, 1e5);
    bench.set("RV1.setting=1");
    EXPECT_EQ(bench.board().variables[0].upper, 1e5);
    EXPECT_EQ(bench.board().variables[0].lower, 0.010);
}

TEST(Board, FollowsTheRatedCurrentWithThePulseCurrent) {
    Workbench bench;
    bench.part(PartKind::lamp, "D1", {{"rated_current", 0.007}});
    EXPECT_DOUBLE_EQ(bench.board().junctions[0].pulseCurrent, 0.021);
    bench.set("D1.pulse_current=50m");
    EXPECT_DOUBLE_EQ(bench.board().junctions[0].pulseCurrent, 0.05);
}

TEST(Board, RefusesALampThatNoJunctionCanBe) {
    Workbench bench;
    bench.part(PartKind::lamp, "D7", {{"forward_voltage", 0.1}, {"series_resistance", 50.0}});
    const auto board = makeBoard(bench.circuit, PartSet::A);
    ASSERT_FALSE(board);
    EXPECT_EQ(board.fault().place, "D7.series_resistance");
}

TEST(Board, HasANodeZeroWithoutASupplyToo) {
    Workbench bench;
    bench.part(PartKind::resistor, "R1", {{"resistance", 1e3}}).net("n", {"R1:1"});
    const Board board = bench.board();
    EXPECT_EQ(board.nodes(), 1);
    EXPECT_EQ(board.resistors[0].a, 0);
    EXPECT_EQ(board.resistors[0].b, open);
}

TEST(NominalSupply, IsTheOneThatReachesPin8ThroughTheLeastResistance) {
    Workbench bench;
    bench.part(PartKind::timer, "U1");
    bench.part(PartKind::supply, "BT1", {{"voltage", 12.0}})
        .part(PartKind::supply, "BT2", {{"voltage", 5.0}});
    bench.part(PartKind::diode, "D1").part(PartKind::resistor, "R1", {{"resistance", 2.0}});
    bench.net("ground", {"U1:1", "BT1:minus", "BT2:minus"}).net("rail", {"U1:8", "D1:cathode", "R1:1"});
    bench.net("high", {"BT1:plus", "R1:2"}).net("low", {"BT2:plus", "D1:anode"});
    EXPECT_EQ(bench.board().timers[0].nominalSupply, 5); // the diode counts as its 1 ohm
    bench.set("R1.resistance=0.9");
    EXPECT_EQ(bench.board().timers[0].nominalSupply, 12);
}

TEST(NominalSupply, GoesThroughAClosedSwitchButNotThroughAnOpenOneOrACapacitor) {
    Workbench bench;
    bench.part(PartKind::timer, "U1");
    bench.part(PartKind::supply, "BT1", {{"voltage", 6.0}}).part(PartKind::supply, "BT2", {{"voltage", 9.0}});
    bench.part(PartKind::toggle, "S1").part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    bench.net("rail", {"U1:8", "S1:1", "C1:plus"}).net("cell", {"BT1:plus", "S1:2", "C1:minus"});
    EXPECT_EQ(bench.board().timers[0].nominalSupply, 9); // none reaches it: the highest
    bench.set("S1.closed=true");
    EXPECT_EQ(bench.board().timers[0].nominalSupply, 6);
}

TEST(NominalSupply, IsTheFirstOfSeveralAtTheSameDistance) {
    Workbench bench;
    bench.part(PartKind::timer, "U1");
    bench.part(PartKind::supply, "BT1", {{"voltage", 6.0}}).part(PartKind::supply, "BT2", {{"voltage", 9.0}});
    bench.net("rail", {"U1:8", "BT2:plus", "BT1:plus"});
    EXPECT_EQ(bench.board().timers[0].nominalSupply, 6);
}

TEST(NominalSupply, IsZeroWithoutAnySupply) {
    Workbench bench;
    bench.part(PartKind::timer, "U1");
    EXPECT_EQ(bench.board().timers[0].nominalSupply, 0);
}

TEST(NominalSupply, SetsTheCmosOutputResistance) {
    Workbench bench = bareTimer(5);
    bench.set("U1.family=cmos");
    EXPECT_DOUBLE_EQ(bench.board().timers[0].sheet.high_resistance, 1333 / 6.67);
    bench.set("BT1.voltage=15");
    EXPECT_DOUBLE_EQ(bench.board().timers[0].sheet.high_resistance, 1333 / 16.67);
}

TEST(EffectiveValue, CountsInTheDefaultsOfTheDeviceParameters) {
    Workbench bench = bareTimer(5);
    const auto id = bench.id("U1");
    const auto value = [&](std::string_view key) {
        return effectiveValue(bench.circuit, PartSet::A, id, key);
    };
    EXPECT_EQ(value("device.delay"), circuit::Value(5e-7));
    bench.set("U1.device.delay=0");
    EXPECT_EQ(value("device.delay"), circuit::Value(0.0));
    EXPECT_FALSE(value("device.colour"));
    EXPECT_EQ(value("family"), circuit::Value(std::string("bipolar")));
}

TEST(EffectiveValue, IsNothingForALeakageStatedAsNone) {
    Workbench bench;
    bench.part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}, {"leakage_resistance", 1e6}});
    EXPECT_DOUBLE_EQ(bench.board().capacitors[0].leakageConductance, 1e-6);
    bench.set("C1.leakage_resistance=null");
    EXPECT_EQ(bench.board().capacitors[0].leakageConductance, 0);
    EXPECT_FALSE(effectiveValue(bench.circuit, PartSet::A, bench.id("C1"), "leakage_resistance"));
}

TEST(DeviceParameters, AreTheSameInTheSheetsAndInTheCircuitsTable) {
    const auto sheets = timerParameters();
    const auto table = circuit::timerParameters();
    ASSERT_EQ(sheets.size(), table.size());
    for (std::size_t k = 0; k < sheets.size(); ++k) EXPECT_EQ(sheets[k], table[k].name);
}

TEST(LampColours, AreTheSameInTheSheetsAndInTheCircuitsTable) {
    const auto* colour = circuit::findKey(circuit::info(PartKind::lamp), "colour");
    ASSERT_NE(colour, nullptr);
    EXPECT_TRUE(
        std::equal(colour->words.begin(), colour->words.end(), lampColours().begin(), lampColours().end()));
}

TEST(Override, ReadsEachShapeOfValue) {
    Workbench bench = plainAstable(1e4, 1e4, 1e-6);
    bench.part(PartKind::lamp, "D1").part(PartKind::toggle, "S1");
    const auto read = [&](std::string_view text) { return parseOverride(bench.circuit, text).value().value; };
    EXPECT_EQ(read("R1.resistance=4k7"), circuit::Value(4700.0));
    EXPECT_EQ(read(" R1.resistance = 4,7 k\u03A9 "), circuit::Value(4700.0));
    EXPECT_EQ(read("U1.device.delay=0"), circuit::Value(0.0));
    EXPECT_EQ(read("U1.family=cmos"), circuit::Value(std::string("cmos")));
    EXPECT_EQ(read("D1.colour=green"), circuit::Value(std::string("green")));
    EXPECT_EQ(read("C1.leakage_resistance=null"), circuit::Value(circuit::Null{}));
    EXPECT_EQ(read("S1.closed=true"), circuit::Value(true));
    EXPECT_EQ(read("S1.presses=[[1,2],[3,4.5]]"), circuit::Value(circuit::Intervals{{1, 2}, {3, 4.5}}));
    EXPECT_EQ(read("C1.tolerance=[-0.2,0.8]"), circuit::Value(circuit::Interval{-0.2, 0.8}));
    EXPECT_EQ(read("C1.tolerance=0.1"), circuit::Value(0.1));
}

TEST(Override, SaysWhatIsWrongAndWhere) {
    Workbench bench = plainAstable(1e4, 1e4, 1e-6);
    bench.part(PartKind::lamp, "D1").part(PartKind::toggle, "S1");
    const auto fault = [&](std::string_view text) {
        const auto result = parseOverride(bench.circuit, text);
        return result ? "no fault" : result.fault().message();
    };
    EXPECT_EQ(fault("R1"), "R1: must look like R1.resistance=4k7");
    EXPECT_EQ(fault("R1.=4"), "R1.=4: must look like R1.resistance=4k7");
    EXPECT_EQ(fault("R9.resistance=4k7"), "R9.resistance: there is no part R9");
    EXPECT_EQ(fault("R1.capacitance=1u"),
              "R1.capacitance: a resistor has no such value; it has resistance, tolerance, rated_power");
    EXPECT_EQ(fault("R1.resistance="), "R1.resistance: has no value after the equals sign");
    EXPECT_NE(fault("R1.resistance=-5").find("R1.resistance: must be greater than 0, got -5"),
              std::string::npos);
    EXPECT_NE(fault("R1.resistance=4q7").find("R1.resistance: "), std::string::npos);
    EXPECT_EQ(fault("S1.closed=maybe"), "S1.closed: must be true or false, got 'maybe'");
    EXPECT_NE(fault("D1.colour=mauve").find("must be one of red, amber"), std::string::npos);
    EXPECT_NE(fault("U1.device.speed=1").find("there are divider_resistance, "), std::string::npos);
    EXPECT_NE(fault("U1.device.delay=-1").find("U1.device.delay: "), std::string::npos);
    EXPECT_NE(fault("U1.device=1").find("name one parameter"), std::string::npos);
    EXPECT_EQ(fault("U1.device.delay=null").rfind("U1.device.delay: ", 0), 0u);
}

TEST(Override, OfOneDeviceParameterLeavesTheOthersStated) {
    Workbench bench = bareTimer();
    bench.set("U1.device.delay=0").set("U1.device.trigger_current=0").set("U1.device.delay=1u");
    const TimerSheet sheet = bench.board().timers[0].sheet;
    EXPECT_EQ(sheet.delay, 1e-6);
    EXPECT_EQ(sheet.trigger_current, 0);
    EXPECT_EQ(sheet.threshold_current, 3e-8);
}

} // namespace
} // namespace blinkwright::devices
