// What a hand does to the wiring, as edits: pure functions of a circuit and ids. Each answers with one Group
// that carries its text for the undo list, or with the reason why it cannot be done.
//
//   Result<Edit> edit = joinPins(c, {r1, 0}, {u1, 7});      // "Join R1:1 and U1:8"
//   if (!edit) return say(edit.fault().text);               // "R1:1 and U1:8 are joined already, ..."
//   document.apply(edit.value());
//
// Names: a net that nobody has named is called `wire 1`, `wire 2`, ... Where two nets become one, the name of
// a rail (a named net with a supply's pin) is kept before any other name, and any other before an automatic
// one. A net without a name of its own that a supply's pin comes into is called `supply` or `ground` if that
// name is free. A net left with no pin goes away, and so does one of automatic name left with one pin.
#pragma once

#include "core/circuit/edit.h"

#include <string>
#include <string_view>

namespace blinkwright::circuit {

/// Whether the program gave this name: `wire 12`.
bool isAutomaticName(std::string_view netName);
/// The first free automatic name.
std::string freeNetName(const Circuit& circuit);

/// Whether a wire may be drawn between two pins: not from a pin to itself, nor within one net.
Result<void> canJoinPins(const Circuit& circuit, PinRef a, PinRef b);
Result<void> canJoinToNet(const Circuit& circuit, PinRef pin, NetId net);

/// Joins two pins as a wire does: their nets become one.
Result<Edit> joinPins(const Circuit& circuit, PinRef a, PinRef b);
/// Joins a pin to a net as a wire does: a net that the pin is in already becomes one with it.
Result<Edit> joinToNet(const Circuit& circuit, PinRef pin, NetId net);
/// Puts a pin, and it alone, into another net: it leaves the one it is in.
Result<Edit> putIntoNet(const Circuit& circuit, PinRef pin, NetId net);
/// The same by name; a name that no net has makes a new net of it.
Result<Edit> putIntoNet(const Circuit& circuit, PinRef pin, std::string_view netName);
/// Leaves a pin open.
Result<Edit> takeOffNet(const Circuit& circuit, PinRef pin);
/// Takes the wire's end off one pin and joins it to another; dropped within its own net, it is taken off
/// only.
Result<Edit> moveWireEnd(const Circuit& circuit, PinRef from, PinRef to);
Result<Edit> moveWireEnd(const Circuit& circuit, PinRef from, NetId to);

Result<Edit> renameNet(const Circuit& circuit, NetId net, std::string_view name);

} // namespace blinkwright::circuit
