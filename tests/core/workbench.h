// Builds circuits for tests in a few lines.
//
//   Workbench bench = plainAstable(10e3, 68e3, 10e-6);
//   bench.part(PartKind::lamp, "D1").net("lamp", {"R3:2", "D1:anode"});
//   Board board = bench.board();
#pragma once

#include "core/circuit/edit.h"
#include "core/devices/board.h"

#include <initializer_list>
#include <stdexcept>

namespace blinkwright {

class Workbench {
  public:
    circuit::Circuit circuit;

    Workbench& part(circuit::PartKind kind, std::string ref, circuit::Values values = {}) {
        need(circuit.addPart(kind, std::move(ref), std::move(values)));
        return *this;
    }
    /// Adds a net, or joins more pins to the one of that name.
    Workbench& net(const std::string& name, std::initializer_list<const char*> pins) {
        const auto* known = circuit.findNet(name);
        const auto id = known ? known->id : take(circuit.addNet(name));
        for (const char* pin : pins) need(circuit.join(take(circuit.pinNamed(pin)), id));
        return *this;
    }
    /// Takes a pin out of its net.
    Workbench& open(std::string_view pin) {
        need(circuit::apply(circuit, {circuit::edits::JoinPin{take(circuit.pinNamed(pin)), std::nullopt}}));
        return *this;
    }
    /// `R1.resistance=4k7`
    Workbench& set(std::string_view text) {
        need(devices::applyOverride(circuit, circuit::PartSet::A,
                                    take(devices::parseOverride(circuit, text))));
        return *this;
    }
    devices::Board board() const { return take(devices::makeBoard(circuit, circuit::PartSet::A)); }
    circuit::PartId id(std::string_view ref) const { return circuit.findRef(ref)->id; }

  private:
    template <class T>
    static T take(Result<T> result) {
        if (!result) throw std::logic_error(result.fault().message());
        return std::move(result).value();
    }
    template <class T>
    static void need(const Result<T>& result) {
        if (!result) throw std::logic_error(result.fault().message());
    }
};

/// The common bench set-up without its timing parts: a 9 V supply and a bipolar timer with joined pins 2
/// and 6.
inline Workbench bareTimer(double volts = 9) {
    using circuit::PartKind;
    Workbench bench;
    bench.part(PartKind::supply, "BT1", {{"voltage", volts}}).part(PartKind::timer, "U1");
    bench.net("supply", {"BT1:plus", "U1:8", "U1:4"}).net("ground", {"BT1:minus", "U1:1"});
    bench.net("timing", {"U1:2", "U1:6"});
    return bench;
}

/// R1 from the supply to pin 7, R2 from pin 7 to the timing node, C1 to ground, a 10 nF capacitor on pin 5
/// and 100 uF across the supply.
inline Workbench plainAstable(double r1, double r2, double c, double volts = 9) {
    using circuit::PartKind;
    Workbench bench = bareTimer(volts);
    bench.part(PartKind::resistor, "R1", {{"resistance", r1}})
        .part(PartKind::resistor, "R2", {{"resistance", r2}})
        .part(PartKind::capacitor, "C1", {{"capacitance", c}})
        .part(PartKind::capacitor, "C2", {{"capacitance", 1e-8}})
        .part(PartKind::capacitor, "C3", {{"capacitance", 1e-4}});
    bench.net("supply", {"R1:1", "C3:plus"}).net("discharge", {"R1:2", "U1:7", "R2:1"});
    bench.net("timing", {"R2:2", "C1:plus"}).net("ground", {"C1:minus", "C2:minus", "C3:minus"});
    bench.net("control", {"U1:5", "C2:plus"});
    return bench;
}

} // namespace blinkwright
