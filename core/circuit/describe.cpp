// Edits in human words, for the undo list.
#include "core/base/wording.h"
#include "core/circuit/edit.h"

namespace blinkwright::circuit {

namespace {

std::string valueText(const KeyInfo* key, units::Unit unit, const Value& value) {
    struct Visitor {
        const KeyInfo* key;
        units::Unit unit;
        std::string operator()(const Null&) const { return wording::inWords("none"); }
        std::string operator()(double v) const { return units::formatQuantity(v, unit, 4); }
        std::string operator()(bool v) const { return v ? wording::inWords("yes") : wording::inWords("no"); }
        std::string operator()(const std::string& v) const { return wording::inWords(v); }
        std::string operator()(const Interval& v) const {
            return wording::inWords("%1 to %2", (*this)(v[0]), (*this)(v[1]));
        }
        std::string operator()(const Intervals& v) const {
            return v.size() == 1 ? wording::inWords("1 press") : wording::inWords("%1 presses", v.size());
        }
        std::string operator()(const Overrides& v) const {
            return v.size() == 1 ? wording::inWords("1 stated value")
                                 : wording::inWords("%1 stated values", v.size());
        }
    };
    return std::visit(Visitor{key, unit}, value);
}

class Describer {
  public:
    explicit Describer(const Circuit& circuit) : c(circuit) {}

    std::string ref(PartId id) const {
        const Part* part = c.find(id);
        return part ? part->ref : wording::inWords("a part");
    }
    std::string net(NetId id) const {
        const Net* found = c.find(id);
        return found ? wording::inWords("net %1", found->name) : wording::inWords("a net");
    }

    std::string operator()(const edits::SetTitle&) const { return wording::inWords("Change the title"); }
    std::string operator()(const edits::SetNotes&) const { return wording::inWords("Change the notes"); }
    std::string operator()(const edits::SetRun&) const { return wording::inWords("Change the run"); }
    std::string operator()(const edits::SetValue& e) const {
        const Part* part = c.find(e.part);
        if (!part) return wording::inWords("Set a value");
        const KindInfo& kind = info(part->kind);
        const KeyInfo* key = findKey(kind, e.key);
        const bool parameter = e.key.starts_with(devicePrefix);
        const ParameterInfo* found = parameter ? findTimerParameter(e.key.substr(7)) : nullptr;
        const units::Unit unit = key ? key->unit : found ? found->unit : units::Unit::none;
        const std::string label = wording::inWords(key ? key->label : std::string_view(e.key));
        const std::string named = wording::inWords("%1 of %2", label, part->ref);
        if (!e.value) return takenBack(e.layer, named);
        // The main value of a part needs no name: "Set R1 to 47 kΩ".
        const bool main = key && key == kind.keys.data();
        const std::string& what = main ? part->ref : named;
        if (std::holds_alternative<Null>(*e.value)) return setToNone(e.layer, what);
        return setTo(e.layer, what, valueText(key, unit, *e.value));
    }
    std::string operator()(const edits::AddPart& e) const { return wording::inWords("Add %1", e.part.ref); }
    std::string operator()(const edits::RemovePart& e) const {
        return wording::inWords("Remove %1", ref(e.part));
    }
    std::string operator()(const edits::RenamePart& e) const {
        return wording::inWords("Rename %1 to %2", ref(e.part), e.ref);
    }
    std::string operator()(const edits::AddNet& e) const {
        return wording::inWords("Add net %1", e.net.name);
    }
    std::string operator()(const edits::RemoveNet& e) const {
        return wording::inWords("Remove %1", net(e.net));
    }
    std::string operator()(const edits::RenameNet& e) const {
        return wording::inWords("Rename %1 to %2", net(e.net), e.name);
    }
    std::string operator()(const edits::JoinPin& e) const {
        return e.net ? wording::inWords("Join %1 to %2", c.pinText(e.pin), net(*e.net))
                     : wording::inWords("Leave %1 open", c.pinText(e.pin));
    }
    std::string operator()(const edits::Place& e) const {
        return e.placement ? wording::inWords("Move %1", ref(e.part))
                           : wording::inWords("Take off the drawing: %1", ref(e.part));
    }
    std::string operator()(const edits::SetTies&) const { return wording::inWords("Change the ties"); }
    std::string operator()(const edits::SetReels&) const { return wording::inWords("Change the reels"); }
    std::string operator()(const edits::SetMeasurements& e) const {
        return e.text.empty() ? wording::inWords("Change the measurements") : e.text;
    }
    std::string operator()(const edits::Group& e) const {
        if (!e.text.empty()) return e.text;
        return e.edits.empty() ? wording::inWords("No change") : describe(c, e.edits.front());
    }

  private:
    static std::string setTo(Layer layer, const std::string& what, const std::string& value) {
        switch (layer) {
        case Layer::setA:
            return wording::inWords("Set %1 to %2 in Set A", what, value);
        case Layer::setB:
            return wording::inWords("Set %1 to %2 in Set B", what, value);
        case Layer::part:
            break;
        }
        return wording::inWords("Set %1 to %2", what, value);
    }
    static std::string setToNone(Layer layer, const std::string& what) {
        switch (layer) {
        case Layer::setA:
            return wording::inWords("Set %1 to none in Set A", what);
        case Layer::setB:
            return wording::inWords("Set %1 to none in Set B", what);
        case Layer::part:
            break;
        }
        return wording::inWords("Set %1 to none", what);
    }
    static std::string takenBack(Layer layer, const std::string& what) {
        switch (layer) {
        case Layer::setA:
            return wording::inWords("Take back the %1 in Set A", what);
        case Layer::setB:
            return wording::inWords("Take back the %1 in Set B", what);
        case Layer::part:
            break;
        }
        return wording::inWords("Take back the %1", what);
    }

    const Circuit& c;
};

} // namespace

std::string describe(const Circuit& circuit, const Edit& edit) {
    return std::visit(Describer(circuit), edit.kind);
}

} // namespace blinkwright::circuit
