// Band: between which limits the curves of boards with random parts lie, at each moment of some settled
// cycles, or from power-on.
//
//   Band b = band(circuit, PartSet::A, {.boards = 200, .seed = 1}).value();
//   b.capacitor_V.p5[k];  b.capacitor_V.nominal[k];  b.lamps[0].p95[k]      // at b.time_s[k]
// Settled, t = 0 is a rise of the first timer's output on every board. The boards are those of spread() with
// the same seed and draw.
#pragma once

#include "core/base/random.h"
#include "core/circuit/circuit.h"

#include <atomic>
#include <cstdint>
#include <string>
#include <vector>

namespace blinkwright::study {

struct BandRequest {
    int boards = 200; ///< at least 2
    std::uint64_t seed = 1;
    Spread draw = Spread::uniform;
    int points = 480; ///< moments, at least 2
    circuit::Begin begin = circuit::Begin::settled;
    double span_s = 0; ///< of time, from 0 on; 0: two settled cycles of the nominal board
    int threads = 2;   ///< results do not depend on it
    const std::atomic<bool>* cancel = nullptr;
};

/// One curve, each list by moment.
struct BandCurve {
    std::string ref;    ///< of a lamp
    std::string colour; ///< of a lamp
    std::vector<double> nominal = {}, p5 = {}, p95 = {};
};

struct Band {
    std::vector<double> time_s;
    BandCurve output_V;           ///< first timer's pin 3 against 0 V
    BandCurve capacitor_V;        ///< first timer's pin 6 (pin 2 if 6 is open) against 0 V
    std::vector<BandCurve> lamps; ///< currents [A], in file order
    int blinking = 0;             ///< boards that the band is of
    bool cancelled = false;       ///< what is here then is not to be used
    std::string reason;           ///< why the nominal board does not blink, a sentence; else empty
};

Result<Band> band(const circuit::Circuit& circuit, circuit::PartSet set, const BandRequest& request);

} // namespace blinkwright::study
