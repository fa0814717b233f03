#include "core/devices/board.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace blinkwright::devices {

using circuit::Circuit;
using circuit::PartSet;
using circuit::Shape;
using circuit::Value;

namespace {

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string listed(std::span<const std::string_view> words) {
    std::string list;
    for (const auto word : words) list += (list.empty() ? "" : ", ") + std::string(word);
    return list;
}

Fault notThis(std::string_view wanted, std::string_view text) {
    return {"", "must be " + std::string(wanted) + ", got '" + std::string(text) + "'"};
}

/// A share: `0.05` or `5 %`.
Result<double> readShare(std::string_view text) {
    if (!text.ends_with('%')) return units::parseQuantity(text, units::Unit::none);
    auto percent = units::parseQuantity(trimmed(text.substr(0, text.size() - 1)), units::Unit::none);
    if (!percent) return percent.fault();
    return percent.value() / 100;
}

/// [low, high] pairs in JSON's notation; what they mean is checked by Circuit::canSet.
std::optional<circuit::Interval> pairOf(const nlohmann::json& json) {
    if (!json.is_array() || json.size() != 2 || !json[0].is_number() || !json[1].is_number())
        return std::nullopt;
    return circuit::Interval{json[0].get<double>(), json[1].get<double>()};
}

Result<Value> readTolerance(std::string_view text) {
    if (text.starts_with('[')) {
        if (const auto pair = pairOf(nlohmann::json::parse(text, nullptr, false))) return Value(*pair);
        return notThis("a number or [low, high]", text);
    }
    auto share = readShare(text);
    if (!share) return share.fault();
    return Value(share.value());
}

Result<Value> readPresses(std::string_view text) {
    const auto json = nlohmann::json::parse(text, nullptr, false);
    const auto refused = notThis("a list of [from, to] in seconds", text);
    if (!json.is_array()) return refused;
    circuit::Intervals presses;
    for (const auto& one : json) {
        const auto pair = pairOf(one);
        if (!pair) return refused;
        presses.push_back(*pair);
    }
    return Value(presses);
}

Result<Value> readValue(const circuit::KeyInfo& key, std::string_view text) {
    switch (key.shape) {
    case Shape::numberOrNull:
        if (text == "null") return Value(circuit::Null{});
        [[fallthrough]];
    case Shape::number: {
        auto number = units::parseQuantity(text, key.unit);
        if (!number) return number.fault();
        return Value(number.value());
    }
    case Shape::flag:
        if (text == "true") return Value(true);
        if (text == "false") return Value(false);
        return notThis("true or false", text);
    case Shape::word:
        if (std::find(key.words.begin(), key.words.end(), text) == key.words.end())
            return notThis("one of " + listed(key.words), text);
        return Value(std::string(text));
    case Shape::tolerance:
        return readTolerance(text);
    case Shape::presses:
        return readPresses(text);
    case Shape::overrides:
        return Fault{"", "name one parameter, as in device.delay"};
    }
    return Fault{"", "cannot be given as text"};
}

/// What the circuit's own checks see: a device parameter is one entry of `device`.
std::pair<std::string, Value> asStated(const ValueOverride& given) {
    if (!given.key.starts_with(circuit::devicePrefix)) return {given.key, given.value};
    const double* number = std::get_if<double>(&given.value);
    return {"device", circuit::Overrides{
                          {given.key.substr(circuit::devicePrefix.size()), number ? *number : std::nan("")}}};
}

} // namespace

Result<ValueOverride> parseOverride(const Circuit& circuit, std::string_view text) {
    const auto equals = text.find('=');
    const auto target = trimmed(text.substr(0, equals));
    const auto dot = target.find('.');
    if (equals == std::string_view::npos || dot == std::string_view::npos || dot == 0 ||
        dot + 1 == target.size())
        return Fault{std::string(text), "must look like R1.resistance=4k7"};

    ValueOverride given{std::string(target.substr(0, dot)), std::string(target.substr(dot + 1)), {}};
    const std::string place(target);
    const auto* part = circuit.findRef(given.ref);
    if (!part) return Fault{place, "there is no part " + given.ref};

    const auto worth = trimmed(text.substr(equals + 1));
    if (worth.empty()) return Fault{place, "has no value after the equals sign"};
    const auto& kind = circuit::info(part->kind);
    if (part->kind == circuit::PartKind::timer && given.key.starts_with(circuit::devicePrefix)) {
        const auto* parameter =
            circuit::findTimerParameter(std::string_view(given.key).substr(circuit::devicePrefix.size()));
        if (!parameter) {
            return Fault{place,
                         "a timer has no parameter of this name; there are " + listed(timerParameters())};
        }
        auto number = units::parseQuantity(worth, parameter->unit);
        if (!number) return Fault{place, number.fault().text};
        given.value = number.value();
    } else {
        const auto* key = circuit::findKey(kind, given.key);
        if (!key) {
            std::string keys;
            for (const auto& known : kind.keys) keys += (keys.empty() ? "" : ", ") + std::string(known.key);
            return Fault{place, "a " + std::string(kind.label) + " has no such value; it has " + keys};
        }
        auto value = readValue(*key, worth);
        if (!value) return Fault{place, value.fault().text};
        given.value = std::move(value).value();
    }
    const auto [key, value] = asStated(given);
    if (auto legal = Circuit::canSet(part->kind, key, value); !legal) return Fault{place, legal.fault().text};
    return given;
}

Result<void> applyOverride(Circuit& circuit, PartSet set, const ValueOverride& given) {
    const auto* part = circuit.findRef(given.ref);
    if (!part) return Fault{given.ref + "." + given.key, "there is no part " + given.ref};
    auto [key, value] = asStated(given);
    if (auto* fresh = std::get_if<circuit::Overrides>(&value)) {
        // An override of `device` states single parameters; the set's other ones stay.
        const auto& own = circuit.overrides(set, part->id);
        if (const auto at = own.find(key); at != own.end()) {
            if (const auto* before = std::get_if<circuit::Overrides>(&at->second))
                fresh->insert(before->begin(), before->end());
        }
    }
    return circuit.setOverride(set, part->id, std::move(key), std::move(value));
}

} // namespace blinkwright::devices
