// The values of a ready blinker: chosen from the preferred series, corrected by studies of the circuit
// itself.
#include "core/base/wording.h"
#include "core/study/ready_board.h"
#include "core/study/ready_room.h"
#include "core/study/study.h"
#include "core/units/series.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::study {

namespace {

using units::Series;

constexpr double mostFirstFlash = 1.6; ///< times a rating; from twice on it is a finding
constexpr double fadesBy = 1.0;        ///< coupling: R C over half a period
constexpr double mostCoupling = 4.7e-3;
constexpr double evenHigh = 0.52; ///< as even as R1 of a kilohm and more lets the plain form be
constexpr double knownFor = 1e-5; ///< accuracy of the studies that correct the values

TimingForm formOf(ReadyKind kind) {
    if (kind == ReadyKind::shortFlash) return TimingForm::steered;
    return kind == ReadyKind::equalHalves ? TimingForm::single : TimingForm::plain;
}

Phase wishedPhase(const ReadyAnswers& answers) {
    const double period = 60 / answers.perMinute;
    double high = answers.lit;
    if (answers.kind == ReadyKind::lampToRail) high = 1 - answers.lit;
    if (answers.kind == ReadyKind::takingTurns) high = evenHigh;
    if (answers.kind == ReadyKind::equalHalves) high = 0.5;
    return {high * period, (1 - high) * period};
}

/// The smallest resistor that keeps the flash from power-on, with an empty coupling capacitor, in bounds.
double leastPairResistor(const ReadyAnswers& answers) {
    const double i = answers.lampCurrent_A;
    const double swing = highLevel(answers, i) - lowLevel(answers, i);
    const double drop = std::min(lampVoltage(answers.colour, i), lampVoltage(answers.secondColour, i));
    const double most = mostFirstFlash * (answers.family == devices::TimerFamily::cmos
                                              ? 10e-3
                                              : devices::lampSheet(answers.colour)->rated_current);
    return (swing - drop) / most;
}

void chooseCoupling(const ReadyAnswers& answers, ReadyValues& values) {
    if (answers.kind != ReadyKind::takingTurns) return;
    values.lamp_ohm = units::atLeast(Series::E24, std::max(values.lamp_ohm, leastPairResistor(answers)));
    const double wanted = fadesBy * 0.5 * 60 / answers.perMinute / values.lamp_ohm;
    values.coupling_farad = std::min(units::nearest(Series::E6, wanted), mostCoupling);
}

/// From the device sheets and the textbook: where the correction starts.
ReadyValues firstValues(const ReadyAnswers& answers) {
    ReadyValues values;
    values.timing = chooseTiming({formOf(answers.kind), wishedPhase(answers)});
    const Across across = acrossOf(answers);
    const double i = answers.lampCurrent_A;
    const double first = answers.kind == ReadyKind::takingTurns ? across.pair
                         : info(answers.kind).sources           ? across.lower
                                                                : across.upper;
    values.lamp_ohm = units::nearest(Series::E24, std::max(first / i, 10.0));
    values.second_ohm = units::nearest(Series::E24, std::max(across.upper / i, 10.0));
    chooseCoupling(answers, values);
    return values;
}

Result<Study> studied(const ReadyAnswers& answers, const ReadyValues& values) {
    return study(readyBoard(answers, values), circuit::PartSet::A, {.flashes = 2, .accuracy = knownFor});
}

double peakOf(const Study& study, std::string_view ref) {
    for (const LampReading& lamp : study.readings.lamps)
        if (lamp.ref == ref) return lamp.peak_A.value_or(0);
    return 0;
}

/// A resistor that would bring a measured current to the wished one: the voltage across it stays.
double corrected(double ohm, double peak, double wished) {
    return peak > 0 ? units::nearest(Series::E24, std::max(ohm * peak / wished, 10.0)) : ohm;
}

/// Chooses again by what a study of the circuit shows.
void correct(const ReadyAnswers& answers, const Study& study, ReadyValues& values) {
    const auto& timer = study.readings.timers.front();
    if (timer.settled) {
        const TimingForm form = formOf(answers.kind);
        values.timing =
            chooseTiming({form, wishedPhase(answers), factorsOf(form, values.timing, *timer.settled)});
    }
    double peak = peakOf(study, "D1");
    if (answers.kind == ReadyKind::takingTurns) peak = std::max(peak, peakOf(study, "D2"));
    values.lamp_ohm = corrected(values.lamp_ohm, peak, answers.lampCurrent_A);
    if (answers.kind == ReadyKind::lampToEachRail)
        values.second_ohm = corrected(values.second_ohm, peakOf(study, "D2"), answers.lampCurrent_A);
    chooseCoupling(answers, values);
}

constexpr int corrections = 3;

/// The values after some corrections; of the timing parts those that came nearest to the wish, since rounding
/// to the series may lead a correction past it.
Result<ReadyValues> correctedValues(const ReadyAnswers& answers) {
    const TimingWish wish{formOf(answers.kind), wishedPhase(answers)};
    ReadyValues values = firstValues(answers);
    Timing best = values.timing;
    double least = std::numeric_limits<double>::infinity();
    for (int k = 0; k < corrections; ++k) {
        const auto study = studied(answers, values);
        if (!study) return study.fault();
        const auto& settled = study.value().readings.timers.front().settled;
        if (const double miss = settled ? missOf(wish, *settled) : least; miss < least) {
            least = miss;
            best = values.timing;
        }
        correct(answers, study.value(), values);
    }
    values.timing = best;
    return values;
}

Result<ReadyValues> chosenValues(const ReadyAnswers& answers) {
    if (answers.kind != ReadyKind::gatedGroups) return correctedValues(answers);
    // Each of the two timers is corrected as an astable of its own.
    ReadyAnswers fast = answers, slow = answers;
    fast.kind = slow.kind = ReadyKind::lampToGround;
    slow.perMinute = answers.groups;
    slow.lit = gateHigh;
    auto values = correctedValues(fast);
    auto gate = correctedValues(slow);
    if (!values) return values;
    if (!gate) return gate;
    values.value().slow = gate.value().timing;
    return values;
}

} // namespace

Result<circuit::Circuit> makeReady(const ReadyAnswers& answers) {
    if (auto fine = checkAnswers(answers); !fine) return fine.fault();
    const auto values = chosenValues(answers);
    if (!values) return values.fault();
    // What no check foresees shows in the study: nothing that does not work is handed out.
    const auto last = studied(answers, values.value());
    if (!last) return last.fault();
    const Readings& readings = last.value().readings;
    if (readings.verdict != Verdict::blinks)
        return Fault{wording::inWords("answers"), readings.reasons.empty()
                                                      ? wording::inWords("the circuit would not blink")
                                                      : readings.reasons.front()};
    if (!last.value().findings.empty() && last.value().findings.front().severity <= Severity::doubt)
        return Fault{wording::inWords("answers"), last.value().findings.front().text};
    return readyBoard(answers, values.value());
}

} // namespace blinkwright::study
