#include "core/study/proposal.h"

#include "core/study/choose_rank.h"

#include <algorithm>
#include <cassert>
#include <initializer_list>

namespace blinkwright::study {

using circuit::Circuit;
using circuit::PartKind;

namespace {

// The tolerances of parts that state none (core/devices/defaults).
constexpr double usualResistor = 0.05, usualCapacitor = 0.2;
constexpr double variableRoom = 110; // what RV1 takes between R2 and C1 [units]

class Builder {
  public:
    Circuit circuit;

    void part(PartKind kind, const char* ref, circuit::Values values, double x, double y, int turn = 90) {
        const auto id = circuit.addPart(kind, ref, std::move(values));
        assert(id.ok());
        circuit.place(id.value(), {.x = x, .y = y, .turn = turn, .mirror = false, .extras = {}});
    }
    /// Adds a net, or joins more pins to the one of that name.
    void net(const char* name, std::initializer_list<const char*> pins) {
        const auto* known = circuit.findNet(name);
        const auto net = known ? known->id : circuit.addNet(name).value();
        for (const char* pin : pins) {
            [[maybe_unused]] const auto joined = circuit.join(circuit.pinNamed(pin).value(), net);
            assert(joined.ok());
        }
    }
};

circuit::Values resistance(double ohm) {
    return {{"resistance", ohm}};
}

/// With its tolerance, where it is another one than the usual.
circuit::Values timing(const char* key, double value, double tolerance, double usual) {
    circuit::Values values{{key, value}};
    if (tolerance != usual) values["tolerance"] = tolerance;
    return values;
}

circuit::Values lamp(const Wish& wish, std::size_t k) {
    return {{"colour", wish.colours.at(std::min(k, wish.colours.size() - 1))}};
}

} // namespace

Circuit proposedCircuit(const Wish& wish, const Choice& choice) {
    Builder b;
    const Tolerances t = tolerancesOf(wish, choice);
    b.part(PartKind::supply, "BT1", {{"voltage", wish.supply_V}}, -580, 0);
    b.part(PartKind::timer, "U1", {{"family", std::string(wish.cmos ? "cmos" : "bipolar")}}, 0, 0, 0);
    b.part(PartKind::resistor, "R1", timing("resistance", choice.r1_ohm, t.r1, usualResistor), 190, -100);
    b.part(PartKind::resistor, "R2", timing("resistance", choice.r2_ohm, t.r2, usualResistor), 190, 10);
    const double down = choice.variable_ohm ? variableRoom : 0;
    b.part(PartKind::capacitor, "C1", timing("capacitance", choice.c1_farad, t.c1, usualCapacitor), 190,
           110 + down);
    b.part(PartKind::resistor, "R3", resistance(choice.r3_ohm), -260, 20, 180);
    b.part(PartKind::lamp, "D1", lamp(wish, 0), -320, 90);
    b.net("supply", {"BT1:plus", "U1:8", "U1:4", "R1:1"});
    b.net("ground", {"BT1:minus", "U1:1", "C1:minus"});
    b.net("discharge", {"U1:7", "R1:2", "R2:1"});
    b.net("timing", {"U1:6", "U1:2", "C1:plus"});
    b.net("output", {"U1:3", "R3:1"});
    if (choice.control_farad > 0) {
        b.part(PartKind::capacitor, "C2", {{"capacitance", choice.control_farad}}, 110, 110);
        b.net("control", {"U1:5", "C2:plus"});
        b.net("ground", {"C2:minus"});
    }
    if (choice.buffer_farad > 0) {
        b.part(PartKind::capacitor, "C3", {{"capacitance", choice.buffer_farad}}, -500, 0);
        b.net("supply", {"C3:plus"});
        b.net("ground", {"C3:minus"});
    }
    if (choice.variable_ohm) {
        // The free end lies on the wiper: where the wiper lifts off, the whole of it is left.
        circuit::Values values = timing("resistance", *choice.variable_ohm, t.variable, usualResistor);
        values["setting"] = choice.setting;
        b.part(PartKind::variable, "RV1", std::move(values), 190, 110);
        b.net("stop", {"R2:2", "RV1:1"});
        b.net("timing", {"RV1:wiper", "RV1:2"});
    } else {
        b.net("timing", {"R2:2"});
    }
    if (choice.scheme.diode) {
        b.part(PartKind::diode, "D3", {}, 270 + down / 2, 10 + down / 2);
        b.net("discharge", {"D3:anode"});
        b.net("timing", {"D3:cathode"});
    }
    if (choice.scheme.coupledPair) {
        b.part(PartKind::capacitor, "C4", {{"capacitance", choice.coupling_farad.value_or(1e-3)}}, -350, 20,
               180);
        if (choice.bleeder_ohm > 0) {
            b.part(PartKind::resistor, "R4", resistance(choice.bleeder_ohm), -210, 90);
            b.net("output", {"R4:1"});
            b.net("ground", {"R4:2"});
        }
        b.part(PartKind::lamp, "D2", lamp(wish, 1), -400, 90, 270);
        b.net("swing", {"R3:2", "C4:plus"});
        b.net("lamps", {"C4:minus", "D1:anode", "D2:cathode"});
        b.net("ground", {"D1:cathode", "D2:anode"});
        return b.circuit;
    }
    const auto toRail = [&](const char* resistorPin, const char* anode, const char* cathode,
                            const char* net) {
        b.net(net, {resistorPin, cathode});
        b.net("supply", {anode});
    };
    const auto toGround = [&](const char* resistorPin, const char* anode, const char* cathode,
                              const char* net) {
        b.net(net, {resistorPin, anode});
        b.net("ground", {cathode});
    };
    if (choice.scheme.lampToRail)
        toRail("R3:2", "D1:anode", "D1:cathode", "lamp");
    else
        toGround("R3:2", "D1:anode", "D1:cathode", "lamp");
    if (choice.r4_ohm) {
        b.part(PartKind::resistor, "R4", resistance(*choice.r4_ohm), -260, -60, 180);
        b.part(PartKind::lamp, "D2", lamp(wish, 1), -400, -60);
        b.net("output", {"R4:1"});
        if (choice.scheme.lampToRail)
            toGround("R4:2", "D2:anode", "D2:cathode", "second");
        else
            toRail("R4:2", "D2:anode", "D2:cathode", "second");
    }
    return b.circuit;
}

} // namespace blinkwright::study
