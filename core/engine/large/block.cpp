#include "core/engine/large/block.h"

#include "core/engine/large/phi_functions.h"
#include "core/engine/phi.h"

#include <Eigen/Dense>
#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

namespace {

constexpr double firstRadius_V = 0.3;
constexpr std::size_t mostBases = 32; // remembered of each state of switches and outputs

using Square = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor, 12, 12>;

std::size_t at(int k) {
    return static_cast<std::size_t>(k);
}

double product(const double* row, const double* v, int n) {
    double sum = 0;
    for (int k = 0; k < n; ++k) sum += row[k] * v[k];
    return sum;
}

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
    double step[12 + 8];
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

/// A plan of length h: m_error says how good it is. @return false where a stage has no solution.
bool Block::tryPlan(double h, const BlockTolerances& tol, const double* borderConductance) {
    const int n = m_n;
    const double* lambda = m_base->modes.lambda.data();
    const double* f = m_base->modes.force.data();
    const double* v = m_base->y.data() + n;
    for (int s = 0; s < 2; ++s) {
        for (int k = 0; k < n; ++k)
            m_c[s][at(k)] = s == 0 ? 0.5 * h * phi1(0.5 * h * lambda[k]) * f[k]
                                   : h * phi1(h * lambda[k]) * (f[k] + m_d[0][at(k)]);
        if (!stage(m_c[s].data(), v, m_stageRate.data(), m_stageRows[s].data())) return false;
        for (int k = 0; k < n; ++k) m_F[at(k)] = m_stageRate[at(k)] - m_base->rate[at(k)];
        for (int k = 0; k < n; ++k)
            m_d[s][at(k)] =
                product(m_base->modes.inverse.data() + k * n, m_F.data(), n) - lambda[k] * m_c[s][at(k)];
    }
    double missed[12];
    for (int k = 0; k < n; ++k) {
        const double e3 = 16 * m_d[0][at(k)] - 2 * m_d[1][at(k)];
        const double e4 = -48 * m_d[0][at(k)] + 12 * m_d[1][at(k)];
        m_base->modes.c2[at(k)] = e3 / (2 * h * h);
        m_base->modes.c3[at(k)] = e4 / (6 * h * h * h);
        missed[k] = h * phiFunctions(h * lambda[k])[4] * e4;
    }
    m_error = 0;
    for (int k = 0; k < n; ++k) {
        const double error = std::abs(product(m_base->modes.vectors.data() + k * n, missed, n));
        if (!std::isfinite(error)) return false;
        m_error = std::max(m_error, error / tol.voltage_V);
    }
    // What the rows are off from linear, as a cubic through both stages.
    for (int row = 0; row < m_rows; ++row) {
        const double* byMode = m_base->byMode.data() + row * n;
        const double half =
            m_stageRows[0][at(row)] - m_base->value[at(row)] - product(byMode, m_c[0].data(), n);
        const double full =
            m_stageRows[1][at(row)] - m_base->value[at(row)] - product(byMode, m_c[1].data(), n);
        const double last = 2 * full - 8 * half;
        m_base->c2[at(row)] = (8 * half - full) / (h * h);
        m_base->c3[at(row)] = last / (h * h * h);
        m_left[at(row)] = 0.1 * last; // the largest part of a cubic that a parabola does not take
    }
    m_error = std::max(m_error, rowError(m_left.data(), h, h, tol, borderConductance));
    return m_error > 1 || checkBetween(h, tol);
}

/// Solves the laws once more, between the stages, for the cubic that the plan makes of what is not linear:
/// where an input current turns on or off within the plan, the estimate from the stages alone can be small by
/// chance.
bool Block::checkBetween(double h, const BlockTolerances& tol) {
    constexpr double where = 0.75;
    const int n = m_n;
    double z[12], rate[20], missed[12];
    for (int k = 0; k < n; ++k) z[k] = m_base->modeAt(k, where * h);
    if (!stage(z, m_base->y.data() + n, rate, m_left.data())) return false;
    for (int k = 0; k < n; ++k) m_F[at(k)] = rate[k] - m_base->rate[at(k)];
    for (int k = 0; k < n; ++k) {
        const double s = where * h, lambda = m_base->modes.lambda[at(k)];
        const double plan = s * s * (m_base->modes.c2[at(k)] + s * m_base->modes.c3[at(k)]);
        const double off =
            product(m_base->modes.inverse.data() + k * n, m_F.data(), n) - lambda * z[k] - plan;
        missed[k] = 0.3 * h * phi1(h * lambda) * off; // as a bump within the second half
    }
    for (int k = 0; k < n; ++k) {
        const double error = std::abs(product(m_base->modes.vectors.data() + k * n, missed, n));
        m_error = std::max(m_error, std::isfinite(error) ? error / tol.voltage_V : 1e8);
    }
    return true;
}

/// How far the laws at the plan's end are off from linear where a border is off by the radius: for the
/// capacitor voltages, if that lasted all the plan, and for the rows; over what is allowed.
Block::Bend Block::bend(const BlockTolerances& tol, const double* borderConductance, double stay_s) {
    const int n = m_n;
    const double h = n > 0 ? m_base->span_s : 1;
    Bend worst;
    double v[8], drift[12], rate[20];
    for (int b = 0; b < m_r; ++b) {
        for (int k = 0; k < m_r; ++k) v[k] = m_base->y[at(n + k)] + (k == b ? m_base->radius_V : 0);
        if (!stage(m_c[1].data(), v, rate, m_left.data())) return {0, 10};
        for (int k = 0; k < n; ++k) m_F[at(k)] = rate[k] - m_stageRate[at(k)];
        for (int k = 0; k < n; ++k) {
            const double off = product(m_base->modes.inverse.data() + k * n, m_F.data(), n) -
                               m_base->modes.byBorder[at(k * m_r + b)] * m_base->radius_V;
            drift[k] = off * h * phi1(h * m_base->modes.lambda[at(k)]);
        }
        for (int k = 0; k < n; ++k)
            worst.states =
                std::max(worst.states,
                         std::abs(product(m_base->modes.vectors.data() + k * n, drift, n)) / tol.voltage_V);
        for (int row = 0; row < m_rows; ++row)
            m_left[at(row)] -=
                m_stageRows[1][at(row)] + m_base->byBorder[at(row * m_r + b)] * m_base->radius_V;
        worst.rows =
            std::max(worst.rows, rowError(m_left.data(), h, std::min(h, stay_s), tol, borderConductance));
    }
    return worst;
}

/// Chooses the radius, and cuts the span where the borders move out of the radius sooner anyway.
void Block::findRadius(const BlockTolerances& tol, const double* borderConductance, double drift) {
    const double least = 0.1 * tol.voltage_V;
    m_base->radius_V = m_memory->radius_V > 0 ? m_memory->radius_V : firstRadius_V;
    for (int attempt = 0; attempt < 20; ++attempt) {
        const double stay_s = drift > 0 ? m_base->radius_V / drift : never;
        Bend worst = bend(tol, borderConductance, stay_s);
        if (!(worst.states < 1e30 && worst.rows < 1e30)) worst = {0, 10};
        if (worst.states > 1 && stay_s < m_base->span_s) {
            const double cut = std::max(0.9 / worst.states, stay_s / m_base->span_s);
            m_base->span_s *= cut;
            worst.states *= cut;
        }
        const double all = std::max(worst.states, worst.rows);
        if (all <= 1) {
            m_memory->radius_V = all < 0.25 ? std::min(1.5 * m_base->radius_V, 100.0) : m_base->radius_V;
            return;
        }
        m_base->radius_V = std::max(m_base->radius_V * std::max(0.1, 0.9 / all), least);
        m_memory->radius_V = m_base->radius_V;
        if (all <= 8 || m_base->radius_V == least) return; // errors shrink with the radius at least
    }
}

/// When the first comparator input that is still far from its level reaches it, at the rates of the base. The
/// input currents turn on and off there, within some 50 mV: a plan that passes over that may miss it between
/// its stages.
double Block::timeToLevels() const {
    constexpr double far_V = 0.1;
    double soonest = never;
    for (int t = 0; t < m_timers; ++t)
        for (int row = watchedRow(t); row < watchedRow(t) + 2; ++row) {
            const double rate = product(m_base->byMode.data() + row * m_n, m_base->modes.force.data(), m_n);
            const double time = -m_base->value[at(row)] / rate;
            if (std::abs(m_base->value[at(row)]) > far_V && time > 0) soonest = std::min(soonest, time);
        }
    return soonest;
}

bool Block::findSpan(const BlockTolerances& tol, const double* borderConductance) {
    // The first plan of a phase: as long as the last such one; the very first, 10 mV at the present speed.
    double h = m_fresh ? m_memory->firstSpan_s : m_nextSpan_s;
    if (!(h > 0)) {
        double speed = 0;
        for (int k = 0; k < m_n; ++k) speed = std::max(speed, std::abs(m_base->rate[at(k)]));
        h = speed > 0 ? std::clamp(1e-2 / speed, 1e-9, 1.0) : 1;
    }
    h = std::min(h, timeToLevels());
    for (int attempt = 0; attempt < 60; ++attempt) {
        const bool solved = tryPlan(h, tol, borderConductance);
        const double error = solved && std::isfinite(m_error) ? m_error : 1e8;
        const double factor = 0.9 * std::pow(std::max(error, 1e-12), -0.25);
        if (error <= 1) {
            m_base->span_s = h;
            m_nextSpan_s = std::min(h * std::clamp(factor, 0.5, 10.0), 1e6);
            if (m_fresh) m_memory->firstSpan_s = m_nextSpan_s;
            return true;
        }
        ++m_rejected;
        h *= std::clamp(factor, 0.05, 0.8);
    }
    return false;
}

/// Counts the lamps' charges up to a new base.
void Block::countCharges(double time_s, const double* lampCurrents) {
    for (std::size_t l = 0; l < m_lamps.size(); ++l) {
        Lamp& lamp = m_lamps[l];
        const double now = std::abs(lampCurrents[l]);
        if (!m_fresh) lamp.phase_C += 0.5 * (now + lamp.last_A) * (time_s - m_based_s);
        lamp.last_A = now;
    }
    if (m_fresh) m_phaseBegin_s = time_s;
    m_based_s = time_s;
}

bool Block::plan(const BlockTolerances& tol, double time_s, const double* borderConductance, double drift) {
    countCharges(time_s, m_base->value.data() + m_r + 4 * m_timers);
    m_begin_s = time_s;
    m_base->span_s = m_base->radius_V = m_base->reach_V = never;
    std::fill(m_base->modes.c2.begin(), m_base->modes.c2.end(), 0.0);
    std::fill(m_base->modes.c3.begin(), m_base->modes.c3.end(), 0.0);
    m_base->planned = true;
    if (isLinear()) return true;

    if (m_n == 0) { // nothing moves by itself
        std::copy(m_base->rate.begin(), m_base->rate.end(), m_stageRate.begin());
        std::copy(m_base->value.begin(), m_base->value.end(), m_stageRows[1].begin());
    } else if (!findSpan(tol, borderConductance)) {
        return false;
    }
    const bool known =
        std::all_of(m_lamps.begin(), m_lamps.end(), [](const Lamp& lamp) { return lamp.cycle_C > 0; });
    if (m_r > 0) findRadius(tol, borderConductance, drift);
    if (known) keepForLater(tol, borderConductance);
    enterIndex();
    m_fresh = false;
    return true;
}

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
