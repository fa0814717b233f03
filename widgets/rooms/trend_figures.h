// What a trend can show, and over which values: lists for choosers, and the figures of a point.
//
//   std::vector<TrendValue> values = trendValues(circuit, PartSet::A);   // "R2 resistance" ...
//   std::vector<TrendFigure> figures = trendFigures({"D1"});            // flash rate ... D1 peak current ...
//   figureOf(figures[0], point);  textbookOf(figures[0], point);        // nothing where it does not blink
#pragma once

#include "core/circuit/circuit.h"
#include "core/study/trend.h"
#include "widgets/text/figure_text.h"
#include "widgets/values/value_scale.h"

#include <QString>
#include <optional>
#include <vector>

namespace blinkwright::widgets {

/// One number of one part that can move.
struct TrendValue {
    circuit::ValueRef which;
    std::string ref;
    circuit::PartKind kind = circuit::PartKind::resistor;
    units::Unit unit = units::Unit::none;
    circuit::Range range{};
    QString name; ///< `R2 resistance`
    bool operator==(const TrendValue& other) const { return which == other.which && name == other.name; }
    /// From 0 to 1: a setting, shown in per cent.
    bool isSetting() const { return which.key == "setting"; }
    bool isSupplyVoltage() const { return kind == circuit::PartKind::supply && which.key == "voltage"; }
    QString text(double value) const;
    /// Engineering text, for a setting in per cent; checked against the value's own range.
    Result<double> read(const QString& text) const;
};

/// All numbers that the settled state can depend on: those that set the timing first, then each part's main
/// value, then the rest, and last the timers' own figures.
std::vector<TrendValue> trendValues(const circuit::Circuit& circuit, circuit::PartSet set);

/// From where to where, and in which steps.
struct TrendRange {
    double from = 0, to = 1;
    bool even = false; ///< even steps; else in equal ratios, with both ends above 0
    bool operator==(const TrendRange&) const = default;
    bool holds(double value) const { return value >= from && value <= to; }
};
/// Two decades around the present value; all of a setting; for a supply from half the voltage that the timer
/// needs up to the present one, as a battery falls.
/// @param leastSupply_V from where on the makers answer for the timer
TrendRange usualRange(const TrendValue& value, double present, double leastSupply_V);
/// The scale that the present value moves on by keys and mouse.
ValueScale scaleOf(const TrendValue& value, const TrendRange& range);

/// One figure of a settled board.
struct TrendFigure {
    enum class Kind { rate, period, duty, lit, lampPeak, lampMean, supplyMean };
    Kind kind = Kind::rate;
    std::size_t lamp = 0;
    QString name; ///< `Flash rate`, `D1 peak current`
    units::Unit unit = units::Unit::hertz;
    QString text(double value) const;
    bool isShare() const { return kind == Kind::duty || kind == Kind::lit; }
    bool operator==(const TrendFigure& other) const { return kind == other.kind && lamp == other.lamp; }
};
std::vector<TrendFigure> trendFigures(const std::vector<std::string>& lamps);

std::optional<double> figureOf(const TrendFigure& figure, const study::TrendPoint& point);
/// What the formula says; nothing for currents, and where there is no formula.
std::optional<double> textbookOf(const TrendFigure& figure, const study::TrendPoint& point);

} // namespace blinkwright::widgets
