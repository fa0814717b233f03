// Device sheets: the parameters of the device laws, read from resources/devices/*.json (built into the
// program), each with its source. A circuit may override any of them.
//
//   TimerSheet s = timerSheet(TimerFamily::bipolar, 9.0, {});   // at 9 V nominal supply
//   LampSheet red = *lampSheet("red");
//   sourceOf("timer-bipolar", "delay")          // where the number comes from
#pragma once

#include "core/base/result.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace blinkwright::devices {

inline constexpr double thermalVoltage = 0.02585; ///< V_T at 300 K [V]
inline constexpr double junctionShunt = 1e-9;     ///< G_SHUNT across every junction [S]
inline constexpr double junctionTangentCurrent =
    10; ///< past this current a junction goes on as its tangent [A]

enum class TimerFamily { bipolar, cmos };

/// Parameters of the timer's laws in SI units. Names in files are the snake_case of the field names.
struct TimerSheet {
    double divider_resistance, idle_slope, idle_offset, idle_low_extra;
    double threshold_current, trigger_current;
    double reset_resistance, reset_current, reset_level;
    double delay;
    double discharge_resistance, discharge_offset, discharge_limit, discharge_leakage;
    double high_drop_1mA, high_resistance, high_cubic, high_limit;
    double low_resistance, low_limit, low_knee, low_knee_resistance;
    double timing_tolerance;
};

/// A junction with series resistance: i = saturation (exp(u/(n V_T)) - 1) + G_SHUNT u, terminal voltage u +
/// R_S i.
struct JunctionLaw {
    double saturation = 0; ///< [A]
    double nVt = 0;        ///< ideality times V_T [V]
    double seriesResistance = 0;

    /// Chooses the saturation current so that the terminal voltage is `forwardVoltage` at `testCurrent`.
    static Result<JunctionLaw> through(double forwardVoltage, double testCurrent, double ideality,
                                       double seriesResistance);
};

struct LampSheet {
    double forward_voltage, test_current, ideality, series_resistance, rated_current, reverse_limit;
};

/// All parameter names of a timer family, in the order of the sheet.
std::span<const std::string_view> timerParameters();
/// The sheet at a nominal supply, with overrides by parameter name on top. Resistances and limits that depend
/// on the supply are taken at `nominalSupply` [V].
TimerSheet timerSheet(TimerFamily family, double nominalSupply,
                      const std::map<std::string, double, std::less<>>& overrides);
/// One parameter of a family's sheet at a nominal supply [V], without overrides; `name` is one of
/// timerParameters().
double timerParameter(TimerFamily family, std::string_view name, double nominalSupply);
/// Sheet of a lamp colour, or nothing for a colour that has none.
std::optional<LampSheet> lampSheet(std::string_view colour);
std::span<const std::string_view> lampColours();
LampSheet diodeSheet(); ///< rated_current and reverse_limit are 0: diodes carry no rating here
/// Source text of a number: sheet name (`timer-bipolar`, `timer-cmos`, `lamp-red`, `diode`) and parameter.
std::string_view sourceOf(std::string_view sheet, std::string_view parameter);

} // namespace blinkwright::devices
