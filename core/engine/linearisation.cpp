#include "core/engine/linearisation.h"

#include "core/engine/small_matrix.h"

namespace blinkwright::engine {

bool Linearisation::compute(const Reduced& r, const double* slope) {
    const int n = r.n, m = r.m;
    W.resize(static_cast<std::size_t>(m * m));
    portByState.resize(static_cast<std::size_t>(m * n));
    jacobian.resize(static_cast<std::size_t>(n * n));
    swaps.resize(static_cast<std::size_t>(m));
    for (int k = 0; k < m; ++k) {
        const double* Z = r.Z.data() + k * m;
        double* row = W.data() + k * m;
        for (int j = 0; j < m; ++j) row[j] = Z[j] * slope[j];
        row[k] += 1;
    }
    if (!invert(W.data(), m, m, swaps.data())) return false;
    for (int k = 0; k < m; ++k) {
        double* row = portByState.data() + k * n;
        for (int c = 0; c < n; ++c) row[c] = 0;
        for (int j = 0; j < m; ++j)
            addColumn(row, r.A.data() + j * n, W[static_cast<std::size_t>(k * m + j)], n);
    }
    for (int k = 0; k < n; ++k) {
        double* row = jacobian.data() + k * n;
        for (int c = 0; c < n; ++c) row[c] = r.B[static_cast<std::size_t>(k * n + c)];
        for (int j = 0; j < m; ++j)
            addColumn(row, portByState.data() + j * n, -r.D[static_cast<std::size_t>(k * m + j)] * slope[j],
                      n);
    }
    return true;
}

} // namespace blinkwright::engine
