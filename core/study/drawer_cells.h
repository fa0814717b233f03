// One row of the drawer as texts, cell by cell, in both directions.
//
//   Stock row;
//   setDrawerCell(row, DrawerColumn::value, "4k7");          // a fault names the column
//   drawerCell(row, DrawerColumn::value);                    // "4.7 kΩ"
#pragma once

#include "core/base/result.h"
#include "core/study/wish.h"
#include "core/units/engineering.h"

#include <string>
#include <string_view>

namespace blinkwright::study {

enum class DrawerColumn { kind, value, tolerance, rating, quantity };
inline constexpr DrawerColumn drawerColumns[] = {DrawerColumn::kind, DrawerColumn::value,
                                                 DrawerColumn::tolerance, DrawerColumn::rating,
                                                 DrawerColumn::quantity};

/// As files have it: `value`.
std::string_view name(DrawerColumn column);
/// As files have it: `resistor`.
std::string_view name(Stock::Kind kind);
/// Reads one cell into a row whose kind is known. Values, ratings (W of a resistor, V of a capacitor) and
/// tolerances are engineering text. An empty tolerance or rating is not known, an empty quantity is 1.
/// @return a fault whose place is the column; the row is then as it was.
Result<void> setDrawerCell(Stock& stock, DrawerColumn column, const std::string& text);
/// For people; empty where it is not known.
std::string drawerCell(const Stock& stock, DrawerColumn column);

} // namespace blinkwright::study
