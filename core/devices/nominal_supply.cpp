#include "core/devices/board.h"
#include "core/devices/defaults.h"

#include <algorithm>
#include <limits>

namespace blinkwright::devices {

using circuit::Circuit;
using circuit::NetId;
using circuit::Part;
using circuit::PartId;
using circuit::PartKind;
using circuit::PartSet;

namespace {

struct Path {
    NetId a;
    NetId b;
    double resistance;
};

/// Every part that direct current can take, as resistances between nets.
std::vector<Path> pathsOf(const Circuit& circuit, PartSet set) {
    std::vector<Path> paths;
    const auto add = [&](const Part& part, int pinA, int pinB, double resistance) {
        const auto a = circuit.netOf({part.id, pinA});
        const auto b = circuit.netOf({part.id, pinB});
        if (a && b && *a != *b) paths.push_back({*a, *b, resistance});
    };
    for (const Part& part : circuit.parts()) {
        const auto value = [&](std::string_view key) { return effectiveNumber(circuit, set, part.id, key); };
        switch (part.kind) {
        case PartKind::supply:
        case PartKind::resistor:
            add(part, 0, 1, value("resistance"));
            break;
        case PartKind::variable: {
            const Sections sections = sectionsOf(value("resistance"), value("setting"));
            add(part, 0, 2, sections.upper);
            add(part, 2, 1, sections.lower);
            break;
        }
        case PartKind::lamp:
        case PartKind::diode:
            add(part, 0, 1, value("series_resistance"));
            break;
        case PartKind::toggle:
            if (effectiveFlag(circuit, set, part.id, "closed")) add(part, 0, 1, switchClosedResistance);
            break;
        case PartKind::timer:
        case PartKind::capacitor:
            break;
        }
    }
    return paths;
}

/// Least resistance from one net to every net (Bellman and Ford: the wirings are small and mostly shallow).
std::map<NetId, double> reachFrom(NetId start, const std::vector<Path>& paths) {
    std::map<NetId, double> reach{{start, 0.0}};
    const auto shorten = [&](NetId from, NetId to, double resistance) {
        const auto at = reach.find(from);
        if (at == reach.end()) return false;
        const double through = at->second + resistance;
        const auto [known, fresh] = reach.try_emplace(to, through);
        if (fresh) return true;
        if (!(through < known->second)) return false;
        known->second = through;
        return true;
    };
    for (bool changed = true; changed;) {
        changed = false;
        for (const Path& path : paths) {
            changed |= shorten(path.a, path.b, path.resistance);
            changed |= shorten(path.b, path.a, path.resistance);
        }
    }
    return reach;
}

} // namespace

double nominalSupply(const Circuit& circuit, PartSet set, PartId timer) {
    double highest = 0;
    double nearest = std::numeric_limits<double>::infinity();
    double voltage = 0;
    std::map<NetId, double> reach;
    if (const auto pin8 = circuit.netOf({timer, circuit::timerPin::supply}))
        reach = reachFrom(*pin8, pathsOf(circuit, set));
    for (const Part& part : circuit.parts()) {
        if (part.kind != PartKind::supply) continue;
        const double own = effectiveNumber(circuit, set, part.id, "voltage");
        highest = std::max(highest, own);
        const auto plus = circuit.netOf({part.id, 0});
        const auto at = plus ? reach.find(*plus) : reach.end();
        if (at == reach.end() || !(at->second < nearest)) continue;
        nearest = at->second;
        voltage = own;
    }
    return nearest < std::numeric_limits<double>::infinity() ? voltage : highest;
}

} // namespace blinkwright::devices
