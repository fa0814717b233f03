// A board: one circuit in one set of values with every default filled in and every net numbered. What the
// engine and the studies compute from; plain numbers in SI units, no text to parse, no default left to guess.
//
//   Board board = makeBoard(circuit, PartSet::A).value();
//   board.resistors[0].resistance   // 33000
//   board.timers[0].sheet.delay     // 5e-7
#pragma once

#include "core/circuit/circuit.h"
#include "core/devices/sheets.h"

#include <optional>
#include <string>
#include <vector>

namespace blinkwright::devices {

/// Number of a net in a board; 0 is the 0 V net (the first supply's minus), `open` is no net at all.
using Node = int;
inline constexpr Node open = -1;

struct Named {
    circuit::PartId id;
    std::string ref;
};
struct Supply : Named {
    Node plus = open, minus = open;
    double voltage = 0;               ///< no-load voltage [V]
    double resistance = 0;            ///< [ohm], > 0
    std::optional<double> capacity;   ///< [C]
    std::optional<double> endVoltage; ///< [V]
};
struct Timer : Named {
    std::array<Node, 8> pins{open, open, open, open, open, open, open, open};
    bool cmos = false;
    TimerSheet sheet;
    double nominalSupply = 0; ///< no-load voltage of the supply that feeds pin 8 [V]; 0 if there is none
    /// Whether an input pin (trigger, reset, threshold, discharge) is in a net with anything else: an input
    /// that is alone carries no current and counts as not tripped.
    bool connected(int pin) const { return inUse[static_cast<std::size_t>(pin)]; }
    std::array<bool, 8> inUse{};
};
struct Resistor : Named {
    Node a = open, b = open;
    double resistance = 0;
    double ratedPower = 0;
};
/// A variable resistor as its two sections, each at least 10 milliohm.
struct Variable : Named {
    Node a = open, b = open, wiper = open;
    double upper = 0; ///< pin 1 to wiper [ohm]
    double lower = 0; ///< wiper to pin 2 [ohm]
    double ratedPower = 0;
};
struct Capacitor : Named {
    Node plus = open, minus = open;
    double capacitance = 0;
    double esr = 0;
    double leakageConductance = 0; ///< [S]; 0 = no leakage
    std::optional<double> ratedVoltage;
    bool polarised = false;
    double initialVoltage = 0;
};
/// Lamp or diode: a junction behind a series resistance.
struct Junction : Named {
    Node anode = open, cathode = open;
    JunctionLaw law;
    bool lamp = false;
    std::string colour; ///< of a lamp
    double ratedCurrent = 0;
    double pulseCurrent = 0;
    double reverseLimit = 0;
    std::optional<double> luminousIntensity; ///< at the test current [cd]
};
struct Switch : Named {
    Node a = open, b = open;
    bool closed = false;
    circuit::Intervals presses; ///< [from, to) in seconds; closed is inverted while they last
};

inline constexpr double switchClosedResistance = 0.010; ///< [ohm]
inline constexpr double switchOpenResistance = 1e9;     ///< [ohm]
inline constexpr double leastVariableSection = 0.010;   ///< [ohm]

struct Board {
    std::vector<std::string> nodeNames; ///< by node number
    std::vector<circuit::NetId> nodeNets;
    std::vector<Supply> supplies;
    std::vector<Timer> timers;
    std::vector<Resistor> resistors;
    std::vector<Variable> variables;
    std::vector<Capacitor> capacitors;
    std::vector<Junction> junctions; ///< lamps and diodes in file order
    std::vector<Switch> switches;

    int nodes() const { return static_cast<int>(nodeNames.size()); }
};

/// One `--value REF.KEY=TEXT` override; key may be `device.NAME`.
struct ValueOverride {
    std::string ref;
    std::string key;
    circuit::Value value;
};

/// Reads `REF.KEY=TEXT` against a circuit: the text is engineering text in the key's unit, a word, true or
/// false.
Result<ValueOverride> parseOverride(const circuit::Circuit& circuit, std::string_view text);

/// Puts overrides on top of the parts of a set ("--value comes last").
Result<void> applyOverride(circuit::Circuit& circuit, circuit::PartSet set, const ValueOverride& value);

/// Fills in every default and numbers the nets. Never fails on wiring; a circuit without a supply has node 0
/// for the first net all the same (the findings say what is wrong).
/// @return a fault only for a value that the checks of the circuit let pass but no device can have.
Result<Board> makeBoard(const circuit::Circuit& circuit, circuit::PartSet set);

/// The value that a part has in a set when its default is counted in; nothing for a value that does not exist
/// (no leakage, no rated voltage).
std::optional<circuit::Value> effectiveValue(const circuit::Circuit& circuit, circuit::PartSet set,
                                             circuit::PartId part, std::string_view key);

} // namespace blinkwright::devices
