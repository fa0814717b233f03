#include "core/study/findings.h"

#include "core/study/readings.h"
#include "tests/core/workbench.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace blinkwright::study {
namespace {

using circuit::PartKind;

const Finding* find(const std::vector<Finding>& all, std::string_view kind) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const Finding& f) { return f.kind == kind; });
    return at == all.end() ? nullptr : &*at;
}
std::vector<std::string> kinds(const std::vector<Finding>& all) {
    std::vector<std::string> list;
    for (const auto& f : all) list.push_back(f.kind);
    return list;
}
std::vector<Finding> of(const Workbench& bench) {
    return findingsOf(bench.board(), nullptr);
}

/// The plain astable with a red lamp behind 330 ohm from the output to ground: nothing to find.
Workbench sound() {
    Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
    bench.part(PartKind::resistor, "R3", {{"resistance", 330.0}}).part(PartKind::lamp, "D1");
    bench.net("output", {"U1:3", "R3:1"}).net("lamp", {"R3:2", "D1:anode"}).net("ground", {"D1:cathode"});
    return bench;
}

/// Readings as a run of `sound` might give them: rate 1 Hz, half lit.
Readings blinking(const Workbench& bench, double rate = 1) {
    Readings readings;
    readings.verdict = Verdict::blinks;
    TimerReading timer;
    timer.ref = "U1";
    timer.settled = Phase{0.5 / rate, 0.5 / rate};
    readings.timers.push_back(timer);
    for (const auto& part : bench.circuit.parts()) {
        PartReading row;
        row.ref = part.ref;
        readings.parts.push_back(row);
        if (part.kind != PartKind::lamp) continue;
        LampReading lamp;
        lamp.ref = part.ref;
        lamp.peak_A = 0.015;
        lamp.rms_A = 0.01;
        lamp.mean_A = 0.0075;
        lamp.litTime_s = 0.5 / rate;
        lamp.reversePeak_V = 0;
        readings.lamps.push_back(lamp);
    }
    return readings;
}

TEST(Findings, HaveNothingToSayOfASoundBlinker) {
    const Workbench bench = sound();
    EXPECT_THAT(kinds(of(bench)), testing::IsEmpty());
    const Readings readings = blinking(bench);
    EXPECT_THAT(kinds(findingsOf(bench.board(), &readings)), testing::IsEmpty());
}

TEST(Findings, EachSayWhatAndWhereAndWhatToDo) {
    Workbench bench; // as wrong as can be
    bench.part(PartKind::supply, "BT1", {{"voltage", 20.0}})
        .part(PartKind::timer, "U1")
        .part(PartKind::lamp, "D1");
    bench.net("supply", {"BT1:plus", "U1:8", "U1:3", "D1:cathode"})
        .net("ground", {"BT1:minus", "U1:1", "U1:7", "D1:anode"});
    const auto all = of(bench);
    EXPECT_GE(all.size(), 7u);
    for (const auto& f : all) {
        EXPECT_TRUE(f.text.ends_with('.')) << f.kind << ": " << f.text;
        EXPECT_TRUE(f.remedy.ends_with('.')) << f.kind << ": " << f.remedy;
        EXPECT_FALSE(f.places.empty()) << f.kind;
        if (f.limit) {
            EXPECT_FALSE(f.source.empty()) << f.kind;
        }
    }
    EXPECT_TRUE(
        std::is_sorted(all.begin(), all.end(), [](auto& a, auto& b) { return a.severity < b.severity; }));
}

TEST(Findings, MissASupplyAndATimer) {
    const auto all = findingsOf(devices::Board{}, nullptr);
    EXPECT_THAT(kinds(all), testing::ElementsAre("no-supply", "no-timer"));
}

TEST(Findings, MissASupplyThatIsThereButNotJoined) {
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    bench.net("a", {"BT1:plus", "U1:4"}).net("b", {"BT1:minus", "U1:1"});
    ASSERT_NE(find(of(bench), "no-supply"), nullptr);
    EXPECT_EQ(find(of(bench), "no-supply")->places.front(), "U1:8");
}

TEST(Findings, NoticeASupplyTheWrongWayRound) {
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    bench.net("a", {"BT1:plus", "U1:1"}).net("b", {"BT1:minus", "U1:8", "U1:4"});
    const auto all = of(bench);
    ASSERT_NE(find(all, "supply-reversed"), nullptr);
    EXPECT_EQ(find(all, "supply-reversed")->number, -9.0);
    EXPECT_EQ(find(all, "supply-out-of-range"), nullptr);
}

TEST(Findings, HoldTheSupplyAgainstTheMakersRangeEndsAllowed) {
    // Bipolar 4.5 to 16 V (TI SLFS022F, ST Doc ID 2182 Table 2); CMOS 2 to 15 V (TI TLC555, SLFS043C).
    struct Case {
        const char* family;
        double volts;
        std::optional<Severity> severity;
    };
    const Case cases[] = {{"bipolar", 4.5, {}},
                          {"bipolar", 16, {}},
                          {"bipolar", 4.49, Severity::doubt},
                          {"bipolar", 16.1, Severity::overstress},
                          {"cmos", 2, {}},
                          {"cmos", 15, {}},
                          {"cmos", 1.9, Severity::doubt},
                          {"cmos", 15.5, Severity::overstress}};
    for (const auto& [family, volts, severity] : cases) {
        Workbench bench = sound();
        bench.set("U1.family=" + std::string(family)).set("BT1.voltage=" + std::to_string(volts));
        const auto all = of(bench);
        const Finding* f = find(all, "supply-out-of-range");
        ASSERT_EQ(f != nullptr, severity.has_value()) << family << ' ' << volts;
        if (f) {
            EXPECT_EQ(f->severity, *severity) << family << ' ' << volts;
        }
    }
}

TEST(Findings, AddUpStackedSupplies) {
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::supply, "BT2", {{"voltage", 9.0}});
    bench.part(PartKind::timer, "U1");
    bench.net("top", {"BT2:plus", "U1:8"})
        .net("middle", {"BT2:minus", "BT1:plus"})
        .net("ground", {"BT1:minus", "U1:1"});
    const auto all = of(bench);
    ASSERT_NE(find(all, "supply-out-of-range"), nullptr);
    EXPECT_DOUBLE_EQ(find(all, "supply-out-of-range")->number.value(), 18);
}

TEST(Findings, MissTimingParts) {
    Workbench bench = bareTimer();
    auto all = of(bench);
    EXPECT_NE(find(all, "no-timing-capacitor"), nullptr);
    EXPECT_EQ(find(all, "no-timing-resistor"), nullptr); // one thing at a time
    bench.part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    bench.net("timing", {"C1:plus"}).net("ground", {"C1:minus"});
    all = of(bench);
    EXPECT_EQ(find(all, "no-timing-capacitor"), nullptr);
    EXPECT_NE(find(all, "no-timing-resistor"), nullptr);
}

TEST(Findings, DoNotDoubtABlinkerThatBlinks) {
    Workbench bench = bareTimer();
    const Readings readings = blinking(bench);
    const auto all = findingsOf(bench.board(), &readings);
    for (const auto* kind : {"no-timing-capacitor", "no-timing-resistor", "discharge-unused", "levels-apart"})
        EXPECT_EQ(find(all, kind), nullptr) << kind;
}

TEST(Findings, NoticeTriggerAndThresholdApartOnlyWhereItDoesNotBlink) {
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    bench.net("supply", {"BT1:plus", "U1:8"})
        .net("ground", {"BT1:minus", "U1:1"})
        .net("t", {"U1:2"})
        .net("h", {"U1:6"});
    EXPECT_EQ(find(of(bench), "levels-apart"), nullptr);
    Readings readings = blinking(bench);
    EXPECT_EQ(find(findingsOf(bench.board(), &readings), "levels-apart"), nullptr);
    readings.verdict = Verdict::settlesHigh;
    EXPECT_NE(find(findingsOf(bench.board(), &readings), "levels-apart"), nullptr);
    Workbench joined = sound();
    EXPECT_EQ(find(findingsOf(joined.board(), &readings), "levels-apart"), nullptr);
}

/// A timer whose pin 4 is yet to be joined.
Workbench withoutReset() {
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    bench.net("supply", {"BT1:plus", "U1:8"}).net("ground", {"BT1:minus", "U1:1"});
    return bench;
}

TEST(Findings, NoticeAnOpenReset) {
    Workbench bench = withoutReset();
    ASSERT_NE(find(of(bench), "reset-open"), nullptr);
    EXPECT_EQ(find(of(bench), "reset-open")->places, std::vector<std::string>{"U1:4"});
    bench.net("alone", {"U1:4"});
    EXPECT_NE(find(of(bench), "reset-open"), nullptr);
    EXPECT_EQ(find(of(sound()), "reset-open"), nullptr);
}

TEST(Findings, NoticeAResetThatIsHeldLow) {
    Workbench grounded = withoutReset();
    grounded.net("ground", {"U1:4"});
    ASSERT_NE(find(of(grounded), "reset-low"), nullptr);
    EXPECT_EQ(find(of(grounded), "reset-low")->number, 0.0);
    EXPECT_EQ(find(of(grounded), "reset-low")->limit, 0.7);

    // The bipolar pin pulls up with 10 kohm to 0.8 x 9 V: 1 kohm to ground leaves 7.2 V / 11 = 0.65 V, 2
    // kohm 1.2 V.
    for (const auto& [ohms, low] : {std::pair{1e3, true}, std::pair{2e3, false}}) {
        Workbench bench = withoutReset();
        bench.part(PartKind::resistor, "R9", {{"resistance", ohms}})
            .net("reset", {"U1:4", "R9:1"})
            .net("ground", {"R9:2"});
        const auto all = of(bench);
        ASSERT_EQ(find(all, "reset-low") != nullptr, low) << ohms;
        if (low) {
            EXPECT_NEAR(find(all, "reset-low")->number.value(), 7.2 / 11, 1e-12);
        }
        bench.set("U1.family=cmos"); // whose pin does not
        EXPECT_NE(find(of(bench), "reset-low"), nullptr) << ohms;
        bench.part(PartKind::resistor, "R8", {{"resistance", 1e3}})
            .net("reset", {"R8:1"})
            .net("supply", {"R8:2"});
        EXPECT_EQ(find(of(bench), "reset-low"), nullptr) << ohms;
    }
}

TEST(Findings, DoNotCallAResetLowThatAPressLifts) {
    Workbench bench = withoutReset();
    bench.part(PartKind::toggle, "S1", {{"closed", true}})
        .net("reset", {"U1:4", "S1:1"})
        .net("ground", {"S1:2"});
    EXPECT_NE(find(of(bench), "reset-low"), nullptr);
    bench.set("S1.presses=[[1,2]]");
    EXPECT_EQ(find(of(bench), "reset-low"), nullptr);
}

TEST(Findings, NoticeADischargePinOnARail) {
    Workbench bench = plainAstable(99, 6.8e4, 1e-5);
    ASSERT_NE(find(of(bench), "discharge-shorted"), nullptr);
    EXPECT_DOUBLE_EQ(find(of(bench), "discharge-shorted")->number.value(), 99);
    EXPECT_THAT(find(of(bench), "discharge-shorted")->places, testing::ElementsAre("U1:7", "R1"));
    bench.set("R1.resistance=100");
    EXPECT_EQ(find(of(bench), "discharge-shorted"), nullptr);
    bench.part(PartKind::resistor, "R9", {{"resistance", 150.0}})
        .net("supply", {"R9:1"})
        .net("discharge", {"R9:2"});
    EXPECT_NE(find(of(bench), "discharge-shorted"), nullptr); // 60 ohm in parallel
    Workbench straight = bareTimer();
    straight.net("ground", {"U1:7"});
    EXPECT_EQ(find(of(straight), "discharge-shorted")->number, 0.0);
}

TEST(Findings, NoticeADischargePinThatIsNotUsed) {
    Workbench bench = bareTimer();
    bench.part(PartKind::resistor, "R1", {{"resistance", 1e5}})
        .part(PartKind::capacitor, "C1", {{"capacitance", 1e-6}});
    bench.net("timing", {"R1:2", "C1:plus"}).net("ground", {"C1:minus"});
    Workbench fromOutput = bench;
    bench.net("supply", {"R1:1"});
    EXPECT_NE(find(of(bench), "discharge-unused"), nullptr);
    fromOutput.net("output", {"U1:3", "R1:1"});
    EXPECT_EQ(find(of(fromOutput), "discharge-unused"), nullptr);
}

TEST(Findings, NoticeAShortedOutput) {
    for (const char* net : {"supply", "ground"}) {
        Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
        bench.part(PartKind::toggle, "S1").net("output", {"U1:3", "S1:1"}).net(net, {"S1:2"});
        EXPECT_EQ(find(of(bench), "output-shorted"), nullptr) << net;
        bench.set("S1.closed=true");
        EXPECT_NE(find(of(bench), "output-shorted"), nullptr) << net;
    }
}

TEST(Findings, NoticeABridgedPart) {
    Workbench bench = sound();
    bench.part(PartKind::resistor, "R9", {{"resistance", 1e3}}).net("supply", {"R9:1", "R9:2"});
    ASSERT_NE(find(of(bench), "part-bridged"), nullptr);
    EXPECT_EQ(find(of(bench), "part-bridged")->places, std::vector<std::string>{"R9"});
}

TEST(Findings, NoticePartsThatFloat) {
    Workbench bench = sound();
    bench.part(PartKind::resistor, "R8", {{"resistance", 1e3}})
        .part(PartKind::resistor, "R9", {{"resistance", 1e3}});
    bench.net("island", {"R8:1", "R9:1"});
    auto all = of(bench);
    EXPECT_EQ(std::count_if(all.begin(), all.end(), [](auto& f) { return f.kind == "floating"; }), 2);
    bench.net("ground", {"R9:2"});
    EXPECT_EQ(find(of(bench), "floating"), nullptr);
}

TEST(Findings, NoticeALampThatNothingLimits) {
    Workbench bench = sound();
    bench.set("R3.resistance=9");
    ASSERT_NE(find(of(bench), "lamp-unlimited"), nullptr);
    EXPECT_DOUBLE_EQ(find(of(bench), "lamp-unlimited")->number.value(), 9);
    bench.set("R3.resistance=10");
    EXPECT_EQ(find(of(bench), "lamp-unlimited"), nullptr);
}

/// Two lamps side by side in opposite directions, behind a resistor and a big capacitor.
Workbench pair() {
    Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
    bench.part(PartKind::resistor, "R3", {{"resistance", 220.0}})
        .part(PartKind::capacitor, "C9", {{"capacitance", 1e-3}})
        .part(PartKind::lamp, "D1")
        .part(PartKind::lamp, "D2");
    bench.net("output", {"U1:3", "R3:1"}).net("coupling", {"R3:2", "C9:plus"});
    bench.net("lamps", {"C9:minus", "D1:anode", "D2:cathode"}).net("ground", {"D1:cathode", "D2:anode"});
    return bench;
}

TEST(Findings, FollowTheCurrentOfACoupledPairThroughItsResistor) {
    Workbench bench = pair();
    EXPECT_EQ(find(of(bench), "lamp-unlimited"), nullptr);
    EXPECT_EQ(find(of(bench), "lamp-backwards"), nullptr);
    bench.set("R3.resistance=5");
    const auto all = of(bench);
    EXPECT_EQ(std::count_if(all.begin(), all.end(), [](auto& f) { return f.kind == "lamp-unlimited"; }), 2);
}

TEST(Findings, DoNotFollowALampsCurrentBackwardsThroughAClampingDiode) {
    Workbench bench = sound();
    bench.part(PartKind::diode, "D9").net("lamp", {"D9:anode"}).net("supply", {"D9:cathode"});
    EXPECT_EQ(find(of(bench), "lamp-unlimited"), nullptr);
}

TEST(Findings, NoticeTwoLampsFromRailToRailOnlyWhereTheSupplyLightsBoth) {
    Workbench bench = sound(); // D2 from the rail to the joint of R3 and D1
    bench.part(PartKind::lamp, "D2").net("supply", {"D2:anode"}).net("lamp", {"D2:cathode"});
    EXPECT_NE(find(of(bench), "lamp-unlimited"), nullptr);
    bench.set("BT1.voltage=3").set("U1.family=cmos"); // two red lamps take up 3.5 V
    EXPECT_EQ(find(of(bench), "lamp-unlimited"), nullptr);
}

TEST(Findings, NoticeALampTheWrongWayRound) {
    Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
    bench.part(PartKind::resistor, "R3", {{"resistance", 330.0}}).part(PartKind::lamp, "D1");
    bench.net("output", {"U1:3", "R3:1"}).net("lamp", {"R3:2", "D1:cathode"}).net("ground", {"D1:anode"});
    ASSERT_NE(find(of(bench), "lamp-backwards"), nullptr);
    Readings readings = blinking(bench);
    readings.lamps[0].peak_A = 0;
    readings.lamps[0].litTime_s = 0;
    readings.lamps[0].reversePeak_V = 7.5;
    const auto all = findingsOf(bench.board(), &readings);
    ASSERT_NE(find(all, "lamp-backwards"), nullptr);
    EXPECT_EQ(find(all, "lamp-backwards")->severity, Severity::fault);
    EXPECT_EQ(find(all, "lamp-dark"), nullptr);
    EXPECT_NE(find(all, "lamp-reversed"), nullptr);
}

TEST(Findings, TakeALampToTheRailForTheRightWayRound) {
    Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
    bench.part(PartKind::resistor, "R3", {{"resistance", 330.0}}).part(PartKind::lamp, "D1");
    bench.net("output", {"U1:3", "R3:1"}).net("lamp", {"R3:2", "D1:cathode"}).net("supply", {"D1:anode"});
    EXPECT_EQ(find(of(bench), "lamp-backwards"), nullptr);
}

TEST(Findings, HoldALampAgainstItsRatings) {
    const Workbench bench = sound();
    Readings readings = blinking(bench);
    const auto kindsNow = [&] { return kinds(findingsOf(bench.board(), &readings)); };
    readings.lamps[0].peak_A = 0.0009; // under 5 % of 20 mA
    EXPECT_THAT(kindsNow(), testing::ElementsAre("lamp-dark"));
    readings.lamps[0].peak_A = 0.061; // over 3 x 20 mA
    EXPECT_THAT(kindsNow(), testing::ElementsAre("lamp-overdriven"));
    readings.lamps[0].peak_A = 0.03;
    readings.lamps[0].rms_A = 0.021;
    EXPECT_THAT(kindsNow(), testing::ElementsAre("lamp-overdriven"));
    readings.lamps[0].rms_A = 0.02;
    readings.lamps[0].reversePeak_V = 5.1;
    EXPECT_THAT(kindsNow(), testing::ElementsAre("lamp-reversed"));
    readings.lamps[0].reversePeak_V = 5;
    EXPECT_THAT(kindsNow(), testing::IsEmpty());
}

TEST(Findings, HoldALampOverItsRatingToPulsesOfTenMilliseconds) {
    const Workbench bench = sound();
    Readings readings = blinking(bench);
    readings.lamps[0].peak_A = 0.03;
    readings.lamps[0].overRated_s = 9e-3;
    EXPECT_THAT(findingsOf(bench.board(), &readings), testing::IsEmpty());
    readings.lamps[0].overRated_s = 11e-3;
    const auto all = findingsOf(bench.board(), &readings);
    ASSERT_THAT(kinds(all), testing::ElementsAre("lamp-overdriven"));
    EXPECT_THAT(all[0].text, testing::HasSubstr("11\u00A0ms"));
    EXPECT_EQ(all[0].limit, 0.02);
}

TEST(Findings, NoticeALampThatGlowsInItsDarkPhase) {
    const Workbench bench = sound();
    Readings readings = blinking(bench);
    const auto kindsNow = [&] { return kinds(findingsOf(bench.board(), &readings)); };
    for (const double dark : {-1e-9, 4.9e-6, 1.01e-3}) { // as good as nothing, or lit in both phases
        readings.lamps[0].darkerMean_A = dark;
        EXPECT_THAT(kindsNow(), testing::IsEmpty()) << dark;
    }
    for (const double glow : {5.1e-6, 0.99e-3}) {
        readings.lamps[0].darkerMean_A = glow;
        EXPECT_THAT(kindsNow(), testing::ElementsAre("ghost-glow")) << glow;
    }
}

TEST(Findings, MissATimingCapacitorWhereOnlyTheDelayPacesTheTimer) {
    Workbench bench = sound();
    bench.open("C1:plus").open("C1:minus");
    Readings readings = blinking(bench, 5e5);
    readings.timers[0].switchings_s = {1e-6, 2e-6, 3e-6, 4e-6};
    EXPECT_NE(find(findingsOf(bench.board(), &readings), "no-timing-capacitor"), nullptr);
    readings.timers[0].switchings_s = {1, 2, 3, 4}; // something else paces it
    EXPECT_EQ(find(findingsOf(bench.board(), &readings), "no-timing-capacitor"), nullptr);
}

TEST(Findings, CautionAboutFlickerByTheRateOfTheLamp) {
    // WCAG 2.2, success criterion 2.3.1: not more than three flashes in any one second.
    const Workbench bench = sound();
    const std::pair<double, const char*> rates[] = {
        {3, nullptr}, {3.1, "flicker"}, {60, "flicker"}, {61, "appears-steady"}};
    for (const auto& [rate, kind] : rates) {
        Readings readings = blinking(bench, rate);
        auto all = findingsOf(bench.board(), &readings);
        EXPECT_THAT(kinds(all), kind ? testing::ElementsAre(std::string(kind))
                                     : testing::Matcher<std::vector<std::string>>(testing::IsEmpty()))
            << rate;
        readings.lamps[0].litTime_s = 1 / rate; // never dark: no flash
        EXPECT_THAT(kinds(findingsOf(bench.board(), &readings)), testing::IsEmpty()) << rate;
    }
}

TEST(Findings, CautionAboutAStrongLamp) {
    Workbench bench = sound();
    bench.set("D1.luminous_intensity=0.9");
    EXPECT_EQ(find(of(bench), "bright-lamp"), nullptr);
    bench.set("D1.luminous_intensity=7");
    EXPECT_NE(find(of(bench), "bright-lamp"), nullptr);
}

TEST(Findings, NoteMissingBypassCapacitors) {
    Workbench bench = bareTimer();
    auto all = of(bench);
    EXPECT_NE(find(all, "control-unbypassed"), nullptr);
    ASSERT_NE(find(all, "supply-unbypassed"), nullptr);
    EXPECT_FALSE(find(all, "supply-unbypassed")->number);
    bench.part(PartKind::capacitor, "C3", {{"capacitance", 9e-9}})
        .net("supply", {"C3:plus"})
        .net("ground", {"C3:minus"});
    EXPECT_NE(find(of(bench), "supply-unbypassed"), nullptr);
    bench.set("C3.capacitance=10n");
    EXPECT_EQ(find(of(bench), "supply-unbypassed"), nullptr);
}

TEST(Findings, HoldPartsAgainstTheirRatings) {
    Workbench bench = sound();
    bench.set("C1.rated_voltage=6.3");
    Readings readings = blinking(bench);
    for (auto& row : readings.parts) {
        if (row.ref == "R3") row.meanPower_W = 0.26;
        if (row.ref == "C1") row.peakVoltage_V = 6.4;
        if (row.ref == "U1") row.sourced_A = 0.21;
        if (row.ref == "U1") row.meanPower_W = 0.76;
    }
    EXPECT_THAT(kinds(findingsOf(bench.board(), &readings)),
                testing::UnorderedElementsAre("resistor-overpowered", "capacitor-overvoltage",
                                              "timer-output-overloaded", "timer-hot"));
}

TEST(Findings, HoldATimersPinsAgainstTheLimitOfEachDirection) {
    const auto of = [](const char* family, double sourced, double sunk, double discharge) {
        Workbench bench = sound();
        bench.set(std::string("U1.family=") + family);
        Readings readings = blinking(bench);
        for (auto& row : readings.parts) {
            if (row.ref != "U1") continue;
            row.sourced_A = sourced;
            row.sunk_A = sunk;
            row.dischargePeak_A = discharge;
        }
        return kinds(findingsOf(bench.board(), &readings));
    };
    // TI NE555, SLFS022A: 200 mA either way; TI TLC555: 10 mA sourced, 100 mA sunk.
    using testing::ElementsAre;
    EXPECT_THAT(of("bipolar", 0.2, 0.2, 0.2), testing::IsEmpty());
    EXPECT_THAT(of("bipolar", 0.21, 0, 0), ElementsAre("timer-output-overloaded"));
    EXPECT_THAT(of("bipolar", 0, 0.21, 0), ElementsAre("timer-output-overloaded"));
    EXPECT_THAT(of("bipolar", 0, 0, 0.21), ElementsAre("timer-discharge-overloaded"));
    EXPECT_THAT(of("cmos", 0.01, 0.1, 0.1), testing::IsEmpty());
    EXPECT_THAT(of("cmos", 0.011, 0, 0), ElementsAre("timer-output-overloaded"));
    EXPECT_THAT(of("cmos", 0, 0.11, 0), ElementsAre("timer-output-overloaded"));
    EXPECT_THAT(of("cmos", 0, 0, 0.11), ElementsAre("timer-discharge-overloaded"));
}

TEST(Findings, NoticeAPolarisedCapacitorTheWrongWayRound) {
    Workbench bench = sound();
    Readings readings = blinking(bench);
    for (auto& row : readings.parts)
        if (row.ref == "C1") row.lowestVoltage_V = -1.01;
    EXPECT_THAT(findingsOf(bench.board(), &readings), testing::IsEmpty()) << "a film capacitor may be turned";
    bench.set("C1.polarised=true");
    EXPECT_THAT(kinds(findingsOf(bench.board(), &readings)), testing::ElementsAre("capacitor-reversed"));
    for (auto& row : readings.parts)
        if (row.ref == "C1") row.lowestVoltage_V = -0.99;
    EXPECT_THAT(findingsOf(bench.board(), &readings), testing::IsEmpty());
}

TEST(Findings, DoubtHugeTimingResistorsAndLeakyCapacitors) {
    // TI SLFS022: 3.4 Mohm at 5 V.
    Workbench large = plainAstable(1.7e6, 1.8e6, 1e-7, 5);
    EXPECT_NE(find(of(large), "resistance-too-large"), nullptr);
    large.set("R1.resistance=1M");
    EXPECT_EQ(find(of(large), "resistance-too-large"), nullptr);

    // Charging 3 V / 100 kohm = 30 uA at the threshold of 6 V.
    const std::pair<const char*, std::optional<Severity>> leaks[] = {
        {"150k", Severity::fault}, {"500k", Severity::doubt}, {"1M", Severity::note}, {"3M", std::nullopt}};
    for (const auto& [ohms, severity] : leaks) {
        Workbench leaky = plainAstable(5e4, 5e4, 1e-5, 9);
        leaky.set(std::string("C1.leakage_resistance=") + ohms);
        const auto all = of(leaky);
        const Finding* f = find(all, "leakage-too-large");
        ASSERT_EQ(f != nullptr, severity.has_value()) << ohms;
        if (f) {
            EXPECT_EQ(f->severity, *severity) << ohms;
        }
    }
}

TEST(Severity, HasAWordForEach) {
    EXPECT_EQ(name(Severity::fault), "fault");
    EXPECT_EQ(name(Severity::overstress), "overstress");
    EXPECT_EQ(name(Severity::doubt), "doubt");
    EXPECT_EQ(name(Severity::caution), "caution");
    EXPECT_EQ(name(Severity::note), "note");
}

} // namespace
} // namespace blinkwright::study
