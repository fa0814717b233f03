#include "tests/core/study/planted.h"

#include "core/circuit/edit.h"
#include "core/devices/board.h"
#include "core/devices/defaults.h"
#include "core/engine/transient.h"
#include "core/io/circuit_file.h"
#include "places.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace blinkwright::study {

using circuit::Circuit;
using circuit::PartKind;
using circuit::PartSet;

namespace {

constexpr std::size_t samples = 4000;

template <class T>
T take(Result<T> result) {
    if (!result) throw std::logic_error(result.fault().message());
    return std::move(result).value();
}
void need(const Result<void>& result) {
    if (!result) throw std::logic_error(result.fault().message());
}

double rounded(double value) {
    if (std::abs(value) < 5e-4) return 0;
    const double step = std::pow(10, std::floor(std::log10(std::abs(value))) - 2);
    return std::round(value / step) * step;
}

} // namespace

Circuit sampleCircuit(const std::string& name) {
    std::ifstream file(BLINKWRIGHT_SAMPLES "/" + name + ".blinkwright");
    std::stringstream text;
    text << file.rdbuf();
    return take(io::readCircuit(text.str()));
}

Planted::Planted(Circuit drawn, std::uint64_t seed)
    : m_drawn(drawn), m_circuit(std::move(drawn)), m_draws(seed, 0) {
    std::uint64_t draw = 0;
    const auto off = [&](double way) { return 1 + way * m_draws.spread(Spread::uniform, draw++); };
    for (const auto& part : m_drawn.parts()) {
        const auto vary = [&](const char* key, double way) {
            put(part.id, key, number(part.id, key) * off(way));
        };
        switch (part.kind) {
        case PartKind::resistor:
            vary("resistance", number(part.id, "tolerance"));
            break;
        case PartKind::capacitor:
            vary("capacitance", number(part.id, "tolerance"));
            break;
        case PartKind::supply:
            vary("voltage", 0.03);
            break;
        case PartKind::lamp:
            vary("forward_voltage", 0.02);
            break;
        case PartKind::timer:
            for (const char* name :
                 {"divider_resistance", "threshold_current", "trigger_current", "discharge_resistance",
                  "low_resistance", "high_resistance", "idle_slope"})
                vary((std::string("device.") + name).c_str(), 0.04);
            break;
        default:
            break;
        }
    }
}

Planted Planted::asDrawn(circuit::Circuit drawn) {
    Planted board(std::move(drawn), 1);
    board.m_circuit = board.m_drawn;
    return board;
}

double Planted::number(circuit::PartId part, std::string_view key) const {
    return devices::effectiveNumber(m_circuit, PartSet::A, part, key);
}
void Planted::put(circuit::PartId part, std::string key, circuit::Value value) {
    take(apply(m_circuit, circuit::setValue(m_circuit, PartSet::A, part, std::move(key), std::move(value))));
}

void Planted::open(std::string_view pin) {
    take(apply(m_circuit, {circuit::edits::JoinPin{take(m_circuit.pinNamed(pin)), std::nullopt}}));
}

circuit::NetId Planted::netOf(std::string_view pin, Circuit& circuit) const {
    const circuit::PinRef ref = take(circuit.pinNamed(pin));
    if (const auto net = circuit.netOf(ref)) return *net;
    const auto net = take(circuit.addNet("leg"));
    need(circuit.join(ref, net));
    return net;
}

void Planted::join(PartKind kind, circuit::Values values, circuit::NetId first, circuit::NetId second,
                   Circuit& circuit) const {
    const auto part = take(circuit.addPart(kind, circuit.freeRef(kind), std::move(values)));
    need(circuit.join({part, 0}, first));
    need(circuit.join({part, 1}, second));
}

void Planted::shorted(std::string_view pin, std::string_view other) {
    const auto first = netOf(pin, m_circuit);
    join(PartKind::resistor, {{"resistance", 0.2}}, first, netOf(other, m_circuit), m_circuit);
}

void Planted::turned(std::string_view ref) {
    const auto part = m_circuit.findRef(ref)->id;
    const auto first = m_circuit.netOf({part, 0}), second = m_circuit.netOf({part, 1});
    take(apply(m_circuit, {circuit::edits::JoinPin{{part, 0}, second}}));
    take(apply(m_circuit, {circuit::edits::JoinPin{{part, 1}, first}}));
}

void Planted::turnedElectrolytic(std::string_view ref) {
    turned(ref);
    const auto part = m_circuit.findRef(ref)->id;
    // What such a capacitor does is anybody's guess: other figures than the search has.
    join(PartKind::diode,
         {{"forward_voltage", 1.2}, {"test_current", 2e-3}, {"ideality", 3.0}, {"series_resistance", 100.0}},
         *m_circuit.netOf({part, 1}), *m_circuit.netOf({part, 0}), m_circuit);
}

void Planted::times(std::string_view ref, std::string_view key, double factor) {
    const auto part = m_circuit.findRef(ref)->id;
    put(part, std::string(key), factor * number(part, key));
}

void Planted::swapped(std::string_view ref, std::string_view other, std::string_view key) {
    const auto a = m_circuit.findRef(ref)->id, b = m_circuit.findRef(other)->id;
    const double one = number(a, key), two = number(b, key);
    put(a, std::string(key), two);
    put(b, std::string(key), one);
}

Planted::Samples Planted::sample(const Circuit& circuit, std::string_view net) {
    const devices::Board board = take(devices::makeBoard(circuit, PartSet::A));
    const auto named = std::ranges::find(board.nodeNames, net);
    const auto node = static_cast<std::size_t>(named - board.nodeNames.begin());
    const engine::RunRequest request{.accuracy = 1e-6, .stepBudget = 200'000, .eventBudget = 5'000};
    const engine::Settled settled = engine::settle(board, request);
    Samples all;
    engine::Instant at;
    const auto add = [&](const engine::Waveform& wave, double time_s) {
        wave.instant(time_s, engine::Side::after, at);
        if (node < at.node_V.size()) all.node_V.push_back(at.node_V[node]);
        all.lamps_A.resize(board.junctions.size());
        for (std::size_t k = 0; k < board.junctions.size(); ++k)
            if (board.junctions[k].lamp) all.lamps_A[k].push_back(at.junction_A[k]);
    };
    if (settled.found) {
        all.period_s = settled.period_s;
        for (std::size_t k = 0; k < samples; ++k)
            add(settled.wave, settled.period_s * (static_cast<double>(k) + 0.5) / samples);
    } else {
        const engine::Run run = engine::simulate(board, request);
        if (run.report.reason != engine::StopReason::quiet)
            throw std::logic_error("neither blinks nor rests");
        add(run.wave, run.wave.end_s());
    }
    std::erase_if(all.lamps_A, [](const auto& lamp) { return lamp.empty(); });
    return all;
}

double Planted::read(const std::string& place, Quantity quantity) const {
    if (!m_stated.empty()) return m_stated.contains(place) ? m_stated.at(place) : 0;
    Circuit circuit = m_circuit;
    // Of a timer its leg, of a lamp the place where it belongs, whatever stands there now.
    const auto drawn = m_drawn.netOf(take(m_drawn.pinNamed(place)));
    const bool isLeg = place.starts_with("U");
    const auto net =
        isLeg || !drawn ? netOf(place, circuit) : circuit.findNet(m_drawn.find(*drawn)->name)->id;
    const auto zero = *circuit.netOf({circuit.findRef("BT1")->id, 1});
    if (net != zero) join(PartKind::resistor, {{"resistance", 10e6}}, net, zero, circuit);
    const std::vector<double> volts = sample(circuit, circuit.find(net)->name).node_V;
    double value = 0;
    if (quantity == Quantity::least) value = *std::ranges::min_element(volts);
    if (quantity == Quantity::most) value = *std::ranges::max_element(volts);
    if (quantity == Quantity::mean) {
        for (const double each : volts) value += each;
        value /= static_cast<double>(volts.size());
    }
    const auto noise = m_draws.spread(Spread::uniform, 1000 + std::hash<std::string>{}(place) % 1000);
    return rounded(value * (1 + 0.005 * noise));
}

Symptom Planted::symptom() const {
    if (!m_stated.empty()) return Symptom::dark;
    const Samples now = sample(m_circuit, {}), drawn = sample(m_drawn, {});
    struct Lamp {
        double lit = 0, mean_A = 0;
        bool dark = false, steady = false;
    };
    const auto lampOf = [](const std::vector<double>& current_A, double period_s) {
        Lamp lamp;
        double lit = 0;
        for (const double current : current_A) {
            if (current < 3e-4) continue;
            lit += 1;
            lamp.mean_A += current;
        }
        lamp.mean_A = lit > 0 ? lamp.mean_A / lit : 0;
        lamp.lit = lit / static_cast<double>(current_A.size());
        lamp.dark = lamp.lit == 0;
        const auto [least, most] = std::ranges::minmax(current_A);
        lamp.steady = !lamp.dark && (period_s == 0 || period_s < 1 / 25.0 || least > 0.5 * most);
        return lamp;
    };
    std::size_t dark = 0, steady = 0;
    double bright = 1, longer = 0;
    for (std::size_t k = 0; k < now.lamps_A.size(); ++k) {
        const Lamp is = lampOf(now.lamps_A[k], now.period_s), was = lampOf(drawn.lamps_A[k], drawn.period_s);
        dark += is.dark ? 1 : 0;
        steady += is.steady ? 1 : 0;
        if (is.dark) continue;
        bright = is.mean_A / was.mean_A;
        longer = is.lit - was.lit;
    }
    if (dark == now.lamps_A.size()) return Symptom::dark;
    if (dark > 0) return Symptom::oneLampOnly;
    if (steady == now.lamps_A.size()) return Symptom::alwaysLit;
    const double faster = drawn.period_s / now.period_s;
    if (faster > 1.4) return Symptom::tooFast;
    if (faster < 1 / 1.4) return Symptom::tooSlow;
    if (bright < 0.4) return Symptom::faint;
    if (bright > 2) return Symptom::tooBright;
    if (longer > 0.2) return Symptom::litTooLong;
    if (longer < -0.2) return Symptom::litTooShort;
    return Symptom::asIntended;
}

} // namespace blinkwright::study
