#include "core/study/record_reduction.h"
#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using circuit::TraceOf;
using units::formatQuantity;
using units::Unit;

namespace {

std::string counted(std::size_t count, const std::string& one) {
    return std::to_string(count) + " " + one + (count == 1 ? "" : "s");
}

std::string tracesText(const circuit::Record& record) {
    std::string text;
    for (std::size_t k = 0; k < record.traces.size(); ++k) {
        const TraceOf of = record.traces[k].of;
        text += k == 0 ? (record.traces.size() > 1 ? "The first voltage is " : "The voltage is ")
                       : ", the second ";
        text += of == TraceOf::output      ? "the output"
                : of == TraceOf::capacitor ? "the timing capacitor"
                                           : "neither output nor timing capacitor: it is kept and shown";
    }
    return text + ".";
}

} // namespace

std::vector<std::string> saidOf(const Reduction& reduction) {
    const circuit::Record& record = reduction.record;
    std::vector<std::string> said;
    said.push_back(std::to_string(reduction.samples) + " samples, one every " +
                   formatQuantity(record.step_s, Unit::second, 4) + "." +
                   (record.time_s.size() < reduction.samples
                        ? " " + std::to_string(record.time_s.size()) + " of them are kept for the picture."
                        : ""));
    said.push_back(tracesText(record));
    if (record.levels) {
        // To a thousandth of the swing: a low level of 0.4 mV is 0 V to any instrument.
        const double step = (record.levels->high_V - record.levels->low_V) / 1000;
        const auto volts = [&](double level) {
            return formatQuantity(step > 0 ? std::round(level / step) * step : level, Unit::volt);
        };
        const std::string levels = volts(record.levels->high_V) + " and " + volts(record.levels->low_V);
        said.push_back(reduction.from == SwitchingsFrom::levels
                           ? "The output stands at " + levels + "; the noise on it is " +
                                 formatQuantity(reduction.noise_V, Unit::volt, 2) + "."
                           : "There is no output in it: the switchings are the capacitor's turns, at " +
                                 levels + ".");
    }
    said.push_back(counted(record.switchings_s.size(), "switching") +
                   (record.switchings_s.size() == 1 ? " was found." : " were found."));
    if (reduction.glitches > 0)
        said.push_back(counted(reduction.glitches, "state") + " of a sample or two " +
                       (reduction.glitches == 1 ? "was" : "were") + " taken for glitches and passed over.");
    if (reduction.skipped > 0)
        said.push_back(counted(reduction.skipped, "row") + " without a number " +
                       (reduction.skipped == 1 ? "was" : "were") + " passed over, the first in line " +
                       std::to_string(reduction.firstSkipped) + ".");
    if (reduction.evened)
        said.push_back("Times of neighbouring rows are equal as written: they are spaced evenly here.");
    if (reduction.looksFromPowerOn)
        said.push_back("It seems to begin with power-on: the first high phase is longer than the others.");
    return said;
}

} // namespace blinkwright::study
