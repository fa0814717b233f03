#include "core/engine/stepper.h"

#include "core/engine/rodas.h"
#include "core/engine/small_matrix.h"

#include <algorithm>
#include <limits>

namespace blinkwright::engine {

void Point::resize(const Reduced& reduced) {
    n = reduced.n;
    z.resize(static_cast<std::size_t>(reduced.stride));
    i.resize(static_cast<std::size_t>(reduced.m));
    slope.resize(static_cast<std::size_t>(reduced.m));
}

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
    const auto m = static_cast<std::size_t>(reduced.m), n = static_cast<std::size_t>(reduced.n),
               stride = static_cast<std::size_t>(reduced.stride);
    for (Point* p : {&m_base, &m_end, &m_stage}) p->resize(reduced);
    m_guess.assign(m, 0);
    m_W.resize(m * m);
    m_T.assign(m * stride, 0);
    m_WA.assign(n * stride, 0);
    m_state.resize(n * n);
    m_S.resize(n * n);
    m_k.assign(rodas::stages * stride, 0);
    m_dense.resize(2 * stride);
    m_work.resize(4 * stride);
    m_swaps.resize(std::max(n, m));

    std::fill(m_base.z.begin(), m_base.z.end(), 0.0);
    std::copy(start.begin(), start.end(), m_base.y());
    auto& remembered = m_remembered[m_reduced];
    if (remembered.size() == m) std::copy(remembered.begin(), remembered.end(), m_base.u());
    if (!m_ports.solve(reduced, m_base.y(), m_base.u(), m_guess.data())) return false;
    remembered.assign(m_base.u(), m_base.u() + m);
    reduced.currents(m_base.u(), m_base.i.data(), m_base.slope.data(), m_guess.data());
    return linearise();
}

/// Prepares what a step from the base needs, whatever its length.
bool Stepper::linearise() {
    const Reduced& r = *m_reduced;
    const int n = r.n, m = r.m, stride = r.stride;
    const double* g = m_base.slope.data();
    for (int k = 0; k < m; ++k) {
        const double* Z = r.Z.data() + k * m;
        double* row = m_W.data() + k * m;
        for (int j = 0; j < m; ++j) row[j] = Z[j] * g[j];
        row[k] += 1;
    }
    if (!invert(m_W.data(), m, m, m_swaps.data())) return false;
    for (int j = 0; j < m; ++j) {
        double* column = m_T.data() + j * stride;
        for (int k = 0; k < n; ++k) column[k] = 0;
        for (int k = 0; k < m; ++k) column[n + k] = m_W[static_cast<std::size_t>(k * m + j)];
        for (int k = 0; k < m; ++k) {
            const double factor = g[k] * column[n + k];
            for (int row = 0; row < n; ++row)
                column[row] -= r.D[static_cast<std::size_t>(row * m + k)] * factor;
        }
    }
    double* product = m_work.data();
    for (int j = 0; j < n; ++j) {
        std::fill(product, product + stride, 0.0);
        for (int k = 0; k < m; ++k)
            addColumn(product, m_T.data() + k * stride, r.A[static_cast<std::size_t>(k * n + j)], stride);
        double* column = m_WA.data() + j * stride;
        for (int k = 0; k < m; ++k) column[n + k] = product[n + k];
        for (int row = 0; row < n; ++row)
            m_state[static_cast<std::size_t>(row * n + j)] =
                -product[row] - r.B[static_cast<std::size_t>(row * n + j)];
    }
    return true;
}

bool Stepper::factorFor(double h) {
    const int n = m_reduced->n;
    const double diagonal = 1 / (h * rodas::gamma);
    std::copy(m_state.begin(), m_state.end(), m_S.begin());
    for (int k = 0; k < n; ++k) m_S[static_cast<std::size_t>(k * n + k)] += diagonal;
    return invert(m_S.data(), n, n, m_swaps.data());
}

/// y' and the residual of the port equations at a point.
void Stepper::residual(const Point& at, const double* currents, double* __restrict out) const {
    const Reduced& r = *m_reduced;
    std::copy(r.constant.begin(), r.constant.end(), out);
    addProduct(out, r.columns.data(), at.y(), r.n, r.stride);
    addProduct(out, r.columns.data() + r.n * r.stride, currents, r.m, r.stride);
    const double* u = at.u();
    for (int k = 0; k < r.m; ++k) out[r.n + k] -= u[k];
}

/// Solves stage `index` at m_stage, whose argument is set.
void Stepper::stage(int index, double h, const double* currents) {
    const Reduced& r = *m_reduced;
    const int n = r.n, stride = r.stride;
    double* right = m_work.data();
    double* ports = m_work.data() + stride;
    double* K = m_k.data() + index * stride;
    residual(m_stage, currents, right);
    std::fill(ports, ports + stride, 0.0);
    addProduct(ports, m_T.data(), right + n, r.m, stride);
    double* state = m_work.data() + 2 * stride;
    for (int k = 0; k < n; ++k) state[k] = right[k] + ports[k];
    for (int j = 0; j < index; ++j) {
        const double w = rodas::c[index][j] / h;
        const double* kj = m_k.data() + j * stride;
        for (int k = 0; k < n; ++k) state[k] += w * kj[k];
    }
    double* solved = m_work.data() + 3 * stride;
    for (int row = 0; row < n; ++row) {
        double sum = 0;
        for (int j = 0; j < n; ++j) sum += m_S[static_cast<std::size_t>(row * n + j)] * state[j];
        solved[row] = sum;
    }
    std::copy(ports, ports + stride, K);
    addProduct(K, m_WA.data(), solved, n, stride);
    std::copy(solved, solved + n, K);

    for (Lamp& lamp : m_lamps) {
        const int port = r.lampPort[static_cast<std::size_t>(lamp.junction)];
        const Port& p = r.ports[static_cast<std::size_t>(port)];
        const double share = 1 - p.reference * p.series;
        const double slope = (m_base.slope[static_cast<std::size_t>(port)] + p.reference) / share;
        double sum = h * (r.junctionCurrent(port, m_stage.u()[port], currents[port]) + slope * K[n + port]);
        for (int j = 0; j < index; ++j) sum += rodas::c[index][j] * lamp.k[j];
        lamp.k[index] = rodas::gamma * sum;
    }
}

double Stepper::attempt(double h) {
    constexpr double failed = std::numeric_limits<double>::infinity();
    const Reduced& r = *m_reduced;
    const int n = r.n, m = r.m, stride = r.stride;
    m_h = h;
    m_denseDone = false;
    if (!factorFor(h)) return failed;
    for (int index = 0; index < rodas::stages; ++index) {
        if (index == rodas::stages - 1) { // its argument is the one before, moved by that one's stage
            addColumn(m_stage.z.data(), m_k.data() + (index - 1) * stride, 1, stride);
        } else {
            std::copy(m_base.z.begin(), m_base.z.end(), m_stage.z.begin());
            for (int j = 0; j < index; ++j)
                addColumn(m_stage.z.data(), m_k.data() + j * stride, rodas::a[index][j], stride);
        }
        if (index > 0) r.currents(m_stage.u(), m_stage.i.data(), m_stage.slope.data(), m_guess.data());
        stage(index, h, index > 0 ? m_stage.i.data() : m_base.i.data());
    }

    const double* last = m_k.data() + (rodas::stages - 1) * stride;
    double worstState = 0, worstPort = 0, sum = 0;
    for (int k = 0; k < stride; ++k)
        m_end.z[static_cast<std::size_t>(k)] = m_stage.z[static_cast<std::size_t>(k)] + last[k];
    for (int k = 0; k < n; ++k) worstState = std::max(worstState, std::abs(last[k]));
    for (int k = 0; k < m; ++k) worstPort = std::max(worstPort, std::abs(last[n + k]));
    for (int k = 0; k < n + m; ++k) sum += m_end.z[static_cast<std::size_t>(k)];
    const double error = std::max({worstState / m_tol.voltage_V, worstPort / m_tol.port_V, chargeError(h)});
    if (!std::isfinite(error) || !std::isfinite(sum))
        return failed; // max() drops what is not a number: sum does not
    r.currents(m_end.u(), m_end.i.data(), m_end.slope.data(), m_guess.data());
    return error;
}

/// Error of the lamps' charges over what is allowed.
double Stepper::chargeError(double h) {
    double worst = 0;
    for (Lamp& lamp : m_lamps) {
        double charge = lamp.k[rodas::stages - 1];
        for (int j = 0; j < rodas::stages - 1; ++j) charge += rodas::a[rodas::stages - 1][j] * lamp.k[j];
        lamp.last_C = charge;
        const double rated =
            m_reduced->board->junctions[static_cast<std::size_t>(lamp.junction)].ratedCurrent;
        const double dark_C = m_tol.darkShare * rated * (m_phaseTime_s + h);
        const double scale =
            std::max({lamp.cycle_C, std::abs(lamp.phase_C) + std::abs(charge), dark_C, 1e-15});
        worst = std::max(worst, std::abs(lamp.k[rodas::stages - 1]) / scale);
    }
    return worst / m_tol.charge;
}

void Stepper::accept() {
    std::swap(m_base, m_end);
    for (Lamp& lamp : m_lamps) lamp.phase_C += lamp.last_C;
    m_phaseTime_s += m_h;
    linearise();
}

void Stepper::newPhase() {
    for (Lamp& lamp : m_lamps) {
        lamp.cycle_C = std::max(0.5 * lamp.cycle_C, std::abs(lamp.phase_C));
        lamp.phase_C = 0;
    }
    m_phaseTime_s = 0;
}

double Stepper::speed() {
    residual(m_base, m_base.i.data(), m_work.data());
    double largest = 0;
    for (int k = 0; k < m_reduced->n; ++k)
        largest = std::max(largest, std::abs(m_work[static_cast<std::size_t>(k)]));
    return largest;
}

void Stepper::finishDense() {
    if (m_denseDone) return;
    m_denseDone = true;
    const int stride = m_reduced->stride;
    std::fill(m_dense.begin(), m_dense.end(), 0.0);
    for (int j = 0; j < rodas::stages - 1; ++j) {
        addColumn(m_dense.data(), m_k.data() + j * stride, rodas::d1[j], stride);
        addColumn(m_dense.data() + stride, m_k.data() + j * stride, rodas::d2[j], stride);
    }
}

DenseStep Stepper::dense() {
    finishDense();
    return {m_dense.data(), m_dense.data() + m_reduced->stride};
}

void Stepper::inside(double share, Point& out) {
    finishDense();
    const int stride = m_reduced->stride;
    out.resize(*m_reduced);
    const double* p = m_dense.data();
    const double* q = p + stride;
    const double rest = 1 - share;
    for (int j = 0; j < stride; ++j) {
        const auto k = static_cast<std::size_t>(j);
        out.z[k] = rest * m_base.z[k] + share * (m_end.z[k] + rest * (p[k] + share * q[k]));
    }
    m_reduced->currents(out.u(), out.i.data(), out.slope.data(), m_guess.data());
}

} // namespace blinkwright::engine
