// Boards with a fault planted in them, for tests of the search for faults. Faults are planted in the circuit
// by its own edits, values lie off theirs by chance, and readings are sampled in time: none of it by the code
// that is tested.
//
//   Planted board(sampleCircuit("mole-light"), 7);
//   board.open("R1:1");
//   board.read("U1:7", Quantity::mean)      // with the meter's 10 Mohm, to three digits
#pragma once

#include "core/base/random.h"
#include "core/circuit/circuit.h"
#include "core/study/meter.h"
#include "core/study/symptom_signs.h"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::study {

circuit::Circuit sampleCircuit(const std::string& name);

class Planted {
  public:
    /// Every value off by chance: resistors and capacitors within their tolerance, the battery by 3 %, the
    /// parameters of the timer by 4 %, lamp voltages by 2 %.
    Planted(circuit::Circuit drawn, std::uint64_t seed);
    /// Nothing off, no fault.
    static Planted asDrawn(circuit::Circuit drawn);

    // --- mistakes
    void open(std::string_view pin);
    void shorted(std::string_view pin, std::string_view other); ///< by 0.2 ohm
    void turned(std::string_view ref);                          ///< two pins change places
    void turnedElectrolytic(std::string_view ref);              ///< that, and what such a capacitor leaks
    void times(std::string_view ref, std::string_view key, double factor);
    void swapped(std::string_view ref, std::string_view other, std::string_view key);
    /// States a reading by hand, where nothing can be simulated.
    void state(std::string_view place, double volts) { m_stated[std::string(place)] = volts; }

    // --- what people see and read
    Symptom symptom() const; ///< the one that strikes most
    double read(const std::string& place, Quantity quantity) const;

  private:
    struct Samples {
        double period_s = 0;
        std::vector<double> node_V;               ///< of one node
        std::vector<std::vector<double>> lamps_A; ///< by lamp
    };
    static Samples sample(const circuit::Circuit& circuit, std::string_view net);
    double number(circuit::PartId part, std::string_view key) const;
    void put(circuit::PartId part, std::string key, circuit::Value value);
    circuit::NetId netOf(std::string_view pin, circuit::Circuit& circuit) const;
    void join(circuit::PartKind kind, circuit::Values values, circuit::NetId first, circuit::NetId second,
              circuit::Circuit& circuit) const;

    circuit::Circuit m_drawn, m_circuit;
    RandomDraws m_draws;
    std::map<std::string, double> m_stated;
};

} // namespace blinkwright::study
