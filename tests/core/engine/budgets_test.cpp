// A run that is cut short says by what, and what it has computed till then is as good as in a longer run.
#include "core/study/study.h"
#include "tests/core/engine/proof_support.h"

#include <gtest/gtest.h>

#include <chrono>
#include <set>
#include <thread>

namespace blinkwright::engine {
namespace {

using namespace proofs;

/// The run covers what it says it covers, and agrees with the whole run as far as it goes.
void expectPartOf(const engine::Run& whole, const engine::Run& cut) {
    EXPECT_LT(cut.report.reached_s, whole.report.reached_s);
    if (cut.wave.empty()) {
        EXPECT_EQ(cut.report.reached_s, 0);
    } else {
        EXPECT_DOUBLE_EQ(cut.wave.end_s(), cut.report.reached_s);
    }
    std::size_t expected = 0;
    while (expected < whole.switchings.size() && whole.switchings[expected].time_s <= cut.report.reached_s)
        ++expected;
    ASSERT_EQ(cut.switchings.size(), expected);
    for (std::size_t k = 0; k < cut.switchings.size(); ++k)
        EXPECT_EQ(cut.switchings[k].time_s, whole.switchings[k].time_s);
    Instant a, b;
    if (cut.wave.empty()) return;
    // Both runs took the same steps, but perhaps the last one.
    const double within = cut.wave.step(cut.wave.steps() - 1).begin_s;
    cut.wave.instant(within, Side::before, a);
    whole.wave.instant(within, Side::before, b);
    for (std::size_t k = 0; k < a.all.size(); ++k) EXPECT_DOUBLE_EQ(a.all[k], b.all[k]);
}

class Budget : public testing::Test {
  protected:
    const devices::Board m_board = tests::lampPair({}, 220, 1e-3).board();
    const engine::Run m_whole = simulate(m_board, {.flashes = 20});
};

TEST_F(Budget, OfStepsEndsTheRunAndLeavesAValidPart) {
    for (const long budget : {0L, 1L, 2L, 7L, 50L, 200L}) {
        const engine::Run cut = simulate(m_board, {.flashes = 20, .stepBudget = budget});
        EXPECT_EQ(cut.report.reason, StopReason::stepBudget) << budget;
        EXPECT_LE(cut.report.steps + cut.report.rejected, budget);
        expectPartOf(m_whole, cut);
    }
}

TEST_F(Budget, OfEventsEndsTheRunAndLeavesAValidPart) {
    for (const long budget : {0L, 1L, 2L, 9L}) {
        const engine::Run cut = simulate(m_board, {.flashes = 20, .eventBudget = budget});
        EXPECT_EQ(cut.report.reason, StopReason::eventBudget) << budget;
        EXPECT_LE(cut.report.events, budget + 2);
        expectPartOf(m_whole, cut);
    }
}

TEST_F(Budget, OfTimeEndsTheRunAtThatTime) {
    for (const double limit : {0.0, 1e-9, 1e-5, 0.1, 1.7, 5.0}) {
        const engine::Run cut = simulate(m_board, {.flashes = 20, .longest_s = limit});
        EXPECT_EQ(cut.report.reason, StopReason::timeReached) << limit;
        EXPECT_DOUBLE_EQ(cut.report.reached_s, limit);
        expectPartOf(m_whole, cut);
    }
}

TEST_F(Budget, AlsoEndsTheSearchForTheSettledState) {
    for (const long steps : {0L, 1L, 20L, 100L}) {
        const Settled cut = settle(m_board, {.stepBudget = steps});
        EXPECT_FALSE(cut.found) << steps;
        EXPECT_EQ(cut.reason, NoPeriod::endedEarly);
        EXPECT_NE(cut.why.find("step budget used up"), std::string::npos) << cut.why;
        EXPECT_LE(cut.report.steps, steps);
    }
    const Settled events = settle(m_board, {.eventBudget = 1});
    EXPECT_EQ(events.reason, NoPeriod::endedEarly);
    EXPECT_NE(events.why.find("switching budget used up"), std::string::npos) << events.why;
}

/// Does something that never ends by itself, and calls it off from another thread once it has begun.
template <class Endless>
auto calledOff(const Endless& endless) {
    std::atomic<bool> cancel = false, begun = false;
    std::thread other([&] {
        while (!begun) std::this_thread::yield();
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
        cancel = true;
    });
    begun = true;
    auto result = endless(&cancel);
    other.join();
    return result;
}

constexpr long endless = std::numeric_limits<long>::max();

TEST_F(Budget, IsNotNeededWhereAnotherThreadCancels) {
    const engine::Run run = calledOff([&](const std::atomic<bool>* cancel) {
        return simulate(m_board, {.flashes = 1'000'000'000,
                                  .stepBudget = endless,
                                  .eventBudget = endless,
                                  .keepWaveform = false,
                                  .cancel = cancel});
    });
    EXPECT_EQ(run.report.reason, StopReason::cancelled);
    for (const auto& s : run.switchings) EXPECT_LE(s.time_s, run.report.reached_s);
    // As good as uncancelled, as far as it went.
    for (std::size_t k = 0; k < std::min<std::size_t>(run.switchings.size(), m_whole.switchings.size()); ++k)
        EXPECT_EQ(run.switchings[k].time_s, m_whole.switchings[k].time_s);
}

TEST_F(Budget, IsNotNeededWhereAnotherThreadCancelsTheSearchForTheSettledState) {
    // The output at its own pins 2 and 6 beside a blinker of an hour: the search would go on for ever.
    Workbench b = tests::astable({.r1_ohm = 1e6, .r2_ohm = 1e6, .c_farad = 1e-3, .family = "cmos"}, false);
    b.part(circuit::PartKind::timer, "U2").net("supply", {"U2:8", "U2:4"}).net("ground", {"U2:1"});
    b.net("loop", {"U2:2", "U2:3", "U2:6"});
    const auto board = b.board();
    const Settled settled = calledOff([&](const std::atomic<bool>* cancel) {
        return settle(board, {.stepBudget = endless, .eventBudget = endless, .cancel = cancel});
    });
    EXPECT_EQ(settled.reason, NoPeriod::endedEarly);
    EXPECT_NE(settled.why.find("cancelled"), std::string::npos) << settled.why;
    const auto study = calledOff([&](const std::atomic<bool>* cancel) {
        return blinkwright::study::study(b.circuit, circuit::PartSet::A, {.flashes = 1000, .cancel = cancel});
    });
    ASSERT_TRUE(study);
    EXPECT_TRUE(study.value().cancelled);
}

TEST(Reasons, AreAllTold) {
    std::set<std::string_view> texts;
    for (const auto reason :
         {StopReason::flashesReached, StopReason::timeReached, StopReason::quiet, StopReason::cancelled,
          StopReason::stepBudget, StopReason::eventBudget, StopReason::noSolution, StopReason::cannotStart})
        texts.insert(describe(reason));
    EXPECT_EQ(texts.size(), 8u);
    EXPECT_FALSE(texts.contains(""));
    texts.clear();
    for (const auto reason : {NoPeriod::none, NoPeriod::cannotStart, NoPeriod::stopsSwitching,
                              NoPeriod::otherTimers, NoPeriod::keepsChanging, NoPeriod::endedEarly})
        texts.insert(describe(reason));
    EXPECT_EQ(texts.size(), 6u);
    EXPECT_FALSE(texts.contains(""));
}

} // namespace
} // namespace blinkwright::engine
