// Edits in human words, for the undo list.
#include "core/circuit/edit.h"

namespace blinkwright::circuit {

namespace {

std::string valueText(const KeyInfo* key, units::Unit unit, const Value& value) {
    struct Visitor {
        const KeyInfo* key;
        units::Unit unit;
        std::string operator()(const Null&) const { return "none"; }
        std::string operator()(double v) const { return units::formatQuantity(v, unit, 4); }
        std::string operator()(bool v) const { return v ? "yes" : "no"; }
        std::string operator()(const std::string& v) const { return v; }
        std::string operator()(const Interval& v) const { return (*this)(v[0]) + " to " + (*this)(v[1]); }
        std::string operator()(const Intervals& v) const {
            return std::to_string(v.size()) + (v.size() == 1 ? " press" : " presses");
        }
        std::string operator()(const Overrides& v) const {
            return std::to_string(v.size()) + (v.size() == 1 ? " stated value" : " stated values");
        }
    };
    return std::visit(Visitor{key, unit}, value);
}

struct Describer {
    const Circuit& c;

    std::string ref(PartId id) const {
        const Part* part = c.find(id);
        return part ? part->ref : "a part";
    }
    std::string net(NetId id) const {
        const Net* found = c.find(id);
        return found ? "net " + found->name : "a net";
    }

    std::string operator()(const edits::SetTitle&) const { return "Change the title"; }
    std::string operator()(const edits::SetNotes&) const { return "Change the notes"; }
    std::string operator()(const edits::SetRun&) const { return "Change the run"; }
    std::string operator()(const edits::SetValue& e) const {
        const Part* part = c.find(e.part);
        if (!part) return "Set a value";
        const KindInfo& kind = info(part->kind);
        const KeyInfo* key = findKey(kind, e.key);
        const bool parameter = e.key.starts_with("device.");
        const ParameterInfo* found = parameter ? findTimerParameter(e.key.substr(7)) : nullptr;
        const units::Unit unit = key ? key->unit : found ? found->unit : units::Unit::none;
        // The main value of a part needs no name: "Set R1 to 47 kΩ".
        const bool main = key && key == kind.keys.data();
        const std::string what =
            main ? part->ref : std::string(key ? key->label : std::string_view(e.key)) + " of " + part->ref;
        const std::string where = e.layer == Layer::setA   ? " in Set A"
                                  : e.layer == Layer::setB ? " in Set B"
                                                           : "";
        if (!e.value)
            return "Take back the " + (main ? std::string(key->label) + " of " + part->ref : what) + where;
        return "Set " + what + " to " + valueText(key, unit, *e.value) + where;
    }
    std::string operator()(const edits::AddPart& e) const { return "Add " + e.part.ref; }
    std::string operator()(const edits::RemovePart& e) const { return "Remove " + ref(e.part); }
    std::string operator()(const edits::RenamePart& e) const {
        return "Rename " + ref(e.part) + " to " + e.ref;
    }
    std::string operator()(const edits::AddNet& e) const { return "Add net " + e.net.name; }
    std::string operator()(const edits::RemoveNet& e) const { return "Remove " + net(e.net); }
    std::string operator()(const edits::RenameNet& e) const {
        return "Rename " + net(e.net) + " to " + e.name;
    }
    std::string operator()(const edits::JoinPin& e) const {
        return e.net ? "Join " + c.pinText(e.pin) + " to " + net(*e.net)
                     : "Leave " + c.pinText(e.pin) + " open";
    }
    std::string operator()(const edits::Place& e) const {
        return (e.placement ? "Move " : "Take off the drawing: ") + ref(e.part);
    }
    std::string operator()(const edits::SetTies&) const { return "Change the ties"; }
    std::string operator()(const edits::SetReels&) const { return "Change the reels"; }
    std::string operator()(const edits::SetMeasurements& e) const {
        return e.text.empty() ? "Change the measurements" : e.text;
    }
    std::string operator()(const edits::Group& e) const {
        if (!e.text.empty()) return e.text;
        return e.edits.empty() ? "No change" : describe(c, e.edits.front());
    }
};

} // namespace

std::string describe(const Circuit& circuit, const Edit& edit) {
    return std::visit(Describer{circuit}, edit.kind);
}

} // namespace blinkwright::circuit
