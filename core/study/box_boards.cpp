#include "core/study/box_boards.h"

#include "core/base/together.h"
#include "core/study/figures.h"
#include "core/study/settled_start.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

/// Figures may be this far from those of the settled state, as a share.
constexpr double settledTo = 2e-4;
constexpr int cyclesTried[] = {3, 5, 8, 13, 21, 34, 55};

double farthest(const BoardFigures& a, const BoardFigures& b) {
    if (a.blinks != b.blinks) return 1;
    double worst = std::max(std::abs(a.period_s / b.period_s - 1), std::abs(a.duty / b.duty - 1));
    for (std::size_t l = 0; l < a.lampMean_A.size(); ++l)
        if (b.lampMean_A[l] != 0) worst = std::max(worst, std::abs(a.lampMean_A[l] / b.lampMean_A[l] - 1));
    return worst;
}

} // namespace

BoxBoards::BoxBoards(const devices::Board& nominal, const ToleranceBox& box, const engine::Settled& settled,
                     int threads, const std::atomic<bool>* cancel)
    : m_nominal(nominal), m_box(box), m_threads(threads), m_cancel(cancel) {
    if (settled.found) startFrom(m_nominal, capacitorsAtRise(settled));
    m_lamps = engine::runBatch(m_nominal, {}).lamps;
}

std::vector<BoardFigures> BoxBoards::run(long boards, double accuracy, const Factors& factors,
                                         std::atomic<long>* done) const {
    engine::BatchRequest request;
    request.boards = boards;
    request.varied = m_box.varied();
    request.factors = factors;
    request.cycles = m_cycles;
    request.accuracy = accuracy;
    request.threads = m_threads;
    request.cancel = m_cancel;
    request.done = done;
    const engine::BatchOutcome outcome = engine::runBatch(m_nominal, request);
    std::vector<BoardFigures> list(outcome.boards.size());
    for (std::size_t k = 0; k < list.size(); ++k) {
        const engine::BoardResult& from = outcome.boards[k];
        BoardFigures& to = list[k];
        to.blinks = from.reason == engine::StopReason::flashesReached && from.period_s > 0;
        if (!to.blinks) continue;
        to.period_s = from.period_s;
        to.duty = from.high_s / from.period_s;
        for (const engine::LampCycle& lamp : from.lamps)
            to.lampMean_A.push_back((lamp.highCharge_C + lamp.lowCharge_C) / from.period_s);
    }
    return list;
}

std::vector<BoardFigures> BoxBoards::at(const std::vector<Dials>& dials, double accuracy) const {
    return run(static_cast<long>(dials.size()), accuracy, [&](long board, std::span<double> factors) {
        m_box.factors(dials[static_cast<std::size_t>(board)], factors);
    });
}

void BoxBoards::chooseCycles(const std::vector<Dials>& samples) {
    std::vector<BoardFigures> exact(samples.size());
    together(samples.size(), m_threads > 0 ? m_threads : 2, [&](std::size_t k) {
        std::vector<double> factors(m_box.varied().size());
        m_box.factors(samples[k], factors);
        const devices::Board board = engine::variedBoard(m_nominal, m_box.varied(), factors);
        const engine::Settled settled = engine::settle(board, {.accuracy = 1e-5, .cancel = m_cancel});
        BoardFigures& to = exact[k];
        to.blinks = settled.found;
        if (!settled.found) return;
        to.period_s = settled.period_s;
        to.duty = settled.high_s / settled.period_s;
        const Figures figures = figuresOf(board, settled.wave);
        for (const int lamp : m_lamps)
            to.lampMean_A.push_back(figures.junctions[static_cast<std::size_t>(lamp)].mean_A);
    });
    for (const int cycles : cyclesTried) {
        m_cycles = cycles;
        const std::vector<BoardFigures> tried = at(samples, 1e-5);
        bool close = true;
        for (std::size_t k = 0; k < samples.size(); ++k)
            if (exact[k].blinks) close = close && farthest(tried[k], exact[k]) < settledTo;
        if (close || (m_cancel && m_cancel->load(std::memory_order_relaxed))) return;
    }
}

} // namespace blinkwright::study
