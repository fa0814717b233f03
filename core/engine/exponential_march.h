// Marches the state of a board of up to mostStates capacitors by the exponential step (kernel.h): chooses
// which ports bend at the moment, and folds the others into the linear part.
//
//   ExponentialMarch march(accuracy);
//   march.enter(reduced, y);                 // after every switching
//   march.attempt(h); march.accept();
#pragma once

#include "core/engine/charge.h"
#include "core/engine/fold_source.h"
#include "core/engine/port_solver.h"
#include "core/engine/step_kernel.h"

#include <memory>
#include <optional>
#include <vector>

namespace blinkwright::engine {

class ExponentialMarch {
  public:
    /// @param insideMatters whether what lies within a step is looked at: then nothing may drift (kernel.h).
    ExponentialMarch(double accuracy, double voltageAllowed_V, bool insideMatters);

    /// From the next state on, what lies within a step is looked at.
    void lookInside();

    /// Begins a state at capacitor voltages y, with the port voltages remembered of this state as a guess.
    /// @return false where the method cannot be used from here.
    bool enter(const Reduced& reduced, const double* y);
    /// The largest error estimate of a capacitor voltage [V]; infinite where the step failed.
    double attempt(double h);
    /// A step that is expected to run into a rise of row `row` of a timer: as attempt(), but ends `after_s`
    /// past the rise if it is found within h and nothing else is in the way. @param[out] rise_s when, or
    /// below 0 where the step ends at h.
    double attemptToRise(double h, int timer, int row, double after_s, double& rise_s);
    /// Whether the last attempt came to where the method cannot be used; startOfLost() is where it began.
    bool lost() const { return m_lost; }
    const double* startOfLost() const { return m_y.data(); }
    /// Error of a capacitor voltage if the last attempt is ended at time t [s] instead [V].
    double endError(double t) const { return m_kernel->endError(t); }
    /// Ends the last attempt at time t [s] instead.
    bool endAt(double t);
    /// @return false where the method cannot go on from the end; base is the end all the same.
    bool accept();

    const double* baseY() const { return m_kernel->base.y.data(); }
    const double* endY() const { return m_kernel->end.y.data(); }
    const double* rate() const { return m_kernel->rate(); }
    Watched watched(int timer, bool atEnd) const;
    double row(int timer, int row, bool atEnd) const {
        const auto& point = atEnd ? m_kernel->end : m_kernel->base;
        return m_fold->row(4 * timer + row, point.y.data(), point.i.data());
    }
    /// The voltages of all ports at the base or the end.
    void ports(bool atEnd, double* u) const;
    /// The charge through lamp `index` (as in lampsOf) from the base to the end.
    Charge charge(int index);
    void keep(std::vector<double>& numbers) const;

    /// When a row will rise through 0 within h [s] from the base, as far as the linear part foresees; else
    /// nothing.
    std::optional<double> foreseenRise(int timer, int row, double h) const;
    /// Where row `row` (0 trigger, 1 threshold, 2 reset) of a timer first rises through 0 within the last
    /// attempt [s], to rounding error; nothing where it does not. Moves the end where there is one.
    std::optional<double> riseOf(int timer, int row);

  private:
    struct Memory { ///< of one state of switches and outputs
        const Reduced* reduced = nullptr;
        FoldSource<double> source;
        std::vector<std::unique_ptr<Folded<double>>> folds;
        std::vector<std::vector<std::uint8_t>> regimesOfFolds;
        std::vector<double> u; ///< port voltages where it began last; empty before
        std::vector<std::uint8_t> regimes;
        std::vector<double> basis; ///< of Eigenbasis::keep
        /// By how much the solved end exceeded the step's model at the last switching [V]: much the same
        /// again.
        double excess = 0;
    };
    Memory& memoryOf(const Reduced& reduced);
    bool useFold();
    bool begin(const double* y);
    bool solveAll(const double* y);
    bool straightHolds(bool atEnd);
    bool endHolds(double error);
    std::optional<double> modelRise(const RowModel<double>& model, double& rate, double near_s) const;

    bool mayDrift(int port) const;

    double m_close, m_allowed_V;
    bool m_mayDrift, m_lost = false;
    StraightBand m_band;
    std::vector<std::unique_ptr<Memory>> m_memories;
    Memory* m_memory = nullptr;
    const Folded<double>* m_fold = nullptr;
    std::vector<std::uint8_t> m_regimes;
    std::vector<double> m_u, m_guess, m_y;
    Eigenbasis<double> m_basis;
    struct Sized {
        int q, drifting;
        std::unique_ptr<StepKernel<double>> kernel;
    };
    std::vector<Sized> m_kernels;
    StepKernel<double>* m_kernel = nullptr;
    std::vector<RowModel<double>> m_lampModels;
    double m_h = 0, m_end = 0;
    PortSolver m_solver;
};

} // namespace blinkwright::engine
