// The steps that edits of wiring are made of, done on a plan.
//
//   EditPlan plan(circuit);
//   plan.add({edits::JoinPin{pin, std::nullopt}});
//   planning::tidyNet(plan, net);
#pragma once

#include "core/circuit/edit_plan.h"

namespace blinkwright::circuit::planning {

/// Removes a net that is left with no pin, or with one pin and an automatic name.
void tidyNet(EditPlan& plan, NetId net);
/// Gives an unnamed net with a supply's pin the name of its rail, if that is free.
void nameRail(EditPlan& plan, NetId net);
/// Two pins with or without nets, of different ones, come into one net.
void unite(EditPlan& plan, PinRef a, PinRef b);
/// Two different nets become one; the better name stays.
void merge(EditPlan& plan, NetId a, NetId b);

} // namespace blinkwright::circuit::planning
