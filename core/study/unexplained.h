// What the measured board differs from the simulated one: the last step of the bridge of why.h, which nobody
// has an explanation for yet.
//
//   WhyMeasured m = whyMeasured(why, measuredReadings(circuit));
//   m.period_s->value;  m.unexplainedPeriod_s->value;   // measured, and that minus simulated
#pragma once

#include "core/study/measured_readings.h"
#include "core/study/why.h"

namespace blinkwright::study {

struct WhyMeasured {
    std::optional<circuit::Measured> period_s, duty;
    /// Measured minus simulated, with the uncertainty of the measurement; nothing without both.
    std::optional<circuit::Measured> unexplainedPeriod_s, unexplainedDuty;
    bool empty() const { return !period_s && !duty; }
};

WhyMeasured whyMeasured(const Why& why, const MeasuredReadings& measured);

} // namespace blinkwright::study
