#include "core/engine/exponential_step.h"

#include "core/engine/phi.h"

#include <Eigen/Dense>
#include <Eigen/Eigenvalues>

#include <algorithm>

namespace blinkwright::engine {

namespace {

using Square = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor,
                             ExponentialStep::mostStates, ExponentialStep::mostStates>;

/// Places of the parts of the dense numbers: h, y, eigenvalues, f, E3, E4, eigenvectors (rows).
struct Layout {
    explicit Layout(int states) : n(states) {}
    int n;
    int y() const { return 1; }
    int lambda() const { return 1 + n; }
    int f() const { return 1 + 2 * n; }
    int e3() const { return 1 + 3 * n; }
    int e4() const { return 1 + 4 * n; }
    int vectors() const { return 1 + 5 * n; }
};

double product(const double* row, const double* v, int n) {
    double sum = 0;
    for (int k = 0; k < n; ++k) sum += row[k] * v[k];
    return sum;
}

} // namespace

bool ExponentialStep::prepare(const ExponentialBase& base) {
    m_base = base;
    m_n = base.reduced->n;
    m_m = base.reduced->m;
    if (m_n > mostStates) return false;
    const auto n = static_cast<std::size_t>(m_n), m = static_cast<std::size_t>(m_m);
    m_dense.resize(denseSize(m_n));
    m_inverse.resize(n * n);
    m_F.resize(n);
    m_rate.resize(n);
    m_stageY.resize(n);
    m_u.resize(m);
    m_slope.resize(m);
    m_guess.resize(m);
    for (int stage = 0; stage < 2; ++stage) {
        m_c[stage].resize(n);
        m_d[stage].resize(n);
        m_i[stage].resize(m);
        m_junction[stage].resize(m);
    }
    if (!eigen()) return false;
    const Layout at(m_n);
    base.reduced->derivative(base.y, base.i, m_F.data());
    std::copy(base.y, base.y + m_n, m_dense.data() + at.y());
    for (int k = 0; k < m_n; ++k)
        m_dense[static_cast<std::size_t>(at.f() + k)] = product(m_inverse.data() + k * m_n, m_F.data(), m_n);
    return true;
}

/// Eigenvectors of J, through C^(1/2) J C^(-1/2), which is symmetric but for the timer's inputs.
bool ExponentialStep::eigen() {
    const int n = m_n;
    if (n == 0) return true;
    const auto& capacitors = m_base.reduced->board->capacitors;
    double root[mostStates];
    for (int k = 0; k < n; ++k) root[k] = std::sqrt(capacitors[static_cast<std::size_t>(k)].capacitance);
    Square S(n, n);
    double largest = 0, skew = 0;
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < n; ++c) S(r, c) = m_base.jacobian[r * n + c] * root[r] / root[c];
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < r; ++c) {
            largest = std::max({largest, std::abs(S(r, c)), std::abs(S(c, r))});
            skew = std::max(skew, std::abs(S(r, c) - S(c, r)));
        }
    if (!S.allFinite()) return false;
    const Layout at(n);
    double* lambda = m_dense.data() + at.lambda();
    Square vectors(n, n), inverse(n, n);
    if (n == 1) {
        lambda[0] = S(0, 0);
        vectors(0, 0) = inverse(0, 0) = 1;
    } else if (skew <= 1e-13 * largest) {
        const Eigen::SelfAdjointEigenSolver<Square> solver(S);
        if (solver.info() != Eigen::Success) return false;
        for (int k = 0; k < n; ++k) lambda[k] = solver.eigenvalues()(k);
        vectors = solver.eigenvectors();
        inverse = vectors.transpose();
    } else {
        const Eigen::EigenSolver<Square> solver(S);
        if (solver.info() != Eigen::Success) return false;
        for (int k = 0; k < n; ++k) {
            if (solver.eigenvalues()(k).imag() != 0) return false;
            lambda[k] = solver.eigenvalues()(k).real();
        }
        vectors = solver.pseudoEigenvectors();
        const Eigen::PartialPivLU<Square> lu(vectors);
        if (!(lu.rcond() > 1e-6)) return false;
        inverse = lu.inverse();
    }
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < n; ++c) {
            m_dense[static_cast<std::size_t>(at.vectors() + r * n + c)] = vectors(r, c) / root[r];
            m_inverse[static_cast<std::size_t>(r * n + c)] = inverse(r, c) * root[c];
        }
    return true;
}

/// Port currents at a stage's capacitor voltages and, from them, its D.
bool ExponentialStep::solve(const double* y, int stage) {
    const Reduced& r = *m_base.reduced;
    double moved[mostStates];
    for (int k = 0; k < m_n; ++k) moved[k] = y[k] - m_base.y[k];
    for (int k = 0; k < m_m; ++k)
        m_u[static_cast<std::size_t>(k)] = m_base.u[k] + product(m_base.portByState + k * m_n, moved, m_n);
    auto& i = m_i[stage];
    if (!m_ports.solve(r, y, m_u.data(), i.data(), m_slope.data(), m_guess.data(), &m_base.inverse))
        return false;
    for (const int port : r.lampPort)
        if (port >= 0)
            m_junction[stage][static_cast<std::size_t>(port)] = r.junctionCurrent(
                port, m_u[static_cast<std::size_t>(port)], i[static_cast<std::size_t>(port)]);
    r.derivative(y, i.data(), m_rate.data());
    for (int k = 0; k < m_n; ++k) m_rate[static_cast<std::size_t>(k)] -= m_F[static_cast<std::size_t>(k)];
    const double* lambda = m_dense.data() + Layout(m_n).lambda();
    for (int k = 0; k < m_n; ++k)
        m_d[stage][static_cast<std::size_t>(k)] = product(m_inverse.data() + k * m_n, m_rate.data(), m_n) -
                                                  lambda[k] * m_c[stage][static_cast<std::size_t>(k)];
    return true;
}

bool ExponentialStep::attempt(double h, double* y, double* error) {
    m_h = h;
    const int n = m_n;
    const Layout at(n);
    double* dense = m_dense.data();
    dense[0] = h;
    const double* lambda = dense + at.lambda();
    const double* f = dense + at.f();
    const double* vectors = dense + at.vectors();
    double* y2 = m_stageY.data();

    for (int k = 0; k < n; ++k)
        m_c[0][static_cast<std::size_t>(k)] = 0.5 * h * phi1(0.5 * h * lambda[k]) * f[k];
    for (int k = 0; k < n; ++k) y2[k] = m_base.y[k] + product(vectors + k * n, m_c[0].data(), n);
    if (!solve(y2, 0)) return false;
    for (int k = 0; k < n; ++k)
        m_c[1][static_cast<std::size_t>(k)] =
            h * phi1(h * lambda[k]) * (f[k] + m_d[0][static_cast<std::size_t>(k)]);
    for (int k = 0; k < n; ++k) y2[k] = m_base.y[k] + product(vectors + k * n, m_c[1].data(), n);
    if (!solve(y2, 1)) return false;

    double end[mostStates], missed[mostStates];
    for (int k = 0; k < n; ++k) {
        const double d2 = m_d[0][static_cast<std::size_t>(k)], d3 = m_d[1][static_cast<std::size_t>(k)];
        const double e3 = 16 * d2 - 2 * d3, e4 = -48 * d2 + 12 * d3;
        dense[at.e3() + k] = e3;
        dense[at.e4() + k] = e4;
        const auto phi = phiFunctions(h * lambda[k]);
        missed[k] = h * phi[4] * e4;
        end[k] = h * (phi[1] * f[k] + phi[3] * e3) + missed[k];
    }
    for (int k = 0; k < n; ++k) {
        y[k] = m_base.y[k] + product(vectors + k * n, end, n);
        error[k] = product(vectors + k * n, missed, n);
    }
    return true;
}

Charge ExponentialStep::charge(int junction, double slope) const {
    const Reduced& r = *m_base.reduced;
    const int port = r.lampPort[static_cast<std::size_t>(junction)];
    const int n = m_n;
    const Layout at(n);
    const double* dense = m_dense.data();
    const double* byState = m_base.portByState + port * n;
    const auto current = [&](double i, double u) { return r.junctionCurrent(port, u, i); };
    const double start = current(m_base.i[port], m_base.u[port]);
    // The current as far as it is linear in y, integrated exactly; what is left by the same cubic as D.
    double linear = 0, linearError = 0, left[2];
    for (int stage = 0; stage < 2; ++stage)
        left[stage] = m_junction[stage][static_cast<std::size_t>(port)] - start;
    for (int k = 0; k < n; ++k) {
        double weight = 0;
        for (int j = 0; j < n; ++j) weight += byState[j] * dense[at.vectors() + j * n + k];
        weight *= slope;
        const auto phi = phiFunctions(m_h * dense[at.lambda() + k]);
        const double last = phi[5] * dense[at.e4() + k];
        linear += weight * (phi[2] * dense[at.f() + k] + phi[4] * dense[at.e3() + k] + last);
        linearError += weight * last;
        for (int stage = 0; stage < 2; ++stage)
            left[stage] -= weight * m_c[stage][static_cast<std::size_t>(k)];
    }
    return {m_h * start + m_h * m_h * linear + m_h * (2.0 / 3 * left[0] + left[1] / 6),
            m_h * m_h * linearError + m_h * (0.5 * left[1] - 2 * left[0])};
}

void ExponentialStep::evaluate(const double* dense, int n, double t, double* y) {
    const Layout at(n);
    const double share = t / dense[0];
    double c[mostStates];
    for (int k = 0; k < n; ++k) {
        const auto phi = phiFunctions(t * dense[at.lambda() + k]);
        c[k] = t * (phi[1] * dense[at.f() + k] +
                    share * share * (phi[3] * dense[at.e3() + k] + share * phi[4] * dense[at.e4() + k]));
    }
    for (int k = 0; k < n; ++k) y[k] = dense[at.y() + k] + product(dense + at.vectors() + k * n, c, n);
}

} // namespace blinkwright::engine
