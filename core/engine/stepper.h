// One step of the trajectory with error control: the exponential march where the board allows it, else the
// Rosenbrock march. The error test holds capacitor voltages and the charges of the lamps.
//
//   Stepper stepper(tolerances, accuracy);
//   stepper.setStart(y);
//   stepper.enter(reduced);                 // after every switching: ports solved anew
//   double error = stepper.attempt(h);      // 1 and less: good
//   stepper.accept();
#pragma once

#include "core/engine/exponential_march.h"
#include "core/engine/rosenbrock_march.h"

#include <optional>
#include <utility>
#include <vector>

namespace blinkwright::engine {

struct Tolerances {
    double accuracy = 1e-6;  ///< as asked for; what is neglected in a step is far below it
    double voltage_V = 1e-6; ///< error a step allowed in a capacitor voltage
    double charge = 1e-6;    ///< error a step allowed in a lamp's charge, relative to its charge a flash
    double port_V = 0.05;    ///< error a step allowed in a port voltage: a guard, the charges are the measure
    double darkShare =
        1e-3; ///< a lamp under this share of its rated current counts as if it carried that much
    bool insideMatters = true; ///< what lies within a step is looked at, besides where it ends
};

/// How a step's dense output is to be evaluated.
enum class StepKind { exponential, rosenbrock };

class Stepper {
  public:
    explicit Stepper(const Tolerances& tolerances)
        : m_tol(tolerances),
          m_exponential(tolerances.accuracy, tolerances.voltage_V, tolerances.insideMatters) {}

    /// Sets the capacitor voltages that the next enter() begins at.
    void setStart(std::vector<double> y) {
        m_start = std::move(y);
        m_set = true;
    }
    /// From the next state on, what lies within a step is looked at.
    void lookInside() {
        m_tol.insideMatters = true;
        m_exponential.lookInside();
    }
    /// Begins a state at the present capacitor voltages. @return false where no solution was found.
    bool enter(const Reduced& reduced);

    /// Tries a step of length h [s] from the base. @return the error over what is allowed; not finite if it
    /// failed.
    double attempt(double h);
    /// See ExponentialMarch::attemptToRise; only where denseIsExact().
    double attemptToRise(double h, int timer, int row, double after_s, double& rise_s);
    /// Ends the last attempt at time t [s] from its base instead. @return false where it cannot be solved.
    bool endAt(double t);
    /// The end of the last attempt becomes the base of another state, which enter() follows to.
    void finish();
    /// The end of the last attempt becomes the base. @return false where the march cannot go on from there.
    bool accept();
    /// Starts a new count of charges (a switching of the first timer's output).
    void newPhase();
    /// Charge of each lamp in the last phase that newPhase() ended [C], in the order of lampsOf().
    double phaseCharge(std::size_t lamp) const { return m_lamps[lamp].last_phase_C; }
    std::size_t lamps() const { return m_lamps.size(); }

    const Reduced& reduced() const { return *m_reduced; }
    std::vector<double> capacitorVoltages() const;
    Watched watchedAtBase(int timer) const;
    Watched watchedAtEnd(int timer) const;
    /// Largest |dy/dt| at the base [V/s].
    double speed() const;

    StepKind kind() const { return m_useExponential ? StepKind::exponential : StepKind::rosenbrock; }
    /// Whether the trajectory within an attempt is as exact as its end.
    bool denseIsExact() const { return m_useExponential; }
    /// See ExponentialMarch::foreseenRise; only where denseIsExact().
    std::optional<double> foreseenRise(int timer, int row, double h) const {
        return m_exponential.foreseenRise(timer, row, h);
    }
    /// Error over what is allowed if the last attempt is ended at time t [s]; only where denseIsExact().
    double endError(double t) const { return m_exponential.endError(t) / m_tol.voltage_V; }
    /// One of the numbers of Watched, in its order; only where denseIsExact().
    double rowAtBase(int timer, int row) const { return m_exponential.row(timer, row, false); }
    double rowAtEnd(int timer, int row) const { return m_exponential.row(timer, row, true); }
    /// See ExponentialMarch::riseOf; only where denseIsExact().
    std::optional<double> riseWithin(int timer, int row) {
        const auto t = m_exponential.riseOf(timer, row);
        if (t) m_end = *t;
        return t;
    }
    /// Appends the numbers that a waveform keeps of the last attempt.
    void keep(std::vector<double>& numbers);

  private:
    const double* baseY() const { return m_useExponential ? m_exponential.baseY() : m_rosenbrock.base().y(); }
    double chargeError(double h);
    bool changedOver();
    void count();

    Tolerances m_tol;
    const Reduced* m_reduced = nullptr;
    std::vector<double> m_start;
    bool m_set = false; ///< m_start is where the next enter() begins
    double m_h = 0, m_end = 0;
    double m_counted = 0; ///< the end up to which the lamps' last charges were taken

    struct Lamp {
        int junction = 0;
        double phase_C = 0;      ///< since the phase began
        double cycle_C = 0;      ///< of the phases before, the larger ones counting longer
        double last_C = 0;       ///< within the last attempt
        double last_phase_C = 0; ///< of the last whole phase
    };
    std::vector<Lamp> m_lamps;
    double m_phaseTime_s = 0;

    bool m_useExponential = true;
    ExponentialMarch m_exponential;
    RosenbrockMarch m_rosenbrock;
};

} // namespace blinkwright::engine
