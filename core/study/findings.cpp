#include "core/study/findings.h"

#include "core/study/findings_detail.h"

#include <algorithm>
#include <queue>
#include <tuple>

namespace blinkwright::study {

std::string_view name(Severity severity) {
    switch (severity) {
    case Severity::fault:
        return "fault";
    case Severity::overstress:
        return "overstress";
    case Severity::doubt:
        return "doubt";
    case Severity::caution:
        return "caution";
    case Severity::note:
        return "note";
    }
    return "";
}

namespace detail {

Scene::Scene(const devices::Board& theBoard, const Readings* theReadings)
    : board(theBoard), readings(theReadings), wiring(theBoard) {
    for (const auto& timer : board.timers) {
        TimerNodes nodes;
        for (std::size_t pin = 0; pin < 8; ++pin) nodes.pins[pin] = wiring.at(timer.pins[pin]);
        timers.push_back(nodes);
    }
    for (const auto& supply : board.supplies) {
        poles.insert(wiring.at(supply.plus));
        poles.insert(wiring.at(supply.minus));
    }
    poles.erase(devices::open);
}

const PartReading* Scene::partReading(std::string_view ref) const {
    if (!readings) return nullptr;
    const auto at = std::find_if(readings->parts.begin(), readings->parts.end(),
                                 [&](const PartReading& part) { return part.ref == ref; });
    return at == readings->parts.end() ? nullptr : &*at;
}

std::map<Node, double> Scene::potentialsFrom(Node reference) const {
    struct Reached {
        double volts;
        bool throughSupply;
    };
    std::map<Node, Reached> reached;
    using Ahead = std::tuple<double, Node, double, bool>; // resistance so far, node, volts, through a supply
    std::priority_queue<Ahead, std::vector<Ahead>, std::greater<>> ahead;
    if (reference != devices::open) ahead.emplace(0.0, reference, 0.0, false);
    while (!ahead.empty()) {
        const auto [resistance, node, volts, through] = ahead.top();
        ahead.pop();
        if (!reached.try_emplace(node, Reached{volts, through}).second) continue;
        for (const std::size_t k : wiring.elementsAt(node)) {
            const Element& e = wiring.elements()[k];
            const Node next = e.other(node);
            if (e.kind == ElementKind::capacitance || reached.contains(next)) continue;
            const bool supply = e.kind == ElementKind::supply;
            const double rise = supply ? board.supplies[e.index].voltage * (e.a == node ? -1 : 1) : 0;
            ahead.emplace(resistance + e.value, next, volts + rise, through || supply);
        }
    }
    std::map<Node, double> potentials;
    for (const auto& [node, at] : reached) {
        if (at.throughSupply || node == reference) potentials[node] = at.volts;
    }
    return potentials;
}

std::optional<double> Scene::supplyVoltage(std::size_t timer) const {
    const auto potentials = potentialsFrom(timers[timer][circuit::timerPin::ground]);
    const auto at = potentials.find(timers[timer][circuit::timerPin::supply]);
    if (at == potentials.end()) return std::nullopt;
    return at->second;
}

} // namespace detail

std::vector<Finding> findingsOf(const devices::Board& board, const Readings* readings) {
    std::vector<Finding> findings;
    const detail::Scene scene(board, readings);
    detail::wiringFindings(scene, findings);
    detail::timingFindings(scene, findings);
    detail::lampFindings(scene, findings);
    detail::pairFindings(scene, findings);
    detail::stressFindings(scene, findings);
    detail::batteryFindings(scene, findings);
    for (Finding& finding : findings)
        if (finding.source.empty()) finding.source = wording::inWords("follows from the wiring");
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding& a, const Finding& b) { return a.severity < b.severity; });
    return findings;
}

} // namespace blinkwright::study
