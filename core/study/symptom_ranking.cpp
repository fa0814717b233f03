// How well each fault explains what was observed, and what would tell the best ones apart.
#include "core/study/symptoms.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>

namespace blinkwright::study {

namespace {

// All of these are common practice or chosen by us, no source.
constexpr double mistaken = 0.03;      ///< a symptom or a reading that has nothing to do with the board
constexpr double ticked = 0.9;         ///< how often people tick what is plain to see
constexpr double passedOver = 0.5;     ///< how much what is not ticked counts against what would be seen
constexpr double supplySpread = 0.03;  ///< of a fresh battery, relative
constexpr double modelFloor_V = 0.05;  ///< what the device laws leave open: the makers' tables scatter
constexpr double outputFloor_V = 0.15; ///< so do output stages: 0.1 to 0.3 V
constexpr double modelFloor_A = 2e-4, currentSpread = 0.08;
constexpr double extremeSpread = 0.03; ///< of the swing: meters catch the ends of a swing late
constexpr double countedRate = 0.02;   ///< relative: counting flashes by the clock
constexpr double rateRange = 7;        ///< natural logarithm of the range of rates where a mistaken one lies
constexpr double topShare = 0.95;
constexpr std::size_t mostTop = 8;

double square(double x) {
    return x * x;
}
double bell(double off, double spread) {
    return std::exp(-0.5 * square(off / spread)) / (spread * std::sqrt(2 * std::numbers::pi));
}

double logOfSymptoms(const Signs& signs, const std::set<Symptom>& seen) {
    if (seen.empty()) return 0;
    double sum = 0;
    for (const Symptom symptom : allSymptoms) {
        const double plain = signs[symptom];
        sum += seen.contains(symptom) ? std::log(mistaken + (ticked - mistaken) * plain)
                                      : std::log(1 - passedOver * plain);
    }
    return sum;
}

double logOfRate(const FaultLibrary& library, const Behaviour& behaviour, double rate_Hz) {
    const double stray = mistaken / rateRange;
    if (behaviour.period_s <= 0 || !(rate_Hz > 0)) return std::log(stray);
    const double off = std::log(rate_Hz * behaviour.period_s);
    return std::log((1 - mistaken) * bell(off, std::hypot(library.drift, countedRate)) + stray);
}

double logOfReading(const FaultLibrary& library, std::size_t fault, const PlaceReading& at, double accuracy) {
    const bool isVoltage = library.places[at.place].isVoltage();
    const double span = isVoltage ? 2 * std::max(library.supply_V, 1.0) : 0.1;
    const double stray = mistaken / span;
    const double expected = library.cases[fault].behaviour.readings[at.place].of(at.quantity);
    const double spread = readingSpread(library, fault, at, accuracy);
    return std::log((1 - mistaken) * bell(at.value - expected, spread) + stray);
}

/// What is left of the list at its top, by suspect: weights that add up to 1.
std::vector<double> topWeights(const std::vector<Suspect>& suspects) {
    std::vector<double> weights;
    double sum = 0;
    for (const Suspect& suspect : suspects) {
        if (weights.size() >= mostTop || (weights.size() > 1 && sum > topShare)) break;
        weights.push_back(suspect.share);
        sum += suspect.share;
    }
    for (double& weight : weights) weight /= sum;
    return weights;
}

class Teller {
  public:
    Teller(const FaultLibrary& library, const Observation& seen, const std::vector<Suspect>& suspects)
        : m_library(library), m_seen(seen), m_suspects(suspects), m_weights(topWeights(suspects)) {}

    std::size_t top() const { return m_weights.size(); }

    /// The place where `one` differs most from the others at the top; of all pairs where there is no `one`.
    std::optional<Telling> best(std::optional<std::size_t> one) const {
        std::optional<Telling> best;
        for (std::size_t place = 0; place < m_library.places.size(); ++place)
            for (const Quantity quantity : allQuantities) {
                const auto same = [&](const PlaceReading& r) {
                    return m_library.places[r.place].node == m_library.places[place].node &&
                           m_library.places[r.place].isVoltage() && r.quantity == quantity;
                };
                if (!m_library.places[place].isVoltage() || std::ranges::any_of(m_seen.readings, same))
                    continue;
                double power = 0, all = 0;
                for (std::size_t a = 0; a < top(); ++a)
                    for (std::size_t b = a + 1; b < top(); ++b) {
                        if (one && a != *one && b != *one) continue;
                        const double weight = m_weights[a] * m_weights[b];
                        all += weight;
                        power += weight * apart(a, b, {place, quantity, 0});
                    }
                if (all > 0) power /= all;
                // The mean takes the simplest meter: another quantity must be worth it.
                const double worth = quantity == Quantity::mean ? 1 : 0.8;
                if (power > least && (!best || worth * power > best->power * worthOf(*best) + 1e-9))
                    best = Telling{place, quantity, power};
            }
        return best;
    }

  private:
    static constexpr double least = 0.02; ///< less than this is no help
    static double worthOf(const Telling& probe) { return probe.quantity == Quantity::mean ? 1 : 0.8; }

    /// 0: the same reading; near 1: no doubt.
    double apart(std::size_t a, std::size_t b, const PlaceReading& at) const {
        const std::size_t one = m_suspects[a].faults.front(), other = m_suspects[b].faults.front();
        const auto value = [&](std::size_t fault) {
            return m_library.cases[fault].behaviour.readings[at.place].of(at.quantity);
        };
        const double both = square(readingSpread(m_library, one, at, m_seen.meterAccuracy)) +
                            square(readingSpread(m_library, other, at, m_seen.meterAccuracy));
        return 1 - std::exp(-square(value(one) - value(other)) / (4 * both));
    }

    const FaultLibrary& m_library;
    const Observation& m_seen;
    const std::vector<Suspect>& m_suspects;
    const std::vector<double> m_weights;
};

} // namespace

double readingSpread(const FaultLibrary& library, std::size_t fault, const PlaceReading& at,
                     double meterAccuracy) {
    const ReadingPlace& place = library.places[at.place];
    const Extent& extent = library.cases[fault].behaviour.readings[at.place];
    const double value = extent.of(at.quantity), size = std::abs(value);
    const double meter = meterAccuracy * size + 0.01 * size / std::sqrt(12.0);
    if (!place.isVoltage())
        return std::sqrt(square(meter) + square(modelFloor_A) + square(currentSpread * value));
    // A share of the supply moves with the parts that set it: as p (1 - p) does for a divider or a duty
    // cycle.
    const double supply = std::max(library.supply_V, 1e-9), share = std::clamp(value / supply, 0.0, 1.0);
    const double parts = library.drift * supply * share * (1 - share);
    const bool byOutput = place.kind != PlaceKind::timerPin || place.pin == circuit::timerPin::output;
    const double model = byOutput ? outputFloor_V : modelFloor_V;
    const double swing = at.quantity == Quantity::mean ? 0 : extremeSpread * (extent.most - extent.least);
    return std::sqrt(square(meter) + square(supplySpread * value) + square(parts) + square(model) +
                     square(swing));
}

Diagnosis diagnose(const FaultLibrary& library, const Observation& seen) {
    std::vector<double> logs;
    for (std::size_t k = 0; k < library.faults.size(); ++k) {
        const FaultCase& each = library.cases[k];
        double sum = std::log(library.faults[k].prior);
        const bool known = each.behaviour.state != BoardState::unknown;
        if (known) sum += logOfSymptoms(each.signs, seen.symptoms);
        if (seen.rate_Hz) sum += logOfRate(library, each.behaviour, *seen.rate_Hz);
        for (const PlaceReading& reading : seen.readings)
            if (known) sum += logOfReading(library, k, reading, seen.meterAccuracy);
        logs.push_back(known ? sum : -std::numeric_limits<double>::infinity());
    }
    Diagnosis diagnosis;
    if (logs.empty()) return diagnosis;
    const double most = *std::ranges::max_element(logs);
    if (!std::isfinite(most)) return diagnosis;
    std::map<std::size_t, Suspect> groups;
    double all = 0;
    for (std::size_t k = 0; k < logs.size(); ++k) {
        const double weight = std::exp(logs[k] - most);
        Suspect& group = groups[library.alike[k]];
        group.faults.push_back(k);
        group.share += weight;
        all += weight;
    }
    for (auto& [first, group] : groups) {
        std::ranges::stable_sort(group.faults,
                                 [&](std::size_t a, std::size_t b) { return logs[a] > logs[b]; });
        group.share /= all;
        diagnosis.suspects.push_back(std::move(group));
    }
    std::ranges::stable_sort(diagnosis.suspects,
                             [](const Suspect& a, const Suspect& b) { return a.share > b.share; });
    const Teller teller(library, seen, diagnosis.suspects);
    diagnosis.next = teller.best({});
    std::vector<std::optional<Telling>> tells;
    for (std::size_t k = 0; k < teller.top(); ++k) tells.push_back(teller.best(k));
    for (std::size_t k = 0; k < tells.size(); ++k) diagnosis.suspects[k].tell = tells[k];
    return diagnosis;
}

} // namespace blinkwright::study
