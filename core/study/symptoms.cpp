#include "core/study/symptoms.h"

#include "core/base/together.h"
#include "core/study/tolerance_box.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

// Two boards look the same where all readings agree as closely as a meter of three digits can tell.
constexpr double same_V = 0.01, same_A = 5e-5, sameShare = 0.005;

bool near(double a, double b, double absolute) {
    return std::abs(a - b) <= absolute + sameShare * std::max(std::abs(a), std::abs(b));
}

bool areAlike(const std::vector<ReadingPlace>& places, const Behaviour& a, const Behaviour& b) {
    if (a.state == BoardState::unknown || b.state == BoardState::unknown) return false;
    if (!near(a.period_s, b.period_s, 0)) return false;
    for (std::size_t k = 0; k < places.size(); ++k)
        for (const Quantity quantity : allQuantities)
            if (!near(a.readings[k].of(quantity), b.readings[k].of(quantity),
                      places[k].isVoltage() ? same_V : same_A))
                return false;
    return true;
}

/// What the tolerances of resistors and capacitors together make of the rate, as if one of each set it.
double driftOf(const circuit::Circuit& circuit, circuit::PartSet set, const devices::Board& board) {
    const ToleranceBox box(circuit, set, board);
    double widest = 0, sum = 0;
    for (const auto& member : box.members()) {
        widest = std::max(widest, member.half);
        sum += member.half * member.half;
    }
    if (box.members().empty()) return 0;
    const double usual = std::sqrt(sum / static_cast<double>(box.members().size()));
    return deviationOf(Spread::uniform) * std::hypot(widest, usual);
}

} // namespace

std::vector<FaultCase> simulateFaults(const BenchBoard& bench, std::span<const BoardFault> faults,
                                      const SymptomsRequest& request) {
    const BehaviourRequest once{
        .instrument = request.instrument, .accuracy = request.accuracy, .cancel = request.cancel};
    std::vector<FaultCase> cases(faults.size());
    const auto simulate = [&](std::size_t k) {
        if (request.cancel && request.cancel->load(std::memory_order_relaxed)) return;
        BehaviourRequest own = once;
        own.timerGone = faults[k].kind == FaultKind::gone;
        cases[k].behaviour = behaviourOf(withFault(bench, faults[k]), own);
        if (request.done) ++*request.done;
    };
    const Behaviour asDrawn = behaviourOf(bench, once);
    together(faults.size(), request.threads, simulate);
    for (FaultCase& each : cases) each.signs = signsOf(asDrawn, each.behaviour);
    return cases;
}

Result<FaultLibrary> faultLibrary(const circuit::Circuit& circuit, circuit::PartSet set,
                                  const SymptomsRequest& request) {
    Result<devices::Board> board = devices::makeBoard(circuit, set);
    if (!board) return board.fault();
    FaultLibrary library;
    library.drift = driftOf(circuit, set, board.value());
    for (const auto& supply : board.value().supplies)
        library.supply_V = std::max(library.supply_V, std::abs(supply.voltage));
    const BenchBoard bench = benchBoard(std::move(board).value());
    library.places = bench.places;
    library.faults = boardFaults(circuit, set, bench);
    if (request.total) *request.total = static_cast<long>(library.faults.size());
    library.cases = simulateFaults(bench, library.faults, request);
    library.cancelled = request.cancel && request.cancel->load(std::memory_order_relaxed);
    for (std::size_t k = 0; k < library.cases.size(); ++k) {
        std::size_t other = 0;
        const auto stands = [&](std::size_t at) {
            return library.alike[at] == at &&
                   areAlike(library.places, library.cases[at].behaviour, library.cases[k].behaviour);
        };
        while (other < k && !stands(other)) ++other;
        library.alike.push_back(other);
    }
    return library;
}

} // namespace blinkwright::study
