// How long lamps are lit, over the boards of a spread.
#include "core/study/lit_spread.h"

#include "core/study/spread.h"
#include "core/study/study.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace blinkwright::study {
namespace {

using circuit::PartSet;

SpreadOutcome spreadOf(const Workbench& bench, long boards = 300) {
    auto result = spread(bench.circuit, PartSet::A, {.boards = boards});
    if (!result) throw std::logic_error(result.fault().message());
    return std::move(result).value();
}

/// The lamp's lit share as a whole study reads it.
double litOf(const Workbench& bench, std::size_t lamp) {
    const auto result = study(bench.circuit, PartSet::A, {.accuracy = 1e-8});
    const Readings& readings = result.value().readings;
    return *readings.lamps[lamp].litTime_s / readings.timers[0].settled->period_s();
}

TEST(LitSpread, ALampToGroundIsLitForTheDutyCycle) {
    const SpreadOutcome s = spreadOf(tests::astableWithLamp({}, 470));
    const SpreadLamp& lamp = s.lamps.at(0);
    ASSERT_EQ(lamp.lits.size(), s.duties.size());
    for (std::size_t k = 0; k < s.duties.size(); ++k) EXPECT_NEAR(lamp.lits[k], s.duties[k], 1e-5);
    EXPECT_NEAR(lamp.lit.worstLow, s.duty->worstLow, 1e-5);
    EXPECT_NEAR(lamp.lit.worstHigh, s.duty->worstHigh, 1e-5);
    for (const SpreadSensitivity& part : s.sensitivities) EXPECT_EQ(part.lits.at(0), part.duty);
}

TEST(LitSpread, ALampToTheRailIsLitForTheRest) {
    Workbench bench = tests::astable({}, false);
    bench.part(circuit::PartKind::resistor, "R3", {{"resistance", 470.0}})
        .part(circuit::PartKind::lamp, "D1", {{"colour", std::string("red")}})
        .net("supply", {"R3:1"})
        .net("lamp", {"R3:2", "D1:anode"})
        .net("output", {"D1:cathode"});
    const SpreadOutcome s = spreadOf(bench);
    const SpreadLamp& lamp = s.lamps.at(0);
    ASSERT_EQ(lamp.lits.size(), s.duties.size());
    for (std::size_t k = 0; k < s.duties.size(); ++k) EXPECT_NEAR(lamp.lits[k], 1 - s.duties[k], 1e-5);
    EXPECT_NEAR(lamp.lit.worstLow, 1 - s.duty->worstHigh, 1e-5);
    // By the law of the circuit itself, R1 a hundredth up and down.
    const auto slope = std::ranges::find(s.sensitivities, "R1", &SpreadSensitivity::ref)->lits.at(0);
    Workbench up = bench, down = bench;
    up.set("R1.resistance=10.1k");
    down.set("R1.resistance=9.9k");
    EXPECT_NEAR(slope, (litOf(up, 0) / litOf(down, 0) - 1) / 0.02, 1e-3);
}

TEST(LitSpread, ALampBehindACapacitorFadesWithinItsTurn) {
    // 1000 uF behind 220 ohm: 0.2 s, in turns of half a second and more.
    const Workbench bench = tests::lampPair({}, 220, 470e-6);
    const SpreadOutcome s = spreadOf(bench);
    ASSERT_EQ(s.lamps.size(), 2u);
    for (std::size_t l = 0; l < 2; ++l) {
        const SpreadLamp& lamp = s.lamps[l];
        EXPECT_EQ(lamp.lits.size(), static_cast<std::size_t>(litBoards));
        EXPECT_NEAR(lamp.lit.nominal, litOf(bench, l), 1e-4);
        EXPECT_LT(lamp.lit.nominal, 0.45);
        for (const double lit : lamp.lits) {
            EXPECT_GE(lit, lamp.lit.worstLow);
            EXPECT_LE(lit, lamp.lit.worstHigh);
        }
        for (const SpreadSensitivity& part : s.sensitivities) {
            if (part.ref != "C1") continue;
            Workbench up = bench, down = bench;
            up.set("C1.capacitance=10.1u");
            down.set("C1.capacitance=9.9u");
            EXPECT_NEAR(part.lits.at(l), (litOf(up, l) / litOf(down, l) - 1) / 0.02, 0.02);
            EXPECT_LT(part.lits.at(l), -0.2); // a longer turn, and the same time of light
        }
    }
}

} // namespace
} // namespace blinkwright::study
