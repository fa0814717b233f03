#include "app/value_text.h"

namespace blinkwright::app {

using circuit::Interval;
using circuit::Intervals;
using circuit::KeyInfo;
using circuit::Shape;
using circuit::Value;

namespace {

constexpr std::string_view between = " to ", next = ";";
constexpr int digits = 15;

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == text.npos) return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t") - first + 1));
}

Result<Interval> intervalFrom(const KeyInfo& key, std::string_view text) {
    const auto at = text.find(between);
    if (at == text.npos) return Fault{{}, "two values with \"to\" between them are needed"};
    Interval interval{};
    const auto low = units::parseQuantity(trimmed(text.substr(0, at)), key.unit);
    if (!low) return low.fault();
    const auto high = units::parseQuantity(trimmed(text.substr(at + between.size())), key.unit);
    if (!high) return high.fault();
    interval = {low.value(), high.value()};
    return interval;
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
        std::string operator()(const circuit::Null&) const { return "none"; }
        std::string operator()(double v) const { return units::formatQuantity(v, key.unit, digits); }
        std::string operator()(bool v) const { return v ? "yes" : "no"; }
        std::string operator()(const std::string& v) const { return v; }
        std::string operator()(const Interval& v) const {
            return (*this)(v[0]) + std::string(between) + (*this)(v[1]);
        }
        std::string operator()(const Intervals& v) const {
            std::string all;
            for (const Interval& press : v) all += (all.empty() ? "" : "; ") + (*this)(press);
            return all.empty() ? "none" : all;
        }
        std::string operator()(const circuit::Overrides&) const { return {}; }
    };
    return std::visit(Writer{key}, value);
}

Result<Value> valueFromText(const KeyInfo& key, const std::string& typed) {
    const std::string text = trimmed(typed);
    if (text == "none" && key.shape == Shape::numberOrNull) return Value(circuit::Null{});
    if (text == "none" && key.shape == Shape::presses) return Value(Intervals{});
    if (key.shape == Shape::presses) return pressesFrom(key, text);
    if (key.shape == Shape::tolerance && text.find(between) != text.npos) {
        const auto interval = intervalFrom(key, text);
        if (!interval) return interval.fault();
        return Value(interval.value());
    }
    const auto number = units::parseQuantity(text, key.unit);
    if (!number) return number.fault();
    return Value(number.value());
}

} // namespace blinkwright::app
