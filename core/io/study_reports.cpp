#include "core/io/study_reports.h"

#include "core/base/csv.h"
#include "core/io/measured_report.h"
#include "core/io/report_text.h"
#include "core/units/engineering.h"

#include <cmath>

namespace blinkwright::io {

namespace {

Json endJson(const std::optional<study::Phase>& phase) {
    if (!phase) return nullptr;
    return {{"period", number(phase->period_s())}, {"duty", number(phase->duty())}};
}

/// Adds `period_change` and `duty_change`.
void addChange(Json& json, const std::optional<study::WhyChange>& change) {
    json["period_change"] = change ? number(change->period_s) : Json(nullptr);
    json["duty_change"] = change ? number(change->duty) : Json(nullptr);
}

Json figureJson(const std::optional<study::SpreadFigure>& figure) {
    if (!figure) return nullptr;
    const study::SpreadFigure& f = *figure;
    return {{"nominal", number(f.nominal)},
            {"mean", number(f.mean)},
            {"sd", number(f.sd)},
            {"p1", number(f.p1)},
            {"p5", number(f.p5)},
            {"p50", number(f.p50)},
            {"p95", number(f.p95)},
            {"p99", number(f.p99)},
            {"worst_low", number(f.worstLow)},
            {"worst_high", number(f.worstHigh)}};
}

const char* lampText(study::LampTo to) {
    switch (to) {
    case study::LampTo::ground:
        return "ground";
    case study::LampTo::rail:
        return "rail";
    case study::LampTo::either:
        break;
    }
    return "either";
}

Json wishJson(const study::Wish& wish) {
    Json json = {{"rate", number(wish.rate_Hz)},
                 {"lit", number(wish.lit)},
                 {"supply", number(wish.supply_V)},
                 {"lamp_to", lampText(wish.lampTo)},
                 {"family", wish.cmos ? "cmos" : "bipolar"},
                 {"lamps", wish.lamps},
                 {"lamp_current", number(wish.lampCurrent_A)}};
    json["rate_to"] = number(wish.rateTo_Hz);
    json["stay_lit"] = number(wish.stayLit_s);
    json["equal_brightness"] = wish.equalBrightness;
    json["intensities"] = nullptr;
    if (!wish.intensity_cd.empty()) json["intensities"] = wish.intensity_cd;
    json["series"] = nullptr;
    if (!wish.drawer) json["series"] = {{"R1", name(wish.r1)}, {"R2", name(wish.r2)}, {"C1", name(wish.c1)}};
    return json;
}

Json choiceJson(const study::Wish& wish, const study::Choice& choice) {
    Json values = {{"R1.resistance", number(choice.r1_ohm)},
                   {"R2.resistance", number(choice.r2_ohm)},
                   {"C1.capacitance", number(choice.c1_farad)},
                   {"R3.resistance", number(choice.r3_ohm)}};
    if (choice.r4_ohm) values["R4.resistance"] = number(choice.r4_ohm);
    if (choice.coupling_farad) {
        values["C4.capacitance"] = number(choice.coupling_farad);
        if (choice.bleeder_ohm > 0) values["R4.resistance"] = number(choice.bleeder_ohm);
    }
    if (choice.variable_ohm) values["RV1.resistance"] = number(choice.variable_ohm);
    if (choice.control_farad > 0) values["C2.capacitance"] = number(choice.control_farad);
    if (choice.buffer_farad > 0) values["C3.capacitance"] = number(choice.buffer_farad);
    const study::Scheme& scheme = choice.scheme;
    const auto known = [](double rate) { return rate > 0 ? Json(rate) : Json(nullptr); };
    const auto fast = [&](double study::FastEnd::*figure) {
        return number(choice.fast ? std::optional(*choice.fast.*figure) : std::nullopt);
    };
    Json lamps = Json::array();
    for (const study::ChosenLamp& lamp : choice.lamps)
        lamps.push_back(
            {{"peak", number(lamp.peak_A)}, {"mean", number(lamp.mean_A)}, {"lit_time", number(lamp.lit_s)}});
    return {{"values", std::move(values)},
            {"lamp_to", wish.lamps == 2 ? (scheme.coupledPair ? "coupled" : "both")
                                        : (scheme.lampToRail ? "rail" : "ground")},
            {"diode", scheme.diode},
            {"rate", number(choice.rate_Hz)},
            {"duty", number(choice.duty)},
            {"lit", number(choice.lit)},
            {"rate_low", known(choice.rateLow_Hz)},
            {"rate_high", known(choice.rateHigh_Hz)},
            {"lamp_peak", number(choice.lampPeak_A)},
            {"supply_mean", number(choice.supplyMean_A)},
            {"stall_margin", number(choice.stallMargin)},
            {"rate_to", fast(&study::FastEnd::rate_Hz)},
            {"lit_to", fast(&study::FastEnd::lit)},
            {"lamps", std::move(lamps)},
            {"left_in_drawer", choice.left ? Json(*choice.left) : Json(nullptr)}};
}

} // namespace

std::string whyJson(const study::Why& why, const study::WhyMeasured& measured) {
    Json json = reportHead("blinkwright-why");
    json["textbook"] = endJson(why.textbook);
    json["steps"] = Json::array();
    for (const study::WhyStep& step : why.steps) {
        Json one = {{"cause", std::string(name(step.imperfection))}};
        addChange(one, step.change);
        json["steps"].push_back(std::move(one));
    }
    json["interaction"] = nullptr;
    if (why.interaction) {
        json["interaction"] = Json::object();
        addChange(json["interaction"], why.interaction);
    }
    json["simulated"] = endJson(why.simulated);
    if (!measured.empty()) {
        json["unexplained"] = {{"period_change", measuredJson(measured.unexplainedPeriod_s)},
                               {"duty_change", measuredJson(measured.unexplainedDuty)}};
        json["measured"] = {{"period", measuredJson(measured.period_s)},
                            {"duty", measuredJson(measured.duty)}};
    }
    if (!why.reason.empty()) json["reason"] = why.reason;
    return written(json);
}

std::string spreadJson(const study::SpreadOutcome& spread) {
    Json json = reportHead("blinkwright-spread");
    json["boards"] = spread.boards;
    json["seed"] = spread.seed;
    json["blinking_share"] = number(spread.blinkingShare);
    json["period"] = figureJson(spread.period_s);
    json["rate"] = figureJson(spread.rate_Hz);
    json["duty"] = figureJson(spread.duty);
    json["lamps"] = Json::array();
    for (const study::SpreadLamp& lamp : spread.lamps)
        json["lamps"].push_back(
            {{"ref", lamp.ref},
             {"mean_current", figureJson(lamp.mean_A)},
             {"lit", lamp.lits.empty() ? Json(nullptr) : figureJson(std::optional(lamp.lit))}});
    json["shares"] = Json::object();
    for (const study::SpreadShare& share : spread.shares) json["shares"][share.ref] = number(share.share);
    json["sensitivities"] = Json::object();
    for (const study::SpreadSensitivity& part : spread.sensitivities) {
        Json lamps = Json::object(), lits = Json::object();
        for (std::size_t l = 0; l < spread.lamps.size(); ++l) {
            lamps[spread.lamps[l].ref] = number(part.lamps[l]);
            if (l < part.lits.size()) lits[spread.lamps[l].ref] = number(part.lits[l]);
        }
        json["sensitivities"][part.ref] = {{"period", number(part.period)},
                                           {"rate", number(-part.period)},
                                           {"duty", number(part.duty)},
                                           {"lamps", std::move(lamps)},
                                           {"lits", std::move(lits)}};
    }
    json["corners_blink"] = spread.rate_Hz ? Json(spread.cornersBlink) : Json(nullptr);
    if (!spread.reason.empty()) json["reason"] = spread.reason;
    return written(json);
}

std::string spreadBoardsCsv(const study::SpreadOutcome& spread) {
    std::string csv = "period [s],rate [Hz],duty";
    for (const study::SpreadLamp& lamp : spread.lamps)
        csv += "," + csvField(lamp.ref + " mean [A]") + "," + csvField(lamp.ref + " lit share");
    csv += "\r\n";
    for (std::size_t k = 0; k < spread.periods_s.size(); ++k) {
        csv += units::shortest(spread.periods_s[k]) + ',' + units::shortest(1 / spread.periods_s[k]) + ',' +
               units::shortest(spread.duties[k]);
        for (const study::SpreadLamp& lamp : spread.lamps) {
            csv += ',' + units::shortest(lamp.values_A[k]) + ',';
            if (k < lamp.lits.size()) csv += units::shortest(lamp.lits[k]);
        }
        csv += "\r\n";
    }
    return csv;
}

std::string spreadFiguresCsv(const study::SpreadOutcome& spread) {
    std::string csv = "figure,nominal,mean,sd,p1,p5,p50,p95,p99,worst low,worst high\r\n";
    const auto add = [&](const std::string& name, const std::optional<study::SpreadFigure>& figure) {
        if (!figure) return;
        const study::SpreadFigure& f = *figure;
        csv += csvField(name);
        for (const double value :
             {f.nominal, f.mean, f.sd, f.p1, f.p5, f.p50, f.p95, f.p99, f.worstLow, f.worstHigh})
            csv += ',' + units::shortest(value);
        csv += "\r\n";
    };
    add("period [s]", spread.period_s);
    add("rate [Hz]", spread.rate_Hz);
    add("duty", spread.duty);
    for (const study::SpreadLamp& lamp : spread.lamps) {
        add(lamp.ref + " mean [A]", lamp.mean_A);
        if (!lamp.lits.empty()) add(lamp.ref + " lit share", lamp.lit);
    }
    return csv;
}

std::string choicesJson(const study::Wish& wish, const study::Choices& choices) {
    Json json = reportHead("blinkwright-choices");
    json["wish"] = wishJson(wish);
    json["choices"] = Json::array();
    for (const study::Choice& choice : choices.best) json["choices"].push_back(choiceJson(wish, choice));
    json["unmet"] = nullptr;
    if (choices.unmet) {
        const study::Unmet& unmet = *choices.unmet;
        const auto known = [](double value) { return value > 0 ? Json(value) : Json(nullptr); };
        json["unmet"] = {{"reason", unmet.reason},
                         {"nearest",
                          {{"rate", known(unmet.rate_Hz)},
                           {"lit", known(unmet.lit)},
                           {"supply", known(unmet.supply_V)},
                           {"rate_to", number(unmet.rateTo_Hz)},
                           {"stay_lit", number(unmet.stayLit_s)},
                           {"values", nullptr}}}};
        if (unmet.choice) json["unmet"]["nearest"]["values"] = choiceJson(wish, *unmet.choice)["values"];
    }
    json["screened"] = choices.screened;
    json["simulated"] = choices.simulated;
    return written(json);
}

namespace {

/// What a trend has beside the value that moves; each text begins with a comma.
std::string trendHead(const study::Trend& trend, const std::string& before) {
    std::string head;
    const auto add = [&](const std::string& column) { head += "," + csvField(before + column); };
    for (const char* column : {"period [s]", "rate [Hz]", "high [s]", "low [s]", "duty"}) add(column);
    for (const std::string& lamp : trend.lamps) {
        add(lamp + " peak [A]");
        add(lamp + " mean [A]");
    }
    add("supply mean [A]");
    add("textbook rate [Hz]");
    return head;
}

std::string trendFields(const study::Trend& trend, const study::TrendPoint& point) {
    using study::Phase;
    std::string fields;
    const auto add = [&](std::optional<double> value) {
        fields += ',';
        if (value && std::isfinite(*value)) fields += units::shortest(*value);
    };
    const auto& phase = point.settled;
    const auto of = [&](auto&& figure) {
        return phase ? std::optional<double>(figure(*phase)) : std::nullopt;
    };
    add(of([](const Phase& p) { return p.period_s(); }));
    add(of([](const Phase& p) { return p.rate_Hz(); }));
    add(of([](const Phase& p) { return p.high_s; }));
    add(of([](const Phase& p) { return p.low_s; }));
    add(of([](const Phase& p) { return p.duty(); }));
    for (std::size_t l = 0; l < trend.lamps.size(); ++l) {
        const bool known = l < point.lamps.size();
        add(known ? std::optional(point.lamps[l].peak_A) : std::nullopt);
        add(known ? std::optional(point.lamps[l].mean_A) : std::nullopt);
    }
    add(point.supplyMean_A);
    add(point.textbook ? std::optional(point.textbook->rate_Hz()) : std::nullopt);
    return fields;
}

std::string trendTable(const study::Trend& trend, const study::Trend* second, const std::string& secondName) {
    std::string csv = csvField(trend.ref + "." + trend.key) + trendHead(trend, {});
    if (second) csv += trendHead(*second, secondName + " ");
    csv += "\r\n";
    for (std::size_t k = 0; k < trend.points.size(); ++k) {
        csv += units::shortest(trend.points[k].value) + trendFields(trend, trend.points[k]);
        if (second)
            csv += trendFields(*second, k < second->points.size() ? second->points[k] : study::TrendPoint());
        csv += "\r\n";
    }
    return csv;
}

} // namespace

std::string trendCsv(const study::Trend& trend) {
    return trendTable(trend, nullptr, {});
}

std::string trendCsv(const study::Trend& trend, const study::Trend& second, const std::string& secondName) {
    return trendTable(trend, &second, secondName);
}

} // namespace blinkwright::io
