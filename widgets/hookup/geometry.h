// The shapes of the drawing in its own units, free of Qt: where the pins of a symbol are, how far its body
// reaches, and how a part's turn and mirror move both. Ten units are one step of the grid that pins and wires
// keep to; at a zoom of 1 a unit is one pixel.
//
//   Pose pose = poseOf(placement);                      // snapped to the grid
//   Point pin = placed(pinsOf(PartKind::resistor, style.timer)[0], pose);
//   Box body = placed(bodyOf(PartKind::resistor, style.timer), pose);
//
// A symbol that is not turned lies: pin 1 (plus, anode) on its left. Turned by 90 it stands with that pin on
// top.
#pragma once

#include "core/circuit/circuit.h"

#include <algorithm>
#include <compare>
#include <span>

namespace blinkwright::widgets::hookup {

inline constexpr int pitch = 10; ///< one step of the grid [units]

/// Whose shapes the symbols have: IEC 60617 or IEEE 315.
enum class Shapes { iec60617, ieee315 };
/// The timer as its package from above, or as a block with its supply on top, ground below, timing on the
/// right and output on the left.
enum class TimerLook { package, block };
/// How symbols are drawn. The shapes of one kind take the same room in both; the timer's pins change places.
struct SymbolStyle {
    Shapes shapes = Shapes::iec60617;
    TimerLook timer = TimerLook::package;
    bool operator==(const SymbolStyle&) const = default;
};

struct Point {
    int x = 0;
    int y = 0;
    auto operator<=>(const Point&) const = default;
};

/// A rectangle; all four edges belong to it.
struct Box {
    int left = 0, top = 0, right = 0, bottom = 0;
    bool operator==(const Box&) const = default;
    bool holds(Point p) const { return p.x >= left && p.x <= right && p.y >= top && p.y <= bottom; }
    bool meets(const Box& o) const {
        return left <= o.right && o.left <= right && top <= o.bottom && o.top <= bottom;
    }
    Box grown(int by) const { return {left - by, top - by, right + by, bottom + by}; }
    Box with(const Box& o) const {
        return {std::min(left, o.left), std::min(top, o.top), std::max(right, o.right),
                std::max(bottom, o.bottom)};
    }
};

/// A part's place: its middle on the grid, turned clockwise after it was mirrored left to right.
struct Pose {
    Point at;
    int turn = 0; ///< 0, 90, 180 or 270
    bool mirror = false;
    bool operator==(const Pose&) const = default;
    bool upright() const { return turn == 90 || turn == 270; }
};

/// The nearest pose on the grid; any turn is rounded to a quarter, and places are kept within a million
/// units.
Pose poseOf(const circuit::Placement& placement);

Point placed(Point local, const Pose& pose);
Box placed(const Box& local, const Pose& pose);

/// Ends of the pins' leads, where wires join; in the order of KindInfo::pins.
std::span<const Point> pinsOf(circuit::PartKind kind, TimerLook look);
/// What the symbol covers without the ends of its leads. No wire enters it.
Box bodyOf(circuit::PartKind kind, TimerLook look);
/// Body and leads: two parts whose extents meet are drawn on top of one another.
Box extentOf(circuit::PartKind kind, TimerLook look);
/// The way a lead points, away from the body: one step of the grid.
Point leadOf(circuit::PartKind kind, TimerLook look, int pin);

inline constexpr Point lensCentre{6, -31}; ///< of a lamp's lens, local
inline constexpr int lensRadius = 9;
inline constexpr int timerHalfWidth = 60;   ///< of the timer's outline
inline constexpr int timerLead = 2 * pitch; ///< of each pin, from the outline to its end
inline constexpr int timerHalfHeight = 80;

/// Space left between a body and the nearest wire.
inline constexpr int clearance = 4;

} // namespace blinkwright::widgets::hookup
