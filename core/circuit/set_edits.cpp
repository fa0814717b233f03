#include "core/circuit/set_edits.h"

#include "core/base/wording.h"
#include "core/circuit/edit_plan.h"
#include "core/circuit/refusals.h"

#include <algorithm>
#include <set>

namespace blinkwright::circuit {

namespace {

/// What one layer states under a key, which may be `device.NAME`.
std::optional<Value> statedBy(const Values& layer, std::string_view key) {
    if (!key.starts_with(devicePrefix)) {
        const auto found = layer.find(key);
        return found == layer.end() ? std::nullopt : std::optional(found->second);
    }
    const auto device = layer.find("device");
    if (device == layer.end()) return std::nullopt;
    const auto& parameters = std::get<Overrides>(device->second);
    const auto found = parameters.find(key.substr(devicePrefix.size()));
    return found == parameters.end() ? std::nullopt : std::optional<Value>(found->second);
}

/// Keys of a layer, a device block parameter by parameter.
void takeKeys(const Values& layer, std::set<std::string>& keys) {
    for (const auto& [key, value] : layer)
        if (const auto* parameters = std::get_if<Overrides>(&value))
            for (const auto& [name, number] : *parameters) keys.insert(std::string(devicePrefix) + name);
        else
            keys.insert(key);
}

/// Writes a plan so that afterwards Set A sees `a` and Set B sees `b`, with as few overrides as can be: the
/// part itself states A's value, as an edit of Set A leaves it. Where only one of them states anything, the
/// part must not: an override cannot take a statement back.
class Writer {
  public:
    Writer(EditPlan& plan, const Part& part, std::string key)
        : m_plan(plan), m_part(part), m_key(std::move(key)) {}

    /// @param own B keeps an override even where it holds A's value.
    void write(const std::optional<Value>& a, const std::optional<Value>& b, bool own = false) {
        state(Layer::part, b ? a : std::nullopt);
        state(Layer::setA, b ? std::nullopt : a);
        state(Layer::setB, own || a != b ? b : std::nullopt);
    }

  private:
    void state(Layer layer, const std::optional<Value>& value) {
        const Part* now = m_plan.circuit().find(m_part.id);
        const PartSet set = layer == Layer::setA ? PartSet::A : PartSet::B;
        const Values& values =
            layer == Layer::part ? now->values : m_plan.circuit().overrides(set, m_part.id);
        if (statedBy(values, m_key) != value) m_plan.add({edits::SetValue{layer, m_part.id, m_key, value}});
    }
    EditPlan& m_plan;
    const Part& m_part;
    std::string m_key;
};

/// Gives both sets what `pick` makes of what they state now, for every value that either overrides.
template <class Pick>
Result<Edit> rewritten(const Circuit& c, std::string text, bool own, Pick pick) {
    EditPlan plan(c);
    for (const Part& part : c.parts()) {
        std::set<std::string> keys;
        takeKeys(c.overrides(PartSet::A, part.id), keys);
        takeKeys(c.overrides(PartSet::B, part.id), keys);
        for (const std::string& key : keys) {
            const auto [a, b] = pick(c.value(PartSet::A, part.id, key), c.value(PartSet::B, part.id, key));
            Writer(plan, part, key).write(a, b, own);
        }
    }
    return std::move(plan).done(std::move(text));
}

std::string shown(const Circuit& c, const ValueRef& value) {
    const Part* part = c.find(value.part);
    if (!part) return wording::inWords("a part");
    const KindInfo& kind = info(part->kind);
    const KeyInfo* key = findKey(kind, value.key);
    // The main value of a part needs no name.
    if (key == kind.keys.data()) return part->ref;
    return wording::inWords("%1 of %2", wording::inWords(key ? key->label : std::string_view(value.key)),
                            part->ref);
}

Fault agreeing() {
    return {"", wording::inWords("Set A and Set B hold the same values already")};
}

} // namespace

Values valuesIn(const Circuit& circuit, PartSet set, PartId id) {
    const Part* part = circuit.find(id);
    if (!part) return {};
    Values all = part->values;
    for (const auto& [key, value] : circuit.overrides(set, id)) {
        const auto [place, fresh] = all.try_emplace(key, value);
        if (fresh) continue;
        const auto* below = std::get_if<Overrides>(&place->second);
        const auto* above = std::get_if<Overrides>(&value);
        if (below && above) {
            Overrides merged = *above;
            merged.insert(below->begin(), below->end());
            place->second = std::move(merged);
        } else {
            place->second = value;
        }
    }
    return all;
}

bool setsAgree(const Circuit& circuit) {
    return std::ranges::all_of(circuit.parts(), [&](const Part& part) {
        return circuit.overrides(PartSet::A, part.id) == circuit.overrides(PartSet::B, part.id) ||
               valuesIn(circuit, PartSet::A, part.id) == valuesIn(circuit, PartSet::B, part.id);
    });
}

bool sameBoard(const Circuit& a, const Circuit& b, PartSet set) {
    if (a.run != b.run || a.nets() != b.nets()) return false;
    return std::ranges::equal(a.parts(), b.parts(), [&](const Part& x, const Part& y) {
        if (x.id != y.id || x.kind != y.kind || x.ref != y.ref) return false;
        return (x.values == y.values && a.overrides(set, x.id) == b.overrides(set, y.id)) ||
               valuesIn(a, set, x.id) == valuesIn(b, set, y.id);
    });
}

bool followsA(const Circuit& circuit, PartId part, std::string_view key) {
    return !statedBy(circuit.overrides(PartSet::A, part), key) &&
           !statedBy(circuit.overrides(PartSet::B, part), key);
}

Result<Edit> followA(const Circuit& circuit, PartId part, const std::string& key) {
    std::vector<ValueRef> values = tiedTo(circuit, {part, key});
    values.insert(values.begin(), {part, key});
    if (std::ranges::all_of(values, [&](const ValueRef& v) { return followsA(circuit, v.part, v.key); }))
        return Fault{"", wording::inWords("%1 in Set B follows Set A already", shown(circuit, {part, key}))};
    EditPlan plan(circuit);
    for (const ValueRef& value : values) {
        const Part* found = circuit.find(value.part);
        if (!found) return noSuchPart();
        const auto a = circuit.value(PartSet::A, value.part, value.key);
        Writer(plan, *found, value.key).write(a, a);
    }
    return std::move(plan).done(
        wording::inWords("Let %1 in Set B follow Set A", shown(circuit, {part, key})));
}

Result<Edit> copySet(const Circuit& circuit, PartSet from, PartSet to) {
    if (from == to || setsAgree(circuit)) return agreeing();
    using Stated = std::optional<Value>;
    const bool fromA = from == PartSet::A;
    return rewritten(
        circuit, fromA ? wording::inWords("Copy Set A to Set B") : wording::inWords("Copy Set B to Set A"),
        false, [&](const Stated& a, const Stated& b) { return fromA ? std::pair(a, a) : std::pair(b, b); });
}

Result<Edit> swapSets(const Circuit& circuit) {
    if (setsAgree(circuit)) return agreeing();
    using Stated = std::optional<Value>;
    return rewritten(circuit, wording::inWords("Swap Set A and Set B"), true,
                     [](const Stated& a, const Stated& b) { return std::pair(b, a); });
}

std::vector<ValueRef> tiedTo(const Circuit& circuit, const ValueRef& value) {
    for (const auto& tie : circuit.ties) {
        if (std::ranges::find(tie, value) == tie.end()) continue;
        std::vector<ValueRef> others;
        std::ranges::copy_if(tie, std::back_inserter(others), [&](const ValueRef& v) { return v != value; });
        return others;
    }
    return {};
}

Result<Edit> tieValues(const Circuit& circuit, const ValueRef& value, const ValueRef& to) {
    if (value == to) return Fault{"", wording::inWords("a value cannot be tied to itself")};
    const std::vector<ValueRef> with = tiedTo(circuit, to);
    if (std::ranges::find(with, value) != with.end())
        return Fault{"",
                     wording::inWords("%1 is tied to %2 already", shown(circuit, value), shown(circuit, to))};
    if (!circuit.find(value.part) || !circuit.find(to.part)) return noSuchPart();

    std::vector<ValueRef> moved = tiedTo(circuit, value);
    moved.insert(moved.begin(), value);
    EditPlan plan(circuit);
    std::vector<std::vector<ValueRef>> ties = circuit.ties;
    std::erase_if(ties, [&](const auto& tie) { return std::ranges::find(tie, value) != tie.end(); });
    auto home =
        std::ranges::find_if(ties, [&](const auto& tie) { return std::ranges::find(tie, to) != tie.end(); });
    if (home == ties.end()) home = ties.insert(ties.end(), {to});
    home->insert(home->end(), moved.begin(), moved.end());
    plan.add({edits::SetTies{std::move(ties)}});

    const auto a = circuit.value(PartSet::A, to.part, to.key);
    const auto b = circuit.value(PartSet::B, to.part, to.key);
    for (const ValueRef& one : moved)
        if (!plan.refused()) Writer(plan, *circuit.find(one.part), one.key).write(a, b);
    return std::move(plan).done(wording::inWords("Tie %1 to %2", shown(circuit, value), shown(circuit, to)));
}

Result<Edit> untieValue(const Circuit& circuit, const ValueRef& value) {
    if (tiedTo(circuit, value).empty())
        return Fault{"", wording::inWords("%1 is not tied to anything", shown(circuit, value))};
    std::vector<std::vector<ValueRef>> ties = circuit.ties;
    std::erase_if(ties, [&](auto& tie) { return std::erase(tie, value) > 0 && tie.size() < 2; });
    return Edit{edits::Group{wording::inWords("Untie %1", shown(circuit, value)),
                             {{edits::SetTies{std::move(ties)}}}}};
}

} // namespace blinkwright::circuit
