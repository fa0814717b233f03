#include "core/study/uncertainty_budget.h"

#include "core/base/wording.h"
#include "core/study/figures.h"
#include "core/study/fit_model.h"
#include "core/study/settled_start.h"
#include "core/study/textbook.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace blinkwright::study {

using circuit::Circuit;
using circuit::PartSet;

namespace {

/// Of a formula: differences exact to eight digits.
constexpr double formulaMove = 1e-4;

FitFigure fitFigure(BudgetFigure figure) {
    switch (figure) {
    case BudgetFigure::period:
        return FitFigure::period;
    case BudgetFigure::duty:
        return FitFigure::duty;
    case BudgetFigure::rate:
        break;
    }
    return FitFigure::rate;
}

double figureOf(BudgetFigure figure, const Phase& phase) {
    switch (figure) {
    case BudgetFigure::period:
        return phase.period_s();
    case BudgetFigure::duty:
        return phase.duty();
    case BudgetFigure::rate:
        break;
    }
    return phase.rate_Hz();
}

std::string whatOf(const Unknown& unknown) {
    switch (unknown.from) {
    case PriorFrom::reading:
        return "its reading";
    case PriorFrom::tolerance:
        return unknown.kind == UnknownKind::levels ? "timing tolerance" : "tolerance";
    case PriorFrom::usual:
        break;
    }
    return "what is usual";
}

BudgetRow rowOf(const Unknown& u) {
    BudgetRow row;
    row.ref = u.ref;
    row.key = u.key;
    row.what = whatOf(u);
    row.unit = u.unit;
    row.value = u.prior.value;
    row.uncertainty = u.prior.uncertainty;
    row.distribution = u.from == PriorFrom::reading ? Distribution::normal : Distribution::rectangular;
    return row;
}

/// The formula's figure for a set of values.
class TextbookBudget {
  public:
    TextbookBudget(const Unknowns& unknowns, BudgetFigure figure) : m_unknowns(unknowns), m_figure(figure) {}

    void fill(Budget& budget) {
        for (const Unknown& u : m_unknowns.all()) m_values.push_back(u.prior.value);
        const auto value = figure(m_values);
        if (!value) {
            budget.reason = wording::inWords("The wiring has no textbook formula.");
            return;
        }
        budget.value = *value;
        for (std::size_t k = 0; k < m_values.size(); ++k) {
            const Unknown& u = m_unknowns.all()[k];
            BudgetRow row = rowOf(u);
            if (u.kind == UnknownKind::levels)
                // Of the timer's part in the time: makers state it so.
                row.sensitivity = m_figure == BudgetFigure::duty     ? 0
                                  : m_figure == BudgetFigure::period ? *value
                                                                     : -*value;
            else if (u.kind == UnknownKind::resistance || u.kind == UnknownKind::capacitance)
                row.sensitivity = slope(k);
            else
                continue; // the formula leaves it out
            budget.rows.push_back(std::move(row));
            m_dials.push_back(u.dial);
        }
    }
    const std::vector<std::size_t>& dials() const { return m_dials; }

  private:
    std::optional<double> figure(const std::vector<double>& values) const {
        std::vector<double> own = values;
        for (std::size_t k = 0; k < own.size(); ++k)
            if (m_unknowns.all()[k].kind == UnknownKind::levels) own[k] = 1;
        const auto book = textbookOf(m_unknowns.boardAt(own), 0);
        return book ? std::optional(figureOf(m_figure, book->phase)) : std::nullopt;
    }
    double slope(std::size_t k) const {
        std::vector<double> up = m_values, down = m_values;
        up[k] *= 1 + formulaMove;
        down[k] *= 1 - formulaMove;
        return (figure(up).value_or(0) - figure(down).value_or(0)) / (up[k] - down[k]);
    }

    const Unknowns& m_unknowns;
    const BudgetFigure m_figure;
    std::vector<double> m_values;
    std::vector<std::size_t> m_dials;
};

/// The figure of settled boards. A reel's parts are moved one by one all the same: each has its own row.
class SimulatedBudget {
  public:
    SimulatedBudget(const Unknowns& unknowns, BudgetFigure figure, const engine::Settled& settled,
                    const BudgetRequest& request)
        : m_unknowns(unknowns), m_figure{fitFigure(figure)},
          m_settled(settled), m_run{.accuracy = 1e-7, .cancel = request.cancel} {}

    void fill(Budget& budget) {
        std::vector<double> values;
        for (const Unknown& u : m_unknowns.all()) values.push_back(u.prior.value);
        const auto value = figure(values);
        if (!value) {
            budget.reason = m_why;
            return;
        }
        budget.value = *value;
        for (std::size_t k = 0; k < values.size(); ++k) {
            const Unknown& u = m_unknowns.all()[k];
            const double move = m_unknowns.smallMove(u.dial) * u.prior.uncertainty;
            std::vector<double> up = values, down = values;
            up[k] += move;
            down[k] = std::max(down[k] - move, u.lowest);
            const auto high = figure(up), low = figure(down);
            if (!high || !low) {
                budget.reason = m_why;
                return;
            }
            BudgetRow row = rowOf(u);
            row.sensitivity = (*high - *low) / (up[k] - down[k]);
            budget.rows.push_back(std::move(row));
            m_dials.push_back(u.dial);
        }
    }
    const std::vector<std::size_t>& dials() const { return m_dials; }

  private:
    std::optional<double> figure(const std::vector<double>& values) {
        const devices::Board board = m_unknowns.boardAt(values);
        const engine::Settled there = engine::settle(startedLike(board, m_settled), m_run);
        if (!there.found) m_why = there.why;
        return there.found ? study::figureOf(m_figure, board, there, m_run) : std::nullopt;
    }

    const Unknowns& m_unknowns;
    const FigureOf m_figure;
    const engine::Settled& m_settled;
    const engine::RunRequest m_run;
    std::string m_why;
    std::vector<std::size_t> m_dials;
};

/// Rows that share a dial are of one reel.
void markReels(Budget& budget, const std::vector<std::size_t>& dials) {
    for (std::size_t k = 0; k < dials.size(); ++k)
        if (std::ranges::count(dials, dials[k]) > 1) budget.rows[k].reel = dials[k];
}

/// Where a reel is, its rows move together: by the signed sum of their parts.
std::map<std::size_t, double> movesOfReels(const std::vector<BudgetRow>& rows) {
    std::map<std::size_t, double> moves;
    for (const BudgetRow& row : rows)
        if (row.reel) moves[*row.reel] += row.sensitivity * row.uncertainty;
    return moves;
}

} // namespace

units::Unit unitOf(BudgetFigure figure) {
    switch (figure) {
    case BudgetFigure::rate:
        return units::Unit::hertz;
    case BudgetFigure::period:
        return units::Unit::second;
    case BudgetFigure::duty:
        break;
    }
    return units::Unit::none;
}

double combinedOf(const std::vector<BudgetRow>& rows) {
    double variance = 0;
    for (const BudgetRow& row : rows)
        if (!row.reel) variance += row.contribution() * row.contribution();
    for (const auto& [reel, move] : movesOfReels(rows)) variance += move * move;
    return std::sqrt(variance);
}

double Budget::share(std::size_t k) const {
    const BudgetRow& row = rows[k];
    const double own = row.sensitivity * row.uncertainty;
    const double with = row.reel ? movesOfReels(rows).at(*row.reel) : own;
    return combined > 0 ? own * with / (combined * combined) : 0;
}

Result<Budget> predictedBudget(const Circuit& circuit, PartSet set, BudgetFigure figure, BudgetModel model,
                               const BudgetRequest& request) {
    const auto made = devices::makeBoard(circuit, set);
    if (!made) return made.fault();
    const devices::Board& board = made.value();
    Budget budget;
    budget.figure = figure;
    const MeasuredReadings measured = measuredReadings(circuit);
    if (model == BudgetModel::textbook) {
        const Unknowns unknowns(circuit, set, board, measured);
        TextbookBudget textbook(unknowns, figure);
        textbook.fill(budget);
        markReels(budget, textbook.dials());
    } else {
        const engine::Settled settled = engine::settle(board, {.cancel = request.cancel});
        if (!settled.found) {
            budget.reason = settled.why;
            return budget;
        }
        const Unknowns unknowns(circuit, set, board, measured, supplyMean_A(board, settled));
        SimulatedBudget simulated(unknowns, figure, settled, request);
        simulated.fill(budget);
        if (budget.reason.empty()) markReels(budget, simulated.dials());
    }
    budget.combined = combinedOf(budget.rows);
    return budget;
}

Agreement compare(const Budget& predicted, const Budget& measured) {
    Agreement a;
    a.difference = measured.value - predicted.value;
    a.limit = coverage * std::hypot(predicted.combined, measured.combined);
    a.agree = std::abs(a.difference) <= a.limit;
    return a;
}

} // namespace blinkwright::study
