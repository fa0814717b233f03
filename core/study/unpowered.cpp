#include "core/study/unpowered.h"

#include "core/study/currents.h"
#include "core/study/dc_path.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using devices::Node;
namespace pins = circuit::timerPin;
using units::Unit;

namespace {

std::string text(double value, Unit unit) {
    return units::formatQuantity(value, unit);
}

std::string netName(const devices::Board& board, Node node) {
    return "'" + board.nodeNames[static_cast<std::size_t>(node)] + "'";
}

void append(std::vector<std::string>& to, const std::vector<std::string>& more) {
    for (const std::string& item : more)
        if (std::find(to.begin(), to.end(), item) == to.end()) to.push_back(item);
}

/// The parts that hang together with a node through anything, capacitors and timers too.
std::vector<std::string> groupOf(const devices::Board& board, Node start) {
    std::set<Node> nodes{start};
    std::set<const devices::Named*> parts;
    const auto take = [&](const devices::Named& part, std::initializer_list<Node> own) {
        if (std::none_of(own.begin(), own.end(), [&](Node n) { return nodes.contains(n); })) return;
        parts.insert(&part);
        for (const Node n : own)
            if (n != devices::open) nodes.insert(n);
    };
    for (std::size_t before = 0; before != nodes.size();) {
        before = nodes.size();
        for (const auto& p : board.supplies) take(p, {p.plus, p.minus});
        for (const auto& p : board.timers)
            take(p, {p.pins[0], p.pins[1], p.pins[2], p.pins[3], p.pins[4], p.pins[5], p.pins[6], p.pins[7]});
        for (const auto& p : board.resistors) take(p, {p.a, p.b});
        for (const auto& p : board.variables) take(p, {p.a, p.b, p.wiper});
        for (const auto& p : board.capacitors) take(p, {p.plus, p.minus});
        for (const auto& p : board.junctions) take(p, {p.anode, p.cathode});
        for (const auto& p : board.switches) take(p, {p.a, p.b});
    }
    std::vector<const devices::Named*> sorted(parts.begin(), parts.end());
    std::sort(sorted.begin(), sorted.end(), [](const auto* a, const auto* b) { return a->id < b->id; });
    std::vector<std::string> refs;
    for (const auto* part : sorted) refs.push_back(part->ref);
    return refs;
}

/// The board with every switch that is ever pressed closed.
devices::Board pressed(const devices::Board& board) {
    devices::Board other = board;
    for (auto& part : other.switches) part.closed = part.closed || !part.presses.empty();
    return other;
}

/// What shorts a supply, where its own resistance takes up most of its voltage.
std::optional<Cause> shortOf(const devices::Board& board, const engine::Instant& at, std::size_t k) {
    const auto& supply = board.supplies[k];
    if (supply.plus == devices::open || supply.minus == devices::open || !(supply.voltage > 0))
        return std::nullopt;
    const double left = supply.voltage - supply.resistance * at.supply_A[k];
    if (left > 0.5 * supply.voltage) return std::nullopt;
    const std::string lost = text(left, Unit::volt) + " of its " + text(supply.voltage, Unit::volt);
    if (supply.plus == supply.minus)
        return Cause{supply.ref + " is shorted: its plus and minus are both in net " +
                         netName(board, supply.plus) + ". Give each a net of its own.",
                     {supply.ref + ":plus", supply.ref + ":minus"}};
    std::vector<std::string> takers, places{supply.ref};
    for (const Flow& flow : flowsInto(board, at, supply.plus)) {
        if (flow.current_A > -0.1 * at.supply_A[k]) continue;
        takers.push_back(flow.name);
        append(places, {flow.place});
    }
    std::string by = listed(takers);
    if (const auto path = dcPath(board, supply.plus, supply.minus);
        path && path->conducts() && path->resistance_ohm * at.supply_A[k] < 2 * left) {
        by = listed(path->parts) + ", " + text(path->resistance_ohm, Unit::ohm) +
             (path->parts.size() > 1 ? " together" : "");
        append(places, path->parts);
    }
    return Cause{supply.ref + " is shorted by " + by + ", and only " + lost + " are left at its pins.",
                 places};
}

/// One of the timer's two supply leads: from a pole of the supply to a pin of the timer, or back.
struct Lead {
    std::string pole, pin; ///< `the plus of BT1`, `pin 8 of U1`
    std::string polePlace, pinPlace;
    std::optional<DcPath> path;
};

/// What is wrong with a lead that does not conduct; nothing where it does.
std::optional<Cause> gapIn(const Lead& lead) {
    if (lead.path && lead.path->conducts()) return std::nullopt;
    Cause cause{"", {lead.pinPlace, lead.polePlace}};
    const std::string between = "between " + lead.pole + " and " + lead.pin;
    if (!lead.path) {
        cause.sentence = "No path leads from " + lead.pin + " to " + lead.pole + ": join them.";
    } else if (!lead.path->openSwitches.empty()) {
        append(cause.places, lead.path->openSwitches);
        cause.sentence = listed(lead.path->openSwitches) +
                         (lead.path->openSwitches.size() > 1 ? " are open " : " is open ") + between +
                         ", and there is no other path.";
    } else {
        append(cause.places, lead.path->backward);
        cause.sentence = listed(lead.path->backward) + " lies the wrong way round " + between +
                         ", and there is no other path.";
    }
    return cause;
}

} // namespace

bool isFed(const devices::Board& given) {
    const devices::Board board = pressed(given);
    const auto& timer = board.timers.front();
    const Node pin8 = timer.pins[pins::supply], pin1 = timer.pins[pins::ground];
    const auto conducts = [](const std::optional<DcPath>& path) { return path && path->conducts(); };
    bool fed = false, drained = false;
    for (const auto& supply : board.supplies) {
        fed = fed || conducts(dcPath(board, supply.plus, pin8, {supply.minus, pin1}, &supply));
        drained = drained || conducts(dcPath(board, pin1, supply.minus, {supply.plus, pin8}, &supply));
    }
    for (std::size_t k = 1; k < board.timers.size() && !(fed && drained); ++k) {
        const auto group = groupOf(board, board.timers[k].pins[pins::output]);
        // A feed from an output may go through capacitors and diodes: a pump. It is enough that they hang
        // together.
        const bool joined = std::find(group.begin(), group.end(), timer.ref) != group.end();
        fed = fed || joined;
        drained = drained || joined;
    }
    return fed && drained;
}

std::vector<Cause> unpoweredCauses(const devices::Board& board, const engine::Instant* at) {
    const auto& timer = board.timers.front();
    const Node pin8 = timer.pins[pins::supply], pin1 = timer.pins[pins::ground];
    const std::string place8 = timer.ref + ":8", place1 = timer.ref + ":1";
    if (board.supplies.empty()) return {{"The circuit has no supply: add one.", {timer.ref}}};
    if (pin8 == devices::open || pin1 == devices::open) {
        Cause open{timer.ref + " has no supply: ", {}};
        if (pin8 == devices::open) open.places.push_back(place8);
        if (pin1 == devices::open) open.places.push_back(place1);
        open.sentence += open.places.size() > 1 ? "pins 8 and 1 are joined to nothing."
                                                : "pin " + open.places.front().substr(timer.ref.size() + 1) +
                                                      " is joined to nothing.";
        open.sentence += " Join pin 8 to the supply's plus and pin 1 to its minus.";
        return {open};
    }
    if (pin8 == pin1)
        return {{"Pins 8 and 1 of " + timer.ref + " are both in net " + netName(board, pin8) +
                     ": join pin 8 to the supply's plus and pin 1 to its minus.",
                 {place8, place1}}};

    // The supply that is meant for this timer: one that reaches a pin of it, else the first.
    const auto reaches = [&](const devices::Supply& supply) {
        return dcPath(board, supply.plus, pin8, {supply.minus, pin1}, &supply) ||
               dcPath(board, pin1, supply.minus, {supply.plus, pin8}, &supply) ||
               dcPath(board, supply.plus, pin1, {supply.minus, pin8}, &supply);
    };
    const auto found = std::find_if(board.supplies.begin(), board.supplies.end(), reaches);
    const auto& supply = found == board.supplies.end() ? board.supplies.front() : *found;
    const auto index = static_cast<std::size_t>(&supply - board.supplies.data());

    double volts = 0;
    if (at) {
        const auto& t = at->timers.front();
        volts = t.supply_V - t.ground_V;
        if (volts < -1e-2)
            return {{"Pin 8 of " + timer.ref + " lies " + text(-volts, Unit::volt) +
                         " below pin 1: " + supply.ref +
                         " is the wrong way round. Join pin 8 to its plus and "
                         "pin 1 to its minus.",
                     {place8, place1, supply.ref}}};
        if (auto cause = shortOf(board, *at, index)) return {*cause};
    }
    for (const auto& [node, name] : {std::pair{supply.plus, "plus"}, std::pair{supply.minus, "minus"}})
        if (node == devices::open)
            return {{"The " + std::string(name) + " of " + supply.ref + " is joined to nothing.",
                     {supply.ref + ":" + name}}};

    const auto group = groupOf(board, pin1);
    if (std::find(group.begin(), group.end(), supply.ref) == group.end()) {
        std::vector<std::string> shown = group;
        if (shown.size() > 6) {
            shown.resize(5);
            shown.push_back(std::to_string(group.size() - 5) + " more parts");
        }
        return {{listed(shown) + (group.size() > 1 ? " float" : " floats") + ": no part joins " +
                     (group.size() > 1 ? "them" : "it") + " to " + supply.ref + ". Join pin 8 of " +
                     timer.ref + " to its plus and pin 1 to its minus.",
                 group}};
    }
    const Lead up{"the plus of " + supply.ref, "pin 8 of " + timer.ref, supply.ref + ":plus", place8,
                  dcPath(board, supply.plus, pin8, {supply.minus, pin1}, &supply)};
    const Lead down{"the minus of " + supply.ref, "pin 1 of " + timer.ref, supply.ref + ":minus", place1,
                    dcPath(board, pin1, supply.minus, {supply.plus, pin8}, &supply)};
    std::vector<Cause> causes;
    for (const Lead& lead : {up, down})
        if (auto cause = gapIn(lead)) causes.push_back(*cause);
    if (!causes.empty()) return causes;

    Cause weak{"Only " + text(std::max(0.0, volts), Unit::volt) + " are left between pins 8 and 1 of " +
                   timer.ref,
               {place8, place1}};
    std::vector<std::string> between = up.path->parts;
    append(between, down.path->parts);
    if (supply.voltage < leastSupply_V) {
        weak.sentence += ": " + supply.ref + " gives no more than " + text(supply.voltage, Unit::volt) + ".";
        append(weak.places, {supply.ref});
    } else if (!between.empty()) {
        weak.sentence += ": " + listed(between) + ", " +
                         text(up.path->resistance_ohm + down.path->resistance_ohm, Unit::ohm) +
                         (between.size() > 1 ? " together, lie" : ", lies") + " between them and " +
                         supply.ref + ".";
        append(weak.places, between);
    } else {
        weak.sentence += ".";
    }
    return {weak};
}

} // namespace blinkwright::study
