#include "core/study/net_voltages.h"

#include "core/study/ground_reach.h"

#include <cmath>

namespace blinkwright::study {

std::map<circuit::NetId, double> netVoltages(const Study& study, double time_s) {
    std::map<circuit::NetId, double> voltages;
    if (study.wave.empty() || !std::isfinite(time_s)) return voltages;
    engine::Instant at;
    study.wave.instant(time_s, engine::Side::after, at);
    const std::vector<bool> grounded = reachedFromGround(study.board);
    for (std::size_t k = 0; k < at.node_V.size() && k < grounded.size(); ++k)
        if (grounded[k] && std::isfinite(at.node_V[k])) voltages[study.board.nodeNets[k]] = at.node_V[k];
    return voltages;
}

} // namespace blinkwright::study
