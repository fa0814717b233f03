// "Measurements" as people use it.
#include "app/rooms/measure_room.h"
#include "tests/app/rooms/room_fixture.h"
#include "widgets/measure/measurements_view.h"
#include "widgets/measure/meter_dialog.h"
#include "widgets/measure/stopwatch_dialog.h"
#include "widgets/measure/tap_timer.h"
#include "widgets/rooms/quantity_field.h"

#include <QClipboard>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QDoubleSpinBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>

#include <cmath>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::MeasureRoom;
using widgets::MeasurementModel;
using widgets::MeterDialog;
using widgets::StopwatchDialog;

class MeasureRoomTest : public RoomTest {
  protected:
    MeasureRoom& measureRoom() { return room<MeasureRoom>("measure"); }
    const circuit::Measurements& measurements() { return window->document().circuit().measurements; }
    const circuit::Measurement& last() { return *measurements().back(); }
    QString undoText() { return window->document().undoStack().undoText(); }
    void settle(MeasureRoom& room) {
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    }
    static void press(MeasureRoom& room, const char* button) {
        room.frame().findChild<QPushButton*>(button)->click();
    }
    template <class Form>
    static Form& form(MeasureRoom& room) {
        return *room.frame().findChild<Form*>();
    }
    static void type(QWidget& form, const char* field, const char* text) {
        auto* line = form.findChild<QLineEdit*>(field);
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, text);
        // A quantity takes Enter for itself; in a plain line it would press OK.
        if (qobject_cast<widgets::QuantityField*>(line)) QTest::keyClick(line, Qt::Key_Return);
    }
    static QString cell(MeasureRoom& room, int row, int column) {
        return room.view().model().index(row, column).data().toString().replace(QChar(QChar::Nbsp), u' ');
    }
    /// The row of a figure in the lower table.
    static QStringList figure(MeasureRoom& room, const char* name) {
        const auto& table = room.view().table();
        for (int row = 0; row < table.rowCount(); ++row) {
            if (table.item(row, 0)->text() != QLatin1String(name)) continue;
            QStringList cells;
            for (int column = 0; column < table.columnCount(); ++column)
                cells << table.item(row, column)->text().replace(QChar(QChar::Nbsp), u' ');
            return cells;
        }
        return {};
    }
    void addCount(int flashes, double time_s, double u, const char* title = "") {
        auto& document = window->document();
        circuit::Measurements list = document.circuit().measurements;
        list.push_back(std::make_shared<const circuit::Measurement>(
            circuit::Measurement{title, true, circuit::Count{flashes, {time_s, u}}, {}}));
        ASSERT_TRUE(document.apply({circuit::edits::SetMeasurements{list, "Add"}}));
    }
};

TEST_F(MeasureRoomTest, WithoutAMeasurementItSaysWhatCanBeEntered) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    auto* empty = room.frame().findChild<QLabel*>("empty");
    EXPECT_TRUE(empty->isVisible());
    for (const char* word : {"Stopwatch", "Meter reading", "Record"})
        EXPECT_TRUE(empty->text().contains(word));
    EXPECT_FALSE(room.frame().findChild<QPushButton*>("delete")->isEnabled());
    picture(room, "measure-empty");
}

TEST_F(MeasureRoomTest, AStopwatchCountIsOneStepThatCanBeTakenBack) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    press(room, "addCount");
    auto& dialog = form<StopwatchDialog>(room);
    dialog.accept(); // without a time nothing happens
    EXPECT_TRUE(measurements().empty());
    EXPECT_TRUE(dialog.isVisible());
    dialog.findChild<QSpinBox*>("flashes")->setValue(20);
    type(dialog, "time", "20,6 s");
    // Start and stop, each known to 0.15 s: sqrt(2) of it together.
    EXPECT_TRUE(dialog.findChild<QLabel*>("result")->text().contains("1.030"));
    dialog.accept();
    ASSERT_EQ(measurements().size(), 1u);
    const auto& count = std::get<circuit::Count>(last().what);
    EXPECT_EQ(count.flashes, 20);
    EXPECT_DOUBLE_EQ(count.time_s.value, 20.6);
    EXPECT_DOUBLE_EQ(count.time_s.uncertainty, std::sqrt(2.0) * 0.15);
    EXPECT_EQ(undoText(), "Add measurement “Stopwatch, 20 flashes”");
    settle(room);
    EXPECT_EQ(figure(room, "Cycle time").value(1), "1.030 ± 0.011 s");
    EXPECT_EQ(cell(room, 0, MeasurementModel::value), "20.60 s");
    EXPECT_EQ(cell(room, 0, MeasurementModel::uncertainty), "210 ms");
    room.frame().activateWindow();
    ASSERT_TRUE(waitFor([&] { return room.frame().isActiveWindow(); }));
    QTest::keySequence(&room.frame(), QKeySequence::Undo);
    EXPECT_TRUE(measurements().empty());
    EXPECT_TRUE(room.frame().findChild<QLabel*>("empty")->isVisible());
    QTest::keySequence(&room.frame(), QKeySequence("Ctrl+Y"));
    EXPECT_EQ(measurements().size(), 1u);
}

TEST_F(MeasureRoomTest, TapsWithTheSpaceBarMakeTheCount) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    press(room, "addCount");
    auto& dialog = form<StopwatchDialog>(room);
    double now = 100;
    dialog.taps().setClock([&] { return now; });
    for (const double at : {0.0, 1.1, 1.9, 3.1, 3.9}) { // see TapCount.FiveUnevenTapsByHand
        now = 100 + at;
        QTest::keyClick(&dialog.taps().button(), Qt::Key_Space);
    }
    EXPECT_TRUE(dialog.taps().message().contains("flashes a minute"))
        << dialog.taps().message().toStdString();
    EXPECT_EQ(dialog.findChild<QSpinBox*>("flashes")->value(), 4);
    ASSERT_TRUE(QDir().mkpath(QStringLiteral(BLINKWRIGHT_PICTURES)));
    for (const app::Looks looks : {app::Looks::light, app::Looks::dark}) {
        window->appearance().choose(looks);
        QTest::qWait(50);
        dialog.grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/stopwatch-%1.png")
                               .arg(looks == app::Looks::light ? "light" : "dark"));
    }
    window->appearance().choose(app::Looks::light);
    dialog.accept();
    ASSERT_EQ(measurements().size(), 1u);
    const auto& count = std::get<circuit::Count>(last().what);
    EXPECT_EQ(count.flashes, 4);
    EXPECT_NEAR(count.time_s.value, 4 * 0.98, 1e-9);
    EXPECT_NEAR(count.time_s.uncertainty, 4 * std::sqrt(0.036 / 3 / 10), 1e-9);
}

TEST_F(MeasureRoomTest, StartingAgainForgetsWhatTheTapsMade) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    press(room, "addCount");
    auto& dialog = form<StopwatchDialog>(room);
    double now = 0;
    dialog.taps().setClock([&] { return now; });
    const auto tapThrice = [&] {
        for (int k = 0; k < 3; ++k) {
            now += 1;
            dialog.taps().tap();
        }
    };
    auto& again = *dialog.findChild<QPushButton*>("again");
    tapThrice();
    again.click();
    dialog.accept();
    EXPECT_TRUE(measurements().empty()) << "there is no time any more";
    type(dialog, "time", "20.6"); // and what was typed before the taps comes back
    tapThrice();
    again.click();
    dialog.accept();
    ASSERT_EQ(measurements().size(), 1u);
    EXPECT_DOUBLE_EQ(std::get<circuit::Count>(last().what).time_s.value, 20.6);
}

TEST_F(MeasureRoomTest, ATapCountsAsTheButtonGoesDown) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    press(room, "addCount");
    auto& dialog = form<StopwatchDialog>(room);
    double now = 0;
    dialog.taps().setClock([&] { return now; });
    QAbstractButton& button = dialog.taps().button();
    for (int k = 0; k < 4; ++k) { // each is held for a while that differs
        now = k;
        QTest::mousePress(&button, Qt::LeftButton);
        now = k + 0.1 * (k + 1);
        QTest::mouseRelease(&button, Qt::LeftButton);
    }
    dialog.accept();
    const auto& count = std::get<circuit::Count>(last().what);
    EXPECT_EQ(count.flashes, 3);
    EXPECT_NEAR(count.time_s.value, 3, 1e-9);
}

TEST_F(MeasureRoomTest, WhatIsTypedAfterTapsTakesTheirPlace) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    press(room, "addCount");
    auto& dialog = form<StopwatchDialog>(room);
    double now = 0;
    dialog.taps().setClock([&] { return now; });
    for (int k = 0; k < 6; ++k) {
        now = k;
        dialog.taps().tap();
    }
    type(dialog, "time", "5.2");
    dialog.accept();
    const auto& count = std::get<circuit::Count>(last().what);
    EXPECT_EQ(count.flashes, 5);
    EXPECT_DOUBLE_EQ(count.time_s.value, 5.2);
    EXPECT_DOUBLE_EQ(count.time_s.uncertainty, std::sqrt(2.0) * 0.15);
}

TEST_F(MeasureRoomTest, AMetersAccuracyBecomesAStandardUncertainty) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    press(room, "addReading");
    auto& dialog = form<MeterDialog>(room);
    dialog.accept(); // without a value nothing happens
    EXPECT_TRUE(measurements().empty());
    type(dialog, "value", "5.93");
    EXPECT_DOUBLE_EQ(dialog.findChild<QDoubleSpinBox*>("percent")->value(), 0.5);
    EXPECT_DOUBLE_EQ(dialog.findChild<QDoubleSpinBox*>("digits")->value(), 2);
    for (const app::Looks looks : {app::Looks::light, app::Looks::dark}) {
        window->appearance().choose(looks);
        QTest::qWait(50);
        dialog.grab().save(QStringLiteral(BLINKWRIGHT_PICTURES "/meter-%1.png")
                               .arg(looks == app::Looks::light ? "light" : "dark"));
    }
    window->appearance().choose(app::Looks::light);
    dialog.accept();
    ASSERT_EQ(measurements().size(), 1u);
    const auto& reading = std::get<circuit::MeterReading>(last().what);
    EXPECT_EQ(reading.quantity, circuit::MeterQuantity::supplyVoltage);
    EXPECT_EQ(reading.part, window->document().circuit().findRef("BT1")->id);
    // ± (0.5 % of 5.93 V + 2 x 10 mV) over sqrt(3)
    EXPECT_NEAR(reading.value.uncertainty, 0.04965 / std::sqrt(3.0), 1e-12);
    EXPECT_EQ(undoText(), "Add measurement “Voltage of BT1”");
}

TEST_F(MeasureRoomTest, APartByItselfHasTheUnitAndTheAccuracyOfItsKind) {
    open("mole-light");
    MeasureRoom& room = measureRoom();
    press(room, "addReading");
    auto& dialog = form<MeterDialog>(room);
    auto* quantity = dialog.findChild<QComboBox*>("quantity");
    quantity->setCurrentIndex(quantity->findText("Part by itself"));
    auto* part = dialog.findChild<QComboBox*>("part");
    const int c1 = part->findText("C1, capacitance");
    ASSERT_GE(c1, 0);
    part->setCurrentIndex(c1);
    EXPECT_DOUBLE_EQ(dialog.findChild<QDoubleSpinBox*>("percent")->value(), 3);
    type(dialog, "value", "-10u");
    dialog.accept(); // no such capacitance
    EXPECT_TRUE(dialog.isVisible());
    type(dialog, "value", "10.4u");
    type(dialog, "uncertainty", "0.1u"); // known better than the leaflet says
    dialog.accept();
    ASSERT_EQ(measurements().size(), 1u);
    const auto& reading = std::get<circuit::MeterReading>(last().what);
    EXPECT_EQ(reading.key, "capacitance");
    EXPECT_DOUBLE_EQ(reading.value.value, 10.4e-6);
    EXPECT_DOUBLE_EQ(reading.value.uncertainty, 0.1e-6);
    settle(room);
    EXPECT_EQ(figure(room, "Capacitance of C1"), (QStringList{"Capacitance of C1", "10.40 ± 0.10 µF",
                                                              "10.00 µF", "+400.0 nF", "+4.00 %", "+4.0 u"}));
}

TEST_F(MeasureRoomTest, CellsAreEditedInPlaceAndByTheKeys) {
    open("mole-light");
    addCount(20, 20.6, 0.2);
    MeasureRoom& room = measureRoom();
    MeasurementModel& model = room.view().model();
    EXPECT_TRUE(model.setData(model.index(0, MeasurementModel::value), "20.8 s", Qt::EditRole));
    EXPECT_DOUBLE_EQ(std::get<circuit::Count>(last().what).time_s.value, 20.8);
    EXPECT_EQ(undoText().replace(QChar(QChar::Nbsp), u' '), "Set Stopwatch, 20 flashes to 20.80 ± 0.20 s");
    EXPECT_FALSE(model.setData(model.index(0, MeasurementModel::value), "two", Qt::EditRole));
    EXPECT_FALSE(model.setData(model.index(0, MeasurementModel::value), "-3", Qt::EditRole));
    EXPECT_TRUE(room.frame().message().contains("greater than 0")) << room.frame().message().toStdString();
    EXPECT_DOUBLE_EQ(std::get<circuit::Count>(last().what).time_s.value, 20.8);
    EXPECT_TRUE(model.setData(model.index(0, MeasurementModel::title), "From the quay", Qt::EditRole));
    EXPECT_EQ(last().title, "From the quay");
    EXPECT_EQ(undoText(), "Rename measurement “Stopwatch, 20 flashes”");

    room.view().choose(0);
    QTableView& list = room.view().list();
    QTest::keyClick(&list, Qt::Key_Space);
    EXPECT_FALSE(last().used);
    EXPECT_EQ(undoText(), "Leave out measurement “From the quay”");
    QTest::keyClick(&list, Qt::Key_Space);
    EXPECT_TRUE(last().used);
    QTest::keyClick(&list, Qt::Key_D, Qt::ControlModifier);
    ASSERT_EQ(measurements().size(), 2u);
    EXPECT_EQ(last().title, "From the quay (copy)");
    EXPECT_EQ(room.view().chosen(), 1); // on the copy
    QTest::keyClick(&list, Qt::Key_Delete);
    ASSERT_EQ(measurements().size(), 1u);
    EXPECT_EQ(undoText(), "Delete measurement “From the quay (copy)”");
    EXPECT_EQ(room.view().chosen(), 0);
    QTest::keyClick(&list, Qt::Key_Return); // its form
    auto& dialog = form<StopwatchDialog>(room);
    EXPECT_EQ(dialog.findChild<QSpinBox*>("flashes")->value(), 20);
    type(dialog, "press", "0.1");
    dialog.accept();
    EXPECT_NEAR(std::get<circuit::Count>(last().what).time_s.uncertainty, std::sqrt(2.0) * 0.1, 1e-12);
    EXPECT_DOUBLE_EQ(std::get<circuit::Count>(last().what).time_s.value, 20.8);
    EXPECT_EQ(undoText(), "Change measurement “From the quay”");
}

TEST_F(MeasureRoomTest, AReadingThatIsOnlyLookedAtStaysExactlyAsItWas) {
    open("mole-light-measured");
    MeasureRoom& room = measureRoom();
    const auto before = measurements();
    for (int row = 0; row < 7; ++row) {
        room.change(row);
        room.frame().findChild<QDialog*>(row < 2 ? "stopwatch" : "meter")->accept();
        QTest::qWait(0); // the form goes
    }
    EXPECT_EQ(measurements(), before);
    EXPECT_FALSE(window->document().isModified());
}

TEST_F(MeasureRoomTest, TheMeasuredSampleShowsWhatItSays) {
    open("mole-light-measured");
    MeasureRoom& room = measureRoom();
    EXPECT_EQ(room.view().model().rowCount(), 8);
    const auto& timer = window->live().shown()->readings.timers.front();
    const double simulated = timer.settled->period_s();
    const auto measured = study::measuredReadings(window->document().circuit()).period_s;
    const QStringList cycle = figure(room, "Cycle time");
    ASSERT_EQ(cycle.size(), 6);
    EXPECT_NEAR(cycle[4].left(cycle[4].indexOf(' ')).toDouble(), 100 * (measured->value / simulated - 1),
                0.006);
    EXPECT_FALSE(figure(room, "Supply voltage").isEmpty());
    EXPECT_FALSE(figure(room, "Current of D1 while lit").isEmpty());
    EXPECT_FALSE(figure(room, "Resistance of R1").isEmpty());
    EXPECT_TRUE(room.frame().message().contains("cycle time")) << room.frame().message().toStdString();
    picture(room, "measure-mole-light");
    room.frame().resize(640, 420);
    picture(room, "measure-mole-light-narrow");
}

TEST_F(MeasureRoomTest, TwoThatContradictEachOtherAreNamed) {
    open("mole-light");
    addCount(20, 20.3, 0.2, "Morning");
    addCount(20, 22.3, 0.2, "Evening");
    MeasureRoom& room = measureRoom();
    EXPECT_TRUE(
        room.frame().message().contains("“Morning” and “Evening” contradict each other in the cycle time"))
        << room.frame().message().toStdString();
    picture(room, "measure-clash");
    MeasurementModel& model = room.view().model();
    EXPECT_TRUE(model.setData(model.index(1, MeasurementModel::used), Qt::Unchecked, Qt::CheckStateRole));
    settle(room);
    EXPECT_FALSE(room.frame().message().contains("contradict"));
    EXPECT_TRUE(room.frame().message().contains("agrees")) << room.frame().message().toStdString();
}

TEST_F(MeasureRoomTest, AnImportedRecordIsAddedAndNoneWhereTheUserThinksBetterOfIt) {
    std::optional<circuit::Measurement> given;
    window->rooms().setImportRecord([&](QWidget*) { return given; });
    open("mole-light-measured");
    MeasureRoom& room = measureRoom();
    ASSERT_TRUE(room.frame().findChild<QPushButton*>("addRecord")->isVisible());
    press(room, "addRecord");
    EXPECT_EQ(measurements().size(), 8u);
    given = *measurements().back();
    given->title = "Once more";
    press(room, "addRecord");
    ASSERT_EQ(measurements().size(), 9u);
    EXPECT_EQ(last().title, "Once more");
    EXPECT_EQ(undoText(), "Add measurement “Once more”");
}

TEST_F(MeasureRoomTest, BothTablesGoToTheClipboardAndOnlyWhatIsUsed) {
    open("mole-light");
    addCount(20, 20.3, 0.2, "Morning");
    addCount(20, 22.3, 0.2, "Evening");
    MeasureRoom& room = measureRoom();
    MeasurementModel& model = room.view().model();
    EXPECT_TRUE(model.setData(model.index(1, MeasurementModel::used), Qt::Unchecked, Qt::CheckStateRole));
    settle(room);
    for (QPushButton* button : room.frame().findChildren<QPushButton*>())
        if (button->text().remove('&') == "Copy") button->click();
    const QString text = QApplication::clipboard()->text();
    EXPECT_TRUE(text.contains("Morning\tStopwatch\t20 flashes\t"));
    EXPECT_FALSE(text.contains("Evening"));
    EXPECT_TRUE(text.contains("Cycle time\t"));
}

TEST_F(MeasureRoomTest, AReadingFollowsTheNameOfItsPart) {
    open("mole-light-measured");
    MeasureRoom& room = measureRoom();
    const auto names = [&](const char* ref) {
        int rows = 0;
        for (int row = 0; row < room.view().model().rowCount(); ++row)
            rows += cell(room, row, MeasurementModel::what).contains(QLatin1String(ref));
        return rows;
    };
    const int before = names("R1");
    ASSERT_GT(before, 0);
    app::Document& document = window->document();
    ASSERT_TRUE(document.apply({circuit::edits::RenamePart{document.circuit().findRef("R1")->id, "RX77"}}));
    EXPECT_EQ(names("R1"), 0);
    EXPECT_EQ(names("RX77"), before);
}

TEST_F(MeasureRoomTest, ADeletedPartTakesItsReadingsAlongAndBringsThemBack) {
    open("mole-light-measured");
    MeasureRoom& room = measureRoom();
    app::Document& document = window->document();
    ASSERT_TRUE(document.apply({circuit::edits::RemovePart{document.circuit().findRef("R1")->id}}));
    EXPECT_EQ(room.view().model().rowCount(), 7);
    document.undoStack().undo();
    EXPECT_EQ(room.view().model().rowCount(), 8);
}

} // namespace
