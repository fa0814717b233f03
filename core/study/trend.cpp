#include "core/study/trend.h"

#include "core/base/together.h"
#include "core/base/wording.h"
#include "core/circuit/edit.h"
#include "core/devices/board.h"
#include "core/study/figures.h"
#include "core/study/settled_start.h"
#include "core/study/textbook.h"

#include <cmath>

namespace blinkwright::study {

namespace {

/// Neighbours that follow each other, each starting where the one before settled. Fixed, so that the figures
/// are the same for any number of threads.
constexpr std::size_t pieceLength = 10;

double valueAt(const TrendRequest& r, int k) {
    if (k == 0) return r.from;
    if (k == r.points - 1) return r.to;
    const double share = static_cast<double>(k) / (r.points - 1);
    return r.even ? r.from + (r.to - r.from) * share : r.from * std::pow(r.to / r.from, share);
}

/// The value set, or why it cannot be.
Result<devices::Board> boardAt(circuit::Circuit& circuit, circuit::PartSet set, const TrendRequest& request,
                               double value) {
    const std::string place = request.ref + "." + request.key;
    const circuit::Part* part = circuit.findRef(request.ref);
    if (!part) return Fault{place, wording::inWords("there is no part %1", request.ref)};
    if (auto put = circuit::apply(circuit, circuit::setValue(circuit, set, part->id, request.key, value));
        !put)
        return Fault{place, put.fault().text};
    return devices::makeBoard(circuit, set);
}

class Follower {
  public:
    explicit Follower(const TrendRequest& request)
        : m_run{.accuracy = request.accuracy, .cancel = request.cancel} {}

    void add(TrendPoint& point, devices::Board board) {
        if (const auto book = textbookOf(board, 0)) point.textbook = book->phase;
        const engine::Settled settled = settle(board);
        if (!settled.found) return;
        point.settled = Phase{settled.high_s, settled.period_s - settled.high_s};
        const Figures figures = figuresOf(board, settled.wave, settled.high_s);
        for (std::size_t k = 0; k < board.junctions.size(); ++k) {
            const JunctionFigures& f = figures.junctions[k];
            if (board.junctions[k].lamp)
                point.lamps.push_back({f.peak_A, f.mean_A, f.lit_s / settled.period_s});
        }
        if (!figures.supplyCurrents.empty()) point.supplyMean_A = figures.supplyCurrents.front().mean_A;
    }

  private:
    engine::Settled settle(const devices::Board& board) {
        engine::Settled settled;
        if (!m_start.empty()) {
            devices::Board started = board;
            startFrom(started, m_start);
            settled = engine::settle(started, m_run);
        }
        if (!settled.found) settled = engine::settle(board, m_run);
        m_start = settled.found ? capacitorsAtRise(settled) : std::vector<double>();
        return settled;
    }

    const engine::RunRequest m_run;
    std::vector<double> m_start;
};

} // namespace

Result<Trend> trend(const circuit::Circuit& circuit, circuit::PartSet set, const TrendRequest& request) {
    const std::string place = request.ref + "." + request.key;
    if (request.points < 2) return Fault{place, wording::inWords("wants at least 2 points")};
    if (!request.even && !(request.from > 0 && request.to > 0))
        return Fault{place,
                     wording::inWords("takes logarithmic steps between ends above 0 only; even steps go from "
                                      "and to any value")};
    Trend result{.ref = request.ref, .key = request.key, .lamps = {}, .points = {}};
    for (const double end : {request.from, request.to}) { // what both ends can be, all between can
        circuit::Circuit trial = circuit;
        const auto board = boardAt(trial, set, request, end);
        if (!board) return board.fault();
        result.lamps.clear();
        for (const auto& junction : board.value().junctions)
            if (junction.lamp) result.lamps.push_back(junction.ref);
    }
    const auto points = static_cast<std::size_t>(request.points);
    result.points.resize(points);
    together((points + pieceLength - 1) / pieceLength, request.threads, [&](std::size_t piece) {
        circuit::Circuit own = circuit;
        Follower follower(request);
        for (std::size_t k = piece * pieceLength; k < std::min(points, (piece + 1) * pieceLength); ++k) {
            TrendPoint& point = result.points[k];
            point.value = valueAt(request, static_cast<int>(k));
            auto board = boardAt(own, set, request, point.value);
            if (board) follower.add(point, std::move(board).value());
        }
    });
    return result;
}

Result<std::vector<TrendPoint>> trendAt(const circuit::Circuit& circuit, circuit::PartSet set,
                                        const TrendRequest& request, std::span<const double> values) {
    circuit::Circuit own = circuit;
    std::vector<TrendPoint> points;
    for (const double value : values) {
        auto board = boardAt(own, set, request, value);
        if (!board) return board.fault();
        points.push_back({.value = value});
        Follower(request).add(points.back(), std::move(board).value());
    }
    return points;
}

} // namespace blinkwright::study
