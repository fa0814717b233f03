#include "core/io/record_file.h"

#include "core/io/circuit_file.h"
#include "core/io/csv_style.h"
#include "core/io/reports.h"
#include "core/study/measured_readings.h"
#include "core/study/record_reduction.h"
#include "core/study/study.h"
#include "core/units/engineering.h"
#include "tests/core/records/made_records.h"
#include "tests/core/reference_circuits.h"

#include "places.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace blinkwright::io {
namespace {

using circuit::TraceOf;
using study::RawRecord;
using testing::HasSubstr;

class RecordFile : public testing::Test {
  protected:
    RecordFile() { std::filesystem::create_directories(folder); }
    ~RecordFile() override { std::filesystem::remove_all(folder); }
    std::string written(std::string_view text) const {
        const std::string path = (folder / "record.csv").string();
        std::ofstream(path, std::ios::binary) << text;
        return path;
    }
    static Result<RawRecord> readAs(const std::string& path) {
        const auto layout = guessLayout(readBeginning(path).value());
        return layout ? readRawRecord(path, layout.value()) : Result<RawRecord>(layout.fault());
    }
    RawRecord read(std::string_view text) const {
        auto raw = readAs(written(text));
        EXPECT_TRUE(raw) << raw.fault().message();
        return raw ? std::move(raw).value() : RawRecord{};
    }
    std::string refusal(std::string_view text, const RecordLayout& layout = plain()) const {
        const auto raw = readRawRecord(written(text), layout);
        return raw ? "accepted" : raw.fault().message();
    }
    /// Time and output behind commas, one line of names.
    static RecordLayout plain() {
        return {.headerLines = 1, .voltages = {{1, 1, TraceOf::output, true}}, .columns = {"time", "output"}};
    }
    const std::filesystem::path folder =
        std::filesystem::temp_directory_path() /
        ("record-file-" + std::to_string(reinterpret_cast<std::uintptr_t>(this)) + "-" +
         std::to_string(getpid()));
};

TEST_F(RecordFile, ColumnsAreReadInTheirUnits) {
    const RawRecord raw = read(
        "t [ms];Output [mV];Timing capacitor [V]\r\n0,0;7500;3,0\r\n+0,5;7,4e3;3,1\r\n1,0;-100;\"3,2\"\r\n");
    EXPECT_THAT(raw.time_s, testing::Pointwise(testing::DoubleEq(), std::vector<double>{0, 0.5e-3, 1e-3}));
    ASSERT_EQ(raw.traces.size(), 2U);
    EXPECT_THAT(raw.traces[0].values_V,
                testing::Pointwise(testing::DoubleEq(), std::vector<double>{7.5, 7.4, -0.1}));
    EXPECT_THAT(raw.traces[1].values_V,
                testing::Pointwise(testing::DoubleEq(), std::vector<double>{3, 3.1, 3.2}));
    EXPECT_EQ(raw.source, "record.csv");
}

TEST_F(RecordFile, AnyLineEndAMarkOfByteOrderAndBlankLinesAreTaken) {
    for (const std::string end : {"\n", "\r\n", "\r"}) {
        const RawRecord raw =
            read("\xEF\xBB\xBFtime,output" + end + "0,1" + end + end + "1,2" + end + "2,1" + end + "3,2");
        EXPECT_EQ(raw.time_s, (std::vector<double>{0, 1, 2, 3})) << int(end[0]);
    }
}

TEST_F(RecordFile, AStatedStepCountsTheRows) {
    const RawRecord raw = read("Rate,100 Hz\noutput\n1\n\n2\nnan\n3\n");
    EXPECT_THAT(raw.time_s, testing::Pointwise(testing::DoubleEq(),
                                               std::vector<double>{0, 0.01, 0.03})); // the gap keeps its time
    EXPECT_EQ(raw.skipped, 1U);
}

TEST_F(RecordFile, GapsAreSkippedAndCounted) {
    std::string text = "time,output\n0,1\n1,\n2,NaN\n3,inf\n4,---\n5\n";
    for (int k = 6; k < 60; ++k) text += std::to_string(k) + ",2\n";
    const RawRecord raw = read(text);
    EXPECT_EQ(raw.skipped, 5U);
    EXPECT_EQ(raw.firstSkipped, 3U);
    EXPECT_EQ(raw.time_s.size(), 55U);
    EXPECT_THAT(refusal("time,output\n0,1\n1,\n2,\n3,1\n4,1\n"),
                HasSubstr("line 3: a number is missing here and in 2 of 5 rows"));
}

TEST_F(RecordFile, ACutLastLineIsSkipped) {
    EXPECT_EQ(read("time,output\n0.10,1\n0.20,2\n0.30,1\n0.40,2\n0.").time_s.size(), 4U);
    EXPECT_EQ(read("time,output\n0.10,1\n0.20,2\n0.30,1\n0.40,2\n0.50,-").time_s.size(), 4U);
    EXPECT_EQ(read("time,output\n0.10,1\n0.20,2\n0.30,1\n0.40,2\n0.50,1e").time_s.size(), 4U);
}

TEST_F(RecordFile, EveryFaultNamesLineAndColumn) {
    EXPECT_EQ(refusal("time,output\n0,1\n1,ok\n"),
              "line 3, column 2: \"ok\" is no number with a decimal point");
    EXPECT_EQ(refusal("time,output\n0,1\n2,1\n1.5,1\n3,1\n"),
              "line 4, column 1: the time 1.5 s lies before the 2 s of the row above");
    EXPECT_EQ(refusal("time,output\n0,1e300\n1,1\n"), "line 2, column 2: \"1e300\" is out of all reason");
    EXPECT_EQ(refusal("time,output\n\x01\x02,1\n1,1\n"),
              "line 2, column 1: \"??\" is no number with a decimal point");
    EXPECT_THAT(refusal("time,output\n" + std::string(70'000, '1') + ",1\n"),
                HasSubstr("line 2: is longer than 64 KiB"));
    EXPECT_THAT(refusal(std::string(2'000'000, '1')), HasSubstr("line 1: is longer than 64 KiB"));
    EXPECT_THAT(refusal("time,output\n"), HasSubstr("no rows of numbers"));
    RecordLayout comma = plain();
    comma.separator = Separator::semicolon;
    comma.decimalMark = ',';
    EXPECT_EQ(refusal("a;b\n0,5;1.5\n", comma),
              "line 2, column 2: \"1.5\" is no number with a decimal comma");
}

TEST_F(RecordFile, WhatIsNoFileIsRefused) {
    EXPECT_THAT(importRecord((folder / "none.csv").string()).fault().message(),
                HasSubstr("there is no such file"));
    EXPECT_THAT(importRecord(folder.string()).fault().message(), HasSubstr("this is a folder"));
    EXPECT_THAT(importRecord(written("")).fault().message(), HasSubstr("the file is empty"));
    const std::string path = written("time,output\n0,1\n1,2\n");
    std::filesystem::resize_file(path, maxRecordBytes + 1); // a hole: takes no room
    EXPECT_THAT(readRawRecord(path, plain()).fault().message(), HasSubstr("larger than 256 MiB"));
}

TEST_F(RecordFile, MoreRowsThanItsLimitAreRefused) {
    const std::string path = written("time,output\n0,1\n1,2\n2,1\n3,2\n");
    EXPECT_TRUE(readRawRecord(path, plain(), {.mostRows = 4}));
    const auto fewer = readRawRecord(path, plain(), {.mostRows = 3});
    ASSERT_FALSE(fewer);
    EXPECT_EQ(fewer.fault().message(), "line 5: more than 3 rows are not supported");
}

TEST_F(RecordFile, TellsHowFarItIsAndCanBeStopped) {
    const std::string path = written("time,output\n0,1\n1,2\n2,1\n");
    std::atomic<double> progress = 0;
    ASSERT_TRUE(readRawRecord(path, plain(), {.progress = &progress}));
    EXPECT_EQ(progress, 1);
    const std::atomic<bool> cancel = true;
    EXPECT_EQ(readRawRecord(path, plain(), {.cancel = &cancel}).fault().text, "cancelled");
}

TEST_F(RecordFile, LinesAcrossBlocksAreWhole) {
    std::string text = "time,output\n";
    double time = 0;
    while (text.size() < 3'500'000)
        text += units::shortest(time += 0.001) + ",0." + std::to_string(text.size()) + "\n";
    const auto raw = readRawRecord(written(text), plain());
    ASSERT_TRUE(raw) << raw.fault().message();
    EXPECT_EQ(raw.value().time_s.back(), time);
    EXPECT_EQ(raw.value().skipped, 0U);
    EXPECT_EQ(static_cast<std::ptrdiff_t>(raw.value().time_s.size()), std::ranges::count(text, '\n') - 1);
}

TEST_F(RecordFile, CurvesThatWereExportedHereComeBackAsTheSameReadings) {
    const Workbench bench = tests::astableWithLamp({}, 470);
    for (const circuit::Begin begin : {circuit::Begin::powerOn, circuit::Begin::settled}) {
        const auto done = study::study(bench.circuit, circuit::PartSet::A, {.flashes = 8, .begin = begin});
        ASSERT_TRUE(done);
        const auto record = importRecord(written(curvesCsv(done.value().curves)));
        ASSERT_TRUE(record) << record.fault().message();
        const double step = record.value().step_s;
        const study::RecordFigures figures = study::figuresOf(record.value());
        const auto& timer = done.value().readings.timers.front();
        EXPECT_NEAR(figures.period_s->value, timer.settled->period_s(), step);
        EXPECT_NEAR(figures.high_s->value, timer.settled->high_s, step);
        EXPECT_NEAR(figures.low_s->value, timer.settled->low_s, step);
        EXPECT_EQ(record.value().fromPowerOn, begin == circuit::Begin::powerOn);
        if (begin == circuit::Begin::powerOn) {
            EXPECT_NEAR(figures.firstHigh_s->value, *timer.firstHigh_s, step);
        }
    }
}

TEST_F(RecordFile, AnExportWithMostOfItsPointsAtTheEdgesKeepsItsLevels) {
    // The points of a simulated trace crowd where it moves: levels are where it is for most of the time.
    const auto sample = readBytes(BLINKWRIGHT_SAMPLES "/mole-light.blinkwright", maxCircuitBytes);
    ASSERT_TRUE(sample);
    const auto circuit = readCircuit(sample.value());
    ASSERT_TRUE(circuit);
    for (const int flashes : {3, 6, 12, 30}) {
        const auto done = study::study(circuit.value(), circuit::PartSet::A, {.flashes = flashes});
        ASSERT_TRUE(done);
        const auto record = importRecord(written(curvesCsv(done.value().curves)));
        ASSERT_TRUE(record) << flashes << " flashes: " << record.fault().message();
        const study::RecordFigures figures = study::figuresOf(record.value());
        const auto& timer = done.value().readings.timers.front();
        EXPECT_NEAR(figures.period_s->value / timer.settled->period_s(), 1, 1e-5);
        EXPECT_NEAR(figures.firstHigh_s->value / *timer.firstHigh_s, 1, 1e-4);
    }
}

TEST_F(RecordFile, AnExportComesBackTheSameWithDecimalPointsAndWithCommas) {
    const Workbench bench = tests::astableWithLamp({}, 470);
    const auto done = study::study(bench.circuit, circuit::PartSet::A, {.flashes = 4});
    ASSERT_TRUE(done);
    const std::string table = curvesCsv(done.value().curves);
    const auto plain = readAs(written(table)), german = readAs(written(inStyle(table, commaCsv)));
    ASSERT_TRUE(plain) << plain.fault().message();
    ASSERT_TRUE(german) << german.fault().message();
    EXPECT_EQ(plain.value().time_s, done.value().curves.time_s);
    EXPECT_EQ(german.value().time_s, plain.value().time_s);
    ASSERT_EQ(german.value().traces.size(), plain.value().traces.size());
    for (std::size_t k = 0; k < plain.value().traces.size(); ++k)
        EXPECT_EQ(german.value().traces[k].values_V, plain.value().traces[k].values_V);
    const auto record = importRecord(written(inStyle(table, commaCsv)));
    ASSERT_TRUE(record) << record.fault().message();
    EXPECT_EQ(record.value().switchings_s, importRecord(written(table)).value().switchings_s);
}

TEST_F(RecordFile, CutOrSpoiledFilesNeverCrashOrHang) {
    const std::string whole =
        "\xEF\xBB\xBFNote;made up\r\nInterval;0,5 ms\r\n\r\n\"t; ms\";out [V];\"cap \"\"x\"\" [mV]\"\r\n"
        "0,0;7,5;3000\r\n0,5;7,4;3100\r\n1,0;0,1;\r\n1,5;0,2;\"3,2e3\"\r\n2,0;7,5;3300\r\n2,5;7,5;nan\r\n";
    int tables = 0;
    for (std::size_t length = 0; length <= whole.size(); ++length)
        tables += importRecord(written(whole.substr(0, length))).ok() +
                  readAs(written(whole.substr(0, length) + ' ')).ok();
    EXPECT_GT(tables, 20);
    const RandomDraws draws(5, 0);
    std::uint64_t draw = 0;
    for (int round = 0; round < 1500; ++round) {
        std::string text = whole;
        const auto changes = 1 + draws.bits(draw++) % 6;
        for (std::uint64_t k = 0; k < changes; ++k) {
            const std::size_t at = draws.bits(draw++) % text.size();
            constexpr std::string_view likely = ",;.\t \n\r\"-e0190nfi";
            const std::uint64_t bits = draws.bits(draw++);
            if (bits % 3 == 0)
                text.erase(at, 1 + bits / 16 % 9);
            else
                text.insert(at, 1,
                            bits % 3 == 1 ? likely[bits / 16 % likely.size()] : static_cast<char>(bits >> 8));
            if (text.empty()) text = ",";
        }
        static_cast<void>(importRecord(written(text)));
    }
    for (int round = 0; round < 300; ++round) {
        std::string bytes(draws.bits(draw++) % 3000, ' ');
        for (char& c : bytes) c = static_cast<char>(draws.bits(draw++));
        static_cast<void>(importRecord(written(bytes)));
    }
}

} // namespace
} // namespace blinkwright::io
