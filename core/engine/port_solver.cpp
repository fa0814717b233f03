#include "core/engine/port_solver.h"

#include "core/engine/dense_solve.h"

#include <algorithm>
#include <limits>

namespace blinkwright::engine {

namespace {

std::size_t at(int row, int columns, int column) {
    return static_cast<std::size_t>(row * columns + column);
}

/// A Newton step into the conducting side of a law that turns on within a narrow voltage, cut to what its logarithm
/// allows. Junctions and the knee of the bipolar output low need it.
double limited(const Reduced& r, const Port& port, double u, double step) {
    const auto index = static_cast<std::size_t>(port.index);
    double width = 0;
    if (port.kind == PortKind::junction)
        width = r.board->junctions[index].law.nVt;
    else if (port.kind == PortKind::outputLowBipolar)
        width = devices::detail::lowWidth;
    if (width == 0 || step <= 2 * width) return step;
    double from = 0; // where the law turns on
    if (port.kind == PortKind::junction) {
        const auto& law = r.board->junctions[index].law;
        from = law.nVt * std::log(law.nVt * 1e-3 / law.saturation);
    } else {
        from = r.board->timers[index].sheet.low_knee;
    }
    if (u + step <= from) return step;
    if (u < from) return std::max(from + width - u, 2 * width);
    return width * std::log1p(step / width) + width;
}

} // namespace

bool PortSolver::solve(const Reduced& r, const double* y, double* u, double* i, double* slope, double* guess) {
    const auto m = static_cast<std::size_t>(r.m);
    for (auto* v : {&m_sources, &m_scaled, &m_good, &m_step}) v->resize(m);
    m_jacobian.resize(m * m);
    for (int k = 0; k < r.m; ++k) {
        double sum = r.a[static_cast<std::size_t>(k)];
        for (int j = 0; j < r.n; ++j) sum += r.A[at(k, r.n, j)] * y[j];
        m_sources[static_cast<std::size_t>(k)] = sum;
    }
    if (newton(r, m_sources.data(), u, i, slope, guess)) return true;

    std::fill(u, u + m, 0.0);
    std::fill(m_good.begin(), m_good.end(), 0.0);
    double reached = 0, step = 0.25;
    while (reached < 1) {
        const double share = std::min(1.0, reached + step);
        for (std::size_t k = 0; k < m; ++k) m_scaled[k] = share * m_sources[k];
        if (newton(r, m_scaled.data(), u, i, slope, guess)) {
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

bool PortSolver::newton(const Reduced& r, const double* sources, double* u, double* i, double* slope, double* guess) {
    const int m = r.m;
    constexpr int most = 80;
    constexpr double closeEnough = 3e-8; // [V]
    double bestStep = std::numeric_limits<double>::infinity();
    for (int iteration = 0; iteration < most; ++iteration) {
        r.currents(u, i, slope, guess);
        double* J = m_jacobian.data();
        for (int k = 0; k < m; ++k) {
            const double* Z = r.Z.data() + k * m;
            double* row = J + k * m;
            double sum = sources[k] - u[k];
            for (int j = 0; j < m; ++j) {
                sum -= Z[j] * i[j];
                row[j] = Z[j] * slope[j];
            }
            row[k] += 1;
            m_step[static_cast<std::size_t>(k)] = sum;
        }
        if (!solveDense(J, m_step.data(), m)) return false;
        double largest = 0;
        bool cut = false;
        for (int k = 0; k < m; ++k) {
            const double full = m_step[static_cast<std::size_t>(k)];
            if (!std::isfinite(full)) return false;
            const double cutStep = limited(r, r.ports[static_cast<std::size_t>(k)], u[k], full);
            cut = cut || cutStep != full;
            u[k] += cutStep;
            largest = std::max(largest, std::abs(cutStep) / (1 + std::abs(u[k])));
        }
        if (cut) continue;
        // Close in, a step leaves only its square over the laws' widths (10 mV and more) behind, and currents follow
        // by their tangents to the same order. Or no further gain: rounding error.
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
