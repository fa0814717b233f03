// Curves cut to a span of time.
#include "core/engine/curves.h"

#include <gtest/gtest.h>

namespace blinkwright::engine {
namespace {

/// A ramp of one volt a second, with a jump of the output at 2 s.
Curves ramp() {
    Curves c;
    c.time_s = {0, 1, 2, 2, 3};
    c.output_V = {5, 5, 5, 0, 0};
    c.capacitor_V = c.upperLevel_V = c.lowerLevel_V = c.time_s;
    c.lamps = {{{7}, "D1", "red", {0.01, 0.01, 0.01, 0, 0}}};
    c.switchings_s = {2};
    return c;
}

TEST(CurvesWithin, KeepTheirPointsAndGetEndsBetweenThem) {
    const Curves part = within(ramp(), 0.5, 2.5);
    EXPECT_EQ(part.time_s, (std::vector{0.5, 1.0, 2.0, 2.0, 2.5}));
    EXPECT_EQ(part.output_V, (std::vector{5.0, 5.0, 5.0, 0.0, 0.0}));
    EXPECT_EQ(part.capacitor_V, part.time_s);
    EXPECT_EQ(part.lamps.at(0).ref, "D1");
    EXPECT_EQ(part.lamps.at(0).current_A.size(), 5u);
    EXPECT_EQ(part.switchings_s, std::vector{2.0});
}

TEST(CurvesWithin, ReachNoFurtherThanTheyDo) {
    EXPECT_EQ(within(ramp(), -1, 9).time_s, ramp().time_s);
    EXPECT_EQ(within(ramp(), 0, 3).output_V, ramp().output_V);
    EXPECT_TRUE(within(ramp(), 4, 5).time_s.empty());
    EXPECT_TRUE(within(Curves(), 0, 1).time_s.empty());
    EXPECT_TRUE(within(ramp(), 0, 1).switchings_s.empty());
}

} // namespace
} // namespace blinkwright::engine
