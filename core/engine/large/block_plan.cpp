// How far a block may go by itself: its plan, and how long that holds.
#include "core/engine/large/block.h"

#include "core/engine/large/phi_functions.h"
#include "core/engine/large/rows.h"
#include "core/engine/phi.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

/// A plan of length h: m_error says how good it is. @return false where a stage has no solution.
bool Block::tryPlan(double h, const BlockTolerances& tol, const double* borderConductance) {
    const int n = m_n;
    const double* lambda = m_base->modes.lambda.data();
    const double* f = m_base->modes.force.data();
    const double* v = m_base->y.data() + n;
    for (int s = 0; s < 2; ++s) {
        for (int k = 0; k < n; ++k)
            m_c[s][at(k)] = s == 0 ? 0.5 * h * phi1(0.5 * h * lambda[k]) * f[k]
                                   : h * phi1(h * lambda[k]) * (f[k] + m_d[0][at(k)]);
        if (!stage(m_c[s].data(), v, m_stageRate.data(), m_stageRows[s].data())) return false;
        for (int k = 0; k < n; ++k) m_F[at(k)] = m_stageRate[at(k)] - m_base->rate[at(k)];
        for (int k = 0; k < n; ++k)
            m_d[s][at(k)] =
                product(m_base->modes.inverse.data() + k * n, m_F.data(), n) - lambda[k] * m_c[s][at(k)];
    }
    double missed[12];
    for (int k = 0; k < n; ++k) {
        const double e3 = 16 * m_d[0][at(k)] - 2 * m_d[1][at(k)];
        const double e4 = -48 * m_d[0][at(k)] + 12 * m_d[1][at(k)];
        m_base->modes.c2[at(k)] = e3 / (2 * h * h);
        m_base->modes.c3[at(k)] = e4 / (6 * h * h * h);
        missed[k] = h * phiFunctions(h * lambda[k])[4] * e4;
    }
    m_error = 0;
    for (int k = 0; k < n; ++k) {
        const double error = std::abs(product(m_base->modes.vectors.data() + k * n, missed, n));
        if (!std::isfinite(error)) return false;
        m_error = std::max(m_error, error / tol.voltage_V);
    }
    // What the rows are off from linear, as a cubic through both stages.
    for (int row = 0; row < m_rows; ++row) {
        const double* byMode = m_base->byMode.data() + row * n;
        const double half =
            m_stageRows[0][at(row)] - m_base->value[at(row)] - product(byMode, m_c[0].data(), n);
        const double full =
            m_stageRows[1][at(row)] - m_base->value[at(row)] - product(byMode, m_c[1].data(), n);
        const double last = 2 * full - 8 * half;
        m_base->c2[at(row)] = (8 * half - full) / (h * h);
        m_base->c3[at(row)] = last / (h * h * h);
        m_left[at(row)] = 0.1 * last; // the largest part of a cubic that a parabola does not take
    }
    m_error = std::max(m_error, rowError(m_left.data(), h, h, tol, borderConductance));
    return m_error > 1 || checkBetween(h, tol);
}

/// Solves the laws once more, between the stages, for the cubic that the plan makes of what is not linear:
/// where an input current turns on or off within the plan, the estimate from the stages alone can be small by
/// chance.
bool Block::checkBetween(double h, const BlockTolerances& tol) {
    constexpr double where = 0.75;
    const int n = m_n;
    double z[12], rate[20], missed[12];
    for (int k = 0; k < n; ++k) z[k] = m_base->modeAt(k, where * h);
    if (!stage(z, m_base->y.data() + n, rate, m_left.data())) return false;
    for (int k = 0; k < n; ++k) m_F[at(k)] = rate[k] - m_base->rate[at(k)];
    for (int k = 0; k < n; ++k) {
        const double s = where * h, lambda = m_base->modes.lambda[at(k)];
        const double plan = s * s * (m_base->modes.c2[at(k)] + s * m_base->modes.c3[at(k)]);
        const double off =
            product(m_base->modes.inverse.data() + k * n, m_F.data(), n) - lambda * z[k] - plan;
        missed[k] = 0.3 * h * phi1(h * lambda) * off; // as a bump within the second half
    }
    for (int k = 0; k < n; ++k) {
        const double error = std::abs(product(m_base->modes.vectors.data() + k * n, missed, n));
        m_error = std::max(m_error, std::isfinite(error) ? error / tol.voltage_V : 1e8);
    }
    return true;
}

/// How far the laws at the plan's end are off from linear where a border is off by the radius: for the
/// capacitor voltages, if that lasted all the plan, and for the rows; over what is allowed.
Block::Bend Block::bend(const BlockTolerances& tol, const double* borderConductance, double stay_s) {
    const int n = m_n;
    const double h = n > 0 ? m_base->span_s : 1;
    Bend worst;
    double v[8], drift[12], rate[20];
    for (int b = 0; b < m_r; ++b) {
        for (int k = 0; k < m_r; ++k) v[k] = m_base->y[at(n + k)] + (k == b ? m_base->radius_V : 0);
        if (!stage(m_c[1].data(), v, rate, m_left.data())) return {0, 10};
        for (int k = 0; k < n; ++k) m_F[at(k)] = rate[k] - m_stageRate[at(k)];
        for (int k = 0; k < n; ++k) {
            const double off = product(m_base->modes.inverse.data() + k * n, m_F.data(), n) -
                               m_base->modes.byBorder[at(k * m_r + b)] * m_base->radius_V;
            drift[k] = off * h * phi1(h * m_base->modes.lambda[at(k)]);
        }
        for (int k = 0; k < n; ++k)
            worst.states =
                std::max(worst.states,
                         std::abs(product(m_base->modes.vectors.data() + k * n, drift, n)) / tol.voltage_V);
        for (int row = 0; row < m_rows; ++row)
            m_left[at(row)] -=
                m_stageRows[1][at(row)] + m_base->byBorder[at(row * m_r + b)] * m_base->radius_V;
        worst.rows =
            std::max(worst.rows, rowError(m_left.data(), h, std::min(h, stay_s), tol, borderConductance));
    }
    return worst;
}

/// Chooses the radius, and cuts the span where the borders move out of the radius sooner anyway.
void Block::findRadius(const BlockTolerances& tol, const double* borderConductance, double drift) {
    const double least = 0.1 * tol.voltage_V;
    m_base->radius_V = m_memory->radius_V > 0 ? m_memory->radius_V : firstRadius_V;
    for (int attempt = 0; attempt < 20; ++attempt) {
        const double stay_s = drift > 0 ? m_base->radius_V / drift : never;
        Bend worst = bend(tol, borderConductance, stay_s);
        if (!(worst.states < 1e30 && worst.rows < 1e30)) worst = {0, 10};
        if (worst.states > 1 && stay_s < m_base->span_s) {
            const double cut = std::max(0.9 / worst.states, stay_s / m_base->span_s);
            m_base->span_s *= cut;
            worst.states *= cut;
        }
        const double all = std::max(worst.states, worst.rows);
        if (all <= 1) {
            m_memory->radius_V = all < 0.25 ? std::min(1.5 * m_base->radius_V, 100.0) : m_base->radius_V;
            return;
        }
        m_base->radius_V = std::max(m_base->radius_V * std::max(0.1, 0.9 / all), least);
        m_memory->radius_V = m_base->radius_V;
        if (all <= 8 || m_base->radius_V == least) return; // errors shrink with the radius at least
    }
}

/// When the first comparator input that is still far from its level reaches it, at the rates of the base. The
/// input currents turn on and off there, within some 50 mV: a plan that passes over that may miss it between
/// its stages.
double Block::timeToLevels() const {
    constexpr double far_V = 0.1;
    double soonest = never;
    for (int t = 0; t < m_timers; ++t)
        for (int row = watchedRow(t); row < watchedRow(t) + 2; ++row) {
            const double rate = product(m_base->byMode.data() + row * m_n, m_base->modes.force.data(), m_n);
            const double time = -m_base->value[at(row)] / rate;
            if (std::abs(m_base->value[at(row)]) > far_V && time > 0) soonest = std::min(soonest, time);
        }
    return soonest;
}

bool Block::findSpan(const BlockTolerances& tol, const double* borderConductance) {
    // The first plan of a phase: as long as the last such one; the very first, 10 mV at the present speed.
    double h = m_fresh ? m_memory->firstSpan_s : m_nextSpan_s;
    if (!(h > 0)) {
        double speed = 0;
        for (int k = 0; k < m_n; ++k) speed = std::max(speed, std::abs(m_base->rate[at(k)]));
        h = speed > 0 ? std::clamp(1e-2 / speed, 1e-9, 1.0) : 1;
    }
    h = std::min(h, timeToLevels());
    for (int attempt = 0; attempt < 60; ++attempt) {
        const bool solved = tryPlan(h, tol, borderConductance);
        const double error = solved && std::isfinite(m_error) ? m_error : 1e8;
        const double factor = 0.9 * std::pow(std::max(error, 1e-12), -0.25);
        if (error <= 1) {
            m_base->span_s = h;
            m_nextSpan_s = std::min(h * std::clamp(factor, 0.5, 10.0), 1e6);
            if (m_fresh) m_memory->firstSpan_s = m_nextSpan_s;
            return true;
        }
        ++m_rejected;
        h *= std::clamp(factor, 0.05, 0.8);
    }
    return false;
}

/// Counts the lamps' charges up to a new base.
void Block::countCharges(double time_s, const double* lampCurrents) {
    for (std::size_t l = 0; l < m_lamps.size(); ++l) {
        Lamp& lamp = m_lamps[l];
        const double now = std::abs(lampCurrents[l]);
        if (!m_fresh) lamp.phase_C += 0.5 * (now + lamp.last_A) * (time_s - m_based_s);
        lamp.last_A = now;
    }
    if (m_fresh) m_phaseBegin_s = time_s;
    m_based_s = time_s;
}

bool Block::plan(const BlockTolerances& tol, double time_s, const double* borderConductance, double drift) {
    countCharges(time_s, m_base->value.data() + m_r + 4 * m_timers);
    m_begin_s = time_s;
    m_base->span_s = m_base->radius_V = m_base->reach_V = never;
    std::fill(m_base->modes.c2.begin(), m_base->modes.c2.end(), 0.0);
    std::fill(m_base->modes.c3.begin(), m_base->modes.c3.end(), 0.0);
    m_base->planned = true;
    if (isLinear()) return true;

    if (m_n == 0) { // nothing moves by itself
        std::copy(m_base->rate.begin(), m_base->rate.end(), m_stageRate.begin());
        std::copy(m_base->value.begin(), m_base->value.end(), m_stageRows[1].begin());
    } else if (!findSpan(tol, borderConductance)) {
        return false;
    }
    const bool known =
        std::all_of(m_lamps.begin(), m_lamps.end(), [](const Lamp& lamp) { return lamp.cycle_C > 0; });
    if (m_r > 0) findRadius(tol, borderConductance, drift);
    if (known) keepForLater(tol, borderConductance);
    enterIndex();
    m_fresh = false;
    return true;
}

} // namespace blinkwright::engine::large
