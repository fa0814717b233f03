#include "core/engine/large/block.h"

#include "core/engine/large/phi_functions.h"
#include "core/engine/large/rows.h"
#include "core/engine/phi.h"

#include <Eigen/Dense>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

namespace {

constexpr std::size_t mostBases = 32; // remembered of each state of switches and outputs

using Square = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor, 12, 12>;

} // namespace

Block::Block(Piece piece) : m_piece(std::move(piece)), m_network(std::make_shared<Network>(m_piece.board)) {
    m_n = m_piece.states();
    m_r = static_cast<int>(m_piece.borders.size());
    m_timers = static_cast<int>(m_piece.board.timers.size());
    for (std::size_t k = 0; k < m_piece.board.junctions.size(); ++k) {
        const auto& part = m_piece.board.junctions[k];
        if (part.lamp && part.anode != devices::open && part.cathode != devices::open &&
            part.anode != part.cathode)
            m_lamps.push_back({.junction = static_cast<int>(k)});
    }
    m_rows = m_r + 4 * m_timers + lamps();
    for (auto* v : {&m_c[0], &m_c[1], &m_d[0], &m_d[1], &m_F, &m_entry}) v->resize(at(m_n));
    for (auto* v : {&m_at, &m_stageRate, &m_byState}) v->resize(at(m_n + m_r));
    for (auto* v : {&m_left, &m_stageRows[0], &m_stageRows[1]}) v->resize(at(m_rows));
}

std::unique_ptr<BlockBase> Block::newBase() const {
    auto base = std::make_unique<BlockBase>();
    base->reduced = m_reduced;
    ModeSet& modes = base->modes;
    const int n = m_n, size = n + m_r, m = m_reduced->m;
    const std::pair<std::span<double>*, int> parts[] = {{&modes.lambda, n},
                                                        {&modes.force, n},
                                                        {&modes.c2, n},
                                                        {&modes.c3, n},
                                                        {&base->end, n},
                                                        {&modes.byBorder, n * m_r},
                                                        {&modes.vectors, n * n},
                                                        {&modes.inverse, n * n},
                                                        {&base->y, size},
                                                        {&base->rate, size},
                                                        {&base->value, m_rows},
                                                        {&base->c2, m_rows},
                                                        {&base->c3, m_rows},
                                                        {&base->byMode, m_rows * n},
                                                        {&base->byBorder, m_rows * m_r},
                                                        {&base->u, m},
                                                        {&base->slope, m},
                                                        {&base->W, m * m},
                                                        {&base->portByState, m * size},
                                                        {&base->jacobian, size * size}};
    int total = 0;
    for (const auto& [part, count] : parts) total += count;
    base->room = std::make_unique<double[]>(at(total));
    double* next = base->room.get();
    for (const auto& [part, count] : parts) {
        *part = {next, at(count)};
        next += count;
    }
    return base;
}

void Block::configure(const std::vector<bool>& switches, const std::vector<bool>& outputs) {
    const auto known = std::find_if(m_memories.begin(), m_memories.end(), [&](const Memory& memory) {
        return memory.outputs == outputs && memory.switches == switches;
    });
    if (known != m_memories.end()) {
        m_memory = &*known;
    } else {
        m_memory = &m_memories.emplace_back();
        m_memory->switches = switches;
        m_memory->outputs = outputs;
        m_memory->reduced = &m_network->reduced(switches, outputs);
    }
    const Reduced& next = *m_memory->reduced;
    for (std::size_t l = 0; l < m_lamps.size(); ++l) {
        Lamp& lamp = m_lamps[l];
        lamp.port = next.lampPort[at(lamp.junction)];
        lamp.cycle_C = std::max(0.5 * lamp.cycle_C, lamp.phase_C);
        lamp.phase_C = 0;
    }
    m_reduced = &next;
    const auto m = at(next.m);
    for (auto* v : {&m_i, &m_guess, &m_stageU, &m_stageI, &m_stageSlope}) v->assign(m, 0);
    m_fresh = true;
}

/// Room for a new base: the present one where it has no plan and is of this state, else a free or the oldest
/// one.
BlockBase* Block::room() {
    if (m_base && m_base->reduced == m_reduced && !m_base->planned) return m_base;
    auto& bases = m_memory->bases;
    if (bases.size() < mostBases) {
        bases.push_back(newBase());
        bases.back()->number = bases.size() - 1;
        m_memory->index.resize(bases.size() * at(indexWidth()), -1);
        return bases.back().get();
    }
    if (bases[m_memory->oldest].get() == m_base) m_memory->oldest = (m_memory->oldest + 1) % mostBases;
    BlockBase* base = bases[m_memory->oldest].get();
    m_memory->oldest = (m_memory->oldest + 1) % mostBases;
    return base;
}

/// The base of this state of switches and outputs that lies nearest to a point; none where there is none.
const BlockBase* Block::nearest(const double* y, const double* v) const {
    const BlockBase* best = nullptr;
    double least = never;
    for (const auto& base : m_memory->bases) {
        if (!base->linearised) continue;
        double far = 0;
        for (int k = 0; k < m_n; ++k) far = std::max(far, std::abs(y[k] - base->y[at(k)]));
        for (int b = 0; b < m_r; ++b) far = std::max(far, std::abs(v[b] - base->y[at(m_n + b)]));
        if (far < least) {
            least = far;
            best = base.get();
        }
    }
    return best;
}

/// Rates of the capacitor voltages and the rows, from the port voltages and currents of a point.
void Block::derivativeAndRows(const double* y, const double* u, const double* i, double* rate, double* rows) {
    const Reduced& r = *m_reduced;
    r.derivative(y, i, rate);
    for (int b = 0; b < m_r; ++b) rows[b] = -rate[m_n + b];
    for (int t = 0; t < m_timers; ++t) {
        const Watched w = r.watched(t, y, i);
        double* out = rows + watchedRow(t);
        out[0] = w.trigger;
        out[1] = w.threshold;
        out[2] = w.reset;
        out[3] = w.supply;
    }
    double* out = rows + m_r + 4 * m_timers;
    for (const Lamp& lamp : m_lamps) *out++ = r.junctionCurrent(lamp.port, u[lamp.port], i[lamp.port]);
}

bool Block::solve(const double* y, const double* v) {
    const Reduced& r = *m_reduced;
    const int n = m_n, m = r.m, size = n + m_r;
    const BlockBase* near = nearest(y, v);
    BlockBase* base = room();
    if (near) { // a first guess from there
        double step[20];
        for (int k = 0; k < n; ++k) step[k] = y[k] - near->y[at(k)];
        for (int b = 0; b < m_r; ++b) step[n + b] = v[b] - near->y[at(n + b)];
        for (int k = 0; k < m; ++k)
            base->u[at(k)] = near->u[at(k)] + product(near->portByState.data() + k * size, step, size);
    }
    std::copy(y, y + n, base->y.begin());
    std::copy(v, v + m_r, base->y.begin() + n);
    std::fill(m_entry.begin(), m_entry.end(), 0.0);
    m_base = base;
    base->planned = base->reusable = false;
    indexOf(base)[0] = -1;
    base->keptAt = BlockBase::notKept;
    base->hintSpeed = 0;
    ++m_solves;
    NearbyInverse nearby;
    if (near) nearby = {near->W.data(), near->slope.data()};
    base->linearised = false;
    if (!m_ports.solve(r, base->y.data(), base->u.data(), m_i.data(), m_stageSlope.data(), m_guess.data(),
                       near ? &nearby : nullptr))
        return false;
    std::copy(m_stageSlope.begin(), m_stageSlope.end(), base->slope.begin());
    base->linearised = m_linear.compute(r, base->slope.data());
    std::copy(m_linear.W.begin(), m_linear.W.end(), base->W.begin());
    std::copy(m_linear.portByState.begin(), m_linear.portByState.end(), base->portByState.begin());
    std::copy(m_linear.jacobian.begin(), m_linear.jacobian.end(), base->jacobian.begin());
    if (!base->linearised || !eigen()) return false;

    derivativeAndRows(m_base->y.data(), m_base->u.data(), m_i.data(), m_base->rate.data(),
                      m_base->value.data());
    for (const double value : m_base->rate)
        if (!std::isfinite(value)) return false;
    const double* inverse = m_base->modes.inverse.data();
    const double* J = m_base->jacobian.data();
    for (int k = 0; k < n; ++k) m_base->modes.force[at(k)] = product(inverse + k * n, m_base->rate.data(), n);
    for (int k = 0; k < n; ++k)
        for (int b = 0; b < m_r; ++b) {
            double sum = 0;
            for (int j = 0; j < n; ++j) sum += inverse[k * n + j] * J[j * size + n + b];
            m_base->modes.byBorder[at(k * m_r + b)] = sum;
        }
    // Rows to first order: by capacitor and border voltages, then by modes.
    const auto put = [&](int row) {
        for (int k = 0; k < n; ++k) {
            double sum = 0;
            for (int j = 0; j < n; ++j) sum += m_byState[at(j)] * m_base->modes.vectors[at(j * n + k)];
            m_base->byMode[at(row * n + k)] = sum;
        }
        for (int b = 0; b < m_r; ++b) m_base->byBorder[at(row * m_r + b)] = m_byState[at(n + b)];
    };
    for (int b = 0; b < m_r; ++b) {
        for (int j = 0; j < size; ++j) m_byState[at(j)] = -J[(n + b) * size + j];
        put(b);
    }
    for (int row = 0; row < 4 * m_timers; ++row) {
        for (int j = 0; j < size; ++j) m_byState[at(j)] = r.Cy[at(row * size + j)];
        for (int p = 0; p < m; ++p) {
            const double weight = -r.Ci[at(row * m + p)] * m_base->slope[at(p)];
            if (weight == 0) continue;
            for (int j = 0; j < size; ++j) m_byState[at(j)] += weight * m_base->portByState[at(p * size + j)];
        }
        put(m_r + row);
    }
    for (int l = 0; l < lamps(); ++l) {
        const Port& port = r.ports[at(m_lamps[at(l)].port)];
        const double g =
            (m_base->slope[at(m_lamps[at(l)].port)] + port.reference) / (1 - port.reference * port.series);
        for (int j = 0; j < size; ++j)
            m_byState[at(j)] = g * m_base->portByState[at(m_lamps[at(l)].port * size + j)];
        put(m_r + 4 * m_timers + l);
    }
    std::fill(m_base->c2.begin(), m_base->c2.end(), 0.0);
    std::fill(m_base->c3.begin(), m_base->c3.end(), 0.0);
    return true;
}

/// Eigenvectors of J. With each voltage weighted by the root of its capacitance, J of a network is symmetric
/// but for the timers' inputs.
bool Block::eigen() {
    const int n = m_n, size = n + m_r;
    if (n == 0) return true;
    double root[12];
    for (int k = 0; k < n; ++k) root[k] = std::sqrt(m_piece.board.capacitors[at(k)].capacitance);
    Square S(n, n), vectors(n, n), inverse(n, n);
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < n; ++c) S(r, c) = m_base->jacobian[at(r * size + c)] * root[r] / root[c];
    if (!S.allFinite()) return false;
    double* lambda = m_base->modes.lambda.data();
    bool found = false;
    if (n == 1) {
        lambda[0] = S(0, 0);
        vectors(0, 0) = inverse(0, 0) = 1;
        found = true;
    } else if ((S - S.transpose()).cwiseAbs().maxCoeff() > 1e-13 * S.cwiseAbs().maxCoeff()) {
        const Eigen::EigenSolver<Square> solver(S);
        found = solver.info() == Eigen::Success && (solver.eigenvalues().imag().array() == 0).all();
        if (found) {
            vectors = solver.pseudoEigenvectors();
            const Eigen::PartialPivLU<Square> lu(vectors);
            found = lu.rcond() > 1e-6;
            if (found) inverse = lu.inverse();
            for (int k = 0; k < n; ++k) lambda[k] = solver.eigenvalues()(k).real();
        }
    }
    if (!found) {
        // Symmetric, or taken as if it were: the steps' error estimates then see the difference.
        const Eigen::SelfAdjointEigenSolver<Square> solver(0.5 * (S + S.transpose()));
        if (solver.info() != Eigen::Success) return false;
        for (int k = 0; k < n; ++k) lambda[k] = solver.eigenvalues()(k);
        vectors = solver.eigenvectors();
        inverse = vectors.transpose();
    }
    for (int r = 0; r < n; ++r)
        for (int c = 0; c < n; ++c) {
            m_base->modes.vectors[at(r * n + c)] = vectors(r, c) / root[r];
            m_base->modes.inverse[at(r * n + c)] = inverse(r, c) * root[c];
        }
    return true;
}

/// The piece's laws at capacitor voltages `moved` from the base in modes, and border voltages v.
bool Block::stage(const double* moved, const double* v, double* rate, double* rows) {
    const Reduced& r = *m_reduced;
    const int n = m_n, size = n + m_r;
    double step[12 + 8] = {};
    for (int k = 0; k < n; ++k) step[k] = product(m_base->modes.vectors.data() + k * n, moved, n);
    for (int b = 0; b < m_r; ++b) step[n + b] = v[b] - m_base->y[at(n + b)];
    for (int k = 0; k < size; ++k) m_at[at(k)] = m_base->y[at(k)] + step[k];
    for (int k = 0; k < r.m; ++k)
        m_stageU[at(k)] = m_base->u[at(k)] + product(m_base->portByState.data() + k * size, step, size);
    const NearbyInverse nearby{m_base->W.data(), m_base->slope.data()};
    ++m_solves;
    if (!m_ports.solve(r, m_at.data(), m_stageU.data(), m_stageI.data(), m_stageSlope.data(), m_guess.data(),
                       &nearby))
        return false;
    derivativeAndRows(m_at.data(), m_stageU.data(), m_stageI.data(), rate, rows);
    return true;
}

/// Largest error of border currents, comparators and lamp charges over what is allowed, from the rows'
/// errors.
double Block::rowError(const double* error, double h, double lasting_s, const BlockTolerances& tol,
                       const double* borderConductance) const {
    double worst = 0;
    for (int b = 0; b < m_r; ++b)
        worst =
            std::max(worst, std::abs(error[b]) / (borderConductance[m_piece.borders[at(b)]] * tol.voltage_V));
    for (int row = 0; row < 4 * m_timers; ++row) {
        if (row % 4 == 3) continue; // only looked at while the supply rises
        worst = std::max(worst, std::abs(error[m_r + row]) / (10 * tol.voltage_V)); // made good at crossings
    }
    for (int l = 0; l < lamps(); ++l) {
        const Lamp& lamp = m_lamps[at(l)];
        const int row = m_r + 4 * m_timers + l;
        const double rated = m_piece.board.junctions[at(lamp.junction)].ratedCurrent;
        const double here = std::abs(m_base->value[at(row)]) * h;
        const double dark_C = tol.darkShare * rated * (m_based_s - m_phaseBegin_s + h);
        // Before a first flash has shown how much it carries, a tenth of the rated current for a millisecond.
        const double unknown_C = lamp.cycle_C > 0 ? 0 : 1e-4 * rated;
        const double scale = std::max({lamp.cycle_C, lamp.phase_C + here, dark_C, unknown_C, 1e-15});
        worst = std::max(worst, std::abs(error[row]) * lasting_s / (scale * tol.charge));
    }
    return worst;
}

} // namespace blinkwright::engine::large
