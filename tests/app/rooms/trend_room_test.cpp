// "Trend" as people use it.
#include "app/rooms/trend_room.h"
#include "tests/app/rooms/room_fixture.h"
#include "widgets/rooms/trend_plot.h"

#include <QAccessible>
#include <QClipboard>
#include <QComboBox>
#include <QImage>
#include <QLineEdit>
#include <QPushButton>

#include <cmath>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::TrendRoom;
using circuit::PartSet;

class TrendRoomTest : public RoomTest {
  protected:
    TrendRoom& trend() { return room<TrendRoom>("trend"); }
    void settle(TrendRoom& room) {
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    }
    void choose(TrendRoom& room, const char* box, const QString& text) {
        auto* choice = room.frame().findChild<QComboBox*>(QLatin1String(box));
        const int at = choice->findText(text);
        ASSERT_GE(at, 0) << text.toStdString();
        choice->setCurrentIndex(at);
        emit choice->activated(at);
        settle(room);
    }
    void type(TrendRoom& room, const char* field, const QString& text) {
        auto* line = room.frame().findChild<QLineEdit*>(QLatin1String(field));
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, text);
        QTest::keyClick(line, Qt::Key_Return);
        settle(room);
    }
    double r2(PartSet set = PartSet::A) const {
        const auto& circuit = window->document().circuit();
        return app::presentOf(circuit, set, {circuit.findRef("R2")->id, "resistance"});
    }
    int steps() const { return window->document().undoStack().count(); }
    static void mouse(QWidget& plot, QEvent::Type type, QPointF at, Qt::MouseButtons held = Qt::LeftButton) {
        const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
        QMouseEvent event(type, at, plot.mapToGlobal(at), button,
                          type == QEvent::MouseButtonRelease ? Qt::NoButton : held, Qt::NoModifier);
        QApplication::sendEvent(&plot, &event);
    }
    const widgets::TrendLine& line(TrendRoom& room, std::size_t k = 0) {
        return room.plot().picture().lines.at(k);
    }
};

TEST_F(TrendRoomTest, OpensOnATimingPartWithTwoDecadesAroundItsValue) {
    open("mole-light");
    TrendRoom& room = trend();
    auto* values = room.frame().findChild<QComboBox*>("value");
    EXPECT_EQ(values->itemText(0), "R1 resistance");
    EXPECT_EQ(values->itemText(1), "R2 resistance");
    EXPECT_EQ(values->itemText(2), "C1 capacitance");
    EXPECT_GE(values->findText("BT1 voltage"), 3);
    EXPECT_GE(values->findText("U1 threshold current"), 3);
    EXPECT_EQ(values->findText("R1 rated power"), -1); // moves nothing
    EXPECT_NEAR(room.range().from, 1e3, 1e-9);
    EXPECT_NEAR(room.range().to, 1e5, 1e-7);
    EXPECT_FALSE(room.range().even);
    EXPECT_EQ(line(room).trend->points.size(), 40u);
}

TEST_F(TrendRoomTest, TheReadoutIsWhatTheReadingsSay) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    const double rate = window->live().shown()->readings.timers.front().settled->rate_Hz();
    const auto& picture = room.plot().picture();
    const auto figure = widgets::figureAt(line(room), picture.figure, picture.range, line(room).present);
    EXPECT_NEAR(*figure / rate, 1, 1e-5);
    EXPECT_TRUE(room.frame().message().contains(widgets::rateText(rate)))
        << room.frame().message().toStdString();
    EXPECT_EQ(room.plot().accessibleDescription(), room.frame().message());
    QAccessibleInterface* chart = QAccessible::queryAccessibleInterface(&room.plot());
    EXPECT_EQ(chart->role(), QAccessible::Chart);
    EXPECT_EQ(chart->text(QAccessible::Value), room.frame().message());
}

TEST_F(TrendRoomTest, ADragAlongTheCurveIsOneUndoStep) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    const double before = r2();
    const int count = steps();
    const QPointF from = room.plot().handleAt(PartSet::A);
    mouse(room.plot(), QEvent::MouseButtonPress, from);
    for (int k = 1; k <= 12; ++k) {
        mouse(room.plot(), QEvent::MouseMove, from - QPointF(8 * k, 0));
        QTest::qWait(10);
    }
    const double during = r2();
    EXPECT_LT(during, before);
    EXPECT_EQ(line(room).present, during); // the line is where the document is, at once
    // Within a step of the hand: a longer number at the axis may have moved the plot by some pixels meanwhile.
    EXPECT_NEAR(room.plot().handleAt(PartSet::A).x(), from.x() - 96, 8);
    mouse(room.plot(), QEvent::MouseButtonRelease, from - QPointF(96, 0));
    settle(room);
    EXPECT_EQ(steps(), count + 1);
    EXPECT_EQ(line(room).exact.back().value, during); // settled exactly, not read off the curve
    window->document().undoStack().undo();
    EXPECT_EQ(r2(), before);
    EXPECT_EQ(line(room).present, before);
}

TEST_F(TrendRoomTest, EscapeInADragTakesItBack) {
    open("mole-light");
    TrendRoom& room = trend();
    const QPointF from = room.plot().handleAt(PartSet::A);
    const double before = line(room).present;
    mouse(room.plot(), QEvent::MouseButtonPress, from);
    mouse(room.plot(), QEvent::MouseMove, from + QPointF(40, 0));
    EXPECT_NE(line(room).present, before);
    QTest::keyClick(&room.plot(), Qt::Key_Escape);
    EXPECT_EQ(line(room).present, before);
    EXPECT_TRUE(room.frame().isVisible());
    mouse(room.plot(), QEvent::MouseMove, from + QPointF(80, 0), Qt::NoButton);
    EXPECT_EQ(line(room).present, before);
}

TEST_F(TrendRoomTest, APressBesideTheLineChangesNothing) {
    open("mole-light");
    TrendRoom& room = trend();
    const int count = steps();
    const QPointF away = room.plot().handleAt(PartSet::A) + QPointF(60, 0);
    mouse(room.plot(), QEvent::MouseButtonPress, away);
    mouse(room.plot(), QEvent::MouseMove, away + QPointF(30, 0));
    mouse(room.plot(), QEvent::MouseButtonRelease, away + QPointF(30, 0));
    EXPECT_EQ(steps(), count);
}

TEST_F(TrendRoomTest, ARunOfArrowKeysIsOneUndoStep) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    const int count = steps();
    room.plot().setFocus();
    for (int k = 0; k < 3; ++k) QTest::keyClick(&room.plot(), Qt::Key_Right);
    EXPECT_NEAR(r2(), 68e3 * std::pow(1.01, 3), 0.002 * r2());
    QTest::keyClick(&room.plot(), Qt::Key_PageDown);
    EXPECT_LT(r2(), 60e3);
    EXPECT_TRUE(waitFor([&] { return !room.plot().inGesture(); }));
    EXPECT_EQ(steps(), count + 1);
    QTest::keyClick(&room.plot(), Qt::Key_End);
    EXPECT_NEAR(r2(), room.range().to, 1e-6);
    EXPECT_TRUE(waitFor([&] { return !room.plot().inGesture(); }));
    EXPECT_EQ(steps(), count + 2);
}

TEST_F(TrendRoomTest, SetBHasItsOwnCurveAndLineInItsColour) {
    open("mole-light");
    setValue(PartSet::B, "R2", "resistance", 33e3);
    setValue(PartSet::B, "C1", "capacitance", 22e-6);
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    ASSERT_EQ(room.plot().picture().lines.size(), 2u);
    const auto &a = line(room, 0), &b = line(room, 1);
    EXPECT_EQ(b.present, 33e3);
    EXPECT_NEAR(b.trend->points[20].settled->period_s() / a.trend->points[20].settled->period_s(), 2.2, 0.05);
    const QImage picture = room.plot().grab().toImage();
    const QPointF at = room.plot().handleAt(PartSet::B);
    EXPECT_EQ(picture.pixelColor(at.toPoint()), widgets::Theme::of(widgets::Theme::Mode::light).setB);

    // Its line is dragged for Set B alone.
    const double other = r2();
    mouse(room.plot(), QEvent::MouseButtonPress, at);
    mouse(room.plot(), QEvent::MouseMove, at - QPointF(40, 0));
    mouse(room.plot(), QEvent::MouseButtonRelease, at - QPointF(40, 0));
    EXPECT_LT(r2(PartSet::B), 33e3);
    EXPECT_EQ(r2(), other);
    EXPECT_EQ(room.frame().set(), PartSet::B);
    settle(room);
    RoomTest::picture(room, "trend-mole-light-sets");
}

TEST_F(TrendRoomTest, RangesTakeEngineeringTextAndAreRememberedByValue) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    type(room, "from", "22k");
    type(room, "to", "0,1M");
    EXPECT_NEAR(room.range().from, 22e3, 1e-6);
    EXPECT_NEAR(room.range().to, 1e5, 1e-6);
    EXPECT_NEAR(line(room).trend->points.back().value, 1e5, 1e-6);
    choose(room, "value", "C1 capacitance");
    EXPECT_NEAR(room.range().from, 1e-6, 1e-12);
    choose(room, "value", "R2 resistance");
    EXPECT_NEAR(room.range().from, 22e3, 1e-6);
    room.frame().findChild<QPushButton*>("usual")->click();
    settle(room);
    EXPECT_NEAR(room.range().from, 6.8e3, 1e-6);
}

TEST_F(TrendRoomTest, ARangeThatCannotBeIsRefusedWithAReason) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    const auto before = room.range();
    type(room, "from", "banana");
    EXPECT_TRUE(room.frame().message().contains("banana")) << room.frame().message().toStdString();
    type(room, "from", "1G");
    EXPECT_TRUE(room.frame().message().contains("smaller end"));
    EXPECT_EQ(room.range(), before);
}

TEST_F(TrendRoomTest, AValueOutsideTheRangeIsSaidToBe) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    setValue(PartSet::A, "R2", "resistance", 5e6);
    settle(room);
    EXPECT_TRUE(room.frame().message().contains("outside")) << room.frame().message().toStdString();
}

TEST_F(TrendRoomTest, GapsWhereItDoesNotBlinkAreShownWithAWord) {
    open("mole-light");
    setValue(PartSet::A, "U1", "device.threshold_current", 1e-6);
    TrendRoom& room = trend();
    choose(room, "value", "R1 resistance");
    type(room, "to", "100M");
    const auto gaps = widgets::gapsOf(line(room), room.range());
    ASSERT_EQ(gaps.size(), 1u);
    // Half of 1 uA flows at the level, 4 V (law of a differential pair), and 4 V over the capacitor's leakage
    // of 10 Mohm. The 2 V that are left feed both through 2.22 Mohm. The points are a factor of 1.34 apart.
    EXPECT_NEAR(std::log(gaps[0].from / 2.22e6), 0, std::log(1.35));
    EXPECT_EQ(gaps[0].to, room.range().to);
    EXPECT_TRUE(room.frame().message().contains("does not blink above"));
    picture(room, "trend-gap");
}

TEST_F(TrendRoomTest, ABatteryFallsFromItsVoltageAndTheTimersLimitIsMarked) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "BT1 voltage");
    EXPECT_TRUE(room.range().even);
    EXPECT_NEAR(room.range().to, 6, 1e-9);
    EXPECT_NEAR(room.range().from, 2.25, 1e-9);
    const auto& marks = room.plot().picture().marks;
    EXPECT_TRUE(std::ranges::any_of(marks, [](const auto& m) { return m.value == 4.5; }));
    picture(room, "trend-battery");
}

TEST_F(TrendRoomTest, TheTravelOfAVariableResistorHasItsEndsMarked) {
    open("mole-light");
    app::Document& document = window->document();
    // R2 gives way to a variable resistor between the same nets, wiper to its second end.
    const auto& circuit = document.circuit();
    const circuit::PartId r2 = circuit.findRef("R2")->id, rv = circuit.nextPartId();
    const auto ends = {*circuit.netOf({r2, 0}), *circuit.netOf({r2, 1})};
    circuit::Part part;
    part.kind = circuit::PartKind::variable;
    part.ref = "RV1";
    part.values = {{"resistance", 100e3}, {"setting", 0.5}};
    circuit::edits::Group group;
    group.edits = {{circuit::edits::RemovePart{r2}},
                   {circuit::edits::AddPart{part}},
                   {circuit::edits::JoinPin{{rv, 0}, ends.begin()[0]}},
                   {circuit::edits::JoinPin{{rv, 1}, ends.begin()[1]}},
                   {circuit::edits::JoinPin{{rv, 2}, ends.begin()[1]}}};
    ASSERT_TRUE(document.apply({group}));
    TrendRoom& room = trend();
    choose(room, "value", "RV1 setting");
    EXPECT_EQ(room.range().from, 0);
    EXPECT_EQ(room.range().to, 1);
    const auto& marks = room.plot().picture().marks;
    ASSERT_EQ(marks.size(), 2u);
    for (const auto& mark : marks) {
        EXPECT_TRUE(mark.withFigure);
        EXPECT_TRUE(
            std::ranges::any_of(line(room).exact, [&](const auto& p) { return p.value == mark.value; }));
    }
    picture(room, "trend-travel");
}

TEST_F(TrendRoomTest, FiguresOfLampsAndSupplyCanBeShown) {
    open("buoy-pair");
    TrendRoom& room = trend();
    auto* figures = room.frame().findChild<QComboBox*>("figure");
    for (int k = 0; k < figures->count(); ++k) {
        choose(room, "figure", figures->itemText(k));
        const auto& picture = room.plot().picture();
        EXPECT_TRUE(widgets::figureAt(line(room), picture.figure, picture.range, line(room).present))
            << figures->itemText(k).toStdString();
    }
    EXPECT_EQ(figures->count(), 10);
    choose(room, "figure", figures->itemText(4));
    picture(room, "trend-buoy-lamp");
}

TEST_F(TrendRoomTest, DataGoToTheClipboardAndToFiles) {
    open("mole-light");
    TrendRoom& room = trend();
    for (QPushButton* button : room.frame().findChildren<QPushButton*>())
        if (button->text().remove('&') == "Copy data") button->click();
    const QString table = QApplication::clipboard()->text();
    EXPECT_TRUE(table.startsWith("R1 resistance [Ω]\tFlash rate [Hz]")) << table.left(80).toStdString();
    EXPECT_EQ(table.count('\n'), 41);

    const QString csv = folder.filePath("t.csv"), png = folder.filePath("t.png"),
                  svg = folder.filePath("t.svg"), pdf = folder.filePath("t.pdf");
    window->appearance().choose(app::Looks::dark); // exports are on white all the same
    for (const QString& path : {csv, png, svg, pdf}) EXPECT_TRUE(room.write(path)) << path.toStdString();
    EXPECT_TRUE(bytesOf(csv).startsWith("R1.resistance,period [s],rate [Hz]"));
    EXPECT_TRUE(bytesOf(pdf).startsWith("%PDF"));
    EXPECT_TRUE(bytesOf(svg).contains("Harbour mole light"));
    EXPECT_TRUE(bytesOf(svg).contains("Set B: R2"));
    const QImage picture(png);
    EXPECT_EQ(picture.pixelColor(2, 2), QColor(Qt::white));
    EXPECT_GT(picture.width(), 1500);
    EXPECT_FALSE(room.write(folder.filePath("t.xyz")));
    EXPECT_TRUE(QImage(png).save(QStringLiteral(BLINKWRIGHT_PICTURES "/room-trend-export.png")));
}

TEST_F(TrendRoomTest, AnotherCircuitIsAskedAboutAnew) {
    open("mole-light");
    TrendRoom& room = trend();
    open("winch-warning");
    settle(room);
    EXPECT_EQ(room.frame().findChild<QComboBox*>("value")->findText("R2 resistance") >= 0,
              window->document().circuit().findRef("R2") != nullptr);
    EXPECT_FALSE(room.plot().picture().lines.empty());
}

TEST_F(TrendRoomTest, LooksRightInItsSizes) {
    open("mole-light");
    TrendRoom& room = trend();
    choose(room, "value", "R2 resistance");
    room.frame().resize(1000, 700);
    picture(room, "trend-1000");
    room.frame().resize(760, 520);
    picture(room, "trend-760");
}

} // namespace
