// Boards of a tolerance box, run in batches from where the nominal board settled.
//
//   BoxBoards boards(nominal, box, settled, request);
//   std::vector<BoardFigures> f = boards.at(dials, accuracy);     // one list of dials a board
#pragma once

#include "core/engine/batch.h"
#include "core/engine/transient.h"
#include "core/study/tolerance_box.h"

#include <functional>

namespace blinkwright::study {

/// Figures of one board.
struct BoardFigures {
    bool blinks = false;
    double period_s = 0, duty = 0;
    std::vector<double> lampMean_A;
};

using Dials = std::vector<double>;

class BoxBoards {
  public:
    /// @param settled of the nominal board; where it was not found, boards run from power-on.
    BoxBoards(const devices::Board& nominal, const ToleranceBox& box, const engine::Settled& settled,
              int threads, const std::atomic<bool>* cancel);

    using Factors = std::function<void(long board, std::span<double> factors)>;
    std::vector<BoardFigures> run(long boards, double accuracy, const Factors& factors,
                                  std::atomic<long>* done = nullptr) const;
    std::vector<BoardFigures> at(const std::vector<Dials>& dials, double accuracy) const;
    /// Chooses how many cycles a board needs from its start till its figures are those of its settled state,
    /// by trying some boards.
    void chooseCycles(const std::vector<Dials>& samples);
    int cycles() const { return m_cycles; }
    /// The board's lamps that can carry current, by junction index: what lampMean_A is of.
    const std::vector<int>& lamps() const { return m_lamps; }

  private:
    devices::Board m_nominal;
    const ToleranceBox& m_box;
    int m_threads;
    const std::atomic<bool>* m_cancel;
    int m_cycles = 5;
    std::vector<int> m_lamps;
};

} // namespace blinkwright::study
