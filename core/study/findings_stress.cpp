// Findings on the ratings of resistors, capacitors and timers, from the figures of a run.
#include "core/study/findings_detail.h"

namespace blinkwright::study::detail {

namespace {

using units::Unit;

void resistorFinding(const Scene& scene, const std::string& ref, double rating, Findings& findings) {
    const PartReading* reading = scene.partReading(ref);
    if (!reading || !reading->meanPower_W || !(*reading->meanPower_W > rating)) return;
    findings.push_back({.kind = "resistor-overpowered",
                        .severity = Severity::overstress,
                        .places = {ref},
                        .text = ref + " turns " + text(*reading->meanPower_W, Unit::watt) +
                                " into heat; it is rated for " + text(rating, Unit::watt) + ".",
                        .remedy = "Take a larger resistance or a part of higher rating.",
                        .number = *reading->meanPower_W,
                        .limit = rating,
                        .source = "rating of the part"});
}

void capacitorFinding(const Scene& scene, const devices::Capacitor& part, Findings& findings) {
    const PartReading* reading = scene.partReading(part.ref);
    if (!reading || !reading->peakVoltage_V || !part.ratedVoltage ||
        !(*reading->peakVoltage_V > *part.ratedVoltage))
        return;
    findings.push_back({.kind = "capacitor-overvoltage",
                        .severity = Severity::overstress,
                        .places = {part.ref},
                        .text = part.ref + " sees up to " + text(*reading->peakVoltage_V, Unit::volt) +
                                "; it is rated for " + text(*part.ratedVoltage, Unit::volt) + ".",
                        .remedy = "Take a capacitor of higher rated voltage.",
                        .number = *reading->peakVoltage_V,
                        .limit = *part.ratedVoltage,
                        .source = "rating of the part"});
}

void timerFindings(const Scene& scene, const devices::Timer& part, Findings& findings) {
    const PartReading* reading = scene.partReading(part.ref);
    if (!reading) return;
    // A CMOS timer may source far less than it sinks; which of the two the peak is, is not known here.
    const double most = part.cmos ? 0.1 : 0.2;
    if (reading->peakCurrent_A && *reading->peakCurrent_A > most) {
        findings.push_back(
            {.kind = "timer-output-overloaded",
             .severity = Severity::overstress,
             .places = {part.ref + ":3"},
             .text = "The output of " + part.ref + " carries up to " +
                     text(*reading->peakCurrent_A, Unit::ampere) + "; it may carry " +
                     text(most, Unit::ampere) + ".",
             .remedy = "Take a larger lamp resistor, or fewer lamps on the output.",
             .number = *reading->peakCurrent_A,
             .limit = most,
             .source = part.cmos ? "TI TLC555, SLFS043C: 100 mA sunk" : "TI NE555/SA555, SLFS022A: 200 mA"});
    }
    // From memory: room at 25 C, 100 K/W of a small package, warm to the touch and more from 100 C.
    constexpr double room = 298.15, perWatt = 100, hot = 373.15, celsius = 273.15;
    if (reading->meanPower_W && room + perWatt * *reading->meanPower_W > hot) {
        const double kelvin = room + perWatt * *reading->meanPower_W;
        findings.push_back({.kind = "timer-hot",
                            .severity = Severity::overstress,
                            .places = {part.ref},
                            .text = part.ref + " turns " + text(*reading->meanPower_W, Unit::watt) +
                                    " into heat and would reach about " +
                                    units::formatQuantity(kelvin - celsius, Unit::none) + " \u00B0C.",
                            .remedy = "Take less current from its pins, or a lower supply voltage.",
                            .number = kelvin,
                            .limit = hot,
                            .source = "memory: 25 \u00B0C and 100 K/W"});
    }
}

} // namespace

void stressFindings(const Scene& scene, Findings& findings) {
    if (!scene.readings) return;
    for (const auto& part : scene.board.resistors)
        resistorFinding(scene, part.ref, part.ratedPower, findings);
    for (const auto& part : scene.board.variables)
        resistorFinding(scene, part.ref, part.ratedPower, findings);
    for (const auto& part : scene.board.capacitors)
        capacitorFinding(scene, part, findings);
    for (const auto& part : scene.board.timers)
        timerFindings(scene, part, findings);
}

} // namespace blinkwright::study::detail
