#include "core/io/measurement_json.h"

#include "core/io/json_line.h"
#include "core/io/object_reader.h"

#include <cmath>

namespace blinkwright::io {

using namespace circuit;

namespace {

using Type = JsonNode::Type;
using What = decltype(Measurement::what);

/// Takes the value out of a result, or leaves with its fault.
// NOLINTBEGIN(bugprone-macro-parentheses): the name of what is declared cannot stand in parentheses.
#define TAKE(name, result)                                                                                   \
    auto name##_ = (result);                                                                                 \
    if (!name##_) return name##_.fault();                                                                    \
    auto name = std::move(name##_).value()
// NOLINTEND(bugprone-macro-parentheses)

Result<What> readCount(ObjectReader& fields) {
    Count count;
    TAKE(flashes, fields.number("flashes"));
    if (flashes != std::floor(flashes) || std::abs(flashes) > 1e9)
        return Fault{fields.place("flashes"), wording::inWords("must be a whole number")};
    count.flashes = static_cast<int>(flashes);
    const JsonNode* time = fields.take("time");
    if (!time) return missing(fields.place("time"));
    if (time->type != Type::object) return wrong(fields.place("time"), wanted::object, *time);
    ObjectReader inner(*time, fields.place("time"));
    TAKE(value, inner.number("value"));
    TAKE(uncertainty, inner.numberOr("uncertainty", 0));
    count.time_s = {value, uncertainty};
    return What(count);
}

Result<What> readReading(const Circuit& circuit, ObjectReader& fields) {
    MeterReading reading;
    TAKE(quantity, fields.text("quantity"));
    const auto known = meterQuantityNamed(quantity);
    if (!known) {
        std::string names;
        for (MeterQuantity one : allMeterQuantities)
            names.append(names.empty() ? "" : ", ").append(name(one));
        return Fault{fields.place("quantity"),
                     wording::inWords("must be one of %1, got %2", names, shown(std::string_view(quantity)))};
    }
    reading.quantity = *known;
    TAKE(of, fields.text("of"));
    const std::size_t dot = of.find('.');
    const Part* part = circuit.findRef(std::string_view(of).substr(0, dot));
    if (!part)
        return Fault{fields.place("of"),
                     wording::inWords("there is no such part: %1", shown(std::string_view(of)))};
    reading.part = part->id;
    if (dot != std::string::npos) reading.key = of.substr(dot + 1);
    TAKE(value, fields.number("value"));
    TAKE(uncertainty, fields.numberOr("uncertainty", 0));
    reading.value = {value, uncertainty};
    return What(reading);
}

Result<void> readTraces(ObjectReader& fields, Record& record) {
    const JsonNode* list = fields.take("traces");
    if (!list) return missing(fields.place("traces"));
    if (list->type != Type::list) return wrong(fields.place("traces"), wanted::list, *list);
    for (std::size_t k = 0; k < list->items.size(); ++k) {
        const std::string place = fields.place("traces") + "[" + std::to_string(k) + "]";
        if (list->items[k].type != Type::object) return wrong(place, wanted::object, list->items[k]);
        ObjectReader trace(list->items[k], place);
        TAKE(of, trace.text("of"));
        const auto known = traceOfNamed(of);
        if (!known)
            return Fault{trace.place("of"), wording::inWords("must be output, capacitor or other, got %1",
                                                             shown(std::string_view(of)))};
        TAKE(values, trace.numbers("values"));
        record.traces.push_back({*known, std::move(values)});
    }
    return {};
}

Result<What> readRecord(ObjectReader& fields) {
    Record record;
    TAKE(source, fields.textOr("source", ""));
    TAKE(begin, fields.textOr("begin", "running"));
    if (begin != "power-on" && begin != "running")
        return Fault{fields.place("begin"),
                     wording::inWords("must be power-on or running, got %1", shown(std::string_view(begin)))};
    TAKE(step, fields.number("step"));
    TAKE(timeUncertainty, fields.numberOr("time_uncertainty", record.timeUncertainty));
    TAKE(first, fields.textOr("first", "rise"));
    if (first != "rise" && first != "fall")
        return Fault{fields.place("first"),
                     wording::inWords("must be rise or fall, got %1", shown(std::string_view(first)))};
    TAKE(switchings, fields.numbers("switchings"));
    TAKE(time, fields.numbers("time"));
    if (const JsonNode* levels = fields.take("levels")) {
        if (levels->type != Type::object) return wrong(fields.place("levels"), wanted::object, *levels);
        ObjectReader inner(*levels, fields.place("levels"));
        TAKE(high, inner.number("high"));
        TAKE(low, inner.number("low"));
        record.levels = Levels{high, low};
    }
    if (auto ok = readTraces(fields, record); !ok) return ok.fault();
    record.source = std::move(source);
    record.fromPowerOn = begin == "power-on";
    record.step_s = step;
    record.timeUncertainty = timeUncertainty;
    record.firstRises = first == "rise";
    record.switchings_s = std::move(switchings);
    record.time_s = std::move(time);
    return What(std::move(record));
}

#undef TAKE

std::string numbersJson(const std::vector<double>& numbers) {
    std::string text = "[";
    for (double number : numbers) text.append(text.size() > 1 ? "," : "").append(units::shortest(number));
    return text + "]";
}

std::string pairJson(std::string_view firstKey, double first, std::string_view secondKey, double second) {
    JsonLine line;
    line.add(firstKey, units::shortest(first));
    line.add(secondKey, units::shortest(second));
    return line.json();
}

void add(JsonLine& line, const Circuit&, const Count& count) {
    line.add("kind", "\"count\"");
    line.add("flashes", std::to_string(count.flashes));
    line.add("time", pairJson("value", count.time_s.value, "uncertainty", count.time_s.uncertainty));
}

void add(JsonLine& line, const Circuit& circuit, const MeterReading& reading) {
    line.add("kind", "\"meter\"");
    line.add("quantity", quotedJson(name(reading.quantity)));
    const Part* part = circuit.find(reading.part);
    std::string of = part ? part->ref : std::string();
    if (!reading.key.empty()) of += "." + reading.key;
    line.add("of", quotedJson(of));
    line.add("value", units::shortest(reading.value.value));
    line.add("uncertainty", units::shortest(reading.value.uncertainty));
}

void add(JsonLine& line, const Circuit&, const Record& record) {
    line.add("kind", "\"record\"");
    if (!record.source.empty()) line.add("source", quotedJson(record.source));
    line.add("begin", record.fromPowerOn ? "\"power-on\"" : "\"running\"");
    line.add("step", units::shortest(record.step_s));
    line.add("time_uncertainty", units::shortest(record.timeUncertainty));
    if (record.levels)
        line.add("levels", pairJson("high", record.levels->high_V, "low", record.levels->low_V));
    line.add("first", record.firstRises ? "\"rise\"" : "\"fall\"");
    line.add("switchings", numbersJson(record.switchings_s));
    line.add("time", numbersJson(record.time_s));
    std::string traces;
    for (const Trace& trace : record.traces) {
        JsonLine one;
        one.add("of", quotedJson(name(trace.of)));
        one.add("values", numbersJson(trace.values_V));
        traces.append(traces.empty() ? "" : ", ").append(one.json());
    }
    line.add("traces", "[" + traces + "]");
}

void add(JsonLine&, const Circuit&, const OtherMeasurement&) {
}

} // namespace

Result<Measurement> readMeasurement(const Circuit& circuit, const JsonNode& node, const std::string& place) {
    Measurement measurement;
    const JsonNode* kind = node.type == Type::object ? node.find("kind") : nullptr;
    const std::string word = kind && kind->type == Type::text ? kind->text : std::string();
    if (word != "count" && word != "meter" && word != "record") {
        measurement.what = OtherMeasurement{compact(node)};
        return measurement;
    }
    ObjectReader fields(node, place);
    fields.take("kind");
    auto title = fields.textOr("title", "");
    if (!title) return title.fault();
    auto used = fields.flagOr("used", true);
    if (!used) return used.fault();
    Result<What> what = word == "count"   ? readCount(fields)
                        : word == "meter" ? readReading(circuit, fields)
                                          : readRecord(fields);
    if (!what) return what.fault();
    measurement.title = std::move(title).value();
    measurement.used = used.value();
    measurement.what = std::move(what).value();
    measurement.extras = fields.extras();
    if (auto ok = circuit.canMeasure(measurement); !ok)
        return Fault{place + "." + ok.fault().place, ok.fault().text};
    return measurement;
}

std::string measurementJson(const Circuit& circuit, const Measurement& measurement) {
    if (const auto* other = std::get_if<OtherMeasurement>(&measurement.what)) return other->json;
    JsonLine line;
    line.add("title", quotedJson(measurement.title));
    if (!measurement.used) line.add("used", "false");
    std::visit([&](const auto& what) { add(line, circuit, what); }, measurement.what);
    line.add(measurement.extras);
    return line.json();
}

} // namespace blinkwright::io
