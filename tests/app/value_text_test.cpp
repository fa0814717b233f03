// Values as they are typed, in the language of the window.
#include "app/value_text.h"

#include "app/language.h"

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

/// While it lives, the window speaks German.
struct Speaking {
    Speaking() { app::speak(QStringLiteral("de")); }
    ~Speaking() { app::speak(QStringLiteral("en")); }
};

void expectTheSameBack() {
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

TEST(ValueText, WhatIsWrittenReadsBackTheSame) {
    expectTheSameBack();
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
    EXPECT_EQ(app::valueFromText(presses(), "1").fault().text, "two values as in \"1 to 2\" are needed");
    EXPECT_FALSE(app::valueFromText(key(circuit::PartKind::resistor, "resistance"), "none"));
}

TEST(ValueText, InGermanIsSaidInGermanWithADecimalComma) {
    const Speaking german;
    const auto said = [](const circuit::KeyInfo& key, const Value& value) {
        return QString::fromStdString(app::valueText(key, value)).replace(QChar(QChar::Nbsp), u' ');
    };
    EXPECT_EQ(said(leakage(), circuit::Null{}), "keine");
    EXPECT_EQ(said(leakage(), 4.7e6), QStringLiteral("4,7 M\u03a9"));
    EXPECT_EQ(said(presses(), circuit::Intervals{{0.5, 1.25}, {2, 3}}), "500 ms bis 1,25 s; 2 s bis 3 s");
    EXPECT_EQ(said(presses(), circuit::Intervals{}), "keine");
    EXPECT_EQ(said(tolerance(), circuit::Interval{-0.125, 0.8}), "-12,5 % bis 80 %");
    EXPECT_EQ(said(key(circuit::PartKind::capacitor, "polarised"), true), "ja");
    EXPECT_EQ(said(key(circuit::PartKind::capacitor, "polarised"), false), "nein");
    expectTheSameBack();
}

TEST(ValueText, InGermanTheEnglishWordsAreReadToo) {
    const Speaking german;
    for (const char* none : {"keine", " keine ", "none"})
        EXPECT_EQ(app::valueFromText(leakage(), none).value(), Value(circuit::Null{})) << none;
    for (const char* text : {"-20 % bis 80 %", "-20 % to 80 %", "-0,2 bis 0.8"})
        EXPECT_EQ(app::valueFromText(tolerance(), text).value(), Value(circuit::Interval{-0.2, 0.8})) << text;
    EXPECT_EQ(app::valueFromText(presses(), "0,5 bis 1; 2 to 2,25").value(),
              Value(circuit::Intervals{{0.5, 1}, {2, 2.25}}));
    EXPECT_EQ(app::valueFromText(presses(), "1").fault().text, "zwei Werte wie in „1 bis 2“ sind nötig");
    EXPECT_FALSE(app::valueFromText(tolerance(), "bis 2"));
}

TEST(ValueText, InEnglishAWordOfAnotherLanguageIsNoValue) {
    EXPECT_FALSE(app::valueFromText(leakage(), "keine"));
    EXPECT_FALSE(app::valueFromText(tolerance(), "1 bis 2"));
}

} // namespace
