#include "core/study/textbook.h"

#include "tests/core/workbench.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::study {
namespace {

using circuit::PartKind;

Textbook bookOf(const Workbench& bench) {
    const auto book = textbookOf(bench.board(), 0);
    EXPECT_TRUE(book);
    return book.value_or(Textbook{});
}
Textbook plain(double r1, double r2, double c) {
    return bookOf(plainAstable(r1, r2, c));
}

void expectNear(double value, double wanted, double relative) {
    EXPECT_NEAR(value, wanted, relative * std::abs(wanted));
}

TEST(Textbook, GivesThePrintedWorkedExamples) {
    // TI SLFS022I Fig 13 (5 k, 3 k, 0.15 uF); results by the exact ln 2 to four figures.
    Textbook book = plain(5e3, 3e3, 0.15e-6);
    expectNear(book.phase.high_s, 831.8e-6, 1e-4);
    expectNear(book.phase.low_s, 311.9e-6, 2e-4);
    expectNear(book.phase.rate_Hz(), 874.4, 1e-4);
    expectNear(book.phase.duty(), 0.7273, 1e-4);
    // Floyd, Digital Fundamentals, Example 7-14: printed 5.64 kHz by 1.44, and 59.5 %.
    book = plain(2.2e3, 4.7e3, 0.022e-6);
    expectNear(book.phase.rate_Hz(), 5.653e3, 1e-4);
    expectNear(book.phase.duty(), 0.595, 1e-3);
    EXPECT_EQ(book.rounded, "1.44/((R1 + 2 R2) C) gives 5.643\u00A0kHz, 0.19 % low");
    // National LMC555, SNAS558J: test circuit of 4.8 kHz at 12 V by 1.44; the values are inferred.
    expectNear(plain(1e3, 1e3, 0.1e-6).phase.rate_Hz(), 4.809e3, 1e-4);
    // From memory of common textbook cases; results by calculation.
    expectNear(plain(1e3, 2e3, 1e-5).phase.duty(), 0.6, 1e-12);
    expectNear(plain(1e4, 6.8e4, 1e-5).phase.rate_Hz(), 0.98815, 1e-5);
}

TEST(Textbook, AgreesWithWhatTheTradeExpects) {
    // Common practice, no source.
    const Textbook slow = plain(1e6, 2e6, 1e-6);
    expectNear(slow.phase.rate_Hz(), 0.288, 3e-3);
    expectNear(slow.phase.period_s(), 3.47, 2e-3);
    expectNear(slow.phase.duty(), 0.60, 1e-9);
    EXPECT_NEAR(plain(1e6, 1e4, 1e-6).phase.duty(), 0.99, 0.001);
    EXPECT_NEAR(plain(1e4, 1e6, 1e-6).phase.duty(), 0.50, 0.003);
    EXPECT_LT(plain(2e4, 1e4, 1e-6).phase.rate_Hz(), plain(1e4, 1e4, 1e-6).phase.rate_Hz());
    EXPECT_LT(plain(1e4, 1e4, 2e-6).phase.rate_Hz(), plain(1e4, 1e4, 1e-6).phase.rate_Hz());
}

TEST(Textbook, MakesTheFirstHighLogThreeOverLogTwoTimesLonger) {
    const Textbook book = plain(1e4, 6.8e4, 1e-5);
    EXPECT_NEAR(book.firstHigh_s / book.phase.high_s, std::log(3) / std::log(2), 1e-12);
}

TEST(Textbook, NamesThePartsOfEachValue) {
    const Textbook book = plain(1e4, 6.8e4, 1e-5);
    EXPECT_EQ(book.form, AstableForm::plain);
    EXPECT_EQ(book.formula, "T = ln 2 (R1 + 2 R2) C");
    EXPECT_EQ(book.r1Parts, std::vector<std::string>{"R1"});
    EXPECT_EQ(book.r2Parts, std::vector<std::string>{"R2"});
    EXPECT_EQ(book.cParts, std::vector<std::string>{"C1"});
}

/// R1 as 1 k in series with (3 k parallel 6 k) = 3 k; R2 as the wired section of a 10 k variable at 0.4; C as
/// (2 uF in series with 2 uF) parallel 3 uF = 4 uF.
Workbench composed() {
    Workbench bench = bareTimer();
    bench.part(PartKind::resistor, "R5", {{"resistance", 1e3}})
        .part(PartKind::resistor, "R2", {{"resistance", 3e3}})
        .part(PartKind::resistor, "R3", {{"resistance", 6e3}})
        .part(PartKind::variable, "RV1", {{"resistance", 1e4}, {"setting", 0.4}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 2e-6}})
        .part(PartKind::capacitor, "C2", {{"capacitance", 2e-6}})
        .part(PartKind::capacitor, "C3", {{"capacitance", 3e-6}});
    bench.net("supply", {"R5:1"}).net("inner", {"R5:2", "R2:1", "R3:1"});
    bench.net("discharge", {"R2:2", "R3:2", "U1:7", "RV1:1"})
        .net("timing", {"RV1:wiper", "RV1:2", "C1:plus", "C3:plus"});
    bench.net("half", {"C1:minus", "C2:plus"}).net("ground", {"C2:minus", "C3:minus"});
    return bench;
}

TEST(Textbook, CombinesSeriesAndParallelParts) {
    const Textbook book = bookOf(composed());
    EXPECT_NEAR(book.r1_ohm, 3e3, 1e-9);
    EXPECT_NEAR(book.r2_ohm, 4e3, 1e-9);
    EXPECT_NEAR(book.c_farad, 4e-6, 1e-18);
    EXPECT_EQ(book.r1Parts, (std::vector<std::string>{"R5", "R2", "R3"})); // in file order
    EXPECT_EQ(book.r2Parts, std::vector<std::string>{"RV1"});
    EXPECT_EQ(book.cParts, (std::vector<std::string>{"C1", "C2", "C3"}));
}

TEST(Textbook, CombinesTheSectionsOfAVariableWithAnOpenWiper) {
    Workbench bench = bareTimer();
    bench.part(PartKind::resistor, "R1", {{"resistance", 1e3}})
        .part(PartKind::variable, "RV1", {{"resistance", 1e4}, {"setting", 0.3}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    bench.net("supply", {"R1:1"}).net("discharge", {"R1:2", "U1:7", "RV1:1"});
    bench.net("timing", {"RV1:2", "C1:plus"}).net("ground", {"C1:minus"});
    const Textbook book = bookOf(bench);
    EXPECT_NEAR(book.r2_ohm, 1e4, 1e-9);
    EXPECT_EQ(book.r2Parts, std::vector<std::string>{"RV1"});
}

TEST(Textbook, SplitsAVariableWhoseWiperIsAtPin7) {
    Workbench bench = bareTimer();
    bench.part(PartKind::variable, "RV1", {{"resistance", 1e4}, {"setting", 0.3}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    bench.net("supply", {"RV1:1"}).net("discharge", {"RV1:wiper", "U1:7"});
    bench.net("timing", {"RV1:2", "C1:plus"}).net("ground", {"C1:minus"});
    const Textbook book = bookOf(bench);
    EXPECT_NEAR(book.r1_ohm, 3e3, 1e-9);
    EXPECT_NEAR(book.r2_ohm, 7e3, 1e-9);
}

TEST(Textbook, TakesAClosedSwitchForAWireAndAnOpenOneForNothing) {
    Workbench bench = plainAstable(1e4, 1e4, 1e-6);
    bench.part(PartKind::toggle, "S1").part(PartKind::capacitor, "C9", {{"capacitance", 3e-6}});
    bench.net("timing", {"C9:plus"}).net("more", {"C9:minus", "S1:1"}).net("ground", {"S1:2"});
    EXPECT_NEAR(bookOf(bench).c_farad, 1e-6, 1e-18);
    bench.set("S1.closed=true");
    EXPECT_NEAR(bookOf(bench).c_farad, 4e-6, 1e-18);
}

TEST(Textbook, TimesACapacitorToTheRailTheSame) {
    Workbench bench = bareTimer();
    bench.part(PartKind::resistor, "R1", {{"resistance", 1e4}})
        .part(PartKind::resistor, "R2", {{"resistance", 2e4}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    bench.net("supply", {"R1:1", "C1:plus"})
        .net("discharge", {"R1:2", "U1:7", "R2:1"})
        .net("timing", {"R2:2", "C1:minus"});
    const Textbook book = bookOf(bench);
    EXPECT_DOUBLE_EQ(book.phase.period_s(), plain(1e4, 2e4, 1e-6).phase.period_s());
    EXPECT_EQ(book.firstHigh_s, 0); // empty, it starts with the node at the supply: past the threshold
}

TEST(Textbook, TakesADiodeAcrossR2AsIdeal) {
    Workbench bench = plainAstable(2e4, 3e4, 1e-6);
    bench.part(PartKind::diode, "D1").net("discharge", {"D1:anode"}).net("timing", {"D1:cathode"});
    const Textbook book = bookOf(bench);
    EXPECT_EQ(book.form, AstableForm::steeringDiode);
    EXPECT_DOUBLE_EQ(book.phase.high_s, std::log(2) * 2e4 * 1e-6);
    EXPECT_DOUBLE_EQ(book.phase.low_s, std::log(2) * 3e4 * 1e-6);
}

TEST(Textbook, HasNoFormulaForADiodeTheWrongWayRoundOrALampInItsPlace) {
    Workbench wrong = plainAstable(2e4, 3e4, 1e-6);
    wrong.part(PartKind::diode, "D1").net("discharge", {"D1:cathode"}).net("timing", {"D1:anode"});
    EXPECT_FALSE(textbookOf(wrong.board(), 0));
    Workbench lamp = plainAstable(2e4, 3e4, 1e-6);
    lamp.part(PartKind::lamp, "D1").net("discharge", {"D1:anode"}).net("timing", {"D1:cathode"});
    EXPECT_FALSE(textbookOf(lamp.board(), 0));
}

Workbench singleResistor() {
    Workbench bench = bareTimer();
    bench.part(PartKind::resistor, "R1", {{"resistance", 1e5}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    bench.net("output", {"U1:3", "R1:1"}).net("timing", {"R1:2", "C1:plus"}).net("ground", {"C1:minus"});
    return bench;
}

TEST(Textbook, KnowsOneResistorFromTheOutput) {
    const Textbook book = bookOf(singleResistor());
    EXPECT_EQ(book.form, AstableForm::singleResistor);
    expectNear(book.phase.rate_Hz(), 0.7213 / (1e5 * 1e-6),
               1e-4); // f = 1/(2 ln 2 R C), LMC555 50 % oscillator
    EXPECT_DOUBLE_EQ(book.phase.duty(), 0.5);
    EXPECT_EQ(book.r1_ohm, 0);
    EXPECT_EQ(book.r2Parts, std::vector<std::string>{"R1"});
    EXPECT_EQ(book.rounded, "1/(1.4 R C) gives 7.143\u00A0Hz, 0.98 % low");
}

/// A source from pin 5 to ground.
Workbench driven(double volts, double resistance) {
    Workbench bench = plainAstable(1e4, 2e4, 1e-6, 10);
    bench.part(PartKind::supply, "BT2", {{"voltage", volts}, {"resistance", resistance}});
    bench.net("control", {"BT2:plus"}).net("ground", {"BT2:minus"});
    return bench;
}

TEST(Textbook, FollowsAnIdealSourceAtPin5) {
    // kH of (1 - k/2)/(1 - k) worked out by hand for k = 0.25, 0.5, 0.9; the low phase does not depend on k.
    const std::pair<double, double> table[] = {{2.5, 0.1542}, {5, 0.4055}, {9, 1.7047}};
    for (const auto& [volts, factor] : table) {
        const Textbook book = bookOf(driven(volts, 1));
        EXPECT_EQ(book.form, AstableForm::drivenControl);
        EXPECT_NEAR(book.phase.high_s / (3e4 * 1e-6), factor, 5e-5);
        EXPECT_DOUBLE_EQ(book.phase.low_s, std::log(2) * 2e4 * 1e-6);
        EXPECT_DOUBLE_EQ(book.control_ratio, volts / 10);
    }
}

TEST(Textbook, HasNoFormulaForASoftSourceOrResistorAtPin5) {
    EXPECT_FALSE(textbookOf(driven(5, 1000).board(), 0));
    EXPECT_FALSE(textbookOf(driven(10, 1).board(), 0)); // the threshold at the supply is never reached
    Workbench bench = plainAstable(1e4, 2e4, 1e-6);
    bench.part(PartKind::resistor, "R9", {{"resistance", 1e4}})
        .net("control", {"R9:1"})
        .net("ground", {"R9:2"});
    EXPECT_FALSE(textbookOf(bench.board(), 0));
}

TEST(Textbook, HasNoFormulaForAnythingElseOnTheTimingNodes) {
    const std::pair<const char*, const char*> joins[] = {
        {"timing", "ground"}, {"discharge", "ground"}, {"discharge", "output"}, {"timing", "supply"}};
    for (const auto& [from, to] : joins) {
        Workbench bench = plainAstable(1e4, 2e4, 1e-6);
        bench.net("output", {"U1:3"});
        bench.part(PartKind::resistor, "R9", {{"resistance", 1e5}}).net(from, {"R9:1"}).net(to, {"R9:2"});
        EXPECT_FALSE(textbookOf(bench.board(), 0)) << from << " to " << to;
    }
}

TEST(Textbook, HasNoFormulaForSplitTriggerAndThreshold) {
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    bench.net("supply", {"BT1:plus", "U1:8"}).net("ground", {"BT1:minus", "U1:1"});
    bench.net("a", {"U1:2"}).net("b", {"U1:6"});
    EXPECT_FALSE(textbookOf(bench.board(), 0));
}

TEST(Textbook, IgnoresADeadEndAndABridgedPart) {
    Workbench bench = plainAstable(1e4, 2e4, 1e-6);
    bench.part(PartKind::resistor, "R8", {{"resistance", 1e3}})
        .part(PartKind::resistor, "R9", {{"resistance", 1e3}});
    bench.net("timing", {"R8:1", "R9:1", "R9:2"});
    EXPECT_NEAR(bookOf(bench).r2_ohm, 2e4, 1e-9);
}

TEST(Textbook, GivesAGatedTimerItsFormulaAndNoneToATimerOnItsTimingNode) {
    Workbench bench = plainAstable(1e4, 2e4, 1e-6);
    bench.part(PartKind::timer, "U2").net("supply", {"U2:8"}).net("ground", {"U2:1"});
    EXPECT_TRUE(textbookOf(bench.board(), 0));
    EXPECT_FALSE(textbookOf(bench.board(), 1));
    EXPECT_FALSE(textbookOf(bench.board(), 7));
    bench.net("timing", {"U2:6"});
    EXPECT_FALSE(textbookOf(bench.board(), 0));
}

} // namespace
} // namespace blinkwright::study
