// Boards of many timers on one supply: copies of an astable with a lamp, whose values are scattered so that
// no two blink alike.
//
//   Workbench bench = tests::manyTimers({.timers = 100, .bypass_farad = 100e-6});
#pragma once

#include "tests/core/workbench.h"

#include <cmath>
#include <string>

namespace blinkwright::tests {

struct ManyTimers {
    int timers = 4;
    double supply_V = 9, supply_ohm = 0.5;
    double bypass_farad = 0;  ///< across the supply; 0: none
    double control_farad = 0; ///< on every pin 5; 0: none
    bool pairs = false;       ///< two lamps in opposite directions behind a capacitor, instead of one
    bool cmosToo = false;     ///< every other timer is a CMOS one
    double spread = 0.3;      ///< values lie within this share of the middle
};

/// A share of 0 to 1 for a number, spread evenly: multiples of the golden section (an additive recurrence).
inline double evenly(int k) {
    const double x = 0.6180339887498949 * k;
    return x - std::floor(x);
}

/// Timers U1, U2 and so on, with parts R11 (supply to pin 7), R12 (pin 7 to the timing node), C11, R13 and
/// lamp D11 for U1. Nets: supply, ground, and timing1, discharge1, output1, lamp1 for U1.
inline Workbench manyTimers(const ManyTimers& values) {
    using circuit::PartKind;
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", values.supply_V}, {"resistance", values.supply_ohm}});
    bench.net("supply", {"BT1:plus"}).net("ground", {"BT1:minus"});
    const auto join = [&](const std::string& net, std::initializer_list<std::string> pins) {
        for (const auto& pin : pins) bench.net(net, {pin.c_str()});
    };
    if (values.bypass_farad > 0) {
        bench.part(PartKind::capacitor, "C0", {{"capacitance", values.bypass_farad}});
        join("supply", {"C0:plus"});
        join("ground", {"C0:minus"});
    }
    for (int k = 1; k <= values.timers; ++k) {
        const auto scattered = [&](double middle, int n) {
            return middle * (1 + values.spread * (2 * evenly(5 * k + n) - 1));
        };
        const std::string n = std::to_string(k);
        const bool cmos = values.cmosToo && k % 2 == 0;
        bench.part(PartKind::timer, "U" + n, {{"family", std::string(cmos ? "cmos" : "bipolar")}})
            .part(PartKind::resistor, "R" + n + "1", {{"resistance", scattered(10e3, 0)}})
            .part(PartKind::resistor, "R" + n + "2", {{"resistance", scattered(68e3, 1)}})
            .part(PartKind::capacitor, "C" + n + "1", {{"capacitance", scattered(10e-6, 2)}})
            .part(PartKind::resistor, "R" + n + "3", {{"resistance", scattered(values.pairs ? 220 : 470, 3)}})
            .part(PartKind::lamp, "D" + n + "1");
        join("supply", {"U" + n + ":8", "U" + n + ":4", "R" + n + "1" + ":1"});
        join("ground", {"U" + n + ":1", "C" + n + "1" + ":minus", "D" + n + "1" + ":cathode"});
        join("discharge" + n, {"U" + n + ":7", "R" + n + "1" + ":2", "R" + n + "2" + ":1"});
        join("timing" + n, {"U" + n + ":6", "U" + n + ":2", "R" + n + "2" + ":2", "C" + n + "1" + ":plus"});
        join("output" + n, {"U" + n + ":3", "R" + n + "3" + ":1"});
        if (values.control_farad > 0) {
            bench.part(PartKind::capacitor, "C" + n + "2", {{"capacitance", values.control_farad}});
            join("control" + n, {"U" + n + ":5", "C" + n + "2" + ":plus"});
            join("ground", {"C" + n + "2" + ":minus"});
        }
        if (values.pairs) {
            bench.part(PartKind::capacitor, "C" + n + "3", {{"capacitance", scattered(470e-6, 4)}})
                .part(PartKind::lamp, "D" + n + "2");
            join("coupling" + n, {"R" + n + "3" + ":2", "C" + n + "3" + ":plus"});
            join("lamp" + n,
                 {"C" + n + "3" + ":minus", "D" + n + "1" + ":anode", "D" + n + "2" + ":cathode"});
            join("ground", {"D" + n + "2" + ":anode"});
        } else {
            join("lamp" + n, {"R" + n + "3" + ":2", "D" + n + "1" + ":anode"});
        }
    }
    return bench;
}

} // namespace blinkwright::tests
