// Any wiring of the known parts ends in a reason within its budget, and every value it yields is a number.
// The circuits are made up from a seed by a generator of our own, so that they are the same on every machine.
#include "core/engine/transient.h"
#include "tests/core/workbench.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdint>
#include <cstdlib>

namespace blinkwright::engine {
namespace {

using circuit::PartKind;

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
    double share() { return static_cast<double>(next() >> 11) * 0x1p-53; }
    double between(double low, double high) { return low * std::pow(high / low, share()); }

  private:
    std::uint64_t m_state;
};

circuit::Circuit randomCircuit(std::uint64_t seed) {
    Dice dice(seed);
    Workbench bench;
    bench.part(PartKind::supply, "BT1",
               {{"voltage", dice.between(1.5, 18)}, {"resistance", dice.between(0.05, 20)}});
    bench.part(PartKind::timer, "U1", {{"family", std::string(dice.below(2) ? "bipolar" : "cmos")}});
    const int parts = 3 + dice.below(9);
    for (int k = 0; k < parts; ++k) {
        const std::string number = std::to_string(k + 2);
        switch (dice.below(8)) {
        case 0:
        case 1:
            bench.part(PartKind::resistor, "R" + number, {{"resistance", dice.between(1, 1e7)}});
            break;
        case 2:
        case 3: {
            circuit::Values values{{"capacitance", dice.between(1e-10, 1e-2)},
                                   {"esr", dice.between(1e-3, 10)}};
            if (dice.below(3) == 0) values["leakage_resistance"] = dice.between(1e3, 1e8);
            if (dice.below(4) == 0) values["initial_voltage"] = 10 * dice.share() - 5;
            bench.part(PartKind::capacitor, "C" + number, values);
            break;
        }
        case 4:
            bench.part(PartKind::lamp, "D" + number,
                       {{"colour", std::string(dice.below(2) ? "red" : "white")}});
            break;
        case 5:
            bench.part(PartKind::diode, "D" + number);
            break;
        case 6:
            bench.part(PartKind::variable, "R" + number,
                       {{"resistance", dice.between(10, 1e6)}, {"setting", dice.share()}});
            break;
        default:
            if (dice.below(3) == 0)
                bench.part(PartKind::timer, "U" + number,
                           {{"family", std::string(dice.below(2) ? "bipolar" : "cmos")}});
            else
                bench.part(PartKind::toggle, "S" + number,
                           {{"closed", dice.below(2) == 1},
                            {"presses", circuit::Intervals{{0.1 * dice.share(), 0.2}}}});
        }
    }
    auto& c = bench.circuit;
    const int nets = 3 + dice.below(5);
    std::vector<circuit::NetId> ids;
    for (int k = 0; k < nets; ++k) ids.push_back(c.addNet("n" + std::to_string(k)).value());
    for (const auto& part : c.parts()) {
        const auto& kind = circuit::info(part.kind);
        for (int pin = 0; pin < static_cast<int>(kind.pins.size()); ++pin) {
            // Often enough a powered timer: its supply pins follow the supply's.
            int net = dice.below(nets);
            const bool usual = dice.below(4) != 0;
            if (usual && part.kind == PartKind::supply) net = pin == 0 ? 0 : 1;
            if (usual && part.kind == PartKind::timer && pin == circuit::timerPin::supply) net = 0;
            if (usual && part.kind == PartKind::timer && pin == circuit::timerPin::reset) net = 0;
            if (usual && part.kind == PartKind::timer && pin == circuit::timerPin::ground) net = 1;
            if (usual && part.kind == PartKind::timer && pin == circuit::timerPin::threshold) net = 2;
            if (usual && part.kind == PartKind::timer && pin == circuit::timerPin::trigger) net = 2;
            if (dice.below(12) == 0) continue; // open
            EXPECT_TRUE(c.join({part.id, pin}, ids[static_cast<std::size_t>(net)]));
        }
    }
    return c;
}

TEST(AnyWiring, EndsInAReasonWithinItsBudgetAndYieldsNumbers) {
    int blinking = 0, unsolved = 0;
    // BLINKWRIGHT_CIRCUITS asks for a longer run than the usual one.
    const char* asked = std::getenv("BLINKWRIGHT_CIRCUITS");
    const int circuits = asked ? std::atoi(asked) : 600;
    for (int seed = 0; seed < circuits; ++seed) {
        SCOPED_TRACE(seed);
        const auto board =
            devices::makeBoard(randomCircuit(static_cast<std::uint64_t>(seed)), circuit::PartSet::A).value();
        const RunRequest request{.flashes = 5, .accuracy = 1e-5, .stepBudget = 20'000, .eventBudget = 2'000};
        const engine::Run run = simulate(board, request);
        EXPECT_LE(run.report.steps + run.report.rejected, 20'000);
        blinking += run.report.reason == StopReason::flashesReached;
        unsolved += run.report.reason == StopReason::noSolution;
        if (run.report.reason == StopReason::noSolution)
            ADD_FAILURE() << "no solution at " << run.report.reached_s;
        double last = 0;
        for (const auto& s : run.switchings) {
            ASSERT_TRUE(std::isfinite(s.time_s));
            ASSERT_GE(s.time_s, last);
            last = s.time_s;
        }
        Instant at;
        for (const auto& knot : run.wave.knots(0)) {
            run.wave.instant(knot, at);
            for (double v : at.all) ASSERT_TRUE(std::isfinite(v));
        }
        const Settled settled = settle(board, request);
        if (settled.found) {
            EXPECT_GT(settled.period_s, 0);
            EXPECT_GT(settled.high_s, 0);
            EXPECT_LT(settled.high_s, settled.period_s);
        } else {
            EXPECT_FALSE(settled.why.empty());
        }
    }
    EXPECT_GT(blinking, circuits / 50); // the generator must reach what the test is about
    EXPECT_EQ(unsolved, 0);
}

} // namespace
} // namespace blinkwright::engine
