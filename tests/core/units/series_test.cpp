#include "core/units/series.h"

#include "core/units/engineering.h"

#include <gmock/gmock.h>

#include <cmath>

namespace blinkwright::units {
namespace {

// IEC 60063:2015, preferred number series for resistors and capacitors: every value of a decade, times 100.
const std::vector<int> e3{100, 220, 470};
const std::vector<int> e6{100, 150, 220, 330, 470, 680};
const std::vector<int> e12{100, 120, 150, 180, 220, 270, 330, 390, 470, 560, 680, 820};
const std::vector<int> e24{100, 110, 120, 130, 150, 160, 180, 200, 220, 240, 270, 300,
                           330, 360, 390, 430, 470, 510, 560, 620, 680, 750, 820, 910};
const std::vector<int> e48{100, 105, 110, 115, 121, 127, 133, 140, 147, 154, 162, 169, 178, 187, 196, 205,
                           215, 226, 237, 249, 261, 274, 287, 301, 316, 332, 348, 365, 383, 402, 422, 442,
                           464, 487, 511, 536, 562, 590, 619, 649, 681, 715, 750, 787, 825, 866, 909, 953};
const std::vector<int> e96{100, 102, 105, 107, 110, 113, 115, 118, 121, 124, 127, 130, 133, 137, 140, 143,
                           147, 150, 154, 158, 162, 165, 169, 174, 178, 182, 187, 191, 196, 200, 205, 210,
                           215, 221, 226, 232, 237, 243, 249, 255, 261, 267, 274, 280, 287, 294, 301, 309,
                           316, 324, 332, 340, 348, 357, 365, 374, 383, 392, 402, 412, 422, 432, 442, 453,
                           464, 475, 487, 499, 511, 523, 536, 549, 562, 576, 590, 604, 619, 634, 649, 665,
                           681, 698, 715, 732, 750, 768, 787, 806, 825, 845, 866, 887, 909, 931, 953, 976};
const std::vector<int> e192{
    100, 101, 102, 104, 105, 106, 107, 109, 110, 111, 113, 114, 115, 117, 118, 120, 121, 123, 124, 126,
    127, 129, 130, 132, 133, 135, 137, 138, 140, 142, 143, 145, 147, 149, 150, 152, 154, 156, 158, 160,
    162, 164, 165, 167, 169, 172, 174, 176, 178, 180, 182, 184, 187, 189, 191, 193, 196, 198, 200, 203,
    205, 208, 210, 213, 215, 218, 221, 223, 226, 229, 232, 234, 237, 240, 243, 246, 249, 252, 255, 258,
    261, 264, 267, 271, 274, 277, 280, 284, 287, 291, 294, 298, 301, 305, 309, 312, 316, 320, 324, 328,
    332, 336, 340, 344, 348, 352, 357, 361, 365, 370, 374, 379, 383, 388, 392, 397, 402, 407, 412, 417,
    422, 427, 432, 437, 442, 448, 453, 459, 464, 470, 475, 481, 487, 493, 499, 505, 511, 517, 523, 530,
    536, 542, 549, 556, 562, 569, 576, 583, 590, 597, 604, 612, 619, 626, 634, 642, 649, 657, 665, 673,
    681, 690, 698, 706, 715, 723, 732, 741, 750, 759, 768, 777, 787, 796, 806, 816, 825, 835, 845, 856,
    866, 876, 887, 898, 909, 920, 931, 942, 953, 965, 976, 988};

struct Table {
    Series series;
    const std::vector<int>& values;
};
const Table tables[] = {{Series::E3, e3},   {Series::E6, e6},   {Series::E12, e12},  {Series::E24, e24},
                        {Series::E48, e48}, {Series::E96, e96}, {Series::E192, e192}};

TEST(Series, HoldTheValuesOfTheStandard) {
    for (const Table& table : tables) {
        const auto values = decade(table.series);
        EXPECT_EQ(std::vector<int>(values.begin(), values.end()), table.values) << name(table.series);
        EXPECT_EQ("E" + std::to_string(table.values.size()), name(table.series));
        EXPECT_EQ(seriesNamed(name(table.series)), table.series);
    }
    EXPECT_EQ(seriesNamed("E25"), std::nullopt);
}

TEST(Series, HoldTheDoubleThatTheTextOfAValueGives) {
    for (const Table& table : tables) {
        std::size_t place = 0;
        for (const double value : valuesBetween(table.series, 1e-12, 0.999e7)) {
            const int exponent = static_cast<int>(place / table.values.size()) - 14;
            const std::string text =
                std::to_string(table.values[place % table.values.size()]) + "e" + std::to_string(exponent);
            ASSERT_EQ(value, parseQuantity(text, Unit::none).value()) << text;
            ++place;
        }
        EXPECT_EQ(place, 19 * table.values.size()) << name(table.series);
    }
}

TEST(Series, NestSoThatEachHasEveryOtherValueOfTheNext) {
    for (const auto& [small, large] :
         {std::pair{&e3, &e6}, {&e6, &e12}, {&e12, &e24}, {&e48, &e96}, {&e96, &e192}})
        for (std::size_t k = 0; k < small->size(); ++k) EXPECT_EQ((*small)[k], (*large)[2 * k]);
    EXPECT_FALSE(inSeries(Series::E96, 4.7e3)); // E24 is no part of E96
    EXPECT_TRUE(inSeries(Series::E24, 4.7e3));
}

// The arithmetic of the tables above: the value itself, its neighbours, and every decade alike.
TEST(Series, GoFromMemberToMember) {
    for (const Table& table : tables) {
        for (std::size_t k = 0; k + 1 < table.values.size(); ++k) {
            const double here = table.values[k] * 100.0, next = table.values[k + 1] * 100.0;
            const Series s = table.series;
            EXPECT_EQ(nextAbove(s, here), next);
            EXPECT_EQ(nextBelow(s, next), here);
            EXPECT_EQ(atLeast(s, here), here);
            EXPECT_EQ(atMost(s, here), here);
            const double between = here + 0.4 * (next - here);
            EXPECT_EQ(nearest(s, between), here);
            EXPECT_EQ(nearest(s, here + 0.6 * (next - here)), next);
            EXPECT_EQ(atLeast(s, between), next);
            EXPECT_EQ(atMost(s, between), here);
            EXPECT_EQ(nextAbove(s, between), next);
            EXPECT_EQ(nextBelow(s, between), here);
        }
    }
}

TEST(Series, GoOnFromDecadeToDecade) {
    EXPECT_EQ(nextAbove(Series::E24, 9.1e3), 1e4);
    EXPECT_EQ(nextBelow(Series::E24, 1e4), 9.1e3);
    EXPECT_EQ(nearest(Series::E3, 0.8), 1.0);
    EXPECT_EQ(nextAbove(Series::E192, 9.88e-9), 1e-8);
    EXPECT_EQ(nearest(Series::E12, 9.7e-7), 1e-6);
}

TEST(Series, TakeTheSmallerOfTwoThatAreAsNear) {
    EXPECT_EQ(nearest(Series::E24, 1.4e3), 1.3e3); // 7.1 % off, the widest gap of E24
}

TEST(Series, TakeANumberThatArithmeticHasBlurredForTheMember) {
    const double blurred = 4.7e3 * (1 + 1e-12);
    EXPECT_TRUE(inSeries(Series::E24, blurred));
    EXPECT_EQ(nextAbove(Series::E24, blurred), 5.1e3);
    EXPECT_EQ(nextBelow(Series::E24, 4.7e3 * (1 - 1e-12)), 4.3e3);
    EXPECT_EQ(atLeast(Series::E24, blurred), 4.7e3);
    EXPECT_FALSE(inSeries(Series::E24, 4.7e3 * (1 + 1e-6)));
    EXPECT_FALSE(inSeries(Series::E24, 0));
}

TEST(Series, ListAllValuesOfARangeWithItsEnds) {
    EXPECT_THAT(valuesBetween(Series::E6, 1e3, 1e4),
                testing::ElementsAre(1e3, 1.5e3, 2.2e3, 3.3e3, 4.7e3, 6.8e3, 1e4));
    EXPECT_THAT(valuesBetween(Series::E3, 1.1e-6, 4.6e-6), testing::ElementsAre(2.2e-6));
    EXPECT_THAT(valuesBetween(Series::E3, 5, 4), testing::IsEmpty());
    EXPECT_THAT(valuesBetween(Series::E3, -1, 0), testing::IsEmpty());
}

// IEC 60063: E6 was made for 20 %, E12 for 10 %, E24 for 5 %, E48 for 2 %, E96 for 1 %; E192 from memory.
TEST(Series, KnowTheToleranceThatTheyWereMadeFor) {
    EXPECT_EQ(nominalTolerance(Series::E6), 0.2);
    EXPECT_EQ(nominalTolerance(Series::E12), 0.1);
    EXPECT_EQ(nominalTolerance(Series::E24), 0.05);
    EXPECT_EQ(nominalTolerance(Series::E48), 0.02);
    EXPECT_EQ(nominalTolerance(Series::E96), 0.01);
    EXPECT_EQ(nominalTolerance(Series::E192), 0.005);
}

} // namespace
} // namespace blinkwright::units
