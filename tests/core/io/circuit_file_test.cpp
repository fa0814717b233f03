#include "core/io/circuit_file.h"

#include "core/io/json_reading.h"
#include "places.h"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <random>

namespace blinkwright::io {
namespace {

using namespace circuit;

std::string sample() {
    return readBytes(BLINKWRIGHT_SAMPLES "/mole-light.blinkwright", maxCircuitBytes).value();
}

// A file in the form that the writer gives, with an unknown key wherever one may stand.
constexpr std::string_view everything = R"({
  "format": "blinkwright-circuit",
  "version": 1,
  "title": "Slipway \"crossing\"\nsignal",
  "notes": "Grüße vom Kai – ½ µF",
  "parts": [
    {"ref": "BT1", "kind": "supply", "voltage": 9, "resistance": 1.7, "capacity": 1980, "end_voltage": null},
    {"ref": "U1", "kind": "timer", "family": "cmos", "device": {"delay": 0, "idle_offset": -4, "threshold_current": 3e-08}},
    {"ref": "R1", "kind": "resistor", "resistance": 33000, "tolerance": 0.05, "rated_power": 0.25, "shelf": {"row":3,"bins":["a","b"]}},
    {"ref": "RV1", "kind": "variable", "resistance": 1e+05, "setting": 0.25},
    {"ref": "C1", "kind": "capacitor", "capacitance": 1e-05, "tolerance": [-0.2, 0.8], "esr": 0.1, "leakage_resistance": null, "rated_voltage": 16, "polarised": true, "initial_voltage": -0.0},
    {"ref": "D1", "kind": "lamp", "colour": "pure-green", "pulse_current": 0.1, "luminous_intensity": 0.15},
    {"ref": "D2", "kind": "diode", "forward_voltage": 0.7},
    {"ref": "S1", "kind": "switch", "closed": false, "presses": [[0.5, 1], [2, 2.5]]}
  ],
  "nets": [
    {"name": "supply", "pins": ["BT1:plus", "U1:8", "R1:1"]},
    {"name": "timing", "pins": ["U1:2", "U1:6", "RV1:wiper"], "wire": "red"},
    {"name": "spare", "pins": []}
  ],
  "part_sets": {"A": {"R1": {"tolerance": 0.01}}, "B": {"U1": {"device": {"delay": 1e-06}}, "R1": {"resistance": 47000, "later": [1.50,12345678901234567890123]}}, "C": {"R1":{}}},
  "drawing": {
    "R1": {"x": 120, "y": 40.5, "turn": 90, "mirror": true, "layer": 2},
    "C1": {"x": -3, "y": 0, "turn": 0}
  },
  "ties": [
    ["R1.resistance", "RV1.resistance"]
  ],
  "reels": [
    ["R1", "C1"]
  ],
  "run": {"flashes": 12, "begin": "settled", "speed": 2},
  "measurements": [
    {"title":"first","values":[1e-3,2.0]}
  ],
  "from_the_future": {"deep":[[[1]]],"number":1e5,"null":null,"yes":true,"text":"\"\\\u0001é"},
  "also": 0.30000000000000004
}
)";

TEST(CircuitFile, ComesBackByteForByteWithEveryKindOfValueAndUnknownKeys) {
    const auto circuit = readCircuit(everything);
    ASSERT_TRUE(circuit) << circuit.fault().message();
    EXPECT_EQ(writeCircuit(circuit.value()), everything);
}

TEST(CircuitFile, ReadsWhatItSays) {
    const Circuit c = readCircuit(everything).value();
    EXPECT_EQ(c.title, "Slipway \"crossing\"\nsignal");
    EXPECT_EQ(c.parts().size(), 8u);
    const Part& c1 = *c.findRef("C1");
    EXPECT_EQ(c1.kind, PartKind::capacitor);
    EXPECT_EQ(c1.values.at("tolerance"), Value(Interval{-0.2, 0.8}));
    EXPECT_EQ(c1.values.at("leakage_resistance"), Value(Null{}));
    EXPECT_EQ(c1.values.at("polarised"), Value(true));
    EXPECT_TRUE(std::signbit(std::get<double>(c1.values.at("initial_voltage"))));
    EXPECT_EQ(c.findRef("S1")->values.at("presses"), Value(Intervals{{0.5, 1}, {2, 2.5}}));
    EXPECT_EQ(c.findRef("R1")->extras, (Extras{{"shelf", R"({"row":3,"bins":["a","b"]})"}}));
    EXPECT_EQ(c.netOf(c.pinNamed("RV1:wiper").value()), c.findNet("timing")->id);
    EXPECT_EQ(c.value(PartSet::A, c.findRef("R1")->id, "tolerance"), Value(0.01));
    EXPECT_EQ(c.value(PartSet::B, c.findRef("R1")->id, "resistance"), Value(47000.0));
    EXPECT_EQ(c.value(PartSet::B, c.findRef("U1")->id, "device.delay"), Value(1e-6));
    EXPECT_EQ(c.value(PartSet::B, c.findRef("U1")->id, "device.idle_offset"), Value(-4.0));
    EXPECT_EQ(*c.placement(c1.id), (Placement{-3, 0, 0, false, {}}));
    EXPECT_EQ(c.run.flashes, 12);
    EXPECT_EQ(c.run.begin, Begin::settled);
    EXPECT_EQ(c.ties.size(), 1u);
    EXPECT_EQ(c.reels[0][1], c1.id);
    ASSERT_EQ(c.measurements.size(), 1u);
    EXPECT_EQ(std::get<OtherMeasurement>(c.measurements[0]->what).json,
              R"({"title":"first","values":[1e-3,2.0]})");
}

TEST(CircuitFile, TheSampleReadsAndItsTextIsStable) {
    const auto first = readCircuit(sample());
    ASSERT_TRUE(first) << first.fault().message();
    EXPECT_EQ(first.value().title, "Harbour mole light");
    EXPECT_EQ(first.value().parts().size(), 9u);
    const std::string text = writeCircuit(first.value());
    const auto second = readCircuit(text);
    ASSERT_TRUE(second) << second.fault().message();
    EXPECT_TRUE(first.value().sameAs(second.value()));
    EXPECT_EQ(writeCircuit(second.value()), text);
}

TEST(CircuitFile, WhatIsNotStatedIsNotWritten) {
    Circuit c;
    ASSERT_TRUE(c.addPart(PartKind::supply, "BT1", {{"voltage", 6.0}}));
    ASSERT_TRUE(c.addPart(PartKind::timer, "U1"));
    const std::string text = writeCircuit(c);
    ASSERT_TRUE(readCircuit(text));
    for (std::string_view key : {"drawing", "ties", "reels", "measurements"})
        EXPECT_EQ(text.find("\"" + std::string(key) + "\""), text.npos) << key;
    EXPECT_EQ(text.back(), '\n');
}

TEST(CircuitFile, AByteOrderMarkAndForeignLineEndsAreTolerated) {
    std::string text = "\xEF\xBB\xBF" + sample();
    for (auto at = text.find('\n'); at != text.npos; at = text.find('\n', at + 2))
        text.replace(at, 1, "\r\n");
    const auto circuit = readCircuit(text);
    ASSERT_TRUE(circuit) << circuit.fault().message();
    EXPECT_TRUE(circuit.value().sameAs(readCircuit(sample()).value()));
}

TEST(CircuitFile, NumbersMeanTheSameUnderALocaleWithAnotherDecimalMark) {
    const char* found = nullptr;
    for (const char* name : {"de_DE.UTF-8", "fr_FR.UTF-8", "nl_NL.UTF-8", "de_DE"})
        if (!found) found = std::setlocale(LC_ALL, name);
    const auto circuit = readCircuit(everything);
    const std::string text = circuit ? writeCircuit(circuit.value()) : circuit.fault().message();
    std::setlocale(LC_ALL, "C");
    EXPECT_EQ(text, everything);
    if (!found) GTEST_SKIP() << "no locale with a decimal comma on this machine";
}

TEST(CircuitFile, EveryNumberReadsBackToTheSameDouble) {
    std::mt19937_64 random(5);
    Circuit c = readCircuit(sample()).value();
    const PartId r1 = c.findRef("R1")->id;
    std::uniform_real_distribution<double> exponent(-29, 29);
    for (int i = 0; i < 500; ++i) {
        const double value = std::pow(10, exponent(random));
        ASSERT_TRUE(c.setOverride(PartSet::B, r1, "resistance", value));
        EXPECT_EQ(readCircuit(writeCircuit(c)).value().value(PartSet::B, r1, "resistance"), Value(value));
    }
}

TEST(CircuitFile, ADamagedFileIsReadOrRefusedButNeverCrashes) {
    std::mt19937 random(20240612);
    const std::string whole(everything);
    int refused = 0;
    for (int i = 0; i < 4000; ++i) {
        std::string text = i % 2 ? whole : sample();
        for (auto n = 1 + random() % 3; n > 0; --n) {
            const auto at = random() % text.size();
            switch (random() % 4) {
            case 0:
                text.erase(at, 1 + random() % 5);
                break;
            case 1:
                text[at] = static_cast<char>(text[at] ^ (1 << random() % 8));
                break;
            case 2:
                text.insert(at, 1, "{}[]\",:-0e.\\"[random() % 12]);
                break;
            default:
                text.insert(at, text.substr(random() % text.size(), random() % 40));
                break;
            }
        }
        const auto circuit = readCircuit(text);
        if (!circuit) {
            ++refused;
            EXPECT_FALSE(circuit.fault().text.empty());
            EXPECT_EQ(circuit.fault().message().find("json.exception"), std::string::npos);
            continue;
        }
        const std::string again = writeCircuit(circuit.value());
        const auto twice = readCircuit(again);
        ASSERT_TRUE(twice) << twice.fault().message() << "\n" << again;
        EXPECT_TRUE(twice.value().sameAs(circuit.value()));
    }
    EXPECT_GT(refused, 2000);
}

TEST(CircuitFile, EveryTruncationIsRefused) {
    const std::string whole = sample();
    for (std::size_t n = 0; n + 2 < whole.size(); ++n) {
        const auto circuit = readCircuit(std::string_view(whole).substr(0, n));
        ASSERT_FALSE(circuit) << n;
    }
}

TEST(CircuitFile, LargeUnknownListsAreKeptWithoutBeingLookedInto) {
    std::string list = "[0";
    for (int i = 1; i < 700'000; ++i) list += ",1";
    list += "]";
    std::string text = sample();
    text.insert(text.rfind('}'), ", \"log\": " + list + "\n");
    const auto circuit = readCircuit(text);
    ASSERT_TRUE(circuit) << circuit.fault().message();
    EXPECT_EQ(circuit.value().extras, (Extras{{"log", list}}));
}

TEST(ReadBytes, SaysWhyAFileCannotBeRead) {
    namespace fs = std::filesystem;
    const fs::path folder = fs::path(testing::TempDir());
    EXPECT_EQ(readBytes((folder / "no such.blinkwright").string(), 10).fault().text, "there is no such file");
    EXPECT_EQ(readBytes(folder.string(), 10).fault().text, "this is a folder, not a file");

    const fs::path file = folder / "blinkwright-bytes-test";
    std::ofstream(file, std::ios::binary) << std::string(3 << 20, 'x');
    EXPECT_EQ(readBytes(file.string(), 3 << 20).value().size(), std::size_t{3} << 20);
    EXPECT_EQ(readBytes(file.string(), (3 << 20) - 1).fault().text,
              "larger than 2 MiB, which is not supported");
    EXPECT_EQ(readBytes(file.string(), 2 << 20).fault().place, file.string());
    fs::remove(file);
}

} // namespace
} // namespace blinkwright::io
