#include "core/study/symptom_signs.h"

#include "core/base/wording.h"
#include "core/study/eye.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {

// From where on people notice: common practice, no source.
constexpr double noticedRate = 1.3, rateSoftness = 0.1; ///< ratio of rates; softness in its logarithm
constexpr double noticedShare = 0.15, shareSoftness = 0.04;
constexpr double noticedFaint = 0.4, noticedBright = 1.9, brightSoftness = 0.2; ///< ratio of currents
constexpr double dark_A = 1e-4; ///< an indicator lamp at a tenth of a milliampere glows, barely
constexpr double steadyRatio = 0.6;

double step(double x) {
    return 1 / (1 + std::exp(-std::clamp(x, -40.0, 40.0)));
}

/// How a lamp glows at the rate of the board.
struct Glow {
    double seen_A = 0; ///< the current that its brightness goes by
    bool dark = true, steady = false;
};
Glow glowOf(const LampSeen& lamp, const Behaviour& board) {
    const bool fuses = board.period_s > 0 && 1 / board.period_s > 0.5 * fusionRate_Hz;
    Glow glow;
    glow.steady = board.period_s <= 0 || fuses || lamp.ratio > steadyRatio;
    glow.seen_A = glow.steady ? lamp.mean_A : lamp.litMean_A;
    if (!glow.steady) {
        // A flash that is over before the eye has added it up looks weak (Blondel and Rey; see eye.h).
        if (lamp.lit <= 0) glow.seen_A = lamp.peak_A;
        const double flash_s = lamp.lit > 0 ? lamp.lit * board.period_s : 0.5 * board.period_s;
        glow.seen_A *= flash_s / (flash_s + blondelRey_s);
    }
    glow.dark = !(glow.seen_A > dark_A);
    return glow;
}

} // namespace

std::string_view words(Symptom symptom) {
    switch (symptom) {
    case Symptom::dark:
        return wording::marked("stays dark");
    case Symptom::alwaysLit:
        return wording::marked("always lit");
    case Symptom::tooFast:
        return wording::marked("too fast");
    case Symptom::tooSlow:
        return wording::marked("too slow");
    case Symptom::litTooLong:
        return wording::marked("lit too long");
    case Symptom::litTooShort:
        return wording::marked("lit too short");
    case Symptom::faint:
        return wording::marked("faint");
    case Symptom::tooBright:
        return wording::marked("too bright");
    case Symptom::oneLampOnly:
        return wording::marked("one lamp only");
    case Symptom::bothAtOnce:
        return wording::marked("both at once");
    case Symptom::asIntended:
        return wording::marked("blinks as it should");
    }
    return "";
}

bool wantsTwoLamps(Symptom symptom) {
    return symptom == Symptom::oneLampOnly || symptom == Symptom::bothAtOnce;
}

Signs signsOf(const Behaviour& asDrawn, const Behaviour& broken) {
    Signs signs;
    const std::size_t count = std::min(asDrawn.lamps.size(), broken.lamps.size());
    std::size_t dark = 0, steady = 0, moreDark = 0;
    double faint = 0, bright = 0, longer = 0, shorter = 0;
    for (std::size_t k = 0; k < count; ++k) {
        const Glow was = glowOf(asDrawn.lamps[k], asDrawn), is = glowOf(broken.lamps[k], broken);
        if (is.dark) ++dark;
        if (is.dark && !was.dark) ++moreDark;
        if (!is.dark && is.steady) ++steady;
        if (is.dark || was.dark) continue;
        const double ratio = std::log(is.seen_A / was.seen_A);
        faint = std::max(faint, step((std::log(noticedFaint) - ratio) / brightSoftness));
        bright = std::max(bright, step((ratio - std::log(noticedBright)) / brightSoftness));
        if (is.steady || was.steady) continue;
        const double more = broken.lamps[k].lit - asDrawn.lamps[k].lit;
        longer = std::max(longer, step((more - noticedShare) / shareSoftness));
        shorter = std::max(shorter, step((-more - noticedShare) / shareSoftness));
    }
    const bool anyBlinks = count > dark + steady;
    if (count > 0 && dark == count) signs[Symptom::dark] = 1;
    if (steady > 0 && !anyBlinks) signs[Symptom::alwaysLit] = dark > 0 ? 0.7 : 1;
    if (count > 1 && dark < count && moreDark > 0) signs[Symptom::oneLampOnly] = 1;
    signs[Symptom::faint] = faint;
    signs[Symptom::tooBright] = bright;
    signs[Symptom::litTooLong] = longer;
    signs[Symptom::litTooShort] = shorter;
    if (broken.period_s > 0 && asDrawn.period_s > 0 && (dark < count || count == 0)) {
        const double faster = std::log(asDrawn.period_s / broken.period_s);
        // Flashes that run together look like steady light to most.
        const double visible = anyBlinks || count == 0 ? 1 : 0.4;
        signs[Symptom::tooFast] = visible * step((faster - std::log(noticedRate)) / rateSoftness);
        signs[Symptom::tooSlow] = visible * step((-faster - std::log(noticedRate)) / rateSoftness);
        // Who waits for half a minute?
        constexpr double patience_s = 20;
        const double endless = step(std::log(broken.period_s / patience_s) / 0.3);
        signs[Symptom::alwaysLit] = std::max(signs[Symptom::alwaysLit], 0.5 * endless);
        signs[Symptom::dark] = std::max(signs[Symptom::dark], 0.5 * endless);
    }
    if (count > 1 && dark + 1 < count)
        signs[Symptom::bothAtOnce] = step((broken.together - asDrawn.together - 0.5) / 0.1);
    double worst = 0;
    for (const Symptom symptom : allSymptoms) worst = std::max(worst, signs[symptom]);
    signs[Symptom::asIntended] = broken.state == BoardState::blinks && anyBlinks ? 1 - worst : 0;
    return signs;
}

} // namespace blinkwright::study
