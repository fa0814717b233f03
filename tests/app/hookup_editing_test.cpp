// Editing on the Hook-up in the real window, by mouse and keys: what each gesture comes to.
#include "app/hookup_wishes.h"
#include "tests/app/hookup_editing.h"

#include <QSignalSpy>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using circuit::PartKind;

TEST_F(HookupEditing, ADragMovesAPartWithItsWiresInOneStepAndOnTheGrid) {
    const circuit::Placement from = placeOf("R2");
    const QPoint at = hand.middle("R2");
    hand.press(at);
    for (int k = 1; k <= 12; ++k) hand.moveTo(at + QPoint(7 * k, 3 * k));
    EXPECT_NE(placeOf("R2"), from) << "it moves while it is dragged";
    hand.release(at + QPoint(84, 36));
    const circuit::Placement to = placeOf("R2");
    EXPECT_EQ(std::fmod(to.x, 10), 0);
    EXPECT_EQ(std::fmod(to.y, 10), 0);
    EXPECT_NEAR(to.x - from.x, 84 / window->hookup().zoom(), 5.1);
    EXPECT_NEAR(to.y - from.y, 36 / window->hookup().zoom(), 5.1);
    const QPoint now = hand.middle("R2");
    EXPECT_LE((now - (at + QPoint(84, 36))).manhattanLength(), 11) << "the drawing must stay under the hand";
    isOneStep("Move R2");
}

TEST_F(HookupEditing, AMovedPartAsksForNoRunAndARewiredOneDoes) {
    ASSERT_TRUE(waitFor([&] { return window->live().shown() != nullptr; }));
    const auto study = window->live().shown();
    QSignalSpy shown(&window->live(), &app::LivePanels::studyShown);
    hand.drag(hand.middle("R2"), hand.middle("R2") + QPoint(60, 0));
    QTest::qWait(100);
    EXPECT_EQ(shown.count(), 0);
    EXPECT_EQ(window->live().shown(), study);
    hand.drag(hand.pin("R3:2"), hand.pin("U1:7"));
    EXPECT_TRUE(waitFor([&] { return shown.count() > 0; }));
    EXPECT_NE(window->live().shown(), study);
}

TEST_F(HookupEditing, APartIsTakenBetweenItsPinsHoweverSmallItIsShown) {
    while (window->hookup().zoom() > 0.25) window->hookup().zoomBy(0.8);
    hand.drag(hand.middle("R1"), hand.middle("R1") + QPoint(20, 0));
    isOneStep("Move R1");
}

TEST_F(HookupEditing, ADragThatComesBackOrIsEscapedIsNoStep) {
    const QPoint at = hand.middle("C1");
    hand.press(at);
    for (const QPoint by : {QPoint(40, 0), QPoint(40, 40), QPoint(0, 0)}) hand.moveTo(at + by);
    hand.release(at);
    EXPECT_EQ(undo().count(), 0);
    hand.press(at);
    hand.moveTo(at + QPoint(60, 0));
    EXPECT_NE(text(), before);
    hand.key(Qt::Key_Escape);
    hand.release(at + QPoint(60, 0));
    EXPECT_EQ(text(), before);
    EXPECT_EQ(undo().count(), 0);
    EXPECT_TRUE(window->document().undoStack().isClean());
}

TEST_F(HookupEditing, ABandChoosesWhatIsInItAndAllOfItMovesTogether) {
    const auto r1 = placeOf("R1"), c1 = placeOf("C1");
    hand.drag(hand.at({r1.x - 40, r1.y - 60}), hand.at({c1.x + 40, c1.y + 60}));
    EXPECT_EQ(chosen(), (std::vector{hand.part("R1"), hand.part("R2"), hand.part("C1")}));
    hand.drag(hand.middle("R2"), hand.middle("R2") + QPoint(60, 0));
    EXPECT_EQ(placeOf("R1").x - r1.x, placeOf("C1").x - c1.x);
    EXPECT_GT(placeOf("R1").x, r1.x);
    isOneStep("Move 3 parts");
}

TEST_F(HookupEditing, CtrlClicksChooseSeveralAndAClickOnThePaperNone) {
    hand.click(hand.middle("R1"));
    hand.click(hand.middle("D1"), Qt::ControlModifier);
    EXPECT_EQ(chosen(), (std::vector{hand.part("R1"), hand.part("D1")}));
    hand.click(hand.middle("R1"), Qt::ControlModifier);
    EXPECT_EQ(chosen(), (std::vector{hand.part("D1")}));
    hand.key(Qt::Key_A, Qt::ControlModifier);
    EXPECT_EQ(chosen().size(), circuit().parts().size());
    hand.click(QPoint(3, 3));
    EXPECT_TRUE(chosen().empty());
}

TEST_F(HookupEditing, AWireOntoAWireJoinsItsNet) {
    ASSERT_TRUE(window->hookupWishes().takeOff("U1:4").ok());
    // Onto the last straight run of the control net, half way between pin 5's lead and C2.
    const QPointF c2 = hand.pinPlace("C2:plus");
    hand.drag(hand.pin("U1:4"), hand.at(c2 - QPointF(0, 12)));
    EXPECT_EQ(netOf("U1:4"), "control");
    EXPECT_EQ(undo().undoText(), QStringLiteral("Join U1:4 to net control"));
}

TEST_F(HookupEditing, AWireThatIsPulledOffAPinAndDroppedNowhereLeavesThePinOpen) {
    const QPoint pin = hand.pin("C2:plus");
    hand.press(pin, Qt::ShiftModifier);
    hand.moveTo(pin + QPoint(-30, -6));
    hand.moveTo(pin + QPoint(-60, -10));
    picture("editing-pulled");
    hand.release(pin + QPoint(-60, -10));
    EXPECT_EQ(netOf("C2:plus"), "none");
    isOneStep("Take C2:plus off net control");
}

TEST_F(HookupEditing, AWireTakenAtItsEndMovesToTheNextPin) {
    // Pressed on the wire, beside the pin: no modifier is needed.
    const QPointF end = hand.pinPlace("D1:anode");
    hand.drag(hand.at(end - QPointF(0, 14)), hand.pin("R1:1"));
    EXPECT_EQ(netOf("D1:anode"), "none");
    EXPECT_EQ(netOf("R3:2"), "supply");
    isOneStep("Move the wire from D1:anode to R1:1");
}

TEST_F(HookupEditing, WhatIsNotLegalIsSaidAndNotDone) {
    const QPoint from = hand.pin("R1:1");
    hand.press(from);
    hand.moveTo(from + QPoint(20, 20));
    hand.moveTo(hand.pin("U1:8"));
    EXPECT_EQ(hand.paper()->cursor().shape(), Qt::ForbiddenCursor);
    EXPECT_EQ(said(), QStringLiteral("R1:1 and U1:8 are joined already, by the net supply."));
    hand.release(hand.pin("U1:8"));
    hand.drag(from, QPoint(4, 4));
    EXPECT_EQ(said(),
              QStringLiteral("No wire was drawn from R1:1: a wire ends on a pin or on another wire."));
    EXPECT_EQ(text(), before);
    EXPECT_EQ(undo().count(), 0);
}

TEST_F(HookupEditing, AWireInHandShowsWhereItMayEnd) {
    const QPoint from = hand.pin("R3:2");
    hand.press(from);
    hand.moveTo(from + QPoint(-10, -20));
    hand.moveTo(hand.pin("U1:7") + QPoint(3, 2)); // near enough
    picture("editing-wire");
    hand.release(hand.pin("U1:7") + QPoint(3, 2));
    EXPECT_EQ(netOf("R3:2"), netOf("U1:7"));
    isOneStep("Join R3:2 and U1:7");
}

TEST_F(HookupEditing, KeysMoveTurnMirrorAndDelete) {
    const circuit::Placement from = placeOf("R2");
    window->hookup().setFocus();
    window->hookup().select(hand.part("R2"));
    for (int k = 0; k < 3; ++k) hand.key(Qt::Key_Right, Qt::ControlModifier);
    hand.key(Qt::Key_Down, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_EQ(placeOf("R2").x, from.x + 30);
    EXPECT_EQ(placeOf("R2").y, from.y + 50);
    isOneStep("Move R2");
    hand.key(Qt::Key_T);
    EXPECT_EQ(placeOf("R2").turn, (from.turn + 90) % 360);
    isOneStep("Turn R2");
    hand.key(Qt::Key_M);
    EXPECT_TRUE(placeOf("R2").mirror);
    isOneStep("Mirror R2");
    hand.key(Qt::Key_Delete);
    EXPECT_EQ(circuit().findRef("R2"), nullptr);
    isOneStep("Delete R2");
}

TEST_F(HookupEditing, ShiftAndArrowsChooseMore) {
    window->hookup().setFocus();
    window->hookup().select(hand.part("R1"));
    hand.key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(chosen(), (std::vector{hand.part("R1"), hand.part("R2")}));
}

TEST_F(HookupEditing, APartThatHangsOnThePointerIsDroppedByEscape) {
    auto* strip = window->findChild<widgets::PartPalette*>();
    QTest::mouseClick(strip->button(PartKind::timer), Qt::LeftButton);
    hand.moveTo(hand.at({330, 60}));
    picture("editing-ghost");
    hand.key(Qt::Key_Escape);
    hand.click(hand.at({330, 60}));
    EXPECT_EQ(text(), before);
    EXPECT_EQ(undo().count(), 0);
}

TEST_F(HookupEditing, TheFirstEditStatesThePlacesThatTheProgramChose) {
    QByteArray plain = before;
    const auto drawingAt = plain.indexOf("\"drawing\"");
    plain.remove(drawingAt, plain.indexOf("\"run\"") - drawingAt);
    const QString file = inFolder("plain.blinkwright");
    writeFile(file, plain);
    ASSERT_TRUE(window->openFile(file));
    QCoreApplication::processEvents();
    before = text();
    const circuit::Places shown = window->hookup().shownPlaces();
    ASSERT_TRUE(window->hookupWishes().takeOff("U1:5").ok()); // would be laid out otherwise
    EXPECT_EQ(window->hookup().shownPlaces(), shown);
    hand.drag(hand.middle("R1"), hand.middle("R1") + QPoint(40, 0));
    for (const auto& [part, place] : window->hookup().shownPlaces())
        EXPECT_EQ(place == shown.at(part), part != hand.part("R1"));
    undo().undo();
    undo().undo();
    EXPECT_EQ(text(), before);
}

} // namespace
