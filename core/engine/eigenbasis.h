// Eigenvectors of a circuit's Jacobian, kept up from step to step: the Jacobian moves little, so the last
// basis nearly diagonalises the next one and one or two corrections do.
//
//   Eigenbasis<double> basis;
//   basis.update<3>(J, rootC, 3);    // J: rows; rootC: square roots of the capacitances
//   basis.lambda, basis.vectors, basis.inverse
//
// With the capacitances' square roots as scales, the Jacobian of resistances and capacitances is symmetric;
// the timer's inputs make it a little less so. A basis in which J is diagonal up to a millionth will do: what
// is left beside the diagonal is in `off`, and the step counts it as drive.
#pragma once

#include "core/base/lanes.h"

#include <algorithm>
#include <array>
#include <vector>

namespace blinkwright::engine {

inline constexpr int mostStates = 12; ///< of a board that steps by the exponential method

template <class V>
class Eigenbasis {
    static constexpr int MaxN = mostStates;

  public:
    using Mask = MaskOf<V>;
    std::array<V, MaxN> lambda;
    std::array<V, MaxN * MaxN> vectors, inverse; ///< rows; vectors' columns are the eigenvectors
    std::array<V, MaxN * MaxN> off;              ///< inverse J vectors, less its diagonal

    void forget() { m_known = false; }
    /// What another basis of n states can go on from.
    void keep(LaneList<V>& kept, int n) const {
        const auto size = static_cast<std::size_t>(n * n);
        kept.resize(m_known && n > 1 ? 2 * size : 0);
        if (kept.empty()) return;
        std::copy_n(m_O.begin(), size, kept.begin());
        std::copy_n(m_inverse.begin(), size, kept.begin() + n * n);
    }
    void takeUp(const LaneList<V>& kept) {
        const auto size = static_cast<std::ptrdiff_t>(kept.size() / 2);
        std::copy_n(kept.begin(), size, m_O.begin());
        std::copy_n(kept.begin() + size, size, m_inverse.begin());
        m_known = size > 0;
    }

    /// @tparam N the number of states, or 0 where it is only known at run time.
    /// @return lanes where real eigenvectors were found that are well apart.
    template <int N>
    Mask update(const V* J, const V* rootC, int states) {
        const int n = N > 0 ? N : states;
        if (n == 1) {
            lambda[0] = J[0];
            vectors[0] = 1 / rootC[0];
            inverse[0] = rootC[0];
            off[0] = V(0);
            return lane::finite(J[0]);
        }
        for (int r = 0; r < n; ++r)
            for (int c = 0; c < n; ++c) m_S[r * n + c] = J[r * n + c] * rootC[r] / rootC[c];
        Mask good = maskOf<V>(false);
        if (m_known) {
            transform<N>(n);
            good = correct<N>(n);
        }
        if (!all(good)) {
            for (int k = 0; k < n * n; ++k) m_O[k] = m_inverse[k] = V(k % (n + 1) == 0 ? 1 : 0);
            for (int k = 0; k < n * n; ++k) off[k] = m_S[k];
            rotate<N>(n);
            good = correct<N>(n);
        }
        m_known = all(good);
        for (int r = 0; r < n; ++r) {
            lambda[r] = off[r * n + r];
            off[r * n + r] = V(0);
            for (int c = 0; c < n; ++c) {
                vectors[r * n + c] = m_O[r * n + c] / rootC[r];
                inverse[r * n + c] = m_inverse[r * n + c] * rootC[c];
            }
        }
        return good;
    }

  private:
    static constexpr double sharp = 1e-6; ///< the share of the distance of two eigenvalues that may be left

    /// off = inverse S O.
    template <int N>
    BLINKWRIGHT_INLINE void transform(int states) {
        const int n = N > 0 ? N : states;
        V SO[MaxN * MaxN];
        multiply<N>(m_S.data(), m_O.data(), SO, n);
        multiply<N>(m_inverse.data(), SO, off.data(), n);
    }
    template <int N>
    BLINKWRIGHT_INLINE static void multiply(const V* a, const V* b, V* out, int states) {
        const int n = N > 0 ? N : states;
        for (int r = 0; r < n; ++r)
            for (int c = 0; c < n; ++c) {
                V sum(0);
                for (int k = 0; k < n; ++k) sum += a[r * n + k] * b[k * n + c];
                out[r * n + c] = sum;
            }
    }

    /// Jacobi's rotations on the symmetric part, until corrections of first order can take over.
    template <int N>
    void rotate(int states) {
        const int n = N > 0 ? N : states;
        constexpr double rough = 1e-3;
        for (int sweep = 0; sweep < 30; ++sweep) {
            bool rotated = false;
            for (int p = 0; p < n; ++p)
                for (int q = p + 1; q < n; ++q) {
                    const V pp = off[p * n + p], qq = off[q * n + q];
                    const V both = 0.5 * (off[p * n + q] + off[q * n + p]);
                    const auto needed =
                        (lane::magnitude(both) > rough * lane::magnitude(qq - pp)) &
                        (lane::magnitude(both) > V(1e-15) * (lane::magnitude(pp) + lane::magnitude(qq)));
                    if (!any(needed)) continue;
                    rotated = true;
                    const V tau = 0.5 * (qq - pp) / select(needed, both, V(1));
                    const V t = select(needed,
                                       select(tau < V(0), V(-1), V(1)) /
                                           (lane::magnitude(tau) + lane::root(1 + tau * tau)),
                                       V(0));
                    const V cosine = 1 / lane::root(1 + t * t), sine = t * cosine;
                    for (int k = 0; k < n; ++k) { // columns
                        const V a = off[k * n + p], b = off[k * n + q];
                        off[k * n + p] = cosine * a - sine * b;
                        off[k * n + q] = sine * a + cosine * b;
                        const V x = m_O[k * n + p], y = m_O[k * n + q];
                        m_O[k * n + p] = cosine * x - sine * y;
                        m_O[k * n + q] = sine * x + cosine * y;
                    }
                    for (int k = 0; k < n; ++k) { // rows
                        const V a = off[p * n + k], b = off[q * n + k];
                        off[p * n + k] = cosine * a - sine * b;
                        off[q * n + k] = sine * a + cosine * b;
                    }
                }
            if (!rotated) break;
        }
        for (int r = 0; r < n; ++r)
            for (int c = 0; c < n; ++c) m_inverse[r * n + c] = m_O[c * n + r];
    }

    /// Corrections O (1 + X), X_ij = T_ij / (T_jj - T_ii), which take what is left beside the diagonal to its
    /// square. @return lanes where little enough is left.
    template <int N>
    Mask correct(int states) {
        const int n = N > 0 ? N : states;
        for (int pass = 0; pass < 6; ++pass) {
            V X[MaxN * MaxN];
            V largest(0);
            for (int r = 0; r < n; ++r)
                for (int c = 0; c < n; ++c) {
                    const V entry = off[r * n + c];
                    const V gap = off[c * n + c] - off[r * n + r];
                    const V scale = lane::magnitude(off[c * n + c]) + lane::magnitude(off[r * n + r]);
                    const auto counts = lane::magnitude(entry) > V(1e-14) * scale;
                    const auto apart = lane::magnitude(gap) > V(1e-13) * scale;
                    V x = select(counts, select(apart, entry / select(apart, gap, V(1)), V(1)), V(0));
                    if (r == c) x = V(0);
                    X[r * n + c] = x;
                    largest = lane::larger(largest, lane::magnitude(x));
                }
            const auto fine = largest <= V(sharp);
            if (all(fine)) return fine;
            if (!all(largest < V(0.2))) return fine;
            V product[MaxN * MaxN], again[MaxN * MaxN];
            multiply<N>(m_O.data(), X, product, n);
            for (int k = 0; k < n * n; ++k) m_O[k] += product[k];
            // (1 + X)^-1 to second order, then Newton's step for the inverse.
            multiply<N>(X, X, again, n);
            for (int k = 0; k < n * n; ++k) again[k] += V(k % (n + 1) == 0 ? 1 : 0) - X[k];
            multiply<N>(again, m_inverse.data(), product, n);
            multiply<N>(m_O.data(), product, again, n);
            for (int k = 0; k < n * n; ++k) again[k] = V(k % (n + 1) == 0 ? 2 : 0) - again[k];
            multiply<N>(product, again, m_inverse.data(), n);
            transform<N>(n);
        }
        return maskOf<V>(false);
    }

    bool m_known = false;
    std::array<V, MaxN * MaxN> m_S, m_O, m_inverse;
};

} // namespace blinkwright::engine
