#include "core/io/study_reports.h"

#include "core/io/report_text.h"

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

} // namespace

std::string whyJson(const study::Why& why) {
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
    if (!why.reason.empty()) json["reason"] = why.reason;
    return written(json);
}

} // namespace blinkwright::io
