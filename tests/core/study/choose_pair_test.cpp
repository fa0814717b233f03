// Two lamps: how long each stays lit, and how bright they are beside each other.
#include "core/study/choose.h"
#include "core/study/figures.h"
#include "core/study/proposal.h"
#include "core/study/study.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace blinkwright::study {
namespace {

/// The lamps of the best proposal, by a study of its own.
std::vector<LampReading> lampsOf(const Wish& wish, const Choice& choice) {
    const Study s = study(proposedCircuit(wish, choice), circuit::PartSet::A, {}).value();
    EXPECT_EQ(s.readings.verdict, Verdict::blinks);
    return s.readings.lamps;
}

TEST(ChoosePair, EachLampStaysLitAsLongAsWished) {
    double last = 0;
    for (const double stay : {0.15, 0.3, 0.6}) {
        const Wish wish{.rate_Hz = 0.7, .lit = 0.5, .supply_V = 9, .lamps = 2, .stayLit_s = stay};
        const Choices choices = choose(wish, {});
        ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
        const Choice& best = choices.best.front();
        ASSERT_TRUE(best.scheme.coupledPair);
        EXPECT_GT(*best.coupling_farad, last) << stay;
        last = *best.coupling_farad;
        for (const LampReading& lamp : lampsOf(wish, best)) {
            EXPECT_GE(*lamp.litTime_s, 0.95 * stay) << lamp.ref;
            EXPECT_LE(*lamp.litTime_s, 1.8 * stay + 0.02) << lamp.ref; // E6 is as coarse as 1.5
            EXPECT_NEAR(*lamp.peak_A, wish.lampCurrent_A, 0.25 * wish.lampCurrent_A) << lamp.ref;
        }
    }
}

TEST(ChoosePair, ALampCannotStayLitForLongerThanItsTurn) {
    Wish wish{.rate_Hz = 0.5, .lit = 0.4, .supply_V = 9, .lamps = 2, .stayLit_s = 1};
    const Choices choices = choose(wish, {});
    ASSERT_TRUE(choices.unmet);
    // 0.4 of 2 s.
    EXPECT_NEAR(choices.unmet->stayLit_s.value(), 0.8, 1e-12);
    EXPECT_NE(choices.unmet->reason.find("turn"), std::string::npos);
    wish.stayLit_s = choices.unmet->stayLit_s;
    EXPECT_FALSE(choose(wish, {}).unmet);
}

TEST(ChoosePair, EqualChargesAreNoMatchForLampsOfUnequalIntensity) {
    // A green lamp three times as bright as the red one at the same current: means of 3 to 1 are wanted.
    Wish wish{.rate_Hz = 1, .lit = 0.5, .supply_V = 9, .lamps = 2};
    EXPECT_TRUE(choose(wish, {}).best.front().scheme.coupledPair);
    wish.equalBrightness = true;
    EXPECT_TRUE(choose(wish, {}).best.front().scheme.coupledPair) << "equal charges are equal mean currents";
    wish.intensity_cd = {0.012, 0.036};
    for (const double lit : {0.5, 0.35}) {
        wish.lit = lit;
        const Choices choices = choose(wish, {});
        ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
        const Choice& best = choices.best.front();
        EXPECT_FALSE(best.scheme.coupledPair);
        ASSERT_TRUE(best.r4_ohm);
        const auto lamps = lampsOf(wish, best);
        // Two resistors of E24, each up to 5 % off the value worked out.
        EXPECT_NEAR(wish.intensity_cd[0] * *lamps[0].mean_A / (wish.intensity_cd[1] * *lamps[1].mean_A), 1,
                    0.12)
            << lit;
        EXPECT_LE(std::max(*lamps[0].peak_A, *lamps[1].peak_A), 1.1 * wish.lampCurrent_A);
        EXPECT_NEAR(best.lamps[0].mean_A / *lamps[0].mean_A, 1, 1e-3);
        EXPECT_NEAR(best.lamps[1].mean_A / *lamps[1].mean_A, 1, 1e-3);
    }
}

TEST(ChoosePair, WithoutIntensitiesMeanCurrentsAreMadeEqual) {
    // Lamps of their own resistors, since the coupling capacitor would have to be too large.
    Wish wish{.rate_Hz = 0.05, .lit = 0.3, .supply_V = 9, .lamps = 2, .equalBrightness = true};
    const Choices choices = choose(wish, {});
    ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
    ASSERT_FALSE(choices.best.front().scheme.coupledPair);
    const auto lamps = lampsOf(wish, choices.best.front());
    EXPECT_NEAR(*lamps[0].mean_A / *lamps[1].mean_A, 1, 0.12);
}

} // namespace
} // namespace blinkwright::study
