// "Why it differs" as people use it.
#include "app/rooms/why_room.h"
#include "core/circuit/set_edits.h"
#include "tests/app/rooms/room_fixture.h"
#include "widgets/rooms/why_view.h"

#include <QClipboard>
#include <QComboBox>
#include <QPushButton>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::WhyRoom;
using circuit::PartSet;

class WhyRoomTest : public RoomTest {
  protected:
    WhyRoom& whyRoom() { return room<WhyRoom>("why"); }
};

TEST_F(WhyRoomTest, TheBridgeLeadsFromTheTextbookToTheBoardWithoutAGap) {
    open("mole-light");
    WhyRoom& room = whyRoom();
    const auto& bars = room.view().bars();
    ASSERT_GE(bars.size(), 4u);
    EXPECT_TRUE(bars.front().end && bars.back().end);
    for (std::size_t k = 1; k < bars.size(); ++k) EXPECT_DOUBLE_EQ(bars[k].from, bars[k - 1].to) << k;
    EXPECT_NEAR(bars.back().from, bars.back().to, 1e-12);
    const auto& timer = window->live().shown()->readings.timers.front();
    EXPECT_DOUBLE_EQ(bars.front().to, timer.textbook->phase.period_s());
    EXPECT_NEAR(bars.back().to, timer.settled->period_s(), 1e-5 * timer.settled->period_s());
    picture(room, "why-mole-light");
}

TEST_F(WhyRoomTest, TheDutyCycleHasItsOwnBridge) {
    open("buoy-pair");
    WhyRoom& room = whyRoom();
    room.frame().findChild<QComboBox*>("quantity")->setCurrentIndex(1);
    const auto& timer = window->live().shown()->readings.timers.front();
    EXPECT_DOUBLE_EQ(room.view().bars().front().to, timer.textbook->phase.duty());
    EXPECT_NEAR(room.view().bars().back().to, timer.settled->duty(), 1e-5);
    picture(room, "why-buoy-pair-duty");
}

TEST_F(WhyRoomTest, AValueThatChangesChangesTheBridge) {
    open("mole-light");
    WhyRoom& room = whyRoom();
    const double before = room.view().bars().front().to;
    setValue(PartSet::A, "C1", "capacitance", 20e-6);
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    EXPECT_NEAR(room.view().bars().front().to / before, 2, 1e-9);
}

TEST_F(WhyRoomTest, SetBIsAskedAboutOnceItDiffers) {
    open("mole-light");
    app::Document& document = window->document();
    ASSERT_TRUE(document.apply(circuit::copySet(document.circuit(), PartSet::A, PartSet::B).value()));
    WhyRoom& room = whyRoom();
    auto* sets = room.frame().findChild<QComboBox*>("sets");
    EXPECT_FALSE(sets->isVisible());
    const double before = room.view().bars().front().to;
    setValue(PartSet::B, "C1", "capacitance", 20e-6);
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    EXPECT_TRUE(sets->isVisible());
    EXPECT_DOUBLE_EQ(room.view().bars().front().to, before);
    sets->setCurrentIndex(1);
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    EXPECT_NEAR(room.view().bars().front().to / before, 2, 1e-9);
}

TEST_F(WhyRoomTest, ACircuitThatCannotBlinkSaysWhy) {
    open("mole-light");
    WhyRoom& room = whyRoom();
    app::Document& document = window->document();
    const circuit::PartId timer = document.circuit().findRef("U1")->id;
    ASSERT_TRUE(document.apply({circuit::edits::JoinPin{{timer, 5}, {}}}));
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    EXPECT_FALSE(room.frame().message().isEmpty());
    EXPECT_FALSE(room.view().asText().contains("simulated"));
}

TEST_F(WhyRoomTest, AnEmptyHookUpIsAskedNothing) {
    WhyRoom& room = whyRoom();
    EXPECT_TRUE(room.frame().message().contains("add parts"));
    EXPECT_EQ(room.view().rowCount(), 0);
}

TEST_F(WhyRoomTest, TheTableGoesToTheClipboard) {
    open("mole-light");
    WhyRoom& room = whyRoom();
    for (QPushButton* button : room.frame().findChildren<QPushButton*>())
        if (button->text().remove('&') == "Copy") button->click();
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.startsWith("Textbook\t"));
    EXPECT_EQ(text.count('\n'), room.view().rowCount());
}

TEST_F(WhyRoomTest, WhereTheBoardWasMeasuredTheBridgeEndsThere) {
    open("mole-light-measured");
    WhyRoom& room = whyRoom();
    const auto& bars = room.view().bars();
    ASSERT_GE(bars.size(), 4u);
    for (std::size_t k = 1; k < bars.size(); ++k) EXPECT_NEAR(bars[k].from, bars[k - 1].to, 1e-12) << k;
    const auto measured = study::measuredReadings(window->document().circuit());
    const auto& last = bars.back();
    const auto& unexplained = bars[bars.size() - 2];
    EXPECT_TRUE(last.end && last.measured && unexplained.measured);
    EXPECT_NEAR(last.to, measured.period_s->value, 1e-12);
    EXPECT_EQ(unexplained.whisker, measured.period_s->uncertainty);
    const auto& timer = window->live().shown()->readings.timers.front();
    EXPECT_NEAR(unexplained.from, timer.settled->period_s(), 1e-5);
    const QString text = room.view().asText();
    EXPECT_TRUE(text.contains("Unexplained\t+") && text.contains("This board, measured\t"));
    picture(room, "why-measured");
    room.frame().findChild<QComboBox*>("quantity")->setCurrentIndex(1);
    EXPECT_NEAR(room.view().bars().back().to, measured.duty->value, 1e-12);
    picture(room, "why-measured-duty");
    // By stopwatch alone: the whisker is as wide as its uncertainty.
    circuit::Measurements counts = window->document().circuit().measurements;
    counts.resize(1);
    ASSERT_TRUE(window->document().apply({circuit::edits::SetMeasurements{counts, ""}}));
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    room.frame().findChild<QComboBox*>("quantity")->setCurrentIndex(0);
    EXPECT_NEAR(room.view().bars()[room.view().bars().size() - 2].whisker, 0.21 / 20, 1e-12);
    picture(room, "why-measured-by-stopwatch");
    // Without a measurement in use the bridge ends at the simulation again.
    ASSERT_TRUE(window->document().apply({circuit::edits::SetMeasurements{{}, ""}}));
    ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    EXPECT_FALSE(room.view().bars().back().measured);
}

TEST_F(WhyRoomTest, EscapeCancelsAndThenCloses) {
    open("mole-light");
    WhyRoom& room = whyRoom();
    setValue(PartSet::A, "R2", "resistance", 50e3);
    ASSERT_TRUE(waitFor([&] { return room.frame().findChild<QPushButton*>("cancel")->isVisible(); }));
    QTest::keyClick(&room.frame(), Qt::Key_Escape);
    EXPECT_TRUE(room.frame().isVisible());
    EXPECT_FALSE(room.isBusy());
    EXPECT_TRUE(room.frame().message().contains("Cancelled"));
    QTest::keyClick(&room.frame(), Qt::Key_Escape);
    EXPECT_FALSE(room.frame().isVisible());
    EXPECT_FALSE(whyRoom().frame().message().contains("Cancelled")); // asked anew
}

} // namespace
