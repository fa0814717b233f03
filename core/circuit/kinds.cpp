#include "core/circuit/kinds.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace blinkwright::circuit {

namespace {

using units::Unit;

// Far beyond any part, near enough that products of a few values stay finite.
constexpr double most = 1e30;
constexpr double least = 1e-30;

constexpr Range positive{0, most, true};
constexpr Range notNegative{0, most};
constexpr Range anyNumber{-most, most};
constexpr Range share{0, 1};
constexpr Range noRange{0, 0};
// A capacitor without any series resistance would leave the equations of some wirings without a solution.
constexpr Range seriesResistance{1e-3, most};

constexpr std::string_view families[] = {"bipolar", "cmos"};
constexpr std::string_view colours[] = {"red",        "amber", "yellow", "green",
                                        "pure-green", "blue",  "white",  "infrared"};

constexpr PinInfo polePins[] = {{"plus", "plus"}, {"minus", "minus"}};
constexpr PinInfo timerPins[] = {{"1", "ground"},    {"2", "trigger"},         {"3", "output"},
                                 {"4", "reset"},     {"5", "control voltage"}, {"6", "threshold"},
                                 {"7", "discharge"}, {"8", "supply"}};
constexpr PinInfo endPins[] = {{"1", "first end"}, {"2", "second end"}};
constexpr PinInfo variablePins[] = {{"1", "first end"}, {"2", "second end"}, {"wiper", "wiper"}};
constexpr PinInfo junctionPins[] = {{"anode", "anode"}, {"cathode", "cathode"}};
constexpr PinInfo contactPins[] = {{"1", "first contact"}, {"2", "second contact"}};

constexpr KeyInfo supplyKeys[] = {
    {"voltage", "voltage", Shape::number, Unit::volt, notNegative, true},
    {"resistance", "inner resistance", Shape::number, Unit::ohm, positive},
    {"capacity", "capacity", Shape::numberOrNull, Unit::coulomb, positive},
    {"end_voltage", "end voltage", Shape::numberOrNull, Unit::volt, notNegative},
};
constexpr KeyInfo timerKeys[] = {
    {"family", "family", Shape::word, Unit::none, noRange, false, families},
    {"device", "device parameters", Shape::overrides, Unit::none, noRange},
};
constexpr KeyInfo resistorKeys[] = {
    {"resistance", "resistance", Shape::number, Unit::ohm, positive, true},
    {"tolerance", "tolerance", Shape::tolerance, Unit::none, share},
    {"rated_power", "rated power", Shape::number, Unit::watt, positive},
};
constexpr KeyInfo variableKeys[] = {
    {"resistance", "resistance", Shape::number, Unit::ohm, positive, true},
    {"setting", "setting", Shape::number, Unit::none, share},
    {"tolerance", "tolerance", Shape::tolerance, Unit::none, share},
    {"rated_power", "rated power", Shape::number, Unit::watt, positive},
};
constexpr KeyInfo capacitorKeys[] = {
    {"capacitance", "capacitance", Shape::number, Unit::farad, positive, true},
    {"tolerance", "tolerance", Shape::tolerance, Unit::none, share},
    {"esr", "series resistance", Shape::number, Unit::ohm, seriesResistance},
    {"leakage_resistance", "leakage resistance", Shape::numberOrNull, Unit::ohm, positive},
    {"rated_voltage", "rated voltage", Shape::numberOrNull, Unit::volt, positive},
    {"polarised", "polarised", Shape::flag, Unit::none, noRange},
    {"initial_voltage", "initial voltage", Shape::number, Unit::volt, anyNumber},
};
constexpr KeyInfo lampKeys[] = {
    {"colour", "colour", Shape::word, Unit::none, noRange, false, colours},
    {"forward_voltage", "forward voltage", Shape::number, Unit::volt, positive},
    {"test_current", "test current", Shape::number, Unit::ampere, positive},
    {"ideality", "ideality", Shape::number, Unit::none, positive},
    {"series_resistance", "series resistance", Shape::number, Unit::ohm, notNegative},
    {"rated_current", "rated current", Shape::number, Unit::ampere, positive},
    {"pulse_current", "pulse current", Shape::number, Unit::ampere, positive},
    {"reverse_limit", "reverse limit", Shape::number, Unit::volt, positive},
    {"luminous_intensity", "luminous intensity", Shape::numberOrNull, Unit::candela, positive},
};
constexpr KeyInfo diodeKeys[] = {
    {"forward_voltage", "forward voltage", Shape::number, Unit::volt, positive},
    {"test_current", "test current", Shape::number, Unit::ampere, positive},
    {"ideality", "ideality", Shape::number, Unit::none, positive},
    {"series_resistance", "series resistance", Shape::number, Unit::ohm, notNegative},
};
constexpr KeyInfo toggleKeys[] = {
    {"closed", "closed", Shape::flag, Unit::none, noRange},
    {"presses", "presses", Shape::presses, Unit::second, notNegative},
};

// In the order of PartKind.
constexpr KindInfo kinds[] = {
    {PartKind::supply, "supply", "supply", "BT", polePins, supplyKeys},
    {PartKind::timer, "timer", "timer", "U", timerPins, timerKeys},
    {PartKind::resistor, "resistor", "resistor", "R", endPins, resistorKeys},
    {PartKind::variable, "variable", "variable resistor", "RV", variablePins, variableKeys},
    {PartKind::capacitor, "capacitor", "capacitor", "C", polePins, capacitorKeys},
    {PartKind::lamp, "lamp", "lamp", "D", junctionPins, lampKeys},
    {PartKind::diode, "diode", "diode", "D", junctionPins, diodeKeys},
    {PartKind::toggle, "switch", "switch", "S", contactPins, toggleKeys},
};

// Limits are greater than 0 since the soft limit of the laws divides by them.
constexpr ParameterInfo parameters[] = {
    {"divider_resistance", Unit::ohm, positive},
    {"idle_slope", Unit::siemens, notNegative},
    {"idle_offset", Unit::volt, anyNumber},
    {"idle_low_extra", Unit::ampere, notNegative},
    {"threshold_current", Unit::ampere, notNegative},
    {"trigger_current", Unit::ampere, notNegative},
    {"reset_resistance", Unit::ohm, positive},
    {"reset_current", Unit::ampere, notNegative},
    {"reset_level", Unit::volt, notNegative},
    {"delay", Unit::second, notNegative},
    {"discharge_resistance", Unit::ohm, positive},
    {"discharge_offset", Unit::volt, notNegative},
    {"discharge_limit", Unit::ampere, positive},
    {"discharge_leakage", Unit::ampere, notNegative},
    {"high_drop_1mA", Unit::volt, notNegative},
    {"high_resistance", Unit::ohm, positive},
    {"high_cubic", Unit::none, notNegative},
    {"high_limit", Unit::ampere, positive},
    {"low_resistance", Unit::ohm, positive},
    {"low_limit", Unit::ampere, positive},
    {"low_knee", Unit::volt, notNegative},
    {"low_knee_resistance", Unit::ohm, positive},
    {"timing_tolerance", Unit::none, share},
};

} // namespace

const KindInfo& info(PartKind kind) {
    return kinds[static_cast<std::size_t>(kind)];
}

std::optional<PartKind> kindNamed(std::string_view name) {
    const auto* found = std::ranges::find(kinds, name, &KindInfo::name);
    return found == std::end(kinds) ? std::nullopt : std::optional(found->kind);
}

const KeyInfo* findKey(const KindInfo& kind, std::string_view key) {
    const auto found = std::ranges::find(kind.keys, key, &KeyInfo::key);
    return found == kind.keys.end() ? nullptr : &*found;
}

std::optional<int> pinNamed(const KindInfo& kind, std::string_view name) {
    const auto found = std::ranges::find(kind.pins, name, &PinInfo::name);
    if (found == kind.pins.end()) return std::nullopt;
    return static_cast<int>(found - kind.pins.begin());
}

std::span<const ParameterInfo> timerParameters() {
    return parameters;
}

const ParameterInfo* findTimerParameter(std::string_view name) {
    const auto* found = std::ranges::find(parameters, name, &ParameterInfo::name);
    return found == std::end(parameters) ? nullptr : found;
}

std::optional<std::string> rangeFault(const Range& range, double value) {
    const std::string got = ", got " + units::shortest(value);
    if (!std::isfinite(value)) return "must be a finite number" + got;
    const bool tooLow = range.lowOpen ? value <= range.low : value < range.low;
    if (tooLow || value > range.high) {
        const std::string low = units::shortest(range.low), high = units::shortest(range.high);
        if (range.high < most && !range.lowOpen) return "must be between " + low + " and " + high + got;
        if (!tooLow) return "must be at most " + high + got;
        return (range.lowOpen ? "must be greater than " : "must be at least ") + low + got;
    }
    if (range.lowOpen && range.low == 0 && value < least)
        return "must be at least " + units::shortest(least) + got;
    return std::nullopt;
}

} // namespace blinkwright::circuit
