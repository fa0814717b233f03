// What a waveform is made of: for each step its span, the reduced equations in force, and the dense output.
#pragma once

#include "core/engine/network.h"

#include <memory>
#include <vector>

namespace blinkwright::engine::detail {

struct WaveStep {
    double begin_s = 0;
    double length_s = 0;
    const Reduced* reduced = nullptr;
    std::size_t offset = 0; ///< into numbers: start, end, p, q, each y then u
    double end_s() const { return begin_s + length_s; }
};

struct WaveData {
    std::shared_ptr<Network> network; ///< owns what the steps point to
    std::vector<WaveStep> steps;
    std::vector<double> numbers;
};

/// y and u at a share of a step.
void denseAt(const WaveData& data, const WaveStep& step, double share, std::vector<double>& y,
             std::vector<double>& u);

} // namespace blinkwright::engine::detail
