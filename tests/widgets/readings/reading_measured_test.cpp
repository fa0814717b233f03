// What was measured, as columns of the readings.
#include "tests/widgets/pictures.h"
#include "widgets/readings/reading_rows.h"
#include "widgets/readings/readings_view.h"

#include <QTableView>
#include <algorithm>
#include <gtest/gtest.h>

using namespace blinkwright;
using namespace blinkwright::widgets;

namespace {

using Figure = study::MeasuredFigure;

study::Readings readings() {
    study::Readings r;
    r.verdict = study::Verdict::blinks;
    for (const char* ref : {"U1", "U2"}) {
        study::TimerReading t;
        t.ref = ref;
        t.settled = study::Phase{0.6, 0.4};
        r.timers.push_back(t);
    }
    for (std::uint32_t n : {11u, 12u}) {
        study::LampReading lamp;
        lamp.id = {n};
        lamp.ref = "D" + std::to_string(n);
        lamp.peak_A = 12e-3;
        r.lamps.push_back(lamp);
    }
    r.supply.emplace();
    r.supply->ref = "BT1";
    return r;
}

std::vector<study::MeasuredAgainst> measured() {
    return {{Figure::period, {}, "", {1.02, 0.01}, 1.0},
            {Figure::duty, {}, "", {0.615, 0.004}, 0.6},
            {Figure::outputHigh, {}, "", {4.25, 0.05}, 4.3},
            {Figure::supplyVoltage, {}, "", {5.8, 0}, 5.9},
            {Figure::lampCurrent, {12}, "", {11e-3, 1e-4}, std::nullopt},
            {Figure::partValue, {5}, "resistance", {9.9e3, 50}, 10e3}};
}

std::string plain(QString text) {
    return text.replace(QChar(0xA0), QLatin1Char(' ')).toStdString();
}

std::vector<std::string> names(const ReadingTable& table) {
    std::vector<std::string> all;
    for (const ReadingRow& row : table.rows) all.push_back(row.figure.toStdString());
    return all;
}
const ReadingRow& find(const ReadingTable& table, const char* figure, int which = 0) {
    for (const ReadingRow& row : table.rows)
        if (row.figure == QLatin1String(figure) && which-- == 0) return row;
    throw std::runtime_error(figure);
}

TEST(ReadingMeasured, StandsBesideItsFigureOfTheFirstTimer) {
    ReadingTable t = readingTable(readings());
    addMeasured(t, measured());
    EXPECT_EQ(plain(find(t, "Cycle time").measured.text), "1.020 ± 0.010 s");
    EXPECT_EQ(plain(find(t, "Cycle time").off.text), "+2.00 % (2.0 u)");
    EXPECT_EQ(plain(find(t, "Duty cycle").measured.text), "61.50 ± 0.40 %");
    EXPECT_EQ(plain(find(t, "Duty cycle").off.text), "+1.50 points (3.8 u)");
    EXPECT_EQ(find(t, "Cycle time", 1).measured.why, "Not measured.");
    EXPECT_EQ(find(t, "Flash rate").measured.why, "Not measured.");
}

TEST(ReadingMeasured, WhatHasNoRowGetsOneInItsSection) {
    ReadingTable t = readingTable(readings());
    const auto before = names(t);
    addMeasured(t, measured());
    const auto all = names(t);
    EXPECT_EQ(all.size(), before.size() + 3); // a part by itself is no figure of the run
    const auto at = [&](const char* name) { return std::ranges::find(all, name) - all.begin(); };
    EXPECT_EQ(at("Output while high"), at("First flash") + 1);
    EXPECT_GT(at("Current while lit"), at("Lamp D12"));
    EXPECT_LT(at("Current while lit"), at("Supply BT1"));
    EXPECT_EQ(all.back(), "Voltage under load");
    EXPECT_EQ(plain(find(t, "Output while high").setA.text), "4.300 V");
    EXPECT_EQ(plain(find(t, "Output while high").off.text), "−1.16 % (1.0 u)");
    EXPECT_EQ(plain(find(t, "Voltage under load").measured.text), "5.800 V");
    EXPECT_EQ(plain(find(t, "Voltage under load").off.text), "−1.69 %");
    EXPECT_EQ(plain(find(t, "Current while lit").measured.text), "11.00 ± 0.10 mA");
    EXPECT_FALSE(find(t, "Current while lit").off.why.isEmpty());
}

TEST(ReadingMeasured, TheColumnsAreThereOnlyWithAMeasurement) {
    ReadingsView view;
    view.resize(900, 400);
    view.setReadings(std::make_shared<study::Readings>(readings()));
    auto* table = view.findChild<QTableView*>();
    const auto shown = [&] {
        QStringList heads;
        for (int c = 0; c < table->model()->columnCount(); ++c)
            if (!table->isColumnHidden(c))
                heads << table->model()->headerData(c, Qt::Horizontal, Qt::DisplayRole).toString();
        return heads;
    };
    EXPECT_EQ(shown(), (QStringList{"Figure", "Textbook", "Set A", "Difference"}));
    view.setMeasured(measured());
    EXPECT_EQ(shown(),
              (QStringList{"Figure", "Textbook", "Set A", "Difference", "Measured", "Measured − A"}));
    const QString text = view.asText();
    EXPECT_TRUE(text.contains("Measured − A"));
    EXPECT_TRUE(plain(text).find("1.020 ± 0.010 s\t+2.00 % (2.0 u)\n") != std::string::npos) << plain(text);
    const int column = 6; // Measured
    EXPECT_EQ(plain(table->model()->index(3, column).data(Qt::AccessibleTextRole).toString()),
              "Cycle time, Measured: 1.020 ± 0.010 s");
    view.resize(600, 400); // the difference to the textbook makes room, and then the textbook
    view.grab();
    EXPECT_EQ(shown(), (QStringList{"Figure", "Textbook", "Set A", "Measured", "Measured − A"}));
    view.resize(470, 400);
    view.grab();
    EXPECT_EQ(shown(), (QStringList{"Figure", "Set A", "Measured", "Measured − A"}));
    view.setMeasured({});
    view.resize(900, 400);
    view.grab();
    EXPECT_EQ(shown(), (QStringList{"Figure", "Textbook", "Set A", "Difference"}));
}

TEST(ReadingMeasured, SetBKeepsItsPlaceBesideIt) {
    ReadingTable a = readingTable(readings());
    addMeasured(a, measured());
    compareTables(a, readingTable(readings()), "Set B");
    EXPECT_EQ(find(a, "Cycle time").against.text, "none");
    EXPECT_EQ(plain(find(a, "Cycle time").measured.text), "1.020 ± 0.010 s");
    EXPECT_FALSE(find(a, "Output while high").second.why.isEmpty());
}

} // namespace
