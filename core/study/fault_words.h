// A fault of a board in words: what is wrong, what to do, where to look.
//
//   const FaultWords words(circuit, PartSet::A);
//   words.describe(fault);            // fills in sentence, remedy and places
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/board_faults.h"

#include <map>

namespace blinkwright::study {

class FaultWords {
  public:
    FaultWords(const circuit::Circuit& circuit, circuit::PartSet set);
    void describe(BoardFault& fault) const;

  private:
    void ofTimer(BoardFault& fault, const circuit::Part& part) const;
    void ofSupply(BoardFault& fault, const circuit::Part& part) const;
    void ofPart(BoardFault& fault, const circuit::Part& part) const;
    std::string decadeSentence(const circuit::Part& part, double factor) const;
    /// `R1 and R2`: what a pin is to be joined with, or `nothing else`.
    std::string othersAt(circuit::PinRef pin) const;
    std::string belongs(circuit::PartId part) const;

    const circuit::Circuit& m_circuit;
    const circuit::PartSet m_set;
    std::map<circuit::PartId, std::string> m_steps; ///< of the wiring list
};

} // namespace blinkwright::study
