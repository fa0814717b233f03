// Boards of many timers, block by block: the events around the assembly. The same latches, delays, start-up
// and budgets as core/engine/simulation.h, which simulates a board as a whole.
//
//   if (auto parts = large::partition(board)) Run run = large::simulate(board, std::move(*parts), request);
#pragma once

#include "core/engine/large/assembly.h"
#include "core/engine/large/block_wave.h"
#include "core/engine/large/rows.h"
#include "core/engine/transient.h"

namespace blinkwright::engine::large {

/// Runs from power-on. The board must have a timer and a supply.
Run simulate(const devices::Board& board, Partition partition, const RunRequest& request);

class LargeSimulation {
  public:
    LargeSimulation(const devices::Board& board, Partition partition, const RunRequest& request);
    Run run();

  private:
    struct Timer {
        int block = 0, local = 0; ///< where it is
        double delay_s = 0;
        bool latch = true;    ///< high
        bool output = true;   ///< high; follows the latch after the delay
        bool awake = false;   ///< its levels are read
        bool powered = false; ///< pin 8 has reached 0.8 x nominal supply once
        double outputDue_s = never;
        double dwellUntil_s = 0;
        // As it was looked at last.
        double wish = 0;
        double looked_s = -1;
    };
    struct Toggle {
        int block = 0, local = 0;
        bool closed = false; ///< as it is now
    };
    /// A latch that flips, or a timer that wakes, within the attempted step.
    struct Crossing {
        int timer = 0;
        double s = 0;
    };

    bool start();
    bool configureAll();
    void configure(int block);
    bool isClosed(int toggle, double time_s) const;
    double wishOf(const Timer& timer, const Watched& w, double time_s) const;
    void flip(int timer, double time_s);
    /// Looks at a timer as it is now.
    void look(std::size_t timer);
    bool isSafe(std::size_t timer, double until_s, double variation_V) const {
        return until_s <= m_safeUntil_s[timer] && variation_V <= m_safeVariation_V[timer];
    }
    /// All that is due at the present instant, until nothing is. @return false if no solution was found.
    bool settleInstant();
    /// Reads all levels; flips those that are tripped. @return whether an output is due at once.
    bool readLevels();
    double nextTimed() const;
    double predicted();
    bool findCrossings(double h);
    std::optional<double> crossing(int timer, double h);
    RunReport loop();

    devices::Board m_board;
    RunRequest m_request;
    Assembly m_all;
    std::vector<Timer> m_timers;
    // By timer, kept apart since all of them are asked at every step. A timer cannot switch before one time,
    // nor before the borders have moved by so much, added up; whichever comes first. Then when it seemed to
    // switch.
    std::vector<double> m_safeUntil_s, m_safeVariation_V, m_predicted_s;
    std::vector<int> m_pending; ///< timers whose output is due
    std::vector<Toggle> m_toggles;
    std::vector<std::vector<int>> m_timersOf, m_togglesOf; ///< by block
    std::vector<char> m_changed;                           ///< by block: to be configured anew
    std::vector<bool> m_closed, m_high;                    ///< of the block to be configured
    std::vector<double> m_edges;
    std::vector<Crossing> m_crossings;
    std::vector<Switching> m_switchings;
    std::shared_ptr<BlockWave> m_wave;
    double m_time = 0, m_h = 0, m_lastEvent_s = 0, m_meanInterval_s = 0;
    long m_events = 0, m_counted = 0, m_steps = 0, m_rejected = 0, m_bases = 0;
    int m_sleeping = 0;
    bool m_jumped = true; ///< something switched at the present instant
};

} // namespace blinkwright::engine::large
