// Circuits shared by tests: built part by part, with the exact answer where there is one.
#pragma once

#include "tests/core/workbench.h"

#include <string>

namespace blinkwright::tests {

struct AstableValues {
    double supply_V = 9;
    double r1_ohm = 10e3, r2_ohm = 68e3, c_farad = 10e-6;
    double leakage_ohm = 0; ///< 0: none
    std::string family = "bipolar";
};

/// Overrides that take every imperfection of a timer away: currents, offsets and delay 0, discharge 1e-6 ohm.
circuit::Overrides idealTimer();

/// The plain astable with nothing on its output. Nets: supply, ground, discharge, timing, output.
Workbench astable(const AstableValues& values, bool ideal);
/// The same with a lamp of a colour behind a resistor from the output to ground (net `lamp`), 10 nF on pin 5.
Workbench astableWithLamp(const AstableValues& values, double lampResistor_ohm,
                          const std::string& colour = "red");
/// Two lamps in opposite directions behind a coupling capacitor.
Workbench lampPair(const AstableValues& values, double resistor_ohm, double coupling_farad);

} // namespace blinkwright::tests
