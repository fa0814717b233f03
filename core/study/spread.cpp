#include "core/study/spread.h"

#include "core/base/wording.h"
#include "core/devices/board.h"
#include "core/study/corner_search.h"
#include "core/study/figures.h"
#include "core/study/lit_spread.h"
#include "core/study/percentile.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>

namespace blinkwright::study {

namespace {

constexpr double boardAccuracy = 5e-5; ///< of random boards
constexpr double fine = 1e-8;          ///< of derivatives
constexpr double nudge = 1e-3;         ///< relative, for derivatives
constexpr std::size_t samples = 6;

SpreadFigure statisticsOf(std::vector<double> values, double nominal) {
    SpreadFigure f;
    f.nominal = f.mean = f.worstLow = f.worstHigh = nominal;
    if (values.empty()) return f;
    const auto count = static_cast<double>(values.size());
    double sum = 0;
    for (const double v : values) sum += v - nominal; // small numbers, so that no digits are lost
    f.mean = nominal + sum / count;
    double squares = 0;
    for (const double v : values) squares += (v - f.mean) * (v - f.mean);
    f.sd = values.size() > 1 ? std::sqrt(squares / (count - 1)) : 0;
    std::sort(values.begin(), values.end());
    f.p1 = percentile(values, 0.01);
    f.p5 = percentile(values, 0.05);
    f.p50 = percentile(values, 0.50);
    f.p95 = percentile(values, 0.95);
    f.p99 = percentile(values, 0.99);
    return f;
}

class Spreader {
  public:
    Spreader(const circuit::Circuit& circuit, circuit::PartSet set, const devices::Board& board,
             const SpreadRequest& request)
        : m_request(request), m_box(circuit, set, board),
          m_settled(engine::settle(board, {.accuracy = 1e-7, .cancel = request.cancel})),
          m_boards(board, m_box, m_settled, request.threads, request.cancel), m_board(board) {}

    SpreadOutcome run() {
        m_out.boards = m_request.boards;
        m_out.seed = m_request.seed;
        if (!m_settled.found) m_out.reason = m_settled.why;
        if (m_settled.found && !cancelled()) chooseCycles();
        if (!cancelled()) runBoards();
        if (m_settled.found && !cancelled()) {
            findShares();
            fillFigures();
        }
        m_out.cancelled = cancelled();
        return std::move(m_out);
    }

  private:
    using Figure = CornerSearch::Figure;

    bool cancelled() const { return m_request.cancel && m_request.cancel->load(std::memory_order_relaxed); }

    Dials dialsOf(long board) const {
        Dials dials(m_box.dials());
        m_box.draw(RandomDraws(m_request.seed, static_cast<std::uint64_t>(board)), m_request.draw, dials);
        return dials;
    }

    void chooseCycles() {
        std::vector<Dials> some;
        for (std::size_t k = 0; k < samples; ++k) { // boards from all over: far ones take longest to settle
            Dials dials = dialsOf(static_cast<long>(k));
            for (double& dial : dials) dial = dial < 0 ? -1 : 1;
            some.push_back(std::move(dials));
        }
        m_boards.chooseCycles(some);
    }

    void runBoards() {
        m_figures = m_boards.run(
            m_request.boards, boardAccuracy,
            [this](long board, std::span<double> factors) { m_box.factors(dialsOf(board), factors); },
            m_request.done);
        long blinking = 0;
        for (const BoardFigures& board : m_figures) {
            if (!board.blinks) continue;
            ++blinking;
            m_out.periods_s.push_back(board.period_s);
            m_out.duties.push_back(board.duty);
        }
        m_out.blinkingShare = static_cast<double>(blinking) / static_cast<double>(m_request.boards);
    }

    /// Derivatives of all figures by each part, and from those of the rate the shares.
    void findShares() {
        const auto& members = m_box.members();
        const auto changed = m_boards.run(static_cast<long>(2 * members.size()), fine,
                                          [this](long board, std::span<double> factors) {
                                              m_box.factorsOff(static_cast<std::size_t>(board / 2),
                                                               board % 2 == 0 ? nudge : -nudge, factors);
                                          });
        m_slopes.clear();
        for (std::size_t k = 0; k < members.size(); ++k) {
            m_slopes.emplace_back(changed[2 * k], changed[2 * k + 1]);
            const auto& [up, down] = m_slopes.back();
            if (up.blinks && down.blinks) addSensitivity(members[k], up, down);
        }
        const std::vector<double> shares =
            varianceShares(m_out.sensitivities, [](const SpreadSensitivity& part) { return part.period; });
        for (std::size_t k = 0; k < shares.size(); ++k)
            m_out.shares.push_back({m_out.sensitivities[k].ref, shares[k]});
    }

    void addSensitivity(const ToleranceBox::Member& member, const BoardFigures& up,
                        const BoardFigures& down) {
        const auto slope = [](double high, double low) {
            const double middle = 0.5 * (high + low);
            return middle != 0 ? (high - low) / middle / (2 * nudge) : 0;
        };
        SpreadSensitivity s{member.ref,
                            {member.middle - member.half, member.middle + member.half},
                            member.dial,
                            slope(up.period_s, down.period_s),
                            slope(up.duty, down.duty),
                            {},
                            {}};
        for (std::size_t l = 0; l < up.lampMean_A.size(); ++l)
            s.lamps.push_back(slope(up.lampMean_A[l], down.lampMean_A[l]));
        m_out.sensitivities.push_back(std::move(s));
    }

    SpreadFigure figureOf(const std::vector<double>& values, double nominal, const Figure& figure) {
        SpreadFigure f = statisticsOf(values, nominal);
        f.worstLow = worst(-1, nominal, figure);
        f.worstHigh = worst(+1, nominal, figure);
        return f;
    }

    double worst(int sign, double nominal, const Figure& figure) {
        if (m_box.dials() == 0 || cancelled()) return nominal;
        // The corner that the derivatives point at.
        std::vector<double> pull(m_box.dials(), 0.0);
        for (std::size_t k = 0; k < m_slopes.size(); ++k) {
            const auto& [up, down] = m_slopes[k];
            if (up.blinks && down.blinks)
                pull[m_box.members()[k].dial] += (figure(up) - figure(down)) * m_box.members()[k].half;
        }
        Dials corner(m_box.dials());
        for (std::size_t d = 0; d < corner.size(); ++d) corner[d] = sign * pull[d] >= 0 ? 1 : -1;
        CornerSearch search(m_boards, m_box.dials());
        std::optional<Extreme> best = search.from(corner, sign, figure);
        if (!best) best = search.from(Dials(m_box.dials(), 0.0), sign, figure);
        double value = best ? best->value : nominal;
        // A random board beyond it shows another hill: on from there.
        long beyond = -1;
        double most = value;
        for (std::size_t k = 0; k < m_figures.size(); ++k) {
            if (!m_figures[k].blinks) continue;
            const double at = figure(m_figures[k]);
            if (sign * (at - most) <= 0) continue;
            most = at;
            beyond = static_cast<long>(k);
        }
        if (beyond >= 0) {
            if (std::abs(most - value) > boardAccuracy * std::abs(value))
                if (const auto other = search.from(dialsOf(beyond), sign, figure);
                    other && sign * (other->value - value) > 0)
                    value = other->value;
            if (sign * (most - value) > 0) value = most;
        }
        m_out.cornersBlink = m_out.cornersBlink && search.allBlinked();
        return value;
    }

    void fillFigures() {
        const double period = m_settled.period_s;
        m_out.period_s = figureOf(m_out.periods_s, period, [](const BoardFigures& f) { return f.period_s; });
        std::vector<double> rates = m_out.periods_s;
        for (double& rate : rates) rate = 1 / rate;
        m_out.rate_Hz = statisticsOf(std::move(rates), 1 / period);
        m_out.rate_Hz->worstLow = 1 / m_out.period_s->worstHigh;
        m_out.rate_Hz->worstHigh = 1 / m_out.period_s->worstLow;
        m_out.duty =
            figureOf(m_out.duties, m_settled.high_s / period, [](const BoardFigures& f) { return f.duty; });
        const Figures nominal = figuresOf(m_board, m_settled.wave);
        for (std::size_t l = 0; l < m_boards.lamps().size(); ++l) {
            const auto junction = static_cast<std::size_t>(m_boards.lamps()[l]);
            SpreadLamp lamp;
            lamp.ref = m_board.junctions[junction].ref;
            for (const BoardFigures& board : m_figures)
                if (board.blinks) lamp.values_A.push_back(board.lampMean_A[l]);
            lamp.mean_A = figureOf(lamp.values_A, nominal.junctions[junction].mean_A,
                                   [l](const BoardFigures& f) { return f.lampMean_A[l]; });
            m_out.lamps.push_back(std::move(lamp));
        }
        fillLit();
    }

    void fillLit() {
        if (cancelled()) return;
        LitRequest request;
        request.duties = &m_out.duties;
        request.dutyLow = m_out.duty->worstLow;
        request.dutyHigh = m_out.duty->worstHigh;
        request.boards = m_request.boards;
        request.dials = [this](long board) { return dialsOf(board); };
        request.threads = m_request.threads;
        request.cancel = m_request.cancel;
        const auto& members = m_box.members();
        const auto sensitivityOf = [this](const ToleranceBox::Member& member) {
            return std::ranges::find(m_out.sensitivities, member.ref, &SpreadSensitivity::ref);
        };
        for (const ToleranceBox::Member& member : members) {
            const auto found = sensitivityOf(member);
            request.dutySlopes.push_back(found == m_out.sensitivities.end() ? 0 : found->duty);
        }
        std::vector<LitLamp> lit = litSpread(m_board, m_settled, m_box, m_boards.lamps(), request);
        for (std::size_t m = 0; m < members.size(); ++m)
            if (const auto found = sensitivityOf(members[m]); found != m_out.sensitivities.end())
                for (const LitLamp& lamp : lit)
                    found->lits.push_back(lamp.slopes.empty() ? 0 : lamp.slopes[m]);
        for (std::size_t l = 0; l < lit.size(); ++l) {
            SpreadLamp& lamp = m_out.lamps[l];
            lamp.lit = statisticsOf(lit[l].values, lit[l].nominal);
            lamp.lit.worstLow = lit[l].worstLow;
            lamp.lit.worstHigh = lit[l].worstHigh;
            lamp.lits = std::move(lit[l].values);
        }
    }

    const SpreadRequest& m_request;
    ToleranceBox m_box;
    engine::Settled m_settled;
    BoxBoards m_boards;
    const devices::Board& m_board;
    SpreadOutcome m_out;
    std::vector<BoardFigures> m_figures;
    std::vector<std::pair<BoardFigures, BoardFigures>> m_slopes; ///< by member: a nudge up, a nudge down
};

} // namespace

std::vector<double> varianceShares(const std::vector<SpreadSensitivity>& parts,
                                   const std::function<double(const SpreadSensitivity&)>& slope) {
    std::map<std::size_t, double> together;
    std::vector<double> moves;
    for (const SpreadSensitivity& part : parts) {
        moves.push_back(slope(part) * 0.5 * (part.tolerance[1] - part.tolerance[0]));
        together[part.dial] += moves.back();
    }
    double total = 0;
    for (const auto& [dial, move] : together) total += move * move;
    for (std::size_t k = 0; k < parts.size(); ++k)
        moves[k] = total > 0 ? moves[k] * together[parts[k].dial] / total : 0;
    return moves;
}

Result<SpreadOutcome> spread(const circuit::Circuit& circuit, circuit::PartSet set,
                             const SpreadRequest& request) {
    if (request.boards < 2)
        return Fault{"boards", wording::inWords("must be at least %1, got %2", 2, request.boards)};
    const auto board = devices::makeBoard(circuit, set);
    if (!board) return board.fault();
    return Spreader(circuit, set, board.value(), request).run();
}

} // namespace blinkwright::study
