// What a block remembers of earlier solutions, to take one up again where it fits.
#include "core/engine/large/block.h"

#include "core/engine/large/phi_functions.h"
#include "core/engine/large/rows.h"
#include "core/engine/phi.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

/// How far each capacitor voltage may be off from the plan, and where the plan ends: what adopt() needs.
void Block::keepForLater(const BlockTolerances& tol, const double* borderConductance) {
    const int n = m_n;
    BlockBase& base = *m_base;
    base.reusable = true;
    base.reach_V = std::min(base.radius_V, firstRadius_V);
    // The slowest mode tells where on the plan a point is, unless it rests.
    double moves[12], widest = 0;
    for (int j = 0; j < n; ++j) {
        base.end[at(j)] = base.modeAt(j, base.span_s);
        moves[j] = 0;
        for (int k = 0; k < n; ++k)
            moves[j] = std::max(moves[j], std::abs(base.modes.vectors[at(k * n + j)] * base.end[at(j)]));
        widest = std::max(widest, moves[j]);
    }
    base.guide = -1;
    for (int j = 0; j < n; ++j)
        if (moves[j] > 1e-3 * widest && (base.guide < 0 || std::abs(base.modes.lambda[at(j)]) <
                                                               std::abs(base.modes.lambda[at(base.guide)])))
            base.guide = j;
    base.reusable = n == 0 || base.guide >= 0;
    base.guide = std::max(base.guide, 0);
    if (n < 2) return; // the plan passes through every voltage between its ends
    const double h = base.span_s, *v = base.y.data() + n;
    double moved[12], step[12], rate[20], drift[12], worst = 0;
    for (int k = 0; k < n; ++k) {
        for (int j = 0; j < n; ++j) {
            step[j] = base.modes.inverse[at(j * n + k)] * base.reach_V;
            moved[j] = m_c[1][at(j)] + step[j];
        }
        if (!stage(moved, v, rate, m_left.data())) {
            base.reusable = false;
            return;
        }
        for (int j = 0; j < n; ++j) m_F[at(j)] = rate[j] - m_stageRate[at(j)];
        for (int j = 0; j < n; ++j)
            drift[j] = (product(base.modes.inverse.data() + j * n, m_F.data(), n) -
                        base.modes.lambda[at(j)] * step[j]) *
                       h * phi1(h * base.modes.lambda[at(j)]);
        for (int j = 0; j < n; ++j)
            worst = std::max(worst,
                             std::abs(product(base.modes.vectors.data() + j * n, drift, n)) / tol.voltage_V);
        for (int row = 0; row < m_rows; ++row)
            m_left[at(row)] -= m_stageRows[1][at(row)] + product(base.byMode.data() + row * n, step, n);
        worst = std::max(worst, rowError(m_left.data(), h, h, tol, borderConductance));
    }
    if (worst > 1) base.reach_V *= std::min(1.0, 0.9 / worst);
    base.reusable = std::isfinite(base.reach_V);
}

bool Block::adopt(const double* y, const double* v, double time_s, double least_s) {
    if (!m_memory) return false;
    const int n = m_n;
    // What looks best by the index is tried first; a point too far from a plan rules that plan out.
    const int width = indexWidth();
    const int count = static_cast<int>(m_memory->bases.size());
    BlockBase* best = nullptr;
    double bestAt = 0, off[12];
    std::uint64_t ruledOut = 0;
    // What followed last time is good enough if it is good.
    int follower = m_base && m_base->reduced == m_reduced && m_base->next < count ? m_base->next : -1;
    while (!best) {
        int choice = -1;
        double longest = 0, choiceShare = 0, choiceWanted = 0;
        for (int turn = follower >= 0 ? -1 : 0; turn < count; ++turn) {
            const int c = turn < 0 ? follower : turn;
            const double* index = m_memory->index.data() + c * width;
            const double* v0 = index + 4 + n;
            bool near = (ruledOut >> c & 1) == 0 && index[0] >= 0;
            for (int b = 0; b < m_r; ++b) near = near && std::abs(v[b] - v0[b]) <= index[0];
            if (!near) continue;
            if (n == 0) {
                choice = c;
                break;
            }
            const double wanted = product(index + 4, y, n) - index[3];
            const double share = wanted / index[2];
            const double left = (1 - share) * index[1];
            if (!(share > -0.01) || left <= longest || left < std::min(least_s, 0.5 * index[1])) continue;
            longest = left;
            choice = c;
            choiceShare = share;
            choiceWanted = wanted;
            if (turn < 0 && left > 0.7 * index[1]) break;
        }
        if (choice < 0) return false;
        follower = -1;
        ruledOut |= std::uint64_t{1} << choice;
        BlockBase& base = *m_memory->bases[at(choice)];
        if (n == 0) {
            best = &base;
            break;
        }
        const double s = base.timeOf(choiceWanted, std::max(choiceShare, 0.0));
        if (!(s >= 0 && s < 0.95 * base.span_s)) continue;
        if (n > 1 || choiceShare < 0) { // how far is the point from the plan's?
            double z[12], far = 0;
            for (int k = 0; k < n; ++k) off[k] = y[k] - base.y[at(k)];
            for (int j = 0; j < n; ++j)
                z[j] = product(base.modes.inverse.data() + j * n, off, n) - base.modeAt(j, s);
            for (int k = 0; k < n; ++k)
                far = std::max(far, std::abs(product(base.modes.vectors.data() + k * n, z, n)));
            if (!(far <= 0.5 * base.reach_V)) continue;
        }
        best = &base;
        bestAt = s;
    }
    ++m_adopted;
    if (m_base && m_base->reduced == m_reduced) m_base->next = static_cast<int>(best->number);
    m_base = best;
    for (int k = 0; k < n; ++k) off[k] = y[k] - best->y[at(k)];
    for (int j = 0; j < n; ++j) m_entry[at(j)] = product(best->modes.inverse.data() + j * n, off, n);
    const int first = m_r + 4 * m_timers;
    for (int l = 0; l < lamps(); ++l) {
        const int row = first + l;
        m_left[at(l)] = best->value[at(row)] + product(best->byMode.data() + row * n, m_entry.data(), n);
    }
    countCharges(time_s, m_left.data());
    m_begin_s = time_s - bestAt;
    m_fresh = false;
    return true;
}

double* Block::indexOf(const BlockBase* base) {
    return m_memory->index.data() + base->number * at(indexWidth());
}

void Block::enterIndex() {
    double* index = indexOf(m_base);
    index[0] = m_base->reusable ? 0.5 * m_base->radius_V : -1;
    if (!m_base->reusable) return;
    index[1] = m_base->span_s;
    if (m_n > 0) {
        const double* row = m_base->modes.inverse.data() + m_base->guide * m_n;
        index[2] = m_base->end[at(m_base->guide)];
        index[3] = product(row, m_base->y.data(), m_n);
        std::copy(row, row + m_n, index + 4);
    }
    std::copy(m_base->y.begin() + m_n, m_base->y.end(), index + 4 + m_n);
}

double BlockBase::modeAt(int j, double s) const {
    const auto k = static_cast<std::size_t>(j);
    const Phi phi = phiOf(modes.lambda[k] * s);
    return s * (phi.k1 * modes.force[k] + s * s * (2 * phi.k3 * modes.c2[k] + s * 6 * phi.k4 * modes.c3[k]));
}

double BlockBase::timeOf(double wanted, double share) const {
    const auto k = static_cast<std::size_t>(guide);
    double s = share * span_s;
    if (hintSpeed != 0) {
        s = hint_s + (wanted - hintValue) / hintSpeed;
        if (s >= 0 && std::abs(s - hint_s) < 0.02 * span_s) return s; // straight enough
        s = std::clamp(s, 0.0, span_s);
    }
    for (int turn = 0; turn < 8; ++turn) {
        const double z = modeAt(guide, s);
        const double speed = modes.lambda[k] * z + modes.force[k] + s * s * (modes.c2[k] + s * modes.c3[k]);
        const double step = (wanted - z) / speed;
        hint_s = s;
        hintValue = z;
        hintSpeed = speed;
        s = std::clamp(s + step, 0.0, span_s);
        if (!(std::abs(step) > 0.02 * span_s)) return s; // the small rest is a deviation like any other
    }
    return -1;
}

bool Block::watched(int timer, const double* yAndBorders, Watched& out) {
    const Reduced& r = *m_reduced;
    const int size = m_n + m_r;
    double step[20];
    for (int k = 0; k < size; ++k) step[k] = yAndBorders[k] - m_base->y[at(k)];
    for (int k = 0; k < r.m; ++k)
        m_stageU[at(k)] = m_base->u[at(k)] + product(m_base->portByState.data() + k * size, step, size);
    const NearbyInverse nearby{m_base->W.data(), m_base->slope.data()};
    ++m_solves;
    if (!m_ports.solve(r, yAndBorders, m_stageU.data(), m_stageI.data(), m_stageSlope.data(), m_guess.data(),
                       &nearby))
        return false;
    out = r.watched(timer, yAndBorders, m_stageI.data());
    return true;
}

} // namespace blinkwright::engine::large
