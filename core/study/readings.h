// Readings: the figures of a run, as the table shows them and as `readings` prints them.
//
//   Study s = study(circuit, PartSet::A, {});        // study.h
//   s.readings.timers[0].settled->period_s()
#pragma once

#include "core/engine/transient.h"
#include "core/study/phase.h"
#include "core/study/textbook.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace blinkwright::study {

enum class Verdict { blinks, settlesHigh, settlesLow, doesNotSettle, cannotRun };
/// As printed: `blinks`, `settles high`, ...
std::string_view name(Verdict verdict);

struct TimerReading {
    std::string ref;
    std::vector<double> switchings_s = {};
    std::optional<double> firstHigh_s = {};
    std::optional<Phase> settled = {};
    std::optional<Textbook> textbook = {};
};
struct LampReading {
    circuit::PartId id;
    std::string ref;
    std::optional<double> peak_A = {}, mean_A = {}, rms_A = {}, charge_C = {}, litTime_s = {},
                          reversePeak_V = {};
    std::optional<double> darkerMean_A =
        {};                                 ///< mean in the phase of the first timer in which it carries less
    bool brighterHigh = false;              ///< that is the low phase
    std::optional<double> effective_A = {}; ///< steady current of equal effect on the eye; see FlashLight
    std::optional<double> overRated_s = {}; ///< longest time in one piece above the rated current
};
struct SupplyReading {
    std::string ref;
    std::optional<double> mean_A = {}, peak_A = {}, energy_J = {};
    std::optional<double> batteryLife_s =
        {}; ///< capacity over mean current, where the supply states a capacity
};
struct PartReading {
    std::string ref;
    std::optional<double> meanPower_W = {}, peakCurrent_A = {}, peakVoltage_V = {};
    /// Mean power in the phase of the first timer in which the part turns more into heat, and how long that
    /// phase lasts.
    std::optional<double> hotterPower_W = {}, hotterPhase_s = {};
    std::optional<double> lowestVoltage_V = {}; ///< capacitors: plus against minus
    std::optional<double> sourced_A = {}, sunk_A = {},
                          dischargePeak_A = {}; ///< timers: peaks of pins 3 and 7
};

/// From power-on to the end of the first cycle: what the settled figures do not show.
struct FirstFlash {
    std::vector<LampReading> lamps; ///< overRated_s counts from firstFlashRatings times the rated current
    std::vector<PartReading> parts;
};
/// Overstress in the first flash counts from this many ratings on.
inline constexpr double firstFlashRatings = 2;

struct Readings {
    Verdict verdict = Verdict::cannotRun;
    std::vector<std::string> reasons; ///< sentences that say what to mend
    std::vector<std::string> places;  ///< parts and pins that the reasons are about: `R1`, `U1:4`
    std::vector<TimerReading> timers;
    std::vector<LampReading> lamps;
    std::optional<SupplyReading> supply; ///< the first supply
    std::vector<PartReading> parts;      ///< every part but lamps' own figures, in file order
    FirstFlash firstFlash;               ///< empty where nothing blinks
    bool overRun = false; ///< figures are over the whole cycles of the run, not over a settled period
    engine::RunReport run;
};

} // namespace blinkwright::study
