// A range of rates, set by a variable resistor.
#include "core/circuit/edit.h"
#include "core/study/choose.h"
#include "core/study/proposal.h"
#include "core/study/range_screening.h"
#include "core/study/study.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace blinkwright::study {
namespace {

/// The settled phase of the proposed circuit with its knob at a setting, by a study of its own.
Phase at(const Wish& wish, const Choice& choice, double setting) {
    circuit::Circuit circuit = proposedCircuit(wish, choice);
    const circuit::PartId knob = circuit.findRef("RV1")->id;
    EXPECT_EQ(circuit.findRef("RV1")->kind, circuit::PartKind::variable);
    EXPECT_TRUE(
        circuit::apply(circuit, circuit::setValue(circuit, circuit::PartSet::A, knob, "setting", setting)));
    const Study s = study(circuit, circuit::PartSet::A, {}).value();
    EXPECT_EQ(s.readings.verdict, Verdict::blinks);
    return s.readings.timers[0].settled.value_or(Phase{});
}

TEST(ChooseRange, BothEndsAreReachedByTheKnob) {
    const Wish wishes[] = {{.rate_Hz = 0.5, .lit = 0.5, .supply_V = 9, .rateTo_Hz = 2},
                           {.rate_Hz = 3, .lit = 0.45, .supply_V = 9, .lampTo = LampTo::rail, .rateTo_Hz = 1},
                           {.rate_Hz = 1, .lit = 0.5, .supply_V = 5, .cmos = true, .rateTo_Hz = 20},
                           {.rate_Hz = 0.6, .lit = 0.5, .supply_V = 9, .lamps = 2, .rateTo_Hz = 1.2}};
    for (const Wish& wish : wishes) {
        const Choices choices = choose(wish, {});
        ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
        for (const Choice& c : {choices.best.front(), choices.best.back()}) {
            const Phase slow = at(wish, c, 1), fast = at(wish, c, 0), middle = at(wish, c, 0.5);
            EXPECT_LE(slow.rate_Hz(), wish.slowest_Hz() * 1.006);
            EXPECT_GE(fast.rate_Hz(), wish.fastest_Hz() * 0.994);
            EXPECT_GT(slow.rate_Hz(), wish.slowest_Hz() / 2.01);
            EXPECT_LT(fast.rate_Hz(), wish.fastest_Hz() * 2.01);
            EXPECT_GT(middle.rate_Hz(), slow.rate_Hz());
            EXPECT_LT(middle.rate_Hz(), fast.rate_Hz());
            EXPECT_NEAR(c.rate_Hz / slow.rate_Hz(), 1, 1e-4);
            EXPECT_NEAR(c.fast->rate_Hz / fast.rate_Hz(), 1, 1e-4);
            EXPECT_LT(c.rateLow_Hz, c.rate_Hz);
            EXPECT_GT(c.rateHigh_Hz, c.fast->rate_Hz);
            // One figure of 1, 2, 5 or 1, 2.2, 4.7.
            const double figure = *c.variable_ohm / std::pow(10, std::floor(std::log10(*c.variable_ohm)));
            EXPECT_TRUE(std::ranges::any_of(std::initializer_list<double>{1, 2, 2.2, 4.7, 5}, [&](double f) {
                return std::abs(f - figure) < 1e-9;
            })) << *c.variable_ohm;
            EXPECT_TRUE(units::inSeries(units::Series::E24, c.r2_ohm));
            EXPECT_GE(c.r2_ohm, 1e3);
        }
    }
}

TEST(ChooseRange, TheLitShareStaysNearTheWishAtBothEnds) {
    const Wish wish{.rate_Hz = 0.5, .lit = 0.5, .supply_V = 9, .rateTo_Hz = 5};
    for (const Choice& c : choose(wish, {}).best) {
        EXPECT_LE(litMissOf(wish, c.lit), litMissOverRange);
        EXPECT_LE(litMissOf(wish, c.fast->lit), litMissOverRange);
    }
}

TEST(ChooseRange, ARangeTooWideSaysSoAndItsNearestCanBeMet) {
    Wish wish{.rate_Hz = 1e-3, .lit = 0.5, .supply_V = 9, .rateTo_Hz = 50};
    const Choices choices = choose(wish, {});
    ASSERT_TRUE(choices.unmet);
    EXPECT_NE(choices.unmet->reason.find("one variable resistor"), std::string::npos)
        << choices.unmet->reason;
    wish.rate_Hz = choices.unmet->rate_Hz;
    wish.rateTo_Hz = choices.unmet->rateTo_Hz.value();
    wish.lit = choices.unmet->lit;
    const Choices nearest = choose(wish, {});
    EXPECT_FALSE(nearest.unmet) << nearest.unmet->reason;
}

TEST(ChooseRange, ALitShareThatOneKnobCannotHoldSaysSoAndItsNearestCanBeMet) {
    Wish wish{.rate_Hz = 0.5, .lit = 0.1, .supply_V = 9, .rateTo_Hz = 5};
    const Choices choices = choose(wish, {});
    ASSERT_TRUE(choices.unmet);
    EXPECT_NE(choices.unmet->reason.find("lit share"), std::string::npos) << choices.unmet->reason;
    wish.rate_Hz = choices.unmet->rate_Hz;
    wish.rateTo_Hz = choices.unmet->rateTo_Hz.value();
    wish.lit = choices.unmet->lit;
    const Choices nearest = choose(wish, {});
    EXPECT_FALSE(nearest.unmet) << nearest.unmet->reason;
}

TEST(ChooseRange, TheKnobComesFromTheDrawer) {
    const auto part = [](Stock::Kind kind, double value, long quantity) {
        return Stock{.kind = kind, .value = value, .tolerance = {}, .rating = {}, .quantity = quantity};
    };
    Wish wish{.rate_Hz = 0.5, .lit = 0.5, .supply_V = 9, .rateTo_Hz = 2};
    wish.drawer = {part(Stock::Kind::resistor, 2200, 9), part(Stock::Kind::resistor, 33e3, 9),
                   part(Stock::Kind::resistor, 560, 9), part(Stock::Kind::capacitor, 10e-6, 9)};
    const Choices none = choose(wish, {});
    ASSERT_TRUE(none.unmet);
    EXPECT_EQ(none.unmet->reason, "The drawer has no variable resistor fit for the timing.");
    // 2.2 k + 2 x 33 k gives 2.1 Hz at 10 uF; 0.5 Hz needs some 110 k more.
    wish.drawer->push_back(part(Stock::Kind::variable, 150e3, 1));
    const Choices found = choose(wish, {});
    ASSERT_FALSE(found.unmet) << found.unmet->reason;
    EXPECT_EQ(found.best.front().variable_ohm, 150e3);
    EXPECT_EQ(found.best.front().left, 0);
}

TEST(ChooseRange, TheVariableValuesAreThoseOfBothHabits) {
    const auto all = preferredVariables();
    EXPECT_TRUE(std::ranges::is_sorted(all));
    EXPECT_EQ(all.front(), 1e3);
    EXPECT_EQ(all.back(), 2.2e6);
    for (const double ohm : {4.7e3, 5e3, 22e3, 100e3, 200e3, 1e6})
        EXPECT_TRUE(std::ranges::binary_search(all, ohm)) << ohm;
}

} // namespace
} // namespace blinkwright::study
