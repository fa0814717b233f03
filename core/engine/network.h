// Port reduction: the linear part of a board is factored once for each state of its switches and outputs, so
// that only the few nonlinear port voltages u and the capacitor voltages y are left to compute with:
//
//     u  = a + A y - Z i(u)          (algebraic)
//     y' = b + B y - D i(u)          (capacitor charges)
//
// Every node voltage and branch current is a linear function of y and i(u) and is rebuilt from them only when
// asked for.
//
//   Network net(board);
//   const Reduced& r = net.reduced(switchesClosed, outputsHigh);
//   r.currents(u, i, slope, guesses);
#pragma once

#include "core/devices/board.h"
#include "core/devices/laws.h"
#include "core/engine/port_law.h"

#include <cstdint>
#include <map>
#include <memory>
#include <span>
#include <vector>

namespace blinkwright::engine {

/// One nonlinear current: controlled by one port voltage u, drawn from node `from` and given to node `to`.
struct Port {
    PortKind kind{};
    int index = 0;         ///< junction or timer
    bool low = false;      ///< timer output low in this state
    double reference = 0;  ///< conductance lent to the linear part and taken back exactly from the law [S]
    double series = 0;     ///< series resistance that is part of the port [ohm]
    double parameter[2]{}; ///< of outputCmos: resistance, limit; else unused
};

/// What the comparators and the start-up watch, per timer.
struct Watched {
    double trigger;   ///< trigger level less pin 2 [V]; above 0: tripped
    double threshold; ///< pin 6 less threshold level [V]; above 0: tripped
    double reset;     ///< reset level less pin 4 [V]; above 0: active
    double supply;    ///< pin 8 less 0.8 x nominal supply [V]
};
inline constexpr double neverTripped = -1e3; ///< value of a comparator whose pin is not connected [V]

/// The reduced equations for one state of switches and outputs. Matrices are dense, row by row.
struct Reduced {
    int n = 0; ///< capacitors
    int m = 0; ///< ports
    const devices::Board* board = nullptr;
    std::vector<Port> ports;
    std::vector<bool> closed;                         ///< by switch
    std::vector<devices::OutputHighCurve> highCurves; ///< by timer
    std::vector<int> lampPort;                        ///< port of each junction, by junction index
    std::vector<double> a, A, Z, b, B, D;
    /// The same as one matrix for the inner loop: column by column, each `stride` long, first of y, then of
    /// i(u); the rows are y' and then the port equations without -u. `constant` goes with it.
    int stride = 0;
    std::vector<double> columns, constant;
    /// Four rows a timer in the order of Watched: c0 + Cy y - Ci i(u).
    std::vector<double> c0, Cy, Ci;
    /// All nodes, then supply currents (out of plus), then capacitor currents (into plus): x0 + Xy y - Xi
    /// i(u).
    std::vector<double> x0, Xy, Xi;
    int unknowns = 0;

    /// Port currents less what the reference conductances carry, and their slopes di/du.
    /// @param guess one warm start a port, updated.
    void currents(const double* u, double* i, double* slope, double* guess) const;
    /// dy/dt [V/s].
    void derivative(const double* y, const double* i, double* out) const;
    /// The current that a junction truly carries, from what `currents` gave.
    double junctionCurrent(int port, double u, double i) const {
        const Port& p = ports[static_cast<std::size_t>(port)];
        return (i + p.reference * u) / (1 - p.reference * p.series);
    }
    Watched watched(int timer, const double* y, const double* i) const;
    /// Rebuilds all unknowns; `x` has `unknowns` entries.
    void rebuild(const double* y, const double* i, double* x) const;
};

/// Numbers the unknowns of a board once and hands out its reduced equations state by state.
class Network {
  public:
    explicit Network(devices::Board board);
    Network(const Network&) = delete;
    Network& operator=(const Network&) = delete;

    const devices::Board& board() const { return m_board; }
    /// @param switches one flag a switch: closed. @param outputs one flag a timer: output high.
    const Reduced& reduced(const std::vector<bool>& switches, const std::vector<bool>& outputs);

    int nodes() const { return m_nodes; } ///< board nodes and the inner ones (open pins 3 and 5)
    /// The unknown that holds a timer pin's voltage, or devices::open.
    int pinNode(int timer, int pin) const {
        return m_pins[static_cast<std::size_t>(timer)][static_cast<std::size_t>(pin)];
    }
    int supplyUnknown(int supply) const { return m_nodes + supply; }
    int capacitorUnknown(int capacitor) const {
        return m_nodes + static_cast<int>(m_board.supplies.size()) + capacitor;
    }

  private:
    Reduced reduce(const std::vector<bool>& switches, const std::vector<bool>& outputs) const;

    const devices::Board m_board;
    int m_nodes = 0;
    std::vector<std::array<int, 8>> m_pins;
    std::vector<std::pair<int, int>> m_pinTies; ///< node, pin 1 node: hang on 1e-12 S
    std::vector<int> m_groundTies;              ///< one node of each group without a path to 0 V
    std::map<std::vector<bool>, std::unique_ptr<Reduced>> m_cache;
};

} // namespace blinkwright::engine
