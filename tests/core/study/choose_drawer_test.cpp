// What the drawer does to a proposal: which parts it gives, and which of two proposals comes first.
#include "core/study/choose.h"
#include "core/study/proposal.h"
#include "core/study/stock_left.h"
#include "core/study/study.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace blinkwright::study {
namespace {

Stock stock(Stock::Kind kind, double value, long quantity, std::optional<double> rating = {}) {
    return {.kind = kind, .value = value, .tolerance = 0.05, .rating = rating, .quantity = quantity};
}
constexpr auto resistor = Stock::Kind::resistor, capacitor = Stock::Kind::capacitor;

TEST(ChooseDrawer, OfTwoBoardsThatAreAlikeTheOneThatLeavesMoreComesFirst) {
    // R1 and R2 of 100 k; two lots of the same size but for a hundredth of a per cent.
    Wish wish{.rate_Hz = 0.481, .lit = 0.667, .supply_V = 9, .lampTo = LampTo::ground};
    const auto first = [&](long of100, long ofOther) {
        wish.drawer = {stock(resistor, 100e3, of100), stock(resistor, 100.01e3, ofOther),
                       stock(resistor, 560, 50), stock(capacitor, 10e-6, 50)};
        const Choices choices = choose(wish, {});
        EXPECT_FALSE(choices.unmet);
        return choices.best.front();
    };
    EXPECT_EQ(first(20, 4).r2_ohm, 100e3);
    EXPECT_EQ(first(20, 4).r1_ohm, 100e3);
    EXPECT_EQ(first(20, 4).left, 18); // two were taken
    EXPECT_EQ(first(4, 20).r2_ohm, 100.01e3);
    // One of each leaves more than two of one.
    EXPECT_EQ(first(3, 3).left, 2);
    EXPECT_NE(first(3, 3).r1_ohm, first(3, 3).r2_ohm);
}

TEST(ChooseDrawer, APartNeededTwiceNeedsTwo) {
    Wish wish{.rate_Hz = 0.481, .lit = 0.667, .supply_V = 9, .lampTo = LampTo::ground};
    wish.drawer = {stock(resistor, 100e3, 1), stock(resistor, 560, 5), stock(capacitor, 10e-6, 5)};
    EXPECT_TRUE(choose(wish, {}).unmet);
    wish.drawer->front().quantity = 2;
    const Choices choices = choose(wish, {});
    ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
    EXPECT_EQ(choices.best.front().left, 0);
}

TEST(ChooseDrawer, ThePartsBesidesComeFromItToo) {
    Wish wish{.rate_Hz = 0.7, .lit = 0.5, .supply_V = 9, .lamps = 2};
    wish.drawer = {stock(resistor, 1e3, 9),    stock(resistor, 100e3, 9),       stock(resistor, 270, 9),
                   stock(resistor, 8.2e3, 9),  stock(capacitor, 10e-6, 9),      stock(capacitor, 22e-9, 1),
                   stock(capacitor, 47e-6, 1), stock(capacitor, 3300e-6, 1, 16)};
    wish.colours = {"red", "red"};
    const Choices choices = choose(wish, {});
    ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
    const circuit::Circuit circuit = proposedCircuit(wish, choices.best.front());
    const auto value = [&](const char* ref, const char* key) {
        return std::get<double>(*circuit.value(circuit::PartSet::A, circuit.findRef(ref)->id, key));
    };
    EXPECT_EQ(value("C2", "capacitance"), 22e-9);
    EXPECT_EQ(value("C3", "capacitance"), 47e-6);
    EXPECT_EQ(value("C4", "capacitance"), 3300e-6);
    EXPECT_EQ(value("R4", "resistance"), 8.2e3);
    // A capacitor that does not stand the supply is none.
    wish.drawer->back().rating = 6;
    EXPECT_TRUE(choose(wish, {}).unmet);
}

TEST(ChooseDrawer, WithoutAPartForPinFiveOrTheSupplyTheBoardGoesWithout) {
    Wish wish{.rate_Hz = 0.481, .lit = 0.667, .supply_V = 9, .lampTo = LampTo::ground};
    wish.drawer = {stock(resistor, 100e3, 2), stock(resistor, 560, 5), stock(capacitor, 10e-6, 1)};
    const Choices choices = choose(wish, {});
    ASSERT_FALSE(choices.unmet) << choices.unmet->reason;
    const circuit::Circuit circuit = proposedCircuit(wish, choices.best.front());
    EXPECT_FALSE(circuit.findRef("C2"));
    EXPECT_FALSE(circuit.findRef("C3"));
    EXPECT_EQ(study(circuit, circuit::PartSet::A, {}).value().readings.verdict, Verdict::blinks);
}

TEST(ChooseDrawer, SaysWhatTheLampsLack) {
    Wish wish{.rate_Hz = 0.481, .lit = 0.667, .supply_V = 9, .lampTo = LampTo::ground};
    wish.drawer = {stock(resistor, 100e3, 5), stock(resistor, 10, 5), stock(capacitor, 10e-6, 5)};
    EXPECT_NE(choose(wish, {}).unmet->reason.find("for the lamp"), std::string::npos)
        << choose(wish, {}).unmet->reason;
    wish = {.rate_Hz = 0.7, .lit = 0.5, .supply_V = 9, .lamps = 2};
    wish.drawer = {stock(resistor, 1e3, 5), stock(resistor, 100e3, 5), stock(resistor, 270, 5),
                   stock(capacitor, 10e-6, 5)};
    EXPECT_NE(choose(wish, {}).unmet->reason.find("or more for the pair"), std::string::npos)
        << choose(wish, {}).unmet->reason;
}

TEST(ChooseDrawer, TheProposalStatesTheTolerancesOfItsParts) {
    Wish wish{.rate_Hz = 0.481, .lit = 0.667, .supply_V = 9, .lampTo = LampTo::ground};
    wish.drawer = {stock(resistor, 100e3, 2), stock(resistor, 560, 5), stock(capacitor, 10e-6, 1)};
    for (Stock& one : *wish.drawer) one.tolerance = 0.01;
    const circuit::Circuit circuit = proposedCircuit(wish, choose(wish, {}).best.front());
    for (const char* ref : {"R1", "R2", "C1"})
        EXPECT_EQ(
            std::get<double>(*circuit.value(circuit::PartSet::A, circuit.findRef(ref)->id, "tolerance")),
            0.01)
            << ref;
}

TEST(ChooseDrawer, TheNearestIsNearestByRatioAndGoesWhenTaken) {
    Wish wish{.supply_V = 9};
    wish.drawer = {stock(resistor, 100, 1), stock(resistor, 1000, 1)};
    StockLeft left(wish);
    EXPECT_EQ(left.takeNearest(resistor, 320, 10, 1e4), 1000); // 3.125 times up, 3.2 times down
    EXPECT_EQ(left.takeNearest(resistor, 320, 10, 1e4), 100);
    EXPECT_EQ(left.takeNearest(resistor, 320, 10, 1e4), 0);
    EXPECT_EQ(left.fewest(), 0);
    EXPECT_FALSE(StockLeft(Wish{}).fewest());
}

} // namespace
} // namespace blinkwright::study
