// Findings on supply, pins and loose parts: what the wiring alone tells.
#include "core/study/findings_detail.h"
#include "core/study/ground_reach.h"
#include "core/study/supply_range.h"

#include <algorithm>

namespace blinkwright::study::detail {

namespace {

using units::Unit;
namespace pins = circuit::timerPin;

constexpr double leastBypass = 10e-9; // [F] common practice

std::string joinSupply() {
    return wording::inWords("Join pin 8 to the plus of the supply and pin 1 to its minus.");
}

void supplyFindings(const Scene& scene, std::size_t k, Findings& findings) {
    const auto& timer = scene.board.timers[k];
    const auto voltage = scene.supplyVoltage(k);
    if (!voltage) {
        // Another timer's output may feed this one; a board without any supply is told once.
        const Node rail = scene.timers[k][pins::supply], ground = scene.timers[k][pins::ground];
        const bool fed = std::any_of(scene.timers.begin(), scene.timers.end(), [&](const TimerNodes& other) {
            const Node output = other[pins::output];
            return output != devices::open && (output == rail || output == ground);
        });
        if (fed || scene.board.supplies.empty()) return;
        findings.push_back({.kind = "no-supply",
                            .severity = Severity::fault,
                            .places = {pin(timer.ref, 8), pin(timer.ref, 1)},
                            .text = wording::inWords("No supply reaches pins 8 and 1 of %1.", timer.ref),
                            .remedy = joinSupply()});
        return;
    }
    if (*voltage < 0) {
        findings.push_back(
            {.kind = "supply-reversed",
             .severity = Severity::fault,
             .places = {pin(timer.ref, 8), pin(timer.ref, 1)},
             .text = wording::inWords("The supply of %1 is the wrong way round: pin 8 would lie %2 "
                                      "below pin 1, which destroys the timer.",
                                      timer.ref, text(-*voltage, Unit::volt)),
             .remedy = joinSupply(),
             .number = *voltage,
             .limit = 0.0,
             .source = wording::inWords("pin functions of the 555 timer")});
        return;
    }
    const SupplyRange& range = supplyRange(timer.cmos);
    const std::string found = text(*voltage, Unit::volt), least = text(range.least_V, Unit::volt),
                      most = text(range.most_V, Unit::volt);
    if (*voltage > range.most_V) {
        findings.push_back(
            {.kind = "supply-out-of-range",
             .severity = Severity::overstress,
             .places = {timer.ref},
             .text = timer.cmos
                         ? wording::inWords("The supply of %1 is %2; a CMOS timer may have at most %3.",
                                            timer.ref, found, most)
                         : wording::inWords("The supply of %1 is %2; a bipolar timer may "
                                            "have at most %3.",
                                            timer.ref, found, most),
             .remedy = wording::inWords("Use a supply of lower voltage."),
             .number = *voltage,
             .limit = range.most_V,
             .source = range.source});
    } else if (*voltage < range.least_V) {
        findings.push_back(
            {.kind = "supply-out-of-range",
             .severity = Severity::doubt,
             .places = {timer.ref},
             .text = timer.cmos ? wording::inWords(
                                      "The supply of %1 is %2; a CMOS timer is only sure to work from %3.",
                                      timer.ref, found, least)
                                : wording::inWords(
                                      "The supply of %1 is %2; a bipolar timer is only sure to work from %3.",
                                      timer.ref, found, least),
             .remedy = timer.cmos ? wording::inWords("Use a supply of higher voltage.")
                                  : wording::inWords("Use a supply of higher voltage, or a CMOS timer, which "
                                                     "works from 2 V."),
             .number = *voltage,
             .limit = range.least_V,
             .source = range.source});
    }
}

/// Voltage of pin 4 against pin 1 where resistances alone set it; nothing where something else has a hand in
/// it.
std::optional<double> resetVoltage(const Scene& scene, std::size_t k, const Wiring& wiring) {
    const auto& timer = scene.board.timers[k];
    const auto node = [&](int number) { return wiring.at(timer.pins[static_cast<std::size_t>(number)]); };
    const Node reset = node(pins::reset), ground = node(pins::ground), rail = node(pins::supply);
    if (reset == ground) return 0.0;
    if (reset == rail || scene.poles.contains(reset)) return std::nullopt;
    std::set<Node> kept{reset};
    for (const auto& other : scene.board.timers) {
        for (const Node at : other.pins) kept.insert(wiring.at(at));
    }
    for (const Node pole : scene.poles) kept.insert(wiring.at(pole));
    for (const auto& other : scene.board.timers) {
        for (int at = 0; at < 8; ++at) { // other resets may share the net; any other pin has a hand in it
            const Node there = other.pins[static_cast<std::size_t>(at)];
            if (at != pins::reset && there != devices::open && wiring.at(there) == reset) return std::nullopt;
        }
    }
    double conductance = 0, current = 0;
    const double supply = timer.nominalSupply;
    for (const Element& e : reduced(wiring.around({reset}, kept), kept)) {
        if (!e.touches(reset) || e.kind == ElementKind::capacitance) continue;
        if (e.kind != ElementKind::resistance) return std::nullopt;
        const Node far = e.other(reset);
        if (far != ground && far != rail) return std::nullopt;
        conductance += 1 / e.value;
        if (far == rail) current += supply / e.value;
    }
    if (!timer.cmos) { // the pin itself pulls up, see the law of the reset input
        conductance += 1 / timer.sheet.reset_resistance;
        current += 0.8 * supply / timer.sheet.reset_resistance;
    }
    if (!(conductance > 0)) return std::nullopt;
    return current / conductance;
}

void resetFindings(const Scene& scene, std::size_t k, Findings& findings) {
    const auto& timer = scene.board.timers[k];
    if (!timer.connected(pins::reset)) {
        findings.push_back({.kind = "reset-open",
                            .severity = Severity::doubt,
                            .places = {pin(timer.ref, 4)},
                            .text = wording::inWords(
                                "Reset (pin 4) of %1 is joined to nothing and may pick up noise.", timer.ref),
                            .remedy = wording::inWords("Join pin 4 to pin 8."),
                            .source = practice()});
        return;
    }
    auto volts = resetVoltage(scene, k, scene.wiring);
    const bool pressed = std::any_of(scene.board.switches.begin(), scene.board.switches.end(),
                                     [](const devices::Switch& part) { return !part.presses.empty(); });
    if (volts && pressed) { // low while pressed too?
        const auto other = resetVoltage(scene, k, Wiring(scene.board, true));
        volts = other ? std::optional(std::max(*volts, *other)) : std::nullopt;
    }
    if (!volts || *volts >= timer.sheet.reset_level) return;
    findings.push_back({.kind = "reset-low",
                        .severity = Severity::fault,
                        .places = {pin(timer.ref, 4)},
                        .text = wording::inWords(
                            "Reset (pin 4) of %1 stays at %2, under its level of %3, which "
                            "holds the output low.",
                            timer.ref, text(*volts, Unit::volt), text(timer.sheet.reset_level, Unit::volt)),
                        .remedy = wording::inWords("Join pin 4 to pin 8."),
                        .number = *volts,
                        .limit = timer.sheet.reset_level,
                        .source = std::string(
                            devices::sourceOf(timer.cmos ? "timer-cmos" : "timer-bipolar", "reset_level"))});
}

void outputFindings(const Scene& scene, std::size_t k, Findings& findings) {
    const Node output = scene.timers[k][pins::output];
    const Node rail = scene.timers[k][pins::supply], ground = scene.timers[k][pins::ground];
    if (output == devices::open || (output != rail && output != ground && !scene.poles.contains(output)))
        return;
    const auto& timer = scene.board.timers[k];
    findings.push_back(
        {.kind = "output-shorted",
         .severity = Severity::fault,
         .places = {pin(timer.ref, 3)},
         .text =
             output == ground
                 ? wording::inWords("Output (pin 3) of %1 is joined straight to the ground net.", timer.ref)
                 : wording::inWords("Output (pin 3) of %1 is joined straight to a supply net.", timer.ref),
         .remedy = wording::inWords("Take pin 3 off that net; lamps go from pin 3 through a resistor."),
         .source = practice()});
}

void bypassFindings(const Scene& scene, std::size_t k, Findings& findings) {
    const auto& timer = scene.board.timers[k];
    if (!timer.connected(pins::control)) {
        findings.push_back(
            {.kind = "control-unbypassed",
             .severity = Severity::note,
             .places = {pin(timer.ref, 5)},
             .text = timer.cmos
                         ? wording::inWords("The control voltage (pin 5) of %1 has no capacitor. Most CMOS "
                                            "timers need none.",
                                            timer.ref)
                         : wording::inWords("The control voltage (pin 5) of %1 has no capacitor.", timer.ref),
             .remedy = wording::inWords(
                 "A capacitor of 10 nF from pin 5 to ground keeps noise off the switching levels."),
             .source = wording::inWords("10 nF in the circuits of TI SLFS022 and ST Doc ID 2182; the Philips "
                                        "ICM7555 sheet (Aug 1994) needs none")});
    }
    const Node rail = scene.timers[k][pins::supply], ground = scene.timers[k][pins::ground];
    if (rail == devices::open || ground == devices::open || rail == ground) return;
    double bypass = 0;
    for (const Element& e : scene.wiring.elements()) {
        if (e.kind == ElementKind::capacitance && e.joins(rail, ground)) bypass = std::max(bypass, e.value);
    }
    if (bypass >= leastBypass * (1 - 1e-9)) return;
    Finding finding{.kind = "supply-unbypassed",
                    .severity = Severity::note,
                    .places = {pin(timer.ref, 8), pin(timer.ref, 1)},
                    .text = wording::inWords("No capacitor of 10 nF or more lies across pins 8 and 1 of %1; "
                                             "each switching draws a short pulse from the supply.",
                                             timer.ref),
                    .remedy = wording::inWords("Put 100 nF close to the pins, and 10 to 100 µF beside it."),
                    .limit = leastBypass,
                    .source = practice()};
    if (bypass > 0) finding.number = bypass;
    findings.push_back(std::move(finding));
}

void bridgedFindings(const Scene& scene, Findings& findings) {
    everyPart(scene.board, [&](const devices::Named& part, const std::vector<Node>& nodes) {
        if (nodes.size() != 2 || nodes[0] == devices::open || nodes[0] != nodes[1]) return;
        findings.push_back(
            {.kind = "part-bridged",
             .severity = Severity::doubt,
             .places = {part.ref},
             .text = wording::inWords("Both pins of %1 are in one net, so it does nothing.", part.ref),
             .remedy = wording::inWords("Join its pins to two nets, or take it out.")});
    });
}

void floatingFindings(const Scene& scene, Findings& findings) {
    if (scene.board.supplies.empty() || scene.board.supplies.front().minus == devices::open) return;
    const std::vector<bool> grounded = reachedFromGround(scene.board);
    const auto isGrounded = [&](Node node) {
        return node != devices::open && grounded[static_cast<std::size_t>(node)];
    };
    everyPart(scene.board, [&](const devices::Named& part, const std::vector<Node>& nodes) {
        if (std::any_of(nodes.begin(), nodes.end(), isGrounded)) return;
        findings.push_back(
            {.kind = "floating",
             .severity = Severity::doubt,
             .places = {part.ref},
             .text =
                 wording::inWords("%1 has no path to 0 V through any part, so it does nothing.", part.ref),
             .remedy = wording::inWords("Join it to the rest of the circuit, or take it out.")});
    });
}

/// Polarised capacitors whose plus the supplies would draw below their minus, where no run tells.
void backwardsFindings(const Scene& scene, Findings& findings) {
    constexpr double lowest = -1; // [V]
    for (const auto& part : scene.board.capacitors) {
        const PartReading* reading = scene.partReading(part.ref);
        if (!part.polarised || (reading && reading->lowestVoltage_V)) continue;
        const auto potentials = scene.potentialsFrom(scene.wiring.at(part.minus));
        const auto plus = potentials.find(scene.wiring.at(part.plus));
        if (plus == potentials.end() || !(plus->second < lowest)) continue;
        findings.push_back(
            {.kind = "capacitor-reversed",
             .severity = Severity::overstress,
             .places = {part.ref},
             .text = wording::inWords("%1 is the wrong way round: its plus lies up to %2 below its "
                                      "minus; a polarised capacitor stands about 1 V.",
                                      part.ref, text(-plus->second, Unit::volt)),
             .remedy = wording::inWords("Turn it, or take one that is not polarised."),
             .number = plus->second,
             .limit = lowest,
             .source = practice()});
    }
}

} // namespace

void wiringFindings(const Scene& scene, Findings& findings) {
    if (scene.board.supplies.empty())
        findings.push_back(
            {.kind = "no-supply",
             .severity = Severity::fault,
             .places = {},
             .text = wording::inWords("The circuit has no supply."),
             .remedy = wording::inWords("Add a supply and join its plus to pin 8 and its minus to pin 1.")});
    if (scene.board.timers.empty())
        findings.push_back({.kind = "no-timer",
                            .severity = Severity::fault,
                            .places = {},
                            .text = wording::inWords("The circuit has no timer."),
                            .remedy = wording::inWords("Add a 555 timer.")});
    for (std::size_t k = 0; k < scene.board.timers.size(); ++k) {
        supplyFindings(scene, k, findings);
        resetFindings(scene, k, findings);
        outputFindings(scene, k, findings);
        bypassFindings(scene, k, findings);
    }
    bridgedFindings(scene, findings);
    floatingFindings(scene, findings);
    backwardsFindings(scene, findings);
}

} // namespace blinkwright::study::detail
