#include "core/engine/rosenbrock_step.h"

#include "core/engine/small_matrix.h"

#include <algorithm>

namespace blinkwright::engine {

void RosenbrockStep::prepare(const Reduced& r, const Point& base, const Linearisation& linear) {
    m_reduced = &r;
    m_base = &base;
    m_linear = &linear;
    const int n = r.n, m = r.m, stride = r.stride;
    const auto size = [](int count) { return static_cast<std::size_t>(count); };
    m_stage.resize(r);
    m_T.assign(size(m * stride), 0);
    m_WA.assign(size(n * stride), 0);
    m_S.resize(size(n * n));
    m_k.assign(size(rodas::stages * stride), 0);
    m_currents.resize(size(rodas::stages * m));
    m_ports.resize(size(rodas::stages * m));
    m_work.resize(size(4 * stride));
    m_guess.resize(size(m));
    m_swaps.resize(size(n));
    m_dense.resize(denseSize(n, m));
    for (int j = 0; j < m; ++j) {
        double* column = m_T.data() + j * stride;
        for (int k = 0; k < m; ++k) {
            const double w = linear.W[size(k * m + j)];
            column[n + k] = w;
            for (int row = 0; row < n; ++row) column[row] -= r.D[size(row * m + k)] * base.slope[size(k)] * w;
        }
    }
    for (int j = 0; j < n; ++j)
        for (int k = 0; k < m; ++k) m_WA[size(j * stride + n + k)] = linear.portByState[size(k * n + j)];
}

bool RosenbrockStep::attempt(double h, Point& end) {
    const Reduced& r = *m_reduced;
    const int n = r.n, m = r.m, stride = r.stride;
    m_h = h;
    const double diagonal = 1 / (h * rodas::gamma);
    for (std::size_t k = 0; k < m_S.size(); ++k) m_S[k] = -m_linear->jacobian[k];
    for (int k = 0; k < n; ++k) m_S[static_cast<std::size_t>(k * n + k)] += diagonal;
    if (!invert(m_S.data(), n, n, m_swaps.data())) return false;
    for (int index = 0; index < rodas::stages; ++index) {
        if (index == rodas::stages - 1) { // its argument is the one before, moved by that one's stage
            addColumn(m_stage.z.data(), m_k.data() + (index - 1) * stride, 1, stride);
        } else {
            std::copy(m_base->z.begin(), m_base->z.end(), m_stage.z.begin());
            for (int j = 0; j < index; ++j)
                addColumn(m_stage.z.data(), m_k.data() + j * stride, rodas::a[index][j], stride);
        }
        double* currents = m_currents.data() + index * m;
        if (index > 0)
            r.currents(m_stage.u(), currents, m_stage.slope.data(), m_guess.data());
        else
            std::copy(m_base->i.begin(), m_base->i.end(), currents);
        std::copy(m_stage.u(), m_stage.u() + m, m_ports.data() + index * m);
        stage(index, currents);
    }
    const double* last = error();
    for (int k = 0; k < stride; ++k)
        end.z[static_cast<std::size_t>(k)] = m_stage.z[static_cast<std::size_t>(k)] + last[k];
    double* dense = m_dense.data();
    dense[0] = h;
    std::copy(m_base->z.begin(), m_base->z.begin() + n + m, dense + 1);
    std::copy(end.z.begin(), end.z.begin() + n + m, dense + 1 + n + m);
    return true;
}

void RosenbrockStep::stage(int index, const double* currents) {
    const Reduced& r = *m_reduced;
    const int n = r.n, m = r.m, stride = r.stride;
    double* __restrict right = m_work.data();
    std::copy(r.constant.begin(), r.constant.end(), right);
    addProduct(right, r.columns.data(), m_stage.y(), n, stride);
    addProduct(right, r.columns.data() + n * stride, currents, m, stride);
    for (int k = 0; k < m; ++k) right[n + k] -= m_stage.u()[k];

    double* ports = m_work.data() + stride;
    std::fill(ports, ports + stride, 0.0);
    addProduct(ports, m_T.data(), right + n, m, stride);
    double* state = m_work.data() + 2 * stride;
    for (int k = 0; k < n; ++k) state[k] = right[k] + ports[k];
    for (int j = 0; j < index; ++j) {
        const double w = rodas::c[index][j] / m_h;
        const double* kj = m_k.data() + j * stride;
        for (int k = 0; k < n; ++k) state[k] += w * kj[k];
    }
    double* solved = m_work.data() + 3 * stride;
    for (int row = 0; row < n; ++row) {
        double sum = 0;
        for (int j = 0; j < n; ++j) sum += m_S[static_cast<std::size_t>(row * n + j)] * state[j];
        solved[row] = sum;
    }
    double* K = m_k.data() + index * stride;
    std::copy(ports, ports + stride, K);
    addProduct(K, m_WA.data(), solved, n, stride);
    std::copy(solved, solved + n, K);
}

/// The charge is one more state, q' = i(u), that nothing depends on: its stages follow from the others'.
Charge RosenbrockStep::charge(int junction, double slope) const {
    const Reduced& r = *m_reduced;
    const int port = r.lampPort[static_cast<std::size_t>(junction)];
    double k[rodas::stages];
    for (int index = 0; index < rodas::stages; ++index) {
        const auto at = static_cast<std::size_t>(index * r.m + port);
        const double current = r.junctionCurrent(port, m_ports[at], m_currents[at]);
        double sum = m_h * (current + slope * m_k[static_cast<std::size_t>(index * r.stride + r.n + port)]);
        for (int j = 0; j < index; ++j) sum += rodas::c[index][j] * k[j];
        k[index] = rodas::gamma * sum;
    }
    double charge = k[rodas::stages - 1];
    for (int j = 0; j < rodas::stages - 1; ++j) charge += rodas::a[rodas::stages - 1][j] * k[j];
    return {charge, k[rodas::stages - 1]};
}

std::span<const double> RosenbrockStep::dense() {
    const int width = m_reduced->n + m_reduced->m;
    double* p = m_dense.data() + 1 + 2 * width;
    double* q = p + width;
    std::fill(p, q + width, 0.0);
    for (int j = 0; j < rodas::stages - 1; ++j) {
        const double* K = m_k.data() + j * m_reduced->stride;
        for (int k = 0; k < width; ++k) {
            p[k] += rodas::d1[j] * K[k];
            q[k] += rodas::d2[j] * K[k];
        }
    }
    return m_dense;
}

void RosenbrockStep::evaluate(const double* dense, int n, int m, double t, double* y, double* u) {
    const int width = n + m;
    const double* start = dense + 1;
    const double* end = start + width;
    const double* p = end + width;
    const double* q = p + width;
    const double share = t / dense[0], rest = 1 - share;
    const auto value = [&](int k) {
        return rest * start[k] + share * (end[k] + rest * (p[k] + share * q[k]));
    };
    for (int k = 0; k < n; ++k) y[k] = value(k);
    for (int k = 0; k < m; ++k) u[k] = value(n + k);
}

} // namespace blinkwright::engine
