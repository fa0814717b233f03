// Findings on two lamps side by side in opposite directions behind a coupling capacitor.
#include "core/study/findings_detail.h"

#include "core/devices/laws.h"
#include "core/study/figures.h"
#include "core/study/output_levels.h"

#include <algorithm>

namespace blinkwright::study::detail {

namespace {

using units::Unit;
namespace pins = circuit::timerPin;

constexpr double wellLit = 0.1; ///< of the rated current; common practice, no source

/// Voltage of a lamp in service: at half of its rated current.
double serviceVoltage(const devices::Junction& lamp) {
    const double current = 0.5 * lamp.ratedCurrent;
    return devices::junctionVoltage(lamp.law, current) + lamp.law.seriesResistance * current;
}

/// Nodes within reach of one end of a pair, not through the pair nor what lies across it.
struct Reach {
    std::set<Node> direct;           ///< through anything but capacitors
    std::set<Node> throughCapacitor; ///< through one capacitor and on
};
Reach reachFrom(const Scene& scene, Node from, Node otherEnd, const std::set<Node>& stops) {
    Reach reach;
    struct Ahead {
        Node node;
        bool capacitor;
    };
    std::vector<Ahead> ahead{{from, false}};
    reach.direct.insert(from);
    while (!ahead.empty()) {
        const auto [node, capacitor] = ahead.back();
        ahead.pop_back();
        if (stops.contains(node)) continue;
        for (const std::size_t k : scene.wiring.elementsAt(node)) {
            const Element& e = scene.wiring.elements()[k];
            const Node next = e.other(node);
            if (next == otherEnd || next == node) continue;
            const bool through = capacitor || e.kind == ElementKind::capacitance;
            if ((through ? reach.throughCapacitor : reach.direct).insert(next).second)
                ahead.push_back({next, through});
        }
    }
    return reach;
}

/// The timer whose output drives a pair through a capacitor alone; nothing where something else does.
std::optional<std::size_t> coupledTimer(const Scene& scene, Node one, Node other) {
    std::set<Node> stops = scene.poles;
    for (const auto& timer : scene.timers)
        for (const int number : {pins::ground, pins::supply, pins::output}) stops.insert(timer[number]);
    stops.erase(devices::open);
    for (const auto& [near, far] : {std::pair{one, other}, std::pair{other, one}}) {
        if (stops.contains(near)) continue;
        const Reach reach = reachFrom(scene, near, far, stops);
        if (std::any_of(stops.begin(), stops.end(), [&](Node n) { return reach.direct.contains(n); }))
            continue;
        for (std::size_t k = 0; k < scene.timers.size(); ++k) {
            const Node output = scene.timers[k][pins::output];
            if (output != devices::open && reach.throughCapacitor.contains(output)) return k;
        }
    }
    return std::nullopt;
}

/// Forward voltages are no sharp ends: a lamp that a run shows well lit is.
bool isWellLit(const Scene& scene, const devices::Junction& lamp) {
    const LampReading* row = scene.readings ? lampRow(scene.readings->lamps, lamp.ref) : nullptr;
    return row && row->peak_A && *row->peak_A >= wellLit * lamp.ratedCurrent;
}

} // namespace

bool pairLacksSwing(const Scene& scene, std::size_t k) {
    return std::any_of(scene.board.junctions.begin(), scene.board.junctions.end(),
                       [&](const devices::Junction& other) {
                           return swingFinding(scene, scene.board.junctions[k], other).has_value();
                       });
}

std::optional<Finding> swingFinding(const Scene& scene, const devices::Junction& a,
                                    const devices::Junction& b) {
    const auto at = [&](Node node) { return scene.wiring.at(node); };
    if (!a.lamp || !b.lamp || a.anode == devices::open || a.cathode == devices::open) return std::nullopt;
    if (at(a.anode) != at(b.cathode) || at(a.cathode) != at(b.anode) || at(a.anode) == at(a.cathode))
        return std::nullopt;
    if (isWellLit(scene, a) || isWellLit(scene, b)) return std::nullopt;
    const auto timer = coupledTimer(scene, at(a.anode), at(a.cathode));
    if (!timer) return std::nullopt;
    const auto supply = scene.supplyVoltage(*timer);
    if (!supply) return std::nullopt;
    const devices::Timer& part = scene.board.timers[*timer];
    // The output swings by no more than it does under the least current that counts as lit.
    const double current = litShare * std::min(a.ratedCurrent, b.ratedCurrent);
    const double swing =
        std::max(0.0, outputHigh(part.sheet, part.cmos, *supply, current) - outputLow(part.sheet, current));
    const double needed = serviceVoltage(a) + serviceVoltage(b);
    if (swing > needed) return std::nullopt;
    return Finding{
        .kind = "pair-swing-too-small",
        .severity = Severity::fault,
        .places = {a.ref, b.ref, pin(part.ref, 3)},
        .text =
            wording::inWords("%1 and %2 stay dark or nearly so: the output of %3 swings by %4, and behind a "
                             "capacitor the pair needs more than both forward voltages together, %5.",
                             a.ref, b.ref, part.ref, text(swing, Unit::volt), text(needed, Unit::volt)),
        .remedy = wording::inWords("Take a higher supply voltage, a CMOS timer, or lamps of lower forward "
                                   "voltage; or put one lamp to each rail."),
        .number = swing,
        .limit = needed,
        .source =
            wording::inWords("charge balance of the coupling capacitor: each lamp conducts only with what "
                             "the other has left of the swing")};
}

void pairFindings(const Scene& scene, Findings& findings) {
    const auto& all = scene.board.junctions;
    for (std::size_t k = 0; k < all.size(); ++k)
        for (std::size_t other = k + 1; other < all.size(); ++other)
            if (auto finding = swingFinding(scene, all[k], all[other]))
                findings.push_back(std::move(*finding));
}

} // namespace blinkwright::study::detail
