// The commands of the Hook-up in the real window: its menus, its dialogs, and the clipboard.
#include "app/hookup_wishes.h"
#include "app/part_dialog.h"
#include "app/typed_dialog.h"
#include "tests/app/hookup_editing.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QPointer>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class HookupCommands : public HookupEditing {};

TEST_F(HookupCommands, CopiedPartsAreOnTheClipboardAsACircuitFileAndPasteWithTheirWiring) {
    window->hookup().setFocus();
    window->hookup().setSelection({hand.part("R3"), hand.part("D1")});
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
    picture("editing-pasted");
    isOneStep("Paste 2 parts");

    window->hookup().setSelection({hand.part("R3"), hand.part("D1")});
    hand.key(Qt::Key_X, Qt::ControlModifier);
    EXPECT_EQ(circuit().findRef("R3"), nullptr);
    isOneStep("Delete 2 parts");
    window->hookup().setSelection({hand.part("R3"), hand.part("D1")});
    hand.key(Qt::Key_D, Qt::ControlModifier);
    isOneStep("Duplicate 2 parts");
}

TEST_F(HookupCommands, AClipboardWithoutPartsPastesNothing) {
    window->hookup().setFocus();
    QApplication::clipboard()->setText(QStringLiteral("{\"format\": 7}"));
    window->hookupWishes().paste();
    EXPECT_EQ(said(), QStringLiteral("Nothing was pasted: format: must be a text, got 7."));
    QApplication::clipboard()->setText(QStringLiteral("hello"));
    window->hookupWishes().paste();
    EXPECT_EQ(said(), QStringLiteral("Nothing was pasted: there are no parts on the clipboard."));
    EXPECT_EQ(text(), before);
    EXPECT_FALSE(action("Paste parts").isEnabled());
}

TEST_F(HookupCommands, KeysOfTheHookUpLeaveTheFieldsAlone) {
    window->hookup().select(hand.part("R2"));
    auto* field = window->values().findChild<QLineEdit*>();
    ASSERT_NE(field, nullptr);
    field->setFocus();
    for (const Qt::Key key : {Qt::Key_T, Qt::Key_M, Qt::Key_J, Qt::Key_A, Qt::Key_Delete})
        QTest::keyClick(field, key);
    EXPECT_EQ(text(), before);
    EXPECT_EQ(QApplication::activePopupWidget(), nullptr);
    EXPECT_EQ(window->findChild<app::TypedDialog*>(), nullptr);
}

TEST_F(HookupCommands, TwoPinsAreJoinedByTheirNames) {
    window->hookup().setFocus();
    window->hookup().select(hand.part("R3"));
    hand.key(Qt::Key_J);
    auto* dialog = window->findChild<app::TypedDialog*>();
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
    EXPECT_EQ(window->hookupWishes().join("R3:2", "nowhere").fault().text,
              "there is no net \"nowhere\", and a pin is written REF:PIN");
}

TEST_F(HookupCommands, APinIsTakenOffItsNetByName) {
    window->hookup().setFocus();
    hand.key(Qt::Key_J, Qt::ShiftModifier);
    auto* dialog = window->findChild<app::TypedDialog*>();
    ASSERT_NE(dialog, nullptr);
    dialog->field(0)->setText("U1:5");
    QTest::keyClick(dialog, Qt::Key_Return);
    isOneStep("Take U1:5 off net control");
}

TEST_F(HookupCommands, AWholeNetIsRemovedByItsNameOrByAPinInIt) {
    window->hookup().setFocus();
    window->hookup().select(hand.part("R3"));
    hand.key(Qt::Key_Backspace, Qt::ControlModifier);
    const QPointer<app::TypedDialog> dialog = window->findChild<app::TypedDialog*>();
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->field(0)->text(), QStringLiteral("R3:"));
    dialog->field(0)->setText("lights");
    QTest::keyClick(dialog, Qt::Key_Return);
    EXPECT_EQ(dialog->findChild<QLabel*>("why")->text(), QStringLiteral("there is no net \"lights\""));
    dialog->field(0)->setText("R3:2");
    QTest::keyClick(dialog, Qt::Key_Return);
    EXPECT_TRUE(!dialog || !dialog->isVisible());
    EXPECT_EQ(netOf("D1:anode"), "none");
    EXPECT_EQ(window->hookupWishes().removeNet("R3:2").fault().text, "R3:2 is in no net");
    isOneStep("Remove net lamp");
    ASSERT_TRUE(window->hookupWishes().removeNet(" output ").ok());
    EXPECT_EQ(netOf("U1:3"), "none");
    isOneStep("Remove net output");
}

TEST_F(HookupCommands, TheMenuRemovesTheNetOfTheChosenWire) {
    hand.click(hand.at(hand.pinPlace("D1:anode") - QPointF(0, 14)));
    action("Remove net lamp").trigger();
    EXPECT_EQ(netOf("D1:anode"), "none");
    isOneStep("Remove net lamp");
}

TEST_F(HookupCommands, F2RenamesAndRefusesANameThatIsInUse) {
    window->hookup().setFocus();
    window->hookup().select(hand.part("C1"));
    hand.key(Qt::Key_F2);
    auto* dialog = window->findChild<app::PartDialog*>();
    ASSERT_NE(dialog, nullptr);
    picture("editing-part-dialog", *dialog);
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

TEST_F(HookupCommands, AnUnchangedDialogIsNoStep) {
    for (const char* ref : {"BT1", "U1", "R1", "C1", "D1"}) {
        window->hookup().setFocus();
        window->hookup().select(hand.part(ref));
        hand.key(Qt::Key_F2);
        auto* dialog = window->findChild<app::PartDialog*>();
        ASSERT_NE(dialog, nullptr);
        QTest::keyClick(dialog, Qt::Key_Return);
        EXPECT_FALSE(dialog->isVisible());
        delete dialog;
    }
    EXPECT_EQ(undo().count(), 0);
}

TEST_F(HookupCommands, APartIsAddedAtAFreePlaceAndChosen) {
    window->hookup().setFocus();
    hand.key(Qt::Key_A);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    QTest::keyClick(menu, Qt::Key_L); // lamp
    ASSERT_NE(circuit().findRef("D2"), nullptr);
    EXPECT_EQ(chosen(), (std::vector{hand.part("D2")}));
    widgets::hookup::Drawing drawing;
    drawing.show(circuit());
    const auto boxOf = [](const widgets::hookup::PartView& part) {
        return placed(extentOf(part), part.pose);
    };
    for (const auto& part : drawing.parts())
        EXPECT_EQ(boxOf(part).meets(boxOf(*drawing.find(hand.part("D2")))), part.id == hand.part("D2"));
    isOneStep("Add D2");
}

TEST_F(HookupCommands, TheMenuUnderThePointerFitsWhatIsThere) {
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

TEST_F(HookupCommands, AChosenWireIsDeletedAsANet) {
    hand.click(hand.at(hand.pinPlace("D1:anode") - QPointF(0, 14)));
    ASSERT_TRUE(window->hookup().selection().net());
    hand.key(Qt::Key_Delete);
    EXPECT_EQ(netOf("D1:anode"), "none");
    isOneStep("Remove net lamp");
}

TEST_F(HookupCommands, ANewCircuitIsEmptyInvitesAndCanBeSavedAndOpenedAgain) {
    action("New").trigger();
    QCoreApplication::processEvents();
    EXPECT_TRUE(circuit().parts().empty());
    EXPECT_TRUE(window->document().path().isEmpty());
    EXPECT_TRUE(window->hookup().hasFocus());
    picture("editing-new");
    const QString file = inFolder("empty.blinkwright");
    ASSERT_TRUE(window->document().saveAs(file));
    ASSERT_TRUE(window->openFile(file));
    EXPECT_TRUE(circuit().parts().empty());
}

TEST_F(HookupCommands, TheLastSupplyAndTimerMayGoAndTheFileStillOpens) {
    window->hookup().setFocus();
    window->hookup().setSelection({hand.part("BT1"), hand.part("U1")});
    hand.key(Qt::Key_Delete);
    const QString file = inFolder("rest.blinkwright");
    ASSERT_TRUE(window->document().saveAs(file));
    ASSERT_TRUE(window->openFile(file));
    ASSERT_TRUE(waitFor([&] { return window->live().shown() != nullptr; }));
    EXPECT_EQ(window->live().shown()->findings.front().kind, "no-supply");
}

} // namespace
