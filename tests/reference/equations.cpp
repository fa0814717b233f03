#include "tests/reference/equations.h"

#include <limits>
#include <numeric>

namespace blinkwright::reference {

using devices::Board;
using devices::Node;
namespace pin = circuit::timerPin;

namespace {

/// Which nets hang together; place 0 is the 0 V net.
struct Islands {
    std::vector<std::size_t> label;
    explicit Islands(int unknowns) : label(static_cast<std::size_t>(unknowns) + 1) {
        std::iota(label.begin(), label.end(), 0u);
    }
    std::size_t of(int unknown) const { return label[static_cast<std::size_t>(unknown + 1)]; }
    void bridge(int a, int b) {
        if (a == Layout::absent || b == Layout::absent) return;
        const std::size_t from = of(a), to = of(b);
        for (auto& l : label)
            if (l == from) l = to;
    }
};

} // namespace

Layout::Layout(const Board& given, bool chargeUnknowns) : board(&given) {
    nodes = std::max(0, given.nodes() - 1);
    for (const auto& timer : given.timers) {
        auto& places = pins.emplace_back();
        for (std::size_t k = 0; k < places.size(); ++k) places[k] = unknownOf(timer.pins[k]);
        // Nothing need be joined to these pins for them to have a voltage.
        for (auto k : {pin::ground, pin::output, pin::control, pin::supply}) {
            auto& place = places[static_cast<std::size_t>(k)];
            if (place == absent) place = nodes++;
        }
    }
    int next = supplies = nodes;
    capacitors = next += static_cast<int>(given.supplies.size());
    junctions = next += static_cast<int>(given.capacitors.size());
    for (const auto& part : given.junctions) {
        const bool joined =
            part.anode != devices::open && part.cathode != devices::open && part.anode != part.cathode;
        junctionUnknown.push_back(joined ? next++ : absent);
    }
    for (const auto& timer : given.timers) outputUnknown.push_back(timer.cmos ? absent : next++);
    algebraic = next;
    next += static_cast<int>(given.capacitors.size());
    for (std::size_t k = 0; k < given.junctions.size(); ++k)
        if (given.junctions[k].lamp && junctionUnknown[k] != absent)
            lamps.push_back({k, chargeUnknowns ? next++ : -1});
    size = next;
    tie();
}

/// Nets that only input pins hold hang on 1e-12 S to their pin 1; a group that nothing holds to 0 V gets one
/// tie, which carries no current since it is the group's only way there.
void Layout::tie() {
    Islands islands(nodes);
    const auto bridge = [&](Node a, Node b) { islands.bridge(unknownOf(a), unknownOf(b)); };
    for (const auto& part : board->supplies) bridge(part.plus, part.minus);
    for (const auto& part : board->resistors) bridge(part.a, part.b);
    for (const auto& part : board->capacitors) bridge(part.plus, part.minus);
    for (const auto& part : board->junctions) bridge(part.anode, part.cathode);
    for (const auto& part : board->switches) bridge(part.a, part.b);
    for (const auto& part : board->variables) {
        bridge(part.a, part.wiper);
        bridge(part.wiper, part.b);
    }
    for (std::size_t t = 0; t < pins.size(); ++t) {
        for (auto k : {pin::supply, pin::control, pin::output})
            islands.bridge(pins[t][static_cast<std::size_t>(k)], pins[t][pin::ground]);
        if (!board->timers[t].cmos) islands.bridge(pins[t][pin::reset], pins[t][pin::ground]);
    }
    for (const auto& places : pins)
        for (auto k : {pin::trigger, pin::threshold, pin::discharge, pin::reset}) {
            const int place = places[static_cast<std::size_t>(k)];
            if (place == absent || islands.of(place) == islands.of(places[pin::ground])) continue;
            weakTies.emplace_back(place, places[pin::ground]);
            islands.bridge(place, places[pin::ground]);
        }
    for (int node = 0; node < nodes; ++node) {
        if (islands.of(node) == islands.of(zeroVolt)) continue;
        datumTies.push_back(node);
        islands.bridge(node, zeroVolt);
    }
}

Equations::Equations(const Layout& layout, const std::vector<bool>& closed, const std::vector<bool>& high)
    : m_layout(&layout) {
    const auto n = static_cast<std::size_t>(layout.size);
    m_matrix.assign(n * n, 0);
    m_constant.assign(n, 0);
    m_reach.assign(n, std::numeric_limits<double>::infinity());
    stampParts(closed);
    for (std::size_t t = 0; t < layout.pins.size(); ++t) stampTimer(t, high[t]);
    for (const auto& [node, ground] : layout.weakTies) conductance(node, ground, 1e-12);
    for (int node : layout.datumTies) entry(node, node, 1);
    compress();
    for (const auto& lamp : layout.lamps)
        for (std::size_t k = 0; k < m_elements.size(); ++k)
            if (m_elements[k].x == layout.junctionUnknown[lamp.junction]) m_lamps.push_back(k);
}

void Equations::entry(int row, int column, double value) {
    if (row >= 0 && column >= 0)
        m_matrix[static_cast<std::size_t>(column) * static_cast<std::size_t>(m_layout->size) +
                 static_cast<std::size_t>(row)] += value;
}

void Equations::constant(int row, double value) {
    if (row >= 0) m_constant[static_cast<std::size_t>(row)] += value;
}

void Equations::conductance(int a, int b, double g) {
    if (a == Layout::absent || b == Layout::absent) return;
    entry(a, a, g);
    entry(b, b, g);
    entry(a, b, -g);
    entry(b, a, -g);
}

void Equations::stampParts(const std::vector<bool>& closed) {
    const Board& board = *m_layout->board;
    const auto place = [](Node node) { return Layout::unknownOf(node); };
    for (const auto& part : board.resistors) conductance(place(part.a), place(part.b), 1 / part.resistance);
    for (const auto& part : board.variables) {
        conductance(place(part.a), place(part.wiper), 1 / part.upper);
        conductance(place(part.wiper), place(part.b), 1 / part.lower);
    }
    for (std::size_t k = 0; k < board.switches.size(); ++k)
        conductance(place(board.switches[k].a), place(board.switches[k].b),
                    1 / (closed[k] ? devices::switchClosedResistance : devices::switchOpenResistance));
    for (std::size_t k = 0; k < board.supplies.size(); ++k) {
        const auto& part = board.supplies[k];
        const int plus = place(part.plus), minus = place(part.minus);
        const int row = m_layout->supplies + static_cast<int>(k);
        entry(row, row, part.resistance);
        if (plus == Layout::absent || minus == Layout::absent) continue; // alone it carries nothing
        entry(row, plus, 1);
        entry(row, minus, -1);
        constant(row, -part.voltage);
        entry(plus, row, -1);
        entry(minus, row, 1);
    }
    for (std::size_t k = 0; k < board.capacitors.size(); ++k) {
        const auto& part = board.capacitors[k];
        const int plus = place(part.plus), minus = place(part.minus);
        const int row = m_layout->capacitors + static_cast<int>(k);
        const int inner = m_layout->algebraic + static_cast<int>(k);
        // inner' = (i - leakage x inner)/C; the derivative itself is added with F.
        entry(inner, row, -1 / part.capacitance);
        entry(inner, inner, part.leakageConductance / part.capacitance);
        entry(row, row, part.esr);
        if (plus == Layout::absent || minus == Layout::absent) continue;
        entry(row, inner, 1);
        entry(row, plus, -1);
        entry(row, minus, 1);
        entry(plus, row, 1);
        entry(minus, row, -1);
    }
    for (std::size_t k = 0; k < board.junctions.size(); ++k) {
        const auto& part = board.junctions[k];
        const int x = m_layout->junctionUnknown[k];
        if (x == Layout::absent) continue;
        Element e{.law = Law::junction, .from = place(part.anode), .to = place(part.cathode), .x = x};
        e.p[0] = part.law.seriesResistance;
        e.exponential = Exponential(part.law.saturation, part.law.nVt);
        for (const auto& lamp : m_layout->lamps)
            if (lamp.junction == k) e.charge = lamp.charge;
        m_elements.push_back(e);
    }
}

void Equations::stampTimer(std::size_t index, bool high) {
    const auto& timer = m_layout->board->timers[index];
    const auto& sheet = timer.sheet;
    const auto& p = m_layout->pins[index];
    const int one = p[pin::ground], eight = p[pin::supply];
    conductance(eight, p[pin::control], 1 / sheet.divider_resistance);
    conductance(p[pin::control], one, 1 / (2 * sheet.divider_resistance));

    m_elements.push_back({.law = Law::own,
                          .from = eight,
                          .to = one,
                          .p = {sheet.idle_slope, sheet.idle_offset, high ? 0 : sheet.idle_low_extra, 0}});
    if (timer.connected(pin::threshold))
        m_elements.push_back({.law = Law::pair,
                              .from = p[pin::threshold],
                              .to = one,
                              .p = {sheet.threshold_current, 0, 0, 0},
                              .control = {p[pin::threshold], p[pin::control], zeroVolt},
                              .weight = {1, -1, 0}});
    if (timer.connected(pin::trigger)) // half of pin 5 against pin 1, less pin 2
        m_elements.push_back({.law = Law::pair,
                              .from = eight,
                              .to = p[pin::trigger],
                              .p = {sheet.trigger_current, 0, 0, 0},
                              .control = {p[pin::control], one, p[pin::trigger]},
                              .weight = {0.5, 0.5, -1}});
    if (timer.cmos) {
        if (timer.connected(pin::reset))
            m_elements.push_back(
                {.law = Law::leak, .from = p[pin::reset], .to = one, .p = {sheet.reset_current, 0, 0, 0}});
    } else if (p[pin::reset] != Layout::absent) {
        const double g = 1 / sheet.reset_resistance;
        conductance(p[pin::reset], one, g);
        constant(p[pin::reset], -g * 0.8 * timer.nominalSupply);
        constant(one, g * 0.8 * timer.nominalSupply);
    }
    if (timer.connected(pin::discharge)) {
        Element e{
            .law = Law::leak, .from = p[pin::discharge], .to = one, .p = {sheet.discharge_leakage, 0, 0, 0}};
        if (!high) {
            e.law = Law::knee;
            e.p[0] = sheet.discharge_resistance;
            e.p[1] = sheet.discharge_offset;
            e.p[2] = sheet.discharge_limit;
        }
        m_elements.push_back(e);
    }

    const int three = p[pin::output];
    Element out{.law = Law::saturated, .from = high ? eight : three, .to = high ? three : one};
    if (timer.cmos) {
        out.p[0] = high ? sheet.high_resistance : sheet.low_resistance;
        out.p[1] = high ? sheet.high_limit : sheet.low_limit;
    } else {
        out.x = m_layout->outputUnknown[index];
        if (high) {
            out.law = Law::junction;
            const double nVt = 2 * roomThermalVoltage;
            const double drop = std::clamp(sheet.high_drop_1mA, 1e-6, 30.0); // no drop at all has no junction
            out.exponential = Exponential(saturationThrough(1e-3, drop, nVt), nVt);
            out.p[0] = sheet.high_resistance;
            out.p[1] = sheet.high_cubic;
        } else {
            out.law = Law::twoPaths;
            out.p[0] = sheet.low_resistance;
            out.p[1] = sheet.low_limit;
            out.p[2] = sheet.low_knee;
            out.p[3] = sheet.low_knee_resistance;
        }
    }
    m_elements.push_back(out);
}

/// The linear part row by row for the residual, and what belongs to the extra unknowns of the elements.
void Equations::compress() {
    const int n = m_layout->size;
    for (const Element& e : m_elements) {
        if (e.x < 0) continue;
        entry(e.x, e.x, 1);
        entry(e.x, e.from, -1);
        entry(e.x, e.to, 1);
        if (e.law == Law::junction) m_reach[static_cast<std::size_t>(e.x)] = e.exponential.nVt();
    }
    for (int row = 0; row < n; ++row) {
        m_rowStart.push_back(static_cast<int>(m_column.size()));
        for (int column = 0; column < n; ++column) {
            const double value = m_matrix[static_cast<std::size_t>(column * n + row)];
            if (value == 0) continue;
            m_column.push_back(column);
            m_value.push_back(value);
        }
    }
    m_rowStart.push_back(static_cast<int>(m_column.size()));
}

double Equations::controlled(const double* y, const Element& e) {
    double v = 0;
    for (std::size_t k = 0; k < e.control.size(); ++k) v += e.weight[k] * at(y, e.control[k]);
    return v;
}

PairedLaw Equations::law(const double* y, const Element& e) const {
    switch (e.law) {
    case Law::junction:
        return e.exponential.at(y[e.x]);
    case Law::twoPaths:
        return twoPaths(y[e.x], e.p[0], e.p[1], e.p[2], e.p[3]);
    case Law::saturated: {
        const PairedLaw i = saturated(across(y, e) / e.p[0], e.p[1]);
        return {i.value, i.slope / e.p[0]};
    }
    case Law::knee:
        return softKnee(across(y, e), e.p[0], e.p[1], e.p[2]);
    case Law::leak:
        return tanhLeak(across(y, e), e.p[0]);
    case Law::own:
        return ownCurrent(across(y, e), e.p[0], e.p[1], e.p[2]);
    case Law::pair:
        return pairInput(controlled(y, e), e.p[0]);
    }
    return {};
}

void Equations::residual(const double* y, const double* yp, double drive, double* F) const {
    const int n = m_layout->size;
    for (int row = 0; row < n; ++row) {
        double sum = drive * m_constant[static_cast<std::size_t>(row)];
        for (int k = m_rowStart[static_cast<std::size_t>(row)];
             k < m_rowStart[static_cast<std::size_t>(row) + 1]; ++k)
            sum += m_value[static_cast<std::size_t>(k)] * y[m_column[static_cast<std::size_t>(k)]];
        F[row] = sum;
    }
    for (int k = m_layout->algebraic; k < n; ++k) F[k] += yp[k];
    for (const Element& e : m_elements) {
        const double i = law(y, e).value;
        if (e.from >= 0) F[e.from] += i;
        if (e.to >= 0) F[e.to] -= i;
        if (e.law == Law::junction) F[e.x] += (e.p[0] + e.p[1] * i * i) * i;
        if (e.charge >= 0) F[e.charge] -= i;
    }
}

void Equations::jacobian(const double* y, double cj, double* columns) const {
    const int n = m_layout->size;
    std::copy(m_matrix.begin(), m_matrix.end(), columns);
    const auto add = [&](int row, int column, double value) {
        if (row >= 0 && column >= 0) columns[column * n + row] += value;
    };
    for (int k = m_layout->algebraic; k < n; ++k) add(k, k, cj);
    for (const Element& e : m_elements) {
        const PairedLaw i = law(y, e);
        const auto by = [&](int column, double slope) {
            add(e.from, column, slope);
            add(e.to, column, -slope);
        };
        if (e.x >= 0) {
            by(e.x, i.slope);
            if (e.law == Law::junction) add(e.x, e.x, (e.p[0] + 3 * e.p[1] * i.value * i.value) * i.slope);
            add(e.charge, e.x, -i.slope);
        } else if (e.law == Law::pair) {
            for (std::size_t k = 0; k < e.control.size(); ++k) by(e.control[k], e.weight[k] * i.slope);
        } else {
            by(e.from, i.slope);
            by(e.to, -i.slope);
        }
    }
}

void Equations::lampCurrents(const double* y, double* currents) const {
    for (std::size_t k = 0; k < m_lamps.size(); ++k) currents[k] = law(y, m_elements[m_lamps[k]]).value;
}

} // namespace blinkwright::reference
