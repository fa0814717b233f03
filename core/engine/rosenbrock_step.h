// One step of RODAS (rodas.h) on the reduced equations as they stand, algebraic port equations included: for
// boards with many capacitors, and where the exponential step says no.
#pragma once

#include "core/engine/charge.h"
#include "core/engine/linearisation.h"
#include "core/engine/point.h"
#include "core/engine/rodas.h"

#include <span>
#include <vector>

namespace blinkwright::engine {

class RosenbrockStep {
  public:
    void prepare(const Reduced& reduced, const Point& base, const Linearisation& linear);
    /// Fills y and u of `end`. @return false where the stage equations are singular.
    bool attempt(double h, Point& end);
    /// Error estimates of the last attempt: y, then u [V].
    const double* error() const { return m_k.data() + (rodas::stages - 1) * m_reduced->stride; }
    /// Charge through a junction during the last attempt and its error estimate [C].
    Charge charge(int junction, double slope) const;

    /// h, then y and u at the start and at the end, and the two vectors of the dense output.
    std::span<const double> dense();
    static std::size_t denseSize(int n, int m) { return 1 + 4 * static_cast<std::size_t>(n + m); }
    /// y and u at a time t [s] from the step's base.
    static void evaluate(const double* dense, int n, int m, double t, double* y, double* u);

  private:
    void stage(int index, const double* currents);

    const Reduced* m_reduced = nullptr;
    const Point* m_base = nullptr;
    const Linearisation* m_linear = nullptr;
    double m_h = 0;
    Point m_stage;
    std::vector<double> m_T;        ///< columns: -D G W above W
    std::vector<double> m_WA;       ///< columns: nothing above W A
    std::vector<double> m_S;        ///< (1/(h gamma) - J)^-1, rows
    std::vector<double> m_k;        ///< a column a stage
    std::vector<double> m_currents; ///< port currents, a row a stage
    std::vector<double> m_ports;    ///< port voltages, a row a stage
    std::vector<double> m_work, m_guess, m_dense;
    std::vector<int> m_swaps;
};

} // namespace blinkwright::engine
