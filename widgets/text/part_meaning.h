// What kinds of parts and their values are for, in a sentence or two, for "What is this?".
//
//   kindMeaning(PartKind::lamp);                        // "A light-emitting diode. ..."
//   valueMeaning(PartKind::capacitor, "capacitance");   // "In farads. ..."
#pragma once

#include "core/circuit/kinds.h"

#include <QString>

namespace blinkwright::widgets {

QString kindMeaning(circuit::PartKind kind);
/// Unit, range and consequence of one value; empty for a key that no form shows.
QString valueMeaning(circuit::PartKind kind, std::string_view key);

} // namespace blinkwright::widgets
