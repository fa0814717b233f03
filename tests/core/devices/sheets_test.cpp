// The device sheets against what the makers publish. The rule for every point: inside the maker's minimum and
// maximum always, and within 25 % or 60 mV of the typical value, whichever is larger.
#include "core/devices/laws.h"
#include "core/devices/sheet_texts.h"

#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <limits>

namespace blinkwright::devices {
namespace {

constexpr double none = std::numeric_limits<double>::infinity();

struct Point {
    double typical;
    double least;
    double most;
};
void expectPublished(double value, Point point, double leastBand, const char* source) {
    EXPECT_GE(value, point.least) << source;
    EXPECT_LE(value, point.most) << source;
    EXPECT_NEAR(value, point.typical, std::max(0.25 * std::abs(point.typical), leastBand)) << source;
}
void expectVoltage(double value, Point point, const char* source) {
    expectPublished(value, point, 0.060, source);
}
void expectCurrent(double value, Point point, const char* source) {
    expectPublished(value, point, 0, source);
}

/// Voltage at which a rising law carries a current.
double voltageAt(double current, const std::function<double(double)>& law) {
    double low = 0;
    double high = 20;
    for (int k = 0; k < 100; ++k) {
        const double middle = 0.5 * (low + high);
        (law(middle) < current ? low : high) = middle;
    }
    return low;
}

TimerSheet sheet(TimerFamily family, double supply) {
    return timerSheet(family, supply, {});
}
double supplyCurrent(TimerFamily family, double supply, bool low) {
    const TimerSheet s = sheet(family, supply);
    return idle(s, low, supply).current + supply / (3 * s.divider_resistance);
}
double dischargeVoltage(TimerFamily family, double supply, double current) {
    const TimerSheet s = sheet(family, supply);
    return voltageAt(current, [&](double v) { return discharge(s, true, v).current; });
}
double bipolarDrop(double supply, double current) {
    const OutputHighCurve curve = outputHighCurve(sheet(TimerFamily::bipolar, supply));
    double u = 0;
    return voltageAt(current, [&](double v) { return outputHighBipolar(curve, v, u).current; });
}
double bipolarLow(double supply, double current) {
    const TimerSheet s = sheet(TimerFamily::bipolar, supply);
    return voltageAt(current, [&](double v) { return outputLowBipolar(s, v).current; });
}
double cmosDrop(double supply, double current) {
    const TimerSheet s = sheet(TimerFamily::cmos, supply);
    return voltageAt(current,
                     [&](double v) { return outputCmos(s.high_resistance, s.high_limit, v).current; });
}
double cmosLow(double supply, double current) {
    const TimerSheet s = sheet(TimerFamily::cmos, supply);
    return voltageAt(current, [&](double v) { return outputCmos(s.low_resistance, s.low_limit, v).current; });
}

constexpr const char* ti = "TI NE555/SA555, SLFS022A (rev. Sept 2000)";
constexpr const char* ti1992 = "TI NE555/SA555, SLFS022 (rev. Feb 1992)";
constexpr const char* st = "ST NE555/SA555/SE555, Doc ID 2182 Rev 6, Table 3";
constexpr const char* tlc = "TI TLC555, SLFS043C (rev. Sept 1997)";

TEST(BipolarSheet, DrawsThePublishedSupplyCurrent) {
    expectCurrent(supplyCurrent(TimerFamily::bipolar, 5, true), {3e-3, 0, 6e-3}, ti);
    expectCurrent(supplyCurrent(TimerFamily::bipolar, 15, true), {10e-3, 0, 15e-3}, ti);
    expectCurrent(supplyCurrent(TimerFamily::bipolar, 5, false), {2e-3, 0, 5e-3}, ti1992);
    expectCurrent(supplyCurrent(TimerFamily::bipolar, 15, false), {9e-3, 0, 13e-3}, ti1992);
}

TEST(BipolarSheet, DischargesWithThePublishedSaturationVoltage) {
    expectVoltage(dischargeVoltage(TimerFamily::bipolar, 5, 4.5e-3), {0.080, 0, 0.200}, st);
    expectVoltage(dischargeVoltage(TimerFamily::bipolar, 15, 15e-3), {0.180, 0, 0.480}, st);
}

TEST(BipolarSheet, SourcesWithThePublishedDrop) {
    expectVoltage(bipolarDrop(15, 0.1), {15 - 13.3, 0, 15 - 12.75}, ti);
    expectVoltage(bipolarDrop(5, 0.1), {5 - 3.3, 0, 5 - 2.75}, ti);
    expectVoltage(bipolarDrop(15, 0.2), {15 - 12.5, 0, none}, ti);
}

TEST(BipolarSheet, SinksWithThePublishedOutputLow) {
    expectVoltage(bipolarLow(15, 0.010), {0.1, 0, 0.25}, ti);
    expectVoltage(bipolarLow(15, 0.050), {0.4, 0, 0.75}, ti);
    expectVoltage(bipolarLow(15, 0.100), {2.0, 0, 2.5}, ti);
    expectVoltage(bipolarLow(15, 0.200), {2.5, 0, none}, ti);
}

TEST(BipolarSheet, HoldsThePublishedInputFigures) {
    const TimerSheet s = sheet(TimerFamily::bipolar, 9);
    EXPECT_DOUBLE_EQ(s.threshold_current, 30e-9); // TI SLFS022A
    EXPECT_DOUBLE_EQ(s.trigger_current, 0.5e-6);  // TI SLFS022A
    EXPECT_DOUBLE_EQ(s.reset_level, 0.7);         // TI SLFS022A
    EXPECT_DOUBLE_EQ(s.delay, 0.5e-6);            // ST Doc ID 2182 Rev 6
    EXPECT_DOUBLE_EQ(s.discharge_leakage, 20e-9); // ST Doc ID 2182 Rev 6
}

TEST(CmosSheet, DrawsThePublishedSupplyCurrent) {
    for (const bool low : {false, true}) {
        expectCurrent(supplyCurrent(TimerFamily::cmos, 5, low), {170e-6, 0, 350e-6}, tlc);
        expectCurrent(supplyCurrent(TimerFamily::cmos, 15, low), {360e-6, 0, 600e-6}, tlc);
    }
}

TEST(CmosSheet, DischargesThroughThePublishedResistance) {
    expectVoltage(dischargeVoltage(TimerFamily::cmos, 5, 10e-3), {0.14, 0, 0.5}, tlc);
}

TEST(CmosSheet, SourcesWithThePublishedDrop) {
    expectVoltage(cmosDrop(5, 1e-3), {5 - 4.8, 0, 5 - 4.1}, tlc);
    expectVoltage(cmosDrop(15, 10e-3), {15 - 14.2, 0, 15 - 12.5}, tlc);
}

TEST(CmosSheet, SinksWithThePublishedOutputLow) {
    expectVoltage(cmosLow(5, 8e-3), {0.21, 0, 0.4}, tlc);
    expectVoltage(cmosLow(15, 0.1), {1.28, 0, 3.2}, tlc);
}

TEST(TimerSheets, LetAnOverrideWinOverTheSupply) {
    EXPECT_DOUBLE_EQ(timerSheet(TimerFamily::cmos, 5, {}).high_resistance, 1333 / 6.67);
    EXPECT_DOUBLE_EQ(timerSheet(TimerFamily::cmos, 15, {}).high_resistance, 1333 / 16.67);
    EXPECT_DOUBLE_EQ(timerSheet(TimerFamily::cmos, 15, {{"high_resistance", 3}}).high_resistance, 3);
    EXPECT_DOUBLE_EQ(timerSheet(TimerFamily::cmos, 15, {}).high_limit, 0.09);
}

double lampVoltage(std::string_view colour, double current) {
    const LampSheet s = lampSheet(colour).value();
    const auto law =
        JunctionLaw::through(s.forward_voltage, s.test_current, s.ideality, s.series_resistance).value();
    return junctionVoltage(law, current) + law.seriesResistance * current;
}

TEST(LampSheets, MeetTheMakersForwardVoltageAtTwentyMilliamperes) {
    expectVoltage(lampVoltage("red", 0.02), {2.0, 0, 3.0}, "Vishay 83012 rev 2.3, TLHR540x");
    expectVoltage(lampVoltage("yellow", 0.02), {2.4, 0, 3.0}, "Vishay TLHY5400");
    expectVoltage(lampVoltage("pure-green", 0.02), {3.2, 2.8, 3.8}, "Broadcom ASMT-QTB4 Tables 2, 4");
    expectVoltage(lampVoltage("blue", 0.02), {3.2, 2.8, 3.8}, "Broadcom ASMT-QTB4 Tables 2, 4");
    expectVoltage(lampVoltage("white", 0.02), {3.0, 2.6, 3.4}, "RND 135-00123");
}

TEST(LampSheets, KnowTheEightColoursAndNoOther) {
    EXPECT_EQ(lampColours().size(), 8u);
    EXPECT_FALSE(lampSheet("mauve"));
}

TEST(DeviceSheets, NameASourceForEveryNumber) {
    for (const auto name : timerParameters()) {
        EXPECT_FALSE(sourceOf("timer-bipolar", name).empty()) << name;
        EXPECT_FALSE(sourceOf("timer-cmos", name).empty()) << name;
    }
    for (const auto colour : lampColours()) {
        for (const auto name : {"forward_voltage", "test_current", "ideality", "series_resistance",
                                "rated_current", "reverse_limit"})
            EXPECT_FALSE(sourceOf("lamp-" + std::string(colour), name).empty()) << colour << ' ' << name;
    }
    for (const auto name : {"forward_voltage", "test_current", "ideality", "series_resistance"})
        EXPECT_FALSE(sourceOf("diode", name).empty()) << name;
    EXPECT_TRUE(sourceOf("timer-bipolar", "colour").empty());
}

TEST(DeviceSheets, StayClearOfTheMarkThatEndsTheirText) {
    for (const auto& text : sheetTexts())
        EXPECT_EQ(text.json.find(")SHEET"), std::string_view::npos) << text.name;
}

} // namespace
} // namespace blinkwright::devices
