// Why a board differs from the textbook: from the formula's period and duty cycle to the simulated ones,
// cause by cause. Each step is the textbook circuit with that cause alone, less the textbook circuit, both
// simulated.
//
//   Why w = why(board, {});
//   w.steps[0].imperfection;  w.steps[0].change->period_s;   // the discharge pin alone
//   w.textbook->period_s() + (all steps) + w.interaction->period_s == w.simulated->period_s()
#pragma once

#include "core/study/idealised.h"
#include "core/study/phase.h"

#include <atomic>
#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

struct WhyRequest {
    double accuracy = 1e-9; ///< of every simulated period; a delay is a millionth of one and less
    int threads = 2;        ///< at least 1
    const std::atomic<bool>* cancel = nullptr;
};

/// How much longer the period and how much larger the duty cycle is.
struct WhyChange {
    double period_s = 0;
    double duty = 0;
};
struct WhyStep {
    Imperfection imperfection{};
    std::optional<WhyChange> change; ///< nothing where the circuit would not blink with this alone
};

struct Why {
    std::optional<Phase> textbook;  ///< by the formula; nothing where the wiring has none
    std::optional<Phase> simulated; ///< settled; nothing where it does not blink
    std::vector<WhyStep> steps;
    std::optional<WhyChange> interaction; ///< what the steps leave; nothing without both ends
    std::string reason;                   ///< why an end is missing, a sentence; else empty
};

/// The series resistance of the timing capacitor is a step of its own only where it moves the period by more
/// than this share; below, it is left in the interaction.
inline constexpr double worthNaming = 1e-4;

Why why(const devices::Board& board, const WhyRequest& request);

} // namespace blinkwright::study
