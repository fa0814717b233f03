// The blocks of a board on their borders, stepped through time together. Every block keeps its own base, plan
// and error control; what couples them is the border voltages. Between two events these are, for each border,
//
//     V(s) = p0 + p1 s + p2 s^2 + sum of amplitude e^(rate s)
//
// where the exponentials are those of the capacitors across the borders. The modes of all blocks answer to
// V(s) exactly, so that the current balance of the borders, asked for at the middle and the end of a step, is
// a small linear system for p1 and p2, however stiff. A step costs some arithmetic for each mode and solves
// no laws; only a block that leaves its plan's span or radius is solved anew, by itself.
//
//   Assembly all(std::move(partition), tolerances);
//   all.configure(block, switches, outputs);        // the blocks whose switches or outputs changed
//   all.settle();                                   // borders and blocks at one instant
//   if (all.attempt(h) <= 1) all.advance(h);        // error over what is allowed
#pragma once

#include "core/engine/large/block.h"

#include <functional>
#include <vector>

namespace blinkwright::engine::large {

/// Border voltages within a step.
struct BorderCurve {
    std::vector<double> p0, p1, p2; ///< by border
    std::vector<double> rate;       ///< of each exponential
    std::vector<double> amplitude;  ///< exponentials x borders, rows

    double at(int border, double s) const {
        const auto b = static_cast<std::size_t>(border);
        double v = p0[b] + s * (p1[b] + s * p2[b]);
        for (std::size_t m = 0; m < rate.size(); ++m)
            v += amplitude[m * p0.size() + b] * std::exp(rate[m] * s);
        return v;
    }
};

/// What a timer watches, and how that moves.
struct Look {
    Watched now{}, rate{}; ///< [V], [V/s]
    double fastest = 0;    ///< the most that any of it moves at while the borders rest [V/s]
    double gain = 0;       ///< the most that any of it moves for a volt of the borders
};

class Assembly {
  public:
    Assembly(Partition partition, const BlockTolerances& tolerances);

    int borders() const { return m_r; }
    const std::vector<devices::Node>& borderNodes() const { return m_borderNodes; }
    int blocks() const { return static_cast<int>(m_blocks.size()); }
    const Block& block(int k) const { return m_blocks[static_cast<std::size_t>(k)]; }
    int firstMode(int block) const { return m_first[static_cast<std::size_t>(block)]; }
    const std::vector<double>& modeStates() const { return m_z; }
    double time_s() const { return m_time; }
    void setTime(double time_s) { m_time = time_s; }

    /// From the capacitors' initial voltages; every block must then be configured.
    void powerOn();
    /// New switches and outputs of a block; settle() must follow.
    void configure(int block, const std::vector<bool>& switches, const std::vector<bool>& outputs);
    /// The block's laws are solved anew at the next settle().
    void renew(int block) { stale(block, mustBeSolved); }
    /// New bases for the blocks that need one, and the border voltages of this instant. @return false where
    /// no solution was found.
    bool settle();
    /// Called with each block that got a new base.
    std::function<void(int)> onBase;

    /// How long a step may be before a plan ends; plans that would end within `wish_s` and are worn are
    /// renewed.
    /// @return false where a block has no solution.
    bool reach(double wish_s, double& most_s);
    /// Border voltages for a step of length h. @return their error over what is allowed.
    double attempt(double h);
    /// How far the attempt takes a border from the base of any block, over the block's radius. Blocks that it
    /// takes too far and whose base is older than this instant get a new one at the next settle().
    double excursion();
    /// How much the borders move during the attempt, found by excursion(), and have moved since the begin,
    /// all ways added up [V].
    double attemptVariation() const { return m_attemptVariation; }
    double variation() const { return m_variation; }
    bool isSettled() const { return m_settled; }
    const BorderCurve& curve() const { return m_curve; }
    /// Ends the step at s <= h; `end_s` is the time then, to the last digit.
    void advance(double s, double end_s);

    /// What a timer of a block watches now.
    Look look(int block, int timer) const;
    /// At the end of the attempt.
    Watched watchedAtEnd(int block, int timer) const;
    /// At a time s of the attempt.
    Watched watchedAt(int block, int timer, double s);
    /// The same by the block's laws. @return false where they have no solution.
    bool watchedNowExactly(int block, int timer, Watched& out);
    bool watchedExactly(int block, int timer, double s, Watched& out);

    long adopted() const;
    long solves() const;
    long rejected() const;

  private:
    void capacitorVoltages(int block, const double* z, double* y) const;
    /// Whether a block needs a new base.
    enum Stale : char { fine, worn, mustBeSolved };
    void stale(int block, Stale how) {
        auto& now = m_stale[static_cast<std::size_t>(block)];
        if (now == fine) m_staleBlocks.push_back(block);
        now = std::max(now, how);
        m_settled = false;
    }
    void answerToAll(double h, const double* expA, const double* expH, const bool* apart);
    void answerToOne(double h);
    void advanceOne(double s);
    bool balance();
    void addUp();
    void load(int block);
    void findFast();
    Watched watched(int block, int timer, const double* z, const double* v, double s) const;
    double modeAt(int mode, double s) const;

    BlockTolerances m_tol;
    std::vector<devices::Node> m_borderNodes;
    std::vector<Block> m_blocks;
    std::vector<int> m_first;   ///< mode, by block
    std::vector<Stale> m_stale; ///< by block
    std::vector<int> m_staleBlocks, m_unplanned;
    std::vector<double> m_based, m_until; ///< by block: when its plan was taken up, when it ends
    std::vector<char> m_planned;          ///< by block: its base has a plan
    int m_r = 0, m_M = 0;
    double m_time = 0;
    bool m_settled = false; ///< borders and bases are those of this instant
    bool m_reset = true;    ///< no block has a base yet: m_start holds the capacitor voltages
    std::vector<std::vector<double>> m_start;

    // By mode.
    std::vector<double> m_lambda, m_z, m_force, m_c2, m_c3, m_begin;
    std::vector<double> m_byBorder, m_draw; ///< borders x modes
    std::vector<double> m_zEnd, m_r1, m_r2, m_phi;
    /// What a block draws from a border, and how far that may be off its base.
    struct Link {
        int border = 0, block = 0;
        double base = 0, radius = 0;
        double constant = 0, c2 = 0, c3 = 0, begin_s = 0;
    };
    std::vector<Link> m_links;                ///< block by block
    std::vector<double> m_own;                ///< conductances of each block's borders, block by block
    std::vector<int> m_firstLink, m_firstOwn; ///< by block
    int m_changes = 0;                        ///< of the conductances since they were added up
    std::vector<double> m_conductance;        ///< r x r, of all blocks together
    std::vector<double> m_diagonal;           ///< of it, for the blocks' error tests
    std::vector<double> m_V, m_VEnd, m_VSome, m_before, m_last, m_some, m_right, m_matrix;
    // Capacitors across the borders.
    std::vector<int> m_fastModes;
    std::vector<double> m_fastShare; ///< by fast mode: its rate without the exponentials
    BorderCurve m_fast;              ///< rates and amplitudes found at this instant
    double m_wish_s = 0;             ///< as long as the next step should be
    double m_h = 0, m_variation = 0, m_attemptVariation = 0;
    double m_drift = 0; ///< of the borders over the last step [V/s]
    BorderCurve m_curve;
};

} // namespace blinkwright::engine::large
