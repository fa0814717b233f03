// What a board does, as it is seen and as instruments read it: in its settled period, or at rest.
//
//   Behaviour b = behaviourOf(benchBoard(board), {.instrument = dcMeter});
//   b.state                       // BoardState::blinks
//   b.readings[2].mean            // by place, with the meter's loading of that very node
#pragma once

#include "core/study/bench_board.h"

#include <atomic>
#include <vector>

namespace blinkwright::study {

enum class BoardState {
    blinks,    ///< in a settled period
    uneven,    ///< it switches, but no two cycles are alike; figures over some of them
    rest,      ///< nothing moves
    unpowered, ///< the first timer has no supply to work with
    unknown,   ///< cancelled, or no solution within the budget
};

/// One lamp to the eye.
struct LampSeen {
    double mean_A = 0, peak_A = 0;
    double litMean_A = 0; ///< mean while it is lit
    double lit = 0;       ///< share of the time with more than `litShare` of the rated current
    double ratio = 0;     ///< least over most current: near 1 is steady
};

struct Behaviour {
    BoardState state = BoardState::unknown;
    double period_s = 0;             ///< of the first timer; 0 where it does not switch
    std::vector<Extent> readings;    ///< by place, as the instrument reads them
    std::vector<LampSeen> lamps;     ///< in file order
    double together = 0;             ///< two lamps lit at once, as a share of the shorter one's lit time
    std::vector<double> capacitor_V; ///< at a rise, to start boards that are much the same
};

struct BehaviourRequest {
    Instrument instrument = dcMeter;
    double accuracy = 1e-4; ///< as of RunRequest; some 0.1 mV in readings
    long stepBudget = 20'000;
    long eventBudget = 2'000;
    const std::atomic<bool>* cancel = nullptr;
    /// Where the timer is known not to work, whatever its pins say.
    bool timerGone = false;
};

/// Each voltage comes from a board of its own, with the instrument on that node. A place whose loading is
/// bounded to less than 10 uV is read without it.
Behaviour behaviourOf(const BenchBoard& bench, const BehaviourRequest& request);

} // namespace blinkwright::study
