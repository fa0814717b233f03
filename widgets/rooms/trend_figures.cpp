#include "widgets/rooms/trend_figures.h"

#include "core/base/wording.h"
#include "core/devices/board.h"
#include "core/study/textbook.h"
#include "widgets/text/plain_number.h"
#include "widgets/text/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace blinkwright::widgets {

using circuit::PartKind;
using circuit::PartSet;

namespace {

QString fromView(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// Ratings and what a board starts from: nothing settled depends on them.
bool moves(std::string_view key) {
    constexpr std::array still{"rated_power",   "rated_voltage", "capacity",        "end_voltage",
                               "pulse_current", "reverse_limit", "initial_voltage", "luminous_intensity"};
    return std::ranges::none_of(still, [&](const char* one) { return key == one; });
}

std::vector<std::string> timingParts(const circuit::Circuit& circuit, PartSet set) {
    const auto board = devices::makeBoard(circuit, set);
    if (!board || board.value().timers.empty()) return {};
    const auto book = study::textbookOf(board.value(), 0);
    if (!book) return {};
    std::vector<std::string> refs = book->r1Parts;
    refs.insert(refs.end(), book->r2Parts.begin(), book->r2Parts.end());
    refs.insert(refs.end(), book->cParts.begin(), book->cParts.end());
    return refs;
}

bool isNumber(const circuit::Circuit& circuit, PartSet set, circuit::PartId part, std::string_view key) {
    const auto value = devices::effectiveValue(circuit, set, part, key);
    return value && std::holds_alternative<double>(*value);
}

} // namespace

QString TrendValue::text(double value) const {
    if (isSetting()) return plainNumber(value * 100, 'g', 4) + QStringLiteral("\u00A0%");
    return QString::fromStdString(units::formatQuantity(value, unit, 6));
}

Result<double> TrendValue::read(const QString& text) const {
    QString plain = text.trimmed();
    if (isSetting()) plain = plain.remove(u'%').trimmed();
    Result<double> typed = units::parseQuantity(plain.toStdString(), unit);
    if (!typed) return typed;
    const double value = isSetting() ? typed.value() / 100 : typed.value();
    if (const auto fault = circuit::rangeFault(range, value)) return Fault{name.toStdString(), *fault};
    return value;
}

std::vector<TrendValue> trendValues(const circuit::Circuit& circuit, PartSet set) {
    std::vector<TrendValue> first, main, rest, timers;
    const std::vector<std::string> timing = timingParts(circuit, set);
    for (const circuit::Part& part : circuit.parts()) {
        const circuit::KindInfo& kind = circuit::info(part.kind);
        const bool isTiming = std::ranges::find(timing, part.ref) != timing.end();
        const QString ref = QString::fromStdString(part.ref);
        for (const circuit::KeyInfo& key : kind.keys) {
            const bool number =
                key.shape == circuit::Shape::number || key.shape == circuit::Shape::numberOrNull;
            if (!number || !moves(key.key) || !isNumber(circuit, set, part.id, key.key)) continue;
            const bool slides = scaleKind(part.kind, key.key).has_value();
            (isTiming && slides ? first
             : slides           ? main
                                : rest)
                .push_back({{part.id, std::string(key.key)},
                            part.ref,
                            part.kind,
                            key.unit,
                            key.range,
                            ref + u' ' + QString::fromStdString(wording::inWords(key.label))});
        }
        if (part.kind != PartKind::timer) continue;
        for (const circuit::ParameterInfo& parameter : circuit::timerParameters()) {
            const std::string key = std::string(circuit::devicePrefix).append(parameter.name);
            if (parameter.name == "timing_tolerance" || !isNumber(circuit, set, part.id, key)) continue;
            timers.push_back({{part.id, key},
                              part.ref,
                              part.kind,
                              parameter.unit,
                              parameter.range,
                              ref + u' ' + fromView(parameter.name).replace(u'_', u' ')});
        }
    }
    // In the order of the formula: what charges, what discharges, the capacitor.
    std::ranges::stable_sort(first, {}, [&](const TrendValue& value) {
        return std::ranges::find(timing, value.ref) - timing.begin();
    });
    for (auto* list : {&main, &rest, &timers}) first.insert(first.end(), list->begin(), list->end());
    return first;
}

TrendRange usualRange(const TrendValue& value, double present, double leastSupply_V) {
    if (value.isSetting()) return {0, 1, true};
    if (value.isSupplyVoltage()) {
        const double low = std::min(0.5 * leastSupply_V, 0.5 * present);
        return {low, present > low ? present : leastSupply_V, true};
    }
    if (present > 0) return {present / 10, std::min(present * 10, value.range.high), false};
    if (present == 0) return {0, 1, true};
    return {2 * present, 0, true};
}

ValueScale scaleOf(const TrendValue& value, const TrendRange& range) {
    constexpr double tenth = 1.2589254117941673; // 10^(1/10)
    ValueScale scale;
    const auto usual = scaleKind(value.kind, value.which.key);
    if (usual && usual->ratios == !range.even)
        scale.kind = *usual;
    else if (range.even)
        scale.kind = {false, 0, 0, (range.to - range.from) / 200, (range.to - range.from) / 20};
    else
        scale.kind = {true, 0, 0, 1.01, tenth};
    scale.kind.least = scale.low = range.from;
    scale.kind.most = scale.high = range.to;
    return scale;
}

QString TrendFigure::text(double value) const {
    switch (kind) {
    case Kind::rate:
        return rateText(value);
    case Kind::period:
        return secondsText(value);
    case Kind::duty:
    case Kind::lit:
        return shareText(value);
    default:
        return quantityText(value, unit);
    }
}

std::vector<TrendFigure> trendFigures(const std::vector<std::string>& lamps) {
    using Kind = TrendFigure::Kind;
    using units::Unit;
    std::vector<TrendFigure> list{{Kind::rate, 0, Words::tr("Flash rate"), Unit::hertz},
                                  {Kind::period, 0, Words::tr("Cycle time"), Unit::second},
                                  {Kind::duty, 0, Words::tr("Duty cycle"), Unit::none}};
    for (std::size_t l = 0; l < lamps.size(); ++l) {
        const QString ref = QString::fromStdString(lamps[l]);
        list.push_back({Kind::lit, l, Words::tr("%1 share lit").arg(ref), Unit::none});
        list.push_back({Kind::lampPeak, l, Words::tr("%1 peak current").arg(ref), Unit::ampere});
        list.push_back({Kind::lampMean, l, Words::tr("%1 mean current").arg(ref), Unit::ampere});
    }
    list.push_back({Kind::supplyMean, 0, Words::tr("Supply, mean current"), Unit::ampere});
    return list;
}

std::optional<double> figureOf(const TrendFigure& figure, const study::TrendPoint& point) {
    if (!point.settled) return {};
    const bool hasLamp = figure.lamp < point.lamps.size();
    switch (figure.kind) {
    case TrendFigure::Kind::rate:
        return point.settled->rate_Hz();
    case TrendFigure::Kind::period:
        return point.settled->period_s();
    case TrendFigure::Kind::duty:
        return point.settled->duty();
    case TrendFigure::Kind::lit:
        return hasLamp ? std::optional(point.lamps[figure.lamp].litShare) : std::nullopt;
    case TrendFigure::Kind::lampPeak:
        return hasLamp ? std::optional(point.lamps[figure.lamp].peak_A) : std::nullopt;
    case TrendFigure::Kind::lampMean:
        return hasLamp ? std::optional(point.lamps[figure.lamp].mean_A) : std::nullopt;
    case TrendFigure::Kind::supplyMean:
        return point.supplyMean_A;
    }
    return {};
}

std::optional<double> textbookOf(const TrendFigure& figure, const study::TrendPoint& point) {
    if (!point.textbook) return {};
    switch (figure.kind) {
    case TrendFigure::Kind::rate:
        return point.textbook->rate_Hz();
    case TrendFigure::Kind::period:
        return point.textbook->period_s();
    case TrendFigure::Kind::duty:
        return point.textbook->duty();
    default:
        return {};
    }
}

} // namespace blinkwright::widgets
