#include "widgets/hookup/trunk.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace blinkwright::widgets::hookup {

namespace {

std::vector<WireStep> freeSteps(const RouterGrid& grid, Point from, Point to, int heading) {
    std::vector<WireStep> steps;
    const int end = grid.vertex(to), step = grid.step(heading);
    for (int v = grid.vertex(from); v < end; v += step)
        if (!grid.blocked(v) && !grid.blocked(v + step)) steps.push_back({v, heading});
    return steps;
}

Line lineOf(const Rail& rail, const RouterInput& in, const std::vector<std::size_t>& pins, const Riser* riser,
            const RouterGrid& grid) {
    Line line;
    line.y = rail.y;
    int left = riser ? riser->x : in.pins[pins.front()].at.x, right = left;
    for (const std::size_t pin : pins) {
        left = std::min(left, in.pins[pin].at.x);
        right = std::max(right, in.pins[pin].at.x);
    }
    line.steps = freeSteps(grid, {left, rail.y}, {right, rail.y}, RouterGrid::east);
    if (line.steps.empty()) return line;
    line.whole = line.steps.size() == static_cast<std::size_t>((right - left) / pitch);
    line.goal = {grid.point(line.steps.front().vertex).x, rail.y, grid.point(line.steps.back().vertex + 1).x,
                 rail.y};
    return line;
}

std::vector<WireStep> riserOf(const Riser& riser, const std::vector<Line>& lines, const RouterGrid& grid) {
    const auto [top, bottom] = std::ranges::minmax(lines, {}, &Line::y);
    return freeSteps(grid, {riser.x, top.y}, {riser.x, bottom.y}, RouterGrid::south);
}

} // namespace

Trunk trunkOf(int net, const RouterInput& in, const std::vector<std::size_t>& pins, const RouterGrid& grid,
              std::vector<std::size_t>& hangsOn) {
    std::vector<Rail> rails;
    std::ranges::copy_if(in.rails, std::back_inserter(rails),
                         [net](const Rail& rail) { return rail.net == net; });
    std::vector<std::vector<std::size_t>> pinsOf(rails.size());
    for (const std::size_t pin : pins) {
        const int y = in.pins[pin].at.y;
        const auto mine =
            std::ranges::find_if(rails, [y](const Rail& rail) { return rail.top <= y && y <= rail.bottom; });
        pinsOf[mine == rails.end() ? 0 : static_cast<std::size_t>(mine - rails.begin())].push_back(pin);
    }
    const auto riser = std::ranges::find(in.risers, net, &Riser::net);
    const bool joined = riser != in.risers.end() &&
                        std::ranges::count_if(pinsOf, [](const auto& some) { return !some.empty(); }) > 1;
    Trunk trunk;
    std::vector<std::size_t> strays;
    for (std::size_t i = 0; i < rails.size(); ++i) {
        if (pinsOf[i].empty()) continue;
        Line line = lineOf(rails[i], in, pinsOf[i], joined ? &*riser : nullptr, grid);
        if (line.steps.empty()) {
            strays.insert(strays.end(), pinsOf[i].begin(), pinsOf[i].end());
            continue;
        }
        for (const std::size_t pin : pinsOf[i]) hangsOn[pin] = trunk.lines.size();
        trunk.lines.push_back(std::move(line));
    }
    if (trunk.lines.empty()) return trunk;
    for (const std::size_t pin : strays) {
        hangsOn[pin] = 0;
        trunk.lines.front().whole = false; // it reaches past these no more
    }
    if (joined) trunk.riser = riserOf(*riser, trunk.lines, grid);
    return trunk;
}

} // namespace blinkwright::widgets::hookup
