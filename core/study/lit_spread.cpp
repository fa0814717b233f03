#include "core/study/lit_spread.h"

#include "core/base/together.h"
#include "core/study/figures.h"
#include "core/study/settled_start.h"

#include <algorithm>
#include <cmath>
#include <span>
#include <thread>

namespace blinkwright::study {

namespace {

constexpr double litAccuracy = 1e-5;
constexpr double fine = 1e-8;  ///< of derivatives
constexpr double nudge = 1e-2; ///< relative, for derivatives
/// A lit time this near to a phase is that phase: the rest is rise, fall and delay [share of the period].
constexpr double samePhase = 2e-3;

/// Settles boards of a box for the lit shares of some lamps.
class Fading {
  public:
    Fading(const devices::Board& nominal, const engine::Settled& settled, const ToleranceBox& box,
           const std::vector<int>& lamps, const LitRequest& request)
        : m_board(nominal), m_box(box), m_lamps(lamps), m_request(request) {
        startFrom(m_board, capacitorsAtRise(settled));
        m_threads = request.threads > 0 ? request.threads
                                        : std::max(1, static_cast<int>(std::thread::hardware_concurrency()));
    }

    /// By board the share of each lamp; empty where it does not blink.
    std::vector<std::vector<double>> at(const std::vector<Dials>& dials) const {
        return settled(dials.size(), litAccuracy,
                       [&](std::size_t k, std::span<double> factors) { m_box.factors(dials[k], factors); });
    }
    /// The same with each member off its value by a nudge, up and down in turn.
    std::vector<std::vector<double>> nudged() const {
        return settled(2 * m_box.members().size(), fine, [&](std::size_t k, std::span<double> factors) {
            m_box.factorsOff(k / 2, k % 2 == 0 ? nudge : -nudge, factors);
        });
    }

    std::vector<double> sharesOf(const devices::Board& board, const engine::Settled& settled) const {
        const Figures figures = figuresOf(board, settled.wave, settled.high_s);
        std::vector<double> shares;
        for (const int lamp : m_lamps)
            shares.push_back(figures.junctions[static_cast<std::size_t>(lamp)].lit_s / settled.period_s);
        return shares;
    }

  private:
    template <class Factors>
    std::vector<std::vector<double>> settled(std::size_t boards, double to, const Factors& factorsOf) const {
        std::vector<std::vector<double>> shares(boards);
        together(boards, m_threads, [&](std::size_t k) {
            if (m_request.cancel && m_request.cancel->load(std::memory_order_relaxed)) return;
            std::vector<double> factors(m_box.varied().size());
            factorsOf(k, factors);
            const devices::Board board = engine::variedBoard(m_board, m_box.varied(), factors);
            const engine::Settled own = engine::settle(board, {.accuracy = to, .cancel = m_request.cancel});
            if (own.found) shares[k] = sharesOf(board, own);
        });
        return shares;
    }

    devices::Board m_board;
    const ToleranceBox& m_box;
    const std::vector<int>& m_lamps;
    const LitRequest& m_request;
    int m_threads = 1;
};

/// The corners that the slopes of each lamp point at, low and high in turn.
std::vector<Dials> cornersOf(const Fading& fading, std::size_t lamps, std::size_t dials) {
    std::vector<Dials> ends;
    for (std::size_t d = 0; d < dials; ++d)
        for (const double end : {-1.0, 1.0}) {
            ends.emplace_back(dials, 0.0);
            ends.back()[d] = end;
        }
    const auto moved = fading.at(ends);
    std::vector<Dials> corners;
    for (std::size_t l = 0; l < lamps; ++l)
        for (const double sign : {-1.0, 1.0}) {
            Dials corner(dials, 0.0);
            for (std::size_t d = 0; d < dials; ++d) {
                const auto &low = moved[2 * d], &high = moved[2 * d + 1];
                if (!low.empty() && !high.empty()) corner[d] = sign * (high[l] - low[l]) >= 0 ? 1 : -1;
            }
            corners.push_back(std::move(corner));
        }
    return corners;
}

} // namespace

std::vector<LitLamp> litSpread(const devices::Board& nominal, const engine::Settled& settled,
                               const ToleranceBox& box, const std::vector<int>& lamps,
                               const LitRequest& request) {
    const Fading fading(nominal, settled, box, lamps, request);
    const std::vector<double> shares = fading.sharesOf(nominal, settled);
    const double duty = settled.high_s / settled.period_s;
    std::vector<LitLamp> out(lamps.size());
    std::vector<std::size_t> faders;
    for (std::size_t l = 0; l < lamps.size(); ++l) {
        out[l].nominal = out[l].worstLow = out[l].worstHigh = shares[l];
        const bool whileHigh = std::abs(shares[l] - duty) < samePhase;
        const bool whileLow = std::abs(shares[l] - (1 - duty)) < samePhase;
        if (shares[l] <= 0) continue; // a dark lamp
        if (!whileHigh && !whileLow) {
            faders.push_back(l);
            continue;
        }
        // What rise, fall and delay take is the same on all boards.
        const double off = shares[l] - (whileHigh ? duty : 1 - duty);
        for (const double d : *request.duties) out[l].values.push_back((whileHigh ? d : 1 - d) + off);
        out[l].worstLow = (whileHigh ? request.dutyLow : 1 - request.dutyHigh) + off;
        out[l].worstHigh = (whileHigh ? request.dutyHigh : 1 - request.dutyLow) + off;
        for (const double slope : request.dutySlopes)
            out[l].slopes.push_back(whileHigh ? slope : -slope * duty / (1 - duty));
    }
    if (faders.empty()) return out;

    std::vector<Dials> dials;
    for (long k = 0; k < std::min(request.boards, litBoards); ++k) dials.push_back(request.dials(k));
    const auto random = fading.at(dials);
    const auto corners = fading.at(cornersOf(fading, lamps.size(), box.dials()));
    const auto moved = fading.nudged();
    for (const std::size_t l : faders) {
        LitLamp& lamp = out[l];
        for (std::size_t m = 0; m < box.members().size(); ++m) {
            const auto &up = moved[2 * m], &down = moved[2 * m + 1];
            const bool known = !up.empty() && !down.empty() && up[l] + down[l] > 0;
            lamp.slopes.push_back(known ? (up[l] - down[l]) / (up[l] + down[l]) / nudge : 0);
        }
        const auto widen = [&](double value) {
            lamp.worstLow = std::min(lamp.worstLow, value);
            lamp.worstHigh = std::max(lamp.worstHigh, value);
        };
        for (const auto& board : random) {
            if (board.empty()) continue;
            lamp.values.push_back(board[l]);
            widen(board[l]);
        }
        for (const auto& board : corners)
            if (!board.empty()) widen(board[l]);
    }
    return out;
}

} // namespace blinkwright::study
