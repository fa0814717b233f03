#include "core/study/ready_board.h"

#include "core/base/wording.h"
#include "core/study/ready_room.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <initializer_list>

namespace blinkwright::study {

namespace {

using circuit::PartId;
using circuit::PartKind;
using circuit::Placement;
using circuit::Values;

constexpr int standing = 90, lying = 180;

/// Places parts and joins their pins; all names are our own, so nothing can be refused.
class Builder {
  public:
    Builder(const ReadyAnswers& answers, const ReadyValues& values) : m_answers(answers), m_values(values) {}

    circuit::Circuit build() {
        const ReadyInfo& kind = info(m_answers.kind);
        m_circuit.title = wording::inWords(kind.title);
        m_circuit.notes = notes(kind);
        supply();
        switch (m_answers.kind) {
        case ReadyKind::lampToGround:
            astable();
            lampToGround(m_answers.colour);
            break;
        case ReadyKind::lampToRail:
            astable();
            lampToRail("R3", "D1", m_answers.colour, m_values.lamp_ohm, -230);
            net("output", {"U1:3"});
            break;
        case ReadyKind::takingTurns:
            astable();
            pair();
            break;
        case ReadyKind::lampToEachRail:
            astable();
            lampToEachRail();
            break;
        case ReadyKind::shortFlash:
            astable();
            steer();
            lampToGround(m_answers.colour);
            break;
        case ReadyKind::equalHalves:
            fromOutput();
            break;
        case ReadyKind::controlledRate:
            astable();
            lampToGround(m_answers.colour);
            control();
            break;
        case ReadyKind::gatedGroups:
            gated();
            break;
        }
        bypass();
        return std::move(m_circuit);
    }

  private:
    PartId part(PartKind kind, const char* ref, Values values, Placement at) {
        const PartId id = m_circuit.addPart(kind, ref, std::move(values)).value();
        m_leftmost = std::min(m_leftmost, at.x);
        m_circuit.place(id, std::move(at));
        return id;
    }
    void net(const char* name, std::initializer_list<const char*> pins) {
        const circuit::Net* known = m_circuit.findNet(name);
        const circuit::NetId id = known ? known->id : m_circuit.addNet(name).value();
        for (const char* pin : pins) {
            [[maybe_unused]] const auto done = m_circuit.join(m_circuit.pinNamed(pin).value(), id);
            assert(done);
        }
    }

    static Placement at(double x, double y, int turn) { return {x, y, turn, false, {}}; }

    static Values ohms(double value) { return {{"resistance", value}, {"tolerance", 0.05}}; }

    /// A lamp resistor of a rating that holds with the whole supply across it but the lamp.
    Values lampOhms(double value) const {
        const double most = m_answers.lampCurrent_A * m_answers.lampCurrent_A * value;
        Values values = ohms(value);
        values["rated_power"] = most > 0.2 ? 0.5 : 0.25;
        return values;
    }

    /// From a microfarad on an electrolytic, else film; leakage as that of good parts, from memory: 300 s
    /// and 10 000 s of leakage resistance times capacitance.
    static Values farads(double value) {
        const bool film = value < 1e-6 * (1 - 1e-9);
        Values values{{"capacitance", value},
                      {"tolerance", film ? 0.05 : 0.2},
                      {"leakage_resistance", (film ? 1e4 : 300) / value},
                      {"rated_voltage", film ? 63.0 : 25.0}};
        if (!film) {
            values["esr"] = 1.0;
            values["polarised"] = true;
        }
        return values;
    }
    Values lamp(const std::string& colour) const { return {{"colour", colour}}; }
    const char* family() const { return m_answers.family == devices::TimerFamily::cmos ? "cmos" : "bipolar"; }
    Values timer() const { return {{"family", std::string(family())}}; }

    void supply() {
        m_supply =
            m_circuit.addPart(PartKind::supply, "BT1", {{"voltage", m_answers.supply_V}, {"resistance", 0.5}})
                .value();
        part(PartKind::timer, "U1", timer(), at(0, 0, 0));
        net("supply", {"BT1:plus", "U1:8"});
        net("ground", {"BT1:minus", "U1:1"});
        if (m_answers.kind != ReadyKind::gatedGroups) net("supply", {"U1:4"});
    }

    void astable() {
        const Timing& t = m_values.timing;
        part(PartKind::resistor, "R1", ohms(t.r1_ohm), at(190, -100, standing));
        part(PartKind::resistor, "R2", ohms(t.r2_ohm), at(190, 10, standing));
        timingCapacitor();
        net("supply", {"R1:1"});
        net("discharge", {"U1:7", "R1:2", "R2:1"});
        net("timing", {"R2:2"});
    }
    void timingCapacitor() {
        part(PartKind::capacitor, "C1", farads(m_values.timing.c_farad), at(190, 110, standing));
        part(PartKind::capacitor, "C2", farads(10e-9), at(110, 110, standing));
        net("timing", {"U1:6", "U1:2", "C1:plus"});
        net("control", {"U1:5", "C2:plus"});
        net("ground", {"C1:minus", "C2:minus"});
    }

    void lampToGround(const std::string& colour) {
        part(PartKind::resistor, "R3", lampOhms(m_values.lamp_ohm), at(-160, 20, lying));
        part(PartKind::lamp, "D1", lamp(colour), at(-230, 90, standing));
        net("output", {"U1:3", "R3:1"});
        net("lamp", {"R3:2", "D1:anode"});
        net("ground", {"D1:cathode"});
    }
    void lampToRail(const char* resistor, const char* ref, const std::string& colour, double ohm, double x) {
        part(PartKind::resistor, resistor, lampOhms(ohm), at(x, -100, standing));
        part(PartKind::lamp, ref, lamp(colour), at(x, -30, standing));
        const std::string r = resistor, d = ref;
        net("supply", {(r + ":1").c_str()});
        net(info(m_answers.kind).secondLamp ? "upper" : "lamp", {(r + ":2").c_str(), (d + ":anode").c_str()});
        net("output", {(d + ":cathode").c_str()});
    }

    void pair() {
        part(PartKind::resistor, "R3", lampOhms(m_values.lamp_ohm), at(-260, 20, lying));
        part(PartKind::capacitor, "C5", farads(m_values.coupling_farad), at(-350, 20, lying));
        part(PartKind::resistor, "R4", ohms(10e3), at(-210, 90, standing));
        part(PartKind::lamp, "D1", lamp(m_answers.colour), at(-320, 90, standing));
        part(PartKind::lamp, "D2", lamp(m_answers.secondColour), at(-400, 90, 270));
        net("output", {"U1:3", "R3:1", "R4:1"});
        net("swing", {"R3:2", "C5:plus"});
        net("lamps", {"C5:minus", "D1:anode", "D2:cathode"});
        net("ground", {"R4:2", "D1:cathode", "D2:anode"});
    }

    void lampToEachRail() {
        part(PartKind::resistor, "R3", lampOhms(m_values.lamp_ohm), at(-150, 80, standing));
        part(PartKind::lamp, "D1", lamp(m_answers.colour), at(-150, 160, standing));
        net("output", {"U1:3", "R3:1"});
        net("lower", {"R3:2", "D1:anode"});
        net("ground", {"D1:cathode"});
        lampToRail("R4", "D2", m_answers.secondColour, m_values.second_ohm, -230);
    }

    void steer() {
        part(PartKind::diode, "D2", {}, at(270, 10, standing));
        net("discharge", {"D2:anode"});
        net("timing", {"D2:cathode"});
    }

    /// The lamp hangs on the + rail: a lamp to ground would pull the output's high level down, and with it
    /// the even halves. A bipolar output needs a resistor to the rail to come near it.
    void fromOutput() {
        part(PartKind::resistor, "R1", ohms(m_values.timing.r2_ohm), at(-180, 0, 270));
        timingCapacitor();
        net("output", {"U1:3", "R1:1"});
        net("timing", {"R1:2"});
        lampToRail("R2", "D1", m_answers.colour, m_values.lamp_ohm, -290);
        if (m_answers.family == devices::TimerFamily::cmos) return;
        part(PartKind::resistor, "R3", ohms(pullUp_ohm), at(-380, -60, standing));
        net("supply", {"R3:1"});
        net("output", {"R3:2"});
    }

    /// A variable resistor between two fixed ones: pin 5 goes from 0.4 to 0.8 of the supply.
    void control() {
        part(PartKind::resistor, "R4", ohms(2.2e3), at(330, -100, standing));
        part(PartKind::variable, "RV1", {{"resistance", 4.7e3}, {"setting", 0.5}}, {330, 10, 270, true, {}});
        part(PartKind::resistor, "R5", ohms(4.7e3), at(330, 110, standing));
        net("supply", {"R4:1"});
        net("upper end", {"R4:2", "RV1:1"});
        net("control", {"RV1:wiper"});
        net("lower end", {"RV1:2", "R5:1"});
        net("ground", {"R5:2"});
    }

    void gated() {
        astable();
        lampToGround(m_answers.colour);
        const Timing& t = m_values.slow;
        constexpr double x = -610;
        part(PartKind::timer, "U2", timer(), at(x, 0, 0));
        part(PartKind::resistor, "R4", ohms(t.r1_ohm), at(x + 190, -100, standing));
        part(PartKind::resistor, "R5", ohms(t.r2_ohm), at(x + 190, 10, standing));
        part(PartKind::capacitor, "C5", farads(t.c_farad), at(x + 190, 110, standing));
        part(PartKind::capacitor, "C6", farads(10e-9), at(x + 110, 110, standing));
        net("supply", {"U2:8", "U2:4", "R4:1"});
        net("slow discharge", {"U2:7", "R4:2", "R5:1"});
        net("slow timing", {"U2:6", "U2:2", "R5:2", "C5:plus"});
        net("slow control", {"U2:5", "C6:plus"});
        net("gate", {"U2:3", "U1:4"});
        net("ground", {"U2:1", "C5:minus", "C6:minus"});
        m_leftmost = x - 110;
        // Two whole groups, the first of them longer, so that the pause between them is seen.
        constexpr double firstGroup = 1.6;
        m_circuit.run.flashes = static_cast<int>(std::ceil((firstGroup + 1) * gateHigh * m_answers.perMinute /
                                                           m_answers.groups)) +
                                1;
    }

    void bypass() {
        const double x = m_leftmost;
        part(PartKind::capacitor, "C3", farads(100e-9), at(x - 120, 0, standing));
        part(PartKind::capacitor, "C4", farads(10e-6), at(x - 220, 0, standing));
        m_circuit.place(m_supply, at(x - 320, 0, standing));
        net("supply", {"C3:plus", "C4:plus"});
        net("ground", {"C3:minus", "C4:minus"});
    }

    std::string notes(const ReadyInfo& kind) const {
        const auto number = [](double v) { return units::formatQuantity(v, units::Unit::none, 4); };
        const std::string rate = number(m_answers.perMinute), lit = number(100 * m_answers.lit),
                          current = units::formatQuantity(m_answers.lampCurrent_A, units::Unit::ampere),
                          supply = units::formatQuantity(m_answers.supply_V, units::Unit::volt);
        const std::string asked =
            kind.groups.asked()
                ? wording::inWords("Asked for: %1 flashes a minute within a group, lit for %2 % of the time, "
                                   "%3 groups a minute, %4 through a lamp, from %5.",
                                   rate, lit, number(m_answers.groups), current, supply)
            : kind.lit.asked()
                ? wording::inWords("Asked for: %1 flashes a minute, lit for %2 % of the time, %3 through a "
                                   "lamp, from %4.",
                                   rate, lit, current, supply)
                : wording::inWords("Asked for: %1 flashes a minute, %2 through a lamp, from %3.", rate,
                                   current, supply);
        return wording::inWords(kind.sentence) + " " + asked;
    }

    static constexpr double pullUp_ohm = 1e3;

    const ReadyAnswers& m_answers;
    const ReadyValues& m_values;
    circuit::Circuit m_circuit;
    PartId m_supply;
    double m_leftmost = -100;
};

} // namespace

circuit::Circuit readyBoard(const ReadyAnswers& answers, const ReadyValues& values) {
    return Builder(answers, values).build();
}

} // namespace blinkwright::study
