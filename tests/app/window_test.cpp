// The real window, driven as a hand drives it: runs, values, undo.
#include "tests/app/window_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/readings/readings_view.h"

#include <QApplication>
#include <QLabel>
#include <QSignalSpy>
#include <QSpinBox>
#include <QThread>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::MainWindow;
using app::Settings;

using WindowTest = WindowFixture;

TEST_F(WindowTest, OpensASampleAndShowsItsRun) {
    QSignalSpy painted(window.get(), &MainWindow::firstCurvePainted);
    open();
    EXPECT_TRUE(waitFor([&] { return painted.count() == 1; }));
    EXPECT_TRUE(window->windowTitle().contains("Harbour mole light")) << window->windowTitle().toStdString();
    EXPECT_TRUE(window->windowTitle().contains("mole-light.blinkwright"));
    EXPECT_FALSE(window->isWindowModified());
    EXPECT_NEAR(period(), 1.012, 0.1); // ln 2 (R1 + 2 R2) C, give or take what a real timer adds
    const auto* report = window->findChild<QLabel*>("report");
    ASSERT_NE(report, nullptr);
    EXPECT_TRUE(report->text().startsWith("6 flashes, ")) << report->text().toStdString();
    EXPECT_EQ(settings.recentFiles(), QStringList{sample("mole-light")});
}

TEST_F(WindowTest, DraggingASliderMovesTheReadingsAndIsOneStepToUndo) {
    open();
    const double before_s = period();
    const double before_ohm = ohms("R2");
    const QString readingsBefore = window->readings().asText();
    widgets::ScaleSlider& slider = *row("R2").slider();
    const QPoint from(static_cast<int>(slider.handleX()), slider.height() / 2);
    EXPECT_FALSE(window->live().hasEcho());
    QTest::mousePress(&slider, Qt::LeftButton, {}, from);
    int shown = 0;
    QObject::connect(&window->live(), &app::LivePanels::studyShown, &slider, [&] { ++shown; });
    for (int k = 1; k <= 20; ++k) {
        QTest::mouseMove(&slider, from + QPoint(2 * k, 0));
        QTest::qWait(5);
    }
    EXPECT_GT(shown, 1) << "the curves follow while the hand still holds the handle";
    EXPECT_TRUE(window->live().hasEcho());
    QTest::mouseRelease(&slider, Qt::LeftButton, {}, from + QPoint(40, 0));
    ASSERT_TRUE(waitForRun());

    const double after_ohm = ohms("R2");
    EXPECT_GT(after_ohm, before_ohm);
    const auto textbook = window->live().shown()->readings.timers.at(0).textbook;
    ASSERT_TRUE(textbook);
    EXPECT_DOUBLE_EQ(textbook->r2_ohm, after_ohm);
    EXPECT_GT(period(), before_s);
    EXPECT_NE(window->readings().asText(), readingsBefore);
    EXPECT_EQ(window->document().undoStack().count(), 1);
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_TRUE(window->live().hasEcho());

    action("Undo").trigger();
    ASSERT_TRUE(waitForRun());
    EXPECT_EQ(ohms("R2"), before_ohm);
    EXPECT_EQ(period(), before_s);
    EXPECT_EQ(window->readings().asText(), readingsBefore);
    EXPECT_FALSE(window->isWindowModified());
    action("Redo").trigger();
    EXPECT_EQ(ohms("R2"), after_ohm);
    ASSERT_TRUE(waitForRun());
}

TEST_F(WindowTest, WhatADragLeavesOnTheScreenIsRunAtFullAccuracy) {
    open();
    const circuit::ValueRef r2{window->document().circuit().findRef("R2")->id, "resistance"};
    emit window->values().gestureBegan(1);
    emit window->values().valueWished(r2, 50e3, 1);
    ASSERT_TRUE(waitForRun());
    const double rough = window->live().shown()->readings.run.accuracy;
    emit window->values().gestureEnded(1);
    EXPECT_TRUE(waitFor([&] { return window->live().shown()->readings.run.accuracy == 1e-6; }));
    EXPECT_GT(rough, 1e-6);
    EXPECT_LE(rough, 5e-5) << "four digits of a reading";
    EXPECT_EQ(window->document().undoStack().count(), 1);
}

TEST_F(WindowTest, EscapeTakesTheEchoAway) {
    open();
    widgets::ScaleSlider& slider = *row("R2").slider();
    QTest::mouseClick(&slider, Qt::LeftButton, {}, QPoint(slider.width() / 3, slider.height() / 2));
    EXPECT_TRUE(window->live().hasEcho());
    QTest::keyClick(window.get(), Qt::Key_Escape);
    EXPECT_FALSE(window->live().hasEcho());
}

TEST_F(WindowTest, OpeningAnotherFileTakesTheEchoAway) {
    open();
    widgets::ScaleSlider& slider = *row("R2").slider();
    QTest::mouseClick(&slider, Qt::LeftButton, {}, QPoint(slider.width() / 3, slider.height() / 2));
    ASSERT_TRUE(window->live().hasEcho());
    open("winch-warning");
    EXPECT_FALSE(window->live().hasEcho());
}

TEST_F(WindowTest, ARunOfTheFileBeforeIsDropped) {
    std::vector<double> shown_V;
    QObject::connect(&window->live(), &app::LivePanels::studyShown, window.get(),
                     [&] { shown_V.push_back(window->live().shown()->board.supplies.at(0).voltage); });
    ASSERT_TRUE(window->openFile(sample("mole-light")));
    QThread::msleep(300); // its run ends meanwhile, and its result waits for the event loop
    ASSERT_TRUE(window->openFile(sample("winch-warning")));
    ASSERT_TRUE(waitFor([&] { return !shown_V.empty(); }));
    QTest::qWait(50);
    EXPECT_EQ(shown_V, std::vector<double>{stated(window->document().circuit(), "BT1", "voltage")});
}

TEST_F(WindowTest, ARunThatAnUndoHasOvertakenIsDropped) {
    open();
    const circuit::ValueRef r2{window->document().circuit().findRef("R2")->id, "resistance"};
    std::vector<quint64> shown;
    emit window->values().valueWished(r2, 50e3, 0);
    QThread::msleep(300);
    QObject::connect(&window->live(), &app::LivePanels::studyShown, window.get(), [&] {
        shown.push_back(static_cast<quint64>(window->live().shown()->readings.timers.at(0).textbook->r2_ohm));
    });
    action("Undo").trigger();
    ASSERT_TRUE(waitFor([&] { return !shown.empty(); }));
    QTest::qWait(50);
    EXPECT_EQ(shown, std::vector<quint64>{68000});
}

TEST_F(WindowTest, ATypedValueIsOneStepWithItsTextInTheMenu) {
    open();
    QLineEdit& field = *row("R1").field();
    field.setFocus();
    field.selectAll();
    QTest::keyClicks(&field, "4k7");
    QTest::keyClick(&field, Qt::Key_Return);
    EXPECT_EQ(ohms("R1"), 4700);
    EXPECT_EQ(window->document().undoStack().count(), 1);
    EXPECT_TRUE(action("Undo").text().contains("R1")) << action("Undo").text().toStdString();
    ASSERT_TRUE(waitForRun());
}

TEST_F(WindowTest, ValuesFollowAnUndo) {
    open();
    const QString before = row("R1").field()->text();
    emit window->values().valueWished({window->document().circuit().findRef("R1")->id, "resistance"}, 22000,
                                      0);
    EXPECT_EQ(ohms("R1"), 22000);
    EXPECT_NE(row("R1").field()->text(), before);
    action("Undo").trigger();
    EXPECT_EQ(row("R1").field()->text(), before);
}

TEST_F(WindowTest, WishingForTheValueThatIsThereIsNoStep) {
    open();
    emit window->values().valueWished({window->document().circuit().findRef("R1")->id, "resistance"}, 10000,
                                      0);
    EXPECT_EQ(window->document().undoStack().count(), 0);
}

TEST_F(WindowTest, SettledAndFlashesArePartOfTheCircuitAndOfUndo) {
    open();
    action("Curves when settled").trigger();
    EXPECT_EQ(window->document().circuit().run.begin, circuit::Begin::settled);
    EXPECT_EQ(window->document().undoStack().count(), 1);
    EXPECT_TRUE(waitFor([&] { return !window->live().shown()->readings.timers.at(0).firstHigh_s; }));
    auto* flashes = window->findChild<QSpinBox*>("flashes");
    ASSERT_NE(flashes, nullptr);
    flashes->stepUp();
    flashes->stepUp();
    EXPECT_EQ(window->document().circuit().run.flashes, 8);
    EXPECT_EQ(window->document().undoStack().count(), 2);
    action("Undo").trigger();
    EXPECT_EQ(flashes->value(), 6);
    action("Undo").trigger();
    EXPECT_TRUE(action("Curves from power-on").isChecked());
}

TEST_F(WindowTest, TheMomentLineLightsTheLensesByTheirCurrent) {
    open();
    const auto study = window->live().shown();
    const double rise = study->curves.switchings_s.at(1);
    const double fall = study->curves.switchings_s.at(2);
    window->curves().setMoment((rise + fall) / 2);
    emit window->curves().momentMoved((rise + fall) / 2);
    const QImage lit = window->hookup().grab().toImage();
    const double next = study->curves.switchings_s.at(3);
    window->curves().setMoment((fall + next) / 2);
    emit window->curves().momentMoved((fall + next) / 2);
    EXPECT_NE(window->hookup().grab().toImage(), lit);
}

} // namespace
