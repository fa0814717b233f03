#include "core/units/engineering.h"

#include "tests/case_names.h"

#include <cmath>
#include <cstdint>
#include <gtest/gtest.h>
#include <limits>
#include <locale>
#include <random>

namespace blinkwright::units {
namespace {

using tests::caseName;

struct Reading {
    std::string_view text;
    Unit unit;
    double value;
};
void PrintTo(const Reading& p, std::ostream* out) {
    *out << '"' << p.text << '"';
}

class ReadsQuantity : public testing::TestWithParam<Reading> {};

TEST_P(ReadsQuantity, AsTheNearestDouble) {
    const Reading& p = GetParam();
    const auto value = parseQuantity(p.text, p.unit);
    ASSERT_TRUE(value) << p.text << ": " << value.fault().message();
    EXPECT_EQ(value.value(), p.value) << p.text;
}

constexpr Reading readings[] = {
    // plain numbers
    {"47", Unit::ohm, 47},
    {"  47  ", Unit::ohm, 47},
    {"+47", Unit::ohm, 47},
    {"-2.5", Unit::volt, -2.5},
    {"\u22122.5 V", Unit::volt, -2.5},
    {".5", Unit::volt, 0.5},
    {",5", Unit::volt, 0.5},
    {"5.", Unit::volt, 5},
    {"0", Unit::farad, 0},
    {"1e-6", Unit::farad, 1e-6},
    {"1E-6", Unit::farad, 1e-6},
    {"1e-6F", Unit::farad, 1e-6},
    {"2.2e3 ohm", Unit::ohm, 2200},
    {"1,5e3", Unit::ohm, 1500},
    // decimal marks: point, comma, prefix, unit letter
    {"4.7k", Unit::ohm, 4700},
    {"4,7 kΩ", Unit::ohm, 4700},
    {"4k7", Unit::ohm, 4700},
    {"4K7", Unit::ohm, 4700},
    {"4k7 Ω", Unit::ohm, 4700},
    {"4k7ohm", Unit::ohm, 4700},
    {"2M2", Unit::ohm, 2.2e6},
    {"4R7", Unit::ohm, 4.7},
    {"R47", Unit::ohm, 0.47},
    {"47R", Unit::ohm, 47},
    {"3V3", Unit::volt, 3.3},
    {"n33", Unit::farad, 0.33e-9},
    {"2n2", Unit::farad, 2.2e-9},
    {"4µ7", Unit::farad, 4.7e-6},
    {"4u7F", Unit::farad, 4.7e-6},
    // the two signs for micro, the two for ohm
    {"10\u00B5", Unit::farad, 1e-5},
    {"10\u03BC", Unit::farad, 1e-5},
    {"10u", Unit::farad, 1e-5},
    {"0,22 \u00B5F", Unit::farad, 2.2e-7},
    {"0.22u", Unit::farad, 2.2e-7},
    {"220n", Unit::farad, 2.2e-7},
    {"100 pF", Unit::farad, 1e-10},
    {"33\u03A9", Unit::ohm, 33},
    {"33 \u2126", Unit::ohm, 33},
    {"33 k\u2126", Unit::ohm, 33000},
    {"47 ohm", Unit::ohm, 47},
    {"47 Ohm", Unit::ohm, 47},
    {"47 ohms", Unit::ohm, 47},
    {"47 kohm", Unit::ohm, 47000},
    // spaces: no-break, thin, narrow no-break, tab
    {"4.7\u00A0kΩ", Unit::ohm, 4700},
    {"4.7\u2009k\u2009Ω", Unit::ohm, 4700},
    {"4.7\u202FkΩ", Unit::ohm, 4700},
    {"\t4.7 k Ω\n", Unit::ohm, 4700},
    {"10 m", Unit::ampere, 0.01},
    // m is milli, M is mega, F is farad and never femto
    {"1M", Unit::ohm, 1e6},
    {"1m", Unit::ohm, 1e-3},
    {"5m", Unit::farad, 5e-3},
    {"5mF", Unit::farad, 5e-3},
    {"1F", Unit::farad, 1},
    {"1f", Unit::farad, 1e-15},
    {"20 mA", Unit::ampere, 0.02},
    {"1.5 GΩ", Unit::ohm, 1.5e9},
    {"500 ns", Unit::second, 5e-7},
    {"2 kHz", Unit::hertz, 2000},
    {"0,25 W", Unit::watt, 0.25},
    {"300 K", Unit::kelvin, 300},
    {"20 mS", Unit::siemens, 0.02},
    {"150 mcd", Unit::candela, 0.15},
    // charge as batteries state it: 1 A h = 3600 C
    {"1 Ah", Unit::coulomb, 3600},
    {"2300 mAh", Unit::coulomb, 8280},
    {"1 A h", Unit::coulomb, 3600},
    {"5 C", Unit::coulomb, 5},
    {"5 %", Unit::none, 0.05},
    {"0,05", Unit::none, 0.05},
};

INSTANTIATE_TEST_SUITE_P(Quantity, ReadsQuantity, testing::ValuesIn(readings),
                         [](const auto& row) { return caseName(row.index, row.param.text); });

struct Refusal {
    std::string_view text;
    Unit unit;
    std::string_view reason; ///< part of it
};
void PrintTo(const Refusal& p, std::ostream* out) {
    *out << '"' << p.text << '"';
}

class RefusesQuantity : public testing::TestWithParam<Refusal> {};

TEST_P(RefusesQuantity, WithItsReason) {
    const Refusal& p = GetParam();
    const auto value = parseQuantity(p.text, p.unit);
    ASSERT_FALSE(value) << p.text << " was read as " << value.value();
    EXPECT_NE(value.fault().text.find(p.reason), std::string::npos) << p.text << ": " << value.fault().text;
}

constexpr Refusal refusals[] = {
    {"", Unit::ohm, "nothing is written; a value in ohm (Ω) is wanted"},
    {" \u00A0\t", Unit::ohm, "nothing is written"},
    {"k", Unit::ohm, "there is no number in 'k'"},
    {"ohm", Unit::ohm, "there is no number"},
    {".", Unit::ohm, "there is no number"},
    {"-", Unit::ohm, "there is no number"},
    {"--5", Unit::ohm, "there is no number"},
    {"nan", Unit::ohm, "there is no number"},
    {"inf", Unit::ohm, "there is no number"},
    {"0x10", Unit::ohm, "'x' is no SI prefix"},
    {"4q7", Unit::ohm, "'q' is no SI prefix"},
    {"4.7q", Unit::ohm, "'q' is no SI prefix or unit that fits"},
    {"4k7k", Unit::ohm, "two prefixes: 'k' and 'k'"},
    {"4k7 kΩ", Unit::ohm, "two prefixes: 'k' and 'k'"},
    {"4.7kk", Unit::ohm, "two prefixes in 'kk'"},
    {"4.7k7", Unit::ohm, "two decimal marks"},
    {"4k7.5", Unit::ohm, "two decimal marks"},
    {"1.234,5", Unit::ohm, "two decimal marks in '1.234,5'"},
    {"1,234.5", Unit::ohm, "two decimal marks"},
    {"1.234.567", Unit::ohm, "two decimal marks"},
    {"4 700", Unit::ohm, "a space inside the number"},
    {"10\u202F000", Unit::ohm, "a space inside the number"},
    {"1e999", Unit::ohm, "'1e999' is too large"},
    {"1e999999999999", Unit::ohm, "is too large"},
    {"1e-999", Unit::ohm, "is too close to 0"},
    {"1e", Unit::ohm, "'e' is no SI prefix"},
    {"1E", Unit::ohm, "'E' is no SI prefix"},
    {"1e-", Unit::ohm, "the power of ten after 'e-' is missing"},
    {"12 V", Unit::ohm, "'V' is volt, but a value in ohm (Ω) is wanted"},
    {"12 mV", Unit::ohm, "'mV' is volt, but a value in ohm (Ω) is wanted"},
    {"10 kΩ", Unit::farad, "is ohm, but a value in farad (F) is wanted"},
    {"5 s", Unit::siemens, "'s' is second, but a value in siemens (S) is wanted"},
    {"5 S", Unit::second, "'S' is siemens, but a value in second (s) is wanted"},
    {"4R7", Unit::farad, "'R' stands for the decimal mark of ohms only"},
    {"5 %", Unit::ohm, "'%' does not fit"},
    {"5 V", Unit::none, "a plain number is wanted"},
    {"10P", Unit::farad, "'P' is no SI prefix; 'p' is one"},
    {"10N", Unit::farad, "'N' is no SI prefix; 'n' is one"},
    {"10U", Unit::farad, "'U' is no SI prefix; 'u' is one"},
    {"4.7$", Unit::ohm, "'$' is no SI prefix or unit"},
    {"4.7\u20AC", Unit::ohm, "the sign '\u20AC' has no meaning"},
    {"4.7\xFF", Unit::ohm, "has no meaning"},
    {"3 ohm 5", Unit::ohm, "has digits in it"},
};

INSTANTIATE_TEST_SUITE_P(Quantity, RefusesQuantity, testing::ValuesIn(refusals),
                         [](const auto& row) { return caseName(row.index, row.param.text); });

TEST(Quantity, RefusesTextsTooLongToBeAValue) {
    EXPECT_FALSE(parseQuantity(std::string(1000, '1'), Unit::ohm));
    std::string blank(101, ' ');
    blank += '1';
    EXPECT_FALSE(parseQuantity(blank, Unit::ohm));
}

struct Comma : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
};

TEST(Quantity, ReadsAndWritesTheSameInEveryLocale) {
    const std::locale before = std::locale::global(std::locale(std::locale::classic(), new Comma));
    const char* named = std::setlocale(LC_ALL, "de_DE.UTF-8"); // where the machine has it
    (void)named;
    const auto value = parseQuantity("4.7k", Unit::ohm);
    const std::string text = formatQuantity(4700, Unit::ohm), number = shortest(0.5);
    std::setlocale(LC_ALL, "C");
    std::locale::global(before);
    ASSERT_TRUE(value);
    EXPECT_EQ(value.value(), 4700);
    EXPECT_EQ(text, "4.7\u00A0kΩ");
    EXPECT_EQ(number, "0.5");
}

TEST(Quantity, NeverCrashesOrYieldsWhatIsNoNumber) {
    std::mt19937 random(20240611);
    constexpr std::string_view pieces[] = {"4",      "7", "0", ".",  ",", "k", "M", "m",    "u", "\u00B5",
                                           "\u03A9", "R", "e", "E",  "-", "+", " ", "F",    "V", "\u00A0",
                                           "ohm",    "%", "9", "99", "h", "A", "x", "\xC2", "Hz"};
    for (int i = 0; i < 20000; ++i) {
        std::string text;
        for (auto n = random() % 9; n > 0; --n) text += pieces[random() % std::size(pieces)];
        for (Unit unit : {Unit::ohm, Unit::farad, Unit::none, Unit::coulomb, Unit::kelvin}) {
            const auto value = parseQuantity(text, unit);
            if (value)
                EXPECT_TRUE(std::isfinite(value.value())) << text;
            else
                EXPECT_FALSE(value.fault().text.empty()) << text;
        }
    }
}

struct Writing {
    double value;
    Unit unit;
    int significant;
    bool keepZeros;
    std::string_view text; ///< with a plain space for the no-break one
};
void PrintTo(const Writing& p, std::ostream* out) {
    *out << '"' << p.text << '"';
}

class WritesQuantity : public testing::TestWithParam<Writing> {};

TEST_P(WritesQuantity, WithPrefixAndUnit) {
    const Writing& p = GetParam();
    std::string expected(p.text);
    if (const auto space = expected.find(' '); space != expected.npos) expected.replace(space, 1, "\u00A0");
    EXPECT_EQ(formatQuantity(p.value, p.unit, p.significant, p.keepZeros), expected);
}

constexpr Writing writings[] = {
    {4700, Unit::ohm, 3, false, "4.7 kΩ"},
    {4700, Unit::ohm, 3, true, "4.70 kΩ"},
    {47, Unit::ohm, 3, false, "47 Ω"},
    {470, Unit::ohm, 3, true, "470 Ω"},
    {2.2e-7, Unit::farad, 3, false, "220 nF"},
    {1e-5, Unit::farad, 3, false, "10 µF"},
    // capacitors are marked in microfarad up to a tenth of a farad: common practice, no source
    {1e-3, Unit::farad, 3, false, "1000 µF"},
    {2.2e-3, Unit::farad, 3, false, "2200 µF"},
    {0.047, Unit::farad, 3, false, "47000 µF"},
    {0.1, Unit::farad, 3, false, "100 mF"},
    {1, Unit::farad, 3, false, "1 F"},
    {0.02, Unit::ampere, 3, false, "20 mA"},
    {-0.0123, Unit::ampere, 3, false, "-12.3 mA"},
    {0, Unit::volt, 3, false, "0 V"},
    {0, Unit::volt, 3, true, "0.00 V"},
    {-0.0, Unit::volt, 3, false, "0 V"},
    {5e-324, Unit::volt, 3, false, "4.94e-324 V"},
    {1e-20, Unit::farad, 3, false, "1e-20 F"},
    {1e18, Unit::ohm, 3, false, "1e18 Ω"},
    {1e-15, Unit::farad, 3, false, "1 fF"},
    {9.99e14, Unit::ohm, 3, false, "999 TΩ"},
    // rounding across the border of a prefix, up and not
    {999.96, Unit::ohm, 4, false, "1 kΩ"},
    {999.94, Unit::ohm, 4, false, "999.9 Ω"},
    {999.96, Unit::ohm, 4, true, "1.000 kΩ"},
    {999.5, Unit::ohm, 3, false, "1 kΩ"},
    {999.4, Unit::ohm, 3, false, "999 Ω"},
    {-999.5, Unit::ohm, 3, false, "-1 kΩ"},
    {0.9999e-6, Unit::farad, 3, false, "1 µF"},
    {9.995, Unit::volt, 3, false, "9.99 V"}, // the double nearest to 9.995 lies below it
    // fewer digits than stand before the point
    {475.6, Unit::ohm, 2, false, "480 Ω"},
    {475.6, Unit::ohm, 1, false, "500 Ω"},
    {123456, Unit::ohm, 6, false, "123.456 kΩ"},
    // no unit: no prefix
    {0.05, Unit::none, 3, false, "0.05"},
    {4700, Unit::none, 3, false, "4700"},
    {0.9996, Unit::none, 3, false, "1"},
    {1e-9, Unit::none, 3, false, "1e-9"},
    {std::numeric_limits<double>::infinity(), Unit::volt, 3, false, "infinite"},
};

INSTANTIATE_TEST_SUITE_P(Quantity, WritesQuantity, testing::ValuesIn(writings),
                         [](const auto& row) { return caseName(row.index, row.param.text); });

TEST(Quantity, SaysWhatIsNoNumber) {
    EXPECT_EQ(formatQuantity(std::nan(""), Unit::volt), "not a number");
    EXPECT_EQ(formatQuantity(-std::numeric_limits<double>::infinity(), Unit::volt), "-infinite");
}

TEST(Quantity, WhatIsWrittenReadsBack) {
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> exponent(-14.9, 14.9), mantissa(1, 10);
    for (int i = 0; i < 5000; ++i) {
        const double value = mantissa(random) * std::pow(10, exponent(random)) * (i % 2 ? 1 : -1);
        if (std::fabs(value) >= 9.9e14) continue;
        for (Unit unit : {Unit::ohm, Unit::farad, Unit::second, Unit::kelvin, Unit::siemens, Unit::none}) {
            const std::string text = formatQuantity(value, unit, 15);
            const auto back = parseQuantity(text, unit);
            ASSERT_TRUE(back) << text << ": " << back.fault().text;
            EXPECT_NEAR(back.value() / value, 1, 1e-14) << text;
        }
    }
}

TEST(Quantity, ThePrefixOfAnAxisIsTheOneTextsHave) {
    EXPECT_EQ(prefixFor(0.02).text, "m");
    EXPECT_EQ(prefixFor(0.02).factor, 1e-3);
    EXPECT_EQ(prefixFor(-4700).text, "k");
    EXPECT_EQ(prefixFor(1000).text, "k");
    EXPECT_EQ(prefixFor(999).text, "");
    EXPECT_EQ(prefixFor(1e-6).text, "µ");
    EXPECT_EQ(prefixFor(0).text, "");
    EXPECT_EQ(prefixFor(std::nan("")).factor, 1);
    EXPECT_EQ(prefixFor(1e-30).text, "f");
    EXPECT_EQ(prefixFor(1e30).text, "T");
}

TEST(Quantity, TheShortestTextReadsBackToTheSameDouble) {
    EXPECT_EQ(shortest(33000), "33000");
    EXPECT_EQ(shortest(1e-5), "1e-05");
    EXPECT_EQ(shortest(0.1), "0.1");
    EXPECT_EQ(shortest(-0.0), "-0.0");
    std::mt19937_64 random(99);
    for (int i = 0; i < 20000; ++i) {
        const double value = std::bit_cast<double>(static_cast<std::uint64_t>(random()));
        if (!std::isfinite(value)) continue;
        EXPECT_EQ(std::strtod(shortest(value).c_str(), nullptr), value);
    }
}

TEST(Quantity, EveryUnitHasASymbolButNone) {
    EXPECT_EQ(symbol(Unit::none), "");
    EXPECT_EQ(symbol(Unit::ohm), "Ω");
    EXPECT_EQ(symbol(Unit::kelvin), "K");
    for (int i = 1; i <= static_cast<int>(Unit::kelvin); ++i)
        EXPECT_FALSE(symbol(static_cast<Unit>(i)).empty()) << i;
}

} // namespace
} // namespace blinkwright::units
