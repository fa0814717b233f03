#include "core/study/wiring_list.h"

#include "core/study/ready.h"
#include "tests/core/workbench.h"

#include <gmock/gmock.h>

namespace blinkwright::study {
namespace {

using circuit::PartKind;
using circuit::PartSet;
using testing::HasSubstr;

/// No-break spaces as plain ones, so that the texts below can be read.
std::string plain(std::string text) {
    for (std::size_t at; (at = text.find("\u00A0")) != std::string::npos;) text.replace(at, 2, " ");
    return text;
}
std::string step(const circuit::Circuit& c, const char* ref, PartSet set = PartSet::A) {
    for (const BuildStep& one : wiringList(c, set))
        if (one.ref == ref) return plain(one.text);
    return "none";
}

Workbench moleLight() {
    Workbench bench = plainAstable(33e3, 6.8e4, 1e-5);
    bench.part(PartKind::resistor, "R3", {{"resistance", 330.0}, {"tolerance", 0.01}})
        .part(PartKind::lamp, "D1");
    bench.net("output", {"U1:3", "R3:1"}).net("lamp", {"R3:2", "D1:anode"}).net("ground", {"D1:cathode"});
    bench.set("C1.polarised=true").set("C1.rated_voltage=25").set("C2.tolerance=0.1");
    return bench;
}

TEST(WiringList, NamesValueMarkingPinsAndRailsOfEachPart) {
    const auto& c = moleLight().circuit;
    EXPECT_EQ(step(c, "R1"), "R1, 33 kΩ (orange orange orange gold): from pin 7 to + rail");
    EXPECT_EQ(step(c, "R2"), "R2, 68 kΩ (blue grey orange gold): from pin 7 to pins 2 and 6");
    EXPECT_EQ(step(c, "R3"), "R3, 330 Ω (orange orange black black brown): from pin 3 to the anode of D1");
    EXPECT_EQ(step(c, "C1"), "C1, 10 µF 25 V electrolytic: plus to pins 2 and 6, minus to 0 V rail");
    EXPECT_EQ(step(c, "C2"), "C2, 10 nF (103K): from pin 5 to 0 V rail");
    EXPECT_EQ(step(c, "D1"), "D1, red lamp: anode (the longer lead) to R3, cathode to 0 V rail");
    EXPECT_EQ(step(c, "U1"), "U1, 555 timer, bipolar: notch up, pin 1 at the top left; pin 1 to 0 V rail, "
                             "pins 2 and 6 to each other, pins 4 and 8 to + rail");
    EXPECT_EQ(step(c, "BT1"), "BT1, supply 9 V: plus to + rail, minus to 0 V rail; join it last");
}

TEST(WiringList, PutsTimersFirstAndTheSupplyLastAndCountsDesignators) {
    Workbench bench = moleLight();
    bench.part(PartKind::resistor, "R10", {{"resistance", 1e3}});
    std::vector<std::string> refs;
    for (const BuildStep& one : wiringList(bench.circuit, PartSet::A)) refs.push_back(one.ref);
    EXPECT_THAT(refs, testing::ElementsAre("U1", "R1", "R2", "R3", "R10", "C1", "C2", "C3", "D1", "BT1"));
    EXPECT_EQ(step(bench.circuit, "R10"),
              "R10, 1 kΩ (brown black red gold): from nothing (left open) to nothing (left open)");
}

TEST(WiringList, FollowsTheSetOfValues) {
    Workbench bench = moleLight();
    ASSERT_TRUE(bench.circuit.setOverride(PartSet::B, bench.id("R1"), "resistance", 47e3));
    EXPECT_THAT(step(bench.circuit, "R1", PartSet::B), HasSubstr("47 kΩ (yellow violet orange gold)"));
    EXPECT_THAT(step(bench.circuit, "R1"), HasSubstr("33 kΩ"));
}

TEST(WiringList, SaysWhichTimerAPinIsOfWhereThereAreTwo) {
    const auto made = makeReady(defaultAnswers(ReadyKind::gatedGroups));
    ASSERT_TRUE(made);
    EXPECT_THAT(step(made.value(), "U2"), HasSubstr("pin 3 to pin 4 of U1"));
    EXPECT_THAT(step(made.value(), "R1"), HasSubstr("from pin 7 of U1 to + rail"));
    EXPECT_THAT(step(made.value(), "C5"), HasSubstr("pins 2 and 6 of U2"));
}

TEST(WiringList, NamesEveryPinOfEveryReadyBlinkerThatIsJoined) {
    for (const ReadyKind kind : allReadyKinds) {
        const auto made = makeReady(defaultAnswers(kind));
        ASSERT_TRUE(made);
        const auto steps = wiringList(made.value(), PartSet::A);
        EXPECT_EQ(steps.size(), made.value().parts().size());
        for (const BuildStep& one : steps)
            EXPECT_THAT(one.text, testing::Not(HasSubstr("nothing"))) << one.text;
    }
    const auto control = makeReady(defaultAnswers(ReadyKind::controlledRate));
    EXPECT_EQ(step(control.value(), "RV1"),
              "RV1, 4.7 kΩ variable resistor: one end to R4, the other end to R5, wiper to pin 5");
    const auto turns = makeReady(defaultAnswers(ReadyKind::takingTurns));
    EXPECT_THAT(step(turns.value(), "C5"), HasSubstr("minus to the anode of D1 and the cathode of D2"));
}

TEST(PartsList, GroupsPartsThatAreAlike) {
    Workbench bench = moleLight();
    bench.part(PartKind::resistor, "R4", {{"resistance", 33e3}});
    const auto rows = partsList(bench.circuit, PartSet::A);
    const auto found =
        std::find_if(rows.begin(), rows.end(), [](const PartsRow& r) { return r.refs[0] == "R1"; });
    ASSERT_NE(found, rows.end());
    EXPECT_THAT(found->refs, testing::ElementsAre("R1", "R4"));
    EXPECT_EQ(plain(found->description), "resistor 33 kΩ, 5 %, 250 mW");
    std::size_t parts = 0;
    for (const PartsRow& row : rows) parts += row.refs.size();
    EXPECT_EQ(parts, bench.circuit.parts().size());
    EXPECT_THAT(plain(partsText(rows)),
                HasSubstr("2 × resistor 33 kΩ, 5 %, 250 mW (orange orange orange gold): R1, R4\n"));
}

TEST(PartsList, IsWrittenAsTheRulesOfCsvWant) {
    Workbench bench = moleLight();
    const std::string csv = plain(partsCsv(partsList(bench.circuit, PartSet::A)));
    // RFC 4180: a header line, CRLF after each line, fields with commas in quotes.
    EXPECT_TRUE(csv.starts_with("quantity,references,kind,value,tolerance,rating,description,marking\r\n"));
    EXPECT_THAT(csv, HasSubstr("1,R1,resistor,33000,0.05,0.25,\"resistor 33 kΩ, 5 %, 250 mW\","
                               "orange orange orange gold\r\n"));
    EXPECT_THAT(csv,
                HasSubstr("1,C1,capacitor,1e-05,0.2,25,\"electrolytic capacitor 10 µF, 20 %, 25 V\",\r\n"));
    EXPECT_THAT(csv, HasSubstr("1,U1,timer,bipolar,,,\"555 timer, bipolar\",\r\n"));
    EXPECT_EQ(csv.find("\n"), csv.find("\r\n") + 1);
    const PartsRow odd{.refs = {"X1"},
                       .kind = "a \"b\"",
                       .description = {},
                       .marking = {},
                       .value = {},
                       .tolerance = {},
                       .rating = {}};
    EXPECT_THAT(partsCsv({odd}), HasSubstr("\"a \"\"b\"\"\""));
}

TEST(BuildText, HasTitlePartsAndNumberedSteps) {
    Workbench bench = moleLight();
    bench.circuit.title = "Mole light";
    const std::string text = plain(buildText(bench.circuit, PartSet::A));
    EXPECT_TRUE(text.starts_with("Mole light\n\nValues of Set A\n\nParts\n1 × 555 timer, bipolar: U1\n"))
        << text;
    EXPECT_THAT(text, HasSubstr("\nWiring\n1. U1, 555 timer"));
    EXPECT_THAT(text, HasSubstr("\n2. R1, 33 kΩ (orange orange orange gold): from pin 7 to + rail\n"));
    EXPECT_THAT(text, HasSubstr("\n9. BT1, "));
}

TEST(BuildText, EndsWithTheCautionsThatItsPartsCallFor) {
    Workbench bench = moleLight();
    const std::string text = buildText(bench.circuit, PartSet::A);
    const std::size_t cautions = text.find("\nCautions\n");
    ASSERT_NE(cautions, std::string::npos);
    for (const char* word : {"shorted battery", "electrolytic", "seizures", "Local rules"})
        EXPECT_NE(text.find(word, cautions), std::string::npos) << word;
    bench.set("C1.polarised=false").set("C3.polarised=false");
    EXPECT_EQ(buildText(bench.circuit, PartSet::A).find("electrolytic", cautions), std::string::npos);
    EXPECT_TRUE(buildCautions(circuit::Circuit(), PartSet::A).empty());
}

} // namespace
} // namespace blinkwright::study
