#include "core/engine/batch.h"

#include "core/engine/lane_plan.h"

#include <algorithm>
#include <cmath>
#include <exception>
#include <mutex>
#include <thread>

namespace blinkwright::engine {

namespace {

using MakeLanes = std::unique_ptr<LaneGroup> (*)(const LanePlan&);
struct LaneKind {
    int width;
    MakeLanes make;
};

/// What the processor can run, widest first.
std::vector<LaneKind> laneKinds() {
    std::vector<LaneKind> kinds;
#if defined(__x86_64__)
    __builtin_cpu_init();
    if (__builtin_cpu_supports("avx512f") && __builtin_cpu_supports("avx512dq") &&
        __builtin_cpu_supports("fma"))
        kinds.push_back({8, makeAvx512Lanes});
    if (__builtin_cpu_supports("avx2") && __builtin_cpu_supports("fma")) kinds.push_back({4, makeAvx2Lanes});
#endif
    kinds.push_back({2, makePortableLanes});
    return kinds;
}

void conclude(BoardResult& board) {
    const double low_s = board.period_s - board.high_s;
    for (LampCycle& lamp : board.lamps) {
        const bool high = std::abs(lamp.highCharge_C) >= std::abs(lamp.lowCharge_C);
        const double length_s = high ? board.high_s : low_s;
        lamp.litMean_A = length_s > 0 ? (high ? lamp.highCharge_C : lamp.lowCharge_C) / length_s : 0;
    }
}

class Batch {
  public:
    Batch(const devices::Board& nominal, const BatchRequest& request)
        : m_nominal(nominal), m_request(request), m_cycles(std::max(request.cycles, 2)) {
        // As lampsOf, which wants reduced equations.
        for (std::size_t k = 0; k < nominal.junctions.size(); ++k) {
            const auto& j = nominal.junctions[k];
            if (j.lamp && j.anode != devices::open && j.cathode != devices::open && j.anode != j.cathode)
                m_out.lamps.push_back(static_cast<int>(k));
        }
        m_out.boards.resize(static_cast<std::size_t>(std::max(request.boards, 0L)));
    }

    BatchOutcome run() {
        chooseLanes();
        const long chunk = m_out.lanes, chunks = (m_request.boards + chunk - 1) / chunk;
        long threads = m_request.threads;
        if (threads <= 0) threads = std::max(1U, std::thread::hardware_concurrency());
        threads = std::clamp(threads, 1L, std::max(1L, chunks));
        m_out.threads = static_cast<int>(threads);
        std::vector<std::thread> others;
        for (long k = 1; k < threads; ++k) others.emplace_back([this] { workGuarded(); });
        workGuarded();
        for (auto& thread : others) thread.join();
        if (m_failure) std::rethrow_exception(m_failure);
        return std::move(m_out);
    }

  private:
    void chooseLanes() {
        m_out.lanes = 1;
        if (m_request.lanes == 1 || m_request.boards <= 0) return;
        m_plan = makeLanePlan(m_nominal, m_request.varied, m_cycles, m_request.accuracy);
        if (!m_plan) return;
        m_plan->cancel = m_request.cancel;
        const std::vector<LaneKind> kinds = laneKinds();
        m_kind = kinds.back();
        for (auto kind = kinds.rbegin(); kind != kinds.rend(); ++kind)
            if (m_request.lanes == 0 || kind->width <= m_request.lanes) m_kind = *kind;
        m_first = m_kind.make(*m_plan);
        // The nominal board shows where phases begin; if the lanes cannot do it, they can do none.
        if (m_first->learn(m_pilot)) m_out.lanes = m_kind.width;
    }

    bool cancelled() const { return m_request.cancel && m_request.cancel->load(std::memory_order_relaxed); }

    /// A worker's exception reaches the caller.
    void workGuarded() {
        try {
            work();
        } catch (...) {
            const std::lock_guard lock(m_failing);
            if (!m_failure) m_failure = std::current_exception();
            m_next = m_request.boards;
        }
    }

    void work() {
        const long width = m_out.lanes;
        const std::size_t count = m_request.varied.size();
        std::unique_ptr<LaneGroup> group;
        if (width > 1) {
            group = m_kind.make(*m_plan);
            group->usePilot(m_pilot);
        }
        std::vector<double> own(count), lanes(count * static_cast<std::size_t>(width));
        LaneOutcome outcome;
        while (!cancelled()) {
            const long from = m_next.fetch_add(width);
            if (from >= m_request.boards) break;
            const long in = std::min(width, m_request.boards - from);
            if (group) {
                std::fill(lanes.begin(), lanes.end(), 1.0); // lanes without a board run the nominal one
                for (long k = 0; k < in; ++k) {
                    factorsOf(from + k, own);
                    for (std::size_t v = 0; v < count; ++v)
                        lanes[v * static_cast<std::size_t>(width) + static_cast<std::size_t>(k)] = own[v];
                }
                group->run(lanes.data(), outcome);
            }
            for (long k = 0; k < in && !cancelled(); ++k) {
                BoardResult& board = m_out.boards[static_cast<std::size_t>(from + k)];
                if (group && outcome.good[static_cast<std::size_t>(k)]) {
                    take(outcome, static_cast<std::size_t>(k), static_cast<std::size_t>(width), board);
                } else {
                    factorsOf(from + k, own);
                    simulateOne(own, board);
                }
                if (m_request.done) m_request.done->fetch_add(1, std::memory_order_relaxed);
            }
        }
    }

    void factorsOf(long board, std::vector<double>& factors) const {
        std::fill(factors.begin(), factors.end(), 1.0);
        if (m_request.factors) m_request.factors(board, factors);
    }

    void take(const LaneOutcome& from, std::size_t lane, std::size_t width, BoardResult& board) const {
        board.reason = StopReason::flashesReached;
        board.inLanes = true;
        board.firstFlash_s = from.first_s[lane];
        board.high_s = from.high_s[lane];
        board.period_s = from.high_s[lane] + from.low_s[lane];
        board.lamps.resize(m_out.lamps.size());
        for (std::size_t l = 0; l < board.lamps.size(); ++l) {
            board.lamps[l].highCharge_C = from.highCharge_C[l * width + lane];
            board.lamps[l].lowCharge_C = from.lowCharge_C[l * width + lane];
        }
        conclude(board);
    }

    void simulateOne(const std::vector<double>& factors, BoardResult& board) const {
        const devices::Board varied = variedBoard(m_nominal, m_request.varied, factors);
        const RunRequest request{.flashes = m_cycles,
                                 .accuracy = m_request.accuracy,
                                 .stepBudget = m_request.stepBudget,
                                 .keepWaveform = false,
                                 .cancel = m_request.cancel};
        const LampRun run = simulateLamps(varied, request);
        board.reason = run.report.reason;
        board.detail = run.report.detail;
        const auto& times = run.times_s;
        if (!times.empty()) board.firstFlash_s = times.front();
        board.lamps.resize(m_out.lamps.size());
        if (board.reason != StopReason::flashesReached) return;
        const std::size_t last = times.size() - 1; // a rise
        board.high_s = times[last - 1] - times[last - 2];
        board.period_s = times[last] - times[last - 2];
        const std::size_t lamps = m_out.lamps.size();
        for (std::size_t l = 0; l < lamps; ++l) {
            board.lamps[l].highCharge_C = run.charges_C[(last - 1) * lamps + l];
            board.lamps[l].lowCharge_C = run.charges_C[last * lamps + l];
        }
        conclude(board);
    }

    const devices::Board& m_nominal;
    const BatchRequest& m_request;
    int m_cycles;
    BatchOutcome m_out;
    LaneKind m_kind{};
    std::unique_ptr<LanePlan> m_plan;
    std::unique_ptr<LaneGroup> m_first;
    LanePilot m_pilot;
    std::atomic<long> m_next{0};
    std::mutex m_failing;
    std::exception_ptr m_failure;
};

} // namespace

BatchOutcome runBatch(const devices::Board& nominal, const BatchRequest& request) {
    return Batch(nominal, request).run();
}

} // namespace blinkwright::engine
