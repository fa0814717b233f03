#include "core/base/wording.h"
#include "core/units/engineering.h"

#include <gtest/gtest.h>

namespace blinkwright {

namespace {

class WordingTest : public testing::Test {
  protected:
    ~WordingTest() override { wording::setTongue({}); }
};

TEST_F(WordingTest, PartsGoToTheirPlaces) {
    EXPECT_EQ(wording::inWords("from %1 to %2", "C1", std::string("net a")), "from C1 to net a");
    EXPECT_EQ(wording::inWords("%2 of %1, %2 in all", 10, 3), "3 of 10, 3 in all");
}

TEST_F(WordingTest, APartIsNotReadForPlaces) {
    EXPECT_EQ(wording::inWords("%1 and %2", "%2", "b"), "%2 and b");
}

TEST_F(WordingTest, PlacesWithoutAPartAndPerCentsStay) {
    EXPECT_EQ(wording::inWords("5 % of %1, %2, %"), "5 % of %1, %2, %");
    EXPECT_EQ(wording::inWords("100%0 %1", "x"), "100%0 x");
}

TEST_F(WordingTest, ATongueOrdersTheWordsAnew) {
    wording::setTongue({[](std::string_view english) {
                            return english == "from %1 to %2" ? std::string("bis %2 von %1")
                                                              : std::string(english);
                        },
                        ','});
    EXPECT_EQ(wording::inWords("from %1 to %2", "a", "b"), "bis b von a");
    EXPECT_EQ(wording::inWords("unknown %1", 1), "unknown 1");
}

TEST_F(WordingTest, QuantitiesForPeopleTakeItsDecimalSignAndAreReadBack) {
    wording::setTongue({{}, ','});
    const std::string text = units::formatQuantity(4700, units::Unit::ohm);
    EXPECT_EQ(text, "4,7\u00a0k\u03a9");
    EXPECT_EQ(units::parseQuantity(text, units::Unit::ohm).value(), 4700);
    EXPECT_EQ(units::formatQuantity(2e-3, units::Unit::second, 3, true), "2,00\u00a0ms");
    EXPECT_EQ(units::formatQuantity(0.05, units::Unit::none), "0,05");
    EXPECT_EQ(units::shortest(0.05), "0.05"); // for files
}

} // namespace

} // namespace blinkwright
