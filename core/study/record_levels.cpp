#include "core/study/record_levels.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace blinkwright::study {

namespace {

// Bounds of this file without a source are from trials with made-up records.
constexpr std::size_t binCount = 2048;
constexpr std::size_t smoothing = 8; ///< bins to either side
/// Values beyond these shares of all are spikes, where they stand far off.
constexpr double spikeShare = 2e-4, farOff = 3;
/// A sample belongs to a state within this share of the swing.
constexpr double nearState = 0.25;
/// A signal has two levels if so many of its samples lie near one of them; of a sine two thirds would.
constexpr double shareNearStates = 0.75;
constexpr double smallestSwing_V = 0.05;
/// ... and if they lie further apart than this many standard deviations of the noise.
constexpr double leastSeparation = 4;
/// Median of |x1 - x2| of two normal values of standard deviation 1: sqrt(2) x 0.6745.
constexpr double medianDifference = 0.9539;

class Histogram {
  public:
    Histogram(std::span<const double> values, double low, double high)
        : m_low(low), m_width((high - low) / static_cast<double>(binCount)), m_counts(binCount) {
        const double perVolt = 1 / m_width;
        for (const double value : values)
            if (value >= low && value <= high)
                ++m_counts[std::min(static_cast<std::size_t>((value - low) * perVolt), binCount - 1)];
    }
    double centre(std::size_t bin) const { return m_low + (static_cast<double>(bin) + 0.5) * m_width; }
    double width() const { return m_width; }
    /// The value below which so many of `all` samples lie.
    double quantile(double share, std::size_t all) const {
        double sum = 0;
        for (std::size_t bin = 0; bin < binCount; ++bin) {
            sum += static_cast<double>(m_counts[bin]);
            if (sum > share * static_cast<double>(all)) return centre(bin);
        }
        return centre(binCount - 1);
    }
    /// Centre of the fullest bin from `from` to `to`, each taken with its neighbours.
    double mode(std::size_t from, std::size_t to) const {
        std::vector<std::size_t> sums(binCount + 1);
        for (std::size_t bin = 0; bin < binCount; ++bin) sums[bin + 1] = sums[bin] + m_counts[bin];
        std::size_t most = 0, first = from, last = from;
        for (std::size_t bin = from; bin < to; ++bin) {
            const std::size_t low = std::max(bin, from + smoothing) - smoothing;
            const std::size_t count = sums[std::min(bin + smoothing + 1, to)] - sums[low];
            if (count > most) {
                most = count;
                first = bin;
            }
            if (count == most) last = bin; // a lone value fills several alike: their middle is its place
        }
        return (centre(first) + centre(last)) / 2;
    }

  private:
    double m_low, m_width;
    std::vector<std::size_t> m_counts;
};

double noiseOf(std::span<const double> values) {
    if (values.size() < 3) return 0;
    constexpr std::size_t most = 20'000; // evenly over the record: enough for a median
    std::vector<double> differences;
    const std::size_t stride = std::max<std::size_t>(1, (values.size() - 1) / most);
    for (std::size_t k = 1; k < values.size(); k += stride)
        differences.push_back(std::abs(values[k] - values[k - 1]));
    const auto middle = differences.begin() + static_cast<std::ptrdiff_t>(differences.size() / 2);
    std::ranges::nth_element(differences, middle);
    const double median = *middle;
    // Of a signal in coarse steps the median may be no step at all: the mean of what is no edge tells more.
    const double edge = (*std::ranges::max_element(differences)) / 4;
    double squares = 0;
    std::size_t count = 0;
    for (const double difference : differences)
        if (difference < edge) {
            squares += difference * difference;
            ++count;
        }
    const double flat =
        count > differences.size() / 2 ? std::sqrt(squares / static_cast<double>(2 * count)) : 0;
    return std::max(median / medianDifference, flat);
}

double meanWithin(std::span<const double> values, double centre, double reach) {
    double sum = 0;
    std::size_t count = 0;
    for (const double value : values)
        if (std::abs(value - centre) <= reach) {
            sum += value - centre;
            ++count;
        }
    return count > 0 ? centre + sum / static_cast<double>(count) : centre;
}

} // namespace

SignalShape shapeOf(std::span<const double> values) {
    SignalShape shape;
    if (values.empty()) return shape;
    const auto [low, high] = std::ranges::minmax(values);
    shape.lowest_V = low;
    shape.highest_V = high;
    shape.noise_V = noiseOf(values);
    if (!(high > low)) return shape;
    {
        const Histogram all(values, low, high);
        const double from = all.quantile(spikeShare, values.size());
        const double to = all.quantile(1 - spikeShare, values.size());
        const double span = std::max(to - from, all.width());
        if (high - low > farOff * span) {
            shape.lowest_V = std::max(low, from - span / 10);
            shape.highest_V = std::min(high, to + span / 10);
        }
    }
    const Histogram histogram(values, shape.lowest_V, shape.highest_V);
    circuit::Levels levels{histogram.mode(binCount / 2, binCount), histogram.mode(0, binCount / 2)};
    const double apart = levels.high_V - levels.low_V;
    const double reach = std::min(
        std::max(3 * shape.noise_V, static_cast<double>(smoothing) * histogram.width()), nearState * apart);
    for (int round = 0; round < 2; ++round) {
        levels.high_V = meanWithin(values, levels.high_V, reach);
        levels.low_V = meanWithin(values, levels.low_V, reach);
    }
    const double swing = levels.high_V - levels.low_V;
    std::size_t nearLow = 0, nearHigh = 0;
    for (const double value : values) {
        nearLow += std::abs(value - levels.low_V) < nearState * swing;
        nearHigh += std::abs(value - levels.high_V) < nearState * swing;
    }
    const double share = static_cast<double>(nearLow + nearHigh) / static_cast<double>(values.size());
    shape.levels = levels;
    const bool twoLevels =
        swing >= smallestSwing_V && share >= shareNearStates && std::min(nearLow, nearHigh) >= 1;
    shape.isRestless = twoLevels && swing < leastSeparation * shape.noise_V;
    shape.isTwoLevel = twoLevels && !shape.isRestless;
    return shape;
}

} // namespace blinkwright::study
