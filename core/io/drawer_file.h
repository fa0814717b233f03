// The user's drawer as CSV: `kind,value,tolerance,rating,quantity`, one kind of part a line.
//
//   Result<std::vector<study::Stock>> drawer = readDrawer(text);  // fault: "line 3: ..."
//   std::string text = writeDrawer(*drawer);
#pragma once

#include "core/base/result.h"
#include "core/study/wish.h"

#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::io {

inline constexpr std::size_t maxDrawerBytes = 1u << 20;

/// The kind is `resistor`, `variable` or `capacitor`. Values, ratings (W of a resistor, V of a capacitor) and
/// tolerances are read as engineering text: `4k7`, `"4,7 k"`, `5 %`. An empty tolerance or rating is not
/// known, an empty quantity is 1. Lines that are empty are passed over; the header may be missing.
Result<std::vector<study::Stock>> readDrawer(std::string_view text);

/// With header; plain SI numbers; CRLF line ends (RFC 4180).
std::string writeDrawer(const std::vector<study::Stock>& drawer);

} // namespace blinkwright::io
