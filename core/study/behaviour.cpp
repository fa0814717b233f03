#include "core/study/behaviour.h"

#include "core/engine/transient.h"
#include "core/study/figures.h"
#include "core/study/lobatto.h"
#include "core/study/settled_start.h"
#include "core/study/unpowered.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace blinkwright::study {

using devices::Board;
using devices::Node;

namespace {

constexpr double plainBound_V = 1e-5;
constexpr int unevenFlashes = 12;

/// A span of a run, or an instant of rest.
struct Span {
    BoardState state = BoardState::unknown;
    engine::Waveform wave;
    double from_s = 0; ///< at rest: from here on nothing moves
    double period_s = 0;
    std::vector<double> capacitor_V = {};
};

using lobatto::nodes;
using lobatto::weights;
/// Where a step that begins with a switching is cut.
constexpr std::array pieces{1e-4, 1e-2, 1.0};

/// Calls seen(instant, weight) all over a span; the weights add up to 1.
template <class Seen>
void over(const Span& span, const Seen& seen) {
    engine::Instant at;
    if (span.state == BoardState::rest || span.state == BoardState::unpowered) {
        span.wave.instant(span.wave.end_s(), engine::Side::before, at);
        return seen(at, 1.0);
    }
    const double whole = span.wave.end_s() - span.wave.begin_s();
    for (std::size_t step = 0; step < span.wave.steps(); ++step) {
        const auto [begin_s, end_s] = span.wave.step(step);
        // A switching starts transients that may be over in a billionth of the step that they are in.
        const bool hasJumped = step == 0 || span.wave.jumpsBefore(step);
        for (std::size_t piece = hasJumped ? 0 : pieces.size() - 1; piece < pieces.size(); ++piece) {
            const double from = piece == 0 || !hasJumped ? 0 : pieces[piece - 1];
            const double share = pieces[piece] - from;
            for (std::size_t k = 0; k < nodes.size(); ++k) {
                span.wave.instant({step, from + share * nodes[k]}, at);
                seen(at, weights[k] * share * (end_s - begin_s) / whole);
            }
        }
    }
}

bool isFinite(const engine::Instant& at) {
    const auto good = [](double value) { return std::isfinite(value); };
    return std::ranges::all_of(at.node_V, good) && std::ranges::all_of(at.junction_A, good);
}

bool works(const engine::Instant& at) {
    return at.timers.front().supply_V - at.timers.front().ground_V >= leastSupply_V;
}

class Runner {
  public:
    explicit Runner(const BehaviourRequest& request)
        : m_request(request), m_run{.flashes = unevenFlashes,
                                    .accuracy = request.accuracy,
                                    .stepBudget = request.stepBudget,
                                    .eventBudget = request.eventBudget,
                                    .ignorePresses = true,
                                    .cancel = request.cancel} {}

    /// @param without what the board does without an instrument. What that lets through does not feed a
    /// timer.
    Span run(const Board& board, BoardState without = BoardState::unknown) const {
        if (m_request.timerGone || board.timers.empty()) return rest(withoutTimers(board, true));
        if (without == BoardState::unpowered || board.supplies.empty() || !isFed(board))
            return rest(withoutTimers(board));
        if (without == BoardState::rest) // most often it rests with it, too
            if (const auto resting = atRest(board, engine::simulate(board, m_run))) return *resting;
        const engine::Settled settled = engine::settle(board, m_run);
        if (settled.found) {
            Span span{BoardState::blinks, settled.wave, 0, settled.period_s, capacitorsAtRise(settled)};
            engine::Instant at;
            span.wave.instant(span.wave.begin_s(), engine::Side::after, at);
            return works(at) ? span : rest(withoutTimers(board));
        }
        if (cancelled()) return {};
        const engine::Run run = engine::simulate(board, m_run);
        if (run.wave.empty()) return {};
        const auto resting = atRest(board, run);
        return resting ? *resting : uneven(run);
    }

  private:
    bool cancelled() const { return m_request.cancel && m_request.cancel->load(std::memory_order_relaxed); }

    std::optional<Span> atRest(const Board& board, const engine::Run& run) const {
        if (run.wave.empty() || run.report.reason != engine::StopReason::quiet) return std::nullopt;
        engine::Instant at;
        run.wave.instant(run.wave.end_s(), engine::Side::before, at);
        if (!works(at)) return rest(withoutTimers(board));
        return Span{BoardState::rest, run.wave};
    }

    Span rest(const Board& timerless) const {
        const engine::Run run = engine::simulate(timerless, m_run);
        if (run.wave.empty()) return {};
        return {BoardState::unpowered, run.wave};
    }

    /// The later half of what was run, from rise to rise.
    static Span uneven(const engine::Run& run) {
        std::vector<double> rises;
        for (const auto& s : run.switchings)
            if (s.timer == 0 && s.high) rises.push_back(s.time_s);
        if (rises.size() < 3) return {};
        const std::size_t half = rises.size() / 2;
        const double from = rises[half], to = rises.back();
        const auto cycles = static_cast<double>(rises.size() - 1 - half);
        Span span{BoardState::uneven, run.wave.part(from, to, 0), 0, (to - from) / cycles};
        if (span.wave.empty()) return {};
        return span;
    }

    const BehaviourRequest& m_request;
    const engine::RunRequest m_run;
};

/// All nodes' extents.
std::vector<Extent> extentsOf(const Span& span, std::size_t count) {
    constexpr double most = std::numeric_limits<double>::infinity();
    std::vector<Extent> extents(count, {most, -most, 0});
    over(span, [&](const engine::Instant& at, double weight) {
        for (std::size_t k = 0; k < count && k < at.node_V.size(); ++k) {
            extents[k].least = std::min(extents[k].least, at.node_V[k]);
            extents[k].most = std::max(extents[k].most, at.node_V[k]);
            extents[k].mean += weight * at.node_V[k];
        }
    });
    return extents;
}

Extent currentOf(const Span& span, std::size_t junction) {
    constexpr double most = std::numeric_limits<double>::infinity();
    Extent extent{most, -most, 0};
    over(span, [&](const engine::Instant& at, double weight) {
        const double current = at.junction_A[junction];
        extent.least = std::min(extent.least, current);
        extent.most = std::max(extent.most, current);
        extent.mean += weight * current;
    });
    return extent;
}

/// What the eye sees, from points of the span taken at even distances within each step.
void addLamps(Behaviour& behaviour, const Board& board, const Span& span) {
    std::vector<std::size_t> lamps;
    for (std::size_t k = 0; k < board.junctions.size(); ++k)
        if (board.junctions[k].lamp) lamps.push_back(k);
    behaviour.lamps.resize(lamps.size());
    std::vector<double> least(lamps.size(), std::numeric_limits<double>::infinity()), litCharge(lamps.size());
    double both = 0;
    over(span, [&](const engine::Instant& at, double weight) {
        int litNow = 0;
        for (std::size_t k = 0; k < lamps.size(); ++k) {
            const double current = at.junction_A[lamps[k]];
            LampSeen& seen = behaviour.lamps[k];
            seen.mean_A += weight * current;
            seen.peak_A = std::max(seen.peak_A, current);
            least[k] = std::min(least[k], current);
            if (current <= litShare * board.junctions[lamps[k]].ratedCurrent) continue;
            seen.lit += weight;
            litCharge[k] += weight * current;
            ++litNow;
        }
        if (litNow > 1) both += weight;
    });
    double shortest = 1;
    for (std::size_t k = 0; k < lamps.size(); ++k) {
        LampSeen& seen = behaviour.lamps[k];
        // Below the share from which a lamp counts as lit, what there is of current is there all the time.
        seen.litMean_A = seen.lit > 0 ? litCharge[k] / seen.lit : seen.mean_A;
        seen.ratio = seen.peak_A > 0 ? std::max(least[k], 0.0) / seen.peak_A : 1;
        if (seen.lit > 0) shortest = std::min(shortest, seen.lit);
    }
    behaviour.together = both > 0 ? std::min(1.0, both / shortest) : 0;
}

} // namespace

Behaviour behaviourOf(const BenchBoard& bench, const BehaviourRequest& request) {
    Behaviour behaviour;
    const Runner runner(request);
    const Span span = runner.run(bench.board);
    bool good = span.state != BoardState::unknown && !span.wave.empty();
    if (good) over(span, [&](const engine::Instant& at, double) { good = good && isFinite(at); });
    if (!good) return behaviour;
    behaviour.period_s = span.period_s;
    behaviour.capacitor_V = span.capacitor_V;
    addLamps(behaviour, bench.board, span);
    const std::vector<Extent> plain = extentsOf(span, static_cast<std::size_t>(bench.board.nodes()));

    std::map<Node, Extent> known;
    for (const ReadingPlace& place : bench.places) {
        if (!place.isVoltage()) {
            behaviour.readings.push_back(currentOf(span, place.junction));
            continue;
        }
        const auto at = static_cast<std::size_t>(place.node);
        auto found = known.find(place.node);
        if (found == known.end()) {
            Extent extent = plain[at];
            const auto bound = loadingBound_V(bench.board, place.node, request.instrument);
            if (!bound || *bound > plainBound_V) {
                Board loaded = withInstrument(bench.board, place.node, request.instrument);
                startFrom(loaded, span.capacitor_V);
                const Span again = runner.run(loaded, span.state);
                if (again.state == BoardState::unknown || again.wave.empty()) return behaviour;
                extent = extentsOf(again, static_cast<std::size_t>(loaded.nodes()))[at];
            }
            found = known.emplace(place.node, extent).first;
        }
        behaviour.readings.push_back(found->second);
    }
    behaviour.state = span.state;
    return behaviour;
}

} // namespace blinkwright::study
