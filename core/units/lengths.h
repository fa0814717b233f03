#pragma once

namespace blinkwright::units {

/// Exact: the inch is 25.4 mm by the international yard and pound agreement of 1959.
inline constexpr double mmPerInch = 25.4;

} // namespace blinkwright::units
