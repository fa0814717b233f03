// One state of switches and outputs stepped through time, with the charge through each lamp carried along so
// that its error is controlled too.
//
//   Stepper s(tolerances);
//   s.setStart(y);
//   s.enter(reduced);                    // solves the port voltages for these capacitor voltages
//   double error = s.attempt(h);         // <= 1: good
//   s.inside(0.5 * h, point);            // the trajectory within the attempt
//   s.truncate(0.7 * h);                 // ends the attempt earlier
//   s.accept();                          // its end becomes the base
#pragma once

#include "core/engine/exponential_step.h"
#include "core/engine/point.h"
#include "core/engine/port_solver.h"
#include "core/engine/rosenbrock_step.h"

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

/// How a step's dense output is to be evaluated.
enum class StepKind { exponential, rosenbrock };

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
    /// Ends the last attempt earlier, at time t [s] from its base.
    bool truncate(double t);
    /// The end of the last attempt becomes the base.
    void accept();
    /// Starts a new count of charges for the error test (a switching of the first timer's output).
    void newPhase();

    const Reduced& reduced() const { return *m_reduced; }
    const Point& base() const { return m_base; }
    const Point& end() const { return m_end; }
    std::vector<double> capacitorVoltages() const;
    /// Largest |dy/dt| at the base [V/s].
    double speed() const;
    /// The trajectory at time t [s] from the base of the last attempt. @return false where it cannot be
    /// solved.
    bool inside(double t, Point& out);

    StepKind kind() const { return m_exponential ? StepKind::exponential : StepKind::rosenbrock; }
    /// Whether the trajectory within an attempt is as exact as its end.
    bool denseIsExact() const { return m_exponential; }
    std::span<const double> dense();

  private:
    bool prepare();
    NearbyInverse nearby() const { return {m_linear.W.data(), m_base.slope.data()}; }
    double chargeError(double h);

    Tolerances m_tol;
    const Reduced* m_reduced = nullptr;
    std::optional<std::vector<double>>
        m_start; ///< capacitor voltages for the next enter(), if set from outside
    Point m_base, m_end;
    double m_h = 0;

    struct Lamp {
        int junction = 0;
        double phase_C = 0; ///< since the phase began
        double cycle_C = 0; ///< of the phases before, the larger ones counting longer
        double last_C = 0;  ///< within the last attempt
    };
    std::vector<Lamp> m_lamps;
    double m_phaseTime_s = 0;

    Linearisation m_linear;
    ExponentialStep m_exponentialStep;
    RosenbrockStep m_rosenbrockStep;
    bool m_exponential = true;
    std::vector<double> m_guess;
    PortSolver m_ports;
    std::map<const Reduced*, std::vector<double>> m_remembered;
};

} // namespace blinkwright::engine
