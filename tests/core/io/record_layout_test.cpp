#include "core/io/record_layout.h"
#include "core/io/record_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace blinkwright::io {
namespace {

using circuit::TraceOf;
using testing::Contains;
using testing::HasSubstr;

RecordLayout guessed(std::string_view text) {
    const auto layout = guessLayout(text);
    EXPECT_TRUE(layout) << layout.fault().message();
    return layout ? layout.value() : RecordLayout{};
}
std::string refusal(std::string_view text) {
    const auto layout = guessLayout(text);
    return layout ? "accepted" : layout.fault().message();
}

TEST(RecordLayout, PlainTableWithUnitsInItsHeader) {
    const RecordLayout layout =
        guessed("time [s],output [V],capacitor [V]\r\n0,7.5,3\r\n0.001,7.5,3.1\r\n0.002,0.1,3.2\r\n");
    EXPECT_EQ(layout.separator, Separator::comma);
    EXPECT_EQ(layout.decimalMark, '.');
    EXPECT_EQ(layout.preambleLines, 0U);
    EXPECT_EQ(layout.headerLines, 1U);
    EXPECT_EQ(layout.timeColumn, 0U);
    EXPECT_EQ(layout.timeUnit_s, 1);
    EXPECT_EQ(layout.voltages,
              (std::vector<VoltageColumn>{{1, 1, TraceOf::output, true}, {2, 1, TraceOf::capacitor, true}}));
    EXPECT_EQ(layout.columns, (std::vector<std::string>{"time [s]", "output [V]", "capacitor [V]"}));
}

TEST(RecordLayout, SemicolonsAndDecimalCommasBelowAPreamble) {
    const RecordLayout layout = guessed("\xEF\xBB\xBFWorkshop recorder\nBoard;mole light\n\nt/ms;Pin 3 "
                                        "(mV);Pin 6 (mV)\n0,0;7500,5;3000\n0,5;7501;3100\n1,0;100;3200\n");
    EXPECT_EQ(layout.separator, Separator::semicolon);
    EXPECT_EQ(layout.decimalMark, ',');
    EXPECT_EQ(layout.preambleLines, 3U);
    EXPECT_EQ(layout.headerLines, 1U);
    EXPECT_EQ(layout.timeUnit_s, 1e-3);
    EXPECT_EQ(layout.voltages, (std::vector<VoltageColumn>{{1, 1e-3, TraceOf::output, true},
                                                           {2, 1e-3, TraceOf::capacitor, true}}));
}

TEST(RecordLayout, TabsAndBlanksWithoutAHeader) {
    for (const bool tab : {true, false}) {
        const std::string s = tab ? "\t" : "   ";
        const RecordLayout layout = guessed("0.0" + s + "7.5\n0.1" + s + "7.4\n0.2" + s + "0.1\n");
        EXPECT_EQ(layout.separator, tab ? Separator::tab : Separator::blanks);
        EXPECT_EQ(layout.headerLines, 0U);
        EXPECT_EQ(layout.timeColumn, 0U);
        EXPECT_EQ(layout.voltages, (std::vector<VoltageColumn>{{1, 1, TraceOf::output, false}}));
    }
    const RecordLayout comma = guessed("0,0 7,5\n0,1 7,4\n0,2 0,1\n");
    EXPECT_EQ(comma.separator, Separator::blanks);
    EXPECT_EQ(comma.decimalMark, ',');
    const RecordLayout named = guessed("time [ms]  output [V]\n0.0  7.5\n0.1  7.4\n0.2  0.1\n");
    EXPECT_EQ(named.headerLines, 1U);
    EXPECT_EQ(named.timeUnit_s, 1e-3);
    EXPECT_TRUE(named.voltages.front().named);
}

TEST(RecordLayout, UnitsOnALineOfTheirOwn) {
    const RecordLayout layout = guessed("Elapsed,Output\n(us),(mV)\n\n0,7500\n10,7400\n20,100\n");
    EXPECT_EQ(layout.headerLines, 2U);
    EXPECT_EQ(layout.preambleLines, 0U);
    EXPECT_EQ(layout.timeUnit_s, 1e-6);
    EXPECT_EQ(layout.voltages.front().unit_V, 1e-3);
}

TEST(RecordLayout, StatedStepInPlaceOfATimeColumn) {
    const RecordLayout layout =
        guessed("Note,made up\nSample interval,0.002 s\noutput [V],capacitor [V]\n7.5,3\n7.5,3.1\n0.1,3.2\n");
    EXPECT_EQ(layout.timeColumn, std::nullopt);
    EXPECT_EQ(layout.step_s, 0.002);
    EXPECT_EQ(layout.preambleLines, 2U);
    EXPECT_EQ(layout.voltages.size(), 2U);
    const RecordLayout counted = guessed("Rate: 500 Hz\nsample,output\n0,7.5\n1,7.5\n2,0.1\n");
    EXPECT_EQ(counted.timeColumn, std::nullopt);
    EXPECT_EQ(counted.step_s, 0.002);
    EXPECT_EQ(counted.voltages, (std::vector<VoltageColumn>{{1, 1, TraceOf::output, true}}));
    const RecordLayout alone = guessed("Time step = 0,5 ms\n3,0\n3,5\n4,0\n");
    EXPECT_EQ(alone.step_s, 5e-4);
    EXPECT_EQ(alone.voltages.size(), 1U);
}

TEST(RecordLayout, AStepStatedInManyWords) {
    const std::pair<const char*, double> lines[] = {
        {"Sample interval,0.001", 1e-3},
        {"Interval [ms]; 0,5", 5e-4},
        {"Sampling period = 20 \xC2\xB5s", 2e-5},
        {"X increment\t1.0E-04", 1e-4},
        {"dt: 2.5 ms", 2.5e-3},
        {"\xCE\x94t = 10 us", 1e-5},
        {"Time step 0.25 s", 0.25},
        {"step: 4 ms", 4e-3},
        {"Sampling rate,2 kHz", 5e-4},
        {"Sample rate: 10 kS/s", 1e-4},
        {"Sample rate: 1 MSa/s", 1e-6},
        {"Rate: 1000 samples/second", 1e-3},
        {"Sampling frequency (Hz): 250", 4e-3},
        {"Interval between samples: 0.5 ms", 5e-4},
    };
    for (const auto& [line, step] : lines) {
        const auto found = stepStatedIn(line, true);
        ASSERT_TRUE(found) << line;
        EXPECT_NEAR(*found, step, 1e-12 * step) << line;
    }
    for (const char* line : {"Vertical increment: 0.1 V", "Step response of the mole light, 3rd try",
                             "Rate of the winch 3", "Interval", "width 5", "Sample interval: 0 s"})
        EXPECT_FALSE(stepStatedIn(line, true)) << line;
}

TEST(RecordLayout, HeaderWordsSayWhatAColumnIs) {
    EXPECT_TRUE(headerWords("Time").isTime);
    EXPECT_TRUE(headerWords("seconds").isTime);
    EXPECT_EQ(headerWords("t (\xC2\xB5s)").second, 1e-6);
    EXPECT_EQ(headerWords("time_ms").second, 1e-3);
    EXPECT_FALSE(headerWords("Channel A").isOther);
    EXPECT_TRUE(headerWords("D1 current [A]").isOther);
    EXPECT_EQ(headerWords("Volt").volt, 1);
    EXPECT_EQ(headerWords("Timing capacitor [V]").of, TraceOf::capacitor);
    EXPECT_FALSE(headerWords("Timing capacitor [V]").isTime);
    EXPECT_EQ(headerWords("PIN 3").of, TraceOf::output);
    EXPECT_FALSE(headerWords("").isTime);
}

TEST(RecordLayout, ColumnsOfTextAndOfOtherUnitsArePassedOver) {
    const RecordLayout layout = guessed("clock,time [s],D1 current [A],output "
                                        "[V]\n12:00:01,0,0.01,7.5\n12:00:02,1,0.01,7.5\n12:00:03,2,0,0.1\n");
    EXPECT_EQ(layout.timeColumn, 1U);
    ASSERT_EQ(layout.voltages.size(), 1U);
    EXPECT_EQ(layout.voltages.front().column, 3U);
}

TEST(RecordLayout, QuotedCellsAndTrailingSeparators) {
    const RecordLayout quoted =
        guessed("\"time, s\",\"output \"\"A\"\"\"\n\"0,0\",\"7,5\"\n\"0,1\",\"7,4\"\n\"0,2\",\"0,1\"\n");
    EXPECT_EQ(quoted.separator, Separator::comma);
    EXPECT_EQ(quoted.decimalMark, ',');
    EXPECT_EQ(quoted.columns[1], "output \"A\"");
    const RecordLayout trailing = guessed("time,output,\n0,7.5,\n0.1,7.5,\n0.2,0.1,\n");
    EXPECT_EQ(trailing.headerLines, 1U);
    EXPECT_EQ(trailing.voltages.size(), 1U);
}

TEST(RecordLayout, WhatIsNoTableIsRefused) {
    EXPECT_THAT(refusal(""), HasSubstr("no rows of numbers"));
    EXPECT_THAT(refusal("Dear harbour master,\nthe light is out.\n"), HasSubstr("no rows of numbers"));
    EXPECT_THAT(refusal(std::string_view("1,2\n\0,4\n", 8)), HasSubstr("no text file"));
    EXPECT_THAT(refusal("\xFF\xFE"
                        "1\n"),
                HasSubstr("UTF-16"));
    EXPECT_THAT(refusal("output\n7.5\n7.4\n0.1\n0.1\n7.4\n"),
                HasSubstr("neither a column of times nor a time step"));
}

TEST(RecordLayout, SaysWhatItTookForWhat) {
    const auto said = saidOf(guessed("Note;x\ntime [ms];a\n0,5;7,5\n1,0;7,4\n1,5;0,1\n"));
    EXPECT_THAT(said, Contains("Between two columns stands a semicolon, the decimal mark is a comma."));
    EXPECT_THAT(said, Contains("Line 1 above the table is passed over."));
    EXPECT_THAT(said, Contains("Line 2 names the columns."));
    EXPECT_THAT(said, Contains("Column 1 (\u201Ctime [ms]\u201D) is the time, in ms."));
    EXPECT_THAT(said,
                Contains("Column 2 (\u201Ca\u201D) is the output, in V, unless its shape says otherwise."));
}

TEST(RecordLayout, TheCutLastLineOfABeginningIsNoRow) {
    std::string text = "time,output\n";
    while (text.size() < layoutBytes) text += std::to_string(text.size()) + ".5,0.5\n";
    text.resize(layoutBytes);
    EXPECT_EQ(guessed(text).headerLines, 1U);
}

} // namespace
} // namespace blinkwright::io
