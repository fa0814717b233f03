// Reversible edits: each is a value with ids, applied in one place, and answers with its own way back.
//
//   Edit e = setValue(c, PartSet::A, r1, "resistance", 47000.0);
//   std::string text = describe(c, e);            // "Set R1 to 47 kΩ"
//   Result<Edit> back = apply(c, e);              // c changed; or a fault and c as it was
//   apply(c, back.value());                       // c as before
#pragma once

#include "core/circuit/circuit.h"

#include <memory>

namespace blinkwright::circuit {

struct Edit;

/// Where a value is stated: with the part itself, or as an override of a set.
enum class Layer { part, setA, setB };

namespace edits {
struct SetTitle {
    std::string title;
};
struct SetNotes {
    std::string notes;
};
struct SetRun {
    RunSettings run;
};
/// States a value, or with no value takes the statement back (so that the default or the part's own holds).
struct SetValue {
    Layer layer = Layer::part;
    PartId part;
    std::string key; ///< may be `device.NAME`
    std::optional<Value> value;
};
/// Adds a part at a place in the list. A part with id 0 gets a fresh id.
struct AddPart {
    Part part;
    std::size_t index = static_cast<std::size_t>(-1);
    std::array<Extras, 2> overrideExtras = {}; ///< unknown keys that the sets state for it
};
/// Removes a part with all that hangs on it: pins in nets, overrides, drawing, ties, reels, meter
/// readings of it.
struct RemovePart {
    PartId part;
};
struct RenamePart {
    PartId part;
    std::string ref;
};
struct AddNet {
    Net net;
    std::size_t index = static_cast<std::size_t>(-1);
};
struct RemoveNet {
    NetId net;
};
struct RenameNet {
    NetId net;
    std::string name;
};
/// Puts a pin into a net (leaving the one it is in), or with no net leaves it open.
struct JoinPin {
    PinRef pin;
    std::optional<NetId> net;
    std::size_t index = static_cast<std::size_t>(-1); ///< place in the net's list; the end by default
};
struct Place {
    PartId part;
    std::optional<Placement> placement;
};
struct SetTies {
    std::vector<std::vector<ValueRef>> ties;
};
struct SetReels {
    std::vector<std::vector<PartId>> reels;
};
/// Replaces the list of measurements.
struct SetMeasurements {
    Measurements measurements;
    std::string text = {}; ///< human text; empty: a general one
};
/// Several edits as one step, done in order; if one is refused, none is done.
struct Group {
    std::string text; ///< human text; empty: that of the first edit
    std::vector<Edit> edits;
};
} // namespace edits

struct Edit {
    using Kind = std::variant<edits::SetTitle, edits::SetNotes, edits::SetRun, edits::SetValue,
                              edits::AddPart, edits::RemovePart, edits::RenamePart, edits::AddNet,
                              edits::RemoveNet, edits::RenameNet, edits::JoinPin, edits::Place,
                              edits::SetTies, edits::SetReels, edits::SetMeasurements, edits::Group>;
    Kind kind;
};

/// Does the edit and returns its inverse. On a fault the circuit is as it was.
Result<Edit> apply(Circuit& circuit, const Edit& edit);

/// What the edit does, in human words for the undo list: "Set R1 to 4.7 kΩ".
std::string describe(const Circuit& circuit, const Edit& edit);

/// The edit that sets a value as seen in a set. Set A writes the part itself and drops an override under A
/// (Set B keeps what it has); Set B writes an override. Values tied to this one move along.
Edit setValue(const Circuit& circuit, PartSet set, PartId part, std::string key, Value value);

} // namespace blinkwright::circuit
