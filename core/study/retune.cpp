#include "core/study/retune.h"

#include "core/base/wording.h"
#include "core/study/phase.h"
#include "core/study/settled_start.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>

namespace blinkwright::study {

namespace {


const double rectangular = 1 / std::sqrt(3.0);
constexpr double leastFactor = 1e-3, mostFactor = 1e3; ///< of the present value: beyond, the search ends
constexpr double closeEnough = 1e-7;
constexpr std::size_t around = 4; ///< of the values in reach, this many on either side are simulated

bool canChange(const FittedValue& value) {
    return value.kind == UnknownKind::resistance || value.kind == UnknownKind::capacitance;
}

class Retuner {
  public:
    Retuner(const FitOutcome& fit, const RetuneRequest& request)
        : m_fit(fit), m_request(request), m_run{.accuracy = 1e-7, .cancel = request.cancel} {
        for (const FittedValue& value : fit.values) m_values.push_back(value.value);
    }

    Retuning run() {
        const auto at = std::ranges::find_if(
            m_fit.values, [&](const FittedValue& v) { return v.ref == m_request.ref && canChange(v); });
        if (!m_fit.found || at == m_fit.values.end()) {
            m_out.reason = wording::inWords("There is no fitted value of %1.", m_request.ref);
            return std::move(m_out);
        }
        m_place = static_cast<std::size_t>(at - m_fit.values.begin());
        m_out.ref = at->ref;
        m_out.key = at->key;
        m_out.unit = at->unit;
        m_out.present = at->value;
        // A new capacitor leaks as the circuit states it, not as the old one was found to.
        for (std::size_t k = 0; k < m_values.size(); ++k)
            if (isLeakageOfTheNewPart(k)) m_values[k] = m_fit.values[k].nominal;
        m_out.exact = exact().value_or(0);
        if (m_out.exact > 0) propose();
        m_out.cancelled = m_request.cancel && m_request.cancel->load(std::memory_order_relaxed);
        if (m_out.proposals.empty() && m_out.reason.empty())
            m_out.reason = m_out.exact > 0 ? wording::inWords("The drawer has no such part.")
                                           : wording::inWords("No value of %1 gives this rate on this board.",
                                                              m_request.ref);
        return std::move(m_out);
    }

  private:
    bool isLeakageOfTheNewPart(std::size_t k) const {
        const FittedValue &v = m_fit.values[k], &changed = m_fit.values[m_place];
        return v.kind == UnknownKind::leakage && v.part == changed.part;
    }

    std::optional<Phase> phaseWith(const std::vector<double>& values) {
        devices::Board board = m_fit.unknowns->boardAt(values);
        if (!m_start.empty()) startFrom(board, m_start);
        const engine::Settled settled = engine::settle(board, m_run);
        if (!settled.found) return std::nullopt;
        m_start = capacitorsAtRise(settled);
        return Phase{settled.high_s, settled.period_s - settled.high_s};
    }
    std::optional<double> rateWith(std::size_t place, double value) {
        std::vector<double> values = m_values;
        values[place] = value;
        const auto phase = phaseWith(values);
        return phase ? std::optional(phase->rate_Hz()) : std::nullopt;
    }

    /// On logarithmic scales the rate is nearly a straight line: by the secant, kept within a bracket's
    /// reach.
    std::optional<double> exact() {
        const double wanted = std::log(m_request.rate_Hz), present = std::log(m_out.present);
        double x0 = present;
        auto rate = rateWith(m_place, m_out.present);
        if (!rate) return std::nullopt;
        double y0 = std::log(*rate) - wanted;
        double x1 = x0 + std::clamp(y0, -1.0, 1.0); // a rate goes about as one over the value
        for (int k = 0; k < 40; ++k) {
            if (std::abs(y0) < closeEnough) return std::exp(x0);
            if (std::abs(x1 - present) > std::log(mostFactor)) return std::nullopt;
            rate = rateWith(m_place, std::exp(x1));
            if (!rate) { // too far: half of the way
                x1 = 0.5 * (x0 + x1);
                continue;
            }
            const double y1 = std::log(*rate) - wanted;
            if (std::abs(y1) < closeEnough) return std::exp(x1);
            const double slope = x1 != x0 ? (y1 - y0) / (x1 - x0) : -1;
            if (!(slope < -1e-4)) return std::nullopt; // the rate does not follow this part
            x0 = x1;
            y0 = y1;
            x1 = x0 + std::clamp(-y0 / slope, -2.0, 2.0);
        }
        return std::nullopt;
    }

    struct Part {
        double value = 0, tolerance = 0;
    };
    std::vector<Part> partsAround() const {
        const FittedValue& changed = m_fit.values[m_place];
        // What is known of the part that is there: of one on the meter nothing that holds for another.
        const double usual = changed.from == PriorFrom::tolerance && changed.nominal > 0
                                 ? changed.prior.uncertainty / rectangular / changed.nominal
                                 : units::nominalTolerance(m_request.series);
        std::vector<Part> parts;
        if (m_request.drawer) {
            for (const Stock& stock : *m_request.drawer) {
                const bool fits = changed.kind == UnknownKind::capacitance
                                      ? stock.kind == Stock::Kind::capacitor
                                      : stock.kind == Stock::Kind::resistor;
                if (fits && stock.quantity > 0 && stock.value > 0)
                    parts.push_back({stock.value, stock.tolerance.value_or(usual)});
            }
        } else {
            for (const double value :
                 units::valuesBetween(m_request.series, m_out.exact * 0.1, m_out.exact * 10))
                parts.push_back({value, m_request.tolerance.value_or(usual)});
        }
        std::ranges::stable_sort(
            parts, {}, [&](const Part& part) { return std::abs(std::log(part.value / m_out.exact)); });
        if (parts.size() > 2 * around) parts.resize(2 * around);
        return parts;
    }

    void propose() {
        for (const Part& part : partsAround()) {
            std::vector<double> values = m_values;
            values[m_place] = part.value;
            const auto phase = phaseWith(values);
            if (!phase) continue;
            m_out.proposals.push_back({part.value, part.tolerance, {phase->rate_Hz(), 0}, phase->duty()});
        }
        std::ranges::stable_sort(m_out.proposals, {}, [&](const RetuneProposal& p) {
            return std::abs(std::log(p.rate_Hz.value / m_request.rate_Hz));
        });
        if (m_out.proposals.size() > m_request.keep) m_out.proposals.resize(m_request.keep);
        for (RetuneProposal& proposal : m_out.proposals) addUncertainty(proposal);
    }

    /// The new part within its tolerance; the others as the fit leaves them, with their covariances.
    void addUncertainty(RetuneProposal& proposal) {
        m_values[m_place] = proposal.value;
        const std::size_t n = m_values.size();
        std::vector<double> slopes(n), own(n, 0.0);
        own[m_place] = proposal.tolerance * rectangular * proposal.value;
        for (std::size_t k = 0; k < n; ++k) {
            const FittedValue& v = m_fit.values[k];
            if (isLeakageOfTheNewPart(k)) own[k] = v.prior.uncertainty;
            const double move = k == m_place ? 0.01 * proposal.value
                                             : m_fit.unknowns->smallMove(v.dial) * v.prior.uncertainty;
            const double low = std::max(m_values[k] - move, v.lowest), high = m_values[k] + move;
            const auto down = rateWith(k, low), up = rateWith(k, high);
            if (down && up) slopes[k] = (*up - *down) / (high - low);
        }
        double variance = 0;
        for (std::size_t a = 0; a < n; ++a)
            for (std::size_t b = 0; b < n; ++b) {
                const double both =
                    own[a] > 0 || own[b] > 0 ? (a == b ? own[a] * own[a] : 0) : m_fit.covariance(a, b);
                variance += slopes[a] * slopes[b] * both;
            }
        proposal.rate_Hz.uncertainty = std::sqrt(std::max(variance, 0.0));
    }

    const FitOutcome& m_fit;
    const RetuneRequest& m_request;
    const engine::RunRequest m_run;
    std::size_t m_place = 0;
    std::vector<double> m_values, m_start;
    Retuning m_out;
};

} // namespace

Retuning retune(const FitOutcome& fit, const RetuneRequest& request) {
    return Retuner(fit, request).run();
}

std::vector<std::string> retunable(const FitOutcome& fit) {
    std::vector<std::string> refs;
    for (const FittedValue& value : fit.values)
        if (canChange(value)) refs.push_back(value.ref);
    return refs;
}

} // namespace blinkwright::study
