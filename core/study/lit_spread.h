// How long each lamp is lit, over the boards of a spread.
//
// A lamp that is lit for exactly one phase of the output has that phase's share, board by board. One behind a
// capacitor fades within its turn: there the first boards are settled one by one.
//
//   LitSpread lit = litSpread(nominal, settled, box, phases, request);
//   lit.lamps[0].values;
#pragma once

#include "core/engine/transient.h"
#include "core/study/box_boards.h"

#include <functional>
#include <vector>

namespace blinkwright::study {

/// Boards of a lamp that fades which are settled one by one.
inline constexpr long litBoards = 200;

struct LitLamp {
    double nominal = 0;         ///< lit time over period
    std::vector<double> values; ///< of boards that blink, in their order: all, or the first ones
    double worstLow = 0, worstHigh = 0;
    std::vector<double> slopes; ///< by member of the box: relative change over that of the part, small
};

struct LitRequest {
    /// Duty cycles of the boards that blink, and the ends of their true range.
    const std::vector<double>* duties = nullptr;
    double dutyLow = 0, dutyHigh = 0;
    std::vector<double> dutySlopes; ///< by member of the box, as LitLamp::slopes
    long boards = 0;                ///< of the spread, those that do not blink included
    std::function<Dials(long board)> dials;
    int threads = 0; ///< 0: one a core
    const std::atomic<bool>* cancel = nullptr;
};

/// @param lamps junction indices. @return one for each of them
std::vector<LitLamp> litSpread(const devices::Board& nominal, const engine::Settled& settled,
                               const ToleranceBox& box, const std::vector<int>& lamps,
                               const LitRequest& request);

} // namespace blinkwright::study
