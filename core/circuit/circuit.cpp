#include "core/circuit/circuit.h"

#include "core/base/characters.h"
#include "core/base/wording.h"
#include "core/circuit/refusals.h"

#include <algorithm>
#include <set>

namespace blinkwright::circuit {

namespace {

constexpr std::size_t longestRef = 32;

bool wellFormedRef(std::string_view ref) {
    const auto digits = std::ranges::find_if_not(ref, isLetter);
    return digits != ref.begin() && digits != ref.end() && std::all_of(digits, ref.end(), isDigit) &&
           ref.size() <= longestRef;
}

const Value* findValue(const Values& values, std::string_view key) {
    const auto found = values.find(key);
    return found == values.end() ? nullptr : &found->second;
}

std::string listPlace(std::string_view list, std::size_t i, std::size_t j) {
    return std::string(list) + "[" + std::to_string(i) + "][" + std::to_string(j) + "]";
}

std::optional<units::Unit> unitOfNumber(PartKind kind, std::string_view key) {
    if (kind == PartKind::timer && key.starts_with(devicePrefix)) {
        const ParameterInfo* parameter = findTimerParameter(key.substr(devicePrefix.size()));
        return parameter ? std::optional(parameter->unit) : std::nullopt;
    }
    const KeyInfo* known = findKey(info(kind), key);
    const bool number = known && (known->shape == Shape::number || known->shape == Shape::numberOrNull ||
                                  known->shape == Shape::tolerance);
    return number ? std::optional(known->unit) : std::nullopt;
}

} // namespace

const Part* Circuit::find(PartId id) const {
    const auto found = std::ranges::find(m_parts, id, &Part::id);
    return found == m_parts.end() ? nullptr : &*found;
}

const Net* Circuit::find(NetId id) const {
    const auto found = std::ranges::find(m_nets, id, &Net::id);
    return found == m_nets.end() ? nullptr : &*found;
}

const Part* Circuit::findRef(std::string_view ref) const {
    const auto found = std::ranges::find(m_parts, ref, &Part::ref);
    return found == m_parts.end() ? nullptr : &*found;
}

const Net* Circuit::findNet(std::string_view name) const {
    const auto found = std::ranges::find(m_nets, name, &Net::name);
    return found == m_nets.end() ? nullptr : &*found;
}

std::optional<NetId> Circuit::netOf(PinRef pin) const {
    for (const Net& net : m_nets)
        if (std::ranges::find(net.pins, pin) != net.pins.end()) return net.id;
    return std::nullopt;
}

std::string Circuit::pinText(PinRef pin) const {
    const Part* part = find(pin.part);
    if (!part) return "?";
    const auto pins = info(part->kind).pins;
    const bool known = pin.pin >= 0 && static_cast<std::size_t>(pin.pin) < pins.size();
    return part->ref + ":" + (known ? std::string(pins[static_cast<std::size_t>(pin.pin)].name) : "?");
}

Result<PinRef> Circuit::pinNamed(std::string_view text) const {
    const std::string shown = "\"" + std::string(text) + "\"";
    const auto colon = text.find(':');
    if (colon == text.npos) return Fault{"", wording::inWords("a pin is written REF:PIN, got %1", shown)};
    const Part* part = findRef(text.substr(0, colon));
    if (!part) return Fault{"", wording::inWords("there is no part \"%1\"", text.substr(0, colon))};
    const KindInfo& kind = info(part->kind);
    if (auto pin = circuit::pinNamed(kind, text.substr(colon + 1))) return PinRef{part->id, *pin};
    std::string pins;
    for (const PinInfo& pin : kind.pins) pins.append(pins.empty() ? "" : ", ").append(pin.name);
    return Fault{"", wording::inWords("%1 has no pin \"%2\"; a %3 has %4", part->ref, text.substr(colon + 1),
                                      wording::inWords(kind.label), pins)};
}

std::optional<Value> Circuit::value(PartSet set, PartId id, std::string_view key) const {
    const Part* part = find(id);
    if (!part) return std::nullopt;
    if (key.starts_with(devicePrefix)) {
        const auto device = value(set, id, devicePrefix.substr(0, devicePrefix.size() - 1));
        const Overrides* parameters = device ? std::get_if<Overrides>(&*device) : nullptr;
        if (!parameters) return std::nullopt;
        const auto found = parameters->find(key.substr(devicePrefix.size()));
        return found == parameters->end() ? std::nullopt : std::optional<Value>(found->second);
    }
    const Value* own = findValue(part->values, key);
    const Value* over = findValue(overrides(set, id), key);
    if (!over) return own ? std::optional(*own) : std::nullopt;
    const Overrides* below = own ? std::get_if<Overrides>(own) : nullptr;
    const Overrides* above = std::get_if<Overrides>(over);
    if (!below || !above) return *over;
    Overrides merged = *above;
    merged.insert(below->begin(), below->end());
    return merged;
}

const Values& Circuit::overrides(PartSet set, PartId part) const {
    static const Values none;
    const auto& all = m_overrides[static_cast<std::size_t>(set)];
    const auto found = all.find(part);
    return found == all.end() ? none : found->second;
}

const Extras& Circuit::overrideExtras(PartSet set, PartId part) const {
    static const Extras none;
    const auto& all = m_overrideExtras[static_cast<std::size_t>(set)];
    const auto found = all.find(part);
    return found == all.end() ? none : found->second;
}

const Placement* Circuit::placement(PartId part) const {
    const auto found = m_drawing.find(part);
    return found == m_drawing.end() ? nullptr : &found->second;
}

std::string Circuit::freeRef(PartKind kind) const {
    const std::string prefix(info(kind).prefix);
    for (std::size_t n = 1;; ++n) {
        std::string ref = prefix + std::to_string(n);
        if (!findRef(ref)) return ref;
    }
}

Result<void> Circuit::canName(std::string_view ref, std::optional<PartId> except) const {
    const std::string shown = "\"" + std::string(ref.substr(0, 2 * longestRef)) + "\"";
    if (!wellFormedRef(ref))
        return Fault{"ref",
                     wording::inWords(
                         "must be letters, then digits, such as R1 (at most 32 characters), got %1", shown)};
    const Part* other = findRef(ref);
    if (other && other->id != except) return Fault{"ref", wording::inWords("%1 is in use already", shown)};
    return {};
}

Result<void> Circuit::canNameNet(std::string_view name, std::optional<NetId> except) const {
    if (name.empty()) return Fault{"name", wording::inWords("must not be empty")};
    const Net* other = findNet(name);
    if (other && other->id != except)
        return Fault{"name", wording::inWords("\"%1\" is the name of another net already", name)};
    return {};
}

Result<void> Circuit::canJoin(PinRef pin, NetId netId) const {
    const Part* part = find(pin.part);
    if (!part) return noSuchPart();
    const Net* net = find(netId);
    if (!net) return noSuchNet();
    if (pin.pin < 0 || static_cast<std::size_t>(pin.pin) >= info(part->kind).pins.size())
        return Fault{"", wording::inWords("%1 has no such pin", part->ref)};
    const auto now = netOf(pin);
    if (now == netId) return Fault{"", wording::inWords("%1 is in this net already", pinText(pin))};
    if (now)
        return Fault{"", wording::inWords("%1 is in the net \"%2\" already", pinText(pin), find(*now)->name)};
    return {};
}

Result<void> Circuit::canTie(const std::vector<std::vector<ValueRef>>& wanted) const {
    std::set<std::pair<PartId, std::string>> seen;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        std::optional<units::Unit> unit;
        for (std::size_t j = 0; j < wanted[i].size(); ++j) {
            const ValueRef& ref = wanted[i][j];
            const std::string place = listPlace("ties", i, j);
            const Part* part = find(ref.part);
            if (!part) return Fault{place, noSuchPart().text};
            const std::string text = part->ref + "." + ref.key;
            const auto own = unitOfNumber(part->kind, ref.key);
            if (!own) return Fault{place, wording::inWords("\"%1\" is no number that could be tied", text)};
            if (unit && *unit != *own)
                return Fault{place,
                             wording::inWords("\"%1\" has another unit than the values before it", text)};
            if (!seen.insert({ref.part, ref.key}).second)
                return Fault{place, wording::inWords("\"%1\" is tied already", text)};
            unit = own;
        }
    }
    return {};
}

Result<void> Circuit::canReel(const std::vector<std::vector<PartId>>& wanted) const {
    std::set<PartId> seen;
    for (std::size_t i = 0; i < wanted.size(); ++i)
        for (std::size_t j = 0; j < wanted[i].size(); ++j) {
            const Part* part = find(wanted[i][j]);
            if (!part) return Fault{listPlace("reels", i, j), noSuchPart().text};
            if (!seen.insert(part->id).second)
                return Fault{listPlace("reels", i, j),
                             wording::inWords("\"%1\" is on a reel already", part->ref)};
        }
    return {};
}

Result<void> Circuit::checkNewPart(const Part& part) const {
    const KindInfo& kind = info(part.kind);
    if (m_parts.size() >= maxParts)
        return Fault{"", wording::inWords("more than %1 parts are not supported", maxParts)};
    std::size_t pins = kind.pins.size();
    for (const Part& other : m_parts) pins += info(other.kind).pins.size();
    if (pins > maxPins)
        return Fault{"",
                     wording::inWords("parts with more than %1 pins together are not supported", maxPins)};
    if (auto ok = canName(part.ref); !ok) return ok;
    for (const auto& [key, value] : part.values)
        if (auto ok = canSet(part.kind, key, value); !ok) return ok;
    for (const KeyInfo& key : kind.keys)
        if (key.required && !findValue(part.values, key.key))
            return Fault{std::string(key.key),
                         wording::inWords("missing: a %1 needs it", wording::inWords(kind.label))};
    return {};
}

Result<PartId> Circuit::addPart(PartKind kind, std::string ref, Values values, Extras unknown) {
    Part part{{m_nextId}, kind, std::move(ref), std::move(values), std::move(unknown)};
    if (auto ok = checkNewPart(part); !ok) return ok.fault();
    m_parts.push_back(std::move(part));
    return PartId{m_nextId++};
}

Result<NetId> Circuit::addNet(std::string name, Extras unknown) {
    if (auto ok = canNameNet(name); !ok) return ok.fault();
    m_nets.push_back({{m_nextId}, std::move(name), {}, std::move(unknown)});
    return NetId{m_nextId++};
}

Result<void> Circuit::join(PinRef pin, NetId net) {
    if (auto ok = canJoin(pin, net); !ok) return ok;
    std::ranges::find(m_nets, net, &Net::id)->pins.push_back(pin);
    return {};
}

Result<void> Circuit::setOverride(PartSet set, PartId id, std::string key, Value value) {
    const Part* part = find(id);
    if (!part) return noSuchPart();
    if (auto ok = canSet(part->kind, key, value); !ok) return ok;
    Values& values = m_overrides[static_cast<std::size_t>(set)][id];
    if (key.starts_with(devicePrefix)) {
        Value& device = values.try_emplace("device", Overrides{}).first->second;
        std::get<Overrides>(device)[key.substr(devicePrefix.size())] = std::get<double>(value);
    } else {
        values[std::move(key)] = std::move(value);
    }
    return {};
}

void Circuit::setOverrideExtras(PartSet set, PartId part, Extras unknown) {
    auto& all = m_overrideExtras[static_cast<std::size_t>(set)];
    if (unknown.empty())
        all.erase(part);
    else
        all[part] = std::move(unknown);
}

void Circuit::place(PartId part, Placement placement) {
    m_drawing[part] = std::move(placement);
}

bool Circuit::sameAs(const Circuit& other) const {
    if (title != other.title || notes != other.notes || run != other.run || extras != other.extras ||
        partSetExtras != other.partSetExtras || measurements.size() != other.measurements.size() ||
        m_parts.size() != other.m_parts.size() || m_nets.size() != other.m_nets.size())
        return false;

    std::map<PartId, PartId> twin;
    for (std::size_t i = 0; i < m_parts.size(); ++i) {
        const Part &mine = m_parts[i], &theirs = other.m_parts[i];
        if (mine.kind != theirs.kind || mine.ref != theirs.ref || mine.values != theirs.values ||
            mine.extras != theirs.extras)
            return false;
        for (PartSet set : {PartSet::A, PartSet::B})
            if (overrides(set, mine.id) != other.overrides(set, theirs.id) ||
                overrideExtras(set, mine.id) != other.overrideExtras(set, theirs.id))
                return false;
        const Placement *here = placement(mine.id), *there = other.placement(theirs.id);
        if ((here == nullptr) != (there == nullptr) || (here && *here != *there)) return false;
        twin[mine.id] = theirs.id;
    }
    for (std::size_t i = 0; i < m_nets.size(); ++i) {
        const Net &mine = m_nets[i], &theirs = other.m_nets[i];
        const auto samePin = [&](PinRef a, PinRef b) { return a.pin == b.pin && twin[a.part] == b.part; };
        if (mine.name != theirs.name || mine.extras != theirs.extras ||
            !std::ranges::equal(mine.pins, theirs.pins, samePin))
            return false;
    }
    const auto sameTie = [&](const auto& a, const auto& b) {
        return std::ranges::equal(a, b, [&](const ValueRef& x, const ValueRef& y) {
            return twin[x.part] == y.part && x.key == y.key;
        });
    };
    const auto sameReel = [&](const auto& a, const auto& b) {
        return std::ranges::equal(a, b, [&](PartId x, PartId y) { return twin[x] == y; });
    };
    const auto sameMeasurement = [&](const auto& a, const auto& b) {
        if (a == b) return true;
        Measurement moved = *a;
        if (auto* reading = std::get_if<MeterReading>(&moved.what)) reading->part = twin[reading->part];
        return moved == *b;
    };
    return std::ranges::equal(ties, other.ties, sameTie) &&
           std::ranges::equal(reels, other.reels, sameReel) &&
           std::ranges::equal(measurements, other.measurements, sameMeasurement);
}

} // namespace blinkwright::circuit
