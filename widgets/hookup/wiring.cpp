#include "widgets/hookup/wiring.h"

#include "widgets/hookup/layout.h"

#include <cmath>

namespace blinkwright::widgets::hookup {

namespace {

constexpr int railGap = 30;   ///< from the outermost part to a rail
constexpr int labelRoom = 44; ///< width kept quiet beside a part, whatever its value's text

/// Where a label would like to stand; taken by kind alone, so that a changed value never moves a wire.
Box roomForLabel(const PartView& part) {
    const Box body = placed(bodyOf(part), part.pose);
    const int middle = (body.top + body.bottom) / 2;
    if (part.pose.upright()) return {body.right + 4, middle - 14, body.right + labelRoom, middle + 14};
    return {body.left, body.top - 18, body.right, body.top - 2};
}

} // namespace

RouterInput routerInput(const std::vector<PartView>& parts, const circuit::Circuit& circuit) {
    RouterInput in;
    std::map<circuit::PinRef, int> netOf;
    for (std::size_t n = 0; n < circuit.nets().size(); ++n)
        for (const circuit::PinRef pin : circuit.nets()[n].pins) netOf[pin] = static_cast<int>(n);
    in.nets = static_cast<int>(circuit.nets().size());

    Box all;
    for (const PartView& part : parts) {
        const Box extent = placed(extentOf(part), part.pose);
        all = in.bodies.empty() ? extent : all.with(extent);
        in.bodies.push_back(placed(bodyOf(part), part.pose));
        if (part.kind != circuit::PartKind::timer) in.quiet.push_back(roomForLabel(part));
        for (int pin = 0; pin < static_cast<int>(pinsOf(part).size()); ++pin) {
            const auto net = netOf.find({part.id, pin});
            in.pins.push_back({placed(pinsOf(part)[static_cast<std::size_t>(pin)], part.pose),
                               leadOf(part, pin), net == netOf.end() ? -1 : net->second});
        }
    }
    const auto onGrid = [](int v) {
        return static_cast<int>(std::floor(v / static_cast<double>(pitch))) * pitch;
    };
    const RailNets rails = railNets(circuit);
    for (std::size_t n = 0; n < circuit.nets().size(); ++n) {
        const circuit::Net& net = circuit.nets()[n];
        if (net.pins.size() < leastRailPins) continue;
        if (net.id == rails.plus)
            in.rails.push_back({static_cast<int>(n), onGrid(all.top) - railGap});
        else if (net.id == rails.zero)
            in.rails.push_back({static_cast<int>(n), onGrid(all.bottom) + pitch + railGap});
    }
    return in;
}

} // namespace blinkwright::widgets::hookup
