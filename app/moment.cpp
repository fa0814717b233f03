#include "app/moment.h"

#include <algorithm>

namespace blinkwright::app {

namespace {

/// A lamp counts as lit from 5 % of its rated current on, as in the readings.
constexpr double litShare = 0.05;

double ratedCurrent(const devices::Board& board, circuit::PartId lamp) {
    const auto found = std::ranges::find(board.junctions, lamp, &devices::Junction::id);
    return found == board.junctions.end() ? 0 : found->ratedCurrent;
}

/// Integral over [from, to] of what is linear between points.
double integral(const std::vector<double>& time_s, const std::vector<double>& value, double from_s,
                double to_s) {
    double sum = 0;
    const auto first = std::upper_bound(time_s.begin(), time_s.end(), from_s);
    auto k = static_cast<std::size_t>(std::max(first - time_s.begin(), std::ptrdiff_t{1}));
    for (; k < time_s.size() && time_s[k - 1] < to_s; ++k) {
        const double begin = std::max(from_s, time_s[k - 1]), end = std::min(to_s, time_s[k]);
        if (end <= begin) continue;
        const double slope = (value[k] - value[k - 1]) / (time_s[k] - time_s[k - 1]);
        const double middle = value[k - 1] + slope * ((begin + end) / 2 - time_s[k - 1]);
        sum += middle * (end - begin);
    }
    return sum;
}

} // namespace

std::map<circuit::PartId, double> glowAt(const study::Study& study, double time_s) {
    std::map<circuit::PartId, double> glow;
    if (study.curves.time_s.empty()) return glow;
    const engine::Moment moment = engine::momentOf(study.curves, time_s);
    for (std::size_t k = 0; k < study.curves.lamps.size() && k < moment.lamps_A.size(); ++k) {
        const engine::LampTrace& lamp = study.curves.lamps[k];
        const double rated = ratedCurrent(study.board, lamp.id);
        glow[lamp.id] = rated > 0 ? std::clamp(moment.lamps_A[k] / rated, 0.0, 1.0) : 0.0;
    }
    return glow;
}

std::map<circuit::PartId, double> meanGlow(const study::Study& study, double from_s, double to_s) {
    const std::vector<double>& time_s = study.curves.time_s;
    if (time_s.empty() || !(to_s > from_s)) return glowAt(study, to_s);
    std::map<circuit::PartId, double> glow;
    for (const engine::LampTrace& lamp : study.curves.lamps) {
        const double rated = ratedCurrent(study.board, lamp.id);
        const double mean = integral(time_s, lamp.current_A, from_s, to_s) / (to_s - from_s);
        glow[lamp.id] = rated > 0 ? std::clamp(mean / rated, 0.0, 1.0) : 0.0;
    }
    return glow;
}

double tellingMoment(const study::Study& study) {
    const std::vector<double>& switchings = study.curves.switchings_s;
    for (std::size_t k = 0; k + 1 < switchings.size(); ++k) {
        const double middle = (switchings[k] + switchings[k + 1]) / 2;
        for (const auto& [lamp, share] : glowAt(study, middle))
            if (share > litShare) return middle;
    }
    return study.curves.time_s.empty() ? 0 : study.curves.time_s.front();
}

} // namespace blinkwright::app
