#include "core/study/screening.h"

#include "core/devices/laws.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace blinkwright::study {

namespace {

constexpr double electrolyticFrom = 1e-6; // [F]
constexpr std::size_t roomToSort = 8;     ///< times `most` entries are gathered before the worst are dropped

/// What a pair of resistors gives for each farad, delay left out; none where the capacitor cannot reach a
/// level.
struct PerFarad {
    double high = 0, low = 0; ///< [s/F]
    double up = 0, down = 0;  ///< time constants [s/F]
};

PerFarad perFarad(const ScreenLaws& laws, const Scheme& scheme, double r1, double r2) {
    const double v = laws.supply_V;
    const devices::TimerSheet& t = laws.timer;
    PerFarad p;
    // Pin 7 carries R1's current besides the capacitor's: it stands at an offset that does not move much.
    const double bottom = t.discharge_offset + t.discharge_resistance * v / r1;
    p.down = r2 + t.discharge_resistance;
    if (bottom < v / 3) p.low = p.down * std::log((2 * v / 3 - bottom) / (v / 3 - bottom));
    // At the level the input pair draws half of its current.
    const double charging = scheme.diode ? r1 : r1 + r2;
    double top = v - charging * (0.25 * t.threshold_current + t.discharge_leakage);
    if (scheme.diode) {
        const double current = 0.5 * v / r1;
        top -= devices::junctionVoltage(laws.diode, current) + laws.diode.seriesResistance * current;
    }
    p.up = charging;
    if (top > 2 * v / 3) p.high = charging * std::log((top - v / 3) / (top - 2 * v / 3));
    return p;
}

Phase phaseOf(const PerFarad& p, double c, double delay) {
    // Each phase runs on for the delay, and makes up for what the other ran on, at the slopes at the levels.
    return {c * p.high + delay * (1 + 0.5 * p.up / p.down), c * p.low + delay * (1 + 0.5 * p.down / p.up)};
}

} // namespace

double expectedLeakage(double farad, double volts) {
    return farad < electrolyticFrom ? 0 : 0.01 * farad * volts;
}

double stallMargin(const ScreenLaws& laws, double r1, double r2, double c) {
    const double charging = laws.supply_V / 3 / (r1 + r2);
    const double taken = laws.timer.threshold_current + expectedLeakage(c, 2 * laws.supply_V / 3);
    return taken > 0 ? charging / taken : 1e9;
}

double litMissOf(const Wish& wish, double lit) {
    return std::abs(lit - wish.lit) / std::min(wish.lit, 1 - wish.lit);
}

double missOf(const Wish& wish, double rate_Hz, double lit) {
    return std::abs(std::log(rate_Hz / wish.rate_Hz)) + litMissOf(wish, lit);
}

Phase formulaPhase(const ScreenLaws& laws, const Scheme& scheme, double r1, double r2, double c) {
    const PerFarad p = perFarad(laws, scheme, r1, r2);
    if (!(p.high > 0 && p.low > 0)) return {};
    return phaseOf(p, c, laws.timer.delay);
}

void keepBest(std::vector<Candidate>& best, std::size_t most) {
    if (best.size() <= most) return;
    const auto better = [](const Candidate& a, const Candidate& b) { return a.miss < b.miss; };
    std::nth_element(best.begin(), best.begin() + static_cast<std::ptrdiff_t>(most), best.end(), better);
    best.resize(most);
}

std::size_t screen(const Wish& wish, const PartValues& values, const Scheme& scheme, const ScreenLaws& laws,
                   std::size_t most, std::vector<Candidate>& best) {
    const auto better = [](const Candidate& a, const Candidate& b) { return a.miss < b.miss; };
    double worst = HUGE_VAL; // of the entries that would stay
    std::size_t judged = 0;
    for (const double r1 : values.r1) {
        for (const double r2 : values.r2) {
            if (r1 + r2 > laws.mostResistance_ohm) break;
            const PerFarad p = perFarad(laws, scheme, r1, r2);
            judged += values.c1.size();
            if (!(p.high > 0 && p.low > 0)) continue;
            for (const double c : values.c1) {
                const Phase phase = phaseOf(p, c, laws.timer.delay);
                const double period = phase.period_s();
                const double lit = (scheme.lampToRail ? phase.low_s : phase.high_s) / period;
                // |ln x| >= 1 - 1/x and >= 1 - x: a cheap bound spares most logarithms.
                const double off = period * wish.rate_Hz;
                if (std::max(1 - off, 1 - 1 / off) + litMissOf(wish, lit) >= worst) continue;
                const double miss = missOf(wish, 1 / period, lit);
                if (miss >= worst || stallMargin(laws, r1, r2, c) < leastStallMargin) continue;
                best.push_back({scheme, r1, r2, c, 1 / period, lit, miss});
                if (best.size() < roomToSort * most) continue;
                keepBest(best, most);
                worst = std::max_element(best.begin(), best.end(), better)->miss;
            }
        }
    }
    keepBest(best, most);
    std::sort(best.begin(), best.end(), better);
    return judged;
}

} // namespace blinkwright::study
