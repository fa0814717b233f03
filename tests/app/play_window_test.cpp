// Play in the real window: its keys, its question, and what the lamps show meanwhile.
#include "app/main_window.h"
#include "app/moment.h"
#include "app/play_actions.h"
#include "app/play_strip.h"
#include "tests/app/keyboard.h"
#include "tests/app/support.h"
#include "widgets/curves/curves_view.h"
#include "widgets/hookup/hookup_view.h"
#include "widgets/values/value_panel.h"

#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class PlayInTheWindow : public testing::Test {
  protected:
    PlayInTheWindow() : settings(folder.filePath("settings.ini")) {
        settings.setLooks(app::Looks::light);
        window = std::make_unique<app::MainWindow>(settings);
        window->resize(1280, 800);
        window->show();
        window->activateWindow();
        EXPECT_TRUE(waitFor([&] { return window->isActiveWindow(); }));
        EXPECT_TRUE(window->openFile(sample("mole-light")));
        EXPECT_TRUE(waitFor([&] { return window->live().shown() != nullptr; }));
        window->curves().setMoment(0);
    }
    /// R2 of the mole light: 68 k gives about one flash a second, the rate goes with 1 / (R1 + 2 R2).
    void setTiming(double r1_ohm, double r2_ohm) {
        const auto set = [&](const char* ref, double value) {
            emit window->values().valueWished({window->document().circuit().findRef(ref)->id, "resistance"},
                                              value, 1);
        };
        set("R1", r1_ohm);
        set("R2", r2_ohm);
        ASSERT_TRUE(waitFor([&] {
            const auto study = window->live().shown();
            return study && study->board.resistors.at(1).resistance == r2_ohm &&
                   study->board.resistors.at(0).resistance == r1_ohm;
        }));
    }
    bool running() const { return window->play().play().running(); }
    double moment_s() const { return window->curves().moment_s(); }
    app::PlayStrip& strip() const { return *window->findChild<app::PlayStrip*>(); }
    QMessageBox* question() const { return window->findChild<QMessageBox*>(); }
    void answer(const char* text) {
        ASSERT_NE(question(), nullptr);
        for (QAbstractButton* button : question()->buttons())
            if (button->text().remove('&') == QLatin1String(text)) {
                button->click();
                QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
                window->activateWindow();
                ASSERT_TRUE(waitFor([&] { return window->isActiveWindow(); }));
                return;
            }
        FAIL() << text;
    }
    void trigger(const char* text) {
        for (QAction* action : window->play().menu()->actions())
            if (action->text().remove('&').startsWith(QLatin1String(text))) return action->trigger();
        FAIL() << text;
    }
    void picture(const char* name) const {
        QTest::qWait(50);
        ASSERT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
        EXPECT_TRUE(window->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/window-%1.png").arg(name)));
    }
    QTemporaryDir folder;
    app::Settings settings;
    std::unique_ptr<app::MainWindow> window;
};

TEST_F(PlayInTheWindow, AKeyPlaysAndPausesWithoutAQuestionForASlowBlinker) {
    press(Qt::Key_F9);
    EXPECT_TRUE(running());
    EXPECT_EQ(question(), nullptr);
    ASSERT_TRUE(waitFor([&] { return moment_s() > 0.05; }));
    press(Qt::Key_F9);
    EXPECT_FALSE(running());
    const double stopped = moment_s();
    QTest::qWait(60);
    EXPECT_EQ(moment_s(), stopped);
    EXPECT_EQ(window->play().play().moment_s(), stopped);
}

TEST_F(PlayInTheWindow, KeysStepFromSwitchingToSwitching) {
    const std::vector<double> switchings = window->live().shown()->curves.switchings_s;
    press(Qt::Key_F8);
    EXPECT_EQ(moment_s(), switchings.at(0));
    press(Qt::Key_F8);
    EXPECT_EQ(moment_s(), switchings.at(1));
    press(Qt::Key_F7);
    EXPECT_EQ(moment_s(), switchings.at(0));
}

TEST_F(PlayInTheWindow, AHandOnTheLinePauses) {
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    window->curves().setFocus();
    press(Qt::Key_Home);
    EXPECT_FALSE(running());
    EXPECT_EQ(moment_s(), 0);
}

TEST_F(PlayInTheWindow, AHiddenWindowPauses) {
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    window->hide();
    EXPECT_FALSE(running());
}

TEST_F(PlayInTheWindow, AsksOnceBeforeMoreThanThreeFlashesASecond) {
    setTiming(10e3, 8.2e3); // about five a second
    press(Qt::Key_F9);
    EXPECT_FALSE(running()) << "nothing flashes before the answer";
    ASSERT_NE(question(), nullptr);
    const QImage grabbed = question()->grab().toImage();
    EXPECT_TRUE(QDir().mkpath(BLINKWRIGHT_PICTURES));
    EXPECT_TRUE(grabbed.save(QStringLiteral(BLINKWRIGHT_PICTURES "/dialog-flicker.png")));
    answer("Bars");
    EXPECT_TRUE(running());
    EXPECT_TRUE(settings.lampsAsBars());
    EXPECT_TRUE(strip().note().startsWith("Bars show the mean")) << strip().note().toStdString();
    picture("play-bars");
    press(Qt::Key_F9);
    press(Qt::Key_F9);
    EXPECT_TRUE(running());
    EXPECT_EQ(question(), nullptr) << "the answer is remembered";
}

TEST_F(PlayInTheWindow, TakingTheQuestionBackPlaysNothingAndAsksAgain) {
    setTiming(10e3, 8.2e3);
    press(Qt::Key_F9);
    answer("Cancel");
    EXPECT_FALSE(running());
    EXPECT_FALSE(settings.flickerAnswered());
    press(Qt::Key_F9);
    EXPECT_NE(question(), nullptr);
}

TEST_F(PlayInTheWindow, AFastBlinkerPlayedTwentyTimesSlowerNeedsNoQuestion) {
    setTiming(10e3, 8.2e3);
    trigger("Twenty times");
    EXPECT_EQ(strip().findChild<QComboBox*>()->currentText(), "1:20");
    press(Qt::Key_F9);
    EXPECT_TRUE(running());
    EXPECT_EQ(question(), nullptr);
}

TEST_F(PlayInTheWindow, AFasterRatioWhileItPlaysAsksToo) {
    setTiming(10e3, 8.2e3);
    trigger("Twenty times");
    press(Qt::Key_F9);
    trigger("As fast");
    EXPECT_FALSE(running());
    EXPECT_NE(question(), nullptr);
    answer("Glow");
    EXPECT_TRUE(running());
    EXPECT_FALSE(settings.lampsAsBars());
}

TEST_F(PlayInTheWindow, MoreThanTwentyFlashesASecondAreShownSteadyWithANote) {
    setTiming(1e3, 1.5e3); // about 36 a second
    settings.setFlickerAnswered();
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    EXPECT_TRUE(strip().note().contains("cannot follow")) << strip().note().toStdString();
    picture("play-steady");
    window->play().menu()->popup({0, 0});
    EXPECT_TRUE(window->play().menu()->grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/menu-Play.png")));
    window->play().menu()->close();
}

TEST_F(PlayInTheWindow, StopsAtTheEndOrGoesRound) {
    trigger("Go round");
    const double end_s = window->live().shown()->curves.time_s.back();
    window->curves().setMoment(end_s - 0.3);
    press(Qt::Key_F9);
    EXPECT_TRUE(running()); // the line was not moved by hand, so play takes it where it stands
    ASSERT_TRUE(waitFor([&] { return !running(); }));
    EXPECT_EQ(moment_s(), end_s);
    trigger("Go round");
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    EXPECT_TRUE(waitFor([&] { return moment_s() < end_s - 0.5; }));
    EXPECT_TRUE(running());
}

} // namespace
