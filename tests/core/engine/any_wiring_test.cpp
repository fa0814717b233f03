// Any wiring of the known parts ends in a verdict within its budget, every value it yields is a number, and
// nothing crashes. BLINKWRIGHT_CIRCUITS=20000 asks for a longer run than the usual one of 2,000 circuits; the
// sanitizers are meant to watch it.
#include "core/study/study.h"
#include "core/study/verdict.h"
#include "tests/core/engine/random_wiring.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace blinkwright::engine {
namespace {

using study::Verdict;

constexpr int shards = 20;
constexpr long mostSteps = 2'500, mostEvents = 400;

int circuits() {
    const char* asked = std::getenv("BLINKWRIGHT_CIRCUITS");
    return asked ? std::atoi(asked) : 2000;
}

void expectNumbers(const Waveform& wave) {
    Instant at;
    const auto numbers = [](const std::vector<double>& values) {
        return std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); });
    };
    const auto knots = wave.knots(0);
    // All of a short waveform, some hundred places of a long one.
    const std::size_t stride = 1 + knots.size() / 200;
    for (std::size_t k = 0; k < knots.size(); k += stride) {
        wave.instant(knots[k], at);
        ASSERT_TRUE(numbers(at.all) && numbers(at.junction_A) && numbers(at.switch_A))
            << "at " << wave.time(knots[k]);
        for (const auto& t : at.timers)
            ASSERT_TRUE(std::isfinite(t.output_V + t.control_V + t.idle_A + t.discharge_A + t.output_A));
    }
}

void expectAscending(const std::vector<Switching>& switchings, double until_s) {
    double last = 0;
    for (const auto& s : switchings) {
        ASSERT_TRUE(std::isfinite(s.time_s));
        ASSERT_GE(s.time_s, last);
        last = s.time_s;
    }
    EXPECT_LE(last, until_s);
}

void expectSaid(const study::Judgement& judgement) {
    if (judgement.kind != Verdict::blinks) {
        EXPECT_FALSE(judgement.causes.empty()) << name(judgement.kind);
    }
    for (const auto& cause : judgement.causes) {
        EXPECT_TRUE(cause.sentence.ends_with('.')) << cause.sentence;
        EXPECT_EQ(cause.sentence.find("not a number"), std::string::npos) << cause.sentence;
        for (const auto& place : cause.places) EXPECT_FALSE(place.empty());
    }
}

/// A whole study, of a circuit that is known to need few steps.
void expectStudied(const circuit::Circuit& circuit) {
    const auto result = study::study(circuit, circuit::PartSet::A, {.flashes = 2, .accuracy = 1e-4});
    ASSERT_TRUE(result);
    const auto& readings = result.value().readings;
    const auto number = [](const std::optional<double>& value) { return !value || std::isfinite(*value); };
    for (const auto& t : readings.timers)
        if (t.settled) {
            EXPECT_TRUE(std::isfinite(t.settled->period_s()) && std::isfinite(t.settled->duty()));
        }
    for (const auto& l : readings.lamps)
        EXPECT_TRUE(number(l.peak_A) && number(l.mean_A) && number(l.rms_A) && number(l.charge_C) &&
                    number(l.litTime_s) && number(l.reversePeak_V));
    if (readings.supply) {
        EXPECT_TRUE(number(readings.supply->mean_A) && number(readings.supply->energy_J));
    }
    for (const auto& p : readings.parts)
        EXPECT_TRUE(number(p.meanPower_W) && number(p.peakCurrent_A) && number(p.peakVoltage_V)) << p.ref;
    for (const auto& f : result.value().findings) EXPECT_FALSE(f.text.empty());
}

/// What came of some circuits.
struct Tally {
    int count = 0, blinking = 0, settled = 0, high = 0, low = 0, endless = 0, cannot = 0, unsolved = 0;
};

void tryOne(std::uint64_t seed, Tally& tally) {
    SCOPED_TRACE(seed);
    const auto circuit = tests::randomCircuit(seed);
    const auto board = devices::makeBoard(circuit, circuit::PartSet::A);
    ASSERT_TRUE(board) << board.fault().message();
    const RunRequest request{
        .flashes = 4, .accuracy = 1e-4, .stepBudget = mostSteps, .eventBudget = mostEvents};
    const engine::Run run = simulate(board.value(), request);
    EXPECT_LE(run.report.steps + run.report.rejected, mostSteps);
    EXPECT_LE(run.report.events, mostEvents + 2 * static_cast<long>(board.value().timers.size() +
                                                                    board.value().switches.size()));
    EXPECT_TRUE(std::isfinite(run.report.reached_s));
    expectAscending(run.switchings, run.report.reached_s);
    expectNumbers(run.wave);

    const Settled settled = settle(board.value(), request);
    if (settled.found) {
        EXPECT_EQ(settled.reason, NoPeriod::none);
        EXPECT_GT(settled.high_s, 0);
        EXPECT_LT(settled.high_s, settled.period_s);
        expectAscending(settled.switchings, settled.period_s);
        expectNumbers(settled.wave);
    } else {
        EXPECT_NE(settled.reason, NoPeriod::none);
        EXPECT_FALSE(settled.why.empty());
    }
    const study::Judgement judgement = study::judge(board.value(), run, &settled);
    expectSaid(judgement);
    if (seed % 10 == 1 && run.report.steps + settled.report.steps < 1000 &&
        run.report.reason != StopReason::eventBudget)
        expectStudied(circuit);

    ++tally.count;
    tally.blinking += judgement.kind == Verdict::blinks;
    tally.settled += settled.found;
    tally.high += judgement.kind == Verdict::settlesHigh;
    tally.low += judgement.kind == Verdict::settlesLow;
    tally.endless += judgement.kind == Verdict::doesNotSettle;
    tally.cannot += judgement.kind == Verdict::cannotRun;
    if (run.report.reason == StopReason::noSolution) {
        ++tally.unsolved;
        // With values from a bench, the equations have a solution that is found.
        EXPECT_TRUE(tests::isExtreme(seed)) << "no solution at " << run.report.reached_s;
    }
}

class AnyWiring : public testing::TestWithParam<int> {};

TEST_P(AnyWiring, EndsInAVerdictWithinItsBudgetAndYieldsNumbers) {
    Tally tally;
    for (int seed = GetParam(); seed < circuits(); seed += shards)
        tryOne(static_cast<std::uint64_t>(seed), tally);
    std::printf(
        "%d circuits: %d blink (%d with a settled period), %d settle high, %d settle low, %d do not settle, "
        "%d cannot run (%d unsolved)\n",
        tally.count, tally.blinking, tally.settled, tally.high, tally.low, tally.endless, tally.cannot,
        tally.unsolved);
    if (tally.count < 50) return;
    // The generator must reach what the test is about.
    EXPECT_GT(tally.blinking, tally.count / 50);
    EXPECT_GT(tally.high + tally.low, tally.count / 10);
    EXPECT_GT(tally.cannot, 0);
    EXPECT_LE(tally.unsolved, tally.count / 50) << "even of the extreme ones";
}

INSTANTIATE_TEST_SUITE_P(Seeds, AnyWiring, testing::Range(0, shards));

/// Circuits out of longer runs that once found no solution, each by a cause of its own.
struct OnceUnsolved {
    const char* name;
    std::uint64_t seed;
};

class OnceUnsolvedWiring : public testing::TestWithParam<OnceUnsolved> {};

TEST_P(OnceUnsolvedWiring, IsSolvedToTheEndFromPowerOnAndInItsSearchForAPeriod) {
    const auto board = devices::makeBoard(tests::randomCircuit(GetParam().seed), circuit::PartSet::A);
    ASSERT_TRUE(board) << board.fault().message();
    const RunRequest request{
        .flashes = 4, .accuracy = 1e-4, .stepBudget = mostSteps, .eventBudget = mostEvents};
    const engine::Run run = simulate(board.value(), request);
    EXPECT_NE(run.report.reason, StopReason::noSolution) << "at " << run.report.reached_s;
    const Settled settled = settle(board.value(), request);
    EXPECT_NE(settled.report.reason, StopReason::noSolution) << settled.why;
}

INSTANTIATE_TEST_SUITE_P(Seeds, OnceUnsolvedWiring,
                         testing::Values(OnceUnsolved{"LandingOnALevelHadNoEnd", 7603},
                                         OnceUnsolved{"PortsWereLeftUnsolvedAfterASearchForACrossing", 7894},
                                         OnceUnsolved{"ErrorOfACurrentMuchFasterThanTheStepHardlyFell",
                                                      11955},
                                         OnceUnsolved{"PortsWereLeftUnsolvedWithManyCapacitors", 16353},
                                         OnceUnsolved{"RememberedFirstStepGrewWithoutBound", 120},
                                         OnceUnsolved{"PortsWereLeftUnsolvedWithExtremeParts", 4931}),
                         [](const testing::TestParamInfo<OnceUnsolved>& param) { return param.param.name; });

} // namespace
} // namespace blinkwright::engine
