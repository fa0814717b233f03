// What was measured on the real board: counts by stopwatch, meter readings, records of an instrument.
//
//   Measurement m{.title = "First try", .what = Count{.flashes = 20, .time_s = {17.8, 0.15}}};
//   circuit.measurements.push_back(std::make_shared<const Measurement>(std::move(m)));
// Records are bulky: a circuit holds its measurements by shared pointers to what never changes, so that
// copies and undo steps share them. All numbers in SI units.
#pragma once

#include "core/circuit/circuit_ids.h"

#include <array>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace blinkwright::circuit {

/// A measured number with its standard uncertainty (one standard deviation, JCGM 100:2008, 2.3.1).
struct Measured {
    double value = 0;
    double uncertainty = 0; ///< >= 0, in the unit of the value
    bool operator==(const Measured&) const = default;
};

/// Flashes counted in a time by stopwatch.
struct Count {
    int flashes = 1;       ///< whole cycles between start and stop, 1 to 1,000,000
    Measured time_s{1, 0}; ///< > 0; its uncertainty is that of start and stop together
    bool operator==(const Count&) const = default;
};

enum class MeterQuantity {
    supplyVoltage, ///< of a supply, at its terminals [V]
    outputHigh,    ///< of a timer, pin 3 against pin 1 while high [V]
    outputLow,     ///< the same while low [V]
    lampCurrent,   ///< of a lamp while it is lit [A]
    partValue,     ///< of a part, by one of its keys: the part itself on the meter
};
inline constexpr std::array allMeterQuantities{MeterQuantity::supplyVoltage, MeterQuantity::outputHigh,
                                               MeterQuantity::outputLow, MeterQuantity::lampCurrent,
                                               MeterQuantity::partValue};
/// As in files: `supply voltage`.
std::string_view name(MeterQuantity quantity);
std::optional<MeterQuantity> meterQuantityNamed(std::string_view name);

/// One reading of a meter.
struct MeterReading {
    MeterQuantity quantity{};
    PartId part;
    std::string key = {}; ///< of a part value: `resistance`; else empty
    Measured value;
    bool operator==(const MeterReading&) const = default;
};

enum class TraceOf {
    output,    ///< pin 3 of the first timer against 0 V
    capacitor, ///< the timing capacitor's node against 0 V
    other,     ///< something else, shown and kept, not read
};
inline constexpr std::array allTracesOf{TraceOf::output, TraceOf::capacitor, TraceOf::other};
std::string_view name(TraceOf of);
std::optional<TraceOf> traceOfNamed(std::string_view name);

struct Trace {
    TraceOf of = TraceOf::output;
    std::vector<double> values_V; ///< one for each of the record's times
    bool operator==(const Trace&) const = default;
};

/// Mean levels of a two-level signal.
struct Levels {
    double high_V = 0, low_V = 0;
    bool operator==(const Levels&) const = default;
};

/// A record of an instrument: thinned samples, and every switching that the full ones held.
struct Record {
    std::string source = {};               ///< name of the file that it came from, without a folder
    bool fromPowerOn = false;              ///< the supply was applied at time 0
    double step_s = 0;                     ///< between two samples as recorded, > 0
    double timeUncertainty = 1e-4;         ///< relative standard uncertainty of the instrument's time base
    std::vector<double> time_s;            ///< ascending, at most maxRecordSamples
    std::vector<Trace> traces;             ///< one or two, of as many values
    std::vector<double> switchings_s = {}; ///< when the output crossed the middle of its levels, ascending
    bool firstRises = true;                ///< whether the first of them is a rise; then they take turns
    std::optional<Levels> levels = {};     ///< of the trace whose switchings these are
    bool operator==(const Record&) const = default;
};
inline constexpr std::size_t maxRecordSamples = 20'000;
inline constexpr std::size_t maxRecordSwitchings = 200'000;

/// One that this version does not know: kept and written back as it came.
struct OtherMeasurement {
    std::string json;
    bool operator==(const OtherMeasurement&) const = default;
};

struct Measurement {
    std::string title = {};
    bool used = true; ///< whether readings, fits and lab sheets take it into account
    std::variant<Count, MeterReading, Record, OtherMeasurement> what;
    Extras extras = {};
    bool operator==(const Measurement&) const = default;
};

using Measurements = std::vector<std::shared_ptr<const Measurement>>;

} // namespace blinkwright::circuit
