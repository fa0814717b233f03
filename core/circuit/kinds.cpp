#include "core/circuit/kinds.h"

#include "core/base/wording.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace blinkwright::circuit {

namespace {

using units::spoken;
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

constexpr std::string_view families[] = {wording::marked("bipolar"), wording::marked("cmos")};
constexpr std::string_view colours[] = {wording::marked("red"),        wording::marked("amber"),
                                        wording::marked("yellow"),     wording::marked("green"),
                                        wording::marked("pure-green"), wording::marked("blue"),
                                        wording::marked("white"),      wording::marked("infrared")};

constexpr PinInfo polePins[] = {{"plus", wording::marked("plus")}, {"minus", wording::marked("minus")}};
constexpr PinInfo timerPins[] = {
    {"1", wording::marked("ground")},          {"2", wording::marked("trigger")},
    {"3", wording::marked("output")},          {"4", wording::marked("reset")},
    {"5", wording::marked("control voltage")}, {"6", wording::marked("threshold")},
    {"7", wording::marked("discharge")},       {"8", wording::marked("supply")}};
constexpr PinInfo endPins[] = {{"1", wording::marked("first end")}, {"2", wording::marked("second end")}};
constexpr PinInfo variablePins[] = {{"1", wording::marked("first end")},
                                    {"2", wording::marked("second end")},
                                    {"wiper", wording::marked("wiper")}};
constexpr PinInfo junctionPins[] = {{"anode", wording::marked("anode")},
                                    {"cathode", wording::marked("cathode")}};
constexpr PinInfo contactPins[] = {{"1", wording::marked("first contact")},
                                   {"2", wording::marked("second contact")}};

constexpr KeyInfo supplyKeys[] = {
    {"voltage", wording::marked("voltage"), Shape::number, Unit::volt, notNegative, true},
    {"resistance", wording::marked("inner resistance"), Shape::number, Unit::ohm, positive},
    {"capacity", wording::marked("capacity"), Shape::numberOrNull, Unit::coulomb, positive},
    {"end_voltage", wording::marked("end voltage"), Shape::numberOrNull, Unit::volt, notNegative},
};
constexpr KeyInfo timerKeys[] = {
    {"family", wording::marked("family"), Shape::word, Unit::none, noRange, false, families},
    {"device", wording::marked("device parameters"), Shape::overrides, Unit::none, noRange},
};
constexpr KeyInfo resistorKeys[] = {
    {"resistance", wording::marked("resistance"), Shape::number, Unit::ohm, positive, true},
    {"tolerance", wording::marked("tolerance"), Shape::tolerance, Unit::none, share},
    {"rated_power", wording::marked("rated power"), Shape::number, Unit::watt, positive},
};
constexpr KeyInfo variableKeys[] = {
    {"resistance", wording::marked("resistance"), Shape::number, Unit::ohm, positive, true},
    {"setting", wording::marked("setting"), Shape::number, Unit::none, share},
    {"tolerance", wording::marked("tolerance"), Shape::tolerance, Unit::none, share},
    {"rated_power", wording::marked("rated power"), Shape::number, Unit::watt, positive},
};
constexpr KeyInfo capacitorKeys[] = {
    {"capacitance", wording::marked("capacitance"), Shape::number, Unit::farad, positive, true},
    {"tolerance", wording::marked("tolerance"), Shape::tolerance, Unit::none, share},
    {"esr", wording::marked("series resistance"), Shape::number, Unit::ohm, seriesResistance},
    {"leakage_resistance", wording::marked("leakage resistance"), Shape::numberOrNull, Unit::ohm, positive},
    {"rated_voltage", wording::marked("rated voltage"), Shape::numberOrNull, Unit::volt, positive},
    {"polarised", wording::marked("polarised"), Shape::flag, Unit::none, noRange},
    {"initial_voltage", wording::marked("initial voltage"), Shape::number, Unit::volt, anyNumber},
};
constexpr KeyInfo lampKeys[] = {
    {"colour", wording::marked("colour"), Shape::word, Unit::none, noRange, false, colours},
    {"forward_voltage", wording::marked("forward voltage"), Shape::number, Unit::volt, positive},
    {"test_current", wording::marked("test current"), Shape::number, Unit::ampere, positive},
    {"ideality", wording::marked("ideality"), Shape::number, Unit::none, positive},
    {"series_resistance", wording::marked("series resistance"), Shape::number, Unit::ohm, notNegative},
    {"rated_current", wording::marked("rated current"), Shape::number, Unit::ampere, positive},
    {"pulse_current", wording::marked("pulse current"), Shape::number, Unit::ampere, positive},
    {"reverse_limit", wording::marked("reverse limit"), Shape::number, Unit::volt, positive},
    {"luminous_intensity", wording::marked("luminous intensity"), Shape::numberOrNull, Unit::candela,
     positive},
};
constexpr KeyInfo diodeKeys[] = {
    {"forward_voltage", wording::marked("forward voltage"), Shape::number, Unit::volt, positive},
    {"test_current", wording::marked("test current"), Shape::number, Unit::ampere, positive},
    {"ideality", wording::marked("ideality"), Shape::number, Unit::none, positive},
    {"series_resistance", wording::marked("series resistance"), Shape::number, Unit::ohm, notNegative},
};
constexpr KeyInfo toggleKeys[] = {
    {"closed", wording::marked("closed"), Shape::flag, Unit::none, noRange},
    {"presses", wording::marked("presses"), Shape::presses, Unit::second, notNegative},
};

// In the order of PartKind.
constexpr KindInfo kinds[] = {
    {PartKind::supply, "supply", wording::marked("supply"), "BT", polePins, supplyKeys},
    {PartKind::timer, "timer", wording::marked("timer"), "U", timerPins, timerKeys},
    {PartKind::resistor, "resistor", wording::marked("resistor"), "R", endPins, resistorKeys},
    {PartKind::variable, "variable", wording::marked("variable resistor"), "RV", variablePins, variableKeys},
    {PartKind::capacitor, "capacitor", wording::marked("capacitor"), "C", polePins, capacitorKeys},
    {PartKind::lamp, "lamp", wording::marked("lamp"), "D", junctionPins, lampKeys},
    {PartKind::diode, "diode", wording::marked("diode"), "D", junctionPins, diodeKeys},
    {PartKind::toggle, "switch", wording::marked("switch"), "S", contactPins, toggleKeys},
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
    const std::string got = spoken(value);
    if (!std::isfinite(value)) return wording::inWords("must be a finite number, got %1", got);
    const bool tooLow = range.lowOpen ? value <= range.low : value < range.low;
    if (tooLow || value > range.high) {
        const std::string low = spoken(range.low), high = spoken(range.high);
        if (range.high < most && !range.lowOpen)
            return wording::inWords("must be between %1 and %2, got %3", low, high, got);
        if (!tooLow) return wording::inWords("must be at most %1, got %2", high, got);
        return range.lowOpen ? wording::inWords("must be greater than %1, got %2", low, got)
                             : wording::inWords("must be at least %1, got %2", low, got);
    }
    if (range.lowOpen && range.low == 0 && value < least)
        return wording::inWords("must be at least %1, got %2", spoken(least), got);
    return std::nullopt;
}

} // namespace blinkwright::circuit
