#include "tests/core/study/findings_support.h"

#include <gmock/gmock.h>

namespace blinkwright::study {
namespace {

using circuit::PartKind;

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

} // namespace
} // namespace blinkwright::study
