// The reduced equations with the straight ports taken into their linear part: most ports are on a straight
// piece of their law for most of the time (an input far from its level, a dark lamp), so that only one to
// three are left to iterate. An input whose current is weak beside all else may drift: its current is
// integrated along the path that the rest takes (see kernel.h), and is not iterated either.
//
//   Folded<double> f;
//   f.fold(source, regimes);           // regimes: by port, bends, drifts, or the straight piece it is on
//   f.a, f.A, ...                      // u = a + A y - Z i(u),  y' = b + B y - D i(u) of the kept ports
//   f.row(k, y, i)                     // what is watched, as a function of y and the kept ports' currents
#pragma once

#include "core/engine/port_law.h"

#include <vector>

namespace blinkwright::engine {

/// Regimes of a port besides the numbers of its straight pieces.
inline constexpr std::uint8_t bends = 0, drifts = 255;

/// What a fold starts from: the full reduced equations as V, row by row, and their laws.
template <class V>
struct FoldSource {
    int n = 0, m = 0;
    int rows = 0; ///< watched: four a timer, then one a junction with a port: its true current
    LaneList<PortLaw<V>> laws;
    LaneList<V> a, A, Z, b, B, D;
    LaneList<V> c0, Cy, Ci; ///< rows: c0 + Cy y - Ci i
    LaneList<V> rootC;      ///< square root of each capacitance
};

template <class V>
struct Folded {
    int n = 0, q = 0, drifting = 0, rows = 0, straight = 0;
    int kept = 0;                    ///< q bent ports, then the drifting ones
    std::vector<int> keptPort;       ///< the port behind each of those
    std::vector<int> straightPort;   ///< the others
    std::vector<std::uint8_t> piece; ///< of each of the others
    LaneList<PortLaw<V>> laws;       ///< of the kept
    LaneList<V> a, A, Z, b, B, D;
    LaneList<V> c0, Cy, Ci; ///< rows of the source, then the voltages of the straight ports
    const FoldSource<V>* source = nullptr;

    BLINKWRIGHT_INLINE V row(int k, const V* y, const V* i) const {
        V sum = c0[static_cast<std::size_t>(k)];
        const V* cy = Cy.data() + k * n;
        const V* ci = Ci.data() + k * kept;
        for (int j = 0; j < n; ++j) sum += cy[j] * y[j];
        for (int j = 0; j < kept; ++j) sum -= ci[j] * i[j];
        return sum;
    }

    /// @param regimes of each port.
    /// @return false where the straight ports' own equations are singular.
    bool fold(const FoldSource<V>& from, const std::uint8_t* regimes);
};

namespace detail {

/// out (rows x columns) = from, rows picked by `rows`.
template <class List>
void pick(List& out, const List& from, const std::vector<int>& rows, int columns) {
    out.resize(rows.size() * static_cast<std::size_t>(columns));
    for (std::size_t k = 0; k < rows.size(); ++k)
        for (int j = 0; j < columns; ++j)
            out[k * static_cast<std::size_t>(columns) + static_cast<std::size_t>(j)] =
                from[static_cast<std::size_t>(rows[k] * columns + j)];
}

} // namespace detail

template <class V>
bool Folded<V>::fold(const FoldSource<V>& from, const std::uint8_t* regimes) {
    source = &from;
    n = from.n;
    keptPort.clear();
    straightPort.clear();
    piece.clear();
    laws.clear();
    for (int k = 0; k < from.m; ++k)
        if (regimes[k] == bends) keptPort.push_back(k);
    q = static_cast<int>(keptPort.size());
    for (int k = 0; k < from.m; ++k)
        if (regimes[k] == drifts) keptPort.push_back(k);
    kept = static_cast<int>(keptPort.size());
    drifting = kept - q;
    for (const int k : keptPort) laws.push_back(from.laws[static_cast<std::size_t>(k)]);
    for (int k = 0; k < from.m; ++k)
        if (regimes[k] != bends && regimes[k] != drifts) {
            straightPort.push_back(k);
            piece.push_back(regimes[k]);
        }
    straight = static_cast<int>(straightPort.size());
    rows = from.rows;
    const int s = straight, m = from.m, width = n + 1 + kept;
    const auto at = [](int row, int columns, int column) {
        return static_cast<std::size_t>(row * columns + column);
    };

    // The straight ports: (1 + Z g) u = a - Z c + A y - Z i, as one table with the right sides 1, y, i.
    LaneList<V> c(static_cast<std::size_t>(s)), g(static_cast<std::size_t>(s));
    for (int k = 0; k < s; ++k)
        from.laws[static_cast<std::size_t>(straightPort[static_cast<std::size_t>(k)])].straight(
            piece[static_cast<std::size_t>(k)], c[static_cast<std::size_t>(k)],
            g[static_cast<std::size_t>(k)]);
    LaneList<V> M(static_cast<std::size_t>(s * s)), X(static_cast<std::size_t>(s * width));
    for (int k = 0; k < s; ++k) {
        const int port = straightPort[static_cast<std::size_t>(k)];
        V constant = from.a[static_cast<std::size_t>(port)];
        for (int j = 0; j < s; ++j) {
            const V z = from.Z[at(port, m, straightPort[static_cast<std::size_t>(j)])];
            constant -= z * c[static_cast<std::size_t>(j)];
            M[at(k, s, j)] = z * g[static_cast<std::size_t>(j)] + (k == j ? 1 : 0);
        }
        X[at(k, width, 0)] = constant;
        for (int j = 0; j < n; ++j) X[at(k, width, 1 + j)] = from.A[at(port, n, j)];
        for (int j = 0; j < kept; ++j)
            X[at(k, width, 1 + n + j)] = -from.Z[at(port, m, keptPort[static_cast<std::size_t>(j)])];
    }
    // No pivots: a passive network's 1 + Z g is as good as positive definite.
    for (int k = 0; k < s; ++k) {
        const V pivot = M[at(k, s, k)];
        if (!all(lane::magnitude(pivot) > V(1e-12))) return false;
        for (int r = 0; r < s; ++r) {
            if (r == k) continue;
            const V factor = M[at(r, s, k)] / pivot;
            if (all((factor >= V(0)) & (factor <= V(0)))) continue;
            for (int j = k; j < s; ++j) M[at(r, s, j)] -= factor * M[at(k, s, j)];
            for (int j = 0; j < width; ++j) X[at(r, width, j)] -= factor * X[at(k, width, j)];
        }
    }
    for (int k = 0; k < s; ++k)
        for (int j = 0; j < width; ++j) X[at(k, width, j)] /= M[at(k, s, k)];

    // What every other equation says once i = c + g u of the straight ports is put in.
    const auto substitute = [&](const LaneList<V>& byStraight, int row, V& constant, V* byState, V* byPort) {
        for (int k = 0; k < s; ++k) {
            const V weight = byStraight[at(row, m, straightPort[static_cast<std::size_t>(k)])];
            if (all((weight >= V(0)) & (weight <= V(0)))) continue;
            const V slope = weight * g[static_cast<std::size_t>(k)];
            constant -= weight * c[static_cast<std::size_t>(k)] + slope * X[at(k, width, 0)];
            for (int j = 0; j < n; ++j) byState[j] -= slope * X[at(k, width, 1 + j)];
            for (int j = 0; j < kept; ++j) byPort[j] += slope * X[at(k, width, 1 + n + j)];
        }
    };
    detail::pick(a, from.a, keptPort, 1);
    detail::pick(A, from.A, keptPort, n);
    Z.resize(static_cast<std::size_t>(kept * kept));
    for (int k = 0; k < kept; ++k) {
        const int port = keptPort[static_cast<std::size_t>(k)];
        for (int j = 0; j < kept; ++j)
            Z[at(k, kept, j)] = from.Z[at(port, m, keptPort[static_cast<std::size_t>(j)])];
        substitute(from.Z, port, a[static_cast<std::size_t>(k)], A.data() + k * n, Z.data() + k * kept);
    }
    b = from.b;
    B = from.B;
    D.resize(static_cast<std::size_t>(n * kept));
    for (int k = 0; k < n; ++k) {
        for (int j = 0; j < kept; ++j)
            D[at(k, kept, j)] = from.D[at(k, m, keptPort[static_cast<std::size_t>(j)])];
        substitute(from.D, k, b[static_cast<std::size_t>(k)], B.data() + k * n, D.data() + k * kept);
    }
    const auto total = static_cast<std::size_t>(rows + s);
    c0.resize(total);
    Cy.resize(total * static_cast<std::size_t>(n));
    Ci.resize(total * static_cast<std::size_t>(kept));
    std::copy(from.c0.begin(), from.c0.end(), c0.begin());
    std::copy(from.Cy.begin(), from.Cy.end(), Cy.begin());
    for (int k = 0; k < rows; ++k) {
        for (int j = 0; j < kept; ++j)
            Ci[at(k, kept, j)] = from.Ci[at(k, m, keptPort[static_cast<std::size_t>(j)])];
        substitute(from.Ci, k, c0[static_cast<std::size_t>(k)], Cy.data() + k * n, Ci.data() + k * kept);
    }
    for (int k = 0; k < s; ++k) {
        c0[static_cast<std::size_t>(rows + k)] = X[at(k, width, 0)];
        for (int j = 0; j < n; ++j) Cy[at(rows + k, n, j)] = X[at(k, width, 1 + j)];
        for (int j = 0; j < kept; ++j) Ci[at(rows + k, kept, j)] = -X[at(k, width, 1 + n + j)];
    }
    return true;
}

} // namespace blinkwright::engine
