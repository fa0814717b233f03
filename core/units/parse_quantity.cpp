// Reads engineering text in three steps: to plain ASCII signs, to number and suffix, to one decimal text that
// is converted once (so that 0.22u is the double nearest to 2.2e-7 and no product of two rounded numbers).
#include "core/base/characters.h"
#include "core/base/wording.h"
#include "core/units/engineering.h"
#include "core/units/unit_names.h"

#include <algorithm>
#include <charconv>
#include <optional>

namespace blinkwright::units {

namespace {

constexpr std::size_t longestText = 100;
constexpr double secondsAnHour = 3600;

std::string lower(std::string_view text) {
    std::string out(text);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

Fault refuse(std::string text) {
    return {"", std::move(text)};
}

/// Signs outside ASCII that have a meaning, and what they are read as.
struct SignMeaning {
    std::string_view sign, ascii;
};
constexpr SignMeaning signMeanings[] = {
    {"\u00A0", " "}, {"\u2002", " "},   {"\u2003", " "},   {"\u2007", " "}, {"\u2008", " "},
    {"\u2009", " "}, {"\u200A", " "},   {"\u202F", " "},   {"\u2060", ""},  {"\u00B5", "u"},
    {"\u03BC", "u"}, {"\u03A9", "ohm"}, {"\u2126", "ohm"}, {"\u2212", "-"},
};

Result<std::string> toAscii(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const char c = text.front();
        if (static_cast<unsigned char>(c) < 0x80) {
            out += (c == '\t' || c == '\n' || c == '\r') ? ' ' : c;
            text.remove_prefix(1);
            continue;
        }
        const auto* meaning = std::ranges::find_if(
            signMeanings, [&](const SignMeaning& m) { return text.starts_with(m.sign); });
        if (meaning == std::end(signMeanings)) {
            std::size_t length = 1;
            while (length < text.size() && (static_cast<unsigned char>(text[length]) & 0xC0) == 0x80)
                ++length;
            return refuse(
                wording::inWords("the sign '%1' has no meaning in a value", text.substr(0, length)));
        }
        out += meaning->ascii;
        text.remove_prefix(meaning->sign.size());
    }
    const auto first = out.find_first_not_of(' ');
    if (first == out.npos) return std::string();
    return out.substr(first, out.find_last_not_of(' ') - first + 1);
}

std::optional<int> prefixExponentOf(char c) {
    switch (c) {
    case 'u':
        return -6;
    case 'K':
        return 3;
    default:
        break;
    }
    for (const PrefixInfo& prefix : prefixes())
        if (prefix.text.size() == 1 && prefix.text.front() == c) return prefix.exponent;
    return std::nullopt;
}

bool names(std::string_view text, Unit unit) {
    if (unit == Unit::none || text.empty()) return false;
    const UnitNames& known = namesOf(unit);
    const std::string small = lower(text);
    if (text == known.symbol || small == known.word || small == std::string(known.word) + "s") return true;
    if (unit == Unit::ohm) return text == "R";
    if (unit == Unit::hertz) return small == "hz";
    if (unit == Unit::ampere) return small == "amp" || small == "amps";
    return false;
}

/// What a suffix multiplies by: a power of ten, and a factor for units that are none of the SI.
struct Scale {
    int exponent = 0;
    double factor = 1;
};

/// A unit with or without a prefix: `Ω`, `kΩ`, `mAh`.
std::optional<Scale> unitScale(std::string_view suffix, Unit unit) {
    if (names(suffix, unit)) return Scale{};
    if (unit == Unit::coulomb && suffix == "Ah") return Scale{0, secondsAnHour};
    if (unit == Unit::none && suffix == "%") return Scale{-2, 1};
    if (suffix.size() < 2 || unit == Unit::none) return std::nullopt;
    const auto prefix = prefixExponentOf(suffix.front());
    if (!prefix) return std::nullopt;
    const auto rest = suffix.substr(1);
    if (names(rest, unit)) return Scale{*prefix, 1};
    if (unit == Unit::coulomb && rest == "Ah") return Scale{*prefix, secondsAnHour};
    return std::nullopt;
}

std::string wanted(Unit unit) {
    if (unit == Unit::none) return wording::inWords("a plain number is wanted");
    const UnitNames& known = namesOf(unit);
    return wording::inWords("a value in %1 (%2) is wanted", wording::inWords(known.word), known.symbol);
}

/// Why a suffix cannot be read, as plainly as can be said.
Fault suffixFault(std::string_view suffix, Unit unit) {
    for (const UnitNames& other : allUnits())
        if (other.unit != unit && unitScale(suffix, other.unit) && other.unit != Unit::none)
            return refuse(
                wording::inWords("'%1' is %2, but %3", suffix, wording::inWords(other.word), wanted(unit)));
    if (suffix == "%") return refuse(wording::inWords("'%1' does not fit: %2", suffix, wanted(unit)));
    if (suffix.size() == 2 && prefixExponentOf(suffix[0]) && prefixExponentOf(suffix[1]))
        return refuse(wording::inWords("two prefixes in '%1'", suffix));
    const std::string small = lower(suffix.substr(0, 1));
    const auto meant =
        suffix.front() == 'T' || suffix.front() == 'G' ? std::nullopt : prefixExponentOf(small[0]);
    if (!prefixExponentOf(suffix.front()) && meant)
        return refuse(wording::inWords("'%1' is no SI prefix; '%2' is one", suffix.substr(0, 1), small));
    if (suffix == "g" || suffix == "t")
        return refuse(wording::inWords("'%1' is no SI prefix; the large ones are k, M, G and T", suffix));
    return refuse(wording::inWords("'%1' is no SI prefix or unit that fits; %2", suffix, wanted(unit)));
}

Result<Scale> readSuffix(std::string_view suffix, Unit unit) {
    if (suffix.empty()) return Scale{};
    if (auto scale = unitScale(suffix, unit)) return *scale;
    if (suffix.size() == 1)
        if (auto prefix = prefixExponentOf(suffix.front())) return Scale{*prefix, 1};
    return suffixFault(suffix, unit);
}

/// A text cut into its pieces.
struct Pieces {
    bool negative = false;
    std::string digits;  ///< with at most one '.'
    bool marked = false; ///< the number has a decimal mark or an exponent of its own
    int exponent = 0;
    std::string_view suffix;
};

bool isMark(char c) {
    return c == '.' || c == ',';
}

Result<void> readExponent(std::string_view& rest, Pieces& pieces) {
    if (rest.empty() || (rest.front() != 'e' && rest.front() != 'E')) return {};
    const bool sign = rest.size() > 1 && (rest[1] == '+' || rest[1] == '-');
    std::size_t end = sign ? 2 : 1;
    const std::size_t first = end;
    while (end < rest.size() && isDigit(rest[end])) ++end;
    if (end == first) {
        if (sign)
            return refuse(wording::inWords("the power of ten after '%1' is missing", rest.substr(0, 2)));
        return {}; // perhaps a unit that begins with an e; the suffix is judged later
    }
    // Beyond four figures the value is out of every range anyway, and an int would overflow.
    const auto figures = rest.substr(first, std::min<std::size_t>(end - first, 4));
    std::from_chars(figures.data(), figures.data() + figures.size(), pieces.exponent);
    if (rest[1] == '-') pieces.exponent = -pieces.exponent;
    pieces.marked = true;
    rest.remove_prefix(end);
    return {};
}

std::string_view withoutSpaces(std::string_view text) {
    const auto first = text.find_first_not_of(' ');
    return first == text.npos ? std::string_view() : text.substr(first);
}

Result<Pieces> cut(std::string_view text) {
    Pieces pieces;
    if (text.front() == '+' || text.front() == '-') {
        pieces.negative = text.front() == '-';
        text = withoutSpaces(text.substr(1));
    }
    std::size_t end = 0;
    while (end < text.size() && (isDigit(text[end]) || isMark(text[end]))) ++end;
    const auto number = text.substr(0, end);
    if (std::ranges::count_if(number, isMark) > 1)
        return refuse(wording::inWords("two decimal marks in '%1'; write the number without grouping, with "
                                       "one point or comma",
                                       number));
    pieces.digits = number;
    std::ranges::replace(pieces.digits, ',', '.');
    pieces.marked = std::ranges::any_of(number, isMark);
    if (pieces.marked && number.size() == 1)
        return refuse(wording::inWords("there is no number in '%1'", text));
    auto rest = text.substr(end);
    if (!number.empty())
        if (auto ok = readExponent(rest, pieces); !ok) return ok.fault();
    pieces.suffix = rest;
    return pieces;
}

/// Whether a letter may stand for the decimal mark: a prefix, R for ohms, or the unit's own letter (`3V3`).
std::optional<Scale> markScale(char letter, Unit unit) {
    if (unit == Unit::kelvin && letter == 'K') return std::nullopt;
    if (unit == Unit::ohm && letter == 'R') return Scale{};
    if (auto prefix = prefixExponentOf(letter)) return Scale{*prefix, 1};
    if (std::string_view(&letter, 1) == symbol(unit)) return Scale{};
    return std::nullopt;
}

/// A letter that stands for the decimal mark: `4k7`, `4R7`, `n33`. Moves the digits after it into the number.
Result<Scale> readLetterMark(Pieces& pieces, Unit unit) {
    const auto suffix = pieces.suffix;
    const auto letter = suffix.substr(0, 1);
    std::size_t end = 1;
    while (end < suffix.size() && isDigit(suffix[end])) ++end;
    const auto scale = markScale(letter.front(), unit);
    if (!scale) {
        if (letter == "R")
            return refuse(wording::inWords("'R' stands for the decimal mark of ohms only; %1", wanted(unit)));
        return suffixFault(letter, unit);
    }
    const auto rest = suffix.substr(end);
    if (pieces.marked || (!rest.empty() && isMark(rest.front())))
        return refuse(
            wording::inWords("two decimal marks: '%1' between digits stands for one itself", letter));
    pieces.digits.append(pieces.digits.empty() ? "0." : ".").append(suffix.substr(1, end - 1));
    const auto unitText = withoutSpaces(rest);
    if (unitText.empty() || names(unitText, unit)) return *scale;
    if (prefixExponentOf(unitText.front()) && (unitText.size() == 1 || unitScale(unitText, unit)))
        return refuse(wording::inWords("two prefixes: '%1' and '%2'", letter, unitText.substr(0, 1)));
    return suffixFault(unitText, unit);
}

Result<Scale> readScale(Pieces& pieces, Unit unit) {
    auto suffix = pieces.suffix;
    if (suffix.size() > 1 && isLetter(suffix[0]) && isDigit(suffix[1])) return readLetterMark(pieces, unit);
    suffix = withoutSpaces(suffix);
    std::string joined; // "k Ω" and "A h" are one suffix
    std::ranges::copy_if(suffix, std::back_inserter(joined), [](char c) { return c != ' '; });
    if (!suffix.empty() && (isDigit(suffix.front()) || isMark(suffix.front())))
        return refuse(wording::inWords("a space inside the number; write it in one piece"));
    if (std::ranges::any_of(joined, isDigit))
        return refuse(
            wording::inWords("'%1' after the number has digits in it, which has no meaning", suffix));
    return readSuffix(joined, unit);
}

} // namespace

Result<double> parseQuantity(std::string_view text, Unit unit) {
    if (text.size() > longestText) return refuse(wording::inWords("the text is too long for a value"));
    const auto ascii = toAscii(text);
    if (!ascii) return ascii.fault();
    if (ascii.value().empty()) return refuse(wording::inWords("nothing is written; %1", wanted(unit)));

    auto pieces = cut(ascii.value());
    if (!pieces) return pieces.fault();
    Pieces& p = pieces.value();
    if (p.digits.empty() && !(p.suffix.size() > 1 && isLetter(p.suffix[0]) && isDigit(p.suffix[1])))
        return refuse(wording::inWords("there is no number in '%1'", ascii.value()));
    const auto scale = readScale(p, unit);
    if (!scale) return scale.fault();

    if (p.digits.front() == '.') p.digits.insert(0, 1, '0');
    const std::string decimal = p.digits + "e" + std::to_string(p.exponent + scale.value().exponent);
    double value = 0;
    const auto read = std::from_chars(decimal.data(), decimal.data() + decimal.size(), value);
    if (read.ec == std::errc::result_out_of_range)
        return refuse(p.exponent > 0
                          ? wording::inWords("'%1' is too large for a number", ascii.value())
                          : wording::inWords("'%1' is too close to 0 for a number", ascii.value()));
    value *= scale.value().factor;
    return p.negative ? -value : value;
}

} // namespace blinkwright::units
