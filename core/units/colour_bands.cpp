// Colour bands of resistors, IEC 60062:2016.
#include "core/units/marking.h"

#include "core/base/wording.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::units {

namespace {

constexpr double ppm = 1e-6;
/// Three bands say nothing of the tolerance; it is this.
constexpr double unmarked = 0.2;

struct ColourRow {
    std::string_view name;
    ColourMeaning meaning;
};
// In the order of Colour. IEC 60062:2016; grey's tolerance (older texts: 0.05 %) from memory, and secondary
// tables contradict one another on all tolerances below 0.25 %.
constexpr ColourRow rows[] = {
    {wording::marked("pink"), {{}, -3, {}, {}}},
    {wording::marked("silver"), {{}, -2, 0.1, {}}},
    {wording::marked("gold"), {{}, -1, 0.05, {}}},
    {wording::marked("black"), {0, 0, {}, 250 * ppm}},
    {wording::marked("brown"), {1, 1, 0.01, 100 * ppm}},
    {wording::marked("red"), {2, 2, 0.02, 50 * ppm}},
    {wording::marked("orange"), {3, 3, 0.0005, 15 * ppm}},
    {wording::marked("yellow"), {4, 4, 0.0002, 25 * ppm}},
    {wording::marked("green"), {5, 5, 0.005, 20 * ppm}},
    {wording::marked("blue"), {6, 6, 0.0025, 10 * ppm}},
    {wording::marked("violet"), {7, 7, 0.001, 5 * ppm}},
    {wording::marked("grey"), {8, 8, 0.0001, 1 * ppm}},
    {wording::marked("white"), {9, 9, {}, {}}},
};

bool same(double a, double b) {
    return std::fabs(a - b) <= sameNumber * std::fabs(b);
}

/// The colour for which `of` gives what is wanted.
template <class Of, class Wanted>
std::optional<Colour> colourWith(const Of& of, const Wanted& isWanted) {
    for (const Colour colour : allColours) {
        const auto& value = of(meaning(colour));
        if (isWanted(value)) return colour;
    }
    return std::nullopt;
}
std::optional<Colour> digitColour(int digit) {
    return colourWith([](const ColourMeaning& m) { return m.digit.value_or(-1); },
                      [digit](int d) { return d == digit; });
}
std::optional<Colour> multiplierColour(int exponent) {
    return colourWith([](const ColourMeaning& m) { return m.multiplier; },
                      [exponent](int e) { return e == exponent; });
}
std::optional<Colour> toleranceColour(double tolerance) {
    return colourWith([](const ColourMeaning& m) { return m.tolerance; },
                      [tolerance](const std::optional<double>& t) { return t && same(*t, tolerance); });
}
std::optional<Colour> temperatureColour(double perKelvin) {
    return colourWith([](const ColourMeaning& m) { return m.temperature; },
                      [perKelvin](const std::optional<double>& t) { return t && same(*t, perKelvin); });
}

std::string percent(double share) {
    return formatQuantity(share * 100, Unit::none) + " %";
}
std::string ohms(double value) {
    return formatQuantity(value, Unit::ohm, 9);
}
std::string said(Colour colour) {
    return wording::inWords(name(colour));
}
/// Of the band after the first k.
std::string place(std::size_t k) {
    return wording::inWords("band %1", k + 1);
}
Fault noBandsFor(double ohm) {
    return {"resistance",
            wording::inWords("must be greater than 0 to have colour bands, got %1", spoken(ohm))};
}

} // namespace

std::string_view name(Colour colour) {
    return rows[static_cast<std::size_t>(colour)].name;
}

std::optional<Colour> colourNamed(std::string_view text) {
    const auto* found = std::ranges::find(rows, text, &ColourRow::name);
    if (found == std::end(rows)) return std::nullopt;
    return allColours[found - rows];
}

const ColourMeaning& meaning(Colour colour) {
    return rows[static_cast<std::size_t>(colour)].meaning;
}

Result<std::vector<Colour>> colourBands(double ohm, double tolerance, std::optional<double> temperature) {
    if (!(ohm > 0) || !std::isfinite(ohm)) return noBandsFor(ohm);
    if (temperature) return colourBands(6, ohm, tolerance, temperature);
    if (!figuresOf(ohm, 2) || tolerance <= 0.02 * (1 + sameNumber)) return colourBands(5, ohm, tolerance);
    return colourBands(same(tolerance, unmarked) ? 3 : 4, ohm, tolerance);
}

Result<std::vector<Colour>> colourBands(int bands, double ohm, double tolerance,
                                        std::optional<double> temperature) {
    if (bands < 3 || bands > 6) return Fault{"bands", wording::inWords("must be 3 to 6, got %1", bands)};
    if (!(ohm > 0) || !std::isfinite(ohm)) return noBandsFor(ohm);
    const int count = bands <= 4 ? 2 : 3;
    auto figures = figuresOf(ohm, count);
    if (!figures)
        return Fault{"resistance", wording::inWords("%1 has more than the %2 figures that %3 bands show",
                                                    ohms(ohm), count, bands)};
    std::vector<Colour> colours;
    const auto multiplier = multiplierColour(figures->exponent);
    if (!multiplier) return Fault{"resistance", wording::inWords("no multiplier band reaches %1", ohms(ohm))};
    for (int place = count == 2 ? 10 : 100; place > 0; place /= 10)
        colours.push_back(*digitColour(figures->digits / place % 10));
    colours.push_back(*multiplier);
    if (bands == 3) {
        if (!same(tolerance, unmarked))
            return Fault{"tolerance",
                         wording::inWords("three bands stand for 20 %, not for %1", percent(tolerance))};
        return colours;
    }
    const auto last = toleranceColour(tolerance);
    if (!last) return Fault{"tolerance", wording::inWords("no band stands for %1", percent(tolerance))};
    colours.push_back(*last);
    if (bands == 6) {
        const auto sixth = temperature ? temperatureColour(*temperature) : std::nullopt;
        if (!sixth)
            return Fault{"temperature coefficient",
                         temperature
                             ? wording::inWords("no band stands for %1",
                                                formatQuantity(*temperature / ppm, Unit::none) + " ppm/K")
                             : wording::inWords("the sixth band needs one")};
        colours.push_back(*sixth);
    }
    return colours;
}

Result<Marked> readBands(std::span<const Colour> bands) {
    if (bands.size() < 3 || bands.size() > 6)
        return Fault{"bands", wording::inWords("must be 3 to 6, got %1", bands.size())};
    const std::size_t count = bands.size() <= 4 ? 2 : 3;
    int digits = 0;
    for (std::size_t k = 0; k < count; ++k) {
        const auto digit = meaning(bands[k]).digit;
        if (!digit) return Fault{place(k), wording::inWords("%1 stands for no figure", said(bands[k]))};
        digits = 10 * digits + *digit;
    }
    if (digits == 0) return Fault{place(0), wording::inWords("the figures must not all be 0")};
    Marked marked{.value = decimalValue(digits, meaning(bands[count]).multiplier)};
    if (bands.size() == 3) {
        marked.tolerance = Tolerance::either(unmarked);
        return marked;
    }
    const auto tolerance = meaning(bands[count + 1]).tolerance;
    if (!tolerance)
        return Fault{place(count + 1),
                     wording::inWords("%1 stands for no tolerance", said(bands[count + 1]))};
    marked.tolerance = Tolerance::either(*tolerance);
    if (bands.size() == 6) {
        marked.temperature = meaning(bands[5]).temperature;
        if (!marked.temperature)
            return Fault{place(5),
                         wording::inWords("%1 stands for no temperature coefficient", said(bands[5]))};
    }
    return marked;
}

std::string bandsText(std::span<const Colour> bands) {
    std::string text;
    for (const Colour band : bands) text.append(text.empty() ? "" : " ").append(said(band));
    return text;
}

Result<Marked> readBandsText(std::string_view text) {
    std::vector<Colour> bands;
    constexpr std::string_view between = " ,\t";
    while (true) {
        const std::size_t begin = text.find_first_not_of(between);
        if (begin == std::string_view::npos) break;
        const std::size_t end = std::min(text.find_first_of(between, begin), text.size());
        const std::string_view word = text.substr(begin, end - begin);
        const auto colour = colourNamed(word);
        if (!colour) return Fault{place(bands.size()), wording::inWords("'%1' is no colour of a band", word)};
        bands.push_back(*colour);
        text.remove_prefix(end);
    }
    return readBands(bands);
}

} // namespace blinkwright::units
