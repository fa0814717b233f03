#include "core/circuit/part_edits.h"
#include "tests/core/circuit/snapshot.h"

#include <gtest/gtest.h>

namespace blinkwright::circuit {
namespace {

using tests::Snapshot;

struct PartEdits : testing::Test {
    Circuit c;
    PartId bt = c.addPart(PartKind::supply, "BT1", {{"voltage", 6.0}}).value();
    PartId r1 =
        c.addPart(PartKind::resistor, "R1", {{"resistance", 33000.0}}, {{"shelf", "\"B 3\""}}).value();
    PartId r2 = c.addPart(PartKind::resistor, "R2", {{"resistance", 47000.0}}).value();
    PartId d1 = c.addPart(PartKind::lamp, "D1").value();
    NetId plus = net("supply", {{bt, 0}, {r1, 0}});
    NetId mid = net("wire 1", {{r1, 1}, {r2, 0}});
    NetId lamp = net("lamp", {{r2, 1}, {d1, 0}}, {{"colour", "7"}});
    Placement at1{100, 20, 90, false, {{"layer", "1"}}}, at2{160, 60, 0, true, {}};

    PartEdits() {
        EXPECT_TRUE(c.setOverride(PartSet::B, r1, "resistance", 68000.0));
        c.setOverrideExtras(PartSet::B, r1, {{"later", "[1]"}});
        c.place(r1, at1);
        c.place(r2, at2);
        c.ties = {{{r1, "resistance"}, {r2, "resistance"}}};
        c.reels = {{r1, r2}};
    }
    NetId net(std::string name, std::vector<PinRef> pins, Extras extras = {}) {
        const NetId id = c.addNet(std::move(name), std::move(extras)).value();
        for (const PinRef pin : pins) EXPECT_TRUE(c.join(pin, id));
        return id;
    }
    void does(const Result<Edit>& edit, std::string_view text) { tests::does(c, edit, text); }
    Places shown() const { return {{r1, *c.placement(r1)}, {r2, *c.placement(r2)}}; }
};

TEST_F(PartEdits, APartOfEachKindIsAddedWithAFreshDesignatorAtItsPlace) {
    for (const PartKind kind : allKinds) {
        const std::string ref = c.freeRef(kind);
        const auto add = addPart(c, kind, {40, -30, 90, false, {}});
        ASSERT_TRUE(add) << add.fault().message();
        does(add.value().edit, "Add " + ref);
        const PartId id = add.value().parts.front();
        ASSERT_NE(c.find(id), nullptr);
        EXPECT_EQ(c.find(id)->ref, ref);
        EXPECT_EQ(c.find(id)->kind, kind);
        EXPECT_EQ(c.placement(id)->x, 40);
        EXPECT_EQ(c.placement(id)->turn, 90);
    }
}

TEST_F(PartEdits, DeletingPartsTakesNetsAwayThatJoinNothingMore) {
    const std::vector<PartId> both{r2, d1};
    does(deleteParts(c, both), "Delete 2 parts");
    EXPECT_EQ(c.find(mid), nullptr);  // automatic name, one pin left
    EXPECT_EQ(c.find(lamp), nullptr); // no pin left
    ASSERT_NE(c.find(plus), nullptr); // named
    EXPECT_TRUE(c.ties.empty());
    does(deleteParts(c, std::vector{bt}), "Delete BT1"); // the last supply may go
    EXPECT_FALSE(deleteParts(c, std::vector{bt}));
    EXPECT_EQ(deleteParts(c, {}).fault().text, "no part is chosen");
}

TEST_F(PartEdits, PartsMoveFromWhereTheyAreShown) {
    does(moveParts(c, shown(), 10, -20), "Move 2 parts");
    EXPECT_EQ(*c.placement(r1), (Placement{110, 0, 90, false, {{"layer", "1"}}}));
    EXPECT_EQ(*c.placement(r2), (Placement{170, 40, 0, true, {}}));
    does(moveParts(c, {{d1, {50, 50, 0, false, {}}}}, 10, 0), "Move D1"); // had no stated place
    EXPECT_EQ(c.placement(d1)->x, 60);
    EXPECT_EQ(moveParts(c, {}, 1, 1).fault().text, "no part is chosen");
}

TEST_F(PartEdits, OnePartTurnsInItsPlaceAndFourTurnsAreNone) {
    const Placement before = *c.placement(r1);
    for (const int turn : {180, 270, 0, 90}) {
        does(turnParts(c, {{r1, *c.placement(r1)}}), "Turn R1");
        EXPECT_EQ(c.placement(r1)->turn, turn);
    }
    EXPECT_EQ(*c.placement(r1), before);
}

TEST_F(PartEdits, AGroupTurnsClockwiseAboutItsMiddle) {
    // The middle of (100, 20) and (160, 60) is (130, 40); clockwise with y downwards: (dx, dy) -> (-dy, dx).
    does(turnParts(c, shown()), "Turn 2 parts");
    EXPECT_EQ(*c.placement(r1), (Placement{150, 10, 180, false, {{"layer", "1"}}}));
    EXPECT_EQ(*c.placement(r2), (Placement{110, 70, 90, true, {}}));
}

TEST_F(PartEdits, MirroringTwiceIsNothing) {
    const Snapshot before(c);
    does(mirrorParts(c, shown()), "Mirror 2 parts");
    EXPECT_EQ(*c.placement(r1), (Placement{160, 20, 270, true, {{"layer", "1"}}}));
    EXPECT_EQ(*c.placement(r2), (Placement{100, 60, 0, false, {}}));
    does(mirrorParts(c, shown()), "Mirror 2 parts");
    EXPECT_EQ(Snapshot(c), before);
}

TEST_F(PartEdits, APartIsRenamedToAFreeAndWellFormedDesignator) {
    does(renamePart(c, r1, "R10"), "Rename R1 to R10");
    EXPECT_EQ(renamePart(c, r1, "R2").fault().message(), "ref: \"R2\" is in use already");
    EXPECT_FALSE(renamePart(c, r1, "ten"));
}

TEST_F(PartEdits, ADuplicateHasItsValuesAndTheWiringAmongTheCopies) {
    const auto copies = duplicateParts(c, shown(), 20, 30);
    ASSERT_TRUE(copies) << copies.fault().message();
    does(copies.value().edit, "Duplicate 2 parts");
    const PartId r3 = copies.value().parts[0], r4 = copies.value().parts[1];
    EXPECT_EQ(c.find(r3)->ref, "R3");
    EXPECT_EQ(c.find(r4)->ref, "R4");
    EXPECT_EQ(c.find(r3)->values, c.find(r1)->values);
    EXPECT_EQ(c.find(r3)->extras, c.find(r1)->extras);
    EXPECT_EQ(c.overrides(PartSet::B, r3), c.overrides(PartSet::B, r1));
    EXPECT_EQ(c.overrideExtras(PartSet::B, r3), c.overrideExtras(PartSet::B, r1));
    EXPECT_EQ(*c.placement(r3), (Placement{120, 50, 90, false, {{"layer", "1"}}}));
    // Joined to one another as the originals are, and to nothing else.
    ASSERT_TRUE(c.netOf({r3, 1}));
    EXPECT_EQ(c.netOf({r3, 1}), c.netOf({r4, 0}));
    EXPECT_EQ(c.find(*c.netOf({r3, 1}))->name, "wire 2");
    EXPECT_FALSE(c.netOf({r3, 0}));
    EXPECT_FALSE(c.netOf({r4, 1}));
    EXPECT_EQ(c.ties.back(), (std::vector<ValueRef>{{r3, "resistance"}, {r4, "resistance"}}));
    EXPECT_EQ(c.reels.back(), (std::vector<PartId>{r3, r4}));
}

TEST_F(PartEdits, ACopyIsACircuitFileAndComesOutOfItTheSame) {
    const Circuit copy = copyOf(c, {{r1, at1}, {r2, at2}, {d1, {0, 0, 0, false, {}}}});
    const std::string text = io::writeCircuit(copy);
    const auto read = io::readCircuit(text); // no supply and no timer in it
    ASSERT_TRUE(read) << read.fault().message();
    EXPECT_TRUE(read.value().sameAs(copy));
    EXPECT_EQ(copy.nets().size(), 2u);
    EXPECT_EQ(copy.nets()[1].extras, (Extras{{"colour", "7"}}));
}

TEST_F(PartEdits, PastedIntoAnotherCircuitPartsAndNetsKeepNamesThatAreFree) {
    const Circuit copy = copyOf(c, {{r1, at1}, {r2, at2}, {d1, {}}});
    Circuit other;
    ASSERT_TRUE(other.addPart(PartKind::resistor, "R1", {{"resistance", 1.0}}));
    const auto paste = pasteParts(other, copy, 0, 0);
    ASSERT_TRUE(paste);
    EXPECT_EQ(describe(other, paste.value().edit), "Paste 3 parts");
    ASSERT_TRUE(apply(other, paste.value().edit));
    EXPECT_EQ(other.find(paste.value().parts[0])->ref, "R3"); // R2 is for the copy that is called so
    EXPECT_EQ(other.find(paste.value().parts[1])->ref, "R2");
    EXPECT_EQ(other.find(paste.value().parts[2])->ref, "D1");
    EXPECT_NE(other.findNet("lamp"), nullptr);
}

TEST_F(PartEdits, CutAndPastedPartsAreWhatTheyWere) {
    const Circuit copy = copyOf(c, shown());
    does(deleteParts(c, std::vector{r1, r2}), "Delete 2 parts");
    const auto paste = pasteParts(c, copy, 0, 0);
    ASSERT_TRUE(paste);
    does(paste.value().edit, "Paste 2 parts");
    EXPECT_EQ(c.find(paste.value().parts[0])->ref, "R1");
    EXPECT_EQ(c.findNet("wire 1")->pins,
              (std::vector<PinRef>{{paste.value().parts[0], 1}, {paste.value().parts[1], 0}}));
}

TEST_F(PartEdits, MoreThanACircuitMayHoldIsNotPasted) {
    Circuit many;
    for (std::size_t k = 0; k < maxParts; ++k)
        ASSERT_TRUE(many.addPart(PartKind::diode, "D" + std::to_string(k + 1)));
    const auto paste = pasteParts(c, many, 0, 0);
    ASSERT_FALSE(paste);
    EXPECT_EQ(paste.fault().text, "more than 2000 parts are not supported");
    EXPECT_EQ(pasteParts(c, Circuit{}, 0, 0).fault().text, "there is no part to paste");
}

} // namespace
} // namespace blinkwright::circuit
