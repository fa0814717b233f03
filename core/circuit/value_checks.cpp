// What a value may be: shape, range, finiteness. Every way into a circuit (files, edits, typed text) comes
// through here.
#include "core/circuit/circuit.h"

#include "core/base/wording.h"
#include "core/units/decimal.h"

#include <cmath>

namespace blinkwright::circuit {

namespace {

using units::spoken;

std::string listed(std::span<const std::string_view> words) {
    std::string text;
    for (std::string_view word : words) text.append(text.empty() ? "" : ", ").append(word);
    return text;
}

Result<void> checkNumber(const std::string& place, const Range& range, double value) {
    if (auto fault = rangeFault(range, value)) return Fault{place, std::move(*fault)};
    return {};
}

Result<void> checkTolerance(const std::string& place, const Value& value) {
    if (const double* number = std::get_if<double>(&value)) {
        // A part 100 % under its value would be none at all.
        if (!(*number >= 0 && *number < 1))
            return Fault{place,
                         wording::inWords("must be at least 0 and less than 1, got %1", spoken(*number))};
        return {};
    }
    const Interval* limits = std::get_if<Interval>(&value);
    if (!limits) return Fault{place, wording::inWords("must be a number or a list of two numbers")};
    const auto [low, high] = *limits;
    if (!(low > -1 && low <= 0))
        return Fault{place + "[0]",
                     wording::inWords("must be greater than -1 and at most 0, got %1", spoken(low))};
    if (!(high >= 0 && high <= 1000))
        return Fault{place + "[1]",
                     wording::inWords("must be between %1 and %2, got %3", 0, 1000, spoken(high))};
    return {};
}

Result<void> checkPresses(const std::string& place, const Range& range, const Value& value) {
    const Intervals* presses = std::get_if<Intervals>(&value);
    if (!presses) return Fault{place, wording::inWords("must be a list of [from, to] in seconds")};
    double before = 0;
    for (std::size_t i = 0; i < presses->size(); ++i) {
        const auto [from, to] = (*presses)[i];
        const std::string at = place + "[" + std::to_string(i) + "]";
        if (auto ok = checkNumber(at + "[0]", range, from); !ok) return ok;
        if (auto ok = checkNumber(at + "[1]", range, to); !ok) return ok;
        if (!(from < to))
            return Fault{
                at, wording::inWords("must end after it begins, got %1 to %2", spoken(from), spoken(to))};
        if (from < before)
            return Fault{at,
                         wording::inWords("must not begin before the press ahead of it ends at %1, got %2",
                                          spoken(before), spoken(from))};
        before = to;
    }
    return {};
}

Result<void> checkParameter(const std::string& name, double value) {
    const std::string place = std::string(devicePrefix) + name;
    const ParameterInfo* parameter = findTimerParameter(name);
    if (!parameter) return Fault{place, wording::inWords("the timer has no such parameter")};
    return checkNumber(place, parameter->range, value);
}

Result<void> checkOverrides(const std::string& place, const Value& value) {
    const Overrides* overrides = std::get_if<Overrides>(&value);
    if (!overrides) return Fault{place, wording::inWords("must be an object of parameter names and numbers")};
    for (const auto& [name, number] : *overrides)
        if (auto ok = checkParameter(name, number); !ok) return ok;
    return {};
}

Result<void> checkWord(const std::string& place, const KeyInfo& key, const Value& value) {
    const std::string* word = std::get_if<std::string>(&value);
    if (!word) return Fault{place, wording::inWords("must be one of %1", listed(key.words))};
    for (std::string_view allowed : key.words)
        if (*word == allowed) return {};
    return Fault{place,
                 wording::inWords("must be one of %1, got %2", listed(key.words), "\"" + *word + "\"")};
}

} // namespace

Result<void> Circuit::canSet(PartKind kind, std::string_view keyText, const Value& value) {
    const KindInfo& kindInfo = info(kind);
    const std::string place(keyText);
    if (kind == PartKind::timer && keyText.starts_with(devicePrefix)) {
        const double* number = std::get_if<double>(&value);
        if (!number) return Fault{place, wording::inWords("must be a number")};
        return checkParameter(place.substr(devicePrefix.size()), *number);
    }
    const KeyInfo* key = findKey(kindInfo, keyText);
    if (!key)
        return Fault{place, wording::inWords("a %1 has no such value", wording::inWords(kindInfo.label))};
    switch (key->shape) {
    case Shape::numberOrNull:
        if (std::holds_alternative<Null>(value)) return {};
        if (const double* number = std::get_if<double>(&value))
            return checkNumber(place, key->range, *number);
        return Fault{place, wording::inWords("must be a number or null")};
    case Shape::number:
        if (const double* number = std::get_if<double>(&value))
            return checkNumber(place, key->range, *number);
        return Fault{place, wording::inWords("must be a number")};
    case Shape::flag:
        if (std::holds_alternative<bool>(value)) return {};
        return Fault{place, wording::inWords("must be true or false")};
    case Shape::word:
        return checkWord(place, *key, value);
    case Shape::tolerance:
        return checkTolerance(place, value);
    case Shape::presses:
        return checkPresses(place, key->range, value);
    case Shape::overrides:
        return checkOverrides(place, value);
    }
    return {};
}

} // namespace blinkwright::circuit
