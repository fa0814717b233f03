#include "core/engine/large/assembly.h"

#include "core/engine/dense_solve.h"
#include "core/engine/large/phi_functions.h"

#include <Eigen/Dense>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
constexpr std::size_t mostFast = 3;
/// A block without a plan is solved anew where a border has moved by more than the radius of its last plan
/// and by more than this [V].
constexpr double mostUnplanned_V = 0.05;
constexpr double mostStep_V = 30; // of the borders in one iteration

std::size_t at(int k) {
    return static_cast<std::size_t>(k);
}

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
        const Eigen::MatrixXd vectors = solver.pseudoEigenvectors();
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

bool Assembly::reach(double wish_s, double& most_s) {
    m_wish_s = wish_s;
    for (int k = 0; k < blocks(); ++k)
        if (m_until[at(k)] < m_time + wish_s && m_based[at(k)] < m_time) stale(k, worn);
    if (!m_settled && !settle()) return false;
    most_s = never;
    for (const double until : m_until) most_s = std::min(most_s, until - m_time);
    return true;
}

/// Where the modes come to at the middle and the end of a step of length h with the borders as at its begin,
/// how they answer to the parabola's terms, and the sums of both that the borders' balance asks for.
void Assembly::answerToAll(double h, const double* expA, const double* expH, const bool* apart) {
    const int r = m_r, M = m_M, size = 2 * r, exps = static_cast<int>(m_curve.rate.size());
    const double a = 0.5 * h;
    for (int j = 0; j < M; ++j) {
        const std::size_t m = at(j);
        const double lambda = m_lambda[m], s0 = m_time - m_begin[m], z = m_z[m];
        const double c2 = m_c2[m], c3 = m_c3[m];
        double g0 = m_force[m] + s0 * s0 * (c2 + s0 * c3);
        const double g1 = s0 * (2 * c2 + 3 * c3 * s0), g2 = c2 + 3 * c3 * s0;
        for (int b = 0; b < r; ++b) g0 += m_byBorder[at(b * M) + m] * m_curve.p0[at(b)];
        const Phi half = phiOf(lambda * a), full = doubled(half);
        double zA = half.k0 * z +
                    a * (half.k1 * g0 + a * (half.k2 * g1 + a * (2 * half.k3 * g2 + a * 6 * half.k4 * c3)));
        double zH = full.k0 * z +
                    h * (full.k1 * g0 + h * (full.k2 * g1 + h * (2 * full.k3 * g2 + h * 6 * full.k4 * c3)));
        double rate = lambda * z + g0;
        for (int e = 0; e < exps; ++e) {
            double force = 0;
            for (int b = 0; b < r; ++b) force += m_byBorder[at(b * M) + m] * m_curve.amplitude[at(e * r + b)];
            zA += force * answer(m_curve.rate[at(e)], lambda, expA[e], half.k0, a);
            zH += force * answer(m_curve.rate[at(e)], lambda, expH[e], full.k0, h);
            rate += force;
        }
        m_zEnd[m] = zH;
        const double a1 = a * a * half.k2, a2 = 2 * a * a * a * half.k3;
        m_r1[m] = h * h * full.k2;
        m_r2[m] = 2 * h * h * h * full.k3;
        for (std::size_t f = 0; f < m_fastModes.size(); ++f)
            if (m_fastModes[f] == j && apart[f]) rate = m_fastShare[f];
        const double fast = 0.1 * lambda * h; // what is over within the step counts by its size, not its rate
        rate /= 1 + fast * fast;
        for (int b = 0; b < r; ++b) {
            const double draw = m_draw[at(b * M) + m];
            if (draw == 0) continue;
            m_right[at(b)] -= draw * zA;
            m_right[at(r + b)] -= draw * zH;
            m_some[at(b)] += draw * rate;
            for (int q = 0; q < r; ++q) {
                const double by = draw * m_byBorder[at(q * M) + m];
                m_matrix[at(b * size + q)] += by * a1;
                m_matrix[at(b * size + r + q)] += by * a2;
                m_matrix[at((r + b) * size + q)] += by * m_r1[m];
                m_matrix[at((r + b) * size + r + q)] += by * m_r2[m];
            }
        }
    }
}

/// The same for one border without exponentials, in loops that the compiler can turn into vector
/// instructions.
void Assembly::answerToOne(double h) {
    const int M = m_M;
    const double a = 0.5 * h, p0 = m_curve.p0[0], time = m_time;
    const double* __restrict lambdas = m_lambda.data();
    const double* __restrict zs = m_z.data();
    const double* __restrict c2s = m_c2.data();
    const double* __restrict c3s = m_c3.data();
    const double* __restrict begins = m_begin.data();
    const double* __restrict forces = m_force.data();
    const double* __restrict bys = m_byBorder.data();
    const double* __restrict draws = m_draw.data();
    double* __restrict zEnd = m_zEnd.data();
    double* __restrict r1 = m_r1.data();
    double* __restrict r2 = m_r2.data();
    double* __restrict k = m_phi.data();
    double* __restrict k1 = k + M;
    double* __restrict k2 = k1 + M;
    double* __restrict k3 = k2 + M;
    double* __restrict k4 = k3 + M;
    for (int j = 0; j < M; ++j) {
        const Phi p = smallPhi(lambdas[j] * a);
        k[j] = p.k0;
        k1[j] = p.k1;
        k2[j] = p.k2;
        k3[j] = p.k3;
        k4[j] = p.k4;
    }
    for (int j = 0; j < M; ++j) {
        if (std::abs(lambdas[j] * a) < Phi::smallest) continue;
        const Phi p = phiOf(lambdas[j] * a);
        k[j] = p.k0;
        k1[j] = p.k1;
        k2[j] = p.k2;
        k3[j] = p.k3;
        k4[j] = p.k4;
    }
    double sums[7] = {};
    for (int j = 0; j < M; ++j) {
        const double lambda = lambdas[j], s0 = time - begins[j], z = zs[j], c2 = c2s[j], c3 = c3s[j];
        const double g0 = forces[j] + s0 * s0 * (c2 + s0 * c3) + bys[j] * p0;
        const double g1 = s0 * (2 * c2 + 3 * c3 * s0), g2 = 2 * (c2 + 3 * c3 * s0), g3 = 6 * c3;
        const Phi half{k[j], k1[j], k2[j], k3[j], k4[j]}, full = doubled(half);
        const double zA =
            half.k0 * z + a * (half.k1 * g0 + a * (half.k2 * g1 + a * (half.k3 * g2 + a * half.k4 * g3)));
        const double zH =
            full.k0 * z + h * (full.k1 * g0 + h * (full.k2 * g1 + h * (full.k3 * g2 + h * full.k4 * g3)));
        const double fast = 0.1 * lambda * h;
        zEnd[j] = zH;
        r1[j] = h * h * full.k2;
        r2[j] = 2 * h * h * h * full.k3;
        const double draw = draws[j], by = draw * bys[j];
        sums[0] += draw * zA;
        sums[1] += draw * zH;
        sums[2] += draw * (lambda * z + g0) / (1 + fast * fast);
        sums[3] += by * half.k2;
        sums[4] += by * half.k3;
        sums[5] += by * r1[j];
        sums[6] += by * r2[j];
    }
    m_right[0] -= sums[0];
    m_right[1] -= sums[1];
    m_some[0] += sums[2];
    m_matrix[0] += sums[3] * a * a;
    m_matrix[1] += sums[4] * 2 * a * a * a;
    m_matrix[2] += sums[5];
    m_matrix[3] += sums[6];
}

double Assembly::attempt(double h) {
    const int r = m_r, M = m_M;
    const double a = 0.5 * h;
    m_h = h;
    // Exponentials too slow to tell from a parabola stay in it.
    m_curve.rate.clear();
    m_curve.amplitude.clear();
    double expA[mostFast], expH[mostFast];
    bool apart[mostFast] = {};
    for (std::size_t j = 0; j < m_fast.rate.size(); ++j) {
        apart[j] = m_fast.rate[j] * h < -0.05;
        if (!apart[j]) continue;
        const std::size_t e = m_curve.rate.size();
        m_curve.rate.push_back(m_fast.rate[j]);
        expA[e] = std::exp(m_fast.rate[j] * a);
        expH[e] = expA[e] * expA[e];
        for (int b = 0; b < r; ++b) m_curve.amplitude.push_back(m_fast.amplitude[j * at(r) + at(b)]);
    }
    const int exps = static_cast<int>(m_curve.rate.size());
    for (int b = 0; b < r; ++b) {
        double p0 = m_V[at(b)];
        for (int e = 0; e < exps; ++e) p0 -= m_curve.amplitude[at(e * r + b)];
        m_curve.p0[at(b)] = p0;
        m_curve.p1[at(b)] = m_curve.p2[at(b)] = 0;
    }

    std::fill(m_right.begin(), m_right.end(), 0.0);
    std::fill(m_matrix.begin(), m_matrix.end(), 0.0);
    std::fill(m_some.begin(), m_some.end(),
              0.0); // rate of what the blocks draw, at the begin, the fast damped
    const int size = 2 * r;
    if (r == 1 && exps == 0)
        answerToOne(h);
    else
        answerToAll(h, expA, expH, apart);
    if (r == 0) return 0;
    for (const Link& link : m_links) {
        const double s0 = m_time - link.begin_s, sA = s0 + a, sH = s0 + h;
        m_right[at(link.border)] -= link.constant + sA * sA * (link.c2 + sA * link.c3);
        m_right[at(r + link.border)] -= link.constant + sH * sH * (link.c2 + sH * link.c3);
        m_some[at(link.border)] += s0 * (2 * link.c2 + 3 * s0 * link.c3);
    }
    for (int b = 0; b < r; ++b)
        for (int q = 0; q < r; ++q) {
            const double Y = m_conductance[at(b * r + q)];
            double vA = m_curve.p0[at(q)], vH = vA;
            for (int e = 0; e < exps; ++e) {
                vA += m_curve.amplitude[at(e * r + q)] * expA[e];
                vH += m_curve.amplitude[at(e * r + q)] * expH[e];
            }
            m_right[at(b)] -= Y * vA;
            m_right[at(r + b)] -= Y * vH;
            m_matrix[at(b * size + q)] += Y * a;
            m_matrix[at(b * size + r + q)] += Y * a * a;
            m_matrix[at((r + b) * size + q)] += Y * h;
            m_matrix[at((r + b) * size + r + q)] += Y * h * h;
        }
    // Unknowns in volt, so that the matrix is well scaled.
    for (int row = 0; row < size; ++row)
        for (int q = 0; q < r; ++q) {
            m_matrix[at(row * size + q)] /= h;
            m_matrix[at(row * size + r + q)] /= h * h;
        }
    if (!solveDense(m_matrix.data(), m_right.data(), size)) return never;
    for (int b = 0; b < r; ++b) {
        m_curve.p1[at(b)] = m_right[at(b)] / h;
        m_curve.p2[at(b)] = m_right[at(r + b)] / (h * h);
        if (!std::isfinite(m_curve.p1[at(b)]) || !std::isfinite(m_curve.p2[at(b)])) return never;
        m_VEnd[at(b)] = m_curve.at(b, h);
    }
    for (int b = 0; b < r; ++b) {
        const double* by = m_byBorder.data() + b * M;
        const double p1 = m_curve.p1[at(b)], p2 = m_curve.p2[at(b)];
        for (int j = 0; j < M; ++j) m_zEnd[at(j)] += by[j] * (p1 * m_r1[at(j)] + p2 * m_r2[at(j)]);
    }
    // A parabola through begin, middle and end is off by d s (s - h/2) (s - h) / 6, d the third derivative:
    // its slope at the begin by d h^2 / 12, and itself at most by a tenth of h times that.
    std::copy(m_conductance.begin(), m_conductance.end(), m_matrix.begin());
    if (!solveDense(m_matrix.data(), m_some.data(), r)) return never;
    double worst = 0;
    for (int b = 0; b < r; ++b)
        worst = std::max(worst, 0.1 * h * std::abs(-m_some[at(b)] - m_curve.p1[at(b)]));
    return worst / (0.25 * m_tol.voltage_V); // there are many steps to a flash
}

double Assembly::excursion() {
    double worst = 0;
    m_attemptVariation = 0;
    for (int b = 0; b < m_r; ++b) {
        const double half = m_VSome[at(b)] = m_curve.at(b, 0.5 * m_h);
        m_attemptVariation += std::abs(half - m_V[at(b)]) + std::abs(m_VEnd[at(b)] - half);
    }
    for (const Link& link : m_links) {
        const double off = std::max(std::abs(m_VEnd[at(link.border)] - link.base),
                                    std::abs(m_VSome[at(link.border)] - link.base)) /
                           link.radius;
        if (off > 1 && m_based[at(link.block)] < m_time) stale(link.block, worn);
        worst = std::max(worst, off);
    }
    return worst;
}

double Assembly::modeAt(int mode, double s) const {
    const std::size_t m = at(mode);
    const double lambda = m_lambda[m], s0 = m_time - m_begin[m];
    const double c2 = m_c2[m], c3 = m_c3[m];
    double g0 = m_force[m] + s0 * s0 * (c2 + s0 * c3);
    double g1 = s0 * (2 * c2 + 3 * c3 * s0), g2 = c2 + 3 * c3 * s0;
    for (int b = 0; b < m_r; ++b) {
        const double by = m_byBorder[at(b * m_M) + m];
        g0 += by * m_curve.p0[at(b)];
        g1 += by * m_curve.p1[at(b)];
        g2 += by * m_curve.p2[at(b)];
    }
    const Phi phi = phiOf(lambda * s);
    double z =
        phi.k0 * m_z[m] + s * (phi.k1 * g0 + s * (phi.k2 * g1 + s * (2 * phi.k3 * g2 + s * 6 * phi.k4 * c3)));
    for (std::size_t e = 0; e < m_curve.rate.size(); ++e) {
        double force = 0;
        for (int b = 0; b < m_r; ++b)
            force += m_byBorder[at(b * m_M) + m] * m_curve.amplitude[e * at(m_r) + at(b)];
        z += force * answer(m_curve.rate[e], lambda, std::exp(m_curve.rate[e] * s), phi.k0, s);
    }
    return z;
}

void Assembly::advanceOne(double s) {
    const int M = m_M;
    const double p0 = m_curve.p0[0], p1 = m_curve.p1[0], p2 = m_curve.p2[0], time = m_time;
    const double* __restrict lambdas = m_lambda.data();
    const double* __restrict zs = m_z.data();
    const double* __restrict c2s = m_c2.data();
    const double* __restrict c3s = m_c3.data();
    const double* __restrict begins = m_begin.data();
    const double* __restrict forces = m_force.data();
    const double* __restrict bys = m_byBorder.data();
    double* __restrict zEnd = m_zEnd.data();
    for (int j = 0; j < M; ++j) {
        const double s0 = time - begins[j], c2 = c2s[j], c3 = c3s[j], by = bys[j];
        const double g0 = forces[j] + s0 * s0 * (c2 + s0 * c3) + by * p0;
        const double g1 = s0 * (2 * c2 + 3 * c3 * s0) + by * p1, g2 = 2 * (c2 + 3 * c3 * s0 + by * p2);
        const Phi phi = smallPhi(lambdas[j] * s);
        zEnd[j] =
            phi.k0 * zs[j] + s * (phi.k1 * g0 + s * (phi.k2 * g1 + s * (phi.k3 * g2 + s * 6 * phi.k4 * c3)));
    }
    for (int j = 0; j < M; ++j)
        if (!(std::abs(lambdas[j] * s) < Phi::smallest)) zEnd[j] = modeAt(j, s);
}

void Assembly::advance(double s, double end_s) {
    m_drift = 0;
    m_variation += m_attemptVariation;
    for (int b = 0; b < m_r && s > 0; ++b)
        m_drift = std::max(m_drift, std::abs(m_curve.at(b, s) - m_V[at(b)]) / s);
    if (s == m_h) {
        std::copy(m_VEnd.begin(), m_VEnd.end(), m_V.begin());
    } else {
        if (m_r == 1 && m_curve.rate.empty())
            advanceOne(s);
        else
            for (int j = 0; j < m_M; ++j) m_zEnd[at(j)] = modeAt(j, s);
        for (int b = 0; b < m_r; ++b) m_V[at(b)] = m_curve.at(b, s);
    }
    std::swap(m_z, m_zEnd);
    m_time = end_s;
    m_settled = false;
}

Watched Assembly::watched(int block, int timer, const double* z, const double* v, double s) const {
    const Block& b = m_blocks[at(block)];
    const int n = b.states(), r = b.borders();
    double out[4];
    for (int k = 0; k < 4; ++k) {
        const int row = b.watchedRow(timer) + k;
        double sum = b.rowValue()[row] + s * s * (b.rowC2()[row] + s * b.rowC3()[row]);
        for (int j = 0; j < n; ++j) sum += b.rowByMode()[row * n + j] * z[j];
        for (int p = 0; p < r; ++p)
            sum += b.rowByBorder()[row * r + p] * (v[b.piece().borders[at(p)]] - b.base()[n + p]);
        out[k] = sum;
    }
    return {out[0], out[1], out[2], out[3]};
}

Look Assembly::look(int block, int timer) const {
    const Block& b = m_blocks[at(block)];
    const int n = b.states(), r = b.borders(), first = m_first[at(block)];
    const double s = m_time - b.begin_s();
    double speed[12], quasi[12];
    for (int j = 0; j < n; ++j) {
        const std::size_t m = at(first + j);
        speed[j] = m_lambda[m] * m_z[m] + m_force[m] + s * s * (m_c2[m] + s * m_c3[m]);
        quasi[j] = 0;
        for (const int border : b.piece().borders) {
            const double by = m_byBorder[at(border * m_M) + m];
            speed[j] += by * m_V[at(border)];
            quasi[j] = std::max(quasi[j], std::abs(by / m_lambda[m]));
        }
    }
    Look look;
    look.now = watched(block, timer, m_z.data() + first, m_V.data(), s);
    double rate[4];
    for (int k = 0; k < 4; ++k) {
        const int row = b.watchedRow(timer) + k;
        const double bend = s * (2 * b.rowC2()[row] + 3 * s * b.rowC3()[row]);
        double sum = bend, fastest = std::abs(bend), gain = 0;
        for (int p = 0; p < r; ++p) gain = std::max(gain, std::abs(b.rowByBorder()[row * r + p]));
        for (int j = 0; j < n; ++j) {
            const double part = b.rowByMode()[row * n + j] * speed[j];
            sum += part;
            fastest += std::abs(part);
            gain += std::abs(b.rowByMode()[row * n + j]) * quasi[j];
        }
        rate[k] = sum;
        if (k == 3) continue;
        look.fastest = std::max(look.fastest, fastest);
        look.gain = std::max(look.gain, gain);
    }
    look.rate = {rate[0], rate[1], rate[2], rate[3]};
    return look;
}

Watched Assembly::watchedAtEnd(int block, int timer) const {
    return watched(block, timer, m_zEnd.data() + m_first[at(block)], m_VEnd.data(),
                   m_time - m_blocks[at(block)].begin_s() + m_h);
}

Watched Assembly::watchedAt(int block, int timer, double s) {
    double z[12];
    for (int j = 0; j < m_blocks[at(block)].states(); ++j) z[j] = modeAt(m_first[at(block)] + j, s);
    for (int b = 0; b < m_r; ++b) m_VSome[at(b)] = m_curve.at(b, s);
    return watched(block, timer, z, m_VSome.data(), m_time - m_blocks[at(block)].begin_s() + s);
}

bool Assembly::watchedExactly(int block, int timer, double s, Watched& out) {
    Block& b = m_blocks[at(block)];
    double z[12], y[20];
    for (int j = 0; j < b.states(); ++j) z[j] = modeAt(m_first[at(block)] + j, s);
    capacitorVoltages(block, z, y);
    for (int p = 0; p < b.borders(); ++p) y[b.states() + p] = m_curve.at(b.piece().borders[at(p)], s);
    return b.watched(timer, y, out);
}

bool Assembly::watchedNowExactly(int block, int timer, Watched& out) {
    Block& b = m_blocks[at(block)];
    double y[20];
    capacitorVoltages(block, m_z.data() + m_first[at(block)], y);
    for (int p = 0; p < b.borders(); ++p) y[b.states() + p] = m_V[at(b.piece().borders[at(p)])];
    return b.watched(timer, y, out);
}

long Assembly::solves() const {
    long sum = 0;
    for (const Block& b : m_blocks) sum += b.solves();
    return sum;
}

long Assembly::adopted() const {
    long sum = 0;
    for (const Block& b : m_blocks) sum += b.adopted();
    return sum;
}

long Assembly::rejected() const {
    long sum = 0;
    for (const Block& b : m_blocks) sum += b.rejected();
    return sum;
}

} // namespace blinkwright::engine::large
