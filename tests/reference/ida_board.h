// The independent reference: a board run from power-on by SUNDIALS IDA on its full, unreduced equations, with
// IDA's own root finding on the comparators. Shares nothing with the engine but the plain numbers of the
// board.
//
//   IdaBoard reference(board, {.relative = 1e-10});
//   Trace trace = reference.run({.switchings = 40});
//   trace.switchings[3].time_s;      // second fall of the output, if there is one timer
//   trace.switchings[3].charge_C[0]; // through the first junction since the switching before
// Throws std::runtime_error where IDA gives up.
#pragma once

#include "core/devices/board.h"

#include <limits>
#include <memory>
#include <vector>

namespace blinkwright::reference {

/// How IDA is run.
struct Settings {
    double relative = 1e-8;
    double voltage = 1e-8;      ///< absolute tolerance of voltages [V]
    double current = 1e-10;     ///< absolute tolerance of supply and capacitor currents [A]
    double charge = 1e-13;      ///< absolute tolerance of lamp charges [C]
    bool testAlgebraic = false; ///< whether algebraic unknowns are in the error test
    bool quadratures = true;    ///< lamp charges as quadratures; else as unknowns of their own
    int maxOrder = 5;
    double firstStep = 1;        ///< times IDA's own guess of the first step after a restart
    double newton = 0.33;        ///< IDA's coefficient in the convergence test of its Newton iteration
    double jacobianRatio = 0.25; ///< change of IDA's leading coefficient that asks for a new Jacobian
};

/// One change of one timer's output.
struct OutputChange {
    double time_s = 0;
    int timer = 0;
    bool high = false;
    std::vector<double>
        charge_C; ///< by junction (0 for diodes): since the switching before, or since power-on
};

struct Trace {
    std::vector<OutputChange> switchings;
    double reached_s = 0;
    long steps = 0, residuals = 0, jacobians = 0, restarts = 0;
};

struct Limits {
    int switchings = std::numeric_limits<int>::max(); ///< of the first timer
    double until_s = 1e6;
};

class IdaBoard {
  public:
    IdaBoard(const devices::Board& board, const Settings& settings);
    ~IdaBoard();
    IdaBoard(const IdaBoard&) = delete;
    IdaBoard& operator=(const IdaBoard&) = delete;

    /// From power-on. May be called again: what was set up is used again.
    Trace run(const Limits& limits);

  private:
    class Work;
    std::unique_ptr<Work> m_work;
};

} // namespace blinkwright::reference
