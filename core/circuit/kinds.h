// The part kinds: their names in files, their pins, and the values they carry. The one table that reader,
// writer, edits, value rows and headless overrides all follow; a new kind starts here.
//
//   const KindInfo& kind = info(PartKind::resistor);
//   kind.name                      // "resistor"
//   kind.pins[0].name              // "1"
//   findKey(kind, "resistance")    // -> KeyInfo with shape, unit, range
#pragma once

#include "core/units/engineering.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace blinkwright::circuit {

enum class PartKind { supply, timer, resistor, variable, capacitor, lamp, diode, toggle };

inline constexpr PartKind allKinds[] = {PartKind::supply,   PartKind::timer,     PartKind::resistor,
                                        PartKind::variable, PartKind::capacitor, PartKind::lamp,
                                        PartKind::diode,    PartKind::toggle};

/// What a value looks like in a file and in memory.
enum class Shape {
    number,       ///< double
    numberOrNull, ///< double, or null for "none"
    flag,         ///< true or false
    word,         ///< text out of a fixed list
    tolerance,    ///< a number, or [low, high] as relative deviations
    presses,      ///< list of [from, to] in seconds
    overrides,    ///< parameter name -> number
};

/// Allowed range of a number, in SI units.
struct Range {
    double low;
    double high;
    bool lowOpen = false; ///< the low end itself is refused
};

struct KeyInfo {
    std::string_view key;   ///< as in files, e.g. `leakage_resistance`
    std::string_view label; ///< for people, marked for translation, e.g. `leakage resistance`
    Shape shape;
    units::Unit unit;
    Range range;
    bool required = false;
    std::span<const std::string_view> words = {}; ///< allowed texts of Shape::word, marked for translation
};

struct PinInfo {
    std::string_view name; ///< as in files, e.g. `anode`, `7`
    std::string_view role; ///< for people, marked for translation, e.g. `discharge`
};

struct KindInfo {
    PartKind kind;
    std::string_view name;  ///< as in files
    std::string_view label; ///< for people, marked for translation
    std::string_view
        prefix; ///< letters of a new reference designator (common practice, after IEC 81346-2 from memory)
    std::span<const PinInfo> pins;
    std::span<const KeyInfo> keys; ///< the first key is the one a slider moves
};

const KindInfo& info(PartKind kind);
std::optional<PartKind> kindNamed(std::string_view name);
const KeyInfo* findKey(const KindInfo& kind, std::string_view key);
std::optional<int> pinNamed(const KindInfo& kind, std::string_view name);

/// One parameter of the timer's laws that a `device` block may override.
struct ParameterInfo {
    std::string_view name;
    units::Unit unit;
    Range range;
};
/// A key that starts with it names one of those parameters: `device.delay`.
inline constexpr std::string_view devicePrefix = "device.";
/// Every parameter name of the timer's laws with its range, in the order of the device sheets.
std::span<const ParameterInfo> timerParameters();
const ParameterInfo* findTimerParameter(std::string_view name);

/// Checks a number against a range: `must be greater than 0, got -5`; nothing when it fits.
std::optional<std::string> rangeFault(const Range& range, double value);

/// Pin indices of the timer, counted from 0: `timerPin::output` is pin 3 of the package.
namespace timerPin {
enum : int { ground, trigger, output, reset, control, threshold, discharge, supply };
}

} // namespace blinkwright::circuit
