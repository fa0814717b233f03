// From part to part with the keyboard.
//
//   neighbour(parts, selected, Way::right)   // the part that lies nearest in that direction, or nothing
//   neighbour(parts, {}, Way::next)          // the first part
#pragma once

#include "widgets/hookup/part_view.h"

#include <optional>
#include <vector>

namespace blinkwright::widgets::hookup {

enum class Way { left, right, up, down, next, previous };

/// next and previous go through the list of parts and end at its ends; the directions prefer what lies
/// straight ahead. With nothing chosen every direction begins at the first part.
std::optional<circuit::PartId> neighbour(const std::vector<PartView>& parts,
                                         std::optional<circuit::PartId> from, Way way);

} // namespace blinkwright::widgets::hookup
