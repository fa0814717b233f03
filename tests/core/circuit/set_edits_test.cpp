#include "core/circuit/set_edits.h"
#include "tests/core/circuit/snapshot.h"

#include <gtest/gtest.h>

namespace blinkwright::circuit {
namespace {

using tests::Snapshot;

struct SetEdits : testing::Test {
    Circuit c;
    PartId bt = c.addPart(PartKind::supply, "BT1", {{"voltage", 6.0}}).value();
    PartId u = c.addPart(PartKind::timer, "U1", {{"device", Overrides{{"delay", 1e-7}}}}).value();
    PartId r1 = c.addPart(PartKind::resistor, "R1", {{"resistance", 10e3}}, {{"shelf", "\"B 3\""}}).value();
    PartId r2 = c.addPart(PartKind::resistor, "R2", {{"resistance", 68e3}}).value();
    PartId r3 = c.addPart(PartKind::resistor, "R3", {{"resistance", 390.0}}).value();
    PartId r4 = c.addPart(PartKind::resistor, "R4", {{"resistance", 470.0}}).value();
    PartId c1 = c.addPart(PartKind::capacitor, "C1", {{"capacitance", 10e-6}}).value();

    SetEdits() {
        EXPECT_TRUE(c.setOverride(PartSet::B, r2, "resistance", 33e3));
        EXPECT_TRUE(c.setOverride(PartSet::B, u, "device.delay", 2e-7));
        EXPECT_TRUE(c.setOverride(PartSet::B, u, "device.discharge_leakage", 1e-9)); // not stated in A
        EXPECT_TRUE(c.setOverride(PartSet::B, c1, "esr", 0.5));                      // not stated in A
        c.setOverrideExtras(PartSet::B, r1, {{"later", "[1]"}});
        c.ties = {{{r3, "resistance"}, {r4, "resistance"}}};
    }
    /// What each part holds in a set, in the order of the parts.
    std::vector<Values> all(PartSet set) const {
        std::vector<Values> out;
        for (const Part& part : c.parts()) out.push_back(valuesIn(c, set, part.id));
        return out;
    }
    double ohms(PartSet set, PartId part) const {
        return std::get<double>(*c.value(set, part, "resistance"));
    }
    void does(const Result<Edit>& edit, std::string_view text) { tests::does(c, edit, text); }
};

TEST_F(SetEdits, ValuesInASetMergeTheDeviceParameterByParameter) {
    const auto a = std::get<Overrides>(valuesIn(c, PartSet::A, u).at("device"));
    const auto b = std::get<Overrides>(valuesIn(c, PartSet::B, u).at("device"));
    EXPECT_EQ(a.at("delay"), 1e-7);
    EXPECT_EQ(b.at("delay"), 2e-7);
    EXPECT_EQ(a.size(), 1u);
    EXPECT_EQ(b.size(), 2u);
}

TEST_F(SetEdits, CopyingAToBMakesThemAgreeAndKeepsUnknownKeys) {
    const auto a = all(PartSet::A);
    EXPECT_FALSE(setsAgree(c));
    does(copySet(c, PartSet::A, PartSet::B), "Copy Set A to Set B");
    EXPECT_TRUE(setsAgree(c));
    EXPECT_EQ(all(PartSet::A), a);
    EXPECT_EQ(all(PartSet::B), a);
    EXPECT_TRUE(followsA(c, r2, "resistance"));
    EXPECT_EQ(c.overrideExtras(PartSet::B, r1), (Extras{{"later", "[1]"}}));
    EXPECT_EQ(c.find(r1)->extras, (Extras{{"shelf", "\"B 3\""}}));
}

TEST_F(SetEdits, CopyingBToAMakesThemAgreeOnWhatBHeld) {
    const auto b = all(PartSet::B);
    does(copySet(c, PartSet::B, PartSet::A), "Copy Set B to Set A");
    EXPECT_EQ(all(PartSet::A), b);
    EXPECT_EQ(all(PartSet::B), b);
}

TEST_F(SetEdits, CopyingWorksFromOverridesOfSetAToo) {
    ASSERT_TRUE(c.setOverride(PartSet::A, r1, "resistance", 12e3)); // B holds the part's own 10 kΩ
    ASSERT_TRUE(c.setOverride(PartSet::A, c1, "leakage_resistance", 1e6));
    const Circuit before = c;
    const auto a = all(PartSet::A);
    does(copySet(c, PartSet::A, PartSet::B), "Copy Set A to Set B");
    EXPECT_EQ(all(PartSet::A), a);
    EXPECT_EQ(all(PartSet::B), a);
    c = before;
    const auto b = all(PartSet::B);
    does(copySet(c, PartSet::B, PartSet::A), "Copy Set B to Set A");
    EXPECT_EQ(all(PartSet::A), b);
    EXPECT_EQ(all(PartSet::B), b);
}

TEST_F(SetEdits, SwappingExchangesAllAndTwiceIsIdentity) {
    ASSERT_TRUE(c.setOverride(PartSet::B, r1, "resistance", 10e3)); // its own value, though the same
    const Snapshot before(c);
    const auto a = all(PartSet::A), b = all(PartSet::B);
    does(swapSets(c), "Swap Set A and Set B");
    EXPECT_EQ(all(PartSet::A), b);
    EXPECT_EQ(all(PartSet::B), a);
    EXPECT_FALSE(c.value(PartSet::B, c1, "esr")) << "what A did not state, B does not now";
    EXPECT_EQ(c.overrideExtras(PartSet::B, r1), (Extras{{"later", "[1]"}}));
    does(swapSets(c), "Swap Set A and Set B");
    EXPECT_EQ(Snapshot(c), before);
}

TEST_F(SetEdits, SetsThatAgreeHaveNothingToCopyOrSwap) {
    tests::doAndBack(c, copySet(c, PartSet::A, PartSet::B).value());
    for (const auto& edit :
         {copySet(c, PartSet::A, PartSet::B), copySet(c, PartSet::B, PartSet::A), swapSets(c)}) {
        ASSERT_FALSE(edit);
        EXPECT_EQ(edit.fault().message(), "Set A and Set B hold the same values already");
    }
}

TEST_F(SetEdits, BFollowsAUntilItHasAValueOfItsOwnAndFollowsAgainWhenToldTo) {
    EXPECT_TRUE(followsA(c, r1, "resistance"));
    tests::doAndBack(c, setValue(c, PartSet::A, r1, "resistance", 15e3));
    EXPECT_EQ(ohms(PartSet::B, r1), 15e3);

    EXPECT_FALSE(followsA(c, r2, "resistance"));
    EXPECT_FALSE(followsA(c, u, "device.delay"));
    tests::doAndBack(c, setValue(c, PartSet::A, r2, "resistance", 47e3));
    EXPECT_EQ(ohms(PartSet::B, r2), 33e3);
    does(followA(c, r2, "resistance"), "Let R2 in Set B follow Set A");
    EXPECT_EQ(ohms(PartSet::B, r2), 47e3);
    EXPECT_TRUE(followsA(c, r2, "resistance"));
    EXPECT_FALSE(followA(c, r2, "resistance"));
    does(followA(c, u, "device.delay"), "Let device.delay of U1 in Set B follow Set A");
    EXPECT_EQ(c.value(PartSet::B, u, "device.delay"), Value(1e-7));
}

TEST_F(SetEdits, AnEditOfSetANeverMovesAValueThatBHasOfItsOwn) {
    ASSERT_TRUE(c.setOverride(PartSet::A, r1, "resistance", 12e3)); // B: the part's own 10 kΩ
    ASSERT_TRUE(c.setOverride(PartSet::A, r4, "tolerance", 0.05));  // B: nothing stated
    EXPECT_FALSE(followsA(c, r1, "resistance"));
    tests::doAndBack(c, setValue(c, PartSet::A, r1, "resistance", 22e3));
    EXPECT_EQ(ohms(PartSet::A, r1), 22e3);
    EXPECT_EQ(ohms(PartSet::B, r1), 10e3);
    tests::doAndBack(c, setValue(c, PartSet::A, r4, "tolerance", 0.1));
    EXPECT_EQ(c.value(PartSet::A, r4, "tolerance"), Value(0.1));
    EXPECT_FALSE(c.value(PartSet::B, r4, "tolerance"));
}

TEST_F(SetEdits, TiedValuesFollowTogether) {
    tests::doAndBack(c, setValue(c, PartSet::B, r3, "resistance", 220.0));
    EXPECT_EQ(ohms(PartSet::B, r4), 220);
    does(followA(c, r4, "resistance"), "Let R4 in Set B follow Set A");
    EXPECT_TRUE(followsA(c, r3, "resistance"));
    EXPECT_EQ(ohms(PartSet::B, r3), 390);
}

TEST_F(SetEdits, ATieTakesTheOthersValueInBothSetsAndJoinsTies) {
    EXPECT_EQ(tiedTo(c, {r3, "resistance"}), (std::vector<ValueRef>{{r4, "resistance"}}));
    EXPECT_TRUE(tiedTo(c, {r1, "resistance"}).empty());
    does(tieValues(c, {r1, "resistance"}, {r2, "resistance"}), "Tie R1 to R2");
    EXPECT_EQ(ohms(PartSet::A, r1), 68e3);
    EXPECT_EQ(ohms(PartSet::B, r1), 33e3);
    EXPECT_EQ(c.ties.size(), 2u);
    does(tieValues(c, {r4, "resistance"}, {r1, "resistance"}), "Tie R4 to R1");
    EXPECT_EQ(c.ties.size(), 1u);
    EXPECT_EQ(tiedTo(c, {r3, "resistance"}).size(), 3u);
    EXPECT_EQ(ohms(PartSet::A, r3), 68e3);

    EXPECT_EQ(tieValues(c, {r1, "resistance"}, {r1, "resistance"}).fault().text,
              "a value cannot be tied to itself");
    EXPECT_EQ(tieValues(c, {r1, "resistance"}, {r4, "resistance"}).fault().text, "R1 is tied to R4 already");
    EXPECT_NE(tieValues(c, {r1, "resistance"}, {bt, "voltage"}).fault().text.find("another unit"),
              std::string::npos);
}

TEST_F(SetEdits, AValueIsUntiedAndATieOfOneGoes) {
    does(untieValue(c, {r4, "resistance"}), "Untie R4");
    EXPECT_TRUE(c.ties.empty());
    EXPECT_EQ(untieValue(c, {r4, "resistance"}).fault().text, "R4 is not tied to anything");
}

TEST_F(SetEdits, ABoardIsTheSameInASetWhateverTheOtherSetStatesAndWhereItsPartsAreDrawn) {
    const Circuit before = c;
    tests::doAndBack(c, setValue(c, PartSet::B, r1, "resistance", 22e3));
    tests::doAndBack(c, {edits::Place{r1, Placement{10, 20, 0, false, {}}}});
    EXPECT_TRUE(sameBoard(before, c, PartSet::A));
    EXPECT_FALSE(sameBoard(before, c, PartSet::B));
    const Circuit own = c;
    tests::doAndBack(c, setValue(c, PartSet::A, r2, "resistance", 22e3)); // B has its own R2
    EXPECT_FALSE(sameBoard(own, c, PartSet::A));
    EXPECT_TRUE(sameBoard(own, c, PartSet::B));
    tests::doAndBack(c, setValue(c, PartSet::A, r3, "resistance", 22e3)); // B follows in R3
    EXPECT_FALSE(sameBoard(own, c, PartSet::B));
}

} // namespace
} // namespace blinkwright::circuit
