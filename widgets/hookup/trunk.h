// What is laid of a net with rails before its pins are joined: a line for each row of parts, and the riser
// that joins the lines.
//
//   std::vector<std::size_t> hangsOn(in.pins.size());
//   Trunk trunk = trunkOf(net, in, pinsOfNet, grid, hangsOn);
//   trunk.lines[hangsOn[pin]].goal   // where the wire of this pin has to arrive
#pragma once

#include "widgets/hookup/router_grid.h"
#include "widgets/hookup/wire_search.h"

namespace blinkwright::widgets::hookup {

/// A rail as it is laid.
struct Line {
    std::vector<WireStep> steps; ///< eastwards
    Box goal;
    int y = 0;
    bool whole = false; ///< it reaches past all its pins without a gap
    bool operator==(const Line&) const = default;
    /// Whether what hangs on the one hangs as well on the other, their ends aside.
    bool continues(const Line& before) const { return whole && before.whole && y == before.y; }
};

struct Trunk {
    std::vector<Line> lines;
    std::vector<WireStep> riser; ///< southwards
    bool operator==(const Trunk&) const = default;
    template <class Visit>
    void visit(Visit visit) const {
        for (const Line& line : lines)
            for (const WireStep& s : line.steps) visit(s);
        for (const WireStep& s : riser) visit(s);
    }
};

/// Without lines where the net has no rail that anything hangs on, or no room for one.
/// @param pins of the net: places in RouterInput::pins.
/// @param hangsOn gets, for each of them, the place of its line in the trunk, and stays where there is none.
Trunk trunkOf(int net, const RouterInput& in, const std::vector<std::size_t>& pins, const RouterGrid& grid,
              std::vector<std::size_t>& hangsOn);

} // namespace blinkwright::widgets::hookup
