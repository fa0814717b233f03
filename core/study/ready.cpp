#include "core/study/ready.h"

#include "core/devices/laws.h"
#include "core/study/output_levels.h"
#include "core/study/ready_board.h"
#include "core/study/study.h"
#include "core/units/engineering.h"
#include "core/units/series.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace blinkwright::study {

namespace {

using devices::TimerFamily;
using units::Series;
using units::Unit;

constexpr Bounds anyRate{6, 600}, pairRate{20, 300};
constexpr Bounds none{};
constexpr Bounds longHigh{0.52, 0.95}, shortLow{0.05, 0.48}, shortHigh{0.03, 0.6};

// In the order of ReadyKind.
constexpr ReadyInfo kinds[] = {
    {ReadyKind::lampToGround, "lamp-to-ground", "One lamp to ground",
     "The lamp is lit while the output is high, for more than half of the time.", "Mole light", false, true,
     anyRate, longHigh, none},
    {ReadyKind::lampToRail, "lamp-to-rail", "One lamp to the + rail",
     "The lamp is lit while the output is low, for less than half of the time.", "Winch warning lamp", false,
     false, anyRate, shortLow, none},
    {ReadyKind::takingTurns, "taking-turns", "Two lamps taking turns through a capacitor",
     "One capacitor passes the swing of the output on to two lamps, each lit in its own half of the cycle.",
     "Channel buoy pair", true, true, pairRate, none, none},
    {ReadyKind::lampToEachRail, "lamp-to-each-rail", "One lamp to each rail",
     "One lamp is lit while the output is high, the other while it is low; one of them is always lit.",
     "Slipway crossing signal", true, true, anyRate, longHigh, none},
    {ReadyKind::shortFlash, "short-flash", "Short flash with a steering diode",
     "A diode lets the capacitor charge past R2, so that the lamp can be lit for less than half of the time.",
     "Breakwater beacon", false, true, anyRate, shortHigh, none},
    {ReadyKind::equalHalves, "equal-halves", "Equal halves from one resistor",
     "One resistor from the output charges and discharges the capacitor, so that both phases are alike.",
     "Chandler's window sign", false, false, anyRate, none, none},
    {ReadyKind::controlledRate, "controlled-rate", "Rate set by a control voltage",
     "A variable resistor sets the voltage of pin 5 and with it the rate; the wish holds at its middle.",
     "Tide gauge lamp", false, true, anyRate, longHigh, none},
    {ReadyKind::gatedGroups,
     "gated-groups",
     "Groups of flashes: a slow timer gates a fast one",
     "The output of a slow timer holds the reset of a fast one, so that flashes come in groups.",
     "Ferry berth light",
     false,
     true,
     {60, 600},
     longHigh,
     {3, 20}},
};

constexpr Bounds bipolarSupply{4.5, 16}, cmosSupply{2, 15}; // as the finding supply-out-of-range
constexpr double leastCurrent = 1e-3, mostCurrent = 18e-3;  // lamps are rated for 20 mA
constexpr double cmosSources = 9e-3;                        // of the 10 mA that TI states for the TLC555
constexpr double leastAcross = 0.3;    ///< voltage that the lamp's resistor needs to set the current [V]
constexpr double leastSwing = 0.5;     ///< the same for a pair [V]
constexpr double mostFirstFlash = 1.6; ///< times a rating; from twice on it is a finding
constexpr double fadesBy = 1.0;        ///< coupling: R C over half a period
constexpr double mostCoupling = 4.7e-3;
constexpr double leastFlashes = 3; ///< in a group
constexpr double gateHigh = 0.55;  ///< share of a slow cycle in which the fast timer runs
constexpr double evenHigh = 0.52;  ///< as even as R1 of a kilohm and more lets the plain form be
constexpr double knownFor = 1e-5;  ///< accuracy of the studies that correct the values

bool isCmos(const ReadyAnswers& answers) {
    return answers.family == TimerFamily::cmos;
}
bool equalColours(const ReadyAnswers& answers) {
    return !info(answers.kind).secondLamp;
}

double lampVoltage(const std::string& colour, double current) {
    const devices::LampSheet sheet = *devices::lampSheet(colour);
    const auto law = devices::JunctionLaw::through(sheet.forward_voltage, sheet.test_current, sheet.ideality,
                                                   sheet.series_resistance);
    return devices::junctionVoltage(law.value(), current) + sheet.series_resistance * current;
}

double highLevel(const ReadyAnswers& answers, double current) {
    return outputHigh(devices::timerSheet(answers.family, answers.supply_V, {}), isCmos(answers),
                      answers.supply_V, current);
}
double lowLevel(const ReadyAnswers& answers, double current) {
    return outputLow(devices::timerSheet(answers.family, answers.supply_V, {}), current);
}

/// Voltage left for the resistors in the lamps' paths: the lamp to ground, the lamp to the rail, the pair.
struct Across {
    double lower = 0, upper = 0, pair = 0;
};
Across acrossOf(const ReadyAnswers& answers) {
    const double i = answers.lampCurrent_A;
    const double high = highLevel(answers, i), low = lowLevel(answers, i);
    const double first = lampVoltage(answers.colour, i);
    const double second = equalColours(answers) ? first : lampVoltage(answers.secondColour, i);
    return {high - first, answers.supply_V - low - second, high - low - first - second};
}

std::string volts(double v) {
    return units::formatQuantity(v, Unit::volt);
}

std::optional<Fault> outOf(const char* place, const Bounds& bounds, double value, Unit unit,
                           double factor = 1, const char* sign = "") {
    const auto text = [&](double v) { return units::formatQuantity(v * factor, unit) + sign; };
    constexpr double blur = 1e-9;
    if (value >= bounds.low * (1 - blur) && value <= bounds.high * (1 + blur)) return std::nullopt;
    return Fault{place, "must be " + text(bounds.low) + " to " + text(bounds.high) + ", got " + text(value)};
}

Result<void> checkRoom(const ReadyAnswers& answers) {
    const Across across = acrossOf(answers);
    const std::string ask = "; ask for a higher supply voltage, another colour or less current";
    const std::string current = units::formatQuantity(answers.lampCurrent_A, Unit::ampere);
    const auto lampNeeds = [&](const std::string& colour, double left) {
        return Fault{"lamp",
                     "at " + current + " the " + colour + " lamp takes " +
                         volts(lampVoltage(colour, answers.lampCurrent_A)) + ", and the output leaves it " +
                         volts(std::max(0.0, left + lampVoltage(colour, answers.lampCurrent_A))) + ask};
    };
    if (answers.kind == ReadyKind::takingTurns) {
        if (across.pair < leastSwing)
            return Fault{"lamps", "both lamps together take " +
                                      volts(lampVoltage(answers.colour, answers.lampCurrent_A) +
                                            lampVoltage(answers.secondColour, answers.lampCurrent_A)) +
                                      ", and the output swings by only " +
                                      volts(highLevel(answers, answers.lampCurrent_A) -
                                            lowLevel(answers, answers.lampCurrent_A)) +
                                      ask};
        return {};
    }
    const bool lower = info(answers.kind).sources;
    if (lower && across.lower < leastAcross) return lampNeeds(answers.colour, across.lower);
    if ((!lower || info(answers.kind).secondLamp) && across.upper < leastAcross)
        return lampNeeds(lower ? answers.secondColour : answers.colour, across.upper);
    return {};
}

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
    const double most =
        mostFirstFlash * (isCmos(answers) ? 10e-3 : devices::lampSheet(answers.colour)->rated_current);
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
    const auto gate = correctedValues(slow);
    if (!values) return values;
    if (!gate) return gate;
    values.value().slow = gate.value().timing;
    return values;
}

} // namespace

const ReadyInfo& info(ReadyKind kind) {
    return kinds[static_cast<std::size_t>(kind)];
}

std::optional<ReadyKind> readyKindNamed(std::string_view id) {
    const auto* found = std::ranges::find(kinds, id, &ReadyInfo::id);
    return found == std::end(kinds) ? std::nullopt : std::optional(found->kind);
}

ReadyAnswers defaultAnswers(ReadyKind kind) {
    ReadyAnswers answers{.kind = kind};
    switch (kind) {
    case ReadyKind::lampToRail:
        answers.colour = "amber";
        answers.lit = 0.25;
        break;
    case ReadyKind::shortFlash:
        answers.colour = "white";
        answers.perMinute = 30;
        answers.lit = 0.1;
        break;
    case ReadyKind::equalHalves:
        answers.family = TimerFamily::cmos;
        answers.colour = "blue";
        answers.perMinute = 40;
        break;
    case ReadyKind::controlledRate:
        answers.colour = "yellow";
        break;
    case ReadyKind::gatedGroups:
        answers.perMinute = 120;
        answers.groups = 8;
        break;
    default:
        break;
    }
    return answers;
}

std::vector<std::string> readyColours() {
    std::vector<std::string> colours;
    for (const std::string_view colour : devices::lampColours())
        if (colour != "infrared") colours.emplace_back(colour);
    return colours;
}

Bounds supplyBounds(TimerFamily family) {
    return family == TimerFamily::cmos ? cmosSupply : bipolarSupply;
}

Bounds currentBounds(ReadyKind kind, TimerFamily family) {
    const bool weak = family == TimerFamily::cmos && info(kind).sources;
    return {leastCurrent, weak ? cmosSources : mostCurrent};
}

Result<void> checkAnswers(const ReadyAnswers& answers) {
    const ReadyInfo& kind = info(answers.kind);
    if (const auto fault =
            outOf("supply voltage", supplyBounds(answers.family), answers.supply_V, Unit::volt))
        return *fault;
    const auto colours = readyColours();
    for (const std::string& colour : {answers.colour, answers.secondColour}) {
        if (std::ranges::find(colours, colour) != colours.end()) continue;
        if (&colour != &answers.colour && equalColours(answers) && colour == answers.secondColour &&
            std::ranges::find(colours, answers.colour) != colours.end())
            continue; // not asked for
        return Fault{"lamp", "'" + colour + "' is no colour that a ready blinker can have"};
    }
    if (const auto fault = outOf("lamp current", currentBounds(answers.kind, answers.family),
                                 answers.lampCurrent_A, Unit::ampere))
        return *fault;
    if (const auto fault = outOf("flashes a minute", kind.perMinute, answers.perMinute, Unit::none))
        return *fault;
    if (kind.lit.asked())
        if (const auto fault = outOf("lit share", kind.lit, answers.lit, Unit::none, 100, " %"))
            return *fault;
    if (kind.groups.asked()) {
        if (const auto fault = outOf("groups a minute", kind.groups, answers.groups, Unit::none))
            return *fault;
        const double flashes = gateHigh * answers.perMinute / answers.groups;
        if (flashes < leastFlashes)
            return Fault{"groups a minute", "a group would hold only " +
                                                units::formatQuantity(flashes, Unit::none, 2) +
                                                " flashes; ask for fewer groups or more flashes a minute"};
    }
    return checkRoom(answers);
}

Result<circuit::Circuit> makeReady(const ReadyAnswers& answers) {
    if (auto fine = checkAnswers(answers); !fine) return fine.fault();
    const auto values = chosenValues(answers);
    if (!values) return values.fault();
    // What no check foresees shows in the study: nothing that does not work is handed out.
    const auto last = studied(answers, values.value());
    if (!last) return last.fault();
    const Readings& readings = last.value().readings;
    if (readings.verdict != Verdict::blinks)
        return Fault{"answers",
                     readings.reasons.empty() ? "the circuit would not blink" : readings.reasons.front()};
    if (!last.value().findings.empty() && last.value().findings.front().severity <= Severity::doubt)
        return Fault{"answers", last.value().findings.front().text};
    return readyBoard(answers, values.value());
}

} // namespace blinkwright::study
