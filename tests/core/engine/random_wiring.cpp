#include "tests/core/engine/random_wiring.h"

#include "tests/core/workbench.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace blinkwright::tests {

using circuit::PartKind;
namespace pins = circuit::timerPin;

namespace {

/// SplitMix64 (public domain, S. Vigna).
class Dice {
  public:
    explicit Dice(std::uint64_t seed) : m_state(seed) {}
    std::uint64_t next() {
        std::uint64_t z = (m_state += 0x9e3779b97f4a7c15u);
        z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9u;
        z = (z ^ (z >> 27)) * 0x94d049bb133111ebu;
        return z ^ (z >> 31);
    }
    int below(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
    bool oneIn(int n) { return below(n) == 0; }
    double share() { return static_cast<double>(next() >> 11) * 0x1p-53; }
    double between(double low, double high) { return low * std::pow(high / low, share()); }

  private:
    std::uint64_t m_state;
};

class Maker {
  public:
    explicit Maker(std::uint64_t seed) : m_dice(seed), m_extreme(isExtreme(seed)) {}

    circuit::Circuit make() {
        const int supplies = m_dice.oneIn(4) ? 2 + m_dice.below(2) : 1;
        for (int k = 0; k < supplies; ++k) supply();
        const int timers = m_dice.oneIn(3) ? 2 + m_dice.below(3) : 1;
        const bool kit = m_dice.below(5) < 2; // a plain astable a timer, before chance adds the rest
        for (int k = 0; k < timers; ++k) {
            timer();
            if (kit) astable(k);
        }
        const int parts = 3 + m_dice.below(12);
        for (int k = 0; k < parts; ++k) part();
        wire();
        return std::move(m_bench.circuit);
    }

  private:
    std::string ref(const char* letter) { return letter + std::to_string(++m_number); }
    double pick(double low, double high, double extremeLow, double extremeHigh) {
        return m_extreme ? m_dice.between(extremeLow, extremeHigh) : m_dice.between(low, high);
    }
    double signedVolts(double most) { return most * (2 * m_dice.share() - 1); }

    void supply() {
        m_bench.part(PartKind::supply, ref("BT"),
                     {{"voltage", pick(1.5, 18, 1e-3, 1e3)}, {"resistance", pick(0.05, 20, 1e-6, 1e6)}});
    }
    void timer() {
        circuit::Values values{{"family", std::string(m_dice.below(2) ? "bipolar" : "cmos")}};
        if (m_dice.oneIn(3)) {
            circuit::Overrides device;
            if (m_dice.oneIn(2)) device["delay"] = m_dice.oneIn(2) ? 0 : pick(1e-8, 1e-5, 1e-12, 1e-1);
            if (m_dice.oneIn(3)) device["threshold_current"] = pick(1e-9, 1e-6, 1e-15, 1e-2);
            if (m_dice.oneIn(3)) device["trigger_current"] = pick(1e-9, 1e-6, 1e-15, 1e-2);
            if (m_dice.oneIn(3)) device["discharge_leakage"] = pick(1e-9, 1e-6, 1e-15, 1e-2);
            if (m_dice.oneIn(3)) device["discharge_resistance"] = pick(1, 100, 1e-6, 1e6);
            if (m_dice.oneIn(4)) device["divider_resistance"] = pick(1e3, 1e5, 1, 1e9);
            if (m_dice.oneIn(4)) device["low_resistance"] = pick(1, 100, 1e-6, 1e6);
            if (m_dice.oneIn(4)) device["high_resistance"] = pick(1, 1000, 1e-6, 1e6);
            if (m_dice.oneIn(4)) device["reset_level"] = m_dice.share();
            values["device"] = device;
        }
        m_last = ref("U");
        m_bench.part(PartKind::timer, m_last, std::move(values));
    }
    /// Timing parts for the last timer, each on its own two nets.
    void astable(int k) {
        const int discharge = 2 + 3 * k, timing = discharge + 1, output = timing + 1;
        const std::string u = m_last, r1 = ref("R"), r2 = ref("R"), c = ref("C");
        m_bench.part(PartKind::resistor, r1, {{"resistance", pick(1e3, 1e6, 1, 1e9)}})
            .part(PartKind::resistor, r2, {{"resistance", pick(1e3, 1e6, 1, 1e9)}})
            .part(PartKind::capacitor, c, {{"capacitance", pick(1e-9, 1e-4, 1e-12, 1)}});
        plan(u, {1, timing, output, 0, -1, timing, discharge, 0});
        plan(r1, {0, discharge});
        plan(r2, {discharge, timing});
        plan(c, {timing, 1});
    }
    void plan(const std::string& part, std::vector<int> nets) { m_plan[part] = std::move(nets); }

    circuit::Intervals presses() {
        circuit::Intervals list;
        double at = 0.1 * m_dice.share();
        const int count = 1 + m_dice.below(m_dice.oneIn(5) ? 20 : 3);
        for (int k = 0; k < count; ++k) {
            const double until = at + m_dice.between(1e-5, 0.3);
            list.push_back({at, until});
            at = until + m_dice.between(1e-5, 0.3);
        }
        return list;
    }
    void part() {
        switch (m_dice.below(12)) {
        case 0:
        case 1:
        case 2:
        case 3:
            m_bench.part(PartKind::resistor, ref("R"), {{"resistance", pick(1, 1e7, 1e-3, 1e12)}});
            break;
        case 4:
        case 5:
        case 6: {
            circuit::Values values{{"capacitance", pick(1e-10, 1e-2, 1e-13, 10)},
                                   {"esr", pick(1e-3, 10, 1e-3, 1e3)}};
            if (m_dice.oneIn(3)) values["leakage_resistance"] = pick(1e3, 1e8, 1e-1, 1e12);
            if (m_dice.oneIn(4)) values["initial_voltage"] = signedVolts(m_extreme ? 1e3 : 10);
            m_bench.part(PartKind::capacitor, ref("C"), std::move(values));
            break;
        }
        case 7: {
            constexpr const char* colours[] = {"red", "white", "infrared", "green"};
            circuit::Values values{{"colour", std::string(colours[m_dice.below(4)])}};
            if (m_dice.oneIn(4)) {
                values["ideality"] = m_dice.between(1, 5);
                values["series_resistance"] = m_dice.between(0.01, 20);
            }
            m_bench.part(PartKind::lamp, ref("D"), std::move(values));
            break;
        }
        case 8:
            m_bench.part(PartKind::diode, ref("D"));
            break;
        case 9:
            m_bench.part(PartKind::variable, ref("R"),
                         {{"resistance", pick(10, 1e6, 1e-2, 1e12)},
                          {"setting", m_dice.oneIn(3) ? m_dice.below(2) : m_dice.share()}});
            break;
        default: {
            circuit::Values values{{"closed", m_dice.below(2) == 1}};
            if (m_dice.oneIn(2)) values["presses"] = presses();
            m_bench.part(PartKind::toggle, ref("S"), std::move(values));
        }
        }
    }

    void wire() {
        auto& c = m_bench.circuit;
        int nets = 4 + m_dice.below(6);
        for (const auto& [part, planned] : m_plan)
            for (const int net : planned) nets = std::max(nets, net + 1);
        std::vector<circuit::NetId> ids;
        for (int k = 0; k < nets; ++k) ids.push_back(c.addNet("n" + std::to_string(k)).value());
        const bool sound = !m_dice.oneIn(3); // most parts where they belong, so that something blinks
        int timers = 0;
        for (const auto& part : c.parts()) {
            const int count = static_cast<int>(circuit::info(part.kind).pins.size());
            if (part.kind == PartKind::timer) ++timers;
            for (int pin = 0; pin < count; ++pin) {
                int net = m_dice.below(nets);
                const bool usual = !m_dice.oneIn(!m_plan.empty() ? 60 : sound ? 12 : 4);
                if (usual && part.kind == PartKind::supply) net = pin == 0 ? 0 : 1;
                if (usual && part.kind == PartKind::timer) {
                    const int timing = std::min(1 + timers, nets - 1);
                    if (pin == pins::supply || pin == pins::reset) net = 0;
                    if (pin == pins::ground) net = 1;
                    if (pin == pins::threshold || pin == pins::trigger) net = timing;
                    if (pin == pins::discharge && sound) net = m_dice.oneIn(2) ? timing : 3;
                }
                // Capacitors to ground, resistors from the supply or between timing nets: blinkers.
                if (sound && part.kind == PartKind::capacitor && !m_dice.oneIn(3)) net = pin == 0 ? 2 : 1;
                if (sound && part.kind == PartKind::resistor && !m_dice.oneIn(3))
                    net = pin == 0 ? (m_dice.oneIn(2) ? 0 : 3) : 2 + m_dice.below(2);
                if (const auto planned = m_plan.find(part.ref); planned != m_plan.end() && !m_dice.oneIn(60))
                    net = planned->second[static_cast<std::size_t>(pin)];
                if (net < 0 || m_dice.oneIn(m_plan.empty() ? 14 : 60)) continue; // open
                const auto joined = c.join({part.id, pin}, ids[static_cast<std::size_t>(net)]);
                if (!joined) throw std::logic_error(joined.fault().message());
            }
        }
    }

    Dice m_dice;
    bool m_extreme;
    Workbench m_bench;
    int m_number = 0;
    std::string m_last;                             ///< the last timer
    std::map<std::string, std::vector<int>> m_plan; ///< nets of a part's pins, -1 for open
};

} // namespace

circuit::Circuit randomCircuit(std::uint64_t seed) {
    return Maker(seed).make();
}

} // namespace blinkwright::tests
