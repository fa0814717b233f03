// What measurements can say something about: the values of a board that move its figures, each with what is
// known of it beforehand.
//
//   Unknowns unknowns(circuit, set, board, measuredReadings(circuit));
//   devices::Board other = unknowns.board(dials);          // dials: standard deviations about the prior
//   unknowns.all()[0].prior                                // C1: nominal value, tolerance over sqrt(3)
//
// A tolerance is a rectangular distribution between its limits: u = a / sqrt(3) (JCGM 100:2008, 4.3.7). A
// value that was measured by itself has its reading as its prior instead. Parts of one reel move together.
#pragma once

#include "core/devices/board.h"
#include "core/study/measured_readings.h"
#include "core/units/engineering.h"

#include <string>
#include <vector>

namespace blinkwright::study {

enum class UnknownKind {
    resistance, ///< of a resistor, or of a variable one from end to end
    capacitance,
    leakage,        ///< of a capacitor, as a conductance [S]
    levels,         ///< both levels of a timer, as a factor
    supplyVoltage,  ///< without load
    discharge,      ///< what pin 7 leaves: `discharge_offset` (bipolar) or `discharge_resistance` (CMOS)
    outputHigh,     ///< what the output leaves of the supply: `high_drop_1mA` or `high_resistance`
    outputLow,      ///< `low_resistance`
    forwardVoltage, ///< of a lamp or diode at 10 mA
};

/// Where the prior comes from.
enum class PriorFrom {
    tolerance, ///< of the part
    reading,   ///< of the part itself on a meter
    usual,     ///< what such parts usually keep, from sheets or from memory
};

struct Unknown {
    UnknownKind kind{};
    circuit::PartId part;
    std::string ref;
    std::string key; ///< as in files; `leakage_conductance` and `levels` are none that a part has
    units::Unit unit{};
    std::size_t index = 0; ///< in the board's list of such parts
    double nominal = 0;    ///< as the circuit states it
    circuit::Measured prior;
    PriorFrom from{};
    double lowest = 0;
    std::size_t dial = 0; ///< parts of one reel share it
    std::string name() const { return ref + "." + key; }
};

/// Whether a reading of a part by itself is one of this value. Leakage is read as a resistance.
bool isOf(const MeasuredPart& reading, const Unknown& unknown);

class Unknowns {
  public:
    /// @param board of the same circuit and set. @param supplyMean_A what it takes from the first supply: a
    /// voltage measured at its terminals is by so much times its resistance under its voltage without load.
    Unknowns(const circuit::Circuit& circuit, circuit::PartSet set, const devices::Board& board,
             const MeasuredReadings& measured, double supplyMean_A = 0);

    const std::vector<Unknown>& all() const { return m_all; }
    std::size_t dials() const { return m_dials; }
    /// The value of one of all() with a dial at so many standard deviations.
    double value(const Unknown& unknown, double dial) const;
    /// @param dials one number for each dial.
    devices::Board board(const std::vector<double>& dials) const;
    /// @param values one for each of all(), in their units.
    devices::Board boardAt(const std::vector<double>& values) const;
    double lowestDial(std::size_t dial) const;
    /// By how much to move a dial for a derivative: small beside the value and beside its uncertainty.
    double smallMove(std::size_t dial) const;

  private:
    devices::Board m_board;
    std::vector<Unknown> m_all;
    std::size_t m_dials = 0;
};

/// Sets one value of a board. @param nominal board from which factors are counted
void setUnknown(devices::Board& board, const devices::Board& nominal, const Unknown& unknown, double value);

} // namespace blinkwright::study
