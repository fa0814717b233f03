// Retuning a board that is known from measurements.
#include "core/study/retune.h"

#include "tests/core/study/measured_boards.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace blinkwright::study {
namespace {

using circuit::PartSet;
using tests::fitted;
using tests::measure;
using tests::recordOf;

constexpr tests::Instrument scope{.cycles = 12, .jitter_s = 2e-4, .step_s = 1e-4, .timeBase = 1e-4};

/// A light that was meant to flash 60 times a minute and flashes slower, for its capacitor is large.
struct Slow {
    Workbench bench = tests::astableWithLamp({.supply_V = 6}, 270);
    Workbench real = bench;
    FitOutcome fit;
    Slow() {
        real.set("C1.capacitance=11.4u");
        measure(bench.circuit, recordOf(real.board(), scope, 3));
        fit = study::fit(bench.circuit, PartSet::A, {}).value();
    }
    double rateWith(const char* text) {
        Workbench changed = real;
        changed.set(text);
        return 1 / engine::settle(changed.board(), {}).period_s;
    }
};

TEST(Retune, TheNearestValueOfTheSeriesIsFoundWithTheRateToExpect) {
    Slow slow;
    const Retuning r = retune(slow.fit, {.rate_Hz = 1, .ref = "R2", .series = units::Series::E24});
    ASSERT_FALSE(r.proposals.empty()) << r.reason;
    const RetuneProposal& best = r.proposals.front();
    // The truth, value by value: no value of E24 comes nearer on the real board.
    double nearest = 0;
    for (const double value : units::valuesBetween(units::Series::E24, 30e3, 120e3)) {
        const double off =
            std::abs(std::log(slow.rateWith(("R2.resistance=" + std::to_string(value)).c_str())));
        if (nearest == 0 ||
            off < std::abs(std::log(slow.rateWith(("R2.resistance=" + std::to_string(nearest)).c_str()))))
            nearest = value;
    }
    EXPECT_EQ(best.value, nearest);
    const double rate = slow.rateWith(("R2.resistance=" + std::to_string(best.value)).c_str());
    EXPECT_NEAR(best.rate_Hz.value, rate, 2 * best.rate_Hz.uncertainty);
    EXPECT_TRUE(std::ranges::is_sorted(
        r.proposals, {}, [](const RetuneProposal& p) { return std::abs(std::log(p.rate_Hz.value)); }));
    // The exact value gives the rate exactly, on the fitted board.
    std::vector<double> values;
    for (const FittedValue& v : slow.fit.values) values.push_back(v.ref == "R2" ? r.exact : v.value);
    EXPECT_NEAR(engine::settle(slow.fit.unknowns->boardAt(values), {}).period_s, 1, 1e-5);
}

// R1 and C1 as they were found, with a new R2 of 1 %: T goes as (R1 + 2 R2) C, so that the new resistor gives
// about 0.93 x 1 %/sqrt 3, and the capacitor what the old resistor left open.
TEST(Retune, TheNewPartsOwnToleranceAndTheFitMakeTheUncertainty) {
    Slow slow;
    RetuneRequest request{.rate_Hz = 1, .ref = "R2", .series = units::Series::E96};
    request.tolerance = 0.01;
    const RetuneProposal fine = retune(slow.fit, request).proposals.front();
    request.tolerance = 0.1;
    const RetuneProposal coarse = retune(slow.fit, request).proposals.front();
    EXPECT_EQ(fine.value, coarse.value);
    const FittedValue& c1 = fitted(slow.fit, "C1.capacitance");
    const double rest = c1.uncertainty / c1.value; // R1 adds next to nothing
    const auto expected = [&](double tolerance) {
        return std::hypot(rest, 0.93 * tolerance / std::sqrt(3.0));
    };
    EXPECT_NEAR(fine.rate_Hz.uncertainty / fine.rate_Hz.value / expected(0.01), 1, 0.05);
    EXPECT_NEAR(coarse.rate_Hz.uncertainty / coarse.rate_Hz.value / expected(0.1), 1, 0.05);
}

// A resistor that is kept shares its error with the capacitor that was found through it: together they are
// known as well as the rate was measured, so that only the new R1 is uncertain.
TEST(Retune, WhatStaysOnTheBoardIsKnownTogetherBetterThanPartByPart) {
    Slow slow;
    RetuneRequest request{.rate_Hz = 0.9, .ref = "R1", .series = units::Series::E96};
    request.tolerance = 1e-4;
    const Retuning r = retune(slow.fit, request);
    ASSERT_FALSE(r.proposals.empty()) << r.reason;
    const double relative = r.proposals.front().rate_Hz.uncertainty / r.proposals.front().rate_Hz.value;
    EXPECT_LT(relative, 0.4 * fitted(slow.fit, "C1.capacitance").uncertainty /
                            fitted(slow.fit, "C1.capacitance").value);
}

TEST(Retune, TheDrawerOffersWhatItHolds) {
    Slow slow;
    const std::vector<Stock> drawer{{Stock::Kind::resistor, 47e3, 0.01, {}, 3},
                                    {Stock::Kind::resistor, 56e3, 0.01, {}, 0}, // none left
                                    {Stock::Kind::resistor, 62e3, 0.05, {}, 1},
                                    {Stock::Kind::capacitor, 10e-6, 0.1, {}, 2}};
    RetuneRequest request{.rate_Hz = 1.15, .ref = "R2"};
    request.drawer = drawer;
    const Retuning r = retune(slow.fit, request);
    ASSERT_EQ(r.proposals.size(), 2u);
    for (const RetuneProposal& p : r.proposals) {
        EXPECT_TRUE(p.value == 47e3 || p.value == 62e3);
        EXPECT_EQ(p.tolerance, p.value == 47e3 ? 0.01 : 0.05);
    }
    request.ref = "C1";
    const Retuning c = retune(slow.fit, request);
    ASSERT_EQ(c.proposals.size(), 1u);
    EXPECT_EQ(c.proposals.front().value, 10e-6);
    request.drawer->clear();
    EXPECT_FALSE(retune(slow.fit, request).reason.empty());
}

TEST(Retune, ARateThatThePartCannotGiveIsRefusedInASentence) {
    Slow slow;
    // Without R1 the cycle is still that of twice R2: twice the rate is out of its reach.
    const Retuning r = retune(slow.fit, {.rate_Hz = 2, .ref = "R1"});
    EXPECT_TRUE(r.proposals.empty());
    EXPECT_NE(r.reason.find("No value of R1"), std::string::npos) << r.reason;
    EXPECT_FALSE(retune(slow.fit, {.rate_Hz = 1, .ref = "R9"}).reason.empty());
}

} // namespace
} // namespace blinkwright::study
