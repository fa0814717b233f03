// All that a lab sheet tells of a circuit, computed: studies of one set or both, measurements, and where
// asked for the spread and the causes of the difference.
//
//   Result<LabFacts> facts = labFacts(circuit, {.why = true});
//   facts.value().a.readings;  facts.value().measured.period_s;
#pragma once

#include "core/study/measured_readings.h"
#include "core/study/spread.h"
#include "core/study/study.h"
#include "core/study/why.h"

#include <cstdint>
#include <memory>

namespace blinkwright::study {

enum class SheetSets { both, onlyA, onlyB };

struct LabFactsRequest {
    SheetSets sets = SheetSets::both; ///< Set B beside Set A only where they differ
    bool why = true;
    bool spread = true;
    std::optional<std::uint64_t> variant = {}; ///< seed of number variants; then it is one set alone
    StudyRequest run = {};                     ///< flashes, begin and accuracy of the curves
    long boards = 10000;                       ///< of the spread
    const std::atomic<bool>* cancel = nullptr;
    std::atomic<long>* done = nullptr; ///< counts boards of the spread
};

struct LabFacts {
    circuit::Circuit circuit; ///< what the sheet calls its first set stands as Set A
    std::string firstName; ///< `Set A`, marked for translation; `Set B` where that alone was asked for; empty
                           ///< where there is but one
    Study a;
    std::optional<Study> b;
    std::optional<Why> why;
    std::optional<SpreadOutcome> spread;
    MeasuredReadings measured;
    std::optional<std::uint64_t> variant;
    std::vector<std::string> changed; ///< designators that the variant has other values of
    bool cancelled = false;
};

/// @return a fault where no board can be made or there is no variant; a circuit that does not blink gives
/// facts that say so.
Result<LabFacts> labFacts(const circuit::Circuit& circuit, const LabFactsRequest& request);

} // namespace blinkwright::study
