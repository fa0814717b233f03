#include "core/io/record_words.h"

#include "core/io/record_numbers.h"

#include <algorithm>
#include <array>
#include <span>
#include <vector>

namespace blinkwright::io {

using circuit::TraceOf;

namespace {

using Words = std::vector<std::string>;

bool isWordByte(char c) {
    const auto byte = static_cast<unsigned char>(c);
    return std::isalnum(byte) || byte >= 0x80;
}

/// Small letters; the two micro signs (U+00B5, and U+03BC as a letter) as u.
std::string plain(std::string_view text) {
    std::string small;
    for (std::size_t k = 0; k < text.size(); ++k) {
        const std::string_view two = text.substr(k, 2);
        if (two == "\xC2\xB5" || two == "\xCE\xBC") {
            small += 'u';
            ++k;
        } else if (two == "\xCE\x94" || two == "\xCE\xB4") { // delta
            small += "delta ";
            ++k;
        } else if (text[k] == '\xB5') { // the micro sign of Latin-1
            small += 'u';
        } else {
            small += static_cast<char>(std::tolower(static_cast<unsigned char>(text[k])));
        }
    }
    return small;
}

Words wordsOf(std::string_view text) {
    Words words;
    bool inside = false;
    for (const char c : text) {
        if (isWordByte(c)) {
            if (!inside) words.emplace_back();
            words.back() += c;
        }
        inside = isWordByte(c);
    }
    return words;
}

bool isOneOf(std::string_view word, std::span<const std::string_view> list) {
    return std::ranges::find(list, word) != list.end();
}
bool anyOf(const Words& words, std::span<const std::string_view> list) {
    return std::ranges::any_of(words, [&](const std::string& word) { return isOneOf(word, list); });
}

struct UnitWord {
    std::string_view word;
    double factor;
};
constexpr UnitWord seconds[] = {{"s", 1},
                                {"sec", 1},
                                {"secs", 1},
                                {"second", 1},
                                {"seconds", 1},
                                {"ms", 1e-3},
                                {"msec", 1e-3},
                                {"millisecond", 1e-3},
                                {"milliseconds", 1e-3},
                                {"us", 1e-6},
                                {"usec", 1e-6},
                                {"microsecond", 1e-6},
                                {"microseconds", 1e-6},
                                {"ns", 1e-9},
                                {"nsec", 1e-9},
                                {"nanosecond", 1e-9},
                                {"nanoseconds", 1e-9}};
constexpr UnitWord volts[] = {{"v", 1},     {"volt", 1},         {"volts", 1},
                              {"mv", 1e-3}, {"millivolt", 1e-3}, {"millivolts", 1e-3},
                              {"kv", 1e3}};
constexpr UnitWord rates[] = {{"hz", 1},     {"hertz", 1},  {"khz", 1e3}, {"mhz", 1e6},  {"ghz", 1e9},
                              {"sa", 1},     {"ksa", 1e3},  {"msa", 1e6}, {"gsa", 1e9},  {"sps", 1},
                              {"ksps", 1e3}, {"msps", 1e6}, {"ks", 1e3},  {"samples", 1}};
constexpr std::string_view others[] = {"a",  "ma",  "ua",   "ampere", "amperes", "amps", "w",
                                       "mw", "ohm", "ohms", "hz",     "khz",     "deg",  "c",
                                       "db", "dbm", "lx",   "lux",    "k"};
constexpr std::string_view timeWords[] = {"time", "t", "times", "elapsed", "timestamp", "zeit"};
constexpr std::string_view indexWords[] = {"index", "sample", "samples", "point", "points", "no",
                                           "nr",    "row",    "number",  "n",     "count"};
constexpr std::string_view outputWords[] = {"output", "out", "pin3", "q"};
constexpr std::string_view capacitorWords[] = {"capacitor", "cap",  "timing", "threshold",
                                               "pin6",      "pin2", "ramp"};

std::optional<double> factorOf(std::string_view word, std::span<const UnitWord> units) {
    const auto found = std::ranges::find(units, word, &UnitWord::word);
    return found == units.end() ? std::nullopt : std::optional(found->factor);
}

/// The last word, where it stands as a unit does: in brackets, behind a stroke, or alone.
bool endsInUnit(std::string_view text, std::string_view word) {
    const auto at = text.rfind(word);
    const std::string_view before = trimmed(text.substr(0, at));
    return before.empty() || std::string_view("[(/{").find(before.back()) != std::string_view::npos;
}

/// Pins by their numbers are written as one word or as two.
Words joinedPins(Words words) {
    for (std::size_t k = 0; k + 1 < words.size(); ++k)
        if (words[k] == "pin") words[k] += words[k + 1];
    return words;
}

struct Number {
    double value;
    std::string_view rest; ///< what follows it
};
/// The first number that stands by itself in a text.
std::optional<Number> numberIn(std::string_view text, bool commas) {
    for (std::size_t k = 0; k < text.size(); ++k) {
        const bool digit = std::isdigit(static_cast<unsigned char>(text[k])) != 0;
        if (!digit || (k > 0 && isWordByte(text[k - 1]))) continue;
        std::size_t end = k;
        while (end < text.size() && (std::isdigit(static_cast<unsigned char>(text[end])) ||
                                     text[end] == '.' || (text[end] == ',' && commas) || text[end] == 'e' ||
                                     ((text[end] == '-' || text[end] == '+') && text[end - 1] == 'e')))
            ++end;
        std::string digits(text.substr(k, end - k));
        if (commas && digits.find('.') == digits.npos) std::ranges::replace(digits, ',', '.');
        double value = 0;
        const auto [stop, fault] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
        if (fault != std::errc() || !std::isfinite(value)) continue;
        return Number{value, text.substr(k + static_cast<std::size_t>(stop - digits.data()))};
    }
    return {};
}

/// One of the units, by the first word that is one.
template <std::size_t n>
std::optional<double> unitIn(const Words& words, const UnitWord (&units)[n]) {
    for (const std::string& word : words)
        if (const auto factor = factorOf(word, units)) return factor;
    return {};
}

} // namespace

HeaderWords headerWords(std::string_view header) {
    HeaderWords found;
    const std::string text = plain(header);
    const Words words = joinedPins(wordsOf(text));
    if (words.empty()) return found;
    const std::string& last = words.back();
    const bool marked = endsInUnit(text, last);
    found.isTime = anyOf(words, timeWords);
    const bool sure = marked || last.size() > 1;
    if ((sure || found.isTime) && last != "k") found.second = factorOf(last, seconds);
    if (!found.second) found.volt = factorOf(last, volts);
    found.isTime |= found.second.has_value();
    if (found.volt) found.isTime = false;
    found.isOther = marked && words.size() > 1 && isOneOf(last, others);
    found.isIndex = !found.isTime && (anyOf(words, indexWords) || trimmed(text) == "#");
    found.isUnitAlone = words.size() == 1 && (found.second || found.volt || isOneOf(last, others));
    if (anyOf(words, outputWords))
        found.of = TraceOf::output;
    else if (anyOf(words, capacitorWords))
        found.of = TraceOf::capacitor;
    return found;
}

std::optional<double> stepStatedIn(std::string_view line, bool commas) {
    const std::string text = plain(line);
    struct Key {
        std::string_view word;
        bool rate, needsUnit;
    };
    // The longer ones first: what follows the word is looked at.
    static constexpr Key keys[] = {
        {"interval", false, false},      {"sampling period", false, false},
        {"sample period", false, false}, {"increment", false, false},
        {"sample time", false, false},   {"delta t", false, false},
        {"time step", false, false},     {"timestep", false, false},
        {"step", false, true},           {"sampling rate", true, false},
        {"sample rate", true, false},    {"samplerate", true, false},
        {"sampling freq", true, false},  {"rate", true, true},
        {"sampling", false, true},       {"dt", false, false},
    };
    for (const Key& key : keys) {
        const auto at = text.find(key.word);
        if (at == text.npos) continue;
        if (key.word == "dt" &&
            ((at > 0 && isWordByte(text[at - 1])) || (at + 2 < text.size() && isWordByte(text[at + 2]))))
            continue;
        const std::string_view after = std::string_view(text).substr(at + key.word.size());
        const auto number = numberIn(after, commas);
        if (!number || number->value <= 0) return {};
        // The unit stands behind the number, or with the words before it.
        const Words behind = wordsOf(number->rest);
        const Words before = wordsOf(std::string_view(text).substr(0, text.size() - number->rest.size()));
        const bool perSecond = number->rest.find("/s") != number->rest.npos;
        if (unitIn(behind, volts) || (behind.empty() && unitIn(before, volts))) return {};
        std::optional<double> rate = unitIn(behind, rates), time = unitIn(behind, seconds);
        if (!rate && perSecond) rate = unitIn(behind, {{"s", 1}, {"ms", 1e6}, {"gs", 1e9}});
        if (!rate && !time)
            (key.rate ? rate : time) = key.rate ? unitIn(before, rates) : unitIn(before, seconds);
        if (key.needsUnit && !rate && !time) continue;
        double step = 0;
        if (rate || (key.rate && !time))
            step = 1 / (number->value * rate.value_or(1));
        else
            step = number->value * time.value_or(1);
        if (!std::isfinite(step) || step <= 0) return {};
        return step;
    }
    return {};
}

} // namespace blinkwright::io
