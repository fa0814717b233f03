#include "tests/reference/consistent.h"

#include <sundials/sundials_dense.h>

#include <type_traits>

namespace blinkwright::reference {

static_assert(std::is_same_v<sunindextype, std::int64_t> && std::is_same_v<realtype, double>);

ConsistentValues::ConsistentValues(const Layout& layout)
    : m_algebraic(layout.algebraic), m_size(layout.size) {
    const auto n = static_cast<std::size_t>(m_size);
    m_jacobian.resize(n * n);
    for (auto* v : {&m_residual, &m_zero, &m_try, &m_good}) v->assign(n, 0);
    m_pivots.resize(n);
    for (int k = 0; k < m_size; ++k) m_columns.push_back(m_jacobian.data() + k * m_size);
}

/// Factors the algebraic block. The differential columns of the matrix stay as they are.
bool ConsistentValues::factor(const Equations& equations, const double* y) {
    equations.jacobian(y, 0, m_jacobian.data());
    return SUNDlsMat_denseGETRF(m_columns.data(), m_algebraic, m_algebraic, m_pivots.data()) == 0;
}

void ConsistentValues::substitute(double* right) {
    SUNDlsMat_denseGETRS(m_columns.data(), m_algebraic, m_pivots.data(), right);
}

bool ConsistentValues::newton(const Equations& equations, double drive, double* y) {
    double last = std::numeric_limits<double>::infinity();
    for (int iteration = 0; iteration < 80; ++iteration) {
        equations.residual(y, m_zero.data(), drive, m_residual.data());
        if (!factor(equations, y)) return false;
        substitute(m_residual.data());
        double worst = 0;
        for (int k = 0; k < m_algebraic; ++k) {
            double step = -m_residual[static_cast<std::size_t>(k)];
            if (!std::isfinite(step)) return false;
            // Up an exponential a tangent leads much too far: go as far as its logarithm would.
            const double reach = equations.reach()[static_cast<std::size_t>(k)];
            if (step > reach) step = reach * std::log1p(step / reach);
            y[k] += step;
            worst = std::max(worst, std::abs(step) / (1e-3 + std::abs(y[k])));
        }
        // Quadratic: what is left after a step of 1e-8 is below rounding, and so is one that has stopped
        // shrinking.
        if (worst < 1e-12 || (worst < 1e-8 && worst >= 0.5 * last)) return true;
        last = worst;
    }
    return false;
}

bool ConsistentValues::raise(const Equations& equations, double* y) {
    std::fill(m_good.begin(), m_good.end(), 0.0);
    double reached = 0, step = 1.0 / 16;
    while (reached < 1) {
        const double drive = std::min(1.0, reached + step);
        m_try = m_good;
        for (int k = m_algebraic; k < m_size; ++k) m_try[static_cast<std::size_t>(k)] = drive * y[k];
        if (newton(equations, drive, m_try.data())) {
            m_good = m_try;
            reached = drive;
            step *= 2;
        } else if ((step *= 0.25) < 1e-9) {
            return false;
        }
    }
    std::copy(m_good.begin(), m_good.begin() + m_algebraic, y);
    return true;
}

bool ConsistentValues::solve(const Equations& equations, double* y, double* yp) {
    std::copy(y, y + m_size, m_try.begin());
    if (newton(equations, 1, m_try.data()))
        std::copy(m_try.begin(), m_try.begin() + m_algebraic, y);
    else if (!raise(equations, y))
        return false;
    // F_v + v' = 0 in the differential rows; then F_z z' = -F_v v' in the algebraic ones.
    equations.residual(y, m_zero.data(), 1, m_residual.data());
    for (int k = m_algebraic; k < m_size; ++k) yp[k] = -m_residual[static_cast<std::size_t>(k)];
    if (!factor(equations, y)) return false;
    for (int row = 0; row < m_algebraic; ++row) {
        double sum = 0;
        for (int k = m_algebraic; k < m_size; ++k)
            sum -= m_jacobian[static_cast<std::size_t>(k * m_size + row)] * yp[k];
        yp[row] = sum;
    }
    substitute(yp);
    return true;
}

} // namespace blinkwright::reference
