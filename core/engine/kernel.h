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
// enough to sample that would be many; instead its current is integrated along the path that its voltage
// takes without it, weighted as each eigenvector does. Within the step the cubic of the same first two
// moments stands for it: less exact there than at the end, so it is not for steps whose inside is looked at.
//
// V is double, or Lanes for a board a lane; N and Q are the numbers of capacitors and bent ports, or 0 where
// they are only known at run time; D is 0 where nothing drifts.
#pragma once

#include "core/engine/dense_output.h"
#include "core/engine/folded.h"
#include "core/engine/phi.h"

#include <array>
#include <limits>
#include <memory>

namespace blinkwright::engine {

inline constexpr int mostBent = 24;    ///< bent ports of such a board
inline constexpr int mostDrifting = 8; ///< drifting ports of such a board

/// What a step is at: capacitor voltages and the kept ports' voltages, currents and slopes. A drifting port's
/// slope counts as 0.
template <class V>
struct StepPoint {
    std::array<V, mostStates> y;
    std::array<V, mostBent + mostDrifting> u, i, slope;
};

/// A charge during a step and its error estimate [C].
template <class V>
struct ChargeOf {
    V value, error;
};

/// A watched row as a function of the time within the last attempt.
template <class V>
struct RowModel {
    V start;
    std::array<V, mostStates> byMode;
    std::array<V, mostBent + mostDrifting> byRemainder;
};

template <class V>
class StepKernel {
  public:
    using Mask = MaskOf<V>;
    virtual ~StepKernel() = default;

    /// Begins at capacitor voltages y with a guess of the kept ports' voltages: solves the port equations.
    /// @param close Newton's steps below this end the iteration [V]. @return lanes where it found a solution.
    virtual Mask begin(const Folded<V>& folded, const V* y, const V* guess, double close) = 0;
    /// A step of length h [s] from the base, whose end is not valid before endAt(). @return the largest error
    /// estimate of a capacitor voltage [V], infinite where a stage had no solution.
    virtual V attempt(V h) = 0;
    /// Error of a capacitor voltage by a drifting port, given by its place among the kept ones, at the
    /// present end of the last attempt [V]. It falls no faster than the step, so that it is not part of what
    /// attempt() gives.
    virtual V driftError(int kept) const = 0;
    /// Error of a capacitor voltage if the last attempt is ended at time t [s] instead [V].
    virtual V endError(V t) const = 0;
    /// Ends the last attempt at time t [s] instead. @return lanes where the port equations were solved.
    virtual Mask endAt(V t) = 0;
    /// The end becomes the base where `moved` says so. @return lanes where the next step can be prepared.
    virtual Mask accept(Mask moved) = 0;
    virtual RowModel<V> model(int row) const = 0;
    /// The same from the linear part alone, before an attempt.
    virtual V foresee(const RowModel<V>& model, V t, V& rate) const = 0;
    /// A row and its derivative by time, at time t [s] of the last attempt.
    virtual V value(const RowModel<V>& model, V t, V& rate) const = 0;
    /// Integral of a row from the base to time t [s] of the last attempt.
    virtual ChargeOf<V> charge(const RowModel<V>& model, V t) const = 0;
    /// Numbers of the dense output, for keeping (see DenseOutput).
    virtual void keep(double* numbers) const = 0;
    /// dy/dt at the base.
    virtual const V* rate() const = 0;

    StepPoint<V> base, end;
};

template <class V, int N, int Q, int D>
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
        m_h = h;
        Mask solved = maskOf<V>(true);
        V c[maxN], d2[maxN], d3[maxN], other2[maxN], other3[maxN];
        for (int k = 0; k < n(); ++k) {
            c[k] = 0.5 * h * phi1(0.5 * h * m_basis.lambda[k]) * m_fm[k];
            m_phi[k] = phiFunctions(h * m_basis.lambda[k]);
        }
        if (d() > 0) drift();
        for (int k = 0; k < q(); ++k) m_r[0][k] = V(0);
        solved = solved & stage(c, m_r[0], this->end);
        drive(m_r[0], c, d2, other2);
        for (int k = 0; k < n(); ++k) c[k] = h * m_phi[k][1] * (m_fm[k] + d2[k] + other2[k]);
        for (int k = 0; k < q(); ++k) m_r[1][k] = 4 * m_r[0][k];
        solved = solved & stage(c, m_r[1], this->end);
        drive(m_r[1], c, d3, other3);
        V missed[maxN];
        for (int k = 0; k < n(); ++k) {
            m_bend[k] = -48 * d2[k] + 12 * d3[k];
            m_e3[k] = 16 * (d2[k] + other2[k]) - 2 * (d3[k] + other3[k]);
            m_e4[k] = m_bend[k] - 48 * other2[k] + 12 * other3[k];
            missed[k] = h * m_phi[k][4] * m_bend[k];
            c[k] = h * (m_phi[k][1] * m_fm[k] + m_phi[k][3] * m_e3[k] + m_phi[k][4] * m_e4[k]);
            if (d() > 0) c[k] += m_fix[k];
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
        const Path& path = m_path[kept - q()];
        const V missedBy = lane::magnitude(this->end.u[kept] - along(path, m_endShare));
        return path.effect * (missedBy * path.sensitivity + path.rough);
    }

    V endError(V t) const override {
        V worst(0);
        for (int k = 0; k < n(); ++k) {
            V rate(0);
            for (int j = 0; j < d(); ++j)
                rate += lane::magnitude(m_Kd[k * d() + j]) *
                        (lane::magnitude(m_r[1][q() + j]) +
                         lane::magnitude(this->end.i[q() + j] - base.i[q() + j]));
            worst = lane::larger(worst, rate);
        }
        return worst * (m_h - t);
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
            const Phi<V> phi = phiFunctions(t * m_basis.lambda[k]);
            const V c = t * (phi[1] * m_fm[k] + square * (phi[3] * m_e3[k] + share * phi[4] * m_e4[k]));
            sum += m.byMode[k] * (d() > 0 ? c + m_fix[k] * square : c);
            // c' = lambda c + f + the drive at that time
            rate += m.byMode[k] * (m_basis.lambda[k] * c + m_fm[k] +
                                   square * (0.5 * m_e3[k] + share * (1.0 / 6) * m_e4[k]));
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
        const auto whole = (t >= h) & (t <= h);
        const V share = select(h > V(0), t / select(h > V(0), h, V(1)), V(0));
        const V square = share * share;
        V linear(0), error(0), left(0), bend(0);
        for (int k = 0; k < n(); ++k) {
            const Phi<V> phi = all(whole) ? m_phi[k] : phiFunctions(t * m_basis.lambda[k]);
            const V last = square * share * phi[5];
            if (d() > 0) linear += m.byMode[k] * m_fix[k] * square / (3 * h);
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

    /// Eigen-coordinates of y(t) - y.
    BLINKWRIGHT_INLINE void modes(V t, V* c) const {
        const V share = t / m_h, square = share * share;
        for (int k = 0; k < n(); ++k) {
            const Phi<V> phi = phiFunctions(t * m_basis.lambda[k]);
            c[k] = t * (phi[1] * m_fm[k] + square * (phi[3] * m_e3[k] + share * phi[4] * m_e4[k]));
            if (d() > 0) c[k] += m_fix[k] * square;
        }
    }
    BLINKWRIGHT_INLINE void remainder(V t, V* r) const {
        const V share = t / m_h, square = share * share;
        for (int k = 0; k < kept(); ++k)
            r[k] = square * ((8 * m_r[0][k] - m_r[1][k]) + share * (2 * m_r[1][k] - 8 * m_r[0][k]));
    }

    /// A Newton step into the conducting side of a law that turns on within a narrow voltage, cut to what its
    /// logarithm allows.
    BLINKWRIGHT_INLINE V cut(const PortLaw<V>& law, V step) const {
        const V width = law.turnOnWidth();
        const auto far = (step > 2 * width) & (width > V(0));
        if (!any(far)) return step;
        const V positive = select(width > V(0), width, V(1));
        return select(far, width * (1 + lane::logarithm(1 + lane::larger(step, V(0)) / positive)), step);
    }

    /// Solves M x = x in place, M q x q and used up; no pivots.
    BLINKWRIGHT_INLINE void eliminate(V* M, V* x) const {
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

    /// The end's port voltages and currents, those of drifting ports included. r: a guess of the remainders.
    Mask finish(const V* c, const V* guess) {
        V r[maxKept];
        for (int k = 0; k < kept(); ++k) r[k] = guess[k];
        StepPoint<V>& out = this->end;
        // A drifting port's current hardly moves a bent one's voltage: the guess of it will do there.
        const Mask solved = stage(c, r, out);
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

    /// Bent ports' voltages and currents where the eigen-coordinates of y - base are c; r: first guess of
    /// their remainders in, the remainders out; those of the drifting ports as they are.
    Mask stage(const V* c, V* r, StepPoint<V>& out) {
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

    /// The port equations at the base's y from a guess of u alone.
    Mask solveAfresh() {
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
            for (int k = 0; k < kept(); ++k)
                f.laws[k].evaluate(base.u[k], m_inner[k], base.i[k], base.slope[k]);
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

    static constexpr double driftWidth = 2 * devices::thermalVoltage;
    static constexpr double driftBand =
        7 * driftWidth; ///< beyond it a drifting port's law is off or fully on

    /// The voltage of a drifting port along a step, as if no current bent it, by share of the step: the slow
    /// modes as the polynomial with their values and two derivatives at both ends, the faster ones as they
    /// are.
    struct Path {
        V coefficient[6];
        V end;         ///< of all modes
        V fast[maxN];  ///< amplitudes of the faster modes
        V effect;      ///< what a current does over the step to a capacitor voltage [V/A]
        V sensitivity; ///< of the mean current to where the path ends [A/V]
        V rough;       ///< error of the integration [A]
    };
    BLINKWRIGHT_INLINE V along(const Path& path, V share) const {
        V x = polynomial(path.coefficient, share);
        for (int k = 0; k < n(); ++k)
            if (m_fastModes[k]) x += path.fast[k] * (lane::exponential(share * m_h * m_basis.lambda[k]) - 1);
        return x;
    }
    /// e^(z (1 - share)), by which a current at that share counts at the end, for each mode, in the same way.
    void layWeights() {
        for (int k = 0; k < n(); ++k) {
            if (m_fastModes[k]) continue;
            const V z = m_h * m_basis.lambda[k], w0 = m_phi[k][0];
            layPolynomial(m_weight[k], w0, 1 - w0, -z * w0, -z, z * z * w0, z * z);
        }
    }
    BLINKWRIGHT_INLINE V weightAt(int k, V share) const {
        if (m_fastModes[k]) return lane::exponential((1 - share) * m_h * m_basis.lambda[k]);
        return polynomial(m_weight[k], share);
    }
    BLINKWRIGHT_INLINE static V polynomial(const V* coefficient, V share) {
        V x = coefficient[5];
        for (int k = 4; k >= 0; --k) x = x * share + coefficient[k];
        return x;
    }
    /// The polynomial of fifth degree on 0 to 1 from its value at 0, what it gains, and two derivatives at
    /// each end.
    BLINKWRIGHT_INLINE static void layPolynomial(V* coefficient, V start, V gain, V v0, V v1, V a0, V a1) {
        const V p = gain - v0 - 0.5 * a0, v = v1 - v0 - a0, a = a1 - a0;
        coefficient[0] = start;
        coefficient[1] = v0;
        coefficient[2] = 0.5 * a0;
        coefficient[3] = 10 * p - 4 * v + 0.5 * a;
        coefficient[4] = -15 * p + 7 * v - a;
        coefficient[5] = 6 * p - 3 * v + 0.5 * a;
    }
    void layPath(Path& path, int port) const {
        // Values and derivatives by share, of the slow modes.
        V gain(0), v0(0), v1(0), a0(0), a1(0);
        path.end = base.u[port];
        for (int k = 0; k < n(); ++k) {
            const V z = m_h * m_basis.lambda[k];
            const V speed = m_PX[port * n() + k] * m_fm[k] * m_h;
            path.end += speed * m_phi[k][1];
            if (m_fastModes[k]) {
                const auto moves = lane::magnitude(z) > V(1e-9);
                path.fast[k] = select(moves, speed / select(moves, z, V(1)), V(0));
                continue;
            }
            const V decayed = 1 + z * m_phi[k][1];
            gain += speed * m_phi[k][1];
            v0 += speed;
            v1 += speed * decayed;
            a0 += speed * z;
            a1 += speed * z * decayed;
        }
        layPolynomial(path.coefficient, base.u[port], gain, v0, v1, a0, a1);
    }

    /// Where a path comes into the band from `outer` or leaves it towards there, a little on the outer side;
    /// its ends are `from` and `to`.
    V shareAt(const Path& path, V from, V to, V outer) const {
        const V goal = select(outer > V(0), V(1.02 * driftBand), V(-1.02 * driftBand));
        const V gained = select(lane::magnitude(to - from) > V(1e-9), to - from, V(1e-9));
        const auto within = [](V share) { return lane::smaller(lane::larger(share, V(0)), V(1)); };
        V share = within((goal - from) / gained), slope = gained;
        V x = along(path, share);
        for (int k = 0; k < 3; ++k) { // the chord's slope, made better from step to step
            const V next = within(share + (goal - x) / slope);
            const V y = along(path, next), step = next - share;
            const auto moved = lane::magnitude(step) > V(1e-6);
            const V steeper = (y - x) / select(moved, step, V(1));
            slope = select(moved & (steeper * gained > V(0)), steeper, slope);
            share = next;
            x = y;
        }
        return share;
    }

    /// The drifting ports' remainders at the middle and at the end: those of the cubic a x^2 + b x^3 that has
    /// the first two moments of the current along the path.
    void drift() {
        for (int k = 0; k < n(); ++k) m_fastModes[k] = any(lane::magnitude(m_h * m_basis.lambda[k]) > V(1.2));
        layWeights();
        for (int k = 0; k < n(); ++k) m_fix[k] = V(0);
        for (int j = 0; j < d(); ++j) {
            const int port = q() + j;
            Path& path = m_path[j];
            layPath(path, port);
            // The part of the step in which the law is between off and on.
            const V from = base.u[port], to = path.end;
            V begin(0), finish(1);
            const auto outside = lane::magnitude(from) > V(driftBand),
                       beyond = lane::magnitude(to) > V(driftBand);
            const auto aside = outside & beyond & (from * to > V(0));
            V moment0(0), moment1(0), weighted[maxN];
            for (int k = 0; k < n(); ++k) weighted[k] = V(0);
            path.sensitivity = path.rough = V(0);
            const auto evaluate = [&](V u) {
                V i, slope;
                m_f->laws[port].evaluate(u, m_inner[port], i, slope);
                return i - base.i[port];
            };
            if (!all(aside)) {
                if (any(outside)) begin = select(outside, shareAt(path, from, to, from), begin);
                if (any(beyond)) finish = select(beyond, shareAt(path, from, to, to), finish);
                // Gauss and Legendre, six points.
                constexpr double places[] = {0.2386191860831969, 0.6612093864662645, 0.9324695142031521};
                constexpr double weights[] = {0.4679139345726910, 0.3607615730481386, 0.1713244923791704};
                const V centre = 0.5 * (begin + finish), half = 0.5 * (finish - begin);
                // Where the path ends elsewhere, the law is passed at another time.
                const V full = m_f->laws[port].p[0];
                const V gained = lane::magnitude(along(path, finish) - along(path, begin)) / (finish - begin);
                path.sensitivity =
                    select(aside, V(0), full * finish / lane::larger(gained, V(4 * driftWidth)));
                path.rough = select(aside, V(0), 3e-3 * full * half);
                for (int k = 0; k < 3; ++k)
                    for (const double side : {-1.0, 1.0}) {
                        const V share = centre + half * V(side * places[k]);
                        const V r = evaluate(along(path, share)) * half * V(weights[k]);
                        moment0 += r;
                        moment1 += r * share;
                        for (int i = 0; i < n(); ++i) weighted[i] += r * weightAt(i, share);
                    }
                const V after = evaluate(to), rest = 1 - finish;
                moment0 += after * rest;
                moment1 += after * rest * 0.5 * (1 + finish);
                moment0 = select(aside, V(0), moment0);
                moment1 = select(aside, V(0), moment1);
                for (int k = 0; k < n(); ++k)
                    weighted[k] = select(aside, V(0),
                                         weighted[k] + after * rest * phi1(rest * m_h * m_basis.lambda[k]));
            }
            m_r[0][port] = 4.5 * moment0 - 5 * moment1;
            m_r[1][port] = 20 * moment1 - 12 * moment0;
            const V alpha = 48 * moment0 - 60 * moment1, beta = 80 * moment1 - 60 * moment0;
            for (int k = 0; k < n(); ++k)
                m_fix[k] -= m_h * m_KX[k * kept() + port] *
                            (weighted[k] - 2 * alpha * m_phi[k][3] - 6 * beta * m_phi[k][4]);
            V worst(0);
            for (int r = 0; r < n(); ++r) {
                V sum(0);
                for (int k = 0; k < n(); ++k)
                    sum += m_basis.vectors[r * n() + k] * m_h * m_phi[k][1] * m_KX[k * kept() + port];
                worst = lane::larger(worst, lane::magnitude(sum));
            }
            path.effect = worst;
        }
    }

    const Folded<V>* m_f = nullptr;
    int m_n = 0, m_q = 0, m_d = 0;
    double m_close = 0;
    V m_h{};
    std::array<V, maxN> m_F, m_fm, m_e3, m_e4, m_bend;
    std::array<Phi<V>, maxN> m_phi;
    V m_r[2][maxKept];
    V m_inner[maxKept]{}; ///< warm starts of the laws, of any state before: any number will do
    V m_V[maxQ * maxQ];
    V m_Vd[maxQ * maxD];
    V m_PX[maxKept * maxN];
    V m_KX[maxN * maxKept];
    V m_Kd[maxN * maxD];
    Path m_path[maxD];
    V m_c[maxN]; ///< eigen-coordinates of the end of the last attempt
    V m_endShare{};
    bool m_fastModes[maxN];
    V m_weight[maxN][6];
    V m_fix[maxN]; ///< what the drifting currents do to each mode by the end, beyond what their cubics do
    Eigenbasis<V>& m_basis;
};

/// The kernel for a fold.
template <class V>
std::unique_ptr<StepKernel<V>> makeKernel(const Folded<V>& fold, Eigenbasis<V>& basis) {
    const auto make = [&]<int N, int Q>() -> std::unique_ptr<StepKernel<V>> {
        if (fold.drifting == 0) return std::make_unique<Kernel<V, N, Q, 0>>(basis);
        constexpr int most = N > 0 && Q > 0 ? 2 : mostDrifting;
        if (fold.drifting <= most) return std::make_unique<Kernel<V, N, Q, most>>(basis);
        return std::make_unique<Kernel<V, 0, 0, mostDrifting>>(basis);
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
