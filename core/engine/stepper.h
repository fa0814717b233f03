// One state of switches and outputs stepped through time: RODAS on the reduced equations, with the charge
// through each lamp carried along so that its error is controlled too.
//
//   Stepper s(tolerances);
//   s.setStart(y);
//   s.enter(reduced);                    // solves the port voltages for these capacitor voltages
//   double error = s.attempt(h);         // <= 1: good
//   s.accept();                          // the end of the attempt becomes the base
#pragma once

#include "core/engine/dense_lu.h"
#include "core/engine/network.h"

#include <vector>

namespace blinkwright::engine {

struct Tolerances {
    double voltage_V = 1e-6; ///< error a step allowed in a capacitor voltage
    double charge = 1e-6;    ///< error a step allowed in a lamp's charge, relative to its charge a flash
    double port_V = 0.05;    ///< error a step allowed in a port voltage: a guard, the charges are the measure
    double darkShare =
        1e-3; ///< a lamp under this share of its rated current counts as if it carried that much
};

/// A point of the trajectory: capacitor voltages, port voltages, port currents and slopes.
struct Point {
    std::vector<double> y, u, i, slope;
};

/// What one step's dense output needs besides its ends: two vectors of n + m numbers, y first.
struct DenseStep {
    const double* p;
    const double* q;
};

class Stepper {
  public:
    explicit Stepper(Tolerances tolerances) : m_tol(tolerances) {}

    /// Sets the capacitor voltages that the next enter() begins at.
    void setStart(std::vector<double> y) { m_base.y = std::move(y); }
    /// Begins a state at the present capacitor voltages: solves the port voltages, starting from those
    /// remembered of this state. @return false where no solution was found.
    bool enter(const Reduced& reduced);

    /// Tries a step of length h [s] from the base. @return the error over what is allowed; not finite if it
    /// failed.
    double attempt(double h);
    /// The end of the last attempt becomes the base.
    void accept();
    /// Starts a new count of charges for the error test (a switching of the first timer's output).
    void newPhase();

    const Reduced& reduced() const { return *m_reduced; }
    const Point& base() const { return m_base; }
    const Point& end() const { return m_end; }
    /// Largest |dy/dt| at the base [V/s].
    double speed() const;
    DenseStep dense() const;
    /// y and u at a share of the last attempt, 0 at its base, 1 at its end; currents evaluated there.
    void inside(double share, Point& out);

  private:
    bool solvePorts();
    bool newton(const double* c);
    bool linearise();
    void derivative(const double* y, const double* i, double* out) const;

    Tolerances m_tol;
    const Reduced* m_reduced = nullptr;
    Point m_base, m_end, m_stage;
    std::vector<double> m_guess;
    std::vector<int> m_lamps; ///< junctions whose charge is carried
    std::vector<double> m_charge, m_cycleCharge,
        m_lastCharge; ///< this phase; last phases; of the last attempt
    double m_phaseTime = 0;
    double m_h = 0;

    DenseLu m_portLu, m_stateLu, m_newtonLu;
    std::vector<double> m_WA;    ///< (I + Z G)^-1 A, m x n
    std::vector<double> m_EA;    ///< D G (I + Z G)^-1 A - B, n x n
    std::vector<double> m_k;     ///< stages x (n + m + lamps)
    std::vector<double> m_dense; ///< p and q
    std::vector<double> m_work, m_r, m_column;
    std::map<const Reduced*, std::vector<double>> m_remembered;
};

} // namespace blinkwright::engine
