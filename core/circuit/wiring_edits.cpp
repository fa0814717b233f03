#include "core/circuit/wiring_edits.h"

#include "core/base/wording.h"
#include "core/circuit/net_planning.h"
#include "core/circuit/refusals.h"

#include <algorithm>

namespace blinkwright::circuit {

namespace {

constexpr std::string_view automaticPrefix = "wire ";

Result<void> checkPin(const Circuit& c, PinRef pin) {
    const Part* part = c.find(pin.part);
    if (!part) return noSuchPart();
    if (pin.pin < 0 || static_cast<std::size_t>(pin.pin) >= info(part->kind).pins.size())
        return Fault{"", wording::inWords("%1 has no such pin", part->ref)};
    return {};
}

Fault inNoNet(const Circuit& c, PinRef pin) {
    return {"", wording::inWords("%1 is in no net", c.pinText(pin))};
}

/// The supply's pin in a net, if there is one.
std::optional<PinRef> supplyPin(const Circuit& c, const Net& net) {
    const auto found = std::ranges::find_if(net.pins, [&](PinRef pin) {
        const Part* part = c.find(pin.part);
        return part && part->kind == PartKind::supply;
    });
    return found == net.pins.end() ? std::nullopt : std::optional(*found);
}

int rankOfName(const Circuit& c, const Net& net) {
    if (isAutomaticName(net.name)) return 0;
    return supplyPin(c, net) ? 2 : 1;
}

std::size_t placeInList(const Circuit& c, NetId net) {
    return static_cast<std::size_t>(std::ranges::find(c.nets(), net, &Net::id) - c.nets().begin());
}

/// Takes a pin off its net and answers with a pin that stays in it.
Result<PinRef> anchorLeft(EditPlan& plan, PinRef from, NetId net) {
    plan.add({edits::JoinPin{from, std::nullopt}});
    const Net* left = plan.circuit().find(net);
    if (!left || left->pins.empty())
        return Fault{"", wording::inWords("%1 is the only pin of its net", plan.circuit().pinText(from))};
    return left->pins.front();
}

} // namespace

namespace planning {

void tidyNet(EditPlan& plan, NetId id) {
    const Net* net = plan.circuit().find(id);
    if (!net) return;
    if (net->pins.empty() || (net->pins.size() == 1 && isAutomaticName(net->name)))
        plan.add({edits::RemoveNet{id}});
}

void nameRail(EditPlan& plan, NetId id) {
    const Net* net = plan.circuit().find(id);
    if (!net || !isAutomaticName(net->name)) return;
    const auto pin = supplyPin(plan.circuit(), *net);
    if (!pin) return;
    const std::string name = pin->pin == 0 ? "supply" : "ground";
    if (plan.circuit().canNameNet(name)) plan.add({edits::RenameNet{id, name}});
}

void merge(EditPlan& plan, NetId a, NetId b) {
    const Circuit& c = plan.circuit();
    const auto rank = [&](NetId id) { return rankOfName(c, *c.find(id)); };
    const bool later = placeInList(c, b) < placeInList(c, a);
    if (rank(b) > rank(a) || (rank(b) == rank(a) && later)) std::swap(a, b);
    Net kept = *c.find(a);
    const Net lost = *c.find(b);
    kept.pins.insert(kept.pins.end(), lost.pins.begin(), lost.pins.end());
    for (const Extra& extra : lost.extras)
        if (std::ranges::find(kept.extras, extra.key, &Extra::key) == kept.extras.end())
            kept.extras.push_back(extra);
    plan.add({edits::RemoveNet{b}});
    const std::size_t index = placeInList(c, a);
    plan.add({edits::RemoveNet{a}});
    plan.add({edits::AddNet{std::move(kept), index}});
    nameRail(plan, a);
}

void unite(EditPlan& plan, PinRef a, PinRef b) {
    const Circuit& c = plan.circuit();
    const auto netA = c.netOf(a), netB = c.netOf(b);
    if (netA && netB) return merge(plan, *netA, *netB);
    if (netA || netB) {
        const NetId net = netA ? *netA : *netB;
        plan.add({edits::JoinPin{netA ? b : a, net}});
        return nameRail(plan, net);
    }
    const NetId net = c.nextNetId();
    plan.add({edits::AddNet{{net, freeNetName(c), {a, b}, {}}}});
    nameRail(plan, net);
}

} // namespace planning

bool isAutomaticName(std::string_view name) {
    if (!name.starts_with(automaticPrefix)) return false;
    name.remove_prefix(automaticPrefix.size());
    return !name.empty() && std::ranges::all_of(name, [](char ch) { return ch >= '0' && ch <= '9'; });
}

std::string freeNetName(const Circuit& circuit) {
    for (std::size_t n = 1;; ++n) {
        std::string name = std::string(automaticPrefix) + std::to_string(n);
        if (!circuit.findNet(name)) return name;
    }
}

Result<void> canJoinPins(const Circuit& c, PinRef a, PinRef b) {
    for (const PinRef pin : {a, b})
        if (auto ok = checkPin(c, pin); !ok) return ok;
    if (a == b) return Fault{"", wording::inWords("%1 cannot be joined to itself", c.pinText(a))};
    const auto net = c.netOf(a);
    if (net && net == c.netOf(b))
        return Fault{"", wording::inWords("%1 and %2 are joined already, by the net \"%3\"", c.pinText(a),
                                          c.pinText(b), c.find(*net)->name)};
    return {};
}

Result<void> canJoinToNet(const Circuit& c, PinRef pin, NetId id) {
    if (auto ok = checkPin(c, pin); !ok) return ok;
    const Net* net = c.find(id);
    if (!net) return noSuchNet();
    if (c.netOf(pin) == id)
        return Fault{"", wording::inWords("%1 is in the net \"%2\" already", c.pinText(pin), net->name)};
    return {};
}

Result<Edit> joinPins(const Circuit& c, PinRef a, PinRef b) {
    if (auto ok = canJoinPins(c, a, b); !ok) return ok.fault();
    EditPlan plan(c);
    planning::unite(plan, a, b);
    return std::move(plan).done(wording::inWords("Join %1 and %2", c.pinText(a), c.pinText(b)));
}

Result<Edit> joinToNet(const Circuit& c, PinRef pin, NetId net) {
    if (auto ok = canJoinToNet(c, pin, net); !ok) return ok.fault();
    EditPlan plan(c);
    if (const auto now = c.netOf(pin))
        planning::merge(plan, *now, net);
    else
        plan.add({edits::JoinPin{pin, net}});
    planning::nameRail(plan, net);
    return std::move(plan).done(wording::inWords("Join %1 to net %2", c.pinText(pin), c.find(net)->name));
}

Result<Edit> putIntoNet(const Circuit& c, PinRef pin, NetId net) {
    if (auto ok = canJoinToNet(c, pin, net); !ok) return ok.fault();
    EditPlan plan(c);
    const auto before = c.netOf(pin);
    plan.add({edits::JoinPin{pin, net}});
    if (before) planning::tidyNet(plan, *before);
    planning::nameRail(plan, net);
    return std::move(plan).done(wording::inWords("Put %1 into net %2", c.pinText(pin), c.find(net)->name));
}

Result<Edit> putIntoNet(const Circuit& c, PinRef pin, std::string_view netName) {
    if (const Net* net = c.findNet(netName)) return putIntoNet(c, pin, net->id);
    if (auto ok = checkPin(c, pin); !ok) return ok.fault();
    if (auto ok = c.canNameNet(netName); !ok) return ok.fault();
    EditPlan plan(c);
    const auto before = c.netOf(pin);
    const NetId net = c.nextNetId();
    plan.add({edits::AddNet{{net, std::string(netName), {}, {}}}});
    plan.add({edits::JoinPin{pin, net}});
    if (before) planning::tidyNet(plan, *before);
    return std::move(plan).done(wording::inWords("Put %1 into net %2", c.pinText(pin), netName));
}

Result<Edit> takeOffNet(const Circuit& c, PinRef pin) {
    if (auto ok = checkPin(c, pin); !ok) return ok.fault();
    const auto net = c.netOf(pin);
    if (!net) return inNoNet(c, pin);
    EditPlan plan(c);
    plan.add({edits::JoinPin{pin, std::nullopt}});
    planning::tidyNet(plan, *net);
    return std::move(plan).done(wording::inWords("Take %1 off net %2", c.pinText(pin), c.find(*net)->name));
}

Result<Edit> moveWireEnd(const Circuit& c, PinRef from, PinRef to) {
    for (const PinRef pin : {from, to})
        if (auto ok = checkPin(c, pin); !ok) return ok.fault();
    const auto net = c.netOf(from);
    if (!net) return inNoNet(c, from);
    if (from == to) return Fault{"", wording::inWords("the wire ends at %1 already", c.pinText(to))};
    if (c.netOf(to) == net) return takeOffNet(c, from);
    EditPlan plan(c);
    const auto anchor = anchorLeft(plan, from, *net);
    if (!anchor) return anchor.fault();
    planning::unite(plan, anchor.value(), to);
    return std::move(plan).done(
        wording::inWords("Move the wire from %1 to %2", c.pinText(from), c.pinText(to)));
}

Result<Edit> moveWireEnd(const Circuit& c, PinRef from, NetId to) {
    if (auto ok = checkPin(c, from); !ok) return ok.fault();
    const auto net = c.netOf(from);
    const Net* target = c.find(to);
    if (!net) return inNoNet(c, from);
    if (!target) return noSuchNet();
    if (*net == to) return takeOffNet(c, from);
    EditPlan plan(c);
    if (const auto anchor = anchorLeft(plan, from, *net); !anchor) return anchor.fault();
    planning::merge(plan, *net, to);
    return std::move(plan).done(
        wording::inWords("Move the wire from %1 to net %2", c.pinText(from), target->name));
}

Result<Edit> renameNet(const Circuit& c, NetId id, std::string_view name) {
    const Net* net = c.find(id);
    if (!net) return noSuchNet();
    if (auto ok = c.canNameNet(name, id); !ok) return ok.fault();
    return Edit{edits::RenameNet{id, std::string(name)}};
}

} // namespace blinkwright::circuit
