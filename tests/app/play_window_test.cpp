// Play in the real window: its keys, its question, and what the lamps show meanwhile.
#include "app/moment.h"
#include "app/play_actions.h"
#include "app/play_strip.h"
#include "tests/app/keyboard.h"
#include "tests/app/window_fixture.h"
#include "widgets/curves/curves_view.h"
#include "widgets/hookup/hookup_view.h"

#include <QComboBox>
#include <QMenu>
#include <QMessageBox>
#include <QPushButton>

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;

class PlayInTheWindow : public WindowFixture {
  protected:
    explicit PlayInTheWindow(app::Looks looks = app::Looks::light, QSize size = {1280, 800})
        : WindowFixture(looks, size) {
        activate();
        open("mole-light");
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
    picture("dialog-flicker", *question());
    answer("Bars");
    EXPECT_TRUE(running());
    EXPECT_TRUE(settings.lampsAsBars());
    EXPECT_TRUE(strip().note().startsWith("Bars show the mean")) << strip().note().toStdString();
    picture("window-play-bars");
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

TEST_F(PlayInTheWindow, AValueThatMakesItFastWhileItPlaysAsksToo) {
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    ASSERT_EQ(question(), nullptr);
    setTiming(10e3, 8.2e3); // about five a second
    EXPECT_FALSE(running()) << "nothing flashes before the answer";
    ASSERT_NE(question(), nullptr);
    answer("Cancel");
}

TEST_F(PlayInTheWindow, MoreThanTwentyFlashesASecondAreShownSteadyWithANote) {
    setTiming(1e3, 1.5e3); // about 36 a second
    settings.setFlickerAnswered();
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    EXPECT_TRUE(strip().note().contains("cannot follow")) << strip().note().toStdString();
    picture("window-play-steady");
    window->play().menu()->popup({0, 0});
    picture("menu-Play", *window->play().menu());
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

/// Dark and light, wide and narrow. ctest runs these at 150 % scaling besides.
class PlayLooks : public PlayInTheWindow, public testing::WithParamInterface<std::tuple<bool, bool>> {
  protected:
    static QSize size() { return std::get<1>(GetParam()) ? QSize(960, 600) : QSize(1280, 800); }
    PlayLooks() : PlayInTheWindow(std::get<0>(GetParam()) ? app::Looks::dark : app::Looks::light, size()) {}
    QString named(const char* what) const {
        return QStringLiteral("window-play-%1-%2-%3")
            .arg(QLatin1String(what), std::get<1>(GetParam()) ? "narrow" : "wide",
                 std::get<0>(GetParam()) ? "dark" : "light");
    }
    /// Every control of the strip is whole and in view.
    void isWhole() const {
        EXPECT_EQ(window->size(), size()) << "something needs more room than there is";
        for (const QWidget* control : strip().findChildren<QWidget*>(Qt::FindDirectChildrenOnly)) {
            const QString name = control->accessibleName() + control->toolTip();
            EXPECT_EQ(control->visibleRegion().boundingRect(), control->rect()) << name.toStdString();
            if (control->sizePolicy().horizontalPolicy() != QSizePolicy::Ignored) {
                EXPECT_GE(control->width(), control->minimumSizeHint().width()) << name.toStdString();
                EXPECT_GE(control->height(), control->minimumSizeHint().height()) << name.toStdString();
            }
        }
    }
};

TEST_P(PlayLooks, WhileALampGlows) {
    const auto& switchings = window->live().shown()->curves.switchings_s;
    window->curves().setMoment(switchings.at(1) + 0.1); // lit
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    isWhole();
    picture(named("glow"));
}

TEST_P(PlayLooks, WithBars) {
    setTiming(10e3, 8.2e3);
    settings.setFlickerAnswered();
    trigger("Show lamps as bars");
    press(Qt::Key_F9);
    ASSERT_TRUE(running());
    isWhole();
    picture(named("bars"));
}

TEST_P(PlayLooks, TheQuestion) {
    setTiming(10e3, 8.2e3);
    press(Qt::Key_F9);
    ASSERT_NE(question(), nullptr);
    EXPECT_LE(question()->width(), window->width());
    picture(named("question"), *question());
}

TEST_P(PlayLooks, Steady) {
    setTiming(1e3, 1.5e3);
    settings.setFlickerAnswered();
    press(Qt::Key_F9);
    isWhole();
    picture(named("steady"));
}

INSTANTIATE_TEST_SUITE_P(Looks, PlayLooks, testing::Combine(testing::Bool(), testing::Bool()),
                         [](const auto& row) {
                             return std::string(std::get<0>(row.param) ? "Dark" : "Light") +
                                    (std::get<1>(row.param) ? "Narrow" : "Wide");
                         });

} // namespace
