#include "core/circuit/circuit.h"

#include <gtest/gtest.h>

namespace blinkwright::circuit {
namespace {

struct SmallCircuit : testing::Test {
    Circuit c;
    PartId bt = c.addPart(PartKind::supply, "BT1", {{"voltage", 6.0}}).value();
    PartId u = c.addPart(PartKind::timer, "U1", {{"device", Overrides{{"delay", 1e-7}}}}).value();
    PartId r = c.addPart(PartKind::resistor, "R1", {{"resistance", 33000.0}}).value();
    NetId plus = c.addNet("supply").value();
    NetId minus = c.addNet("ground").value();
};
using Building = SmallCircuit;
using Wiring = SmallCircuit;
using TwoSets = SmallCircuit;
using Sameness = SmallCircuit;

TEST_F(Building, FindsPartsAndNetsByIdAndByName) {
    EXPECT_EQ(c.find(r)->ref, "R1");
    EXPECT_EQ(c.findRef("R1")->id, r);
    EXPECT_EQ(c.findRef("r1"), nullptr);
    EXPECT_EQ(c.find(PartId{999}), nullptr);
    EXPECT_EQ(c.findNet("ground")->id, minus);
    EXPECT_EQ(c.findNet("nowhere"), nullptr);
}

TEST_F(Building, AReferenceIsLettersThenDigitsAndUnique) {
    EXPECT_TRUE(c.canName("R2"));
    EXPECT_TRUE(c.canName("R1", r));
    EXPECT_EQ(c.canName("R1").fault().message(), "ref: \"R1\" is in use already");
    for (std::string_view bad : {"", "R", "1", "1R", "R1a", "R 1", "R:1", "R.1",
                                 "\xC3\x84"
                                 "1",
                                 "R1\n"})
        EXPECT_FALSE(c.canName(bad)) << bad;
    EXPECT_FALSE(c.canName("R" + std::string(100, '1')));
    EXPECT_FALSE(c.addPart(PartKind::resistor, "R1", {{"resistance", 1.0}}));
}

TEST_F(Building, RefusesAPartWithoutItsMainValue) {
    const auto added = c.addPart(PartKind::capacitor, "C1", {{"esr", 0.1}});
    ASSERT_FALSE(added);
    EXPECT_EQ(added.fault().message(), "capacitance: missing: a capacitor needs it");
    EXPECT_EQ(c.parts().size(), 3u);
}

TEST_F(Building, RefusesMorePartsThanTheLimit) {
    for (std::size_t n = c.parts().size(); n < maxParts; ++n)
        ASSERT_TRUE(c.addPart(PartKind::diode, "D" + std::to_string(n)));
    EXPECT_FALSE(c.addPart(PartKind::diode, "D1"));
    EXPECT_EQ(c.parts().size(), maxParts);
}

TEST_F(Building, RefusesMorePinsThanTheLimit) {
    std::size_t pins = 2 + 8 + 2;
    std::size_t n = 2;
    for (; pins + 8 <= maxPins; pins += 8) ASSERT_TRUE(c.addPart(PartKind::timer, "U" + std::to_string(n++)));
    EXPECT_FALSE(c.addPart(PartKind::timer, "U" + std::to_string(n)));
}

TEST_F(Building, OffersTheFirstFreeReference) {
    EXPECT_EQ(c.freeRef(PartKind::resistor), "R2");
    EXPECT_EQ(c.freeRef(PartKind::capacitor), "C1");
    ASSERT_TRUE(c.addPart(PartKind::resistor, "R3", {{"resistance", 1.0}}));
    EXPECT_EQ(c.freeRef(PartKind::resistor), "R2");
}

TEST_F(Wiring, APinIsWrittenWithItsPartAndName) {
    EXPECT_EQ(c.pinText({bt, 0}), "BT1:plus");
    EXPECT_EQ(c.pinText({u, timerPin::discharge}), "U1:7");
    EXPECT_EQ(c.pinNamed("U1:7").value(), (PinRef{u, timerPin::discharge}));
    EXPECT_EQ(c.pinNamed("U1").fault().text, "a pin is written REF:PIN, got \"U1\"");
    EXPECT_EQ(c.pinNamed("U9:1").fault().text, "there is no part \"U9\"");
    EXPECT_EQ(c.pinNamed("R1:3").fault().text, "R1 has no pin \"3\"; a resistor has 1, 2");
}

TEST_F(Wiring, APinStandsInOneNetOnly) {
    ASSERT_TRUE(c.join({r, 0}, plus));
    EXPECT_EQ(c.netOf({r, 0}), plus);
    EXPECT_EQ(c.netOf({r, 1}), std::nullopt);
    EXPECT_EQ(c.canJoin({r, 0}, minus).fault().text, "R1:1 is in the net \"supply\" already");
    EXPECT_EQ(c.join({r, 0}, plus).fault().text, "R1:1 is in this net already");
    EXPECT_EQ(c.canJoin({r, 2}, minus).fault().text, "R1 has no such pin");
    EXPECT_FALSE(c.canJoin({r, -1}, minus));
    EXPECT_FALSE(c.canJoin({r, 1}, NetId{999}));
    EXPECT_FALSE(c.canJoin({PartId{999}, 1}, minus));
    EXPECT_EQ(c.find(plus)->pins.size(), 1u);
    EXPECT_TRUE(c.find(minus)->pins.empty());
}

TEST_F(Wiring, NetNamesAreUnique) {
    EXPECT_FALSE(c.addNet("supply"));
    EXPECT_FALSE(c.addNet(""));
    EXPECT_TRUE(c.canNameNet("supply", plus));
}

TEST_F(TwoSets, AnOverrideHoldsInItsSetAlone) {
    ASSERT_TRUE(c.setOverride(PartSet::B, r, "resistance", 47000.0));
    EXPECT_EQ(c.value(PartSet::A, r, "resistance"), Value(33000.0));
    EXPECT_EQ(c.value(PartSet::B, r, "resistance"), Value(47000.0));
    EXPECT_EQ(c.value(PartSet::B, r, "tolerance"), std::nullopt);
    EXPECT_EQ(c.value(PartSet::B, PartId{999}, "tolerance"), std::nullopt);
    EXPECT_FALSE(c.setOverride(PartSet::B, r, "resistance", -1.0));
    EXPECT_EQ(c.value(PartSet::B, r, "resistance"), Value(47000.0));
}

TEST_F(TwoSets, DeviceOverridesMergeParameterByParameter) {
    ASSERT_TRUE(c.setOverride(PartSet::B, u, "device", Overrides{{"low_limit", 0.2}}));
    EXPECT_EQ(c.value(PartSet::A, u, "device"), Value(Overrides{{"delay", 1e-7}}));
    EXPECT_EQ(c.value(PartSet::B, u, "device"), Value(Overrides{{"delay", 1e-7}, {"low_limit", 0.2}}));
    ASSERT_TRUE(c.setOverride(PartSet::B, u, "device.delay", 2e-7));
    EXPECT_EQ(c.value(PartSet::B, u, "device.delay"), Value(2e-7));
    EXPECT_EQ(c.value(PartSet::B, u, "device.low_limit"), Value(0.2));
    EXPECT_EQ(c.value(PartSet::A, u, "device.delay"), Value(1e-7));
    EXPECT_EQ(c.value(PartSet::A, u, "device.low_limit"), std::nullopt);
}

TEST_F(Sameness, IsBlindToIdsButToNothingElse) {
    Circuit other;
    for (int i = 0; i < 5; ++i) ASSERT_TRUE(other.addNet("spent" + std::to_string(i)));
    other = Circuit();
    ASSERT_TRUE(other.addNet("supply")); // ids in another order
    ASSERT_TRUE(other.addNet("ground"));
    ASSERT_TRUE(other.addPart(PartKind::supply, "BT1", {{"voltage", 6.0}}));
    ASSERT_TRUE(other.addPart(PartKind::timer, "U1", {{"device", Overrides{{"delay", 1e-7}}}}));
    const PartId twin = other.addPart(PartKind::resistor, "R1", {{"resistance", 33000.0}}).value();
    EXPECT_NE(twin, r);
    EXPECT_TRUE(c.sameAs(other));

    const Circuit before = c;
    const auto differs = [&](auto change) {
        Circuit changed = before;
        change(changed);
        return !changed.sameAs(before) && !before.sameAs(changed);
    };
    EXPECT_TRUE(differs([](Circuit& x) { x.title = "other"; }));
    EXPECT_TRUE(differs([](Circuit& x) { x.run.flashes = 7; }));
    EXPECT_TRUE(differs([&](Circuit& x) { (void)x.join({r, 0}, plus); }));
    EXPECT_TRUE(differs([&](Circuit& x) { (void)x.setOverride(PartSet::B, r, "resistance", 1.0); }));
    EXPECT_TRUE(differs([&](Circuit& x) { x.setOverrideExtras(PartSet::A, r, {{"k", "1"}}); }));
    EXPECT_TRUE(differs([&](Circuit& x) { x.place(r, {1, 2, 90, false, {}}); }));
    EXPECT_TRUE(differs([&](Circuit& x) { x.ties = {{{r, "resistance"}}}; }));
    EXPECT_TRUE(differs([&](Circuit& x) { x.reels = {{r}}; }));
    EXPECT_TRUE(differs([](Circuit& x) { (void)x.addPart(PartKind::diode, "D1"); }));
    EXPECT_TRUE(differs([](Circuit& x) { x.extras = {{"more", "1"}}; }));
}

} // namespace
} // namespace blinkwright::circuit
