// Preferred numbers for resistors and capacitors: the series E3 to E192 of IEC 60063.
//
//   nearest(Series::E24, 4.6e3)             // 4700
//   nextAbove(Series::E12, 4700)            // 5600
//   valuesBetween(Series::E6, 1e3, 1e4)     // 1000, 1500, 2200, 3300, 4700, 6800, 10000
//   inSeries(Series::E96, 4.7e3)            // false: E24 is no part of E96
#pragma once

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace blinkwright::units {

enum class Series { E3, E6, E12, E24, E48, E96, E192 };

inline constexpr Series allSeries[] = {Series::E3,  Series::E6,  Series::E12, Series::E24,
                                       Series::E48, Series::E96, Series::E192};

/// Values from the first to the last of these decades are known: far beyond any part [SI units].
inline constexpr double leastPreferred = 1e-18, mostPreferred = 1e18;

/// As the standard writes it: `E24`.
std::string_view name(Series series);
std::optional<Series> seriesNamed(std::string_view text);

/// The values from 100 up to, but not including, 1000, ascending; as many as the name says.
std::span<const int> decade(Series series);

/// The tolerance that a series was made for, relative, e.g. 0.05 for E24; E3 has none of its own: 0.2 as E6.
double nominalTolerance(Series series);

/// Whether a value belongs to a series, to nine digits.
bool inSeries(Series series, double value);

/// The member with the least difference to a value; of two that are as near, the smaller. @param value within
/// leastPreferred to mostPreferred, as for the functions below.
double nearest(Series series, double value);
/// The least member that is greater than the value; a member itself is not its own next.
double nextAbove(Series series, double value);
/// The greatest member that is less than the value.
double nextBelow(Series series, double value);
/// The least member that is not less than the value: the value itself where it is one.
double atLeast(Series series, double value);
/// The greatest member that is not greater than the value.
double atMost(Series series, double value);

/// All members from low to high, both included, ascending; empty where high < low.
std::vector<double> valuesBetween(Series series, double low, double high);

} // namespace blinkwright::units
