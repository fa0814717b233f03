#include "core/engine/port_solver.h"

#include "core/engine/dense_solve.h"
#include "core/engine/small_matrix.h"

#include <algorithm>
#include <limits>

namespace blinkwright::engine {

namespace {

// Levels of the sources on their way up; within a step a shorter one is the cheaper way.
constexpr int mostLevels = 100, mostLevelsNearby = 10;
constexpr double closeEnough = 3e-8; // last step that counts as arrived, relative to 1 V and the voltage
constexpr double mostVolts = 1e12;   // an ampere through the largest resistance: more is no solution
constexpr int mostChanged = 3;       // slopes corrected for before a full step is as cheap

std::size_t at(int row, int columns, int column) {
    return static_cast<std::size_t>(row * columns + column);
}

/// A Newton step into the conducting side of a law that turns on within a narrow voltage, cut to what its
/// logarithm allows. Junctions and the knee of the bipolar output low need it.
double limited(const Reduced& r, const Port& port, double u, double step) {
    const auto index = static_cast<std::size_t>(port.index);
    double width = 0;
    if (port.kind == PortKind::junction)
        width = r.board->junctions[index].law.nVt;
    else if (port.kind == PortKind::outputLowBipolar)
        width = devices::detail::lowWidth;
    else if (port.kind == PortKind::outputHighBipolar)
        width = devices::OutputHighCurve::nVt;
    if (width == 0 || step <= 2 * width) return step;
    double from = 0; // where the law turns on
    if (port.kind == PortKind::junction) {
        const auto& law = r.board->junctions[index].law;
        from = law.nVt * std::log(law.nVt * 1e-3 / law.saturation);
    } else if (port.kind == PortKind::outputLowBipolar) {
        from = r.board->timers[index].sheet.low_knee;
    } else {
        from = r.board->timers[index].sheet.high_drop_1mA;
    }
    if (u + step <= from) return step;
    if (u < from) return std::max(from + width - u, 2 * width);
    return width * std::log1p(step / width) + width;
}

} // namespace

bool PortSolver::solve(const Reduced& r, const double* y, double* u, double* i, double* slope, double* guess,
                       const NearbyInverse* nearby) {
    const auto m = static_cast<std::size_t>(r.m);
    for (auto* v : {&m_sources, &m_scaled, &m_good, &m_step, &m_residual}) v->resize(m);
    m_jacobian.resize(m * m);
    m_changed.resize(m * mostChanged);
    for (int k = 0; k < r.m; ++k) {
        double sum = r.a[static_cast<std::size_t>(k)];
        for (int j = 0; j < r.n; ++j) sum += r.A[at(k, r.n, j)] * y[j];
        m_sources[static_cast<std::size_t>(k)] = sum;
    }
    if (newton(r, m_sources.data(), u, i, slope, guess, nearby)) return true;

    std::fill(u, u + m, 0.0);
    if (damped(r, m_sources.data(), u, i, slope, guess)) return true;
    std::fill(u, u + m, 0.0);
    std::fill(m_good.begin(), m_good.end(), 0.0);
    double reached = 0, step = 0.25;
    for (int levels = 0; reached < 1; ++levels) {
        if (levels == (nearby ? mostLevelsNearby : mostLevels)) return false;
        const double share = std::min(1.0, reached + step);
        for (std::size_t k = 0; k < m; ++k) m_scaled[k] = share * m_sources[k];
        if (damped(r, m_scaled.data(), u, i, slope, guess)) {
            reached = share;
            std::copy(u, u + m, m_good.begin());
            step *= 2;
        } else {
            std::copy(m_good.begin(), m_good.end(), u);
            step /= 4;
            if (step < 1e-7) return false;
        }
    }
    return true;
}

/// Newton's step from the residual with the slopes as they are.
bool PortSolver::fullStep(const Reduced& r, const double* slope) {
    const int m = r.m;
    for (int k = 0; k < m; ++k) {
        const double* Z = r.Z.data() + k * m;
        double* row = m_jacobian.data() + k * m;
        for (int j = 0; j < m; ++j) row[j] = Z[j] * slope[j];
        row[k] += 1;
    }
    std::copy(m_residual.begin(), m_residual.end(), m_step.begin());
    return solveDense(m_jacobian.data(), m_step.data(), m);
}

/// The same from the inverse near by, corrected for the few slopes that have changed (Sherman, Morrison,
/// Woodbury): with P = W Z in their columns, step = W F - P dG s, where (1 + P dG) s = W F in their rows.
/// @return false where too many have changed.
bool PortSolver::nearbyStep(const Reduced& r, const double* slope, const NearbyInverse& nearby) {
    const int m = r.m;
    constexpr double noticeable = 1e-3;
    int changed[mostChanged], count = 0;
    for (int k = 0; k < m; ++k) {
        const double own = std::abs(r.Z[at(k, m, k)]);
        if (std::abs(slope[k] - nearby.slope[k]) * own <= noticeable * (1 + own * std::abs(nearby.slope[k])))
            continue;
        if (count == mostChanged) return false;
        changed[count++] = k;
    }
    for (int k = 0; k < m; ++k) {
        const double* W = nearby.W + k * m;
        double sum = 0;
        for (int j = 0; j < m; ++j) sum += W[j] * m_residual[static_cast<std::size_t>(j)];
        m_step[static_cast<std::size_t>(k)] = sum;
        for (int c = 0; c < count; ++c) {
            double entry = 0;
            for (int j = 0; j < m; ++j) entry += W[j] * r.Z[at(j, m, changed[c])];
            m_changed[static_cast<std::size_t>(c * m + k)] =
                entry * (slope[changed[c]] - nearby.slope[changed[c]]);
        }
    }
    if (count == 0) return true;
    double small[mostChanged * mostChanged], s[mostChanged];
    for (int row = 0; row < count; ++row) {
        s[row] = m_step[static_cast<std::size_t>(changed[row])];
        for (int c = 0; c < count; ++c)
            small[row * count + c] =
                m_changed[static_cast<std::size_t>(c * m + changed[row])] + (row == c ? 1 : 0);
    }
    if (!solveDense(small, s, count)) return false;
    for (int c = 0; c < count; ++c)
        for (int k = 0; k < m; ++k)
            m_step[static_cast<std::size_t>(k)] -= m_changed[static_cast<std::size_t>(c * m + k)] * s[c];
    return true;
}

void PortSolver::residual(const Reduced& r, const double* sources, const double* u, const double* i) {
    for (int k = 0; k < r.m; ++k) {
        const double* Z = r.Z.data() + k * r.m;
        double sum = sources[k] - u[k];
        for (int j = 0; j < r.m; ++j) sum -= Z[j] * i[j];
        m_residual[static_cast<std::size_t>(k)] = sum;
    }
}

/// Applies the inverse in m_jacobian to the residual. @return the largest entry, relative to 1 V and u;
/// infinite where one is not a number.
double PortSolver::inverseTimesResidual(const double* u, std::vector<double>& out) const {
    const std::size_t m = out.size();
    double largest = 0;
    for (std::size_t k = 0; k < m; ++k) {
        double sum = 0;
        for (std::size_t j = 0; j < m; ++j) sum += m_jacobian[k * m + j] * m_residual[j];
        out[k] = sum;
        if (!std::isfinite(sum)) return std::numeric_limits<double>::infinity();
        largest = std::max(largest, std::abs(sum) / (1 + std::abs(u[k])));
    }
    return largest;
}

/// Newton's method whose steps are shortened as a whole until the next one, by the same slopes, is the
/// shorter (the natural monotonicity test: P. Deuflhard, Newton Methods for Nonlinear Problems, 2004,
/// section 3.1). Unlike a step cut port by port it keeps Newton's direction, on which the equations of
/// circuits of rising laws always come closer; it neither crawls over a long straight piece nor runs to and
/// fro across two knees.
bool PortSolver::damped(const Reduced& r, const double* sources, double* u, double* i, double* slope,
                        double* guess) {
    const auto m = static_cast<std::size_t>(r.m);
    constexpr int most = 150, mostHalvings = 40;
    m_from.resize(m);
    m_next.resize(m);
    m_swaps.resize(m);
    double share = 1, bestStep = std::numeric_limits<double>::infinity();
    r.currents(u, i, slope, guess);
    residual(r, sources, u, i);
    for (int iteration = 0; iteration < most; ++iteration) {
        for (std::size_t k = 0; k < m; ++k) {
            for (std::size_t j = 0; j < m; ++j) m_jacobian[k * m + j] = r.Z[k * m + j] * slope[j];
            m_jacobian[k * m + k] += 1;
        }
        if (!invert(m_jacobian.data(), r.m, r.m, m_swaps.data())) return false;
        std::copy(u, u + m, m_from.begin());
        const double before = inverseTimesResidual(m_from.data(), m_step);
        if (!(before < mostVolts)) return false;
        const bool atRounding = before < 1e-6 && before >= 0.5 * bestStep;
        if (before < closeEnough || atRounding) {
            for (std::size_t k = 0; k < m; ++k) {
                u[k] += m_step[k];
                i[k] += slope[k] * m_step[k];
            }
            return true;
        }
        bestStep = std::min(bestStep, before);
        share = std::min(1.0, 4 * share);
        for (int halvings = 0;; ++halvings) {
            for (std::size_t k = 0; k < m; ++k) u[k] = m_from[k] + share * m_step[k];
            r.currents(u, i, slope, guess);
            residual(r, sources, u, i);
            if (inverseTimesResidual(m_from.data(), m_next) <= (1 - 0.25 * share) * before) break;
            if (halvings == mostHalvings) return false;
            share *= 0.5;
        }
    }
    return false;
}

bool PortSolver::newton(const Reduced& r, const double* sources, double* u, double* i, double* slope,
                        double* guess, const NearbyInverse* nearby) {
    const int m = r.m;
    constexpr int most = 80, mostNearby = 8;
    double bestStep = std::numeric_limits<double>::infinity();
    for (int iteration = 0; iteration < most; ++iteration) {
        r.currents(u, i, slope, guess);
        residual(r, sources, u, i);
        if (!(nearby && iteration < mostNearby && nearbyStep(r, slope, *nearby)) && !fullStep(r, slope))
            return false;
        double largest = 0;
        bool cut = false;
        for (int k = 0; k < m; ++k) {
            const double full = m_step[static_cast<std::size_t>(k)];
            if (!(std::abs(full) < mostVolts)) return false;
            const double cutStep = limited(r, r.ports[static_cast<std::size_t>(k)], u[k], full);
            cut = cut || cutStep != full;
            u[k] += cutStep;
            largest = std::max(largest, std::abs(cutStep) / (1 + std::abs(u[k])));
        }
        if (cut) continue;
        // Close in, a step leaves only its square over the laws' widths (10 mV and more) behind, and currents
        // follow by their tangents to the same order. Or no further gain: rounding error.
        const bool atRounding = largest < 1e-6 && largest >= 0.5 * bestStep;
        if (largest < closeEnough || atRounding) {
            for (int k = 0; k < m; ++k) i[k] += slope[k] * m_step[static_cast<std::size_t>(k)];
            return true;
        }
        bestStep = std::min(bestStep, largest);
    }
    return false;
}

} // namespace blinkwright::engine
