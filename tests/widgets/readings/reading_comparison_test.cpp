#include "tests/widgets/pictures.h"
#include "widgets/readings/reading_rows.h"
#include "widgets/readings/readings_view.h"

#include <QTableView>
#include <algorithm>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;

namespace {

/// Round figures, so that each difference can be worked out in one's head.
study::Readings readings(double high_s, double low_s, double peak_A) {
    study::Readings r;
    r.verdict = study::Verdict::blinks;
    study::TimerReading t;
    t.ref = "U1";
    t.settled = study::Phase{high_s, low_s};
    r.timers.push_back(t);
    study::LampReading lamp;
    lamp.ref = "D1";
    lamp.peak_A = peak_A;
    lamp.litTime_s = high_s;
    r.lamps.push_back(lamp);
    r.supply.emplace();
    r.supply->ref = "BT1";
    r.supply->mean_A = peak_A / 2;
    return r;
}

std::string plain(QString text) {
    return text.replace(QChar(0xA0), QLatin1Char(' ')).toStdString();
}

const ReadingRow& find(const ReadingTable& table, const char* figure, const char* section = "") {
    QString now;
    for (const ReadingRow& row : table.rows) {
        if (row.heading) now = row.figure;
        if (row.figure == QLatin1String(figure) && now == QLatin1String(section)) return row;
    }
    throw std::runtime_error(figure);
}

TEST(ReadingComparison, GivesBMinusAInUnitsAndPerCentWithItsSign) {
    ReadingTable t = readingTable(readings(0.5, 0.5, 10e-3));
    compareTables(t, readingTable(readings(0.6, 0.2, 8e-3)), "Set B");
    const ReadingRow& cycle = find(t, "Cycle time"); // 1 s and 0.8 s
    EXPECT_EQ(plain(cycle.setA.text), "1.000 s");
    EXPECT_EQ(plain(cycle.second.text), "800.0 ms");
    EXPECT_EQ(plain(cycle.against.text), "−200.0 ms (−20.0 %)");
    EXPECT_EQ(plain(find(t, "Flash rate").against.text), "+0.2500 Hz (+25.0 %)"); // 1.25 Hz against 1 Hz
    EXPECT_EQ(plain(find(t, "Flashes a minute").against.text), "+15.00 (+25.0 %)");
    EXPECT_EQ(plain(find(t, "Pulse width (high)").against.text), "+100.0 ms (+20.0 %)");
    EXPECT_EQ(plain(find(t, "Peak current", "Lamp D1").against.text), "−2.000 mA (−20.0 %)");
    EXPECT_EQ(plain(t.verdict), "Blinks: 60.0 (Set A) and 75.0 (Set B) flashes a minute");
}

TEST(ReadingComparison, GivesTheDifferenceOfSharesInPercentagePoints) {
    ReadingTable t = readingTable(readings(0.5, 0.5, 10e-3));           // 50 %
    compareTables(t, readingTable(readings(0.6, 0.2, 10e-3)), "Set B"); // 75 %
    EXPECT_EQ(plain(find(t, "Duty cycle").against.text), "+25.0 percentage points");
    EXPECT_EQ(plain(find(t, "Share lit", "Lamp D1").against.text), "+25.0 percentage points");
}

TEST(ReadingComparison, CallsWhatIsTheSameNone) {
    ReadingTable t = readingTable(readings(0.5, 0.5, 10e-3));
    compareTables(t, readingTable(readings(0.5, 0.5 * (1 + 1e-6), 10e-3)), "Set B");
    for (const char* figure : {"Cycle time", "Duty cycle"}) EXPECT_EQ(find(t, figure).against.text, "none");
}

TEST(ReadingComparison, MatchesRowsBySectionAndPutsWhatOnlyTheOtherHasLast) {
    study::Readings other = readings(0.5, 0.5, 20e-3);
    other.lamps.push_back(other.lamps[0]);
    other.lamps[0].ref = "D7"; // Set A has D1 alone; the other D7 and D1
    other.lamps[0].peak_A = 1e-3;
    ReadingTable t = readingTable(readings(0.5, 0.5, 10e-3));
    compareTables(t, readingTable(other), "other.blinkwright");
    EXPECT_EQ(plain(find(t, "Peak current", "Lamp D1").second.text), "20.00 mA");
    const ReadingRow& alone = find(t, "Peak current", "Lamp D7");
    EXPECT_EQ(plain(alone.setA.text), "–");
    EXPECT_EQ(alone.setA.why, "There is no such figure of Set A.");
    EXPECT_EQ(plain(alone.second.text), "1.000 mA");
    EXPECT_EQ(plain(alone.against.text), "–");
}

TEST(ReadingComparison, SaysWhyThereIsNoDifference) {
    study::Readings dead = readings(0.5, 0.5, 10e-3);
    dead.verdict = study::Verdict::settlesHigh;
    dead.timers[0].settled.reset();
    ReadingTable t = readingTable(readings(0.5, 0.5, 10e-3));
    compareTables(t, readingTable(dead), "Set B");
    EXPECT_EQ(plain(find(t, "Cycle time").second.text), "–");
    EXPECT_EQ(plain(find(t, "Cycle time").against.text), "–");
    EXPECT_EQ(find(t, "Cycle time").against.why, "The circuit does not blink.");
    EXPECT_EQ(plain(t.verdict), "Set A: Blinks: 60.0 flashes a minute\n"
                                "Set B: Does not blink: the output settles high");
    compareWithNothing(t, "Set B");
    EXPECT_EQ(find(t, "Cycle time").second.why, "There are no readings of Set B.");
}

class ComparedView : public testing::Test {
  protected:
    ComparedView() {
        view.setReadings(std::make_shared<study::Readings>(readings(0.5, 0.5, 10e-3)));
        view.setSecond(std::make_shared<study::Readings>(readings(0.6, 0.2, 8e-3)), "Set B");
    }
    QStringList shownHeads(int width) {
        view.resize(width, 400);
        view.show();
        QApplication::processEvents();
        const auto* table = view.findChild<QTableView*>();
        QStringList heads;
        for (int c = 0; c < table->model()->columnCount(); ++c)
            if (!table->isColumnHidden(c)) heads << table->model()->headerData(c, Qt::Horizontal).toString();
        return heads;
    }
    ReadingsView view;
};

TEST_F(ComparedView, HasTheColumnsOfBothSetsAndDropsTheTextbookWhereItIsNarrow) {
    EXPECT_EQ(shownHeads(760).join(';').toStdString(), "Figure;Textbook;Set A;Set B;Set B − Set A");
    EXPECT_EQ(shownHeads(480).join(';').toStdString(), "Figure;Set A;Set B;Set B − Set A");
    EXPECT_EQ(shownHeads(760).size(), 5);
    view.setSecond(nullptr, {});
    EXPECT_EQ(shownHeads(480).join(';').toStdString(), "Figure;Textbook;Set A;Difference");
}

TEST_F(ComparedView, CutsNoTextShort) {
    for (int width : {500, 760}) {
        shownHeads(width);
        const auto* table = view.findChild<QTableView*>();
        for (int row = 0; row < table->model()->rowCount(); ++row)
            for (int column = 0; column < table->model()->columnCount(); ++column) {
                if (table->columnSpan(row, column) > 1 || table->isColumnHidden(column)) continue;
                const QString text = table->model()->index(row, column).data().toString();
                EXPECT_LE(table->fontMetrics().horizontalAdvance(text) + 6, table->columnWidth(column))
                    << text.toStdString() << " at " << width;
            }
    }
}

TEST_F(ComparedView, CopiesAllColumnsHoweverNarrow) {
    shownHeads(400);
    const QStringList lines = view.asText().split(QLatin1Char('\n'));
    EXPECT_EQ(plain(lines[1]), "Figure\tTextbook\tSet A\tSet B\tSet B − Set A");
    EXPECT_EQ(plain(lines[4]), "Cycle time\t–\t1.000 s\t800.0 ms\t−200.0 ms (−20.0 %)");
}

TEST_F(ComparedView, LooksAsItShould) {
    test::savePictures(view, QStringLiteral("readings-compared"), {640, 400});
}

} // namespace
