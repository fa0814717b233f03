#include "core/engine/network.h"

#include <Eigen/Dense>

#include <algorithm>
#include <numeric>

namespace blinkwright::engine {

using devices::Board;
using devices::open;
namespace pins = circuit::timerPin;

namespace {

/// Conductance lent to the linear part across each junction and output stage, so that a node held only by
/// junctions that are off still has an equation; the port's law takes it back exactly. Large enough for the
/// matrix, small enough that taking it back costs three digits of a current that is nothing.
constexpr double lentConductance = 1e-6;
/// What a net of nothing but input pins hangs on [S].
constexpr double inputTie = 1e-12;
/// Ties one node of a group without a path to 0 V; carries no current, since it is the group's only path.
constexpr double groundTie = 1.0;

class Groups {
  public:
    explicit Groups(int count) : m_parent(static_cast<std::size_t>(count)) {
        std::iota(m_parent.begin(), m_parent.end(), 0);
    }
    int find(int k) {
        while (m_parent[static_cast<std::size_t>(k)] != k) {
            auto& p = m_parent[static_cast<std::size_t>(k)];
            p = m_parent[static_cast<std::size_t>(p)];
            k = p;
        }
        return k;
    }
    void join(int a, int b) {
        if (a != open && b != open) m_parent[static_cast<std::size_t>(find(a))] = find(b);
    }

  private:
    std::vector<int> m_parent;
};

} // namespace

Network::Network(Board given) : m_board(std::move(given)), m_nodes(std::max(1, m_board.nodes())) {
    const Board& board = m_board;
    // Pins 3 and 5 have a voltage of their own even where nothing is joined to them.
    for (const auto& timer : board.timers) {
        std::array<int, 8> nodes = timer.pins;
        for (int pin : {pins::output, pins::control, pins::ground, pins::supply})
            if (nodes[static_cast<std::size_t>(pin)] == open)
                nodes[static_cast<std::size_t>(pin)] = m_nodes++;
        m_pins.push_back(nodes);
    }

    Groups groups(m_nodes);
    for (const auto& s : board.supplies) groups.join(s.plus, s.minus);
    for (const auto& r : board.resistors) groups.join(r.a, r.b);
    for (const auto& v : board.variables) {
        groups.join(v.a, v.wiper);
        groups.join(v.b, v.wiper);
    }
    for (const auto& c : board.capacitors) groups.join(c.plus, c.minus);
    for (const auto& j : board.junctions) groups.join(j.anode, j.cathode);
    for (const auto& s : board.switches) groups.join(s.a, s.b);
    for (std::size_t t = 0; t < board.timers.size(); ++t) {
        const auto& p = m_pins[t];
        groups.join(p[pins::supply], p[pins::ground]);
        groups.join(p[pins::control], p[pins::ground]);
        groups.join(p[pins::output], p[pins::ground]);
        if (!board.timers[t].cmos) groups.join(p[pins::reset], p[pins::ground]);
    }
    // Input pins conduct too little to hold a net; a net that hangs on nothing else hangs on 1e-12 S to
    // pin 1.
    for (std::size_t t = 0; t < board.timers.size(); ++t)
        for (int pin : {pins::trigger, pins::threshold, pins::discharge, pins::reset}) {
            const int node = m_pins[t][static_cast<std::size_t>(pin)];
            const int ground = m_pins[t][pins::ground];
            if (node == open || groups.find(node) == groups.find(ground)) continue;
            m_pinTies.emplace_back(node, ground);
            groups.join(node, ground);
        }
    for (int node = 1; node < m_nodes; ++node)
        if (groups.find(node) != groups.find(0)) {
            m_groundTies.push_back(node);
            groups.join(node, 0);
        }
}

const Reduced& Network::reduced(const std::vector<bool>& switches, const std::vector<bool>& outputs) {
    std::vector<bool> key = switches;
    key.insert(key.end(), outputs.begin(), outputs.end());
    auto& entry = m_cache[key];
    if (!entry) entry = std::make_unique<Reduced>(reduce(switches, outputs));
    return *entry;
}

namespace {

using Matrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// The linear equations of one state, filled by stamping parts; node 0 is 0 V and has no equation.
struct Equations {
    Matrix G;     ///< unknowns x unknowns
    Matrix right; ///< constant sources, then by capacitor voltage, then by port current
    int n;        ///< capacitors

    Equations(int size, int capacitors, int ports)
        : G(Matrix::Zero(size, size)), right(Matrix::Zero(size, 1 + capacitors + ports)), n(capacitors) {}

    static int row(int node) { return node - 1; }
    void conductance(int a, int b, double g) {
        if (a == open || b == open) return;
        if (a > 0) G(row(a), row(a)) += g;
        if (b > 0) G(row(b), row(b)) += g;
        if (a > 0 && b > 0) {
            G(row(a), row(b)) -= g;
            G(row(b), row(a)) -= g;
        }
    }
    void inject(int node, double current) {
        if (node > 0) right(row(node), 0) += current;
    }
    /// V_plus - V_minus + resistance x I_out = voltage term (branch current I_out leaves plus towards the
    /// circuit, for a capacitor pass `into` so that the current enters plus).
    void branch(int unknown, int plus, int minus, double resistance, bool into) {
        const int k = unknown - 1;
        const double sign = into ? 1.0 : -1.0; // current leaving node plus into the branch
        if (plus > 0) {
            G(row(plus), k) += sign;
            G(k, row(plus)) += 1;
        }
        if (minus > 0) {
            G(row(minus), k) -= sign;
            G(k, row(minus)) -= 1;
        }
        G(k, k) -= sign * resistance;
    }
    void port(int k, int from, int to) {
        if (from > 0) right(row(from), 1 + n + k) += 1;
        if (to > 0) right(row(to), 1 + n + k) -= 1;
    }
};

/// A sum of a few node voltages: what a port's law or a comparator looks at.
struct Sum {
    int node[3]{};
    double weight[3]{};
    int terms = 0;

    void add(int of, double by) {
        if (of <= 0) return;
        for (int k = 0; k < terms; ++k)
            if (node[k] == of) {
                weight[k] += by;
                return;
            }
        node[terms] = of;
        weight[terms++] = by;
    }
    bool nothing() const {
        return std::all_of(weight, weight + terms, [](double by) { return by == 0; });
    }
    /// Out of the solution of the equations, by its columns; added to what is there.
    void of(const Matrix& x, double* out) const {
        for (int k = 0; k < terms; ++k) {
            const double* row = x.data() + Equations::row(node[k]) * x.cols();
            for (Eigen::Index j = 0; j < x.cols(); ++j) out[j] += weight[k] * row[j];
        }
    }
};

/// The sums' own equations out of the solution of all: constants, by capacitor, by port.
void reduceSums(const std::vector<Sum>& sums, const Matrix& x, int n, std::vector<double>& constant,
                std::vector<double>& byCapacitor, std::vector<double>& byPort) {
    const auto count = sums.size(), all = static_cast<std::size_t>(x.cols());
    constant.reserve(count);
    byCapacitor.reserve(count * static_cast<std::size_t>(n));
    byPort.reserve(count * all);
    std::vector<double> row(all);
    for (const Sum& sum : sums) {
        std::fill(row.begin(), row.end(), 0);
        sum.of(x, row.data());
        constant.push_back(row[0]);
        byCapacitor.insert(byCapacitor.end(), row.begin() + 1, row.begin() + 1 + n);
        byPort.insert(byPort.end(), row.begin() + 1 + n, row.end());
    }
}

} // namespace

Reduced Network::reduce(const std::vector<bool>& switches, const std::vector<bool>& outputs) const {
    const Board& board = m_board;
    Reduced r;
    r.board = &board;
    r.closed = switches;
    r.n = static_cast<int>(board.capacitors.size());
    r.unknowns = m_nodes + static_cast<int>(board.supplies.size()) + r.n;

    // --- ports
    struct Wiring {
        int from, to;
    };
    std::vector<Wiring> wiring;
    const auto addPort = [&](Port port, int from, int to) {
        r.ports.push_back(port);
        wiring.push_back({from, to});
    };
    for (const auto& timer : board.timers) r.highCurves.push_back(devices::outputHighCurve(timer.sheet));
    r.lampPort.assign(board.junctions.size(), -1);
    for (std::size_t k = 0; k < board.junctions.size(); ++k) {
        const auto& j = board.junctions[k];
        if (j.anode == open || j.cathode == open || j.anode == j.cathode) continue;
        r.lampPort[k] = static_cast<int>(r.ports.size());
        addPort({.kind = PortKind::junction,
                 .index = static_cast<int>(k),
                 .reference = lentConductance,
                 .series = j.law.seriesResistance},
                j.anode, j.cathode);
    }
    for (std::size_t t = 0; t < board.timers.size(); ++t) {
        const auto& timer = board.timers[t];
        const auto& p = m_pins[t];
        const auto& sheet = timer.sheet;
        const bool low = !outputs[t];
        const int index = static_cast<int>(t);
        if (sheet.idle_slope != 0 || sheet.idle_low_extra != 0)
            addPort({.kind = PortKind::idle, .index = index, .low = low}, p[pins::supply], p[pins::ground]);
        if (timer.connected(pins::threshold) && sheet.threshold_current != 0)
            addPort({.kind = PortKind::threshold, .index = index, .low = low}, p[pins::threshold],
                    p[pins::ground]);
        if (timer.connected(pins::trigger) && sheet.trigger_current != 0)
            addPort({.kind = PortKind::trigger, .index = index, .low = low}, p[pins::supply],
                    p[pins::trigger]);
        if (timer.cmos && timer.connected(pins::reset) && sheet.reset_current != 0)
            addPort({.kind = PortKind::resetInput, .index = index, .low = low}, p[pins::reset],
                    p[pins::ground]);
        if (timer.connected(pins::discharge) && (low || sheet.discharge_leakage != 0))
            addPort({.kind = PortKind::discharge, .index = index, .low = low, .reference = lentConductance},
                    p[pins::discharge], p[pins::ground]);
        Port out{.kind = PortKind::outputCmos, .index = index, .low = low, .reference = lentConductance};
        if (timer.cmos) {
            out.parameter[0] = low ? sheet.low_resistance : sheet.high_resistance;
            out.parameter[1] = low ? sheet.low_limit : sheet.high_limit;
        } else {
            out.kind = low ? PortKind::outputLowBipolar : PortKind::outputHighBipolar;
        }
        if (low)
            addPort(out, p[pins::output], p[pins::ground]);
        else
            addPort(out, p[pins::supply], p[pins::output]);
    }
    r.m = static_cast<int>(r.ports.size());

    // --- equations
    const int size = r.unknowns - 1;
    Equations e(size, r.n, r.m);
    std::vector<Sum> controls(static_cast<std::size_t>(r.m));
    for (const auto& part : board.resistors) e.conductance(part.a, part.b, 1 / part.resistance);
    for (const auto& part : board.variables) {
        e.conductance(part.a, part.wiper, 1 / part.upper);
        e.conductance(part.wiper, part.b, 1 / part.lower);
    }
    for (std::size_t k = 0; k < board.switches.size(); ++k)
        e.conductance(board.switches[k].a, board.switches[k].b,
                      1 / (switches[k] ? devices::switchClosedResistance : devices::switchOpenResistance));
    for (std::size_t k = 0; k < board.supplies.size(); ++k) {
        const auto& part = board.supplies[k];
        const int unknown = supplyUnknown(static_cast<int>(k));
        const bool joined = part.plus != open && part.minus != open;
        // Out of plus: V_plus - V_minus + R I = E; alone, I = 0.
        e.branch(unknown, joined ? part.plus : 0, joined ? part.minus : 0, part.resistance, false);
        if (joined) e.right(unknown - 1, 0) = part.voltage;
    }
    for (int k = 0; k < r.n; ++k) {
        const auto& part = board.capacitors[static_cast<std::size_t>(k)];
        const int unknown = capacitorUnknown(k);
        const bool joined = part.plus != open && part.minus != open;
        e.branch(unknown, joined ? part.plus : 0, joined ? part.minus : 0, part.esr, true);
        if (joined) e.right(unknown - 1, 1 + k) = 1;
    }
    for (std::size_t t = 0; t < board.timers.size(); ++t) {
        const auto& timer = board.timers[t];
        const auto& p = m_pins[t];
        const double divider = timer.sheet.divider_resistance;
        e.conductance(p[pins::supply], p[pins::control], 1 / divider);
        e.conductance(p[pins::control], p[pins::ground], 0.5 / divider);
        if (!timer.cmos && p[pins::reset] != open) {
            const double g = 1 / timer.sheet.reset_resistance;
            e.conductance(p[pins::reset], p[pins::ground], g);
            e.inject(p[pins::reset], 0.8 * timer.nominalSupply * g);
            e.inject(p[pins::ground], -0.8 * timer.nominalSupply * g);
        }
    }
    for (const auto& [node, ground] : m_pinTies) e.conductance(node, ground, inputTie);
    for (int node : m_groundTies) e.conductance(node, 0, groundTie);
    for (int k = 0; k < r.m; ++k) {
        const Port& port = r.ports[static_cast<std::size_t>(k)];
        const auto [from, to] = wiring[static_cast<std::size_t>(k)];
        if (port.reference != 0) e.conductance(from, to, port.reference);
        e.port(k, from, to);
        Sum& control = controls[static_cast<std::size_t>(k)];
        if (port.kind == PortKind::threshold) {
            control.add(from, 1);
            control.add(m_pins[static_cast<std::size_t>(port.index)][pins::control], -1);
        } else if (port.kind == PortKind::trigger) {
            const auto& p = m_pins[static_cast<std::size_t>(port.index)];
            control.add(p[pins::control], 0.5);
            control.add(p[pins::ground], 0.5);
            control.add(p[pins::trigger], -1);
        } else {
            // With i' = i - g V = (1 - g R_S) i - g u handed to the linear part, the junction voltage
            // u = V - R_S i is (1 - g R_S) V - R_S i'.
            const double share = 1 - port.reference * port.series;
            control.add(from, share);
            control.add(to, -share);
        }
    }

    // --- reduction
    // One solution for all right-hand sides.
    const Matrix x = Eigen::FullPivLU<Matrix>(e.G).solve(e.right);
    reduceSums(controls, x, r.n, r.a, r.A, r.Z);
    for (int k = 0; k < r.m; ++k)
        r.Z[static_cast<std::size_t>(k * r.m + k)] += r.ports[static_cast<std::size_t>(k)].series;
    for (int k = 0; k < r.n; ++k) {
        const auto& part = board.capacitors[static_cast<std::size_t>(k)];
        const auto current = x.row(capacitorUnknown(k) - 1);
        r.b.push_back(current(0) / part.capacitance);
        for (int j = 0; j < r.n; ++j) r.B.push_back(current(1 + j) / part.capacitance);
        r.B[static_cast<std::size_t>(k * r.n + k)] -= part.leakageConductance / part.capacitance;
        for (int j = 0; j < r.m; ++j) r.D.push_back(current(1 + r.n + j) / part.capacitance);
    }

    r.stride = (r.n + r.m + 3) / 4 * 4;
    r.columns.assign(static_cast<std::size_t>(r.stride) * static_cast<std::size_t>(r.n + r.m), 0);
    r.constant.assign(static_cast<std::size_t>(r.stride), 0);
    for (int row = 0; row < r.n + r.m; ++row) {
        const bool state = row < r.n;
        const int k = state ? row : row - r.n;
        r.constant[static_cast<std::size_t>(row)] =
            state ? r.b[static_cast<std::size_t>(k)] : r.a[static_cast<std::size_t>(k)];
        for (int j = 0; j < r.n + r.m; ++j) {
            const double entry = j < r.n ? (state ? r.B : r.A)[static_cast<std::size_t>(k * r.n + j)]
                                         : -(state ? r.D : r.Z)[static_cast<std::size_t>(k * r.m + j - r.n)];
            r.columns[static_cast<std::size_t>(j * r.stride + row)] = entry;
        }
    }

    // --- what comparators watch
    std::vector<Sum> watched(4 * board.timers.size());
    std::vector<double> apart(watched.size(), 0); // what a comparator's distance has by itself [V]
    for (std::size_t t = 0; t < board.timers.size(); ++t) {
        const auto& timer = board.timers[t];
        const auto& p = m_pins[t];
        Sum* of = watched.data() + 4 * t;
        double* constant = apart.data() + 4 * t;
        if (timer.connected(pins::trigger)) {
            of[0].add(p[pins::control], 0.5);
            of[0].add(p[pins::ground], 0.5);
            of[0].add(p[pins::trigger], -1);
        } else {
            constant[0] = neverTripped;
        }
        if (timer.connected(pins::threshold)) {
            of[1].add(p[pins::threshold], 1);
            of[1].add(p[pins::control], -1);
        } else {
            constant[1] = neverTripped;
        }
        if (timer.connected(pins::reset)) {
            constant[2] = timer.sheet.reset_level;
            of[2].add(p[pins::reset], -1);
            of[2].add(p[pins::ground], 1);
        } else {
            constant[2] = neverTripped;
        }
        of[3].add(p[pins::supply], 1);
        of[3].add(p[pins::ground], -1);
        constant[3] = -0.8 * timer.nominalSupply;
    }
    reduceSums(watched, x, r.n, r.c0, r.Cy, r.Ci);
    for (std::size_t row = 0; row < watched.size(); ++row)
        // Two pins in one net keep a distance of exactly 0: never above, never below.
        r.c0[row] += apart[row] == 0 && watched[row].nothing() ? neverTripped : apart[row];

    // 0 V first, which is no unknown of the equations.
    const auto all = [&](std::vector<double>& to, int first, int columns) {
        to.assign(static_cast<std::size_t>(columns), 0);
        for (int row = 0; row < size; ++row)
            for (int k = 0; k < columns; ++k) to.push_back(x(row, first + k));
    };
    all(r.x0, 0, 1);
    all(r.Xy, 1, r.n);
    all(r.Xi, 1 + r.n, r.m);
    return r;
}

void Reduced::currents(const double* u, double* i, double* slope, double* guess) const {
    for (int k = 0; k < m; ++k) {
        const Port& port = ports[static_cast<std::size_t>(k)];
        const auto index = static_cast<std::size_t>(port.index);
        devices::Law law;
        switch (port.kind) {
        case PortKind::junction:
            law = devices::junction(board->junctions[index].law, u[k]);
            law.current *= 1 - port.reference * port.series;
            law.slope *= 1 - port.reference * port.series;
            break;
        case PortKind::idle:
            law = devices::idle(board->timers[index].sheet, port.low, u[k]);
            break;
        case PortKind::threshold:
            law = devices::conductingSide(board->timers[index].sheet.threshold_current, u[k]);
            break;
        case PortKind::trigger:
            law = devices::conductingSide(board->timers[index].sheet.trigger_current, u[k]);
            break;
        case PortKind::resetInput:
            law = devices::leak(board->timers[index].sheet.reset_current, u[k]);
            break;
        case PortKind::discharge:
            law = devices::discharge(board->timers[index].sheet, port.low, u[k]);
            break;
        case PortKind::outputHighBipolar:
            law = devices::outputHighBipolar(highCurves[index], u[k], guess[k]);
            break;
        case PortKind::outputLowBipolar:
            law = devices::outputLowBipolar(board->timers[index].sheet, u[k]);
            break;
        case PortKind::outputCmos:
            law = devices::outputCmos(port.parameter[0], port.parameter[1], u[k]);
            break;
        }
        i[k] = law.current - port.reference * u[k];
        slope[k] = law.slope - port.reference;
    }
}

void Reduced::derivative(const double* y, const double* i, double* out) const {
    for (int k = 0; k < n; ++k) {
        double sum = b[static_cast<std::size_t>(k)];
        const double* By = B.data() + k * n;
        const double* Di = D.data() + k * m;
        for (int j = 0; j < n; ++j) sum += By[j] * y[j];
        for (int j = 0; j < m; ++j) sum -= Di[j] * i[j];
        out[k] = sum;
    }
}

namespace {

/// out = c0 + My y - Mi i over `count` rows starting at `first`.
void affine(const Reduced& r, const std::vector<double>& c0, const std::vector<double>& My,
            const std::vector<double>& Mi, int first, int count, const double* y, const double* i,
            double* out) {
    for (int k = first; k < first + count; ++k) {
        double sum = c0[static_cast<std::size_t>(k)];
        for (int j = 0; j < r.n; ++j) sum += My[static_cast<std::size_t>(k * r.n + j)] * y[j];
        for (int j = 0; j < r.m; ++j) sum -= Mi[static_cast<std::size_t>(k * r.m + j)] * i[j];
        out[k - first] = sum;
    }
}

} // namespace

Watched Reduced::watched(int timer, const double* y, const double* i) const {
    double out[4];
    affine(*this, c0, Cy, Ci, 4 * timer, 4, y, i, out);
    return {out[0], out[1], out[2], out[3]};
}

void Reduced::rebuild(const double* y, const double* i, double* x) const {
    affine(*this, x0, Xy, Xi, 0, unknowns, y, i, x);
}

} // namespace blinkwright::engine
