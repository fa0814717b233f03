// The engine against closed forms of the RC law between two levels, with every imperfection taken away but
// the one that the form is about. Tables: worked out by hand from the stated forms.
#include "tests/case_names.h"
#include "tests/core/engine/proof_support.h"

#include <gtest/gtest.h>

#include <numbers>

namespace blinkwright::engine {
namespace {

using circuit::PartKind;
using namespace proofs;
using tests::astable;
using tests::caseName;

using std::numbers::ln2;

std::string whole(double value) {
    return std::to_string(std::lround(value));
}

// --- discharge pin

struct Saturation {
    double supply_V, saturation_V, excess_percent;
};
class DischargeSaturation : public testing::TestWithParam<Saturation> {};

TEST_P(DischargeSaturation, MakesTheLowPhaseLongerByTheClosedForm) {
    // tL = R2 C ln[(2/3 V - Vsat)/(1/3 V - Vsat)]. The drop is a battery in the lead of an ideal pin 7.
    const auto& row = GetParam();
    Workbench b = astable({.supply_V = row.supply_V, .r1_ohm = 10e3, .r2_ohm = 22e3, .c_farad = 1e-6}, true);
    b.open("U1:7").part(PartKind::supply, "BT2", {{"voltage", row.saturation_V}, {"resistance", 1e-6}});
    b.net("discharge", {"BT2:plus"}).net("pin7", {"U1:7", "BT2:minus"});
    const double v = row.supply_V / 3,
                 low = 22e3 * 1e-6 * std::log((2 * v - row.saturation_V) / (v - row.saturation_V));
    const HighLow phases = laterPhases(b);
    EXPECT_NEAR(phases.low_s / low, 1, 1e-7);
    EXPECT_NEAR(phases.high_s / (32e3 * 1e-6 * ln2), 1, 1e-7);
    const double excess = 100 * (phases.low_s / (22e3 * 1e-6 * ln2) - 1);
    EXPECT_NEAR(excess, row.excess_percent, 6e-3 * row.excess_percent); // printed to three figures
}

INSTANTIATE_TEST_SUITE_P(
    Table, DischargeSaturation,
    testing::Values(Saturation{5, 0.05, 2.21}, Saturation{9, 0.05, 1.22}, Saturation{15, 0.05, 0.73},
                    Saturation{5, 0.08, 3.59}, Saturation{9, 0.08, 1.96}, Saturation{15, 0.08, 1.17},
                    Saturation{5, 0.1, 4.53}, Saturation{9, 0.1, 2.47}, Saturation{15, 0.1, 1.46},
                    Saturation{5, 0.18, 8.48}, Saturation{9, 0.18, 4.53}, Saturation{15, 0.18, 2.67},
                    Saturation{5, 0.2, 9.52}, Saturation{9, 0.2, 5.06}, Saturation{15, 0.2, 2.97},
                    Saturation{5, 0.48, 26.6}, Saturation{9, 0.48, 13.1}, Saturation{15, 0.48, 7.46}),
    [](const auto& row) {
        return caseName(whole(row.param.supply_V) + " V " + whole(1e3 * row.param.saturation_V) + " mV");
    });

TEST(DischargeLimit, EmptiesTheCapacitorAtThatCurrentLessThatOfR1) {
    // An ideal pin 7 that takes no more than I: out of C1 comes what R1 does not bring,
    // C1 dv/dt = -(R1 I - V + v)/(R1 + R2). From two thirds of V to one third.
    const double limit = 10e-3, v = 9, r1 = 10e3, r2 = 100, c = 10e-6;
    Workbench b = astable({.supply_V = v, .r1_ohm = r1, .r2_ohm = r2, .c_farad = c}, true);
    b.set("U1.device.discharge_limit=10m");
    const double over = r1 * limit - v, esr = 1e-3;
    // Behind its 1 milliohm the capacitor is a little less charged at the upper level, and more at the lower.
    const double begin = 2 * v / 3 - esr * v / 3 / (r1 + r2), end = v / 3 + esr * (over + v / 3) / (r1 + r2);
    EXPECT_NEAR(laterPhases(b).low_s / ((r1 + r2) * c * std::log((over + begin) / (over + end))), 1, 2e-7);
}

TEST(DischargeResistance, AddsToR2AndLiftsWhatTheCapacitorFallsTo) {
    // Fairchild LM555 (Rev 1.1.0, 2002), equations 7 to 9: tL = 0.693 (RB + RD) C. That leaves out the
    // current of R1 through RD: the node falls towards V RD/(R1 + RD) through R2 + R1 || RD.
    for (const double r1 : {1e3, 10e3, 1e6}) {
        const double r2 = 10e3, rd = 20, c = 1e-6;
        Workbench b = astable({.r1_ohm = r1, .r2_ohm = r2, .c_farad = c}, true);
        b.open("U1:7").part(PartKind::resistor, "R7", {{"resistance", rd}});
        b.net("discharge", {"R7:1"}).net("pin7", {"U1:7", "R7:2"});
        const double to = rd / (r1 + rd), through = r2 + r1 * rd / (r1 + rd);
        const double low = through * c * std::log((2.0 / 3 - to) / (1.0 / 3 - to));
        const HighLow phases = laterPhases(b);
        EXPECT_NEAR(phases.low_s / low, 1, 1e-7) << r1;
        if (r1 >= 1e6) {
            EXPECT_NEAR(phases.low_s / (ln2 * (r2 + rd) * c), 1, 1e-4);
        }
    }
}

// --- a current that drains the timing node

/// The leak of pin 7 is a constant current while the output is high: tanh(v/0.1 V) is 1 from 2 V on. It
/// leaves through R1, so that the charge aims at V - R1 I.
Workbench drained(double supply_V, double r1, double current_A, double r2 = 10) {
    Workbench b = astable({.supply_V = supply_V, .r1_ohm = r1, .r2_ohm = r2, .c_farad = 1e-6}, true);
    auto device = tests::idealTimer();
    device["discharge_leakage"] = current_A;
    EXPECT_TRUE(b.circuit.setOverride(circuit::PartSet::A, b.id("U1"), "device", device));
    return b;
}

TEST(DrainCurrent, MakesTheHighPhaseLongerByTheClosedForm) {
    struct Row {
        double r_ohm, drain_A, factor;
    };
    for (const auto& row : {Row{471e3, 1e-6, 1.128}, Row{471e3, 3e-6, 1.531}, Row{101e3, 3e-6, 1.079}}) {
        const double r1 = row.r_ohm - 1e3, aim = 9 - r1 * row.drain_A;
        const double ideal = row.r_ohm * 1e-6 * ln2;
        const double high = row.r_ohm * 1e-6 * std::log((aim - 3) / (aim - 6));
        const HighLow phases = laterPhases(drained(9, r1, row.drain_A, 1e3));
        EXPECT_NEAR(phases.high_s / high, 1, 1e-6) << row.factor;
        EXPECT_NEAR(phases.high_s / ideal, row.factor, 2e-3); // the table has the drain after R2 too
    }
}

TEST(DrainCurrent, HoldsTheOutputHighFromAThirdOfTheSupplyOverTheResistorsOn) {
    // 9 V/3 over 471 kohm: 6.37 uA.
    EXPECT_EQ(simulate(drained(9, 471e3, 6.36e-6).board(), {}).report.reason, StopReason::flashesReached);
    const engine::Run stuck = simulate(drained(9, 471e3, 6.38e-6).board(), {});
    EXPECT_EQ(stuck.report.reason, StopReason::quiet);
    EXPECT_TRUE(stuck.outputs.at(0));
    // Fairchild LM555 (Rev 1.1.0): at most 6.7 Mohm at 5 V and 20 Mohm at 15 V, for 250 nA of threshold
    // current.
    for (const auto& [volts, megohms] : {std::pair{5.0, 6.7}, std::pair{15.0, 20.0}}) {
        EXPECT_EQ(simulate(drained(volts, 0.99e6 * megohms, 250e-9).board(), {}).report.reason,
                  StopReason::flashesReached);
        EXPECT_EQ(simulate(drained(volts, 1.01e6 * megohms, 250e-9).board(), {}).report.reason,
                  StopReason::quiet);
    }
}

// --- control voltage

TEST(ControlVoltage, MovesTheHighPhaseByTheClosedFormAndTheLowPhaseNotAtAll) {
    // tH = (R1+R2) C ln[(V - Vc/2)/(V - Vc)], tL = R2 C ln 2; the factors to four figures.
    const std::pair<double, double> table[] = {{0.10, 0.0541}, {0.25, 0.1542},    {1.0 / 3, 0.2231},
                                               {0.5, 0.4055},  {2.0 / 3, 0.6931}, {0.75, 0.9163},
                                               {0.8, 1.0986},  {0.9, 1.7047}};
    for (const auto& [share, factor] : table) {
        Workbench b = astable({.r1_ohm = 1e6, .r2_ohm = 2.2e6, .c_farad = 10e-9}, true);
        b.part(PartKind::supply, "BT2", {{"voltage", 9 * share}, {"resistance", 1e-6}});
        b.net("control", {"BT2:plus", "U1:5"}).net("ground", {"BT2:minus"});
        const HighLow phases = laterPhases(b);
        EXPECT_NEAR(phases.high_s / (3.2e6 * 10e-9 * std::log((1 - share / 2) / (1 - share))), 1, 1e-7)
            << share;
        EXPECT_NEAR(phases.high_s / (3.2e6 * 10e-9), factor, 5.1e-5) << share;
        EXPECT_NEAR(phases.low_s / (2.2e6 * 10e-9 * ln2), 1, 1e-7) << share;
    }
}

// --- steering diode across R2

/// A drop of `volts` in series with an almost ideal diode from `from` to `to`.
void drop(Workbench& b, const std::string& ref, double volts, const char* from, const char* to) {
    b.part(PartKind::supply, "BT" + ref, {{"voltage", volts - 4e-3}, {"resistance", 1e-6}})
        .part(PartKind::diode, "D" + ref, almostIdealDiode());
    b.net(from, {("BT" + ref + ":plus").c_str()});
    b.net("inner" + ref, {("BT" + ref + ":minus").c_str(), ("D" + ref + ":anode").c_str()});
    b.net(to, {("D" + ref + ":cathode").c_str()});
}

TEST(SteeringDiode, StretchesTheHighPhaseByItsDrop) {
    // tH = R1 C ln[(2/3 V - Vd)/(1/3 V - Vd)], tL = R2 C ln 2.
    struct Row {
        double supply_V, drop_V, stretch;
    };
    for (const auto& row :
         {Row{5, 0.7, 1.446}, Row{9, 0.7, 1.204}, Row{12, 0.7, 1.145}, Row{15, 0.7, 1.113},
          Row{5, 0.3, 1.150}, Row{9, 0.3, 1.078}, Row{12, 0.3, 1.057}, Row{15, 0.3, 1.045}}) {
        Workbench b =
            astable({.supply_V = row.supply_V, .r1_ohm = 1e3, .r2_ohm = 22e3, .c_farad = 1e-6}, true);
        drop(b, "9", row.drop_V, "discharge", "timing");
        const double v = row.supply_V / 3;
        const HighLow phases = laterPhases(b);
        EXPECT_NEAR(phases.high_s / (1e3 * 1e-6 * std::log((2 * v - row.drop_V) / (v - row.drop_V))), 1, 1e-3)
            << row.supply_V << " " << row.drop_V;
        EXPECT_NEAR(phases.high_s / (1e3 * 1e-6 * ln2), row.stretch, 1.5e-3);
        EXPECT_NEAR(phases.low_s / (22e3 * 1e-6 * ln2), 1, 5e-5); // 1 nS across the diode is 2.2e-5 of R2
    }
}

TEST(SteeringDiode, HasItsDutyBackWithASecondDiodeInSeriesWithR2) {
    // Both phases get the same factor: the duty is R1/(R1 + R2) again while the rate stays low.
    Workbench b = astable({.supply_V = 9, .r1_ohm = 10e3, .r2_ohm = 30e3, .c_farad = 1e-6}, true);
    b.open("R2:1");
    drop(b, "9", 0.7, "discharge", "timing");
    drop(b, "8", 0.7, "above", "discharge");
    b.net("above", {"R2:1"});
    const double factor = std::log((6 - 0.7) / (3 - 0.7));
    const HighLow phases = laterPhases(b);
    EXPECT_NEAR(phases.high_s / (10e3 * 1e-6 * factor), 1, 1e-3);
    EXPECT_NEAR(phases.low_s / (30e3 * 1e-6 * factor), 1, 1e-3);
    EXPECT_NEAR(phases.duty(), 0.25, 3e-4);
}

// --- one resistor from the output

Workbench singleResistor(double supply_V, double r_ohm, double c_farad) {
    Workbench b = idealOutput(astable({.supply_V = supply_V, .family = "cmos"}, true));
    for (const char* pin : {"U1:7", "R1:1", "R1:2", "R2:1", "R2:2"}) b.open(pin);
    b.part(PartKind::resistor, "R3", {{"resistance", r_ohm}})
        .set("C1.capacitance=" + std::to_string(c_farad * 1e6) + "u");
    b.net("output", {"R3:1"}).net("timing", {"R3:2"});
    return b;
}

TEST(SingleResistor, GivesEvenHalvesOfLnTwoRC) {
    // f = 1/(2 ln 2 R C) = 0.7213/(R C): National LMC555, SNAS558J, "50 % duty cycle oscillator".
    const HighLow phases = laterPhases(singleResistor(9, 100e3, 1e-6));
    EXPECT_NEAR(phases.high_s / (ln2 * 0.1), 1, 1e-7);
    EXPECT_NEAR(phases.low_s / (ln2 * 0.1), 1, 1e-7);
    EXPECT_NEAR(0.1 / phases.period_s(), 0.7213, 5e-5);
}

TEST(SingleResistor, AddsTheOutputsResistanceOfEachHalf) {
    Workbench b = singleResistor(9, 10e3, 1e-6);
    b.set("U1.device.high_resistance=800").set("U1.device.low_resistance=100");
    const HighLow phases = laterPhases(b);
    EXPECT_NEAR(phases.high_s / (ln2 * 10.8e-3), 1, 2e-7);
    EXPECT_NEAR(phases.low_s / (ln2 * 10.1e-3), 1, 2e-7);
}

/// The output's levels moved by batteries behind almost ideal diodes, one for each direction of the current.
Workbench shiftedOutput(double supply_V, double high_V, double low_V) {
    Workbench b = singleResistor(supply_V, 100e3, 1e-6);
    // The bleeder takes what flows back through a blocked diode's shunt, 1 nS.
    b.open("R3:1").part(PartKind::resistor, "R4", {{"resistance", 1e7}});
    b.net("moved", {"R3:1", "R4:1"}).net("ground", {"R4:2"});
    drop(b, "9", supply_V - high_V, "output", "moved");
    drop(b, "8", low_V, "moved", "output");
    return b;
}

TEST(SingleResistor, HasADutyThatFollowsTheOutputsLevels) {
    // kH = ln[(VOH - V/3)/(VOH - 2V/3)], kL = ln[(2V/3 - VOL)/(V/3 - VOL)]; the shares to three figures for
    // VOH = V - 1.3 V and VOL = 0.05 V (bipolar) and 4.8 and 0.08 V (CMOS, 5 V).
    struct Row {
        double supply_V, high_V, low_V, percent;
    };
    for (const auto& row : {Row{5, 3.7, 0.05, 71}, Row{6, 4.7, 0.05, 65.7}, Row{9, 7.7, 0.05, 59.2},
                            Row{12, 10.7, 0.05, 56.5}, Row{15, 13.7, 0.05, 55.0}, Row{5, 4.8, 0.08, 51.4}}) {
        const double v = row.supply_V / 3;
        const double high = 0.1 * std::log((row.high_V - v) / (row.high_V - 2 * v));
        const double low = 0.1 * std::log((2 * v - row.low_V) / (v - row.low_V));
        const HighLow phases = laterPhases(shiftedOutput(row.supply_V, row.high_V, row.low_V));
        EXPECT_NEAR(phases.high_s / high, 1, 2e-3) << row.percent;
        EXPECT_NEAR(phases.low_s / low, 1, 1e-3) << row.percent;
        EXPECT_NEAR(100 * phases.duty(), row.percent, row.percent == 71 ? 0.5 : 0.06);
    }
}

TEST(SingleResistor, FailsWhereTheHighLevelIsNotAboveTwoThirdsOfTheSupply) {
    // A drop of 1.67 V at 5 V: common practice, no source, and plain from the form above.
    EXPECT_EQ(simulate(shiftedOutput(5, 3.36, 0.05).board(), {}).report.reason, StopReason::flashesReached);
    const engine::Run stuck = simulate(shiftedOutput(5, 3.30, 0.05).board(), {});
    EXPECT_EQ(stuck.report.reason, StopReason::quiet);
    EXPECT_TRUE(stuck.outputs.at(0));
}

// --- the maker's circuit for 50 %

/// ST NE555 (Doc ID 2182 Rev 6), section 4.5: RA from the supply to pins 2 and 6, RB from there to pin 7.
Workbench evenDuty(double ra, double rb, double c) {
    Workbench b = astable({.r1_ohm = ra, .r2_ohm = rb, .c_farad = c}, true);
    b.open("R1:2").net("timing", {"R1:2"});
    return b;
}

TEST(EvenDutyCircuit, TakesItsPhasesFromTheMakersForms) {
    // t1 = 0.693 RA C, t2 = [RA RB/(RA+RB)] C ln[(RB - 2RA)/(2RB - RA)]; with 51 k, 22 k and 10 nF (from
    // memory) 353.5 us, 374.4 us, 1373.8 Hz and 48.6 %.
    const double ra = 51e3, rb = 22e3, c = 10e-9;
    const HighLow phases = laterPhases(evenDuty(ra, rb, c));
    EXPECT_NEAR(phases.high_s / (ln2 * ra * c), 1, 1e-6);
    EXPECT_NEAR(phases.low_s / (ra * rb / (ra + rb) * c * std::log((rb - 2 * ra) / (2 * rb - ra))), 1, 1e-6);
    EXPECT_NEAR(phases.high_s, 353.5e-6, 0.05e-6);
    EXPECT_NEAR(phases.low_s, 374.4e-6, 0.05e-6);
    EXPECT_NEAR(1 / phases.period_s(), 1373.8, 0.06);
    EXPECT_NEAR(phases.duty(), 0.486, 5e-4);
}

TEST(EvenDutyCircuit, StopsLowWhereRBIsNotUnderHalfOfRA) {
    EXPECT_EQ(simulate(evenDuty(51e3, 25.4e3, 10e-9).board(), {}).report.reason, StopReason::flashesReached);
    const engine::Run stuck = simulate(evenDuty(51e3, 25.6e3, 10e-9).board(), {});
    EXPECT_EQ(stuck.report.reason, StopReason::quiet);
    EXPECT_FALSE(stuck.outputs.at(0));
}

// --- delays

TEST(Delay, MakesBothPhasesLongerByTheMakersForms) {
    // TI TLC555, SLFS043C, page 12: tH = C (RA+RB) ln[3 - e^(-tPLH/(C (RB+ron)))] + tPHL and
    // tL = C (RB+ron) ln[3 - e^(-tPHL/(C (RA+RB)))] + tPLH. The logarithms run from ln 2 to ln 3.
    for (const double d : {2e-7, 1e-6, 5e-6, 50e-6}) {
        const double ra = 10e3, rb = 8e3, c = 1e-9;
        Workbench b = astable({.r1_ohm = ra, .r2_ohm = rb, .c_farad = c}, true);
        auto device = tests::idealTimer();
        device["delay"] = d;
        ASSERT_TRUE(b.circuit.setOverride(circuit::PartSet::A, b.id("U1"), "device", device));
        const double high = c * (ra + rb) * std::log(3 - std::exp(-d / (c * rb))) + d;
        const double low = c * rb * std::log(3 - std::exp(-d / (c * (ra + rb)))) + d;
        const HighLow phases = laterPhases(b);
        EXPECT_NEAR(phases.high_s / high, 1, 1e-6) << d;
        EXPECT_NEAR(phases.low_s / low, 1, 1e-6) << d;
    }
}

} // namespace
} // namespace blinkwright::engine
