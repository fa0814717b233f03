#include "core/devices/nominal_supply.h"

#include "core/devices/board.h"
#include "core/devices/defaults.h"

#include <algorithm>
#include <limits>
#include <queue>

namespace blinkwright::devices {

using circuit::Circuit;
using circuit::NetId;
using circuit::Part;
using circuit::PartId;
using circuit::PartKind;
using circuit::PartSet;

SupplyFinder::SupplyFinder(const Circuit& circuit, PartSet set) {
    for (const auto& net : circuit.nets()) {
        for (const auto pin : net.pins) m_nets.emplace(pin, net.id);
    }
    for (const Part& part : circuit.parts()) {
        const auto value = [&](std::string_view key) { return effectiveNumber(circuit, set, part.id, key); };
        const auto add = [&](int pinA, int pinB, double resistance) {
            const auto a = netOf(part.id, pinA);
            const auto b = netOf(part.id, pinB);
            if (!a || !b) return;
            m_paths[*a].push_back({*b, resistance});
            m_paths[*b].push_back({*a, resistance});
        };
        switch (part.kind) {
        case PartKind::supply:
            add(0, 1, value("resistance"));
            m_sources.push_back({netOf(part.id, 0), value("voltage")});
            break;
        case PartKind::resistor:
            add(0, 1, value("resistance"));
            break;
        case PartKind::variable: {
            const Sections sections = sectionsOf(value("resistance"), value("setting"));
            add(0, 2, sections.upper);
            add(2, 1, sections.lower);
            if (!netOf(part.id, 2)) add(0, 1, sections.upper + sections.lower);
            break;
        }
        case PartKind::lamp:
        case PartKind::diode:
            add(0, 1, value("series_resistance"));
            break;
        case PartKind::toggle:
            if (effectiveFlag(circuit, set, part.id, "closed")) add(0, 1, switchClosedResistance);
            break;
        case PartKind::timer:
        case PartKind::capacitor:
            break;
        }
    }
}

std::optional<NetId> SupplyFinder::netOf(PartId part, int pin) const {
    const auto at = m_nets.find({part, pin});
    return at == m_nets.end() ? std::nullopt : std::optional(at->second);
}

std::map<NetId, double> SupplyFinder::reachFrom(NetId start) const {
    std::map<NetId, double> reach;
    using Ahead = std::pair<double, NetId>;
    std::priority_queue<Ahead, std::vector<Ahead>, std::greater<>> ahead;
    ahead.emplace(0.0, start);
    while (!ahead.empty()) {
        const auto [resistance, net] = ahead.top();
        ahead.pop();
        if (!reach.emplace(net, resistance).second) continue;
        const auto paths = m_paths.find(net);
        if (paths == m_paths.end()) continue;
        for (const Path& path : paths->second) {
            if (!reach.contains(path.to)) ahead.emplace(resistance + path.resistance, path.to);
        }
    }
    return reach;
}

double SupplyFinder::nominalSupply(PartId timer) const {
    double highest = 0;
    double nearest = std::numeric_limits<double>::infinity();
    double voltage = 0;
    std::map<NetId, double> reach;
    if (const auto pin8 = netOf(timer, circuit::timerPin::supply)) reach = reachFrom(*pin8);
    for (const Source& source : m_sources) {
        highest = std::max(highest, source.voltage);
        const auto at = source.plus ? reach.find(*source.plus) : reach.end();
        if (at == reach.end() || !(at->second < nearest)) continue;
        nearest = at->second;
        voltage = source.voltage;
    }
    return nearest < std::numeric_limits<double>::infinity() ? voltage : highest;
}

} // namespace blinkwright::devices
