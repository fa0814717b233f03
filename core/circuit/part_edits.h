// What a hand does to parts, as edits: adding, deleting, moving, turning, mirroring, renaming, and copying
// with the wiring among the copies. Pure functions of a circuit and ids, each one Group with its text.
//
//   Result<NewParts> add = addPart(c, PartKind::resistor, {120, 40});     // "Add R3"
//   Result<Edit> turn = turnParts(c, {{r1, {120, 40}}});                  // "Turn R1"
//   Circuit copy = copyOf(c, {{r1, {120, 40}}, {c1, {160, 40}}});         // for the clipboard
//   Result<NewParts> paste = pasteParts(c, copy, 20, 20);                 // "Paste 2 parts"
//
// Places are given as the drawing shows them, since a part without a stated place is shown somewhere too.
#pragma once

#include "core/circuit/edit.h"

#include <map>
#include <span>
#include <string_view>
#include <vector>

namespace blinkwright::circuit {

/// Step of the drawing's grid [grid units]; groups turn about a point on it, so that they stay on it.
inline constexpr double gridStep = 10;

/// Where parts are shown. Unknown keys of a place (Placement::extras) are taken from the circuit.
using Places = std::map<PartId, Placement>;

/// An edit together with the parts that it brings.
struct NewParts {
    Edit edit;
    std::vector<PartId> parts;
};

/// The values that a part of a kind starts with: what it cannot be without.
Values startValues(PartKind kind);

/// Adds a part with a fresh designator, in no net.
Result<NewParts> addPart(const Circuit& circuit, PartKind kind, const Placement& place);
/// Deletes parts with all that hangs on them, and the nets that this leaves with nothing to join.
Result<Edit> deleteParts(const Circuit& circuit, std::span<const PartId> parts);

/// Moves parts from where they are shown. @param dx, dy [grid units]
Result<Edit> moveParts(const Circuit& circuit, const Places& shown, double dx, double dy);
/// Turns parts clockwise by a quarter, several about their common middle.
Result<Edit> turnParts(const Circuit& circuit, const Places& shown);
/// Mirrors parts left to right, several about their common middle.
Result<Edit> mirrorParts(const Circuit& circuit, const Places& shown);

Result<Edit> renamePart(const Circuit& circuit, PartId part, std::string_view ref);

/// The parts of a selection with their values in both sets, the nets that join two or more of their pins, and
/// ties and reels among them: a circuit of its own, which circuit files can carry.
Circuit copyOf(const Circuit& circuit, const Places& shown);
/// Adds all of a copy. A designator or a net's name that is free is kept, else a fresh one is given.
/// @param dx, dy how far from where the copy states its places [grid units]
Result<NewParts> pasteParts(const Circuit& circuit, const Circuit& copy, double dx, double dy);
/// copyOf and pasteParts in one step: "Duplicate R1".
Result<NewParts> duplicateParts(const Circuit& circuit, const Places& shown, double dx, double dy);

} // namespace blinkwright::circuit
