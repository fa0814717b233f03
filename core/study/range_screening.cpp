#include "core/study/range_screening.h"

#include "core/units/decimal.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace blinkwright::study {

namespace {

/// The formula is some per cent off: the ends are aimed at from beyond.
constexpr double beyond = 1.01;
/// What a shortfall at an end costs, against an excess.
constexpr double shortfall = 10;
/// The stretch of the variable resistor over what the range needs: outside of this it reaches too little, or
/// sets the rate too coarsely.
constexpr double leastStretch = 0.97, mostStretch = 2.5;

constexpr double mostVariable_ohm = 2.2e6;

struct Ends {
    double slow_Hz, fast_Hz;
};

double missAt(double ratio) { ///< above 1: reached
    return ratio >= 1 ? std::log(ratio) : -shortfall * std::log(ratio);
}

class Search {
  public:
    Search(const Wish& wish, const PartValues& values, const Scheme& scheme, const ScreenLaws& laws)
        : m_wish(wish), m_values(values), m_scheme(scheme),
          m_laws(laws), m_aim{wish.slowest_Hz() / beyond, wish.fastest_Hz() * beyond} {}

    /// What the variable resistor must add to R2 at a capacitor, by the plain law [ohm].
    double neededStretch(double c) const {
        const double ways = m_scheme.diode ? 1 : 2; // R2 counts in one phase, or in both
        return (1 / m_wish.slowest_Hz() - 1 / m_wish.fastest_Hz()) / (ways * std::numbers::ln2 * c);
    }

    void judge(double r1, double variable, double c, std::vector<Candidate>& best) const {
        const auto rate = [&](double r2) {
            const double period = formulaPhase(m_laws, m_scheme, r1, r2, c).period_s();
            return period > 0 ? 1 / period : 0.0;
        };
        // The largest end stop that still reaches the fast end, else the smallest there is.
        auto stop = std::partition_point(m_values.r2.begin(), m_values.r2.end(),
                                         [&](double r2) { return rate(r2) >= m_aim.fast_Hz; });
        if (stop != m_values.r2.begin()) --stop;
        const double most = *stop + variable;
        if (r1 + most > m_laws.mostResistance_ohm || stallMargin(m_laws, r1, most, c) < leastStallMargin)
            return;
        const Phase slow = formulaPhase(m_laws, m_scheme, r1, most, c);
        const Phase fast = formulaPhase(m_laws, m_scheme, r1, *stop, c);
        if (!(slow.high_s > 0 && slow.low_s > 0 && fast.high_s > 0 && fast.low_s > 0)) return;
        const auto lit = [&](const Phase& phase) {
            return (m_scheme.lampToRail ? phase.low_s : phase.high_s) / phase.period_s();
        };
        const double miss = missAt(m_aim.slow_Hz * slow.period_s()) + missAt(fast.rate_Hz() / m_aim.fast_Hz) +
                            std::max(litMissOf(m_wish, lit(slow)), litMissOf(m_wish, lit(fast)));
        best.push_back({m_scheme, r1, *stop, c, slow.rate_Hz(), lit(slow), miss, variable});
    }

  private:
    const Wish& m_wish;
    const PartValues& m_values;
    const Scheme& m_scheme;
    const ScreenLaws& m_laws;
    const Ends m_aim;
};

} // namespace

std::vector<double> preferredVariables() {
    std::vector<double> all;
    for (int exponent = 2; exponent <= 5; ++exponent)
        for (const int figures : {10, 20, 22, 47, 50})
            if (const double ohm = units::decimalValue(figures, exponent); ohm <= mostVariable_ohm)
                all.push_back(ohm);
    return all;
}

std::size_t screenRange(const Wish& wish, const PartValues& values, const std::vector<double>& variables,
                        const Scheme& scheme, const ScreenLaws& laws, std::size_t most,
                        std::vector<Candidate>& best) {
    if (values.r2.empty()) return 0;
    const Search search(wish, values, scheme, laws);
    constexpr std::size_t roomToSort = 8;
    std::size_t judged = 0;
    const auto judgeAll = [&](double least, double widest) {
        for (const double c : values.c1) {
            const double needed = search.neededStretch(c);
            for (const double variable : variables) {
                if (variable < least * needed || variable > widest * needed) continue;
                for (const double r1 : values.r1) {
                    if (r1 + variable > laws.mostResistance_ohm) break;
                    ++judged;
                    search.judge(r1, variable, c, best);
                    if (best.size() >= roomToSort * most) keepBest(best, most);
                }
            }
        }
    };
    const std::size_t before = best.size();
    judgeAll(leastStretch, mostStretch);
    if (best.size() == before) judgeAll(0, HUGE_VAL);
    keepBest(best, most);
    std::ranges::sort(best, {}, &Candidate::miss);
    return judged;
}

} // namespace blinkwright::study
