#include "core/io/choices_csv.h"

#include "core/units/engineering.h"

#include <cmath>

namespace blinkwright::io {

using study::Choice;

std::string choicesCsv(const study::Choices& choices) {
    std::string csv = "R1 [ohm],R2 [ohm],RV1 [ohm],C1 [F],R3 [ohm],R4 [ohm],C4 [F],diode,lamp to,rate [Hz],"
                      "rate to [Hz],lit,lit to,lowest rate [Hz],highest rate [Hz],lamp peak [A],"
                      "supply mean [A],stall margin,left in drawer\r\n";
    for (const Choice& c : choices.best) {
        const char* before = "";
        const auto add = [&](const std::string& field) {
            csv += before + field;
            before = ",";
        };
        const auto number = [&](std::optional<double> value) {
            add(value && std::isfinite(*value) && *value > 0 ? units::shortest(*value) : std::string());
        };
        const auto fast = [&](double study::FastEnd::*figure) {
            number(c.fast ? std::optional(*c.fast.*figure) : std::nullopt);
        };
        number(c.r1_ohm);
        number(c.r2_ohm);
        number(c.variable_ohm);
        number(c.c1_farad);
        number(c.r3_ohm);
        number(c.coupling_farad ? std::optional(c.bleeder_ohm) : c.r4_ohm);
        number(c.coupling_farad);
        add(c.scheme.diode ? "yes" : "no");
        add(c.scheme.coupledPair ? "coupled" : c.r4_ohm ? "both" : c.scheme.lampToRail ? "rail" : "ground");
        number(c.rate_Hz);
        fast(&study::FastEnd::rate_Hz);
        number(c.lit);
        fast(&study::FastEnd::lit);
        number(c.rateLow_Hz);
        number(c.rateHigh_Hz);
        number(c.lampPeak_A);
        number(c.supplyMean_A);
        number(c.stallMargin);
        add(c.left ? std::to_string(*c.left) : std::string());
        csv += "\r\n";
    }
    return csv;
}

} // namespace blinkwright::io
