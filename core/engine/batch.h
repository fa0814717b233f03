// Many boards of one wiring in one go, as a tolerance spread wants them: a board a lane of the processor's
// vectors, spread over its cores. Boards that do anything out of the ordinary are run anew by simulate().
//
//   BatchRequest request{.boards = 10000, .varied = {{VariedKind::resistor, 0}}};
//   request.factors = [](long board, std::span<double> f) { f[0] = 1 + 1e-5 * double(board); };
//   BatchOutcome out = runBatch(nominal, request);
//   out.boards[17].period_s
#pragma once

#include "core/devices/board.h"
#include "core/engine/transient.h"
#include "core/engine/varied.h"

#include <atomic>
#include <functional>
#include <span>
#include <string>
#include <vector>

namespace blinkwright::engine {

struct BatchRequest {
    long boards = 0;
    std::vector<Varied> varied;
    /// Writes the factors (> 0) of board `board`, one for each of `varied`. Called from several threads.
    std::function<void(long board, std::span<double> factors)> factors;
    int cycles = 5;            ///< from power-on, >= 2
    double accuracy = 1e-4;    ///< as of RunRequest
    int threads = 0;           ///< 0: one a core
    int lanes = 0;             ///< 0: the widest of this processor; 1: simulate() board by board; 2, 4, 8
    long stepBudget = 200'000; ///< of one board run by simulate()
    const std::atomic<bool>* cancel = nullptr; ///< polled every few steps
    std::atomic<long>* done = nullptr;         ///< counts boards
};

/// What a lamp does in the last cycle.
struct LampCycle {
    double highCharge_C = 0; ///< while the output is high
    double lowCharge_C = 0;  ///< while it is low
    double litMean_A = 0;    ///< mean current in the phase with the larger charge
};

/// One board.
struct BoardResult {
    StopReason reason = StopReason::cancelled; ///< flashesReached: all is well
    std::string detail;                        ///< as of RunReport
    bool inLanes = false;                      ///< else run by simulate()
    double firstFlash_s = 0;                   ///< length of the first high phase, from power-on
    double period_s = 0, high_s = 0;           ///< of the last cycle
    std::vector<LampCycle> lamps;              ///< in the order of BatchOutcome::lamps
};

struct BatchOutcome {
    std::vector<int> lamps; ///< the board's lamps by junction index
    std::vector<BoardResult> boards;
    int lanes = 1; ///< as used
    int threads = 1;
};

BatchOutcome runBatch(const devices::Board& nominal, const BatchRequest& request);

} // namespace blinkwright::engine
