#include "core/engine/large/block_wave.h"
#include "core/engine/large/rows.h"

#include "core/engine/large/phi_functions.h"
#include "core/engine/wave_data.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::engine::large {

namespace pins = circuit::timerPin;

BlockWave::BlockWave(const devices::Board& board, const Assembly& all)
    : m_nodes(board.nodes()), m_r(all.borders()), m_borderNodes(all.borderNodes()),
      m_capacitors(board.capacitors.size()), m_junctions(board.junctions.size()),
      m_supplies(board.supplies.size()), m_switches(board.switches.size()), m_timers(board.timers.size()) {
    for (int k = 0; k < all.blocks(); ++k) {
        const Block& block = all.block(k);
        const Piece& piece = block.piece();
        m_parts.push_back({.network = block.sharedNetwork(),
                           .borders = piece.borders,
                           .nodes = piece.nodes,
                           .capacitors = piece.capacitors,
                           .junctions = piece.junctions,
                           .supplies = piece.supplies,
                           .switches = piece.switches,
                           .timers = piece.timers,
                           .states = block.states(),
                           .firstMode = all.firstMode(k),
                           .bases = {}});
        m_modes += block.states();
    }
}

void BlockWave::keepBase(const Assembly& all, int k) {
    const Block& b = all.block(k);
    const Reduced& r = b.reduced();
    const BlockBase& base = b.now();
    const bool isNew = base.keptAt == BlockBase::notKept;
    if (isNew) base.keptAt = m_numbers.size();
    m_parts[at(k)].bases.push_back({all.time_s(), b.begin_s(), &r, base.keptAt});
    if (!isNew) return;
    const auto add = [&](const double* from, std::size_t count) {
        m_numbers.insert(m_numbers.end(), from, from + count);
    };
    const auto n = at(b.states()), size = at(b.states() + b.borders()), m = at(r.m);
    add(base.y.data(), size);
    add(base.u.data(), m);
    add(base.portByState.data(), m * size);
    const ModeSet& modes = base.modes;
    add(modes.vectors.data(), n * n);
    for (const auto* v : {&modes.lambda, &modes.force, &modes.c2, &modes.c3}) add(v->data(), n);
    add(modes.byBorder.data(), n * at(b.borders()));
}

void BlockWave::keepStep(const Assembly& all, double length_s, bool jumps) {
    const BorderCurve& curve = all.curve();
    m_steps.push_back({all.time_s(), length_s, jumps, m_numbers.size(), static_cast<int>(curve.rate.size())});
    for (const auto* v : {&curve.p0, &curve.p1, &curve.p2, &curve.rate, &curve.amplitude, &all.modeStates()})
        m_numbers.insert(m_numbers.end(), v->begin(), v->end());
}

void BlockWave::evaluatePart(const Part& part, const Step& step, double s, const double* V,
                             Instant& out) const {
    // The base in force when the step began; of several at one instant, the last.
    const auto after = std::upper_bound(part.bases.begin(), part.bases.end(), step.begin_s,
                                        [](double time, const Base& base) { return time < base.since_s; });
    if (after == part.bases.begin()) return;
    const Base& base = *(after - 1);
    const Reduced& r = *base.reduced;
    const int n = part.states, borders = static_cast<int>(part.borders.size()), size = n + borders, m = r.m;
    const double* y0 = m_numbers.data() + base.offset;
    const double* u0 = y0 + size;
    const double* portByState = u0 + m;
    const double* vectors = portByState + m * size;
    const double* lambda = vectors + n * n;
    const double* force = lambda + n;
    const double* c2 = force + n;
    const double* c3 = c2 + n;
    const double* byBorder = c3 + n;
    const double* p0 = m_numbers.data() + step.offset;
    const double* p1 = p0 + m_r;
    const double* p2 = p1 + m_r;
    const double* rate = p2 + m_r;
    const double* amplitude = rate + step.exponentials;
    const double* z0 = amplitude + step.exponentials * m_r + part.firstMode;

    double z[12] = {}, moved[20] = {}, y[20] = {};
    const double s0 = step.begin_s - base.begin_s;
    for (int j = 0; j < n; ++j) {
        double g0 = force[j] + s0 * s0 * (c2[j] + s0 * c3[j]);
        double g1 = s0 * (2 * c2[j] + 3 * c3[j] * s0), g2 = c2[j] + 3 * c3[j] * s0;
        for (int p = 0; p < borders; ++p) {
            const double by = byBorder[j * borders + p];
            const int b = part.borders[at(p)];
            g0 += by * (p0[b] - y0[n + p]);
            g1 += by * p1[b];
            g2 += by * p2[b];
        }
        const Phi phi = phiOf(lambda[j] * s);
        z[j] = phi.k0 * z0[j] +
               s * (phi.k1 * g0 + s * (phi.k2 * g1 + s * (2 * phi.k3 * g2 + s * 6 * phi.k4 * c3[j])));
        for (int e = 0; e < step.exponentials; ++e) {
            double by = 0;
            for (int p = 0; p < borders; ++p)
                by += byBorder[j * borders + p] * amplitude[e * m_r + part.borders[at(p)]];
            z[j] += by * answer(rate[e], lambda[j], std::exp(rate[e] * s), phi.k0, s);
        }
    }
    for (int k = 0; k < n; ++k) {
        moved[k] = 0;
        for (int j = 0; j < n; ++j) moved[k] += vectors[k * n + j] * z[j];
    }
    for (int p = 0; p < borders; ++p) moved[n + p] = V[part.borders[at(p)]] - y0[n + p];
    for (int k = 0; k < size; ++k) y[k] = y0[k] + moved[k];
    out.port_V.resize(at(m));
    out.port_A.resize(at(m));
    out.slope_S.resize(at(m));
    out.guess.assign(at(m), 0);
    for (int k = 0; k < m; ++k) {
        out.port_V[at(k)] = u0[k];
        for (int j = 0; j < size; ++j) out.port_V[at(k)] += portByState[k * size + j] * moved[j];
    }
    const std::vector<double> guess = out.port_V;
    if (!out.solver.solve(r, y, out.port_V.data(), out.port_A.data(), out.slope_S.data(), out.guess.data())) {
        out.port_V = guess;
        r.currents(out.port_V.data(), out.port_A.data(), out.slope_S.data(), out.guess.data());
    }
    out.all.resize(at(r.unknowns));
    r.rebuild(y, out.port_A.data(), out.all.data());

    // --- into the whole board's numbers
    const Network& net = *part.network;
    const devices::Board& board = net.board();
    for (std::size_t k = 0; k < part.nodes.size(); ++k) out.node_V[at(part.nodes[k])] = out.all[k];
    for (std::size_t k = 0; k < part.supplies.size(); ++k)
        out.supply_A[at(part.supplies[k])] = out.all[at(net.supplyUnknown(static_cast<int>(k)))];
    for (std::size_t k = 0; k < part.capacitors.size(); ++k) {
        out.capacitor_V[at(part.capacitors[k])] = y[k];
        out.capacitor_A[at(part.capacitors[k])] = out.all[at(net.capacitorUnknown(static_cast<int>(k)))];
    }
    for (std::size_t k = 0; k < part.switches.size(); ++k) {
        const auto& toggle = board.switches[k];
        if (toggle.a == devices::open || toggle.b == devices::open) continue;
        out.switch_A[at(part.switches[k])] =
            (out.all[at(toggle.a)] - out.all[at(toggle.b)]) /
            (r.closed[k] ? devices::switchClosedResistance : devices::switchOpenResistance);
    }
    for (std::size_t k = 0; k < part.junctions.size(); ++k)
        if (const int port = r.lampPort[k]; port >= 0)
            out.junction_A[at(part.junctions[k])] =
                r.junctionCurrent(port, out.port_V[at(port)], out.port_A[at(port)]);
    for (std::size_t k = 0; k < part.timers.size(); ++k) {
        const auto volt = [&](int pin) {
            const int node = net.pinNode(static_cast<int>(k), pin);
            return node == devices::open ? 0.0 : out.all[at(node)];
        };
        out.timers[at(part.timers[k])] = {volt(pins::output), volt(pins::control), volt(pins::ground),
                                          volt(pins::supply)};
    }
    // Currents of the timers' stages, true ones, without what the reference conductances carry.
    for (int k = 0; k < m; ++k) {
        const Port& port = r.ports[at(k)];
        if (port.kind == PortKind::junction) continue;
        auto& timer = out.timers[at(part.timers[at(port.index)])];
        const double current = out.port_A[at(k)] + port.reference * out.port_V[at(k)];
        switch (port.kind) {
        case PortKind::idle:
            timer.idle_A = current;
            break;
        case PortKind::discharge:
            timer.discharge_A = current;
            break;
        case PortKind::outputHighBipolar:
        case PortKind::outputLowBipolar:
        case PortKind::outputCmos:
            timer.output_A = port.low ? -current : current;
            break;
        default:
            break;
        }
    }
}

void BlockWave::evaluate(std::size_t index, double s, Instant& out) const {
    const Step& step = m_steps[index];
    out.node_V.assign(at(m_nodes), 0);
    out.capacitor_V.assign(m_capacitors, 0);
    out.capacitor_A.assign(m_capacitors, 0);
    out.junction_A.assign(m_junctions, 0);
    out.supply_A.assign(m_supplies, 0);
    out.switch_A.assign(m_switches, 0);
    out.timers.assign(m_timers, {});
    const double* p = m_numbers.data() + step.offset;
    const double* rate = p + 3 * m_r;
    const double* amplitude = rate + step.exponentials;
    double V[8] = {};
    for (int b = 0; b < m_r; ++b) {
        V[b] = p[b] + s * (p[m_r + b] + s * p[2 * m_r + b]);
        for (int e = 0; e < step.exponentials; ++e) V[b] += amplitude[e * m_r + b] * std::exp(rate[e] * s);
        out.node_V[at(m_borderNodes[at(b)])] = V[b];
    }
    for (const Part& part : m_parts) evaluatePart(part, step, s, V, out);
    out.all = out.node_V;
    for (const auto* v : {&out.supply_A, &out.capacitor_A})
        out.all.insert(out.all.end(), v->begin(), v->end());
}

Waveform BlockWave::waveform(std::shared_ptr<const BlockWave> blocks) {
    auto data = std::make_shared<detail::WaveData>();
    for (std::size_t k = 0; k < blocks->m_steps.size(); ++k) {
        const Step& step = blocks->m_steps[k];
        data->steps.push_back({.begin_s = step.begin_s, .length_s = step.length_s, .offset = k});
    }
    data->blocks = std::move(blocks);
    return Waveform(std::move(data));
}

} // namespace blinkwright::engine::large
