#include "core/study/output_levels.h"

#include "core/devices/laws.h"

#include <cmath>

namespace blinkwright::study {

double outputHigh(const devices::TimerSheet& sheet, bool cmos, double supply_V, double current_A) {
    if (cmos) return supply_V - sheet.high_resistance * current_A;
    constexpr double reference = 1e-3; // the sheet states the junction's drop at 1 mA
    const double knee =
        devices::detail::outputIdeality * devices::thermalVoltage * std::log(current_A / reference);
    return supply_V - sheet.high_drop_1mA - knee - sheet.high_resistance * current_A -
           sheet.high_cubic * current_A * current_A * current_A;
}

double outputLow(const devices::TimerSheet& sheet, double current_A) {
    return sheet.low_resistance * current_A;
}

} // namespace blinkwright::study
