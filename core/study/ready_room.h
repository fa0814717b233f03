// Room for the lamps of a ready blinker: what output and supply leave for the resistors in their paths.
//
//   acrossOf(answers).lower      // 5.6 V for the resistor of a lamp to ground
#pragma once

#include "core/study/ready.h"

namespace blinkwright::study {

/// Share of a slow cycle in which a gated timer runs.
inline constexpr double gateHigh = 0.55;

/// Forward voltage of the lamp of a colour at a current [V].
double lampVoltage(const std::string& colour, double current_A);
/// Voltage of the output while it gives away, or takes, a current [V].
double highLevel(const ReadyAnswers& answers, double current_A);
double lowLevel(const ReadyAnswers& answers, double current_A);

/// Voltage left for the resistors in the lamps' paths: the lamp to ground, the lamp to the rail, the pair.
struct Across {
    double lower = 0, upper = 0, pair = 0;
};
Across acrossOf(const ReadyAnswers& answers);

} // namespace blinkwright::study
