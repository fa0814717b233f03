#include "core/devices/board.h"

#include "core/devices/defaults.h"
#include "core/devices/nominal_supply.h"

#include <algorithm>
#include <map>

namespace blinkwright::devices {

using circuit::Circuit;
using circuit::NetId;
using circuit::Part;
using circuit::PartKind;
using circuit::PartSet;

namespace {

/// Fills one board from one circuit in one set.
class Filler {
  public:
    Filler(const Circuit& circuit, PartSet set) : m_circuit(circuit), m_set(set), m_supplies(circuit, set) {}

    Result<Board> fill() {
        numberNets();
        for (const Part& part : m_circuit.parts()) {
            m_part = &part;
            if (auto done = add(); !done) return done.fault();
        }
        return std::move(m_board);
    }

  private:
    void numberNets() {
        std::optional<NetId> zero;
        for (const Part& part : m_circuit.parts()) {
            if (part.kind != PartKind::supply) continue;
            zero = m_circuit.netOf({part.id, 1});
            break;
        }
        if (zero) number(*zero);
        for (const auto& net : m_circuit.nets()) {
            if (!net.pins.empty() && net.id != zero) number(net.id);
        }
    }
    void number(NetId net) {
        for (const auto pin : m_circuit.find(net)->pins) m_pins[pin] = m_board.nodes();
        m_board.nodeNames.push_back(m_circuit.find(net)->name);
        m_board.nodeNets.push_back(net);
    }

    Node node(int pin) const {
        const auto at = m_pins.find({m_part->id, pin});
        return at == m_pins.end() ? open : at->second;
    }
    std::size_t pinsOn(Node node) const {
        return m_circuit.find(m_board.nodeNets[static_cast<std::size_t>(node)])->pins.size();
    }
    double value(std::string_view key) const { return effectiveNumber(m_circuit, m_set, m_part->id, key); }
    std::optional<double> valueIfAny(std::string_view key) const {
        return effectiveNumberIfAny(m_circuit, m_set, m_part->id, key);
    }
    bool flag(std::string_view key) const { return effectiveFlag(m_circuit, m_set, m_part->id, key); }
    template <class T>
    T named() const {
        T part;
        part.id = m_part->id;
        part.ref = m_part->ref;
        return part;
    }

    Result<void> add() {
        switch (m_part->kind) {
        case PartKind::supply:
            addSupply();
            return {};
        case PartKind::timer:
            addTimer();
            return {};
        case PartKind::resistor:
            addResistor();
            return {};
        case PartKind::variable:
            addVariable();
            return {};
        case PartKind::capacitor:
            addCapacitor();
            return {};
        case PartKind::lamp:
        case PartKind::diode:
            return addJunction();
        case PartKind::toggle:
            addSwitch();
            return {};
        }
        return {};
    }

    void addSupply() {
        auto supply = named<Supply>();
        supply.plus = node(0);
        supply.minus = node(1);
        supply.voltage = value("voltage");
        supply.resistance = value("resistance");
        supply.capacity = valueIfAny("capacity");
        supply.endVoltage = valueIfAny("end_voltage");
        m_board.supplies.push_back(std::move(supply));
    }

    void addTimer() {
        auto timer = named<Timer>();
        for (int pin = 0; pin < 8; ++pin) {
            const auto at = static_cast<std::size_t>(pin);
            timer.pins[at] = node(pin);
            timer.inUse[at] = timer.pins[at] != open && pinsOn(timer.pins[at]) > 1;
        }
        timer.cmos = effectiveWord(m_circuit, m_set, m_part->id, "family") == "cmos";
        timer.nominalSupply = m_supplies.nominalSupply(m_part->id);
        circuit::Overrides overrides;
        if (const auto stated = m_circuit.value(m_set, m_part->id, "device")) {
            if (const auto* map = std::get_if<circuit::Overrides>(&*stated)) overrides = *map;
        }
        timer.sheet =
            timerSheet(timer.cmos ? TimerFamily::cmos : TimerFamily::bipolar, timer.nominalSupply, overrides);
        m_board.timers.push_back(std::move(timer));
    }

    void addResistor() {
        auto resistor = named<Resistor>();
        resistor.a = node(0);
        resistor.b = node(1);
        resistor.resistance = value("resistance");
        resistor.ratedPower = value("rated_power");
        m_board.resistors.push_back(std::move(resistor));
    }

    void addVariable() {
        auto variable = named<Variable>();
        variable.a = node(0);
        variable.b = node(1);
        variable.wiper = node(2);
        const Sections sections = sectionsOf(value("resistance"), value("setting"));
        variable.upper = sections.upper;
        variable.lower = sections.lower;
        variable.ratedPower = value("rated_power");
        m_board.variables.push_back(std::move(variable));
    }

    void addCapacitor() {
        auto capacitor = named<Capacitor>();
        capacitor.plus = node(0);
        capacitor.minus = node(1);
        capacitor.capacitance = value("capacitance");
        capacitor.esr = value("esr");
        if (const auto leakage = valueIfAny("leakage_resistance"))
            capacitor.leakageConductance = 1 / *leakage;
        capacitor.ratedVoltage = valueIfAny("rated_voltage");
        capacitor.polarised = flag("polarised");
        capacitor.initialVoltage = value("initial_voltage");
        m_board.capacitors.push_back(std::move(capacitor));
    }

    Result<void> addJunction() {
        auto part = named<Junction>();
        part.anode = node(0);
        part.cathode = node(1);
        const auto law = JunctionLaw::through(value("forward_voltage"), value("test_current"),
                                              value("ideality"), value("series_resistance"));
        if (!law) return Fault{part.ref + "." + law.fault().place, law.fault().text};
        part.law = law.value();
        part.lamp = m_part->kind == PartKind::lamp;
        if (part.lamp) {
            part.colour = effectiveWord(m_circuit, m_set, m_part->id, "colour");
            part.ratedCurrent = value("rated_current");
            part.pulseCurrent = value("pulse_current");
            part.reverseLimit = value("reverse_limit");
            part.luminousIntensity = valueIfAny("luminous_intensity");
        }
        m_board.junctions.push_back(std::move(part));
        return {};
    }

    void addSwitch() {
        auto part = named<Switch>();
        part.a = node(0);
        part.b = node(1);
        part.closed = flag("closed");
        const auto presses = effectiveValue(m_circuit, m_set, m_part->id, "presses");
        if (presses) {
            if (const auto* list = std::get_if<circuit::Intervals>(&*presses)) part.presses = *list;
        }
        m_board.switches.push_back(std::move(part));
    }

    const Circuit& m_circuit;
    const PartSet m_set;
    const SupplyFinder m_supplies;
    const Part* m_part = nullptr;
    std::map<circuit::PinRef, Node> m_pins;
    Board m_board;
};

} // namespace

Result<Board> makeBoard(const Circuit& circuit, PartSet set) {
    return Filler(circuit, set).fill();
}

} // namespace blinkwright::devices
