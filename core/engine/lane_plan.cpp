#include "core/engine/lane_plan.h"

#include "core/engine/eigenbasis.h"
#include "core/engine/fold_source.h"
#include "core/engine/port_solver.h"
#include "core/engine/varied.h"

#include <cmath>
#include <optional>

namespace blinkwright::engine {

namespace {

namespace pins = circuit::timerPin;

bool ordinary(const devices::Board& board, const std::vector<Varied>& varied) {
    if (board.timers.size() != 1 || board.supplies.empty()) return false;
    const auto& timer = board.timers.front();
    if (timer.pins[pins::supply] == devices::open || timer.pins[pins::ground] == devices::open) return false;
    if (timer.sheet.delay < 1e-7) return false; // the latch's dwell would outlast it
    if (board.capacitors.empty() || board.capacitors.size() > static_cast<std::size_t>(mostStates))
        return false;
    for (const auto& part : board.switches)
        if (!part.presses.empty()) return false;
    for (std::size_t k = 0; k < varied.size(); ++k)
        for (std::size_t j = 0; j < k; ++j)
            if (varied[k].kind == varied[j].kind && varied[k].index == varied[j].index) return false;
    return true;
}

/// A junction across a part: its port gives the reduced equations the voltage there and takes a current.
void probe(devices::Board& board, int a, int b) {
    devices::Junction j;
    j.anode = a;
    j.cathode = b;
    j.law = {.saturation = 1e-15, .nVt = 0.026, .seriesResistance = 0};
    board.junctions.push_back(j);
}

struct Numbered {
    FoldSource<double> source;
    std::vector<int> ports; ///< of the source, the plan's own first, then those of the probes
    int m = 0;
};

Numbered number(const Reduced& r, const StraightBand& band, std::size_t ownJunctions, std::size_t probes) {
    Numbered out{.source = foldSource(r, band), .ports = {}, .m = 0};
    std::vector<bool> isProbe(static_cast<std::size_t>(r.m), false);
    for (std::size_t k = 0; k < probes; ++k)
        isProbe[static_cast<std::size_t>(r.lampPort[ownJunctions + k])] = true;
    for (int k = 0; k < r.m; ++k)
        if (!isProbe[static_cast<std::size_t>(k)]) out.ports.push_back(k);
    out.m = static_cast<int>(out.ports.size());
    for (std::size_t k = 0; k < probes; ++k) out.ports.push_back(r.lampPort[ownJunctions + k]);
    return out;
}

/// The constants of all rows in the order of PlanState::table.
std::vector<double> constants(const Numbered& s) {
    std::vector<double> out;
    out.reserve(s.ports.size() + s.source.b.size() + s.source.c0.size());
    for (int k = 0; k < s.m; ++k)
        out.push_back(s.source.a[static_cast<std::size_t>(s.ports[static_cast<std::size_t>(k)])]);
    out.insert(out.end(), s.source.b.begin(), s.source.b.end());
    out.insert(out.end(), s.source.c0.begin(), s.source.c0.end());
    for (auto k = static_cast<std::size_t>(s.m); k < s.ports.size(); ++k)
        out.push_back(s.source.a[static_cast<std::size_t>(s.ports[k])]);
    return out;
}

std::vector<double> tableOf(const Numbered& s) {
    const auto& f = s.source;
    const auto n = static_cast<std::size_t>(f.n), m = static_cast<std::size_t>(f.m);
    const std::vector<double> c = constants(s);
    std::vector<double> out;
    std::size_t at = 0;
    const auto row = [&](const std::vector<double>& byState, const std::vector<double>& byPort,
                         std::size_t k) {
        out.push_back(c[at++]);
        for (std::size_t j = 0; j < n; ++j) out.push_back(byState[k * n + j]);
        for (const int port : s.ports) out.push_back(byPort[k * m + static_cast<std::size_t>(port)]);
    };
    for (int k = 0; k < s.m; ++k)
        row(f.A, f.Z, static_cast<std::size_t>(s.ports[static_cast<std::size_t>(k)]));
    for (std::size_t k = 0; k < n; ++k) row(f.B, f.D, k);
    for (std::size_t k = 0; k < static_cast<std::size_t>(f.rows); ++k) row(f.Cy, f.Ci, k);
    for (auto k = static_cast<std::size_t>(s.m); k < s.ports.size(); ++k)
        row(f.A, f.Z, static_cast<std::size_t>(s.ports[k]));
    return out;
}

/// The nominal board with a junction across each part that varies.
struct Probed {
    devices::Board board;
    std::size_t probes = 0;
};

std::optional<Probed> probed(const devices::Board& nominal, const std::vector<Varied>& varied,
                             LanePlan& plan) {
    Probed out{nominal, 0};
    devices::Board& board = out.board;
    const auto add = [&](int factor, int a, int b, double conductance, bool divider) {
        if (a == devices::open || b == devices::open || a == b) return;
        probe(board, a, b);
        plan.probes.push_back({.factor = factor, .conductance = conductance, .divider = divider});
        ++out.probes;
    };
    for (std::size_t k = 0; k < varied.size(); ++k) {
        const auto index = static_cast<std::size_t>(varied[k].index);
        const int factor = static_cast<int>(k);
        switch (varied[k].kind) {
        case VariedKind::resistor: {
            const auto& part = board.resistors.at(index);
            add(factor, part.a, part.b, 1 / part.resistance, false);
            break;
        }
        case VariedKind::variableUpper: {
            const auto& part = board.variables.at(index);
            add(factor, part.a, part.wiper, 1 / part.upper, false);
            break;
        }
        case VariedKind::variableLower: {
            const auto& part = board.variables.at(index);
            add(factor, part.wiper, part.b, 1 / part.lower, false);
            break;
        }
        case VariedKind::levels: {
            const int control = controlNode(board, varied[k].index);
            const auto& timer = board.timers.at(index);
            add(factor, timer.pins[pins::supply], control, 1 / timer.sheet.divider_resistance, true);
            break;
        }
        case VariedKind::capacitor:
            plan.capacitorFactor.at(index) = factor;
            break;
        case VariedKind::supply:
            plan.supplies.push_back({factor, board.supplies.at(index).voltage});
            break;
        case VariedKind::forwardVoltage:
            break;
        }
    }
    return out;
}

} // namespace

std::unique_ptr<LanePlan> makeLanePlan(const devices::Board& nominal, const std::vector<Varied>& varied,
                                       int cycles, double accuracy) {
    if (!ordinary(nominal, varied)) return nullptr;
    auto plan = std::make_unique<LanePlan>();
    plan->n = static_cast<int>(nominal.capacitors.size());
    plan->factors = static_cast<int>(varied.size());
    plan->capacitorFactor.assign(nominal.capacitors.size(), -1);
    plan->band = StraightBand::of(accuracy);
    plan->accuracy = accuracy;
    plan->phases = 2 * cycles;
    // As in Simulation and ExponentialMarch.
    double volts = 1;
    for (const auto& supply : nominal.supplies) volts = std::max(volts, std::abs(supply.voltage));
    plan->voltageAllowed_V = 2 * accuracy * volts;
    plan->chargeAllowed = 2 * accuracy;
    plan->darkShare = 1e-3;
    plan->close_V = 0.05 * std::sqrt(0.02 * std::clamp(accuracy, 1e-12, 1e-2));
    plan->delay_s = nominal.timers.front().sheet.delay;
    for (const auto& part : nominal.capacitors) {
        plan->initial_V.push_back(part.initialVoltage);
        plan->capacitance.push_back(part.capacitance);
    }

    const auto own = probed(nominal, varied, *plan);
    const auto network = std::make_shared<Network>(own->board);
    std::vector<bool> switches;
    for (const auto& part : nominal.switches) switches.push_back(part.closed);
    for (const int high : {0, 1}) {
        const Reduced& r = network->reduced(switches, {high != 0});
        const Numbered numbered = number(r, plan->band, nominal.junctions.size(), own->probes);
        PlanState& state = plan->state[static_cast<std::size_t>(high)];
        state.m = numbered.m;
        state.table = tableOf(numbered);
        plan->rows = numbered.source.rows;
        for (std::size_t k = 0; k < own->probes; ++k)
            plan->probes[k].reference =
                r.ports[static_cast<std::size_t>(r.lampPort[nominal.junctions.size() + k])].reference;
        for (int k = 0; k < state.m; ++k) {
            const int port = numbered.ports[static_cast<std::size_t>(k)];
            const auto& law = numbered.source.laws[static_cast<std::size_t>(port)];
            PlanLaw out{.kind = law.kind, .low = law.low, .reference = law.reference, .scale = law.scale};
            std::copy(law.p, law.p + 4, out.p.begin());
            if (law.kind == PortKind::junction) {
                const int junction = r.ports[static_cast<std::size_t>(port)].index;
                for (std::size_t v = 0; v < varied.size(); ++v)
                    if (varied[v].kind == VariedKind::forwardVoltage && varied[v].index == junction) {
                        out.shiftedBy = static_cast<int>(v);
                        out.voltage_V =
                            forwardVoltage(nominal.junctions[static_cast<std::size_t>(junction)].law);
                    }
            }
            state.laws.push_back(out);
        }
        const std::vector<double> at = constants(numbered);
        for (const Varied& v : varied) {
            if (v.kind != VariedKind::supply) continue;
            devices::Board more = own->board;
            more.supplies[static_cast<std::size_t>(v.index)].voltage += 1;
            Network net(more);
            const Reduced& changed = net.reduced(switches, {high != 0});
            std::vector<double> difference =
                constants(number(changed, plan->band, nominal.junctions.size(), own->probes));
            for (std::size_t k = 0; k < difference.size(); ++k) difference[k] -= at[k];
            state.bySupply.push_back(std::move(difference));
        }
        if (high)
            for (const int lamp : lampsOf(r))
                plan->ratedCurrent.push_back(nominal.junctions[static_cast<std::size_t>(lamp)].ratedCurrent);
    }
    plan->lamps = static_cast<int>(plan->ratedCurrent.size());

    const auto plain = std::make_shared<Network>(nominal);
    plan->solvePorts = [plain, switches](int high, const double* y, double* u) {
        const Reduced& r = plain->reduced(switches, {high != 0});
        const auto m = static_cast<std::size_t>(r.m);
        std::vector<double> i(m), slope(m), guess(m, 0);
        PortSolver solver;
        return solver.solve(r, y, u, i.data(), slope.data(), guess.data());
    };
    return plan;
}

} // namespace blinkwright::engine
