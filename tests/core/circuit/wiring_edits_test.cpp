#include "core/circuit/wiring_edits.h"
#include "tests/core/circuit/snapshot.h"

#include <gtest/gtest.h>

namespace blinkwright::circuit {
namespace {

struct WiringEdits : testing::Test {
    Circuit c;
    PartId bt = c.addPart(PartKind::supply, "BT1", {{"voltage", 6.0}}).value();
    PartId u = c.addPart(PartKind::timer, "U1").value();
    PartId r1 = c.addPart(PartKind::resistor, "R1", {{"resistance", 33000.0}}).value();
    PartId r2 = c.addPart(PartKind::resistor, "R2", {{"resistance", 47000.0}}).value();
    PartId r3 = c.addPart(PartKind::resistor, "R3", {{"resistance", 270.0}}).value();

    NetId net(std::string name, std::vector<PinRef> pins, Extras extras = {}) {
        const NetId id = c.addNet(std::move(name), std::move(extras)).value();
        for (const PinRef pin : pins) EXPECT_TRUE(c.join(pin, id));
        return id;
    }
    std::string netName(PinRef pin) const {
        const auto id = c.netOf(pin);
        return id ? c.find(*id)->name : "";
    }
    void does(const Result<Edit>& edit, std::string_view text) { tests::does(c, edit, text); }
    void refuses(const Result<Edit>& edit, std::string_view message) {
        ASSERT_FALSE(edit);
        EXPECT_EQ(edit.fault().message(), message);
    }
};

TEST_F(WiringEdits, TwoOpenPinsGetANetWithTheFirstFreeAutomaticName) {
    net("wire 1", {{r2, 0}, {r3, 0}});
    does(joinPins(c, {r1, 0}, {u, 6}), "Join R1:1 and U1:7");
    EXPECT_EQ(netName({r1, 0}), "wire 2");
    EXPECT_EQ(c.netOf({r1, 0}), c.netOf({u, 6}));
}

TEST_F(WiringEdits, AnOpenPinComesIntoTheNetOfTheOther) {
    const NetId timing = net("timing", {{u, 5}, {u, 1}});
    does(joinPins(c, {u, 5}, {r1, 0}), "Join U1:6 and R1:1");
    does(joinPins(c, {r2, 0}, {u, 1}), "Join R2:1 and U1:2");
    EXPECT_EQ(c.find(timing)->pins, (std::vector<PinRef>{{u, 5}, {u, 1}, {r1, 0}, {r2, 0}}));
    EXPECT_EQ(c.nets().size(), 1u);
}

TEST_F(WiringEdits, AUsersNameWinsOverAnAutomaticOneFromEitherSide) {
    net("wire 1", {{r1, 0}, {r2, 0}});
    const NetId timing = net("timing", {{u, 5}, {u, 1}}, {{"colour", "\"red\""}});
    does(joinPins(c, {r1, 0}, {u, 5}), "Join R1:1 and U1:6");
    ASSERT_EQ(c.nets().size(), 1u);
    EXPECT_EQ(c.nets()[0].id, timing);
    EXPECT_EQ(c.nets()[0].name, "timing");
    EXPECT_EQ(c.nets()[0].pins, (std::vector<PinRef>{{u, 5}, {u, 1}, {r1, 0}, {r2, 0}}));
    EXPECT_EQ(c.nets()[0].extras, (Extras{{"colour", "\"red\""}}));
}

TEST_F(WiringEdits, ARailsNameWinsOverAUsersAndUnknownKeysOfBothNetsAreKept) {
    net("timing", {{r1, 0}, {r2, 0}}, {{"length", "7"}, {"colour", "\"blue\""}});
    net("plus", {{bt, 0}, {u, 7}}, {{"colour", "\"red\""}});
    does(joinPins(c, {r1, 0}, {u, 7}), "Join R1:1 and U1:8");
    ASSERT_EQ(c.nets().size(), 1u);
    EXPECT_EQ(c.nets()[0].name, "plus");
    EXPECT_EQ(c.nets()[0].extras, (Extras{{"colour", "\"red\""}, {"length", "7"}}));
}

TEST_F(WiringEdits, OfTwoNamesOfOneRankTheEarlierNetsStays) {
    const NetId first = net("discharge", {{r1, 0}, {r2, 0}});
    net("timing", {{u, 5}, {u, 1}});
    does(joinPins(c, {u, 5}, {r1, 0}), "Join U1:6 and R1:1");
    EXPECT_EQ(c.nets()[0].id, first);
    EXPECT_EQ(c.nets()[0].name, "discharge");
}

TEST_F(WiringEdits, ANetThatASuppliesPinComesIntoIsNamedAsItsRail) {
    does(joinPins(c, {r1, 0}, {u, 7}), "Join R1:1 and U1:8");
    EXPECT_EQ(netName({r1, 0}), "wire 1");
    does(joinPins(c, {u, 7}, {bt, 0}), "Join U1:8 and BT1:plus");
    EXPECT_EQ(netName({r1, 0}), "supply");
    does(joinPins(c, {bt, 1}, {u, 0}), "Join BT1:minus and U1:1");
    EXPECT_EQ(netName({u, 0}), "ground");
    // A name that is taken is not given twice, and a user's name is never changed.
    const PartId other = c.addPart(PartKind::supply, "BT2", {{"voltage", 3.0}}).value();
    does(joinPins(c, {other, 0}, {r3, 0}), "Join BT2:plus and R3:1");
    EXPECT_EQ(netName({other, 0}), "wire 1");
    net("far end", {{r2, 0}});
    does(joinPins(c, {r2, 0}, {other, 1}), "Join R2:1 and BT2:minus");
    EXPECT_EQ(netName({other, 1}), "far end");
}

TEST_F(WiringEdits, PinsThatAreOneNetAlreadyOrOnePinAreNotJoined) {
    net("timing", {{u, 5}, {u, 1}});
    refuses(joinPins(c, {u, 5}, {u, 1}), "U1:6 and U1:2 are joined already, by the net \"timing\"");
    refuses(joinPins(c, {u, 5}, {u, 5}), "U1:6 cannot be joined to itself");
    refuses(joinPins(c, {u, 5}, {r1, 2}), "R1 has no such pin");
    refuses(joinPins(c, {u, 5}, {{4711}, 0}), "there is no such part");
}

TEST_F(WiringEdits, AWireOntoANetBringsAlongTheNetThatThePinIsIn) {
    const NetId timing = net("timing", {{u, 5}, {u, 1}});
    net("wire 1", {{r1, 0}, {r2, 0}});
    does(joinToNet(c, {r3, 0}, timing), "Join R3:1 to net timing");
    does(joinToNet(c, {r1, 0}, timing), "Join R1:1 to net timing");
    EXPECT_EQ(c.find(timing)->pins, (std::vector<PinRef>{{u, 5}, {u, 1}, {r3, 0}, {r1, 0}, {r2, 0}}));
    refuses(joinToNet(c, {r1, 0}, timing), "R1:1 is in the net \"timing\" already");
    refuses(joinToNet(c, {r1, 0}, {4711}), "there is no such net");
}

TEST_F(WiringEdits, PuttingAPinIntoANetMovesItAlone) {
    const NetId timing = net("timing", {{u, 5}, {u, 1}});
    net("wire 1", {{r1, 0}, {r2, 0}, {r3, 0}});
    does(putIntoNet(c, {r1, 0}, "timing"), "Put R1:1 into net timing");
    EXPECT_EQ(c.find(timing)->pins, (std::vector<PinRef>{{u, 5}, {u, 1}, {r1, 0}}));
    EXPECT_EQ(netName({r2, 0}), "wire 1");
    does(putIntoNet(c, {r2, 0}, timing), "Put R2:1 into net timing");
    EXPECT_EQ(netName({r3, 0}), ""); // its net had one pin left and no name of its own
    does(putIntoNet(c, {r3, 0}, "sense"), "Put R3:1 into net sense");
    EXPECT_EQ(netName({r3, 0}), "sense");
    refuses(putIntoNet(c, {r3, 0}, ""), "name: must not be empty");
    refuses(putIntoNet(c, {r3, 0}, "sense"), "R3:1 is in the net \"sense\" already");
}

TEST_F(WiringEdits, APinTakenOffLeavesItsNetAndANetWithoutAPurposeGoesAway) {
    net("wire 1", {{r1, 0}, {r2, 0}});
    net("timing", {{u, 5}, {u, 1}});
    does(takeOffNet(c, {r1, 0}), "Take R1:1 off net wire 1");
    EXPECT_EQ(netName({r2, 0}), "");
    does(takeOffNet(c, {u, 5}), "Take U1:6 off net timing");
    EXPECT_EQ(netName({u, 1}), "timing"); // a name of its own is kept as long as one pin bears it
    does(takeOffNet(c, {u, 1}), "Take U1:2 off net timing");
    EXPECT_TRUE(c.nets().empty());
    refuses(takeOffNet(c, {u, 1}), "U1:2 is in no net");
}

TEST_F(WiringEdits, TheEndOfAWireMovesFromPinToPin) {
    const NetId timing = net("timing", {{u, 5}, {u, 1}, {r1, 0}});
    does(moveWireEnd(c, {r1, 0}, PinRef{r2, 0}), "Move the wire from R1:1 to R2:1");
    EXPECT_EQ(c.find(timing)->pins, (std::vector<PinRef>{{u, 5}, {u, 1}, {r2, 0}}));
    net("wire 1", {{r3, 0}, {r3, 1}});
    // Both ends of a plain wire: what stays is joined to what it is dropped on.
    does(moveWireEnd(c, {r3, 1}, PinRef{r2, 0}), "Move the wire from R3:2 to R2:1");
    EXPECT_EQ(netName({r3, 0}), "timing");
    EXPECT_EQ(netName({r3, 1}), "");
    // Dropped within its own net there is nothing to join.
    does(moveWireEnd(c, {u, 5}, PinRef{u, 1}), "Take U1:6 off net timing");
    refuses(moveWireEnd(c, {u, 5}, PinRef{u, 1}), "U1:6 is in no net");
    refuses(moveWireEnd(c, {u, 1}, PinRef{u, 1}), "the wire ends at U1:2 already");
    net("alone", {{bt, 0}});
    refuses(moveWireEnd(c, {bt, 0}, PinRef{u, 7}), "BT1:plus is the only pin of its net");
}

TEST_F(WiringEdits, TheEndOfAWireMovesOntoAnotherNet) {
    const NetId timing = net("timing", {{u, 5}, {u, 1}});
    net("wire 1", {{r1, 0}, {r2, 0}});
    does(moveWireEnd(c, {r1, 0}, timing), "Move the wire from R1:1 to net timing");
    EXPECT_EQ(netName({r2, 0}), "timing");
    EXPECT_EQ(netName({r1, 0}), "");
    does(moveWireEnd(c, {r2, 0}, timing), "Take R2:1 off net timing");
}

TEST_F(WiringEdits, ANetIsRenamedToAFreeNameOnly) {
    const NetId timing = net("timing", {{u, 5}, {u, 1}});
    net("ramp", {{r1, 0}, {r2, 0}});
    does(renameNet(c, timing, "capacitor"), "Rename net timing to capacitor");
    refuses(renameNet(c, timing, "ramp"), "name: \"ramp\" is the name of another net already");
    refuses(renameNet(c, timing, ""), "name: must not be empty");
}

TEST(NetNames, AreAutomaticWhenTheyAreAWireAndItsNumber) {
    EXPECT_TRUE(isAutomaticName("wire 1"));
    EXPECT_TRUE(isAutomaticName("wire 120"));
    for (const char* own : {"wire", "wire ", "wire x", "wire 1a", "supply", "a wire 1", "wire1", ""})
        EXPECT_FALSE(isAutomaticName(own)) << own;
}

} // namespace
} // namespace blinkwright::circuit
