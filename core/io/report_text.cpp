#include "core/io/report_text.h"

#include "core/units/engineering.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::io {

namespace {

bool isPlain(const Json& json) {
    return !json.is_object() && !json.is_array();
}

/// Two-space indent, as people read it; lists of plain values on one line, and every number the shortest text
/// that reads back to the same double.
void write(std::string& out, const Json& json, int depth) {
    const auto line = [&](int deep) { out += '\n' + std::string(static_cast<std::size_t>(2 * deep), ' '); };
    if (json.is_number_float()) {
        out += units::shortest(json.get<double>());
    } else if (isPlain(json)) {
        out += json.dump(-1, ' ', false, Json::error_handler_t::replace);
    } else {
        const bool object = json.is_object();
        const bool flat = !object && std::all_of(json.begin(), json.end(), isPlain);
        out += object ? '{' : '[';
        bool first = true;
        for (const auto& [key, value] : json.items()) {
            if (!first) out += flat ? ", " : ",";
            if (!flat) line(depth + 1);
            if (object) out += Json(key).dump() + ": ";
            write(out, value, depth + 1);
            first = false;
        }
        if (!flat && !first) line(depth);
        out += object ? '}' : ']';
    }
}

} // namespace

Json reportHead(const char* format) {
    return {{"format", format}, {"version", 1}};
}

Json number(std::optional<double> value) {
    return value && std::isfinite(*value) ? Json(*value) : Json(nullptr);
}

Json phaseJson(const std::optional<study::Phase>& phase) {
    if (!phase) return nullptr;
    return {{"period", number(phase->period_s())},
            {"rate", number(phase->rate_Hz())},
            {"high", number(phase->high_s)},
            {"low", number(phase->low_s)},
            {"duty", number(phase->duty())}};
}

std::string written(const Json& json) {
    std::string text;
    write(text, json, 0);
    return text + '\n';
}

} // namespace blinkwright::io
