// Findings on the ratings of lamps: currents and reverse voltage, settled and in the first flash.
#include "core/study/findings_detail.h"

#include <algorithm>

namespace blinkwright::study::detail {

namespace {

using units::Unit;

constexpr double longestPulse = 10e-3; // [s] from here the rated current holds, from memory

/// What one span of figures says of a lamp's rating.
struct Driven {
    double number, limit;
    std::string how, source;
};

/// @param ratings how many ratings are held against: 1 for the settled period, more for the first flash,
/// where an effective value has no meaning.
std::optional<Driven> drivenTooFar(const devices::Junction& lamp, const LampReading& reading,
                                   double ratings) {
    const bool first = ratings > 1;
    const std::string more = first ? ", more than twice the " : "";
    const bool rmsOver = !first && reading.rms_A && *reading.rms_A > lamp.ratedCurrent;
    const bool peakOver = reading.peak_A && *reading.peak_A > ratings * lamp.pulseCurrent;
    const bool longOver = reading.overRated_s && *reading.overRated_s > longestPulse;
    if (!rmsOver && !peakOver && !longOver) return std::nullopt;
    const double rating = rmsOver || !peakOver ? lamp.ratedCurrent : lamp.pulseCurrent;
    std::string how = rmsOver             ? " (effective value); it is rated for "
                      : peakOver && first ? " at its peak" + more
                      : peakOver          ? " at its peak; pulses may reach "
                      : first             ? " at its peak and stays" + more.substr(1)
                                          : " at its peak and stays over its rating for " +
                                    text(*reading.overRated_s, Unit::second) +
                                    ", too long for a pulse; it is rated for ";
    how += text(rating, Unit::ampere);
    if (first)
        how += peakOver ? " that pulses may reach"
                        : " that it is rated for, for " + text(*reading.overRated_s, Unit::second);
    return Driven{rmsOver ? *reading.rms_A : *reading.peak_A, ratings * rating, how,
                  rmsOver || peakOver ? "rating of the lamp"
                                      : "rating of the lamp; pulses of up to 10 ms, from memory"};
}

const char* const firstFlash = "In the first flash after power-on ";

void drivenFinding(const devices::Junction& lamp, const Driven& driven, bool first, Findings& findings) {
    findings.push_back({.kind = "lamp-overdriven",
                        .severity = Severity::overstress,
                        .places = {lamp.ref},
                        .text = (first ? firstFlash : "") + lamp.ref + " carries " +
                                text(driven.number, Unit::ampere) + driven.how + ".",
                        .remedy = "Take a larger lamp resistor.",
                        .number = driven.number,
                        .limit = driven.limit,
                        .source = driven.source});
}

void reversedFinding(const devices::Junction& lamp, double volts, bool first, Findings& findings) {
    findings.push_back(
        {.kind = "lamp-reversed",
         .severity = Severity::overstress,
         .places = {lamp.ref},
         .text = (first ? firstFlash : "") + lamp.ref + " sees " + text(volts, Unit::volt) +
                 " the wrong way round; it stands " + text(lamp.reverseLimit, Unit::volt) + ".",
         .remedy = "Turn it, or put a diode or a second lamp beside it in the opposite direction.",
         .number = volts,
         .limit = (first ? firstFlashRatings : 1) * lamp.reverseLimit,
         .source = "rating of the lamp"});
}

} // namespace

const LampReading* lampRow(const std::vector<LampReading>& rows, std::string_view ref) {
    const auto at = std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return row.ref == ref; });
    return at == rows.end() ? nullptr : &*at;
}

void lampRatingFindings(const devices::Junction& lamp, const LampReading* settled, const LampReading* first,
                        Findings& findings) {
    const auto driven = settled ? drivenTooFar(lamp, *settled, 1) : std::nullopt;
    const auto atFirst = first ? drivenTooFar(lamp, *first, firstFlashRatings) : std::nullopt;
    if (driven || atFirst) drivenFinding(lamp, driven ? *driven : *atFirst, !driven, findings);
    const auto reverse = [&](const LampReading* row, double ratings) {
        return row && row->reversePeak_V && *row->reversePeak_V > ratings * lamp.reverseLimit;
    };
    if (reverse(settled, 1))
        reversedFinding(lamp, *settled->reversePeak_V, false, findings);
    else if (reverse(first, firstFlashRatings))
        reversedFinding(lamp, *first->reversePeak_V, true, findings);
}

} // namespace blinkwright::study::detail
