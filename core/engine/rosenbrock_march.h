// Marches the state of any board by the Rosenbrock step (rosenbrock_step.h): for boards that the exponential
// march does not take.
//
//   RosenbrockMarch march;
//   march.enter(reduced, y, guess);          // after every switching
//   march.attempt(h); march.accept();
#pragma once

#include "core/engine/linearisation.h"
#include "core/engine/port_solver.h"
#include "core/engine/rosenbrock_step.h"

#include <vector>

namespace blinkwright::engine {

class RosenbrockMarch {
  public:
    /// Solves the port voltages at y, starting from those of before where the state is the same.
    /// @return false where no solution was found.
    bool enter(const Reduced& reduced, const double* y);
    /// Error estimates over what is allowed, the largest; infinite where the step failed.
    double attempt(double h, double voltageAllowed_V, double portAllowed_V);
    /// The trajectory at time t [s] of the last attempt becomes the end.
    void endAt(double t);
    /// @return false where the equations at the end can not be linearised.
    bool accept();

    const Point& base() const { return m_base; }
    const Point& end() const { return m_end; }
    /// Charge through a junction during the last attempt, whatever its end [C].
    Charge charge(int junction) const;
    std::span<const double> dense() { return m_step.dense(); }
    std::vector<double> rate() const;

  private:
    bool solveEnd();

    const Reduced* m_reduced = nullptr;
    Point m_base, m_end;
    Point m_solved;  ///< the end of the last attempt, ports solved
    double m_h = -1; ///< its length [s]
    std::vector<double> m_guess;
    Linearisation m_linear;
    RosenbrockStep m_step;
    PortSolver m_ports;
};

} // namespace blinkwright::engine
