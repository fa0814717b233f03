// Solves u = a + A y - Z i(u) for the port voltages at given capacitor voltages: after every switching, when
// all but the capacitor voltages jumps.
//
//   PortSolver solver;
//   bool found = solver.solve(reduced, y, u, guess);   // u: first guess in, solution out
#pragma once

#include "core/engine/network.h"

#include <vector>

namespace blinkwright::engine {

class PortSolver {
  public:
    /// Newton's method with cut steps; where that fails, the sources are raised from nothing in steps.
    /// @param i, slope port currents and slopes at the solution, out. @return false where neither finds a solution.
    bool solve(const Reduced& reduced, const double* y, double* u, double* i, double* slope, double* guess);

  private:
    bool newton(const Reduced& reduced, const double* sources, double* u, double* i, double* slope, double* guess);

    std::vector<double> m_sources, m_scaled, m_good, m_step, m_jacobian;
};

} // namespace blinkwright::engine
