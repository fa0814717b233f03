// Play without a clock: the tests hand in the time that has passed.
#include "app/play.h"

#include "app/moment.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace blinkwright;
using app::Play;
using app::Showing;
using app::Tape;

/// Six seconds of one flash a second: the first cycle longer, as from power-on.
Tape sixSeconds() {
    Tape tape;
    tape.whole = {0, 6};
    tape.cycles = {2, 5};
    tape.switchings_s = {1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5};
    tape.flashes_Hz = 1;
    return tape;
}

Play ready(Tape tape = sixSeconds()) {
    Play play;
    play.setTape(std::move(tape));
    return play;
}

TEST(Play, MovesTheLineAtItsRatioToRealTime) {
    for (const int ratio : Play::ratios) {
        Play play = ready();
        play.setRatio(ratio);
        ASSERT_TRUE(play.start());
        for (int frame = 0; frame < 60; ++frame) play.advance(1.0 / 60);
        EXPECT_NEAR(play.moment_s(), 1.0 / ratio, 1e-12) << ratio;
    }
}

TEST(Play, StandsStillUntilItIsStartedAndWhilePaused) {
    Play play = ready();
    EXPECT_EQ(play.advance(0.1), 0);
    play.start();
    play.advance(0.1);
    play.pause();
    EXPECT_FALSE(play.running());
    EXPECT_EQ(play.advance(0.1), play.moment_s());
    EXPECT_DOUBLE_EQ(play.moment_s(), 0.1);
}

TEST(Play, StopsAtTheEndAndBeginsAnewFromThere) {
    Play play = ready();
    play.moveTo(5.95);
    play.start();
    EXPECT_EQ(play.advance(0.1), 6);
    EXPECT_FALSE(play.running());
    EXPECT_TRUE(play.start());
    EXPECT_EQ(play.moment_s(), 0);
}

TEST(Play, GoesRoundInTheSettledCycles) {
    Play play = ready();
    play.setLoop(true);
    play.moveTo(4.95);
    play.start();
    EXPECT_NEAR(play.advance(0.1), 2.05, 1e-12);
    EXPECT_TRUE(play.running());
}

TEST(Play, GoesRoundOftenWithinOnePictureOfAFastRun) {
    Tape fast;
    fast.whole = fast.cycles = {0, 0.01};
    Play play = ready(fast);
    play.setLoop(true);
    play.start();
    EXPECT_NEAR(play.advance(0.0235), 0.0035, 1e-12);
}

TEST(Play, RunsInToTheSettledCyclesFromBeforeThem) {
    Play play = ready();
    play.setLoop(true);
    play.start();
    EXPECT_NEAR(play.advance(0.2), 0.2, 1e-12);
}

TEST(Play, DoesNotJumpWhenTheWindowWasHeldUp) {
    Play play = ready();
    play.start();
    EXPECT_LE(play.advance(3), 0.25);
    const double before = play.moment_s();
    EXPECT_EQ(play.advance(-1), before);
}

TEST(Play, StepsFromSwitchingToSwitchingBothWaysAndPauses) {
    Play play = ready();
    play.start();
    EXPECT_EQ(play.toNextSwitching(), 1.5);
    EXPECT_FALSE(play.running());
    EXPECT_EQ(play.toNextSwitching(), 2);
    EXPECT_EQ(play.toPreviousSwitching(), 1.5);
    EXPECT_EQ(play.toPreviousSwitching(), 0);
    EXPECT_EQ(play.toPreviousSwitching(), 0);
    play.moveTo(5.5);
    EXPECT_EQ(play.toNextSwitching(), 6);
    EXPECT_EQ(play.toPreviousSwitching(), 5.5);
}

TEST(Play, HasNothingToPlayWithoutARun) {
    Play play;
    EXPECT_FALSE(play.start());
    Play running = ready();
    running.start();
    running.setTape({});
    EXPECT_FALSE(running.running());
}

TEST(Play, KeepsTheLineWithinAShorterRun) {
    Play play = ready();
    play.moveTo(5);
    Tape shorter = sixSeconds();
    shorter.whole = {0, 2};
    play.setTape(shorter);
    EXPECT_EQ(play.moment_s(), 2);
}

TEST(Play, ShowsMoreThanTwentyFlashesASecondAsSteady) {
    Tape tape = sixSeconds();
    tape.flashes_Hz = 20;
    Play play = ready(tape);
    EXPECT_EQ(play.showing(), Showing::moments);
    tape.flashes_Hz = 20.5;
    play.setTape(tape);
    EXPECT_EQ(play.showing(), Showing::steady);
    play.setRatio(4); // five flashes a second on the screen
    EXPECT_EQ(play.showing(), Showing::moments);
    EXPECT_TRUE(play.isLively());
    play.setRatio(20);
    EXPECT_FALSE(play.isLively());
}

TEST(Play, IsLivelyAboveThreeFlashesASecond) {
    Tape tape = sixSeconds();
    tape.flashes_Hz = 3;
    EXPECT_FALSE(ready(tape).isLively());
    tape.flashes_Hz = 3.01;
    EXPECT_TRUE(ready(tape).isLively());
}

study::Study blinking(std::vector<double> switchings_s, bool fromPowerOn) {
    study::Study study;
    study.curves.time_s = {0, switchings_s.back() + 0.1};
    study.curves.switchings_s = switchings_s;
    study::TimerReading timer;
    timer.switchings_s = std::move(switchings_s);
    if (fromPowerOn) timer.firstHigh_s = timer.switchings_s.front();
    timer.settled = study::Phase{0.6, 0.4};
    study.readings.timers.push_back(timer);
    return study;
}

TEST(Tape, TakesTheCyclesAtTheEndThatLastAsLongAsTheSettledOne) {
    const auto tape = app::tapeOf(blinking({1.2, 1.6, 2.4, 2.6, 3.4, 3.6, 4.4}, true));
    EXPECT_EQ(tape.cycles, (app::Stretch{2.4, 4.4}));
    EXPECT_EQ(tape.whole, (app::Stretch{0, 4.5}));
}

TEST(Tape, TakesAllOfASettledRun) {
    const auto tape = app::tapeOf(blinking({0.6, 1, 1.6, 2}, false));
    EXPECT_EQ(tape.cycles, tape.whole);
}

TEST(Tape, TellsTheFastestFlashingOfAnyTimer) {
    study::Study study = blinking({1.2, 1.6, 2.2, 2.6}, true);
    EXPECT_DOUBLE_EQ(app::tapeOf(study).flashes_Hz, 1);
    study::TimerReading fast;
    fast.switchings_s = {0.5, 0.55, 0.6, 1.5, 1.55, 1.6}; // bursts of ten a second
    study.readings.timers.push_back(fast);
    EXPECT_NEAR(app::tapeOf(study).flashes_Hz, 10, 1e-9);
}

TEST(Tape, IsEmptyWithoutCurves) {
    EXPECT_TRUE(app::tapeOf(study::Study{}).empty());
}

/// One lamp of 20 mA: 10 mA in the first half of each second, nothing in the second half.
study::Study halfLit() {
    study::Study study;
    devices::Junction junction;
    junction.id = {7};
    junction.lamp = true;
    junction.ratedCurrent = 0.02;
    study.board.junctions.push_back(junction);
    study.curves.time_s = {0, 0.5, 0.5, 1, 1, 1.5, 1.5, 2};
    for (auto* unused : {&study.curves.output_V, &study.curves.capacitor_V, &study.curves.upperLevel_V,
                         &study.curves.lowerLevel_V})
        unused->assign(study.curves.time_s.size(), 0);
    study.curves.lamps.push_back({{7}, "D1", "red", {0.01, 0.01, 0, 0, 0.01, 0.01, 0, 0}});
    return study;
}

TEST(MeanGlow, IsTheIntegralOfTheCurrentOverTheTime) {
    const study::Study study = halfLit();
    const auto mean = [&](double from, double to) { return app::meanGlow(study, from, to).at({7}); };
    EXPECT_NEAR(mean(0, 2), 0.25, 1e-12);
    EXPECT_NEAR(mean(0, 0.5), 0.5, 1e-12);
    EXPECT_NEAR(mean(0.5, 1), 0, 1e-12);
    EXPECT_NEAR(mean(0.4, 0.6), 0.25, 1e-12);
    EXPECT_NEAR(mean(0.9, 1.1), 0.25, 1e-12);
    EXPECT_NEAR(mean(0.2, 0.2), 0.5, 1e-12); // a moment
}

} // namespace
