#include "core/study/measured_readings.h"

#include "core/base/wording.h"
#include "core/study/beat.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace blinkwright::study {

using circuit::Measured;

namespace {

constexpr int fewestForScatter = 3;
/// A time that is known to one step is spread evenly over it: u = step / sqrt(12) (JCGM 100:2008, 4.3.7).
const double evenly = 1 / std::sqrt(12.0);

double hypot3(double a, double b, double c) {
    return std::sqrt(a * a + b * b + c * c);
}

/// Mean of differences, with the uncertainty that the scatter of a switching gives it.
Measured meanOf(const std::vector<double>& values, double switching_s, double relative) {
    const double n = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / n;
    return {mean, hypot3(switching_s * std::sqrt(2 / n), relative * mean, 0)};
}

/// Weighted mean of what is measured several times.
class Combined {
  public:
    /// @param from place of the measurement in the circuit's list
    void add(const Measured& one, std::size_t from) { m_all.push_back({one, from}); }
    std::optional<Measured> value(const std::string& figure, std::vector<Clash>& clashes) const {
        if (m_all.empty()) return {};
        addClash(figure, clashes);
        double weights = 0, sum = 0;
        for (const auto& [one, from] : m_all) {
            if (one.uncertainty == 0) return one; // exact: the others cannot better it
            const double weight = 1 / (one.uncertainty * one.uncertainty);
            weights += weight;
            sum += weight * one.value;
        }
        return Measured{sum / weights, 1 / std::sqrt(weights)};
    }

  private:
    void addClash(const std::string& figure, std::vector<Clash>& clashes) const {
        double worst = coverage;
        std::optional<Clash> found;
        for (std::size_t i = 0; i < m_all.size(); ++i)
            for (std::size_t j = i + 1; j < m_all.size(); ++j) {
                const auto& [a, first] = m_all[i];
                const auto& [b, second] = m_all[j];
                const double apart = std::abs(a.value - b.value);
                const double common = std::hypot(a.uncertainty, b.uncertainty);
                if (apart <= worst * common) continue;
                if (common > 0) worst = apart / common;
                found = Clash{figure, first, second};
                if (common == 0) break;
            }
        if (found) clashes.push_back(*found);
    }

    std::vector<std::pair<Measured, std::size_t>> m_all;
};

struct Collector {
    const circuit::Circuit& circuit;
    std::size_t at = 0; ///< the measurement that is being read
    Combined period = {}, high = {}, low = {}, duty = {}, firstHigh = {}, supply = {}, outputHigh = {},
             outputLow = {};
    std::map<circuit::PartId, Combined> lamps = {};
    std::map<std::pair<circuit::PartId, std::string>, Combined> parts = {};

    bool isFirst(circuit::PartId part) const {
        const circuit::Part* of = circuit.find(part);
        const auto first = std::ranges::find(circuit.parts(), of->kind, &circuit::Part::kind);
        return first->id == part;
    }
    void add(Combined& to, const std::optional<Measured>& value) const {
        if (value) to.add(*value, at);
    }

    void operator()(const circuit::Count& count) {
        add(period, Measured{count.time_s.value / count.flashes, count.time_s.uncertainty / count.flashes});
    }
    void operator()(const circuit::MeterReading& reading) {
        using Quantity = circuit::MeterQuantity;
        if (reading.quantity == Quantity::lampCurrent) return add(lamps[reading.part], reading.value);
        if (reading.quantity == Quantity::partValue)
            return add(parts[{reading.part, reading.key}], reading.value);
        if (!isFirst(reading.part)) return;
        if (reading.quantity == Quantity::supplyVoltage) add(supply, reading.value);
        if (reading.quantity == Quantity::outputHigh) add(outputHigh, reading.value);
        if (reading.quantity == Quantity::outputLow) add(outputLow, reading.value);
    }
    void operator()(const circuit::Record& record) {
        const RecordFigures figures = figuresOf(record);
        add(period, figures.period_s);
        add(high, figures.high_s);
        add(low, figures.low_s);
        add(duty, figures.duty);
        add(firstHigh, figures.firstHigh_s);
    }
    void operator()(const circuit::OtherMeasurement&) {}
};

std::string keyWords(const circuit::Part& part, const std::string& key) {
    const circuit::KeyInfo* known = circuit::findKey(circuit::info(part.kind), key);
    return wording::inWords("%1 of %2", wording::inWords(known ? known->label : std::string_view(key)),
                            part.ref);
}

} // namespace

RecordFigures figuresOf(const circuit::Record& record) {
    RecordFigures figures;
    std::vector<double> rises, falls;
    bool rise = record.firstRises;
    for (double t : record.switchings_s) {
        (rise ? rises : falls).push_back(t);
        rise = !rise;
    }
    const double step = record.step_s * evenly, relative = record.timeUncertainty;
    // From power-on the first flash is a long one. Where the rise of the supply itself stands in the record,
    // it begins there, and is no flash like the others.
    const bool riseIsSupply = record.fromPowerOn && record.firstRises;
    if (riseIsSupply && !rises.empty()) rises.erase(rises.begin());
    if (record.fromPowerOn && !falls.empty()) {
        const double first = falls.front() - (riseIsSupply ? record.switchings_s.front() : 0);
        figures.firstHigh_s = Measured{first, hypot3(step, step, relative * first)};
    }
    if (rises.size() < 2) return figures;
    figures.cycles = static_cast<int>(rises.size()) - 1;
    std::erase_if(falls, [&](double t) { return t < rises.front(); });

    // Rises and falls keep the same beat: one slope for both, each with an offset of its own.
    const Beat up = beatOf(rises), down = beatOf(falls);
    const double stretch = up.stretch + down.stretch;
    const double period = (up.period_s * up.stretch + down.period_s * down.stretch) / stretch;
    const auto off = [&](const Beat& beat) {
        const double slope = beat.period_s - period;
        return beat.squares_s2 + slope * slope * beat.stretch;
    };
    double switching = step; // what a single switching is known to
    const int free = up.times + down.times - 3;
    if (figures.cycles >= fewestForScatter && free > 0) {
        figures.scatter_s = std::sqrt((off(up) + off(down)) / free);
        switching = std::max(step, *figures.scatter_s);
    }
    figures.period_s = Measured{period, hypot3(switching / std::sqrt(stretch), relative * period, 0)};

    std::vector<double> highs, lows;
    for (std::size_t k = 0; k < falls.size(); ++k) {
        highs.push_back(falls[k] - rises[k]);
        if (k + 1 < rises.size()) lows.push_back(rises[k + 1] - falls[k]);
    }
    if (highs.empty()) return figures;
    figures.high_s = meanOf(highs, switching, relative);
    if (!lows.empty()) figures.low_s = meanOf(lows, switching, relative);
    // The time base does not enter a ratio of two times.
    const double share = figures.high_s->value / period;
    figures.duty = Measured{share, switching * std::sqrt(2.0 / static_cast<double>(highs.size())) / period};
    return figures;
}

bool MeasuredReadings::empty() const {
    return !period_s && !high_s && !low_s && !duty && !firstHigh_s && !supply_V && !outputHigh_V &&
           !outputLow_V && lamps.empty();
}

MeasuredReadings measuredReadings(const circuit::Circuit& circuit) {
    Collector all{circuit};
    for (; all.at < circuit.measurements.size(); ++all.at)
        if (circuit.measurements[all.at]->used) std::visit(all, circuit.measurements[all.at]->what);
    MeasuredReadings m;
    const auto value = [&](const Combined& of, const std::string& figure) {
        return of.value(figure, m.clashes);
    };
    m.period_s = value(all.period, wording::inWords("cycle time"));
    if (m.period_s)
        m.rate_Hz = Measured{1 / m.period_s->value,
                             m.period_s->uncertainty / (m.period_s->value * m.period_s->value)};
    m.high_s = value(all.high, wording::inWords("pulse width"));
    m.low_s = value(all.low, wording::inWords("space width"));
    m.duty = value(all.duty, wording::inWords("duty cycle"));
    m.firstHigh_s = value(all.firstHigh, wording::inWords("first flash"));
    m.supply_V = value(all.supply, wording::inWords("supply voltage"));
    m.outputHigh_V = value(all.outputHigh, wording::inWords("output high"));
    m.outputLow_V = value(all.outputLow, wording::inWords("output low"));
    for (const circuit::Part& part : circuit.parts()) {
        if (const auto lamp = all.lamps.find(part.id); lamp != all.lamps.end())
            m.lamps.push_back({part.id, *value(lamp->second, wording::inWords("current of %1", part.ref))});
        for (const auto& [of, values] : all.parts)
            if (of.first == part.id)
                m.parts.push_back({part.id, of.second, *value(values, keyWords(part, of.second))});
    }
    m.contradicting = !m.clashes.empty();
    return m;
}

} // namespace blinkwright::study
