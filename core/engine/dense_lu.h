// LU factors of a small dense matrix with partial pivoting, in storage that is kept from one factorisation to
// the next: the engine's inner loop allocates nothing.
#pragma once

#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

namespace blinkwright::engine {

class DenseLu {
  public:
    /// Room for an n x n matrix, row by row; fill it, then factor().
    double* matrix(int n) {
        m_n = n;
        m_a.resize(static_cast<std::size_t>(n) * static_cast<std::size_t>(n));
        m_swap.resize(static_cast<std::size_t>(n));
        return m_a.data();
    }
    /// @return false if the matrix is singular to working precision.
    bool factor() {
        const int n = m_n;
        double* a = m_a.data();
        for (int k = 0; k < n; ++k) {
            int p = k;
            for (int r = k + 1; r < n; ++r)
                if (std::abs(a[r * n + k]) > std::abs(a[p * n + k])) p = r;
            m_swap[static_cast<std::size_t>(k)] = p;
            if (p != k)
                for (int c = 0; c < n; ++c) std::swap(a[p * n + c], a[k * n + c]);
            const double pivot = a[k * n + k];
            if (!(std::abs(pivot) > 1e-300)) return false;
            for (int r = k + 1; r < n; ++r) {
                const double factor = a[r * n + k] /= pivot;
                if (factor == 0) continue;
                for (int c = k + 1; c < n; ++c) a[r * n + c] -= factor * a[k * n + c];
            }
        }
        return true;
    }
    void solve(double* x) const {
        const int n = m_n;
        const double* a = m_a.data();
        for (int k = 0; k < n; ++k) {
            const int p = m_swap[static_cast<std::size_t>(k)];
            if (p != k) std::swap(x[p], x[k]);
        }
        for (int r = 1; r < n; ++r) {
            double sum = x[r];
            for (int c = 0; c < r; ++c) sum -= a[r * n + c] * x[c];
            x[r] = sum;
        }
        for (int r = n - 1; r >= 0; --r) {
            double sum = x[r];
            for (int c = r + 1; c < n; ++c) sum -= a[r * n + c] * x[c];
            x[r] = sum / a[r * n + r];
        }
    }

  private:
    int m_n = 0;
    std::vector<double> m_a;
    std::vector<int> m_swap;
};

} // namespace blinkwright::engine
