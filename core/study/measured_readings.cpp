#include "core/study/measured_readings.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace blinkwright::study {

using circuit::Measured;

namespace {

constexpr int fewestForScatter = 3;
/// A time that is known to one step is spread evenly over it: u = step / sqrt(12) (JCGM 100:2008, 4.3.7).
const double evenly = 1 / std::sqrt(12.0);
constexpr double coverage = 2;

double hypot3(double a, double b, double c) {
    return std::sqrt(a * a + b * b + c * c);
}

/// Straight line through times at equal distances: its slope is the period.
struct Beat {
    double period_s = 0;
    double squares_s2 = 0; ///< of what is left
    double stretch = 0;    ///< sum of squared distances of the indices from their mean
    int times = 0;
};
Beat beatOf(const std::vector<double>& times) {
    Beat beat;
    beat.times = static_cast<int>(times.size());
    const double n = beat.times, middle = (n - 1) / 2;
    const double mean = std::accumulate(times.begin(), times.end(), 0.0) / n;
    double along = 0;
    for (int k = 0; k < beat.times; ++k) {
        const double x = k - middle;
        beat.stretch += x * x;
        along += x * (times[static_cast<std::size_t>(k)] - mean);
    }
    beat.period_s = beat.stretch > 0 ? along / beat.stretch : 0;
    for (int k = 0; k < beat.times; ++k) {
        const double off = times[static_cast<std::size_t>(k)] - mean - (k - middle) * beat.period_s;
        beat.squares_s2 += off * off;
    }
    return beat;
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
    void add(const Measured& one) { m_all.push_back(one); }
    std::optional<Measured> value(bool& contradicting) const {
        if (m_all.empty()) return {};
        const auto exact = std::ranges::find(m_all, 0.0, &Measured::uncertainty);
        if (exact != m_all.end()) return *exact;
        double weights = 0, sum = 0;
        for (const Measured& one : m_all) {
            const double weight = 1 / (one.uncertainty * one.uncertainty);
            weights += weight;
            sum += weight * one.value;
        }
        const Measured mean{sum / weights, 1 / std::sqrt(weights)};
        for (const Measured& a : m_all)
            for (const Measured& b : m_all)
                if (std::abs(a.value - b.value) > coverage * std::hypot(a.uncertainty, b.uncertainty))
                    contradicting = true;
        return mean;
    }

  private:
    std::vector<Measured> m_all;
};

struct Collector {
    const circuit::Circuit& circuit;
    Combined period, high, low, duty, firstHigh, supply, outputHigh, outputLow;
    std::vector<std::pair<circuit::PartId, Combined>> lamps;

    bool isFirst(circuit::PartId part) const {
        const circuit::Part* of = circuit.find(part);
        const auto first = std::ranges::find(circuit.parts(), of->kind, &circuit::Part::kind);
        return first->id == part;
    }
    static void add(Combined& to, const std::optional<Measured>& value) {
        if (value) to.add(*value);
    }

    void operator()(const circuit::Count& count) {
        period.add({count.time_s.value / count.flashes, count.time_s.uncertainty / count.flashes});
    }
    void operator()(const circuit::MeterReading& reading) {
        using Quantity = circuit::MeterQuantity;
        if (reading.quantity == Quantity::lampCurrent) {
            auto lamp = std::ranges::find(lamps, reading.part, &std::pair<circuit::PartId, Combined>::first);
            if (lamp == lamps.end()) lamp = lamps.insert(lamp, {reading.part, {}});
            lamp->second.add(reading.value);
        } else if (isFirst(reading.part)) {
            if (reading.quantity == Quantity::supplyVoltage) supply.add(reading.value);
            if (reading.quantity == Quantity::outputHigh) outputHigh.add(reading.value);
            if (reading.quantity == Quantity::outputLow) outputLow.add(reading.value);
        }
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
    if (record.fromPowerOn && !record.firstRises && !record.switchings_s.empty()) {
        const double first = record.switchings_s.front();
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
    Collector all{circuit, {}, {}, {}, {}, {}, {}, {}, {}, {}};
    for (const auto& measurement : circuit.measurements)
        if (measurement->used) std::visit(all, measurement->what);
    MeasuredReadings m;
    m.period_s = all.period.value(m.contradicting);
    if (m.period_s)
        m.rate_Hz = Measured{1 / m.period_s->value,
                             m.period_s->uncertainty / (m.period_s->value * m.period_s->value)};
    m.high_s = all.high.value(m.contradicting);
    m.low_s = all.low.value(m.contradicting);
    m.duty = all.duty.value(m.contradicting);
    m.firstHigh_s = all.firstHigh.value(m.contradicting);
    m.supply_V = all.supply.value(m.contradicting);
    m.outputHigh_V = all.outputHigh.value(m.contradicting);
    m.outputLow_V = all.outputLow.value(m.contradicting);
    for (const circuit::Part& part : circuit.parts())
        for (const auto& [id, values] : all.lamps)
            if (id == part.id) m.lamps.push_back({id, *values.value(m.contradicting)});
    return m;
}

} // namespace blinkwright::study
