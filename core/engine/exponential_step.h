// One step of the exponential Rosenbrock method exprb43 (order 4, embedded order 3; M. Hochbruck, A.
// Ostermann, J. Schweitzer, "Exponential Rosenbrock-type methods", SIAM J. Numer. Anal. 47 (2009) 786-803) on
// y' = F(y), where F solves the port equations inside. The linear part, fast and slow alike, is taken
// exactly, so that a step is as long as the circuit is nearly linear, and the short transients after a
// switching cost nothing.
//
//     y(t) = y + t phi1(tJ) F + t (t/h)^2 phi3(tJ) E3 + t (t/h)^3 phi4(tJ) E4,    0 <= t <= h
//     E3 = 16 D2 - 2 D3,  E4 = -48 D2 + 12 D3,  Dk = F(Uk) - F - J (Uk - y)
//
// holds within the step too: its dense output. All is computed in the eigenvectors of J; those of a network
// of resistances and capacitances are real. Where they are not, or are nearly dependent, prepare() says no.
#pragma once

#include "core/engine/network.h"
#include "core/engine/point.h"
#include "core/engine/port_solver.h"

#include <span>
#include <vector>

namespace blinkwright::engine {

/// What the exponential step needs of its base.
struct ExponentialBase {
    const Reduced* reduced = nullptr;
    const double* y = nullptr;
    const double* u = nullptr;
    const double* i = nullptr;
    const double* jacobian = nullptr;    ///< n x n, rows
    const double* portByState = nullptr; ///< du/dy, m x n, rows
    NearbyInverse inverse;
};

class ExponentialStep {
  public:
    static constexpr int mostStates = 12;

    /// @return false where the method cannot be used from this base.
    bool prepare(const ExponentialBase& base);
    /// Capacitor voltages at the end of a step of length h, and the error estimate of each [V].
    /// @return false where the port equations could not be solved at a stage.
    bool attempt(double h, double* y, double* error);
    /// Charge through a junction during the last attempt and its error estimate [C].
    Charge charge(int junction, double slope) const;

    /// Numbers that evaluate() needs, laid out for keeping.
    std::span<const double> dense() const { return m_dense; }
    static std::size_t denseSize(int n) { return static_cast<std::size_t>(1 + n * (n + 5)); }
    /// y at a time t [s] from the step's base.
    static void evaluate(const double* dense, int n, double t, double* y);

  private:
    bool solve(const double* y, int stage);
    bool eigen();

    ExponentialBase m_base;
    int m_n = 0, m_m = 0;
    double m_h = 0;
    std::vector<double> m_F, m_inverse, m_dense, m_stageY, m_u, m_slope, m_guess, m_rate;
    /// By stage: eigen-coordinates of U - y, D, port currents, and junction currents by port.
    std::vector<double> m_c[2], m_d[2], m_i[2], m_junction[2];
    PortSolver m_ports;
};

} // namespace blinkwright::engine
