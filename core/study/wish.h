// A wish for a blinker, and the parts that are proposed for it.
//
//   Wish wish{.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9};
//   Choices c = choose(wish, {});                  // choose.h
//   c.best[0].r1_ohm;  c.best[0].rate_Hz;  c.unmet->reason
#pragma once

#include "core/units/series.h"

#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

enum class LampTo { ground, rail, either };

/// One kind of part that the user owns.
struct Stock {
    enum class Kind { resistor, capacitor };
    Kind kind = Kind::resistor;
    double value = 0;                     ///< [ohm] or [F]
    std::optional<double> tolerance = {}; ///< relative
    std::optional<double> rating = {};    ///< [W] or [V]
    long quantity = 1;
};

struct Wish {
    double rate_Hz = 1;
    double lit = 0.5; ///< lit time of the first lamp over the period, above 0 and below 1
    double supply_V = 9;
    LampTo lampTo = LampTo::either; ///< of one lamp
    bool cmos = false;
    int lamps = 1; ///< 1, or 2 that take turns
    double lampCurrent_A = 10e-3;
    std::vector<std::string> colours{"red", "green"}; ///< of the first and the second lamp
    units::Series r1 = units::Series::E24, r2 = units::Series::E24, c1 = units::Series::E6;
    std::optional<std::vector<Stock>> drawer = {}; ///< values come from here instead of from the series
};

/// How the lamp and the timing are wired.
struct Scheme {
    bool diode = false;       ///< across R2: high and low are set by R1 and R2 alone
    bool lampToRail = false;  ///< lit while the output is low
    bool coupledPair = false; ///< two lamps behind one capacitor; else two lamps hang on a rail each
    bool operator==(const Scheme&) const = default;
};

struct Choice {
    Scheme scheme;
    double r1_ohm = 0, r2_ohm = 0, c1_farad = 0;
    double r3_ohm = 0;                         ///< in the current of the first lamp, or of the coupled pair
    std::optional<double> r4_ohm = {};         ///< in the current of a second lamp with a resistor of its own
    std::optional<double> coupling_farad = {}; ///< of the coupled pair
    // Of the simulated board, settled:
    double rate_Hz = 0, duty = 0, lit = 0, lampPeak_A = 0, supplyMean_A = 0;
    double rateLow_Hz = 0, rateHigh_Hz = 0; ///< with R1, R2 and C1 at the ends of their tolerances
    /// Charging current at the upper level over the threshold current and the leakage to be expected there.
    double stallMargin = 0;
};

struct Unmet {
    std::string reason;                        ///< which limit forbids the wish, a sentence
    double rate_Hz = 0, lit = 0, supply_V = 0; ///< the nearest wish that can be met
    std::optional<Choice> choice = {};         ///< and its parts, if there are any
};

struct Choices {
    std::vector<Choice> best; ///< best first; empty where the wish cannot be met
    std::optional<Unmet> unmet;
    std::size_t screened = 0, simulated = 0; ///< how many combinations were looked at
    bool cancelled = false;
};

} // namespace blinkwright::study
