// The rows of the Pins view as plain values: one a pin, in the order of the parts.
//
//   for (const PinRow& row : pinRows(circuit)) row.net;   // "timing", empty for an open pin
#pragma once

#include "core/circuit/circuit.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace blinkwright::widgets {

struct PinRow {
    circuit::PinRef pin;
    QString name; ///< `U1:2`
    QString part; ///< `555 timer, bipolar`, `resistor, 33 kΩ`
    QString role; ///< `trigger`
    std::optional<circuit::NetId> net;
    QString netName; ///< empty for an open pin
    bool operator==(const PinRow&) const = default;
};

std::vector<PinRow> pinRows(const circuit::Circuit& circuit);

/// What the net cell of a pin offers: the names of all nets, then all other pins.
QStringList netOffers(const std::vector<PinRow>& rows, circuit::PinRef pin);

/// `3.214 V`, `0 V` for less than a microvolt.
QString voltText(double volt);

} // namespace blinkwright::widgets
