// From what is seen and measured on a board that does not do what it should, to what is likely wrong with it.
// Every single fault is simulated, and each is weighed by how well it explains what was observed.
//
//   FaultLibrary library = faultLibrary(circuit, set, {.threads = 2}).value();   // simulates
//   Observation seen{.symptoms = {Symptom::alwaysLit}, .readings = {{6, Quantity::mean, 0.02}}};
//   Diagnosis d = diagnose(library, seen);                                       // compares
//   library.faults[d.suspects[0].faults[0]].sentence    // "R2 is missing, or one of its legs ..."
//   d.next                                              // what to measure next
// Faults that come two at a time, and what no circuit shows (a wire that breaks when it is touched), are not
// among them.
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/behaviour.h"
#include "core/study/board_faults.h"
#include "core/study/symptom_signs.h"

#include <atomic>
#include <optional>
#include <set>
#include <span>
#include <vector>

namespace blinkwright::study {

struct SymptomsRequest {
    Instrument instrument = dcMeter;
    int threads = 2;
    double accuracy = 1e-4;
    const std::atomic<bool>* cancel = nullptr;
    std::atomic<long>* done = nullptr;  ///< counts boards
    std::atomic<long>* total = nullptr; ///< how many there will be
};

/// One fault, simulated.
struct FaultCase {
    Behaviour behaviour;
    Signs signs; ///< what of it is seen
};

struct FaultLibrary {
    std::vector<ReadingPlace> places;
    std::vector<BoardFault> faults; ///< the first: none
    std::vector<FaultCase> cases;   ///< by fault
    std::vector<std::size_t> alike; ///< by fault: the first one that no reading here could tell it from
    double supply_V = 0;
    double drift = 0; ///< standard deviation of the rate by the tolerances of the timing parts, relative
    bool cancelled = false;
};

/// @return a fault only where no board can be made.
Result<FaultLibrary> faultLibrary(const circuit::Circuit& circuit, circuit::PartSet set,
                                  const SymptomsRequest& request);
/// The same for given faults of a bench board; what faultLibrary() and its benchmark are made of.
std::vector<FaultCase> simulateFaults(const BenchBoard& bench, std::span<const BoardFault> faults,
                                      const SymptomsRequest& request);

/// One reading of a meter at a place.
struct PlaceReading {
    std::size_t place = 0; ///< in FaultLibrary::places
    Quantity quantity = Quantity::mean;
    double value = 0; ///< [V], [A]
};

struct Observation {
    std::set<Symptom> symptoms = {};
    std::optional<double> rate_Hz = {};
    std::vector<PlaceReading> readings = {};
    /// Of the meter: relative, of the reading; as makers of simple ones state it (from memory). One step of
    /// the last digit of three comes on top.
    double meterAccuracy = 0.008;
};

/// What to measure in order to tell suspects apart.
struct Telling {
    std::size_t place = 0;
    Quantity quantity = Quantity::mean;
    double power = 0; ///< 0: tells nothing; 1: tells all apart
};

/// A fault, with all that look the same from outside.
struct Suspect {
    std::vector<std::size_t> faults; ///< in FaultLibrary::faults, the likeliest first
    double share = 0;                ///< of the weight of all; not a probability of anything outside the list
    std::optional<Telling> tell;     ///< what tells it from the others at the top
};

struct Diagnosis {
    std::vector<Suspect> suspects; ///< the likeliest first; all of them
    std::optional<Telling> next;   ///< what tells most among those at the top
};

Diagnosis diagnose(const FaultLibrary& library, const Observation& seen);

/// The standard deviation that a reading has about what is simulated: meter, tolerances of the parts, supply,
/// and what the device laws leave open. [V], [A]
double readingSpread(const FaultLibrary& library, std::size_t fault, const PlaceReading& at,
                     double meterAccuracy);

} // namespace blinkwright::study
