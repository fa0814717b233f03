#include "core/study/tolerance_box.h"

#include "core/devices/board.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace blinkwright::study {

using circuit::PartId;
using engine::Varied;
using engine::VariedKind;

namespace {

// A part that has lost all of its value would leave no equations; levels at 1.5 would leave no divider.
constexpr double leastFactor = 1e-3, mostLevels = 1.49;

} // namespace

circuit::Interval toleranceOf(const circuit::Circuit& circuit, circuit::PartSet set, PartId part) {
    const auto value = devices::effectiveValue(circuit, set, part, "tolerance");
    if (!value) return {0, 0};
    if (const auto* pair = std::get_if<circuit::Interval>(&*value)) return *pair;
    const auto* number = std::get_if<double>(&*value);
    return number ? circuit::Interval{-*number, *number} : circuit::Interval{0, 0};
}

ToleranceBox::ToleranceBox(const circuit::Circuit& circuit, circuit::PartSet set,
                           const devices::Board& board) {
    std::map<PartId, std::vector<Varied>> numbers;
    std::map<PartId, circuit::Interval> tolerances;
    const auto add = [&](const auto& list, std::initializer_list<VariedKind> kinds) {
        for (std::size_t k = 0; k < list.size(); ++k) {
            for (const VariedKind kind : kinds) numbers[list[k].id].push_back({kind, static_cast<int>(k)});
            tolerances[list[k].id] = toleranceOf(circuit, set, list[k].id);
        }
    };
    add(board.resistors, {VariedKind::resistor});
    add(board.variables, {VariedKind::variableUpper, VariedKind::variableLower});
    add(board.capacitors, {VariedKind::capacitor});
    for (std::size_t k = 0; k < board.timers.size(); ++k) {
        const double off = board.timers[k].sheet.timing_tolerance;
        numbers[board.timers[k].id].push_back({VariedKind::levels, static_cast<int>(k)});
        tolerances[board.timers[k].id] = {-off, off};
    }
    std::map<PartId, std::size_t> reelOf;
    for (std::size_t r = 0; r < circuit.reels.size(); ++r)
        for (const PartId part : circuit.reels[r]) reelOf[part] = r;
    std::map<std::size_t, std::size_t> dialOfReel;
    for (std::size_t place = 0; place < circuit.parts().size(); ++place) {
        const circuit::Part& part = circuit.parts()[place];
        const auto found = tolerances.find(part.id);
        if (found == tolerances.end() || !(found->second[1] > found->second[0])) continue;
        const auto [low, high] = found->second;
        Member member{part.ref, 0.5 * (low + high), 0.5 * (high - low), m_dials};
        if (const auto reel = reelOf.find(part.id); reel != reelOf.end())
            member.dial = dialOfReel.try_emplace(reel->second, m_dials).first->second;
        if (member.dial == m_dials) {
            ++m_dials;
            m_drawOf.push_back(place);
        }
        for (const Varied& one : numbers[part.id]) {
            m_varied.push_back(one);
            m_memberOf.push_back(m_members.size());
        }
        m_members.push_back(std::move(member));
    }
}

void ToleranceBox::factors(std::span<const double> dials, std::span<double> out) const {
    for (std::size_t v = 0; v < m_varied.size(); ++v) {
        const Member& member = m_members[m_memberOf[v]];
        out[v] = std::max(leastFactor, 1 + member.middle + member.half * dials[member.dial]);
        if (m_varied[v].kind == VariedKind::levels) out[v] = std::min(out[v], mostLevels);
    }
}

void ToleranceBox::factorsOff(std::size_t member, double deviation, std::span<double> out) const {
    for (std::size_t v = 0; v < m_varied.size(); ++v) out[v] = m_memberOf[v] == member ? 1 + deviation : 1;
}

void ToleranceBox::draw(const RandomDraws& draws, Spread kind, std::span<double> dials) const {
    for (std::size_t d = 0; d < m_dials; ++d) dials[d] = draws.spread(kind, m_drawOf[d]);
}

double deviationOf(Spread kind) {
    switch (kind) {
    case Spread::uniform:
        return 1 / std::sqrt(3.0);
    case Spread::triangular:
        return 1 / std::sqrt(6.0);
    case Spread::normal:
        break;
    }
    // Variance of a normal variable cut at three sigma: 1 - 6 phi(3) / (2 Phi(3) - 1).
    const double phi = std::exp(-4.5) * 0.39894228040143267794;
    return std::sqrt(1 - 6 * phi / std::erf(3 / std::sqrt(2.0))) / 3;
}

} // namespace blinkwright::study
