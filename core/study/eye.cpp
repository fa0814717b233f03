#include "core/study/eye.h"

#include "core/base/wording.h"
#include "core/devices/defaults.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

/// Lit and dark count as equal within this share of the period: the eye sees no difference. Own judgement, no
/// source.
constexpr double equalWithin = 0.05;
constexpr double longFlash_s = 2; // IALA R0110: a long flash is 2 s or longer
// Rates a minute at which the quick classes begin and end: IHO Chart No. 1, section P; IALA R0110.
constexpr double quick = 50, veryQuick = 80, ultraQuick = 160, fastest = 300;

} // namespace

std::string_view name(Look look) {
    switch (look) {
    case Look::dark:
        return wording::marked("dark");
    case Look::lit:
        return wording::marked("always lit");
    case Look::separate:
        return wording::marked("separate flashes");
    case Look::flickering:
        return wording::marked("flickers");
    case Look::steady:
        return wording::marked("appears steady");
    }
    return {};
}

std::string_view name(Rhythm rhythm) {
    constexpr std::string_view names[] = {
        wording::marked("fixed"),      wording::marked("flashing"),    wording::marked("long-flashing"),
        wording::marked("isophase"),   wording::marked("occulting"),   wording::marked("quick"),
        wording::marked("very quick"), wording::marked("ultra quick"), wording::marked("none")};
    return names[static_cast<std::size_t>(rhythm)];
}

std::string_view chartText(Rhythm rhythm) {
    constexpr std::string_view texts[] = {"F", "Fl", "LFl", "Iso", "Oc", "Q", "VQ", "UQ", ""};
    return texts[static_cast<std::size_t>(rhythm)];
}

Rhythm rhythmOf(double lit_s, double dark_s) {
    if (!(dark_s > 0)) return Rhythm::fixed;
    const double minute = 60 / (lit_s + dark_s);
    if (!(lit_s > 0) || minute > fastest) return Rhythm::none;
    if (minute >= ultraQuick) return Rhythm::ultraQuick;
    if (minute >= veryQuick) return Rhythm::veryQuick;
    if (minute >= quick) return Rhythm::quick;
    if (std::abs(lit_s - dark_s) <= equalWithin * (lit_s + dark_s)) return Rhythm::isophase;
    if (lit_s > dark_s) return Rhythm::occulting;
    return lit_s >= longFlash_s ? Rhythm::longFlashing : Rhythm::flashing;
}

std::string_view name(Fit fit) {
    switch (fit) {
    case Fit::within:
        return wording::marked("within");
    case Fit::tooSlow:
        return wording::marked("too slow");
    case Fit::tooFast:
        return wording::marked("too fast");
    case Fit::litTooShort:
        return wording::marked("lit too short");
    case Fit::litTooLong:
        return wording::marked("lit too long");
    case Fit::oneLampOnly:
        return wording::marked("wants two lamps taking turns");
    }
    return {};
}

const std::vector<LightUse>& lightUses() {
    static const std::vector<LightUse> uses{
        {.name = wording::marked("vehicle hazard lamps and direction indicators"),
         .least_perMinute = 60,
         .most_perMinute = 120,
         .source = wording::marked(
             "FMVSS 108 with SAE J945, 60 to 120 a minute; UN R48 and R6, 90 +/- 30 a minute")},
        {.name = wording::marked("cycle lamp"),
         .least_perMinute = 60,
         .most_perMinute = 240,
         .source = wording::marked(
             "UK Road Vehicles Lighting Regulations 1989, regulation 13, as amended by SI 2005/2559; "
             "elsewhere flashing may be forbidden")},
        {.name = wording::marked("traffic beacon"),
         .least_perMinute = 50,
         .most_perMinute = 60,
         .leastLit = 1.0 / 2,
         .mostLit = 2.0 / 3,
         .source = wording::marked(
             "MUTCD 4L.01, 50 to 60 a minute and lit for 1/2 to 2/3 (FHWA interpretation 4(09)-64)")},
        {.name = wording::marked("rail crossing"),
         .least_perMinute = 45,
         .most_perMinute = 65,
         .turns = true,
         .source = wording::marked(
             "FHWA Railroad-Highway Grade Crossing Handbook, 2nd edition 2007, 45 to 65 a minute; others "
             "begin at 35, from memory")}};
    return uses;
}

Fit fitOf(const LightUse& use, double rate_Hz, double lit, bool turns) {
    constexpr double rounding = 1e-9;
    if (60 * rate_Hz < use.least_perMinute * (1 - rounding)) return Fit::tooSlow;
    if (60 * rate_Hz > use.most_perMinute * (1 + rounding)) return Fit::tooFast;
    if (lit < use.leastLit - rounding) return Fit::litTooShort;
    if (lit > use.mostLit + rounding) return Fit::litTooLong;
    if (use.turns && !turns) return Fit::oneLampOnly;
    return Fit::within;
}

std::vector<EyeReading> eyeOf(const circuit::Circuit& circuit, circuit::PartSet set,
                              const devices::Board& board, const Readings& readings) {
    std::vector<EyeReading> all;
    if (readings.verdict != Verdict::blinks || readings.timers.empty() || !readings.timers.front().settled)
        return all;
    const Phase& cycle = *readings.timers.front().settled;
    const double rate = cycle.rate_Hz(), period = cycle.period_s();
    std::size_t row = 0;
    for (const devices::Junction& lamp : board.junctions) {
        if (!lamp.lamp) continue;
        const LampReading& reading = readings.lamps[row++];
        EyeReading eye;
        eye.ref = lamp.ref;
        eye.rate_Hz = rate;
        eye.flash_s = reading.litTime_s.value_or(0);
        eye.meanOfRated = reading.mean_A.value_or(0) / lamp.ratedCurrent;
        const bool everLit = eye.flash_s > 0, everDark = eye.flash_s < period * (1 - 1e-6);
        eye.look = !everLit                 ? Look::dark
                   : !everDark              ? Look::lit
                   : rate > fusionRate_Hz   ? Look::steady
                   : rate > separateRate_Hz ? Look::flickering
                                            : Look::separate;
        eye.flickers = everLit && everDark && rate > flashesPerSecond && rate <= fusionRate_Hz;
        if (everLit) eye.rhythm = rhythmOf(eye.flash_s, everDark ? period - eye.flash_s : 0);
        if (eye.look == Look::separate && reading.effective_A && reading.peak_A.value_or(0) > 0) {
            eye.effectiveOfPeak = *reading.effective_A / *reading.peak_A;
            // Light in proportion to the current: about so from 1 to 20 mA, from memory.
            if (lamp.luminousIntensity)
                eye.effective_cd = *lamp.luminousIntensity * *reading.effective_A /
                                   devices::effectiveNumber(circuit, set, lamp.id, "test_current");
        }
        all.push_back(std::move(eye));
    }
    const auto blinks = [&](std::size_t lamp) {
        return all[lamp].look != Look::dark && all[lamp].look != Look::lit;
    };
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!blinks(i)) continue;
        for (std::size_t j = 0; j < all.size(); ++j)
            all[i].turns |= blinks(j) && readings.lamps[i].brighterHigh != readings.lamps[j].brighterHigh;
        for (const LightUse& use : lightUses())
            all[i].uses.push_back(fitOf(use, rate, all[i].flash_s / period, all[i].turns));
    }
    return all;
}

} // namespace blinkwright::study
