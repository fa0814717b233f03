#include "core/io/fit_report.h"

#include "core/base/csv.h"
#include "core/io/report_text.h"

#include <cmath>

namespace blinkwright::io {

using study::FitFigure;
using study::FitOutcome;
using study::FittedFigure;

namespace {

constexpr FitFigure timing[] = {FitFigure::period, FitFigure::high, FitFigure::low, FitFigure::duty};

std::string keyOf(const FittedFigure& figure) {
    const std::string key(name(figure.figure));
    return figure.ref.empty() ? key : figure.ref + "." + key;
}

/// A figure by figure object: the four of the timing always, of the rest what there is.
template <class Pick>
Json figuresJson(const FitOutcome& fit, Pick pick) {
    Json json = Json::object();
    for (const FitFigure one : timing) json[std::string(name(one))] = nullptr;
    for (const FittedFigure& figure : fit.figures)
        if (figure.figure != FitFigure::rate) json[keyOf(figure)] = number(pick(figure));
    return json;
}

std::string unitText(units::Unit unit) {
    const std::string_view symbol = units::symbol(unit);
    return symbol.empty() ? std::string() : " [" + std::string(symbol) + "]";
}

void addCell(std::string& csv, std::optional<double> value) {
    csv += ',';
    if (value && std::isfinite(*value)) csv += units::shortest(*value);
}

} // namespace

std::string_view name(FitFigure figure) {
    switch (figure) {
    case FitFigure::rate:
        return "rate";
    case FitFigure::period:
        return "period";
    case FitFigure::high:
        return "high";
    case FitFigure::low:
        return "low";
    case FitFigure::duty:
        return "duty";
    case FitFigure::firstHigh:
        return "first_high";
    case FitFigure::supplyVoltage:
        return "voltage";
    case FitFigure::outputHigh:
        return "output_high";
    case FitFigure::outputLow:
        return "output_low";
    case FitFigure::lampCurrent:
        return "current";
    }
    return "";
}

std::string_view name(study::Evaluation evaluation) {
    return evaluation == study::Evaluation::typeA ? "Type A" : "Type B";
}

std::string_view name(study::Distribution distribution) {
    return distribution == study::Distribution::normal ? "normal" : "rectangular";
}

std::string fitJson(const FitOutcome& fit) {
    Json json = reportHead("blinkwright-fit");
    json["values"] = Json::object();
    for (const study::FittedValue& value : fit.values)
        json["values"][value.name()] = {{"value", number(value.value)},
                                        {"uncertainty", number(value.uncertainty)},
                                        {"nominal", number(value.nominal)},
                                        {"known_before", number(value.prior.value)},
                                        {"uncertainty_before", number(value.prior.uncertainty)}};
    const auto measured = [](double circuit::Measured::*part) {
        return [part](const FittedFigure& f) {
            return f.measured ? std::optional((*f.measured).*part) : std::nullopt;
        };
    };
    json["measured"] = figuresJson(fit, measured(&circuit::Measured::value));
    json["before"] = figuresJson(fit, [](const FittedFigure& f) { return std::optional(f.before); });
    json["after"] = figuresJson(fit, [](const FittedFigure& f) { return std::optional(f.after.value); });
    json["measured_uncertainty"] = figuresJson(fit, measured(&circuit::Measured::uncertainty));
    json["after_uncertainty"] =
        figuresJson(fit, [](const FittedFigure& f) { return std::optional(f.after.uncertainty); });
    json["agrees"] = fit.found ? Json(fit.agrees) : Json(nullptr);
    json["chi_square"] = fit.found ? number(fit.chiSquare) : Json(nullptr);
    json["chi_square_limit"] = fit.found ? number(fit.chiSquareLimit) : Json(nullptr);
    json["notes"] = Json::array();
    for (const study::FitNote& note : fit.notes) json["notes"].push_back(note.text);
    if (!fit.reason.empty()) json["reason"] = fit.reason;
    return written(json);
}

std::string fitCsv(const FitOutcome& fit) {
    std::string csv = "value,nominal,known before,uncertainty before,fitted,uncertainty,moved by [sigma]\r\n";
    for (const study::FittedValue& v : fit.values) {
        csv += csvField(v.name() + unitText(v.unit));
        for (const double cell :
             {v.nominal, v.prior.value, v.prior.uncertainty, v.value, v.uncertainty, v.movedSigmas()})
            addCell(csv, cell);
        csv += "\r\n";
    }
    csv += "figure,measured,uncertainty,before,after,uncertainty after\r\n";
    for (const FittedFigure& f : fit.figures) {
        csv += csvField(keyOf(f) + unitText(f.unit));
        addCell(csv, f.measured ? std::optional(f.measured->value) : std::nullopt);
        addCell(csv, f.measured ? std::optional(f.measured->uncertainty) : std::nullopt);
        for (const double cell : {f.before, f.after.value, f.after.uncertainty}) addCell(csv, cell);
        csv += "\r\n";
    }
    return csv;
}

std::string budgetCsv(const study::Budget& budget, const std::string& of) {
    const std::string unit = unitText(unitOf(budget.figure));
    std::string csv = "quantity,from,value,standard uncertainty,evaluation,distribution,sensitivity,"
                      "contribution" +
                      unit + ",share of the variance\r\n";
    for (std::size_t k = 0; k < budget.rows.size(); ++k) {
        const study::BudgetRow& row = budget.rows[k];
        csv += csvField(row.ref + (row.key.empty() ? "" : "." + row.key) + unitText(row.unit)) + ',' +
               csvField(row.what);
        addCell(csv, row.value);
        addCell(csv, row.uncertainty);
        csv += ',' + std::string(name(row.evaluation)) + ',' + std::string(name(row.distribution));
        addCell(csv, row.sensitivity);
        addCell(csv, row.contribution());
        addCell(csv, budget.share(k));
        csv += "\r\n";
    }
    const auto line = [&](const char* what, double value) {
        csv += csvField(of + " " + what + unit);
        addCell(csv, {});
        addCell(csv, value);
        csv += ",,,,,,\r\n"; // the cells that only inputs have
    };
    line("value", budget.value);
    line("combined standard uncertainty", budget.combined);
    line("expanded uncertainty (k = 2)", budget.expanded());
    return csv;
}

} // namespace blinkwright::io
