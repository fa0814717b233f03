// The engine against the independent solver on the full equations.
#include "core/engine/transient.h"
#include "tests/case_names.h"
#include "tests/core/reference_circuits.h"
#include "tests/reference/ida_board.h"
#include "tests/reference/phase_charges.h"
#include "tests/reference/wirings.h"

#include <gtest/gtest.h>

#include <cmath>

namespace blinkwright::reference {
namespace {

constexpr Settings tight{.relative = 1e-10, .voltage = 1e-10, .current = 1e-12, .charge = 1e-15};

class Reference : public testing::TestWithParam<tests::Wiring> {};

TEST_P(Reference, AgreesWithTheEngineOnTimesAndCharges) {
    const auto& [name, bench, flashes] = GetParam();
    const auto board = bench.board();
    const engine::Run run = engine::simulate(board, {.flashes = flashes, .accuracy = 1e-9});
    ASSERT_EQ(run.report.reason, engine::StopReason::flashesReached);
    IdaBoard ida(board, tight);
    const Trace trace = ida.run({.switchings = 2 * flashes});
    ASSERT_EQ(trace.switchings.size(), run.switchings.size());
    const auto charges = phaseCharges(board, run);

    std::vector<double> largest(board.junctions.size(), 0); // charge in any one phase
    for (const auto& s : trace.switchings)
        for (std::size_t j = 0; j < largest.size(); ++j) largest[j] = std::max(largest[j], s.charge_C[j]);
    double worstTime = 0, worstCharge = 0;
    for (std::size_t k = 0; k < trace.switchings.size(); ++k) {
        const OutputChange& exact = trace.switchings[k];
        EXPECT_EQ(run.switchings[k].timer, exact.timer) << k;
        EXPECT_EQ(run.switchings[k].high, exact.high) << k;
        EXPECT_NEAR(run.switchings[k].time_s / exact.time_s, 1, 1e-7) << k;
        worstTime = std::max(worstTime, std::abs(run.switchings[k].time_s / exact.time_s - 1));
        for (std::size_t j = 0; j < largest.size(); ++j) {
            if (!board.junctions[j].lamp) continue;
            ASSERT_GT(largest[j], 1e-8) << board.junctions[j].ref << " never lights";
            // A dark phase passes next to nothing: that is compared with a thousandth of a flash.
            const double scale = std::max(std::abs(exact.charge_C[j]), 1e-3 * largest[j]);
            EXPECT_NEAR(charges[k][j], exact.charge_C[j], 1e-5 * scale) << k << " " << board.junctions[j].ref;
            worstCharge = std::max(worstCharge, std::abs(charges[k][j] - exact.charge_C[j]) / scale);
        }
    }
    RecordProperty("worst_time", std::to_string(worstTime * 1e9) + "e-9");
    RecordProperty("worst_charge", std::to_string(worstCharge * 1e9) + "e-9");
}

INSTANTIATE_TEST_SUITE_P(Wirings, Reference, testing::ValuesIn(tests::wirings()),
                         [](const auto& row) { return tests::caseName(row.param.name); });

/// The first timer's last whole period, from rise to rise.
double lastPeriod(const Trace& trace) {
    std::vector<double> rises;
    for (const auto& s : trace.switchings)
        if (s.timer == 0 && s.high) rises.push_back(s.time_s);
    return rises[rises.size() - 1] - rises[rises.size() - 2];
}

TEST(Reference, SettledPeriodIsWhatItComesToInTime) {
    for (const auto& bench : {tests::astableWithLamp({}, 470), tests::lampPair({}, 220, 220e-6)}) {
        const auto board = bench.board();
        IdaBoard ida(board, tight);
        const double longer = lastPeriod(ida.run({.switchings = 60})),
                     waited = lastPeriod(ida.run({.switchings = 50}));
        ASSERT_NEAR(waited / longer, 1, 1e-8) << "not settled yet";
        const engine::Settled settled = engine::settle(board, {.accuracy = 1e-8});
        ASSERT_TRUE(settled.found) << settled.why;
        EXPECT_NEAR(settled.period_s / longer, 1, 1e-7);
    }
}

} // namespace
} // namespace blinkwright::reference
