#include "core/study/variants.h"

#include "core/devices/defaults.h"
#include "core/io/circuit_file.h"
#include "core/study/study.h"
#include "core/units/series.h"
#include "tests/core/reference_circuits.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

namespace blinkwright::study {
namespace {

using circuit::PartSet;

Workbench light() {
    return tests::astableWithLamp({.supply_V = 6}, 270);
}

Variant variant(const circuit::Circuit& circuit, std::uint64_t seed) {
    auto made = variantOf(circuit, PartSet::A, {.seed = seed});
    if (!made) throw std::logic_error(made.fault().message());
    return std::move(made).value();
}

double valueOf(const circuit::Circuit& circuit, const char* ref, const char* key, PartSet set = PartSet::A) {
    return devices::effectiveNumber(circuit, set, circuit.findRef(ref)->id, key);
}

TEST(Variants, HaveOtherPreferredValuesWithinTheDecade) {
    const Workbench bench = light(); // 10 kΩ, 68 kΩ, 10 µF
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        const Variant v = variant(bench.circuit, seed);
        ASSERT_FALSE(v.changed.empty()) << seed;
        const double r1 = valueOf(v.circuit, "R1", "resistance"), r2 = valueOf(v.circuit, "R2", "resistance"),
                     c = valueOf(v.circuit, "C1", "capacitance");
        EXPECT_TRUE(units::inSeries(units::Series::E12, r1) && r1 >= 10e3 && r1 < 99e3) << seed << " " << r1;
        EXPECT_TRUE(units::inSeries(units::Series::E12, r2) && r2 >= 10e3 && r2 < 99e3) << seed << " " << r2;
        EXPECT_TRUE(units::inSeries(units::Series::E6, c) && c > 9.99e-6 && c < 99e-6) << seed << " " << c;
        EXPECT_FALSE(r1 == 10e3 && r2 == 68e3 && c == 10e-6) << seed;
        EXPECT_EQ(valueOf(v.circuit, "R3", "resistance"), valueOf(bench.circuit, "R3", "resistance"));
    }
}

TEST(Variants, BlinkSlowlyEnoughToCountWithNoTroubleThatTheCircuitHasNot) {
    // The second flashes 1 / (ln 2 x 54 kΩ x 10 µF) = 2.7 times a second: many other values would be too
    // fast.
    for (const Workbench& bench : {light(), tests::astableWithLamp({.supply_V = 6, .r2_ohm = 22e3}, 270)})
        for (std::uint64_t seed = 1; seed <= 12; ++seed) {
            const Study s = study(variant(bench.circuit, seed).circuit, PartSet::A, {.flashes = 2}).value();
            ASSERT_EQ(s.readings.verdict, Verdict::blinks) << seed;
            EXPECT_LE(s.readings.timers.front().settled->rate_Hz(), 3) << seed; // WCAG 2.2, 2.3.1
            for (const Finding& f : s.findings)
                EXPECT_FALSE(f.severity == Severity::fault || f.severity == Severity::overstress) << f.text;
        }
}

TEST(Variants, AreToldByTheirSeed) {
    const Workbench bench = light();
    EXPECT_EQ(io::writeCircuit(variant(bench.circuit, 7).circuit),
              io::writeCircuit(variant(bench.circuit, 7).circuit));
    std::set<std::string> told;
    for (std::uint64_t seed = 1; seed <= 10; ++seed)
        told.insert(io::writeCircuit(variant(bench.circuit, seed).circuit));
    EXPECT_GE(told.size(), 8U);
}

TEST(Variants, AreOfOneSetAndOfNoBoardThatWasMeasured) {
    Workbench bench = light();
    ASSERT_TRUE(bench.circuit.setOverride(PartSet::B, bench.id("R2"), "resistance", 33e3));
    bench.circuit.measurements.push_back(std::make_shared<const circuit::Measurement>(
        circuit::Measurement{.what = circuit::Count{20, {20, 0.2}}}));
    const auto made = variantOf(bench.circuit, PartSet::B, {.seed = 3});
    ASSERT_TRUE(made);
    EXPECT_TRUE(made.value().circuit.measurements.empty());
    for (const char* ref : {"R1", "R2"})
        EXPECT_EQ(valueOf(made.value().circuit, ref, "resistance", PartSet::A),
                  valueOf(made.value().circuit, ref, "resistance", PartSet::B));
}

TEST(Variants, AreRefusedWhereThereIsNoFormulaOrNoFlash) {
    Workbench dark = light();
    dark.open("U1:6");
    EXPECT_FALSE(variantOf(dark.circuit, PartSet::A, {}));
    const auto none = variantOf(circuit::Circuit{}, PartSet::A, {});
    ASSERT_FALSE(none);
    EXPECT_FALSE(none.fault().text.empty());
}

} // namespace
} // namespace blinkwright::study
