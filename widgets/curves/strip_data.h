// What the three strips draw: curves cut down to what a screen of so many pixel columns can show.
//
//   StripPicture p = stripPicture(curves, echo, {0, 6}, 1200, {200, 200, 200});
//   graph->data()->set(p.curves.output, true);
//   p.ranges[1].high      // rounded top of the capacitor strip [V]
// Free of widgets' state, so that long curves can be cut down on another thread.
#pragma once

#include "core/engine/curves.h"
#include "widgets/curves/record_curve.h"
#include "widgets/curves/strips.h"

#include <QVector>
#include <array>
#include <memory>
#include <qcustomplot.h>
#include <vector>

namespace blinkwright::widgets {

using StripPoints = QVector<QCPGraphData>;

/// The points that draw a polyline exactly as all of its points would: within a pixel column only the first,
/// the smallest, the largest and the last are kept, then points on a straight line between their neighbours
/// go. A jump (one time twice) stays a jump.
/// @param time_s ascending, @param value of the same length.
/// @param columns pixel columns that `visible` covers, >= 1.
/// @param tolerance how far a dropped point may lie from the line drawn [unit of value], >= 0.
StripPoints thinned(const std::vector<double>& time_s, const std::vector<double>& value, Span visible,
                    int columns, double tolerance);

/// Smallest of 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8 times a power of ten that is at least `high`; 0 for 0.
double roundedTop(double high);

struct LampPoints {
    std::string ref;
    std::string colour;
    int twin =
        -1; ///< in an echo: the index of the same lamp among its set's curves, -1 if it is there no more
    StripPoints points;
};
struct CurvePoints {
    StripPoints output, capacitor, upperLevel, lowerLevel;
    std::vector<LampPoints> lamps;
};
/// Of one record; empty where it has no such trace.
struct RecordPoints {
    StripPoints output, capacitor;
};
struct StripPicture {
    CurvePoints curves;
    CurvePoints second;                  ///< of the set that is laid over; levels only where they differ
    CurvePoints echo;                    ///< levels are left out
    bool echoOfSecond = false;           ///< whose echo it is
    std::vector<RecordPoints> records;   ///< in the order of the sources
    std::array<Span, stripCount> ranges; ///< rounded, all curves together; begin is 0 or negative
};

/// What is to be drawn; each may be null.
struct StripSources {
    const engine::Curves* curves = nullptr; ///< Set A
    const engine::Curves* echo = nullptr;
    const engine::Curves* second = nullptr; ///< the set that is laid over
    bool echoOfSecond = false;
    const RecordCurves* records = nullptr; ///< of the real board
};

/// @param heights_px heights of the strips, for the tolerance.
/// @param before a picture with the same echo, records, span, columns and heights, or null: its echo and its
/// records are taken over (their points shared) where the ranges have stayed, too.
StripPicture stripPicture(const StripSources& sources, Span visible, int columns,
                          std::array<int, stripCount> heights_px, const StripPicture* before = nullptr);
StripPicture stripPicture(const engine::Curves* curves, const engine::Curves* echo, Span visible, int columns,
                          std::array<int, stripCount> heights_px, const StripPicture* before = nullptr);

} // namespace blinkwright::widgets
