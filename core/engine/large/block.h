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

#include <limits>
#include <map>
#include <memory>
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
    std::vector<double> lambda, force, c2, c3;
    std::vector<double> byBorder; ///< n x r, rows
    std::vector<double> vectors;  ///< y - y_base = vectors z; n x n, rows
    std::vector<double> inverse;
};

class Block {
  public:
    static constexpr double never = std::numeric_limits<double>::infinity();

    explicit Block(Piece piece);

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
    /// @param begin_s time of the base.
    /// @param drift how fast the borders move [V/s].
    bool plan(const BlockTolerances& tolerances, double begin_s, const double* borderConductance,
              double drift);
    /// What the piece draws from its borders at other border voltages and the base's capacitor voltages, by
    /// its laws. @return false where there is no solution.
    bool drawn(const double* v, double* current);
    /// What the comparators of a timer watch at a point, by its laws.
    bool watched(int timer, const double* yAndBorders, Watched& out);

    double begin_s() const { return m_begin_s; }
    double span_s() const { return m_span_s; }
    double radius_V() const { return m_radius_V; }
    /// Of the last plan in this state of switches and outputs; 0 where there was none. [V]
    double lastRadius_V() const { return m_memory->radius_V; }
    const ModeSet& modes() const { return m_modes; }
    const double* base() const { return m_y.data(); } ///< capacitor voltages, then border voltages
    const double* basePorts() const { return m_u.data(); }
    const Linearisation& linear() const { return m_linear; }

    // Rows: border currents (drawn from the border), four a timer as in Watched, lamps.
    int rows() const { return m_rows; }
    int watchedRow(int timer) const { return m_r + 4 * timer; }
    const double* rowValue() const { return m_value.data(); }       ///< at the base
    const double* rowByMode() const { return m_byMode.data(); }     ///< rows x n
    const double* rowByBorder() const { return m_byBorder.data(); } ///< rows x r
    const double* rowC2() const { return m_c2.data(); }             ///< times s^2
    const double* rowC3() const { return m_c3.data(); }             ///< times s^3

    long solves() const { return m_solves; }
    long rejected() const { return m_rejected; }

  private:
    struct Lamp {
        int junction = 0, port = 0;
        double phase_C = 0, cycle_C = 0, last_A = 0;
    };
    /// What is remembered of a state of switches and outputs.
    struct Memory {
        std::vector<double> u;
        double firstSpan_s = 0, radius_V = 0;
    };
    bool eigen();
    void derivativeAndRows(const double* y, const double* u, const double* i, double* rate, double* rows);
    bool stage(const double* moved, const double* v, double* rate, double* rows);
    double timeToLevels() const;
    bool findSpan(const BlockTolerances& tolerances, const double* borderConductance);
    bool tryPlan(double h, const BlockTolerances& tolerances, const double* borderConductance);
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
    std::map<const Reduced*, Memory> m_memories;
    Memory* m_memory = nullptr;
    bool m_fresh = true; ///< the next base is the first in its state of switches and outputs

    double m_begin_s = 0, m_span_s = 0, m_radius_V = 0, m_phaseBegin_s = 0, m_nextSpan_s = 0;
    double m_error = 0; ///< of the last attempt at a plan, over what is allowed
    long m_solves = 0, m_rejected = 0;
    std::vector<double> m_y, m_u, m_i, m_slope, m_guess;
    Linearisation m_linear;
    bool m_linearised = false; ///< m_linear and m_slope belong to the present state of switches and outputs
    ModeSet m_modes;
    std::vector<double> m_rate; ///< y' and border rows at the base
    std::vector<double> m_value, m_byMode, m_byBorder, m_c2, m_c3;
    PortSolver m_ports;
    // Room to work in.
    std::vector<double> m_at, m_stageU, m_stageI, m_stageSlope, m_stageRate, m_stageRows[2], m_left,
        m_byState;
    std::vector<double> m_c[2], m_d[2], m_F;
};

} // namespace blinkwright::engine::large
