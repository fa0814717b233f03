// One study of one set: run, settled state, curves, readings, findings. The window's worker and the headless
// verbs both call this and nothing else.
//
//   StudyRequest request; request.run.flashes = 6;
//   Study s = study(circuit, PartSet::A, request);
//   s.readings.verdict; s.curves.time_s; s.findings;
#pragma once

#include "core/circuit/circuit.h"
#include "core/engine/curves.h"
#include "core/engine/transient.h"
#include "core/study/eye.h"
#include "core/study/findings.h"
#include "core/study/readings.h"

namespace blinkwright::study {

struct StudyRequest {
    int flashes = 6;
    circuit::Begin begin = circuit::Begin::powerOn; ///< what the curves and switchings show
    double accuracy = 1e-6;
    const std::atomic<bool>* cancel = nullptr;
};

struct Study {
    devices::Board board;
    engine::Waveform wave; ///< of the span shown: from power-on, or settled periods
    engine::Curves curves;
    Readings readings;
    std::vector<EyeReading> eye; ///< of each lamp; empty where nothing blinks evenly
    std::vector<Finding> findings;
    bool cancelled = false;
};

/// @return a fault only where no board can be made; a circuit that cannot blink is a study with that verdict.
Result<Study> study(const circuit::Circuit& circuit, circuit::PartSet set, const StudyRequest& request);

} // namespace blinkwright::study
