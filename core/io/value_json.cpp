#include "core/io/value_json.h"

namespace blinkwright::io {

using namespace circuit;

namespace {

using Type = JsonNode::Type;

Result<Interval> readPair(const std::string& place, const JsonNode& node) {
    if (node.type != Type::list || node.items.size() != 2) return wrong(place, wanted::twoNumbers, node);
    for (std::size_t i = 0; i < 2; ++i)
        if (node.items[i].type != Type::number)
            return wrong(place + "[" + std::to_string(i) + "]", wanted::number, node.items[i]);
    return Interval{node.items[0].number, node.items[1].number};
}

Result<void> readTolerance(const std::string& place, const JsonNode& node, Value& value) {
    if (node.type == Type::number) {
        value = node.number;
        return {};
    }
    if (node.type != Type::list) return wrong(place, wanted::numberOrTwo, node);
    const auto pair = readPair(place, node);
    if (!pair) return pair.fault();
    value = pair.value();
    return {};
}

Result<void> readPresses(const std::string& place, const JsonNode& node, Value& value) {
    if (node.type != Type::list) return wrong(place, wanted::presses, node);
    Intervals presses;
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        const auto pair = readPair(place + "[" + std::to_string(i) + "]", node.items[i]);
        if (!pair) return pair.fault();
        presses.push_back(pair.value());
    }
    value = std::move(presses);
    return {};
}

Result<void> readOverrides(const std::string& place, const JsonNode& node, Value& value) {
    if (node.type != Type::object) return wrong(place, wanted::parameters, node);
    Overrides overrides;
    for (std::size_t i = 0; i < node.items.size(); ++i) {
        if (!findTimerParameter(node.keys[i]))
            return Fault{place, wording::inWords("the timer has no parameter %1",
                                                 shown(std::string_view(node.keys[i])))};
        if (node.items[i].type != Type::number)
            return wrong(place + "." + node.keys[i], wanted::number, node.items[i]);
        overrides[node.keys[i]] = node.items[i].number;
    }
    value = std::move(overrides);
    return {};
}

} // namespace

Result<void> readValue(const KeyInfo& key, const JsonNode& node, Value& value) {
    const std::string place(key.key);
    switch (key.shape) {
    case Shape::numberOrNull:
        value = Null{};
        if (node.type == Type::null) return {};
        if (node.type != Type::number) return wrong(place, wanted::numberOrNull, node);
        value = node.number;
        return {};
    case Shape::number:
        if (node.type != Type::number) return wrong(place, wanted::number, node);
        value = node.number;
        return {};
    case Shape::flag:
        if (node.type != Type::flag) return wrong(place, wanted::flag, node);
        value = node.flag;
        return {};
    case Shape::word:
        if (node.type != Type::text) return wrong(place, wanted::text, node);
        value = node.text;
        return {};
    case Shape::tolerance:
        return readTolerance(place, node, value);
    case Shape::presses:
        return readPresses(place, node, value);
    case Shape::overrides:
        return readOverrides(place, node, value);
    }
    return wrong(place, wording::marked("another kind of value"), node);
}

std::string valueJson(const Value& value) {
    struct Visitor {
        std::string operator()(const Null&) const { return "null"; }
        std::string operator()(double v) const { return units::shortest(v); }
        std::string operator()(bool v) const { return v ? "true" : "false"; }
        std::string operator()(const std::string& v) const { return quotedJson(v); }
        std::string operator()(const Interval& v) const {
            return "[" + units::shortest(v[0]) + ", " + units::shortest(v[1]) + "]";
        }
        std::string operator()(const Intervals& v) const {
            std::string text;
            for (const Interval& interval : v) text += (text.empty() ? "" : ", ") + (*this)(interval);
            return "[" + text + "]";
        }
        std::string operator()(const Overrides& v) const {
            std::string text;
            for (const auto& [name, number] : v)
                text += (text.empty() ? "" : ", ") + quotedJson(name) + ": " + units::shortest(number);
            return "{" + text + "}";
        }
    };
    return std::visit(Visitor{}, value);
}

} // namespace blinkwright::io
