#include "core/io/measured_report.h"

namespace blinkwright::io {

namespace {

std::string refOf(const circuit::Circuit& circuit, circuit::PartId id) {
    const circuit::Part* part = circuit.find(id);
    return part ? part->ref : std::string();
}

} // namespace

Json measuredJson(const std::optional<circuit::Measured>& value) {
    if (!value) return nullptr;
    return {{"value", number(value->value)}, {"uncertainty", number(value->uncertainty)}};
}

Json measuredJson(const study::MeasuredReadings& m, const circuit::Circuit& refs) {
    Json json = {{"period", measuredJson(m.period_s)},
                 {"rate", measuredJson(m.rate_Hz)},
                 {"high", measuredJson(m.high_s)},
                 {"low", measuredJson(m.low_s)},
                 {"duty", measuredJson(m.duty)},
                 {"first_high", measuredJson(m.firstHigh_s)},
                 {"supply", measuredJson(m.supply_V)},
                 {"output_high", measuredJson(m.outputHigh_V)},
                 {"output_low", measuredJson(m.outputLow_V)},
                 {"lamps", Json::array()},
                 {"parts", Json::array()},
                 {"contradicting", m.contradicting}};
    for (const study::MeasuredLamp& lamp : m.lamps) {
        Json one = {{"ref", refOf(refs, lamp.part)}};
        one.update(measuredJson(lamp.current_A));
        json["lamps"].push_back(std::move(one));
    }
    for (const study::MeasuredPart& part : m.parts) {
        Json one = {{"of", refOf(refs, part.part) + "." + part.key}};
        one.update(measuredJson(part.value));
        json["parts"].push_back(std::move(one));
    }
    return json;
}

} // namespace blinkwright::io
