// A step of the whole board: how far it may reach, the answer of all or of one block to it, and its end.
#include "core/engine/large/assembly.h"

#include "core/engine/dense_solve.h"
#include "core/engine/large/phi_functions.h"
#include "core/engine/large/rows.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::engine::large {

bool Assembly::reach(double wish_s, double& most_s) {
    m_wish_s = wish_s;
    for (int k = 0; k < blocks(); ++k)
        if (m_until[at(k)] < m_time + wish_s && m_based[at(k)] < m_time) stale(k, worn);
    if (!m_settled && !settle()) return false;
    most_s = never;
    for (const double until : m_until) most_s = std::min(most_s, until - m_time);
    return true;
}

/// Where the modes come to at the middle and the end of a step of length h with the borders as at its begin,
/// how they answer to the parabola's terms, and the sums of both that the borders' balance asks for.
void Assembly::answerToAll(double h, const double* expA, const double* expH, const bool* apart) {
    const int r = m_r, M = m_M, size = 2 * r, exps = static_cast<int>(m_curve.rate.size());
    const double a = 0.5 * h;
    for (int j = 0; j < M; ++j) {
        const std::size_t m = at(j);
        const double lambda = m_lambda[m], s0 = m_time - m_begin[m], z = m_z[m];
        const double c2 = m_c2[m], c3 = m_c3[m];
        double g0 = m_force[m] + s0 * s0 * (c2 + s0 * c3);
        const double g1 = s0 * (2 * c2 + 3 * c3 * s0), g2 = c2 + 3 * c3 * s0;
        for (int b = 0; b < r; ++b) g0 += m_byBorder[at(b * M) + m] * m_curve.p0[at(b)];
        const Phi half = phiOf(lambda * a), full = doubled(half);
        double zA = half.k0 * z +
                    a * (half.k1 * g0 + a * (half.k2 * g1 + a * (2 * half.k3 * g2 + a * 6 * half.k4 * c3)));
        double zH = full.k0 * z +
                    h * (full.k1 * g0 + h * (full.k2 * g1 + h * (2 * full.k3 * g2 + h * 6 * full.k4 * c3)));
        double rate = lambda * z + g0;
        for (int e = 0; e < exps; ++e) {
            double force = 0;
            for (int b = 0; b < r; ++b) force += m_byBorder[at(b * M) + m] * m_curve.amplitude[at(e * r + b)];
            zA += force * answer(m_curve.rate[at(e)], lambda, expA[e], half.k0, a);
            zH += force * answer(m_curve.rate[at(e)], lambda, expH[e], full.k0, h);
            rate += force;
        }
        m_zEnd[m] = zH;
        const double a1 = a * a * half.k2, a2 = 2 * a * a * a * half.k3;
        m_r1[m] = h * h * full.k2;
        m_r2[m] = 2 * h * h * h * full.k3;
        for (std::size_t f = 0; f < m_fastModes.size(); ++f)
            if (m_fastModes[f] == j && apart[f]) rate = m_fastShare[f];
        const double fast = 0.1 * lambda * h; // what is over within the step counts by its size, not its rate
        rate /= 1 + fast * fast;
        for (int b = 0; b < r; ++b) {
            const double draw = m_draw[at(b * M) + m];
            if (draw == 0) continue;
            m_right[at(b)] -= draw * zA;
            m_right[at(r + b)] -= draw * zH;
            m_some[at(b)] += draw * rate;
            for (int q = 0; q < r; ++q) {
                const double by = draw * m_byBorder[at(q * M) + m];
                m_matrix[at(b * size + q)] += by * a1;
                m_matrix[at(b * size + r + q)] += by * a2;
                m_matrix[at((r + b) * size + q)] += by * m_r1[m];
                m_matrix[at((r + b) * size + r + q)] += by * m_r2[m];
            }
        }
    }
}

/// The same for one border without exponentials, in loops that the compiler can turn into vector
/// instructions.
void Assembly::answerToOne(double h) {
    const int M = m_M;
    const double a = 0.5 * h, p0 = m_curve.p0[0], time = m_time;
    const double* __restrict lambdas = m_lambda.data();
    const double* __restrict zs = m_z.data();
    const double* __restrict c2s = m_c2.data();
    const double* __restrict c3s = m_c3.data();
    const double* __restrict begins = m_begin.data();
    const double* __restrict forces = m_force.data();
    const double* __restrict bys = m_byBorder.data();
    const double* __restrict draws = m_draw.data();
    double* __restrict zEnd = m_zEnd.data();
    double* __restrict r1 = m_r1.data();
    double* __restrict r2 = m_r2.data();
    double* __restrict k = m_phi.data();
    double* __restrict k1 = k + M;
    double* __restrict k2 = k1 + M;
    double* __restrict k3 = k2 + M;
    double* __restrict k4 = k3 + M;
    for (int j = 0; j < M; ++j) {
        const Phi p = smallPhi(lambdas[j] * a);
        k[j] = p.k0;
        k1[j] = p.k1;
        k2[j] = p.k2;
        k3[j] = p.k3;
        k4[j] = p.k4;
    }
    for (int j = 0; j < M; ++j) {
        if (std::abs(lambdas[j] * a) < Phi::smallest) continue;
        const Phi p = phiOf(lambdas[j] * a);
        k[j] = p.k0;
        k1[j] = p.k1;
        k2[j] = p.k2;
        k3[j] = p.k3;
        k4[j] = p.k4;
    }
    double sums[7] = {};
    for (int j = 0; j < M; ++j) {
        const double lambda = lambdas[j], s0 = time - begins[j], z = zs[j], c2 = c2s[j], c3 = c3s[j];
        const double g0 = forces[j] + s0 * s0 * (c2 + s0 * c3) + bys[j] * p0;
        const double g1 = s0 * (2 * c2 + 3 * c3 * s0), g2 = 2 * (c2 + 3 * c3 * s0), g3 = 6 * c3;
        const Phi half{k[j], k1[j], k2[j], k3[j], k4[j]}, full = doubled(half);
        const double zA =
            half.k0 * z + a * (half.k1 * g0 + a * (half.k2 * g1 + a * (half.k3 * g2 + a * half.k4 * g3)));
        const double zH =
            full.k0 * z + h * (full.k1 * g0 + h * (full.k2 * g1 + h * (full.k3 * g2 + h * full.k4 * g3)));
        const double fast = 0.1 * lambda * h;
        zEnd[j] = zH;
        r1[j] = h * h * full.k2;
        r2[j] = 2 * h * h * h * full.k3;
        const double draw = draws[j], by = draw * bys[j];
        sums[0] += draw * zA;
        sums[1] += draw * zH;
        sums[2] += draw * (lambda * z + g0) / (1 + fast * fast);
        sums[3] += by * half.k2;
        sums[4] += by * half.k3;
        sums[5] += by * r1[j];
        sums[6] += by * r2[j];
    }
    m_right[0] -= sums[0];
    m_right[1] -= sums[1];
    m_some[0] += sums[2];
    m_matrix[0] += sums[3] * a * a;
    m_matrix[1] += sums[4] * 2 * a * a * a;
    m_matrix[2] += sums[5];
    m_matrix[3] += sums[6];
}

double Assembly::attempt(double h) {
    const int r = m_r, M = m_M;
    const double a = 0.5 * h;
    m_h = h;
    // Exponentials too slow to tell from a parabola stay in it.
    m_curve.rate.clear();
    m_curve.amplitude.clear();
    double expA[mostFast] = {}, expH[mostFast] = {};
    bool apart[mostFast] = {};
    for (std::size_t j = 0; j < m_fast.rate.size(); ++j) {
        apart[j] = m_fast.rate[j] * h < -0.05;
        if (!apart[j]) continue;
        const std::size_t e = m_curve.rate.size();
        m_curve.rate.push_back(m_fast.rate[j]);
        expA[e] = std::exp(m_fast.rate[j] * a);
        expH[e] = expA[e] * expA[e];
        for (int b = 0; b < r; ++b) m_curve.amplitude.push_back(m_fast.amplitude[j * at(r) + at(b)]);
    }
    const int exps = static_cast<int>(m_curve.rate.size());
    for (int b = 0; b < r; ++b) {
        double p0 = m_V[at(b)];
        for (int e = 0; e < exps; ++e) p0 -= m_curve.amplitude[at(e * r + b)];
        m_curve.p0[at(b)] = p0;
        m_curve.p1[at(b)] = m_curve.p2[at(b)] = 0;
    }

    std::fill(m_right.begin(), m_right.end(), 0.0);
    std::fill(m_matrix.begin(), m_matrix.end(), 0.0);
    std::fill(m_some.begin(), m_some.end(),
              0.0); // rate of what the blocks draw, at the begin, the fast damped
    const int size = 2 * r;
    if (r == 1 && exps == 0)
        answerToOne(h);
    else
        answerToAll(h, expA, expH, apart);
    if (r == 0) return 0;
    for (const Link& link : m_links) {
        const double s0 = m_time - link.begin_s, sA = s0 + a, sH = s0 + h;
        m_right[at(link.border)] -= link.constant + sA * sA * (link.c2 + sA * link.c3);
        m_right[at(r + link.border)] -= link.constant + sH * sH * (link.c2 + sH * link.c3);
        m_some[at(link.border)] += s0 * (2 * link.c2 + 3 * s0 * link.c3);
    }
    for (int b = 0; b < r; ++b)
        for (int q = 0; q < r; ++q) {
            const double Y = m_conductance[at(b * r + q)];
            double vA = m_curve.p0[at(q)], vH = vA;
            for (int e = 0; e < exps; ++e) {
                vA += m_curve.amplitude[at(e * r + q)] * expA[e];
                vH += m_curve.amplitude[at(e * r + q)] * expH[e];
            }
            m_right[at(b)] -= Y * vA;
            m_right[at(r + b)] -= Y * vH;
            m_matrix[at(b * size + q)] += Y * a;
            m_matrix[at(b * size + r + q)] += Y * a * a;
            m_matrix[at((r + b) * size + q)] += Y * h;
            m_matrix[at((r + b) * size + r + q)] += Y * h * h;
        }
    // Unknowns in volt, so that the matrix is well scaled.
    for (int row = 0; row < size; ++row)
        for (int q = 0; q < r; ++q) {
            m_matrix[at(row * size + q)] /= h;
            m_matrix[at(row * size + r + q)] /= h * h;
        }
    if (!solveDense(m_matrix.data(), m_right.data(), size)) return never;
    for (int b = 0; b < r; ++b) {
        m_curve.p1[at(b)] = m_right[at(b)] / h;
        m_curve.p2[at(b)] = m_right[at(r + b)] / (h * h);
        if (!std::isfinite(m_curve.p1[at(b)]) || !std::isfinite(m_curve.p2[at(b)])) return never;
        m_VEnd[at(b)] = m_curve.at(b, h);
    }
    for (int b = 0; b < r; ++b) {
        const double* by = m_byBorder.data() + b * M;
        const double p1 = m_curve.p1[at(b)], p2 = m_curve.p2[at(b)];
        for (int j = 0; j < M; ++j) m_zEnd[at(j)] += by[j] * (p1 * m_r1[at(j)] + p2 * m_r2[at(j)]);
    }
    // A parabola through begin, middle and end is off by d s (s - h/2) (s - h) / 6, d the third derivative:
    // its slope at the begin by d h^2 / 12, and itself at most by a tenth of h times that.
    std::copy(m_conductance.begin(), m_conductance.end(), m_matrix.begin());
    if (!solveDense(m_matrix.data(), m_some.data(), r)) return never;
    double worst = 0;
    for (int b = 0; b < r; ++b)
        worst = std::max(worst, 0.1 * h * std::abs(-m_some[at(b)] - m_curve.p1[at(b)]));
    return worst / (0.25 * m_tol.voltage_V); // there are many steps to a flash
}

double Assembly::excursion() {
    double worst = 0;
    m_attemptVariation = 0;
    for (int b = 0; b < m_r; ++b) {
        const double half = m_VSome[at(b)] = m_curve.at(b, 0.5 * m_h);
        m_attemptVariation += std::abs(half - m_V[at(b)]) + std::abs(m_VEnd[at(b)] - half);
    }
    for (const Link& link : m_links) {
        const double off = std::max(std::abs(m_VEnd[at(link.border)] - link.base),
                                    std::abs(m_VSome[at(link.border)] - link.base)) /
                           link.radius;
        if (off > 1 && m_based[at(link.block)] < m_time) stale(link.block, worn);
        worst = std::max(worst, off);
    }
    return worst;
}

double Assembly::modeAt(int mode, double s) const {
    const std::size_t m = at(mode);
    const double lambda = m_lambda[m], s0 = m_time - m_begin[m];
    const double c2 = m_c2[m], c3 = m_c3[m];
    double g0 = m_force[m] + s0 * s0 * (c2 + s0 * c3);
    double g1 = s0 * (2 * c2 + 3 * c3 * s0), g2 = c2 + 3 * c3 * s0;
    for (int b = 0; b < m_r; ++b) {
        const double by = m_byBorder[at(b * m_M) + m];
        g0 += by * m_curve.p0[at(b)];
        g1 += by * m_curve.p1[at(b)];
        g2 += by * m_curve.p2[at(b)];
    }
    const Phi phi = phiOf(lambda * s);
    double z =
        phi.k0 * m_z[m] + s * (phi.k1 * g0 + s * (phi.k2 * g1 + s * (2 * phi.k3 * g2 + s * 6 * phi.k4 * c3)));
    for (std::size_t e = 0; e < m_curve.rate.size(); ++e) {
        double force = 0;
        for (int b = 0; b < m_r; ++b)
            force += m_byBorder[at(b * m_M) + m] * m_curve.amplitude[e * at(m_r) + at(b)];
        z += force * answer(m_curve.rate[e], lambda, std::exp(m_curve.rate[e] * s), phi.k0, s);
    }
    return z;
}

void Assembly::advanceOne(double s) {
    const int M = m_M;
    const double p0 = m_curve.p0[0], p1 = m_curve.p1[0], p2 = m_curve.p2[0], time = m_time;
    const double* __restrict lambdas = m_lambda.data();
    const double* __restrict zs = m_z.data();
    const double* __restrict c2s = m_c2.data();
    const double* __restrict c3s = m_c3.data();
    const double* __restrict begins = m_begin.data();
    const double* __restrict forces = m_force.data();
    const double* __restrict bys = m_byBorder.data();
    double* __restrict zEnd = m_zEnd.data();
    for (int j = 0; j < M; ++j) {
        const double s0 = time - begins[j], c2 = c2s[j], c3 = c3s[j], by = bys[j];
        const double g0 = forces[j] + s0 * s0 * (c2 + s0 * c3) + by * p0;
        const double g1 = s0 * (2 * c2 + 3 * c3 * s0) + by * p1, g2 = 2 * (c2 + 3 * c3 * s0 + by * p2);
        const Phi phi = smallPhi(lambdas[j] * s);
        zEnd[j] =
            phi.k0 * zs[j] + s * (phi.k1 * g0 + s * (phi.k2 * g1 + s * (phi.k3 * g2 + s * 6 * phi.k4 * c3)));
    }
    for (int j = 0; j < M; ++j)
        if (!(std::abs(lambdas[j] * s) < Phi::smallest)) zEnd[j] = modeAt(j, s);
}

void Assembly::advance(double s, double end_s) {
    m_drift = 0;
    m_variation += m_attemptVariation;
    for (int b = 0; b < m_r && s > 0; ++b)
        m_drift = std::max(m_drift, std::abs(m_curve.at(b, s) - m_V[at(b)]) / s);
    if (s == m_h) {
        std::copy(m_VEnd.begin(), m_VEnd.end(), m_V.begin());
    } else {
        if (m_r == 1 && m_curve.rate.empty())
            advanceOne(s);
        else
            for (int j = 0; j < m_M; ++j) m_zEnd[at(j)] = modeAt(j, s);
        for (int b = 0; b < m_r; ++b) m_V[at(b)] = m_curve.at(b, s);
    }
    std::swap(m_z, m_zEnd);
    m_time = end_s;
    m_settled = false;
}

} // namespace blinkwright::engine::large
