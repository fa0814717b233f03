// What a timer's output leaves of the supply while it gives away or takes a current: the laws of the output
// solved for the voltage, where the current is small enough that no limit acts.
//
//   outputHigh(sheet, cmos, 9.0, 0.01)     // 7.6 V of a bipolar timer at 9 V and 10 mA
#pragma once

#include "core/devices/sheets.h"

namespace blinkwright::study {

/// @param supply_V pin 8 against pin 1. @param current_A sourced, > 0. @return pin 3 against pin 1 [V].
double outputHigh(const devices::TimerSheet& sheet, bool cmos, double supply_V, double current_A);
/// @param current_A sunk, >= 0. @return pin 3 against pin 1 [V].
double outputLow(const devices::TimerSheet& sheet, double current_A);

} // namespace blinkwright::study
