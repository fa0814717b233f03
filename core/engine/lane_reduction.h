// The reduced equations of a group of boards, from those of the nominal one: each part that varies has a port
// there, through which it carries what its conductance is more than the nominal one's. Those ports are linear
// and are eliminated, a board a lane.
//
//   LaneReduction<V> reduction;
//   Mask sound = reduction.reduce(plan, high, factors, source);
//
// u_K = a_K + A_K y - Z_KR i - Z_KK G u_K of the varied parts K; what follows for u_K goes into every other
// row. The nominal board is factored with full pivoting (network.cpp); 1 + Z_KK G needs no pivots, since its
// leading minors are ratios of determinants of networks of positive conductances. Lanes in which one is
// small all the same are not sound.
#pragma once

#include "core/engine/folded.h"
#include "core/engine/lane_plan.h"

namespace blinkwright::engine {

template <class V>
class LaneReduction {
  public:
    MaskOf<V> reduce(const LanePlan& plan, int high, const V* factors, FoldSource<V>& out) {
        const PlanState& state = plan.state[static_cast<std::size_t>(high)];
        const int n = plan.n, m = state.m, rows = plan.rows, p = static_cast<int>(plan.probes.size());
        const int columns = 1 + n + m, width = columns + p, others = m + n + rows;
        out.n = n;
        out.m = m;
        out.rows = rows;
        const auto sized = [](LaneList<V>& list, int size) { list.resize(static_cast<std::size_t>(size)); };
        for (auto [list, size] : {std::pair{&out.a, m},
                                  {&out.A, m * n},
                                  {&out.Z, m * m},
                                  {&out.b, n},
                                  {&out.B, n * n},
                                  {&out.D, n * m},
                                  {&out.c0, rows},
                                  {&out.Cy, rows * n},
                                  {&out.Ci, rows * m},
                                  {&out.rootC, n},
                                  {&m_X, p * columns},
                                  {&m_M, p * p},
                                  {&m_G, p}})
            sized(*list, size);
        laws(state, factors, out);

        // --- the voltages across the varied parts
        V* X = m_X.data();
        V* M = m_M.data();
        V* G = m_G.data();
        for (int k = 0; k < p; ++k) {
            const PlanProbe& probe = plan.probes[static_cast<std::size_t>(k)];
            const V f = factors[probe.factor];
            const V share = probe.divider ? 1 / (3 / f - 2) : 1 / f;
            G[k] = (share - 1) * probe.conductance - probe.reference;
        }
        const auto constant = [&](int row) {
            V sum(state.table[static_cast<std::size_t>(row * width)]);
            for (std::size_t s = 0; s < plan.supplies.size(); ++s)
                sum += (factors[plan.supplies[s].factor] - 1) *
                       V(plan.supplies[s].voltage_V * state.bySupply[s][static_cast<std::size_t>(row)]);
            return sum;
        };
        for (int k = 0; k < p; ++k) {
            const double* from = state.table.data() + (others + k) * width;
            X[k * columns] = constant(others + k);
            for (int c = 1; c < columns; ++c) X[k * columns + c] = V(from[c]);
            for (int j = 0; j < p; ++j) M[k * p + j] = V(from[columns + j]) * G[j] + V(j == k ? 1 : 0);
        }
        MaskOf<V> sound = maskOf<V>(true);
        for (int k = 0; k < p; ++k) {
            sound = sound & (lane::magnitude(M[k * p + k]) > V(1e-6)) & lane::finite(M[k * p + k]);
            const V inverse = 1 / M[k * p + k];
            for (int c = k + 1; c < p; ++c) M[k * p + c] *= inverse;
            for (int c = 0; c < columns; ++c) X[k * columns + c] *= inverse;
            for (int r = 0; r < p; ++r) {
                if (r == k) continue;
                const V factor = M[r * p + k];
                for (int c = k + 1; c < p; ++c) M[r * p + c] -= factor * M[k * p + c];
                for (int c = 0; c < columns; ++c) X[r * columns + c] -= factor * X[k * columns + c];
            }
        }
        for (int k = 0; k < p; ++k)
            for (int c = 0; c < columns; ++c) X[k * columns + c] *= G[k];

        // --- every other row
        const auto fill = [&](int row, V* first, V* byState, V* byPort) {
            const double* from = state.table.data() + row * width;
            *first = constant(row);
            for (int c = 0; c < n; ++c) byState[c] = V(from[1 + c]);
            for (int c = 0; c < m; ++c) byPort[c] = V(from[1 + n + c]);
            for (int k = 0; k < p; ++k) {
                if (from[columns + k] == 0) continue;
                const V weight(from[columns + k]);
                const V* x = X + k * columns;
                *first -= weight * x[0];
                for (int c = 0; c < n; ++c) byState[c] -= weight * x[1 + c];
                for (int c = 0; c < m; ++c) byPort[c] -= weight * x[1 + n + c];
            }
        };
        for (int k = 0; k < m; ++k) fill(k, out.a.data() + k, out.A.data() + k * n, out.Z.data() + k * m);
        for (int k = 0; k < n; ++k) {
            V* const B = out.B.data() + k * n;
            V* const D = out.D.data() + k * m;
            fill(m + k, out.b.data() + k, B, D);
            const int by = plan.capacitorFactor[static_cast<std::size_t>(k)];
            const V factor = by >= 0 ? factors[by] : V(1), share = 1 / factor;
            out.rootC[static_cast<std::size_t>(k)] =
                lane::root(factor * plan.capacitance[static_cast<std::size_t>(k)]);
            if (by < 0) continue;
            out.b[static_cast<std::size_t>(k)] *= share;
            for (int c = 0; c < n; ++c) B[c] *= share;
            for (int c = 0; c < m; ++c) D[c] *= share;
        }
        for (int k = 0; k < rows; ++k)
            fill(m + n + k, out.c0.data() + k, out.Cy.data() + k * n, out.Ci.data() + k * m);
        return sound;
    }

  private:
    static void laws(const PlanState& state, const V* factors, FoldSource<V>& out) {
        out.laws.resize(state.laws.size());
        for (std::size_t k = 0; k < state.laws.size(); ++k) {
            const PlanLaw& from = state.laws[k];
            PortLaw<V>& law = out.laws[k];
            law.kind = from.kind;
            law.low = from.low;
            law.reference = V(from.reference);
            law.scale = V(from.scale);
            for (std::size_t j = 0; j < 4; ++j) law.p[j] = V(from.p[j]);
            if (from.shiftedBy >= 0) {
                const V shift = (factors[from.shiftedBy] - 1) * from.voltage_V;
                law.p[0] *= lane::exponential(-shift / law.p[1]);
                law.p[2] += shift;
            }
        }
    }

    LaneList<V> m_X, m_M, m_G;
};

} // namespace blinkwright::engine
