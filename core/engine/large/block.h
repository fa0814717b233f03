// One piece of a board, linearised about a base: its capacitor voltages in the eigenvectors of their
// Jacobian, and what leaves it (currents into the borders, comparator levels, lamp currents) as linear
// functions of them and of the border voltages. The base carries a plan: the trajectory at constant border
// voltages, by the exponential method exprb43 (see core/engine/exponential_step.h), good for `span_s`, and
// for border voltages that stay within `radius_V` of the base's. Both are found by solving the piece's own
// equations, before the plan is used.
//
//   Block block(std::move(piece));
//   block.configure(switches, outputs);
//   block.solve(y, v);                       // base at these capacitor and border voltages
//   block.plan(tolerances);
//   block.row(block.watchedRow(0)) ...       // Row: value, by mode, by border
#pragma once

#include "core/engine/large/partition.h"
#include "core/engine/linearisation.h"
#include "core/engine/network.h"
#include "core/engine/port_solver.h"

#include <deque>
#include <limits>
#include <memory>
#include <span>
#include <vector>

namespace blinkwright::engine::large {

struct BlockTolerances {
    double voltage_V = 1e-6; ///< error allowed in a capacitor voltage, comparator or border voltage
    double charge = 1e-6;    ///< error allowed in a lamp's charge, relative to its charge a flash
    double darkShare = 1e-3; ///< a lamp under this share of its rated current counts as if it carried that
};

/// The modes of a block and what drives them: z' = lambda z + force + (s^2) c2 + (s^3) c3 + F (v - v_base),
/// s being the time since the base.
struct ModeSet {
    std::span<double> lambda, force, c2, c3;
    std::span<double> byBorder; ///< n x r, rows
    std::span<double> vectors;  ///< y - y_base = vectors z; n x n, rows
    std::span<double> inverse;
};

/// A base and its plan.
struct BlockBase {
    static constexpr std::size_t notKept = static_cast<std::size_t>(-1);

    const Reduced* reduced = nullptr;
    std::span<double> y, u, slope;              ///< capacitor and border voltages; port voltages and slopes
    std::span<double> W, portByState, jacobian; ///< see Linearisation
    ModeSet modes;
    std::span<double> rate;                            ///< y' and border rows
    std::span<double> value, byMode, byBorder, c2, c3; ///< rows, see Block
    std::span<double> end;                             ///< the modes where the plan ends
    std::unique_ptr<double[]> room;                    ///< of all these
    double span_s = 0, radius_V = 0;
    double reach_V = 0; ///< how far capacitor voltages may be off from the plan's
    mutable double hint_s = 0, hintValue = 0, hintSpeed = 0; ///< where timeOf() was last
    int guide = 0; ///< the mode that moves most: tells where on the plan a point is
    bool linearised = false, planned = false, reusable = false;
    int next = -1;                        ///< the number of the base that was taken up after it last
    std::size_t number = 0;               ///< among the bases of its state of switches and outputs
    mutable std::size_t keptAt = notKept; ///< where the waveform has it

    /// A mode of the plan at a time from its begin.
    double modeAt(int mode, double s) const;
    /// When on the plan the guide is at a value; negative where it is not found. @param share a first guess.
    double timeOf(double guideValue, double share) const;
};

class Block {
  public:
    explicit Block(Piece piece);
    Block(Block&&) = default;
    Block(const Block&) = delete;

    const Piece& piece() const { return m_piece; }
    Network& network() const { return *m_network; }
    std::shared_ptr<Network> sharedNetwork() const { return m_network; }
    const Reduced& reduced() const { return *m_reduced; }
    int states() const { return m_n; }
    int borders() const { return m_r; }
    int timers() const { return m_timers; }
    int lamps() const { return static_cast<int>(m_lamps.size()); }
    bool isLinear() const { return m_reduced->m == 0; }

    /// Chooses the state of switches and outputs; counts a new phase for the lamps.
    void configure(const std::vector<bool>& switches, const std::vector<bool>& outputs);
    /// Makes the point with these capacitor and border voltages the base. @return false where the piece's
    /// equations have no solution or are singular there.
    bool solve(const double* y, const double* v);
    /// Finds span and radius. @param borderConductance how firmly the borders hold [S].
    /// @param time_s now.
    /// @param drift how fast the borders move [V/s].
    bool plan(const BlockTolerances& tolerances, double time_s, const double* borderConductance,
              double drift);
    /// What the comparators of a timer watch at a point, by its laws.
    bool watched(int timer, const double* yAndBorders, Watched& out);

    /// Takes up an earlier plan that passes near this point, border voltages included, instead of solving.
    /// @param least_s how much of the plan must be left, or half of it. @return false where there is none.
    bool adopt(const double* y, const double* v, double time_s, double least_s);
    /// The modes where the plan was taken up.
    const double* entry() const { return m_entry.data(); }
    bool isPlanned() const { return m_base && m_base->planned; }

    const BlockBase& now() const { return *m_base; }
    double begin_s() const { return m_begin_s; } ///< of the plan, had it been followed from its begin
    double based_s() const { return m_based_s; } ///< when it was taken up
    double span_s() const { return m_base->span_s; }
    double radius_V() const { return m_base->radius_V; }
    /// Of the last plan in this state of switches and outputs; 0 where there was none. [V]
    double lastRadius_V() const { return m_memory->radius_V; }
    const ModeSet& modes() const { return m_base->modes; }
    const double* base() const { return m_base->y.data(); } ///< capacitor voltages, then border voltages

    // Rows: border currents (drawn from the border), four a timer as in Watched, lamps.
    int rows() const { return m_rows; }
    int watchedRow(int timer) const { return m_r + 4 * timer; }
    const double* rowValue() const { return m_base->value.data(); }       ///< at the base
    const double* rowByMode() const { return m_base->byMode.data(); }     ///< rows x n
    const double* rowByBorder() const { return m_base->byBorder.data(); } ///< rows x r
    const double* rowC2() const { return m_base->c2.data(); }             ///< times s^2
    const double* rowC3() const { return m_base->c3.data(); }             ///< times s^3

    long adopted() const { return m_adopted; }
    long solves() const { return m_solves; }
    long rejected() const { return m_rejected; }

  private:
    struct Lamp {
        int junction = 0, port = 0;
        double phase_C = 0, cycle_C = 0, last_A = 0;
    };
    /// What is remembered of a state of switches and outputs.
    struct Memory {
        std::vector<std::unique_ptr<BlockBase>> bases;
        std::vector<bool> switches, outputs;
        const Reduced* reduced = nullptr;
        std::size_t oldest = 0;
        /// Of each base what adopt() asks first, close together: half the radius, span, the guide at the
        /// plan's end and at no capacitor voltages, its row, the border voltages. Not reusable: half the
        /// radius is negative.
        std::vector<double> index;
        double firstSpan_s = 0, radius_V = 0;
    };
    std::unique_ptr<BlockBase> newBase() const;
    int indexWidth() const { return 4 + m_n + m_r; }
    double* indexOf(const BlockBase* base);
    void enterIndex();
    BlockBase* room();
    const BlockBase* nearest(const double* y, const double* v) const;
    void countCharges(double time_s, const double* lampCurrents);
    void keepForLater(const BlockTolerances& tolerances, const double* borderConductance);
    bool eigen();
    void derivativeAndRows(const double* y, const double* u, const double* i, double* rate, double* rows);
    bool stage(const double* moved, const double* v, double* rate, double* rows);
    double timeToLevels() const;
    bool findSpan(const BlockTolerances& tolerances, const double* borderConductance);
    bool tryPlan(double h, const BlockTolerances& tolerances, const double* borderConductance);
    bool checkBetween(double h, const BlockTolerances& tolerances);
    struct Bend {
        double states = 0, rows = 0;
    };
    Bend bend(const BlockTolerances& tolerances, const double* borderConductance, double stay_s);
    void findRadius(const BlockTolerances& tolerances, const double* borderConductance, double drift);
    double rowError(const double* error, double h, double lasting_s, const BlockTolerances& tolerances,
                    const double* borderConductance) const;

    Piece m_piece;
    std::shared_ptr<Network> m_network;
    const Reduced* m_reduced = nullptr;
    int m_n = 0, m_r = 0, m_timers = 0, m_rows = 0;
    std::vector<Lamp> m_lamps;
    std::deque<Memory> m_memories;
    Memory* m_memory = nullptr;
    bool m_fresh = true; ///< the next base is the first in its state of switches and outputs

    BlockBase* m_base = nullptr;
    double m_begin_s = 0, m_based_s = 0, m_phaseBegin_s = 0, m_nextSpan_s = 0;
    double m_error = 0; ///< of the last attempt at a plan, over what is allowed
    long m_solves = 0, m_rejected = 0, m_adopted = 0;
    std::vector<double> m_i, m_guess, m_entry;
    Linearisation m_linear;
    PortSolver m_ports;
    // Room to work in.
    std::vector<double> m_at, m_stageU, m_stageI, m_stageSlope, m_stageRate, m_stageRows[2], m_left,
        m_byState;
    std::vector<double> m_c[2], m_d[2], m_F;
};

} // namespace blinkwright::engine::large
