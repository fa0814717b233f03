// Where a new part goes, and where pasted ones do: free places on the grid.
//
//   Placement place = freePlace(drawing.parts(), PartKind::lamp, {0, 0});
//   auto [dx, dy] = freeShift(drawing.parts(), copies);
#pragma once

#include "widgets/hookup/part_view.h"

#include <vector>

namespace blinkwright::widgets::hookup {

/// How a new part stands: two-pin parts upright, pin 1 (plus, anode) on top.
circuit::Placement usualPose(circuit::PartKind kind);

/// The free place nearest to a point, with room for wires about it.
circuit::Placement freePlace(const std::vector<PartView>& parts, circuit::PartKind kind, Point near);

/// The least shift down and to the right by which copies lie on nothing.
Point freeShift(const std::vector<PartView>& parts, const circuit::Circuit& copies);

} // namespace blinkwright::widgets::hookup
