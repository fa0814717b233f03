// How a Kernel solves its port equations: at the base, in a stage, and at an end. Part of kernel.h, which
// includes it.
#pragma once

#include "core/engine/kernel.h"

namespace blinkwright::engine {

template <class V, int N, int Q, int D, class Build>
BLINKWRIGHT_INLINE V Kernel<V, N, Q, D, Build>::cut(const PortLaw<V>& law, V step) const {
    const V width = law.turnOnWidth();
    const auto far = (step > 2 * width) & (width > V(0));
    if (!any(far)) return step;
    const V positive = select(width > V(0), width, V(1));
    return select(far, width * (1 + lane::logarithm(1 + lane::larger(step, V(0)) / positive)), step);
}

template <class V, int N, int Q, int D, class Build>
BLINKWRIGHT_INLINE void Kernel<V, N, Q, D, Build>::eliminate(V* M, V* x) const {
    for (int k = 0; k < q(); ++k) {
        const V inverse = 1 / M[k * q() + k];
        for (int r = k + 1; r < q(); ++r) {
            const V factor = M[r * q() + k] * inverse;
            for (int c = k + 1; c < q(); ++c) M[r * q() + c] -= factor * M[k * q() + c];
            x[r] -= factor * x[k];
        }
        M[k * q() + k] = inverse;
    }
    for (int r = q() - 1; r >= 0; --r) {
        for (int c = r + 1; c < q(); ++c) x[r] -= M[r * q() + c] * x[c];
        x[r] *= M[r * q() + r];
    }
}

template <class V, int N, int Q, int D, class Build>
inline auto Kernel<V, N, Q, D, Build>::solveAfresh() -> Mask {
    const Folded<V>& f = *m_f;
    V source[maxQ];
    for (int k = 0; k < q(); ++k) {
        V sum = f.a[k];
        for (int j = 0; j < n(); ++j) sum += f.A[k * n() + j] * base.y[j];
        source[k] = sum;
    }
    const int stride = kept();
    Mask done = maskOf<V>(false);
    constexpr int most = 16;
    for (int iteration = 0; iteration < most && !all(done); ++iteration) {
        V step[maxQ], M[maxQ * maxQ];
        for (int k = 0; k < kept(); ++k) f.laws[k].evaluate(base.u[k], m_inner[k], base.i[k], base.slope[k]);
        for (int k = 0; k < q(); ++k) {
            V sum = source[k] - base.u[k];
            for (int j = 0; j < kept(); ++j) sum -= f.Z[k * stride + j] * base.i[j];
            for (int j = 0; j < q(); ++j) M[k * q() + j] = f.Z[k * stride + j] * base.slope[j];
            M[k * q() + k] += V(1);
            step[k] = sum;
        }
        eliminate(M, step);
        done = maskOf<V>(true);
        for (int k = 0; k < q(); ++k) {
            const V taken = cut(f.laws[k], step[k]);
            done = done & (lane::magnitude(step[k]) <= V(m_close) * (1 + lane::magnitude(base.u[k])));
            base.u[k] += taken;
            base.i[k] += base.slope[k] * taken;
        }
        for (int k = q(); k < kept(); ++k) {
            V u = f.a[k];
            for (int j = 0; j < n(); ++j) u += f.A[k * n() + j] * base.y[j];
            for (int j = 0; j < kept(); ++j) u -= f.Z[k * stride + j] * base.i[j];
            done = done & (lane::magnitude(u - base.u[k]) <= V(m_close));
            base.u[k] = u;
            base.slope[k] = V(0);
        }
    }
    return done;
}

template <class V, int N, int Q, int D, class Build>
inline auto Kernel<V, N, Q, D, Build>::stage(const V* c, V* r, StepPoint<V>& out, bool within) -> Mask {
    if (q() == 0) return maskOf<V>(true);
    V target[maxQ];
    for (int k = 0; k < q(); ++k) {
        V sum = base.u[k];
        for (int j = 0; j < n(); ++j) sum += m_PX[k * n() + j] * c[j];
        for (int j = 0; j < d(); ++j) sum -= m_Vd[k * d() + j] * r[q() + j];
        target[k] = sum;
        for (int j = 0; j < q(); ++j) sum -= m_V[k * q() + j] * r[j];
        out.u[k] = sum;
    }
    // Where nothing moves by more than this, the laws are their tangents within the step.
    Mask flat = maskOf<V>(within);
    for (int k = 0; k < q(); ++k) flat = flat & (lane::magnitude(target[k] - base.u[k]) <= V(3 * m_close));
    if (all(flat)) {
        for (int k = 0; k < q(); ++k) {
            out.u[k] = target[k];
            out.i[k] = base.i[k] + base.slope[k] * (target[k] - base.u[k]);
            out.slope[k] = base.slope[k];
            r[k] = V(0);
        }
        return maskOf<V>(true);
    }
    constexpr int most = 12;
    Mask done = maskOf<V>(false);
    for (int iteration = 0; iteration < most; ++iteration) {
        V step[maxQ], M[maxQ * maxQ];
        for (int k = 0; k < q(); ++k) {
            m_f->laws[k].evaluate(out.u[k], m_inner[k], out.i[k], out.slope[k]);
            r[k] = out.i[k] - base.i[k] - base.slope[k] * (out.u[k] - base.u[k]);
        }
        for (int k = 0; k < q(); ++k) {
            V sum = target[k] - out.u[k];
            for (int j = 0; j < q(); ++j) {
                sum -= m_V[k * q() + j] * r[j];
                M[k * q() + j] = m_V[k * q() + j] * (out.slope[j] - base.slope[j]);
            }
            M[k * q() + k] += V(1);
            step[k] = sum;
        }
        eliminate(M, step);
        Mask small = maskOf<V>(true), sane = maskOf<V>(true);
        for (int k = 0; k < q(); ++k) {
            const V size = lane::magnitude(step[k]);
            small = small & (size <= V(m_close) * (1 + lane::magnitude(out.u[k])));
            sane = sane & (size < V(1e6));
        }
        if (all(small)) {
            // Close in, a step leaves only its square behind; currents follow by their tangents.
            for (int k = 0; k < q(); ++k) {
                out.u[k] += step[k];
                out.i[k] += out.slope[k] * step[k];
                r[k] += (out.slope[k] - base.slope[k]) * step[k];
            }
            return maskOf<V>(true);
        }
        done = small;
        if (!any(sane)) return done;
        for (int k = 0; k < q(); ++k) out.u[k] += select(sane, cut(m_f->laws[k], step[k]), V(0));
    }
    return done;
}

template <class V, int N, int Q, int D, class Build>
inline auto Kernel<V, N, Q, D, Build>::finish(const V* c, const V* guess) -> Mask {
    V r[maxKept];
    for (int k = 0; k < kept(); ++k) r[k] = guess[k];
    StepPoint<V>& out = this->end;
    // A drifting port's current hardly moves a bent one's voltage: the guess of it will do there.
    const Mask solved = stage(c, r, out, false);
    for (int k = 0; k < d(); ++k) {
        const int port = q() + k;
        V u = base.u[port];
        for (int j = 0; j < n(); ++j) u += m_PX[port * n() + j] * c[j];
        // The voltage of a drifting port is set by the others' currents: Zdb (G du + r) + Zdd rd.
        for (int j = 0; j < q(); ++j) {
            V current = r[j];
            for (int i = 0; i < q(); ++i) current -= base.slope[j] * m_V[j * q() + i] * r[i];
            for (int i = 0; i < d(); ++i) current -= base.slope[j] * m_Vd[j * d() + i] * r[q() + i];
            u -= m_f->Z[port * kept() + j] * current;
        }
        for (int j = 0; j < d(); ++j) u -= m_f->Z[port * kept() + q() + j] * r[q() + j];
        V slope;
        m_f->laws[port].evaluate(u, m_inner[port], out.i[port], slope);
        out.u[port] = u;
    }
    for (int k = q(); k < kept(); ++k) out.slope[k] = V(0);
    return solved;
}

} // namespace blinkwright::engine
