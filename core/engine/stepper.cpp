#include "core/engine/stepper.h"

#include "core/engine/rodas.h"

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

bool Stepper::enter(const Reduced& reduced) {
    m_reduced = &reduced;
    const auto m = static_cast<std::size_t>(reduced.m);
    const auto n = static_cast<std::size_t>(reduced.n);
    for (Point* p : {&m_base, &m_end, &m_stage}) {
        p->y.resize(n);
        p->u.resize(m);
        p->i.resize(m);
        p->slope.resize(m);
    }
    if (m_lamps.empty() && m_charge.empty()) {
        for (std::size_t k = 0; k < reduced.board->junctions.size(); ++k)
            if (reduced.board->junctions[k].lamp && reduced.lampPort[k] >= 0)
                m_lamps.push_back(static_cast<int>(k));
        m_charge.assign(m_lamps.size(), 0);
        m_cycleCharge.assign(m_lamps.size(), 0);
        m_lastCharge.assign(m_lamps.size(), 0);
    }
    m_guess.assign(m, 0);
    m_k.resize(rodas::stages * (n + m + m_lamps.size()));
    m_dense.resize(2 * (n + m));
    m_work.resize(std::max(n, m) + m);
    m_r.resize(n + m);
    m_column.resize(m);
    m_WA.resize(m * n);
    m_EA.resize(n * n);
    auto& remembered = m_remembered[m_reduced];
    if (remembered.size() == m)
        m_base.u = remembered;
    else
        std::fill(m_base.u.begin(), m_base.u.end(), 0.0);
    if (!solvePorts()) return false;
    remembered = m_base.u;
    return linearise();
}

/// Newton's method with cut steps; where that fails, the sources are raised from nothing in steps.
bool Stepper::solvePorts() {
    const Reduced& r = *m_reduced;
    std::vector<double> c(static_cast<std::size_t>(r.m));
    for (int k = 0; k < r.m; ++k) {
        double sum = r.a[static_cast<std::size_t>(k)];
        for (int j = 0; j < r.n; ++j)
            sum += r.A[at(k, r.n, j)] * m_base.y[static_cast<std::size_t>(j)];
        c[static_cast<std::size_t>(k)] = sum;
    }
    if (newton(c.data())) return true;
    std::fill(m_base.u.begin(), m_base.u.end(), 0.0);
    std::vector<double> scaled(c.size()), good = m_base.u;
    double reached = 0, step = 0.25;
    while (reached < 1) {
        const double share = std::min(1.0, reached + step);
        for (std::size_t k = 0; k < c.size(); ++k)
            scaled[k] = share * c[k];
        if (newton(scaled.data())) {
            reached = share;
            good = m_base.u;
            step *= 2;
        } else {
            m_base.u = good;
            step /= 4;
            if (step < 1e-7) return false;
        }
    }
    return true;
}

bool Stepper::newton(const double* c) {
    const Reduced& r = *m_reduced;
    const int m = r.m;
    constexpr int most = 80;
    double* F = m_work.data();
    double bestStep = std::numeric_limits<double>::infinity();
    for (int iteration = 0; iteration < most; ++iteration) {
        r.currents(m_base.u.data(), m_base.i.data(), m_base.slope.data(), m_guess.data());
        double* J = m_newtonLu.matrix(m);
        for (int k = 0; k < m; ++k) {
            double sum = c[k] - m_base.u[static_cast<std::size_t>(k)];
            for (int j = 0; j < m; ++j) {
                sum -= r.Z[at(k, m, j)] * m_base.i[static_cast<std::size_t>(j)];
                J[k * m + j] =
                    r.Z[at(k, m, j)] * m_base.slope[static_cast<std::size_t>(j)] + (k == j ? 1 : 0);
            }
            F[k] = sum;
        }
        if (!m_newtonLu.factor()) return false;
        m_newtonLu.solve(F);
        double largest = 0;
        bool cut = false;
        for (int k = 0; k < m; ++k) {
            double& u = m_base.u[static_cast<std::size_t>(k)];
            if (!std::isfinite(F[k])) return false;
            const double step = limited(u, F[k], turnOn(r, r.ports[static_cast<std::size_t>(k)]));
            cut = cut || step != F[k];
            u += step;
            largest = std::max(largest, std::abs(step) / (1 + std::abs(u)));
        }
        const bool rounding =
            largest < 1e-9 && largest >= 0.5 * bestStep; // no further gain: at rounding error
        if (!cut && (largest < 1e-14 || rounding)) {
            r.currents(m_base.u.data(), m_base.i.data(), m_base.slope.data(), m_guess.data());
            return true;
        }
        if (!cut) bestStep = std::min(bestStep, largest);
    }
    return false;
}

/// Factors what a step from the base needs, whatever its length.
bool Stepper::linearise() {
    const Reduced& r = *m_reduced;
    const int n = r.n, m = r.m;
    const double* g = m_base.slope.data();
    double* M = m_portLu.matrix(m);
    for (int k = 0; k < m; ++k)
        for (int j = 0; j < m; ++j)
            M[k * m + j] = r.Z[at(k, m, j)] * g[j] + (k == j ? 1 : 0);
    if (!m_portLu.factor()) return false;
    for (int column = 0; column < n; ++column) {
        for (int k = 0; k < m; ++k)
            m_column[static_cast<std::size_t>(k)] = r.A[at(k, n, column)];
        m_portLu.solve(m_column.data());
        for (int k = 0; k < m; ++k)
            m_WA[at(k, n, column)] = m_column[static_cast<std::size_t>(k)];
        for (int row = 0; row < n; ++row) {
            double sum = -r.B[at(row, n, column)];
            for (int k = 0; k < m; ++k)
                sum += r.D[at(row, m, k)] * g[k] * m_column[static_cast<std::size_t>(k)];
            m_EA[at(row, n, column)] = sum;
        }
    }
    return true;
}

void Stepper::derivative(const double* y, const double* i, double* out) const {
    const Reduced& r = *m_reduced;
    for (int row = 0; row < r.n; ++row) {
        double sum = r.b[static_cast<std::size_t>(row)];
        for (int j = 0; j < r.n; ++j)
            sum += r.B[at(row, r.n, j)] * y[j];
        for (int j = 0; j < r.m; ++j)
            sum -= r.D[at(row, r.m, j)] * i[j];
        out[row] = sum;
    }
}

double Stepper::attempt(double h) {
    const Reduced& r = *m_reduced;
    const int n = r.n, m = r.m, lamps = static_cast<int>(m_lamps.size()), width = n + m + lamps;
    m_h = h;
    const double diagonal = 1 / (h * rodas::gamma);
    double* S = m_stateLu.matrix(n);
    for (int k = 0; k < n * n; ++k)
        S[k] = m_EA[static_cast<std::size_t>(k)];
    for (int k = 0; k < n; ++k)
        S[k * n + k] += diagonal;
    if (!m_stateLu.factor()) return std::numeric_limits<double>::infinity();

    double* Y = m_stage.y.data();
    double* U = m_stage.u.data();
    for (int stage = 0; stage < rodas::stages; ++stage) {
        const double* i = m_base.i.data();
        std::copy(m_base.y.begin(), m_base.y.end(), m_stage.y.begin());
        std::copy(m_base.u.begin(), m_base.u.end(), m_stage.u.begin());
        for (int j = 0; j < stage; ++j) {
            const double w = rodas::a[stage][j];
            const double* kj = m_k.data() + j * width;
            for (int k = 0; k < n; ++k)
                Y[k] += w * kj[k];
            for (int k = 0; k < m; ++k)
                U[k] += w * kj[n + k];
        }
        if (stage > 0) {
            r.currents(U, m_stage.i.data(), m_stage.slope.data(), m_guess.data());
            i = m_stage.i.data();
        }
        double* K = m_k.data() + stage * width;
        double* ry = m_r.data();
        double* rg = m_r.data() + n;
        derivative(Y, i, ry);
        for (int j = 0; j < stage; ++j) {
            const double w = rodas::c[stage][j] / h;
            const double* kj = m_k.data() + j * width;
            for (int k = 0; k < n; ++k)
                ry[k] += w * kj[k];
        }
        for (int k = 0; k < m; ++k) {
            double sum = r.a[static_cast<std::size_t>(k)] - U[k];
            for (int j = 0; j < n; ++j)
                sum += r.A[at(k, n, j)] * Y[j];
            for (int j = 0; j < m; ++j)
                sum -= r.Z[at(k, m, j)] * i[j];
            rg[k] = sum;
        }
        m_portLu.solve(rg);
        for (int row = 0; row < n; ++row) {
            double sum = ry[row];
            for (int k = 0; k < m; ++k)
                sum -= r.D[at(row, m, k)] * m_base.slope[static_cast<std::size_t>(k)] * rg[k];
            K[row] = sum;
        }
        m_stateLu.solve(K);
        for (int k = 0; k < m; ++k) {
            double sum = rg[k];
            for (int j = 0; j < n; ++j)
                sum += m_WA[at(k, n, j)] * K[j];
            K[n + k] = sum;
        }
        for (int lamp = 0; lamp < lamps; ++lamp) {
            const int port = r.lampPort[static_cast<std::size_t>(m_lamps[static_cast<std::size_t>(lamp)])];
            const Port& p = r.ports[static_cast<std::size_t>(port)];
            const double share = 1 - p.reference * p.series;
            const double slope = (m_base.slope[static_cast<std::size_t>(port)] + p.reference) / share;
            double sum = r.junctionCurrent(port, U[port], i[port]) + slope * K[n + port];
            for (int j = 0; j < stage; ++j)
                sum += rodas::c[stage][j] / h * m_k[static_cast<std::size_t>(j * width + n + m + lamp)];
            K[n + m + lamp] = h * rodas::gamma * sum;
        }
    }

    const double* K6 = m_k.data() + (rodas::stages - 1) * width;
    double error = 0;
    for (int k = 0; k < n; ++k) {
        m_end.y[static_cast<std::size_t>(k)] = Y[k] + K6[k];
        error = std::max(error, std::abs(K6[k]) / m_tol.voltage_V);
    }
    for (int k = 0; k < m; ++k) {
        m_end.u[static_cast<std::size_t>(k)] = U[k] + K6[n + k];
        error = std::max(error, std::abs(K6[n + k]) / m_tol.port_V);
    }
    for (int lamp = 0; lamp < lamps; ++lamp) {
        const auto l = static_cast<std::size_t>(lamp);
        double charge = K6[n + m + lamp];
        for (int j = 0; j < rodas::stages - 1; ++j)
            charge +=
                rodas::a[rodas::stages - 1][j] * m_k[static_cast<std::size_t>(j * width + n + m + lamp)];
        m_lastCharge[l] = charge;
        const double dark = m_tol.darkShare *
                            r.board->junctions[static_cast<std::size_t>(m_lamps[l])].ratedCurrent *
                            (m_phaseTime + h);
        const double scale =
            std::max({std::abs(m_cycleCharge[l]), std::abs(m_charge[l]) + std::abs(charge), dark, 1e-15});
        error = std::max(error, std::abs(K6[n + m + lamp]) / (m_tol.charge * scale));
    }
    if (!std::isfinite(error)) return std::numeric_limits<double>::infinity();
    for (double v : m_end.u)
        if (!std::isfinite(v)) return std::numeric_limits<double>::infinity();
    for (double v : m_end.y)
        if (!std::isfinite(v)) return std::numeric_limits<double>::infinity();
    r.currents(m_end.u.data(), m_end.i.data(), m_end.slope.data(), m_guess.data());

    std::fill(m_dense.begin(), m_dense.end(), 0.0);
    for (int j = 0; j < rodas::stages; ++j) {
        const double* kj = m_k.data() + j * width;
        for (int k = 0; k < n + m; ++k) {
            m_dense[static_cast<std::size_t>(k)] += rodas::d1[j] * kj[k];
            m_dense[static_cast<std::size_t>(n + m + k)] += rodas::d2[j] * kj[k];
        }
    }
    return error;
}

void Stepper::accept() {
    std::swap(m_base, m_end);
    for (std::size_t k = 0; k < m_charge.size(); ++k)
        m_charge[k] += m_lastCharge[k];
    m_phaseTime += m_h;
    linearise();
}

void Stepper::newPhase() {
    for (std::size_t k = 0; k < m_charge.size(); ++k) {
        m_cycleCharge[k] = std::max(0.5 * m_cycleCharge[k], std::abs(m_charge[k]));
        m_charge[k] = 0;
    }
    m_phaseTime = 0;
}

double Stepper::speed() const {
    std::vector<double> rate(m_base.y.size());
    derivative(m_base.y.data(), m_base.i.data(), rate.data());
    double largest = 0;
    for (double v : rate)
        largest = std::max(largest, std::abs(v));
    return largest;
}

DenseStep Stepper::dense() const {
    return {m_dense.data(), m_dense.data() + m_dense.size() / 2};
}

void Stepper::inside(double share, Point& out) {
    const std::size_t n = m_base.y.size(), m = m_base.u.size();
    out.y.resize(n);
    out.u.resize(m);
    out.i.resize(m);
    out.slope.resize(m);
    const double* p = m_dense.data();
    const double* q = m_dense.data() + n + m;
    const double rest = 1 - share;
    for (std::size_t k = 0; k < n; ++k)
        out.y[k] = rest * m_base.y[k] + share * (m_end.y[k] + rest * (p[k] + share * q[k]));
    for (std::size_t k = 0; k < m; ++k)
        out.u[k] = rest * m_base.u[k] + share * (m_end.u[k] + rest * (p[n + k] + share * q[n + k]));
    m_reduced->currents(out.u.data(), out.i.data(), out.slope.data(), m_guess.data());
}

} // namespace blinkwright::engine
