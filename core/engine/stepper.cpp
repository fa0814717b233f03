#include "core/engine/stepper.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::engine {

std::vector<double> Stepper::capacitorVoltages() const {
    if (m_set || !m_reduced) return m_start;
    return {baseY(), baseY() + m_reduced->n};
}

bool Stepper::enter(const Reduced& reduced) {
    if (!m_set) m_start.assign(baseY(), baseY() + reduced.n);
    m_set = false;
    if (!m_reduced)
        for (const int lamp : lampsOf(reduced)) m_lamps.push_back({.junction = lamp});
    m_reduced = &reduced;
    m_useExponential = m_exponential.enter(reduced, m_start.data());
    return m_useExponential || m_rosenbrock.enter(reduced, m_start.data());
}

double Stepper::attempt(double h) {
    m_h = m_end = h;
    const double error = m_useExponential ? m_exponential.attempt(h) / m_tol.voltage_V
                                          : m_rosenbrock.attempt(h, m_tol.voltage_V, m_tol.port_V);
    if (!std::isfinite(error)) return std::numeric_limits<double>::infinity();
    return std::max(error, chargeError(h));
}

double Stepper::attemptToRise(double h, int timer, int row, double after_s, double& rise_s) {
    m_h = m_end = h;
    const double error = m_exponential.attemptToRise(h, timer, row, after_s, rise_s) / m_tol.voltage_V;
    if (!std::isfinite(error)) return std::numeric_limits<double>::infinity();
    if (rise_s >= 0) m_end = rise_s + after_s;
    return std::max(error, chargeError(h));
}

/// Error of the lamps' charges over what is allowed.
double Stepper::chargeError(double h) {
    double worst = 0;
    m_counted = m_end;
    for (std::size_t k = 0; k < m_lamps.size(); ++k) {
        Lamp& lamp = m_lamps[k];
        const Charge charge =
            m_useExponential ? m_exponential.charge(static_cast<int>(k)) : m_rosenbrock.charge(lamp.junction);
        if (!std::isfinite(charge.error)) return std::numeric_limits<double>::infinity();
        lamp.last_C = charge.value;
        const double rated =
            m_reduced->board->junctions[static_cast<std::size_t>(lamp.junction)].ratedCurrent;
        const double dark_C = m_tol.darkShare * rated * (m_phaseTime_s + h);
        const double scale =
            std::max({lamp.cycle_C, std::abs(lamp.phase_C) + std::abs(lamp.last_C), dark_C, 1e-15});
        worst = std::max(worst, std::abs(charge.error) / scale);
    }
    return worst / m_tol.charge;
}

bool Stepper::endAt(double t) {
    m_end = t;
    if (m_useExponential) return m_exponential.endAt(t);
    m_rosenbrock.endAt(t);
    return true;
}

void Stepper::count() {
    for (std::size_t k = 0; k < m_lamps.size(); ++k) {
        Lamp& lamp = m_lamps[k];
        if (!m_useExponential && m_end != m_h) lamp.last_C *= m_end / m_h;
        if (m_useExponential && m_counted != m_end)
            lamp.last_C = m_exponential.charge(static_cast<int>(k)).value;
        lamp.phase_C += lamp.last_C;
    }
    m_phaseTime_s += m_end;
}

void Stepper::finish() {
    count();
    const double* y = m_useExponential ? m_exponential.endY() : m_rosenbrock.end().y();
    m_start.assign(y, y + m_reduced->n);
    m_set = true;
}

bool Stepper::accept() {
    count();
    if (!m_useExponential) return m_rosenbrock.accept();
    if (m_exponential.accept()) return true;
    m_useExponential = false;
    return m_rosenbrock.enter(*m_reduced, m_exponential.baseY());
}

void Stepper::newPhase() {
    for (Lamp& lamp : m_lamps) {
        lamp.cycle_C = std::max(0.5 * lamp.cycle_C, std::abs(lamp.phase_C));
        lamp.last_phase_C = lamp.phase_C;
        lamp.phase_C = 0;
    }
    m_phaseTime_s = 0;
}

double Stepper::speed() const {
    double fastest = 0;
    const std::vector<double> rates =
        m_useExponential ? std::vector<double>(m_exponential.rate(), m_exponential.rate() + m_reduced->n)
                         : m_rosenbrock.rate();
    for (const double rate : rates) fastest = std::max(fastest, std::abs(rate));
    return fastest;
}

Watched Stepper::watchedAtBase(int timer) const {
    if (m_useExponential) return m_exponential.watched(timer, false);
    return m_reduced->watched(timer, m_rosenbrock.base().y(), m_rosenbrock.base().i.data());
}

Watched Stepper::watchedAtEnd(int timer) const {
    if (m_useExponential) return m_exponential.watched(timer, true);
    return m_reduced->watched(timer, m_rosenbrock.end().y(), m_rosenbrock.end().i.data());
}

void Stepper::keep(std::vector<double>& numbers) {
    if (m_useExponential) {
        m_exponential.keep(numbers);
        return;
    }
    const auto dense = m_rosenbrock.dense();
    numbers.insert(numbers.end(), dense.begin(), dense.end());
}

} // namespace blinkwright::engine
