// Lab sheets of samples, and the programs that read what was written.
//
//   const LabSheet sheet = sheetOf(factsOf("mole-light"));
//   QByteArray text = toolOutput("pdftotext", {"-layout", path, "-"});
#pragma once

#include "app/circuit_loading.h"
#include "app/sheet/make_sheet.h"
#include "tests/app/support.h"

#include <QDir>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <cmath>
#include <memory>

namespace blinkwright::test {

inline circuit::Circuit sampleCircuit(const char* name) {
    return app::loadCircuit(sample(name).toStdString()).value();
}

inline study::LabFacts factsOf(const circuit::Circuit& circuit, study::LabFactsRequest request = {}) {
    request.boards = 400;
    request.run.flashes = circuit.run.flashes;
    request.run.begin = circuit.run.begin;
    auto facts = study::labFacts(circuit, request);
    if (!facts) throw std::logic_error(facts.fault().message());
    return std::move(facts).value();
}

/// A record from power-on of the astable by the textbook's exponentials, of a board whose parts are off by a
/// few per cent: what an instrument might have stored.
inline circuit::Record recordOf(double r1, double r2, double c, double supply, int cycles) {
    circuit::Record record;
    record.source = "pier-bench.csv";
    record.fromPowerOn = true;
    record.step_s = 2e-3;
    record.levels = circuit::Levels{supply - 1.4, 0.1};
    circuit::Trace output{circuit::TraceOf::output, {}}, capacitor{circuit::TraceOf::capacitor, {}};
    double v = 0, t = 0;
    bool high = true;
    record.firstRises = false; // high from the beginning
    while (static_cast<int>(record.switchings_s.size()) < 2 * cycles) {
        record.time_s.push_back(t);
        output.values_V.push_back(high ? record.levels->high_V : record.levels->low_V);
        capacitor.values_V.push_back(v);
        const double tau = (high ? r1 + r2 : r2) * c, far = high ? supply : 0;
        v = far + (v - far) * std::exp(-record.step_s / tau);
        t += record.step_s;
        if (high ? v >= supply * 2 / 3 : v <= supply / 3) {
            high = !high;
            record.switchings_s.push_back(t);
        }
    }
    record.traces = {output, capacitor};
    return record;
}

inline void measure(
    circuit::Circuit& circuit, std::string title,
    std::variant<circuit::Count, circuit::MeterReading, circuit::Record, circuit::OtherMeasurement> what) {
    circuit.measurements.push_back(std::make_shared<const circuit::Measurement>(
        circuit::Measurement{.title = std::move(title), .what = std::move(what)}));
}

/// The buoy pair as somebody might have measured it.
inline circuit::Circuit measuredBuoys() {
    circuit::Circuit circuit = sampleCircuit("buoy-pair");
    measure(circuit, "By stopwatch", circuit::Count{20, {17.3, 0.2}});
    measure(circuit, "Supply under load",
            circuit::MeterReading{
                circuit::MeterQuantity::supplyVoltage, circuit.findRef("BT1")->id, {}, {8.93, 0.02}});
    measure(circuit, "Red lamp",
            circuit::MeterReading{
                circuit::MeterQuantity::lampCurrent, circuit.findRef("D1")->id, {}, {7.1e-3, 0.2e-3}});
    measure(circuit, "Bench record", recordOf(10.2e3, 121.5e3, 4.9e-6, 8.9, 5));
    return circuit;
}

inline bool haveTool(const char* tool) {
    return !QStandardPaths::findExecutable(QLatin1String(tool)).isEmpty();
}

/// What a program prints; a failure of the test where it is missing or does not succeed.
inline QByteArray toolOutput(const char* tool, const QStringList& arguments) {
    QProcess process;
    process.start(QLatin1String(tool), arguments);
    const bool ended = process.waitForFinished(120000);
    EXPECT_TRUE(ended && process.exitCode() == 0)
        << tool << ": " << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
}

/// Whether all words stand in a text in this order.
inline testing::AssertionResult inOrder(const QString& text, const QStringList& words) {
    qsizetype at = 0;
    for (const QString& word : words) {
        at = text.indexOf(word, at);
        if (at < 0)
            return testing::AssertionFailure()
                   << "'" << word.toStdString() << "' is not there, or not in its place, in:\n"
                   << text.toStdString();
        at += word.size();
    }
    return testing::AssertionSuccess();
}

/// Spaces of all kinds as one plain space.
inline QString plainSpaces(QString text) {
    return text.replace(QChar(0x2009), u' ').simplified();
}

} // namespace blinkwright::test
