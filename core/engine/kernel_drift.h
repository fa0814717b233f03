// How a Kernel takes the drifting ports along: their currents over the path of their voltages. Part of
// kernel.h, which includes it.
#pragma once

#include "core/engine/kernel.h"

namespace blinkwright::engine {

template <class V, int N, int Q, int D, class Build>
inline void Kernel<V, N, Q, D, Build>::drift() {
    m_modes.prepare(n(), m_h, m_basis.lambda.data(), m_phi.data());
    // Ports that come out of the band go first. Those that start within it are out of it for most of the
    // step, so that all paths are laid with their currents as they are then.
    V drive[maxN], known[maxN], outside[maxD];
    MaskOf<V> comesOut[maxD];
    for (int k = 0; k < n(); ++k) {
        m_fix[k] = m_fixTurn[k] = known[k] = V(0);
        drive[k] = m_fm[k];
    }
    for (int j = 0; j < d(); ++j) {
        V to = base.u[q() + j];
        for (int k = 0; k < n(); ++k) to += m_PX[(q() + j) * n() + k] * m_fm[k] * m_h * m_phi[k][1];
        comesOut[j] = beyondDriftBand(to);
        const V then = select(to > V(0), m_f->laws[q() + j].p[0], V(0));
        outside[j] = select(comesOut[j], then - base.i[q() + j], V(0));
        if (all(beyondDriftBand(base.u[q() + j]))) continue;
        for (int k = 0; k < n(); ++k) drive[k] -= m_KX[k * kept() + q() + j] * outside[j];
    }
    for (int j = 0; j < d(); ++j)
        if (all(comesOut[j])) integrate(j, drive, known, outside[j]);
    for (int j = 0; j < d(); ++j)
        if (!all(comesOut[j])) integrate(j, drive, known, outside[j]);
}

template <class V, int N, int Q, int D, class Build>
inline void Kernel<V, N, Q, D, Build>::integrate(int j, V* drive, V* known, V later) {
    const int port = q() + j;
    auto& path = m_path[j];
    path.lay(m_modes, base.u[port], m_PX + port * n(), drive, known);
    path.effect = V(0);
    for (int r = 0; r < n(); ++r) {
        V sum(0);
        for (int k = 0; k < n(); ++k)
            sum += m_basis.vectors[r * n() + k] * m_h * m_phi[k][1] * m_KX[k * kept() + port];
        path.effect = lane::larger(path.effect, lane::magnitude(sum));
    }
    const auto [moment0, moment1, weighted, atEnd] =
        path.integrate(m_modes, m_f->laws[port].p[0], base.i[port]);
    m_r[0][port] = 4.5 * moment0 - 5 * moment1;
    m_r[1][port] = 20 * moment1 - 12 * moment0;
    const V alpha = 48 * moment0 - 60 * moment1, beta = 80 * moment1 - 60 * moment0;
    const bool within = !all(beyondDriftBand(base.u[port]));
    for (int k = 0; k < n(); ++k) {
        const V by = m_h * m_KX[k * kept() + port], z = m_h * m_basis.lambda[k];
        const V gain = by * (2 * alpha * m_phi[k][3] + 6 * beta * m_phi[k][4] - weighted[k]);
        // The slope that it ends with; a mode much faster than the step just follows.
        const V slope = select(z > V(-50), z * gain - by * (atEnd - m_r[1][port]), 2 * gain);
        m_fix[k] += 3 * gain - slope;
        m_fixTurn[k] += slope - 2 * gain;
        known[k] -= by * (weighted[k] - later * m_phi[k][1]);
        if (!within) drive[k] -= m_KX[k * kept() + port] * later;
    }
}

} // namespace blinkwright::engine
