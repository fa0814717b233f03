#include "widgets/readings/readings_view.h"

#include "tests/widgets/pictures.h"
#include "widgets/readings/reading_rows.h"

#include <QLabel>
#include <QSignalSpy>
#include <QTableView>
#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;

namespace {

/// A mole light: textbook from ln 2 with R1 10 kΩ, R2 68 kΩ, C 10 µF, the rest round about what a run gives.
study::Readings moleLight() {
    study::Readings r;
    r.verdict = study::Verdict::blinks;
    study::TimerReading t;
    t.ref = "U1";
    t.textbook.emplace();
    t.textbook->phase = {std::log(2.0) * 78e3 * 10e-6, std::log(2.0) * 68e3 * 10e-6};
    t.textbook->firstHigh_s = std::log(3.0) * 78e3 * 10e-6;
    t.settled = study::Phase{0.5623, 0.4789};
    t.firstHigh_s = 0.8786;
    r.timers.push_back(t);
    study::LampReading lamp;
    lamp.ref = "D1";
    lamp.peak_A = 0.009134;
    lamp.mean_A = 0.00489;
    lamp.rms_A = 0.0066;
    lamp.charge_C = 0.00509;
    lamp.litTime_s = 0.5623;
    r.lamps.push_back(lamp);
    r.supply.emplace();
    r.supply->ref = "BT1";
    r.supply->mean_A = 0.0081;
    r.supply->peak_A = 0.0213;
    r.supply->energy_J = 0.0506;
    r.supply->batteryLife_s = 8280 / 0.0081;
    return r;
}

const ReadingRow* find(const ReadingTable& table, const char* figure) {
    for (const ReadingRow& row : table.rows)
        if (row.figure == QLatin1String(figure)) return &row;
    ADD_FAILURE() << "no row " << figure;
    return nullptr;
}
std::string plain(QString text) {
    return text.replace(QChar(0xA0), QLatin1Char(' ')).toStdString();
}

TEST(ReadingRows, GiveFourDigitsWithUnitAndTheDifferenceInPerCent) {
    const ReadingTable t = readingTable(moleLight());
    const ReadingRow* cycle = find(t, "Cycle time");
    EXPECT_EQ(plain(cycle->textbook.text), "1.012 s"); // ln 2 x (78 k + 68 k) x 10 u
    EXPECT_EQ(plain(cycle->setA.text), "1.041 s");
    EXPECT_EQ(plain(cycle->difference.text), "+2.89 %"); // 1.0412 / 1.011995
    EXPECT_EQ(plain(find(t, "Flash rate")->setA.text), "0.9604 Hz");
    EXPECT_EQ(plain(find(t, "Flashes a minute")->setA.text), "57.63");
    EXPECT_EQ(plain(find(t, "Duty cycle")->textbook.text), "53.42 %");   // 78 / 146
    EXPECT_EQ(plain(find(t, "First flash")->textbook.text), "856.9 ms"); // ln 3 x 0.78 s
    EXPECT_EQ(plain(find(t, "Share lit")->setA.text), "54.00 %");
    EXPECT_EQ(plain(find(t, "Charge a flash")->setA.text), "5.090 mC");
    EXPECT_EQ(plain(find(t, "Battery life")->setA.text), "11.8 d"); // 2.3 A h at 8.1 mA
    EXPECT_EQ(plain(t.verdict), "Blinks: 57.6 flashes a minute");
}

TEST(ReadingRows, GiveLongTimesInSecondsAsTheAxisDoes) {
    study::Readings r = moleLight();
    for (const auto& [high_s, text] : {std::pair{2969.0, "2969 s"},
                                       {12345.0, "12345 s"},
                                       {999.96, "1000 s"},
                                       {999.9, "999.9 s"},
                                       {0.4, "400.0 ms"}}) {
        r.timers[0].settled = study::Phase{high_s, 1.0};
        EXPECT_EQ(plain(find(readingTable(r), "Pulse width (high)")->setA.text), text);
    }
}

TEST(ReadingRows, SayWhyAFigureIsMissing) {
    study::Readings r = moleLight();
    r.timers[0].textbook.reset();
    r.supply->batteryLife_s.reset();
    const ReadingTable t = readingTable(r);
    EXPECT_EQ(find(t, "Cycle time")->textbook.text, QString::fromUtf8("–"));
    EXPECT_FALSE(find(t, "Cycle time")->textbook.why.isEmpty());
    EXPECT_EQ(find(t, "Cycle time")->difference.text, QString::fromUtf8("–"));
    EXPECT_EQ(find(t, "Battery life")->setA.why, QStringLiteral("The supply states no capacity."));
    for (const ReadingRow& row : t.rows)
        for (const ReadingCell* cell : {&row.textbook, &row.setA, &row.difference})
            EXPECT_EQ(cell->text == QString::fromUtf8("–"), !cell->why.isEmpty()) << row.figure.toStdString();
}

TEST(ReadingRows, GiveTheReasonsOfACircuitThatDoesNotBlink) {
    study::Readings r = moleLight();
    r.verdict = study::Verdict::settlesLow;
    r.timers[0].settled.reset();
    r.reasons = {"Pin 4 is held low. Join it to the supply."};
    const ReadingTable t = readingTable(r);
    EXPECT_TRUE(t.verdict.startsWith(QStringLiteral("Does not blink: the output settles low")));
    EXPECT_TRUE(t.verdict.endsWith(QStringLiteral("Join it to the supply.")));
    EXPECT_EQ(find(t, "Flash rate")->setA.text, QString::fromUtf8("–"));
}

TEST(ReadingRows, NameTheTimersOnlyWhereThereAreSeveral) {
    study::Readings r = moleLight();
    const auto headings = [](const ReadingTable& t) {
        return std::count_if(t.rows.begin(), t.rows.end(), [](const ReadingRow& row) {
            return row.heading && row.figure.startsWith(QStringLiteral("Timer"));
        });
    };
    EXPECT_EQ(headings(readingTable(r)), 0);
    r.timers.push_back(r.timers[0]);
    EXPECT_EQ(headings(readingTable(r)), 2);
}

TEST(ReadingRows, WriteStretchesOfTimeInOrdinaryUnits) {
    EXPECT_EQ(plain(durationText(45.2)), "45.2 s");
    EXPECT_EQ(plain(durationText(750)), "12.5 min");
    EXPECT_EQ(plain(durationText(33300)), "9.25 h");
    EXPECT_EQ(plain(durationText(86400 * 33.8)), "33.8 d");
}

TEST(ReadingsView, ChangesOnlyTheCellsWhoseTextChanged) {
    ReadingsView view;
    auto first = std::make_shared<study::Readings>(moleLight());
    view.setReadings(first);
    QAbstractItemModel* model = view.findChild<QTableView*>()->model();
    QSignalSpy changed(model, &QAbstractItemModel::dataChanged),
        reset(model, &QAbstractItemModel::modelReset);
    view.setReadings(std::make_shared<study::Readings>(moleLight()));
    EXPECT_EQ(changed.size(), 0);
    auto second = std::make_shared<study::Readings>(moleLight());
    second->lamps[0].peak_A = 0.0095;
    view.setReadings(second);
    EXPECT_EQ(changed.size(), 1);
    EXPECT_EQ(reset.size(), 0);
    view.setReadings(nullptr);
    EXPECT_EQ(model->rowCount(), 0);
}

TEST(ReadingsView, CopiesAsATabSeparatedTable) {
    ReadingsView view;
    view.setReadings(std::make_shared<study::Readings>(moleLight()));
    const QStringList lines = view.asText().split(QLatin1Char('\n'));
    EXPECT_EQ(plain(lines[0]), "Blinks: 57.6 flashes a minute");
    EXPECT_EQ(plain(lines[1]), "Figure\tTextbook\tSet A\tDifference");
    EXPECT_EQ(plain(lines[4]), "Cycle time\t1.012 s\t1.041 s\t+2.89 %");
}

TEST(ReadingsView, CutsNoTextShortInANarrowPanel) {
    ReadingsView view;
    view.setReadings(std::make_shared<study::Readings>(moleLight()));
    view.resize(480, 500);
    view.show();
    QApplication::processEvents();
    auto* table = view.findChild<QTableView*>();
    for (int row = 0; row < table->model()->rowCount(); ++row)
        for (int column = 0; column < table->model()->columnCount(); ++column) {
            const QModelIndex index = table->model()->index(row, column);
            if (table->columnSpan(row, column) > 1 || table->isColumnHidden(column)) continue;
            EXPECT_LE(table->fontMetrics().horizontalAdvance(index.data().toString()) + 6,
                      table->columnWidth(column))
                << index.data().toString().toStdString();
        }
}

TEST(ReadingsView, LooksAsItShould) {
    ReadingsView view;
    view.setReadings(std::make_shared<study::Readings>(moleLight()));
    test::savePictures(view, QStringLiteral("readings"), {480, 500});
}

} // namespace
