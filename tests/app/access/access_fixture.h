// Every window of the program, one after the other, for tests of what all of them must keep.
//
//   class Names : public AccessTest {};
//   TEST_F(Names, ...) { inEveryWindow([](const std::string& name, QWidget& window) { ... }); }
//   BLINKWRIGHT_WINDOW=trend asks for one of them alone, while something is being mended.
#pragma once

#include "app/help/help_window.h"
#include "app/measure/record_import_dialog.h"
#include "app/ready_actions.h"
#include "app/rooms/drawer_desk.h"
#include "app/rooms/room_actions.h"
#include "tests/app/window_fixture.h"
#include "widgets/bench/bench_dialog.h"
#include "widgets/choose/drawer_dialog.h"
#include "widgets/hookup/hookup_view.h"

#include <QApplication>
#include <QPointer>
#include <QPushButton>
#include <QTimer>

#include <functional>
#include <string>

namespace blinkwright::test {

class AccessTest : public WindowFixture {
  protected:
    using Work = std::function<void(const std::string& name, QWidget& window)>;

    explicit AccessTest(QSize size = {1280, 800}) : WindowFixture(app::Looks::light, size) {
        settings.setFlickerAnswered();
    }

    void inEveryWindow(const Work& work) {
        open("mole-light-measured");
        inMain(work);
        inRooms(work);
        inDialogs(work);
    }
    void inMain(const Work& work) {
        if (!isWanted("main")) return;
        waitForRun();
        QTest::qWait(50);
        work("main", *window);
    }
    /// The frames stay open: what changes meanwhile must reach them too.
    void inRooms(const Work& work) {
        for (const char* name :
             {"why", "eye", "trend", "spread", "choose", "measure", "account", "symptoms", "labSheet"}) {
            if (!isWanted(name)) continue;
            app::Room& room = window->rooms().open(QLatin1String(name));
            ASSERT_TRUE(waitFor([&] { return !room.isBusy(); })) << name;
            QTest::qWait(30);
            work(name, room.frame());
        }
    }
    void inDialogs(const Work& work) {
        if (isWanted("drawer")) {
            window->rooms().drawer().open();
            QTest::qWait(30);
            work("drawer", window->rooms().drawer().dialog());
            window->rooms().drawer().dialog().close();
        }
        if (isWanted("wiring list")) {
            window->readyActions().showWiringList();
            QTest::qWait(30);
            work("wiring list", *window->readyActions().wiringList());
            window->readyActions().wiringList()->close();
        }
        if (isWanted("record")) {
            app::RecordImportDialog dialog(QStringLiteral(BLINKWRIGHT_SAMPLES "/mole-light.csv"),
                                           window->appearance().theme());
            dialog.show();
            ASSERT_TRUE(waitFor([&] { return !dialog.isBusy() && dialog.measurement(); }));
            work("record", dialog);
        }
        inModal("ready", action("New from a ready blinker"), work);
        inModal("export", action("Export curves"), work);
        if (isWanted("help")) {
            action("Cautions").trigger();
            auto* help = window->findChild<app::help::HelpWindow*>();
            ASSERT_TRUE(help);
            QTest::qWait(50);
            work("help", *help);
            help->close();
        }
        inModal("about", action("About"), work);
        window->hookup().select(circuit().findRef("R1")->id);
        // Not by the action: Pins has one of the same name.
        inModal(
            "part", [this] { emit window->hookup().editWished(circuit().findRef("R1")->id); }, work);
        inModal("join", action("Join two pins"), work);
        app::Room& measure = window->rooms().open(QStringLiteral("measure"));
        for (const char* button : {"addCount", "addReading"})
            if (auto* opens = measure.frame().findChild<QAbstractButton*>(QLatin1String(button)))
                inModal(
                    button, [opens] { opens->click(); }, work);
    }
    void inModal(const char* name, QAction& opens, const Work& work) {
        inModal(
            name, [&opens] { opens.trigger(); }, work);
    }
    void inModal(const char* name, const std::function<void()>& opens, const Work& work) {
        if (!isWanted(name)) return;
        bool came = false;
        QTimer poll;
        poll.setInterval(5);
        QObject::connect(&poll, &QTimer::timeout, [&] {
            const QPointer<QWidget> dialog = QApplication::activeModalWidget();
            if (!dialog) return;
            poll.stop();
            QTest::qWait(150);
            if (dialog) work(name, *dialog);
            if (dialog) dialog->close();
            came = true;
        });
        poll.start();
        opens();
        EXPECT_TRUE(waitFor([&] { return came; })) << name;
        QTest::qWait(5);
    }

  private:
    static bool isWanted(const char* name) {
        const QByteArray only = qgetenv("BLINKWRIGHT_WINDOW");
        return only.isEmpty() || only == name;
    }
};

} // namespace blinkwright::test
