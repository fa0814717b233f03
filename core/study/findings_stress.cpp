// Findings on the ratings of resistors, capacitors and timers, from the figures of a run.
#include "core/study/findings_detail.h"

#include <algorithm>

namespace blinkwright::study::detail {

namespace {

using units::Unit;

constexpr double longPhase = 1; // [s] from here a phase warms a resistor as if it lasted

/// Figures and what they are held against: the settled period against the rating itself, the first flash
/// against twice of it.
struct Judged {
    const std::vector<PartReading>& parts;
    double ratings = 1;

    bool first() const { return ratings > 1; }
    const PartReading* of(std::string_view ref) const {
        const auto at = std::find_if(parts.begin(), parts.end(), [&](const auto& p) { return p.ref == ref; });
        return at == parts.end() ? nullptr : &*at;
    }
};

std::string partRating() {
    return wording::inWords("rating of the part");
}

std::string heatText(const Judged& judged, const std::string& ref, double power, double rating,
                     std::optional<double> atATime_s) {
    const std::string found = text(power, Unit::watt), allowed = text(rating, Unit::watt);
    if (judged.first())
        return wording::inWords(
            "In the first flash after power-on %1 turns %2 into heat, more than twice the "
            "%3 that it is rated for.",
            ref, found, allowed);
    if (atATime_s)
        return wording::inWords("%1 turns %2 into heat for %3 at a time; it is rated for %4.", ref, found,
                                text(*atATime_s, Unit::second), allowed);
    return wording::inWords("%1 turns %2 into heat; it is rated for %3.", ref, found, allowed);
}

bool resistorFinding(const Judged& judged, const std::string& ref, double rating, Findings& findings) {
    const PartReading* reading = judged.of(ref);
    if (!reading || !reading->meanPower_W) return false;
    const bool longEnough = reading->hotterPhase_s && *reading->hotterPhase_s > longPhase;
    const double power = longEnough ? *reading->hotterPower_W : *reading->meanPower_W;
    if (!(power > judged.ratings * rating)) return false;
    findings.push_back(
        {.kind = "resistor-overpowered",
         .severity = Severity::overstress,
         .places = {ref},
         .text = heatText(judged, ref, power, rating, longEnough ? reading->hotterPhase_s : std::nullopt),
         .remedy = wording::inWords("Take a larger resistance or a part of higher rating."),
         .number = power,
         .limit = judged.ratings * rating,
         .source = partRating()});
    return true;
}

bool overvoltageFinding(const Judged& judged, const devices::Capacitor& part, Findings& findings) {
    const PartReading* reading = judged.of(part.ref);
    if (!reading || !reading->peakVoltage_V || !part.ratedVoltage ||
        !(*reading->peakVoltage_V > judged.ratings * *part.ratedVoltage))
        return false;
    const std::string found = text(*reading->peakVoltage_V, Unit::volt),
                      allowed = text(*part.ratedVoltage, Unit::volt);
    findings.push_back(
        {.kind = "capacitor-overvoltage",
         .severity = Severity::overstress,
         .places = {part.ref},
         .text = judged.first()
                     ? wording::inWords("In the first flash after power-on %1 sees up to %2, "
                                        "more than twice the %3 that it is rated for.",
                                        part.ref, found, allowed)
                     : wording::inWords("%1 sees up to %2; it is rated for %3.", part.ref, found, allowed),
         .remedy = wording::inWords("Take a capacitor of higher rated voltage."),
         .number = *reading->peakVoltage_V,
         .limit = judged.ratings * *part.ratedVoltage,
         .source = partRating()});
    return true;
}

/// A polarised capacitor stands its limit at no time, the first flash included.
bool reversedFinding(const Judged& judged, const devices::Capacitor& part, Findings& findings) {
    constexpr double lowest = -1; // [V]
    const PartReading* reading = judged.of(part.ref);
    if (!part.polarised || !reading || !reading->lowestVoltage_V || !(*reading->lowestVoltage_V < lowest))
        return false;
    const std::string found = text(-*reading->lowestVoltage_V, Unit::volt);
    findings.push_back({.kind = "capacitor-reversed",
                        .severity = Severity::overstress,
                        .places = {part.ref},
                        .text = judged.first()
                                    ? wording::inWords("In the first flash after power-on %1 sees %2 the "
                                                       "wrong way round; a polarised capacitor stands about "
                                                       "1 V.",
                                                       part.ref, found)
                                    : wording::inWords("%1 sees %2 the wrong way round; a polarised "
                                                       "capacitor stands about 1 V.",
                                                       part.ref, found),
                        .remedy = wording::inWords("Turn it, or take one that is not polarised."),
                        .number = *reading->lowestVoltage_V,
                        .limit = lowest,
                        .source = practice()});
    return true;
}

/// What one pin of a timer may carry.
struct PinLimit {
    int pin;
    const char* kind;
    bool sinks; ///< takes the current in; else gives it away
    std::optional<double> present_A;
    double most_A;
    std::string source, remedy;
};

std::string pinText(const Judged& judged, const std::string& ref, const PinLimit& limit) {
    const std::string found = text(*limit.present_A, Unit::ampere), most = text(limit.most_A, Unit::ampere);
    if (judged.first())
        return limit.sinks
                   ? wording::inWords("In the first flash after power-on pin %1 of %2 sinks up to %3, "
                                      "more than twice the %4 that it may carry.",
                                      limit.pin, ref, found, most)
                   : wording::inWords("In the first flash after power-on pin %1 of %2 sources up to "
                                      "%3, more than twice the %4 that it may carry.",
                                      limit.pin, ref, found, most);
    return limit.sinks ? wording::inWords("Pin %1 of %2 sinks up to %3; it may carry %4.", limit.pin, ref,
                                          found, most)
                       : wording::inWords("Pin %1 of %2 sources up to %3; it may carry %4.", limit.pin, ref,
                                          found, most);
}

bool pinFinding(const Judged& judged, const devices::Timer& part, const PinLimit& limit, Findings& findings) {
    if (!limit.present_A || !(*limit.present_A > judged.ratings * limit.most_A)) return false;
    findings.push_back({.kind = limit.kind,
                        .severity = Severity::overstress,
                        .places = {pin(part.ref, limit.pin)},
                        .text = pinText(judged, part.ref, limit),
                        .remedy = limit.remedy,
                        .number = *limit.present_A,
                        .limit = judged.ratings * limit.most_A,
                        .source = limit.source});
    return true;
}

bool outputFinding(const Judged& judged, const devices::Timer& part, Findings& findings) {
    const PartReading* reading = judged.of(part.ref);
    if (!reading) return false;
    const std::string lessLoad =
        wording::inWords("Take a larger lamp resistor, or fewer lamps on the output.");
    const std::string source = part.cmos ? wording::inWords("TI TLC555: 10 mA sourced, 100 mA sunk")
                                         : wording::inWords("TI NE555/SA555, SLFS022A: 200 mA either way");
    const std::string lessSourced =
        part.cmos
            ? wording::inWords("Put the lamp between the supply and the output: a CMOS timer sinks far more "
                               "than it sources. Or take a larger lamp resistor.")
            : lessLoad;
    const bool sourced = pinFinding(judged, part,
                                    {3, "timer-output-overloaded", false, reading->sourced_A,
                                     part.cmos ? 0.01 : 0.2, source, lessSourced},
                                    findings);
    const bool sunk = pinFinding(
        judged, part,
        {3, "timer-output-overloaded", true, reading->sunk_A, part.cmos ? 0.1 : 0.2, source, lessLoad},
        findings);
    return sourced || sunk;
}

bool dischargeFinding(const Judged& judged, const devices::Timer& part, Findings& findings) {
    const PartReading* reading = judged.of(part.ref);
    return reading &&
           pinFinding(judged, part,
                      {7, "timer-discharge-overloaded", true, reading->dischargePeak_A, part.cmos ? 0.1 : 0.2,
                       wording::inWords("the limit of the output, from memory"),
                       wording::inWords("Take a larger R1, 1\u00A0k\u03A9 or more.")},
                      findings);
}

void heatFinding(const Scene& scene, const devices::Timer& part, Findings& findings) {
    const PartReading* reading = scene.partReading(part.ref);
    if (!reading) return;
    // From memory: room at 25 C, 100 K/W of a small package, warm to the touch and more from 100 C.
    constexpr double room = 298.15, perWatt = 100, hot = 373.15, celsius = 273.15;
    if (reading->meanPower_W && room + perWatt * *reading->meanPower_W > hot) {
        const double kelvin = room + perWatt * *reading->meanPower_W;
        findings.push_back(
            {.kind = "timer-hot",
             .severity = Severity::overstress,
             .places = {part.ref},
             .text = wording::inWords("%1 turns %2 into heat and would reach about %3 °C.", part.ref,
                                      text(*reading->meanPower_W, Unit::watt),
                                      units::formatQuantity(kelvin - celsius, Unit::none)),
             .remedy = wording::inWords("Take less current from its pins, or a lower supply voltage."),
             .number = kelvin,
             .limit = hot,
             .source = wording::inWords("memory: 25 °C and 100 K/W")});
    }
}

/// Judges the settled period, and the first flash where that has nothing to say.
template <class Judge>
void inBoth(const Readings& readings, const Judge& judge) {
    if (!judge(Judged{readings.parts})) judge(Judged{readings.firstFlash.parts, firstFlashRatings});
}

} // namespace

void stressFindings(const Scene& scene, Findings& findings) {
    if (!scene.readings) return;
    const auto both = [&](const auto& judge) { inBoth(*scene.readings, judge); };
    for (const auto& part : scene.board.resistors)
        both([&](const Judged& j) { return resistorFinding(j, part.ref, part.ratedPower, findings); });
    for (const auto& part : scene.board.variables)
        both([&](const Judged& j) { return resistorFinding(j, part.ref, part.ratedPower, findings); });
    for (const auto& part : scene.board.capacitors) {
        both([&](const Judged& j) { return overvoltageFinding(j, part, findings); });
        both([&](const Judged& j) { return reversedFinding(j, part, findings); });
    }
    for (const auto& part : scene.board.timers) {
        both([&](const Judged& j) { return outputFinding(j, part, findings); });
        both([&](const Judged& j) { return dischargeFinding(j, part, findings); });
        heatFinding(scene, part, findings);
    }
}

} // namespace blinkwright::study::detail
