#include "core/study/stall.h"

#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace pins = circuit::timerPin;

namespace {

std::string volts(double value) {
    return units::formatQuantity(value, units::Unit::volt);
}

} // namespace

std::vector<std::string> stallReasons(const devices::Board& board, const engine::Run& run) {
    if (run.wave.empty() || board.timers.empty()) return {};
    const auto& timer = board.timers.front();
    engine::Instant at;
    run.wave.instant(run.wave.end_s(), engine::Side::before, at);
    const auto& t = at.timers.front();
    const auto pin = [&](int index) {
        const auto node = timer.pins[static_cast<std::size_t>(index)];
        return node == devices::open ? 0.0 : at.node_V[static_cast<std::size_t>(node)] - t.ground_V;
    };
    const double threshold = t.control_V - t.ground_V, trigger = 0.5 * threshold;
    std::vector<std::string> reasons;
    if (const double supply = t.supply_V - t.ground_V; supply < 1) {
        const std::string found =
            supply < -1e-3
                ? "Pin 8 of " + timer.ref + " lies " + volts(-supply) + " below pin 1, the wrong way round"
            : supply < 1e-3
                ? "There is no voltage between pins 8 and 1 of " + timer.ref
                : "Pins 8 and 1 of " + timer.ref + " have only " + volts(supply) + " between them";
        reasons.push_back(found + ": join pin 8 to the supply's plus and pin 1 to its minus.");
        return reasons;
    }
    if (timer.connected(pins::reset) && pin(pins::reset) < timer.sheet.reset_level) {
        reasons.push_back("Reset (pin 4) of " + timer.ref + " stays at " + volts(pin(pins::reset)) +
                          ", under its level of " + volts(timer.sheet.reset_level) +
                          ": join it to the supply.");
        return reasons;
    }
    if (run.outputs.front()) {
        const bool joined = timer.pins[pins::trigger] == timer.pins[pins::threshold];
        if (timer.connected(pins::trigger) && pin(pins::trigger) < trigger && !joined)
            reasons.push_back("Trigger (pin 2) of " + timer.ref + " stays at " + volts(pin(pins::trigger)) +
                              ", under its level of " + volts(trigger) +
                              ", which keeps the output high: join pins 2 and 6 to the timing capacitor.");
        else if (!timer.connected(pins::threshold))
            reasons.push_back("Threshold (pin 6) of " + timer.ref +
                              " is joined to nothing, so nothing ends the high phase: join it to pin 2.");
        else
            reasons.push_back(
                "Threshold (pin 6) of " + timer.ref + " comes to rest at " + volts(pin(pins::threshold)) +
                ", under its level of " + volts(threshold) +
                ": the charging current is used up by leakage and input current. Take smaller timing "
                "resistors or a capacitor that leaks less.");
    } else {
        if (!timer.connected(pins::trigger))
            reasons.push_back("Trigger (pin 2) of " + timer.ref +
                              " is joined to nothing, so nothing starts the next flash: join it to pin 6.");
        else
            reasons.push_back("Trigger (pin 2) of " + timer.ref + " comes to rest at " +
                              volts(pin(pins::trigger)) + ", above its level of " + volts(trigger) +
                              ": the timing capacitor does not discharge. Join pin 7 to it through R2.");
    }
    return reasons;
}

double restReached_s(const devices::Board& board, const engine::Waveform& wave) {
    if (wave.empty()) return 0;
    double scale = 1e-3;
    for (const auto& supply : board.supplies) scale = std::max(scale, std::abs(supply.voltage));
    const auto knots = wave.knots(1);
    engine::Instant last, at;
    wave.instant(knots.back(), last);
    for (std::size_t k = knots.size(); k-- > 0;) {
        wave.instant(knots[k], at);
        for (std::size_t node = 0; node < at.node_V.size(); ++node)
            if (std::abs(at.node_V[node] - last.node_V[node]) > 0.01 * scale) return wave.time(knots[k]);
    }
    return wave.time(knots.front());
}

} // namespace blinkwright::study
