#include "core/engine/large/block.h"

#include "core/engine/phi.h"

#include <Eigen/Dense>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

namespace {

constexpr double firstRadius_V = 0.3;

using Square = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor, 12, 12>;

std::size_t at(int k) {
    return static_cast<std::size_t>(k);
}

double product(const double* row, const double* v, int n) {
    double sum = 0;
    for (int k = 0; k < n; ++k) sum += row[k] * v[k];
    return sum;
}

} // namespace

Block::Block(Piece piece) : m_piece(std::move(piece)), m_network(std::make_shared<Network>(m_piece.board)) {
    m_n = m_piece.states();
    m_r = static_cast<int>(m_piece.borders.size());
    m_timers = static_cast<int>(m_piece.board.timers.size());
    for (std::size_t k = 0; k < m_piece.board.junctions.size(); ++k) {
        const auto& part = m_piece.board.junctions[k];
        if (part.lamp && part.anode != devices::open && part.cathode != devices::open &&
            part.anode != part.cathode)
            m_lamps.push_back({.junction = static_cast<int>(k)});
    }
    m_rows = m_r + 4 * m_timers + lamps();
    for (auto* v : {&m_modes.lambda, &m_modes.force, &m_modes.c2, &m_modes.c3, &m_c[0], &m_c[1], &m_d[0],
                    &m_d[1], &m_F})
        v->resize(at(m_n));
    m_modes.byBorder.resize(at(m_n * m_r));
    m_modes.vectors.resize(at(m_n * m_n));
    m_modes.inverse.resize(at(m_n * m_n));
    for (auto* v : {&m_y, &m_at, &m_rate, &m_stageRate}) v->resize(at(m_n + m_r));
    for (auto* v : {&m_value, &m_c2, &m_c3, &m_left, &m_stageRows[0], &m_stageRows[1]}) v->resize(at(m_rows));
    m_byMode.resize(at(m_rows * m_n));
    m_byBorder.resize(at(m_rows * m_r));
    m_byState.resize(at(m_n + m_r));
}

void Block::configure(const std::vector<bool>& switches, const std::vector<bool>& outputs) {
    const Reduced& next = m_network->reduced(switches, outputs);
    for (std::size_t l = 0; l < m_lamps.size(); ++l) {
        Lamp& lamp = m_lamps[l];
        lamp.port = next.lampPort[at(lamp.junction)];
        lamp.cycle_C = std::max(0.5 * lamp.cycle_C, lamp.phase_C);
        lamp.phase_C = 0;
    }
    if (m_memory && m_linearised) m_memory->u = m_u;
    m_reduced = &next;
    m_memory = &m_memories[&next];
    const auto m = at(next.m);
    for (auto* v : {&m_u, &m_i, &m_slope, &m_guess, &m_stageU, &m_stageI, &m_stageSlope}) v->assign(m, 0);
    if (m_memory->u.size() == m) m_u = m_memory->u;
    m_linearised = false;
    m_fresh = true;
}

/// Rates of the capacitor voltages and the rows, from the port voltages and currents of a point.
void Block::derivativeAndRows(const double* y, const double* u, const double* i, double* rate, double* rows) {
    const Reduced& r = *m_reduced;
    r.derivative(y, i, rate);
    for (int b = 0; b < m_r; ++b) rows[b] = -rate[m_n + b];
    for (int t = 0; t < m_timers; ++t) {
        const Watched w = r.watched(t, y, i);
        double* out = rows + watchedRow(t);
        out[0] = w.trigger;
        out[1] = w.threshold;
        out[2] = w.reset;
        out[3] = w.supply;
    }
    double* out = rows + m_r + 4 * m_timers;
    for (const Lamp& lamp : m_lamps) *out++ = r.junctionCurrent(lamp.port, u[lamp.port], i[lamp.port]);
}

bool Block::solve(const double* y, const double* v) {
    const Reduced& r = *m_reduced;
    const int n = m_n, m = r.m, size = n + m_r;
    if (m_linearised && m > 0) { // a first guess from the last base
        for (int k = 0; k < n; ++k) m_at[at(k)] = y[k] - m_y[at(k)];
        for (int b = 0; b < m_r; ++b) m_at[at(n + b)] = v[b] - m_y[at(n + b)];
        for (int k = 0; k < m; ++k)
            m_u[at(k)] += product(m_linear.portByState.data() + k * size, m_at.data(), size);
    }
    std::copy(y, y + n, m_y.begin());
    std::copy(v, v + m_r, m_y.begin() + n);
    ++m_solves;
    std::vector<double>& slope = m_stageSlope;
    const NearbyInverse nearby{m_linear.W.data(), m_slope.data()};
    if (!m_ports.solve(r, m_y.data(), m_u.data(), m_i.data(), slope.data(), m_guess.data(),
                       m_linearised ? &nearby : nullptr))
        return false;
    std::swap(m_slope, m_stageSlope);
    m_linearised = m_linear.compute(r, m_slope.data());
    if (!m_linearised || !eigen()) return false;

    derivativeAndRows(m_y.data(), m_u.data(), m_i.data(), m_rate.data(), m_value.data());
    for (const double value : m_rate)
        if (!std::isfinite(value)) return false;
    const double* inverse = m_modes.inverse.data();
    const double* J = m_linear.jacobian.data();
    for (int k = 0; k < n; ++k) m_modes.force[at(k)] = product(inverse + k * n, m_rate.data(), n);
    for (int k = 0; k < n; ++k)
        for (int b = 0; b < m_r; ++b) {
            double sum = 0;
            for (int j = 0; j < n; ++j) sum += inverse[k * n + j] * J[j * size + n + b];
            m_modes.byBorder[at(k * m_r + b)] = sum;
        }
    // Rows to first order: by capacitor and border voltages, then by modes.
    const auto put = [&](int row) {
        for (int k = 0; k < n; ++k) {
            double sum = 0;
            for (int j = 0; j < n; ++j) sum += m_byState[at(j)] * m_modes.vectors[at(j * n + k)];
            m_byMode[at(row * n + k)] = sum;
        }
        for (int b = 0; b < m_r; ++b) m_byBorder[at(row * m_r + b)] = m_byState[at(n + b)];
    };
    for (int b = 0; b < m_r; ++b) {
        for (int j = 0; j < size; ++j) m_byState[at(j)] = -J[(n + b) * size + j];
        put(b);
    }
    for (int row = 0; row < 4 * m_timers; ++row) {
        for (int j = 0; j < size; ++j) m_byState[at(j)] = r.Cy[at(row * size + j)];
        for (int p = 0; p < m; ++p) {
            const double weight = -r.Ci[at(row * m + p)] * m_slope[at(p)];
            if (weight == 0) continue;
            for (int j = 0; j < size; ++j)
                m_byState[at(j)] += weight * m_linear.portByState[at(p * size + j)];
        }
        put(m_r + row);
    }
    for (int l = 0; l < lamps(); ++l) {
        const Port& port = r.ports[at(m_lamps[at(l)].port)];
        const double g =
            (m_slope[at(m_lamps[at(l)].port)] + port.reference) / (1 - port.reference * port.series);
        for (int j = 0; j < size; ++j)
            m_byState[at(j)] = g * m_linear.portByState[at(m_lamps[at(l)].port * size + j)];
        put(m_r + 4 * m_timers + l);
    }
    std::fill(m_c2.begin(), m_c2.end(), 0.0);
    std::fill(m_c3.begin(), m_c3.end(), 0.0);
    return true;
}

/// Eigenvectors of J. With each voltage weighted by the root of its capacitance, J of a network is symmetric
/// but for the timers' inputs.
bool Block::eigen() {
    const int n = m_n, size = n + m_r;
    if (n == 0) return true;
    double root[12];
    for (int k = 0; k < n; ++k) root[k] = std::sqrt(m_piece.board.capacitors[at(k)].capacitance);
    Square S(n, n), vectors(n, n), inverse(n, n);
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < n; ++c) S(r, c) = m_linear.jacobian[at(r * size + c)] * root[r] / root[c];
    if (!S.allFinite()) return false;
    double* lambda = m_modes.lambda.data();
    bool found = false;
    if (n == 1) {
        lambda[0] = S(0, 0);
        vectors(0, 0) = inverse(0, 0) = 1;
        found = true;
    } else if ((S - S.transpose()).cwiseAbs().maxCoeff() > 1e-13 * S.cwiseAbs().maxCoeff()) {
        const Eigen::EigenSolver<Square> solver(S);
        found = solver.info() == Eigen::Success && (solver.eigenvalues().imag().array() == 0).all();
        if (found) {
            vectors = solver.pseudoEigenvectors();
            const Eigen::PartialPivLU<Square> lu(vectors);
            found = lu.rcond() > 1e-6;
            if (found) inverse = lu.inverse();
            for (int k = 0; k < n; ++k) lambda[k] = solver.eigenvalues()(k).real();
        }
    }
    if (!found) {
        // Symmetric, or taken as if it were: the steps' error estimates then see the difference.
        const Eigen::SelfAdjointEigenSolver<Square> solver(0.5 * (S + S.transpose()));
        if (solver.info() != Eigen::Success) return false;
        for (int k = 0; k < n; ++k) lambda[k] = solver.eigenvalues()(k);
        vectors = solver.eigenvectors();
        inverse = vectors.transpose();
    }
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < n; ++c) {
            m_modes.vectors[at(r * n + c)] = vectors(r, c) / root[r];
            m_modes.inverse[at(r * n + c)] = inverse(r, c) * root[c];
        }
    return true;
}

/// The piece's laws at capacitor voltages `moved` from the base in modes, and border voltages v.
bool Block::stage(const double* moved, const double* v, double* rate, double* rows) {
    const Reduced& r = *m_reduced;
    const int n = m_n, size = n + m_r;
    double step[12 + 8];
    for (int k = 0; k < n; ++k) step[k] = product(m_modes.vectors.data() + k * n, moved, n);
    for (int b = 0; b < m_r; ++b) step[n + b] = v[b] - m_y[at(n + b)];
    for (int k = 0; k < size; ++k) m_at[at(k)] = m_y[at(k)] + step[k];
    for (int k = 0; k < r.m; ++k)
        m_stageU[at(k)] = m_u[at(k)] + product(m_linear.portByState.data() + k * size, step, size);
    const NearbyInverse nearby{m_linear.W.data(), m_slope.data()};
    ++m_solves;
    if (!m_ports.solve(r, m_at.data(), m_stageU.data(), m_stageI.data(), m_stageSlope.data(), m_guess.data(),
                       &nearby))
        return false;
    derivativeAndRows(m_at.data(), m_stageU.data(), m_stageI.data(), rate, rows);
    return true;
}

/// Largest error of border currents, comparators and lamp charges over what is allowed, from the rows'
/// errors.
double Block::rowError(const double* error, double h, double lasting_s, const BlockTolerances& tol,
                       const double* borderConductance) const {
    double worst = 0;
    for (int b = 0; b < m_r; ++b)
        worst =
            std::max(worst, std::abs(error[b]) / (borderConductance[m_piece.borders[at(b)]] * tol.voltage_V));
    for (int row = 0; row < 4 * m_timers; ++row) {
        if (row % 4 == 3) continue; // only looked at while the supply rises
        worst = std::max(worst, std::abs(error[m_r + row]) / (10 * tol.voltage_V)); // made good at crossings
    }
    for (int l = 0; l < lamps(); ++l) {
        const Lamp& lamp = m_lamps[at(l)];
        const int row = m_r + 4 * m_timers + l;
        const double rated = m_piece.board.junctions[at(lamp.junction)].ratedCurrent;
        const double here = std::abs(m_value[at(row)]) * h;
        const double dark_C = tol.darkShare * rated * (m_begin_s - m_phaseBegin_s + h);
        // Before a first flash has shown how much it carries, a tenth of the rated current for a millisecond.
        const double unknown_C = lamp.cycle_C > 0 ? 0 : 1e-4 * rated;
        const double scale = std::max({lamp.cycle_C, lamp.phase_C + here, dark_C, unknown_C, 1e-15});
        worst = std::max(worst, std::abs(error[row]) * lasting_s / (scale * tol.charge));
    }
    return worst;
}

/// A plan of length h: m_error says how good it is. @return false where a stage has no solution.
bool Block::tryPlan(double h, const BlockTolerances& tol, const double* borderConductance) {
    const int n = m_n;
    const double* lambda = m_modes.lambda.data();
    const double* f = m_modes.force.data();
    const double* v = m_y.data() + n;
    for (int s = 0; s < 2; ++s) {
        for (int k = 0; k < n; ++k)
            m_c[s][at(k)] = s == 0 ? 0.5 * h * phi1(0.5 * h * lambda[k]) * f[k]
                                   : h * phi1(h * lambda[k]) * (f[k] + m_d[0][at(k)]);
        if (!stage(m_c[s].data(), v, m_stageRate.data(), m_stageRows[s].data())) return false;
        for (int k = 0; k < n; ++k) m_F[at(k)] = m_stageRate[at(k)] - m_rate[at(k)];
        for (int k = 0; k < n; ++k)
            m_d[s][at(k)] =
                product(m_modes.inverse.data() + k * n, m_F.data(), n) - lambda[k] * m_c[s][at(k)];
    }
    double missed[12];
    for (int k = 0; k < n; ++k) {
        const double e3 = 16 * m_d[0][at(k)] - 2 * m_d[1][at(k)];
        const double e4 = -48 * m_d[0][at(k)] + 12 * m_d[1][at(k)];
        m_modes.c2[at(k)] = e3 / (2 * h * h);
        m_modes.c3[at(k)] = e4 / (6 * h * h * h);
        missed[k] = h * phiFunctions(h * lambda[k])[4] * e4;
    }
    m_error = 0;
    for (int k = 0; k < n; ++k) {
        const double error = std::abs(product(m_modes.vectors.data() + k * n, missed, n));
        if (!std::isfinite(error)) return false;
        m_error = std::max(m_error, error / tol.voltage_V);
    }
    // What the rows are off from linear, as a cubic through both stages.
    for (int row = 0; row < m_rows; ++row) {
        const double* byMode = m_byMode.data() + row * n;
        const double half = m_stageRows[0][at(row)] - m_value[at(row)] - product(byMode, m_c[0].data(), n);
        const double full = m_stageRows[1][at(row)] - m_value[at(row)] - product(byMode, m_c[1].data(), n);
        const double last = 2 * full - 8 * half;
        m_c2[at(row)] = (8 * half - full) / (h * h);
        m_c3[at(row)] = last / (h * h * h);
        m_left[at(row)] = 0.1 * last; // the largest part of a cubic that a parabola does not take
    }
    m_error = std::max(m_error, rowError(m_left.data(), h, h, tol, borderConductance));
    return true;
}

/// How far the laws at the plan's end are off from linear where a border is off by the radius: for the
/// capacitor voltages, if that lasted all the plan, and for the rows; over what is allowed.
Block::Bend Block::bend(const BlockTolerances& tol, const double* borderConductance, double stay_s) {
    const int n = m_n;
    const double h = n > 0 ? m_span_s : 1;
    Bend worst;
    double v[8], drift[12], rate[20];
    for (int b = 0; b < m_r; ++b) {
        for (int k = 0; k < m_r; ++k) v[k] = m_y[at(n + k)] + (k == b ? m_radius_V : 0);
        if (!stage(m_c[1].data(), v, rate, m_left.data())) return {0, 10};
        for (int k = 0; k < n; ++k) m_F[at(k)] = rate[k] - m_stageRate[at(k)];
        for (int k = 0; k < n; ++k) {
            const double off = product(m_modes.inverse.data() + k * n, m_F.data(), n) -
                               m_modes.byBorder[at(k * m_r + b)] * m_radius_V;
            drift[k] = off * h * phi1(h * m_modes.lambda[at(k)]);
        }
        for (int k = 0; k < n; ++k)
            worst.states = std::max(
                worst.states, std::abs(product(m_modes.vectors.data() + k * n, drift, n)) / tol.voltage_V);
        for (int row = 0; row < m_rows; ++row)
            m_left[at(row)] -= m_stageRows[1][at(row)] + m_byBorder[at(row * m_r + b)] * m_radius_V;
        worst.rows =
            std::max(worst.rows, rowError(m_left.data(), h, std::min(h, stay_s), tol, borderConductance));
    }
    return worst;
}

/// Chooses the radius, and cuts the span where the borders move out of the radius sooner anyway.
void Block::findRadius(const BlockTolerances& tol, const double* borderConductance, double drift) {
    const double least = 0.1 * tol.voltage_V;
    m_radius_V = m_memory->radius_V > 0 ? m_memory->radius_V : firstRadius_V;
    for (int attempt = 0; attempt < 20; ++attempt) {
        const double stay_s = drift > 0 ? m_radius_V / drift : never;
        Bend worst = bend(tol, borderConductance, stay_s);
        if (!(worst.states < 1e30 && worst.rows < 1e30)) worst = {0, 10};
        if (worst.states > 1 && stay_s < m_span_s) {
            const double cut = std::max(0.9 / worst.states, stay_s / m_span_s);
            m_span_s *= cut;
            worst.states *= cut;
        }
        const double all = std::max(worst.states, worst.rows);
        if (all <= 1) {
            m_memory->radius_V = all < 0.25 ? std::min(1.5 * m_radius_V, 100.0) : m_radius_V;
            return;
        }
        m_radius_V = std::max(m_radius_V * std::max(0.1, 0.9 / all), least);
        m_memory->radius_V = m_radius_V;
        if (all <= 8 || m_radius_V == least) return; // errors shrink with the radius at least
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
            const double rate = product(m_byMode.data() + row * m_n, m_modes.force.data(), m_n);
            const double time = -m_value[at(row)] / rate;
            if (std::abs(m_value[at(row)]) > far_V && time > 0) soonest = std::min(soonest, time);
        }
    return soonest;
}

bool Block::findSpan(const BlockTolerances& tol, const double* borderConductance) {
    // The first plan of a phase: as long as the last such one; the very first, 10 mV at the present speed.
    double h = m_fresh ? m_memory->firstSpan_s : m_nextSpan_s;
    if (!(h > 0)) {
        double speed = 0;
        for (int k = 0; k < m_n; ++k) speed = std::max(speed, std::abs(m_rate[at(k)]));
        h = speed > 0 ? std::clamp(1e-2 / speed, 1e-9, 1.0) : 1;
    }
    h = std::min(h, timeToLevels());
    for (int attempt = 0; attempt < 60; ++attempt) {
        const bool solved = tryPlan(h, tol, borderConductance);
        const double error = solved && std::isfinite(m_error) ? m_error : 1e8;
        const double factor = 0.9 * std::pow(std::max(error, 1e-12), -0.25);
        if (error <= 1) {
            m_span_s = h;
            m_nextSpan_s = std::min(h * std::clamp(factor, 0.5, 10.0), 1e6);
            if (m_fresh) m_memory->firstSpan_s = m_nextSpan_s;
            return true;
        }
        ++m_rejected;
        h *= std::clamp(factor, 0.05, 0.8);
    }
    return false;
}

bool Block::plan(const BlockTolerances& tol, double begin_s, const double* borderConductance, double drift) {
    for (std::size_t l = 0; l < m_lamps.size(); ++l) {
        Lamp& lamp = m_lamps[l];
        const double now = std::abs(m_value[at(m_r + 4 * m_timers) + l]);
        if (!m_fresh) lamp.phase_C += 0.5 * (now + lamp.last_A) * (begin_s - m_begin_s);
        lamp.last_A = now;
    }
    m_begin_s = begin_s;
    if (m_fresh) m_phaseBegin_s = begin_s;
    m_span_s = m_radius_V = never;
    std::fill(m_modes.c2.begin(), m_modes.c2.end(), 0.0);
    std::fill(m_modes.c3.begin(), m_modes.c3.end(), 0.0);
    if (isLinear()) return true;

    if (m_n == 0) { // nothing moves by itself
        m_stageRate = m_rate;
        m_stageRows[1] = m_value;
    } else if (!findSpan(tol, borderConductance)) {
        return false;
    }
    if (m_r > 0) findRadius(tol, borderConductance, drift);
    m_fresh = false;
    return true;
}

bool Block::drawn(const double* v, double* current) {
    double still[12] = {}, rate[20];
    if (!stage(still, v, rate, m_left.data())) return false;
    std::copy(m_left.begin(), m_left.begin() + m_r, current);
    return true;
}

bool Block::watched(int timer, const double* yAndBorders, Watched& out) {
    const Reduced& r = *m_reduced;
    const int size = m_n + m_r;
    double step[20];
    for (int k = 0; k < size; ++k) step[k] = yAndBorders[k] - m_y[at(k)];
    for (int k = 0; k < r.m; ++k)
        m_stageU[at(k)] = m_u[at(k)] + product(m_linear.portByState.data() + k * size, step, size);
    const NearbyInverse nearby{m_linear.W.data(), m_slope.data()};
    ++m_solves;
    if (!m_ports.solve(r, yAndBorders, m_stageU.data(), m_stageI.data(), m_stageSlope.data(), m_guess.data(),
                       &nearby))
        return false;
    out = r.watched(timer, yAndBorders, m_stageI.data());
    return true;
}

} // namespace blinkwright::engine::large
