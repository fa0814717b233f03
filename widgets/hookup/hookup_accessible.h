// What a screen reader finds on the Hook-up: the drawing with its parts as children, each part with its pins.
//
//   hookup::makeAccessible(view);     // in the view's constructor
//   // "R1, resistor, 33 kΩ"   "pin 2, trigger, on net timing"
#pragma once

namespace blinkwright::widgets {
class HookupView;
}

namespace blinkwright::widgets::hookup {

/// Has the toolkit ask here about Hook-up views, and tells screen readers when another part is chosen.
void makeAccessible(HookupView& view);

} // namespace blinkwright::widgets::hookup
