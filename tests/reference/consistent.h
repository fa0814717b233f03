// Consistent values after a switching: the capacitor voltages stand, every algebraic unknown is solved anew,
// by Newton's method on the full equations.
//
//   ConsistentValues solver(layout);
//   bool found = solver.solve(equations, y, yp);   // y: first guess in, solution out; yp: the derivatives
#pragma once

#include "tests/reference/equations.h"

#include <cstdint>
#include <vector>

namespace blinkwright::reference {

class ConsistentValues {
  public:
    explicit ConsistentValues(const Layout& layout);

    /// @param y all unknowns; the differential ones are kept. Where Newton's method fails from the guess,
    /// sources and capacitor voltages are raised from nothing in steps.
    /// @param yp derivatives of all unknowns, the algebraic ones' too, which a first step is predicted with.
    bool solve(const Equations& equations, double* y, double* yp);

  private:
    bool newton(const Equations& equations, double drive, double* y);
    bool raise(const Equations& equations, double* y);
    bool factor(const Equations& equations, const double* y);
    void substitute(double* right);

    int m_algebraic, m_size;
    std::vector<double> m_jacobian, m_residual, m_zero, m_try, m_good;
    std::vector<double*> m_columns;
    std::vector<std::int64_t> m_pivots;
};

} // namespace blinkwright::reference
