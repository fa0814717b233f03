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

void capacitorFindings(const Scene& scene, const devices::Capacitor& part, Findings& findings) {
    const PartReading* reading = scene.partReading(part.ref);
    if (!reading) return;
    if (reading->peakVoltage_V && part.ratedVoltage && *reading->peakVoltage_V > *part.ratedVoltage) {
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
    constexpr double lowest = -1; // [V]
    if (part.polarised && reading->lowestVoltage_V && *reading->lowestVoltage_V < lowest) {
        findings.push_back({.kind = "capacitor-reversed",
                            .severity = Severity::overstress,
                            .places = {part.ref},
                            .text = part.ref + " sees " + text(-*reading->lowestVoltage_V, Unit::volt) +
                                    " the wrong way round; a polarised capacitor stands about 1 V.",
                            .remedy = "Turn it, or take one that is not polarised.",
                            .number = *reading->lowestVoltage_V,
                            .limit = lowest,
                            .source = practice});
    }
}

/// What one pin of a timer may carry.
struct PinLimit {
    int pin;
    const char* kind;
    const char* does; ///< what the pin does with the current
    std::optional<double> present_A;
    double most_A;
    const char* source;
    const char* remedy;
};

void pinFinding(const devices::Timer& part, const PinLimit& limit, Findings& findings) {
    if (!limit.present_A || !(*limit.present_A > limit.most_A)) return;
    findings.push_back({.kind = limit.kind,
                        .severity = Severity::overstress,
                        .places = {pin(part.ref, limit.pin)},
                        .text = "Pin " + std::to_string(limit.pin) + " of " + part.ref + " " + limit.does +
                                " up to " + text(*limit.present_A, Unit::ampere) + "; it may carry " +
                                text(limit.most_A, Unit::ampere) + ".",
                        .remedy = limit.remedy,
                        .number = *limit.present_A,
                        .limit = limit.most_A,
                        .source = limit.source});
}

void timerFindings(const Scene& scene, const devices::Timer& part, Findings& findings) {
    const PartReading* reading = scene.partReading(part.ref);
    if (!reading) return;
    constexpr const char* bipolarSource = "TI NE555/SA555, SLFS022A: 200 mA either way";
    constexpr const char* cmosSource = "TI TLC555: 10 mA sourced, 100 mA sunk";
    constexpr const char* lessLoad = "Take a larger lamp resistor, or fewer lamps on the output.";
    const char* const source = part.cmos ? cmosSource : bipolarSource;
    pinFinding(part,
               {3, "timer-output-overloaded", "sources", reading->sourced_A, part.cmos ? 0.01 : 0.2, source,
                part.cmos
                    ? "Put the lamp between the supply and the output: a CMOS timer sinks far more than "
                      "it sources. Or take a larger lamp resistor."
                    : lessLoad},
               findings);
    pinFinding(
        part,
        {3, "timer-output-overloaded", "sinks", reading->sunk_A, part.cmos ? 0.1 : 0.2, source, lessLoad},
        findings);
    pinFinding(part,
               {7, "timer-discharge-overloaded", "sinks", reading->dischargePeak_A, part.cmos ? 0.1 : 0.2,
                "the limit of the output, from memory", "Take a larger R1, 1\u00A0k\u03A9 or more."},
               findings);
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
    for (const auto& part : scene.board.capacitors) capacitorFindings(scene, part, findings);
    for (const auto& part : scene.board.timers) timerFindings(scene, part, findings);
}

} // namespace blinkwright::study::detail
