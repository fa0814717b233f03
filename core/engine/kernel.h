// One step of the exponential Rosenbrock method exprb43 (order 4, embedded order 3; M. Hochbruck, A.
// Ostermann, J. Schweitzer, "Exponential Rosenbrock-type methods", SIAM J. Numer. Anal. 47 (2009) 786-803) on
// y' = F(y), where F solves the port equations inside. The linear part, fast and slow alike, is taken
// exactly, so that a step is as long as the circuit is nearly linear, and the short transients after a
// switching cost nothing.
//
//     y(t) = y + t phi1(tJ) F + t (t/h)^2 phi3(tJ) E3 + t (t/h)^3 phi4(tJ) E4,    0 <= t <= h
//     E3 = 16 D2 - 2 D3,  E4 = -48 D2 + 12 D3,  Dk = F(Uk) - F - J (Uk - y)
//
// holds within the step too: its dense output. All of it happens in the eigenvectors of J, and on the folded
// equations, of which only the bent ports are nonlinear: with r the part of their currents that is not linear
// at the base,  du = P dy - V r(du)  and  D = -K r.
//
// A drifting port is an input whose weak current turns on or off within a short part of the step. Steps short
// enough to sample that would be many; instead its current is integrated along the path of its voltage
// (drift_path.h), weighted as each eigenvector does. Within the step the cubic of the same first two
// moments stands for it: less exact there than at the end, so it is not for steps whose inside is looked at.
//
// V is double, or Lanes for a board a lane; N and Q are the numbers of capacitors and bent ports, or 0 where
// they are only known at run time; D is 0 where nothing drifts.
#pragma once

#include "core/engine/dense_output.h"
#include "core/engine/drift_path.h"
#include "core/engine/phi.h"
#include "core/engine/step_kernel.h"

#include <limits>

namespace blinkwright::engine {

template <class V, int N, int Q, int D, class Build>
class Kernel final : public StepKernel<V> {
  public:
    using Mask = MaskOf<V>;
    static constexpr int maxN = N > 0 ? N : mostStates;
    static constexpr int maxQ = Q > 0 ? Q : mostBent;
    static constexpr int maxD = D > 0 ? D : 1;
    static constexpr int maxKept = maxQ + D;

    /// @param basis kept outside, since it serves any number of bent ports.
    explicit Kernel(Eigenbasis<V>& basis) : m_basis(basis) {}

    Mask begin(const Folded<V>& folded, const V* y, const V* guess, double close) override {
        m_f = &folded;
        m_n = folded.n;
        m_q = folded.q;
        m_d = folded.drifting;
        m_close = close;
        for (int k = 0; k < n(); ++k) base.y[k] = y[k];
        for (int k = 0; k < kept(); ++k) base.u[k] = guess[k];
        const Mask solved = solveAfresh();
        return solved & prepare();
    }

    V attempt(V h) override {
        m_h = m_phiEnd = h; // what was kept at another end is of another base
        Mask solved = maskOf<V>(true);
        V c[maxN], d2[maxN], d3[maxN], other2[maxN], other3[maxN];
        for (int k = 0; k < n(); ++k) {
            c[k] = 0.5 * h * phi1(0.5 * h * m_basis.lambda[k]) * m_fm[k];
            m_phi[k] = phiFunctions(h * m_basis.lambda[k]);
        }
        if (d() > 0) drift();
        for (int k = 0; k < q(); ++k) m_r[0][k] = V(0);
        solved = solved & stage(c, m_r[0], this->end, true);
        drive(m_r[0], c, d2, other2);
        for (int k = 0; k < n(); ++k) c[k] = h * m_phi[k][1] * (m_fm[k] + d2[k] + other2[k]);
        for (int k = 0; k < q(); ++k) m_r[1][k] = 4 * m_r[0][k];
        solved = solved & stage(c, m_r[1], this->end, true);
        drive(m_r[1], c, d3, other3);
        V missed[maxN];
        for (int k = 0; k < n(); ++k) {
            m_bend[k] = -48 * d2[k] + 12 * d3[k];
            m_e3[k] = 16 * (d2[k] + other2[k]) - 2 * (d3[k] + other3[k]);
            m_e4[k] = m_bend[k] - 48 * other2[k] + 12 * other3[k];
            missed[k] = h * m_phi[k][4] * m_bend[k];
            c[k] = h * (m_phi[k][1] * m_fm[k] + m_phi[k][3] * m_e3[k] + m_phi[k][4] * m_e4[k]);
            if (d() > 0) c[k] += m_fix[k] + m_fixTurn[k];
        }
        V worst(0);
        for (int k = 0; k < n(); ++k) {
            V error(0);
            for (int j = 0; j < n(); ++j) error += m_basis.vectors[k * n() + j] * missed[j];
            worst = lane::larger(worst, lane::magnitude(error));
            solved = solved & lane::finite(c[k]) & lane::finite(error);
            m_c[k] = c[k];
        }
        return select(solved, worst, V(std::numeric_limits<double>::infinity()));
    }

    V driftError(int kept) const override {
        const auto& path = m_path[kept - q()];
        const V missedBy = lane::magnitude(this->end.u[kept] - path.at(m_modes, m_endShare));
        return path.effect * (missedBy * path.sensitivity + path.rough);
    }

    V endError(V t) const override {
        const V early = m_h - t;
        V worst(0);
        for (int k = 0; k < n(); ++k) {
            V rate(0);
            for (int j = 0; j < d(); ++j) {
                // By how much a drifting current changes in between.
                const V full = m_f->laws[q() + j].p[0];
                const V steepest = full / (4 * driftWidth);
                rate += lane::magnitude(m_Kd[k * d() + j]) *
                        lane::smaller(0.5 * steepest * m_path[j].endSpeed * (early / m_h), full);
            }
            worst = lane::larger(worst, rate);
        }
        return worst * early;
    }

    Mask endAt(V t) override {
        V c[maxN], r[maxKept];
        m_endShare = t / m_h;
        if (all((t >= m_h) & (t <= m_h))) {
            for (int k = 0; k < n(); ++k) c[k] = m_c[k];
            for (int k = 0; k < kept(); ++k) r[k] = m_r[1][k];
        } else {
            modes(t, c);
            remainder(t, r);
        }
        Mask solved = maskOf<V>(true);
        for (int k = 0; k < n(); ++k) {
            V y = base.y[k];
            for (int j = 0; j < n(); ++j) y += m_basis.vectors[k * n() + j] * c[j];
            this->end.y[k] = y;
            solved = solved & lane::finite(y);
        }
        return solved & finish(c, r);
    }

    Mask accept(Mask moved) override {
        if (all(moved)) {
            for (int k = 0; k < n(); ++k) base.y[k] = this->end.y[k];
            for (int k = 0; k < kept(); ++k) {
                base.u[k] = this->end.u[k];
                base.i[k] = this->end.i[k];
                base.slope[k] = this->end.slope[k];
            }
        } else {
            for (int k = 0; k < n(); ++k) base.y[k] = select(moved, this->end.y[k], base.y[k]);
            for (int k = 0; k < kept(); ++k) {
                base.u[k] = select(moved, this->end.u[k], base.u[k]);
                base.i[k] = select(moved, this->end.i[k], base.i[k]);
                base.slope[k] = select(moved, this->end.slope[k], base.slope[k]);
            }
        }
        return prepare();
    }

    RowModel<V> model(int row) const override {
        RowModel<V> m;
        const Folded<V>& f = *m_f;
        m.start = f.row(row, base.y.data(), base.i.data());
        const V* cy = f.Cy.data() + row * n();
        const V* ci = f.Ci.data() + row * kept();
        for (int k = 0; k < n(); ++k) {
            V sum(0);
            for (int j = 0; j < n(); ++j) sum += cy[j] * m_basis.vectors[j * n() + k];
            for (int j = 0; j < q(); ++j) sum -= ci[j] * base.slope[j] * m_PX[j * n() + k];
            m.byMode[k] = sum;
        }
        for (int k = 0; k < q(); ++k) {
            V sum = -ci[k];
            for (int j = 0; j < q(); ++j) sum += ci[j] * base.slope[j] * m_V[j * q() + k];
            m.byRemainder[k] = sum;
        }
        for (int k = 0; k < d(); ++k) {
            V sum = -ci[q() + k];
            for (int j = 0; j < q(); ++j) sum += ci[j] * base.slope[j] * m_Vd[j * d() + k];
            m.byRemainder[q() + k] = sum;
        }
        return m;
    }

    V foresee(const RowModel<V>& m, V t, V& rate) const override {
        V sum = m.start;
        rate = V(0);
        for (int k = 0; k < n(); ++k) {
            const V z = t * m_basis.lambda[k], phi = phi1(z);
            sum += m.byMode[k] * t * phi * m_fm[k];
            rate += m.byMode[k] * (1 + z * phi) * m_fm[k];
        }
        return sum;
    }

    V value(const RowModel<V>& m, V t, V& rate) const override {
        const V share = select(m_h > V(0), t / m_h, V(0));
        V sum = m.start;
        rate = V(0);
        const V square = share * share;
        for (int k = 0; k < n(); ++k) {
            const Phi<V> phi = phiAt(t, k);
            const V c = t * (phi[1] * m_fm[k] + square * (phi[3] * m_e3[k] + share * phi[4] * m_e4[k]));
            sum += m.byMode[k] * (d() > 0 ? c + square * (m_fix[k] + share * m_fixTurn[k]) : c);
            // c' = lambda c + f + the drive at that time
            rate += m.byMode[k] * (m_basis.lambda[k] * c + m_fm[k] +
                                   square * (0.5 * m_e3[k] + share * (1.0 / 6) * m_e4[k]));
            if (d() > 0) rate += m.byMode[k] * share * (2 * m_fix[k] + 3 * share * m_fixTurn[k]) / m_h;
        }
        for (int k = 0; k < kept(); ++k) {
            const V alpha = 8 * m_r[0][k] - m_r[1][k], beta = 2 * m_r[1][k] - 8 * m_r[0][k];
            sum += m.byRemainder[k] * square * (alpha + beta * share);
            rate += m.byRemainder[k] * share * (2 * alpha + 3 * beta * share) / m_h;
        }
        return sum;
    }

    ChargeOf<V> charge(const RowModel<V>& m, V t) const override {
        const V h = m_h;
        const V share = select(h > V(0), t / select(h > V(0), h, V(1)), V(0));
        const V square = share * share;
        V linear(0), error(0), left(0), bend(0);
        for (int k = 0; k < n(); ++k) {
            const Phi<V> phi = phiAt(t, k);
            const V last = square * share * phi[5];
            if (d() > 0)
                linear += m.byMode[k] * square * (m_fix[k] * (1.0 / 3) + share * 0.25 * m_fixTurn[k]) / h;
            linear += m.byMode[k] * (phi[2] * m_fm[k] + square * phi[4] * m_e3[k] + last * m_e4[k]);
            error += m.byMode[k] * last * m_bend[k];
        }
        for (int k = 0; k < kept(); ++k) {
            const V alpha = 8 * m_r[0][k] - m_r[1][k], beta = 2 * m_r[1][k] - 8 * m_r[0][k];
            left += m.byRemainder[k] * square * share * (alpha * (1.0 / 3) + beta * 0.25 * share);
            if (k < q()) bend += m.byRemainder[k] * square * square * beta * 0.25;
        }
        return {t * (m.start + t * linear) + h * left, t * t * error + h * bend};
    }

    void keep(double* numbers) const override {
        const DenseOutput at(n());
        numbers[0] = lane::at(m_h, 0);
        for (int k = 0; k < n(); ++k) {
            numbers[at.y() + k] = lane::at(base.y[k], 0);
            numbers[at.lambda() + k] = lane::at(m_basis.lambda[k], 0);
            numbers[at.f() + k] = lane::at(m_fm[k], 0);
            numbers[at.e3() + k] = lane::at(m_e3[k], 0);
            numbers[at.e4() + k] = lane::at(m_e4[k], 0);
            for (int j = 0; j < n(); ++j)
                numbers[at.vectors() + k * n() + j] = lane::at(m_basis.vectors[k * n() + j], 0);
        }
    }

    const V* rate() const override { return m_F.data(); }

  private:
    using StepKernel<V>::base;

    BLINKWRIGHT_INLINE int n() const { return N > 0 ? N : m_n; }
    BLINKWRIGHT_INLINE int q() const { return Q > 0 ? Q : m_q; }
    BLINKWRIGHT_INLINE int d() const { return D > 0 ? m_d : 0; }
    BLINKWRIGHT_INLINE int kept() const { return q() + d(); }

    /// What a step from the base needs, whatever its length: P, V, K, J and J's eigenvectors.
    Mask prepare() {
        const Folded<V>& f = *m_f;
        const int stride = kept();
        // (1 + Z G) [P V Vd] = [A Z Zd]; no pivots, as good as positive definite.
        V M[maxQ * maxQ];
        V P[maxQ * maxN];
        Mask sound = maskOf<V>(true);
        for (int r = 0; r < q(); ++r) {
            for (int c = 0; c < q(); ++c) {
                M[r * q() + c] = f.Z[r * stride + c] * base.slope[c];
                m_V[r * q() + c] = f.Z[r * stride + c];
            }
            for (int c = 0; c < d(); ++c) m_Vd[r * d() + c] = f.Z[r * stride + q() + c];
            M[r * q() + r] += V(1);
            for (int c = 0; c < n(); ++c) P[r * n() + c] = f.A[r * n() + c];
        }
        for (int k = 0; k < q(); ++k) {
            const V pivot = M[k * q() + k];
            sound = sound & (lane::magnitude(pivot) > V(1e-12));
            const V inverse = 1 / pivot;
            for (int c = k + 1; c < q(); ++c) M[k * q() + c] *= inverse;
            for (int c = 0; c < n(); ++c) P[k * n() + c] *= inverse;
            for (int c = 0; c < q(); ++c) m_V[k * q() + c] *= inverse;
            for (int c = 0; c < d(); ++c) m_Vd[k * d() + c] *= inverse;
            for (int r = 0; r < q(); ++r) {
                if (r == k) continue;
                const V factor = M[r * q() + k];
                for (int c = k + 1; c < q(); ++c) M[r * q() + c] -= factor * M[k * q() + c];
                for (int c = 0; c < n(); ++c) P[r * n() + c] -= factor * P[k * n() + c];
                for (int c = 0; c < q(); ++c) m_V[r * q() + c] -= factor * m_V[k * q() + c];
                for (int c = 0; c < d(); ++c) m_Vd[r * d() + c] -= factor * m_Vd[k * d() + c];
            }
        }
        V K[maxN * maxQ];
        V J[maxN * maxN];
        for (int r = 0; r < n(); ++r) {
            V F = f.b[r];
            for (int c = 0; c < n(); ++c) {
                J[r * n() + c] = f.B[r * n() + c];
                F += f.B[r * n() + c] * base.y[c];
            }
            for (int c = 0; c < q(); ++c) K[r * q() + c] = f.D[r * stride + c];
            for (int c = 0; c < d(); ++c) {
                m_Kd[r * d() + c] = f.D[r * stride + q() + c];
                F -= f.D[r * stride + q() + c] * base.i[q() + c];
            }
            for (int k = 0; k < q(); ++k) {
                F -= f.D[r * stride + k] * base.i[k];
                const V weight = f.D[r * stride + k] * base.slope[k];
                for (int c = 0; c < n(); ++c) J[r * n() + c] -= weight * P[k * n() + c];
                for (int c = 0; c < q(); ++c) K[r * q() + c] -= weight * m_V[k * q() + c];
                for (int c = 0; c < d(); ++c) m_Kd[r * d() + c] -= weight * m_Vd[k * d() + c];
            }
            m_F[r] = F;
        }
        sound = sound & m_basis.template update<N>(J, f.source->rootC.data(), n());
        for (int k = 0; k < n(); ++k) {
            V sum(0);
            for (int j = 0; j < n(); ++j) sum += m_basis.inverse[k * n() + j] * m_F[j];
            m_fm[k] = sum;
            for (int c = 0; c < q(); ++c) {
                V entry(0);
                for (int j = 0; j < n(); ++j) entry += m_basis.inverse[k * n() + j] * K[j * q() + c];
                m_KX[k * stride + c] = entry;
            }
            for (int c = 0; c < d(); ++c) {
                V entry(0);
                for (int j = 0; j < n(); ++j) entry += m_basis.inverse[k * n() + j] * m_Kd[j * d() + c];
                m_KX[k * stride + q() + c] = entry;
            }
        }
        for (int k = 0; k < q(); ++k)
            for (int c = 0; c < n(); ++c) {
                V entry(0);
                for (int j = 0; j < n(); ++j) entry += P[k * n() + j] * m_basis.vectors[j * n() + c];
                m_PX[k * n() + c] = entry;
            }
        for (int k = 0; k < d(); ++k)
            for (int c = 0; c < n(); ++c) {
                V entry(0);
                for (int j = 0; j < n(); ++j)
                    entry += f.A[(q() + k) * n() + j] * m_basis.vectors[j * n() + c];
                for (int j = 0; j < q(); ++j)
                    entry -= f.Z[(q() + k) * stride + j] * base.slope[j] * m_PX[j * n() + c];
                m_PX[(q() + k) * n() + c] = entry;
            }
        return sound;
    }

    /// The drive of a stage in the eigenvectors: of the bent ports, whose samples the error estimate judges;
    /// and of the rest, which has no error from sampling: drifting ports, and what J has off its diagonal
    /// there.
    BLINKWRIGHT_INLINE void drive(const V* r, const V* c, V* bent, V* other) const {
        for (int k = 0; k < n(); ++k) {
            V sum(0), rest(0);
            for (int j = 0; j < q(); ++j) sum -= m_KX[k * kept() + j] * r[j];
            for (int j = q(); j < kept(); ++j) rest -= m_KX[k * kept() + j] * r[j];
            if (n() > 1)
                for (int j = 0; j < n(); ++j) rest += m_basis.off[k * n() + j] * c[j];
            bent[k] = sum;
            other[k] = rest;
        }
    }

    /// The functions at time t of mode k, out of what is at hand.
    BLINKWRIGHT_INLINE Phi<V> phiAt(V t, int k) const {
        if (all((t >= m_h) & (t <= m_h))) return m_phi[k];
        if (all((t >= m_phiEnd) & (t <= m_phiEnd))) return m_endPhi[k];
        return phiFunctions(t * m_basis.lambda[k]);
    }

    /// Eigen-coordinates of y(t) - y.
    BLINKWRIGHT_INLINE void modes(V t, V* c) {
        const V share = t / m_h, square = share * share;
        m_phiEnd = t;
        for (int k = 0; k < n(); ++k) {
            const Phi<V> phi = m_endPhi[k] = phiFunctions(t * m_basis.lambda[k]);
            c[k] = t * (phi[1] * m_fm[k] + square * (phi[3] * m_e3[k] + share * phi[4] * m_e4[k]));
            if (d() > 0) c[k] += square * (m_fix[k] + share * m_fixTurn[k]);
        }
    }
    BLINKWRIGHT_INLINE void remainder(V t, V* r) const {
        const V share = t / m_h, square = share * share;
        for (int k = 0; k < kept(); ++k)
            r[k] = square * ((8 * m_r[0][k] - m_r[1][k]) + share * (2 * m_r[1][k] - 8 * m_r[0][k]));
    }

    /// A Newton step into the conducting side of a law that turns on within a narrow voltage, cut to what its
    /// logarithm allows.
    V cut(const PortLaw<V>& law, V step) const;

    /// Solves M x = x in place, M q x q and used up; no pivots.
    void eliminate(V* M, V* x) const;

    /// The end's port voltages and currents, those of drifting ports included. r: a guess of the remainders.
    Mask finish(const V* c, const V* guess);

    /// Bent ports' voltages and currents where the eigen-coordinates of y - base are c; r: first guess of
    /// their remainders in, the remainders out; those of the drifting ports as they are.
    Mask stage(const V* c, V* r, StepPoint<V>& out, bool within);

    /// The port equations at the base's y from a guess of u alone.
    Mask solveAfresh();

    /// The drifting ports' remainders at the middle and at the end: those of the cubic a x^2 + b x^3 that has
    /// the first two moments of the current along the path.
    void drift();

    /// @param drive, known as of DriftPath::lay(); what this port adds to them comes on top. @param later
    /// what its current changes by until it is out of the band.
    void integrate(int j, V* drive, V* known, V later);

    const Folded<V>* m_f = nullptr;
    int m_n = 0, m_q = 0, m_d = 0;
    double m_close = 0;
    V m_h{};
    std::array<V, maxN> m_F, m_fm, m_e3, m_e4, m_bend;
    std::array<Phi<V>, maxN> m_phi, m_endPhi; ///< at the attempt's length, and at m_phiEnd
    V m_phiEnd{};
    V m_r[2][maxKept];
    V m_inner[maxKept]{}; ///< warm starts of the laws, of any state before: any number will do
    V m_V[maxQ * maxQ];
    V m_Vd[maxQ * maxD];
    V m_PX[maxKept * maxN];
    V m_KX[maxN * maxKept];
    V m_Kd[maxN * maxD];
    DriftPath<V, maxN> m_path[maxD];
    StepModes<V, maxN> m_modes;
    V m_c[maxN]; ///< eigen-coordinates of the end of the last attempt
    V m_endShare{};
    /// What the drifting currents do to each mode beyond what their cubics do, by share s of the step:
    /// s^2 (fix + s turn).
    V m_fix[maxN], m_fixTurn[maxN];
    Eigenbasis<V>& m_basis;
};

} // namespace blinkwright::engine

#include "core/engine/kernel_drift.h"
#include "core/engine/kernel_ports.h"

namespace blinkwright::engine {

/// The kernel for a fold.
template <class V, class Build>
std::unique_ptr<StepKernel<V>> makeKernel(const Folded<V>& fold, Eigenbasis<V>& basis) {
    const auto make = [&]<int N, int Q>() -> std::unique_ptr<StepKernel<V>> {
        if (fold.drifting == 0) return std::make_unique<Kernel<V, N, Q, 0, Build>>(basis);
        constexpr int most = N > 0 && Q > 0 ? 2 : mostDrifting;
        if (fold.drifting <= most) return std::make_unique<Kernel<V, N, Q, most, Build>>(basis);
        return std::make_unique<Kernel<V, 0, 0, mostDrifting, Build>>(basis);
    };
    const auto byPorts = [&]<int N>() -> std::unique_ptr<StepKernel<V>> {
        switch (fold.q) {
        case 1:
            return make.template operator()<N, 1>();
        case 2:
            return make.template operator()<N, 2>();
        case 3:
            return make.template operator()<N, 3>();
        default:
            return make.template operator()<0, 0>();
        }
    };
    switch (fold.n) {
    case 1:
        return byPorts.template operator()<1>();
    case 2:
        return byPorts.template operator()<2>();
    case 3:
        return byPorts.template operator()<3>();
    default:
        return make.template operator()<0, 0>();
    }
}

} // namespace blinkwright::engine
