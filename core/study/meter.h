// Meters and probes, and what they read at a place of a board.
//
//   Extent e = expected[3].reading;      // expected_readings.h
//   e.of(Quantity::mean)                 // what a DC voltmeter settles on, if it is slow enough
#pragma once

#include "core/base/wording.h"

#include <array>
#include <string_view>

namespace blinkwright::study {

/// What hangs on the node that is measured, against 0 V.
struct Instrument {
    std::string_view words; ///< marked for translation
    double ohm = 10e6;
    double farad = 0;
};
// Input resistance of usual digital meters and of ten-to-one probes, with the probe's capacitance at its tip;
// from memory.
inline constexpr Instrument dcMeter{wording::marked("meter of 10 MΩ"), 10e6, 0};
inline constexpr Instrument tenToOneProbe{wording::marked("probe of 10 MΩ and 12 pF"), 10e6, 12e-12};

enum class Quantity { mean, least, most };
inline constexpr std::array allQuantities{Quantity::mean, Quantity::least, Quantity::most};
/// `mean`, `least`, `most`, marked for translation.
constexpr std::string_view name(Quantity quantity) {
    return quantity == Quantity::mean    ? wording::marked("mean")
           : quantity == Quantity::least ? wording::marked("least")
                                         : wording::marked("most");
}

/// Least, most and mean over one settled period; all three alike where nothing moves. [V] or [A]
struct Extent {
    double least = 0, most = 0, mean = 0;
    double of(Quantity quantity) const {
        return quantity == Quantity::mean ? mean : quantity == Quantity::least ? least : most;
    }
    bool operator==(const Extent&) const = default;
};

} // namespace blinkwright::study
