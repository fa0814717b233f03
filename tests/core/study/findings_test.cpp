#include "tests/core/study/findings_support.h"

#include <gmock/gmock.h>

namespace blinkwright::study {
namespace {

using circuit::PartKind;

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

TEST(Severity, HasAWordForEach) {
    EXPECT_EQ(name(Severity::fault), "fault");
    EXPECT_EQ(name(Severity::overstress), "overstress");
    EXPECT_EQ(name(Severity::doubt), "doubt");
    EXPECT_EQ(name(Severity::caution), "caution");
    EXPECT_EQ(name(Severity::note), "note");
}

} // namespace
} // namespace blinkwright::study
