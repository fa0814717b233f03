#include "core/circuit/edit.h"

#include "core/base/wording.h"
#include "core/circuit/refusals.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::circuit {

namespace {

Fault refuse(std::string place, std::string text) {
    return {std::move(place), std::move(text)};
}

constexpr Layer layerOf(PartSet set) {
    return set == PartSet::A ? Layer::setA : Layer::setB;
}

Edit single(Edit::Kind kind) {
    return {std::move(kind)};
}

bool overridden(const Values& values, const std::string& key) {
    if (!key.starts_with(devicePrefix)) return values.contains(key);
    const auto device = values.find("device");
    return device != values.end() &&
           std::get<Overrides>(device->second).contains(key.substr(devicePrefix.size()));
}

/// The place of a list to insert before; past the end means at the end.
template <class List>
auto at(List& list, std::size_t index) {
    return list.begin() + static_cast<std::ptrdiff_t>(std::min(index, list.size()));
}

} // namespace

/// The one place that changes a circuit after it is built. Each function checks first and changes then, so
/// that a refusal leaves the circuit as it was.
class Editor {
  public:
    explicit Editor(Circuit& circuit) : c(circuit) {}

    Result<Edit> operator()(const edits::SetTitle& e) {
        return single(edits::SetTitle{std::exchange(c.title, e.title)});
    }
    Result<Edit> operator()(const edits::SetNotes& e) {
        return single(edits::SetNotes{std::exchange(c.notes, e.notes)});
    }
    Result<Edit> operator()(const edits::SetRun& e) {
        if (auto fault = rangeFault(flashesRange, e.run.flashes)) return refuse("run.flashes", *fault);
        return single(edits::SetRun{std::exchange(c.run, e.run)});
    }

    Result<Edit> operator()(const edits::SetValue& e) {
        Part* part = findPart(e.part);
        if (!part) return noSuchPart();
        if (auto ok = checkValue(*part, e); !ok)
            return refuse(part->ref + "." + ok.fault().place, ok.fault().text);
        // One parameter of a device block is put back as part of the whole block, which may not have been
        // there.
        const bool parameter = part->kind == PartKind::timer && e.key.starts_with(devicePrefix);
        const std::string key = parameter ? "device" : e.key;
        if (e.layer == Layer::part) return single(replaced(part->values, key, e, parameter));

        auto& all = c.m_overrides[e.layer == Layer::setA ? 0 : 1];
        Edit back = single(replaced(all[e.part], key, e, parameter));
        if (all[e.part].empty()) all.erase(e.part);
        return back;
    }

    Result<Edit> operator()(const edits::AddPart& e) {
        if (e.part.id.n != 0 && (findPart(e.part.id) || findNet({e.part.id.n})))
            return refuse("", wording::inWords("the id of the part is in use"));
        if (auto ok = c.checkNewPart(e.part); !ok) return ok.fault();
        Part part = e.part;
        if (part.id.n == 0) part.id.n = c.m_nextId;
        c.m_nextId = std::max(c.m_nextId, part.id.n + 1);
        const PartId id = part.id;
        c.m_parts.insert(at(c.m_parts, e.index), std::move(part));
        c.setOverrideExtras(PartSet::A, id, e.overrideExtras[0]);
        c.setOverrideExtras(PartSet::B, id, e.overrideExtras[1]);
        return single(edits::RemovePart{id});
    }

    Result<Edit> operator()(const edits::RemovePart& e) {
        const Part* part = findPart(e.part);
        if (!part) return noSuchPart();
        // The way back first adds the part, then hangs on it again what went with it.
        edits::Group back{wording::inWords("Add %1", part->ref), {}};
        const auto index = static_cast<std::size_t>(part - c.m_parts.data());
        back.edits.push_back(single(edits::AddPart{
            *part, index, {c.overrideExtras(PartSet::A, e.part), c.overrideExtras(PartSet::B, e.part)}}));
        takeOutOfNets(e.part, back);
        takeOutOfSets(e.part, back);
        if (const auto placed = c.m_drawing.extract(e.part))
            back.edits.push_back(single(edits::Place{e.part, placed.mapped()}));
        takeOutOfLists(e.part, back);
        c.m_parts.erase(c.m_parts.begin() + static_cast<std::ptrdiff_t>(index));
        return single(std::move(back));
    }

    Result<Edit> operator()(const edits::RenamePart& e) {
        Part* part = findPart(e.part);
        if (!part) return noSuchPart();
        if (auto ok = c.canName(e.ref, e.part); !ok) return ok.fault();
        return single(edits::RenamePart{e.part, std::exchange(part->ref, e.ref)});
    }

    Result<Edit> operator()(const edits::AddNet& e) {
        if (e.net.id.n != 0 && (findNet(e.net.id) || findPart({e.net.id.n})))
            return refuse("", wording::inWords("the id of the net is in use"));
        if (auto ok = c.canNameNet(e.net.name); !ok) return ok.fault();
        for (std::size_t i = 0; i < e.net.pins.size(); ++i) {
            const PinRef pin = e.net.pins[i];
            if (auto ok = checkPin(pin); !ok) return ok.fault();
            const auto before = e.net.pins.begin() + static_cast<std::ptrdiff_t>(i);
            if (c.netOf(pin) || std::find(e.net.pins.begin(), before, pin) != before)
                return refuse("", wording::inWords("%1 is in a net already", c.pinText(pin)));
        }
        Net net = e.net;
        if (net.id.n == 0) net.id.n = c.m_nextId;
        c.m_nextId = std::max(c.m_nextId, net.id.n + 1);
        const NetId id = net.id;
        c.m_nets.insert(at(c.m_nets, e.index), std::move(net));
        return single(edits::RemoveNet{id});
    }

    Result<Edit> operator()(const edits::RemoveNet& e) {
        Net* net = findNet(e.net);
        if (!net) return noSuchNet();
        const auto index = net - c.m_nets.data();
        edits::AddNet back{std::move(*net), static_cast<std::size_t>(index)};
        c.m_nets.erase(c.m_nets.begin() + index);
        return single(std::move(back));
    }

    Result<Edit> operator()(const edits::RenameNet& e) {
        Net* net = findNet(e.net);
        if (!net) return noSuchNet();
        if (auto ok = c.canNameNet(e.name, e.net); !ok) return ok.fault();
        return single(edits::RenameNet{e.net, std::exchange(net->name, e.name)});
    }

    Result<Edit> operator()(const edits::JoinPin& e) {
        if (auto ok = checkPin(e.pin); !ok) return ok.fault();
        Net* next = e.net ? findNet(*e.net) : nullptr;
        if (e.net && !next) return noSuchNet();
        edits::JoinPin back{e.pin, std::nullopt};
        if (const auto now = c.netOf(e.pin)) {
            auto& pins = findNet(*now)->pins;
            const auto place = std::ranges::find(pins, e.pin);
            back.net = now;
            back.index = static_cast<std::size_t>(place - pins.begin());
            pins.erase(place);
        }
        if (next) next->pins.insert(at(next->pins, e.index), e.pin);
        return single(back);
    }

    Result<Edit> operator()(const edits::Place& e) {
        if (!findPart(e.part)) return noSuchPart();
        if (e.placement) {
            const Placement& p = *e.placement;
            if (!std::isfinite(p.x) || !std::isfinite(p.y))
                return refuse("", wording::inWords("a place must be finite"));
            if (p.turn != 0 && p.turn != 90 && p.turn != 180 && p.turn != 270)
                return refuse("", wording::inWords("a turn must be 0, 90, 180 or 270, got %1", p.turn));
        }
        edits::Place back{e.part, std::nullopt};
        if (const auto placed = c.m_drawing.extract(e.part)) back.placement = placed.mapped();
        if (e.placement) c.m_drawing[e.part] = *e.placement;
        return single(std::move(back));
    }

    Result<Edit> operator()(const edits::SetTies& e) {
        if (auto ok = c.canTie(e.ties); !ok) return ok.fault();
        return single(edits::SetTies{std::exchange(c.ties, e.ties)});
    }
    Result<Edit> operator()(const edits::SetReels& e) {
        if (auto ok = c.canReel(e.reels); !ok) return ok.fault();
        return single(edits::SetReels{std::exchange(c.reels, e.reels)});
    }

    Result<Edit> operator()(const edits::SetMeasurements& e) {
        for (std::size_t i = 0; i < e.measurements.size(); ++i) {
            const std::string place = "measurements[" + std::to_string(i) + "]";
            if (!e.measurements[i]) return refuse(place, wording::inWords("there is nothing in it"));
            if (auto ok = c.canMeasure(*e.measurements[i]); !ok)
                return refuse(place + "." + ok.fault().place, ok.fault().text);
        }
        return single(edits::SetMeasurements{std::exchange(c.measurements, e.measurements), e.text});
    }

    Result<Edit> operator()(const edits::Group& e) {
        edits::Group back{e.text, {}};
        const std::uint32_t nextId = c.m_nextId;
        for (const Edit& edit : e.edits) {
            auto done = apply(c, edit);
            if (!done) {
                for (auto undo = back.edits.rbegin(); undo != back.edits.rend(); ++undo)
                    (void)apply(c, *undo);
                c.m_nextId = nextId;
                return done.fault();
            }
            back.edits.push_back(std::move(done).value());
        }
        std::ranges::reverse(back.edits);
        return single(std::move(back));
    }

  private:
    Part* findPart(PartId id) { return const_cast<Part*>(c.find(id)); }
    Net* findNet(NetId id) { return const_cast<Net*>(c.find(id)); }

    Result<void> checkPin(PinRef pin) const {
        const Part* part = c.find(pin.part);
        if (!part) return noSuchPart();
        if (pin.pin < 0 || static_cast<std::size_t>(pin.pin) >= info(part->kind).pins.size())
            return refuse("", wording::inWords("%1 has no such pin", part->ref));
        return {};
    }

    static Result<void> checkValue(const Part& part, const edits::SetValue& e) {
        if (e.value) return Circuit::canSet(part.kind, e.key, *e.value);
        const KeyInfo* key = findKey(info(part.kind), e.key);
        if (e.layer == Layer::part && key && key->required)
            return refuse(e.key, wording::inWords("a %1 needs it", wording::inWords(info(part.kind).label)));
        return {};
    }

    /// Changes one value in a map and says how to put it back.
    static edits::SetValue replaced(Values& values, const std::string& key, const edits::SetValue& e,
                                    bool parameter) {
        edits::SetValue back{e.layer, e.part, key, std::nullopt};
        if (const auto found = values.find(key); found != values.end()) back.value = found->second;
        if (!parameter) {
            if (e.value)
                values[key] = *e.value;
            else
                values.erase(key);
            return back;
        }
        Overrides device = back.value ? std::get<Overrides>(*back.value) : Overrides{};
        const std::string name = e.key.substr(devicePrefix.size());
        if (e.value)
            device[name] = std::get<double>(*e.value);
        else
            device.erase(name);
        if (device.empty())
            values.erase(key);
        else
            values[key] = std::move(device);
        return back;
    }

    void takeOutOfNets(PartId part, edits::Group& back) {
        for (Net& net : c.m_nets) {
            std::size_t index = 0;
            for (const PinRef& pin : net.pins) {
                // Put back in ascending order, each pin finds the ones ahead of it in place.
                if (pin.part == part) back.edits.push_back(single(edits::JoinPin{pin, net.id, index}));
                ++index;
            }
            std::erase_if(net.pins, [&](const PinRef& pin) { return pin.part == part; });
        }
    }

    void takeOutOfSets(PartId part, edits::Group& back) {
        for (PartSet set : {PartSet::A, PartSet::B}) {
            for (const auto& [key, value] : c.overrides(set, part))
                back.edits.push_back(single(edits::SetValue{layerOf(set), part, key, value}));
            c.m_overrides[static_cast<std::size_t>(set)].erase(part);
            c.setOverrideExtras(set, part, {});
        }
    }

    void takeOutOfLists(PartId part, edits::Group& back) {
        const auto tied = [&](const ValueRef& ref) { return ref.part == part; };
        if (std::ranges::any_of(c.ties, [&](const auto& tie) { return std::ranges::any_of(tie, tied); })) {
            back.edits.push_back(single(edits::SetTies{c.ties}));
            std::erase_if(c.ties, [&](auto& tie) { return std::erase_if(tie, tied) > 0 && tie.size() < 2; });
        }
        const auto held = [&](const auto& reel) { return std::ranges::find(reel, part) != reel.end(); };
        if (std::ranges::any_of(c.reels, held)) {
            back.edits.push_back(single(edits::SetReels{c.reels}));
            std::erase_if(c.reels, [&](auto& reel) { return std::erase(reel, part) > 0 && reel.size() < 2; });
        }
        const auto of = [&](const std::shared_ptr<const Measurement>& measurement) {
            const auto* reading = std::get_if<MeterReading>(&measurement->what);
            return reading && reading->part == part;
        };
        if (std::ranges::any_of(c.measurements, of)) {
            back.edits.push_back(single(edits::SetMeasurements{c.measurements}));
            std::erase_if(c.measurements, of);
        }
    }

    Circuit& c;
};

Result<Edit> apply(Circuit& circuit, const Edit& edit) {
    return std::visit(Editor(circuit), edit.kind);
}

Edit setValue(const Circuit& circuit, PartSet set, PartId part, std::string key, Value value) {
    std::vector<ValueRef> moved{{part, key}};
    for (const auto& tie : circuit.ties)
        if (std::ranges::find(tie, moved.front()) != tie.end())
            std::ranges::copy_if(tie, std::back_inserter(moved),
                                 [&](const ValueRef& ref) { return ref != moved.front(); });

    edits::Group group;
    for (const ValueRef& ref : moved) {
        if (set == PartSet::B) {
            group.edits.push_back(single(edits::SetValue{Layer::setB, ref.part, ref.key, value}));
            continue;
        }
        if (overridden(circuit.overrides(PartSet::A, ref.part), ref.key)) {
            // Where A has a value of its own, what the part states is B's: it must stay.
            const auto b = circuit.value(PartSet::B, ref.part, ref.key);
            group.edits.push_back(single(
                edits::SetValue{Layer::setA, ref.part, ref.key, b ? std::nullopt : std::optional(value)}));
            if (!b) continue;
            group.edits.push_back(single(edits::SetValue{Layer::setB, ref.part, ref.key, b}));
        }
        group.edits.push_back(single(edits::SetValue{Layer::part, ref.part, ref.key, value}));
    }
    return group.edits.size() == 1 ? std::move(group.edits.front()) : single(std::move(group));
}

} // namespace blinkwright::circuit
