#include "app/value_text.h"

#include <gtest/gtest.h>

namespace {

using namespace blinkwright;
using circuit::Value;

const circuit::KeyInfo& key(circuit::PartKind kind, const char* name) {
    return *circuit::findKey(circuit::info(kind), name);
}
const circuit::KeyInfo& tolerance() {
    return key(circuit::PartKind::capacitor, "tolerance");
}
const circuit::KeyInfo& leakage() {
    return key(circuit::PartKind::capacitor, "leakage_resistance");
}
const circuit::KeyInfo& presses() {
    return key(circuit::PartKind::toggle, "presses");
}

TEST(ValueText, WhatIsWrittenReadsBackTheSame) {
    const std::pair<const circuit::KeyInfo*, Value> cases[] = {
        {&tolerance(), 0.2},
        {&tolerance(), circuit::Interval{-0.2, 0.8}},
        {&leakage(), 1e7},
        {&leakage(), circuit::Null{}},
        {&presses(), circuit::Intervals{{0.5, 1}, {2, 2.25}}},
        {&presses(), circuit::Intervals{}},
    };
    for (const auto& [info, value] : cases) {
        const std::string text = app::valueText(*info, value);
        const auto back = app::valueFromText(*info, text);
        ASSERT_TRUE(back) << text << ": " << back.fault().message();
        EXPECT_EQ(back.value(), value) << text;
    }
}

TEST(ValueText, ReadsWhatPeopleType) {
    EXPECT_EQ(app::valueFromText(tolerance(), " 5 % ").value(), Value(0.05));
    EXPECT_EQ(app::valueFromText(tolerance(), "-20 % to 80 %").value(), Value(circuit::Interval{-0.2, 0.8}));
    EXPECT_EQ(app::valueFromText(leakage(), "4M7").value(), Value(4.7e6));
    EXPECT_EQ(app::valueFromText(leakage(), "none").value(), Value(circuit::Null{}));
    EXPECT_EQ(app::valueFromText(presses(), "500ms to 1s; 2 to 3").value(),
              Value(circuit::Intervals{{0.5, 1}, {2, 3}}));
}

TEST(ValueText, RefusesWhatIsNoValue) {
    for (const char* text : {"", "many", "1 to", "to 2"})
        EXPECT_FALSE(app::valueFromText(tolerance(), text)) << text;
    EXPECT_EQ(app::valueFromText(presses(), "1").fault().text,
              "two values with \"to\" between them are needed");
    EXPECT_FALSE(app::valueFromText(key(circuit::PartKind::resistor, "resistance"), "none"));
}

} // namespace
