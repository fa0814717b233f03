// Solves u = a + A y - Z i(u) for the port voltages at given capacitor voltages: after every switching, when
// all but the capacitor voltages jumps.
//
//   PortSolver solver;
//   bool found = solver.solve(reduced, y, u, guess);   // u: first guess in, solution out
#pragma once

#include "core/engine/network.h"

#include <vector>

namespace blinkwright::engine {

/// The port equations' inverse matrix W = (I + Z G)^-1 at a point near by, and the slopes G it belongs to.
struct NearbyInverse {
    const double* W = nullptr; ///< rows
    const double* slope = nullptr;
};

class PortSolver {
  public:
    /// Newton's method with steps cut port by port; where that fails, with steps damped as a whole; where
    /// that fails too, the sources are raised from nothing in steps.
    /// @param nearby spares most of the work where the solution is near that point.
    /// @param i, slope port currents and slopes at the solution, out. @return false where neither finds a
    /// solution.
    bool solve(const Reduced& reduced, const double* y, double* u, double* i, double* slope, double* guess,
               const NearbyInverse* nearby = nullptr);

  private:
    bool newton(const Reduced& reduced, const double* sources, double* u, double* i, double* slope,
                double* guess, const NearbyInverse* nearby);
    bool damped(const Reduced& reduced, const double* sources, double* u, double* i, double* slope,
                double* guess);
    void residual(const Reduced& reduced, const double* sources, const double* u, const double* i);
    double inverseTimesResidual(const double* u, std::vector<double>& out) const;
    bool fullStep(const Reduced& reduced, const double* slope);
    bool nearbyStep(const Reduced& reduced, const double* slope, const NearbyInverse& nearby);

    std::vector<double> m_sources, m_scaled, m_good, m_step, m_jacobian, m_residual, m_changed;
    std::vector<double> m_from, m_next; ///< of damped steps only
    std::vector<int> m_swaps;
};

} // namespace blinkwright::engine
