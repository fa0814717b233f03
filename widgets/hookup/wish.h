// What a hand on the Hook-up wishes to be done to the circuit: plain values with ids, one kind a gesture.
// The view emits them and changes nothing; whoever holds the document makes them into edits.
//
//   connect(&view, &HookupView::wished, [](const hookup::Wish& wish, int gesture) {
//       if (auto* join = std::get_if<hookup::wishes::JoinPins>(&wish)) ...
//   });
#pragma once

#include "core/circuit/part_edits.h"

#include <variant>
#include <vector>

namespace blinkwright::widgets::hookup {

namespace wishes {
struct JoinPins {
    circuit::PinRef a, b;
};
struct JoinToNet {
    circuit::PinRef pin;
    circuit::NetId net;
};
/// The end of a wire was pulled off a pin and dropped on another pin, on a net, or nowhere.
struct PullToPin {
    circuit::PinRef from, to;
};
struct PullToNet {
    circuit::PinRef from;
    circuit::NetId to;
};
struct TakeOff {
    circuit::PinRef pin;
};
/// The parts as they stood when the gesture began, and how far they are from there now [units].
struct Move {
    circuit::Places shown;
    int dx = 0, dy = 0;
};
struct Turn {
    circuit::Places shown;
};
struct Mirror {
    circuit::Places shown;
};
struct Delete {
    std::vector<circuit::PartId> parts;
};
struct DeleteNet {
    circuit::NetId net;
};
struct Add {
    circuit::PartKind kind = circuit::PartKind::resistor;
    circuit::Placement place;
};
} // namespace wishes

using Wish =
    std::variant<wishes::JoinPins, wishes::JoinToNet, wishes::PullToPin, wishes::PullToNet, wishes::TakeOff,
                 wishes::Move, wishes::Turn, wishes::Mirror, wishes::Delete, wishes::DeleteNet, wishes::Add>;

} // namespace blinkwright::widgets::hookup
