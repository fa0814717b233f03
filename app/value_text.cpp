#include "app/value_text.h"

#include "core/base/wording.h"

#include <array>

namespace blinkwright::app {

using circuit::Interval;
using circuit::Intervals;
using circuit::KeyInfo;
using circuit::Shape;
using circuit::Value;

namespace {

constexpr std::string_view next = ";"; // not the comma, which may be the decimal sign
constexpr int digits = 15;

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == text.npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t") - first + 1));
}

/// Whether a text is a word as the window says it, or the English one that older notes and examples have.
bool says(std::string_view text, std::string_view english) {
    return text == english || text == wording::inWords(english);
}

std::string intervalText(const std::string& low, const std::string& high) {
    return wording::inWords("%1 to %2", low, high);
}

/// The two texts of an interval, with the words of the window or the English ones around them.
std::optional<std::array<std::string, 2>> halvesOf(std::string_view text) {
    const std::string sample = intervalText("\n", "\n"), english = "\n to \n";
    for (const std::string_view words : {std::string_view(sample), std::string_view(english)}) {
        const auto first = words.find('\n'), second = words.rfind('\n');
        const std::string_view before = words.substr(0, first), after = words.substr(second + 1),
                               between = words.substr(first + 1, second - first - 1);
        if (text.size() < before.size() + after.size()) continue;
        if (!text.starts_with(before) || !text.ends_with(after)) continue;
        const std::string_view inner = text.substr(before.size(), text.size() - before.size() - after.size());
        if (const auto at = inner.find(between); at != inner.npos)
            return std::array{trimmed(inner.substr(0, at)), trimmed(inner.substr(at + between.size()))};
    }
    return {};
}

Result<Interval> intervalFrom(const KeyInfo& key, std::string_view text) {
    const auto halves = halvesOf(text);
    if (!halves)
        return Fault{{}, wording::inWords("two values as in \"%1\" are needed", intervalText("1", "2"))};
    const auto low = units::parseQuantity((*halves)[0], key.unit);
    if (!low) return low.fault();
    const auto high = units::parseQuantity((*halves)[1], key.unit);
    if (!high) return high.fault();
    return Interval{low.value(), high.value()};
}

Result<Value> pressesFrom(const KeyInfo& key, std::string_view text) {
    Intervals presses;
    while (!trimmed(text).empty()) {
        const auto end = std::min(text.find(next), text.size());
        const auto press = intervalFrom(key, text.substr(0, end));
        if (!press) return press.fault();
        presses.push_back(press.value());
        text.remove_prefix(std::min(end + next.size(), text.size()));
    }
    return Value(presses);
}

} // namespace

std::string valueText(const KeyInfo& key, const Value& value) {
    struct Writer {
        const KeyInfo& key;
        std::string operator()(const circuit::Null&) const { return wording::inWords("none"); }
        std::string operator()(double v) const {
            // A tolerance as people say it: 20 %.
            if (key.shape == Shape::tolerance)
                return units::formatQuantity(100 * v, key.unit, digits - 2) + "\u00a0%";
            return units::formatQuantity(v, key.unit, digits);
        }
        std::string operator()(bool v) const { return v ? wording::inWords("yes") : wording::inWords("no"); }
        std::string operator()(const std::string& v) const { return wording::inWords(v); }
        std::string operator()(const Interval& v) const { return intervalText((*this)(v[0]), (*this)(v[1])); }
        std::string operator()(const Intervals& v) const {
            std::string all;
            for (const Interval& press : v) all += (all.empty() ? "" : "; ") + (*this)(press);
            return all.empty() ? (*this)(circuit::Null{}) : all;
        }
        std::string operator()(const circuit::Overrides&) const { return {}; }
    };
    return std::visit(Writer{key}, value);
}

Result<Value> valueFromText(const KeyInfo& key, const std::string& typed) {
    const std::string text = trimmed(typed);
    if (says(text, wording::marked("none")) && key.shape == Shape::numberOrNull)
        return Value(circuit::Null{});
    if (says(text, wording::marked("none")) && key.shape == Shape::presses) return Value(Intervals{});
    if (key.shape == Shape::presses) return pressesFrom(key, text);
    if (key.shape == Shape::tolerance && halvesOf(text)) {
        const auto interval = intervalFrom(key, text);
        if (!interval) return interval.fault();
        return Value(interval.value());
    }
    const auto number = units::parseQuantity(text, key.unit);
    if (!number) return number.fault();
    return Value(number.value());
}

} // namespace blinkwright::app
