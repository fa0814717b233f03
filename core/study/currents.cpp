#include "core/study/currents.h"

#include "core/base/wording.h"
#include "core/devices/laws.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using devices::Node;
namespace pins = circuit::timerPin;

namespace {

class Collector {
  public:
    Collector(const engine::Instant& at, Node node) : m_at(at), m_node(node) {}

    /// A current that leaves `from` and enters `to`.
    void add(const std::string& name, const std::string& place, Node from, Node to, double current_A) {
        if (from == to) return;
        if (to == m_node) sum(name, place, current_A);
        if (from == m_node) sum(name, place, -current_A);
    }
    void resistance(const devices::Named& part, Node a, Node b, double ohms) {
        if (a == devices::open || b == devices::open) return;
        add(part.ref, part.ref, a, b, (volt(a) - volt(b)) / ohms);
    }
    double volt(Node node) const {
        return node == devices::open ? 0 : m_at.node_V[static_cast<std::size_t>(node)];
    }
    std::vector<Flow> take() { return std::move(m_flows); }

  private:
    /// Both sections of one variable resistor, or both ends of a divider, are one flow.
    void sum(const std::string& name, const std::string& place, double current_A) {
        const auto known = std::find_if(m_flows.begin(), m_flows.end(),
                                        [&](const Flow& f) { return f.name == name && f.place == place; });
        if (known == m_flows.end())
            m_flows.push_back({name, place, current_A});
        else
            known->current_A += current_A;
    }

    const engine::Instant& m_at;
    Node m_node;
    std::vector<Flow> m_flows;
};

void timerFlows(Collector& into, const devices::Timer& timer, const engine::TimerInstant& t) {
    const auto node = [&](int pin) { return timer.pins[static_cast<std::size_t>(pin)]; };
    const auto place = [&](int pin) { return timer.ref + ":" + std::to_string(pin + 1); };
    const Node ground = node(pins::ground), supply = node(pins::supply);
    const double level = t.control_V - t.ground_V;
    const auto& sheet = timer.sheet;
    if (timer.connected(pins::threshold)) {
        const double v = into.volt(node(pins::threshold)) - t.ground_V;
        into.add(wording::inWords("the threshold input of %1", timer.ref), place(pins::threshold),
                 node(pins::threshold), ground,
                 devices::conductingSide(sheet.threshold_current, v - level).current);
    }
    if (timer.connected(pins::trigger)) {
        const double v = into.volt(node(pins::trigger)) - t.ground_V;
        into.add(wording::inWords("the trigger input of %1", timer.ref), place(pins::trigger), supply,
                 node(pins::trigger),
                 devices::conductingSide(sheet.trigger_current, 0.5 * level - v).current);
    }
    if (!timer.cmos && node(pins::reset) != devices::open) {
        const double v = into.volt(node(pins::reset)) - t.ground_V;
        into.add(wording::inWords("the reset input of %1", timer.ref), place(pins::reset), ground,
                 node(pins::reset), (0.8 * timer.nominalSupply - v) / sheet.reset_resistance);
    }
    if (timer.connected(pins::discharge))
        into.add(wording::inWords("the discharge pin of %1", timer.ref), place(pins::discharge),
                 node(pins::discharge), ground, t.discharge_A);
    if (t.output_A >= 0)
        into.add(wording::inWords("the output of %1", timer.ref), place(pins::output), supply,
                 node(pins::output), t.output_A);
    else
        into.add(wording::inWords("the output of %1", timer.ref), place(pins::output), node(pins::output),
                 ground, -t.output_A);
    if (node(pins::control) != devices::open) {
        const std::string name = wording::inWords("the divider of %1", timer.ref);
        into.add(name, place(pins::control), supply, node(pins::control),
                 (t.supply_V - t.control_V) / sheet.divider_resistance);
        into.add(name, place(pins::control), node(pins::control), ground,
                 0.5 * level / sheet.divider_resistance);
    }
    into.add(wording::inWords("%1 itself", timer.ref), place(pins::supply), supply, ground, t.idle_A);
}

} // namespace

std::vector<Flow> flowsInto(const devices::Board& board, const engine::Instant& at, Node node) {
    if (node == devices::open) return {};
    Collector into(at, node);
    for (std::size_t k = 0; k < board.supplies.size(); ++k)
        into.add(board.supplies[k].ref, board.supplies[k].ref, board.supplies[k].minus,
                 board.supplies[k].plus, at.supply_A[k]);
    for (const auto& part : board.resistors) into.resistance(part, part.a, part.b, part.resistance);
    for (const auto& part : board.variables) {
        into.resistance(part, part.a, part.wiper, part.upper);
        into.resistance(part, part.wiper, part.b, part.lower);
    }
    for (std::size_t k = 0; k < board.switches.size(); ++k)
        into.add(board.switches[k].ref, board.switches[k].ref, board.switches[k].a, board.switches[k].b,
                 at.switch_A[k]);
    for (std::size_t k = 0; k < board.capacitors.size(); ++k) {
        const auto& part = board.capacitors[k];
        if (part.plus == devices::open || part.minus == devices::open) continue;
        into.add(wording::inWords("leakage of %1", part.ref), part.ref, part.plus, part.minus,
                 at.capacitor_V[k] * part.leakageConductance);
    }
    for (std::size_t k = 0; k < board.junctions.size(); ++k)
        into.add(board.junctions[k].ref, board.junctions[k].ref, board.junctions[k].anode,
                 board.junctions[k].cathode, at.junction_A[k]);
    for (std::size_t k = 0; k < board.timers.size(); ++k) timerFlows(into, board.timers[k], at.timers[k]);
    auto flows = into.take();
    std::stable_sort(flows.begin(), flows.end(), [](const Flow& a, const Flow& b) {
        return std::abs(a.current_A) > std::abs(b.current_A);
    });
    std::erase_if(flows, [most = flows.empty() ? 0.0 : std::abs(flows.front().current_A)](const Flow& f) {
        return !(std::abs(f.current_A) > 1e-3 * most);
    });
    return flows;
}

} // namespace blinkwright::study
