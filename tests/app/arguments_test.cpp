#include "app/verbs/arguments.h"

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using namespace blinkwright::app::verbs;
using Words = std::vector<std::string>;

constexpr std::string_view file[] = {"FILE"};
const Option options[] = {{"--set", "A|B", ""}, {"--value", "REF.KEY=TEXT", "", true}, {"--even", "", ""}};

Result<Arguments> read(const Words& words) {
    return readArguments(file, options, words);
}

TEST(Arguments, TakeAValueAfterASpaceOrAfterAnEqualsSign) {
    const auto a = read({"x.blinkwright", "--set", "B", "--value=R1.resistance=4k7"});
    ASSERT_TRUE(a);
    EXPECT_EQ(a.value().operands, Words{"x.blinkwright"});
    EXPECT_EQ(a.value().last("--set"), "B");
    EXPECT_EQ(a.value().all("--value"), Words{"R1.resistance=4k7"});
}

TEST(Arguments, KeepRepeatedOptionsInTheirOrder) {
    const auto a = read({"--value", "a=1", "x", "--value", "b=2"});
    ASSERT_TRUE(a);
    EXPECT_EQ(a.value().all("--value"), (Words{"a=1", "b=2"}));
}

TEST(Arguments, TakeWhatFollowsTwoDashesAsNames) {
    const auto a = read({"--", "--set"});
    ASSERT_TRUE(a);
    EXPECT_EQ(a.value().operands, Words{"--set"});
}

TEST(Arguments, RefuseWhatTheyDoNotKnowAndNameIt) {
    const struct {
        Words words;
        const char* said;
    } cases[] = {{{"x", "--sett", "A"}, "there is no option '--sett'"},
                 {{"x", "-q"}, "there is no option '-q'"},
                 {{"x", "--set"}, "--set wants a value: A|B"},
                 {{"x", "--set", "A", "--set", "B"}, "--set is given twice"},
                 {{"x", "--even=1"}, "--even takes no value"},
                 {{}, "FILE is missing; wanted: FILE"},
                 {{"x", "y"}, "'y' is one name too many; wanted: FILE"}};
    for (const auto& c : cases) {
        const auto a = read(c.words);
        ASSERT_FALSE(a) << c.said;
        EXPECT_EQ(a.fault().message(), c.said);
    }
}

TEST(Arguments, AskingForHelpComesBeforeAnyFault) {
    const auto a = read({"--nonsense", "--help"});
    ASSERT_TRUE(a);
    EXPECT_TRUE(a.value().help);
}

TEST(Arguments, WholeNumbersAreRefusedOutsideTheirRangeAndWithTails) {
    EXPECT_EQ(readWhole("--flashes", "6", 1, 10000).value(), 6);
    for (const char* bad : {"0", "10001", "6.5", "6x", "", " 6", "1e2", "99999999999999999999"}) {
        const auto n = readWhole("--flashes", bad, 1, 10000);
        ASSERT_FALSE(n) << bad;
        EXPECT_EQ(n.fault().message(),
                  std::string("--flashes: must be a whole number from 1 to 10000, got '") + bad + "'");
    }
}

TEST(Arguments, NumbersThatAreNotFiniteAreRefused) {
    EXPECT_EQ(readNumber("--accuracy", "1e-6", 1e-10, 1e-2).value(), 1e-6);
    for (const char* bad : {"nan", "inf", "1e-11", "0.02", "1e-6 V", ""})
        EXPECT_FALSE(readNumber("--accuracy", bad, 1e-10, 1e-2)) << bad;
}

} // namespace
