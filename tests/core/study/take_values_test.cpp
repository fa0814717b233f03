// A proposal's values for a circuit that is open.
#include "core/io/choices_csv.h"
#include "core/study/proposal.h"
#include "core/study/take_values.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace blinkwright::study {
namespace {

using circuit::Circuit;
using circuit::PartKind;
using circuit::PartSet;

Circuit proposal(double r2_ohm, Scheme scheme = {}) {
    Choice choice;
    choice.scheme = scheme;
    choice.r1_ohm = 10e3;
    choice.r2_ohm = r2_ohm;
    choice.c1_farad = 10e-6;
    choice.r3_ohm = 560;
    return proposedCircuit({}, choice);
}

double valueOf(const Circuit& circuit, PartSet set, const char* ref, const char* key) {
    return std::get<double>(*circuit.value(set, circuit.findRef(ref)->id, key));
}

TEST(TakeValues, GoIntoOneSetAndBackInOneStep) {
    Circuit open = proposal(33e3);
    const auto take = takeValues(open, proposal(68e3), PartSet::B);
    ASSERT_TRUE(take) << take.fault().message();
    EXPECT_EQ(circuit::describe(open, take.value()), "Take chosen values as Set B");
    const auto back = circuit::apply(open, take.value());
    ASSERT_TRUE(back);
    EXPECT_EQ(valueOf(open, PartSet::A, "R2", "resistance"), 33e3);
    EXPECT_EQ(valueOf(open, PartSet::B, "R2", "resistance"), 68e3);
    EXPECT_EQ(valueOf(open, PartSet::B, "C1", "capacitance"), 10e-6);
    ASSERT_TRUE(circuit::apply(open, back.value()));
    EXPECT_EQ(valueOf(open, PartSet::B, "R2", "resistance"), 33e3);
}

TEST(TakeValues, NameWhatTheOpenCircuitHasNot) {
    const auto diode = takeValues(proposal(33e3), proposal(33e3, {.diode = true}), PartSet::B);
    ASSERT_FALSE(diode);
    EXPECT_EQ(diode.fault().text, "The open circuit has no such part as D3.");
    const auto all = takeValues({}, proposal(33e3), PartSet::B);
    ASSERT_FALSE(all);
    EXPECT_NE(all.fault().text.find("R1, R2, C1, R3 and D1"), std::string::npos) << all.fault().text;
}

TEST(TakeValues, PassOverWhatNoWishAsksAbout) {
    Circuit open = proposal(33e3);
    ASSERT_TRUE(circuit::apply(open, {circuit::edits::RemovePart{open.findRef("C3")->id}}));
    EXPECT_TRUE(takeValues(open, proposal(68e3), PartSet::B));
    EXPECT_TRUE(wiredAlike(open, proposal(68e3)));
}

TEST(TakeValues, OtherWiringIsSeen) {
    const Circuit open = proposal(33e3);
    EXPECT_TRUE(wiredAlike(open, proposal(1e3)));
    EXPECT_FALSE(wiredAlike(open, proposal(1e3, {.lampToRail = true})));
    EXPECT_FALSE(wiredAlike(proposal(1e3, {.diode = true}), open)) << "a diode more";
}

TEST(ChoicesCsv, HasALineAProposalAndEmptyFieldsForWhatIsNotThere) {
    Choices choices;
    Choice one;
    one.r1_ohm = 1e4;
    one.rate_Hz = 1.25;
    one.scheme.diode = true;
    choices.best = {one, one};
    const std::string csv = io::choicesCsv(choices);
    EXPECT_EQ(std::count(csv.begin(), csv.end(), '\n'), 3);
    EXPECT_TRUE(csv.starts_with("R1 [ohm],R2 [ohm],RV1 [ohm],"));
    EXPECT_NE(csv.find("\r\n10000,,,,,,,yes,ground,1.25,,,"), std::string::npos) << csv;
    const std::string line = csv.substr(0, csv.find('\r'));
    const std::string second =
        csv.substr(csv.find('\n') + 1, csv.find('\r', csv.find('\n')) - csv.find('\n') - 1);
    EXPECT_EQ(std::count(line.begin(), line.end(), ','), std::count(second.begin(), second.end(), ','));
}

} // namespace
} // namespace blinkwright::study
