#include "core/circuit/circuit.h"
#include "core/study/measured_readings.h"
#include "core/study/record_reduction.h"
#include "core/study/record_thinning.h"
#include "tests/core/records/made_records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace blinkwright::study {
namespace {

using circuit::TraceOf;
using test::MadeRecord;
using test::MadeSignal;
using test::rawRecord;
using testing::HasSubstr;

Reduction reduced(const RawRecord& raw, const ReductionOptions& options = {}) {
    auto result = reduceRecord(raw, options);
    EXPECT_TRUE(result) << result.fault().message();
    return result ? std::move(result).value() : Reduction{};
}
std::string refusal(const RawRecord& raw) {
    const auto result = reduceRecord(raw);
    return result ? "accepted" : result.fault().message();
}
/// Rises at k (high + low), falls at high later.
double trueTime(const MadeSignal& s, std::size_t k, bool rise) {
    return s.begin_s + static_cast<double>(k) * (s.high_s + s.low_s) + (rise ? 0 : s.high_s);
}

TEST(RecordReduction, CleanSquareWaveGivesItsSwitchingsWithinHalfAStep) {
    const MadeSignal signal{.high_s = 0.4137, .low_s = 0.3071, .begin_s = 0.1003};
    const Reduction r = reduced(rawRecord({.signal = signal, .step_s = 1e-3}));
    ASSERT_TRUE(r.record.firstRises);
    ASSERT_EQ(r.record.switchings_s.size(), 28U);
    for (std::size_t k = 0; k < r.record.switchings_s.size(); ++k)
        EXPECT_NEAR(r.record.switchings_s[k], trueTime(signal, k / 2, k % 2 == 0), 0.5001e-3);
    EXPECT_NEAR(r.record.step_s, 1e-3, 1e-9);
    EXPECT_NEAR(r.record.levels->high_V, 7.5, 1e-3);
    EXPECT_NEAR(r.record.levels->low_V, 0.1, 1e-3);
}

struct Spoiled {
    const char* name;
    MadeRecord made;
    double atLeast = 0.5;
};
void PrintTo(const Spoiled& spoiled, std::ostream* out) {
    *out << spoiled.name;
}
class RecordReductionOf : public testing::TestWithParam<Spoiled> {};

TEST_P(RecordReductionOf, SpoiledRecordsErrsAsMuchAsItsUncertaintySays) {
    // Over seeds and odd periods the mean of (error / standard uncertainty)^2 is 1 where the uncertainty is
    // right (JCGM 100:2008, 2.3.1). Each of the three figures has 300 independent cases, so that this mean
    // itself is known to sqrt(2/300) = 0.08. Time base: exact here.
    constexpr int seeds = 300;
    double period = 0, high = 0, low = 0;
    for (int seed = 0; seed < seeds; ++seed) {
        MadeRecord made = GetParam().made;
        const RandomDraws odd(77, static_cast<std::uint64_t>(seed));
        made.signal.high_s *= 1 + 0.1 * odd.uniform(0);
        made.signal.low_s *= 1 + 0.1 * odd.uniform(1);
        made.signal.begin_s = 0.1 * odd.uniform(2);
        const Reduction r =
            reduced(rawRecord(made, static_cast<std::uint64_t>(seed) + 1), {.timeUncertainty = 0});
        const RecordFigures f = figuresOf(r.record);
        ASSERT_TRUE(f.period_s && f.high_s && f.low_s);
        const auto squared = [](const circuit::Measured& m, double truth) {
            return std::pow((m.value - truth) / m.uncertainty, 2) / seeds;
        };
        period += squared(*f.period_s, made.signal.high_s + made.signal.low_s);
        high += squared(*f.high_s, made.signal.high_s);
        low += squared(*f.low_s, made.signal.low_s);
    }
    RecordProperty("period", std::to_string(period));
    RecordProperty("high", std::to_string(high));
    RecordProperty("low", std::to_string(low));
    for (const double score : {period, high, low}) {
        EXPECT_GT(score, GetParam().atLeast);
        EXPECT_LT(score, 1.5);
    }
}
// A straight line through a slow edge knows its time better than to the step that the uncertainty allows for.
INSTANTIATE_TEST_SUITE_P(
    Noise, RecordReductionOf,
    testing::Values(
        Spoiled{"Clean", {.step_s = 2.3e-3}}, Spoiled{"Noisy", {.step_s = 2.3e-3, .noise_V = 0.2}},
        Spoiled{"VeryNoisy", {.step_s = 2.3e-3, .noise_V = 0.7}},
        Spoiled{"EightBit", {.step_s = 2.3e-3, .noise_V = 0.02, .quantum_V = 10.0 / 256}},
        Spoiled{"SlowEdges", {.until_s = 5, .step_s = 1e-3, .noise_V = 0.1, .edge_s = 0.02}, 0.05},
        Spoiled{"CapacitorNoisy", {.step_s = 1.3e-3, .noise_V = 0.03, .output = false, .capacitor = true}}),
    [](const auto& row) { return row.param.name; });

TEST(RecordReduction, CapacitorAloneGivesTheTurnsAsSwitchings) {
    const MadeSignal signal{.high_s = 0.41, .low_s = 0.31, .begin_s = 0.1};
    const Reduction r =
        reduced(rawRecord({.signal = signal, .noise_V = 0.01, .output = false, .capacitor = true}));
    EXPECT_EQ(r.from, SwitchingsFrom::turningPoints);
    EXPECT_EQ(r.record.traces.front().of, TraceOf::capacitor);
    EXPECT_NEAR(r.record.levels->high_V, 6, 0.05); // two thirds and a third of 9 V
    EXPECT_NEAR(r.record.levels->low_V, 3, 0.05);
    const RecordFigures f = figuresOf(r.record);
    EXPECT_NEAR(f.high_s->value, 0.41, 5e-4);
    EXPECT_NEAR(f.low_s->value, 0.31, 5e-4);
    EXPECT_THAT(saidOf(r), testing::Contains(HasSubstr("capacitor's turns")));
}

TEST(RecordReduction, TracesWithoutNamesAreToldByTheirShapes) {
    RawRecord raw = rawRecord({.capacitor = true});
    std::swap(raw.traces[0].values_V, raw.traces[1].values_V);
    const Reduction r = reduced(raw);
    EXPECT_EQ(r.record.traces[0].of, TraceOf::capacitor);
    EXPECT_EQ(r.record.traces[1].of, TraceOf::output);
    EXPECT_EQ(r.from, SwitchingsFrom::levels);
}

TEST(RecordReduction, ANamedTraceKeepsItsName) {
    RawRecord raw = rawRecord({.capacitor = true, .named = true});
    raw.traces[1].of = TraceOf::other;
    EXPECT_EQ(reduced(raw).record.traces[1].of, TraceOf::other);
    raw.traces[0].of = TraceOf::other;
    EXPECT_THAT(refusal(raw), HasSubstr("no column has two levels"));
}

TEST(RecordReduction, WhatIsNoBlinkerIsRefusedInASentence) {
    RawRecord flat = rawRecord({.noise_V = 0.05});
    for (std::size_t k = 0; k < flat.time_s.size(); ++k)
        flat.traces[0].values_V[k] -= test::MadeSignal{}.output(flat.time_s[k]);
    EXPECT_THAT(refusal(flat), HasSubstr("no switchings can be told")); // noise about one level
    RawRecord sine = flat;
    sine.traces[0].named = true;
    for (std::size_t k = 0; k < sine.time_s.size(); ++k)
        sine.traces[0].values_V[k] = 3 * std::sin(7 * sine.time_s[k]);
    EXPECT_THAT(refusal(sine), HasSubstr("does not stay at two levels"));
    RawRecord constant = flat;
    std::ranges::fill(constant.traces[0].values_V, 3.3);
    EXPECT_THAT(refusal(constant), HasSubstr("no switchings can be told"));
    RawRecord still = flat;
    std::ranges::fill(still.time_s, 1.0);
    EXPECT_THAT(refusal(still), HasSubstr("time does not advance"));
    EXPECT_THAT(refusal(RawRecord{.time_s = {0, 1}, .traces = {{TraceOf::output, false, {0, 1}}}}),
                HasSubstr("only 2 rows"));
    RawRecord fast = flat;
    for (std::size_t k = 0; k < fast.time_s.size(); ++k) fast.traces[0].values_V[k] = k % 2 == 0 ? 5 : 0;
    EXPECT_THAT(refusal(fast), HasSubstr("shorter time step"));
}

TEST(RecordReduction, GlitchesAreNoSwitchingsAndSpikesNoLevels) {
    RawRecord raw = rawRecord({.signal = {.begin_s = 0.1}, .noise_V = 0.05});
    const std::size_t clean = reduced(raw).record.switchings_s.size();
    for (const std::size_t at : {333U, 777U, 778U, 2222U, 9000U}) {
        double& value = raw.traces[0].values_V[at];
        value = value > 4 ? 0 : 7.5;
    }
    raw.traces[0].values_V[5000] = 90; // a spark
    const Reduction r = reduced(raw);
    EXPECT_EQ(r.record.switchings_s.size(), clean);
    EXPECT_EQ(r.glitches, 4U);
    EXPECT_NEAR(r.record.levels->high_V, 7.5, 0.02);
    const Reduction all = reduced(raw, {.glitchSamples = 1});
    EXPECT_EQ(all.record.switchings_s.size(), clean + 8);
}

TEST(RecordReduction, PowerOnIsSuggestedAndCanBeOverruled) {
    const MadeSignal signal{.begin_s = 0.7, .first = 1.585, .fromPowerOn = true};
    for (const bool capacitor : {false, true}) {
        const RawRecord raw = rawRecord({.signal = signal, .output = !capacitor, .capacitor = capacitor});
        const Reduction r = reduced(raw);
        EXPECT_TRUE(r.looksFromPowerOn);
        EXPECT_TRUE(r.record.fromPowerOn);
        EXPECT_FALSE(r.record.firstRises);
        const RecordFigures f = figuresOf(r.record);
        EXPECT_NEAR(f.firstHigh_s->value, 0.5 * 1.585, 1.5e-3);
        EXPECT_NEAR(f.high_s->value, 0.5, 1e-3);
        EXPECT_NEAR(r.record.time_s.front(), -0.7, 2e-3);
        const Reduction no = reduced(raw, {.fromPowerOn = false});
        EXPECT_TRUE(no.looksFromPowerOn);
        EXPECT_FALSE(no.record.fromPowerOn);
        EXPECT_EQ(no.record.time_s.front(), 0);
    }
    const Reduction running = reduced(rawRecord({.signal = {.begin_s = 0.7}}));
    EXPECT_FALSE(running.looksFromPowerOn);
    const Reduction told = reduced(rawRecord({.signal = {.begin_s = 0.7}}), {.fromPowerOn = true});
    EXPECT_TRUE(told.record.fromPowerOn);
}

TEST(RecordReduction, TimesWrittenWithTooFewDigitsAreEvenedOut) {
    RawRecord raw = rawRecord({.step_s = 2.5e-4});
    const RawRecord exact = raw;
    for (double& t : raw.time_s) t = std::round(t * 1000) / 1000;
    const Reduction r = reduced(raw);
    EXPECT_TRUE(r.evened);
    EXPECT_NEAR(r.record.step_s, 2.5e-4, 1e-7);
    const auto& good = reduced(exact).record.switchings_s;
    ASSERT_EQ(r.record.switchings_s.size(), good.size());
    for (std::size_t k = 0; k < good.size(); ++k) EXPECT_NEAR(r.record.switchings_s[k], good[k], 1.1e-3);
}

TEST(RecordReduction, ThinningKeepsEveryEdgeAndEverySpike) {
    RawRecord raw = rawRecord({.until_s = 100, .capacitor = true});
    raw.traces[0].values_V[54321] = 8.9;
    raw.traces[1].values_V[12345] = -0.4;
    const circuit::Record record = reduced(raw).record;
    EXPECT_LE(record.time_s.size(), circuit::maxRecordSamples);
    EXPECT_GE(record.time_s.size(), circuit::maxRecordSamples / 3);
    EXPECT_TRUE(std::ranges::is_sorted(record.time_s));
    EXPECT_EQ(record.time_s.front(), raw.time_s.front());
    EXPECT_EQ(record.time_s.back(), raw.time_s.back());
    EXPECT_EQ(std::ranges::max(record.traces[0].values_V), 8.9);
    EXPECT_EQ(std::ranges::min(record.traces[1].values_V), -0.4);
    EXPECT_EQ(record.switchings_s.size(), 249U);
    circuit::Measurement whole{.what = record};
    EXPECT_TRUE(circuit::Circuit().canMeasure(whole));
}

TEST(RecordReduction, CancelsWithAFault) {
    const std::atomic<bool> cancel = true;
    EXPECT_EQ(reduceRecord(rawRecord({}), {.cancel = &cancel}).fault().text, "cancelled");
}

} // namespace
} // namespace blinkwright::study
