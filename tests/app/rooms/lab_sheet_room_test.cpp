// The lab sheet's window as people use it.
#include "app/rooms/lab_sheet_room.h"
#include "app/sheet/sheet_form.h"
#include "app/sheet/sheet_preview.h"
#include "tests/app/rooms/room_fixture.h"
#include "tests/app/sheet/sheet_fixture.h"

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSpinBox>

namespace {

using namespace blinkwright;
using namespace blinkwright::app::sheet;
using namespace blinkwright::test;
using app::LabSheetRoom;

class LabSheetRoomTest : public RoomTest {
  protected:
    LabSheetRoom& sheetRoom() { return room<LabSheetRoom>("labSheet"); }
    static void settle(LabSheetRoom& room) {
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }, 30000));
    }
    template <class Field>
    static Field& field(LabSheetRoom& room, const char* name) {
        return *room.form().findChild<Field*>(QLatin1String(name));
    }
    static QStringList titles(const LabSheet& sheet) {
        QStringList all;
        for (const Section& section : sheet.sections) all << section.title;
        return all;
    }
};

TEST_F(LabSheetRoomTest, OpensFromTheFileMenuByItsKeysWithThePagesMade) {
    open("buoy-pair");
    QAction* found = nullptr;
    for (QAction* action : window->findChildren<QAction*>())
        if (action->objectName() == "labSheet") found = action;
    ASSERT_TRUE(found);
    EXPECT_EQ(found->shortcut(), QKeySequence("Ctrl+Shift+L"));
    LabSheetRoom& room = sheetRoom();
    ASSERT_TRUE(room.hasSheet());
    EXPECT_GT(room.preview().pageCount(), 3);
    EXPECT_EQ(titles(room.labSheet()).size(), static_cast<int>(std::size(allTopics)));
    field<QLineEdit>(room, "author").setText("Ada Brook");
    QTest::qWait(400);
    picture(room, "lab-sheet");
}

TEST_F(LabSheetRoomTest, SectionsCanBeLeftOut) {
    open("mole-light");
    LabSheetRoom& room = sheetRoom();
    auto& list = field<QListWidget>(room, "sections");
    const int before = room.preview().pageCount();
    for (int k = 3; k < list.count(); ++k) list.item(k)->setCheckState(Qt::Unchecked);
    settle(room);
    EXPECT_EQ(titles(room.labSheet()), (QStringList{"", "Aim", "Theory"}));
    EXPECT_LT(room.preview().pageCount(), before);
}

TEST_F(LabSheetRoomTest, AVariantSaysWhoseValuesItChanged) {
    open("mole-light");
    LabSheetRoom& room = sheetRoom();
    field<QComboBox>(room, "copy").setCurrentIndex(1);
    field<QSpinBox>(room, "variant").setValue(7);
    settle(room);
    EXPECT_TRUE(room.frame().message().startsWith("Variant 7: other values of"));
    EXPECT_EQ(room.labSheet().mark, "Student copy, Variant 7");
    picture(room, "lab-sheet-student");
}

TEST_F(LabSheetRoomTest, WritesAllThreeKinds) {
    open("mole-light");
    LabSheetRoom& room = sheetRoom();
    for (const char* name : {"a.pdf", "a.html", "a.odt"}) {
        const QString path = folder.filePath(name);
        const Result<void> done = room.writeTo(path);
        EXPECT_TRUE(done) << name;
        EXPECT_GT(bytesOf(path).size(), 10000) << name;
    }
    EXPECT_FALSE(room.writeTo(folder.filePath("no-folder/a.pdf")));
    EXPECT_FALSE(room.writeTo(folder.filePath("a.doc")));
}

TEST_F(LabSheetRoomTest, NamesAreKeptForAllCircuitsAndTextsForEach) {
    open("mole-light");
    {
        LabSheetRoom& room = sheetRoom();
        field<QLineEdit>(room, "author").setText("Ada Brook");
        field<QPlainTextEdit>(room, "conclusions").setPlainText("The light is slow.");
    }
    open("buoy-pair");
    {
        LabSheetRoom& room = sheetRoom();
        EXPECT_EQ(field<QLineEdit>(room, "author").text(), "Ada Brook");
        EXPECT_EQ(field<QPlainTextEdit>(room, "conclusions").toPlainText(), "");
    }
    window = std::make_unique<app::MainWindow>(settings);
    open("mole-light");
    LabSheetRoom& room = sheetRoom();
    EXPECT_EQ(field<QLineEdit>(room, "author").text(), "Ada Brook");
    EXPECT_EQ(field<QPlainTextEdit>(room, "conclusions").toPlainText(), "The light is slow.");
    EXPECT_EQ(room.form().words().conclusions, "The light is slow.");
}

TEST_F(LabSheetRoomTest, FollowsTheCircuit) {
    open("mole-light");
    LabSheetRoom& room = sheetRoom();
    setValue(circuit::PartSet::A, "R2", "resistance", 47e3);
    settle(room);
    bool told = false;
    for (const Section& section : room.labSheet().sections)
        for (const Block& block : section.blocks)
            if (const auto* lines = std::get_if<FormulaLines>(&block))
                for (const FormulaLines::Line& line : lines->lines)
                    told = told || plainText(line.right).contains(QString::fromUtf8("47\u00A0kΩ"));
    EXPECT_TRUE(told);
}

TEST_F(LabSheetRoomTest, NothingCanBeSavedOfAnEmptyHookUp) {
    LabSheetRoom& room = sheetRoom();
    EXPECT_FALSE(room.hasSheet());
    for (const char* name : {"pdf", "html", "odt", "print"})
        EXPECT_FALSE(room.frame().findChild<QPushButton*>(name)->isEnabled()) << name;
}

TEST_F(LabSheetRoomTest, EscapeCancelsWhatRuns) {
    open("buoy-pair");
    LabSheetRoom& room = sheetRoom();
    setValue(circuit::PartSet::A, "R2", "resistance", 91e3);
    ASSERT_TRUE(waitFor([&] { return room.frame().findChild<QPushButton*>("cancel")->isVisible(); }));
    QTest::keyClick(&room.frame(), Qt::Key_Escape);
    EXPECT_TRUE(room.frame().isVisible());
    EXPECT_FALSE(room.isBusy());
    EXPECT_TRUE(room.frame().message().contains("Cancelled"));
}

TEST_F(LabSheetRoomTest, PagesAreTurnedByTheKeyboard) {
    open("mole-light");
    LabSheetRoom& room = sheetRoom();
    EXPECT_EQ(room.preview().page(), 0);
    QTest::keyClick(&room.preview(), Qt::Key_PageDown);
    EXPECT_EQ(room.preview().page(), 1);
    QTest::keyClick(&room.preview(), Qt::Key_PageUp);
    QTest::keyClick(&room.preview(), Qt::Key_PageUp);
    EXPECT_EQ(room.preview().page(), 0);
}

} // namespace
