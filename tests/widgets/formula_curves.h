// Curves of an ideal astable from its closed forms, for tests that need something to draw and no engine.
#pragma once

#include "core/engine/curves.h"

#include <cmath>
#include <memory>

namespace blinkwright::test {

struct FormulaBlinker {
    double supply_V = 6;
    double high_s = 0.54, low_s = 0.47; ///< settled phases
    double lamp_A = 0.0105;
    int cycles = 6;
    int pointsAPhase = 120;
    bool pair = false; ///< a second lamp, taking turns
    const char* second = "green";
};

/// The capacitor charges from 0, then swings between a third and two thirds of the supply along exponentials.
inline std::shared_ptr<engine::Curves> formulaCurves(const FormulaBlinker& b) {
    auto c = std::make_shared<engine::Curves>();
    c->lamps.push_back({{1}, "D1", "red", {}});
    if (b.pair) c->lamps.push_back({{2}, "D2", b.second, {}});
    double t = 0;
    const double tauHigh = b.high_s / std::log(2.0), tauLow = b.low_s / std::log(2.0);
    for (int phase = 0; phase < 2 * b.cycles; ++phase) {
        const bool high = phase % 2 == 0;
        const double start = phase == 0 ? 0 : high ? b.supply_V / 3 : 2 * b.supply_V / 3;
        const double target = high ? b.supply_V : 0;
        const double tau = high ? tauHigh : tauLow;
        const double length = phase == 0 ? tau * std::log(3.0) : tau * std::log(2.0);
        for (int k = 0; k <= b.pointsAPhase; ++k) {
            const double s = length * k / b.pointsAPhase;
            c->time_s.push_back(t + s);
            c->output_V.push_back(high ? b.supply_V - 1.4 : 0.08);
            c->capacitor_V.push_back(target + (start - target) * std::exp(-s / tau));
            c->upperLevel_V.push_back(2 * b.supply_V / 3);
            c->lowerLevel_V.push_back(b.supply_V / 3);
            c->lamps[0].current_A.push_back(high ? b.lamp_A * (0.9 + 0.1 * std::exp(-s / 0.05)) : -4e-9);
            if (b.pair) c->lamps[1].current_A.push_back(high ? 0 : 0.8 * b.lamp_A * std::exp(-s / 0.6));
        }
        t += length;
        c->switchings_s.push_back(t);
    }
    return c;
}

} // namespace blinkwright::test
