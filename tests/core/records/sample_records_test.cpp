// The records in samples/ are invented: simulated runs of two boards whose parts are a little off their
// stated values, with noise, rounded to the steps of a converter. This writes them anew, and holds the files
// to it:
//
//   BLINKWRIGHT_WRITE_RECORDS=1 build/check/bin/core_tests --gtest_filter='SampleRecords.*'
#include "core/io/circuit_file.h"
#include "core/io/record_file.h"
#include "core/study/measured_readings.h"
#include "core/study/study.h"
#include "places.h"
#include "tests/core/records/made_records.h"
#include "tests/core/workbench.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace blinkwright::io {
namespace {

/// The timer's output and timing capacitor as an instrument sees them.
class Bench {
  public:
    Bench(const char* sample, std::initializer_list<const char*> asBuilt, circuit::Begin begin, int flashes)
        : m_draws(20, begin == circuit::Begin::powerOn) {
        Workbench bench;
        bench.circuit =
            readCircuit(readBytes(std::string(BLINKWRIGHT_SAMPLES "/") + sample, maxCircuitBytes).value())
                .value();
        for (const char* value : asBuilt) bench.set(value);
        m_study =
            study::study(bench.circuit, circuit::PartSet::A, {.flashes = flashes, .begin = begin}).value();
    }
    const study::TimerReading& readings() const { return m_study.readings.timers.front(); }
    /// Output and capacitor [V]; nothing before the supply comes.
    std::pair<double, double> at(double time_s) const {
        if (time_s < 0) return {0, 0};
        const engine::Moment moment = engine::momentOf(m_study.curves, time_s);
        return {moment.output_V, moment.capacitor_V};
    }
    double seen(double volts, double noise_V, double quantum_V) {
        return std::round((volts + noise_V * test::normal(m_draws, m_draw++)) / quantum_V) * quantum_V +
               0.0; // no negative zero
    }

  private:
    study::Study m_study;
    RandomDraws m_draws;
    std::uint64_t m_draw = 0;
};

std::string comma(double value, int decimals) {
    char text[40];
    std::snprintf(text, sizeof text, "%.*f", decimals, value);
    for (char& c : text)
        if (c == '.') c = ',';
    return text;
}

struct SampleRecord {
    std::string file, text;
    study::TimerReading truth;
};

/// The mole light from power-on, by an 8-bit recorder that writes decimal commas and a preamble.
SampleRecord moleLight() {
    Bench bench("mole-light.blinkwright", {"C1.capacitance=10.6u", "R2.resistance=67k"},
                circuit::Begin::powerOn, 14);
    constexpr double step = 0.005, on = 0.8013, quantum = 8.0 / 256;
    std::string text =
        "Model harbour, workshop\r\nBoard;mole light\r\n"
        "Note;invented data: a simulated run with noise\r\nRange;8 V\r\n\r\ntime [s];output [V]\r\n";
    for (int k = 0; k < 2400; ++k) {
        const double volts = bench.seen(bench.at(k * step - on).first, 0.02, quantum);
        text += comma(k * step, 3) + ";" + comma(volts, 3) + "\r\n";
    }
    return {"mole-light.csv", text, bench.readings()};
}

/// The buoy pair in its settled state on two channels, in whole millivolts and without a time column.
SampleRecord buoyPair() {
    Bench bench("buoy-pair.blinkwright", {"C1.capacitance=4.95u", "R1.resistance=10.2k"},
                circuit::Begin::settled, 14);
    constexpr double step = 0.004, from = 0.337;
    std::string text =
        "# Channel buoy pair: invented data, a simulated run with noise\n# sampling rate: 250 Hz\n"
        "output [mV],capacitor [mV]\n";
    for (int k = 0; k < 2500; ++k) {
        const auto [output, capacitor] = bench.at(from + k * step);
        const auto millivolts = [&](double volts) {
            return std::to_string(std::lround(1e3 * bench.seen(volts, 0.008, 10.0 / 4096)));
        };
        text += millivolts(output) + ",";
        text += millivolts(capacitor);
        text += '\n';
    }
    return {"buoy-pair.csv", text, bench.readings()};
}

class SampleRecords : public testing::TestWithParam<SampleRecord (*)()> {};

TEST_P(SampleRecords, AreWhatTheirBoardsGiveAndReadAsThat) {
    const SampleRecord made = GetParam()();
    const std::string path = std::string(BLINKWRIGHT_SAMPLES "/") + made.file;
    if (std::getenv("BLINKWRIGHT_WRITE_RECORDS")) std::ofstream(path, std::ios::binary) << made.text;

    // A last bit of the simulation may be another on another processor, and with it the step of a sample here
    // or there.
    std::istringstream wanted(made.text), found(readBytes(path, maxRecordBytes).value());
    std::string a, b;
    int lines = 0, different = 0;
    while (std::getline(wanted, a)) {
        ASSERT_TRUE(std::getline(found, b));
        ++lines;
        different += a != b;
    }
    EXPECT_FALSE(std::getline(found, b));
    EXPECT_LE(different, lines / 200);

    const auto record = importRecord(path);
    ASSERT_TRUE(record) << record.fault().message();
    const study::RecordFigures figures = study::figuresOf(record.value());
    const auto agrees = [](const std::optional<circuit::Measured>& m, double truth) {
        ASSERT_TRUE(m);
        EXPECT_LE(std::abs(m->value - truth), 3 * m->uncertainty) << m->value << " for " << truth;
    };
    agrees(figures.period_s, made.truth.settled->period_s());
    agrees(figures.high_s, made.truth.settled->high_s);
    agrees(figures.low_s, made.truth.settled->low_s);
    if (made.file == "mole-light.csv") agrees(figures.firstHigh_s, made.truth.firstHigh_s.value());
    EXPECT_EQ(record.value().fromPowerOn, made.file == "mole-light.csv");
    EXPECT_EQ(record.value().traces.size(), made.file == "mole-light.csv" ? 1U : 2U);
}
INSTANTIATE_TEST_SUITE_P(Harbour, SampleRecords, testing::Values(moleLight, buoyPair),
                         [](const auto& row) { return row.index == 0 ? "MoleLight" : "BuoyPair"; });

} // namespace
} // namespace blinkwright::io
