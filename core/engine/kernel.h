// One step of the exponential Rosenbrock method exprb43 (order 4, embedded order 3; M. Hochbruck, A.
// Ostermann, J. Schweitzer, "Exponential Rosenbrock-type methods", SIAM J. Numer. Anal. 47 (2009) 786-803) on
// y' = F(y), where F solves the port equations inside. The linear part, fast and slow alike, is taken exactly,
// so that a step is as long as the circuit is nearly linear, and the short transients after a switching cost
// nothing.
//
//     y(t) = y + t phi1(tJ) F + t (t/h)^2 phi3(tJ) E3 + t (t/h)^3 phi4(tJ) E4,    0 <= t <= h
//     E3 = 16 D2 - 2 D3,  E4 = -48 D2 + 12 D3,  Dk = F(Uk) - F - J (Uk - y)
//
// holds within the step too: its dense output. All of it happens in the eigenvectors of J, and on the folded
// equations, of which only the bent ports are nonlinear: with r the part of their currents that is not linear
// at the base,  du = P dy - V r(du)  and  D = -K r.  V is double, or Lanes for a board a lane; N and Q are the
// numbers of capacitors and bent ports, or 0 where they are only known at run time.
#pragma once

#include "core/engine/dense_output.h"
#include "core/engine/folded.h"
#include "core/engine/phi.h"

#include <array>
#include <limits>
#include <memory>

namespace blinkwright::engine {

inline constexpr int mostBent = 24;   ///< bent ports of such a board
inline constexpr int mostLamps = 12;  ///< lamps of such a board

/// What a step is at: capacitor voltages and the bent ports' voltages, currents and slopes.
template <class V>
struct StepPoint {
    std::array<V, mostStates> y;
    std::array<V, mostBent> u, i, slope;
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
    std::array<V, mostBent> byRemainder;
};

template <class V>
class StepKernel {
  public:
    using Mask = MaskOf<V>;
    virtual ~StepKernel() = default;

    /// Begins at capacitor voltages y with a guess of the bent ports' voltages: solves the port equations.
    /// @param close Newton's steps below this end the iteration [V]. @return lanes where it found a solution.
    virtual Mask begin(const Folded<V>& folded, const V* y, const V* guess, double close) = 0;
    /// A step of length h [s] from the base. @return the largest error estimate of a capacitor voltage [V],
    /// infinite where a stage had no solution.
    virtual V attempt(V h) = 0;
    /// Ends the last attempt at time t [s] instead. @return lanes where the port equations were solved.
    virtual Mask endAt(V t) = 0;
    /// The end becomes the base where `moved` says so. @return lanes where the next step can be prepared.
    virtual Mask accept(Mask moved) = 0;
    virtual RowModel<V> model(int row) const = 0;
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

template <class V, int N, int Q>
class Kernel final : public StepKernel<V> {
  public:
    using Mask = MaskOf<V>;
    static constexpr int maxN = N > 0 ? N : mostStates;
    static constexpr int maxQ = Q > 0 ? Q : mostBent;

    /// @param basis kept outside, since it serves any number of bent ports.
    explicit Kernel(Eigenbasis<V>& basis) : m_basis(basis) {}

    Mask begin(const Folded<V>& folded, const V* y, const V* guess, double close) override {
        m_f = &folded;
        m_n = folded.n;
        m_q = folded.q;
        m_close = close;
        for (int k = 0; k < n(); ++k) base.y[k] = y[k];
        for (int k = 0; k < q(); ++k) {
            base.u[k] = guess[k];
            m_inner[k] = guess[k];
        }
        const Mask solved = solveAfresh();
        return solved & prepare();
    }

    V attempt(V h) override {
        m_h = h;
        Mask solved = maskOf<V>(true);
        V c[maxN], d2[maxN], d3[maxN], skew2[maxN], skew3[maxN];
        for (int k = 0; k < n(); ++k) {
            c[k] = 0.5 * h * phi1(0.5 * h * m_basis.lambda[k]) * m_fm[k];
            m_phi[k] = phiFunctions(h * m_basis.lambda[k]);
        }
        for (int k = 0; k < q(); ++k) m_r[0][k] = V(0);
        solved = solved & stage(c, m_r[0], this->end);
        drive(m_r[0], c, d2, skew2);
        for (int k = 0; k < n(); ++k) c[k] = h * m_phi[k][1] * (m_fm[k] + d2[k] + skew2[k]);
        for (int k = 0; k < q(); ++k) m_r[1][k] = 4 * m_r[0][k];
        solved = solved & stage(c, m_r[1], this->end);
        drive(m_r[1], c, d3, skew3);
        V missed[maxN];
        for (int k = 0; k < n(); ++k) {
            // The small part of J that the basis leaves off its diagonal counts as drive, not as error.
            const V bend = -48 * d2[k] + 12 * d3[k];
            m_e3[k] = 16 * (d2[k] + skew2[k]) - 2 * (d3[k] + skew3[k]);
            m_e4[k] = bend - 48 * skew2[k] + 12 * skew3[k];
            missed[k] = h * m_phi[k][4] * bend;
            c[k] = h * (m_phi[k][1] * m_fm[k] + m_phi[k][3] * m_e3[k] + m_phi[k][4] * m_e4[k]);
        }
        V worst(0);
        for (int k = 0; k < n(); ++k) {
            V error(0), y = base.y[k];
            for (int j = 0; j < n(); ++j) {
                error += m_basis.vectors[k * n() + j] * missed[j];
                y += m_basis.vectors[k * n() + j] * c[j];
            }
            this->end.y[k] = y;
            worst = lane::larger(worst, lane::magnitude(error));
            solved = solved & lane::finite(y) & lane::finite(error);
        }
        V r[maxQ];
        for (int k = 0; k < q(); ++k) r[k] = m_r[1][k];
        solved = solved & stage(c, r, this->end);
        return select(solved, worst, V(std::numeric_limits<double>::infinity()));
    }

    Mask endAt(V t) override {
        V c[maxN], r[maxQ];
        modes(t, c);
        for (int k = 0; k < n(); ++k) {
            V y = base.y[k];
            for (int j = 0; j < n(); ++j) y += m_basis.vectors[k * n() + j] * c[j];
            this->end.y[k] = y;
        }
        remainder(t, r);
        return stage(c, r, this->end);
    }

    Mask accept(Mask moved) override {
        if (all(moved)) {
            for (int k = 0; k < n(); ++k) base.y[k] = this->end.y[k];
            for (int k = 0; k < q(); ++k) {
                base.u[k] = this->end.u[k];
                base.i[k] = this->end.i[k];
                base.slope[k] = this->end.slope[k];
            }
        } else {
            for (int k = 0; k < n(); ++k) base.y[k] = select(moved, this->end.y[k], base.y[k]);
            for (int k = 0; k < q(); ++k) {
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
        const V* ci = f.Ci.data() + row * q();
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
        return m;
    }

    V value(const RowModel<V>& m, V t, V& rate) const override {
        const V share = m_h > V(0) ? t / m_h : V(0);
        V sum = m.start;
        rate = V(0);
        const V square = share * share;
        for (int k = 0; k < n(); ++k) {
            const Phi<V> phi = phiFunctions(t * m_basis.lambda[k]);
            const V c = t * (phi[1] * m_fm[k] + square * (phi[3] * m_e3[k] + share * phi[4] * m_e4[k]));
            sum += m.byMode[k] * c;
            // c' = lambda c + f + the drive at that time
            rate += m.byMode[k] * (m_basis.lambda[k] * c + m_fm[k] +
                                   square * (0.5 * m_e3[k] + share * (1.0 / 6) * m_e4[k]));
        }
        for (int k = 0; k < q(); ++k) {
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
            const V last = square * share * phi[5] * m_e4[k];
            linear += m.byMode[k] * (phi[2] * m_fm[k] + square * phi[4] * m_e3[k] + last);
            error += m.byMode[k] * last;
        }
        for (int k = 0; k < q(); ++k) {
            const V alpha = 8 * m_r[0][k] - m_r[1][k], beta = 2 * m_r[1][k] - 8 * m_r[0][k];
            left += m.byRemainder[k] * square * share * (alpha * (1.0 / 3) + beta * 0.25 * share);
            bend += m.byRemainder[k] * square * square * beta * 0.25;
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

    /// What a step from the base needs, whatever its length: P, V, K, J and J's eigenvectors.
    Mask prepare() {
        const Folded<V>& f = *m_f;
        // (1 + Z G) [P V] = [A Z]; no pivots, as good as positive definite.
        V M[maxQ * maxQ];
        V P[maxQ * maxN];
        Mask sound = maskOf<V>(true);
        for (int r = 0; r < q(); ++r) {
            for (int c = 0; c < q(); ++c) {
                M[r * q() + c] = f.Z[r * q() + c] * base.slope[c];
                m_V[r * q() + c] = f.Z[r * q() + c];
            }
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
            for (int r = 0; r < q(); ++r) {
                if (r == k) continue;
                const V factor = M[r * q() + k];
                for (int c = k + 1; c < q(); ++c) M[r * q() + c] -= factor * M[k * q() + c];
                for (int c = 0; c < n(); ++c) P[r * n() + c] -= factor * P[k * n() + c];
                for (int c = 0; c < q(); ++c) m_V[r * q() + c] -= factor * m_V[k * q() + c];
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
            for (int c = 0; c < q(); ++c) K[r * q() + c] = f.D[r * q() + c];
            for (int k = 0; k < q(); ++k) {
                F -= f.D[r * q() + k] * base.i[k];
                const V weight = f.D[r * q() + k] * base.slope[k];
                for (int c = 0; c < n(); ++c) J[r * n() + c] -= weight * P[k * n() + c];
                for (int c = 0; c < q(); ++c) K[r * q() + c] -= weight * m_V[k * q() + c];
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
                m_KX[k * q() + c] = entry;
            }
        }
        for (int k = 0; k < q(); ++k)
            for (int c = 0; c < n(); ++c) {
                V entry(0);
                for (int j = 0; j < n(); ++j) entry += P[k * n() + j] * m_basis.vectors[j * n() + c];
                m_PX[k * n() + c] = entry;
            }
        return sound;
    }

    /// The drive of a stage in the eigenvectors: of the bent ports, and of what J has off its diagonal there.
    BLINKWRIGHT_INLINE void drive(const V* r, const V* c, V* d, V* skew) const {
        for (int k = 0; k < n(); ++k) {
            V sum(0), off(0);
            for (int j = 0; j < q(); ++j) sum -= m_KX[k * q() + j] * r[j];
            if (n() > 1)
                for (int j = 0; j < n(); ++j) off += m_basis.off[k * n() + j] * c[j];
            d[k] = sum;
            skew[k] = off;
        }
    }

    /// Eigen-coordinates of y(t) - y.
    BLINKWRIGHT_INLINE void modes(V t, V* c) const {
        const V share = t / m_h, square = share * share;
        for (int k = 0; k < n(); ++k) {
            const Phi<V> phi = phiFunctions(t * m_basis.lambda[k]);
            c[k] = t * (phi[1] * m_fm[k] + square * (phi[3] * m_e3[k] + share * phi[4] * m_e4[k]));
        }
    }
    BLINKWRIGHT_INLINE void remainder(V t, V* r) const {
        const V share = t / m_h, square = share * share;
        for (int k = 0; k < q(); ++k)
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

    /// Port voltages and currents where the eigen-coordinates of y - base are c; r: first guess of the
    /// remainders in, the remainders out.
    Mask stage(const V* c, V* r, StepPoint<V>& out) {
        if (q() == 0) return maskOf<V>(true);
        V target[maxQ];
        for (int k = 0; k < q(); ++k) {
            V sum = base.u[k];
            for (int j = 0; j < n(); ++j) sum += m_PX[k * n() + j] * c[j];
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
        Mask done = maskOf<V>(q() == 0);
        constexpr int most = 16;
        for (int iteration = 0; iteration < most && !all(done); ++iteration) {
            V step[maxQ], M[maxQ * maxQ];
            for (int k = 0; k < q(); ++k)
                f.laws[k].evaluate(base.u[k], m_inner[k], base.i[k], base.slope[k]);
            for (int k = 0; k < q(); ++k) {
                V sum = source[k] - base.u[k];
                for (int j = 0; j < q(); ++j) {
                    sum -= f.Z[k * q() + j] * base.i[j];
                    M[k * q() + j] = f.Z[k * q() + j] * base.slope[j];
                }
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
        }
        return done;
    }

    const Folded<V>* m_f = nullptr;
    int m_n = 0, m_q = 0;
    double m_close = 0;
    V m_h{};
    std::array<V, maxN> m_F, m_fm, m_e3, m_e4;
    std::array<Phi<V>, maxN> m_phi;
    V m_r[2][maxQ];
    V m_inner[maxQ];
    V m_V[maxQ * maxQ];
    V m_PX[maxQ * maxN];
    V m_KX[maxN * maxQ];
    Eigenbasis<V>& m_basis;
};

/// The kernel for a board of n capacitors and q bent ports, n and q at most mostStates and mostBent.
template <class V>
std::unique_ptr<StepKernel<V>> makeKernel(int n, int q, Eigenbasis<V>& basis) {
    const auto byPorts = [&]<int N>() -> std::unique_ptr<StepKernel<V>> {
        switch (q) {
        case 1:
            return std::make_unique<Kernel<V, N, 1>>(basis);
        case 2:
            return std::make_unique<Kernel<V, N, 2>>(basis);
        case 3:
            return std::make_unique<Kernel<V, N, 3>>(basis);
        case 4:
            return std::make_unique<Kernel<V, N, 4>>(basis);
        default:
            return std::make_unique<Kernel<V, N, 0>>(basis);
        }
    };
    switch (n) {
    case 1:
        return byPorts.template operator()<1>();
    case 2:
        return byPorts.template operator()<2>();
    case 3:
        return byPorts.template operator()<3>();
    case 4:
        return byPorts.template operator()<4>();
    default:
        return std::make_unique<Kernel<V, 0, 0>>(basis);
    }
}

} // namespace blinkwright::engine
