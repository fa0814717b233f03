#include "core/engine/rosenbrock_march.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::engine {

namespace {

/// Largest magnitude; infinite where one is not a number.
double largestOf(const double* values, int count) {
    double worst = 0;
    for (int k = 0; k < count; ++k) {
        if (!std::isfinite(values[k])) return std::numeric_limits<double>::infinity();
        worst = std::max(worst, std::abs(values[k]));
    }
    return worst;
}

} // namespace

bool RosenbrockMarch::enter(const Reduced& reduced, const double* y) {
    std::vector<double> start(y, y + reduced.n);
    const bool same = m_reduced == &reduced;
    m_reduced = &reduced;
    m_base.resize(reduced);
    m_end.resize(reduced);
    m_guess.assign(static_cast<std::size_t>(reduced.m), 0);
    if (!same) std::fill(m_base.z.begin(), m_base.z.end(), 0.0);
    std::copy(start.begin(), start.end(), m_base.y());
    if (!m_ports.solve(reduced, m_base.y(), m_base.u(), m_base.i.data(), m_base.slope.data(), m_guess.data()))
        return false;
    if (!m_linear.compute(reduced, m_base.slope.data())) return false;
    m_step.prepare(reduced, m_base, m_linear);
    return true;
}

/// The method leaves the port equations short by its error: mended here, or it would add up.
bool RosenbrockMarch::solveEnd() {
    const NearbyInverse inverse{m_linear.W.data(), m_base.slope.data()};
    return m_ports.solve(*m_reduced, m_end.y(), m_end.u(), m_end.i.data(), m_end.slope.data(), m_guess.data(),
                         &inverse);
}

double RosenbrockMarch::attempt(double h, double voltageAllowed_V, double portAllowed_V) {
    constexpr double failed = std::numeric_limits<double>::infinity();
    const Reduced& r = *m_reduced;
    if (!m_step.attempt(h, m_end)) return failed;
    const double* missed = m_step.error();
    const double error =
        std::max(largestOf(missed, r.n) / voltageAllowed_V, largestOf(missed + r.n, r.m) / portAllowed_V);
    if (!std::isfinite(largestOf(m_end.z.data(), r.n + r.m)) || !solveEnd()) return failed;
    m_solved = m_end;
    m_h = h;
    return error;
}

void RosenbrockMarch::endAt(double t) {
    if (t == m_h) { // what the dense output ends in has not been mended
        m_end = m_solved;
        return;
    }
    const Reduced& r = *m_reduced;
    RosenbrockStep::evaluate(m_step.dense().data(), r.n, r.m, t, m_end.y(), m_end.u());
    r.currents(m_end.u(), m_end.i.data(), m_end.slope.data(), m_guess.data());
}

bool RosenbrockMarch::accept() {
    std::swap(m_base, m_end);
    if (!m_linear.compute(*m_reduced, m_base.slope.data())) return false;
    m_step.prepare(*m_reduced, m_base, m_linear);
    return true;
}

Charge RosenbrockMarch::charge(int junction) const {
    const auto port = static_cast<std::size_t>(m_reduced->lampPort[static_cast<std::size_t>(junction)]);
    const Port& p = m_reduced->ports[port];
    return m_step.charge(junction, (m_base.slope[port] + p.reference) / (1 - p.reference * p.series));
}

std::vector<double> RosenbrockMarch::rate() const {
    std::vector<double> rate(static_cast<std::size_t>(m_reduced->n));
    m_reduced->derivative(m_base.y(), m_base.i.data(), rate.data());
    return rate;
}

} // namespace blinkwright::engine
