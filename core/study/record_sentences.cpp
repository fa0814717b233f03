#include "core/base/wording.h"
#include "core/study/record_reduction.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using circuit::TraceOf;
using units::formatQuantity;
using units::Unit;

namespace {

std::string tracesText(const circuit::Record& record) {
    const auto what = [&](std::size_t k) {
        const TraceOf of = record.traces[k].of;
        return of == TraceOf::output ? wording::inWords("the output")
               : of == TraceOf::capacitor
                   ? wording::inWords("the timing capacitor")
                   : wording::inWords("neither output nor timing capacitor: it is kept and shown");
    };
    return record.traces.size() > 1
               ? wording::inWords("The first voltage is %1, the second %2.", what(0), what(1))
               : wording::inWords("The voltage is %1.", what(0));
}

std::string samplesText(const Reduction& reduction) {
    const circuit::Record& record = reduction.record;
    const std::string step = formatQuantity(record.step_s, Unit::second, 4);
    if (record.time_s.size() < reduction.samples)
        return wording::inWords("%1 samples, one every %2. %3 of them are kept for the picture.",
                                reduction.samples, step, record.time_s.size());
    return wording::inWords("%1 samples, one every %2.", reduction.samples, step);
}

std::string levelsText(const Reduction& reduction) {
    const circuit::Levels& levels = *reduction.record.levels;
    // To a thousandth of the swing: a low level of 0.4 mV is 0 V to any instrument.
    const double step = (levels.high_V - levels.low_V) / 1000;
    const auto volts = [&](double level) {
        return formatQuantity(step > 0 ? std::round(level / step) * step : level, Unit::volt);
    };
    const std::string high = volts(levels.high_V), low = volts(levels.low_V);
    return reduction.from == SwitchingsFrom::levels
               ? wording::inWords("The output stands at %1 and %2; the noise on it is %3.", high, low,
                                  formatQuantity(reduction.noise_V, Unit::volt, 2))
               : wording::inWords(
                     "There is no output in it: the switchings are the capacitor's turns, at %1 and %2.",
                     high, low);
}

} // namespace

std::vector<std::string> saidOf(const Reduction& reduction) {
    const circuit::Record& record = reduction.record;
    std::vector<std::string> said;
    said.push_back(samplesText(reduction));
    said.push_back(tracesText(record));
    if (record.levels) said.push_back(levelsText(reduction));
    said.push_back(record.switchings_s.size() == 1
                       ? wording::inWords("1 switching was found.")
                       : wording::inWords("%1 switchings were found.", record.switchings_s.size()));
    if (reduction.glitches == 1)
        said.push_back(
            wording::inWords("1 state of a sample or two was taken for glitches and passed over."));
    if (reduction.glitches > 1)
        said.push_back(wording::inWords(
            "%1 states of a sample or two were taken for glitches and passed over.", reduction.glitches));
    if (reduction.skipped == 1)
        said.push_back(wording::inWords("1 row without a number was passed over, the first in line %1.",
                                        reduction.firstSkipped));
    if (reduction.skipped > 1)
        said.push_back(wording::inWords("%1 rows without a number were passed over, the first in line %2.",
                                        reduction.skipped, reduction.firstSkipped));
    if (reduction.evened)
        said.push_back(wording::inWords(
            "Times of neighbouring rows are equal as written: they are spaced evenly here."));
    if (reduction.looksFromPowerOn)
        said.push_back(wording::inWords(
            "It seems to begin with power-on: the first high phase is longer than the others."));
    return said;
}

} // namespace blinkwright::study
