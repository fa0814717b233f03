// A real window with a sample open, and its rooms.
#pragma once

#include "app/main_window.h"
#include "app/rooms/room_actions.h"
#include "tests/app/support.h"

#include <QApplication>
#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace blinkwright::test {

class RoomTest : public testing::Test {
  protected:
    RoomTest() : settings(folder.filePath("settings.ini")) {
        settings.setLooks(app::Looks::light);
        window = std::make_unique<app::MainWindow>(settings);
        window->resize(1280, 800);
        window->show();
    }
    void open(const char* name) {
        ASSERT_TRUE(window->openFile(sample(name)));
        ASSERT_TRUE(waitFor([&] { return window->live().shown() != nullptr; }));
    }
    /// Opens a room by its name and waits for its answer.
    template <class Kind>
    Kind& room(const char* name) {
        auto& opened = dynamic_cast<Kind&>(window->rooms().open(QLatin1String(name)));
        EXPECT_TRUE(waitFor([&] { return !opened.isBusy(); }));
        return opened;
    }
    void setValue(circuit::PartSet set, const char* ref, const char* key, double value) {
        app::Document& document = window->document();
        const circuit::PartId part = document.circuit().findRef(ref)->id;
        ASSERT_TRUE(document.apply(circuit::setValue(document.circuit(), set, part, key, value)));
    }
    /// Saves what a room looks like as build/pictures/room-NAME-light.png and -dark.png.
    void picture(app::Room& room, const char* name) {
        ASSERT_TRUE(QDir().mkpath(QStringLiteral(BLINKWRIGHT_PICTURES)));
        for (const app::Looks looks : {app::Looks::light, app::Looks::dark}) {
            window->appearance().choose(looks);
            QTest::qWait(50);
            const QString path = QStringLiteral(BLINKWRIGHT_PICTURES "/room-%1-%2.png")
                                     .arg(QLatin1String(name), looks == app::Looks::light ? "light" : "dark");
            EXPECT_TRUE(room.frame().grab().save(path));
        }
        window->appearance().choose(app::Looks::light);
    }

    QTemporaryDir folder;
    app::Settings settings;
    std::unique_ptr<app::MainWindow> window;
};

} // namespace blinkwright::test
