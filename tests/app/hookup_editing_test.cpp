// Editing on the Hook-up in the real window: what each gesture and each command comes to.
#include "app/hookup_wishes.h"
#include "app/part_dialog.h"
#include "app/typed_dialog.h"
#include "core/io/circuit_file.h"
#include "tests/app/hand.h"
#include "tests/app/support.h"
#include "widgets/values/value_panel.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QDir>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QSignalSpy>
#include <QStatusBar>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using circuit::PartKind;

class HookupEditing : public testing::Test {
  protected:
    HookupEditing() : settings(folder.filePath("settings.ini")), window(settings), hand(window) {
        settings.setLooks(app::Looks::light);
        window.resize(1500, 950);
        window.show();
        EXPECT_TRUE(window.openFile(sample("mole-light")));
        QCoreApplication::processEvents();
        before = text();
    }
    const circuit::Circuit& circuit() { return window.document().circuit(); }
    QByteArray text() { return QByteArray::fromStdString(io::writeCircuit(circuit())); }
    QUndoStack& undo() { return window.document().undoStack(); }
    std::string netOf(const char* pin) {
        const auto net = circuit().netOf(circuit().pinNamed(pin).value());
        return net ? circuit().find(*net)->name : "";
    }
    circuit::Placement placeOf(const char* ref) { return *circuit().placement(hand.part(ref)); }
    QString said() { return window.statusBar()->currentMessage(); }
    std::vector<circuit::PartId> chosen() { return window.hookup().selection().parts(); }
    /// One step to undo, under a text, and the file is as it was.
    void isOneStep(const char* name) {
        ASSERT_EQ(undo().count(), 1) << undo().undoText().toStdString();
        EXPECT_EQ(undo().undoText(), QLatin1String(name));
        undo().undo();
        EXPECT_EQ(text(), before);
    }
    QAction& action(const char* name) {
        for (QAction* found : window.findChildren<QAction*>())
            if (found->text().remove('&').startsWith(QString::fromUtf8(name))) return *found;
        throw std::runtime_error(name);
    }
    void picture(const char* name) {
        ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
        EXPECT_TRUE(window.grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/editing-%1.png").arg(name)));
    }

    QTemporaryDir folder;
    app::Settings settings;
    app::MainWindow window;
    Hand hand;
    QByteArray before;
};

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
    EXPECT_NEAR(to.x - from.x, 84 / window.hookup().zoom(), 5.1);
    EXPECT_NEAR(to.y - from.y, 36 / window.hookup().zoom(), 5.1);
    const QPoint now = hand.middle("R2");
    EXPECT_LE((now - (at + QPoint(84, 36))).manhattanLength(), 11) << "the drawing must stay under the hand";
    isOneStep("Move R2");
}

TEST_F(HookupEditing, AMovedPartAsksForNoRunAndARewiredOneDoes) {
    ASSERT_TRUE(waitFor([&] { return window.live().shown() != nullptr; }));
    const auto study = window.live().shown();
    QSignalSpy shown(&window.live(), &app::LivePanels::studyShown);
    hand.drag(hand.middle("R2"), hand.middle("R2") + QPoint(60, 0));
    QTest::qWait(100);
    EXPECT_EQ(shown.count(), 0);
    EXPECT_EQ(window.live().shown(), study);
    hand.drag(hand.pin("R3:2"), hand.pin("U1:7"));
    EXPECT_TRUE(waitFor([&] { return shown.count() > 0; }));
    EXPECT_NE(window.live().shown(), study);
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
    EXPECT_TRUE(window.document().undoStack().isClean());
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
    ASSERT_TRUE(window.hookupWishes().takeOff("U1:4").ok());
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
    picture("pulled");
    hand.release(pin + QPoint(-60, -10));
    EXPECT_EQ(netOf("C2:plus"), "");
    isOneStep("Take C2:plus off net control");
}

TEST_F(HookupEditing, AWireTakenAtItsEndMovesToTheNextPin) {
    // Pressed on the wire, beside the pin: no modifier is needed.
    const QPointF end = hand.pinPlace("D1:anode");
    hand.drag(hand.at(end - QPointF(0, 14)), hand.pin("R1:1"));
    EXPECT_EQ(netOf("D1:anode"), "");
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
    picture("wire");
    hand.release(hand.pin("U1:7") + QPoint(3, 2));
    EXPECT_EQ(netOf("R3:2"), netOf("U1:7"));
    isOneStep("Join R3:2 and U1:7");
}

TEST_F(HookupEditing, KeysMoveTurnMirrorAndDelete) {
    const circuit::Placement from = placeOf("R2");
    window.hookup().setFocus();
    window.hookup().select(hand.part("R2"));
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
    window.hookup().setFocus();
    window.hookup().select(hand.part("R1"));
    hand.key(Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(chosen(), (std::vector{hand.part("R1"), hand.part("R2")}));
}

TEST_F(HookupEditing, CopiedPartsAreOnTheClipboardAsACircuitFileAndPasteWithTheirWiring) {
    window.hookup().setFocus();
    window.hookup().setSelection({hand.part("R3"), hand.part("D1")});
    hand.key(Qt::Key_C, Qt::ControlModifier);
    const auto read = io::readCircuit(QApplication::clipboard()->text().toStdString());
    ASSERT_TRUE(read) << read.fault().message();
    EXPECT_EQ(read.value().parts().size(), 2u);
    hand.key(Qt::Key_V, Qt::ControlModifier);
    ASSERT_NE(circuit().findRef("R4"), nullptr);
    ASSERT_NE(circuit().findRef("D2"), nullptr);
    EXPECT_EQ(netOf("R4:2"), netOf("D2:anode"));
    EXPECT_NE(netOf("R4:2"), netOf("R3:2"));
    EXPECT_EQ(chosen(), (std::vector{hand.part("R4"), hand.part("D2")}));
    picture("pasted");
    isOneStep("Paste 2 parts");

    window.hookup().setSelection({hand.part("R3"), hand.part("D1")});
    hand.key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(circuit().findRef("R3"), nullptr);
    isOneStep("Delete 2 parts");
    window.hookup().setSelection({hand.part("R3"), hand.part("D1")});
    hand.key(Qt::Key_D, Qt::ControlModifier);
    isOneStep("Duplicate 2 parts");
}

TEST_F(HookupEditing, AClipboardWithoutPartsPastesNothing) {
    window.hookup().setFocus();
    QApplication::clipboard()->setText(QStringLiteral("{\"format\": 7}"));
    window.hookupWishes().paste();
    EXPECT_EQ(said(), QStringLiteral("Nothing was pasted: format: must be a text, got 7."));
    QApplication::clipboard()->setText(QStringLiteral("hello"));
    window.hookupWishes().paste();
    EXPECT_EQ(said(), QStringLiteral("Nothing was pasted: there are no parts on the clipboard."));
    EXPECT_EQ(text(), before);
    EXPECT_FALSE(action("Paste parts").isEnabled());
}

TEST_F(HookupEditing, KeysOfTheHookUpLeaveTheFieldsAlone) {
    window.hookup().select(hand.part("R2"));
    auto* field = window.values().findChild<QLineEdit*>();
    ASSERT_NE(field, nullptr);
    field->setFocus();
    for (const Qt::Key key : {Qt::Key_T, Qt::Key_M, Qt::Key_J, Qt::Key_A, Qt::Key_Delete})
        QTest::keyClick(field, key);
    EXPECT_EQ(text(), before);
    EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
    EXPECT_EQ(window.findChild<app::TypedDialog*>(), nullptr);
}

TEST_F(HookupEditing, TwoPinsAreJoinedByTheirNames) {
    window.hookup().setFocus();
    window.hookup().select(hand.part("R3"));
    hand.key(Qt::Key_J);
    auto* dialog = window.findChild<app::TypedDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->field(0)->text(), QStringLiteral("R3:"));
    dialog->field(0)->setText("R3:2");
    dialog->field(1)->setText("U1:9");
    QTest::keyClick(dialog, Qt::Key_Return);
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(dialog->findChild<QLabel*>("why")->text().startsWith("U1 has no pin \"9\""));
    dialog->field(1)->setText("discharge"); // a net
    QTest::keyClick(dialog, Qt::Key_Return);
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_EQ(netOf("R3:2"), netOf("U1:7"));
    isOneStep("Join R3:2 to net discharge");
    EXPECT_EQ(window.hookupWishes().join("R3:2", "nowhere").fault().text,
              "there is no net \"nowhere\", and a pin is written REF:PIN");
}

TEST_F(HookupEditing, APinIsTakenOffItsNetByName) {
    window.hookup().setFocus();
    hand.key(Qt::Key_J, Qt::ShiftModifier);
    auto* dialog = window.findChild<app::TypedDialog*>();
    ASSERT_NE(dialog, nullptr);
    dialog->field(0)->setText("U1:5");
    QTest::keyClick(dialog, Qt::Key_Return);
    isOneStep("Take U1:5 off net control");
}

TEST_F(HookupEditing, F2RenamesAndRefusesANameThatIsInUse) {
    window.hookup().setFocus();
    window.hookup().select(hand.part("C1"));
    hand.key(Qt::Key_F2);
    auto* dialog = window.findChild<app::PartDialog*>();
    ASSERT_NE(dialog, nullptr);
    dialog->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/editing-part-dialog.png"));
    dialog->name()->setText("C2");
    QTest::keyClick(dialog, Qt::Key_Return);
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(dialog->findChild<QLabel*>("why")->text(), QStringLiteral("Name: \"C2\" is in use already"));
    dialog->name()->setText("C10");
    dialog->field("esr")->setText("-1");
    QTest::keyClick(dialog, Qt::Key_Return);
    EXPECT_TRUE(dialog->findChild<QLabel*>("why")->text().startsWith("series resistance: must be"));
    dialog->field("esr")->setText("");
    dialog->field("tolerance")->setText("-10 % to 50 %");
    QTest::keyClick(dialog, Qt::Key_Return);
    EXPECT_FALSE(dialog->isVisible());
    ASSERT_NE(circuit().findRef("C10"), nullptr);
    const auto& values = circuit().findRef("C10")->values;
    EXPECT_FALSE(values.contains("esr"));
    EXPECT_EQ(values.at("tolerance"), circuit::Value(circuit::Interval{-0.1, 0.5}));
    isOneStep("Change C1");
}

TEST_F(HookupEditing, AnUnchangedDialogIsNoStep) {
    for (const char* ref : {"BT1", "U1", "R1", "C1", "D1"}) {
        window.hookup().setFocus();
        window.hookup().select(hand.part(ref));
        hand.key(Qt::Key_F2);
        auto* dialog = window.findChild<app::PartDialog*>();
        ASSERT_NE(dialog, nullptr);
        QTest::keyClick(dialog, Qt::Key_Return);
        EXPECT_FALSE(dialog->isVisible());
        delete dialog;
    }
    EXPECT_EQ(undo().count(), 0);
}

TEST_F(HookupEditing, APartIsAddedAtAFreePlaceAndChosen) {
    window.hookup().setFocus();
    hand.key(Qt::Key_A);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    QTest::keyClick(menu, Qt::Key_L); // lamp
    ASSERT_NE(circuit().findRef("D2"), nullptr);
    EXPECT_EQ(chosen(), (std::vector{hand.part("D2")}));
    widgets::hookup::Drawing drawing;
    drawing.show(circuit());
    const auto boxOf = [](const widgets::hookup::PartView& part) {
        return placed(widgets::hookup::extentOf(part.kind), part.pose);
    };
    for (const auto& part : drawing.parts())
        EXPECT_EQ(boxOf(part).meets(boxOf(*drawing.find(hand.part("D2")))), part.id == hand.part("D2"));
    isOneStep("Add D2");
}

TEST_F(HookupEditing, APartThatHangsOnThePointerIsDroppedByEscape) {
    auto* strip = window.findChild<widgets::PartPalette*>();
    QTest::mouseClick(strip->button(PartKind::timer), Qt::LeftButton);
    hand.moveTo(hand.at({330, 60}));
    picture("ghost");
    hand.key(Qt::Key_Escape);
    hand.click(hand.at({330, 60}));
    EXPECT_EQ(text(), before);
    EXPECT_EQ(undo().count(), 0);
}

TEST_F(HookupEditing, TheMenuUnderThePointerFitsWhatIsThere) {
    const auto entriesAt = [&](QPoint at) {
        QContextMenuEvent event(QContextMenuEvent::Mouse, at, hand.paper()->mapToGlobal(at));
        QApplication::sendEvent(hand.paper(), &event);
        auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
        QStringList texts;
        for (const QAction* entry : menu ? menu->actions() : QList<QAction*>())
            if (!entry->isSeparator()) texts << entry->text().remove('&');
        if (menu) menu->close();
        return texts;
    };
    EXPECT_TRUE(entriesAt(hand.pin("U1:7")).contains("Take U1:7 off net discharge"));
    EXPECT_TRUE(entriesAt(hand.middle("R2")).contains("Duplicate"));
    EXPECT_EQ(chosen(), (std::vector{hand.part("R2")}));
    EXPECT_TRUE(entriesAt(hand.at(hand.pinPlace("D1:anode") - QPointF(0, 14))).contains("Rename net lamp…"));
    EXPECT_TRUE(entriesAt(QPoint(5, 5)).contains("Add a part here"));
}

TEST_F(HookupEditing, AChosenWireIsDeletedAsANet) {
    hand.click(hand.at(hand.pinPlace("D1:anode") - QPointF(0, 14)));
    ASSERT_TRUE(window.hookup().selection().net());
    hand.key(Qt::Key_Delete);
    EXPECT_EQ(netOf("D1:anode"), "");
    isOneStep("Remove net lamp");
}

TEST_F(HookupEditing, TheFirstEditStatesThePlacesThatTheProgramChose) {
    QByteArray plain = before;
    const auto drawingAt = plain.indexOf("\"drawing\"");
    plain.remove(drawingAt, plain.indexOf("\"run\"") - drawingAt);
    const QString file = folder.filePath("plain.blinkwright");
    writeFile(file, plain);
    ASSERT_TRUE(window.openFile(file));
    QCoreApplication::processEvents();
    before = text();
    const circuit::Places shown = window.hookup().shownPlaces();
    ASSERT_TRUE(window.hookupWishes().takeOff("U1:5").ok()); // would be laid out otherwise
    EXPECT_EQ(window.hookup().shownPlaces(), shown);
    hand.drag(hand.middle("R1"), hand.middle("R1") + QPoint(40, 0));
    for (const auto& [part, place] : window.hookup().shownPlaces())
        EXPECT_EQ(place == shown.at(part), part != hand.part("R1"));
    undo().undo();
    undo().undo();
    EXPECT_EQ(text(), before);
}

TEST_F(HookupEditing, ANewCircuitIsEmptyInvitesAndCanBeSavedAndOpenedAgain) {
    action("New").trigger();
    QCoreApplication::processEvents();
    EXPECT_TRUE(circuit().parts().empty());
    EXPECT_TRUE(window.document().path().isEmpty());
    EXPECT_TRUE(window.hookup().hasFocus());
    picture("new");
    const QString file = folder.filePath("empty.blinkwright");
    ASSERT_TRUE(window.document().saveAs(file));
    ASSERT_TRUE(window.openFile(file));
    EXPECT_TRUE(circuit().parts().empty());
}

TEST_F(HookupEditing, TheLastSupplyAndTimerMayGoAndTheFileStillOpens) {
    window.hookup().setFocus();
    window.hookup().setSelection({hand.part("BT1"), hand.part("U1")});
    hand.key(Qt::Key_Delete);
    const QString file = folder.filePath("rest.blinkwright");
    ASSERT_TRUE(window.document().saveAs(file));
    ASSERT_TRUE(window.openFile(file));
    ASSERT_TRUE(waitFor([&] { return window.live().shown() != nullptr; }));
    EXPECT_EQ(window.live().shown()->findings.front().kind, "no-supply");
}

} // namespace
