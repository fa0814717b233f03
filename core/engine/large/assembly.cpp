#include "core/engine/large/assembly.h"

#include "core/engine/dense_solve.h"
#include "core/engine/large/phi_functions.h"
#include "core/engine/large/rows.h"

#include <Eigen/Dense>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

namespace {

/// A block without a plan is solved anew where a border has moved by more than the radius of its last plan
/// and by more than this [V].
constexpr double mostUnplanned_V = 0.05;
constexpr double mostStep_V = 30; // of the borders in one iteration

bool isBorderCapacitor(const Partition& partition, const Piece& piece) {
    if (piece.states() == 0 || !piece.timers.empty() || !piece.junctions.empty()) return false;
    return std::all_of(piece.nodes.begin(), piece.nodes.end(), [&](devices::Node node) {
        return node == 0 ||
               std::find(partition.borders.begin(), partition.borders.end(), node) != partition.borders.end();
    });
}

} // namespace

Assembly::Assembly(Partition partition, const BlockTolerances& tolerances)
    : m_tol(tolerances), m_borderNodes(partition.borders), m_r(static_cast<int>(partition.borders.size())) {
    std::vector<int> across;
    m_blocks.reserve(partition.pieces.size());
    for (auto& piece : partition.pieces) {
        const bool fast = isBorderCapacitor(partition, piece);
        m_blocks.emplace_back(std::move(piece));
        const Block& block = m_blocks.back();
        m_first.push_back(m_M);
        if (fast)
            for (int k = 0; k < block.states(); ++k) across.push_back(m_M + k);
        m_M += block.states();
        m_firstLink.push_back(static_cast<int>(m_links.size()));
        m_firstOwn.push_back(static_cast<int>(m_own.size()));
        for (const int border : block.piece().borders)
            m_links.push_back({.border = border, .block = blocks() - 1});
        m_own.resize(m_own.size() + at(block.borders() * block.borders()));
    }
    if (across.size() <= mostFast) m_fastModes = across;
    m_fastShare.resize(m_fastModes.size());
    m_stale.assign(m_blocks.size(), fine);
    m_based.assign(m_blocks.size(), 0);
    m_until.assign(m_blocks.size(), 0);
    m_planned.assign(m_blocks.size(), 0);
    for (auto* v : {&m_lambda, &m_z, &m_force, &m_c2, &m_c3, &m_begin, &m_zEnd, &m_r1, &m_r2})
        v->assign(at(m_M), 0);
    m_phi.assign(at(5 * m_M), 0);
    m_byBorder.assign(at(m_r * m_M), 0);
    m_draw.assign(at(m_r * m_M), 0);
    m_conductance.assign(at(m_r * m_r), 0);
    m_matrix.assign(at(4 * m_r * m_r), 0);
    for (auto* v : {&m_V, &m_VEnd, &m_VSome, &m_some, &m_last, &m_diagonal}) v->assign(at(m_r), 0);
    m_right.assign(at(2 * m_r), 0);
    for (auto* v : {&m_curve.p0, &m_curve.p1, &m_curve.p2, &m_fast.p0, &m_fast.p1, &m_fast.p2})
        v->assign(at(m_r), 0);
}

void Assembly::powerOn() {
    m_start.clear();
    for (const Block& block : m_blocks) {
        std::vector<double> y;
        y.reserve(at(block.states()));
        for (int k = 0; k < block.states(); ++k)
            y.push_back(block.piece().board.capacitors[at(k)].initialVoltage);
        m_start.push_back(std::move(y));
    }
    m_time = 0;
    std::fill(m_V.begin(), m_V.end(), 0.0);
    std::fill(m_diagonal.begin(), m_diagonal.end(), 1.0);
    m_reset = true;
}

void Assembly::configure(int block, const std::vector<bool>& switches, const std::vector<bool>& outputs) {
    m_settled = false;
    m_blocks[at(block)].configure(switches, outputs);
    stale(block, worn);
}

void Assembly::capacitorVoltages(int block, const double* z, double* y) const {
    const Block& b = m_blocks[at(block)];
    const int n = b.states();
    const double* vectors = b.modes().vectors.data();
    for (int k = 0; k < n; ++k) {
        y[k] = b.base()[k];
        for (int j = 0; j < n; ++j) y[k] += vectors[k * n + j] * z[j];
    }
}

/// Copies what the steps need of a block's base.
void Assembly::load(int k) {
    const Block& b = m_blocks[at(k)];
    const ModeSet& modes = b.modes();
    const int n = b.states(), r = b.borders();
    const double* v = b.base() + n;
    for (int j = 0; j < n; ++j) {
        const std::size_t m = at(m_first[at(k)] + j);
        m_lambda[m] = modes.lambda[at(j)];
        m_z[m] = b.entry()[j];
        m_c2[m] = modes.c2[at(j)];
        m_c3[m] = modes.c3[at(j)];
        m_begin[m] = b.begin_s();
        double force = modes.force[at(j)];
        for (int p = 0; p < r; ++p) {
            const double by = modes.byBorder[at(j * r + p)];
            force -= by * v[p];
            m_byBorder[at(b.piece().borders[at(p)] * m_M) + m] = by;
            m_draw[at(b.piece().borders[at(p)] * m_M) + m] = b.rowByMode()[p * n + j];
        }
        m_force[m] = force;
    }
    const bool planned = m_planned[at(k)] != 0;
    const double radius = b.isLinear() ? never
                          : planned    ? b.radius_V()
                                       : std::clamp(b.lastRadius_V(), 2e-6, mostUnplanned_V);
    for (int p = 0; p < r; ++p) {
        Link& link = m_links[at(m_firstLink[at(k)] + p)];
        link.base = v[p];
        link.radius = radius;
        link.constant = b.rowValue()[p];
        link.c2 = b.rowC2()[p];
        link.c3 = b.rowC3()[p];
        link.begin_s = b.begin_s();
        for (int q = 0; q < r; ++q) {
            const double own = b.rowByBorder()[p * r + q];
            link.constant -= own * v[q];
            double& kept = m_own[at(m_firstOwn[at(k)] + p * r + q)];
            m_conductance[at(link.border * m_r + b.piece().borders[at(q)])] += own - kept;
            kept = own;
        }
    }
    m_based[at(k)] = m_time;
    m_until[at(k)] = planned ? b.begin_s() + b.span_s() : m_time;
    if (++m_changes > 500) addUp(); // rounding does not pile up
}

/// The conductances of all blocks together.
void Assembly::addUp() {
    m_changes = 0;
    std::fill(m_conductance.begin(), m_conductance.end(), 0.0);
    for (std::size_t k = 0; k < m_blocks.size(); ++k) {
        const int r = m_blocks[k].borders();
        const Link* links = m_links.data() + m_firstLink[k];
        const double* own = m_own.data() + m_firstOwn[k];
        for (int p = 0; p < r; ++p)
            for (int q = 0; q < r; ++q)
                m_conductance[at(links[p].border * m_r + links[q].border)] += own[p * r + q];
    }
}

/// The border voltages of this instant, from the blocks as they are linearised.
bool Assembly::balance() {
    for (int b = 0; b < m_r; ++b)
        m_diagonal[at(b)] = std::max(std::abs(m_conductance[at(b * m_r + b)]), 1e-12);
    std::fill(m_right.begin(), m_right.end(), 0.0);
    for (const Link& link : m_links) {
        const double s = m_time - link.begin_s;
        m_right[at(link.border)] -= link.constant + s * s * (link.c2 + s * link.c3);
    }
    for (int b = 0; b < m_r; ++b) {
        const double* draw = m_draw.data() + b * m_M;
        double sum = 0;
        for (int j = 0; j < m_M; ++j) sum += draw[j] * m_z[at(j)];
        m_right[at(b)] -= sum;
    }
    std::copy(m_conductance.begin(), m_conductance.end(), m_matrix.begin());
    std::copy(m_right.begin(), m_right.begin() + m_r, m_VSome.begin());
    if (m_r > 0 && !solveDense(m_matrix.data(), m_VSome.data(), m_r)) return false;
    return std::all_of(m_VSome.begin(), m_VSome.end(), [](double v) { return std::isfinite(v); });
}

bool Assembly::settle() {
    m_settled = true;
    const auto rebase = [&](int k, const double* V) {
        Block& b = m_blocks[at(k)];
        const int first = m_first[at(k)];
        double y[12];
        if (!m_reset) capacitorVoltages(k, m_z.data() + first, y);
        const bool mustSolve = m_stale[at(k)] == mustBeSolved;
        m_stale[at(k)] = fine;
        m_planned[at(k)] = 0;
        double v[8];
        for (int p = 0; p < b.borders(); ++p) v[p] = V[b.piece().borders[at(p)]];
        if (!m_reset && !mustSolve && b.adopt(y, v, m_time, m_wish_s)) {
            m_planned[at(k)] = 1;
            load(k);
            if (onBase) onBase(k);
            return true;
        }
        if (!b.solve(m_reset ? m_start[at(k)].data() : y, v)) return false;
        load(k);
        m_unplanned.push_back(k);
        return true;
    };
    constexpr int most = 200;
    std::vector<double>& V = m_V;
    m_before = V;
    m_unplanned.clear();
    for (const int k : m_staleBlocks)
        if (m_stale[at(k)] != fine && !rebase(k, V.data())) return false;
    m_staleBlocks.clear();
    m_reset = false;
    // Newton's method on the borders' balance. Steps that turn back and forth, as where a law bends sharply,
    // are taken by a smaller and smaller share.
    double share = 1;
    std::fill(m_last.begin(), m_last.end(), 0.0);
    bool done = false;
    for (int iteration = 0; iteration < most && !done; ++iteration) {
        if (!balance()) return false;
        double forth = 0, back = 0;
        for (int b = 0; b < m_r; ++b) {
            const double step = std::clamp(m_VSome[at(b)] - V[at(b)], -mostStep_V, mostStep_V);
            forth += m_last[at(b)] * m_last[at(b)];
            back -= step * m_last[at(b)];
            m_last[at(b)] = step;
        }
        share = back > 0.5 * forth ? 0.5 * share : std::min(1.0, 1.4 * share);
        bool again = false;
        for (int b = 0; b < m_r; ++b) {
            V[at(b)] += share * m_last[at(b)];
            again = again || std::abs(V[at(b)] - m_VSome[at(b)]) > 1e-9 * (1 + std::abs(V[at(b)]));
        }
        bool moved = false;
        for (const Link& link : m_links) {
            // Half the radius is left for the step to come.
            if (!(std::abs(V[at(link.border)] - link.base) > 0.5 * link.radius)) continue;
            if (!rebase(link.block, V.data())) return false;
            moved = true;
        }
        if (moved || again) continue;
        done = m_unplanned.empty();
        if (done) break;
        double drift = m_drift;
        findFast();
        for (std::size_t j = 0; j < m_fast.amplitude.size(); ++j)
            drift = std::max(drift, std::abs(m_fast.amplitude[j] * m_fast.rate[j / at(m_r)]));
        for (const int k : m_unplanned) {
            if (m_planned[at(k)]) continue;
            if (!m_blocks[at(k)].plan(m_tol, m_time, m_diagonal.data(), drift)) return false;
            m_planned[at(k)] = 1;
            load(k);
            if (onBase) onBase(k);
        }
        m_unplanned.clear();
    }
    findFast();
    for (int b = 0; b < m_r; ++b) m_variation += std::abs(V[at(b)] - m_before[at(b)]);
    return done;
}

/// The exponentials that the capacitors across the borders bring about: the eigenvalues of their own
/// equations with the borders' balance solved in, and how much of each there is now.
void Assembly::findFast() {
    const int count = static_cast<int>(m_fastModes.size()), r = m_r;
    m_fast.rate.assign(at(count), 0.0);
    m_fast.amplitude.assign(at(count * r), 0.0);
    if (count == 0) return;
    Eigen::MatrixXd Y(r, r), Q(r, count), F(count, r);
    Eigen::VectorXd rate(count);
    for (int a = 0; a < r; ++a)
        for (int b = 0; b < r; ++b) Y(a, b) = m_conductance[at(a * r + b)];
    for (int j = 0; j < count; ++j) {
        const std::size_t mode = at(m_fastModes[at(j)]);
        rate(j) = m_lambda[mode] * m_z[mode] + m_force[mode];
        for (int b = 0; b < r; ++b) {
            Q(b, j) = m_draw[at(b * m_M) + mode];
            F(j, b) = m_byBorder[at(b * m_M) + mode];
            rate(j) += F(j, b) * m_V[at(b)];
        }
    }
    const Eigen::MatrixXd byState = -Y.partialPivLu().solve(Q); // of the border voltages
    Eigen::MatrixXd J = F * byState;
    for (int j = 0; j < count; ++j) J(j, j) += m_lambda[at(m_fastModes[at(j)])];
    Eigen::VectorXd left = rate;
    const Eigen::EigenSolver<Eigen::MatrixXd> solver(J);
    if (J.allFinite() && solver.info() == Eigen::Success &&
        (solver.eigenvalues().imag().array() == 0).all()) {
        const Eigen::MatrixXd& vectors = solver.pseudoEigenvectors();
        const Eigen::VectorXd parts = vectors.partialPivLu().solve(rate);
        for (int j = 0; j < count; ++j) {
            const double lambda = solver.eigenvalues()(j).real();
            if (!(lambda < 0) || !std::isfinite(parts(j))) continue;
            m_fast.rate[at(j)] = lambda;
            left -= vectors.col(j) * parts(j);
            const Eigen::VectorXd volts = byState * vectors.col(j) * (parts(j) / lambda);
            for (int b = 0; b < r; ++b) m_fast.amplitude[at(j * r + b)] = volts(b);
        }
    }
    for (int j = 0; j < count; ++j) m_fastShare[at(j)] = left(j);
}

} // namespace blinkwright::engine::large
