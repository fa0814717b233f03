#include "core/engine/curves.h"

#include <algorithm>

namespace blinkwright::engine {

Curves curvesOf(const devices::Board& board, const Waveform& wave, int inside, double until_s) {
    namespace pins = circuit::timerPin;
    Curves curves;
    if (wave.empty() || board.timers.empty()) return curves;
    auto knots = wave.knots(inside);
    if (wave.time(knots.back()) > until_s) {
        const auto beyond = std::find_if(knots.begin(), knots.end(),
                                         [&](const Waveform::Knot& k) { return wave.time(k) > until_s; });
        knots.erase(beyond, knots.end());
        knots.push_back(wave.find(until_s, Side::before));
    }
    const auto& timer = board.timers.front();
    devices::Node timing = timer.pins[pins::threshold];
    if (timing == devices::open) timing = timer.pins[pins::trigger];

    std::vector<std::size_t> lamps;
    for (std::size_t k = 0; k < board.junctions.size(); ++k)
        if (board.junctions[k].lamp) {
            lamps.push_back(k);
            const auto& part = board.junctions[k];
            curves.lamps.push_back({part.id, part.ref, part.colour, {}});
            curves.lamps.back().current_A.reserve(knots.size());
        }
    for (auto* v :
         {&curves.time_s, &curves.output_V, &curves.capacitor_V, &curves.upperLevel_V, &curves.lowerLevel_V})
        v->reserve(knots.size());
    Instant at;
    for (const auto& knot : knots) {
        wave.instant(knot, at);
        const auto& t = at.timers.front();
        curves.time_s.push_back(wave.time(knot));
        curves.output_V.push_back(t.output_V);
        curves.capacitor_V.push_back(timing == devices::open ? 0.0
                                                             : at.node_V[static_cast<std::size_t>(timing)]);
        curves.upperLevel_V.push_back(t.control_V);
        curves.lowerLevel_V.push_back(t.triggerLevel_V());
        for (std::size_t k = 0; k < lamps.size(); ++k)
            curves.lamps[k].current_A.push_back(at.junction_A[lamps[k]]);
    }
    return curves;
}

Moment momentOf(const Curves& curves, double time_s) {
    Moment moment;
    moment.time_s = time_s;
    moment.lamps_A.assign(curves.lamps.size(), 0.0);
    if (curves.time_s.empty()) return moment;
    const auto& t = curves.time_s;
    // The last point at or before the time: at a switching, the one just after it.
    auto after = static_cast<std::size_t>(std::upper_bound(t.begin(), t.end(), time_s) - t.begin());
    const std::size_t k = after == 0 ? 0 : after - 1;
    after = std::min(after, t.size() - 1);
    const double span = t[after] - t[k];
    const double share = span > 0 ? std::clamp((time_s - t[k]) / span, 0.0, 1.0) : 0.0;
    const auto value = [&](const std::vector<double>& v) { return v[k] + share * (v[after] - v[k]); };
    moment.output_V = value(curves.output_V);
    moment.capacitor_V = value(curves.capacitor_V);
    moment.upperLevel_V = value(curves.upperLevel_V);
    moment.lowerLevel_V = value(curves.lowerLevel_V);
    for (std::size_t k2 = 0; k2 < curves.lamps.size(); ++k2)
        moment.lamps_A[k2] = value(curves.lamps[k2].current_A);
    return moment;
}

Curves within(const Curves& curves, double begin_s, double end_s) {
    Curves part;
    for (const LampTrace& lamp : curves.lamps) part.lamps.push_back({lamp.id, lamp.ref, lamp.colour, {}});
    if (curves.time_s.empty()) return part;
    const double begin = std::max(begin_s, curves.time_s.front()),
                 end = std::min(end_s, curves.time_s.back());
    if (begin > end) return part;
    const auto add = [&](const Moment& at) {
        part.time_s.push_back(at.time_s);
        part.output_V.push_back(at.output_V);
        part.capacitor_V.push_back(at.capacitor_V);
        part.upperLevel_V.push_back(at.upperLevel_V);
        part.lowerLevel_V.push_back(at.lowerLevel_V);
        for (std::size_t l = 0; l < part.lamps.size(); ++l) part.lamps[l].current_A.push_back(at.lamps_A[l]);
    };
    const auto pointAt = [&](std::size_t k) {
        Moment at{curves.time_s[k],       curves.output_V[k],     curves.capacitor_V[k],
                  curves.upperLevel_V[k], curves.lowerLevel_V[k], {}};
        for (const LampTrace& lamp : curves.lamps) at.lamps_A.push_back(lamp.current_A[k]);
        return at;
    };
    const auto first = std::ranges::lower_bound(curves.time_s, begin);
    const auto last = std::ranges::upper_bound(curves.time_s, end);
    if (first == curves.time_s.end() || *first > begin) add(momentOf(curves, begin));
    for (auto t = first; t < last; ++t) add(pointAt(static_cast<std::size_t>(t - curves.time_s.begin())));
    if (part.time_s.back() < end) add(momentOf(curves, end));
    for (const double t : curves.switchings_s)
        if (t >= begin && t <= end) part.switchings_s.push_back(t);
    return part;
}

} // namespace blinkwright::engine
