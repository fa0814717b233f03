// Letter-and-digit codes of resistors and capacitors and three-digit codes of capacitors, IEC 60062:2016.
#include "core/base/characters.h"
#include "core/units/marking.h"

#include "core/base/wording.h"
#include "core/units/decimal.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::units {

namespace {

struct LetterRow {
    char letter;
    Tolerance tolerance;
};
// IEC 60062, tolerance letters; those below 0.25 % and the uneven ones from memory.
constexpr LetterRow toleranceRows[] = {
    {'E', {-0.00005, 0.00005}}, {'L', {-0.0001, 0.0001}}, {'P', {-0.0002, 0.0002}}, {'W', {-0.0005, 0.0005}},
    {'B', {-0.001, 0.001}},     {'C', {-0.0025, 0.0025}}, {'D', {-0.005, 0.005}},   {'F', {-0.01, 0.01}},
    {'G', {-0.02, 0.02}},       {'H', {-0.03, 0.03}},     {'J', {-0.05, 0.05}},     {'K', {-0.1, 0.1}},
    {'M', {-0.2, 0.2}},         {'N', {-0.3, 0.3}},       {'Q', {-0.1, 0.3}},       {'T', {-0.1, 0.5}},
    {'S', {-0.2, 0.5}},         {'Z', {-0.2, 0.8}},
};
/// Below ten picofarad these letters stand for picofarad either way.
struct SmallRow {
    char letter;
    double farad;
};
constexpr SmallRow smallRows[] = {{'B', 0.1e-12}, {'C', 0.25e-12}, {'D', 0.5e-12}, {'F', 1e-12}};
constexpr double smallCapacitor = 10e-12;

struct PointLetter {
    std::string_view text; ///< as written
    std::string_view also; ///< read too
    int exponent;
};
constexpr PointLetter ohmLetters[] = {{"R", "", 0}, {"K", "k", 3}, {"M", "", 6}, {"G", "", 9}, {"T", "", 12}};
constexpr PointLetter faradLetters[] = {{"p", "", -12},           {"n", "", -9}, {"\u00B5", "u", -6},
                                        {"\u00B5", "\u03BC", -6}, {"m", "", -3}, {"F", "", 0}};
constexpr int mostFigures = 4;

std::span<const PointLetter> lettersOf(Unit unit) {
    if (unit == Unit::ohm) return ohmLetters;
    return faradLetters;
}

bool same(const Tolerance& a, const Tolerance& b) {
    constexpr double near = 1e-12;
    return std::fabs(a.low - b.low) < near && std::fabs(a.high - b.high) < near;
}

Result<std::optional<char>> wantedLetter(double value, Unit unit, const std::optional<Tolerance>& tolerance) {
    if (!tolerance) return std::optional<char>();
    std::optional<char> letter;
    if (unit == Unit::farad && value < smallCapacitor) {
        for (const SmallRow& row : smallRows)
            if (std::fabs(tolerance->high * value / row.farad - 1) < 1e-9 &&
                tolerance->low == -tolerance->high)
                letter = row.letter;
    } else {
        letter = toleranceLetter(*tolerance);
    }
    if (!letter)
        return Fault{"tolerance", wording::inWords("no letter stands for %1 % to %2 %",
                                                   formatQuantity(100 * tolerance->low, Unit::none),
                                                   formatQuantity(100 * tolerance->high, Unit::none))};
    return letter;
}

std::optional<Tolerance> readTolerance(char letter, double value, Unit unit) {
    if (unit == Unit::farad && value < smallCapacitor * (1 - 1e-9)) {
        for (const SmallRow& row : smallRows)
            if (row.letter == letter) return Tolerance::either(row.farad / value);
        return std::nullopt; // the others are shares of larger values only
    }
    return toleranceOf(letter);
}

Fault noCodeFor(double value) {
    return {"value", wording::inWords("must be greater than 0 to have a code, got %1", spoken(value))};
}

std::string noTolerance(std::string_view code, std::string_view letter) {
    return wording::inWords("'%1' ends in '%2', which stands for no tolerance here", code, letter);
}

/// The letter that takes the decimal point's place, and where it stands.
struct Point {
    std::size_t at, length;
    int exponent;
};
std::optional<Point> pointIn(std::string_view text, Unit unit) {
    const std::size_t at = text.find_first_not_of("0123456789");
    if (at == std::string_view::npos) return std::nullopt;
    const std::string_view rest = text.substr(at);
    for (const PointLetter& letter : lettersOf(unit)) {
        if (rest.starts_with(letter.text)) return Point{at, letter.text.size(), letter.exponent};
        if (!letter.also.empty() && rest.starts_with(letter.also))
            return Point{at, letter.also.size(), letter.exponent};
    }
    return std::nullopt;
}

} // namespace

std::optional<char> toleranceLetter(const Tolerance& tolerance) {
    for (const LetterRow& row : toleranceRows)
        if (same(row.tolerance, tolerance)) return row.letter;
    return std::nullopt;
}

std::optional<Tolerance> toleranceOf(char letter) {
    const auto* found = std::ranges::find(toleranceRows, letter, &LetterRow::letter);
    return found == std::end(toleranceRows) ? std::nullopt : std::optional(found->tolerance);
}

Result<std::string> letterCode(double value, Unit unit, std::optional<Tolerance> tolerance) {
    if (!(value > 0) || !std::isfinite(value)) return noCodeFor(value);
    auto figures = figuresOf(value, mostFigures);
    if (!figures)
        return Fault{"value", wording::inWords("%1 has more than %2 figures", formatQuantity(value, unit, 9),
                                               mostFigures)};
    const auto letter = wantedLetter(value, unit, tolerance);
    if (!letter) return letter.fault();
    // The largest letter that leaves a figure other than 0 before it; small values go after the first one.
    const auto letters = lettersOf(unit);
    const int top = figures->exponent + mostFigures - 1; // power of ten of the first figure
    const PointLetter* chosen = letters.data();
    for (const PointLetter& row : letters)
        if (row.exponent <= top) chosen = &row;
    const int most = letters.back().exponent + 2;
    constexpr int leastBelow = 3; // as many zeros as a code has room for
    if (top > most || top < letters.front().exponent - leastBelow)
        return Fault{"value", wording::inWords("no letter code reaches %1", formatQuantity(value, unit, 9))};
    std::string digits = std::to_string(figures->digits);
    int before = top - chosen->exponent + 1; // figures before the letter
    if (before <= 0) {
        digits.insert(0, static_cast<std::size_t>(-before), '0');
        before = 0;
    }
    digits.erase(std::max(digits.find_last_not_of('0') + 1, static_cast<std::size_t>(before)));
    digits.insert(static_cast<std::size_t>(before), chosen->text);
    if (letter.value()) digits += *letter.value();
    return digits;
}

Result<Marked> readLetterCode(std::string_view text, Unit unit) {
    const auto point = pointIn(text, unit);
    if (!point && unit == Unit::ohm)
        return Fault{"code",
                     wording::inWords(
                         "'%1' has no letter in the place of the decimal point, such as 4K7 or R47", text)};
    if (!point)
        return Fault{"code",
                     wording::inWords(
                         "'%1' has no letter in the place of the decimal point, such as 4n7 or 33p", text)};
    const std::string_view before = text.substr(0, point->at);
    std::string_view after = text.substr(point->at + point->length);
    std::optional<char> letter;
    if (!after.empty() && !isDigit(after.back())) {
        letter = after.back();
        after.remove_suffix(1);
    }
    const std::string digits = std::string(before) + std::string(after);
    if (digits.empty() || digits.size() > 8 || !std::all_of(digits.begin(), digits.end(), isDigit))
        return Fault{"code", wording::inWords("'%1' has no figures around its letter, or too many", text)};
    const int whole = std::stoi(digits);
    if (whole == 0) return Fault{"code", wording::inWords("'%1' says 0", text)};
    Marked marked{.value = decimalValue(whole, point->exponent - static_cast<int>(after.size()))};
    if (letter) {
        marked.tolerance = readTolerance(*letter, marked.value, unit);
        if (!marked.tolerance) return Fault{"code", noTolerance(text, std::string(1, *letter))};
    }
    return marked;
}

Result<std::string> capacitorCode(double farad, std::optional<Tolerance> tolerance) {
    if (!(farad > 0) || !std::isfinite(farad)) return noCodeFor(farad);
    const auto figures = figuresOf(farad, 2);
    if (!figures)
        return Fault{"value",
                     wording::inWords("%1 has more than the two figures that a three-digit code shows",
                                      formatQuantity(farad, Unit::farad, 9))};
    const int zeros = figures->exponent + 12;
    if (zeros < -2 || zeros > 7)
        return Fault{"value", wording::inWords("no three-digit code reaches %1",
                                               formatQuantity(farad, Unit::farad, 9))};
    const auto letter = wantedLetter(farad, Unit::farad, tolerance);
    if (!letter) return letter.fault();
    std::string code = std::to_string(figures->digits) + std::to_string(zeros < 0 ? 10 + zeros : zeros);
    if (letter.value()) code += *letter.value();
    return code;
}

Result<Marked> readCapacitorCode(std::string_view text) {
    const bool digits = text.size() >= 3 && std::all_of(text.begin(), text.begin() + 3, isDigit);
    if (!digits || text.size() > 4)
        return Fault{
            "code",
            wording::inWords("'%1' is not three digits and at most a tolerance letter, such as 104K", text)};
    const int figures = 10 * (text[0] - '0') + (text[1] - '0');
    if (figures == 0) return Fault{"code", wording::inWords("'%1' says 0", text)};
    const int third = text[2] - '0';
    Marked marked{.value = decimalValue(figures, (third >= 8 ? third - 10 : third) - 12)};
    if (text.size() == 4) {
        marked.tolerance = readTolerance(text[3], marked.value, Unit::farad);
        if (!marked.tolerance) return Fault{"code", noTolerance(text, text.substr(3))};
    }
    return marked;
}

} // namespace blinkwright::units
