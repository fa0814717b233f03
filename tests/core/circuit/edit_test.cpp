#include "core/circuit/edit.h"
#include "core/io/circuit_file.h"
#include "tests/core/circuit/snapshot.h"

#include <gtest/gtest.h>
#include <random>

namespace blinkwright::circuit {
namespace {

using tests::Snapshot;

struct Edits : testing::Test {
    Circuit c;
    PartId bt = c.addPart(PartKind::supply, "BT1", {{"voltage", 6.0}}).value();
    PartId u = c.addPart(PartKind::timer, "U1", {{"device", Overrides{{"delay", 1e-7}}}}).value();
    PartId r1 =
        c.addPart(PartKind::resistor, "R1", {{"resistance", 33000.0}}, {{"shelf", "\"B 3\""}}).value();
    PartId r2 = c.addPart(PartKind::resistor, "R2", {{"resistance", 47000.0}}).value();
    PartId r3 = c.addPart(PartKind::resistor, "R3", {{"resistance", 270.0}}).value();
    NetId plus = c.addNet("supply").value();
    NetId mid = c.addNet("timing", {{"wire", "7"}}).value();

    Edits() {
        for (PinRef pin : {PinRef{bt, 0}, PinRef{r1, 0}, PinRef{u, 7}, PinRef{r1, 1}})
            EXPECT_TRUE(c.join(pin, plus));
        for (PinRef pin : {PinRef{u, 6}, PinRef{r2, 0}}) EXPECT_TRUE(c.join(pin, mid));
        EXPECT_TRUE(c.setOverride(PartSet::A, r1, "resistance", 34000.0));
        EXPECT_TRUE(c.setOverride(PartSet::B, r1, "resistance", 68000.0));
        EXPECT_TRUE(c.setOverride(PartSet::B, r1, "tolerance", 0.01));
        c.setOverrideExtras(PartSet::B, r1, {{"later", "[1,2]"}});
        c.place(r1, {10, 20, 90, true, {{"layer", "1"}}});
        c.ties = {{{r1, "resistance"}, {r2, "resistance"}}};
        c.reels = {{r1, r2, r3}};
    }

    void doAndBack(const Edit& edit) { tests::doAndBack(c, edit); }
    void refuses(const Edit& edit, std::string_view message) {
        const Snapshot before(c);
        const auto back = apply(c, edit);
        ASSERT_FALSE(back);
        EXPECT_EQ(back.fault().message(), message);
        EXPECT_EQ(Snapshot(c), before);
    }
    std::optional<Value> valueIn(PartSet set, PartId part, std::string_view key) {
        return c.value(set, part, key);
    }
};

TEST_F(Edits, ChangeTheTitleTheNotesAndTheRun) {
    doAndBack({edits::SetTitle{"Slipway"}});
    EXPECT_EQ(c.title, "Slipway");
    doAndBack({edits::SetNotes{"line\nline"}});
    doAndBack({edits::SetRun{{12, Begin::settled, {}}}});
    EXPECT_EQ(c.run.flashes, 12);
    refuses({edits::SetRun{{0, Begin::settled, {}}}}, "run.flashes: must be between 1 and 10000, got 0");
}

TEST_F(Edits, RemovingAPartTakesAlongAllThatHangsOnIt) {
    doAndBack({edits::RemovePart{r1}});
    EXPECT_EQ(c.find(r1), nullptr);
    EXPECT_EQ(c.find(plus)->pins, (std::vector<PinRef>{{bt, 0}, {u, 7}}));
    EXPECT_TRUE(c.overrides(PartSet::B, r1).empty());
    EXPECT_TRUE(c.overrideExtras(PartSet::B, r1).empty());
    EXPECT_EQ(c.placement(r1), nullptr);
    EXPECT_TRUE(c.ties.empty()); // a tie of one value ties nothing
    EXPECT_EQ(c.reels, (std::vector<std::vector<PartId>>{{r2, r3}}));
    refuses({edits::RemovePart{r1}}, "there is no such part");
}

TEST_F(Edits, AnAddedPartKeepsItsIdThroughUndoAndRedo) {
    const Edit add{edits::AddPart{{{}, PartKind::capacitor, "C1", {{"capacitance", 1e-5}}, {}}, 2}};
    const PartId expected = c.nextPartId();
    auto remove = apply(c, add);
    ASSERT_TRUE(remove);
    EXPECT_EQ(c.parts()[2].ref, "C1");
    EXPECT_EQ(c.parts()[2].id, expected);
    auto redo = apply(c, remove.value());
    ASSERT_TRUE(redo);
    ASSERT_TRUE(c.addPart(PartKind::diode, "D1")); // must not be given the id that redo wants
    ASSERT_TRUE(apply(c, redo.value()));
    EXPECT_EQ(c.findRef("C1")->id, expected);
}

TEST_F(Edits, APartThatIsNotRightIsNotAdded) {
    refuses({edits::AddPart{{{}, PartKind::resistor, "R1", {{"resistance", 1.0}}, {}}}},
            "ref: \"R1\" is in use already");
    refuses({edits::AddPart{{{}, PartKind::resistor, "R9", {}, {}}}},
            "resistance: missing: a resistor needs it");
    refuses({edits::AddPart{{r2, PartKind::diode, "D9", {}, {}}}}, "the id of the part is in use");
    refuses({edits::AddPart{{{plus.n}, PartKind::diode, "D9", {}, {}}}}, "the id of the part is in use");
}

TEST_F(Edits, RenamingKeepsSetsDrawingTiesAndReels) {
    doAndBack({edits::RenamePart{r1, "R10"}});
    const std::string text = io::writeCircuit(c);
    EXPECT_NE(text.find("[\"R10.resistance\", \"R2.resistance\"]"), text.npos);
    EXPECT_NE(text.find("[\"R10\", \"R2\", \"R3\"]"), text.npos);
    EXPECT_NE(text.find("\"R10\": {\"x\": 10"), text.npos);
    EXPECT_NE(text.find("\"R10\": {\"resistance\": 68000"), text.npos);
    EXPECT_EQ(text.find("\"R1\""), text.npos);
    refuses({edits::RenamePart{r1, "R2"}}, "ref: \"R2\" is in use already");
    refuses({edits::RenamePart{r1, "7"}},
            "ref: must be letters, then digits, such as R1 (at most 32 characters), got \"7\"");
}

TEST_F(Edits, NetsComeAndGoWithTheirPinsInPlace) {
    doAndBack({edits::RemoveNet{plus}});
    EXPECT_EQ(c.netOf({r1, 0}), std::nullopt);
    doAndBack({edits::AddNet{{{}, "rail", {{r1, 0}, {bt, 0}}, {}}, 0}});
    EXPECT_EQ(c.nets()[0].name, "rail");
    refuses({edits::AddNet{{{}, "again", {{bt, 0}}, {}}}}, "BT1:plus is in a net already");
    refuses({edits::AddNet{{{}, "again", {{bt, 1}, {bt, 1}}, {}}}}, "BT1:minus is in a net already");
    refuses({edits::AddNet{{{}, "rail", {}, {}}}}, "name: \"rail\" is the name of another net already");
    doAndBack({edits::RenameNet{mid, "ramp"}});
    refuses({edits::RenameNet{mid, "rail"}}, "name: \"rail\" is the name of another net already");
    refuses({edits::RemoveNet{plus}}, "there is no such net");
}

TEST_F(Edits, APinMovesBetweenNetsAndBackToItsPlace) {
    doAndBack({edits::JoinPin{{r1, 0}, mid, 1}});
    EXPECT_EQ(c.find(mid)->pins, (std::vector<PinRef>{{u, 6}, {r1, 0}, {r2, 0}}));
    EXPECT_EQ(c.find(plus)->pins, (std::vector<PinRef>{{bt, 0}, {u, 7}, {r1, 1}}));
    doAndBack({edits::JoinPin{{u, 6}, mid}}); // within its own net
    EXPECT_EQ(c.find(mid)->pins.back(), (PinRef{u, 6}));
    doAndBack({edits::JoinPin{{u, 6}, std::nullopt}});
    EXPECT_EQ(c.netOf({u, 6}), std::nullopt);
    doAndBack({edits::JoinPin{{u, 6}, std::nullopt}}); // open already
    refuses({edits::JoinPin{{r1, 5}, mid}}, "R1 has no such pin");
    refuses({edits::JoinPin{{r1, 0}, NetId{999}}}, "there is no such net");
}

TEST_F(Edits, StateAValueAndTakeTheStatementBack) {
    doAndBack({edits::SetValue{Layer::part, r3, "resistance", 330.0}});
    doAndBack({edits::SetValue{Layer::part, r3, "tolerance", 0.01}});
    doAndBack({edits::SetValue{Layer::part, r3, "tolerance", std::nullopt}});
    EXPECT_EQ(valueIn(PartSet::A, r3, "tolerance"), std::nullopt);
    doAndBack({edits::SetValue{Layer::setB, r3, "resistance", 390.0}});
    doAndBack({edits::SetValue{Layer::setB, r3, "resistance", std::nullopt}});
    EXPECT_TRUE(c.overrides(PartSet::B, r3).empty());
    refuses({edits::SetValue{Layer::part, r3, "resistance", -1.0}},
            "R3.resistance: must be greater than 0, got -1");
    refuses({edits::SetValue{Layer::part, r3, "resistance", std::nullopt}},
            "R3.resistance: a resistor needs it");
}

TEST_F(Edits, OneParameterOfADeviceBlockIsSetByItself) {
    doAndBack({edits::SetValue{Layer::part, u, "device.low_limit", 0.2}});
    EXPECT_EQ(valueIn(PartSet::A, u, "device"), Value(Overrides{{"delay", 1e-7}, {"low_limit", 0.2}}));
    doAndBack({edits::SetValue{Layer::setB, u, "device.delay", 3e-7}});
    EXPECT_EQ(valueIn(PartSet::A, u, "device.delay"), Value(1e-7));
    EXPECT_EQ(valueIn(PartSet::B, u, "device.delay"), Value(3e-7));
    doAndBack({edits::SetValue{Layer::setB, u, "device.delay", std::nullopt}});
    EXPECT_TRUE(c.overrides(PartSet::B, u).empty());
    refuses({edits::SetValue{Layer::part, u, "device.delya", 1.0}},
            "U1.device.delya: the timer has no such parameter");
}

TEST_F(Edits, PlacesOnTheDrawingChangeAndGo) {
    doAndBack({edits::Place{r1, Placement{1, 2, 180, false, {}}}});
    doAndBack({edits::Place{r1, std::nullopt}});
    doAndBack({edits::Place{r2, Placement{3, 4, 0, false, {}}}});
    refuses({edits::Place{r2, Placement{3, 4, 45, false, {}}}}, "a turn must be 0, 90, 180 or 270, got 45");
    refuses({edits::Place{r2, Placement{std::numeric_limits<double>::infinity(), 4, 0, false, {}}}},
            "a place must be finite");
}

TEST_F(Edits, TiesHoldValuesOfOneUnitAndReelsHoldPartsOnce) {
    doAndBack({edits::SetTies{{{{r2, "resistance"}, {r3, "resistance"}}}}});
    doAndBack({edits::SetReels{{{r1}, {r2, r3}}}});
    refuses({edits::SetTies{{{{r2, "resistance"}, {bt, "voltage"}}}}},
            "ties[0][1]: \"BT1.voltage\" has another unit than the values before it");
    refuses({edits::SetTies{{{{r2, "resistance"}}, {{r2, "resistance"}}}}},
            "ties[1][0]: \"R2.resistance\" is tied already");
    refuses({edits::SetTies{{{{r2, "voltage"}}}}},
            "ties[0][0]: \"R2.voltage\" is no number that could be tied");
    refuses({edits::SetReels{{{r1, r1}}}}, "reels[0][1]: \"R1\" is on a reel already");
}

TEST_F(Edits, SetAIsWrittenToThePartAndSetBAsAnOverride) {
    doAndBack(setValue(c, PartSet::A, r1, "resistance", 10000.0));
    EXPECT_EQ(c.find(r1)->values.at("resistance"), Value(10000.0));
    EXPECT_TRUE(c.overrides(PartSet::A, r1).empty());
    EXPECT_EQ(valueIn(PartSet::A, r1, "resistance"), Value(10000.0));
    EXPECT_EQ(valueIn(PartSet::B, r1, "resistance"), Value(68000.0));

    doAndBack(setValue(c, PartSet::B, r3, "resistance", 390.0));
    EXPECT_EQ(valueIn(PartSet::A, r3, "resistance"), Value(270.0));
    EXPECT_EQ(valueIn(PartSet::B, r3, "resistance"), Value(390.0));
}

TEST_F(Edits, TiedValuesMoveAlong) {
    doAndBack(setValue(c, PartSet::A, r2, "resistance", 12000.0));
    EXPECT_EQ(valueIn(PartSet::A, r1, "resistance"), Value(12000.0));
    EXPECT_EQ(valueIn(PartSet::A, r2, "resistance"), Value(12000.0));
    EXPECT_EQ(valueIn(PartSet::A, r3, "resistance"), Value(270.0));
    doAndBack(setValue(c, PartSet::B, r2, "resistance", 15000.0));
    EXPECT_EQ(valueIn(PartSet::B, r1, "resistance"), Value(15000.0));
}

TEST_F(Edits, AGroupIsDoneWhollyOrNotAtAll) {
    edits::Group group{"Two steps", {}};
    group.edits.push_back({edits::RenamePart{r1, "R7"}});
    group.edits.push_back({edits::RemovePart{r2}});
    group.edits.push_back({edits::JoinPin{{r1, 0}, mid}});
    doAndBack({group});

    group.edits = {};
    group.edits.push_back({edits::SetTitle{"changed"}});
    group.edits.push_back({edits::RemovePart{r1}});
    group.edits.push_back({edits::SetValue{Layer::part, r3, "resistance", -1.0}});
    refuses({group}, "R3.resistance: must be greater than 0, got -1");

    // The part that was made first is gone, and its id is free again.
    const PartId free = c.nextPartId();
    group.edits.insert(group.edits.begin(),
                       {edits::AddPart{{{}, PartKind::resistor, "R9", {{"resistance", 1.0}}, {}}}});
    refuses({group}, "R3.resistance: must be greater than 0, got -1");
    EXPECT_EQ(c.nextPartId(), free);
}

TEST_F(Edits, AreDescribedForTheUndoList) {
    const auto says = [&](Edit::Kind kind) { return describe(c, Edit{std::move(kind)}); };
    const std::string space = "\u00A0";
    EXPECT_EQ(says(edits::SetValue{Layer::part, r1, "resistance", 4700.0}), "Set R1 to 4.7" + space + "kΩ");
    EXPECT_EQ(says(edits::SetValue{Layer::setB, r1, "resistance", 4700.0}),
              "Set R1 to 4.7" + space + "kΩ in Set B");
    EXPECT_EQ(says(edits::SetValue{Layer::part, r1, "rated_power", 0.5}),
              "Set rated power of R1 to 500" + space + "mW");
    EXPECT_EQ(says(edits::SetValue{Layer::part, u, "device.delay", 1e-6}),
              "Set device.delay of U1 to 1" + space + "µs");
    EXPECT_EQ(says(edits::SetValue{Layer::part, u, "family", std::string("cmos")}), "Set U1 to cmos");
    EXPECT_EQ(says(edits::SetValue{Layer::part, r1, "tolerance", std::nullopt}),
              "Take back the tolerance of R1");
    EXPECT_EQ(says(edits::RemovePart{r1}), "Remove R1");
    EXPECT_EQ(says(edits::RenamePart{r1, "R9"}), "Rename R1 to R9");
    EXPECT_EQ(says(edits::JoinPin{{u, 6}, plus}), "Join U1:7 to net supply");
    EXPECT_EQ(says(edits::JoinPin{{u, 6}, std::nullopt}), "Leave U1:7 open");
    EXPECT_EQ(describe(c, setValue(c, PartSet::A, r2, "resistance", 4700.0)), "Set R2 to 4.7" + space + "kΩ");
    EXPECT_EQ(says(edits::Group{"Two steps", {}}), "Two steps");
}

/// Random edits, a good share of them refused, on whatever the circuit has become.
class RandomEdits {
  public:
    explicit RandomEdits(unsigned seed) : m_random(seed) {}

    Edit next(const Circuit& c, int depth = 0) {
        switch (m_random() % (depth < 2 ? 15 : 14)) {
        case 0:
            return {edits::SetTitle{"title " + std::to_string(m_random() % 100)}};
        case 1:
            return {edits::SetRun{{static_cast<int>(m_random() % 20), Begin::settled, {}}}};
        case 2:
            return {edits::AddPart{newPart(c), m_random() % 12}};
        case 3:
            return {edits::RemovePart{part(c)}};
        case 4:
            return {edits::RenamePart{part(c), "X" + std::to_string(m_random() % 9)}};
        case 5:
            return {
                edits::AddNet{{{}, "net " + std::to_string(m_random() % 9), pins(c), {}}, m_random() % 5}};
        case 6:
            return {edits::RemoveNet{net(c)}};
        case 7:
            return {edits::RenameNet{net(c), "net " + std::to_string(m_random() % 9)}};
        case 8:
        case 9:
            return {edits::JoinPin{pin(c), m_random() % 4 ? std::optional(net(c)) : std::nullopt,
                                   m_random() % 6}};
        case 10:
            return {edits::Place{part(c), m_random() % 3 ? std::optional(Placement{1.5, 2, 90, false, {}})
                                                         : std::nullopt}};
        case 11:
            return {edits::SetTies{{{{part(c), "resistance"}, {part(c), "resistance"}}}}};
        case 12:
            return {edits::SetReels{{{part(c), part(c)}, {part(c)}}}};
        case 13:
            return valueEdit(c);
        default: {
            edits::Group group;
            for (auto n = m_random() % 5; n > 0; --n) group.edits.push_back(next(c, depth + 1));
            return {std::move(group)};
        }
        }
    }

  private:
    Edit valueEdit(const Circuit& c) {
        const double number = static_cast<double>(m_random() % 50) - 5;
        switch (m_random() % 4) {
        case 0:
            return setValue(c, m_random() % 2 ? PartSet::A : PartSet::B, part(c), "resistance", number);
        case 1:
            return {edits::SetValue{layer(), part(c), "tolerance", Value(number / 50)}};
        case 2:
            return {edits::SetValue{layer(), part(c), "tolerance", std::nullopt}};
        default:
            return {edits::SetValue{layer(), part(c), "device.delay",
                                    m_random() % 3 ? std::optional(Value(number)) : std::nullopt}};
        }
    }
    Layer layer() { return static_cast<Layer>(m_random() % 3); }
    PartId part(const Circuit& c) {
        return c.parts().empty() ? PartId{1} : c.parts()[m_random() % c.parts().size()].id;
    }
    NetId net(const Circuit& c) {
        return c.nets().empty() ? NetId{1} : c.nets()[m_random() % c.nets().size()].id;
    }
    PinRef pin(const Circuit& c) { return {part(c), static_cast<int>(m_random() % 4)}; }
    std::vector<PinRef> pins(const Circuit& c) {
        std::vector<PinRef> list;
        for (auto n = m_random() % 3; n > 0; --n) list.push_back(pin(c));
        return list;
    }
    Part newPart(const Circuit&) {
        const std::string ref = "N" + std::to_string(m_random() % 12);
        if (m_random() % 3 == 0) return {{}, PartKind::timer, ref, {}, {}};
        return {{},
                PartKind::resistor,
                ref,
                {{"resistance", 1.0 + static_cast<double>(m_random() % 9)}},
                {{"k", "1"}}};
    }
    std::mt19937 m_random;
};

TEST_F(Edits, AnyRunOfEditsIsUndoneStepByStep) {
    for (unsigned seed = 1; seed <= 25; ++seed) {
        const Circuit start = c;
        RandomEdits random(seed);
        std::vector<Snapshot> before;
        std::vector<Edit> backs;
        int refused = 0;
        for (int step = 0; step < 120; ++step) {
            const Edit edit = random.next(c);
            const Snapshot now(c);
            auto back = apply(c, edit);
            if (!back) {
                ++refused;
                ASSERT_EQ(Snapshot(c), now) << "a refused edit left a trace: " << describe(c, edit);
                continue;
            }
            before.push_back(now);
            backs.push_back(std::move(back).value());
        }
        EXPECT_GT(backs.size(), 40u);
        EXPECT_GT(refused, 5);

        const Snapshot end(c);
        std::vector<Edit> again;
        for (std::size_t i = backs.size(); i-- > 0;) {
            auto forward = apply(c, backs[i]);
            ASSERT_TRUE(forward) << "seed " << seed << ", step " << i << ": " << forward.fault().message();
            ASSERT_EQ(Snapshot(c), before[i]) << "seed " << seed << ", step " << i;
            again.push_back(std::move(forward).value());
        }
        for (std::size_t i = again.size(); i-- > 0;) ASSERT_TRUE(apply(c, again[i]));
        EXPECT_EQ(Snapshot(c), end) << "seed " << seed;
        c = start;
    }
}

} // namespace
} // namespace blinkwright::circuit
