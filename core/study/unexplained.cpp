#include "core/study/unexplained.h"

namespace blinkwright::study {

using circuit::Measured;

WhyMeasured whyMeasured(const Why& why, const MeasuredReadings& measured) {
    WhyMeasured m{measured.period_s, measured.duty, {}, {}};
    if (!why.simulated) return m;
    const auto less = [](const std::optional<Measured>& value, double simulated) {
        return value ? std::optional(Measured{value->value - simulated, value->uncertainty}) : std::nullopt;
    };
    m.unexplainedPeriod_s = less(m.period_s, why.simulated->period_s());
    m.unexplainedDuty = less(m.duty, why.simulated->duty());
    return m;
}

} // namespace blinkwright::study
