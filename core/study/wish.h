// A wish for a blinker, and the parts that are proposed for it.
//
//   Wish wish{.rate_Hz = 1.2, .lit = 0.4, .supply_V = 9};
//   Choices c = choose(wish, {});                  // choose.h
//   c.best[0].r1_ohm;  c.best[0].rate_Hz;  c.unmet->reason
//   wish.rateTo_Hz = 3;                           // a variable resistor sets 1.2 to 3 Hz
#pragma once

#include "core/units/series.h"

#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

enum class LampTo { ground, rail, either };

/// One kind of part that the user owns.
struct Stock {
    enum class Kind { resistor, capacitor, variable };
    Kind kind = Kind::resistor;
    double value = 0;                     ///< [ohm] or [F]; of a variable resistor from end to end
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
    /// The other end of a range of rates, which a variable resistor sets; the ends may stand either way
    /// round.
    std::optional<double> rateTo_Hz = {};
    /// Two lamps behind one capacitor: how long each is to stay visibly lit in its turn, above `litShare` of
    /// its rated current (figures.h). The coupling capacitor follows from it; `lit` is then the share of the
    /// first lamp's turn. [s]
    std::optional<double> stayLit_s = {};
    /// Two lamps: equal mean luminous intensity instead of equal currents. The brighter lamp is held back.
    bool equalBrightness = false;
    /// Of the two lamps, at one and the same current, as their maker states it [cd]; empty: not known, and
    /// equal mean currents stand for equal brightness.
    std::vector<double> intensity_cd = {};

    double slowest_Hz() const { return rateTo_Hz && *rateTo_Hz < rate_Hz ? *rateTo_Hz : rate_Hz; }
    double fastest_Hz() const { return rateTo_Hz && *rateTo_Hz > rate_Hz ? *rateTo_Hz : rate_Hz; }
};

/// How the lamp and the timing are wired.
struct Scheme {
    bool diode = false;       ///< across R2: high and low are set by R1 and R2 alone
    bool lampToRail = false;  ///< lit while the output is low
    bool coupledPair = false; ///< two lamps behind one capacitor; else two lamps hang on a rail each
    bool operator==(const Scheme&) const = default;
};

/// A lamp of a settled board.
struct ChosenLamp {
    double peak_A = 0, mean_A = 0, lit_s = 0; ///< lit_s a cycle
};
/// The other end of a range: the variable resistor at its least.
struct FastEnd {
    double rate_Hz = 0, duty = 0, lit = 0, supplyMean_A = 0;
};

struct Choice {
    Scheme scheme;
    double r1_ohm = 0, r2_ohm = 0, c1_farad = 0;
    double r3_ohm = 0;                         ///< in the current of the first lamp, or of the coupled pair
    std::optional<double> r4_ohm = {};         ///< in the current of a second lamp with a resistor of its own
    std::optional<double> coupling_farad = {}; ///< of the coupled pair
    std::optional<double> variable_ohm = {};   ///< RV1, in series with R2, which is then its end stop
    double setting = 0.5;                      ///< of RV1: 0 is the fast end
    // What no wish asks about; 0: the drawer has none, and the board goes without.
    double control_farad = 10e-9; ///< C2, on pin 5
    double buffer_farad = 100e-6; ///< C3, across the supply
    double bleeder_ohm = 10e3;    ///< R4 of the coupled pair, keeps the output loaded
    /// Of the part that is scarcest in the drawer, how many are left after this board.
    std::optional<long> left = {};
    // Of the simulated board, settled; of a range the slow end:
    double rate_Hz = 0, duty = 0, lit = 0, lampPeak_A = 0, supplyMean_A = 0;
    std::optional<FastEnd> fast = {};       ///< of a range
    std::vector<ChosenLamp> lamps = {};     ///< in the order D1, D2
    double rateLow_Hz = 0, rateHigh_Hz = 0; ///< with the timing parts at the ends of their tolerances
    /// Charging current at the upper level over the threshold current and the leakage to be expected there.
    double stallMargin = 0;
};

struct Unmet {
    std::string reason;                        ///< which limit forbids the wish, a sentence
    double rate_Hz = 0, lit = 0, supply_V = 0; ///< the nearest wish that can be met
    std::optional<Choice> choice = {};         ///< and its parts, if there are any
    std::optional<double> rateTo_Hz = {};      ///< of a range
    std::optional<double> stayLit_s = {};
};

struct Choices {
    std::vector<Choice> best; ///< best first; empty where the wish cannot be met
    std::optional<Unmet> unmet;
    std::size_t screened = 0, simulated = 0; ///< how many combinations were looked at
    bool cancelled = false;
};

} // namespace blinkwright::study
