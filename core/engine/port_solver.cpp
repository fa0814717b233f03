#include "core/engine/port_solver.h"

#include <algorithm>
#include <limits>

namespace blinkwright::engine {

namespace {

std::size_t at(int row, int columns, int column) {
    return static_cast<std::size_t>(row * columns + column);
}

/// Narrowest voltage over which a port's law turns on, and the voltage from which it does [V]; a Newton step
/// into the conducting side is cut to what the logarithm allows.
struct TurnOn {
    double width;
    double from;
};

TurnOn turnOn(const Reduced& r, const Port& port) {
    const auto index = static_cast<std::size_t>(port.index);
    switch (port.kind) {
    case PortKind::junction: {
        const auto& law = r.board->junctions[index].law;
        return {law.nVt, law.nVt * std::log(law.nVt * 1e-3 / law.saturation)};
    }
    case PortKind::outputLowBipolar:
        return {devices::detail::lowWidth, r.board->timers[index].sheet.low_knee};
    default:
        return {0, 0};
    }
}

double limited(double u, double step, const TurnOn& on) {
    if (on.width <= 0) return step;
    const double target = u + step;
    if (step > 2 * on.width && target > on.from) {
        if (u < on.from) return std::max(on.from + on.width - u, 2 * on.width);
        return on.width * std::log1p(step / on.width) + on.width;
    }
    return step;
}

} // namespace

bool PortSolver::solve(const Reduced& r, const double* y, double* u, double* guess) {
    const auto m = static_cast<std::size_t>(r.m);
    for (auto* v : {&m_sources, &m_scaled, &m_good, &m_step, &m_i, &m_slope}) v->resize(m);
    for (int k = 0; k < r.m; ++k) {
        double sum = r.a[static_cast<std::size_t>(k)];
        for (int j = 0; j < r.n; ++j) sum += r.A[at(k, r.n, j)] * y[j];
        m_sources[static_cast<std::size_t>(k)] = sum;
    }
    if (newton(r, m_sources.data(), u, guess)) return true;

    std::fill(u, u + m, 0.0);
    std::fill(m_good.begin(), m_good.end(), 0.0);
    double reached = 0, step = 0.25;
    while (reached < 1) {
        const double share = std::min(1.0, reached + step);
        for (std::size_t k = 0; k < m; ++k) m_scaled[k] = share * m_sources[k];
        if (newton(r, m_scaled.data(), u, guess)) {
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

bool PortSolver::newton(const Reduced& r, const double* sources, double* u, double* guess) {
    const int m = r.m;
    constexpr int most = 80;
    double bestStep = std::numeric_limits<double>::infinity();
    for (int iteration = 0; iteration < most; ++iteration) {
        r.currents(u, m_i.data(), m_slope.data(), guess);
        double* J = m_lu.matrix(m);
        for (int k = 0; k < m; ++k) {
            double sum = sources[k] - u[k];
            for (int j = 0; j < m; ++j) {
                sum -= r.Z[at(k, m, j)] * m_i[static_cast<std::size_t>(j)];
                J[k * m + j] = r.Z[at(k, m, j)] * m_slope[static_cast<std::size_t>(j)] + (k == j ? 1 : 0);
            }
            m_step[static_cast<std::size_t>(k)] = sum;
        }
        if (!m_lu.factor()) return false;
        m_lu.solve(m_step.data());
        double largest = 0;
        bool cut = false;
        for (int k = 0; k < m; ++k) {
            const double full = m_step[static_cast<std::size_t>(k)];
            if (!std::isfinite(full)) return false;
            const double step = limited(u[k], full, turnOn(r, r.ports[static_cast<std::size_t>(k)]));
            cut = cut || step != full;
            u[k] += step;
            largest = std::max(largest, std::abs(step) / (1 + std::abs(u[k])));
        }
        if (cut) continue;
        const bool atRounding = largest < 1e-9 && largest >= 0.5 * bestStep;
        if (largest < 1e-14 || atRounding) return true;
        bestStep = std::min(bestStep, largest);
    }
    return false;
}

} // namespace blinkwright::engine
