// "Account for it" as people use it.
#include "app/rooms/account_room.h"
#include "core/study/fit.h"
#include "tests/app/rooms/room_fixture.h"
#include "tests/core/study/measured_boards.h"
#include "widgets/rooms/account_tables.h"
#include "widgets/rooms/account_view.h"
#include "widgets/rooms/budget_view.h"
#include "widgets/rooms/retune_row.h"

#include <QClipboard>
#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>

namespace {

using namespace blinkwright;
using namespace blinkwright::test;
using app::AccountRoom;
using circuit::PartSet;

class AccountRoomTest : public RoomTest {
  protected:
    AccountRoom& accountRoom() { return room<AccountRoom>("account"); }
    app::Document& document() { return window->document(); }
    void addMeasurement(circuit::Measurement measurement) {
        circuit::Measurements all = document().circuit().measurements;
        all.push_back(std::make_shared<const circuit::Measurement>(std::move(measurement)));
        ASSERT_TRUE(document().apply({circuit::edits::SetMeasurements{std::move(all)}}));
    }
    void addCount(int flashes, double time_s, double u_s) {
        addMeasurement({"First try", true, circuit::Count{flashes, {time_s, u_s}}, {}});
    }
    /// A record of the open circuit's board with another value in it.
    void addRecord(const char* ref, const char* key, double value) {
        circuit::Circuit other = document().circuit();
        ASSERT_TRUE(
            circuit::apply(other, circuit::setValue(other, PartSet::A, other.findRef(ref)->id, key, value)));
        const auto board = devices::makeBoard(other, PartSet::A).value();
        addMeasurement({"Scope at the bench",
                        true,
                        blinkwright::tests::recordOf(
                            board, {.cycles = 10, .jitter_s = 3e-4, .step_s = 2e-4, .timeBase = 1e-4}, 5),
                        {}});
    }
    void addReading(const char* ref, double value, double u) {
        addMeasurement({"",
                        true,
                        circuit::MeterReading{circuit::MeterQuantity::partValue,
                                              document().circuit().findRef(ref)->id,
                                              "resistance",
                                              {value, u}},
                        {}});
    }
    void settle(AccountRoom& room) {
        ASSERT_TRUE(waitFor([&] { return !room.isBusy(); }));
    }
    QPushButton* button(AccountRoom& room, const char* name) {
        return room.frame().findChild<QPushButton*>(QLatin1String(name));
    }
};

TEST_F(AccountRoomTest, WithoutAMeasurementItSaysHowToBegin) {
    open("mole-light");
    AccountRoom& room = accountRoom();
    EXPECT_TRUE(room.view().isEmptyState());
    EXPECT_FALSE(button(room, "apply")->isEnabled());
    picture(room, "account-nothing-measured");
    // A prediction has its uncertainty all the same.
    room.view().setCurrentWidget(&room.view().budget());
    EXPECT_TRUE(room.view().budget().asText().contains("C1"));
    EXPECT_TRUE(room.view().budget().verdictText().isEmpty());
    picture(room, "account-budget-nothing-measured");
}

TEST_F(AccountRoomTest, ARecordIsExplainedByValuesAndTheyBecomeSetB) {
    open("mole-light");
    addRecord("C1", "capacitance", 11.2e-6);
    addReading("R1", 9.97e3, 8);
    addReading("R2", 68.1e3, 60);
    AccountRoom& room = accountRoom();
    ASSERT_TRUE(room.view().fit() && room.view().fit()->found);
    EXPECT_FALSE(room.view().isEmptyState());
    EXPECT_TRUE(room.frame().message().contains("explain"));
    EXPECT_EQ(room.view().values().rowCount(), static_cast<int>(room.view().fit()->values.size()));
    EXPECT_TRUE(room.view().values().item(0, 0)->text().startsWith("C1"));
    picture(room, "account-mole-light");

    button(room, "apply")->click();
    settle(room);
    const circuit::Circuit& now = document().circuit();
    const double c1 = std::get<double>(*now.value(PartSet::B, now.findRef("C1")->id, "capacitance"));
    EXPECT_NEAR(c1 / 11.2e-6, 1, 0.01);
    EXPECT_EQ(std::get<double>(*now.value(PartSet::A, now.findRef("C1")->id, "capacitance")), 10e-6);
    document().undoStack().undo();
    EXPECT_EQ(std::get<double>(*document().circuit().value(PartSet::B, document().circuit().findRef("R2")->id,
                                                           "resistance")),
              33e3); // the sample's Set B is back
}

TEST_F(AccountRoomTest, ACountAloneIsMetWithADoubtThatNamesTheParts) {
    open("mole-light");
    addCount(20, 21.9, 0.15);
    AccountRoom& room = accountRoom();
    EXPECT_TRUE(room.view().notesText().contains("cannot tell C1 and R2 apart"));
    picture(room, "account-count");
}

TEST_F(AccountRoomTest, TheWantedRateIsAskedInItsUnitAndAnsweredWithAValue) {
    open("mole-light");
    addRecord("C1", "capacitance", 11.4e-6);
    AccountRoom& room = accountRoom();
    auto* wanted = room.frame().findChild<QLineEdit*>("wanted");
    // Before anybody wishes, it is the rate that the circuit was meant for.
    EXPECT_NEAR(wanted->text().toDouble(), 60 * room.view().fit()->figure(study::FitFigure::rate)->before,
                1e-2);
    wanted->setFocus();
    wanted->selectAll();
    QTest::keyClicks(wanted, "60");
    QTest::keyClick(wanted, Qt::Key_Return);
    settle(room);
    EXPECT_NEAR(room.view().retune().rate_Hz(), 1, 1e-12);
    const QString before = room.view().retune().answerText();
    EXPECT_TRUE(before.startsWith("With R2 = ")) << before.toStdString();
    // The same wish in other units asks for the same.
    auto* unit = room.frame().findChild<QComboBox*>("wanted unit");
    unit->setCurrentIndex(2);
    EXPECT_EQ(wanted->text(), "1");
    EXPECT_NEAR(room.view().retune().rate_Hz(), 1, 1e-12);
    // Another part.
    auto* part = room.frame().findChild<QComboBox*>("changed part");
    part->setCurrentIndex(part->findText("C1"));
    emit part->activated(part->currentIndex());
    settle(room);
    EXPECT_TRUE(room.view().retune().answerText().startsWith("With C1 = 10"))
        << room.view().retune().answerText().toStdString();
    // What is no rate is refused and nothing is asked.
    wanted->setFocus();
    wanted->selectAll();
    QTest::keyClicks(wanted, "-3");
    QTest::keyClick(wanted, Qt::Key_Return);
    EXPECT_NEAR(room.view().retune().rate_Hz(), 1, 1e-12);
    QTest::keyClick(wanted, Qt::Key_Escape);
}

TEST_F(AccountRoomTest, TheBudgetSaysWhetherPredictionAndMeasurementAgree) {
    open("mole-light");
    addRecord("C1", "capacitance", 11.2e-6);
    addCount(20, 22.6, 0.15);
    AccountRoom& room = accountRoom();
    widgets::BudgetView& budget = room.view().budget();
    room.view().setCurrentWidget(&budget);
    EXPECT_TRUE(budget.verdictText().contains("agree:")) << budget.verdictText().toStdString();
    picture(room, "account-budget");
    const QString simulated = budget.asText();
    auto* model = room.frame().findChild<QComboBox*>("budget model");
    model->setCurrentIndex(1);
    emit model->activated(1);
    settle(room);
    EXPECT_NE(budget.asText(), simulated);
    button(room, "copy")->click();
    EXPECT_EQ(QApplication::clipboard()->text(), budget.asText());
}

TEST_F(AccountRoomTest, AWrongPartIsDoubted) {
    open("mole-light");
    addRecord("C1", "capacitance", 22e-6);
    AccountRoom& room = accountRoom();
    EXPECT_FALSE(room.view().fit()->agrees);
    EXPECT_TRUE(room.view().notesText().contains("C1 would have to be"));
    picture(room, "account-wrong-part");
}

TEST_F(AccountRoomTest, ANewMeasurementIsAccountedForAtOnce) {
    open("mole-light");
    AccountRoom& room = accountRoom();
    EXPECT_TRUE(room.view().isEmptyState());
    addCount(20, 21.9, 0.15);
    settle(room);
    EXPECT_FALSE(room.view().isEmptyState());
    button(room, "copy")->click();
    EXPECT_TRUE(QApplication::clipboard()->text().contains("Flashes a minute"));
}

TEST_F(AccountRoomTest, AnEmptyHookUpIsAskedNothing) {
    AccountRoom& room = accountRoom();
    EXPECT_TRUE(room.frame().message().contains("add parts"));
    EXPECT_FALSE(button(room, "copy")->isEnabled());
}

} // namespace
