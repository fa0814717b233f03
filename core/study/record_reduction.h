// From the columns of an instrument to a record: what its traces are, their levels, every switching, and few
// enough samples to keep in a circuit.
//
//   Result<Reduction> r = reduceRecord(raw);
//   r.value().record.switchings_s;   // the output crossed the middle of its levels
//   figuresOf(r.value().record);     // period, high, low, duty
//   for (const std::string& sentence : saidOf(r.value())) ...
#pragma once

#include "core/base/result.h"
#include "core/study/raw_record.h"

#include <atomic>
#include <optional>
#include <string>
#include <vector>

namespace blinkwright::study {

struct ReductionOptions {
    /// Whether the supply was applied within the record; nothing: as it looks.
    std::optional<bool> fromPowerOn = {};
    double timeUncertainty = 1e-4; ///< relative standard uncertainty of the time base, >= 0
    /// A state of fewer samples is a glitch and passed over, where the others of its kind are at least ten
    /// times as long. 1: none is.
    int glitchSamples = 3;
    const std::atomic<bool>* cancel = nullptr; ///< the result is a fault then
};

/// Where switchings come from.
enum class SwitchingsFrom {
    levels,        ///< crossings of the middle of a two-level trace
    turningPoints, ///< of the capacitor, which turns at the timer's switching levels
};

struct Reduction {
    circuit::Record record;
    SwitchingsFrom from = SwitchingsFrom::levels;
    bool looksFromPowerOn = false; ///< only a suggestion, which the options overrule
    double noise_V = 0;            ///< standard deviation of one sample of the trace that was read
    std::size_t samples = 0;       ///< as recorded
    std::size_t glitches = 0;      ///< passed over
    std::size_t skipped = 0, firstSkipped = 0; ///< as in RawRecord
    bool evened = false; ///< times were rounded so far that neighbours were equal, and are spaced evenly now
};

/// From power-on, time 0 of the record is the moment at which the supply came, and its first switching is the
/// end of the first high phase. Else times stay as they were recorded.
/// @return a fault for fewer than three samples, times that do not advance, no trace of two levels and no
/// capacitor that turns, or more switchings than a record may hold.
Result<Reduction> reduceRecord(const RawRecord& raw, const ReductionOptions& options = {});

/// What was found, in plain sentences.
std::vector<std::string> saidOf(const Reduction& reduction);

} // namespace blinkwright::study
