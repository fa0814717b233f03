// Kernels on small dense matrices kept column by column, each column `stride` long (a multiple of four), so
// that the compiler turns the inner loops into vector instructions.
#pragma once

#include <cmath>
#include <cstddef>
#include <utility>

namespace blinkwright::engine {

/// out += column * factor.
inline void addColumn(double* __restrict out, const double* __restrict column, double factor, int stride) {
    for (int k = 0; k < stride; ++k) out[k] += column[k] * factor;
}

/// out += M v for a matrix of `count` columns.
inline void addProduct(double* __restrict out, const double* __restrict matrix, const double* __restrict v,
                       int count, int stride) {
    for (int j = 0; j < count; ++j)
        addColumn(out, matrix + static_cast<std::ptrdiff_t>(j) * stride, v[j], stride);
}

/// Replaces an n x n matrix, row by row in `a` with rows `stride` long, by its inverse (Gauss-Jordan with row
/// pivots).
/// @param swaps room for n numbers. @return false if the matrix is singular to working precision.
inline bool invert(double* a, int n, int stride, int* swaps) {
    for (int k = 0; k < n; ++k) {
        int p = k;
        for (int r = k + 1; r < n; ++r)
            if (std::abs(a[r * stride + k]) > std::abs(a[p * stride + k])) p = r;
        swaps[k] = p;
        if (p != k)
            for (int c = 0; c < n; ++c) std::swap(a[p * stride + c], a[k * stride + c]);
        const double pivot = a[k * stride + k];
        if (!(std::abs(pivot) > 1e-300)) return false;
        double* __restrict row = a + k * stride;
        const double inverse = 1 / pivot;
        row[k] = 1;
        for (int c = 0; c < n; ++c) row[c] *= inverse;
        for (int r = 0; r < n; ++r) {
            if (r == k) continue;
            double* __restrict other = a + r * stride;
            const double factor = other[k];
            if (factor == 0) continue;
            other[k] = 0;
            for (int c = 0; c < n; ++c) other[c] -= factor * row[c];
        }
    }
    for (int k = n - 1; k >= 0; --k)
        if (swaps[k] != k)
            for (int r = 0; r < n; ++r) std::swap(a[r * stride + k], a[r * stride + swaps[k]]);
    return true;
}

} // namespace blinkwright::engine
