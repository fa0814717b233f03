#include "core/engine/stepper.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <utility>

namespace blinkwright::engine {

namespace {

/// Largest magnitude; infinite where one is not a number.
double largestOf(const double* states, int count) {
    double worst = 0;
    for (int k = 0; k < count; ++k) {
        if (!std::isfinite(states[k])) return std::numeric_limits<double>::infinity();
        worst = std::max(worst, std::abs(states[k]));
    }
    return worst;
}

} // namespace

std::vector<double> Stepper::capacitorVoltages() const {
    return {m_base.y(), m_base.y() + m_base.n};
}

bool Stepper::enter(const Reduced& reduced) {
    const std::vector<double> start = m_start ? *std::exchange(m_start, std::nullopt) : capacitorVoltages();
    if (!m_reduced)
        for (std::size_t k = 0; k < reduced.board->junctions.size(); ++k)
            if (reduced.board->junctions[k].lamp && reduced.lampPort[k] >= 0)
                m_lamps.push_back({.junction = static_cast<int>(k)});
    m_reduced = &reduced;
    const auto m = static_cast<std::size_t>(reduced.m);
    m_base.resize(reduced);
    m_end.resize(reduced);
    m_guess.assign(m, 0);

    std::fill(m_base.z.begin(), m_base.z.end(), 0.0);
    std::copy(start.begin(), start.end(), m_base.y());
    auto& remembered = m_remembered[m_reduced];
    if (remembered.size() == m) std::copy(remembered.begin(), remembered.end(), m_base.u());
    if (!m_ports.solve(reduced, m_base.y(), m_base.u(), m_base.i.data(), m_base.slope.data(), m_guess.data()))
        return false;
    remembered.assign(m_base.u(), m_base.u() + m);
    return prepare();
}

/// What a step from the base needs, whatever its length.
bool Stepper::prepare() {
    if (!m_linear.compute(*m_reduced, m_base.slope.data())) return false;
    m_exponential = m_exponentialStep.prepare({.reduced = m_reduced,
                                               .y = m_base.y(),
                                               .u = m_base.u(),
                                               .i = m_base.i.data(),
                                               .jacobian = m_linear.jacobian.data(),
                                               .portByState = m_linear.portByState.data(),
                                               .inverse = nearby()});
    if (!m_exponential) m_rosenbrockStep.prepare(*m_reduced, m_base, m_linear);
    return true;
}

double Stepper::attempt(double h) {
    constexpr double failed = std::numeric_limits<double>::infinity();
    const Reduced& r = *m_reduced;
    m_h = h;
    double error = 0;
    if (m_exponential) {
        std::array<double, ExponentialStep::mostStates> missed{};
        if (!m_exponentialStep.attempt(h, m_end.y(), missed.data())) return failed;
        error = largestOf(missed.data(), r.n) / m_tol.voltage_V;
        if (!std::isfinite(largestOf(m_end.y(), r.n))) return failed;
        for (int k = 0; k < r.m; ++k) m_end.u()[k] = m_base.u()[k];
        for (int k = 0; k < r.m; ++k)
            for (int j = 0; j < r.n; ++j)
                m_end.u()[k] += m_linear.portByState[static_cast<std::size_t>(k * r.n + j)] *
                                (m_end.y()[j] - m_base.y()[j]);
        const NearbyInverse inverse = nearby();
        if (!m_ports.solve(r, m_end.y(), m_end.u(), m_end.i.data(), m_end.slope.data(), m_guess.data(),
                           &inverse))
            return failed;
    } else {
        if (!m_rosenbrockStep.attempt(h, m_end)) return failed;
        const double* missed = m_rosenbrockStep.error();
        error =
            std::max(largestOf(missed, r.n) / m_tol.voltage_V, largestOf(missed + r.n, r.m) / m_tol.port_V);
        if (!std::isfinite(largestOf(m_end.z.data(), r.n + r.m))) return failed;
        // The method leaves the port equations short by its error: mended here, or it would add up.
        const NearbyInverse inverse = nearby();
        if (!m_ports.solve(r, m_end.y(), m_end.u(), m_end.i.data(), m_end.slope.data(), m_guess.data(),
                           &inverse))
            return failed;
    }
    return std::max(error, chargeError(h));
}

/// Error of the lamps' charges over what is allowed.
double Stepper::chargeError(double h) {
    const Reduced& r = *m_reduced;
    double worst = 0;
    for (Lamp& lamp : m_lamps) {
        const auto port = static_cast<std::size_t>(r.lampPort[static_cast<std::size_t>(lamp.junction)]);
        const Port& p = r.ports[port];
        const double slope = (m_base.slope[port] + p.reference) / (1 - p.reference * p.series);
        const Charge charge = m_exponential ? m_exponentialStep.charge(lamp.junction, slope)
                                            : m_rosenbrockStep.charge(lamp.junction, slope);
        lamp.last_C = charge.value;
        const double rated = r.board->junctions[static_cast<std::size_t>(lamp.junction)].ratedCurrent;
        const double dark_C = m_tol.darkShare * rated * (m_phaseTime_s + h);
        const double scale =
            std::max({lamp.cycle_C, std::abs(lamp.phase_C) + std::abs(lamp.last_C), dark_C, 1e-15});
        if (!std::isfinite(charge.error)) return std::numeric_limits<double>::infinity();
        worst = std::max(worst, std::abs(charge.error) / scale);
    }
    return worst / m_tol.charge;
}

bool Stepper::truncate(double t) {
    if (!inside(t, m_end)) return false;
    for (Lamp& lamp : m_lamps) lamp.last_C *= t / m_h;
    m_h = t;
    return true;
}

void Stepper::accept() {
    std::swap(m_base, m_end);
    for (Lamp& lamp : m_lamps) lamp.phase_C += lamp.last_C;
    m_phaseTime_s += m_h;
    prepare();
}

void Stepper::newPhase() {
    for (Lamp& lamp : m_lamps) {
        lamp.cycle_C = std::max(0.5 * lamp.cycle_C, std::abs(lamp.phase_C));
        lamp.phase_C = 0;
    }
    m_phaseTime_s = 0;
}

double Stepper::speed() const {
    std::vector<double> rate(static_cast<std::size_t>(m_reduced->n));
    m_reduced->derivative(m_base.y(), m_base.i.data(), rate.data());
    return largestOf(rate.data(), m_reduced->n);
}

std::span<const double> Stepper::dense() {
    return m_exponential ? m_exponentialStep.dense() : m_rosenbrockStep.dense();
}

bool Stepper::inside(double t, Point& out) {
    const Reduced& r = *m_reduced;
    out.resize(r);
    if (!m_exponential) {
        RosenbrockStep::evaluate(m_rosenbrockStep.dense().data(), r.n, r.m, t, out.y(), out.u());
        r.currents(out.u(), out.i.data(), out.slope.data(), m_guess.data());
        return true;
    }
    ExponentialStep::evaluate(m_exponentialStep.dense().data(), r.n, t, out.y());
    if (&out != &m_end) {
        const double share = m_h > 0 ? t / m_h : 0;
        for (int k = 0; k < r.m; ++k) out.u()[k] = m_base.u()[k] + share * (m_end.u()[k] - m_base.u()[k]);
    }
    const NearbyInverse inverse = nearby();
    return m_ports.solve(r, out.y(), out.u(), out.i.data(), out.slope.data(), m_guess.data(), &inverse);
}

} // namespace blinkwright::engine
