// Uncertainty budgets against worked numbers and against the spread of many boards.
#include "core/study/uncertainty_budget.h"

#include "core/study/spread.h"
#include "tests/core/study/measured_boards.h"

#include <cmath>
#include <gtest/gtest.h>

namespace blinkwright::study {
namespace {

using circuit::Measured;
using circuit::PartSet;
using tests::measure;

Workbench board(double resistors, double capacitor, double r1 = 10e3) {
    Workbench bench = tests::astableWithLamp({.r1_ohm = r1}, 560);
    for (const char* ref : {"R1", "R2"})
        bench.set(std::string(ref) + ".tolerance=" + std::to_string(resistors));
    return bench.set("C1.tolerance=" + std::to_string(capacitor));
}
Budget textbook(const Workbench& bench, BudgetFigure figure = BudgetFigure::rate) {
    return predictedBudget(bench.circuit, PartSet::A, figure, BudgetModel::textbook, {}).value();
}
Budget simulated(const Workbench& bench, BudgetFigure figure = BudgetFigure::rate) {
    return predictedBudget(bench.circuit, PartSet::A, figure, BudgetModel::simulated, {}).value();
}
const BudgetRow& row(const Budget& budget, const std::string& ref) {
    for (const BudgetRow& r : budget.rows)
        if (r.ref == ref) return r;
    throw std::logic_error("no row " + ref);
}
/// In per cent, rounded as printed.
double percent(double share, int decimals) {
    const double place = std::pow(10.0, decimals);
    return std::round(100 * share * place) / place;
}

// f = 1/(ln 2 (R1 + 2 R2) C), rectangular limits (JCGM 100:2008, 4.3.7), worked by hand:
// (R1/S) 5 %/sqrt 3 = 0.198 %, (2 R2/S) 5 %/sqrt 3 = 2.689 %, 20 %/sqrt 3 = 11.547 %; together 11.86 %.
TEST(UncertaintyBudget, TheWorkedExampleOfTheTextbookFormulaComesOutToTheDigit) {
    const Budget b = textbook(board(0.05, 0.2));
    ASSERT_EQ(b.rows.size(), 3u);
    EXPECT_EQ(percent(row(b, "R1").contribution() / b.value, 3), 0.198);
    EXPECT_EQ(percent(row(b, "R2").contribution() / b.value, 3), 2.689);
    EXPECT_EQ(percent(row(b, "C1").contribution() / b.value, 3), 11.547);
    EXPECT_EQ(percent(b.combined / b.value, 2), 11.86);
    EXPECT_NEAR(b.value, 0.99, 0.005); // f = 0.99 Hz, U = 0.23 Hz
    EXPECT_NEAR(b.expanded(), 0.23, 0.005);
    for (const BudgetRow& r : b.rows) {
        EXPECT_EQ(r.evaluation, Evaluation::typeB);
        EXPECT_EQ(r.distribution, Distribution::rectangular);
    }
    // The makers' 2.25 % for the chip (TI, Fairchild, National), as a rectangle too.
    Workbench withChip = board(0.05, 0.2);
    withChip.set("U1.device.timing_tolerance=0.0225");
    EXPECT_EQ(percent(textbook(withChip).combined / b.value, 2), 11.93);
    // The duty cycle has no term of the capacitor: dD/dR1 = R2/S^2, dD/dR2 = -R1/S^2.
    const Budget d = textbook(withChip, BudgetFigure::duty);
    EXPECT_NEAR(d.value, 0.5342, 0.5e-4);
    EXPECT_NEAR(d.combined, 0.0013, 0.5e-4);
    EXPECT_NEAR(row(d, "R1").sensitivity, 68e3 / (146e3 * 146e3), 1e-12);
    EXPECT_NEAR(row(d, "R2").sensitivity, -10e3 / (146e3 * 146e3), 1e-12);
    EXPECT_NEAR(row(d, "C1").sensitivity, 0, 1e-6);
    EXPECT_EQ(row(d, "U1").sensitivity, 0);
    // The period has the same relative uncertainty as the rate.
    const Budget t = textbook(board(0.05, 0.2), BudgetFigure::period);
    EXPECT_NEAR(t.combined / t.value, b.combined / b.value, 1e-7);
}

// The same by the same formula for other tolerances.
TEST(UncertaintyBudget, TheWorkedTableOfTolerancesComesOut) {
    const auto u = [](double r, double c) {
        const Budget b = textbook(board(r, c));
        return percent(b.combined / b.value, 2);
    };
    EXPECT_EQ(u(0.01, 0.05), 2.94);
    EXPECT_EQ(u(0.01, 0.10), 5.80);
    EXPECT_EQ(u(0.05, 0.10), 6.37);
    EXPECT_EQ(u(0.05, 0.20), 11.86);
}

// JCGM 100:2008, 5.2.2: wholly correlated inputs add up before they are squared: 5 %/sqrt 3 = 2.887 % instead
// of 2.696 %. The duty cycle does not move at all then.
TEST(UncertaintyBudget, ResistorsOfOneReelAddUpBeforeTheyAreSquared) {
    Workbench bench = board(0.05, 0);
    const Budget apart = textbook(bench);
    EXPECT_EQ(percent(apart.combined / apart.value, 3), 2.696);
    bench.circuit.reels = {{bench.id("R1"), bench.id("R2")}};
    const Budget together = textbook(bench);
    EXPECT_EQ(percent(together.combined / together.value, 3), 2.887);
    EXPECT_NEAR(together.share(0) + together.share(1), 1, 1e-12);
    const Budget duty = textbook(bench, BudgetFigure::duty);
    EXPECT_LT(duty.combined, 1e-9);
}

TEST(UncertaintyBudget, AReadingOfThePartItselfTakesThePlaceOfItsTolerance) {
    Workbench bench = board(0.05, 0.2);
    measure(bench.circuit, tests::partReading(bench, "C1", "capacitance", 10.4e-6, 1e-7));
    const Budget b = textbook(bench);
    const BudgetRow& c = row(b, "C1");
    EXPECT_DOUBLE_EQ(c.value, 10.4e-6);
    EXPECT_DOUBLE_EQ(c.uncertainty, 1e-7);
    EXPECT_EQ(c.distribution, Distribution::normal);
    EXPECT_NEAR(b.value, 1 / (std::log(2.0) * 146e3 * 10.4e-6), 1e-9);
}

// The spread draws thousands of boards and takes their standard deviation: another way to the same figure.
TEST(UncertaintyBudget, OfTheSimulatedBoardItIsTheDeviationThatTheSpreadFinds) {
    const Workbench bench = board(0.02, 0.05);
    for (const bool reel : {false, true}) {
        Workbench own = bench;
        if (reel) own.circuit.reels = {{own.id("R1"), own.id("R2")}};
        Budget b = simulated(own);
        ASSERT_TRUE(b.reason.empty()) << b.reason;
        // Of what the spread draws: parts within their tolerances.
        std::erase_if(b.rows, [](const BudgetRow& r) { return r.what != "tolerance"; });
        ASSERT_EQ(b.rows.size(), 3u);
        const SpreadOutcome s = spread(own.circuit, PartSet::A, {.boards = 20000, .seed = 5}).value();
        EXPECT_NEAR(combinedOf(b.rows) / s.rate_Hz->sd, 1, 0.03) << reel; // 20,000 boards: 0.5 %
        EXPECT_NEAR(b.value / s.rate_Hz->nominal, 1, 1e-4);
    }
}

TEST(UncertaintyBudget, OfAnIdealTimerSimulationAndFormulaAgree) {
    const Workbench bench = tests::astable({.c_farad = 1e-7}, true);
    for (const BudgetFigure figure : {BudgetFigure::rate, BudgetFigure::period, BudgetFigure::duty}) {
        const Budget a = simulated(bench, figure), b = textbook(bench, figure);
        EXPECT_NEAR(a.value / b.value, 1, 1e-5);
        EXPECT_NEAR(a.combined / b.combined, 1, 1e-3);
    }
}

TEST(UncertaintyBudget, ACircuitThatDoesNotBlinkHasNone) {
    Workbench bench = board(0.05, 0.2);
    bench.open("U1:6");
    EXPECT_FALSE(simulated(bench).reason.empty());
    EXPECT_FALSE(textbook(bench).reason.empty());
}

// --- measured

TEST(UncertaintyBudget, OfACountIsWhatThePersonWithTheStopwatchStates) {
    Workbench bench = board(0.05, 0.2);
    EXPECT_FALSE(measuredBudget(bench.circuit, BudgetFigure::rate));
    measure(bench.circuit, circuit::Count{20, {20.4, 0.2}});
    const Budget b = *measuredBudget(bench.circuit, BudgetFigure::rate);
    ASSERT_EQ(b.rows.size(), 1u);
    EXPECT_NEAR(b.value, 20 / 20.4, 1e-12);
    EXPECT_NEAR(b.combined / b.value, 0.2 / 20.4, 1e-12);
    EXPECT_NEAR(b.rows.front().sensitivity, -20 / (20.4 * 20.4), 1e-12); // f = n / t
    EXPECT_FALSE(measuredBudget(bench.circuit, BudgetFigure::duty));
}

TEST(UncertaintyBudget, OfSeveralMeasurementsItIsThatOfTheirCombinedFigure) {
    Workbench bench = board(0.05, 0.2);
    measure(bench.circuit, circuit::Count{50, {50.7, 0.2}});
    measure(
        bench.circuit,
        tests::recordOf(bench.board(), {.cycles = 4, .jitter_s = 4e-3, .step_s = 1e-4, .timeBase = 1e-3}, 1));
    circuit::Record coarse =
        tests::recordOf(bench.board(), {.cycles = 4, .step_s = 1e-9, .timeBase = 1e-4}, 2);
    coarse.step_s = 1e-2; // an even beat, as far as the step shows
    measure(bench.circuit, coarse);
    const MeasuredReadings m = measuredReadings(bench.circuit);
    const auto expect = [&](BudgetFigure figure, const Measured& measured) {
        const Budget b = *measuredBudget(bench.circuit, figure);
        EXPECT_NEAR(b.value / measured.value, 1, 1e-12);
        EXPECT_NEAR(b.combined / measured.uncertainty, 1, 1e-9);
    };
    expect(BudgetFigure::period, *m.period_s);
    expect(BudgetFigure::rate, *m.rate_Hz);
    expect(BudgetFigure::duty, *m.duty);
    const Budget b = *measuredBudget(bench.circuit, BudgetFigure::period);
    ASSERT_EQ(b.rows.size(), 5u); // a count, and of each record the switchings and the time base
    EXPECT_EQ(b.rows[1].evaluation, Evaluation::typeA); // it scatters by more than its step
    EXPECT_EQ(b.rows[3].evaluation, Evaluation::typeB); // known to its step
    EXPECT_EQ(b.rows[3].distribution, Distribution::rectangular);
}

// --- verdict

TEST(UncertaintyBudget, PredictionAndMeasurementAgreeWithinTwiceTheirCommonUncertainty) {
    Budget predicted, measured;
    predicted.value = 1.00;
    predicted.combined = 0.03;
    measured.combined = 0.04;
    measured.value = 1.099;
    EXPECT_TRUE(compare(predicted, measured).agree);
    EXPECT_NEAR(compare(predicted, measured).limit, 0.1, 1e-12);
    measured.value = 0.899;
    EXPECT_FALSE(compare(predicted, measured).agree);
    EXPECT_NEAR(compare(predicted, measured).difference, -0.101, 1e-12);
}

} // namespace
} // namespace blinkwright::study
