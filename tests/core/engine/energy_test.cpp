// Energy balance of a settled period: what all sources give is what all parts turn into heat and light, and
// what is stored more at the end than at the beginning. Every power is worked out here from voltages,
// currents and the written laws, not by the figures of a study.
#include "core/devices/laws.h"
#include "tests/core/engine/proof_support.h"

#include <gtest/gtest.h>

namespace blinkwright::engine {
namespace {

using circuit::PartKind;
using devices::Node;
using namespace proofs;
namespace pins = circuit::timerPin;

/// Powers of a board at an instant [W].
struct Power {
    double sources = 0, heat = 0;
    void turn(double watts) { heat += watts; }
};

Power powerAt(const devices::Board& board, const std::vector<bool>& high, const Instant& at) {
    Power p;
    const auto volt = [&](Node n) {
        return n == devices::open ? 0.0 : at.node_V[static_cast<std::size_t>(n)];
    };
    const auto resistor = [&](Node a, Node b, double ohms) {
        if (a != devices::open && b != devices::open)
            p.turn((volt(a) - volt(b)) * (volt(a) - volt(b)) / ohms);
    };
    for (std::size_t k = 0; k < board.supplies.size(); ++k) {
        p.sources += board.supplies[k].voltage * at.supply_A[k];
        p.turn(board.supplies[k].resistance * at.supply_A[k] * at.supply_A[k]);
    }
    for (const auto& part : board.resistors) resistor(part.a, part.b, part.resistance);
    for (const auto& part : board.variables) {
        resistor(part.a, part.wiper, part.upper);
        resistor(part.wiper, part.b, part.lower);
    }
    for (const auto& part : board.switches)
        resistor(part.a, part.b,
                 part.closed ? devices::switchClosedResistance : devices::switchOpenResistance);
    for (std::size_t k = 0; k < board.capacitors.size(); ++k) {
        const auto& part = board.capacitors[k];
        p.turn(part.esr * at.capacitor_A[k] * at.capacitor_A[k]);
        p.turn(part.leakageConductance * at.capacitor_V[k] * at.capacitor_V[k]);
    }
    for (std::size_t k = 0; k < board.junctions.size(); ++k)
        p.turn((volt(board.junctions[k].anode) - volt(board.junctions[k].cathode)) * at.junction_A[k]);
    for (std::size_t k = 0; k < board.timers.size(); ++k) {
        const auto& timer = board.timers[k];
        const auto& t = at.timers[k];
        const auto& sheet = timer.sheet;
        const auto on = [&](int pin) { return volt(timer.pins[static_cast<std::size_t>(pin)]) - t.ground_V; };
        const double supply = t.supply_V - t.ground_V, level = t.control_V - t.ground_V,
                     out = t.output_V - t.ground_V;
        p.turn(devices::idle(sheet, !high[k], supply).current * supply);
        p.turn((supply - level) * (supply - level) / sheet.divider_resistance);
        p.turn(level * level / (2 * sheet.divider_resistance));
        if (timer.connected(pins::threshold))
            p.turn(devices::conductingSide(sheet.threshold_current, on(pins::threshold) - level).current *
                   on(pins::threshold));
        if (timer.connected(pins::trigger))
            p.turn(devices::conductingSide(sheet.trigger_current, 0.5 * level - on(pins::trigger)).current *
                   (supply - on(pins::trigger)));
        if (timer.pins[pins::reset] != devices::open && !timer.cmos) {
            // The ideal source of 0.8 x nominal supply above pin 1 gives too.
            const double source = 0.8 * timer.nominalSupply,
                         amps = (source - on(pins::reset)) / sheet.reset_resistance;
            p.sources += source * amps;
            p.turn(amps * amps * sheet.reset_resistance);
        } else if (timer.connected(pins::reset)) {
            p.turn(devices::leak(sheet.reset_current, on(pins::reset)).current * on(pins::reset));
        }
        if (timer.connected(pins::discharge))
            p.turn(devices::discharge(sheet, !high[k], on(pins::discharge)).current * on(pins::discharge));
        if (timer.cmos)
            p.turn(high[k]
                       ? devices::outputCmos(sheet.high_resistance, sheet.high_limit, supply - out).current *
                             (supply - out)
                       : devices::outputCmos(sheet.low_resistance, sheet.low_limit, out).current * out);
        else if (high[k]) {
            double inner = 0;
            p.turn(devices::outputHighBipolar(devices::outputHighCurve(sheet), supply - out, inner).current *
                   (supply - out));
        } else
            p.turn(devices::outputLowBipolar(sheet, out).current * out);
    }
    return p;
}

void expectBalance(const Workbench& bench) {
    const auto board = bench.board();
    const Settled settled = settle(board, {.accuracy = 1e-9});
    ASSERT_TRUE(settled.found) << settled.why;
    // The state of every output over the period, between its switchings.
    std::vector<bool> high(board.timers.size(), false);
    high[0] = true;
    for (std::size_t t = 1; t < high.size(); ++t)
        for (const auto& s : settled.switchings)
            if (s.timer == static_cast<int>(t)) {
                high[t] = !s.high; // before its first switching
                break;
            }
    double sources = 0, heat = 0, begin_s = 0;
    const auto take = [&](double end_s) {
        if (!(end_s > begin_s)) return;
        const Waveform phase = settled.wave.part(begin_s, end_s, begin_s);
        sources += integral(phase, [&](const Instant& at) { return powerAt(board, high, at).sources; });
        heat += integral(phase, [&](const Instant& at) { return powerAt(board, high, at).heat; });
        begin_s = end_s;
    };
    for (const auto& s : settled.switchings) {
        if (s.time_s >= settled.period_s) break;
        take(s.time_s);
        high[static_cast<std::size_t>(s.timer)] = s.high;
    }
    take(settled.period_s);
    Instant first, last;
    settled.wave.instant(0, Side::after, first);
    settled.wave.instant(settled.period_s, Side::before, last);
    double stored = 0, swing = 0;
    for (std::size_t k = 0; k < board.capacitors.size(); ++k) {
        const double c = 0.5 * board.capacitors[k].capacitance;
        stored +=
            c * (last.capacitor_V[k] * last.capacitor_V[k] - first.capacitor_V[k] * first.capacitor_V[k]);
        swing += c * last.capacitor_V[k] * last.capacitor_V[k];
    }
    EXPECT_GT(sources, 1e-6 * swing);
    EXPECT_NEAR((heat + stored) / sources, 1, 1e-7); // 1e-11 and less was seen
    EXPECT_LT(std::abs(stored), 1e-5 * sources) << "the period is settled";
}

TEST(EnergyBalance, HoldsForOneLampOnABipolarTimer) {
    expectBalance(tests::astableWithLamp({}, 470));
}

TEST(EnergyBalance, HoldsForTwoLampsBehindALeakyCapacitor) {
    Workbench b = tests::lampPair({.r2_ohm = 33e3, .c_farad = 4.7e-6, .leakage_ohm = 2e6}, 220, 470e-6);
    b.set("C3.leakage_resistance=50k").set("C3.esr=2").set("BT1.resistance=8");
    expectBalance(b);
}

TEST(EnergyBalance, HoldsForTwoLampsOnACmosTimer) {
    expectBalance(
        tests::lampPair({.supply_V = 6, .r2_ohm = 33e3, .c_farad = 4.7e-6, .family = "cmos"}, 100, 220e-6));
}

TEST(EnergyBalance, HoldsForALampToEachRailWithSteeringDiodeVariableAndSwitch) {
    Workbench b =
        tests::astableWithLamp({.supply_V = 12, .r1_ohm = 4.7e3, .r2_ohm = 47e3, .c_farad = 1e-6}, 680);
    b.part(PartKind::lamp, "D2", {{"colour", std::string("green")}})
        .part(PartKind::diode, "D3")
        .part(PartKind::variable, "RV1", {{"resistance", 2200.0}, {"setting", 0.3}})
        .part(PartKind::toggle, "S1", {{"closed", true}})
        .part(PartKind::capacitor, "C9", {{"capacitance", 47e-6}, {"esr", 0.8}});
    b.net("supply", {"S1:1", "C9:plus"})
        .net("above", {"S1:2", "RV1:1"})
        .net("upper", {"RV1:wiper", "D2:anode"});
    b.net("output", {"D2:cathode"}).net("discharge", {"D3:anode"}).net("timing", {"D3:cathode"});
    b.net("ground", {"C9:minus"});
    expectBalance(b);
}

TEST(EnergyBalance, HoldsForAControlPinDrivenByASecondSupply) {
    Workbench b = tests::astableWithLamp({.r1_ohm = 10e3, .r2_ohm = 22e3, .c_farad = 2.2e-6}, 330, "white");
    b.part(PartKind::supply, "BT2", {{"voltage", 4.0}, {"resistance", 20.0}})
        .part(PartKind::resistor, "R9", {{"resistance", 1e3}});
    b.net("bias", {"BT2:plus", "R9:1"}).net("control", {"R9:2"}).net("ground", {"BT2:minus"});
    expectBalance(b);
}

TEST(EnergyBalance, HoldsForATimerThatFollowsAnother) {
    // U2 turns U1's output upside down and lights a lamp with it.
    Workbench b = tests::astableWithLamp({.r1_ohm = 10e3, .r2_ohm = 33e3, .c_farad = 1e-6}, 470);
    b.part(PartKind::timer, "U2", {{"family", std::string("cmos")}})
        .part(PartKind::lamp, "D2")
        .part(PartKind::resistor, "R9", {{"resistance", 390.0}});
    b.net("supply", {"U2:8", "U2:4"}).net("ground", {"U2:1", "D2:cathode"}).net("output", {"U2:2", "U2:6"});
    b.net("output2", {"U2:3", "R9:1"}).net("second", {"R9:2", "D2:anode"});
    expectBalance(b);
}

TEST(EnergyBalance, HoldsForAResetPinThatHangsOnAResistor) {
    // The reset input's own source feeds the resistor all the time.
    Workbench b = tests::astableWithLamp({.r1_ohm = 10e3, .r2_ohm = 33e3, .c_farad = 1e-6}, 470);
    b.open("U1:4").part(PartKind::resistor, "R9", {{"resistance", 4.7e3}});
    b.net("reset", {"U1:4", "R9:1"}).net("ground", {"R9:2"});
    expectBalance(b);
}

TEST(EnergyBalance, HoldsForOneResistorFromTheOutputOfACmosTimer) {
    Workbench b = tests::astable({.supply_V = 5, .family = "cmos"}, false);
    for (const char* pin : {"U1:7", "R1:1", "R1:2", "R2:1", "R2:2"}) b.open(pin);
    b.part(PartKind::resistor, "R3", {{"resistance", 47e3}})
        .part(PartKind::resistor, "R4", {{"resistance", 2.2e3}});
    b.part(PartKind::lamp, "D1");
    b.set("C1.capacitance=1u").set("C1.esr=3");
    b.net("output", {"R3:1", "R4:1"})
        .net("timing", {"R3:2"})
        .net("lamp", {"R4:2", "D1:anode"})
        .net("ground", {"D1:cathode"});
    expectBalance(b);
}

} // namespace
} // namespace blinkwright::engine
