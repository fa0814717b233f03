#include "tests/core/reference_circuits.h"

namespace blinkwright::tests {

using circuit::PartKind;

circuit::Overrides idealTimer() {
    return {{"idle_slope", 0},
            {"idle_offset", 0},
            {"idle_low_extra", 0},
            {"threshold_current", 0},
            {"trigger_current", 0},
            {"reset_current", 0},
            {"delay", 0},
            {"discharge_resistance", 1e-6},
            {"discharge_offset", 0},
            {"discharge_limit", 1e6},
            {"discharge_leakage", 0}};
}

Workbench astable(const AstableValues& v, bool ideal) {
    Workbench b;
    circuit::Values timer{{"family", v.family}};
    if (ideal) timer["device"] = idealTimer();
    circuit::Values capacitor{{"capacitance", v.c_farad}, {"esr", 1e-3}};
    if (v.leakage_ohm > 0) capacitor["leakage_resistance"] = v.leakage_ohm;
    b.part(PartKind::supply, "BT1", {{"voltage", v.supply_V}, {"resistance", ideal ? 1e-6 : 0.5}})
        .part(PartKind::timer, "U1", std::move(timer))
        .part(PartKind::resistor, "R1", {{"resistance", v.r1_ohm}})
        .part(PartKind::resistor, "R2", {{"resistance", v.r2_ohm}})
        .part(PartKind::capacitor, "C1", std::move(capacitor));
    b.net("supply", {"BT1:plus", "U1:8", "U1:4", "R1:1"})
        .net("ground", {"BT1:minus", "U1:1", "C1:minus"})
        .net("discharge", {"U1:7", "R1:2", "R2:1"})
        .net("timing", {"U1:6", "U1:2", "R2:2", "C1:plus"})
        .net("output", {"U1:3"});
    return b;
}

Workbench astableWithLamp(const AstableValues& v, double lampResistor_ohm, const std::string& colour) {
    Workbench b = astable(v, false);
    b.part(PartKind::capacitor, "C2", {{"capacitance", 10e-9}})
        .part(PartKind::resistor, "R3", {{"resistance", lampResistor_ohm}})
        .part(PartKind::lamp, "D1", {{"colour", colour}});
    b.net("control", {"U1:5", "C2:plus"}).net("lamp", {"R3:2", "D1:anode"});
    b.net("ground", {"C2:minus"}).net("ground", {"D1:cathode"}).net("output", {"R3:1"});
    return b;
}

Workbench lampPair(const AstableValues& v, double resistor_ohm, double coupling_farad) {
    Workbench b = astable(v, false);
    b.part(PartKind::capacitor, "C2", {{"capacitance", 10e-9}})
        .part(PartKind::capacitor, "C3", {{"capacitance", coupling_farad}})
        .part(PartKind::resistor, "R3", {{"resistance", resistor_ohm}})
        .part(PartKind::resistor, "R4", {{"resistance", 10e3}})
        .part(PartKind::lamp, "D1", {{"colour", std::string("red")}})
        .part(PartKind::lamp, "D2", {{"colour", std::string("red")}});
    b.net("control", {"U1:5", "C2:plus"})
        .net("coupling", {"R3:2", "C3:plus"})
        .net("lamps", {"C3:minus", "D1:anode", "D2:cathode"});
    b.net("output", {"R3:1"}).net("output", {"R4:1"});
    for (const char* pin : {"C2:minus", "R4:2", "D1:cathode", "D2:anode"}) b.net("ground", {pin});
    return b;
}

} // namespace blinkwright::tests
