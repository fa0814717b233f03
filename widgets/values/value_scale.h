// How a value lies along a slider: in equal ratios for resistances and capacitances, in equal steps for
// voltages and settings; which stretch of it the slider spans; and the fine and coarse steps of its keys.
//
//   ValueScale scale = ValueScale::around(scaleKind(PartKind::resistor, "resistance"), 68e3);  // 10 kΩ to 1
//   MΩ scale.at(0.5);              // 100e3 scale.place(68e3);          // 0.416 roundedTo3(68123.0); //
//   68100
#pragma once

#include "core/circuit/kinds.h"

#include <optional>
#include <string_view>

namespace blinkwright::widgets {

/// One kind of value that a slider can move.
struct ScaleKind {
    bool ratios = true; ///< equal ratios (logarithmic), else equal steps
    double least = 0;   ///< ends of what people ordinarily use [SI]
    double most = 0;
    double fine = 0;   ///< one arrow key: a ratio, or a step [SI]
    double coarse = 0; ///< one page key
};

/// @return nothing for a key that has no slider.
std::optional<ScaleKind> scaleKind(circuit::PartKind kind, std::string_view key);

struct ValueScale {
    ScaleKind kind;
    double low = 0; ///< ends of the slider [SI]
    double high = 1;

    /// The stretch for a value: for ratios the decade nearest to it and one to either side, held within the
    /// ordinary ends unless the value itself lies beyond them.
    static ValueScale around(const ScaleKind& kind, double value);

    double at(double place) const;    ///< 0 to 1 -> value
    double place(double value) const; ///< value -> 0 to 1, held to the ends
    bool contains(double value) const;
    /// The value some key steps away: `steps` fine ones (arrow) or coarse ones (page); always a different
    /// value unless the end is reached.
    double stepped(double value, int steps, bool coarse) const;
};

/// To three significant digits, as values are while they are dragged.
double roundedTo3(double value);

} // namespace blinkwright::widgets
