#include "core/io/circuit_file.h"

#include "tests/case_names.h"

#include <gtest/gtest.h>

namespace blinkwright::io {
namespace {

constexpr std::string_view sound = R"({
  "format": "blinkwright-circuit",
  "version": 1,
  "parts": [
    {"ref": "BT1", "kind": "supply", "voltage": 6},
    {"ref": "U1", "kind": "timer", "device": {"delay": 0}},
    {"ref": "R1", "kind": "resistor", "resistance": 33000, "tolerance": 0.05},
    {"ref": "C1", "kind": "capacitor", "capacitance": 1e-05, "polarised": true},
    {"ref": "S1", "kind": "switch", "presses": [[0.5, 1]]}
  ],
  "nets": [
    {"name": "supply", "pins": ["BT1:plus", "U1:8"]},
    {"name": "ground", "pins": ["BT1:minus", "U1:1", "C1:minus"]}
  ],
  "part_sets": {"A": {}, "B": {"R1": {"resistance": 47000}}},
  "drawing": {"R1": {"x": 120, "y": 40, "turn": 90}},
  "ties": [["R1.resistance"]],
  "reels": [["R1", "C1"]],
  "run": {"flashes": 6, "begin": "power-on"},
  "measurements": []
}
)";

struct Change {
    std::string_view from, to; ///< the first `from` in the sound file is replaced
    std::string_view fault;    ///< the whole message
};
void PrintTo(const Change& p, std::ostream* out) {
    *out << '"' << p.fault << '"';
}

class RefusesFile : public testing::TestWithParam<Change> {};

TEST_P(RefusesFile, AndNamesThePlace) {
    const auto& [from, to, fault] = GetParam();
    std::string text(sound);
    const auto at = text.find(from);
    ASSERT_NE(at, text.npos) << from;
    text.replace(at, from.size(), to);
    const auto circuit = readCircuit(text);
    ASSERT_FALSE(circuit) << to;
    EXPECT_EQ(circuit.fault().message(), fault);
}

const Change changes[] = {
    // broken text
    {"\"version\": 1,", "\"version\": 1",
     "line 4, column 3: \"parts\" cannot stand here; perhaps a comma or colon is missing before it"},
    {"\"turn\": 90}", "\"turn\": 90,}",
     "line 16, column 52: '}' cannot stand here; the comma before it is too much"},
    {"\"version\": 1", "\"version\": NaN", "line 3, column 14: \"NaN\" is no JSON value"},
    {"\"version\": 1", "\"version\": Infinity", "line 3, column 14: \"Infinity\" is no JSON value"},
    {"\"version\": 1", "\"version\": 'one'", "line 3, column 14: ''' cannot stand here"},
    {"\"version\": 1", "// note", "line 3, column 3: '/' cannot stand here; the comma before it is too much"},
    {"\"measurements\": []\n}", "\"measurements\": []",
     "line 21, column 1: the text ends before the JSON does"},
    {"\"measurements\": []\n}", "\"measurements\": []}}",
     "line 20, column 22: something follows after the end of the JSON"},
    {"\"ground\"", "\"gro\nund\"",
     "line 13, column 18: a text holds a line end or another control sign, or lacks its closing quote"},
    {"\"ground\"", "\"gro\\xund\"", "line 13, column 19: a text holds an escape that JSON does not know"},
    {"\"ground\"", "\"gro\\ud800und\"", "line 13, column 24: a text holds an escape that JSON does not know"},
    {"\"ground\"", "\"gr\xFFund\"", "line 13, column 17: the text is not UTF-8"},
    {"\"ground\"", "\"gr\xC0\x80und\"", "line 13, column 17: the text is not UTF-8"},
    {"\"ground\"", "\"gr\xED\xA0\x80und\"", "line 13, column 17: the text is not UTF-8"},
    // numbers that no double holds
    {"33000", "1e999", "parts[2].resistance: the number is too large (line 7, column 53)"},
    {"120", "-1e999", "drawing.R1.x: the number is too large (line 16, column 27)"},
    {"33000", "1e-999", "parts[2].resistance: must be greater than 0, got 0"},
    // keys given twice
    {"\"resistance\": 33000", "\"resistance\": 1, \"resistance\": 2", "parts[2].resistance: given twice"},
    {"\"version\": 1", "\"version\": 1, \"version\": 1", "version: given twice"},
    {"\"B\":", "\"A\":", "part_sets.A: given twice"},
    {"\"delay\": 0", "\"delay\": 0, \"delay\": 1", "parts[1].device.delay: given twice"},
    {"\"measurements\": []", "\"measurements\": [1, {\"a\": 1, \"a\": 2}]", "measurements[1].a: given twice"},
    // head
    {"\"format\": \"blinkwright-circuit\",", "", "format: missing"},
    {"blinkwright-circuit", "blinkwright-readings",
     "format: must be \"blinkwright-circuit\", got \"blinkwright-readings\""},
    {"\"blinkwright-circuit\"", "7", "format: must be a text, got 7"},
    {"\"version\": 1,", "", "version: missing"},
    {"\"version\": 1", "\"version\": 2", "version: this program reads version 1, the file has version 2"},
    {"\"version\": 1", "\"version\": \"1\"",
     "version: this program reads version 1, the file has version \"1\""},
    {"\"version\": 1", "\"version\": 1, \"title\": []", "title: must be a text, got a list"},
    // parts
    {"\"parts\"", "\"pieces\"", "parts: missing"},
    {"{\"ref\": \"BT1\", \"kind\": \"supply\", \"voltage\": 6}", "7", "parts[0]: must be an object, got 7"},
    {"\"ref\": \"R1\", ", "", "parts[2].ref: missing"},
    {"\"R1\"", "\"BT1\"", "parts[2].ref: \"BT1\" is in use already"},
    {"\"R1\"", "\"R:1\"",
     "parts[2].ref: must be letters, then digits, such as R1 (at most 32 characters), got \"R:1\""},
    {"\"kind\": \"resistor\", ", "", "parts[2].kind: missing"},
    {"\"resistor\"", "\"resister\"",
     "parts[2].kind: must be one of supply, timer, resistor, variable, capacitor, lamp, diode, switch, got "
     "\"resister\""},
    {"\"resistance\": 33000, ", "", "parts[2].resistance: missing: a resistor needs it"},
    {", \"voltage\": 6", "", "parts[0].voltage: missing: a supply needs it"},
    {"33000", "-5", "parts[2].resistance: must be greater than 0, got -5"},
    {"33000", "0", "parts[2].resistance: must be greater than 0, got 0"},
    {"33000", "\"33k\"", "parts[2].resistance: must be a number, got \"33k\""},
    {"33000", "null", "parts[2].resistance: must be a number, got null"},
    {"0.05", "[0.1]", "parts[2].tolerance: must be a list of two numbers, got a list"},
    {"0.05", "[-0.1, \"x\"]", "parts[2].tolerance[1]: must be a number, got \"x\""},
    {"0.05", "[-2, 0.1]", "parts[2].tolerance[0]: must be greater than -1 and at most 0, got -2"},
    {"true", "\"yes\"", "parts[3].polarised: must be true or false, got \"yes\""},
    {"{\"delay\": 0}", "{\"dealy\": 0}", "parts[1].device: the timer has no parameter \"dealy\""},
    {"{\"delay\": 0}", "{\"delay\": -1}", "parts[1].device.delay: must be at least 0, got -1"},
    {"{\"delay\": 0}", "{\"delay\": true}", "parts[1].device.delay: must be a number, got true"},
    {"{\"delay\": 0}", "[]", "parts[1].device: must be an object of parameter names and numbers, got a list"},
    {"\"device\"", "\"family\": \"tube\", \"device\"",
     "parts[1].family: must be one of bipolar, cmos, got \"tube\""},
    {"[[0.5, 1]]", "[[0.5, 1], [3, 2]]", "parts[4].presses[1]: must end after it begins, got 3 to 2"},
    {"[[0.5, 1]]", "[[0.5]]", "parts[4].presses[0]: must be a list of two numbers, got a list"},
    {"[[0.5, 1]]", "5", "parts[4].presses: must be a list of [from, to] in seconds, got 5"},
    // nets
    {"\"nets\"", "\"meshes\"", "nets: missing"},
    {"\"name\": \"ground\", ", "", "nets[1].name: missing"},
    {"\"ground\"", "\"supply\"", "nets[1].name: \"supply\" is the name of another net already"},
    {"\"ground\"", "\"\"", "nets[1].name: must not be empty"},
    {"\"C1:minus\"", "\"C1:plus\", \"C2:minus\"", "nets[1].pins[3]: there is no part \"C2\""},
    {"\"C1:minus\"", "\"C1:cathode\"",
     "nets[1].pins[2]: C1 has no pin \"cathode\"; a capacitor has plus, minus"},
    {"\"C1:minus\"", "\"C1\"", "nets[1].pins[2]: a pin is written REF:PIN, got \"C1\""},
    {"\"C1:minus\"", "\"U1:8\"", "nets[1].pins[2]: U1:8 is in the net \"supply\" already"},
    {"\"C1:minus\"", "\"U1:1\"", "nets[1].pins[2]: U1:1 is in this net already"},
    {"\"C1:minus\"", "3", "nets[1].pins[2]: must be a pin written REF:PIN, got 3"},
    // sets, drawing, ties, reels, run
    {"\"B\": {\"R1\"", "\"B\": {\"R9\"", "part_sets.B.R9: there is no part \"R9\""},
    {"47000", "-47", "part_sets.B.R1.resistance: must be greater than 0, got -47"},
    {"{\"resistance\": 47000}", "47000", "part_sets.B.R1: must be an object, got 47000"},
    {"\"drawing\": {\"R1\"", "\"drawing\": {\"R 9\"", "drawing.\"R 9\": there is no part \"R 9\""},
    {"\"turn\": 90", "\"turn\": 45", "drawing.R1.turn: must be 0, 90, 180 or 270, got 45"},
    {"\"y\": 40, ", "", "drawing.R1.y: missing"},
    {"\"turn\": 90", "\"mirror\": 1", "drawing.R1.mirror: must be true or false, got 1"},
    {"[[\"R1.resistance\"]]", "[[\"R1\"]]", "ties[0][0]: a value is written REF.KEY, got \"R1\""},
    {"[[\"R1.resistance\"]]", "[[\"R1.resistance\", \"R9.resistance\"]]",
     "ties[0][1]: there is no part \"R9\""},
    {"[[\"R1.resistance\"]]", "[[\"R1.ohms\"]]", "ties[0][0]: \"R1.ohms\" is no number that could be tied"},
    {"[[\"R1.resistance\"]]", "[[\"R1.resistance\", \"C1.capacitance\"]]",
     "ties[0][1]: \"C1.capacitance\" has another unit than the values before it"},
    {"[[\"R1.resistance\"]]", "[[]]", "ties[0]: must not be empty"},
    {"[[\"R1\", \"C1\"]]", "[[\"R1\", \"R1\"]]", "reels[0][1]: \"R1\" is on a reel already"},
    {"[[\"R1\", \"C1\"]]", "[[\"R1\"], [\"Q1\"]]", "reels[1][0]: there is no part \"Q1\""},
    {"[[\"R1\", \"C1\"]]", "[\"R1\"]", "reels[0]: must be a list, got \"R1\""},
    {"\"flashes\": 6", "\"flashes\": 0", "run.flashes: must be between 1 and 10000, got 0"},
    {"\"flashes\": 6", "\"flashes\": 20000", "run.flashes: must be between 1 and 10000, got 20000"},
    {"\"flashes\": 6", "\"flashes\": 2.5", "run.flashes: must be a whole number, got 2.5"},
    {"\"power-on\"", "\"later\"", "run.begin: must be \"power-on\" or \"settled\", got \"later\""},
    {"\"measurements\": []", "\"measurements\": {}", "measurements: must be a list, got an object"},
};

INSTANTIATE_TEST_SUITE_P(CircuitFile, RefusesFile, testing::ValuesIn(changes), [](const auto& row) {
    return tests::caseName(row.index, row.param.fault.substr(0, 40));
});

TEST(CircuitFile, TheFileThatTheFaultsAreMadeFromIsSound) {
    const auto circuit = readCircuit(sound);
    EXPECT_TRUE(circuit) << circuit.fault().message();
}

TEST(CircuitFile, RefusesWhatIsNoObject) {
    EXPECT_EQ(readCircuit("").fault().message(), "the file is empty");
    EXPECT_EQ(readCircuit(" \n\t").fault().message(), "the file is empty");
    EXPECT_EQ(readCircuit("\xEF\xBB\xBF").fault().message(), "the file is empty");
    EXPECT_EQ(readCircuit("[]").fault().message(), "a circuit file holds one JSON object, got a list");
    EXPECT_EQ(readCircuit("3").fault().message(), "a circuit file holds one JSON object, got 3");
    EXPECT_EQ(readCircuit("hello").fault().message(), "line 1, column 1: \"hello\" is no JSON value");
    EXPECT_FALSE(readCircuit(std::string_view("\0\0\0", 3)));
    EXPECT_FALSE(readCircuit("\xFF\xFE{\0}\0"));
}

TEST(CircuitFile, RefusesBottomlessNesting) {
    const std::string deep(1'000'000, '[');
    EXPECT_NE(readCircuit(deep).fault().message().find("nested deeper than 64 levels"), std::string::npos);
    EXPECT_FALSE(readCircuit("{\"x\": " + deep));
    std::string objects;
    for (int i = 0; i < 100'000; ++i) objects += "{\"a\":";
    EXPECT_FALSE(readCircuit(objects));
}

TEST(CircuitFile, RefusesMoreThanItsLimits) {
    std::string text(sound);
    text.insert(text.rfind('}'), std::string(maxCircuitBytes, ' '));
    EXPECT_EQ(readCircuit(text).fault().message(), "a circuit file of more than 8 MiB is not supported");

    std::string parts;
    for (int i = 0; i < 2000; ++i)
        parts += ", {\"ref\": \"D" + std::to_string(i) + "\", \"kind\": \"diode\"}";
    text = sound;
    text.insert(text.find("\n  ],"), parts);
    EXPECT_EQ(readCircuit(text).fault().message(), "parts: more than 2000 parts are not supported, got 2005");

    parts.clear();
    for (int i = 10; i < 1300; ++i)
        parts += ", {\"ref\": \"U" + std::to_string(i) + "\", \"kind\": \"timer\"}";
    text = sound;
    text.insert(text.find("\n  ],"), parts);
    EXPECT_NE(readCircuit(text).fault().message().find("more than 10000 pins"), std::string::npos);

    std::string values = "[0";
    for (int i = 0; i < 600'000; ++i) values += ",0";
    text = sound;
    text.insert(text.find("{\"delay\""), values + "], \"x\": ");
    EXPECT_NE(readCircuit(text).fault().message().find("more than 500000 values"), std::string::npos);
}

TEST(CircuitFile, ALongTextIsCutInTheMessage) {
    std::string text(sound);
    std::string kind;
    for (int i = 0; i < 1000; ++i) kind += "ä";
    text.replace(text.find("resistor"), 8, kind);
    const std::string message = readCircuit(text).fault().message();
    EXPECT_LT(message.size(), 250u);
    EXPECT_TRUE(message.ends_with("ä...\"")) << message;
}

} // namespace
} // namespace blinkwright::io
