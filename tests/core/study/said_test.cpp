// Whether what people read goes through the tongue of the window, a whole sentence at a time: under a tongue
// that puts each sentence in brackets, nothing is left outside of them.
#include "core/base/wording.h"
#include "core/study/choose.h"
#include "core/study/part_words.h"
#include "core/study/ready.h"
#include "core/study/verdict.h"
#include "tests/core/study/findings_support.h"

#include <gmock/gmock.h>

namespace blinkwright::study {
namespace {

using circuit::PartKind;
using testing::MatchesRegex;

class Said : public testing::Test {
  protected:
    Said() {
        wording::setTongue({[](std::string_view english) { return "<" + std::string(english) + ">"; }, ','});
    }
    ~Said() override { wording::setTongue({}); }
};

/// One sentence, or some in a row, and no quantity with a decimal point.
const auto spoken = MatchesRegex("(<[^<>]*>)( <[^<>]*>)*");

TEST_F(Said, FindingsAreWholeSentences) {
    Workbench wrong; // as wrong as can be
    wrong.part(PartKind::supply, "BT1", {{"voltage", 20.5}})
        .part(PartKind::timer, "U1")
        .part(PartKind::timer, "U2")
        .part(PartKind::lamp, "D1");
    wrong.net("supply", {"BT1:plus", "U1:8", "U1:3", "D1:cathode"})
        .net("ground", {"BT1:minus", "U1:1", "U1:7", "D1:anode"});
    Workbench strong = sound();
    Readings readings = blinking(strong, 5);
    LampReading& lamp = readings.lamps.front();
    lamp.rms_A = lamp.peak_A = 0.05;
    lamp.reversePeak_V = 20;
    lamp.darkerMean_A = 1e-5;
    for (PartReading& part : readings.parts) {
        part.meanPower_W = 5;
        part.peakVoltage_V = 100;
        part.sourced_A = part.sunk_A = part.dischargePeak_A = 1;
    }
    std::vector<Finding> all = of(wrong);
    const auto more = findingsOf(strong.board(), &readings);
    all.insert(all.end(), more.begin(), more.end());
    EXPECT_GE(all.size(), 15u);
    for (const Finding& f : all) {
        EXPECT_THAT(f.text, spoken) << f.kind;
        EXPECT_THAT(f.remedy, spoken) << f.kind;
        EXPECT_THAT(f.text, testing::Not(testing::ContainsRegex("[0-9]\\.[0-9]"))) << f.kind;
    }
}

TEST_F(Said, ReasonsOfAVerdictAreWholeSentences) {
    const auto reasonOf = [](const Workbench& bench) {
        const auto board = bench.board();
        const Judgement j = judge(board, engine::simulate(board, {.flashes = 2}), nullptr);
        return j.causes.empty() ? std::string() : j.causes.front().sentence;
    };
    Workbench lone;
    lone.part(PartKind::timer, "U1");
    EXPECT_THAT(reasonOf(lone), spoken);
    Workbench apart = sound();
    apart.open("U1:8");
    EXPECT_THAT(reasonOf(apart), spoken);
    Workbench open = sound();
    open.open("U1:6");
    EXPECT_THAT(reasonOf(open), spoken);
    Workbench held = sound();
    held.open("U1:4").net("ground", {"U1:4"});
    EXPECT_THAT(reasonOf(held), spoken);
}

TEST_F(Said, WhyAWishCannotBeMetIsAWholeSentence) {
    const auto reason = [](const Wish& wish) { return choose(wish, {.simulate = 5}).unmet->reason; };
    EXPECT_THAT(reason({.supply_V = 30.5}), spoken);
    EXPECT_THAT(reason({.supply_V = 9, .drawer = std::vector<Stock>()}), spoken);
}

TEST_F(Said, AReadyBlinkerIsMadeInTheLanguageOfTheWindow) {
    ReadyAnswers answers = defaultAnswers(ReadyKind::lampToGround);
    const auto made = makeReady(answers);
    ASSERT_TRUE(made.ok());
    EXPECT_THAT(made.value().title, spoken);
    EXPECT_THAT(made.value().notes, spoken);
    answers.supply_V = 99.5;
    EXPECT_EQ(makeReady(answers).fault().message(),
              "<supply voltage>: <must be 4,5\u00A0V to 16\u00A0V, got 99,5\u00A0V>");
}

TEST_F(Said, PartsAreDescribedWithoutAWordOfTheirFile) {
    const Workbench bench = sound();
    const auto lamp = *bench.circuit.findRef("D1");
    const PartsRow row = rowWords(bench.circuit, circuit::PartSet::A, lamp);
    EXPECT_EQ(row.description, "<<red> lamp (LED)>, <rated 20\u00A0mA>");
    EXPECT_EQ(row.value, "red"); // as files have it
}

} // namespace
} // namespace blinkwright::study
