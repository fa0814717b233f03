// What a waveform is made of: for each step its span, the reduced equations in force, and the dense output.
#pragma once

#include "core/engine/stepper.h"

#include <memory>
#include <vector>

namespace blinkwright::engine::large {
class BlockWave;
}

namespace blinkwright::engine::detail {

struct WaveStep {
    double begin_s = 0;
    double length_s = 0;
    const Reduced* reduced = nullptr;
    StepKind kind = StepKind::exponential;
    std::size_t offset =
        0; ///< into numbers: the step's dense output; of an exponential one, u at both ends after it
    double end_s() const { return begin_s + length_s; }
};

struct WaveData {
    std::shared_ptr<Network> network; ///< owns what the steps point to
    std::vector<WaveStep> steps;
    std::vector<double> numbers;
    /// Of a board that was simulated block by block: all that its steps are made of. Their offset is their
    /// number there; they have no reduced equations and no numbers.
    std::shared_ptr<const large::BlockWave> blocks;
};

} // namespace blinkwright::engine::detail
