#include "core/io/reports.h"

#include "core/io/circuit_file.h"
#include "core/io/study_reports.h"
#include "core/study/study.h"
#include "places.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <sstream>

namespace blinkwright::io {
namespace {

using Json = nlohmann::ordered_json;

study::Readings example() {
    study::Readings readings;
    readings.verdict = study::Verdict::blinks;
    study::TimerReading timer;
    timer.ref = "U1";
    timer.switchings_s = {0.879, 1.212};
    timer.firstHigh_s = 0.879;
    timer.settled = study::Phase{0.555, 0.333};
    readings.timers.push_back(timer);
    study::LampReading lamp;
    lamp.ref = "D1";
    lamp.peak_A = 0.1 + 0.2; // 0.30000000000000004
    lamp.reversePeak_V = 0;
    readings.lamps.push_back(lamp);
    readings.run.accuracy = 1e-6;
    readings.run.steps = 812;
    readings.run.reason = engine::StopReason::flashesReached;
    return readings;
}

std::vector<std::string> keysOf(const Json& json) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : json.items()) keys.push_back(key);
    return keys;
}

TEST(ReadingsJson, HasTheAgreedKeysInOrder) {
    auto readings = example();
    readings.supply.emplace();
    readings.parts.emplace_back();
    readings.timers[0].textbook.emplace();
    readings.timers[0].textbook->phase = {0.5, 0.25};
    const Json json = Json::parse(readingsJson(readings));
    EXPECT_EQ(keysOf(json), (std::vector<std::string>{"format", "version", "verdict", "timers", "lamps",
                                                      "supply", "eye", "parts", "run"}));
    EXPECT_EQ(json["format"], "blinkwright-readings");
    EXPECT_EQ(json["version"], 1);
    EXPECT_EQ(json["verdict"], "blinks");
    const auto& timer = json["timers"][0];
    EXPECT_EQ(keysOf(timer),
              (std::vector<std::string>{"ref", "switchings", "first_high", "settled", "textbook"}));
    EXPECT_EQ(keysOf(timer["settled"]), (std::vector<std::string>{"period", "rate", "high", "low", "duty"}));
    EXPECT_EQ(timer["settled"]["high"], 0.555);
    EXPECT_EQ(timer["textbook"]["period"], 0.75);
    EXPECT_EQ(keysOf(json["lamps"][0]),
              (std::vector<std::string>{"ref", "peak", "mean", "rms", "charge_per_period", "lit_time",
                                        "reverse_peak"}));
    EXPECT_EQ(keysOf(json["supply"]),
              (std::vector<std::string>{"mean_current", "peak_current", "energy_per_period"}));
    EXPECT_EQ(keysOf(json["parts"][0]),
              (std::vector<std::string>{"ref", "mean_power", "peak_current", "peak_voltage"}));
    EXPECT_EQ(json["run"]["steps"], 812);
    EXPECT_EQ(json["run"]["reason"], "flashes reached");
}

TEST(ReadingsJson, WritesNullForWhatDoesNotExistAndZeroForZero) {
    auto readings = example();
    readings.timers[0].settled.reset();
    readings.timers[0].firstHigh_s.reset();
    readings.lamps[0].mean_A = std::numeric_limits<double>::quiet_NaN();
    const Json json = Json::parse(readingsJson(readings));
    EXPECT_TRUE(json["timers"][0]["settled"].is_null());
    EXPECT_TRUE(json["timers"][0]["textbook"].is_null());
    EXPECT_TRUE(json["timers"][0]["first_high"].is_null());
    EXPECT_TRUE(json["supply"].is_null());
    EXPECT_TRUE(json["lamps"][0]["mean"].is_null());
    EXPECT_EQ(json["lamps"][0]["reverse_peak"], 0);
}

TEST(ReadingsJson, WritesTheShortestNumberThatReadsBackTheSame) {
    const std::string text = readingsJson(example());
    EXPECT_NE(text.find("\"switchings\": [0.879, 1.212]"), std::string::npos) << text;
    EXPECT_NE(text.find("\"accuracy\": 1e-06"), std::string::npos) << text;
    EXPECT_EQ(Json::parse(text)["lamps"][0]["peak"].get<double>(), 0.1 + 0.2);
}

TEST(ReadingsJson, GivesReasonsWhereItDoesNotBlinkAndSaysWhereFiguresAreOverTheRun) {
    auto readings = example();
    readings.overRun = true;
    EXPECT_EQ(Json::parse(readingsJson(readings))["over"], "run");
    readings.overRun = false;
    readings.verdict = study::Verdict::settlesHigh;
    readings.reasons = {"Join \"pin 7\"."};
    readings.places = {"U1:7", "R2"};
    const Json json = Json::parse(readingsJson(readings));
    EXPECT_FALSE(json.contains("over"));
    EXPECT_EQ(json["verdict"], "settles high");
    EXPECT_EQ(json["reasons"][0], "Join \"pin 7\".");
    EXPECT_EQ(json["places"], (Json{"U1:7", "R2"}));
}

TEST(FindingsJson, HasTheAgreedKeysInOrder) {
    study::Finding finding{.kind = "reset-open",
                           .severity = study::Severity::doubt,
                           .places = {"U1:4"},
                           .text = "T.",
                           .remedy = "R."};
    finding.limit = 0.7;
    const Json json = Json::parse(findingsJson({finding}));
    EXPECT_EQ(keysOf(json), (std::vector<std::string>{"format", "version", "findings"}));
    const auto& one = json["findings"][0];
    EXPECT_EQ(keysOf(one), (std::vector<std::string>{"kind", "severity", "places", "text", "remedy", "number",
                                                     "limit", "source"}));
    EXPECT_EQ(one["severity"], "doubt");
    EXPECT_EQ(one["places"], Json({"U1:4"}));
    EXPECT_TRUE(one["number"].is_null());
    EXPECT_EQ(one["limit"], 0.7);
    EXPECT_EQ(Json::parse(findingsJson({}))["findings"], Json::array());
}

TEST(CurvesCsv, FollowsRfc4180) {
    engine::Curves curves;
    curves.time_s = {0, 0.1, 0.1};
    curves.output_V = {4.5, 4.25, 0};
    curves.capacitor_V = {0, 2, 2};
    curves.lamps.push_back({{}, "D\"1", "red", {0.01, 1.0 / 3, 0}});
    EXPECT_EQ(curvesCsv(curves), "time [s],output [V],capacitor [V],\"D\"\"1 current [A]\"\r\n"
                                 "0,4.5,0,0.01\r\n"
                                 "0.1,4.25,2,0.333333333\r\n"
                                 "0.1,0,2,0\r\n");
}

TEST(CurvesCsv, PutsTwoRunsSideBySideEachWithItsTimes) {
    engine::Curves a, b;
    a.time_s = {0, 0.1, 0.2};
    a.output_V = {4.5, 4.25, 0};
    a.capacitor_V = {0, 2, 2};
    b.time_s = {0, 0.3};
    b.output_V = {5, 6};
    b.capacitor_V = {1, 2};
    b.lamps.push_back({{}, "D1", "red", {0.01, 0.02}});
    EXPECT_EQ(curvesCsv(a, b, "Set B"), "time [s],output [V],capacitor [V],Set B time [s],Set B output [V],"
                                        "Set B capacitor [V],Set B D1 current [A]\r\n"
                                        "0,4.5,0,0,5,1,0.01\r\n"
                                        "0.1,4.25,2,0.3,6,2,0.02\r\n"
                                        "0.2,0,2,,,,\r\n");
}

TEST(CurvesCsv, KeepsEveryDigitOfATime) {
    engine::Curves curves;
    curves.time_s = {1, 1 + 1e-15};
    curves.output_V = curves.capacitor_V = {0, 0};
    std::istringstream lines(curvesCsv(curves));
    std::string line, second;
    std::getline(lines, line);
    std::getline(lines, line);
    std::getline(lines, second);
    EXPECT_NE(line, second);
}

TEST(Reports, OfTheMoleLightHoldTogether) {
    const auto text = readBytes(BLINKWRIGHT_SAMPLES "/mole-light.blinkwright", maxCircuitBytes);
    ASSERT_TRUE(text);
    const auto circuit = readCircuit(text.value());
    ASSERT_TRUE(circuit) << circuit.fault().message();
    const auto study = study::study(circuit.value(), circuit::PartSet::A, {});
    ASSERT_TRUE(study);
    const Json json = Json::parse(readingsJson(study.value().readings));
    EXPECT_EQ(json["verdict"], "blinks");
    const auto& timer = json["timers"][0];
    ASSERT_EQ(timer["switchings"].size(), 12u);
    EXPECT_EQ(timer["first_high"], timer["switchings"][0]);
    EXPECT_NEAR(timer["textbook"]["period"], std::log(2) * (10e3 + 2 * 68e3) * 1e-5, 1e-9);
    EXPECT_NEAR(timer["settled"]["period"], timer["textbook"]["period"], 0.1);
    EXPECT_EQ(json["lamps"].size(), 1u);
    EXPECT_EQ(json["parts"].size(), 9u);
    const std::string csv = curvesCsv(study.value().curves);
    EXPECT_EQ(csv.substr(0, csv.find("\r\n")), "time [s],output [V],capacitor [V],D1 current [A]");
    EXPECT_EQ(static_cast<std::size_t>(std::count(csv.begin(), csv.end(), '\n')),
              study.value().curves.time_s.size() + 1);
    EXPECT_EQ(Json::parse(findingsJson(study.value().findings))["findings"].size(),
              study.value().findings.size());
    EXPECT_TRUE(study.value().findings.empty()) << findingsJson(study.value().findings);
}

TEST(ReadingsJson, MeasurementsInUseAreAddedAndNothingElseMoves) {
    circuit::Circuit c;
    (void)c.addPart(circuit::PartKind::resistor, "R1", {{"resistance", 10e3}});
    const std::string plain = readingsJson(example());
    EXPECT_EQ(readingsJson(example(), {}, &c), plain);
    const auto add = [&](auto what, bool used) {
        c.measurements.push_back(std::make_shared<const circuit::Measurement>(
            circuit::Measurement{"", used, std::move(what), {}}));
    };
    add(circuit::Count{20, {16, 0.2}}, false);
    EXPECT_EQ(readingsJson(example(), {}, &c), plain);
    add(circuit::Count{20, {16, 0.2}}, true);
    add(
        circuit::MeterReading{
            circuit::MeterQuantity::partValue, c.findRef("R1")->id, "resistance", {9.9e3, 50}},
        true);
    Json json = Json::parse(readingsJson(example(), {}, &c));
    const Json measured = json["measured"];
    EXPECT_DOUBLE_EQ(measured["period"]["value"], 0.8);
    EXPECT_DOUBLE_EQ(measured["period"]["uncertainty"], 0.01);
    EXPECT_TRUE(measured["duty"].is_null());
    EXPECT_EQ(measured["parts"][0]["of"], "R1.resistance");
    EXPECT_EQ(measured["parts"][0]["value"], 9900);
    json.erase("measured");
    EXPECT_EQ(json, Json::parse(plain));
}

TEST(WhyJson, WhatWasMeasuredAndWhatRemainsComeLast) {
    study::Why why;
    why.textbook = study::Phase{0.5, 0.4};
    why.simulated = study::Phase{0.6, 0.4};
    EXPECT_FALSE(Json::parse(whyJson(why)).contains("measured"));
    study::MeasuredReadings m;
    m.period_s = circuit::Measured{1.25, 0.01};
    const Json json = Json::parse(whyJson(why, study::whyMeasured(why, m)));
    EXPECT_DOUBLE_EQ(json["measured"]["period"]["value"], 1.25);
    EXPECT_DOUBLE_EQ(json["unexplained"]["period_change"]["value"], 0.25);
    EXPECT_DOUBLE_EQ(json["unexplained"]["period_change"]["uncertainty"], 0.01);
    EXPECT_TRUE(json["measured"]["duty"].is_null());
    EXPECT_DOUBLE_EQ(json["simulated"]["period"], 1.0);
}

} // namespace
} // namespace blinkwright::io
