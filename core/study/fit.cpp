#include "core/study/fit.h"

#include "core/base/wording.h"
#include "core/circuit/edit_plan.h"
#include "core/circuit/set_edits.h"
#include "core/study/fit_notes.h"
#include "core/study/least_squares.h"
#include "core/study/measured_readings.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace blinkwright::study {

using circuit::Circuit;
using circuit::Measured;
using circuit::PartSet;
using Eigen::MatrixXd;
using Eigen::VectorXd;

namespace {

/// One thing measured, and whether it is a datum of its own. High and low follow from period and duty cycle,
/// and the rate from the period: to count them too would count one record twice.
struct Datum {
    FigureOf figure;
    Measured value;
};

std::vector<Datum> dataOf(const MeasuredReadings& m) {
    std::vector<Datum> data;
    const auto add = [&](FitFigure figure, const std::optional<Measured>& value) {
        if (value) data.push_back({{figure}, *value});
    };
    add(FitFigure::period, m.period_s);
    add(FitFigure::duty, m.duty);
    add(FitFigure::firstHigh, m.firstHigh_s);
    add(FitFigure::outputHigh, m.outputHigh_V);
    add(FitFigure::outputLow, m.outputLow_V);
    for (const MeasuredLamp& lamp : m.lamps)
        data.push_back({{FitFigure::lampCurrent, lamp.part}, lamp.current_A});
    for (Datum& datum : data)
        datum.value.uncertainty =
            std::max(datum.value.uncertainty, finestDatum * std::abs(datum.value.value));
    return data;
}

class Fitter {
  public:
    Fitter(const Circuit& circuit, PartSet set, const devices::Board& board, const FitRequest& request)
        : m_circuit(circuit), m_set(set), m_nominal(board), m_request(request),
          m_measured(measuredReadings(circuit)), m_data(dataOf(m_measured)) {}

    FitOutcome run() {
        m_fit.set = m_set;
        if (m_data.empty()) {
            m_fit.nothingMeasured = true;
            m_fit.reason = wording::inWords("Nothing was measured yet that a board could be held against.");
            return std::move(m_fit);
        }
        m_settled = engine::settle(m_nominal, {.cancel = m_request.cancel});
        ++m_fit.settles;
        if (!m_settled.found) return failed(m_settled.why);
        findUnknowns();
        if (m_unknowns->all().empty())
            return failed(wording::inWords("No part of the timing was found whose value could be off."));
        estimate();
        m_fit.cancelled = m_request.cancel && m_request.cancel->load(std::memory_order_relaxed);
        return std::move(m_fit);
    }

  private:
    FitOutcome failed(const std::string& why) {
        m_fit.reason = why;
        m_fit.cancelled = m_request.cancel && m_request.cancel->load(std::memory_order_relaxed);
        return std::move(m_fit);
    }

    /// A part that is none of the unknowns and was measured by itself takes its reading.
    devices::Board withReadings(const Unknowns& unknowns) const {
        Circuit own = m_circuit;
        for (const MeasuredPart& part : m_measured.parts) {
            const bool unknown =
                std::ranges::any_of(unknowns.all(), [&](const Unknown& u) { return isOf(part, u); });
            if (!unknown) // what cannot be set is left as it is
                (void)circuit::apply(own,
                                     circuit::setValue(own, m_set, part.part, part.key, part.value.value));
        }
        const auto board = devices::makeBoard(own, m_set);
        return board ? board.value() : m_nominal;
    }

    void findUnknowns() {
        const double mean_A = supplyMean_A(m_nominal, m_settled);
        const Unknowns first(m_circuit, m_set, m_nominal, m_measured, mean_A);
        m_unknowns =
            std::make_shared<const Unknowns>(m_circuit, m_set, withReadings(first), m_measured, mean_A);
    }

    void estimate() {
        std::vector<FigureOf> wanted;
        for (const Datum& datum : m_data) wanted.push_back(datum.figure);
        FitModel model(*m_unknowns, wanted, m_settled, m_request.cancel);
        const auto n = static_cast<Eigen::Index>(m_data.size());
        VectorXd measured(n), weight(n);
        for (Eigen::Index k = 0; k < n; ++k) {
            measured[k] = m_data[static_cast<std::size_t>(k)].value.value;
            weight[k] = 1 / m_data[static_cast<std::size_t>(k)].value.uncertainty;
        }
        VectorXd lowest(static_cast<Eigen::Index>(m_unknowns->dials()));
        for (std::size_t d = 0; d < m_unknowns->dials(); ++d)
            lowest[static_cast<Eigen::Index>(d)] = m_unknowns->lowestDial(d);
        const LeastSquares problem{[&](const VectorXd& at) -> std::optional<VectorXd> {
                                       auto figures = model.figures(at);
                                       if (figures) *figures = (*figures - measured).cwiseProduct(weight);
                                       return figures;
                                   },
                                   [&](const VectorXd& at) -> std::optional<MatrixXd> {
                                       auto slopes = model.slopes(at);
                                       if (slopes) *slopes = weight.asDiagonal() * *slopes;
                                       return slopes;
                                   },
                                   lowest};
        const Estimate e = solve(problem, VectorXd::Zero(lowest.size()).cwiseMax(lowest));
        m_fit.settles += model.settles();
        if (!e.found) {
            m_fit.reason =
                wording::inWords("No values of the parts were found that explain the measurements.");
            return;
        }
        takeValues(e);
        takeFigures(e);
        m_fit.found = !m_fit.figures.empty();
        if (!m_fit.found) return;
        m_fit.unknowns = m_unknowns;
        judge(e);
        addNotes(m_fit, m_measured);
    }

    void takeValues(const Estimate& e) {
        const auto& unknowns = m_unknowns->all();
        for (const Unknown& unknown : unknowns) {
            const auto d = static_cast<Eigen::Index>(unknown.dial);
            FittedValue value{unknown};
            value.value = std::max(unknown.lowest, m_unknowns->value(unknown, e.at[d]));
            value.uncertainty = unknown.prior.uncertainty * std::sqrt(e.covariance(d, d));
            value.seen = e.slopes.col(d).norm();
            m_fit.values.push_back(std::move(value));
        }
        for (const Unknown& a : unknowns)
            for (const Unknown& b : unknowns)
                m_fit.m_covariance.push_back(
                    a.prior.uncertainty * b.prior.uncertainty *
                    e.covariance(static_cast<Eigen::Index>(a.dial), static_cast<Eigen::Index>(b.dial)));
        m_fit.board = m_unknowns->board({e.at.begin(), e.at.end()});
    }

    /// Rate, phases and duty cycle always; of the rest what was measured.
    void takeFigures(const Estimate& e) {
        struct Row {
            FitFigure figure;
            units::Unit unit;
            std::optional<Measured> measured;
        };
        using units::Unit;
        std::vector<FittedFigure> rows;
        const auto add = [&](FitFigure figure, Unit unit, const std::optional<Measured>& measured,
                             const std::string& ref = {}, circuit::PartId lamp = {}) {
            FittedFigure row;
            row.figure = figure;
            row.lamp = lamp;
            row.ref = ref;
            row.unit = unit;
            row.measured = measured;
            row.used = std::ranges::any_of(
                m_data, [&](const Datum& d) { return d.figure == static_cast<const FigureOf&>(row); });
            rows.push_back(std::move(row));
        };
        add(FitFigure::rate, Unit::hertz, m_measured.rate_Hz);
        add(FitFigure::period, Unit::second, m_measured.period_s);
        add(FitFigure::high, Unit::second, m_measured.high_s);
        add(FitFigure::low, Unit::second, m_measured.low_s);
        add(FitFigure::duty, Unit::none, m_measured.duty);
        const std::string timer = m_nominal.timers.front().ref;
        if (m_measured.firstHigh_s) add(FitFigure::firstHigh, Unit::second, m_measured.firstHigh_s);
        if (m_measured.supply_V)
            add(FitFigure::supplyVoltage, Unit::volt, m_measured.supply_V, m_nominal.supplies.front().ref);
        if (m_measured.outputHigh_V) add(FitFigure::outputHigh, Unit::volt, m_measured.outputHigh_V, timer);
        if (m_measured.outputLow_V) add(FitFigure::outputLow, Unit::volt, m_measured.outputLow_V, timer);
        for (const MeasuredLamp& lamp : m_measured.lamps)
            add(FitFigure::lampCurrent, Unit::ampere, lamp.current_A, m_circuit.find(lamp.part)->ref,
                lamp.part);

        const std::vector<FigureOf> wanted(rows.begin(), rows.end());
        FitModel model(*m_unknowns, wanted, m_settled, m_request.cancel);
        const auto after = model.figures(e.at);
        const auto slopes = model.slopes(e.at);
        m_fit.settles += model.settles();
        if (!after || !slopes) return;
        for (std::size_t k = 0; k < rows.size(); ++k) {
            const auto i = static_cast<Eigen::Index>(k);
            const VectorXd slope = slopes->row(i);
            rows[k].after = {(*after)[i], std::sqrt(slope.dot(e.covariance * slope))};
            rows[k].before = figureOf(rows[k], m_nominal, m_settled, model.request()).value_or(0);
        }
        m_fit.figures = std::move(rows);
    }

    void judge(const Estimate& e) {
        m_fit.data = static_cast<int>(m_data.size());
        m_fit.chiSquare = e.sum;
        m_fit.chiSquareLimit = chiSquare95(m_fit.data);
        const auto near = [](const FittedFigure& f) {
            const auto off = f.offSigmas();
            return !f.used || !off || std::abs(*off) <= coverage;
        };
        const auto usual = [](const FittedValue& v) { return std::abs(v.movedSigmas()) <= coverage; };
        m_fit.agrees = m_fit.chiSquare <= m_fit.chiSquareLimit && std::ranges::all_of(m_fit.figures, near) &&
                       std::ranges::all_of(m_fit.values, usual);
    }

    const Circuit& m_circuit;
    const PartSet m_set;
    const devices::Board& m_nominal;
    const FitRequest& m_request;
    const MeasuredReadings m_measured;
    const std::vector<Datum> m_data;
    engine::Settled m_settled; ///< of the circuit as it stands
    std::shared_ptr<const Unknowns> m_unknowns;
    FitOutcome m_fit;
};

/// Of six digits: more would pretend to a knowledge that no part has.
double sixDigits(double value) {
    if (value == 0) return 0;
    const double step = std::pow(10.0, std::floor(std::log10(std::abs(value))) - 5);
    return std::round(value / step) * step;
}

} // namespace

double FitOutcome::correlation(std::size_t a, std::size_t b) const {
    const double both = values[a].uncertainty * values[b].uncertainty;
    return both > 0 ? covariance(a, b) / both : 0;
}

const FittedFigure* FitOutcome::figure(FitFigure which) const {
    const auto at = std::ranges::find(figures, which, &FigureOf::figure);
    return at == figures.end() ? nullptr : &*at;
}

double chiSquare95(int n) {
    // Percentage points of the distribution, as in every table of it (from memory); beyond them the cube of
    // E. Wilson and M. Hilferty, Proc. Nat. Acad. Sci. 17 (1931) 684.
    constexpr std::array table{3.841, 5.991, 7.815, 9.488, 11.070, 12.592, 14.067, 15.507, 16.919, 18.307};
    if (n <= static_cast<int>(table.size())) return table[static_cast<std::size_t>(std::max(n, 1) - 1)];
    const double part = 2 / (9.0 * n);
    return n * std::pow(1 - part + 1.6449 * std::sqrt(part), 3);
}

Result<FitOutcome> fit(const Circuit& circuit, PartSet set, const FitRequest& request) {
    const auto board = devices::makeBoard(circuit, set);
    if (!board) return board.fault();
    return Fitter(circuit, set, board.value(), request).run();
}

Result<circuit::Edit> fittedEdit(const Circuit& circuit, const FitOutcome& fit) {
    if (!fit.found) return Fault{"", wording::inWords("there are no fitted values")};
    circuit::EditPlan plan(circuit);
    if (fit.set == PartSet::A && !circuit::setsAgree(circuit)) {
        auto copy = circuit::copySet(circuit, PartSet::A, PartSet::B);
        if (!copy) return copy.fault();
        plan.add(std::move(copy).value());
    }
    const auto put = [&](circuit::PartId part, const std::string& key, circuit::Value value) {
        plan.add(circuit::setValue(plan.circuit(), PartSet::B, part, key, std::move(value)));
    };
    for (const FittedValue& value : fit.values) {
        if (value.kind == UnknownKind::levels) continue; // no value of a part holds them
        if (value.kind == UnknownKind::leakage) {
            if (value.value > 0) put(value.part, "leakage_resistance", sixDigits(1 / value.value));
        } else {
            put(value.part, value.key, sixDigits(value.value));
        }
    }
    for (const MeasuredPart& part : measuredReadings(circuit).parts) {
        const bool fitted =
            std::ranges::any_of(fit.values, [&](const FittedValue& v) { return isOf(part, v); });
        if (!fitted) put(part.part, part.key, part.value.value);
    }
    return std::move(plan).done(wording::inWords("Apply fitted values as Set B"));
}

} // namespace blinkwright::study
