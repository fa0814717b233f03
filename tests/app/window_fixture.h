// The real window with settings of its own, for tests that drive it.
//
//   class PlayInTheWindow : public WindowFixture { ... };
//   open("mole-light");                       // a sample, and its run
//   action("Next panel").trigger();
//   picture("window-play");                   // build/pictures/window-play.png, to be looked at
#pragma once

#include "app/main_window.h"
#include "core/devices/board.h"
#include "core/io/circuit_file.h"
#include "tests/app/support.h"
#include "widgets/values/value_panel.h"
#include "widgets/values/value_row.h"

#include <QAction>
#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <algorithm>
#include <memory>
#include <stdexcept>

namespace blinkwright::test {

class WindowFixture : public testing::Test {
  protected:
    explicit WindowFixture(app::Looks looks = app::Looks::light, QSize size = {1280, 800})
        : settings(folder.filePath("settings.ini")) {
        settings.setLooks(looks);
        start(size);
    }
    /// Another start of the program, with what was kept.
    void start(QSize size = {1280, 800}) {
        window.reset();
        window = std::make_unique<app::MainWindow>(settings);
        window->resize(size);
        window->show();
    }
    void activate() {
        window->activateWindow();
        ASSERT_TRUE(waitFor([&] { return window->isActiveWindow(); }));
    }
    void open(const char* name = "mole-light") { openPath(sample(name)); }
    void openPath(const QString& path) {
        ASSERT_TRUE(window->openFile(path));
        ASSERT_TRUE(waitForRun());
    }
    /// Until the study of the document as it is now is shown; told by its resistances.
    bool waitForRun() const {
        return waitFor([this] {
            const auto study = window->live().shown();
            return study &&
                   std::ranges::all_of(study->board.resistors, [&](const devices::Resistor& resistor) {
                       return ohms(resistor.ref.c_str()) == resistor.resistance;
                   });
        });
    }
    /// A text of the window in English, for fixtures that speak another language.
    virtual QString english(const QString& text) const { return text; }
    double period() const { return window->live().shown()->readings.timers.at(0).settled->period_s(); }
    QString inFolder(const char* name) const { return folder.filePath(QLatin1String(name)); }

    const circuit::Circuit& circuit() const { return window->document().circuit(); }
    QUndoStack& undo() { return window->document().undoStack(); }
    /// The circuit as its file would be.
    QByteArray text() const { return QByteArray::fromStdString(io::writeCircuit(circuit())); }
    circuit::PinRef pin(const char* text) const { return circuit().pinNamed(text).value(); }
    /// The name of the net that a pin is in; "none" for an open pin.
    std::string netOf(const char* text) const {
        const auto net = circuit().netOf(pin(text));
        return net ? circuit().find(*net)->name : "none";
    }
    /// The first action whose text begins so in English, without the marks of its letters.
    QAction& action(const char* text) const {
        for (QAction* found : window->findChildren<QAction*>())
            if (english(found->text()).remove('&').startsWith(QString::fromUtf8(text))) return *found;
        throw std::runtime_error(text);
    }

    double ohms(const char* ref) const { return stated(circuit(), ref, "resistance"); }
    widgets::ValueRow& row(const char* ref) const {
        for (auto* found : window->values().findChildren<widgets::ValueRow*>())
            if (found->subject().ref == ref) return *found;
        throw std::runtime_error(ref);
    }

    void picture(const QString& name) const { picture(name, *window); }
    static void picture(const QString& name, QWidget& of) {
        QTest::qWait(50);
        ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
        const int scale = qRound(100 * of.devicePixelRatioF());
        const QString scaled = scale == 100 ? name : QStringLiteral("%1-at-%2").arg(name).arg(scale);
        EXPECT_TRUE(of.grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/%1.png").arg(scaled)));
    }

    QTemporaryDir folder;
    app::Settings settings;
    std::unique_ptr<app::MainWindow> window;
};

} // namespace blinkwright::test
