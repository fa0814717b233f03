// Measurements in circuit files: what is written reads back, faults name their place, edits go both ways.
#include "core/circuit/edit.h"
#include "core/io/circuit_file.h"

#include <gtest/gtest.h>

namespace blinkwright::io {
namespace {

using namespace circuit;

std::string fileWith(const std::string& measurements) {
    return R"({"format": "blinkwright-circuit", "version": 1,
      "parts": [{"ref": "BT1", "kind": "supply", "voltage": 6}, {"ref": "U1", "kind": "timer", "family": "bipolar"},
                {"ref": "R1", "kind": "resistor", "resistance": 33000}],
      "nets": [], "measurements": [)" +
           measurements + "]}";
}

constexpr const char* count = R"({"kind": "count", "title": "By eye", "flashes": 20,
  "time": {"value": 17.8, "uncertainty": 0.2}, "weather": "dry"})";
constexpr const char* meter =
    R"({"kind": "meter", "used": false, "quantity": "part value", "of": "R1.resistance",
  "value": 32810, "uncertainty": 95})";
constexpr const char* recordText =
    R"({"kind": "record", "source": "mole.csv", "begin": "power-on", "step": 0.001,
  "levels": {"high": 4.4, "low": 0.02}, "first": "fall", "switchings": [0.9, 1.2, 1.8],
  "time": [0, 0.9, 0.901, 1.2], "traces": [{"of": "output", "values": [4.4, 4.4, 0, 0]}]})";

Circuit read(const std::string& text) {
    auto circuit = readCircuit(text);
    EXPECT_TRUE(circuit) << circuit.fault().message();
    return circuit ? std::move(circuit).value() : Circuit();
}

TEST(MeasurementFile, EachKindReadsAndComesBackAsItWas) {
    const Circuit c = read(fileWith(std::string(count) + "," + meter + "," + recordText));
    ASSERT_EQ(c.measurements.size(), 3u);
    EXPECT_EQ(c.measurements[0]->title, "By eye");
    EXPECT_EQ(c.measurements[0]->extras, (Extras{{"weather", "\"dry\""}}));
    EXPECT_EQ(std::get<Count>(c.measurements[0]->what), (Count{20, {17.8, 0.2}}));
    const auto& reading = std::get<MeterReading>(c.measurements[1]->what);
    EXPECT_FALSE(c.measurements[1]->used);
    EXPECT_EQ(reading.part, c.findRef("R1")->id);
    EXPECT_EQ(reading.key, "resistance");
    EXPECT_EQ(reading.value, (Measured{32810, 95}));
    const auto& kept = std::get<Record>(c.measurements[2]->what);
    EXPECT_TRUE(kept.fromPowerOn);
    EXPECT_FALSE(kept.firstRises);
    EXPECT_EQ(kept.switchings_s, (std::vector{0.9, 1.2, 1.8}));
    EXPECT_EQ(kept.traces.at(0).values_V.size(), 4u);
    const std::string text = writeCircuit(c);
    EXPECT_TRUE(read(text).sameAs(c));
    EXPECT_EQ(writeCircuit(read(text)), text);
}

TEST(MeasurementFile, AFaultNamesItsPlace) {
    const std::pair<std::string, std::string> faults[] = {
        {R"({"kind": "count", "flashes": 2.5, "time": {"value": 1}})",
         "measurements[0].flashes: must be a whole number"},
        {R"({"kind": "count", "flashes": 0, "time": {"value": 1}})",
         "measurements[0].flashes: must be 1 to 1000000, got 0"},
        {R"({"kind": "count", "flashes": 2, "time": {"value": -1}})",
         "measurements[0].time.value: must be a number greater than 0"},
        {R"({"kind": "meter", "quantity": "output high", "of": "R1", "value": 4})",
         "measurements[0].of: must be a timer, got R1"},
        {R"({"kind": "meter", "quantity": "part value", "of": "R1.resistance", "value": -4})",
         "measurements[0].value: must be greater than 0, got -4"},
        {R"({"kind": "meter", "quantity": "part value", "of": "R7.resistance", "value": 4})",
         "measurements[0].of: there is no such part: \"R7.resistance\""},
        {R"({"kind": "record", "step": 1, "switchings": [2, 1], "time": [], "traces": []})",
         "measurements[0].switchings[1]: must be a number not below the one before"},
        {R"({"kind": "record", "step": 1, "switchings": [], "time": [0, 1], "traces": [{"of": "output", "values": [1]}]})",
         "measurements[0].traces[0].values: must hold one value for each of the times"},
    };
    for (const auto& [json, message] : faults) {
        const auto circuit = readCircuit(fileWith(json));
        ASSERT_FALSE(circuit) << json;
        EXPECT_EQ(circuit.fault().message(), message);
    }
}

TEST(MeasurementFile, ARenamedPartKeepsItsReadingAndARemovedOneTakesItAlongAndBack) {
    Circuit c = read(fileWith(std::string(count) + "," + meter));
    const Circuit before = c;
    const PartId r1 = c.findRef("R1")->id;
    ASSERT_TRUE(apply(c, {edits::RenamePart{r1, "R9"}}));
    EXPECT_NE(writeCircuit(c).find("R9.resistance"), std::string::npos);
    auto back = apply(c, {edits::RemovePart{r1}});
    ASSERT_TRUE(back);
    EXPECT_EQ(c.measurements.size(), 1u);
    ASSERT_TRUE(apply(c, back.value()));
    ASSERT_TRUE(apply(c, {edits::RenamePart{r1, "R1"}}));
    EXPECT_TRUE(c.sameAs(before));
}

TEST(MeasurementFile, AListThatIsRefusedLeavesTheOldOne) {
    Circuit c = read(fileWith(count));
    Measurements wanted = c.measurements;
    wanted.push_back(std::make_shared<const Measurement>(Measurement{.what = Count{-3, {1, 0}}}));
    const auto refused = apply(c, {edits::SetMeasurements{wanted}});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.fault().place, "measurements[1].flashes");
    EXPECT_EQ(c.measurements.size(), 1u);
    wanted.pop_back();
    wanted.push_back(wanted.front());
    const auto back = apply(c, {edits::SetMeasurements{wanted}});
    ASSERT_TRUE(back);
    EXPECT_EQ(c.measurements.size(), 2u);
    ASSERT_TRUE(apply(c, back.value()));
    EXPECT_EQ(c.measurements.size(), 1u);
}

} // namespace
} // namespace blinkwright::io
