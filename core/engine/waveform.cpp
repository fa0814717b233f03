#include "core/engine/waveform.h"

#include "core/engine/dense_output.h"
#include "core/engine/large/block_wave.h"
#include "core/engine/wave_data.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::engine {

namespace pins = circuit::timerPin;
using detail::WaveData;
using detail::WaveStep;

namespace {

/// Capacitor and port voltages and port currents at a time from a step's begin.
void evaluate(const WaveData& data, const WaveStep& step, double t, Instant& out) {
    const Reduced& r = *step.reduced;
    const double* dense = data.numbers.data() + step.offset;
    if (step.kind == StepKind::rosenbrock) {
        RosenbrockStep::evaluate(dense, r.n, r.m, t, out.capacitor_V.data(), out.port_V.data());
    } else {
        DenseOutput::evaluate(dense, r.n, t, out.capacitor_V.data());
        const double* start = dense + DenseOutput(r.n).size();
        const double share = step.length_s > 0 ? t / step.length_s : 0;
        for (int k = 0; k < r.m; ++k)
            out.port_V[static_cast<std::size_t>(k)] = start[k] + share * (start[r.m + k] - start[k]);
        if (out.solver.solve(r, out.capacitor_V.data(), out.port_V.data(), out.port_A.data(),
                             out.slope_S.data(), out.guess.data()))
            return;
    }
    r.currents(out.port_V.data(), out.port_A.data(), out.slope_S.data(), out.guess.data());
}

} // namespace

Waveform::Waveform() : m_data(std::make_shared<WaveData>()) {
}
Waveform::Waveform(std::shared_ptr<const WaveData> data) : m_data(std::move(data)) {
}

bool Waveform::empty() const {
    return m_data->steps.empty();
}
double Waveform::begin_s() const {
    return empty() ? 0 : m_data->steps.front().begin_s;
}
double Waveform::end_s() const {
    return empty() ? 0 : m_data->steps.back().end_s();
}
std::size_t Waveform::steps() const {
    return m_data->steps.size();
}
Waveform::Span Waveform::step(std::size_t k) const {
    return {m_data->steps[k].begin_s, m_data->steps[k].end_s()};
}
bool Waveform::jumpsBefore(std::size_t k) const {
    if (m_data->blocks) return k > 0 && m_data->blocks->jumps(m_data->steps[k].offset);
    return k > 0 && m_data->steps[k].reduced != m_data->steps[k - 1].reduced;
}

std::vector<Waveform::Knot> Waveform::knots(int inside) const {
    std::vector<Knot> out;
    out.reserve(m_data->steps.size() * static_cast<std::size_t>(inside + 1) + 1);
    for (std::size_t k = 0; k < m_data->steps.size(); ++k) {
        // Where nothing jumps, the end of one step serves as the begin of the next.
        const int first = k == 0 || jumpsBefore(k) ? 0 : 1;
        for (int j = first; j <= inside + 1; ++j) out.push_back({k, double(j) / (inside + 1)});
    }
    return out;
}

double Waveform::time(const Knot& knot) const {
    const WaveStep& step = m_data->steps[knot.step];
    return step.begin_s + knot.share * step.length_s;
}

Waveform::Knot Waveform::find(double time_s, Side side) const {
    const auto& steps = m_data->steps;
    auto it = std::upper_bound(steps.begin(), steps.end(), time_s,
                               [](double t, const WaveStep& s) { return t < s.begin_s; });
    if (it != steps.begin()) --it;
    if (side == Side::before && it != steps.begin() && time_s <= it->begin_s) --it;
    const double share = it->length_s > 0 ? (time_s - it->begin_s) / it->length_s : 0;
    return {static_cast<std::size_t>(it - steps.begin()), std::clamp(share, 0.0, 1.0)};
}

void Waveform::instant(double time_s, Side side, Instant& out) const {
    instant(find(time_s, side), out);
}

void Waveform::instant(const Knot& knot, Instant& out) const {
    const WaveStep& step = m_data->steps[knot.step];
    if (m_data->blocks) return m_data->blocks->evaluate(step.offset, knot.share * step.length_s, out);
    const Reduced& r = *step.reduced;
    const Network& net = *m_data->network;
    const devices::Board& board = net.board();
    const auto m = static_cast<std::size_t>(r.m);
    out.capacitor_V.resize(static_cast<std::size_t>(r.n));
    for (auto* v : {&out.port_V, &out.port_A, &out.slope_S}) v->resize(m);
    out.guess.assign(m, 0);
    evaluate(*m_data, step, knot.share * step.length_s, out);
    out.all.resize(static_cast<std::size_t>(r.unknowns));
    r.rebuild(out.capacitor_V.data(), out.port_A.data(), out.all.data());

    const auto nodes = out.all.begin() + board.nodes();
    out.node_V.assign(out.all.begin(), nodes);
    const auto supplies = out.all.begin() + net.supplyUnknown(0);
    out.supply_A.assign(supplies, supplies + static_cast<std::ptrdiff_t>(board.supplies.size()));
    const auto capacitors = out.all.begin() + net.capacitorUnknown(0);
    out.capacitor_A.assign(capacitors, capacitors + r.n);
    out.switch_A.resize(board.switches.size());
    for (std::size_t k = 0; k < board.switches.size(); ++k) {
        const auto& part = board.switches[k];
        const bool joined = part.a != devices::open && part.b != devices::open;
        const double volts =
            joined ? out.all[static_cast<std::size_t>(part.a)] - out.all[static_cast<std::size_t>(part.b)]
                   : 0;
        out.switch_A[k] =
            volts / (r.closed[k] ? devices::switchClosedResistance : devices::switchOpenResistance);
    }
    out.junction_A.assign(board.junctions.size(), 0);
    for (std::size_t k = 0; k < board.junctions.size(); ++k)
        if (const int port = r.lampPort[k]; port >= 0)
            out.junction_A[k] = r.junctionCurrent(port, out.port_V[static_cast<std::size_t>(port)],
                                                  out.port_A[static_cast<std::size_t>(port)]);
    out.timers.resize(board.timers.size());
    for (std::size_t t = 0; t < board.timers.size(); ++t) {
        const auto volt = [&](int pin) {
            const int node = net.pinNode(static_cast<int>(t), pin);
            return node == devices::open ? 0.0 : out.all[static_cast<std::size_t>(node)];
        };
        out.timers[t] = {volt(pins::output), volt(pins::control), volt(pins::ground), volt(pins::supply)};
    }
    // Currents of the timers' stages, true ones, without what the reference conductances carry.
    for (auto& timer : out.timers) timer.idle_A = timer.discharge_A = timer.output_A = 0;
    for (std::size_t k = 0; k < m; ++k) {
        const Port& port = r.ports[k];
        if (port.kind == PortKind::junction) continue;
        auto& timer = out.timers[static_cast<std::size_t>(port.index)];
        const double current = out.port_A[k] + port.reference * out.port_V[k];
        if (port.kind == PortKind::idle) timer.idle_A = current;
        if (port.kind == PortKind::discharge) timer.discharge_A = current;
        if (port.kind == PortKind::outputHighBipolar || port.kind == PortKind::outputLowBipolar ||
            port.kind == PortKind::outputCmos)
            timer.output_A = port.low ? -current : current;
    }
}

Waveform Waveform::part(double from_s, double to_s, double newBegin_s) const {
    auto data = std::make_shared<WaveData>();
    data->network = m_data->network;
    data->numbers = m_data->numbers;
    data->blocks = m_data->blocks;
    for (const WaveStep& step : m_data->steps) {
        if (step.begin_s < from_s || step.begin_s >= to_s) continue;
        WaveStep moved = step;
        moved.begin_s += newBegin_s - from_s;
        data->steps.push_back(moved);
    }
    return Waveform(std::move(data));
}

Waveform Waveform::repeated(int count) const {
    auto data = std::make_shared<WaveData>();
    data->network = m_data->network;
    data->numbers = m_data->numbers;
    data->blocks = m_data->blocks;
    const double period = end_s() - begin_s();
    for (int k = 0; k < count; ++k)
        for (WaveStep step : m_data->steps) {
            step.begin_s += k * period;
            data->steps.push_back(step);
        }
    return Waveform(std::move(data));
}

} // namespace blinkwright::engine
