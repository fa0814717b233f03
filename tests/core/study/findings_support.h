// Shared by the tests of findings: a sound blinker, readings as a run of it might give them, and what was
// found.
//
//   Workbench bench = sound();
//   Readings readings = blinking(bench);
//   kinds(findingsOf(bench.board(), &readings));    // {}
#pragma once

#include "core/study/findings.h"
#include "core/study/readings.h"
#include "tests/core/workbench.h"

#include <algorithm>

namespace blinkwright::study {

inline const Finding* find(const std::vector<Finding>& all, std::string_view kind) {
    const auto at = std::find_if(all.begin(), all.end(), [&](const Finding& f) { return f.kind == kind; });
    return at == all.end() ? nullptr : &*at;
}
inline std::vector<std::string> kinds(const std::vector<Finding>& all) {
    std::vector<std::string> list;
    for (const auto& f : all) list.push_back(f.kind);
    return list;
}
inline std::vector<Finding> of(const Workbench& bench) {
    return findingsOf(bench.board(), nullptr);
}

/// The plain astable with a red lamp behind 330 ohm from the output to ground: nothing to find.
inline Workbench sound() {
    Workbench bench = plainAstable(1e4, 6.8e4, 1e-5);
    bench.part(circuit::PartKind::resistor, "R3", {{"resistance", 330.0}})
        .part(circuit::PartKind::lamp, "D1");
    bench.net("output", {"U1:3", "R3:1"}).net("lamp", {"R3:2", "D1:anode"}).net("ground", {"D1:cathode"});
    return bench;
}

/// Readings as a run of `sound` might give them: rate 1 Hz, half lit.
inline Readings blinking(const Workbench& bench, double rate = 1) {
    Readings readings;
    readings.verdict = Verdict::blinks;
    TimerReading timer;
    timer.ref = "U1";
    timer.settled = Phase{0.5 / rate, 0.5 / rate};
    readings.timers.push_back(timer);
    for (const auto& part : bench.circuit.parts()) {
        PartReading row;
        row.ref = part.ref;
        readings.parts.push_back(row);
        if (part.kind != circuit::PartKind::lamp) continue;
        LampReading lamp;
        lamp.ref = part.ref;
        lamp.peak_A = 0.015;
        lamp.rms_A = 0.01;
        lamp.mean_A = 0.0075;
        lamp.litTime_s = 0.5 / rate;
        lamp.reversePeak_V = 0;
        readings.lamps.push_back(lamp);
    }
    return readings;
}

} // namespace blinkwright::study
