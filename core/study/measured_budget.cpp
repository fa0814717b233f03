// The budget of what was measured: counts and records, each with the weight that it has in the mean.
#include "core/study/measured_readings.h"
#include "core/study/uncertainty_budget.h"

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

using circuit::Measured;

namespace {

/// One count or record: the value that it gives for period or duty cycle, and the rows that make its
/// uncertainty. Sensitivities are those of that value.
struct Source {
    Measured value;
    std::vector<BudgetRow> rows;
};

BudgetRow row(const char* kind, const circuit::Measurement& of, const char* what, units::Unit unit,
              Measured value, double sensitivity) {
    BudgetRow r;
    r.ref = kind;
    r.key = of.title;
    r.what = what;
    r.unit = unit;
    r.value = value.value;
    r.uncertainty = value.uncertainty;
    r.distribution = Distribution::normal;
    r.sensitivity = sensitivity;
    return r;
}

/// What a record's switchings are known to: by their scatter, or by the instrument's step.
void evaluate(BudgetRow& r, const circuit::Record& record, const RecordFigures& figures) {
    const bool scatters = figures.scatter_s && *figures.scatter_s > record.step_s / std::sqrt(12.0);
    r.evaluation = scatters ? Evaluation::typeA : Evaluation::typeB;
    r.distribution = scatters ? Distribution::normal : Distribution::rectangular;
    r.what = scatters ? "scatter of the switchings" : "step between samples";
}

std::optional<Source> sourceOf(const circuit::Measurement& m, BudgetFigure figure) {
    using units::Unit;
    if (const auto* count = std::get_if<circuit::Count>(&m.what)) {
        if (figure == BudgetFigure::duty) return std::nullopt;
        const double n = count->flashes;
        return Source{{count->time_s.value / n, count->time_s.uncertainty / n},
                      {row("count", m, "start and stop by hand", Unit::second, count->time_s, 1 / n)}};
    }
    const auto* record = std::get_if<circuit::Record>(&m.what);
    if (!record) return std::nullopt;
    const RecordFigures figures = figuresOf(*record);
    if (figure == BudgetFigure::duty) {
        if (!figures.duty) return std::nullopt;
        Source source{*figures.duty, {row("record", m, "", Unit::none, *figures.duty, 1)}};
        evaluate(source.rows.front(), *record, figures);
        return source;
    }
    if (!figures.period_s) return std::nullopt;
    const double period = figures.period_s->value, base = record->timeUncertainty;
    const double rest = std::pow(figures.period_s->uncertainty, 2) - std::pow(base * period, 2);
    Source source{*figures.period_s,
                  {row("record", m, "", Unit::second, {period, std::sqrt(std::max(rest, 0.0))}, 1),
                   row("record", m, "time base", Unit::none, {1, base}, period)}};
    evaluate(source.rows.front(), *record, figures);
    return source;
}

} // namespace

std::optional<Budget> measuredBudget(const circuit::Circuit& circuit, BudgetFigure figure) {
    std::vector<Source> sources;
    for (const auto& measurement : circuit.measurements)
        if (measurement->used)
            if (auto source = sourceOf(*measurement, figure)) sources.push_back(std::move(*source));
    if (sources.empty()) return std::nullopt;
    // As measuredReadings() has it: one that is exact stands alone.
    const auto exact =
        std::ranges::find_if(sources, [](const Source& s) { return s.value.uncertainty == 0; });
    if (exact != sources.end()) sources = {Source(*exact)};
    double weights = 0, mean = 0;
    const auto weightOf = [](const Source& s) {
        return s.value.uncertainty > 0 ? 1 / (s.value.uncertainty * s.value.uncertainty) : 1;
    };
    for (const Source& source : sources) {
        weights += weightOf(source);
        mean += weightOf(source) * source.value.value;
    }
    mean /= weights;
    const bool rate = figure == BudgetFigure::rate;
    Budget budget;
    budget.figure = figure;
    budget.value = rate ? 1 / mean : mean;
    for (const Source& source : sources)
        for (BudgetRow r : source.rows) {
            r.sensitivity *= weightOf(source) / weights * (rate ? -1 / (mean * mean) : 1);
            budget.rows.push_back(std::move(r));
        }
    budget.combined = combinedOf(budget.rows);
    return budget;
}

} // namespace blinkwright::study
