// What one part of the drawing shows, as plain values: painting takes these and a theme and nothing else.
//
//   PartView view = viewOf(circuit, *circuit.findRef("R3"), pose);
//   paintPart(painter, view, theme);
#pragma once

#include "widgets/hookup/geometry.h"

#include <QString>

namespace blinkwright::widgets::hookup {

struct PartView {
    circuit::PartId id;
    circuit::PartKind kind = circuit::PartKind::resistor;
    Pose pose;
    QString ref;
    QString value;  ///< `4.7 kΩ`, `10 µF`, `red`; empty where a part has none
    QString colour; ///< of a lamp, as files write it
    bool polarised = false;
    bool closed = false;
    SymbolStyle style;
    bool operator==(const PartView&) const = default;
};

/// The part as Set A has it.
PartView viewOf(const circuit::Circuit& circuit, const circuit::Part& part, const Pose& pose,
                const SymbolStyle& style = {});

// The shapes of geometry.h for a part as it is shown, in its own coordinates.
inline std::span<const Point> pinsOf(const PartView& part) {
    return pinsOf(part.kind, part.style.timer);
}
inline Box bodyOf(const PartView& part) {
    return bodyOf(part.kind, part.style.timer);
}
inline Box extentOf(const PartView& part) {
    return extentOf(part.kind, part.style.timer);
}
/// The way a pin's lead points on the drawing.
Point leadOf(const PartView& part, int pin);

/// The kind in the user's language: `capacitor`.
QString kindText(circuit::PartKind kind);
/// `R1, resistor, 33 kΩ`.
QString partText(const PartView& part);
/// Name on the timer's package (as the makers' sheets print them): `TRIG`. @param pin 0 to 7.
QString timerPinName(int pin);
/// `pin 2, trigger` or `anode`: for tool tips.
QString pinText(circuit::PartKind kind, int pin);

} // namespace blinkwright::widgets::hookup
