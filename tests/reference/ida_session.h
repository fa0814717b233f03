// One IDA integrator, set up once and restarted after every switching. (IDAS is IDA with quadratures.)
//
//   IdaSession session(problem, settings);
//   session.restart(time_s);                           // from session.y() and session.yp()
//   bool crossed = session.advance(until_s, time_s, found);
#pragma once

#include "tests/reference/equations.h"
#include "tests/reference/ida_board.h"

#include <idas/idas.h>
#include <sundials/sundials_context.h>
#include <sundials/sundials_linearsolver.h>
#include <sundials/sundials_matrix.h>
#include <sundials/sundials_nvector.h>

#include <vector>

namespace blinkwright::reference {

/// What IDA integrates.
class IdaProblem {
  public:
    virtual ~IdaProblem() = default;
    virtual const Layout& layout() const = 0;
    virtual const Equations& equations() const = 0; ///< those in force
    virtual int roots() const = 0;
    virtual void roots(const double* y, double* out) const = 0;
};

class IdaSession {
  public:
    /// @param problem its layout and count of roots must be known by now; the rest is asked for in runs.
    IdaSession(const IdaProblem& problem, const Settings& settings);
    ~IdaSession();
    IdaSession(const IdaSession&) = delete;
    IdaSession& operator=(const IdaSession&) = delete;

    double* y();  ///< all unknowns at the present time
    double* yp(); ///< their derivatives; right after restart only
    /// Starts anew from y and yp, charges at nothing.
    void restart(double time_s);
    /// Goes on to `until_s` or to the first rising root. @param found one entry a root: 1 where it rose.
    /// @return whether a root was found.
    bool advance(double until_s, double& time_s, std::vector<int>& found);
    /// Charges of the lamps since the last restart.
    void takeCharges(double* out);
    /// Adds the counts since the last restart, and all before, to a trace, and begins to count anew.
    void count(Trace& trace);

  private:
    void collect();
    double firstStep() const;

    const IdaProblem& m_problem;
    const Settings m_settings;
    SUNContext m_context = nullptr;
    N_Vector m_y = nullptr, m_yp = nullptr, m_tolerance = nullptr, m_id = nullptr;
    N_Vector m_charge = nullptr;
    SUNMatrix m_matrix = nullptr;
    SUNLinearSolver m_solver = nullptr;
    void* m_ida = nullptr;
    double m_time = 0;
    bool m_started = false;
    long m_steps = 0, m_residuals = 0, m_jacobians = 0;
};

} // namespace blinkwright::reference
