// "What the eye sees" as people use it.
#include "app/rooms/eye_room.h"
#include "tests/app/rooms/room_fixture.h"
#include "widgets/rooms/eye_view.h"

#include <QLabel>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::EyeRoom;
using circuit::PartSet;

class EyeRoomTest : public RoomTest {
  protected:
    EyeRoom& eyeRoom() { return room<EyeRoom>("eye"); }
    /// What stands beside a row's name, in a lamp's column.
    static QString cell(EyeRoom& room, const QString& row, int lamp = 0) {
        for (int k = 0; k < room.view().rowCount(); ++k)
            if (room.view().item(k, 0)->text() == row) return room.view().item(k, lamp + 1)->text();
        ADD_FAILURE() << row.toStdString();
        return {};
    }
};

TEST_F(EyeRoomTest, TheMoleLightIsQuickAndSlowEnoughForAHazardLamp) {
    open("mole-light");
    EyeRoom& room = eyeRoom();
    EXPECT_EQ(cell(room, "Looks like"), "Separate flashes");
    EXPECT_EQ(cell(room, "Rhythm of marine lights"), "Quick (Q)"); // about 59 a minute
    EXPECT_EQ(cell(room, "Vehicle hazard lamps and direction indicators"), "Too slow");
    EXPECT_EQ(cell(room, "Rail crossing"), "Wants two lamps taking turns");
    EXPECT_FALSE(room.frame().findChild<QLabel*>("cautions")->text().contains("seizures"));
    picture(room, "eye-mole-light");
}

TEST_F(EyeRoomTest, TheBuoyPairHasAColumnForEachLamp) {
    open("buoy-pair");
    EyeRoom& room = eyeRoom();
    EXPECT_EQ(room.view().columnCount(), 3);
    picture(room, "eye-buoy-pair");
}

TEST_F(EyeRoomTest, FastFlashesBringTheCaution) {
    open("mole-light");
    setValue(PartSet::A, "C1", "capacitance", 1e-6);
    EyeRoom& room = eyeRoom();
    EXPECT_TRUE(room.frame().findChild<QLabel*>("cautions")->text().contains("seizures"));
    picture(room, "eye-flicker");
}

TEST_F(EyeRoomTest, WhatDoesNotBlinkIsNotJudged) {
    open("mole-light");
    EyeRoom& room = eyeRoom();
    app::Document& document = window->document();
    const circuit::PartId timer = document.circuit().findRef("U1")->id;
    ASSERT_TRUE(document.apply({circuit::edits::JoinPin{{timer, 5}, {}}}));
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    EXPECT_EQ(room.view().rowCount(), 0);
    EXPECT_TRUE(room.frame().message().contains("does not blink"));
}

} // namespace
