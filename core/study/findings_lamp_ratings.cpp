// Findings on the ratings of lamps: currents and reverse voltage, settled and in the first flash.
#include "core/study/findings_detail.h"

#include <algorithm>

namespace blinkwright::study::detail {

namespace {

using units::Unit;

constexpr double longestPulse = 10e-3; // [s] from here the rated current holds, from memory

std::string lampRating() {
    return wording::inWords("rating of the lamp");
}

/// What one span of figures says of a lamp's rating.
struct Driven {
    double number, limit;
    std::string text, source;
};

/// @param ratings how many ratings are held against: 1 for the settled period, more for the first flash,
/// where an effective value has no meaning.
std::optional<Driven> drivenTooFar(const devices::Junction& lamp, const LampReading& reading,
                                   double ratings) {
    const bool first = ratings > 1;
    const bool rmsOver = !first && reading.rms_A && *reading.rms_A > lamp.ratedCurrent;
    const bool peakOver = reading.peak_A && *reading.peak_A > ratings * lamp.pulseCurrent;
    const bool longOver = reading.overRated_s && *reading.overRated_s > longestPulse;
    if (!rmsOver && !peakOver && !longOver) return std::nullopt;
    const double rating = rmsOver || !peakOver ? lamp.ratedCurrent : lamp.pulseCurrent;
    const double number = rmsOver ? *reading.rms_A : *reading.peak_A;
    const std::string found = text(number, Unit::ampere), allowed = text(rating, Unit::ampere);
    if (rmsOver)
        return Driven{number, ratings * rating,
                      wording::inWords("%1 carries %2 (effective value); it is rated for %3.", lamp.ref,
                                       found, allowed),
                      lampRating()};
    if (peakOver)
        return Driven{
            number, ratings * rating,
            first ? wording::inWords("In the first flash after power-on %1 carries %2 at its peak, more than "
                                     "twice the %3 that pulses may reach.",
                                     lamp.ref, found, allowed)
                  : wording::inWords("%1 carries %2 at its peak; pulses may reach %3.", lamp.ref, found,
                                     allowed),
            lampRating()};
    const std::string howLong = text(*reading.overRated_s, Unit::second);
    return Driven{
        number, ratings * rating,
        first ? wording::inWords("In the first flash after power-on %1 carries %2 at its peak and stays more "
                                 "than twice the %3 that it is rated for, for %4.",
                                 lamp.ref, found, allowed, howLong)
              : wording::inWords("%1 carries %2 at its peak and stays over its rating for %3, too long for a "
                                 "pulse; it is rated for %4.",
                                 lamp.ref, found, howLong, allowed),
        wording::inWords("rating of the lamp; pulses of up to 10 ms, from memory")};
}

void drivenFinding(const devices::Junction& lamp, const Driven& driven, Findings& findings) {
    findings.push_back({.kind = "lamp-overdriven",
                        .severity = Severity::overstress,
                        .places = {lamp.ref},
                        .text = driven.text,
                        .remedy = wording::inWords("Take a larger lamp resistor."),
                        .number = driven.number,
                        .limit = driven.limit,
                        .source = driven.source});
}

void reversedFinding(const devices::Junction& lamp, double volts, bool first, Findings& findings) {
    const std::string found = text(volts, Unit::volt), allowed = text(lamp.reverseLimit, Unit::volt);
    findings.push_back(
        {.kind = "lamp-reversed",
         .severity = Severity::overstress,
         .places = {lamp.ref},
         .text = first ? wording::inWords("In the first flash after power-on %1 sees %2 the wrong way round; "
                                          "it stands %3.",
                                          lamp.ref, found, allowed)
                       : wording::inWords("%1 sees %2 the wrong way round; it stands %3.", lamp.ref, found,
                                          allowed),
         .remedy = wording::inWords(
             "Turn it, or put a diode or a second lamp beside it in the opposite direction."),
         .number = volts,
         .limit = (first ? firstFlashRatings : 1) * lamp.reverseLimit,
         .source = lampRating()});
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
    if (driven || atFirst) drivenFinding(lamp, driven ? *driven : *atFirst, findings);
    const auto reverse = [&](const LampReading* row, double ratings) {
        return row && row->reversePeak_V && *row->reversePeak_V > ratings * lamp.reverseLimit;
    };
    if (reverse(settled, 1))
        reversedFinding(lamp, *settled->reversePeak_V, false, findings);
    else if (reverse(first, firstFlashRatings))
        reversedFinding(lamp, *first->reversePeak_V, true, findings);
}

} // namespace blinkwright::study::detail
