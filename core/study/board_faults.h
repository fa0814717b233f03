// What can be wrong with a board that was built from a circuit: mistakes of the hand and failures of parts,
// one at a time.
//
//   BenchBoard bench = benchBoard(makeBoard(circuit, set).value());
//   for (const BoardFault& fault : boardFaults(circuit, set, bench)) {
//       fault.sentence;                                // "Pin 7 of U1 has no contact: ..."
//       behaviourOf(withFault(bench, fault), ...);     // what one would see and measure
//   }
#pragma once

#include "core/study/bench_board.h"

#include <string>
#include <vector>

namespace blinkwright::study {

enum class FaultKind {
    none,       ///< as drawn
    open,       ///< a part without contact, missing, or open inside
    shorted,    ///< the part's two legs joined
    turned,     ///< the wrong way round; of a timer, turned by half
    swapped,    ///< in each other's place with another part of its kind
    decadeUp,   ///< ten times the value: marking misread
    decadeDown, ///< a tenth of it
    bridged,    ///< two neighbouring pins of a timer joined
    leftOut,    ///< one leg of a timer without contact; of a variable resistor, its wiper
    exhausted,  ///< a battery at its end
    gone,       ///< a timer that is dead, or not in its place
};

struct BoardFault {
    FaultKind kind = FaultKind::none;
    circuit::PartId part, other = {}; ///< the other one of a swap
    int pin = 0;                      ///< left out, or the lower one of two that are bridged; from 0
    double prior = 1;                 ///< how often such a thing happens, against others; see priorOf
    std::string label;                ///< in a few words: `R2 without contact`
    std::string sentence;             ///< what is wrong
    std::string remedy;               ///< what to do
    std::vector<std::string> places;  ///< designators and terminals: `R2`, `U1:7`
};

/// How often a kind of fault is met on a bench, against the others; common practice, no source: legs without
/// contact, left out and turned parts come before parts that have failed inside.
double priorOf(FaultKind kind, circuit::PartKind part);

/// Every single fault that the circuit has room for, the board as drawn first. Swaps only of parts that
/// differ by more than a tenth, bridges only of pins that are not joined anyway.
std::vector<BoardFault> boardFaults(const circuit::Circuit& circuit, circuit::PartSet set,
                                    const BenchBoard& bench);

/// The board with the fault. Of a left out pin, the place is the leg itself; else places stay where they are
/// drawn.
BenchBoard withFault(const BenchBoard& bench, const BoardFault& fault);

} // namespace blinkwright::study
