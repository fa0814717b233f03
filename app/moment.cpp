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
