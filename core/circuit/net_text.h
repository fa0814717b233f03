// What somebody means who types into a pin's net cell.
//
//   editForNetText(c, {r1, 0}, "timing");   // into the net of that name, or a new one of that name
//   editForNetText(c, {r1, 0}, "U1:6");     // where that pin is; both into a new net if it is in none
//   editForNetText(c, {r1, 0}, "");         // off its net
#pragma once

#include "core/circuit/edit.h"

#include <optional>
#include <string_view>

namespace blinkwright::circuit {

/// @param text white space about it does not count. A net's name goes before a pin's.
/// @return nothing where the text says what is there already.
std::optional<Result<Edit>> editForNetText(const Circuit& circuit, PinRef pin, std::string_view text);

} // namespace blinkwright::circuit
