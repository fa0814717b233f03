#include "core/study/unpowered.h"

#include "core/base/wording.h"
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

const std::string& netName(const devices::Board& board, Node node) {
    return board.nodeNames[static_cast<std::size_t>(node)];
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
    refs.reserve(sorted.size());
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
    if (supply.plus == supply.minus)
        return Cause{
            wording::inWords("%1 is shorted: its plus and minus are both in net '%2'. Give each a net "
                             "of its own.",
                             supply.ref, netName(board, supply.plus)),
            {supply.ref + ":plus", supply.ref + ":minus"}};
    std::vector<std::string> takers, places{supply.ref};
    for (const Flow& flow : flowsInto(board, at, supply.plus)) {
        if (flow.current_A > -0.1 * at.supply_A[k]) continue;
        takers.push_back(flow.name);
        append(places, {flow.place});
    }
    const std::string rest = text(left, Unit::volt), whole = text(supply.voltage, Unit::volt);
    if (const auto path = dcPath(board, supply.plus, supply.minus);
        path && path->conducts() && path->resistance_ohm * at.supply_A[k] < 2 * left) {
        append(places, path->parts);
        const std::string parts = listed(path->parts), ohms = text(path->resistance_ohm, Unit::ohm);
        return Cause{
            path->parts.size() > 1
                ? wording::inWords("%1 is shorted by %2, %3 together, and only %4 of its %5 are left "
                                   "at its pins.",
                                   supply.ref, parts, ohms, rest, whole)
                : wording::inWords("%1 is shorted by %2, %3, and only %4 of its %5 are left at its pins.",
                                   supply.ref, parts, ohms, rest, whole),
            places};
    }
    return Cause{wording::inWords("%1 is shorted by %2, and only %3 of its %4 are left at its pins.",
                                  supply.ref, listed(takers), rest, whole),
                 places};
}

/// What is said of a lead: %1 is the supply, %2 the timer, %3 what blocks the way.
struct LeadWords {
    std::string_view noPath, openSwitch, openSwitches, backward;
};
constexpr LeadWords plusWords{
    wording::marked("No path leads from pin 8 of %2 to the plus of %1: join them."),
    wording::marked("%3 is open between the plus of %1 and pin 8 of %2, and there is no other path."),
    wording::marked("%3 are open between the plus of %1 and pin 8 of %2, and there is no other path."),
    wording::marked(
        "%3 lies the wrong way round between the plus of %1 and pin 8 of %2, and there is no other path.")};
constexpr LeadWords minusWords{
    wording::marked("No path leads from pin 1 of %2 to the minus of %1: join them."),
    wording::marked("%3 is open between the minus of %1 and pin 1 of %2, and there is no other path."),
    wording::marked("%3 are open between the minus of %1 and pin 1 of %2, and there is no other path."),
    wording::marked(
        "%3 lies the wrong way round between the minus of %1 and pin 1 of %2, and there is no other path.")};

/// One of the timer's two supply leads: from a pole of the supply to a pin of the timer, or back.
struct Lead {
    const LeadWords& words;
    std::string supply, timer;
    std::string polePlace, pinPlace;
    std::optional<DcPath> path;
};

/// What is wrong with a lead that does not conduct; nothing where it does.
std::optional<Cause> gapIn(const Lead& lead) {
    if (lead.path && lead.path->conducts()) return std::nullopt;
    Cause cause{"", {lead.pinPlace, lead.polePlace}};
    if (!lead.path) {
        cause.sentence = wording::inWords(lead.words.noPath, lead.supply, lead.timer);
        return cause;
    }
    const bool isOpen = !lead.path->openSwitches.empty();
    const auto& blocking = isOpen ? lead.path->openSwitches : lead.path->backward;
    append(cause.places, blocking);
    const std::string_view words = !isOpen               ? lead.words.backward
                                   : blocking.size() > 1 ? lead.words.openSwitches
                                                         : lead.words.openSwitch;
    cause.sentence = wording::inWords(words, lead.supply, lead.timer, listed(blocking));
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
    if (board.supplies.empty())
        return {{wording::inWords("The circuit has no supply: add one."), {timer.ref}}};
    if (pin8 == devices::open || pin1 == devices::open) {
        Cause open;
        if (pin8 == devices::open) open.places.push_back(place8);
        if (pin1 == devices::open) open.places.push_back(place1);
        open.sentence =
            open.places.size() > 1
                ? wording::inWords("%1 has no supply: pins 8 and 1 are joined to nothing. Join pin 8 to the "
                                   "supply's plus and pin 1 to its minus.",
                                   timer.ref)
                : wording::inWords(
                      "%1 has no supply: pin %2 is joined to nothing. Join pin 8 to the supply's "
                      "plus and pin 1 to its minus.",
                      timer.ref, pin8 == devices::open ? 8 : 1);
        return {open};
    }
    if (pin8 == pin1)
        return {{wording::inWords("Pins 8 and 1 of %1 are both in net '%2': join pin 8 to the supply's plus "
                                  "and pin 1 to its minus.",
                                  timer.ref, netName(board, pin8)),
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
            return {
                {wording::inWords("Pin 8 of %1 lies %2 below pin 1: %3 is the wrong way round. Join pin 8 "
                                  "to its plus and pin 1 to its minus.",
                                  timer.ref, text(-volts, Unit::volt), supply.ref),
                 {place8, place1, supply.ref}}};
        if (auto cause = shortOf(board, *at, index)) return {*cause};
    }
    if (supply.plus == devices::open)
        return {
            {wording::inWords("The plus of %1 is joined to nothing.", supply.ref), {supply.ref + ":plus"}}};
    if (supply.minus == devices::open)
        return {
            {wording::inWords("The minus of %1 is joined to nothing.", supply.ref), {supply.ref + ":minus"}}};

    const auto group = groupOf(board, pin1);
    if (std::find(group.begin(), group.end(), supply.ref) == group.end()) {
        std::vector<std::string> shown = group;
        if (shown.size() > 6) {
            shown.resize(5);
            shown.push_back(wording::inWords("%1 more parts", group.size() - 5));
        }
        return {
            {group.size() > 1
                 ? wording::inWords("%1 float: no part joins them to %2. Join pin 8 of %3 to its plus and "
                                    "pin 1 to its minus.",
                                    listed(shown), supply.ref, timer.ref)
                 : wording::inWords("%1 floats: no part joins it to %2. Join pin 8 of %3 to its plus and "
                                    "pin 1 to its minus.",
                                    listed(shown), supply.ref, timer.ref),
             group}};
    }
    const Lead up{plusWords, supply.ref,
                  timer.ref, supply.ref + ":plus",
                  place8,    dcPath(board, supply.plus, pin8, {supply.minus, pin1}, &supply)};
    const Lead down{minusWords, supply.ref,
                    timer.ref,  supply.ref + ":minus",
                    place1,     dcPath(board, pin1, supply.minus, {supply.plus, pin8}, &supply)};
    std::vector<Cause> causes;
    for (const Lead& lead : {up, down})
        if (auto cause = gapIn(lead)) causes.push_back(*cause);
    if (!causes.empty()) return causes;

    Cause weak{"", {place8, place1}};
    const std::string rest = text(std::max(0.0, volts), Unit::volt);
    std::vector<std::string> between = up.path->parts;
    append(between, down.path->parts);
    if (supply.voltage < leastSupply_V) {
        weak.sentence =
            wording::inWords("Only %1 are left between pins 8 and 1 of %2: %3 gives no more than %4.", rest,
                             timer.ref, supply.ref, text(supply.voltage, Unit::volt));
        append(weak.places, {supply.ref});
    } else if (!between.empty()) {
        const std::string ohms = text(up.path->resistance_ohm + down.path->resistance_ohm, Unit::ohm);
        weak.sentence =
            between.size() > 1
                ? wording::inWords(
                      "Only %1 are left between pins 8 and 1 of %2: %3, %4 together, lie between "
                      "them and %5.",
                      rest, timer.ref, listed(between), ohms, supply.ref)
                : wording::inWords(
                      "Only %1 are left between pins 8 and 1 of %2: %3, %4, lies between them and "
                      "%5.",
                      rest, timer.ref, listed(between), ohms, supply.ref);
        append(weak.places, between);
    } else {
        weak.sentence = wording::inWords("Only %1 are left between pins 8 and 1 of %2.", rest, timer.ref);
    }
    return {weak};
}

} // namespace blinkwright::study
