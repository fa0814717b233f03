#include "core/study/choose.h"

#include "core/devices/board.h"
#include "core/io/drawer_file.h"
#include "core/study/proposal.h"
#include "core/study/study.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace blinkwright::study {
namespace {

TEST(Choose, ProposesBoardsThatMeetTheWishWhenStudied) {
    const Wish wishes[] = {{.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9},
                           {.rate_Hz = 1, .lit = 0.3, .supply_V = 9, .lampTo = LampTo::ground},
                           {.rate_Hz = 1, .lit = 0.7, .supply_V = 12, .lampTo = LampTo::rail},
                           {.rate_Hz = 2, .lit = 0.6, .supply_V = 5, .cmos = true},
                           {.rate_Hz = 0.7, .lit = 0.5, .supply_V = 9, .lamps = 2},
                           {.rate_Hz = 0.7, .lit = 0.5, .supply_V = 5, .lamps = 2}};
    for (const Wish& wish : wishes) {
        const Choices choices = choose(wish, {});
        ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
        ASSERT_FALSE(choices.best.empty());
        const Choice& best = choices.best.front();
        const circuit::Circuit circuit = proposedCircuit(wish, best);
        const Study s = study(circuit, circuit::PartSet::A, {}).value();
        ASSERT_EQ(s.readings.verdict, Verdict::blinks);
        for (const Finding& finding : s.findings)
            EXPECT_GT(static_cast<int>(finding.severity), static_cast<int>(Severity::overstress))
                << finding.text;
        const Phase phase = *s.readings.timers[0].settled;
        EXPECT_NEAR(phase.rate_Hz() / wish.rate_Hz, 1, 0.02);
        EXPECT_NEAR(best.rate_Hz / phase.rate_Hz(), 1, 1e-4);
        for (const LampReading& lamp : s.readings.lamps) {
            const double lit = *lamp.litTime_s / phase.period_s();
            EXPECT_NEAR(lit, lamp.ref == "D1" ? wish.lit : 1 - wish.lit, 0.02) << lamp.ref;
            EXPECT_NEAR(*lamp.peak_A, wish.lampCurrent_A, 0.2 * wish.lampCurrent_A) << lamp.ref;
        }
        EXPECT_LT(best.rateLow_Hz, best.rate_Hz);
        EXPECT_GT(best.rateHigh_Hz, best.rate_Hz);
        EXPECT_TRUE(units::inSeries(units::Series::E24, best.r1_ohm));
        EXPECT_TRUE(units::inSeries(units::Series::E24, best.r2_ohm));
        EXPECT_TRUE(units::inSeries(units::Series::E6, best.c1_farad));
    }
}

TEST(Choose, TheScreenKeepsWhatBruteForceWouldKeep) {
    // The plain law, every combination, sorted; the screen's corrections vanish for a timer without faults.
    Wish wish{.rate_Hz = 3, .lit = 0.62, .supply_V = 9};
    ScreenLaws laws{};
    laws.supply_V = 9;
    laws.mostResistance_ohm = 1e6;
    const PartValues values{units::valuesBetween(units::Series::E12, 1e3, 1e6),
                            units::valuesBetween(units::Series::E12, 1e3, 1e6),
                            units::valuesBetween(units::Series::E6, 1e-9, 0.9e-6)};
    std::vector<double> misses;
    for (const double r1 : values.r1)
        for (const double r2 : values.r2)
            for (const double c : values.c1) {
                if (r1 + r2 > 1e6) continue;
                const double rate = 1 / (std::log(2) * (r1 + 2 * r2) * c), duty = (r1 + r2) / (r1 + 2 * r2);
                misses.push_back(missOf(wish, rate, duty));
            }
    std::sort(misses.begin(), misses.end());
    std::vector<Candidate> best;
    const std::size_t judged = screen(wish, values, {}, laws, 50, best);
    EXPECT_EQ(judged, misses.size());
    ASSERT_EQ(best.size(), 50u);
    for (std::size_t k = 0; k < best.size(); ++k) EXPECT_NEAR(best[k].miss, misses[k], 1e-9) << k;
}

TEST(Choose, TheFormulaIsNearTheSimulation) {
    const Wish wish{.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9};
    const Screening screening = screenWish(wish, 40);
    for (const Candidate& candidate : screening.best) {
        const auto simulated = simulateCandidates(wish, {candidate}, {});
        ASSERT_EQ(simulated.size(), 1u);
        EXPECT_NEAR(simulated[0].rate_Hz / candidate.rate_Hz, 1, 0.03);
        EXPECT_NEAR(simulated[0].lit, candidate.lit, 0.02);
    }
}

TEST(Choose, LooksAtTheWholeSpaceOfPreferredValues) {
    // E24 from 1 kohm to 6.03 Mohm has 91 members, E6 from 1 nF to 2200 uF 39; two ways to hang the lamp,
    // with and without a diode; pairs whose sum is over 6.03 Mohm are none.
    const Screening screening = screenWish({.rate_Hz = 1, .lit = 0.5, .supply_V = 9}, 200);
    EXPECT_GT(screening.judged, 4u * 39u * 85u * 85u);
    EXPECT_LT(screening.judged, 4u * 39u * 95u * 95u);
    EXPECT_EQ(screening.best.size(), 200u);
}

TEST(Choose, TakesWhatIsInTheDrawerAndNoMoreThanThereIs) {
    const auto drawer =
        io::readDrawer("kind,value,tolerance,rating,quantity\r\n"
                       "resistor,10k,5 %,0.25,1\r\nresistor,68k,0.05,,2\r\nresistor,560,,,5\r\n"
                       "capacitor,10u,0.1,16,1\r\ncapacitor,4.7u,0.2,6,9\r\n");
    ASSERT_TRUE(drawer) << drawer.fault().message();
    Wish wish{.rate_Hz = 0.98, .lit = 0.53, .supply_V = 9};
    wish.drawer = drawer.value();
    const Choices choices = choose(wish, {});
    ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
    for (const Choice& c : choices.best) {
        EXPECT_EQ(c.c1_farad, 10e-6); // the other stands 6 V only
        EXPECT_FALSE(c.r1_ohm == 10e3 && c.r2_ohm == 10e3);
        EXPECT_EQ(c.r3_ohm, 560);
    }
    EXPECT_EQ(choices.best.front().r1_ohm, 10e3);
    EXPECT_EQ(choices.best.front().r2_ohm, 68e3);
    // 10 % of the capacitor and 5 % of the resistors.
    EXPECT_NEAR(choices.best.front().rate_Hz / choices.best.front().rateLow_Hz, 1.1 * 1.05, 0.01);
    wish.rate_Hz = 20;
    const Choices none = choose(wish, {});
    ASSERT_TRUE(none.unmet);
    EXPECT_LT(none.unmet->rate_Hz, 20);
    EXPECT_NE(none.unmet->reason.find("drawer"), std::string::npos);
    wish.drawer =
        std::vector<Stock>{{.kind = Stock::Kind::resistor, .value = 1e4, .tolerance = {}, .rating = {}}};
    EXPECT_EQ(choose(wish, {}).unmet->reason, "The drawer has no capacitor fit for the timing.");
}

TEST(Choose, SaysWhichLimitForbidsAWishAndTheNearestThatCan) {
    const auto unmet = [](const Wish& wish) {
        const Choices choices = choose(wish, {});
        EXPECT_TRUE(choices.unmet);
        EXPECT_TRUE(choices.best.empty());
        return choices.unmet.value_or(Unmet{});
    };
    const Unmet low = unmet({.rate_Hz = 1, .lit = 0.5, .supply_V = 3});
    EXPECT_EQ(low.reason, "A bipolar timer works from 4.5\u00A0V to 16\u00A0V, not from 3\u00A0V.");
    EXPECT_EQ(low.supply_V, 4.5);
    const Unmet fast = unmet({.rate_Hz = 1e7, .lit = 0.5, .supply_V = 9});
    EXPECT_NE(fast.reason.find("too fast"), std::string::npos);
    EXPECT_GT(fast.rate_Hz, 1e5);
    EXPECT_LT(fast.rate_Hz, 1e7);
    const Unmet slow = unmet({.rate_Hz = 1e-4, .lit = 0.5, .supply_V = 9});
    EXPECT_NE(slow.reason.find("too slow"), std::string::npos);
    EXPECT_NE(slow.reason.find("a minute)"), std::string::npos);
    EXPECT_GT(slow.rate_Hz, 1e-4);
    // A white lamp takes 3 V and more at 50 mA, the output 1.4 V and more: nothing of 4.5 V is left.
    Wish bright{.rate_Hz = 1, .lit = 0.5, .supply_V = 4.5, .lampTo = LampTo::ground, .lampCurrent_A = 0.05};
    bright.colours = {"white"};
    const Unmet dark = unmet(bright);
    EXPECT_GT(dark.supply_V, 4.5);
    EXPECT_LT(dark.supply_V, 7);
    bright.supply_V = dark.supply_V;
    EXPECT_FALSE(choose(bright, {}).unmet) << "the nearest wish can be met";
}

TEST(Choose, RanksTheNearestClassFirst) {
    const Wish wish{.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9};
    const Choices choices = choose(wish, {});
    const auto off = [&](const Choice& c) {
        return std::max(std::abs(c.rate_Hz / wish.rate_Hz - 1), litMissOf(wish, c.lit));
    };
    EXPECT_LT(off(choices.best.front()), 0.01);
    EXPECT_LE(choices.best.size(), ChooseRequest{}.keep);
    // Parts come in classes of how near they are; in each, the smaller tolerance band and then the larger
    // stall margin come first, and all of these have the same band.
    const auto classOf = [&](const Choice& c) {
        const double edges[] = {0.005, 0.01, 0.02, 0.05, 0.1};
        return std::ranges::count_if(edges, [&](double edge) { return off(c) > edge; });
    };
    for (std::size_t k = 1; k < choices.best.size(); ++k)
        EXPECT_LE(classOf(choices.best[k - 1]), classOf(choices.best[k])) << k;
    EXPECT_GT(classOf(choices.best.back()), 0);
}

TEST(Choose, CanBeCancelled) {
    const std::atomic<bool> cancel = true;
    ChooseRequest request;
    request.cancel = &cancel;
    EXPECT_TRUE(choose({.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9}, request).cancelled);
}

TEST(Drawer, ComesBackAsItWasWritten) {
    const std::vector<Stock> drawer{
        {.kind = Stock::Kind::resistor, .value = 4700, .tolerance = 0.05, .rating = 0.25, .quantity = 12},
        {.kind = Stock::Kind::capacitor, .value = 1e-5, .tolerance = {}, .rating = 16, .quantity = 0}};
    const std::string text = io::writeDrawer(drawer);
    EXPECT_EQ(
        text,
        "kind,value,tolerance,rating,quantity\r\nresistor,4700,0.05,0.25,12\r\ncapacitor,1e-05,,16,0\r\n");
    const auto back = io::readDrawer(text);
    ASSERT_TRUE(back);
    ASSERT_EQ(back.value().size(), 2u);
    EXPECT_EQ(io::writeDrawer(back.value()), text);
    const auto loose = io::readDrawer("\xEF\xBB\xBFresistor,\"4,7 k\"\n\ncapacitor, 220n , 10% , 63 , 3");
    ASSERT_TRUE(loose) << loose.fault().message();
    EXPECT_EQ(loose.value()[0].value, 4700);
    EXPECT_EQ(loose.value()[0].quantity, 1);
    EXPECT_NEAR(*loose.value()[1].tolerance, 0.1, 1e-12);
}

TEST(Drawer, IsReadWithDecimalCommasAndSemicolonsToo) {
    const auto drawer =
        io::readDrawer("kind;value;tolerance;rating;quantity\r\nresistor;4,7 k;0,05;0,25;12\r\n"
                       "capacitor;2,2e-7;;16;\r\n");
    ASSERT_TRUE(drawer) << drawer.fault().message();
    EXPECT_EQ(io::writeDrawer(drawer.value()), "kind,value,tolerance,rating,quantity\r\n"
                                               "resistor,4700,0.05,0.25,12\r\ncapacitor,2.2e-07,,16,1\r\n");
}

TEST(Drawer, NamesTheLineOfAFault) {
    const auto fault = [](const char* text) {
        const auto drawer = io::readDrawer(text);
        return drawer ? std::string() : drawer.fault().message();
    };
    EXPECT_EQ(fault("resistor,4k7\nbanana,1"),
              "line 2: kind: must be resistor, variable or capacitor, got \"banana\"");
    EXPECT_EQ(fault("resistor,"), "line 1: value: is missing");
    EXPECT_EQ(fault("resistor,-5"), "line 1: value: must be greater than 0, got -5");
    EXPECT_EQ(fault("resistor,4k7,2"), "line 1: tolerance: must be less than 1, got 2");
    EXPECT_EQ(fault("resistor,4k7,,,many"),
              "line 1: quantity: must be a whole number of 0 or more, got \"many\"");
    EXPECT_EQ(fault("resistor,\"4k7"), "line 1: has a quote that does not end");
    EXPECT_NE(fault("resistor,4k7,,,1,2"), "");
    EXPECT_NE(fault("resistor,4q7"), "");
}

} // namespace
} // namespace blinkwright::study
