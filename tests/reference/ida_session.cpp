#include "tests/reference/ida_session.h"

#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#include <algorithm>
#include <stdexcept>
#include <string>

namespace blinkwright::reference {

namespace {

constexpr double faraway_s = 1e5; // past this no first step is guessed from how far there is to go

void need(int flag, const char* what) {
    if (flag < 0) throw std::runtime_error(std::string("IDA: ") + what + " gave " + std::to_string(flag));
}

const IdaProblem& problemOf(void* data) {
    return *static_cast<const IdaProblem*>(data);
}

int residual(realtype, N_Vector y, N_Vector yp, N_Vector F, void* data) {
    problemOf(data).equations().residual(NV_DATA_S(y), NV_DATA_S(yp), 1, NV_DATA_S(F));
    return 0;
}

int jacobian(realtype, realtype cj, N_Vector y, N_Vector, N_Vector, SUNMatrix J, void* data, N_Vector,
             N_Vector, N_Vector) {
    problemOf(data).equations().jacobian(NV_DATA_S(y), cj, SM_DATA_D(J));
    return 0;
}

int roots(realtype, N_Vector y, N_Vector, realtype* out, void* data) {
    problemOf(data).roots(NV_DATA_S(y), out);
    return 0;
}

int lampCurrents(realtype, N_Vector y, N_Vector, N_Vector out, void* data) {
    problemOf(data).equations().lampCurrents(NV_DATA_S(y), NV_DATA_S(out));
    return 0;
}

/// A failed step is tried again by IDA itself; only what it gives up on is said, by `need`.
void keepQuiet(int, const char*, const char*, char*, void*) {
}

} // namespace

IdaSession::IdaSession(const IdaProblem& problem, const Settings& settings)
    : m_problem(problem), m_settings(settings) {
    const Layout& layout = problem.layout();
    const int n = layout.size;
    need(SUNContext_Create(nullptr, &m_context), "a context");
    m_y = N_VNew_Serial(n, m_context);
    N_VConst(0, m_y);
    m_yp = N_VClone(m_y);
    m_tolerance = N_VClone(m_y);
    m_id = N_VClone(m_y);
    N_VConst(0, m_yp);
    N_VConst(settings.voltage, m_tolerance);
    N_VConst(0, m_id);
    double* tolerance = NV_DATA_S(m_tolerance);
    double* id = NV_DATA_S(m_id);
    std::fill(tolerance + layout.supplies, tolerance + layout.junctions, settings.current);
    std::fill(id + layout.algebraic, id + n, 1.0);
    for (const auto& lamp : layout.lamps)
        if (lamp.charge >= 0) tolerance[lamp.charge] = settings.charge;
    m_matrix = SUNDenseMatrix(n, n, m_context);
    m_solver = SUNLinSol_Dense(m_y, m_matrix, m_context);

    m_ida = IDACreate(m_context);
    need(IDASetErrHandlerFn(m_ida, keepQuiet, nullptr), "the message function");
    need(IDAInit(m_ida, residual, 0, m_y, m_yp), "the start");
    need(IDASVtolerances(m_ida, settings.relative, m_tolerance), "tolerances");
    need(IDASetUserData(m_ida, const_cast<IdaProblem*>(&problem)), "user data");
    need(IDASetId(m_ida, m_id), "ids");
    need(IDASetSuppressAlg(m_ida, !settings.testAlgebraic), "the error test");
    need(IDASetMaxOrd(m_ida, settings.maxOrder), "the order");
    need(IDASetMaxNumSteps(m_ida, -1), "the step budget");
    need(IDASetNonlinConvCoef(m_ida, settings.newton), "the convergence test");
    need(IDASetLinearSolver(m_ida, m_solver, m_matrix), "the linear solver");
    need(IDASetJacFn(m_ida, jacobian), "the Jacobian");
    need(IDASetDeltaCjLSetup(m_ida, settings.jacobianRatio), "the Jacobian's age");
    if (const int count = problem.roots(); count > 0) {
        need(IDARootInit(m_ida, count, roots), "root functions");
        std::vector<int> rising(static_cast<std::size_t>(count), 1);
        need(IDASetRootDirection(m_ida, rising.data()), "root directions");
        need(IDASetNoInactiveRootWarn(m_ida), "root warnings");
    }
    if (settings.quadratures && !layout.lamps.empty()) {
        m_charge = N_VNew_Serial(static_cast<sunindextype>(layout.lamps.size()), m_context);
        N_VConst(0, m_charge);
        need(IDAQuadInit(m_ida, lampCurrents, m_charge), "quadratures");
        need(IDAQuadSStolerances(m_ida, settings.relative, settings.charge), "quadrature tolerances");
        need(IDASetQuadErrCon(m_ida, SUNTRUE), "the quadratures' error test");
    }
}

IdaSession::~IdaSession() {
    IDAFree(&m_ida);
    SUNLinSolFree(m_solver);
    SUNMatDestroy(m_matrix);
    for (N_Vector v : {m_y, m_yp, m_tolerance, m_id, m_charge})
        if (v) N_VDestroy(v);
    SUNContext_Free(&m_context);
}

double* IdaSession::y() {
    return NV_DATA_S(m_y);
}
double* IdaSession::yp() {
    return NV_DATA_S(m_yp);
}

void IdaSession::restart(double time_s) {
    collect();
    m_time = time_s;
    need(IDAReInit(m_ida, time_s, m_y, m_yp), "a restart");
    need(IDASetInitStep(m_ida, firstStep()), "the first step");
    if (m_charge) {
        N_VConst(0, m_charge);
        need(IDAQuadReInit(m_ida, m_charge), "a restart of quadratures");
    }
    m_started = true;
}

bool IdaSession::advance(double until_s, double& time_s, std::vector<int>& found) {
    if (until_s - m_time <= 1e-15 * until_s) { // one instant but for rounding: IDA takes no step so short
        time_s = m_time = until_s;
        return false;
    }
    double internal = 0;
    need(IDAGetCurrentTime(m_ida, &internal), "its time");
    const double target = std::min(until_s, m_time + faraway_s);
    // IDA may be past the target already, within its last step: then it only looks back.
    if (target > internal) need(IDASetStopTime(m_ida, target), "the stop time");
    const int flag = IDASolve(m_ida, target, &m_time, m_y, m_yp, IDA_NORMAL);
    need(flag, "a step");
    time_s = m_time;
    if (flag != IDA_ROOT_RETURN) {
        if (target == until_s) time_s = m_time = until_s;
        return false;
    }
    found.resize(static_cast<std::size_t>(m_problem.roots()));
    need(IDAGetRootInfo(m_ida, found.data()), "what crossed");
    return true;
}

void IdaSession::takeCharges(double* out) {
    const Layout& layout = m_problem.layout();
    if (m_charge) {
        double time = 0;
        need(IDAGetQuad(m_ida, &time, m_charge), "quadratures");
        std::copy(NV_DATA_S(m_charge), NV_DATA_S(m_charge) + layout.lamps.size(), out);
        return;
    }
    for (std::size_t k = 0; k < layout.lamps.size(); ++k) out[k] = NV_DATA_S(m_y)[layout.lamps[k].charge];
}

/// IDA's own guess is the step in which the tested unknowns move by half of what is tolerated. 0 leaves it to
/// IDA.
double IdaSession::firstStep() const {
    if (m_settings.firstStep == 1) return 0;
    const double* y = NV_DATA_S(m_y);
    const double* yp = NV_DATA_S(m_yp);
    const double* tolerance = NV_DATA_S(m_tolerance);
    const Layout& layout = m_problem.layout();
    double sum = 0;
    for (int k = m_settings.testAlgebraic ? 0 : layout.algebraic; k < layout.size; ++k) {
        const double ratio = yp[k] / (m_settings.relative * std::abs(y[k]) + tolerance[k]);
        sum += ratio * ratio;
    }
    return sum > 0 ? m_settings.firstStep * 0.5 / std::sqrt(sum / layout.size) : 0;
}

void IdaSession::collect() {
    if (!m_started) return;
    long steps = 0, residuals = 0, jacobians = 0;
    need(IDAGetNumSteps(m_ida, &steps), "steps");
    need(IDAGetNumResEvals(m_ida, &residuals), "residuals");
    need(IDAGetNumJacEvals(m_ida, &jacobians), "Jacobians");
    m_steps += steps;
    m_residuals += residuals;
    m_jacobians += jacobians;
    m_started = false;
}

void IdaSession::count(Trace& trace) {
    collect();
    trace.steps = std::exchange(m_steps, 0);
    trace.residuals = std::exchange(m_residuals, 0);
    trace.jacobians = std::exchange(m_jacobians, 0);
}

} // namespace blinkwright::reference
