// "Choose values" and the drawer as people use them.
#include "app/rooms/choose_room.h"
#include "app/rooms/drawer_desk.h"
#include "core/study/study.h"
#include "tests/app/rooms/room_fixture.h"
#include "widgets/choose/choice_model.h"
#include "widgets/choose/choose_view.h"
#include "widgets/choose/drawer_dialog.h"
#include "widgets/choose/wish_form.h"

#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QTableView>
#include <QTimer>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::ChooseRoom;
using circuit::PartSet;
using study::Stock;

class ChooseRoomTest : public RoomTest {
  protected:
    ChooseRoom& chooseRoom() { return room<ChooseRoom>("choose"); }
    void settle(ChooseRoom& room) {
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }, 30000));
    }
    /// Types into a field of the sentence as a person does.
    void type(ChooseRoom& room, const char* field, const char* text) {
        auto* edit = room.frame().findChild<QLineEdit*>(field);
        ASSERT_TRUE(edit);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, text);
        settle(room);
    }
    void pick(ChooseRoom& room, const char* list, int index) {
        room.frame().findChild<QComboBox*>(list)->setCurrentIndex(index);
        settle(room);
    }
    QPushButton* button(ChooseRoom& room, const char* name) {
        return room.frame().findChild<QPushButton*>(name);
    }
    /// Wide, and as narrow as the room is to be of use.
    void pictures(ChooseRoom& room, const char* name) {
        room.frame().resize(1280, 800);
        picture(room, name);
        room.frame().resize(900, 600);
        picture(room, (std::string(name) + "-narrow").c_str());
    }
    study::Phase openPhase(PartSet set) {
        return study::study(window->document().circuit(), set, {})
            .value()
            .readings.timers.at(0)
            .settled.value();
    }
    static Stock stock(Stock::Kind kind, double value, long quantity) {
        return {.kind = kind, .value = value, .tolerance = {}, .rating = {}, .quantity = quantity};
    }
};

TEST_F(ChooseRoomTest, AWishIsTypedAndMade) {
    ChooseRoom& room = chooseRoom(); // without a circuit
    EXPECT_GT(room.view().model().rowCount(), 0);
    type(room, "rate", "72");
    type(room, "lit", "40");
    ASSERT_GT(room.view().model().rowCount(), 3);
    EXPECT_TRUE(room.frame().message().contains("combinations")) << room.frame().message().toStdString();
    pictures(room, "choose");
    room.view().choose(2);
    const study::Choice chosen = *room.view().chosen();
    button(room, "make")->click();
    EXPECT_EQ(stated(window->document().circuit(), "R2", "resistance"), chosen.r2_ohm);
    EXPECT_NEAR(openPhase(PartSet::A).rate_Hz(), 1.2, 0.12);
    EXPECT_NEAR(openPhase(PartSet::A).rate_Hz() / chosen.rate_Hz, 1, 1e-4);
}

TEST_F(ChooseRoomTest, UnsavedChangesAreAskedAboutFirst) {
    open("mole-light");
    setValue(PartSet::A, "R2", "resistance", 50e3);
    ChooseRoom& room = chooseRoom();
    QTimer::singleShot(0, [] {
        for (QWidget* top : QApplication::topLevelWidgets())
            if (auto* box = qobject_cast<QMessageBox*>(top)) box->reject();
    });
    button(room, "make")->click();
    EXPECT_EQ(stated(window->document().circuit(), "R2", "resistance"), 50e3);
}

TEST_F(ChooseRoomTest, ValuesAreTakenAsSetBAndTakenBackInOneStep) {
    ChooseRoom& room = chooseRoom();
    button(room, "make")->click();
    app::Document& document = window->document();
    const double first = openPhase(PartSet::A).rate_Hz();
    type(room, "rate", "90");
    ASSERT_TRUE(button(room, "take")->isEnabled());
    const int steps = document.undoStack().count();
    button(room, "take")->click();
    EXPECT_EQ(document.undoStack().count(), steps + 1);
    EXPECT_NEAR(openPhase(PartSet::A).rate_Hz(), first, 1e-9);
    EXPECT_NEAR(openPhase(PartSet::B).rate_Hz(), 1.5, 0.15);
    EXPECT_FALSE(room.frame().message().contains("otherwise")) << room.frame().message().toStdString();
    document.undoStack().undo();
    EXPECT_NEAR(openPhase(PartSet::B).rate_Hz(), first, 1e-9);
}

TEST_F(ChooseRoomTest, SetBNeedsTheSameParts) {
    ChooseRoom& room = chooseRoom();
    EXPECT_FALSE(button(room, "take")->isEnabled()); // nothing is open
    button(room, "make")->click();
    ASSERT_TRUE(button(room, "take")->isEnabled());
    const circuit::PartId lamp = window->document().circuit().findRef("R3")->id;
    ASSERT_TRUE(window->document().apply({circuit::edits::RemovePart{lamp}}));
    EXPECT_FALSE(button(room, "take")->isEnabled());
    EXPECT_TRUE(button(room, "take")->toolTip().contains("R3"));
}

TEST_F(ChooseRoomTest, AnUnmetWishSaysWhyAndItsNearestIsTaken) {
    ChooseRoom& room = chooseRoom();
    EXPECT_FALSE(button(room, "nearest")->isVisible());
    type(room, "supply", "3 V");
    EXPECT_TRUE(room.frame().message().contains("cannot be met"));
    EXPECT_TRUE(room.view().reason().contains("works from")) << room.view().reason().toStdString();
    EXPECT_EQ(room.view().model().rowCount(), 0);
    EXPECT_FALSE(button(room, "make")->isEnabled());
    ASSERT_TRUE(button(room, "nearest")->isVisible());
    pictures(room, "choose-unmet");
    button(room, "nearest")->click();
    settle(room);
    EXPECT_GT(room.view().model().rowCount(), 0);
    EXPECT_EQ(room.view().form().wish().supply_V, 4.5);
    EXPECT_FALSE(button(room, "nearest")->isVisible());
}

TEST_F(ChooseRoomTest, TheNearestThatCanBeMadeIsShown) {
    ChooseRoom& room = chooseRoom();
    pick(room, "rateUnit", 2);
    type(room, "rate", "3 h");
    EXPECT_FALSE(room.view().form().isFine());
    type(room, "rate", "20000");
    EXPECT_TRUE(room.view().reason().contains("too slow")) << room.view().reason().toStdString();
    EXPECT_EQ(room.view().model().rowCount(), 1);
    EXPECT_TRUE(button(room, "make")->isEnabled());
    pictures(room, "choose-slow");
    button(room, "nearest")->click();
    settle(room);
    EXPECT_TRUE(room.view().reason().isEmpty()) << room.view().reason().toStdString();
    EXPECT_GT(room.view().model().rowCount(), 0);
}

TEST_F(ChooseRoomTest, AFieldThatCannotBeReadAsksNothing) {
    ChooseRoom& room = chooseRoom();
    type(room, "current", "ten");
    EXPECT_EQ(room.view().model().rowCount(), 0);
    EXPECT_TRUE(room.frame().message().contains("field"));
    pictures(room, "choose-fault");
    type(room, "current", "8 mA");
    EXPECT_GT(room.view().model().rowCount(), 0);
}

TEST_F(ChooseRoomTest, ARangeIsSetByAVariableResistor) {
    ChooseRoom& room = chooseRoom();
    type(room, "rate", "30");
    room.view().form().findChild<QComboBox*>("range")->setCurrentIndex(1);
    type(room, "rateTo", "120");
    ASSERT_GT(room.view().model().rowCount(), 0);
    EXPECT_TRUE(room.view().chosenCircuit().findRef("RV1"));
    pictures(room, "choose-range");
    pick(room, "lamps", 1);
    EXPECT_TRUE(room.view().chosenCircuit().findRef("D2"));
    pictures(room, "choose-pair");
}

TEST_F(ChooseRoomTest, TheWishIsRemembered) {
    type(chooseRoom(), "rate", "33");
    window.reset();
    window = std::make_unique<app::MainWindow>(settings);
    EXPECT_EQ(chooseRoom().view().form().texts().rate, "33");
}

TEST_F(ChooseRoomTest, TheTableIsCopiedWithItsTitles) {
    ChooseRoom& room = chooseRoom();
    button(room, "copy")->click();
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.startsWith("R1\tR2\t")) << text.toStdString();
    EXPECT_EQ(text.count('\n'), room.view().model().rowCount() + 1);
}

TEST_F(ChooseRoomTest, ValuesFromTheDrawerFollowTheDrawer) {
    ChooseRoom& room = chooseRoom();
    pick(room, "source", 1);
    EXPECT_TRUE(room.view().reason().contains("drawer")) << room.view().reason().toStdString();
    window->rooms().drawer().dialog().model().addStock(
        {stock(Stock::Kind::resistor, 100e3, 2), stock(Stock::Kind::resistor, 560, 5),
         stock(Stock::Kind::resistor, 10e3, 3), stock(Stock::Kind::capacitor, 6.8e-6, 2),
         stock(Stock::Kind::capacitor, 10e-9, 4)});
    settle(room);
    ASSERT_GT(room.view().model().rowCount(), 0) << room.frame().message().toStdString();
    EXPECT_EQ(room.view().chosen()->c1_farad, 6.8e-6);
    EXPECT_FALSE(room.view().chosenCircuit().findRef("C3")); // there is none
    pictures(room, "choose-drawer");
}

class DrawerTest : public ChooseRoomTest {
  protected:
    widgets::DrawerModel& model() { return window->rooms().drawer().dialog().model(); }
    QString file() const { return folder.filePath("drawer.csv"); }
    void startAgain() {
        window.reset();
        window = std::make_unique<app::MainWindow>(settings);
    }
};

TEST_F(DrawerTest, IsKeptBetweenTwoStarts) {
    window->rooms().drawer().open();
    EXPECT_TRUE(window->rooms().drawer().dialog().isVisible());
    model().addStock({stock(Stock::Kind::resistor, 4700, 12), stock(Stock::Kind::variable, 100e3, 1)});
    model().setData(model().index(0, 4), "11", Qt::EditRole);
    startAgain();
    ASSERT_EQ(model().stock().size(), 2u);
    EXPECT_EQ(model().stock()[0].quantity, 11);
    EXPECT_EQ(model().stock()[1].kind, Stock::Kind::variable);
    model().undo(); // nothing of the last start
    EXPECT_EQ(model().stock().size(), 2u);
}

TEST_F(DrawerTest, ImportsAndExportsTables) {
    app::DrawerDesk& desk = window->rooms().drawer();
    const QString path = folder.filePath("list.csv");
    writeFile(path, "kind,value,tolerance,rating,quantity\r\nresistor,4k7,5 %,,10\r\n");
    ASSERT_TRUE(desk.importFrom(path));
    writeFile(path, "resistor,4k7\ncapacitor,lots\n");
    const Result<void> bad = desk.importFrom(path);
    ASSERT_FALSE(bad);
    EXPECT_NE(bad.fault().message().find("line 2: value: "), std::string::npos) << bad.fault().message();
    EXPECT_EQ(desk.stock().size(), 1u) << "a bad file adds nothing";
    EXPECT_FALSE(desk.importFrom(folder.filePath("nowhere.csv")));
    ASSERT_TRUE(desk.exportTo(folder.filePath("out.csv")));
    EXPECT_EQ(bytesOf(folder.filePath("out.csv")),
              "kind,value,tolerance,rating,quantity\r\nresistor,4700,0.05,,10\r\n");
    EXPECT_FALSE(desk.exportTo(folder.filePath("no/such/folder.csv")));
    model().undo(); // an import is one step
    EXPECT_TRUE(desk.stock().empty());
}

TEST_F(DrawerTest, AFileThatCannotBeReadIsPutAsideAndNeverLost) {
    writeFile(file(), "resistor,4k7\nbanana,1\n");
    startAgain();
    EXPECT_TRUE(window->rooms().drawer().dialog().message().contains("line 2"))
        << window->rooms().drawer().dialog().message().toStdString();
    EXPECT_EQ(bytesOf(file()), "resistor,4k7\nbanana,1\n");
    model().addStock({stock(Stock::Kind::resistor, 100, 1)});
    EXPECT_EQ(bytesOf(file() + ".unread"), "resistor,4k7\nbanana,1\n");
    EXPECT_TRUE(bytesOf(file()).contains("resistor,100,"));
}

TEST_F(DrawerTest, AWrongCellIsNotKept) {
    model().addStock({stock(Stock::Kind::resistor, 4700, 12)});
    model().setData(model().index(0, 1), "4q7", Qt::EditRole);
    EXPECT_TRUE(window->rooms().drawer().dialog().message().startsWith("Row 1, value: "));
    startAgain();
    ASSERT_EQ(model().stock().size(), 1u);
    EXPECT_EQ(model().stock().front().value, 4700);
}

} // namespace
