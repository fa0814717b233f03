// What the router is asked for a circuit whose parts have their places: bodies, pins by net, rails for the
// supply, room for labels.
//
//   Routes routes = route(routerInput(parts, circuit));
// Net numbers are places in circuit.nets().
#pragma once

#include "widgets/hookup/part_view.h"
#include "widgets/hookup/router.h"

namespace blinkwright::widgets::hookup {

inline constexpr std::size_t leastRailPins = 3; ///< pins that make a supply's net a rail

RouterInput routerInput(const std::vector<PartView>& parts, const circuit::Circuit& circuit);

} // namespace blinkwright::widgets::hookup
