// What the eye makes of a lamp's flashes: how long, how bright, in which rhythm, and for which stated uses
// the rate would do.
//
//   for (const EyeReading& e : eyeOf(circuit, set, board, readings)) show(e.ref, name(e.look),
//   name(e.rhythm));
#pragma once

#include "core/study/readings.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::study {

/// The eye's constant in the law of Blondel and Rey, at the threshold by night; from memory (0.1 s by day).
inline constexpr double blondelRey_s = 0.2;
/// More flashes a second than this are a hazard to some. WCAG 2.2, success criterion 2.3.1.
inline constexpr double flashesPerSecond = 3;
/// Above this rate flashes run together: cones at high luminance.
inline constexpr double fusionRate_Hz = 60;
/// Up to here flashes are seen one by one; from memory.
inline constexpr double separateRate_Hz = 10;

enum class Look { dark, lit, separate, flickering, steady };
/// As printed: `separate flashes`, `appears steady`, ...
std::string_view name(Look look);

/// Classes of the rhythm of marine lights: IALA recommendation R0110 (E-110), IHO Chart No. 1, section P.
enum class Rhythm { fixed, flashing, longFlashing, isophase, occulting, quick, veryQuick, ultraQuick, none };
/// `isophase`, `quick`, ...; of none: `none`.
std::string_view name(Rhythm rhythm);
/// The abbreviation on a chart: `Iso`, `Q`, `VQ`; of none empty.
std::string_view chartText(Rhythm rhythm);

/// @param lit_s, dark_s of one period; lit_s > 0 or dark_s > 0
Rhythm rhythmOf(double lit_s, double dark_s);

/// A use with a stated range of rates.
struct LightUse {
    std::string_view name;
    double least_perMinute, most_perMinute;
    double leastLit = 0, mostLit = 1; ///< lit time over period
    bool turns = false;               ///< two lamps taking turns
    std::string_view source;
};
enum class Fit { within, tooSlow, tooFast, litTooShort, litTooLong, oneLampOnly };
/// In words: `within`, `too slow`, ...
std::string_view name(Fit fit);
/// @param turns whether a second lamp is lit while this one is dark
Fit fitOf(const LightUse& use, double rate_Hz, double lit, bool turns);
/// Every use that is known. Whether one is allowed is for local rules to say.
const std::vector<LightUse>& lightUses();

struct EyeReading {
    std::string ref;
    double rate_Hz = 0;
    double flash_s = 0; ///< visible length of a flash: above 5 % of the rated current
    Look look = Look::dark;
    Rhythm rhythm = Rhythm::none;
    double meanOfRated = 0;                ///< mean current over rated; above fusion that is what is seen
    std::optional<double> effectiveOfPeak; ///< effective intensity over that of the peak; single flashes only
    std::optional<double> effective_cd;    ///< where the lamp states its luminous intensity
    bool flickers = false;                 ///< the caution: more than three flashes a second, not steady
    bool turns = false;                    ///< another lamp is lit while this one is dark
    std::vector<Fit> uses;                 ///< in the order of lightUses()
};

/// One for each lamp; empty where the board does not blink.
std::vector<EyeReading> eyeOf(const circuit::Circuit& circuit, circuit::PartSet set,
                              const devices::Board& board, const Readings& readings);

} // namespace blinkwright::study
