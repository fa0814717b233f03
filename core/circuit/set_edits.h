// Two sets of values on one wiring, as edits: a set copied to the other, both swapped, a value of Set B that
// follows Set A or stands on its own, and values tied to each other. Pure functions, each one undo step.
//
//   Result<Edit> copy = copySet(c, PartSet::A, PartSet::B);        // "Copy Set A to Set B"
//   Result<Edit> swap = swapSets(c);                               // "Swap Set A and Set B"
//   followsA(c, r2, "resistance");                                 // false after setValue(c, PartSet::B,
//   ...) Result<Edit> follow = followA(c, r2, "resistance");            // "Let R2 in Set B follow Set A"
//   Result<Edit> tie = tieValues(c, {r4, "resistance"}, {r3, "resistance"}); // "Tie R4 to R3"
//
// A value of Set B follows Set A where neither set overrides what the part itself states: it moves with every
// edit of Set A until Set B is given a value of its own. What a file states under keys that this version does
// not know stays with the set that it is stated for.
#pragma once

#include "core/circuit/edit.h"

#include <string_view>
#include <vector>

namespace blinkwright::circuit {

/// All that a set states for a part: the part's own values with the set's overrides merged in.
Values valuesIn(const Circuit& circuit, PartSet set, PartId part);
/// Whether both sets state the same.
bool setsAgree(const Circuit& circuit);
/// Whether two circuits are the same board to a run of that set: wiring, parts and stated values; where parts
/// are drawn, texts, and what the other set states do not count.
bool sameBoard(const Circuit& a, const Circuit& b, PartSet set);

/// The key may be `device.NAME`.
bool followsA(const Circuit& circuit, PartId part, std::string_view key);
/// Takes back what Set B (and Set A) override, so that B moves with A from now on; values tied to it, too.
/// Refused where B follows already.
Result<Edit> followA(const Circuit& circuit, PartId part, const std::string& key);

/// Afterwards `to` states all that `from` states, and each value of Set B follows Set A.
Result<Edit> copySet(const Circuit& circuit, PartSet from, PartSet to);
/// Each set gets what the other states. Refused where both state the same.
Result<Edit> swapSets(const Circuit& circuit);

/// The values that move together with this one, itself left out.
std::vector<ValueRef> tiedTo(const Circuit& circuit, const ValueRef& value);
/// Ties two values of one unit (with all that each is tied to already). `value` and its ties take the value
/// of `to` in both sets.
Result<Edit> tieValues(const Circuit& circuit, const ValueRef& value, const ValueRef& to);
/// Takes a value out of its tie.
Result<Edit> untieValue(const Circuit& circuit, const ValueRef& value);

} // namespace blinkwright::circuit
