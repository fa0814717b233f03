#include "core/study/ready.h"

#include "core/circuit/edit.h"
#include "core/study/study.h"
#include "core/units/series.h"

#include <gmock/gmock.h>

#include <cmath>

namespace blinkwright::study {
namespace {

using devices::TimerFamily;
using testing::HasSubstr;

Study studyOf(const circuit::Circuit& c, int flashes = 6) {
    return study(c, circuit::PartSet::A, {.flashes = flashes}).value();
}

std::string said(const Study& s) {
    std::string all;
    for (const Finding& f : s.findings) all += f.kind + ": " + f.text + "\n";
    for (const std::string& reason : s.readings.reasons) all += reason + "\n";
    return all;
}

/// One of the wishes that every kind is tried with.
struct Wish {
    TimerFamily family;
    double supply, perMinute, current;
    const char* colour;
    const char* second;
    double lit; ///< from the low to the high end of what is asked, 0 to 1
};
constexpr auto bipolar = TimerFamily::bipolar, cmos = TimerFamily::cmos;
constexpr Wish wishes[] = {
    {bipolar, 9, 60, 8e-3, "red", "green", 0.1},     {bipolar, 6, 60, 8e-3, "red", "amber", 0.5},
    {bipolar, 12, 20, 15e-3, "white", "blue", 0.9},  {bipolar, 16, 150, 18e-3, "green", "yellow", 1},
    {bipolar, 9, 300, 5e-3, "yellow", "red", 0.3},   {bipolar, 7.5, 90, 10e-3, "amber", "red", 0},
    {bipolar, 5, 60, 10e-3, "red", "red", 0.4},      {cmos, 5, 60, 5e-3, "red", "green", 0.2},
    {cmos, 9, 30, 8e-3, "red", "green", 0.6},        {cmos, 12, 120, 9e-3, "white", "pure-green", 0.8},
    {cmos, 15, 45, 4e-3, "blue", "blue", 0.5},       {cmos, 3.6, 75, 2e-3, "red", "red", 0.4},
    {bipolar, 4.5, 100, 2e-3, "red", "red", 0.7},    {cmos, 6, 550, 6e-3, "amber", "green", 0.5},
    {bipolar, 9, 10, 6e-3, "pure-green", "red", 0.5}};

ReadyAnswers answersTo(ReadyKind kind, const Wish& wish) {
    ReadyAnswers answers{.kind = kind,
                         .family = wish.family,
                         .supply_V = wish.supply,
                         .colour = wish.colour,
                         .secondColour = wish.second,
                         .lampCurrent_A = wish.current,
                         .perMinute = wish.perMinute};
    const ReadyInfo& asked = info(kind);
    answers.perMinute = std::clamp(wish.perMinute, asked.perMinute.low, asked.perMinute.high);
    answers.lit = asked.lit.low + wish.lit * (asked.lit.high - asked.lit.low);
    answers.groups = std::clamp(answers.perMinute / 8, 3.0, 20.0);
    return answers;
}

class ReadyBlinker : public testing::TestWithParam<std::tuple<ReadyKind, std::size_t>> {
  protected:
    /// The circuit, where the wish leaves room for it.
    std::optional<circuit::Circuit> made() {
        const auto& [kind, wish] = GetParam();
        answers = answersTo(kind, wishes[wish]);
        const auto fine = checkAnswers(answers);
        if (!fine) {
            EXPECT_THAT(fine.fault().message(), HasSubstr("ask for a higher supply voltage"));
            return std::nullopt;
        }
        const auto circuit = makeReady(answers);
        if (!circuit) {
            ADD_FAILURE() << circuit.fault().message();
            return std::nullopt;
        }
        return circuit.value();
    }
    ReadyAnswers answers;
};

TEST_P(ReadyBlinker, BlinksAsAskedWithNothingToMend) {
    const auto circuit = made();
    if (!circuit) return; // refused, and the sentence was the one of made()
    const Study s = studyOf(*circuit, answers.kind == ReadyKind::gatedGroups ? 40 : 6);
    ASSERT_EQ(s.readings.verdict, Verdict::blinks) << said(s);
    for (const Finding& finding : s.findings)
        EXPECT_GE(finding.severity, Severity::caution) << finding.kind << ": " << finding.text;
    const auto& timer = s.readings.timers.front();
    const double wished = 60 / answers.perMinute;
    if (answers.kind == ReadyKind::gatedGroups) {
        // Two falls of the output one after the other, within a group: from the second flash of one on.
        const auto& t = timer.switchings_s;
        std::vector<double> periods;
        for (std::size_t k = 0; k + 2 < t.size(); k += 2) periods.push_back(t[k + 2] - t[k]);
        std::sort(periods.begin(), periods.end());
        EXPECT_NEAR(periods[periods.size() / 2], wished, 0.04 * wished);
        ASSERT_TRUE(s.readings.timers.at(1).settled);
        EXPECT_NEAR(s.readings.timers[1].settled->period_s(), 60 / answers.groups,
                    0.04 * 60 / answers.groups);
        EXPECT_GT(periods.back(), 0.4 * 60 / answers.groups); // the pause between two groups
        return;
    }
    ASSERT_TRUE(timer.settled) << said(s);
    EXPECT_NEAR(timer.settled->period_s(), wished, 0.04 * wished);
    const LampReading& first = s.readings.lamps.front();
    const double share = *first.litTime_s / timer.settled->period_s();
    if (info(answers.kind).lit.asked()) {
        EXPECT_NEAR(share, answers.lit, 0.03);
    }
    if (answers.kind == ReadyKind::equalHalves) {
        EXPECT_NEAR(share, 0.5, 0.03);
    }
    if (answers.kind == ReadyKind::takingTurns) {
        EXPECT_NEAR(timer.settled->duty(), 0.5, 0.04);
        // The current fades, and the flash from power-on must not overdrive the lamps: less than asked is
        // fair.
        for (const LampReading& lamp : s.readings.lamps) {
            EXPECT_GT(*lamp.peak_A, std::min(answers.lampCurrent_A, 2e-3) * 0.7) << lamp.ref;
            EXPECT_LT(*lamp.peak_A, answers.lampCurrent_A * 1.1) << lamp.ref;
        }
        return;
    }
    for (const LampReading& lamp : s.readings.lamps)
        EXPECT_NEAR(*lamp.peak_A, answers.lampCurrent_A, 0.1 * answers.lampCurrent_A) << lamp.ref;
}

TEST_P(ReadyBlinker, HasValuesOfTheSeriesAndAPlaceForEachPart) {
    const auto circuit = made();
    if (!circuit) return; // refused, and the sentence was the one of made()
    for (const circuit::Part& part : circuit->parts()) {
        EXPECT_NE(circuit->placement(part.id), nullptr) << part.ref;
        const auto number = [&](const char* key) {
            return std::get<double>(*circuit->value(circuit::PartSet::A, part.id, key));
        };
        if (part.kind == circuit::PartKind::resistor) {
            EXPECT_TRUE(units::inSeries(units::Series::E24, number("resistance"))) << part.ref;
        }
        if (part.kind == circuit::PartKind::variable) {
            EXPECT_TRUE(units::inSeries(units::Series::E6, number("resistance"))) << part.ref;
        }
        if (part.kind == circuit::PartKind::capacitor) {
            EXPECT_TRUE(units::inSeries(units::Series::E6, number("capacitance"))) << part.ref;
            EXPECT_GE(number("rated_voltage"), 1.5 * answers.supply_V) << part.ref;
        }
        for (int pin = 0; pin < static_cast<int>(circuit::info(part.kind).pins.size()); ++pin) {
            const auto net = circuit->netOf({part.id, pin});
            const bool unused = answers.kind == ReadyKind::equalHalves && part.ref == "U1" && pin == 6;
            EXPECT_EQ(net.has_value(), !unused) << circuit->pinText({part.id, pin});
            if (net) {
                EXPECT_GT(circuit->find(*net)->pins.size(), 1U) << circuit->find(*net)->name;
            }
        }
    }
    EXPECT_EQ(circuit->title, info(answers.kind).title);
}

INSTANTIATE_TEST_SUITE_P(Wishes, ReadyBlinker,
                         testing::Combine(testing::ValuesIn(allReadyKinds),
                                          testing::Range(std::size_t{0}, std::size(wishes))),
                         [](const auto& row) {
                             std::string name(blinkwright::study::info(std::get<0>(row.param)).id);
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name + "_" + std::to_string(std::get<1>(row.param));
                         });

TEST(ReadyBlinkers, AreAllMadeFromTheirFirstAnswers) {
    for (const ReadyKind kind : allReadyKinds) {
        EXPECT_EQ(readyKindNamed(info(kind).id), kind);
        EXPECT_TRUE(makeReady(defaultAnswers(kind))) << info(kind).label;
    }
    EXPECT_EQ(readyKindNamed("none"), std::nullopt);
}

TEST(ReadyBlinkers, FollowTheControlVoltageFromSlowToFast) {
    const auto made = makeReady(defaultAnswers(ReadyKind::controlledRate));
    ASSERT_TRUE(made);
    circuit::Circuit c = made.value();
    const auto rateAt = [&](double setting) {
        const auto done = circuit::apply(
            c, circuit::setValue(c, circuit::PartSet::A, c.findRef("RV1")->id, "setting", setting));
        EXPECT_TRUE(done);
        const Study s = studyOf(c);
        EXPECT_EQ(s.readings.verdict, Verdict::blinks) << said(s);
        return s.readings.timers[0].settled->rate_Hz();
    };
    // A higher control voltage makes the high phase longer: setting 0 has the wiper at the upper end.
    const double slow = rateAt(0), middle = rateAt(0.5), fast = rateAt(1);
    EXPECT_LT(slow, 0.85 * middle);
    EXPECT_GT(fast, 1.15 * middle);
}

struct Refusal {
    const char* about;
    ReadyKind kind;
    void (*change)(ReadyAnswers&);
    const char* sentence;
};
const Refusal refusals[] = {
    {"supply", ReadyKind::lampToGround, [](ReadyAnswers& a) { a.supply_V = 3; },
     "supply voltage: must be 4.5\u00A0V to 16\u00A0V, got 3\u00A0V"},
    {"cmos supply", ReadyKind::lampToRail,
     [](ReadyAnswers& a) {
         a.family = TimerFamily::cmos;
         a.supply_V = 18;
     },
     "supply voltage: must be 2\u00A0V to 15\u00A0V, got 18\u00A0V"},
    {"nan", ReadyKind::lampToGround, [](ReadyAnswers& a) { a.supply_V = std::nan(""); },
     "supply voltage: must be 4.5\u00A0V to 16\u00A0V, got not a number"},
    {"current", ReadyKind::lampToGround, [](ReadyAnswers& a) { a.lampCurrent_A = 0.05; },
     "lamp current: must be 1\u00A0mA to 18\u00A0mA, got 50\u00A0mA"},
    {"cmos current", ReadyKind::shortFlash,
     [](ReadyAnswers& a) {
         a.family = TimerFamily::cmos;
         a.lampCurrent_A = 0.012;
     },
     "lamp current: must be 1\u00A0mA to 9\u00A0mA, got 12\u00A0mA"},
    {"rate", ReadyKind::lampToGround, [](ReadyAnswers& a) { a.perMinute = 5; },
     "flashes a minute: must be 6 to 600, got 5"},
    {"fast rate", ReadyKind::takingTurns, [](ReadyAnswers& a) { a.perMinute = 301; },
     "flashes a minute: must be 20 to 300, got 301"},
    {"lit", ReadyKind::lampToGround, [](ReadyAnswers& a) { a.lit = 0.4; },
     "lit share: must be 52 % to 95 %, got 40 %"},
    {"lit to the rail", ReadyKind::lampToRail, [](ReadyAnswers& a) { a.lit = 0.5; },
     "lit share: must be 5 % to 48 %, got 50 %"},
    {"groups", ReadyKind::gatedGroups, [](ReadyAnswers& a) { a.groups = 2; },
     "groups a minute: must be 3 to 20, got 2"},
    {"few flashes", ReadyKind::gatedGroups,
     [](ReadyAnswers& a) {
         a.perMinute = 60;
         a.groups = 20;
     },
     "groups a minute: a group would hold only 1.6 flashes; ask for fewer groups or more flashes a minute"},
    {"infrared", ReadyKind::lampToGround, [](ReadyAnswers& a) { a.colour = "infrared"; },
     "lamp: 'infrared' is no colour that a ready blinker can have"},
    {"second colour", ReadyKind::lampToEachRail, [](ReadyAnswers& a) { a.secondColour = "mauve"; },
     "lamp: 'mauve' is no colour that a ready blinker can have"},
};

TEST(ReadyBlinkers, RefuseEveryAnswerOutOfRangeInOneSentence) {
    for (const Refusal& refusal : refusals) {
        ReadyAnswers answers = defaultAnswers(refusal.kind);
        refusal.change(answers);
        const auto made = makeReady(answers);
        ASSERT_FALSE(made) << refusal.about;
        EXPECT_EQ(made.fault().message(), refusal.sentence) << refusal.about;
    }
}

TEST(ReadyBlinkers, SayWhereTheSupplyLeavesTheLampsNoRoom) {
    ReadyAnswers answers = defaultAnswers(ReadyKind::lampToGround);
    answers.supply_V = 4.5;
    answers.colour = "blue";
    EXPECT_THAT(makeReady(answers).fault().message(), HasSubstr("the blue lamp takes 3.01\u00A0V"));
    answers = defaultAnswers(ReadyKind::takingTurns);
    answers.supply_V = 5;
    EXPECT_THAT(makeReady(answers).fault().message(), HasSubstr("both lamps together take 3.9"));
}

} // namespace
} // namespace blinkwright::study
