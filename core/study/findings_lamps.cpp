// Findings on lamps: their current path, which way round they are, and how they light.
#include "core/study/findings_detail.h"

#include "core/devices/laws.h"
#include "core/study/eye.h"
#include "core/study/figures.h"

#include <algorithm>
#include <limits>
#include <queue>
#include <tuple>

namespace blinkwright::study::detail {

namespace {

using units::Unit;
namespace pins = circuit::timerPin;

constexpr double leastLampResistance = 10; // [ohm]
constexpr double leastGlow = 5e-6;         // [A]
constexpr double strongLamp = 1;           // [cd] from memory

/// Voltages that a node can take: a supply net one, an output from rail to rail, a discharge pin only down.
struct Drive {
    double least, most;
    bool source; ///< can give current away
};

/// The nodes that drive lamps: whatever happens behind them, they hold their voltage.
std::map<Node, Drive> drivesOf(const Scene& scene) {
    std::map<Node, Drive> drives;
    Node reference = scene.timers.empty() ? devices::open : scene.timers.front()[pins::ground];
    if (reference == devices::open && scene.board.nodes() > 0) reference = scene.wiring.at(0);
    const auto potentials = scene.potentialsFrom(reference);
    const auto volts = [&](Node node) {
        const auto at = potentials.find(node);
        return at == potentials.end() ? 0.0 : at->second;
    };
    for (const auto& timer : scene.timers) {
        const Node output = timer[pins::output], discharge = timer[pins::discharge];
        const double low = volts(timer[pins::ground]), high = volts(timer[pins::supply]);
        if (discharge != devices::open) drives[discharge] = {low, low, false};
        if (output != devices::open) drives[output] = {std::min(low, high), std::max(low, high), true};
    }
    std::set<Node> still = scene.poles;
    for (const auto& timer : scene.timers) {
        still.insert(timer[pins::ground]);
        still.insert(timer[pins::supply]);
    }
    still.erase(devices::open);
    for (const Node node : still) drives[node] = {volts(node), volts(node), true};
    return drives;
}

struct Path {
    double resistance = 0;
    double drop = 0;        ///< of the junctions on the way [V]
    bool capacitor = false; ///< it leads through a capacitor
};

/// Voltage that a junction takes up before it carries a milliampere: under that nothing needs limiting.
double dropOf(const devices::Junction& part) {
    return devices::junctionVoltage(part.law, 1e-3);
}

/// Paths of least resistance from one pin of a lamp to the driving nodes, not through the lamp itself.
/// @param upstream from the anode towards where current comes from; else from the cathode to where it goes.
std::map<Node, Path> pathsFrom(const Scene& scene, Node start, std::size_t lamp, bool upstream,
                               const std::map<Node, Drive>& drives) {
    std::map<Node, Path> reached, found;
    using Ahead = std::tuple<double, Node, double, bool>;
    std::priority_queue<Ahead, std::vector<Ahead>, std::greater<>> ahead;
    if (start != devices::open) ahead.emplace(0.0, start, 0.0, false);
    while (!ahead.empty()) {
        const auto [resistance, node, drop, capacitor] = ahead.top();
        ahead.pop();
        if (!reached.try_emplace(node, Path{resistance, drop, capacitor}).second) continue;
        if (drives.contains(node)) {
            found[node] = {resistance, drop, capacitor};
            continue;
        }
        for (const std::size_t k : scene.wiring.elementsAt(node)) {
            const Element& e = scene.wiring.elements()[k];
            const bool junction = e.kind == ElementKind::junction;
            if (junction && (e.index == lamp || (upstream ? e.b : e.a) != node)) continue;
            // A capacitor holds current back no more than its series resistance does, at first.
            const double value = e.kind == ElementKind::resistance ? e.value : 0;
            const double more = junction ? dropOf(scene.board.junctions[e.index]) : 0;
            ahead.emplace(resistance + value, e.other(node), drop + more,
                          capacitor || e.kind == ElementKind::capacitance);
        }
    }
    return found;
}

/// How a lamp is joined to what drives it.
struct Hookup {
    double leastResistance = std::numeric_limits<double>::infinity();
    bool drivenForward = false;  ///< some pair of drives can send current through it
    bool drivenBackward = false; ///< ... or could if it were turned
    bool throughCapacitor = false;
};

bool canDrive(const Drive& from, const Drive& to) {
    return from.source && from.most > to.least;
}

Hookup hookupOf(const Scene& scene, std::size_t k, const std::map<Node, Drive>& drives) {
    const auto& lamp = scene.board.junctions[k];
    const Node anode = scene.wiring.at(lamp.anode), cathode = scene.wiring.at(lamp.cathode);
    Hookup hookup;
    for (const bool turned : {false, true}) {
        const auto from = pathsFrom(scene, turned ? cathode : anode, k, true, drives);
        const auto to = pathsFrom(scene, turned ? anode : cathode, k, false, drives);
        for (const auto& [source, in] : from) {
            for (const auto& [sink, out] : to) {
                if (source == sink) continue;
                const bool drives_it = canDrive(drives.at(source), drives.at(sink));
                if (turned) {
                    hookup.drivenBackward |= drives_it;
                    continue;
                }
                hookup.drivenForward |= drives_it;
                hookup.throughCapacitor |= in.capacitor || out.capacitor;
                // A charged capacitor adds to the drive, so its voltage is no bound.
                const double swing = drives.at(source).most - drives.at(sink).least;
                const bool conducts = drives_it && swing > in.drop + out.drop + dropOf(lamp);
                if (conducts || in.capacitor || out.capacitor)
                    hookup.leastResistance = std::min(hookup.leastResistance, in.resistance + out.resistance);
            }
        }
    }
    return hookup;
}

void currentPathFindings(const Scene& scene, std::size_t k, const std::map<Node, Drive>& drives,
                         const LampReading* reading, Findings& findings) {
    const auto& lamp = scene.board.junctions[k];
    const Hookup hookup = hookupOf(scene, k, drives);
    if (hookup.leastResistance < leastLampResistance) {
        findings.push_back(
            {.kind = "lamp-unlimited",
             .severity = Severity::overstress,
             .places = {lamp.ref},
             .text =
                 wording::inWords("Only %1 lies in the current path of %2, so nothing limits its current.",
                                  text(hookup.leastResistance, Unit::ohm), lamp.ref),
             .remedy = wording::inWords(
                 "Put a resistor in series with the lamp, commonly 220\u00A0\u03A9 to 1\u00A0k\u03A9."),
             .number = hookup.leastResistance,
             .limit = leastLampResistance,
             .source = practice()});
    }
    const bool lights = reading && reading->peak_A && *reading->peak_A >= litShare * lamp.ratedCurrent;
    const bool supplyTurned = !scene.timers.empty() && scene.supplyVoltage(0).value_or(0) < 0;
    if (!hookup.drivenForward && !hookup.throughCapacitor && hookup.drivenBackward && !lights &&
        !supplyTurned) {
        Finding finding{
            .kind = "lamp-backwards",
            .severity = Severity::fault,
            .places = {lamp.ref},
            .text = wording::inWords("%1 is the wrong way round: it cannot conduct in any phase.", lamp.ref),
            .remedy = wording::inWords("Swap its anode and cathode.")};
        if (reading && reading->reversePeak_V) finding.number = *reading->reversePeak_V;
        findings.push_back(std::move(finding));
    } else if (reading && reading->peak_A && !lights && !pairLacksSwing(scene, k)) {
        findings.push_back(
            {.kind = "lamp-dark",
             .severity = Severity::doubt,
             .places = {lamp.ref},
             .text = wording::inWords("%1 stays dark: its current peaks at %2, under 5 % of the rated %3.",
                                      lamp.ref, text(*reading->peak_A, Unit::ampere),
                                      text(lamp.ratedCurrent, Unit::ampere)),
             .remedy = wording::inWords("Check that its path is closed and the voltage is enough; else take "
                                        "a smaller lamp resistor."),
             .number = *reading->peak_A,
             .limit = litShare * lamp.ratedCurrent,
             .source =
                 wording::inWords("5 % of the rated current counts as lit: common practice, no source")});
    }
}

void ghostFinding(const devices::Junction& lamp, const LampReading& reading, Findings& findings) {
    if (!reading.darkerMean_A || !(*reading.darkerMean_A > leastGlow) ||
        !(*reading.darkerMean_A < litShare * lamp.ratedCurrent))
        return;
    findings.push_back({.kind = "ghost-glow",
                        .severity = Severity::doubt,
                        .places = {lamp.ref},
                        .text = wording::inWords(
                            "%1 carries %2 in the phase in which it should be dark, and may be seen to glow.",
                            lamp.ref, text(*reading.darkerMean_A, Unit::ampere)),
                        .remedy = wording::inWords(
                            "Put a resistor of 1 to 4.7 k\u03A9 across the lamp, or take a CMOS timer, "
                            "whose output reaches the supply."),
                        .number = *reading.darkerMean_A,
                        .limit = leastGlow,
                        .source = wording::inWords("5 µA can be seen in the dark: memory")});
}

/// Flashes a second: of the settled state, else the mean over the run.
std::optional<double> flashRate(const Readings& readings) {
    if (readings.verdict != Verdict::blinks || readings.timers.empty()) return std::nullopt;
    const TimerReading& timer = readings.timers.front();
    if (timer.settled) return timer.settled->rate_Hz();
    const auto& times = timer.switchings_s;
    if (times.size() < 3 || !(times.back() > times.front())) return std::nullopt;
    return 0.5 * static_cast<double>(times.size() - 1) / (times.back() - times.front());
}

void flickerFinding(const devices::Junction& lamp, const LampReading& reading, double rate,
                    Findings& findings) {
    if (!reading.litTime_s || *reading.litTime_s <= 0 || *reading.litTime_s * rate > 1 - 1e-6)
        return; // never, or steady
    if (rate > fusionRate_Hz) {
        findings.push_back(
            {.kind = "appears-steady",
             .severity = Severity::note,
             .places = {lamp.ref},
             .text =
                 wording::inWords("%1 flashes at %2, too fast for the eye: it appears to be lit steadily.",
                                  lamp.ref, text(rate, Unit::hertz)),
             .remedy = wording::inWords("For flashes that are seen apart, stay under about 10 Hz."),
             .number = rate,
             .limit = fusionRate_Hz,
             .source =
                 wording::inWords("critical flicker fusion of the cones, about 60 Hz at high luminance")});
    } else if (rate > flashesPerSecond) {
        findings.push_back(
            {.kind = "flicker",
             .severity = Severity::caution,
             .places = {lamp.ref},
             .text =
                 wording::inWords("%1 flashes %2 times a second. More than three flashes a second can set "
                                  "off seizures in some people.",
                                  lamp.ref, units::formatQuantity(rate, Unit::none)),
             .remedy = wording::inWords("Stay at three flashes a second or fewer where others look on."),
             .number = rate,
             .limit = flashesPerSecond,
             .source = wording::inWords("WCAG 2.2, success criterion 2.3.1")});
    }
}

void brightFinding(const devices::Junction& lamp, Findings& findings) {
    if (!lamp.luminousIntensity || *lamp.luminousIntensity < strongLamp) return;
    findings.push_back(
        {.kind = "bright-lamp",
         .severity = Severity::caution,
         .places = {lamp.ref},
         .text = wording::inWords("%1 is a strong lamp of %2; do not look into it from close by.", lamp.ref,
                                  text(*lamp.luminousIntensity, Unit::candela)),
         .remedy = wording::inWords("Use a diffused lens, less current, or turn it away from the eyes."),
         .number = *lamp.luminousIntensity,
         .limit = strongLamp,
         .source = wording::inWords("memory")});
}

} // namespace

void lampFindings(const Scene& scene, Findings& findings) {
    const auto drives = drivesOf(scene);
    const auto rate = scene.readings ? flashRate(*scene.readings) : std::nullopt;
    for (std::size_t k = 0; k < scene.board.junctions.size(); ++k) {
        const auto& lamp = scene.board.junctions[k];
        if (!lamp.lamp) continue;
        const LampReading* reading = scene.readings ? lampRow(scene.readings->lamps, lamp.ref) : nullptr;
        const LampReading* first =
            scene.readings ? lampRow(scene.readings->firstFlash.lamps, lamp.ref) : nullptr;
        currentPathFindings(scene, k, drives, reading, findings);
        lampRatingFindings(lamp, reading, first, findings);
        if (reading) ghostFinding(lamp, *reading, findings);
        if (reading && rate) flickerFinding(lamp, *reading, *rate, findings);
        brightFinding(lamp, findings);
    }
}

} // namespace blinkwright::study::detail
