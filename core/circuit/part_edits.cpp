#include "core/circuit/part_edits.h"

#include "core/base/wording.h"
#include "core/circuit/net_planning.h"
#include "core/circuit/refusals.h"
#include "core/circuit/wiring_edits.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace blinkwright::circuit {

namespace {

/// "R1", or "3 parts".
std::string named(const Circuit& c, std::span<const PartId> parts) {
    const Part* only = parts.size() == 1 ? c.find(parts.front()) : nullptr;
    return only ? only->ref : wording::inWords("%1 parts", parts.size());
}

std::vector<PartId> idsOf(const Places& places) {
    std::vector<PartId> ids;
    for (const auto& [id, place] : places) ids.push_back(id);
    return ids;
}

/// @param text marked for translation; %1 is what is placed.
Result<Edit> placeAll(const Circuit& c, std::string_view text, Places&& places) {
    if (places.empty()) return Fault{"", wording::inWords("no part is chosen")};
    edits::Group group{wording::inWords(text, named(c, idsOf(places))), {}};
    for (auto& [id, place] : places) {
        if (!c.find(id)) return noSuchPart();
        const Placement* stated = c.placement(id);
        place.extras = stated ? stated->extras : Extras{};
        group.edits.push_back({edits::Place{id, std::move(place)}});
    }
    return Edit{std::move(group)};
}

/// The middle of what the places span, on the grid; of one part its own place.
Placement middleOf(const Places& places) {
    Placement low = places.begin()->second, high = low;
    for (const auto& [id, place] : places) {
        low.x = std::min(low.x, place.x);
        low.y = std::min(low.y, place.y);
        high.x = std::max(high.x, place.x);
        high.y = std::max(high.y, place.y);
    }
    const auto snapped = [&](double a, double b) {
        return places.size() == 1 ? a : gridStep * std::round((a + b) / 2 / gridStep);
    };
    return {snapped(low.x, high.x), snapped(low.y, high.y), 0, false, {}};
}

std::string lettersOf(const std::string& ref) {
    return ref.substr(0, ref.find_first_of("0123456789"));
}

/// The designator that a copied part has here: its own where that is free, else the next one with its letters
/// that neither circuit has. A copy of RA7 is called RA8.
std::string refHere(const Circuit& here, const Circuit& copy, const std::string& ref) {
    if (!here.findRef(ref)) return ref;
    const std::string letters = lettersOf(ref);
    for (std::size_t n = 1;; ++n) {
        std::string next = letters + std::to_string(n);
        if (!here.findRef(next) && !copy.findRef(next)) return next;
    }
}

/// Adds what a copy holds to a plan, part by part.
class Paster {
  public:
    Paster(EditPlan& plan, const Circuit& copy, double dx, double dy)
        : m_plan(plan), m_copy(copy), m_dx(dx), m_dy(dy) {}

    std::vector<PartId> paste() {
        std::vector<PartId> fresh;
        for (const Part& part : m_copy.parts()) {
            if (m_plan.refused()) return {};
            fresh.push_back(addPart(part));
        }
        for (const Net& net : m_copy.nets())
            if (!net.pins.empty()) addNet(net);
        addTiesAndReels();
        return fresh;
    }

  private:
    PartId addPart(const Part& original) {
        const Circuit& c = m_plan.circuit();
        Part part = original;
        part.id = c.nextPartId();
        part.ref = refHere(c, m_copy, original.ref);
        const PartId id = m_twin[original.id] = part.id;
        m_plan.add({edits::AddPart{std::move(part),
                                   static_cast<std::size_t>(-1),
                                   {m_copy.overrideExtras(PartSet::A, original.id),
                                    m_copy.overrideExtras(PartSet::B, original.id)}}});
        for (auto [set, layer] : {std::pair{PartSet::A, Layer::setA}, std::pair{PartSet::B, Layer::setB}})
            for (const auto& [key, value] : m_copy.overrides(set, original.id))
                m_plan.add({edits::SetValue{layer, id, key, value}});
        if (const Placement* stated = m_copy.placement(original.id)) {
            Placement place = *stated;
            place.x += m_dx;
            place.y += m_dy;
            m_plan.add({edits::Place{id, std::move(place)}});
        }
        return id;
    }

    void addNet(const Net& original) {
        const Circuit& c = m_plan.circuit();
        Net net = original;
        net.id = c.nextNetId();
        if (c.findNet(net.name)) net.name = freeNetName(c);
        for (PinRef& pin : net.pins) pin.part = m_twin[pin.part];
        m_plan.add({edits::AddNet{std::move(net)}});
    }

    void addTiesAndReels() {
        auto ties = m_plan.circuit().ties;
        for (auto tie : m_copy.ties) {
            for (ValueRef& value : tie) value.part = m_twin[value.part];
            ties.push_back(std::move(tie));
        }
        if (!m_copy.ties.empty()) m_plan.add({edits::SetTies{std::move(ties)}});
        auto reels = m_plan.circuit().reels;
        for (auto reel : m_copy.reels) {
            for (PartId& part : reel) part = m_twin[part];
            reels.push_back(std::move(reel));
        }
        if (!m_copy.reels.empty()) m_plan.add({edits::SetReels{std::move(reels)}});
    }

    EditPlan& m_plan;
    const Circuit& m_copy;
    double m_dx, m_dy;
    std::map<PartId, PartId> m_twin;
};

/// @param text marked for translation; %1 is what comes to be.
Result<NewParts> pasteAs(std::string_view text, const Circuit& c, const Circuit& copy, double dx, double dy) {
    EditPlan plan(c);
    const auto fresh = Paster(plan, copy, dx, dy).paste();
    auto name = wording::inWords(text, named(plan.circuit(), fresh));
    auto edit = std::move(plan).done(std::move(name));
    if (!edit) return edit.fault();
    return NewParts{std::move(edit).value(), fresh};
}

} // namespace

Values startValues(PartKind kind) {
    // A block battery, and values that a blinker often has: common practice, no source.
    switch (kind) {
    case PartKind::supply:
        return {{"voltage", 9.0}};
    case PartKind::resistor:
        return {{"resistance", 10e3}};
    case PartKind::variable:
        return {{"resistance", 100e3}};
    case PartKind::capacitor:
        return {{"capacitance", 10e-6}};
    case PartKind::timer:
    case PartKind::lamp:
    case PartKind::diode:
    case PartKind::toggle:
        break;
    }
    return {};
}

Result<NewParts> addPart(const Circuit& c, PartKind kind, const Placement& place) {
    EditPlan plan(c);
    const PartId id = c.nextPartId();
    const std::string ref = c.freeRef(kind);
    plan.add({edits::AddPart{{id, kind, ref, startValues(kind), {}}}});
    plan.add({edits::Place{id, place}});
    auto edit = std::move(plan).done(wording::inWords("Add %1", ref));
    if (!edit) return edit.fault();
    return NewParts{std::move(edit).value(), {id}};
}

Result<Edit> deleteParts(const Circuit& c, std::span<const PartId> parts) {
    if (parts.empty()) return Fault{"", wording::inWords("no part is chosen")};
    std::set<NetId> touched;
    for (const Net& net : c.nets())
        if (std::ranges::any_of(
                net.pins, [&](PinRef pin) { return std::ranges::find(parts, pin.part) != parts.end(); }))
            touched.insert(net.id);
    EditPlan plan(c);
    for (const PartId part : parts) plan.add({edits::RemovePart{part}});
    for (const NetId net : touched) planning::tidyNet(plan, net);
    return std::move(plan).done(wording::inWords("Delete %1", named(c, parts)));
}

Result<Edit> moveParts(const Circuit& c, const Places& shown, double dx, double dy) {
    Places moved = shown;
    for (auto& [id, place] : moved) {
        place.x += dx;
        place.y += dy;
    }
    return placeAll(c, wording::marked("Move %1"), std::move(moved));
}

Result<Edit> turnParts(const Circuit& c, const Places& shown) {
    Places turned = shown;
    const Placement middle = shown.empty() ? Placement{} : middleOf(shown);
    for (auto& [id, place] : turned) {
        const double dx = place.x - middle.x, dy = place.y - middle.y;
        place.x = middle.x - dy; // clockwise, since y grows downwards
        place.y = middle.y + dx;
        place.turn = (place.turn + 90) % 360;
    }
    return placeAll(c, wording::marked("Turn %1"), std::move(turned));
}

Result<Edit> mirrorParts(const Circuit& c, const Places& shown) {
    Places mirrored = shown;
    const Placement middle = shown.empty() ? Placement{} : middleOf(shown);
    for (auto& [id, place] : mirrored) {
        place.x = 2 * middle.x - place.x;
        // A part is mirrored first and turned then: seen in a mirror, it turns the other way.
        place.turn = (360 - place.turn) % 360;
        place.mirror = !place.mirror;
    }
    return placeAll(c, wording::marked("Mirror %1"), std::move(mirrored));
}

Result<Edit> renamePart(const Circuit& c, PartId id, std::string_view ref) {
    if (!c.find(id)) return noSuchPart();
    if (auto ok = c.canName(ref, id); !ok) return ok.fault();
    return Edit{edits::RenamePart{id, std::string(ref)}};
}

Circuit copyOf(const Circuit& c, const Places& shown) {
    Circuit copy;
    std::map<PartId, PartId> twin;
    for (const Part& part : c.parts()) {
        const auto place = shown.find(part.id);
        if (place == shown.end()) continue;
        // What the circuit has let in once is let in again.
        const PartId id = twin[part.id] = copy.addPart(part.kind, part.ref, part.values, part.extras).value();
        for (PartSet set : {PartSet::A, PartSet::B}) {
            for (const auto& [key, value] : c.overrides(set, part.id))
                (void)copy.setOverride(set, id, key, value);
            copy.setOverrideExtras(set, id, c.overrideExtras(set, part.id));
        }
        Placement put = place->second;
        const Placement* stated = c.placement(part.id);
        put.extras = stated ? stated->extras : Extras{};
        copy.place(id, std::move(put));
    }
    for (const Net& net : c.nets()) {
        std::vector<PinRef> inside;
        for (const PinRef pin : net.pins)
            if (const auto found = twin.find(pin.part); found != twin.end())
                inside.push_back({found->second, pin.pin});
        if (inside.size() < 2) continue;
        const NetId id = copy.addNet(net.name, net.extras).value();
        for (const PinRef pin : inside) (void)copy.join(pin, id);
    }
    for (const auto& tie : c.ties) {
        std::vector<ValueRef> inside;
        for (const ValueRef& value : tie)
            if (const auto found = twin.find(value.part); found != twin.end())
                inside.push_back({found->second, value.key});
        if (inside.size() > 1) copy.ties.push_back(std::move(inside));
    }
    for (const auto& reel : c.reels) {
        std::vector<PartId> inside;
        for (const PartId part : reel)
            if (const auto found = twin.find(part); found != twin.end()) inside.push_back(found->second);
        if (inside.size() > 1) copy.reels.push_back(std::move(inside));
    }
    return copy;
}

Result<NewParts> pasteParts(const Circuit& c, const Circuit& copy, double dx, double dy) {
    if (copy.parts().empty()) return Fault{"", wording::inWords("there is no part to paste")};
    return pasteAs(wording::marked("Paste %1"), c, copy, dx, dy);
}

Result<NewParts> duplicateParts(const Circuit& c, const Places& shown, double dx, double dy) {
    const Circuit copy = copyOf(c, shown);
    if (copy.parts().empty()) return Fault{"", wording::inWords("there is no part to duplicate")};
    return pasteAs(wording::marked("Duplicate %1"), c, copy, dx, dy);
}

} // namespace blinkwright::circuit
