// One state of switches and outputs stepped through time: RODAS on the reduced equations, with the charge
// through each lamp carried along so that its error is controlled too.
//
//   Stepper s(tolerances);
//   s.setStart(y);
//   s.enter(reduced);                    // solves the port voltages for these capacitor voltages
//   double error = s.attempt(h);         // <= 1: good
//   s.accept();                          // the end of the attempt becomes the base
#pragma once

#include "core/engine/network.h"
#include "core/engine/port_solver.h"

#include <map>
#include <optional>
#include <vector>

namespace blinkwright::engine {

struct Tolerances {
    double voltage_V = 1e-6; ///< error a step allowed in a capacitor voltage
    double charge = 1e-6;    ///< error a step allowed in a lamp's charge, relative to its charge a flash
    double port_V = 0.05;    ///< error a step allowed in a port voltage: a guard, the charges are the measure
    double darkShare =
        1e-3; ///< a lamp under this share of its rated current counts as if it carried that much
};

/// A point of the trajectory: capacitor voltages y and port voltages u in one vector, port currents and
/// slopes.
struct Point {
    int n = 0;
    std::vector<double> z, i, slope; ///< z is padded to the stride of the reduced equations

    const double* y() const { return z.data(); }
    const double* u() const { return z.data() + n; }
    double* y() { return z.data(); }
    double* u() { return z.data() + n; }
    void resize(const Reduced& reduced);
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
    void setStart(std::vector<double> y) { m_start = std::move(y); }
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
    std::vector<double> capacitorVoltages() const;
    /// Largest |dy/dt| at the base [V/s].
    double speed();
    DenseStep dense();
    /// y and u at a share of the last attempt, 0 at its base, 1 at its end; currents evaluated there.
    void inside(double share, Point& out);

  private:
    bool linearise();
    bool factorFor(double h);
    void stage(int index, double h, const double* currents);
    double chargeError(double h);
    void finishDense();
    void residual(const Point& at, const double* currents, double* out) const;

    Tolerances m_tol;
    const Reduced* m_reduced = nullptr;
    std::optional<std::vector<double>>
        m_start; ///< capacitor voltages for the next enter(), if set from outside
    Point m_base, m_end, m_stage;
    std::vector<double> m_guess;
    double m_h = 0;
    bool m_denseDone = false;

    struct Lamp {
        int junction = 0;
        double phase_C = 0; ///< since the phase began
        double cycle_C = 0; ///< of the phases before, the larger ones counting longer
        double last_C = 0;  ///< within the last attempt
        double k[6]{};      ///< stage values
    };
    std::vector<Lamp> m_lamps;
    double m_phaseTime_s = 0;

    // With W = (I + Z G)^-1 and G the slopes at the base:
    std::vector<double> m_W;     ///< rows
    std::vector<double> m_T;     ///< columns: -D G W above W
    std::vector<double> m_WA;    ///< columns: nothing above W A
    std::vector<double> m_state; ///< D G W A - B, rows
    std::vector<double> m_S;     ///< (1/(h gamma) + D G W A - B)^-1, rows
    std::vector<double> m_k;     ///< a column a stage
    std::vector<double> m_dense; ///< p, then q
    std::vector<double> m_work;
    std::vector<int> m_swaps;
    PortSolver m_ports;
    std::map<const Reduced*, std::vector<double>> m_remembered;
};

} // namespace blinkwright::engine
