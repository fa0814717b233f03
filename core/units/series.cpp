#include "core/units/series.h"

#include "core/units/decimal.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace blinkwright::units {

namespace {

constexpr std::string_view names[] = {"E3", "E6", "E12", "E24", "E48", "E96", "E192"};
// IEC 60063; E3 states none.
constexpr double tolerances[] = {0.2, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005};

/// A member that history has put elsewhere than the rule does.
struct Irregular {
    std::size_t place;
    int value;
};
// IEC 60063:2015. The older values of E24 stand where the rule of 10^(k/24) would give 260, 290, 320, 350,
// 380, 420, 460 and 830; of E192 one stands where it would give 919.
constexpr Irregular irregular24[] = {{10, 270}, {11, 300}, {12, 330}, {13, 360},
                                     {14, 390}, {15, 430}, {16, 470}, {22, 820}};
constexpr Irregular irregular192[] = {{185, 920}};

/// @param step 10 for two figures, 1 for three
template <std::size_t count>
std::array<int, count> byRule(int step, std::span<const Irregular> irregular) {
    std::array<int, count> values;
    for (std::size_t k = 0; k < count; ++k) {
        const double exact = 100 * std::pow(10.0, static_cast<double>(k) / static_cast<double>(count));
        values[k] = step * static_cast<int>(std::lround(exact / step));
    }
    for (const Irregular& one : irregular) values[one.place] = one.value;
    return values;
}

template <std::size_t count, std::size_t from>
std::array<int, count> everyOther(const std::array<int, from>& all) {
    std::array<int, count> values;
    for (std::size_t k = 0; k < count; ++k) values[k] = all[k * (from / count)];
    return values;
}

/// A member as its place in a row that runs through all decades.
class Row {
  public:
    explicit Row(Series series) : m_decade(decade(series)) {}

    double operator[](long place) const {
        const auto count = static_cast<long>(m_decade.size());
        const long tens = place >= 0 ? place / count : (place - count + 1) / count;
        const auto within = static_cast<std::size_t>(place - tens * count);
        return decimalValue(m_decade[within], static_cast<int>(tens) - 2);
    }
    /// The place of the greatest member that is not greater than the value.
    long atMost(double value) const {
        assert(value >= leastPreferred && value <= mostPreferred);
        const auto count = static_cast<double>(m_decade.size());
        // The members lie close to the rule; the search ends after a step or two.
        long place = std::lround(count * std::log10(value));
        while ((*this)[place] > value * (1 + sameNumber)) --place;
        while ((*this)[place + 1] <= value * (1 + sameNumber)) ++place;
        return place;
    }

  private:
    std::span<const int> m_decade;
};

bool same(double member, double value) {
    return std::fabs(member - value) <= sameNumber * value;
}

} // namespace

std::string_view name(Series series) {
    return names[static_cast<std::size_t>(series)];
}

std::optional<Series> seriesNamed(std::string_view text) {
    const auto* found = std::ranges::find(names, text);
    if (found == std::end(names)) return std::nullopt;
    return allSeries[found - names];
}

std::span<const int> decade(Series series) {
    static const std::array<int, 24> e24 = byRule<24>(10, irregular24);
    static const std::array<int, 12> e12 = everyOther<12>(e24);
    static const std::array<int, 6> e6 = everyOther<6>(e24);
    static const std::array<int, 3> e3 = everyOther<3>(e24);
    static const std::array<int, 192> e192 = byRule<192>(1, irregular192);
    static const std::array<int, 96> e96 = everyOther<96>(e192);
    static const std::array<int, 48> e48 = everyOther<48>(e192);
    const std::span<const int> all[] = {e3, e6, e12, e24, e48, e96, e192};
    return all[static_cast<std::size_t>(series)];
}

double nominalTolerance(Series series) {
    return tolerances[static_cast<std::size_t>(series)];
}

double atMost(Series series, double value) {
    const Row row(series);
    return row[row.atMost(value)];
}

double atLeast(Series series, double value) {
    const Row row(series);
    const long place = row.atMost(value);
    return same(row[place], value) ? row[place] : row[place + 1];
}

double nextAbove(Series series, double value) {
    const Row row(series);
    return row[row.atMost(value) + 1];
}

double nextBelow(Series series, double value) {
    const Row row(series);
    const long place = row.atMost(value);
    return same(row[place], value) ? row[place - 1] : row[place];
}

double nearest(Series series, double value) {
    const double below = atMost(series, value), above = nextAbove(series, value);
    return above - value < value - below ? above : below;
}

bool inSeries(Series series, double value) {
    return value >= leastPreferred && value <= mostPreferred && same(atMost(series, value), value);
}

std::vector<double> valuesBetween(Series series, double low, double high) {
    std::vector<double> values;
    if (!(high > 0)) return values;
    low = std::max(low, leastPreferred);
    high = std::min(high, mostPreferred);
    const Row row(series);
    if (low > high) return values;
    long place = row.atMost(low);
    if (!same(row[place], low)) ++place;
    for (; row[place] <= high * (1 + sameNumber); ++place) values.push_back(row[place]);
    return values;
}

} // namespace blinkwright::units
