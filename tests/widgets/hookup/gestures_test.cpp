// The gestures without a window: a scene of a few pins, parts and wires on a sheet of paper.
#include "widgets/hookup/gestures.h"

#include <QLineF>
#include <QStringList>

#include <gtest/gtest.h>

namespace blinkwright::widgets::hookup {

namespace {

using circuit::NetId;
using circuit::PartId;
using circuit::PinRef;

constexpr PartId r1{1}, r2{2}, r3{3};
constexpr NetId rail{11}, lone{12};

/// Three resistors that lie in a row, 100 units apart; R1:2 and R2:1 are joined by a straight wire, and R3
/// has a wire of its own to nowhere.
struct Paper : Scene {
    std::map<PartId, QPointF> middles{{r1, {0, 0}}, {r2, {100, 0}}, {r3, {200, 0}}};
    std::map<NetId, std::vector<PinRef>> nets{{rail, {{r1, 1}, {r2, 0}}}, {lone, {{r3, 1}, {r3, 0}}}};

    std::optional<PinRef> pinAt(QPointF at) const override {
        for (const auto& [part, middle] : middles)
            for (const int pin : {0, 1})
                if (QLineF(at, pinPoint({part, pin})).length() <= 7) return PinRef{part, pin};
        return std::nullopt;
    }
    std::optional<PartId> partAt(QPointF at) const override {
        for (const auto& [part, middle] : middles)
            if (QRectF(middle - QPointF(20, 8), QSizeF(40, 16)).contains(at)) return part;
        return std::nullopt;
    }
    std::optional<NetId> netAt(QPointF at) const override {
        const bool onRail = std::abs(at.y()) <= 4 && at.x() >= 30 && at.x() <= 70;
        const bool onLone = std::abs(at.y() - 50) <= 4;
        return onRail ? std::optional(rail) : onLone ? std::optional(lone) : std::nullopt;
    }
    std::optional<PinRef> wireEndAt(QPointF at) const override {
        if (netAt(at) != rail) return std::nullopt;
        return at.x() < 50 ? PinRef{r1, 1} : PinRef{r2, 0};
    }
    std::vector<PartId> partsIn(const QRectF& area) const override {
        std::vector<PartId> found;
        for (const auto& [part, middle] : middles)
            if (area.contains(middle)) found.push_back(part);
        return found;
    }
    circuit::Places places(const std::vector<PartId>& parts) const override {
        circuit::Places all;
        for (const PartId part : parts)
            if (const auto found = middles.find(part); found != middles.end())
                all[part] = {found->second.x(), found->second.y(), 0, false, {}};
        return all;
    }
    std::optional<NetId> netOf(PinRef pin) const override {
        for (const auto& [net, pins] : nets)
            if (std::ranges::find(pins, pin) != pins.end()) return net;
        return std::nullopt;
    }
    QPointF pinPoint(PinRef pin) const override {
        return middles.at(pin.part) + QPointF(pin.pin == 0 ? -30 : 30, 0);
    }
    QString pinText(PinRef pin) const override {
        return QStringLiteral("R%1:%2").arg(pin.part.n).arg(pin.pin + 1);
    }
    QString netText(NetId net) const override {
        return net == rail ? QStringLiteral("rail") : QStringLiteral("lone");
    }
};

struct HandOnPaper : testing::Test {
    Paper paper;
    Selection chosen;
    std::vector<std::pair<Wish, int>> wishes;
    QStringList said;
    std::vector<PartId> activated;
    Gestures hand{paper,
                  chosen,
                  {.wish = [this](const Wish& wish, int gesture) { wishes.emplace_back(wish, gesture); },
                   .say = [this](const QString& why) { said << why; },
                   .activate = [this](PartId part) { activated.push_back(part); }}};

    void drag(std::initializer_list<QPointF> way, Gestures::Keys keys = {}) {
        hand.press(*way.begin(), keys);
        for (const QPointF at : way) hand.move(at);
        hand.release(*(way.end() - 1));
    }
    template <class Kind>
    Kind only() {
        EXPECT_EQ(wishes.size(), 1u);
        EXPECT_TRUE(wishes.size() == 1 && std::holds_alternative<Kind>(wishes.front().first));
        return wishes.empty() ? Kind{} : std::get<Kind>(wishes.front().first);
    }
};

TEST_F(HandOnPaper, AClickChoosesAndAWanderingClickIsStillOne) {
    drag({{0, 0}, {2, 2}});
    EXPECT_EQ(chosen.parts(), std::vector{r1});
    EXPECT_EQ(activated, std::vector{r1});
    EXPECT_TRUE(wishes.empty());
}

TEST_F(HandOnPaper, ADragFromPinToPinIsAWire) {
    drag({{-30, 0}, {-30, 40}, {232, 3}}); // within reach of R3:2
    const auto wish = only<wishes::JoinPins>();
    EXPECT_EQ(wish.a, (PinRef{r1, 0}));
    EXPECT_EQ(wish.b, (PinRef{r3, 1}));
    EXPECT_FALSE(hand.busy());
}

TEST_F(HandOnPaper, AWireOntoAWireIsAWishForItsNet) {
    drag({{-30, 0}, {-30, 30}, {20, 50}});
    EXPECT_EQ(only<wishes::JoinToNet>().net, lone);
}

TEST_F(HandOnPaper, AWireWithinOneNetOrToItsOwnPinIsRefusedWithTheReason) {
    hand.press({30, 0}, {}); // R1:2
    hand.move({40, 30});
    hand.move({70, 0}); // R2:1
    EXPECT_FALSE(hand.target().legal());
    hand.release({70, 0});
    EXPECT_EQ(said, QStringList{"R1:2 and R2:1 are joined already, by the net rail."});
    said.clear();
    drag({{-30, 0}, {-30, 30}, {-30, 0}});
    EXPECT_EQ(said, QStringList{"R1:1 cannot be joined to itself."});
    said.clear();
    drag({{30, 0}, {40, 30}, {50, 0}});
    EXPECT_EQ(said, QStringList{"R1:2 is in the net rail already."});
    EXPECT_TRUE(wishes.empty());
}

TEST_F(HandOnPaper, AWireThatEndsOnThePaperIsNoneAndSaysWhy) {
    drag({{-30, 0}, {-30, 80}});
    EXPECT_TRUE(wishes.empty());
    ASSERT_EQ(said.size(), 1);
    EXPECT_TRUE(said.front().startsWith("No wire was drawn from R1:1"));
}

TEST_F(HandOnPaper, WithShiftAWiresEndComesOffItsPin) {
    drag({{30, 0}, {30, 80}}, {.pull = true});
    EXPECT_EQ(only<wishes::TakeOff>().pin, (PinRef{r1, 1}));
    wishes.clear();
    drag({{30, 0}, {30, 80}, {170, 0}}, {.pull = true});
    EXPECT_EQ(only<wishes::PullToPin>().to, (PinRef{r3, 0}));
    wishes.clear();
    drag({{30, 0}, {30, 30}, {20, 50}}, {.pull = true});
    EXPECT_EQ(only<wishes::PullToNet>().to, lone);
}

TEST_F(HandOnPaper, APinWithoutANetHasNothingToPullOff) {
    drag({{-30, 0}, {-30, 40}, {170, 0}}, {.pull = true});
    (void)only<wishes::JoinPins>();
}

TEST_F(HandOnPaper, APressOnAWireTakesItsNearerEnd) {
    drag({{60, 0}, {60, 40}, {60, 90}});
    EXPECT_EQ(only<wishes::TakeOff>().pin, (PinRef{r2, 0}));
    EXPECT_TRUE(chosen.empty());
}

TEST_F(HandOnPaper, AWiresEndThatIsPutBackChangesNothing) {
    drag({{60, 0}, {60, 40}, {70, 0}});
    EXPECT_TRUE(wishes.empty());
    EXPECT_EQ(said, QStringList{"The wire ends at R2:1 already."});
}

TEST_F(HandOnPaper, AClickOnAWireChoosesItsNet) {
    drag({{50, 0}, {51, 0}});
    EXPECT_EQ(chosen.net(), rail);
    EXPECT_TRUE(wishes.empty());
}

TEST_F(HandOnPaper, PartsMoveByStepsOfTheGridUnderOneGesture) {
    chosen.choose({r1, r2});
    drag({{0, 0}, {3, 3}, {4, 4}, {13, 4}, {14, 4}, {27, -6}});
    ASSERT_EQ(wishes.size(), 2u);
    const auto& last = std::get<wishes::Move>(wishes.back().first);
    EXPECT_EQ(last.dx, 30);
    EXPECT_EQ(last.dy, -10);
    EXPECT_EQ(last.shown, paper.places({r1, r2}));
    EXPECT_NE(wishes.front().second, 0);
    EXPECT_EQ(wishes.front().second, wishes.back().second);
    wishes.clear();
    drag({{0, 0}, {30, 0}});
    EXPECT_NE(wishes.front().second, 1) << "another drag is another gesture";
}

TEST_F(HandOnPaper, ADragOfAPartThatIsNotChosenChoosesItAlone) {
    chosen.choose(r1);
    drag({{100, 0}, {130, 0}});
    EXPECT_EQ(chosen.parts(), std::vector{r2});
    EXPECT_EQ(only<wishes::Move>().shown, paper.places({r2}));
}

TEST_F(HandOnPaper, EscapePutsEverythingBack) {
    chosen.choose(r3);
    hand.press({100, 0}, {});
    hand.move({150, 0});
    hand.cancel();
    const auto& last = std::get<wishes::Move>(wishes.back().first);
    EXPECT_EQ(last.dx, 0);
    EXPECT_EQ(wishes.back().second, wishes.front().second);
    EXPECT_EQ(chosen.parts(), std::vector{r3});
    wishes.clear();
    hand.release({150, 0});
    hand.press({-30, 0}, {});
    hand.move({-30, 60});
    hand.cancel();
    hand.release({170, 0});
    EXPECT_TRUE(wishes.empty());
}

TEST_F(HandOnPaper, ABandChoosesAndWithCtrlAddsToWhatIsChosen) {
    drag({{-60, -60}, {60, 30}});
    EXPECT_EQ(chosen.parts(), std::vector{r1});
    drag({{150, -60}, {260, 30}}, {.extend = true});
    EXPECT_EQ(chosen.parts(), (std::vector{r1, r3}));
    drag({{150, -60}, {160, -50}});
    EXPECT_TRUE(chosen.empty());
}

TEST_F(HandOnPaper, ANewPartHangsOnThePointerUntilAPress) {
    hand.place(circuit::PartKind::diode, {0, 0, 90, false, {}});
    hand.move({93, 57});
    hand.turnPlaced();
    EXPECT_EQ(hand.placed().x, 90);
    EXPECT_TRUE(wishes.empty());
    hand.press({104, 57}, {});
    hand.release({104, 57});
    const auto wish = only<wishes::Add>();
    EXPECT_EQ(wish.kind, circuit::PartKind::diode);
    EXPECT_EQ(wish.place, (circuit::Placement{100, 60, 180, false, {}}));
    EXPECT_TRUE(chosen.empty()) << "the press that puts it down chooses nothing under it";
}

TEST_F(HandOnPaper, WhatIsGoneIsNoLongerInHand) {
    hand.press({-30, 0}, {});
    hand.move({-30, 60});
    paper.middles.erase(r1);
    paper.nets.erase(rail);
    hand.forget();
    EXPECT_FALSE(hand.busy());
    hand.release({170, 0});
    EXPECT_TRUE(wishes.empty());
}

TEST(ChosenParts, AreEachThereOnceAndTheLastIsCurrent) {
    Selection chosen;
    EXPECT_TRUE(chosen.empty());
    chosen.add({r1, r2, r1});
    EXPECT_EQ(chosen.parts(), (std::vector{r2, r1}));
    EXPECT_EQ(chosen.current(), r1);
    chosen.toggle(r1);
    EXPECT_EQ(chosen.current(), r2);
    chosen.chooseNet(rail);
    EXPECT_TRUE(chosen.parts().empty());
    chosen.add({r3});
    EXPECT_FALSE(chosen.net());
    chosen.keep([](PartId) { return false; }, [](NetId) { return true; });
    EXPECT_TRUE(chosen.empty());
}

} // namespace

} // namespace blinkwright::widgets::hookup
