// The textbook circuit as a board, and the same with some of what the textbook leaves out put back. The
// engine simulates either, so that each imperfection is measured by itself.
//
//   Idealiser idealiser(board, *textbookOf(board, 0));
//   settle(idealiser.with({}), request);                                // the textbook formula, to rounding
//   settle(idealiser.with({Imperfection::dischargePin}), request);      // that and a real pin 7
//   idealiser.present()                                                 // what can act in this wiring
#pragma once

#include "core/study/textbook.h"

#include <set>
#include <string_view>
#include <vector>

namespace blinkwright::study {

/// What a textbook formula leaves out. The levels themselves are no entry: in the device laws they stand at
/// exactly 2/3 and 1/3 of pin 8 until something at pin 5 moves them.
enum class Imperfection {
    dischargePin,     ///< resistance, offset, limit and leakage of pin 7
    inputCurrents,    ///< of threshold and trigger
    capacitorLeakage, ///< of the timing capacitors
    capacitorSeries,  ///< their series resistance
    outputLevels,     ///< the real output and what hangs on it, where the output charges the capacitor
    supplySag,  ///< all between the supply's no-load voltage and pins 8 and 1; a capacitor at pin 5 too,
                ///< which lets the levels follow late
    controlPin, ///< a source at pin 5 that does not hold it quite
    delay,      ///< from a level crossed to the output
    diodeDrop,  ///< of a diode across R2
};
inline constexpr Imperfection allImperfections[] = {
    Imperfection::dischargePin,    Imperfection::inputCurrents, Imperfection::capacitorLeakage,
    Imperfection::capacitorSeries, Imperfection::outputLevels,  Imperfection::supplySag,
    Imperfection::controlPin,      Imperfection::delay,         Imperfection::diodeDrop};

/// As printed: `discharge pin`, `input currents`, ...
std::string_view name(Imperfection imperfection);

class Idealiser {
  public:
    /// @param textbook of the first timer; `board` must outlive this.
    Idealiser(const devices::Board& board, const Textbook& textbook);

    /// Imperfections that can act: the wiring has what they are about, and it is not ideal there.
    std::vector<Imperfection> present() const;
    /// The textbook circuit with these imperfections as the board has them.
    devices::Board with(const std::set<Imperfection>& real) const;

  private:
    const devices::Board& m_board;
    const Textbook& m_textbook;
    std::vector<std::size_t> m_capacitors; ///< timing capacitors by index
};

} // namespace blinkwright::study
