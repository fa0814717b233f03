#include "core/study/verdict.h"

#include "tests/core/reference_circuits.h"

#include <gmock/gmock.h>

namespace blinkwright::study {
namespace {

using circuit::PartKind;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;
using tests::astable;

constexpr engine::RunRequest request{
    .flashes = 6, .accuracy = 1e-5, .stepBudget = 200'000, .eventBudget = 5'000};

Judgement judged(const Workbench& bench) {
    const auto board = bench.board();
    const auto settled = engine::settle(board, request);
    return judge(board, engine::simulate(board, request), &settled);
}
/// The only cause of a judgement of one kind.
Cause only(const Workbench& bench, Verdict kind) {
    const Judgement j = judged(bench);
    EXPECT_EQ(name(j.kind), name(kind));
    EXPECT_EQ(j.causes.size(), 1u);
    return j.causes.empty() ? Cause{} : j.causes.front();
}
/// A real astable of 1.4 kohm and 1 uF whose pins are free to be joined otherwise.
Workbench blinker() {
    return astable({.r1_ohm = 10e3, .r2_ohm = 68e3, .c_farad = 1e-6}, false);
}
/// A second astable beside U1 on the same supply, its reset left to the caller.
void addTimer(Workbench& b, double r1, double r2, double c) {
    b.part(PartKind::timer, "U2")
        .part(PartKind::resistor, "R11", {{"resistance", r1}})
        .part(PartKind::resistor, "R12", {{"resistance", r2}})
        .part(PartKind::capacitor, "C11", {{"capacitance", c}});
    b.net("supply", {"U2:8", "R11:1"}).net("ground", {"U2:1", "C11:minus"});
    b.net("discharge2", {"U2:7", "R11:2", "R12:1"}).net("timing2", {"U2:2", "U2:6", "R12:2", "C11:plus"});
    b.net("output2", {"U2:3"});
}

// --- blinks

TEST(Verdict, OfASoundBlinkerIsBlinksWithoutACause) {
    const Judgement j = judged(blinker());
    EXPECT_EQ(j.kind, Verdict::blinks);
    EXPECT_TRUE(j.causes.empty());
}

TEST(Verdict, NamesTheTimerThatGatesTheFirstAndThePinThatItIsJoinedTo) {
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 47e3, .c_farad = 1e-6}, false);
    addTimer(b, 100e3, 470e3, 1e-6);
    b.open("U1:4").net("supply", {"U2:4"}).net("output2", {"U1:4"});
    const Cause cause = only(b, Verdict::blinks);
    EXPECT_EQ(
        cause.sentence,
        "U1 has no single period of its own: the output (pin 3) of U2 is joined to reset (pin 4) of U1.");
    EXPECT_THAT(cause.places, ElementsAre("U1", "U2", "U1:4"));
}

TEST(Verdict, NamesThePartsThroughWhichATimerPullsTheControlPinOfTheFirst) {
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 47e3, .c_farad = 1e-6}, false);
    addTimer(b, 100e3, 470e3, 1e-6);
    b.part(PartKind::resistor, "R20", {{"resistance", 10e3}}).part(PartKind::diode, "D20");
    b.net("supply", {"U2:4"}).net("output2", {"D20:anode"}).net("between", {"D20:cathode", "R20:1"});
    b.net("control", {"R20:2", "U1:5"});
    const Cause cause = only(b, Verdict::blinks);
    EXPECT_THAT(cause.sentence,
                HasSubstr("the output (pin 3) of U2 reaches control (pin 5) of U1 through D20 and R20"));
    EXPECT_THAT(cause.places, ElementsAre("U1", "U2", "U1:5", "D20", "R20"));
}

TEST(Verdict, SaysThatTimersShareOnlyTheirSupply) {
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 47e3, .c_farad = 1e-6}, false);
    addTimer(b, 12e3, 71e3, 1e-6);
    b.net("supply", {"U2:4"});
    const Cause cause = only(b, Verdict::blinks);
    EXPECT_THAT(cause.sentence, HasSubstr("no single period of its own: U2 switches beside it"));
}

TEST(Verdict, NamesTheSwitchWhosePressesMakeTheTimerBlink) {
    // Reset hangs on ground through 1 kohm and gets the supply only while S1 is pressed.
    Workbench b = blinker();
    b.open("U1:4");
    b.part(PartKind::resistor, "R9", {{"resistance", 100.0}})
        .part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{0.2, 1e3}}}});
    b.net("reset", {"U1:4", "R9:1", "S1:1"}).net("ground", {"R9:2"}).net("supply", {"S1:2"});
    const Cause cause = only(b, Verdict::blinks);
    EXPECT_THAT(cause.sentence, HasSubstr("U1 has no single period of its own"));
    EXPECT_THAT(cause.sentence, HasSubstr("S1, which leads to reset (pin 4)"));
    EXPECT_THAT(cause.places, ElementsAre("U1", "S1", "U1:4"));
}

// --- settles

TEST(Verdict, TellsTheVoltageThatALeakAllowsAndTheLevelItIsShortOf) {
    // R_L across C1 divides 9 V (less the drop of the battery) with R1 + R2 = 78 kohm to 9 R_L/(78 k + R_L).
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 68e3, .c_farad = 1e-6, .leakage_ohm = 100e3}, false);
    const Cause cause = only(b, Verdict::settlesHigh);
    EXPECT_THAT(cause.sentence, HasSubstr("comes to rest at 5.05\u00A0V, under its level of 6\u00A0V"));
    EXPECT_THAT(cause.sentence, HasSubstr("50.5\u00A0\u00B5A through R2"));
    EXPECT_THAT(cause.sentence, HasSubstr("leakage of C1 takes 50.5\u00A0\u00B5A"));
    EXPECT_THAT(cause.places, ElementsAre("U1:6", "R2", "C1", "R1"));
}

TEST(Verdict, BlamesTheThresholdInputWhereTheResistorsAreTooLarge) {
    // At its level the pair of the threshold input takes half of its 30 nA (typical, TI NE555, SLFS022A); 3 V
    // over 401 Mohm bring 7.5 nA.
    Workbench b = astable({.r1_ohm = 400e6, .r2_ohm = 1e6, .c_farad = 1e-8}, false);
    b.set("U1.device.discharge_leakage=0");
    const Cause cause = only(b, Verdict::settlesHigh);
    EXPECT_THAT(cause.sentence, HasSubstr("the threshold input of U1 takes"));
    EXPECT_THAT(cause.places, ElementsAre("U1:6", "R2", "R1"));
}

TEST(Verdict, NamesTheNetOfATriggerThatIsKeptLow) {
    Workbench b = blinker();
    b.open("U1:2").net("ground", {"U1:2"});
    const Cause cause = only(b, Verdict::settlesHigh);
    EXPECT_THAT(cause.sentence,
                HasSubstr("Trigger (pin 2) of U1, in net 'ground', stays at 0\u00A0V, under its level of 3"));
    EXPECT_THAT(cause.places, ElementsAre("U1:2"));
}

TEST(Verdict, SaysThatTheThresholdIsOnNoChargingPath) {
    Workbench b = blinker();
    b.open("R2:1");
    const Cause cause = only(b, Verdict::settlesHigh);
    EXPECT_THAT(cause.sentence, HasSubstr("net 'timing' is on no charging path"));
    EXPECT_THAT(cause.places, ElementsAre("U1:6"));
}

TEST(Verdict, NamesTheOpenSwitchOrTheBackwardDiodeInTheOnlyChargingPath) {
    Workbench b = blinker();
    b.open("R1:1").part(PartKind::toggle, "S1").net("supply", {"S1:1"}).net("above", {"S1:2", "R1:1"});
    Cause cause = only(b, Verdict::settlesHigh);
    EXPECT_THAT(cause.sentence, HasSubstr("S1 is open in its only charging path"));
    EXPECT_THAT(cause.places, ElementsAre("U1:6", "S1"));

    Workbench d = blinker();
    d.open("R1:1")
        .part(PartKind::diode, "D9")
        .net("supply", {"D9:cathode"})
        .net("above", {"D9:anode", "R1:1"});
    cause = only(d, Verdict::settlesHigh);
    EXPECT_THAT(cause.sentence, HasSubstr("D9 lies the wrong way round in its only charging path"));
    EXPECT_THAT(cause.places, ElementsAre("U1:6", "D9"));
}

TEST(Verdict, SaysThatPinFiveHoldsTheLevelAboveTheSupply) {
    Workbench b = blinker();
    b.part(PartKind::supply, "BT2", {{"voltage", 10.0}, {"resistance", 1.0}});
    b.net("control", {"BT2:plus", "U1:5"}).net("ground", {"BT2:minus"});
    const Cause cause = only(b, Verdict::settlesHigh);
    EXPECT_THAT(cause.sentence, HasSubstr("level of 10\u00A0V (pin 5 holds it there)"));
}

TEST(Verdict, NamesTheNetOfAResetThatIsHeldLow) {
    Workbench b = blinker();
    b.open("U1:4").net("ground", {"U1:4"});
    const Cause cause = only(b, Verdict::settlesLow);
    EXPECT_THAT(
        cause.sentence,
        HasSubstr("Reset (pin 4) of U1, in net 'ground', stays at 0\u00A0V, under its level of 700\u00A0mV"));
    EXPECT_THAT(cause.places, ElementsAre("U1:4"));
}

TEST(Verdict, NamesWhatKeepsTheTimingCapacitorFromDischarging) {
    // 22 kohm from the supply straight to the timing net against 68 kohm to pin 7: rests near 9 x 68/90 = 6.8
    // V.
    Workbench b = blinker();
    b.part(PartKind::resistor, "R9", {{"resistance", 22e3}}).net("supply", {"R9:1"}).net("timing", {"R9:2"});
    const Cause cause = only(b, Verdict::settlesLow);
    EXPECT_THAT(cause.sentence, HasSubstr("comes to rest at 6.8"));
    EXPECT_THAT(cause.sentence, HasSubstr("through R9, and R2 takes"));
    EXPECT_THAT(cause.places, ElementsAre("U1:2", "R9", "R2"));

    // R1 of 20 ohm: at 5.8 V and 0.15 A the discharge pin cannot take more.
    Workbench strong = blinker();
    strong.set("R1.resistance=20");
    const Cause weak = only(strong, Verdict::settlesLow);
    EXPECT_THAT(weak.sentence, HasSubstr("discharge (pin 7) does not pull its net under"));
    EXPECT_THAT(weak.sentence, HasSubstr("through R1, and the discharge pin of U1 takes"));

    Workbench open = blinker();
    open.open("U1:7");
    EXPECT_THAT(only(open, Verdict::settlesLow).sentence, HasSubstr("Join pin 7 to it through R2"));
}

// --- does not settle

TEST(Verdict, NamesTheTimerThatSwitchesWithoutEnd) {
    Workbench b = blinker();
    b.part(PartKind::timer, "U2").net("supply", {"U2:8", "U2:4"}).net("ground", {"U2:1"});
    b.net("loop", {"U2:2", "U2:3", "U2:6"});
    const Cause cause = only(b, Verdict::doesNotSettle);
    EXPECT_THAT(cause.sentence, HasSubstr("U2 switches without end"));
    EXPECT_THAT(cause.places, ElementsAre("U2"));
}

TEST(Verdict, OfARunThatEndedTooEarlySaysWhenAndWhy) {
    const auto board = blinker().board();
    const auto run = engine::simulate(board, {.longest_s = 1e-3});
    const Judgement j = judge(board, run, nullptr);
    EXPECT_EQ(j.kind, Verdict::doesNotSettle);
    EXPECT_THAT(j.causes.at(0).sentence,
                HasSubstr("ended at 1\u00A0ms (time limit reached), and U1 had not switched"));
    EXPECT_EQ(judge(board, engine::simulate(board, {.longest_s = 1.0}), nullptr).kind, Verdict::blinks);
}

TEST(Verdict, OfARunOutOfStepsDoesNotBlameATimerThatHardlySwitched) {
    const auto board = blinker().board();
    const auto run = engine::simulate(board, {.accuracy = 1e-9, .stepBudget = 15});
    ASSERT_EQ(run.report.reason, engine::StopReason::stepBudget);
    const Judgement j = judge(board, run, nullptr);
    EXPECT_EQ(j.kind, Verdict::doesNotSettle);
    EXPECT_THAT(j.causes.at(0).sentence, Not(HasSubstr("without end")));
    EXPECT_THAT(j.causes.at(0).sentence, HasSubstr("15 steps"));
}

// --- cannot run

TEST(Verdict, NamesThePinsOfATimerWithoutSupply) {
    Workbench b = blinker();
    b.open("U1:8");
    EXPECT_THAT(only(b, Verdict::cannotRun).places, ElementsAre("U1:8"));
    EXPECT_THAT(only(b, Verdict::cannotRun).sentence, HasSubstr("pin 8 is joined to nothing"));
    b.open("U1:1");
    EXPECT_THAT(only(b, Verdict::cannotRun).places, ElementsAre("U1:8", "U1:1"));
}

TEST(Verdict, OfACircuitWithoutTimerOrSupplyIsThatItCannotRun) {
    const devices::Board empty;
    EXPECT_EQ(judge(empty, engine::simulate(empty, {}), nullptr).kind, Verdict::cannotRun);
    Workbench b;
    b.part(PartKind::timer, "U1");
    EXPECT_THAT(only(b, Verdict::cannotRun).sentence, HasSubstr("no supply"));
}

TEST(Verdict, NamesThePartsThatShortTheSupply) {
    Workbench b = blinker();
    b.part(PartKind::toggle, "S1", {{"closed", true}}).part(PartKind::resistor, "R9", {{"resistance", 0.02}});
    b.net("supply", {"S1:1"}).net("between", {"S1:2", "R9:1"}).net("ground", {"R9:2"});
    // 9 V through 0.5 ohm into 30 mohm leave 0.51 V.
    const Cause cause = only(b, Verdict::cannotRun);
    EXPECT_THAT(
        cause.sentence,
        HasSubstr(
            "BT1 is shorted by S1 and R9, 30\u00A0m\u03A9 together, and only 509\u00A0mV of its 9\u00A0V"));
    EXPECT_THAT(cause.places, ElementsAre("BT1", "S1", "R9"));

    Workbench lamp = blinker(); // a row of lamps without a resistor takes what the battery can give
    lamp.set("BT1.resistance=1k")
        .part(PartKind::diode, "D9", {{"forward_voltage", 0.3}, {"series_resistance", 0.1}});
    lamp.net("supply", {"D9:anode"}).net("ground", {"D9:cathode"});
    EXPECT_THAT(only(lamp, Verdict::cannotRun).sentence, HasSubstr("BT1 is shorted by D9"));
}

TEST(Verdict, NamesTheNetThatHoldsBothPinsOfTheSupplyOrOfTheTimer) {
    Workbench b;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    b.net("all", {"BT1:plus", "BT1:minus", "U1:8"}).net("other", {"U1:1"});
    Cause cause = only(b, Verdict::cannotRun);
    EXPECT_THAT(cause.sentence, HasSubstr("BT1 is shorted: its plus and minus are both in net 'all'"));
    EXPECT_THAT(cause.places, ElementsAre("BT1:plus", "BT1:minus"));

    Workbench pins;
    pins.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    pins.net("supply", {"BT1:plus", "U1:8", "U1:1"}).net("ground", {"BT1:minus"});
    cause = only(pins, Verdict::cannotRun);
    EXPECT_THAT(cause.sentence, HasSubstr("Pins 8 and 1 of U1 are both in net 'supply'"));
}

TEST(Verdict, SaysThatTheSupplyIsReversed) {
    Workbench b;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    b.net("a", {"BT1:plus", "U1:1"}).net("b", {"BT1:minus", "U1:8", "U1:4"});
    const Cause cause = only(b, Verdict::cannotRun);
    EXPECT_THAT(cause.sentence,
                HasSubstr("Pin 8 of U1 lies 9\u00A0V below pin 1: BT1 is the wrong way round"));
    EXPECT_THAT(cause.places, ElementsAre("U1:8", "U1:1", "BT1"));
}

TEST(Verdict, ListsThePartsOfAGroupThatFloats) {
    Workbench b;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}})
        .part(PartKind::timer, "U1")
        .part(PartKind::resistor, "R1", {{"resistance", 1e4}})
        .part(PartKind::resistor, "R9", {{"resistance", 1e4}});
    b.net("supply", {"BT1:plus", "R9:1"}).net("ground", {"BT1:minus", "R9:2"});
    b.net("top", {"U1:8", "R1:1"}).net("bottom", {"U1:1"}).net("timing", {"R1:2", "U1:6"});
    const Cause cause = only(b, Verdict::cannotRun);
    EXPECT_THAT(cause.sentence, HasSubstr("U1 and R1 float: no part joins them to BT1"));
    EXPECT_THAT(cause.places, ElementsAre("U1", "R1"));
}

TEST(Verdict, SaysThatNoPathLeadsToTheSupplysMinus) {
    // A capacitor is no path for direct current.
    Workbench b = blinker();
    b.open("U1:1").part(PartKind::capacitor, "C9", {{"capacitance", 1e-6}});
    b.net("low", {"U1:1", "C9:plus"}).net("ground", {"C9:minus"});
    const Cause cause = only(b, Verdict::cannotRun);
    EXPECT_THAT(cause.sentence, HasSubstr("No path leads from pin 1 of U1 to the minus of BT1"));
    EXPECT_THAT(cause.places, ElementsAre("U1:1", "BT1:minus"));
}

TEST(Verdict, NamesTheOpenSwitchOrTheBackwardDiodeInASupplyLead) {
    Workbench b = blinker();
    b.open("U1:8").part(PartKind::toggle, "S1").net("supply", {"S1:1"}).net("fed", {"S1:2", "U1:8"});
    b.open("U1:4").net("fed", {"U1:4"});
    Cause cause = only(b, Verdict::cannotRun);
    EXPECT_THAT(cause.sentence, HasSubstr("S1 is open between the plus of BT1 and pin 8 of U1"));
    EXPECT_THAT(cause.places, Contains("S1"));

    Workbench d = blinker();
    d.open("U1:1").part(PartKind::diode, "D9").net("low", {"U1:1", "D9:cathode"}).net("ground", {"D9:anode"});
    cause = only(d, Verdict::cannotRun);
    EXPECT_THAT(cause.sentence,
                HasSubstr("D9 lies the wrong way round between the minus of BT1 and pin 1 of U1"));
    EXPECT_THAT(cause.places, Contains("D9"));
}

TEST(Verdict, NamesTheResistorThatStarvesTheTimer) {
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 68e3, .c_farad = 1e-6, .family = "cmos"}, false);
    b.open("U1:8").open("U1:4").part(PartKind::resistor, "R9", {{"resistance", 1e6}});
    b.net("supply", {"R9:1"}).net("fed", {"R9:2", "U1:8", "U1:4"});
    const Cause cause = only(b, Verdict::cannotRun);
    EXPECT_THAT(
        cause.sentence,
        HasSubstr("are left between pins 8 and 1 of U1: R9, 1\u00A0M\u03A9, lies between them and BT1"));
    EXPECT_THAT(cause.places, ElementsAre("U1:8", "U1:1", "R9"));
}

TEST(Verdict, LetsATimerRunThatAPressOrAnotherOutputFeeds) {
    Workbench b = blinker();
    b.open("U1:8").part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{0.0, 1e4}}}});
    b.net("supply", {"S1:1"}).net("fed", {"S1:2", "U1:8"});
    EXPECT_EQ(judged(b).kind, Verdict::blinks);

    Workbench fed = astable({.r1_ohm = 10e3, .r2_ohm = 47e3, .c_farad = 1e-6}, false);
    addTimer(fed, 100e3, 470e3, 1e-6);
    fed.net("supply", {"U2:4"}).open("U1:8").net("output2", {"U1:8"});
    const Judgement j = judged(fed);
    EXPECT_EQ(j.kind, Verdict::blinks);
    EXPECT_THAT(j.causes.at(0).sentence,
                HasSubstr("the output (pin 3) of U2 is joined to supply (pin 8) of U1"));
}

TEST(Verdict, LetsACircuitRunWhoseFloatingPartsDoNotMatter) {
    Workbench b = blinker();
    b.part(PartKind::resistor, "R9", {{"resistance", 1e4}}).net("x", {"R9:1"}).net("y", {"R9:2"});
    EXPECT_EQ(judged(b).kind, Verdict::blinks);
    Workbench second = blinker(); // the first supply does nothing, the second feeds the timer
    second.part(PartKind::supply, "BT0", {{"voltage", 3.0}});
    EXPECT_EQ(judged(second).kind, Verdict::blinks);
}

} // namespace
} // namespace blinkwright::study
