// Solves small dense systems by Gaussian elimination with partial pivoting. Sizes up to twelve are compiled
// one by one, so that their loops unroll: a Newton step on the ports of a usual board costs some hundred
// instructions.
#pragma once

#include <cmath>
#include <utility>

namespace blinkwright::engine {

namespace detail {

/// Size is N, or n where N is 0.
template <int N>
bool eliminate(double* __restrict a, double* __restrict x, int n) {
    const int size = N > 0 ? N : n;
    for (int k = 0; k < size; ++k) {
        int p = k;
        for (int r = k + 1; r < size; ++r)
            if (std::abs(a[r * size + k]) > std::abs(a[p * size + k])) p = r;
        if (p != k) {
            for (int c = k; c < size; ++c) std::swap(a[p * size + c], a[k * size + c]);
            std::swap(x[p], x[k]);
        }
        const double pivot = a[k * size + k];
        if (!(std::abs(pivot) > 1e-300)) return false;
        const double inverse = 1 / pivot;
        for (int r = k + 1; r < size; ++r) {
            const double factor = a[r * size + k] * inverse;
            if (factor == 0) continue;
            for (int c = k + 1; c < size; ++c) a[r * size + c] -= factor * a[k * size + c];
            x[r] -= factor * x[k];
        }
        a[k * size + k] = inverse;
    }
    for (int r = size - 1; r >= 0; --r) {
        double sum = x[r];
        for (int c = r + 1; c < size; ++c) sum -= a[r * size + c] * x[c];
        x[r] = sum * a[r * size + r];
    }
    return true;
}

} // namespace detail

/// Solves a x = b in place: `a` n x n, row by row, is used up; `x` holds b, then the solution.
/// @return false if the matrix is singular to working precision.
inline bool solveDense(double* a, double* x, int n) {
    switch (n) {
    case 1:
        return detail::eliminate<1>(a, x, n);
    case 2:
        return detail::eliminate<2>(a, x, n);
    case 3:
        return detail::eliminate<3>(a, x, n);
    case 4:
        return detail::eliminate<4>(a, x, n);
    case 5:
        return detail::eliminate<5>(a, x, n);
    case 6:
        return detail::eliminate<6>(a, x, n);
    case 7:
        return detail::eliminate<7>(a, x, n);
    case 8:
        return detail::eliminate<8>(a, x, n);
    case 9:
        return detail::eliminate<9>(a, x, n);
    case 10:
        return detail::eliminate<10>(a, x, n);
    case 11:
        return detail::eliminate<11>(a, x, n);
    case 12:
        return detail::eliminate<12>(a, x, n);
    default:
        return detail::eliminate<0>(a, x, n);
    }
}

} // namespace blinkwright::engine
