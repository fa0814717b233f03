// Trend: how the settled figures move as one value moves over a range, simulated beside textbook.
//
//   Trend t = trend(circuit, PartSet::A, {.ref = "R1", .key = "resistance", .from = 1e3, .to = 1e6}).value();
//   t.points[7].value;  t.points[7].settled->rate_Hz();  t.points[7].textbook->rate_Hz()
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/phase.h"

#include <atomic>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace blinkwright::study {

struct TrendRequest {
    std::string ref; ///< the part whose value moves
    std::string key; ///< a number of it; may be `device.NAME`
    double from = 0, to = 0;
    int points = 40;   ///< at least 2, the ends included
    bool even = false; ///< even steps; else logarithmic, which wants both ends above 0
    double accuracy = 1e-6;
    int threads = 2; ///< results do not depend on it
    const std::atomic<bool>* cancel = nullptr;
};

struct TrendLamp {
    double peak_A = 0, mean_A = 0;
    double litShare = 0; ///< time above 5 % of its rated current over the cycle time
};
struct TrendPoint {
    double value = 0;
    std::optional<Phase> settled =
        {}; ///< nothing where the board does not blink; the rest is missing too then
    std::vector<TrendLamp> lamps = {}; ///< in the order of Trend::lamps; empty where it does not blink
    std::optional<double> supplyMean_A = {};
    std::optional<Phase> textbook = {}; ///< nothing where the wiring has no formula
};
struct Trend {
    std::string ref, key;
    std::vector<std::string> lamps; ///< designators
    std::vector<TrendPoint> points;
};

/// Values that are tied to the one that moves go with it.
/// @return a fault for a value that there is not, or that cannot take an end of the range.
Result<Trend> trend(const circuit::Circuit& circuit, circuit::PartSet set, const TrendRequest& request);

/// The same figures at single values, such as the present one. The range of the request plays no part.
/// @return one point for each of `values`; a fault for one that cannot be.
Result<std::vector<TrendPoint>> trendAt(const circuit::Circuit& circuit, circuit::PartSet set,
                                        const TrendRequest& request, std::span<const double> values);

} // namespace blinkwright::study
