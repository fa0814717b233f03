// Findings on a battery: how long the timer can live on it as its voltage falls.
#include "core/study/findings_detail.h"
#include "core/study/supply_range.h"

namespace blinkwright::study::detail {

namespace {

using units::Unit;

constexpr double secondsAnHour = 3600;

std::string hours(double time_s) {
    return units::formatQuantity(time_s / secondsAnHour, Unit::none, 2) + "\u00A0h";
}

} // namespace

void batteryFindings(const Scene& scene, Findings& findings) {
    if (!scene.readings || !scene.readings->supply || scene.board.supplies.empty()) return;
    const devices::Supply& battery = scene.board.supplies.front();
    const auto mean_A = scene.readings->supply->mean_A;
    if (!battery.capacity || !battery.endVoltage || !mean_A || !(*mean_A > 0)) return;
    for (std::size_t k = 0; k < scene.board.timers.size(); ++k) {
        const devices::Timer& timer = scene.board.timers[k];
        const SupplyRange& range = supplyRange(timer.cmos);
        // Of a battery that is one of several in series, the others' share of the fall is not known.
        if (scene.supplyVoltage(k) != battery.voltage) continue;
        if (!(battery.voltage > range.least_V) || !(*battery.endVoltage < range.least_V)) continue;
        const double used = (battery.voltage - range.least_V) / (battery.voltage - *battery.endVoltage);
        const double until_s = used * *battery.capacity / *mean_A;
        findings.push_back(
            {.kind = "battery-outlasts-timer",
             .severity = Severity::note,
             .places = {battery.ref, timer.ref},
             .text = wording::inWords(
                 "%1 falls to %2, the least that %3 is sure to work from, after some %4 with %5 % of its "
                 "capacity left, if its voltage falls evenly and the current stays.",
                 battery.ref, text(range.least_V, Unit::volt), timer.ref, hours(until_s),
                 units::formatQuantity(100 * (1 - used), Unit::none, 2)),
             .remedy = timer.cmos
                           ? wording::inWords("Take more cells.")
                           : wording::inWords("Take more cells, or a CMOS timer, which works from 2 V."),
             .number = until_s,
             .limit = *battery.capacity / *mean_A,
             .source = range.source});
    }
}

} // namespace blinkwright::study::detail
