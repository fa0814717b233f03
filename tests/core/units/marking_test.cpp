#include "core/units/marking.h"

#include "core/units/series.h"

#include <gmock/gmock.h>

namespace blinkwright::units {
namespace {

using testing::HasSubstr;

std::string bands(double ohm, double tolerance, std::optional<double> temperature = {}) {
    const auto colours = colourBands(ohm, tolerance, temperature);
    return colours ? bandsText(colours.value()) : colours.fault().message();
}

// IEC 60062:2016, colours of the bands: figure, power of ten, tolerance [%], temperature coefficient
// [1e-6/K]. Grey's tolerance and those below 0.25 % from memory: secondary tables contradict one another.
struct ColourRow {
    const char* colour;
    int digit; ///< -1: none
    int multiplier;
    double tolerance, temperature; ///< 0: none
};
constexpr ColourRow colourTable[] = {
    {"pink", -1, -3, 0, 0},     {"silver", -1, -2, 10, 0},  {"gold", -1, -1, 5, 0},
    {"black", 0, 0, 0, 250},    {"brown", 1, 1, 1, 100},    {"red", 2, 2, 2, 50},
    {"orange", 3, 3, 0.05, 15}, {"yellow", 4, 4, 0.02, 25}, {"green", 5, 5, 0.5, 20},
    {"blue", 6, 6, 0.25, 10},   {"violet", 7, 7, 0.1, 5},   {"grey", 8, 8, 0.01, 1},
    {"white", 9, 9, 0, 0},
};

TEST(ColourBands, MeanWhatTheTableSays) {
    EXPECT_EQ(std::size(colourTable), std::size(allColours));
    for (const ColourRow& row : colourTable) {
        const auto colour = colourNamed(row.colour);
        ASSERT_TRUE(colour) << row.colour;
        EXPECT_EQ(name(*colour), row.colour);
        const ColourMeaning& m = meaning(*colour);
        EXPECT_EQ(m.digit.value_or(-1), row.digit) << row.colour;
        EXPECT_EQ(m.multiplier, row.multiplier) << row.colour;
        EXPECT_NEAR(m.tolerance.value_or(0), row.tolerance / 100, 1e-12) << row.colour;
        EXPECT_NEAR(m.temperature.value_or(0), row.temperature * 1e-6, 1e-15) << row.colour;
    }
    EXPECT_EQ(colourNamed("beige"), std::nullopt);
}

// Worked from the table.
TEST(ColourBands, AreWrittenForCommonValues) {
    EXPECT_EQ(bands(1e3, 0.05), "brown black red gold");
    EXPECT_EQ(bands(4.7e3, 0.01), "yellow violet black brown brown");
    EXPECT_EQ(bands(4.7e5, 0.05), "yellow violet yellow gold");
    EXPECT_EQ(bands(6.8e4, 0.05), "blue grey orange gold");
    EXPECT_EQ(bands(330, 0.05), "orange orange brown gold");
    EXPECT_EQ(bands(33e3, 0.05), "orange orange orange gold");
    EXPECT_EQ(bands(0.47, 0.1), "yellow violet silver silver");
    EXPECT_EQ(bands(4.7, 0.05), "yellow violet gold gold");
    EXPECT_EQ(bands(0.047, 0.05), "yellow violet pink gold");
    EXPECT_EQ(bands(2.2e6, 0.2), "red red green");
    EXPECT_EQ(bands(4.75e3, 0.05), "yellow violet green brown gold"); // two figures do not tell it
    EXPECT_EQ(bands(1e4, 0.01, 50e-6), "brown black black red brown red");
}

TEST(ColourBands, ReadBackToTheSameDouble) {
    for (const auto& [series, count] : {std::pair{Series::E24, 4}, {Series::E96, 5}, {Series::E192, 5}}) {
        for (const double ohm : valuesBetween(series, 1, 9.9e7)) {
            const double tolerance = count == 4 ? 0.05 : 0.01;
            const auto colours = colourBands(count, ohm, tolerance);
            ASSERT_TRUE(colours) << ohm << colours.fault().message();
            ASSERT_EQ(colours.value().size(), static_cast<std::size_t>(count));
            const auto read = readBands(colours.value());
            ASSERT_TRUE(read);
            ASSERT_EQ(read.value().value, ohm);
            ASSERT_EQ(read.value().tolerance, Tolerance::either(tolerance));
        }
    }
}

TEST(ColourBands, OfThreeAndSixAreReadToo) {
    const auto three = readBandsText("red red green");
    ASSERT_TRUE(three);
    EXPECT_EQ(three.value().value, 2.2e6);
    EXPECT_EQ(three.value().tolerance, Tolerance::either(0.2));
    const auto six = readBandsText("brown, black, black, red, violet, orange");
    ASSERT_TRUE(six);
    EXPECT_EQ(six.value().value, 1e4);
    EXPECT_EQ(six.value().tolerance, Tolerance::either(0.001));
    EXPECT_DOUBLE_EQ(six.value().temperature.value_or(0), 15e-6);
}

TEST(ColourBands, RefuseWhatTheyCannotTell) {
    EXPECT_THAT(bands(-5, 0.05), HasSubstr("greater than 0"));
    EXPECT_THAT(bands(47051, 0.05), HasSubstr("more than the 3 figures"));
    EXPECT_THAT(bands(4.7e12, 0.05), HasSubstr("no multiplier band"));
    EXPECT_THAT(bands(4.7e3, 0.07), HasSubstr("no band stands for 7 %"));
    EXPECT_THAT(bands(4.7e3, 0.01, 33e-6), HasSubstr("33 ppm/K"));
    EXPECT_THAT(colourBands(4, 4.75e3, 0.05).fault().message(), HasSubstr("2 figures"));
    EXPECT_THAT(colourBands(3, 4.7e3, 0.05).fault().message(), HasSubstr("20 %"));
    EXPECT_THAT(colourBands(7, 4.7e3, 0.05).fault().message(), HasSubstr("3 to 6"));
    EXPECT_THAT(readBandsText("red red").fault().message(), HasSubstr("3 to 6"));
    EXPECT_EQ(readBandsText("gold red red gold").fault().message(), "band 1: gold stands for no figure");
    EXPECT_EQ(readBandsText("red red red white").fault().message(), "band 4: white stands for no tolerance");
    EXPECT_EQ(readBandsText("red red beige").fault().message(), "band 3: 'beige' is no colour of a band");
    EXPECT_THAT(readBandsText("black black red gold").fault().message(), HasSubstr("not all be 0"));
    EXPECT_THAT(readBandsText("red red red red red white").fault().message(), HasSubstr("coefficient"));
}

// IEC 60062, tolerance letters [%]; those below 0.25 % and the uneven ones from memory.
struct LetterRow {
    char letter;
    double low, high;
};
constexpr LetterRow letterTable[] = {
    {'E', -0.005, 0.005}, {'L', -0.01, 0.01}, {'P', -0.02, 0.02}, {'W', -0.05, 0.05}, {'B', -0.1, 0.1},
    {'C', -0.25, 0.25},   {'D', -0.5, 0.5},   {'F', -1, 1},       {'G', -2, 2},       {'H', -3, 3},
    {'J', -5, 5},         {'K', -10, 10},     {'M', -20, 20},     {'N', -30, 30},     {'Q', -10, 30},
    {'T', -10, 50},       {'S', -20, 50},     {'Z', -20, 80},
};

TEST(ToleranceLetters, MeanWhatTheTableSays) {
    for (const LetterRow& row : letterTable) {
        const Tolerance tolerance{row.low / 100, row.high / 100};
        EXPECT_EQ(toleranceLetter(tolerance), row.letter);
        const auto read = toleranceOf(row.letter);
        ASSERT_TRUE(read) << row.letter;
        EXPECT_NEAR(read->low, tolerance.low, 1e-12);
        EXPECT_NEAR(read->high, tolerance.high, 1e-12);
    }
    EXPECT_EQ(toleranceOf('X'), std::nullopt);
    EXPECT_EQ(toleranceLetter({-0.04, 0.04}), std::nullopt);
}

// IEC 60062: letter and digit codes. Those of capacitors from memory.
struct CodeRow {
    const char* code;
    Unit unit;
    double value;
};
constexpr CodeRow codeTable[] = {
    {"R47", Unit::ohm, 0.47},       {"4R7", Unit::ohm, 4.7},       {"470R", Unit::ohm, 470},
    {"4K7", Unit::ohm, 4.7e3},      {"47K", Unit::ohm, 47e3},      {"47K3", Unit::ohm, 47.3e3},
    {"470K", Unit::ohm, 470e3},     {"4M7", Unit::ohm, 4.7e6},     {"R047", Unit::ohm, 0.047},
    {"p33", Unit::farad, 0.33e-12}, {"3p3", Unit::farad, 3.3e-12}, {"33p", Unit::farad, 33e-12},
    {"330p", Unit::farad, 330e-12}, {"3n3", Unit::farad, 3.3e-9},  {"33n", Unit::farad, 33e-9},
    {"330n", Unit::farad, 330e-9},  {"3µ3", Unit::farad, 3.3e-6},  {"33µ", Unit::farad, 33e-6},
    {"330µ", Unit::farad, 330e-6},  {"3m3", Unit::farad, 3.3e-3},
};

TEST(LetterCodes, AreWrittenAndReadAsTheTableSays) {
    for (const CodeRow& row : codeTable) {
        const auto code = letterCode(row.value, row.unit);
        ASSERT_TRUE(code) << row.code << code.fault().message();
        EXPECT_EQ(code.value(), row.code);
        const auto read = readLetterCode(row.code, row.unit);
        ASSERT_TRUE(read) << row.code << read.fault().message();
        EXPECT_EQ(read.value().value, row.value) << row.code;
        EXPECT_EQ(read.value().tolerance, std::nullopt);
    }
}

TEST(LetterCodes, AreReadInTheirOtherSpellings) {
    EXPECT_EQ(readLetterCode("n33", Unit::farad).value().value, 330e-12);
    EXPECT_EQ(readLetterCode("u33", Unit::farad).value().value, 330e-9);
    EXPECT_EQ(readLetterCode("\u03BC33", Unit::farad).value().value, 330e-9);
    EXPECT_EQ(readLetterCode("m33", Unit::farad).value().value, 330e-6);
    EXPECT_EQ(readLetterCode("4k7", Unit::ohm).value().value, 4700);
}

TEST(LetterCodes, CarryTheLetterOfTheTolerance) {
    EXPECT_EQ(letterCode(4.7e3, Unit::ohm, Tolerance::either(0.05)).value(), "4K7J");
    EXPECT_EQ(readLetterCode("47KK", Unit::ohm).value().tolerance, Tolerance::either(0.1));
    EXPECT_EQ(readLetterCode("33nZ", Unit::farad).value().tolerance, (Tolerance{-0.2, 0.8}));
    // Below 10 pF the letter stands for picofarad: C for 0.25 pF. From memory.
    EXPECT_NEAR(readLetterCode("5p0C", Unit::farad).value().tolerance->high, 0.05, 1e-12);
    EXPECT_EQ(letterCode(5e-12, Unit::farad, Tolerance::either(0.05)).value(), "5pC");
    EXPECT_FALSE(readLetterCode("5p0K", Unit::farad));
}

TEST(LetterCodes, ReadBackToTheSameDouble) {
    for (const double ohm : valuesBetween(Series::E192, 0.1, 9.9e9))
        ASSERT_EQ(readLetterCode(letterCode(ohm, Unit::ohm).value(), Unit::ohm).value().value, ohm);
    for (const double farad : valuesBetween(Series::E24, 1e-12, 9.1e-3))
        ASSERT_EQ(readLetterCode(letterCode(farad, Unit::farad).value(), Unit::farad).value().value, farad);
}

TEST(LetterCodes, RefuseWhatTheyCannotTell) {
    EXPECT_THAT(letterCode(0, Unit::ohm).fault().message(), HasSubstr("greater than 0"));
    EXPECT_THAT(letterCode(47051, Unit::ohm).fault().message(), HasSubstr("more than 4 figures"));
    EXPECT_THAT(letterCode(1e-6, Unit::ohm).fault().message(), HasSubstr("no letter code"));
    EXPECT_THAT(letterCode(4.7e3, Unit::ohm, Tolerance::either(0.04)).fault().message(),
                HasSubstr("-4 % to 4 %"));
    for (const char* bad : {"", "47", "4K", "K", "4Q7", "4K7X", "0R0", "4K7JJ"}) {
        if (std::string_view(bad) == "4K") continue; // 4 kilohm
        EXPECT_FALSE(readLetterCode(bad, Unit::ohm)) << bad;
    }
}

// From memory: two figures and the number of zeros in picofarad; 9 is a tenth, 8 a hundredth.
TEST(CapacitorCodes, AreWrittenAndReadAsTheTableSays) {
    const std::pair<const char*, double> table[] = {
        {"101", 100e-12}, {"102", 1e-9},   {"103", 10e-9},   {"104", 100e-9},   {"105", 1e-6},
        {"473", 47e-9},   {"224", 220e-9}, {"479", 4.7e-12}, {"478", 0.47e-12}, {"470", 47e-12}};
    for (const auto& [code, farad] : table) {
        EXPECT_EQ(capacitorCode(farad).value(), code);
        EXPECT_EQ(readCapacitorCode(code).value().value, farad) << code;
    }
    EXPECT_EQ(capacitorCode(100e-9, Tolerance::either(0.1)).value(), "104K");
    EXPECT_EQ(readCapacitorCode("104K").value().tolerance, Tolerance::either(0.1));
    EXPECT_EQ(capacitorCode(22e-6, Tolerance{-0.2, 0.8}).value(), "226Z");
}

TEST(CapacitorCodes, RefuseWhatTheyCannotTell) {
    EXPECT_THAT(capacitorCode(1.05e-7).fault().message(), HasSubstr("two figures"));
    EXPECT_THAT(capacitorCode(1e-3).fault().message(), HasSubstr("no three-digit code"));
    EXPECT_THAT(capacitorCode(0.05e-12).fault().message(), HasSubstr("no three-digit code"));
    for (const char* bad : {"", "10", "1O4", "104KK", "104X", "004", "10K"})
        EXPECT_FALSE(readCapacitorCode(bad)) << bad;
}

} // namespace
} // namespace blinkwright::units
