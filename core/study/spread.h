// Spread: what becomes of rate, duty cycle and lamp currents when every part is somewhere within its
// tolerance.
//
//   SpreadOutcome s = spread(circuit, PartSet::A, {.boards = 10000, .seed = 7}).value();
//   s.rate->sd;  s.rate->p95;  s.rate->worstHigh;  s.shares[0].share;  s.period_s   // board by board
// The same seed gives the same boards, however many threads work.
#pragma once

#include "core/base/random.h"
#include "core/circuit/circuit.h"

#include <atomic>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

struct SpreadRequest {
    long boards = 10000; ///< at least 2
    std::uint64_t seed = 1;
    Spread draw = Spread::uniform; ///< over each tolerance; one of two unlike limits is centred between them
    int threads = 0;               ///< 0: one a core
    const std::atomic<bool>* cancel = nullptr;
    std::atomic<long>* done = nullptr; ///< counts boards
};

/// Of one figure over the boards that blink. SI units.
struct SpreadFigure {
    double nominal = 0; ///< settled, of the board without tolerances
    double mean = 0;
    double sd = 0; ///< divided by one less than the boards
    double p1 = 0, p5 = 0, p50 = 0, p95 = 0, p99 = 0;
    double worstLow = 0,
           worstHigh = 0; ///< ends of the true range, by search over the corners of all tolerances
};
struct SpreadLamp {
    std::string ref;
    SpreadFigure mean_A;
    std::vector<double> values_A; ///< of the boards that blink, in their order
    SpreadFigure lit;             ///< lit time over period
    std::vector<double> lits;     ///< of boards that blink, in their order: all, or of a lamp that fades the
                                  ///< first litBoards; empty of a dark one
};
/// One part's share of the variance of the rate, linearised. Parts of one reel move together: each has its
/// covariance with the whole. All shares together are 1.
struct SpreadShare {
    std::string ref;
    double share = 0;
};

/// By how much each figure moves with one part: the relative change of the figure over that of the part,
/// small.
struct SpreadSensitivity {
    std::string ref;
    circuit::Interval tolerance{}; ///< relative deviations from low to high
    std::size_t dial = 0;          ///< parts of one reel share it
    double period = 0;             ///< the rate's is the same with the other sign
    double duty = 0;
    std::vector<double> lamps; ///< of the mean currents, in the order of SpreadOutcome::lamps
    std::vector<double> lits;  ///< of the lit shares, likewise; 0 of a dark lamp
};

struct SpreadOutcome {
    long boards = 0;
    std::uint64_t seed = 0;
    double blinkingShare = 0;
    std::optional<SpreadFigure> period_s, rate_Hz, duty; ///< nothing where the nominal board does not blink
    std::vector<SpreadLamp> lamps;
    std::vector<SpreadShare> shares;
    std::vector<SpreadSensitivity> sensitivities; ///< of the parts that have a tolerance; empty as the shares
    bool cornersBlink = true; ///< all boards that the search looked at did; else the range has no true end
    bool cancelled = false;   ///< what is here then is not to be used
    std::string reason;       ///< why the nominal board does not blink, a sentence; else empty
    std::vector<double> periods_s, duties; ///< of the boards that blink, in their order
};

/// Each part's share of the variance of one figure, as SpreadShare has them of the rate.
/// @param slope the figure's entry of a sensitivity
std::vector<double> varianceShares(const std::vector<SpreadSensitivity>& parts,
                                   const std::function<double(const SpreadSensitivity&)>& slope);

Result<SpreadOutcome> spread(const circuit::Circuit& circuit, circuit::PartSet set,
                             const SpreadRequest& request);

} // namespace blinkwright::study
