#include "core/study/record_overlay.h"

#include <algorithm>

namespace blinkwright::study {

namespace {

/// The first crossing of the middle of the output's range in one direction, from the first switching on: at
/// power-on the output comes up with the supply, which is no flash's rise.
std::optional<double> firstCrossing(const engine::Curves& curves, bool rise) {
    const std::vector<double>& output = curves.output_V;
    if (output.size() < 2) return {};
    const auto [least, most] = std::ranges::minmax_element(output);
    const double middle = (*least + *most) / 2;
    const double from_s = curves.switchings_s.empty() ? curves.time_s.front() : curves.switchings_s.front();
    auto first =
        static_cast<std::size_t>(std::ranges::lower_bound(curves.time_s, from_s) - curves.time_s.begin());
    // A switching stands twice, before and after: what comes before the first of them is not asked about.
    if (first < output.size() && curves.time_s[first] == from_s) ++first;
    for (std::size_t k = std::max<std::size_t>(1, first); k < output.size(); ++k) {
        const bool before = output[k - 1] > middle, after = output[k] > middle;
        if (before == after || after != rise) continue;
        const double share = (middle - output[k - 1]) / (output[k] - output[k - 1]);
        return curves.time_s[k - 1] + share * (curves.time_s[k] - curves.time_s[k - 1]);
    }
    return {};
}

} // namespace

std::optional<double> recordShift(const circuit::Record& record, const engine::Curves& curves,
                                  bool curvesFromPowerOn) {
    if (curves.time_s.empty()) return {};
    if (record.fromPowerOn && curvesFromPowerOn) return 0.0;
    const std::vector<double>& own = record.switchings_s;
    if (own.empty()) return {};
    const std::size_t at = record.firstRises || own.size() < 2 ? 0 : 1;
    const bool rise = record.firstRises || at == 1;
    if (rise && !curvesFromPowerOn) return curves.time_s.front() - own[at];
    const std::optional<double> theirs = firstCrossing(curves, rise);
    return theirs ? std::optional(*theirs - own[at]) : std::nullopt;
}

} // namespace blinkwright::study
