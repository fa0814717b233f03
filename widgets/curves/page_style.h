// What the strips of a page show, and how: see CurvesPage.
#pragma once

#include "widgets/curves/strips.h"

#include <array>

namespace blinkwright::widgets {

struct PageStyle {
    std::array<bool, stripCount> strips{true, true, true}; ///< output, capacitor, lamp currents
    bool legend = true;
    bool greys = false; ///< told apart by dashes instead of colours, for copiers
    bool operator==(const PageStyle&) const = default;
};

} // namespace blinkwright::widgets
