// The window on a real display: an X server of its own, a window manager, and xdotool for a hand. Started by
// with_display.sh. What the offscreen tests cannot show: that real events, with a pointer that jumps and
// buttons that bounce through the server, come to the same edits.
#include "app/play_actions.h"
#include "core/io/circuit_file.h"
#include "tests/app/hand.h"
#include "tests/app/support.h"
#include "widgets/curves/curves_view.h"

#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QProcess>
#include <QScreen>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class OnADisplay : public testing::Test {
  protected:
    OnADisplay() : settings(folder.filePath("settings.ini")), window(settings), hand(window) {
        settings.setLooks(app::Looks::light);
        window.resize(1400, 900);
        window.show();
        EXPECT_TRUE(window.openFile(sample("mole-light")));
        window.activateWindow();
        EXPECT_TRUE(waitFor([&] { return window.isActiveWindow(); })) << "the window manager gave no focus";
        EXPECT_TRUE(waitFor([&] { return window.live().shown() != nullptr; }));
        QTest::qWait(200); // until the window stands where the manager has put it
    }
    /// Lets xdotool do something while the window goes on answering.
    void tool(const QStringList& words) {
        QProcess process;
        process.start(QStringLiteral("xdotool"), words);
        EXPECT_TRUE(waitFor([&] { return process.state() == QProcess::NotRunning; }));
        EXPECT_EQ(process.exitCode(), 0) << words.join(u' ').toStdString();
        QTest::qWait(20);
    }
    void pointTo(QPoint inView) {
        const QPoint at = hand.paper()->mapToGlobal(inView);
        tool({"mousemove", QString::number(at.x()), QString::number(at.y())});
    }
    void drag(QPoint from, QPoint to) {
        constexpr int steps = 6;
        pointTo(from);
        tool({"mousedown", "1"});
        for (int k = 1; k <= steps; ++k) pointTo(from + (to - from) * k / steps);
        tool({"mouseup", "1"});
    }
    std::string netOf(const char* pin) {
        const circuit::Circuit& c = window.document().circuit();
        const auto net = c.netOf(c.pinNamed(pin).value());
        return net ? c.find(*net)->name : "";
    }

    QTemporaryDir folder;
    app::Settings settings;
    app::MainWindow window;
    Hand hand;
};

TEST_F(OnADisplay, AHandDrawsAWirePullsOneOffMovesAPartAndTakesAllBack) {
    const std::string before = io::writeCircuit(window.document().circuit());

    drag(hand.pin("R3:2"), hand.pin("U1:7"));
    ASSERT_TRUE(waitFor([&] { return netOf("R3:2") == netOf("U1:7"); })) << netOf("R3:2");

    pointTo(hand.pin("C2:plus"));
    tool({"keydown", "shift"});
    tool({"mousedown", "1"});
    pointTo(hand.pin("C2:plus") + QPoint(-30, 0));
    pointTo(hand.pin("C2:plus") + QPoint(-50, 10));
    tool({"mouseup", "1"});
    tool({"keyup", "shift"});
    ASSERT_TRUE(waitFor([&] { return netOf("C2:plus").empty(); })) << netOf("C2:plus");

    const auto place = *window.document().circuit().placement(hand.part("R1"));
    drag(hand.middle("R1"), hand.middle("R1") + QPoint(60, 0));
    ASSERT_TRUE(
        waitFor([&] { return window.document().circuit().placement(hand.part("R1"))->x > place.x + 30; }));
    EXPECT_EQ(window.document().undoStack().count(), 3);

    for (int k = 0; k < 3; ++k) tool({"key", "ctrl+z"});
    EXPECT_TRUE(waitFor([&] { return !window.document().undoStack().canUndo(); }));
    EXPECT_EQ(io::writeCircuit(window.document().circuit()), before);
}

TEST_F(OnADisplay, AKeyOfTheHookUpOpensTheMenuOfPartsAndALetterChoosesOne) {
    pointTo(hand.middle("R1"));
    tool({"click", "1"});
    ASSERT_TRUE(waitFor([&] { return window.hookup().hasFocus(); }));
    tool({"key", "a"});
    ASSERT_TRUE(waitFor([] { return QApplication::activePopupWidget() != nullptr; }));
    tool({"key", "d"});
    EXPECT_TRUE(waitFor([&] { return window.document().circuit().findRef("D2") != nullptr; }));
}

TEST_F(OnADisplay, AKeyPlaysTheMomentLineSmoothlyAndTheScreenShowsIt) {
    window.curves().setMoment(0);
    int pictures = 0;
    QObject::connect(&window.play(), &app::PlayActions::momentChanged, &window, [&] { ++pictures; });
    tool({"key", "F9"});
    ASSERT_TRUE(waitFor([&] { return window.play().play().running(); }));
    const int before = pictures;
    const double from_s = window.curves().moment_s();
    QElapsedTimer time;
    time.start();
    QTest::qWait(1000);
    const double passed_s = static_cast<double>(time.elapsed()) * 1e-3;
    // At the pace of the board, whatever else the machine does.
    EXPECT_NEAR(window.curves().moment_s() - from_s, passed_s, 0.2);
    EXPECT_GT(pictures - before, 5);
    ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
    EXPECT_TRUE(window.screen()->grabWindow(0).save(BLINKWRIGHT_PICTURES "/display-play.png"));
    tool({"key", "F9"});
    EXPECT_TRUE(waitFor([&] { return !window.play().play().running(); }));
}

} // namespace

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true); // never the user's own settings
    const QApplication application(argc, argv);
    if (QGuiApplication::platformName() != QStringLiteral("xcb")) {
        std::fprintf(stderr,
                     "These tests want a display of their own: bash tests/display/with_display.sh %s\n",
                     argv[0]);
        return 1;
    }
    return RUN_ALL_TESTS();
}
