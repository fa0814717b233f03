#include "tests/reference/wirings.h"

#include "tests/core/reference_circuits.h"

namespace blinkwright::tests {

using circuit::PartKind;

namespace {

Workbench& resistor(Workbench& b, const std::string& ref, double ohm, const std::string& from,
                    const std::string& to) {
    b.part(PartKind::resistor, ref, {{"resistance", ohm}});
    return b.net(from, {(ref + ":1").c_str()}).net(to, {(ref + ":2").c_str()});
}
Workbench& capacitor(Workbench& b, const std::string& ref, circuit::Values values, const std::string& from,
                     const std::string& to) {
    b.part(PartKind::capacitor, ref, std::move(values));
    return b.net(from, {(ref + ":plus").c_str()}).net(to, {(ref + ":minus").c_str()});
}
/// A lamp behind a resistor, its current going from one net to another.
Workbench& lamp(Workbench& b, const std::string& number, const std::string& colour, double ohm,
                const std::string& from, const std::string& to) {
    const std::string d = "D" + number, r = "RL" + number;
    resistor(b, r, ohm, from, "lamp " + number);
    b.part(PartKind::lamp, d, {{"colour", colour}});
    return b.net("lamp " + number, {(d + ":anode").c_str()}).net(to, {(d + ":cathode").c_str()});
}

Workbench toRail() {
    Workbench b = astable({}, false);
    return lamp(b, "1", "green", 390, "supply", "output");
}

Workbench toEachRail() {
    Workbench b = astable({.r1_ohm = 4.7e3, .r2_ohm = 33e3}, false);
    lamp(b, "1", "red", 470, "output", "ground");
    lamp(b, "2", "yellow", 330, "supply", "output");
    return capacitor(b, "C3", {{"capacitance", 100e-6}}, "supply", "ground");
}

/// Lamps that take far more than they should: limits and the second path of the output low carry current.
Workbench overdriven() {
    Workbench b = astable({.supply_V = 15, .r1_ohm = 1e3, .r2_ohm = 22e3}, false);
    lamp(b, "1", "red", 33, "output", "ground");
    return lamp(b, "2", "green", 33, "supply", "output");
}

Workbench steered() {
    Workbench b = astableWithLamp({.r1_ohm = 22e3, .r2_ohm = 56e3}, 470);
    b.part(PartKind::diode, "D9");
    return b.net("discharge", {"D9:anode"}).net("timing", {"D9:cathode"});
}

Workbench singleResistor() {
    Workbench b = bareTimer();
    resistor(b, "R1", 68e3, "output", "timing");
    capacitor(b, "C1", {{"capacitance", 4.7e-6}}, "timing", "ground");
    b.net("output", {"U1:3"});
    return lamp(b, "1", "red", 680, "output", "ground");
}

Workbench drivenControl() {
    Workbench b = astable({}, false);
    b.part(PartKind::supply, "BT2", {{"voltage", 3.0}, {"resistance", 1.0}});
    b.net("drive", {"BT2:plus"}).net("ground", {"BT2:minus"}).net("control", {"U1:5"});
    resistor(b, "R8", 1.5e3, "drive", "control");
    capacitor(b, "C2", {{"capacitance", 10e-9}}, "control", "ground");
    return lamp(b, "1", "amber", 560, "output", "ground");
}

Workbench leaky() {
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 100e3, .c_farad = 22e-6, .leakage_ohm = 1e6}, false);
    b.set("C1.esr=2");
    return lamp(b, "1", "blue", 270, "output", "ground");
}

/// A slow timer that holds a fast one in reset half of the time.
Workbench gated() {
    Workbench b = astable({.r1_ohm = 10e3, .r2_ohm = 68e3, .c_farad = 10e-6}, false);
    b.part(PartKind::timer, "U2");
    b.net("supply", {"U2:8"}).net("ground", {"U2:1"}).net("output", {"U2:4"}).net("fast", {"U2:3"});
    b.net("fast timing", {"U2:2", "U2:6"}).net("fast discharge", {"U2:7"});
    resistor(b, "R11", 4.7e3, "supply", "fast discharge");
    resistor(b, "R12", 22e3, "fast discharge", "fast timing");
    capacitor(b, "C11", {{"capacitance", 2.2e-6}}, "fast timing", "ground");
    lamp(b, "1", "red", 470, "fast", "ground");
    return lamp(b, "2", "green", 470, "output", "ground");
}

/// A switch pulls the reset pin down twice, once in each phase.
Workbench resetSwitch() {
    Workbench b = astable({}, false);
    b.open("U1:4");
    resistor(b, "R9", 10e3, "supply", "reset");
    b.part(PartKind::toggle, "S1",
           {{"presses", circuit::Intervals{{0.3, 0.42}, {1.9, 2.35}, {2.6, 2.6004}}}});
    b.net("reset", {"U1:4", "S1:1"}).net("ground", {"S1:2"});
    return lamp(b, "1", "red", 470, "output", "ground");
}

Workbench variable() {
    Workbench b = astable({.r2_ohm = 10e3}, false);
    b.open("R2:2");
    b.part(PartKind::variable, "RV1", {{"resistance", 100e3}, {"setting", 0.3}});
    b.net("between", {"R2:2", "RV1:1"}).net("timing", {"RV1:wiper"});
    capacitor(b, "C2", {{"capacitance", 10e-9}}, "control", "ground");
    b.net("control", {"U1:5"});
    return lamp(b, "1", "white", 330, "output", "ground");
}

/// A nearly empty battery: each switching shakes the supply by hundreds of millivolts. The timing capacitor
/// is full, so that the output falls as soon as the supply is up.
Workbench tiredBattery() {
    Workbench b = astable({.supply_V = 5.2, .r1_ohm = 4.7e3, .r2_ohm = 47e3}, false);
    b.set("BT1.resistance=22").set("C1.initial_voltage=4.8");
    capacitor(b, "C3", {{"capacitance", 47e-6}, {"esr", 0.6}}, "supply", "ground");
    capacitor(b, "C2", {{"capacitance", 10e-9}}, "control", "ground");
    b.net("control", {"U1:5"});
    return lamp(b, "1", "red", 100, "output", "ground");
}

/// Four lamps, two in a row each way, that all glow a little at once: nets that only junctions hold.
Workbench chains() {
    Workbench b = astable({.supply_V = 12, .r1_ohm = 4.7e3, .r2_ohm = 56e3}, false);
    resistor(b, "RL1", 270, "output", "a");
    b.part(PartKind::lamp, "D1", {{"colour", std::string("red")}})
        .part(PartKind::lamp, "D2", {{"colour", std::string("green")}})
        .part(PartKind::lamp, "D3", {{"colour", std::string("red")}})
        .part(PartKind::lamp, "D4", {{"colour", std::string("amber")}});
    b.net("a", {"D1:anode", "D4:cathode"}).net("b", {"D1:cathode", "D2:anode"});
    b.net("ground", {"D2:cathode"}).net("supply", {"D3:anode"}).net("c", {"D3:cathode", "D4:anode"});
    return b;
}

/// A CMOS timer with a reset pin that is left alone.
Workbench cmos() {
    Workbench b = astableWithLamp(
        {.supply_V = 5, .r1_ohm = 47e3, .r2_ohm = 220e3, .c_farad = 1e-6, .family = "cmos"}, 220);
    b.open("U1:4");
    return b;
}

/// Pin 8 is far under eight tenths of the supply for longer than the timer waits for it. The timing capacitor
/// is over its level by then.
Workbench slowToPowerUp() {
    Workbench b = astableWithLamp({.r1_ohm = 2.2e3, .r2_ohm = 8.2e3, .c_farad = 4.7e-6}, 470);
    b.set("BT1.resistance=47").set("C1.initial_voltage=4");
    return capacitor(b, "C3", {{"capacitance", 2.2e-3}, {"esr", 0.2}}, "supply", "ground");
}

/// So fast that delay and shortest hold make up a good part of each phase.
Workbench fast() {
    Workbench b = astable({.r1_ohm = 1e3, .r2_ohm = 680, .c_farad = 1e-9}, false);
    return lamp(b, "1", "red", 470, "output", "ground");
}

/// The timing capacitor stands above the threshold level when the timer begins to read it.
Workbench chargedBefore() {
    Workbench b = astableWithLamp({}, 470);
    return b.set("C1.initial_voltage=8");
}

/// Output, trigger and threshold in one net: switches as fast as delay and hold allow.
Workbench loop() {
    Workbench b = bareTimer();
    return b.net("timing", {"U1:3"});
}

/// Pin 1 stands on a resistor, above 0 V by what the timer draws, and reset comes and goes slowly.
Workbench raisedGround() {
    Workbench b = astable({.r2_ohm = 33e3}, false);
    b.open("U1:1").open("U1:4");
    b.net("raised", {"U1:1"});
    resistor(b, "R6", 100, "raised", "ground");
    b.part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{0.2, 0.3}, {1.1, 1.5}}}});
    b.net("reset", {"U1:4", "S1:1"}).net("pull", {"S1:2"});
    resistor(b, "R9", 10e3, "supply", "reset");
    resistor(b, "R8", 100, "pull", "ground");
    capacitor(b, "C9", {{"capacitance", 4.7e-6}}, "reset", "ground");
    return lamp(b, "1", "red", 470, "output", "ground");
}

/// Threshold and control pin in one net: their distance is 0 for ever, and nothing but the slow reset pin
/// ends a high phase, which a switch on the trigger begins.
Workbench joinedLevels() {
    Workbench b;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    b.net("supply", {"BT1:plus", "U1:8"}).net("ground", {"BT1:minus", "U1:1"});
    b.net("level", {"U1:5", "U1:6"}).net("output", {"U1:3"});
    b.part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{0.1, 0.2}, {0.5, 0.6}}}})
        .part(PartKind::toggle, "S2", {{"presses", circuit::Intervals{{0.3, 0.31}, {0.7, 0.71}}}});
    b.net("reset", {"U1:4", "S1:1"})
        .net("pull", {"S1:2"})
        .net("trigger", {"U1:2", "S2:1"})
        .net("ground", {"S2:2"});
    resistor(b, "R9", 10e3, "supply", "reset");
    resistor(b, "R8", 100, "pull", "ground");
    resistor(b, "R7", 10e3, "supply", "trigger");
    capacitor(b, "C9", {{"capacitance", 4.7e-6}, {"initial_voltage", 8.0}}, "reset", "ground");
    return lamp(b, "1", "red", 470, "output", "ground");
}

/// Pin 8 is up for some microseconds, long before the timer is awake, and then falls back for good.
Workbench briefSupply() {
    Workbench b = astableWithLamp({.r1_ohm = 2.2e3, .r2_ohm = 33e3, .c_farad = 1e-6}, 2.2e3);
    b.open("U1:8").set("BT1.resistance=10").set("C1.initial_voltage=8");
    capacitor(b, "C8", {{"capacitance", 100e-9}}, "supply", "ground");
    resistor(b, "R8", 560, "supply", "weak");
    capacitor(b, "C9", {{"capacitance", 22e-9}}, "supply", "weak");
    return b.net("weak", {"U1:8"});
}

/// A dip of the trigger that is over before the output answers: the output rises all the same, and falls at
/// once.
Workbench shortTrigger() {
    Workbench b;
    b.part(PartKind::supply, "BT1", {{"voltage", 9.0}}).part(PartKind::timer, "U1");
    b.net("supply", {"BT1:plus", "U1:8", "U1:4", "U1:6"}).net("ground", {"BT1:minus", "U1:1"});
    b.part(PartKind::toggle, "S1", {{"presses", circuit::Intervals{{1e-3, 1.5e-3}, {3e-3, 3.5e-3}}}});
    b.net("trigger", {"U1:2", "S1:1"}).net("dip", {"S1:2"}).net("output", {"U1:3"});
    resistor(b, "R1", 1e3, "supply", "trigger");
    capacitor(b, "C1", {{"capacitance", 220e-12}, {"leakage_resistance", 1e6}}, "dip", "ground");
    return lamp(b, "1", "red", 470, "output", "ground");
}

/// A lamp on a battery of its own that nothing joins to the rest, and a timer without delay.
Workbench island() {
    Workbench b = astableWithLamp({}, 470);
    b.set("U1.device.delay=0");
    b.part(PartKind::supply, "BT2", {{"voltage", 4.5}}).part(PartKind::toggle, "S1");
    b.set("S1.closed=true");
    b.net("far plus", {"BT2:plus", "S1:1"}).net("far minus", {"BT2:minus"}).net("far", {"S1:2"});
    return lamp(b, "9", "green", 120, "far", "far minus");
}

} // namespace

std::vector<Wiring> wirings() {
    return {
        {"lamp to ground", astableWithLamp({}, 470)},
        {"lamp to the plus rail", toRail()},
        {"lamps behind a coupling capacitor", lampPair({}, 220, 1e-3)},
        {"lamp to each rail", toEachRail()},
        {"overdriven lamps", overdriven()},
        {"steering diode", steered()},
        {"single resistor from the output", singleResistor()},
        {"driven control pin", drivenControl()},
        {"leaky capacitor", leaky()},
        {"timer gating a timer", gated(), 2},
        {"reset switch", resetSwitch()},
        {"megohm resistors",
         astableWithLamp({.supply_V = 6, .r1_ohm = 1e6, .r2_ohm = 2.2e6, .c_farad = 1e-6}, 330)},
        {"CMOS", cmos()},
        {"CMOS with megohm resistors",
         astableWithLamp(
             {.supply_V = 12, .r1_ohm = 1e6, .r2_ohm = 4.7e6, .c_farad = 100e-9, .family = "cmos"}, 1e3)},
        {"variable resistor", variable()},
        {"tired battery", tiredBattery()},
        {"chains of lamps", chains()},
        {"slow to power up", slowToPowerUp()},
        {"fast", fast(), 20},
        {"charged before", chargedBefore()},
        {"output fed back to the inputs", loop(), 20},
        {"raised ground", raisedGround()},
        {"threshold joined to the control pin", joinedLevels(), 2},
        {"supply up only briefly", briefSupply()},
        {"trigger shorter than the delay", shortTrigger(), 2},
        {"island and no delay", island()},
    };
}

} // namespace blinkwright::tests
